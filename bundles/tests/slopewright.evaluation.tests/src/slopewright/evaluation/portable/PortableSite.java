package slopewright.evaluation.portable;

import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.geometry.FramePoint;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachDirection;
import slopewright.model.Circuit;
import slopewright.model.EquipmentType;
import slopewright.model.Helipad;
import slopewright.model.LightColour;
import slopewright.model.LightUnit;
import slopewright.model.MagneticVariation;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.ObstacleSurvey;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.Transition;
import slopewright.siting.site.SiteFrame;

/** An invented helipad at 51 N 1 W, 100 m up, surveyed all round, landing toward 270 degrees, with a portable tri-colour unit on 6. */
final class PortableSite {

    private static final SlopewrightFactory MAKE = SlopewrightFactory.eINSTANCE;

    final Project project = MAKE.createProject();
    final Aerodrome aerodrome = MAKE.createAerodrome();
    final Helipad helipad = MAKE.createHelipad();
    final ApproachDirection direction = MAKE.createApproachDirection();
    final ApproachAid aid = MAKE.createApproachAid();
    final EquipmentType type = MAKE.createEquipmentType();
    final ObstacleSurvey survey = MAKE.createObstacleSurvey();

    PortableSite() {
        project.setAerodrome(aerodrome);
        aerodrome.setCoordinateReference("WGS84");
        aerodrome.getHelipads().add(helipad);
        aerodrome.getEquipmentTypes().add(type);
        helipad.setPlace(place(51, -1));
        helipad.setElevationM(100.0);
        helipad.setFloating(false);
        helipad.setHoverHeightM(2.0);
        helipad.setEyeAboveSkidsM(1.8);
        helipad.setSafetyAreaWidthM(30.0);
        helipad.getDirections().add(direction);
        direction.setDesignator("27");
        direction.setTrueBearingDeg(270.0);
        direction.getAids().add(aid);
        survey.setAllRound(true);
        survey.setReachM(20_000.0);
        survey.getHosts().add(direction);
        aerodrome.getObstacleSurveys().add(survey);
        aid.setName("unit in hand");
        aid.setFamilyKey("tri-colour");
        aid.setSlopeDeg(6.0);
        aid.setPortable(true);
        aid.setEquipment(type);
    }

    private static Place place(double latitudeDeg, double longitudeDeg) {
        Place place = MAKE.createPlace();
        place.setLatitudeDeg(latitudeDeg);
        place.setLongitudeDeg(longitudeDeg);
        return place;
    }

    /** Enters sectors: red from the dark at an offset, green half a degree to each side, amber above. */
    void enterSectors(double redFromDeg) {
        enterSectors(type, redFromDeg);
    }

    /** Makes an equipment type with such sectors. */
    static EquipmentType equipment(Aerodrome aerodrome, double redFromDeg) {
        EquipmentType type = MAKE.createEquipmentType();
        aerodrome.getEquipmentTypes().add(type);
        enterSectors(type, redFromDeg);
        return type;
    }

    private static void enterSectors(EquipmentType type, double redFromDeg) {
        sector(type, redFromDeg, LightColour.NONE, LightColour.RED);
        sector(type, -0.5, LightColour.RED, LightColour.GREEN);
        sector(type, 0.5, LightColour.GREEN, LightColour.AMBER);
    }

    private static void sector(EquipmentType type, double offsetDeg, LightColour below, LightColour above) {
        Transition sector = MAKE.createTransition();
        sector.setOffsetDeg(offsetDeg);
        sector.setBelowColour(below);
        sector.setAboveColour(above);
        type.getSectors().add(sector);
    }

    Obstacle mast(String name, FramePoint top) {
        Obstacle mast = MAKE.createObstacle();
        mast.setName(name);
        mast.setKind(ObstacleKind.POINT);
        Place place = MAKE.createPlace();
        SiteFrame.of(direction).fromFrame(top, place);
        mast.getPlaces().add(place);
        mast.setHorizontalAccuracyM(1e-9);
        mast.setVerticalAccuracyM(1e-9);
        aerodrome.getObstacles().add(mast);
        return mast;
    }

    void variation(double deg, Double annual, String date) {
        MagneticVariation variation = MAKE.createMagneticVariation();
        variation.setVariationDeg(deg);
        variation.setAnnualChangeDeg(annual);
        variation.setDate(date);
        variation.setSource("aeronautical chart, invented");
        aerodrome.setMagneticVariation(variation);
    }

    /** Makes a unit with the sectors that were entered, its lens level with the pad. */
    LightUnit unit(double alongM, double rightM) {
        LightUnit unit = MAKE.createLightUnit();
        unit.setLabel("1");
        unit.setBar(1);
        unit.setAlongM(alongM);
        unit.setRightM(rightM);
        unit.setLensElevationM(100.0);
        unit.setSettingDeg(6.0);
        unit.setAzimuthOffsetDeg(0.0);
        unit.getTransitions().addAll(EcoreUtil.copyAll(type.getSectors()));
        return unit;
    }

    Circuit battery(Double capacityAh, Double currentA) {
        Circuit circuit = MAKE.createCircuit();
        circuit.setCapacityAh(capacityAh);
        circuit.setCurrentA(currentA);
        circuit.getAids().add(aid);
        aerodrome.getCircuits().add(circuit);
        return circuit;
    }
}
