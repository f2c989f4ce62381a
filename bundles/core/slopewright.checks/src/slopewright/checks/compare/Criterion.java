package slopewright.checks.compare;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import slopewright.checks.Outcome;
import slopewright.checks.Verdict;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.WheelClearance;
import slopewright.evaluation.comparison.Candidate;
import slopewright.evaluation.comparison.OperationalContext;
import slopewright.messages.Message;
import slopewright.messages.Words;

/**
 * What a consultant may weigh options by. A score stands only beside an option that has a layout and breaks no rule; what is not known of
 * it earns nothing. Rules are weighed by how many are met of the most that any option is judged by, so that fewer rules are no merit.
 */
public enum Criterion {
    /** Rules that are met. */
    RULES(true),
    /** Room under the wheels. */
    WHEELS(true),
    /** Room above obstacles. */
    OBSTACLES(true),
    /** Room of the eye height. */
    EYE(true),
    /** Few units. */
    UNITS(false),
    /** Little power. */
    LOAD(false);

    /** The greatest weight. */
    public static final int MOST = 5;

    /**
     * What one option is weighed by.
     *
     * @param fit          what the rules say of it in a word
     * @param stands       whether it has a layout, is judged by a rule and breaks none
     * @param rulesApplied how many rules had something to say about it
     * @param values       its number for each criterion, as far as it is known
     */
    public record Weighed(Candidate.Fit fit, boolean stands, int rulesApplied, Map<Criterion, Double> values) {

        /** Copies the numbers. */
        public Weighed {
            values = Map.copyOf(values);
        }

        /** Returns what an option without a layout is weighed by. */
        public static Weighed nothing() {
            return new Weighed(Candidate.Fit.DOES_NOT_FIT, false, 0, Map.of());
        }

        /**
         * Returns what a layout is weighed by.
         *
         * @param fit      what the rules say of it in a word
         * @param tried    the aid as it stands or is proposed; it has a layout
         * @param outcomes what the rules say of it
         * @param needs    how many units it comes in and what feeds them
         */
        public static Weighed of(Candidate.Fit fit, AidEvaluation tried, List<Outcome> outcomes, OperationalContext needs) {
            Map<Criterion, Double> values = new EnumMap<>(Criterion.class);
            put(values, RULES, OptionalDouble.of(FamilyVerdicts.met(outcomes).size()));
            put(values, WHEELS, tried.wheelClearances().stream().mapToDouble(WheelClearance::clearanceM).min());
            put(values, OBSTACLES, MarginKind.OBSTACLE.leastM(tried, outcomes));
            put(values, EYE, MarginKind.EYE.leastM(tried, outcomes));
            put(values, UNITS, OptionalDouble.of(tried.siting().orThrow().units().size()));
            put(values, LOAD, needs.loadW());
            boolean broken = outcomes.stream().anyMatch(outcome -> outcome.verdict() == Verdict.NOT_MET);
            return new Weighed(fit, !broken && outcomes.stream().anyMatch(outcome -> outcome.verdict() == Verdict.MET),
                    FamilyVerdicts.applied(outcomes).size(), values);
        }

        private static void put(Map<Criterion, Double> values, Criterion criterion, OptionalDouble value) {
            value.ifPresent(known -> values.put(criterion, known));
        }
    }

    private final boolean moreIsBetter;

    Criterion(boolean moreIsBetter) {
        this.moreIsBetter = moreIsBetter;
    }

    /** Returns one weight for each. */
    public static Map<Criterion, Integer> alike() {
        Map<Criterion, Integer> weights = new EnumMap<>(Criterion.class);
        for (Criterion criterion : values()) {
            weights.put(criterion, 1);
        }
        return weights;
    }

    /** Returns the word by which a file or a command names it. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Reads weights.
     *
     * @param text {@code rules=3,load=0}: keys with their weights, 0 to {@link #MOST}, parted by commas; what is not named counts once
     * @return one weight for each
     * @throws IllegalArgumentException where a part is none
     */
    public static Map<Criterion, Integer> weights(String text) {
        Map<Criterion, Integer> weights = alike();
        for (String part : text.isBlank() ? new String[0] : text.split(",")) {
            String given = part.strip();
            Criterion named = Stream.of(values()).filter(criterion -> given.matches(criterion.key() + "=[0-" + MOST + "]")).findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("'" + given + "' is no weight; write " + Stream.of(values())
                            .map(Criterion::key).collect(Collectors.joining(", ")) + ", each with = and 0 to " + MOST));
            weights.put(named, given.charAt(given.length() - 1) - '0');
        }
        return weights;
    }

    /** Returns weights as {@link #weights(String)} reads them, each of them named. */
    public static String text(Map<Criterion, Integer> weights) {
        return Stream.of(values()).map(criterion -> criterion.key() + "=" + weights.getOrDefault(criterion, 0))
                .collect(Collectors.joining(","));
    }

    /** Returns weights in a sentence. */
    public static Message message(Map<Criterion, Integer> weights) {
        return Message.of("comparison.weights", Words.list(Stream.of(values()).map(criterion -> Message.of("comparison.weight",
                Words.term("criterion." + criterion.key()), Words.count(weights.getOrDefault(criterion, 0)))).toList()));
    }

    /**
     * Returns what an option comes to among others.
     *
     * @param option  the option
     * @param all     all that are compared
     * @param weights how much each criterion counts, 0 to {@link #MOST}
     * @return 0 to 100; empty where it has no layout, breaks a rule, or nothing is weighed
     */
    public static Optional<Double> score(Weighed option, List<Weighed> all, Map<Criterion, Integer> weights) {
        int total = weights.values().stream().mapToInt(Integer::intValue).sum();
        if (!option.stands() || total == 0) {
            return Optional.empty();
        }
        double sum = 0;
        for (Map.Entry<Criterion, Integer> weight : weights.entrySet()) {
            sum += weight.getValue() * weight.getKey().share(option, all);
        }
        return Optional.of(100 * sum / total);
    }

    /**
     * Returns the order in which options are shown: what fits before what is to be cleared up, and that before what does not fit, whatever
     * each scores; among alike the greatest score first.
     *
     * @param all     all that are compared
     * @param weights how much each criterion counts
     */
    public static Comparator<Weighed> bestFirst(List<Weighed> all, Map<Criterion, Integer> weights) {
        return Comparator.comparing(Weighed::fit).thenComparing(option -> -score(option, all, weights).orElse(-1.0));
    }

    /** Where the option stands between the worst and the best of those that stand, 0 to 1. */
    private double share(Weighed option, List<Weighed> all) {
        Double own = option.values().get(this);
        double[] known = all.stream().filter(Weighed::stands).map(Weighed::values).filter(values -> values.containsKey(this))
                .mapToDouble(values -> values.get(this)).sorted().toArray();
        if (own == null || known.length == 0) {
            return 0;
        }
        if (this == RULES) {
            int most = all.stream().mapToInt(Weighed::rulesApplied).max().orElse(0);
            return most == 0 ? 0 : Math.min(1, own / most);
        }
        double least = known[0];
        double most = known[known.length - 1];
        double up = most == least ? 1 : (own - least) / (most - least);
        return moreIsBetter || most == least ? up : 1 - up;
    }
}
