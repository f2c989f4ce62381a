package slopewright.standards;

import java.util.Map;

import slopewright.geometry.Lengths;

/** The units of length in which sources print, by their exact factors. */
final class PrintedUnits {
    private static final Map<String, Double> METRES = Map.of("m", 1.0, "ft", Lengths.METRES_PER_FOOT, "in", Lengths.METRES_PER_INCH, "NM",
            Lengths.METRES_PER_NAUTICAL_MILE, "mi", Lengths.METRES_PER_STATUTE_MILE);

    private PrintedUnits() {
    }

    static boolean isLength(String unit) {
        return METRES.containsKey(unit);
    }

    static double metres(double printed, String unit) {
        return printed * METRES.get(unit);
    }
}
