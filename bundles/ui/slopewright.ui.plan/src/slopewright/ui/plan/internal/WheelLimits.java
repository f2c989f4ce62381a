package slopewright.ui.plan.internal;

import java.util.ArrayList;
import java.util.List;

import slopewright.checks.Measure;
import slopewright.evaluation.WheelClearance;
import slopewright.standards.WheelClearanceTable;
import slopewright.ui.MessageTexts;
import slopewright.ui.diagram.figures.ReadoutFigure.Line;

/**
 * The wheel clearance of each aeroplane group in regular use against what the table of the rule set asks for; the rules about it alone
 * decide once the layout stands.
 */
final class WheelLimits {

    private WheelLimits() {
    }

    /** Returns a line for each aeroplane group; without a limit where the rule set has none for it. */
    static List<Line> of(List<WheelClearance> clearances) {
        List<Line> lines = new ArrayList<>();
        boolean light = clearances.stream().allMatch(clearance -> Boolean.TRUE.equals(clearance.group().getLightNonTurbojet()));
        for (WheelClearance clearance : clearances) {
            lines.add(clearance.band().map(band -> line(clearance, band, light)).orElseGet(() -> Line.of(Messages.get("read.wheels",
                    MessageTexts.label(clearance.group()), Readings.length(clearance.clearanceM())))));
        }
        return lines;
    }

    private static Line line(WheelClearance clearance, WheelClearanceTable.Group band, boolean light) {
        double minimum = light ? band.lightAeroplaneM().orElse(band.minimumM()) : band.minimumM();
        String name = MessageTexts.label(clearance.group());
        String height = Readings.length(clearance.clearanceM());
        if (!Measure.atLeast(clearance.clearanceM(), minimum, "m").isMet()) {
            return Line.of(Messages.get("read.wheels-below", name, height, Readings.length(minimum)), false);
        }
        boolean desired = Measure.atLeast(clearance.clearanceM(), band.desiredM(), "m").isMet();
        String key = desired ? "read.wheels-desired" : "read.wheels-minimum";
        String text = Messages.get(key, name, height, Readings.length(desired ? band.desiredM() : minimum),
                Readings.length(band.desiredM()));
        return desired ? Line.of(text, true) : Line.warning(text);
    }
}
