package slopewright.checks.internal.plausible;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

import slopewright.model.ApproachAid;
import slopewright.model.EquipmentType;
import slopewright.model.LightColour;
import slopewright.model.LightUnit;
import slopewright.model.Project;
import slopewright.model.Transition;
import slopewright.model.util.Projects;

/** Which colours the units of a type show at an elevation above their setting: their own transitions, and the sectors of the type. */
final class ShownColours {
    /** Beside a transition both of its colours are seen and measured, decimal degrees (own band: a transition and two settings). */
    private static final double EDGE_DEG = 0.1;

    private final List<List<Transition>> signals = new ArrayList<>();

    private ShownColours(Project project, EquipmentType type) {
        add(type.getSectors());
        for (ApproachAid aid : Projects.aids(project)) {
            if (aid.getEquipment() == type) {
                aid.getUnits().stream().map(LightUnit::getTransitions).forEach(this::add);
            }
        }
    }

    static ShownColours of(Project project, EquipmentType type) {
        return new ShownColours(project, type);
    }

    private void add(List<Transition> transitions) {
        if (!transitions.isEmpty() && transitions.stream().allMatch(transition -> transition.getOffsetDeg() != null)) {
            signals.add(transitions.stream().sorted(Comparator.comparing(Transition::getOffsetDeg)).toList());
        }
    }

    /** Returns whether nothing says what is shown. */
    boolean isUnknown() {
        return signals.isEmpty();
    }

    /** Returns whether a colour is shown at an elevation, by one unit at least. */
    boolean shows(LightColour colour, double elevationDeg) {
        return signals.stream().anyMatch(signal -> at(signal, elevationDeg).contains(colour));
    }

    private static Set<LightColour> at(List<Transition> signal, double elevationDeg) {
        Set<LightColour> seen = EnumSet.noneOf(LightColour.class);
        for (int i = 0; i <= signal.size(); i++) {
            double from = i == 0 ? -Double.MAX_VALUE : signal.get(i - 1).getOffsetDeg() - EDGE_DEG;
            double to = i == signal.size() ? Double.MAX_VALUE : signal.get(i).getOffsetDeg() + EDGE_DEG;
            if (elevationDeg >= from && elevationDeg <= to) {
                seen.add(i == 0 ? signal.get(0).getBelowColour() : signal.get(i - 1).getAboveColour());
                seen.add(i == signal.size() ? signal.get(i - 1).getAboveColour() : signal.get(i).getBelowColour());
            }
        }
        return seen;
    }
}
