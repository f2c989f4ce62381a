package slopewright.checks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import slopewright.evaluation.AidLayouts;
import slopewright.evaluation.AidRequests;
import slopewright.geometry.FramePoint;
import slopewright.model.Aerodrome;
import slopewright.model.AeroplaneGroup;
import slopewright.model.AidSide;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachDirection;
import slopewright.model.ApproachHost;
import slopewright.model.ApproachType;
import slopewright.model.Circuit;
import slopewright.model.EquipmentType;
import slopewright.model.GlidePathAid;
import slopewright.model.Helipad;
import slopewright.model.LightUnit;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleSurvey;
import slopewright.model.Place;
import slopewright.model.ProfilePoint;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.model.Stage;
import slopewright.model.TaxiwayEdge;
import slopewright.model.ValueOverride;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Ids;
import slopewright.siting.Families;
import slopewright.siting.Siting;
import slopewright.siting.site.SiteFrame;
import slopewright.siting.site.SurveyPoints;
import slopewright.standards.RuleSets;

/**
 * A small invented aerodrome on a local grid whose runway runs due east from (0, 0): {@code alongM} is east and {@code rightM} is
 * south. Everything that rules ask for is there, so that a case changes one thing.
 */
final class Sample {

    /** Elevation of threshold and helipad. */
    static final double DATUM_M = 100;

    /** Lens above the ground, which is level. */
    static final double LENS_M = 0.8;

    private static final SlopewrightFactory MAKE = SlopewrightFactory.eINSTANCE;

    private final Project project = MAKE.createProject();
    private Stage stage = Stage.OPERATION;
    private final Aerodrome aerodrome = MAKE.createAerodrome();
    private final ApproachAid aid = MAKE.createApproachAid();
    private ApproachHost host;
    private String rules;

    private Sample() {
        project.setAerodrome(aerodrome);
        project.setName("sample");
        aerodrome.setIdentifier("ZZAA");
        aerodrome.setCoordinateReference("local");
        aerodrome.setVerticalDatum("local datum");
        aerodrome.setLatitudeDeg(-38.4);
        aerodrome.setLongitudeDeg(122.8);
        aerodrome.setMagneticVariation(MAKE.createMagneticVariation());
        aerodrome.getMagneticVariation().setVariationDeg(0.0);
        aerodrome.getMagneticVariation().setDate("2026-01-01");
    }

    /** Makes a runway end with a solved aid of a family on the left, or on the sides that the family asks for. */
    static Sample runway(String rules, String family) {
        return runway(rules, family, Sample::unchanged);
    }

    /** Makes a runway end, lets a case prepare it, then solves the aid. */
    static Sample runway(String rules, String family, Consumer<Sample> prepare) {
        Sample sample = new Sample();
        sample.rules = rules;
        sample.addRunway();
        sample.addSurroundings();
        sample.aid.setFamilyKey(family);
        sample.aid.setSlopeDeg(3.0);
        sample.aid.setSide("t-form".equals(family) ? AidSide.BOTH : AidSide.LEFT);
        MeasuredBeam.of(sample.aid.getEquipment(), family);
        prepare.accept(sample);
        sample.solve();
        return sample;
    }

    /** Makes a helipad with a solved aid of a family. */
    static Sample helipad(String rules, String family, double slopeDeg) {
        return helipad(rules, family, slopeDeg, Sample::unchanged);
    }

    static Sample helipad(String rules, String family, double slopeDeg, Consumer<Sample> prepare) {
        Sample sample = new Sample();
        sample.rules = rules;
        sample.addHelipad();
        sample.addSurroundings();
        sample.aid.setFamilyKey(family);
        sample.aid.setSlopeDeg(slopeDeg);
        sample.aid.setSide(AidSide.LEFT);
        MeasuredBeam.of(sample.aid.getEquipment(), family);
        prepare.accept(sample);
        sample.solve();
        return sample;
    }

