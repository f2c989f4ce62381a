package slopewright.ui.review.internal;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

import slopewright.checks.Verdict;

/**
 * What a consultant may weigh options by. A score stands only beside an option that has a layout and breaks no rule; what is not known of
 * it earns nothing. Rules are weighed by how many are met of the most that any option is judged by, so that fewer rules are no merit.
 */
public enum Criterion {
    /** Rules that are met. */
    RULES(true, option -> OptionalDouble.of(option.rulesMet())),
    /** Room under the wheels. */
    WHEELS(true, ComparedOption::wheelsM),
    /** Room above obstacles. */
    OBSTACLES(true, option -> option.margin(MarginKind.OBSTACLE)),
    /** Room of the eye height. */
    EYE(true, option -> option.margin(MarginKind.EYE)),
    /** Few units. */
    UNITS(false, option -> option.siting().map(siting -> OptionalDouble.of(siting.units().size())).orElse(OptionalDouble.empty())),
    /** Little power. */
    LOAD(false, option -> option.needs().loadW());

    /** The greatest weight. */
    public static final int MOST = 5;

    private final boolean moreIsBetter;
    private final Function<ComparedOption, OptionalDouble> value;

    Criterion(boolean moreIsBetter, Function<ComparedOption, OptionalDouble> value) {
        this.moreIsBetter = moreIsBetter;
        this.value = value;
    }

    /** Returns its name for people. */
    public String label() {
        return Messages.get("comparison.criterion." + name().toLowerCase(Locale.ROOT));
    }

    /** Returns one weight for each. */
    public static Map<Criterion, Integer> alike() {
        Map<Criterion, Integer> weights = new EnumMap<>(Criterion.class);
        for (Criterion criterion : values()) {
            weights.put(criterion, 1);
        }
        return weights;
    }

    /**
     * Returns what an option comes to among others.
     *
     * @param option  the option
     * @param all     all that are compared
     * @param weights how much each criterion counts, 0 to {@link #MOST}
     * @return 0 to 100; empty where it has no layout, breaks a rule, or nothing is weighed
     */
    public static Optional<Double> score(ComparedOption option, List<ComparedOption> all, Map<Criterion, Integer> weights) {
        int total = weights.values().stream().mapToInt(Integer::intValue).sum();
        if (!stands(option) || total == 0) {
            return Optional.empty();
        }
        double sum = 0;
        for (Map.Entry<Criterion, Integer> weight : weights.entrySet()) {
            sum += weight.getValue() * weight.getKey().share(option, all);
        }
        return Optional.of(100 * sum / total);
    }

    private static boolean stands(ComparedOption option) {
        return option.siting().isPresent() && option.count(Verdict.NOT_MET) == 0 && option.count(Verdict.MET) > 0;
    }

    /** Where the option stands between the worst and the best of those that stand, 0 to 1. */
    private double share(ComparedOption option, List<ComparedOption> all) {
        OptionalDouble own = value.apply(option);
        double[] known = all.stream().filter(Criterion::stands).map(value).filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble).sorted().toArray();
        if (own.isEmpty() || known.length == 0) {
            return 0;
        }
        if (this == RULES) {
            int most = all.stream().mapToInt(ComparedOption::rulesApplied).max().orElse(0);
            return most == 0 ? 0 : Math.min(1, own.getAsDouble() / most);
        }
        double least = known[0];
        double most = known[known.length - 1];
        double up = most == least ? 1 : (own.getAsDouble() - least) / (most - least);
        return moreIsBetter || most == least ? up : 1 - up;
    }
}
