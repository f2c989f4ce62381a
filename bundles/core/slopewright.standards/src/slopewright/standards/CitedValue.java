package slopewright.standards;

import java.util.Objects;

/**
 * A number of a rule set with where it comes from. It is kept as its source prints it, and read in the unit that its key names: a length
 * that is printed in feet, inches or miles is read in metres where the key ends in {@code -m}.
 *
 * @param value       the number as it is read
 * @param unit        its unit: {@code m}, {@code ft}, {@code deg}, {@code min}, {@code %}, {@code NM}, {@code s}, {@code Hz}, {@code V},
 *                    {@code cd}, {@code lx}, {@code times}, {@code ratio}, {@code count}, {@code year} or {@code code}
 * @param printed     the number as its source prints it, by which a person confirms it
 * @param printedUnit the unit there; beside those above {@code in} and {@code mi}
 * @param citation    where it comes from
 */
public record CitedValue(double value, String unit, double printed, String printedUnit, Citation citation) {

    /** Refuses missing parts and numbers that are not finite. */
    public CitedValue {
        Objects.requireNonNull(unit);
        Objects.requireNonNull(printedUnit);
        Objects.requireNonNull(citation);
        if (!Double.isFinite(value) || !Double.isFinite(printed)) {
            throw new IllegalArgumentException("the value " + citation.key() + " is not finite");
        }
    }

    /** Makes one that is read as it is printed. */
    public CitedValue(double value, String unit, Citation citation) {
        this(value, unit, value, unit, citation);
    }

    /**
     * Makes one of what is printed, converted by exact factors where its key names metres.
     *
     * @param printed     the number as printed
     * @param printedUnit its unit
     * @param citation    where it comes from, with the key
     */
    public static CitedValue printed(double printed, String printedUnit, Citation citation) {
        boolean isLength = PrintedUnits.isLength(printedUnit) && citation.key().endsWith("-m");
        return isLength ? new CitedValue(PrintedUnits.metres(printed, printedUnit), "m", printed, printedUnit, citation)
                : new CitedValue(printed, printedUnit, citation);
    }

    /** Returns the key by which a project confirms or overrides the value. */
    public String key() {
        return citation.key();
    }

    CitedValue withCitation(Citation other) {
        return new CitedValue(value, unit, printed, printedUnit, other);
    }

    /** Returns the same, known no better than a given class. */
    public CitedValue atMost(Provenance weakest) {
        return withCitation(citation.atMost(weakest));
    }
}
