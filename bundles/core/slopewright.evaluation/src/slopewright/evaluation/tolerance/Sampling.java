package slopewright.evaluation.tolerance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/** Random trials: every error uniform over its range and independent of the others, the aeroplane drawn by its share. */
final class Sampling {

    private static final double[] PERCENTS = {1, 5, 50, 95, 99};

    private Sampling() {
    }

    static List<Distribution> run(PerturbedLayout layout, List<Aeroplane> mix, int samples, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<ErrorSource> sources = layout.sources();
        double[][] values = new double[Quantity.values().length][samples];
        double[] errors = new double[sources.size()];
        for (int trial = 0; trial < samples; trial++) {
            for (int i = 0; i < errors.length; i++) {
                ErrorSource source = sources.get(i);
                errors[i] = source.least() + (source.greatest() - source.least()) * random.nextDouble();
            }
            double aeroplane = random.nextDouble();
            double[] found = layout.assess(errors);
            for (Quantity quantity : Quantity.values()) {
                values[quantity.ordinal()][trial] = found[quantity.ordinal()];
            }
            if (!mix.isEmpty()) {
                values[Quantity.WHEEL_CLEARANCE.ordinal()][trial] = found[Quantity.EYE_HEIGHT.ordinal()] - draw(mix,
                        aeroplane).eyeToWheelM();
            }
        }
        List<Distribution> distributions = new ArrayList<>();
        for (Quantity quantity : Quantity.values()) {
            double[] known = Arrays.stream(values[quantity.ordinal()]).filter(Double::isFinite).sorted().toArray();
            if (known.length > 0) {
                distributions.add(distribution(quantity, known));
            }
        }
        return distributions;
    }

    static Aeroplane draw(List<Aeroplane> mix, double share) {
        double total = mix.stream().mapToDouble(Aeroplane::sharePercent).sum();
        double reached = 0;
        for (Aeroplane aeroplane : mix) {
            reached += aeroplane.sharePercent() / total;
            if (share < reached) {
                return aeroplane;
            }
        }
        return mix.get(mix.size() - 1);
    }

    private static Distribution distribution(Quantity quantity, double[] sorted) {
        double mean = Arrays.stream(sorted).average().orElseThrow();
        double square = Arrays.stream(sorted).map(value -> (value - mean) * (value - mean)).sum();
        double deviation = sorted.length > 1 ? Math.sqrt(square / (sorted.length - 1)) : 0;
        List<Distribution.Percentile> percentiles = Arrays.stream(PERCENTS)
                .mapToObj(percent -> new Distribution.Percentile(percent, sorted[rank(percent, sorted.length)])).toList();
        return new Distribution(quantity, sorted.length, mean, deviation, percentiles);
    }

    /** Returns the index of the least value that a share of all values does not exceed. */
    static int rank(double percent, int count) {
        return Math.max(0, (int) Math.ceil(percent / 100 * count) - 1);
    }
}
