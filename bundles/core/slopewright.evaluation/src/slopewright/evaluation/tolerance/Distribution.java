package slopewright.evaluation.tolerance;

import java.util.List;

/**
 * How one quantity spreads over random trials.
 *
 * @param quantity    the quantity
 * @param samples     number of trials that gave it
 * @param meanM       mean, metres
 * @param deviationM  standard deviation, metres
 * @param percentiles values that a share of the trials does not exceed, rising
 */
public record Distribution(Quantity quantity, int samples, double meanM, double deviationM, List<Percentile> percentiles) {

    /**
     * One percentile.
     *
     * @param percent share of the trials, per cent
     * @param valueM  value that they do not exceed, metres
     */
    public record Percentile(double percent, double valueM) {
    }

    /** Copies the list. */
    public Distribution {
        percentiles = List.copyOf(percentiles);
    }

    /**
     * Returns a percentile.
     *
     * @param percent one of those that were reckoned
     * @return metres
     * @throws IllegalArgumentException where it was not reckoned
     */
    public double percentileM(double percent) {
        return percentiles.stream().filter(value -> value.percent() == percent).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no percentile of " + percent)).valueM();
    }
}
