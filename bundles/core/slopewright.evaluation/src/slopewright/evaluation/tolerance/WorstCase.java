package slopewright.evaluation.tolerance;

/**
 * How far one quantity can go when every cause is at an end of its tolerance at once.
 *
 * @param quantity the quantity
 * @param nominalM as planned, metres
 * @param linearM  sum of the partial derivatives times the tolerances, metres, zero or more
 * @param lowM     the least that was found at a corner of all tolerances, metres
 * @param highM    the most that was found at a corner, metres
 */
public record WorstCase(Quantity quantity, double nominalM, double linearM, double lowM, double highM) {
}
