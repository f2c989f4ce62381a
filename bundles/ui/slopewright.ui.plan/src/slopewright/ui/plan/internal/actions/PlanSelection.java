package slopewright.ui.plan.internal.actions;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.gef.EditPart;

import slopewright.model.ApproachAid;
import slopewright.model.Identified;
import slopewright.model.LightUnit;
import slopewright.model.util.Projects;
import slopewright.ui.plan.internal.PlanContext;

/** What is selected in a plan, as the commands see it. */
public final class PlanSelection {

    private final PlanContext context;

    /** Makes one for a plan. */
    public PlanSelection(PlanContext context) {
        this.context = context;
    }

    /** Returns the selected parts. */
    public List<EditPart> parts() {
        List<EditPart> parts = new ArrayList<>();
        for (Object part : context.diagram().viewer().getSelectedEditParts()) {
            parts.add((EditPart) part);
        }
        return parts;
    }

    /** Returns the selected elements. */
    public List<Identified> elements() {
        return parts().stream().map(EditPart::getModel).filter(Identified.class::isInstance).map(Identified.class::cast).toList();
    }

    /** Returns the aid that is selected or has something selected, empty where there are several or none. */
    public Optional<ApproachAid> aid() {
        Set<ApproachAid> aids = new LinkedHashSet<>();
        elements().forEach(element -> Projects.aid(element).ifPresent(aids::add));
        return aids.size() == 1 ? aids.stream().findFirst() : Optional.empty();
    }

    /** Returns the selected units, with those of selected aids. */
    public List<LightUnit> units() {
        Set<LightUnit> units = new LinkedHashSet<>();
        for (Identified element : elements()) {
            if (element instanceof LightUnit unit) {
                units.add(unit);
            } else if (element instanceof ApproachAid aid) {
                units.addAll(aid.getUnits());
            }
        }
        return List.copyOf(units);
    }

    /** Returns the unit that leads: the one selected last, else the first one of the selected aid. */
    public Optional<LightUnit> lead() {
        List<Identified> elements = elements();
        if (!elements.isEmpty() && elements.get(elements.size() - 1) instanceof LightUnit unit) {
            return Optional.of(unit);
        }
        return units().stream().findFirst();
    }
}
