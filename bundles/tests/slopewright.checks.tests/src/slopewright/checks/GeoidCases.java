package slopewright.checks;

import java.util.List;

import slopewright.evaluation.ReadBacks;
import slopewright.model.Stage;
import slopewright.model.util.Ids;

/**
 * Cases of the rule about the geoid offset. The place and -31.628 m are the first of the test values that were published with EGM96; they
 * are held against its full grid to a tenth of a metre.
 */
final class GeoidCases {
    private static final double OFFSET_M = -31.628;
    private static final double FEET = 0.3048;
    /** By hand from the four points of the coarse grid around: -33 and -33 m at 40 N, -32 and -30 m at 38 N, 92 and 90 W. */
    private static final double GRID_M = -31.0937;

    private GeoidCases() {
    }

    static List<RuleCase> all() {
        return List.of(RuleCase.of("DATA-66", null, "none entered", Bases::row, Sample::unchanged),
                RuleCase.of("DATA-66", Result.PASS, "that of the place", Bases::row, sample -> enter(sample, OFFSET_M)),
                RuleCase.of("DATA-66", Result.FAIL, "of the wrong sign", Bases::row, sample -> enter(sample, -OFFSET_M)),
                RuleCase.of("DATA-66", Result.FAIL, "in feet", Bases::row, sample -> enter(sample, OFFSET_M / FEET)),
                RuleCase.of("DATA-66", Result.FAIL, "ten times as much", Bases::row, sample -> enter(sample, OFFSET_M * 10)),
                RuleCase.of("DATA-66", Result.PASS, "as far off as the grid is nearly everywhere and a local datum, 6 m", Bases::row,
                        sample -> enter(sample, GRID_M - 5.996)),
                RuleCase.of("DATA-66", Result.NOT_EVALUATED, "10 m off", Bases::row, sample -> enter(sample, OFFSET_M - 10)),
                RuleCase.of("DATA-66", Result.NOT_EVALUATED, "a little farther off", Bases::row,
                        sample -> enter(sample, GRID_M - 6.004)),
                RuleCase.of("DATA-66", Result.PASS, "10 m off, read back", Bases::row, sample -> {
                    enter(sample, OFFSET_M - 10);
                    sample.project().setStage(Stage.OPERATION);
                    Ids.assign(sample.project());
                    ReadBacks.keep(sample.project(), List.of(sample.aerodrome()), "B. Bole", "2026-01-06");
                }),
                RuleCase.of("DATA-66", Result.NOT_EVALUATED, "as far off as the grid and a local datum may be, 19 m", Bases::row,
                        sample -> enter(sample, GRID_M + 18.996)),
                RuleCase.of("DATA-66", Result.FAIL, "farther off than both", Bases::row, sample -> enter(sample, GRID_M + 19.004)),
                RuleCase.of("DATA-66", Result.NOT_EVALUATED, "at no place on the Earth", Bases::row, sample -> {
                    enter(sample, OFFSET_M);
                    sample.aerodrome().setLatitudeDeg(null);
                }));
    }

    private static void enter(Sample sample, double offsetM) {
        sample.aerodrome().setLatitudeDeg(38.628155);
        sample.aerodrome().setLongitudeDeg(-90.220845);
        sample.aerodrome().setGeoidOffsetM(offsetM);
    }
}
