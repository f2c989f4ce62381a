package slopewright.ui.review.internal;

import java.util.Comparator;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

import slopewright.evaluation.comparison.OperationalContext;
import slopewright.siting.Siting;
import slopewright.ui.units.Quantity;
import slopewright.ui.units.QuantityFormat;

/** The columns of the comparison. */
public enum ContenderColumn {

    /** The family or the rule set. */
    NAME(200, false, Contender::name, Comparator.comparing(Contender::name)),
    /** How many rules it breaks. */
    FAILURES(72, true, one -> one.siting().isEmpty() ? "" : String.valueOf(one.failures()),
            Comparator.comparingLong(Contender::failures)),
    /** How much there is to clear up. */
    WARNINGS(98, true, one -> one.siting().isEmpty() ? "" : String.valueOf(one.warnings()),
            Comparator.comparingLong(Contender::warnings)),
    /** Threshold to the row or near bar. */
    DISTANCE(84, true, one -> length(one, Siting::distanceM), number(Siting::distanceM)),
    /** Eye height over the threshold. */
    EYE_HEIGHT(98, true, one -> length(one, Siting::mehtM), number(Siting::mehtM)),
    /** Wheel height over the threshold. */
    CLEARANCE(132, true, one -> one.siting().map(Siting::wheelClearanceM).map(ContenderColumn::length).orElse(""),
            Comparator.comparingDouble(one -> one.siting().map(Siting::wheelClearanceM).orElse(OptionalDouble.empty()).orElse(0))),
    /** Least margin to the obstacle surface. */
    MARGIN(136, true, one -> length(one.margin(MarginKind.OBSTACLE)),
            Comparator.comparingDouble(one -> one.margin(MarginKind.OBSTACLE).orElse(Double.MAX_VALUE))),
    /** Number of light units. */
    UNITS(60, true, one -> one.siting().map(siting -> String.valueOf(siting.units().size())).orElse(""),
            number(siting -> siting.units().size())),
    /** Power of all lamps. */
    LOAD(74, true, one -> load(one.needs()), Comparator.comparingDouble(one -> one.needs().loadW().orElse(Double.MAX_VALUE))),
    /** What feeds it. */
    SUPPLY(140, false, one -> supply(one.needs()), Comparator.comparing(one -> one.needs().supply())),
    /** What it breaks. */
    WHY(420, false, Contender::why, Comparator.comparing(Contender::why));

    private final int width;
    private final boolean right;
    private final Function<Contender, String> text;
    private final Comparator<Contender> order;

    ContenderColumn(int width, boolean right, Function<Contender, String> text, Comparator<Contender> order) {
        this.width = width;
        this.right = right;
        this.text = text;
        this.order = order;
    }

    /** Returns its heading. */
    public String title() {
        return Messages.get("comparison.column." + name().toLowerCase(Locale.ROOT));
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
    public String text(Contender contender) {
        return text.apply(contender);
    }

    /**
     * Returns its order; what has no layout comes last.
     *
     * @param downward whether the greatest comes first
     */
    public Comparator<Contender> order(boolean downward) {
        Comparator<Contender> laidFirst = Comparator.comparing(one -> one.siting().isEmpty());
        return laidFirst.thenComparing(downward ? order.reversed() : order).thenComparing(Contender::name);
    }

    private static String load(OperationalContext needs) {
        return needs.loadW().isPresent() ? String.format(Locale.ROOT, "%.0f W", needs.loadW().getAsDouble()) : "";
    }

    private static String supply(OperationalContext needs) {
        String hours = needs.batteryHours().isPresent()
                ? String.format(Locale.ROOT, ", %.1f h", needs.batteryHours().getAsDouble()) : "";
        return needs.supply() + hours;
    }

    private static String length(Contender contender, ToDoubleFunction<Siting> number) {
        return contender.siting().map(siting -> length(OptionalDouble.of(number.applyAsDouble(siting)))).orElse("");
    }

    private static String length(OptionalDouble valueM) {
        if (valueM.isEmpty()) {
            return "";
        }
        QuantityFormat format = QuantityFormat.preferred();
        double hundredths = Double.parseDouble(String.format(Locale.ROOT, "%.2f", valueM.getAsDouble()));
        return format.showWithUnit(hundredths, Quantity.LENGTH);
    }

    private static Comparator<Contender> number(ToDoubleFunction<Siting> number) {
        return Comparator.comparingDouble(one -> one.siting().map(siting -> number.applyAsDouble(siting)).orElse(Double.MAX_VALUE));
    }
}
