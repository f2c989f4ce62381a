package slopewright.evaluation.tolerance;

import java.util.List;

/** Looks for the ends of all tolerances at which a quantity is least or greatest. */
final class WorstCaseSearch {

    private static final int MOST_PASSES = 4;

    private final PerturbedLayout layout;
    private final List<ErrorSource> sources;

    /**
     * What was found.
     *
     * @param valueM the quantity, metres
     * @param errors the errors at which it is so, in the order of the sources
     */
    record Extreme(double valueM, double[] errors) {
    }

    WorstCaseSearch(PerturbedLayout layout) {
        this.layout = layout;
        sources = layout.sources();
    }

    /**
     * Starts from the ends that the sensitivities point to and turns every error to its other end, one after the other, until none makes
     * it worse.
     *
     * @param quantity      the quantity
     * @param sensitivities its sensitivities, one a source in the order of the sources
     * @param sign          -1 for the least, 1 for the greatest
     */
    Extreme extreme(Quantity quantity, List<Sensitivity> sensitivities, int sign) {
        double[] errors = new double[sources.size()];
        for (int i = 0; i < errors.length; i++) {
            Sensitivity sensitivity = sensitivities.get(i);
            double direction = (sensitivity.highM() - sensitivity.lowM()) * sign;
            errors[i] = direction == 0 ? 0 : direction > 0 ? sources.get(i).greatest() : sources.get(i).least();
        }
        double best = value(quantity, errors, sign);
        boolean better = true;
        for (int pass = 0; better && pass < MOST_PASSES; pass++) {
            better = false;
            for (int i = 0; i < errors.length; i++) {
                if (sources.get(i).tolerance() > 0 && sensitivities.get(i).effectM() > 0) {
                    double kept = errors[i];
                    errors[i] = kept == sources.get(i).greatest() ? sources.get(i).least() : sources.get(i).greatest();
                    double turned = value(quantity, errors, sign);
                    if (turned * sign > best * sign) {
                        best = turned;
                        better = true;
                    } else {
                        errors[i] = kept;
                    }
                }
            }
        }
        return new Extreme(best, errors);
    }

    private double value(Quantity quantity, double[] errors, int sign) {
        double found = layout.assess(errors)[quantity.ordinal()];
        return Double.isNaN(found) ? -sign * Double.POSITIVE_INFINITY : found;
    }
}
