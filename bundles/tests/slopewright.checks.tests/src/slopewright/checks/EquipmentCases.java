package slopewright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Supplier;

import slopewright.model.BrightnessLevel;
import slopewright.model.EquipmentType;
import slopewright.model.HandOrder;
import slopewright.model.LightColour;
import slopewright.model.LightState;
import slopewright.model.PlateSense;
import slopewright.model.PlateZero;
import slopewright.model.PrintedDescent;
import slopewright.model.SightHair;
import slopewright.model.SlopewrightFactory;
import slopewright.model.Transition;

/**
 * Cases of the rules about equipment: the limit, and one printed digit to either side. Annex 14 Vol I, 9th ed.: red y at most 0.320
 * (5.3.5.31), azimuth of the intensities to 8 degrees (Fig A2-23). Vol II, 4th ed., 5.3.6.8-21: at least 2 Hz, on:off 1:1, at least 80 %
 * modulation, off beyond 0.5 degrees; azimuth to 15 degrees (Fig 5-11). MIL-HDBK-1023/4, Table A-5: at most one lamp out a box.
 */
final class EquipmentCases {
    private EquipmentCases() {
    }

    static List<RuleCase> all() {
        List<RuleCase> cases = new ArrayList<>();
        family(cases);
        number(cases, "EQUIP-03", "red y", Bases::rowOfToday, EquipmentType::setRedChromaticityY, List.of(0.319, 0.320), List.of(0.321));
        number(cases, "EQUIP-05", "tilt", Bases::padSectorOfToday, EquipmentType::setTiltCutOffDeg, List.of(0.4, 0.5), List.of(0.6));
        number(cases, "EQUIP-06", "Hz", Bases::padSectorOfToday, EquipmentType::setFlashRateHz, List.of(2.0, 3.0), List.of(1.0, 1.9));
        number(cases, "EQUIP-07", "% on", Bases::padSectorOfToday, EquipmentType::setFlashOnPercent, List.of(50.0), List.of(49.0, 51.0));
        number(cases, "EQUIP-08", "% deep", Bases::padSectorOfToday, EquipmentType::setModulationPercent, List.of(80.0, 81.0),
                List.of(79.0));
        number(cases, "EQUIP-09", "' wide", Bases::rowOfToday, EquipmentType::setTransitionMinutes, List.of(2.0, 3.0), List.of(4.0, 3.1));
        number(cases, "EQUIP-09", "' wide, T form", Bases::tForm, EquipmentType::setTransitionMinutes, List.of(14.0, 15.0), List.of(16.0));
        number(cases, "EQUIP-10", "degrees wide, row", Bases::rowOfToday, EquipmentType::setBeamWidthDeg, List.of(16.0, 18.0),
                List.of(14.0, 15.9));
        number(cases, "EQUIP-10", "degrees wide, sector unit", Bases::padSectorOfToday, EquipmentType::setBeamWidthDeg,
                List.of(30.0, 32.0), List.of(28.0));
        cases.add(RuleCase.of("EQUIP-03", Result.NOT_APPLICABLE, "a rule set that prints none", Bases::usRow, Sample::unchanged));
        cases.add(RuleCase.of("EQUIP-06", Result.NOT_APPLICABLE, "a row does not flash", Bases::rowOfToday, Sample::unchanged));
        // AC 150/5345-28H, 3.3.8: night steps of about 5 and 20 %.
        number(cases, "EQUIP-12", "% at night", Bases::usRow, EquipmentType::setNightStepPercent, List.of(5.0, 10.0, 20.0),
                List.of(4.0, 21.0));
        cases.add(RuleCase.of("EQUIP-12", Result.NOT_APPLICABLE, "a rule set that prints none", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("EQUIP-13", Result.PASS, "a sheet", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("EQUIP-13", Result.NOT_EVALUATED, "no sheet", Bases::row, sample -> sample.equipment().setDataSource(" ")));
        controls(cases);
        printed(cases);
        knob(cases);
        brightness(cases);
        beam(cases);
        lamps(cases);
        return cases;
    }

    private static void number(List<RuleCase> cases, String rule, String what, Supplier<Sample> base,
            BiConsumer<EquipmentType, Double> set, List<Double> good, List<Double> bad) {
        good.forEach(value -> cases.add(RuleCase.of(rule, Result.PASS, value + " " + what, base,
                sample -> set.accept(sample.equipment(), value))));
        bad.forEach(value -> cases.add(RuleCase.of(rule, Result.FAIL, value + " " + what, base,
                sample -> set.accept(sample.equipment(), value))));
        cases.add(RuleCase.of(rule, Result.NOT_EVALUATED, "no " + what, base, sample -> set.accept(sample.equipment(), null)));
        cases.add(RuleCase.of(rule, Result.NOT_EVALUATED, "no equipment for " + what, base, sample -> sample.aid().setEquipment(null)));
    }

    private static void family(List<RuleCase> cases) {
        cases.add(RuleCase.of("EQUIP-01", Result.PASS, "a row of row units", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("EQUIP-01", Result.FAIL, "a row of T units", Bases::row,
                sample -> sample.equipment().setFamilyKey("t-form")));
        cases.add(RuleCase.of("EQUIP-01", Result.FAIL, "a family that nobody knows", Bases::row,
                sample -> sample.equipment().setFamilyKey("lantern-stack")));
        cases.add(RuleCase.of("EQUIP-01", Result.NOT_EVALUATED, "no family", Bases::row, sample -> sample.equipment().setFamilyKey(null)));
        cases.add(RuleCase.of("EQUIP-02", Result.NOT_APPLICABLE, "no sectors entered", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("EQUIP-02", Result.PASS, "the same sectors", Bases::row, Bases::takeOver));
        cases.add(RuleCase.of("EQUIP-02", Result.FAIL, "white below red", Bases::row, sample -> {
            Bases.takeOver(sample);
            Transition edge = sample.equipment().getSectors().get(0);
            edge.setBelowColour(LightColour.WHITE);
            edge.setAboveColour(LightColour.RED);
        }));
        cases.add(RuleCase.of("EQUIP-02", Result.FAIL, "one sector more", Bases::row, sample -> {
            Bases.takeOver(sample);
            sample.equipment().getSectors().add(0, dark());
        }));
        cases.add(RuleCase.of("EQUIP-02", Result.NOT_EVALUATED, "no angle", Bases::row, sample -> {
            Bases.takeOver(sample);
            sample.equipment().getSectors().get(0).setOffsetDeg(null);
        }));
        cases.add(RuleCase.of("EQUIP-02", Result.NOT_APPLICABLE, "sectors by make", Bases::padTriColour, Sample::unchanged));
    }

    private static void controls(List<RuleCase> cases) {
        cases.add(RuleCase.of("EQUIP-14", Result.PASS, "all described", Bases::padTriColour, Sample::unchanged));
        cases.add(RuleCase.of("EQUIP-14", Result.NOT_APPLICABLE, "a fixed row", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("EQUIP-14", Result.NOT_EVALUATED, "no equipment", Bases::padTriColour,
                sample -> sample.aid().setEquipment(null)));
        List<Consumer<EquipmentType>> gaps = List.of(type -> type.setPlateZero(PlateZero.NOT_STATED),
                type -> type.setPlateSense(PlateSense.NOT_STATED), type -> type.setPlateStepDeg(null),
                type -> type.setSlopeScaleStepDeg(null), type -> type.setBubbleAccuracyMinutes(null),
                type -> type.setLowerHair(SightHair.NOT_STATED), type -> type.setUpperHair(SightHair.NOT_STATED),
                type -> type.setHandOrder(HandOrder.NOT_STATED));
        gaps.forEach(gap -> cases.add(RuleCase.of("EQUIP-14", Result.NOT_EVALUATED, "gap " + gaps.indexOf(gap), Bases::padTriColour,
                sample -> gap.accept(sample.equipment()))));
    }

    private static RuleCase plate(Result result, String what, Double speedKt, Double descentFtmin, Double slopeDeg) {
        return RuleCase.of("EQUIP-15", result, what, Bases::padTriColour, sample -> {
            PrintedDescent printed = SlopewrightFactory.eINSTANCE.createPrintedDescent();
            printed.setSpeedKt(speedKt);
            printed.setDescentFtmin(descentFtmin);
            printed.setSlopeDeg(slopeDeg);
            sample.equipment().getPrintedDescents().add(printed);
        });
    }

    /** 60 kt are 6076.1 ft/min: 1000 ft/min make atan(0.16458) = 9.346 degrees and asin(0.16458) = 9.473. */
    private static void printed(List<RuleCase> cases) {
        cases.add(RuleCase.of("EQUIP-15", Result.NOT_APPLICABLE, "none", Bases::padTriColour, Sample::unchanged));
        cases.add(plate(Result.PASS, "9.5 degrees", 60.0, 1000.0, 9.5));
        cases.add(plate(Result.PASS, "0.249 less than the tangent", 60.0, 1000.0, 9.097));
        cases.add(plate(Result.FAIL, "0.251 less than the tangent", 60.0, 1000.0, 9.095));
        cases.add(plate(Result.PASS, "0.249 more than the sine", 60.0, 1000.0, 9.722));
        cases.add(plate(Result.FAIL, "0.252 more than the sine", 60.0, 1000.0, 9.725));
        cases.add(plate(Result.NOT_EVALUATED, "no slope", 60.0, 1000.0, null));
    }

    private static RuleCase steps(Result result, String what, Double... percents) {
        return RuleCase.of("EQUIP-16", result, what, Bases::padTriColour, sample -> {
            sample.equipment().setBrightnessSteps(3);
            for (Double percent : percents) {
                BrightnessLevel level = SlopewrightFactory.eINSTANCE.createBrightnessLevel();
                level.setPowerPercent(percent);
                sample.equipment().getBrightnessLevels().add(level);
            }
        });
    }

    private static void knob(List<RuleCase> cases) {
        cases.add(steps(Result.NOT_APPLICABLE, "none"));
        cases.add(steps(Result.PASS, "three that rise", 10.0, 30.0, 100.0));
        cases.add(steps(Result.FAIL, "two of three", 10.0, 100.0));
        cases.add(steps(Result.FAIL, "two alike", 30.0, 30.0, 100.0));
        cases.add(steps(Result.NOT_EVALUATED, "one unknown", 10.0, null, 100.0));
    }

    private static Transition dark() {
        Transition edge = SlopewrightFactory.eINSTANCE.createTransition();
        edge.setOffsetDeg(-3.0);
        edge.setWidthMinutes(3.0);
        edge.setBelowColour(LightColour.NONE);
        edge.setBelowState(LightState.OFF);
        edge.setAboveColour(LightColour.RED);
        return edge;
    }

    private static void brightness(List<RuleCase> cases) {
        cases.add(RuleCase.of("EQUIP-04", Result.PASS, "two steps", Bases::row, sample -> sample.equipment().setBrightnessSteps(2)));
        cases.add(RuleCase.of("EQUIP-04", Result.FAIL, "one step", Bases::row, sample -> sample.equipment().setBrightnessSteps(1)));
        cases.add(RuleCase.of("EQUIP-04", Result.PASS, "five steps of the circuit", Bases::row, sample -> {
            sample.equipment().setBrightnessSteps(null);
            sample.circuit().setBrightnessSteps(5);
        }));
        cases.add(RuleCase.of("EQUIP-04", Result.NOT_EVALUATED, "no steps known", Bases::row,
                sample -> sample.equipment().setBrightnessSteps(null)));
    }

    private static void beam(List<RuleCase> cases) {
        cases.add(RuleCase.of("EQUIP-11", Result.NOT_APPLICABLE, "no limits", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("EQUIP-11", Result.PASS, "8 of 8 degrees", Bases::row, sample -> sample.aid().setBeamLeftLimitDeg(-8.0)));
        cases.add(RuleCase.of("EQUIP-11", Result.FAIL, "8.1 of 8 degrees", Bases::row,
                sample -> sample.aid().setBeamRightLimitDeg(8.1)));
        cases.add(RuleCase.of("EQUIP-11", Result.FAIL, "9 of 8 degrees", Bases::row, sample -> sample.aid().setBeamRightLimitDeg(9.0)));
        cases.add(RuleCase.of("EQUIP-11", Result.NOT_EVALUATED, "no beam width", Bases::row, sample -> {
            sample.aid().setBeamLeftLimitDeg(-8.0);
            sample.equipment().setBeamWidthDeg(null);
        }));
    }

    private static void lamps(List<RuleCase> cases) {
        cases.add(RuleCase.of("UNIT-06", Result.PASS, "all burn", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("UNIT-06", Result.NOT_EVALUATED, "one out, no limit in the rule set", Bases::row,
                sample -> sample.unit(0).setLampsOut(1)));
        cases.add(RuleCase.of("UNIT-06", Result.FAIL, "all out", Bases::row, sample -> sample.unit(0).setLampsOut(3)));
        cases.add(RuleCase.of("UNIT-06", Result.FAIL, "more out than there are", Bases::row, sample -> sample.unit(0).setLampsOut(4)));
        cases.add(RuleCase.of("UNIT-06", Result.FAIL, "less than none out", Bases::row, sample -> sample.unit(0).setLampsOut(-1)));
        cases.add(RuleCase.of("UNIT-06", Result.PASS, "US, one of three out", Bases::usRow, sample -> sample.unit(0).setLampsOut(1)));
        cases.add(RuleCase.of("UNIT-06", Result.FAIL, "US, two of three out", Bases::usRow, sample -> sample.unit(0).setLampsOut(2)));
        cases.add(RuleCase.of("UNIT-06", Result.FAIL, "US, one of one out", Bases::usRow, sample -> {
            sample.equipment().setLampsPerUnit(1);
            sample.unit(0).setLampsOut(1);
        }));
        cases.add(RuleCase.of("UNIT-06", Result.NOT_EVALUATED, "nobody looked", Bases::row, sample -> sample.unit(0).setLampsOut(null)));
        cases.add(RuleCase.of("UNIT-06", Result.NOT_EVALUATED, "lamps not known", Bases::row,
                sample -> sample.equipment().setLampsPerUnit(null)));
        cases.add(RuleCase.of("UNIT-06", Result.NOT_APPLICABLE, "panels", Bases::panels, Sample::unchanged));
        cases.add(RuleCase.of("UNIT-06", Result.NOT_APPLICABLE, "panels, no lamp out", Bases::panels,
                sample -> sample.unit(0).setLampsOut(0)));
        cases.add(RuleCase.of("UNIT-06", Result.FAIL, "panels, a lamp out", Bases::panels, sample -> sample.unit(0).setLampsOut(1)));
    }
}
