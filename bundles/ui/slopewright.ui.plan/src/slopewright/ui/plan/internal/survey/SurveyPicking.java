package slopewright.ui.plan.internal.survey;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;

import slopewright.ui.document.ViewState;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.figures.SurveyLayer;
import slopewright.ui.plan.internal.parts.AerodromePart;
import slopewright.ui.plan.internal.parts.ProjectPart;
import slopewright.ui.plan.internal.tools.SelectTool;

/** Picks the point of a survey block that is clicked where nothing else stands; the properties then say what is known of it. */
public final class SurveyPicking {

    private static final int STILL_PX = 3;

    private final PlanContext context;
    private final SurveyLayer layer;
    private final Runnable follower;
    private Point pressed = new Point();

    /** Listens to the control of a plan, which is there. */
    public SurveyPicking(PlanContext context, SurveyLayer layer) {
        this.context = context;
        this.layer = layer;
        this.follower = layer::update;
        viewer().getControl().addListener(SWT.MouseDown, event -> pressed = new Point(event.x, event.y));
        viewer().getControl().addListener(SWT.MouseUp, this::released);
        state().addSelectionListener(follower);
    }

    private GraphicalViewer viewer() {
        return context.diagram().viewer();
    }

    private ViewState state() {
        return context.document().viewState();
    }

    private void released(Event event) {
        boolean click = event.button == 1 && (event.stateMask & SWT.MODIFIER_MASK) == 0
                && pressed.getDistance(new Point(event.x, event.y)) <= STILL_PX;
        if (click && viewer().getEditDomain().getActiveTool() instanceof SelectTool) {
            Object hit = viewer().findObjectAt(new Point(event.x, event.y));
            if (hit instanceof ProjectPart || hit instanceof AerodromePart) {
                layer.at(event.x, event.y).ifPresent(state()::pick);
            }
        }
    }

    /** Ends it. */
    public void dispose() {
        state().removeSelectionListener(follower);
    }
}