    private void addRunway() {
        Runway runway = MAKE.createRunway();
        runway.setDesignator("09/27");
        runway.setWidthM(45.0);
        runway.setLengthM(2400.0);
        runway.setCodeNumber(4);
        runway.setStripWidthM(280.0);
        runway.setStripLengthM(2520.0);
        runway.setObjectFreeWidthM(40.0);
        runway.setObjectFreeSource("a case");
        RunwayEnd end = MAKE.createRunwayEnd();
        end.setDesignator("09");
        end.setThreshold(place(0, 0, DATUM_M));
        end.setThresholdElevationM(DATUM_M);
        end.setTrueBearingDeg(90.0);
        end.setLandingDistanceM(2400.0);
        RunwayEnd other = MAKE.createRunwayEnd();
        other.setDesignator("27");
        other.setThreshold(place(2400, 0, DATUM_M));
        other.setThresholdElevationM(DATUM_M);
        runway.getEnds().add(end);
        runway.getEnds().add(other);
        aerodrome.getRunways().add(runway);
        end.getAids().add(aid);
        end.setHazardousTerrain(false);
        host = end;
        host.setApproachType(ApproachType.VISUAL);
        host.getRegularGroups().add(group("medium jets", 6.63, 1.85));
    }

    private void addHelipad() {
        Helipad pad = MAKE.createHelipad();
        pad.setName("H1");
        pad.setPlace(place(0, 0, DATUM_M));
        pad.setElevationM(DATUM_M);
        pad.setFloating(false);
        pad.setHoverHeightM(1.5);
        pad.setEyeAboveSkidsM(1.8);
        pad.setFatoLengthM(20.0);
        pad.setFatoWidthM(20.0);
        pad.setSafetyAreaWidthM(30.0);
        ApproachDirection direction = MAKE.createApproachDirection();
        direction.setDesignator("09");
        direction.setTrueBearingDeg(90.0);
        direction.getAids().add(aid);
        pad.getDirections().add(direction);
        aerodrome.getHelipads().add(pad);
        host = direction;
        host.setApproachType(ApproachType.VISUAL);
    }

    private void addSurroundings() {
        EquipmentType type = MAKE.createEquipmentType();
        type.setName("type one");
        type.setMinSettingDeg(1.0);
        type.setMaxSettingDeg(12.0);
        type.setHeightAboveGroundM(LENS_M);
        type.setBeamWidthDeg(16.0);
        type.setIntensityCd(60_000.0);
        type.setTransitionMinutes(2.5);
        type.setBrightnessSteps(5);
        type.setRedChromaticityY(0.310);
        type.setTiltCutOffDeg(0.4);
        type.setFlashRateHz(2.5);
        type.setFlashOnPercent(50.0);
        type.setModulationPercent(90.0);
        type.setLampsPerUnit(3);
        type.setDataSource("a case");
        type.setLampPowerW(100.0);
        aerodrome.getEquipmentTypes().add(type);
        aid.setEquipment(type);
        aid.setName("indicator");
        TaxiwayEdge edge = MAKE.createTaxiwayEdge();
        edge.setName("taxiway north");
        edge.getPoints().add(place(0, -120, DATUM_M));
        edge.getPoints().add(place(2400, -120, DATUM_M));
        aerodrome.getTaxiwayEdges().add(edge);
        Obstacle shed = obstacle("shed", -1500, 10, DATUM_M + 5);
        shed.setHorizontalAccuracyM(0.01);
        shed.setVerticalAccuracyM(0.01);
        aerodrome.getObstacleSurveys().add(survey());
        Circuit circuit = MAKE.createCircuit();
        circuit.setName("circuit one");
        circuit.setCurrentA(6.6);
        circuit.setCableLengthM(2_000.0);
        circuit.setCableResistanceOhmPerKm(3.0);
        circuit.setRegulatorRatingKva(10.0);
        circuit.setStandby(true);
        circuit.setSwitchOverS(10.0);
        circuit.getAids().add(aid);
        aerodrome.getCircuits().add(circuit);
    }

