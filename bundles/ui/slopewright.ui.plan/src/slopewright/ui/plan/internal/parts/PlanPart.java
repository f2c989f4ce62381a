package slopewright.ui.plan.internal.parts;

import java.util.List;

import org.eclipse.gef.EditPolicy;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.Style;
import slopewright.model.Identified;
import slopewright.ui.diagram.parts.ElementPart;
import slopewright.ui.diagram.policies.OutlinePolicy;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.PlanLayer;

/**
 * A part of a plan. It shows that it is selected by an outline.
 *
 * @param <T> the type of the element
 */
public abstract class PlanPart<T extends Identified> extends ElementPart<T> {

    static final Style OUTLINE = Style.line(Ink.WHEELS, 0.6);

    private final PlanContext context;
    private final PlanLayer layer;

    PlanPart(T element, PlanContext context, PlanLayer layer) {
        super(element, context.diagram());
        this.context = context;
        this.layer = layer;
    }

    final PlanContext context() {
        return context;
    }

    @Override
    protected final PlanLayer layer() {
        return layer;
    }

    @Override
    protected void createEditPolicies() {
        installEditPolicy(EditPolicy.SELECTION_FEEDBACK_ROLE, new OutlinePolicy(context.diagram(), this::outline));
    }

    /** Returns what is shown over the part while it is selected: the outlines of its marks. */
    List<Mark> outline() {
        return markFigure().marks().stream().filter(mark -> !(mark instanceof Mark.Label)).limit(1).map(PlanPart::outlined).toList();
    }

    static Mark outlined(Mark mark) {
        if (mark instanceof Mark.Disc disc) {
            return new Mark.Disc(disc.centre(), disc.radiusMm() + 0.8, OUTLINE, disc.elementId());
        }
        Mark.Path path = (Mark.Path) mark;
        return new Mark.Path(path.points(), path.closed(), OUTLINE, path.elementId());
    }

    @Override
    protected void refreshVisuals() {
        super.refreshVisuals();
        if (getEditPolicy(EditPolicy.SELECTION_FEEDBACK_ROLE) instanceof OutlinePolicy policy) {
            policy.update();
        }
    }
}
