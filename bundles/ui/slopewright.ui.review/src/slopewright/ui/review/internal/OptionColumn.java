package slopewright.ui.review.internal;

import java.util.Comparator;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

import slopewright.checks.Verdict;
import slopewright.checks.compare.MarginKind;
import slopewright.evaluation.comparison.OperationalContext;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.siting.Siting;
import slopewright.ui.MessageTexts;

/** The columns of the comparison. */
public enum OptionColumn {

    /** The family or the rule set. */
    NAME(200, false, ComparedOption::name, Comparator.comparing(ComparedOption::name)),
    /** Whether it fits, by all rules. */
    VERDICT(98, false, option -> MessageTexts.of(Words.term("report.fit." + option.weighed().fit().key())),
            Comparator.comparing(option -> option.weighed().fit())),
    /** How many rules it does not meet. */
    NOT_MET(72, true, option -> count(option, Verdict.NOT_MET), Comparator.comparingInt(option -> option.count(Verdict.NOT_MET))),
    /** How much there is to clear up. */
    TO_CLEAR_UP(98, true, option -> count(option, Verdict.TO_CLEAR_UP),
            Comparator.comparingInt(option -> option.count(Verdict.TO_CLEAR_UP))),
    /** How many rules had something to say. */
    RULES(60, true, option -> option.siting().isEmpty() ? "" : String.valueOf(option.rulesApplied()),
            Comparator.comparingInt(ComparedOption::rulesApplied)),
    /** What it breaks. */
    WHY(320, false, ComparedOption::why, Comparator.comparing(ComparedOption::why)),
    /** Where it was tried. */
    PLACE(150, false, option -> option.place().label(), Comparator.comparing(option -> option.place().label())),
    /** Threshold to the row or near bar. */
    DISTANCE(84, true, option -> length(option, Siting::distanceM), number(Siting::distanceM)),
    /** Eye height over the threshold. */
    EYE_HEIGHT(98, true, option -> length(option, Siting::mehtM), number(Siting::mehtM)),
    /** Wheel height over the threshold. */
    CLEARANCE(132, true, option -> length(option.wheelsM()),
            Comparator.comparingDouble(option -> option.wheelsM().orElse(0))),
    /** Least margin to the obstacle surface. */
    MARGIN(136, true, option -> length(option.margin(MarginKind.OBSTACLE)),
            Comparator.comparingDouble(option -> option.margin(MarginKind.OBSTACLE).orElse(Double.MAX_VALUE))),
    /** Number of light units. */
    UNITS(60, true, option -> option.siting().map(siting -> String.valueOf(siting.units().size())).orElse(""),
            number(siting -> siting.units().size())),
    /** Power of all lamps. */
    LOAD(74, true, option -> load(option.needs()), Comparator.comparingDouble(option -> option.needs().loadW().orElse(Double.MAX_VALUE))),
    /** What feeds it. */
    SUPPLY(140, false, option -> supply(option.needs()), Comparator.comparing(option -> option.needs().supply()));

    private final int width;
    private final boolean right;
    private final Function<ComparedOption, String> text;
    private final Comparator<ComparedOption> order;

    OptionColumn(int width, boolean right, Function<ComparedOption, String> text, Comparator<ComparedOption> order) {
        this.width = width;
        this.right = right;
        this.text = text;
        this.order = order;
    }

    /** Returns its heading. */
    public String title() {
        return Messages.get("comparison.column." + name().toLowerCase(Locale.ROOT));
    }

    /** Returns its heading where there is little room. */
    public String heading() {
        return this == RULES ? Messages.get("comparison.heading.rules") : title();
    }

    /** Returns what there is to say about it where it is pointed at. */
    public String tip() {
        return this == RULES ? Messages.get("comparison.rules.note") : title();
    }

    /** Returns its usual width in pixels. */
    public int width() {
        return width;
    }

    /** Returns whether it holds numbers. */
    public boolean isRight() {
        return right;
    }

    /** Returns what it shows. */
    public String text(ComparedOption option) {
        return text.apply(option);
    }

    /**
     * Returns its order; what has no layout comes last.
     *
     * @param downward whether the greatest comes first
     */
    public Comparator<ComparedOption> order(boolean downward) {
        Comparator<ComparedOption> laidFirst = Comparator.comparing(option -> option.siting().isEmpty());
        return laidFirst.thenComparing(downward ? order.reversed() : order).thenComparing(ComparedOption::name);
    }

    private static String count(ComparedOption option, Verdict verdict) {
        return option.siting().isEmpty() ? "" : String.valueOf(option.count(verdict));
    }

    private static String load(OperationalContext needs) {
        return needs.loadW().isPresent() ? MessageTexts.of(Words.quantity(needs.loadW().getAsDouble(), Notation.WATTS)) : "";
    }

    private static String supply(OperationalContext needs) {
        String hours = needs.batteryHours().isPresent()
                ? ", " + MessageTexts.of(Words.quantity(needs.batteryHours().getAsDouble(), Notation.HOURS)) : "";
        return needs.supply() + hours;
    }

    private static String length(ComparedOption option, ToDoubleFunction<Siting> number) {
        return option.siting().map(siting -> length(OptionalDouble.of(number.applyAsDouble(siting)))).orElse("");
    }

    private static String length(OptionalDouble valueM) {
        return valueM.isEmpty() ? "" : MessageTexts.length(valueM.getAsDouble());
    }

    private static Comparator<ComparedOption> number(ToDoubleFunction<Siting> number) {
        return Comparator.comparingDouble(option -> option.siting().map(siting -> number.applyAsDouble(siting)).orElse(Double.MAX_VALUE));
    }
}