    /** Makes a survey that reaches beyond every surface: 15 060 m before the threshold are needed at most, and 3 700 m to a side. */
    private ObstacleSurvey survey() {
        ObstacleSurvey survey = MAKE.createObstacleSurvey();
        survey.setName("survey");
        survey.setDate("2026-01-01");
        survey.setSource("a case");
        survey.setReachM(20_000.0);
        survey.setHalfWidthM(5_000.0);
        survey.setHorizontalAccuracyM(0.5);
        survey.setVerticalAccuracyM(0.3);
        survey.getHosts().add(host);
        return survey;
    }

    /** Returns the obstacle survey. */
    ObstacleSurvey obstacleSurvey() {
        return aerodrome.getObstacleSurveys().get(0);
    }

    /** Makes the centre line level at the datum. */
    void levelCentreLine() {
        for (double chainage : new double[] {0, 2400}) {
            ProfilePoint point = MAKE.createProfilePoint();
            point.setChainageM(chainage);
            point.setElevationM(DATUM_M);
            runway().getCentreLine().add(point);
        }
    }

    /** Surveys level ground beside the runway, at the datum, from the threshold to its middle. */
    void levelGround() {
        for (double chainage : new double[] {0, 1200}) {
            ProfilePoint point = MAKE.createProfilePoint();
            point.setChainageM(chainage);
            point.setElevationM(DATUM_M);
            end().getSiteProfile().add(point);
        }
        end().setSiteProfileAccuracyM(0.02);
    }

    /** Returns the circuit that feeds the aid. */
    Circuit circuit() {
        return aerodrome.getCircuits().get(0);
    }

    /** Returns the equipment type of the aid. */
    EquipmentType equipment() {
        return aid.getEquipment();
    }

    /** Makes a place from the frame. */
    static Place place(double alongM, double rightM, double elevationM) {
        Place place = MAKE.createPlace();
        place.setEastM(alongM);
        place.setNorthM(-rightM);
        place.setElevationM(elevationM);
        return place;
    }

    /** Adds an aeroplane group; the caller puts it into regular use. */
    AeroplaneGroup group(String name, double eyeToWheelM, double eyeToAntennaM) {
        AeroplaneGroup group = MAKE.createAeroplaneGroup();
        group.setName(name);
        group.setEyeToWheelM(eyeToWheelM);
        group.setEyeToAntennaM(eyeToAntennaM);
        group.setMaxSlopeDeg(5.5);
        aerodrome.getAeroplaneGroups().add(group);
        return group;
    }

    /** Adds an obstacle with a survey accuracy of nothing. */
    Obstacle obstacle(String name, double alongM, double rightM, double topElevationM) {
        Obstacle obstacle = MAKE.createObstacle();
        obstacle.setName(name);
        obstacle.getPlaces().add(place(alongM, rightM, topElevationM));
        obstacle.setTopElevationM(topElevationM);
        obstacle.setHorizontalAccuracyM(1e-9);
        obstacle.setVerticalAccuracyM(1e-9);
        aerodrome.getObstacles().add(obstacle);
        return obstacle;
    }

    /** Adds an electronic glide path of 3 degrees with its antenna on the right. */
    GlidePathAid glidePath() {
        GlidePathAid path = MAKE.createGlidePathAid();
        path.setPathAngleDeg(3.0);
        path.setReferenceDatumHeightM(15.0);
        path.setAntennaAlongM(286.0);
        path.setAntennaRightM(120.0);
        host.setGlidePath(path);
        return path;
    }

    /** Puts the aerodrome on the ellipsoid, its threshold where the reference point is. */
    void onEarth() {
        Place threshold = end().getThreshold();
        List<Place> places = new ArrayList<>();
        aerodrome.eAllContents().forEachRemaining(element -> {
            if (element instanceof Place place && place != threshold) {
                places.add(place);
            }
        });
        List<FramePoint> points = places.stream().map(place -> new FramePoint(place.getEastM(), -place.getNorthM(),
                (place.getElevationM() == null ? DATUM_M : place.getElevationM()) - DATUM_M)).toList();
        aerodrome.setCoordinateReference("WGS84");
        threshold.setLatitudeDeg(aerodrome.getLatitudeDeg());
        threshold.setLongitudeDeg(aerodrome.getLongitudeDeg());
        SiteFrame frame = SiteFrame.of(host);
        for (int i = 0; i < places.size(); i++) {
            frame.fromFrame(points.get(i), places.get(i));
        }
    }

