package slopewright.evaluation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import slopewright.model.Aerodrome;
import slopewright.model.AeroplaneGroup;
import slopewright.model.AidSide;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachDirection;
import slopewright.model.ApproachHost;
import slopewright.model.ApproachType;
import slopewright.model.Helipad;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SurveyBlock;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;
import slopewright.model.util.Ids;
import slopewright.siting.site.SurveyPoints;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/**
 * An invented site on a local plane, landing due north from (0, 0) at 100 m: along is north, right is east, so that places need no
 * arithmetic. A visual approach to a runway of code 4, 45 m wide; or a helipad.
 */
public final class TrialSite {

    /** Elevation of threshold and helipad. */
    public static final double DATUM_M = 100;

    private static final SlopewrightFactory MAKE = SlopewrightFactory.eINSTANCE;

    private final Project project = MAKE.createProject();
    private final Aerodrome aerodrome = MAKE.createAerodrome();
    private final ApproachAid aid = MAKE.createApproachAid();
    private final ApproachHost host;

    private TrialSite(ApproachHost host) {
        this.host = host;
        project.setName("trial");
        project.setAerodrome(aerodrome);
        aerodrome.setCoordinateReference("local");
        host.getAids().add(aid);
        aid.setName("indicator");
        aid.setSide(AidSide.LEFT);
    }

    /** Makes a runway end with an aid that has no units yet: 3 degrees, 15 m over the threshold. */
    public static TrialSite runway(String family) {
        RunwayEnd end = MAKE.createRunwayEnd();
        end.setDesignator("36");
        end.setTrueBearingDeg(0.0);
        end.setThresholdElevationM(DATUM_M);
        end.setThreshold(place(0, 0, DATUM_M));
        end.setApproachType(ApproachType.VISUAL);
        end.setDesiredSlopeDeg(3.0);
        TrialSite site = new TrialSite(end);
        Runway runway = MAKE.createRunway();
        runway.setWidthM(45.0);
        runway.setCodeNumber(4);
        runway.setLengthM(2400.0);
        runway.getEnds().add(end);
        site.aerodrome.getRunways().add(runway);
        site.aid.setFamilyKey(family);
        site.aid.setTargetEyeHeightM(15.0);
        Ids.assign(site.project);
        return site;
    }

    /** Makes a helipad with an aid that has no units yet: hover 2.0 m, eye 1.8 m above the skids. */
    public static TrialSite helipad(String family, double slopeDeg) {
        ApproachDirection direction = MAKE.createApproachDirection();
        direction.setDesignator("36");
        direction.setTrueBearingDeg(0.0);
        TrialSite site = new TrialSite(direction);
        Helipad pad = MAKE.createHelipad();
        pad.setName("H");
        pad.setPlace(place(0, 0, DATUM_M));
        pad.setElevationM(DATUM_M);
        pad.setFloating(false);
        pad.setHoverHeightM(2.0);
        pad.setEyeAboveSkidsM(1.8);
        pad.setSafetyAreaWidthM(30.0);
        pad.getDirections().add(direction);
        site.aerodrome.getHelipads().add(pad);
        site.aid.setFamilyKey(family);
        site.aid.setSlopeDeg(slopeDeg);
        site.aid.setPortable(true);
        Ids.assign(site.project);
        return site;
    }

    private static Place place(double alongM, double rightM, double elevationM) {
        Place place = MAKE.createPlace();
        place.setNorthM(alongM);
        place.setEastM(rightM);
        place.setElevationM(elevationM);
        return place;
    }

    /** Gives the aid the units that a rule set lays out. */
    public TrialSite laidOut(String rules) {
        aid.getUnits().clear();
        aid.getUnits().addAll(AidLayouts.toModel(evaluation(rules).solved().orThrow(), DATUM_M));
        Ids.assign(project);
        return this;
    }

    /** Adds a point obstacle, its top in metres above the threshold, surveyed exactly. */
    public Obstacle mast(String name, double alongM, double rightM, double topM) {
        return obstacle(name, ObstacleKind.POINT, new double[] {alongM, rightM, topM});
    }

    /** Adds an obstacle of places with their tops, metres in the frame, surveyed exactly. */
    public Obstacle obstacle(String name, ObstacleKind kind, double[]... places) {
        Obstacle obstacle = MAKE.createObstacle();
        obstacle.setName(name);
        obstacle.setKind(kind);
        for (double[] at : places) {
            obstacle.getPlaces().add(place(at[0], at[1], DATUM_M + at[2]));
        }
        obstacle.setHorizontalAccuracyM(1e-9);
        obstacle.setVerticalAccuracyM(1e-9);
        aerodrome.getObstacles().add(obstacle);
        Ids.assign(project);
        return obstacle;
    }

    /** Adds an obstacle whose top nobody knows. */
    public Obstacle unknownTop(String name, double alongM) {
        Obstacle obstacle = mast(name, alongM, 0, 0);
        obstacle.getPlaces().get(0).setElevationM(null);
        return obstacle;
    }

    /** Saves the project and adds a block of points, metres in the frame. */
    public SurveyBlock block(Path folder, String name, double[]... points) {
        SurveyPoints all = new SurveyPoints(true, column(points, 0, 0), column(points, 1, 0), column(points, 2, DATUM_M), List.of());
        SurveyBlock block = MAKE.createSurveyBlock();
        block.setHorizontalAccuracyM(1e-9);
        block.setVerticalAccuracyM(1e-9);
        block.setName(name);
        block.setPath(name + ".swpoints");
        block.setSha256(SurveyPoints.sha256(all.bytes()));
        block.setPointCount(all.count());
        project.getSurveyBlocks().add(block);
        Ids.assign(project);
        try {
            Files.write(folder.resolve(block.getPath()), all.bytes());
            ProjectFile.save(project, folder.resolve("trial.slopewright"));
        } catch (IOException | ProjectFileException e) {
            throw new AssertionError(e);
        }
        return block;
    }

    private static double[] column(double[][] points, int index, double plus) {
        double[] column = new double[points.length];
        for (int i = 0; i < points.length; i++) {
            column[i] = points[i][index] + plus;
        }
        return column;
    }

    /** Puts an aeroplane group into regular use. */
    public AeroplaneGroup aeroplane(String name, double eyeToWheelM) {
        AeroplaneGroup group = MAKE.createAeroplaneGroup();
        group.setName(name);
        group.setEyeToWheelM(eyeToWheelM);
        aerodrome.getAeroplaneGroups().add(group);
        host.getRegularGroups().add(group);
        Ids.assign(project);
        return group;
    }

    /** Returns a rule set by name. */
    public static RuleSet rules(String name) {
        return RuleSets.find(name).orElseThrow();
    }

    /** Evaluates the aid. */
    public AidEvaluation evaluation(String rules) {
        return AidEvaluation.of(aid, rules(rules), new EvaluationCache());
    }

    /** Returns the project. */
    public Project project() {
        return project;
    }

    /** Returns the aerodrome. */
    public Aerodrome aerodrome() {
        return aerodrome;
    }

    /** Returns the runway end or approach direction. */
    public ApproachHost host() {
        return host;
    }

    /** Returns the aid. */
    public ApproachAid aid() {
        return aid;
    }
}
