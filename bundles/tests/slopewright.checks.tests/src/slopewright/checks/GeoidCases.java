package slopewright.checks;

import java.util.List;

/**
 * Cases of the rule about the geoid offset. The place and -31.628 m are the first of the test values that were published with EGM96; they
 * are held against its full grid to a tenth of a metre.
 */
final class GeoidCases {
    private static final double OFFSET_M = -31.628;
    private static final double FEET = 0.3048;
    /** By hand from the four points of the coarse grid around: -33 and -32 m at 40 N, -28 and -32 m at 35 N, 90 and 95 W. */
    private static final double GRID_M = -31.6446;

    private GeoidCases() {
    }

    static List<RuleCase> all() {
        return List.of(RuleCase.of("DATA-66", null, "none entered", Bases::row, Sample::unchanged),
                RuleCase.of("DATA-66", Result.PASS, "that of the place", Bases::row, sample -> enter(sample, OFFSET_M)),
                RuleCase.of("DATA-66", Result.FAIL, "of the wrong sign", Bases::row, sample -> enter(sample, -OFFSET_M)),
                RuleCase.of("DATA-66", Result.FAIL, "in feet", Bases::row, sample -> enter(sample, OFFSET_M / FEET)),
                RuleCase.of("DATA-66", Result.FAIL, "ten times as much", Bases::row, sample -> enter(sample, OFFSET_M * 10)),
                RuleCase.of("DATA-66", Result.PASS, "as far off as the grid and a local datum may be, 25 m", Bases::row,
                        sample -> enter(sample, GRID_M + 24.996)),
                RuleCase.of("DATA-66", Result.FAIL, "a little farther off", Bases::row, sample -> enter(sample, GRID_M + 25.004)),
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
