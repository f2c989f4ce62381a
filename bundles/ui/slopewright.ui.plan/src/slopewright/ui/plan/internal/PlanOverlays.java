package slopewright.ui.plan.internal;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.LayerConstants;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.evaluation.obstacles.Uncompared;
import slopewright.model.util.Projects;
import slopewright.ui.diagram.WorldView;
import slopewright.ui.diagram.figures.MarkFigure;
import slopewright.ui.plan.internal.figures.NoticeFigure;
import slopewright.ui.plan.internal.figures.OverlayFigure;
import slopewright.ui.plan.internal.grid.GridFigure;
import slopewright.ui.plan.internal.places.Obstructions;

/** What lies over the plan and stays where it is: scale bar, north arrow, legend, notices, and a hint where there is nothing to draw. */
public final class PlanOverlays {

    private static final int EDGE_PX = 14;
    private static final double LINE_MM = 6;
    private static final double BELOW_EDGE_MM = 4;

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

    /** Says that there is nothing to draw, or what could not be compared with the obstacle surfaces. */
    private List<Mark> hint() {
        List<Mark> marks = new ArrayList<>();
        WorldView view = context.diagram().view();
        List<Uncompared> open = context.obstructions().map(Obstructions::uncompared).orElse(List.of());
        if (context.plane().isEmpty()) {
            context.places().problem().map(List::of).orElseGet(() -> List.of(Messages.get("plan.empty"), Messages.get("plan.empty-draw")))
                    .forEach(text -> marks.add(inMiddle(view, text, marks.size())));
        } else if (Projects.hosts(context.project()).isEmpty()) {
            marks.add(inMiddle(view, Messages.get("plan.no-site"), 0));
        } else if (context.isComparing()) {
            marks.add(inCorner(view, Messages.get("plan.comparing"), Ink.TEXT));
        } else if (!open.isEmpty()) {
            marks.add(inCorner(view, "? " + Messages.get("read.uncompared", Readings.names(open)), Ink.PENETRATION));
        }
        return marks;
    }

    private Mark inMiddle(WorldView view, String text, int line) {
        double belowPx = line * LINE_MM * context.diagram().fonts().pxPerMm();
        ScenePoint middle = new ScenePoint(view.worldX(view.widthPx() / 2), view.worldY(view.heightPx() / 2 + belowPx));
        return new Mark.Label(middle, text, Mark.Anchor.MIDDLE, 2.6, 0, Ink.TEXT, "");
    }

    private Mark inCorner(WorldView view, String text, Ink ink) {
        ScenePoint corner = new ScenePoint(view.worldX(EDGE_PX), view.worldY(BELOW_EDGE_MM * context.diagram().fonts().pxPerMm()));
        return new Mark.Label(corner, text, Mark.Anchor.START, 2, 0, ink, "");
    }

    /** Returns what it says in the plan itself; empty where nothing. */
    public String hintText() {
        return hint().stream().map(mark -> ((Mark.Label) mark).text()).findFirst().orElse("");
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
