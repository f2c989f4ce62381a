package slopewright.ui.plan.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import slopewright.model.ApproachHost;
import slopewright.model.RunwayEnd;
import slopewright.siting.Siting;
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
        return length(Math.abs(rightM)) + (rightM < 0 ? " left of the centre line" : " right of the centre line");
    }

    /**
     * Returns what a layout gives.
     *
     * @param host    where it stands
     * @param siting  the layout
     * @param excessM how far the worst obstacle stands above the surface, metres; empty where none lies under it
     */
    public static List<Line> of(ApproachHost host, Siting siting, OptionalDouble excessM) {
        List<Line> lines = new ArrayList<>();
        lines.add(Line.of(length(siting.distanceM()) + (host instanceof RunwayEnd ? " from the threshold" : " from the hover point")));
        lines.add(Line.of("MEHT " + length(siting.eyeHeightM()) + "  (eye height over the threshold)"));
        siting.wheelClearanceM().ifPresent(clearance -> lines.add(clearance > 0 ? Line.of("Wheel clearance " + length(clearance))
                : Line.of("Wheel clearance " + length(clearance), false)));
        if (siting.surface().isPresent()) {
            lines.add(obstacles(excessM));
        }
        return lines;
    }

    private static Line obstacles(OptionalDouble excessM) {
        if (excessM.isEmpty()) {
            return Line.of("No obstacle under the surface", true);
        }
        double excess = excessM.getAsDouble();
        return excess > 0 ? Line.of("Obstacle " + length(excess) + " through the surface", false)
                : Line.of("Obstacles clear by " + length(-excess), true);
    }
}
