package slopewright.checks.internal.row;

import java.util.List;
import java.util.stream.Stream;

import slopewright.checks.Measure;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;

/**
 * A range of lengths that a rule set gives.
 *
 * @param leastM    lowest length, metres
 * @param mostM     greatest length, metres
 * @param usualM    the length that is aimed at, metres
 * @param citations where it comes from
 */
record LengthRange(double leastM, double mostM, double usualM, List<Citation> citations) {

    /** Makes the range around a length. */
    static LengthRange around(CitedValue usual, CitedValue below, CitedValue above) {
        return new LengthRange(usual.value() - below.value(), usual.value() + above.value(), usual.value(),
                Stream.of(usual, below, above).map(CitedValue::citation).distinct().toList());
    }

    /** Makes the range between two lengths, of which the greater is aimed at. */
    static LengthRange between(CitedValue least, CitedValue most) {
        return new LengthRange(least.value(), most.value(), most.value(), List.of(least.citation(), most.citation()));
    }

    /** Compares a length with the nearer end. */
    Measure measure(double lengthM) {
        return Measure.between(lengthM, leastM, mostM, "m");
    }
}
