package slopewright.evaluation.tolerance;

import java.util.List;

/** Looks for the corner of all tolerances at which a quantity is least or greatest. */
final class WorstCaseSearch {

    private static final int MOST_PASSES = 4;

    private final PerturbedLayout layout;
    private final List<ErrorSource> causes;

    WorstCaseSearch(PerturbedLayout layout) {
        this.layout = layout;
        causes = layout.causes();
    }

    /**
     * Starts from the corner that the sensitivities point to and turns every cause to its other end, one after the other, until none
     * makes it worse.
     *
     * @param quantity      the quantity
     * @param sensitivities its sensitivities, one a cause in the order of the causes
     * @param sign          -1 for the least, 1 for the greatest
     * @return metres
     */
    double extremeM(Quantity quantity, List<Sensitivity> sensitivities, int sign) {
        double[] errors = new double[causes.size()];
        for (int i = 0; i < errors.length; i++) {
            Sensitivity one = sensitivities.get(i);
            errors[i] = Math.signum(one.highM() - one.lowM()) * sign * causes.get(i).tolerance();
        }
        double best = value(quantity, errors, sign);
        boolean better = true;
        for (int pass = 0; better && pass < MOST_PASSES; pass++) {
            better = false;
            for (int i = 0; i < errors.length; i++) {
                if (causes.get(i).tolerance() > 0 && sensitivities.get(i).effectM() > 0) {
                    double kept = errors[i];
                    errors[i] = kept == 0 ? causes.get(i).tolerance() : -kept;
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
        return best;
    }

    private double value(Quantity quantity, double[] errors, int sign) {
        double found = layout.assess(errors)[quantity.ordinal()];
        return Double.isNaN(found) ? -sign * Double.POSITIVE_INFINITY : found;
    }
}
