package slopewright.ui.plan.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.model.AeroplaneGroup;
import slopewright.model.ApproachHost;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.standards.RuleSet;
import slopewright.standards.WheelClearanceTable;
import slopewright.ui.diagram.figures.ReadoutFigure.Line;

/**
 * The wheel clearance of each aeroplane group in regular use against what the table of the rule set asks for, as the rules about it
 * reckon; they alone decide once the layout stands.
 */
final class WheelLimits {

    private static final double ROUNDING_M = 0.002;

    private WheelLimits() {
    }

    /** Returns a line for each aeroplane group that the table covers, none where the rule set or the host have none. */
    static List<Line> of(ApproachHost host, Siting siting, Optional<RuleSet> rules) {
        List<Line> lines = new ArrayList<>();
        Optional<WheelClearanceTable> table = rules.flatMap(RuleSet::wheelClearance);
        if (table.isEmpty() || !(host instanceof RunwayEnd)) {
            return lines;
        }
        boolean light = host.getRegularGroups().stream().allMatch(group -> Boolean.TRUE.equals(group.getLightNonTurbojet()));
        for (AeroplaneGroup group : host.getRegularGroups()) {
            Optional<Double> wheels = Optional.ofNullable(group.getEyeToWheelM());
            wheels.flatMap(table.get()::group)
                    .ifPresent(band -> lines.add(line(group, siting.mehtM() - wheels.get(), band, light)));
        }
        return lines;
    }

    private static Line line(AeroplaneGroup group, double clearanceM, WheelClearanceTable.Group band, boolean light) {
        double minimum = light ? band.lightAeroplaneM().orElse(band.minimumM()) : band.minimumM();
        String name = Projects.label(group);
        if (clearanceM < minimum - ROUNDING_M) {
            return Line.of(Messages.get("read.wheels-below", name, Readings.length(clearanceM), Readings.length(minimum)), false);
        }
        boolean desired = clearanceM >= band.desiredM() - ROUNDING_M;
        String key = desired ? "read.wheels-desired" : "read.wheels-minimum";
        String text = Messages.get(key, name, Readings.length(clearanceM), Readings.length(desired ? band.desiredM() : minimum),
                Readings.length(band.desiredM()));
        return desired ? Line.of(text, true) : Line.warning(text);
    }
}
