package slopewright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

import slopewright.model.ApproachType;
import slopewright.model.Circuit;
import slopewright.model.SlopewrightFactory;

/**
 * Cases of the rules about circuits. Annex 14 Vol I, Table 8-1: 15 s for non-precision and category I, 1 s where the approach is over
 * hazardous or steep terrain. The base circuit carries 4 units of 3 lamps of 100 W and 2 km of 3 ohm/km at 6.6 A: 1 200 W + 6.6 x 6.6 x
 * 6 W = 1 461.36 W.
 */
final class CircuitCases {
    private CircuitCases() {
    }

    static List<RuleCase> all() {
        List<RuleCase> cases = new ArrayList<>();
        cases.add(RuleCase.of("CIRC-01", Result.PASS, "one circuit", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("CIRC-01", Result.FAIL, "two circuits", Bases::row, sample -> {
            Circuit second = SlopewrightFactory.eINSTANCE.createCircuit();
            second.setName("circuit two");
            second.getAids().add(sample.aid());
            sample.aerodrome().getCircuits().add(second);
        }));
        cases.add(RuleCase.of("CIRC-01", Result.NOT_EVALUATED, "no circuit", Bases::row, sample -> sample.circuit().getAids().clear()));
        cases.add(RuleCase.of("CIRC-01", Result.NOT_APPLICABLE, "panels", Bases::panels, Sample::unchanged));
        standby(cases);
        load(cases);
        return cases;
    }

    private static Supplier<Sample> approach(ApproachType type) {
        return () -> Sample.runway("icao:9th", "four-unit-row", sample -> sample.end().setApproachType(type));
    }

    private static void standby(List<RuleCase> cases) {
        for (ApproachType type : List.of(ApproachType.NON_PRECISION, ApproachType.PRECISION_CAT_I)) {
            seconds(cases, type, 15, false, Result.PASS);
            seconds(cases, type, 16, false, Result.FAIL);
            seconds(cases, type, 1, true, Result.PASS);
            seconds(cases, type, 2, true, Result.FAIL);
        }
        for (ApproachType type : List.of(ApproachType.VISUAL, ApproachType.PRECISION_CAT_II_III)) {
            seconds(cases, type, 60, true, Result.NOT_APPLICABLE);
        }
        Supplier<Sample> base = approach(ApproachType.NON_PRECISION);
        cases.add(RuleCase.of("CIRC-02", Result.FAIL, "no standby", base, sample -> sample.circuit().setStandby(false)));
        cases.add(RuleCase.of("CIRC-02", Result.NOT_EVALUATED, "standby not known", base, sample -> sample.circuit().setStandby(null)));
        cases.add(RuleCase.of("CIRC-02", Result.NOT_EVALUATED, "time not known", base, sample -> sample.circuit().setSwitchOverS(null)));
        cases.add(RuleCase.of("CIRC-02", Result.NOT_EVALUATED, "terrain not known", base,
                sample -> sample.end().setHazardousTerrain(null)));
        cases.add(RuleCase.of("CIRC-02", Result.NOT_EVALUATED, "approach not known", approach(ApproachType.NOT_STATED), Sample::unchanged));
        cases.add(RuleCase.of("CIRC-02", Result.NOT_APPLICABLE, "a rule set that prints none", Bases::usRow, Sample::unchanged));
        cases.add(RuleCase.of("CIRC-02", Result.NOT_APPLICABLE, "helipad", Bases::padSector, Sample::unchanged));
    }

    private static void seconds(List<RuleCase> cases, ApproachType type, double seconds, boolean overTerrain, Result expected) {
        cases.add(RuleCase.of("CIRC-02", expected, type + " in " + seconds + " s" + (overTerrain ? " over terrain" : ""), approach(type),
                sample -> {
                    sample.circuit().setSwitchOverS(seconds);
                    sample.end().setHazardousTerrain(overTerrain);
                }));
    }

    private static void load(List<RuleCase> cases) {
        cases.add(RuleCase.of("CIRC-03", Result.PASS, "1.47 kVA", Bases::row, sample -> sample.circuit().setRegulatorRatingKva(1.47)));
        cases.add(RuleCase.of("CIRC-03", Result.FAIL, "1.46 kVA", Bases::row, sample -> sample.circuit().setRegulatorRatingKva(1.46)));
        cases.add(RuleCase.of("CIRC-03", Result.NOT_EVALUATED, "no rating", Bases::row,
                sample -> sample.circuit().setRegulatorRatingKva(null)));
        cases.add(RuleCase.of("CIRC-03", Result.NOT_EVALUATED, "no lamp power", Bases::row,
                sample -> sample.equipment().setLampPowerW(null)));
        cases.add(RuleCase.of("CIRC-03", Result.NOT_EVALUATED, "no cable", Bases::row, sample -> sample.circuit().setCableLengthM(null)));
        cases.add(RuleCase.of("CIRC-03", Result.NOT_APPLICABLE, "nothing on it", Bases::row,
                sample -> sample.circuit().getAids().clear()));
        // A battery: one unit of three lamps of 100 W takes 300 W / 28 V = 10.71 A at the least.
        cases.add(RuleCase.of("CIRC-03", Result.PASS, "battery, 10.8 A", Bases::padTriColour, sample -> battery(sample, 10.8)));
        cases.add(RuleCase.of("CIRC-03", Result.FAIL, "battery, 10.7 A", Bases::padTriColour, sample -> battery(sample, 10.7)));
        cases.add(RuleCase.of("CIRC-03", Result.NOT_EVALUATED, "battery, no current", Bases::padTriColour,
                sample -> battery(sample, null)));
    }

    private static void battery(Sample sample, Double currentA) {
        sample.circuit().setRegulatorRatingKva(null);
        sample.circuit().setCapacityAh(100.0);
        sample.circuit().setCurrentA(currentA);
    }
}
