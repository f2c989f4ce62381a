package slopewright.checks;

import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.model.AidSide;
import slopewright.model.ApproachType;
import slopewright.model.EquipmentType;
import slopewright.model.HandOrder;
import slopewright.model.LightColour;
import slopewright.model.LightState;
import slopewright.model.LightUnit;
import slopewright.model.MeasuredUnit;
import slopewright.model.PlateSense;
import slopewright.model.PlateZero;
import slopewright.model.SettingsForm;
import slopewright.model.SightHair;
import slopewright.model.SlopewrightFactory;
import slopewright.model.Transition;

/** The compliant layouts that cases change. */
final class Bases {

    private Bases() {
    }

    static Sample row() {
        return Sample.runway("icao:5th", "four-unit-row");
    }

    static Sample rowOfToday() {
        return Sample.runway("icao:9th", "four-unit-row");
    }

    static Sample tFormOfToday() {
        return Sample.runway("icao:9th", "t-form");
    }

    static Sample padSectorOfToday() {
        return Sample.helipad("icao:9th", "heliport-sector", 6);
    }

    /** A US row beside a level centre line; its lenses stand 0.2 m above it, where the plane may lie 0.3 m off (UFC 3-535-01, 12-3.2). */
    static Sample usRowBesideCentreLine() {
        return Sample.runway("faa", "four-unit-row", sample -> {
            sample.aid().setHeightGroup(3);
            sample.equipment().setHeightAboveGroundM(0.2);
            sample.levelCentreLine();
        });
    }

    static Sample rowBothSides() {
        return Sample.runway("icao:5th", "four-unit-row", sample -> sample.aid().setSide(AidSide.BOTH));
    }

    static Sample rowCodeTwo() {
        return Sample.runway("icao:5th", "four-unit-row", sample -> {
            sample.runway().setCodeNumber(2);
            sample.runway().setWidthM(30.0);
        });
    }

    static Sample pairCodeTwo() {
        return Sample.runway("icao:5th", "two-unit-row", sample -> sample.runway().setCodeNumber(2));
    }

    static Sample usRow() {
        return Sample.runway("faa", "four-unit-row", sample -> sample.aid().setHeightGroup(3));
    }

    static Sample rowBesideGlidePath() {
        return Sample.runway("icao:5th", "four-unit-row", sample -> {
            sample.glidePath();
            sample.host().setApproachType(ApproachType.PRECISION_CAT_I);
            sample.aid().setSettings(SettingsForm.GLIDE_PATH);
        });
    }

    static Sample usRowBesideGlidePath() {
        return Sample.runway("faa", "four-unit-row", sample -> {
            sample.glidePath();
            sample.levelCentreLine();
            sample.host().setApproachType(ApproachType.PRECISION_CAT_I);
            sample.aid().setHeightGroup(3);
        });
    }

    static Sample usRowGroupFour() {
        return Sample.runway("faa", "four-unit-row", sample -> {
            sample.glidePath();
            sample.levelCentreLine();
            sample.host().setApproachType(ApproachType.PRECISION_CAT_I);
            sample.aid().setHeightGroup(4);
            sample.aid().setSettings(SettingsForm.GLIDE_PATH);
        });
    }

    static Sample tForm() {
        return Sample.runway("icao:5th", "t-form");
    }

    static Sample twoBar() {
        return Sample.runway("faa", "two-bar", sample -> sample.aid().setTargetEyeHeightM(10.0));
    }

    static Sample threeBar() {
        return Sample.runway("faa", "three-bar", sample -> sample.aid().setTargetEyeHeightM(10.0));
    }

    static Sample triColour() {
        return Sample.runway("faa", "tri-colour", sample -> sample.aid().setHeightGroup(1));
    }

    static Sample panels() {
        return Sample.runway("faa", "alignment-panels", sample -> sample.aid().setHeightGroup(1));
    }

    static Sample padRow() {
        return Sample.helipad("icao:5th", "four-unit-row", 4);
    }

    static Sample padSector() {
        return Sample.helipad("icao:5th", "heliport-sector", 6);
    }

    static Sample padPair() {
        return Sample.helipad("faa", "heliport-pair", 6);
    }

    /** A portable unit at a helipad whose red sector has a lower edge one degree below the slope. */
    static Sample padTriColour() {
        Sample sample = Sample.helipad("faa", "tri-colour", 6);
        sample.aid().setPortable(true);
        EquipmentType type = sample.aid().getEquipment();
        type.setMinVoltageV(22.0);
        type.setMaxVoltageV(28.0);
        type.setPlateZero(PlateZero.NORTH);
        type.setPlateSense(PlateSense.CLOCKWISE);
        type.setPlateStepDeg(1.0);
        type.setSlopeScaleStepDeg(0.25);
        type.setBubbleAccuracyMinutes(5.0);
        type.setLowerHair(SightHair.RED_LOWER_EDGE);
        type.setUpperHair(SightHair.ON_SLOPE_LOWER_EDGE);
        type.setHandOrder(HandOrder.LEVEL_TURN_SET);
        LightUnit unit = sample.unit(0);
        Transition lower = SlopewrightFactory.eINSTANCE.createTransition();
        lower.setOffsetDeg(-3.0);
        lower.setWidthMinutes(3.0);
        lower.setBelowColour(LightColour.NONE);
        lower.setBelowState(LightState.OFF);
        lower.setAboveColour(LightColour.RED);
        lower.setAboveState(LightState.STEADY);
        unit.getTransitions().add(0, lower);
        takeOver(sample);
        return sample;
    }

    /** Makes the sectors of the first unit those of the equipment type. */
    static void takeOver(Sample sample) {
        EquipmentType type = sample.aid().getEquipment();
        type.getSectors().clear();
        type.getSectors().addAll(EcoreUtil.copyAll(sample.unit(0).getTransitions()));
        type.getSectors().forEach(edge -> edge.setId(null));
    }

    /** Gives a unit a measured angle that is off its setting. */
    static void measure(LightUnit unit, double offDeg) {
        MeasuredUnit measured = SlopewrightFactory.eINSTANCE.createMeasuredUnit();
        measured.setSettingDeg(unit.getSettingDeg() + offDeg);
        measured.setPerson("J. Doe");
        measured.setDate("2024-06-01");
        unit.setMeasured(measured);
    }

    /** Measures every unit of a left row at its angle, off its place along the runway, outward from it, and in level. */
    static void build(Sample sample, double offAlongM, double offOutwardM, double offLevelM) {
        for (LightUnit unit : sample.aid().getUnits()) {
            measure(unit, 0);
            unit.getMeasured().setAlongM(unit.getAlongM() + offAlongM);
            unit.getMeasured().setRightM(unit.getRightM() - offOutwardM);
            unit.getMeasured().setLensElevationM(unit.getLensElevationM() + offLevelM);
        }
    }
}
