package slopewright.evaluation.tolerance;

/**
 * How far one quantity can go when every source of error is at an end of its range at once.
 *
 * @param quantity the quantity
 * @param nominalM as the aid stands, metres
 * @param linearM  by how much it can fall to first order: the sum over all sources of derivative times error, metres, zero or more
 * @param lowM     the least that was found with all errors at their ends, metres
 * @param highM    the most that was found, metres
 */
public record WorstCase(Quantity quantity, double nominalM, double linearM, double lowM, double highM) {
}
