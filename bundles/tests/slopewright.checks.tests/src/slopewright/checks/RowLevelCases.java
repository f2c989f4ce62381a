package slopewright.checks;

import java.util.ArrayList;
import java.util.List;

/**
 * Cases of the levels of a row. Printed (Annex 14 Vol I, Fig 5-19 e): at most 5 cm between units, or one even gradient of at most 1.25 %;
 * US (UFC 3-535-01 12-3.2): within 1 inch of one horizontal plane. The units of the base stand 9 m apart, 27 m over all.
 */
final class RowLevelCases {

    private RowLevelCases() {
    }

    static List<RuleCase> all() {
        List<RuleCase> cases = new ArrayList<>();
        betweenTwo(cases);
        even(cases);
        gradient(cases);
        onePlane(cases);
        return cases;
    }

    /** Puts the lenses at heights above 100 m, from the runway outward. */
    private static void heights(Sample sample, double... aboveM) {
        for (int i = 0; i < aboveM.length; i++) {
            sample.unit(i).setLensElevationM(100 + aboveM[i]);
        }
    }

    private static void surveyed(Sample sample, Double accuracyM, double... aboveM) {
        sample.aid().setLevelAccuracyM(accuracyM);
        heights(sample, aboveM);
    }

    private static void betweenTwo(List<RuleCase> cases) {
        cases.add(RuleCase.of("ROW-11", Result.PASS, "level", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("ROW-11", Result.PASS, "4 cm", Bases::row, sample -> heights(sample, 0, 0.04, 0, 0)));
        cases.add(RuleCase.of("ROW-11", Result.PASS, "5 cm", Bases::row, sample -> heights(sample, 0, 0.05, 0, 0)));
        cases.add(RuleCase.of("ROW-11", Result.NOT_EVALUATED, "6 cm, accuracy not entered", Bases::row,
                sample -> heights(sample, 0, 0.06, 0, 0)));
        cases.add(RuleCase.of("ROW-11", Result.FAIL, "6 cm, levels to 5 mm", Bases::row,
                sample -> surveyed(sample, 0.005, 0, 0.06, 0, 0)));
        // Each stands within 3 cm of the level line between the others, the two of them 6 cm apart.
        cases.add(RuleCase.of("ROW-11", Result.FAIL, "3 cm up and 3 cm down", Bases::row,
                sample -> surveyed(sample, 0.005, 0, 0.03, -0.03, 0)));
        cases.add(RuleCase.of("ROW-11", Result.PASS, "the other side stands 1 m higher", Bases::rowBothSides,
                sample -> sample.units(unit -> unit.setLensElevationM(unit.getRightM() < 0 ? 100.0 : 101.0))));
        cases.add(RuleCase.of("ROW-11", Result.NOT_EVALUATED, "one level missing", Bases::row,
                sample -> sample.unit(1).setLensElevationM(null)));
        cases.add(RuleCase.of("ROW-11", Result.PASS, "two units, 7 cm on 6 m", Bases::pairCodeTwo, sample -> heights(sample, 0, 0.07)));
    }

    private static void even(List<RuleCase> cases) {
        cases.add(RuleCase.of("ROW-11", Result.PASS, "11 cm each, levels to 2 mm", Bases::row,
                sample -> surveyed(sample, 0.002, 0, 0.11, 0.22, 0.33)));
        cases.add(RuleCase.of("ROW-11", Result.PASS, "11 cm each downward", Bases::row,
                sample -> surveyed(sample, 0.002, 0.33, 0.22, 0.11, 0)));
        cases.add(RuleCase.of("ROW-11", Result.NOT_EVALUATED, "11 cm each, accuracy not entered", Bases::row,
                sample -> surveyed(sample, null, 0, 0.11, 0.22, 0.33)));
        // Rises of 110, 105 and 110 mm differ by 5 mm; of 110, 103 and 110 mm by 7 mm, beyond 5 mm and the millimetre of the model.
        cases.add(RuleCase.of("ROW-11", Result.PASS, "uneven by 5 mm, levels to 5 mm", Bases::row,
                sample -> surveyed(sample, 0.005, 0, 0.110, 0.215, 0.325)));
        cases.add(RuleCase.of("ROW-11", Result.FAIL, "uneven by 7 mm, levels to 5 mm", Bases::row,
                sample -> surveyed(sample, 0.005, 0, 0.110, 0.213, 0.323)));
        cases.add(RuleCase.of("ROW-11", Result.PASS, "4 cm a step, levels to 5 cm", Bases::row,
                sample -> surveyed(sample, 0.05, 0, 0.04, 0.08, 0.12)));
        cases.add(RuleCase.of("ROW-11", Result.NOT_EVALUATED, "levels to 6 cm cannot tell", Bases::row,
                sample -> surveyed(sample, 0.06, 0, 0.11, 0.22, 0.33)));
        cases.add(RuleCase.of("ROW-11", Result.NOT_EVALUATED, "two units at one place", Bases::row, sample -> {
            surveyed(sample, 0.005, 0, 0.11, 0.22, 0.33);
            sample.unit(1).setRightM(sample.unit(0).getRightM());
        }));
    }

    private static void lean(Sample sample, double percent) {
        sample.units(unit -> unit.setLensElevationM(100 + Math.abs(unit.getRightM()) * percent / 100));
    }

    private static void gradient(List<RuleCase> cases) {
        cases.add(RuleCase.of("ROW-12", Result.NOT_APPLICABLE, "level", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("ROW-12", Result.NOT_APPLICABLE, "5 cm", Bases::row, sample -> heights(sample, 0, 0.05, 0, 0)));
        cases.add(RuleCase.of("ROW-12", Result.PASS, "6 cm on 9 m", Bases::row, sample -> heights(sample, 0, 0.06, 0, 0)));
        cases.add(RuleCase.of("ROW-12", Result.PASS, "1.24 %", Bases::row, sample -> lean(sample, 1.24)));
        cases.add(RuleCase.of("ROW-12", Result.PASS, "1.25 %", Bases::row, sample -> lean(sample, 1.25)));
        cases.add(RuleCase.of("ROW-12", Result.FAIL, "1.26 %", Bases::row, sample -> lean(sample, 1.26)));
        // 12 cm on 9 m are 1.33 %, though over 27 m they are 0.44 %.
        cases.add(RuleCase.of("ROW-12", Result.FAIL, "12 cm in one step", Bases::row, sample -> heights(sample, 0, 0.12, 0.12, 0.12)));
        // On 6 m: 7 cm are 1.17 %, 8 cm 1.33 %.
        cases.add(RuleCase.of("ROW-12", Result.PASS, "two units, 7 cm", Bases::pairCodeTwo, sample -> heights(sample, 0, 0.07)));
        cases.add(RuleCase.of("ROW-12", Result.FAIL, "two units, 8 cm", Bases::pairCodeTwo, sample -> heights(sample, 0, 0.08)));
    }

    /** One of four that stands up by x lies three quarters of x above the mean: 33 mm give 24.75 mm, 36 mm 27 mm; 1 in is 25.4 mm. */
    private static void onePlane(List<RuleCase> cases) {
        cases.add(RuleCase.of("ROW-11", Result.PASS, "US, 24.75 mm off the mean", Bases::usRow,
                sample -> heights(sample, 0, 0.033, 0, 0)));
        cases.add(RuleCase.of("ROW-11", Result.FAIL, "US, 27 mm off the mean", Bases::usRow,
                sample -> heights(sample, 0, 0.036, 0, 0)));
        cases.add(RuleCase.of("ROW-11", Result.FAIL, "US, even gradient, levels to 2 mm", Bases::usRow,
                sample -> surveyed(sample, 0.002, 0, 0.11, 0.22, 0.33)));
    }
}
