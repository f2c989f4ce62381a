package slopewright.ui.plan.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.model.ApproachHost;
import slopewright.model.RunwayEnd;
import slopewright.siting.Siting;
import slopewright.standards.RuleSet;
import slopewright.ui.diagram.figures.ReadoutFigure.Line;
import slopewright.ui.units.Quantity;
import slopewright.ui.units.QuantityFormat;

/** What a layout gives, in lines of text in the units that the user prefers. */
public final class Readings {

    private static final double STEPS_PER_M = 100;

    private Readings() {
    }

    /** Returns a length in centimetres, with its unit. */
    public static String length(double valueM) {
        return QuantityFormat.preferred().showWithUnit(Math.round(valueM * STEPS_PER_M) / STEPS_PER_M, Quantity.LENGTH);
    }

    /** Returns a length with a sign in front. */
    public static String shift(double valueM) {
        return (valueM < 0 ? "−" : "+") + length(Math.abs(valueM));
    }

    /** Returns which side of the centre line a place lies on, and how far. */
    public static String side(double rightM) {
        return Messages.get(rightM < 0 ? "read.left" : "read.right", length(Math.abs(rightM)));
    }

    /**
     * Returns what a layout gives.
     *
     * @param host    where it stands
     * @param siting  the layout
     * @param rules   the rule set whose limits count, empty where it is not known
     * @param excessM how far the worst obstacle stands above the surface, metres; empty where none lies under it
     */
    public static List<Line> of(ApproachHost host, Siting siting, Optional<RuleSet> rules, OptionalDouble excessM) {
        List<Line> lines = new ArrayList<>();
        lines.add(Line.of(Messages.get(host instanceof RunwayEnd ? "read.from-threshold" : "read.from-hover", length(siting.distanceM()))));
        lines.add(Line.of(Messages.get("read.eye-height", length(siting.mehtM()))));
        List<Line> wheels = WheelLimits.of(host, siting, rules);
        if (wheels.isEmpty()) {
            siting.wheelClearanceM().ifPresent(clearance -> lines.add(Line.of(Messages.get("tip.wheels", length(clearance)))));
        }
        lines.addAll(wheels);
        if (siting.surface().isPresent()) {
            lines.add(obstacles(excessM));
        }
        return lines;
    }

    private static Line obstacles(OptionalDouble excessM) {
        if (excessM.isEmpty()) {
            return Line.of(Messages.get("read.no-obstacle"), true);
        }
        double excess = excessM.getAsDouble();
        return excess > 0 ? Line.of(Messages.get("read.through", length(excess)), false)
                : Line.of(Messages.get("read.clear", length(-excess)), true);
    }
}
