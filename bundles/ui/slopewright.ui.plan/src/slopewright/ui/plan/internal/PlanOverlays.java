package slopewright.ui.plan.internal;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.LayerConstants;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.ui.diagram.WorldView;
import slopewright.ui.diagram.figures.MarkFigure;
import slopewright.ui.plan.internal.figures.NoticeFigure;
import slopewright.ui.plan.internal.figures.OverlayFigure;
import slopewright.ui.plan.internal.grid.GridFigure;

/** What lies over the plan and stays where it is: scale bar, north arrow, legend, notices, and a hint where there is nothing to draw. */
public final class PlanOverlays {

    private final PlanContext context;
    private final OverlayFigure overlay;
    private final MarkFigure hint;
    private final NoticeFigure notice;
    private final GridFigure grid;

    /** Lays the overlays over a plan. */
    public PlanOverlays(PlanContext context) {
        this.context = context;
        overlay = new OverlayFigure(context.diagram());
        hint = MarkFigure.passive(context.diagram(), this::hint);
        notice = new NoticeFigure(context.diagram());
        grid = new GridFigure(context);
        IFigure layer = context.diagram().layer(PlanLayer.OVERLAY);
        layer.add(overlay);
        context.diagram().layer(PlanLayer.GRID).add(grid);
        context.diagram().layer(PlanLayer.REMARKS).add(hint);
        context.diagram().layer(LayerConstants.FEEDBACK_LAYER).add(notice);
    }

    private List<Mark> hint() {
        List<Mark> marks = new ArrayList<>();
        if (context.plane().isEmpty()) {
            WorldView view = context.diagram().view();
            ScenePoint middle = new ScenePoint(view.worldX(view.widthPx() / 2), view.worldY(view.heightPx() / 2));
            String text = context.problem().orElseGet(() -> Messages.get("plan.empty"));
            marks.add(new Mark.Label(middle, text, Mark.Anchor.MIDDLE, 2.6, 0, Ink.TEXT, ""));
        }
        return marks;
    }

    /** Brings all up to date after the project has changed. */
    public void update() {
        overlay.update();
        grid.update();
        hint.update();
    }

    /** Shows why something could not be done. */
    public void notice(String text) {
        notice.show(text);
    }

    /** Returns the notice that is shown, empty where there is none. */
    public String notice() {
        return notice.text();
    }

    /** Takes the notice away. */
    public void dismiss() {
        notice.dismiss();
    }
}