    /** Solves the aid and puts its units into the model, each with what a rule may ask. */
    private void solve() {
        aid.getEquipment().setFamilyKey(aid.getFamilyKey());
        aid.getUnits().clear();
        Siting siting = Families.site(aid.getFamilyKey(), AidRequests.of(aid), RuleSets.find(rules).orElseThrow());
        aid.getUnits().addAll(AidLayouts.toModel(siting, DATUM_M));
        aid.getUnits().forEach(unit -> unit.setFrangible(true));
        aid.getUnits().forEach(unit -> unit.setLampsOut(0));
        if (host instanceof RunwayEnd end) {
            end.setAimingPointDistanceM((double) Math.round(siting.distanceM()));
        }
        Ids.assign(project);
    }

    /** Leaves a base as it is. */
    void unchanged() {
        // The base itself is the case.
    }

    Project project() {
        return project;
    }

    Aerodrome aerodrome() {
        return aerodrome;
    }

    ApproachAid aid() {
        return aid;
    }

    ApproachHost host() {
        return host;
    }

    RunwayEnd end() {
        return (RunwayEnd) host;
    }

    Runway runway() {
        return aerodrome.getRunways().get(0);
    }

    Helipad pad() {
        return aerodrome.getHelipads().get(0);
    }

    LightUnit unit(int index) {
        return aid.getUnits().get(index);
    }

    /** Does something to every unit. */
    void units(Consumer<LightUnit> change) {
        aid.getUnits().forEach(change);
    }

    /** Lays an organisation's own rule set over that of the sample, from now on, with one value of its own. */
    void ownValue(String key, double value, String unit) {
        ownTable(key + "," + value + "," + unit + ",-,1,organisation,\n", "", "");
    }

    /** Lays an organisation's own rule set over that of the sample, with a table of its own where its file is named. */
    void ownTable(String valueRows, String fileName, String table) {
        try {
            Path folder = Files.createTempDirectory("rules");
            Path head = Files.writeString(folder.resolve("rule-set.properties"), String.join("\n", "key=our-own", "edition=1", "name=Own",
                    "title=Own rules", "note=a case", "over=" + rules, "document=a case", "person=J. Doe", "date=2026-01-01", ""));
            Path values = Files.writeString(folder.resolve("values.csv"), "key,value,unit,source,clause,provenance,note\n" + valueRows);
            if (!fileName.isEmpty()) {
                Files.writeString(folder.resolve(fileName), table).toFile().deleteOnExit();
            }
            List.of(folder, head, values).forEach(path -> path.toFile().deleteOnExit());
            rules = folder.toString();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Overrides a value of the rule set. */
    void override(String key, double value) {
        ValueOverride override = MAKE.createValueOverride();
        override.setValueKey(key);
        override.setValue(value);
        override.setReason("a case");
        override.setPerson("J. Doe");
        project.getOverrides().add(override);
    }

    /** Gives the project a file in an empty folder of its own, so that the block {@code points} can lie beside it. */
    void putInFolder() {
        try {
            Path folder = Files.createTempDirectory("sample");
            folder.toFile().deleteOnExit();
            folder.resolve("points." + SurveyPoints.EXTENSION).toFile().deleteOnExit();
            ProjectFile.settle(project, folder.resolve("sample.slopewright"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Moves every unit along the runway. */
    void moveAlong(double byM) {
        units(unit -> unit.setAlongM(unit.getAlongM() + byM));
    }

    /** Asks at another stage than that at which every rule asks. */
    void at(Stage other) {
        stage = other;
    }

    /** Returns what one rule says, under the rule set of the sample, at the stage at which every rule asks. */
    List<Outcome> outcomes(String rule) {
        project.setStage(stage);
        Ids.assign(project);
        return Checks.run(project, Optional.of(rules), candidate -> candidate.id().equals(rule)).outcomes();
    }

    /** Returns what all rules say. */
    CheckResult check() {
        Ids.assign(project);
        return Checks.run(project, Optional.of(rules));
    }
}
