package slopewright.ui.review.internal;

import java.util.Comparator;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

import slopewright.siting.Siting;
import slopewright.siting.compare.OperationalContext;
import slopewright.ui.units.Quantity;
import slopewright.ui.units.QuantityFormat;

/** The columns of the comparison. */
public enum ContenderColumn {

    /** The trade name. */
    FAMILY("Family", 230, one -> one.family().name(), Comparator.comparing(one -> one.family().name())),
    /** How many rules it breaks. */
    FAILURES("Not met", 70, one -> one.siting().isEmpty() ? "" : String.valueOf(one.failures()),
            Comparator.comparingLong(Contender::failures)),
    /** How much there is to clear up. */
    WARNINGS("To clear up", 90, one -> one.siting().isEmpty() ? "" : String.valueOf(one.warnings()),
            Comparator.comparingLong(Contender::warnings)),
    /** Threshold to the row or near bar. */
    DISTANCE("Distance", 90, one -> length(one, Siting::distanceM), number(Siting::distanceM)),
    /** Eye height over the threshold. */
    EYE_HEIGHT("MEHT", 80, one -> length(one, Siting::eyeHeightM), number(Siting::eyeHeightM)),
    /** Wheel height over the threshold. */
    CLEARANCE("Wheel clearance", 110, one -> one.siting().map(Siting::wheelClearanceM).map(ContenderColumn::length).orElse(""),
            Comparator.comparingDouble(one -> one.siting().map(Siting::wheelClearanceM).orElse(OptionalDouble.empty()).orElse(0))),
    /** Least margin to the obstacle surface. */
    MARGIN("Obstacle margin", 110, one -> length(one.margin()), Comparator.comparingDouble(one -> one.margin().orElse(Double.MAX_VALUE))),
    /** Number of light units. */
    UNITS("Units", 60, one -> one.siting().map(siting -> String.valueOf(siting.units().size())).orElse(""),
            number(siting -> siting.units().size())),
    /** Power of all lamps. */
    LOAD("Lamps", 80, one -> load(one.needs()), Comparator.comparingDouble(one -> one.needs().loadW().orElse(Double.MAX_VALUE))),
    /** What feeds it. */
    SUPPLY("Supply", 150, one -> supply(one.needs()), Comparator.comparing(one -> one.needs().supply())),
    /** What it breaks. */
    WHY("What it breaks, or why there is no layout", 420, Contender::why, Comparator.comparing(Contender::why));

    private final String title;
    private final int width;
    private final Function<Contender, String> text;
    private final Comparator<Contender> order;

    ContenderColumn(String title, int width, Function<Contender, String> text, Comparator<Contender> order) {
        this.title = title;
        this.width = width;
        this.text = text;
        this.order = order;
    }

    /** Returns its heading. */
    public String title() {
        return title;
    }

    /** Returns its usual width in pixels. */
    public int width() {
        return width;
    }

    /** Returns what it shows. */
    public String text(Contender contender) {
        return text.apply(contender);
    }

    /** Returns its order; families without a layout come last. */
    public Comparator<Contender> order() {
        Comparator<Contender> laidFirst = Comparator.comparing(one -> one.siting().isEmpty());
        return laidFirst.thenComparing(order);
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
