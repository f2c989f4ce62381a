package slopewright.ui.plan.internal.parts;

import java.util.List;

import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPolicy;
import org.eclipse.gef.Request;

import slopewright.drawing.scene.Mark;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.ui.diagram.figures.GroundFigure;
import slopewright.ui.diagram.figures.MarkFigure;
import slopewright.ui.diagram.tools.PanTool;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.PlanLayer;
import slopewright.ui.plan.internal.policies.PlacePolicy;

/** The part of the project: the ground, on which things are placed and which moves the view when it is dragged. */
public final class ProjectPart extends PlanPart<Project> {

    /** Makes the part of a project. */
    ProjectPart(Project project, PlanContext context) {
        super(project, context, PlanLayer.GROUND);
    }

    @Override
    protected MarkFigure createFigure() {
        return new GroundFigure(diagram());
    }

    @Override
    protected void createEditPolicies() {
        installEditPolicy(EditPolicy.LAYOUT_ROLE, new PlacePolicy(context()));
    }

    @Override
    protected void refreshVisuals() {
        markFigure().update();
    }

    @Override
    protected List<Mark> marks() {
        return List.of();
    }

    @Override
    protected List<? extends Identified> childElements() {
        return element().getAerodrome() == null ? List.of() : List.of(element().getAerodrome());
    }

    @Override
    public DragTracker getDragTracker(Request request) {
        return new PanTool(diagram().view());
    }
}
