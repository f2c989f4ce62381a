package slopewright.ui.plan.internal.parts;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.function.Supplier;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPolicy;
import org.eclipse.gef.Request;

import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.edit.RemoveAid;
import slopewright.evaluation.Attempt;
import slopewright.model.ApproachAid;
import slopewright.model.Identified;
import slopewright.model.LightUnit;
import slopewright.siting.Families;
import slopewright.ui.MessageTexts;
import slopewright.ui.diagram.figures.MarkFigure;
import slopewright.ui.diagram.policies.RemovePolicy;
import slopewright.ui.diagram.tools.MoveTracker;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.PlanLayer;
import slopewright.ui.plan.internal.Readings;
import slopewright.ui.plan.internal.TrialFigures;
import slopewright.ui.plan.internal.figures.AidMarks;
import slopewright.ui.plan.internal.figures.BeamMarks;
import slopewright.ui.plan.internal.figures.DimensionMarks;
import slopewright.ui.plan.internal.figures.UnitMarks;
import slopewright.ui.plan.internal.policies.MoveUnitsPolicy;

/** The part of an approach aid: its bars and labels; and in layers of their own its obstacle surface, beams and dimensions. */
public final class AidPart extends PlanPart<ApproachAid> {

    private final Map<PlanLayer, MarkFigure> beside = new EnumMap<>(PlanLayer.class);

    AidPart(ApproachAid aid, PlanContext context) {
        super(aid, context, PlanLayer.AIDS);
    }

    @Override
    protected List<Mark> marks() {
        return AidMarks.of(context(), element());
    }

    @Override
    protected List<? extends Identified> childElements() {
        return element().getUnits();
    }

    @Override
    public void addNotify() {
        lay(PlanLayer.SURFACES, () -> AidMarks.surface(context(), element()));
        lay(PlanLayer.BEAMS, () -> BeamMarks.of(context(), element()));
        lay(PlanLayer.DIMENSIONS, () -> DimensionMarks.of(context(), element()));
        super.addNotify();
    }

    private void lay(PlanLayer layer, Supplier<List<Mark>> marks) {
        MarkFigure figure = MarkFigure.passive(diagram(), marks);
        beside.put(layer, figure);
        diagram().layer(layer).add(figure);
    }

    @Override
    public void removeNotify() {
        super.removeNotify();
        beside.forEach((layer, figure) -> diagram().layer(layer).remove(figure));
        beside.clear();
    }

    @Override
    protected void refreshVisuals() {
        super.refreshVisuals();
        beside.values().forEach(MarkFigure::update);
    }

    @Override
    protected void elementChanged(Notification notification) {
        super.elementChanged(notification);
    }

    @Override
    protected void createEditPolicies() {
        super.createEditPolicies();
        installEditPolicy(EditPolicy.COMPONENT_ROLE, new RemovePolicy(() -> RemoveAid.of(element())));
        installEditPolicy(EditPolicy.PRIMARY_DRAG_ROLE, new MoveUnitsPolicy(context(), element(), () -> element().getUnits()));
    }

    @Override
    public DragTracker getDragTracker(Request request) {
        return new MoveTracker(this, diagram().view());
    }

    @Override
    List<Mark> outline() {
        List<Mark> rings = new ArrayList<>();
        if (AidMarks.isFar(context(), element())) {
            markFigure().marks().stream().filter(mark -> !(mark instanceof Mark.Label)).map(PlanPart::outlined).forEach(rings::add);
        } else {
            element().getUnits().forEach(unit -> rings.addAll(UnitMarks.ring(context(), unit)));
        }
        return rings;
    }

    @Override
    public Optional<ScenePoint> anchor() {
        return element().getUnits().stream().flatMap(unit -> AidMarks.place(context(), unit).stream()).findFirst();
    }

    @Override
    public Optional<ScenePoint> signPlace() {
        return element().getUnits().stream().findFirst().flatMap(unit -> AidMarks.before(context(), unit, SIGN_PX));
    }

    @Override
    public String description() {
        StringJoiner text = new StringJoiner("\n");
        text.add(MessageTexts.label(element()) + "  [" + element().getId() + "]");
        String family = String.valueOf(element().getFamilyKey());
        text.add(Families.find(family).map(found -> MessageTexts.of(Families.name(found))).orElse(Messages.get("tip.unknown-family",
                family)));
        if (element().getSlopeDeg() != null) {
            text.add(Messages.get("tip.slope", Readings.angle(element().getSlopeDeg())));
        }
        Readings.of(context().evaluation(element()).then(evaluation -> Attempt.success(TrialFigures.of(evaluation))))
                .forEach(line -> text.add(line.text()));
        return text.toString();
    }

    /** Returns the name of a unit for people. */
    static String name(LightUnit unit) {
        return Messages.get("tip.unit", Objects.requireNonNullElse(unit.getLabel(), "?"));
    }
}
