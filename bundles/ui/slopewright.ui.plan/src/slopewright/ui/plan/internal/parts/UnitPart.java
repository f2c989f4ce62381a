package slopewright.ui.plan.internal.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPolicy;
import org.eclipse.gef.Request;

import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.edit.RemoveElement;
import slopewright.model.LightUnit;
import slopewright.model.util.Projects;
import slopewright.ui.diagram.policies.RemovePolicy;
import slopewright.ui.diagram.tools.MoveTracker;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.PlanLayer;
import slopewright.ui.plan.internal.Readings;
import slopewright.ui.plan.internal.figures.AidMarks;
import slopewright.ui.plan.internal.figures.UnitMarks;
import slopewright.ui.plan.internal.policies.MoveUnitsPolicy;
import slopewright.ui.plan.internal.tools.RowTracker;

/** The part of a light unit. The first click on it means its whole aid, the next the unit itself. */
public final class UnitPart extends PlanPart<LightUnit> {

    UnitPart(LightUnit unit, PlanContext context) {
        super(unit, context, PlanLayer.UNITS);
    }

    @Override
    protected List<Mark> marks() {
        return UnitMarks.of(context(), element());
    }

    @Override
    List<Mark> outline() {
        return UnitMarks.ring(context(), element());
    }

    @Override
    protected void elementChanged(Notification notification) {
        super.elementChanged(notification);
        if (getParent() instanceof AidPart aid) {
            aid.refresh();
        }
    }

    @Override
    protected void createEditPolicies() {
        super.createEditPolicies();
        installEditPolicy(EditPolicy.COMPONENT_ROLE, new RemovePolicy(() -> RemoveElement.of(element())));
        Projects.aid(element()).ifPresent(aid -> installEditPolicy(EditPolicy.PRIMARY_DRAG_ROLE,
                new MoveUnitsPolicy(context(), aid, this::moved)));
    }

    /** Returns the units of the same aid that are selected one by one. */
    private List<LightUnit> selectedSiblings() {
        List<LightUnit> selected = new ArrayList<>();
        for (Object part : getViewer().getSelectedEditParts()) {
            if (part instanceof UnitPart unit && unit.getParent() == getParent()) {
                selected.add(unit.element());
            }
        }
        return selected;
    }

    /** Returns what moves with this unit: all that are selected, where it is one of them. */
    private List<LightUnit> moved() {
        List<LightUnit> selected = selectedSiblings();
        return selected.contains(element()) ? selected : List.of(element());
    }

    @Override
    public DragTracker getDragTracker(Request request) {
        boolean alone = getSelected() != EditPart.SELECTED_NONE || getParent().getChildren().size() == 1 || !selectedSiblings().isEmpty();
        return alone ? new MoveTracker(this, diagram().view()) : new RowTracker(getParent(), this, diagram().view());
    }

    @Override
    public Optional<ScenePoint> anchor() {
        return AidMarks.place(context(), element());
    }

    @Override
    public Optional<ScenePoint> signPlace() {
        return Optional.of(element()).flatMap(unit -> AidMarks.before(context(), unit, SIGN_PX));
    }

    @Override
    public String description() {
        LightUnit unit = element();
        StringJoiner text = new StringJoiner("\n");
        text.add(AidPart.name(unit) + "  [" + unit.getId() + "]");
        if (unit.getSettingDeg() != null) {
            text.add(Messages.get("tip.setting", Readings.angle(unit.getSettingDeg())));
        }
        if (unit.getLensElevationM() != null) {
            text.add(Messages.get("tip.lens", Readings.length(unit.getLensElevationM())));
        }
        if (unit.getAlongM() != null) {
            text.add(Messages.get("tip.along", Readings.length(unit.getAlongM())));
        }
        if (unit.getRightM() != null) {
            text.add(Readings.side(unit.getRightM()));
        }
        return text.toString();
    }
}
