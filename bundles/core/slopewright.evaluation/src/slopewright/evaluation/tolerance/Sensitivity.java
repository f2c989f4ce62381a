package slopewright.evaluation.tolerance;

/**
 * How one quantity follows one source of error, all others as they stand.
 *
 * @param source   the source
 * @param quantity the quantity
 * @param perUnit  partial derivative by a central difference: metres for each minute of arc or metre of the source
 * @param lowM     change of the quantity at the least error, metres
 * @param highM    change of the quantity at the greatest error, metres
 */
public record Sensitivity(ErrorSource source, Quantity quantity, double perUnit, double lowM, double highM) {

    /** Returns the greatest change within the tolerance to either side, metres, zero or more. */
    public double effectM() {
        return Math.max(Math.abs(lowM), Math.abs(highM));
    }

    /** Returns by how much the quantity can fall, metres, zero or more. */
    public double lossM() {
        return Math.max(0, -Math.min(lowM, highM));
    }

    /** Returns by how much the quantity can grow, metres, zero or more. */
    public double gainM() {
        return Math.max(0, Math.max(lowM, highM));
    }

    /** Returns by how much the quantity falls to first order, metres, zero or more. */
    double linearLossM() {
        return Math.max(0, -Math.min(perUnit * source.least(), perUnit * source.greatest()));
    }
}
