package slopewright.ui.plan.internal.parts;

import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;

import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPolicy;
import org.eclipse.gef.Request;

import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.edit.RemoveElement;
import slopewright.model.Obstacle;
import slopewright.ui.MessageTexts;
import slopewright.ui.diagram.policies.RemovePolicy;
import slopewright.ui.diagram.tools.MoveTracker;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.PlanLayer;
import slopewright.ui.plan.internal.Readings;
import slopewright.ui.plan.internal.figures.ObstacleMarks;
import slopewright.ui.plan.internal.policies.MovePolicy;
import slopewright.ui.plan.internal.policies.ObstacleMover;

/** The part of an obstacle. */
public final class ObstaclePart extends PlanPart<Obstacle> {

    ObstaclePart(Obstacle obstacle, PlanContext context) {
        super(obstacle, context, PlanLayer.OBSTACLES);
    }

    @Override
    protected List<Mark> marks() {
        return ObstacleMarks.of(context(), element());
    }

    @Override
    List<Mark> outline() {
        return markFigure().marks().stream().filter(ObstaclePart::isShape).limit(1).map(PlanPart::outlined).toList();
    }

    /** Returns whether a mark is a shape of the obstacle and not a hatch. */
    private static boolean isShape(Mark mark) {
        return mark instanceof Mark.Path path && (path.closed() || path.style().widthMm() > 0.3);
    }

    @Override
    protected void createEditPolicies() {
        super.createEditPolicies();
        installEditPolicy(EditPolicy.COMPONENT_ROLE, new RemovePolicy(() -> RemoveElement.of(element())));
        installEditPolicy(EditPolicy.PRIMARY_DRAG_ROLE, new MovePolicy<>(context(), element(), ObstacleMover.get()));
    }

    @Override
    public DragTracker getDragTracker(Request request) {
        return new MoveTracker(this, diagram().view());
    }

    @Override
    public Optional<ScenePoint> anchor() {
        return context().places().points(element()).stream().findFirst();
    }

    @Override
    public String description() {
        StringJoiner text = new StringJoiner("\n");
        text.add(MessageTexts.label(element()) + "  [" + element().getId() + "]");
        ObstacleMarks.topM(element()).ifPresent(top -> text.add(Messages.get("tip.top", Readings.length(top))));
        context().obstruction(element()).ifPresent(worst -> {
            String how = worst.excessM() > 0 ? "tip.through" : "tip.below";
            text.add(Messages.get(how, Readings.length(Math.abs(worst.excessM())), MessageTexts.label(worst.aid().aid())));
        });
        context().obstructions().flatMap(all -> Readings.reason(all.uncompared(element()))).ifPresent(text::add);
        return text.toString();
    }
}
