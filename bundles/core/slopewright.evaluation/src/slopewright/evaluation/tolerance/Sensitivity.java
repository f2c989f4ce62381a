package slopewright.evaluation.tolerance;

/**
 * How one quantity follows one cause, all others as planned.
 *
 * @param cause    the cause
 * @param quantity the quantity
 * @param perUnit  partial derivative by a central difference: metres for each minute of arc or metre of the cause
 * @param lowM     change of the quantity at the lower end of the tolerance, metres
 * @param highM    change of the quantity at the upper end, metres
 */
public record Sensitivity(ErrorSource cause, Quantity quantity, double perUnit, double lowM, double highM) {

    /** Returns the greatest change within the tolerance to either side, metres, zero or more. */
    public double effectM() {
        return Math.max(Math.abs(lowM), Math.abs(highM));
    }
}
