package slopewright.ui.plan.internal.grid;

import java.util.Optional;

import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.ScenePoint;
import slopewright.geometry.FramePoint;
import slopewright.siting.site.PlanAxis;
import slopewright.siting.site.PlanPoint;
import slopewright.ui.MessageTexts;
import slopewright.ui.diagram.WorldBox;
import slopewright.ui.diagram.WorldView;
import slopewright.ui.diagram.figures.Inks;
import slopewright.ui.plan.internal.PlanContext;

/**
 * A grid square to a runway, in metres from its threshold and its centre line. Its spacing follows the scale; each line is labelled where
 * it meets the edge of the window.
 */
public final class GridFigure extends Figure {

    private static final double TEXT_MM = 1.8;
    private static final int LINE_ALPHA = 70;
    private static final int AXIS_ALPHA = 150;
    private static final int OPAQUE = 255;
    private static final int MOST_LINES = 200;
    private static final int EDGE_PX = 3;

    private final PlanContext context;
    private final GridFrame frame;

    /** Makes the grid of a plan; it shows while the settings say so. */
    public GridFigure(PlanContext context) {
        this.context = context;
        this.frame = new GridFrame(context);
        context.diagram().view().addListener(this::update);
        context.settings().addListener(this::update);
        update();
    }

    /** Takes the room of the window and draws anew. */
    public void update() {
        WorldView view = context.diagram().view();
        setVisible(context.settings().isGrid());
        setBounds(new Rectangle(0, 0, (int) view.widthPx(), (int) view.heightPx()));
        repaint();
    }

    @Override
    public boolean containsPoint(int x, int y) {
        return false;
    }

    @Override
    protected void paintFigure(Graphics graphics) {
        Optional<PlanAxis> axis = frame.host().flatMap(context::axis);
        if (axis.isPresent()) {
            graphics.pushState();
            graphics.setAntialias(SWT.ON);
            graphics.setFont(context.diagram().fonts().of(TEXT_MM));
            paint(graphics, axis.get());
            graphics.popState();
        }
    }

    private void paint(Graphics graphics, PlanAxis axis) {
        double step = GridFrame.spacingM(context.diagram().view().scale());
        double[] range = range(axis);
        double[] along = lines(range[0], range[1], step);
        double[] right = lines(range[2], range[3], step);
        for (double at : along) {
            line(graphics, at, axis.toPlane(at, range[2]), axis.toPlane(at, range[3]), true);
        }
        for (double at : right) {
            line(graphics, at, axis.toPlane(range[0], at), axis.toPlane(range[1], at), false);
        }
    }

    /** Returns from where to where the window reaches in the frame: along, along, right, right. */
    private double[] range(PlanAxis axis) {
        WorldBox seen = context.diagram().view().visible();
        double[] range = {Double.MAX_VALUE, -Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE};
        for (double x : new double[] {seen.minX(), seen.maxX()}) {
            for (double y : new double[] {seen.minY(), seen.maxY()}) {
                FramePoint corner = axis.toFrame(new PlanPoint(x, y), 0);
                range[0] = Math.min(range[0], corner.alongM());
                range[1] = Math.max(range[1], corner.alongM());
                range[2] = Math.min(range[2], corner.rightM());
                range[3] = Math.max(range[3], corner.rightM());
            }
        }
        return range;
    }

    private static double[] lines(double from, double to, double step) {
        long first = (long) Math.ceil(from / step);
        int count = (int) Math.max(0, Math.min(MOST_LINES, Math.floor(to / step) - first + 1));
        double[] lines = new double[count];
        for (int i = 0; i < count; i++) {
            lines[i] = (first + i) * step;
        }
        return lines;
    }

    private void line(Graphics graphics, double atM, PlanPoint from, PlanPoint to, boolean isAlong) {
        WorldView view = context.diagram().view();
        ScenePoint start = new ScenePoint(view.toX(from.eastM()), view.toY(from.northM()));
        ScenePoint end = new ScenePoint(view.toX(to.eastM()), view.toY(to.northM()));
        graphics.setForegroundColor(Inks.colour(Ink.DIMENSION));
        graphics.setAlpha(Math.abs(atM) < 1e-6 ? AXIS_ALPHA : LINE_ALPHA);
        graphics.drawLine((int) Math.round(start.x()), (int) Math.round(start.y()), (int) Math.round(end.x()), (int) Math.round(end.y()));
        graphics.setAlpha(OPAQUE);
        label(graphics, text(atM, isAlong), start, end);
    }

    private static String text(double atM, boolean isAlong) {
        double shown = Math.abs(atM) < 1e-6 ? 0 : atM;
        String number = MessageTexts.renderer().fixed(Math.abs(shown), shown == Math.rint(shown) ? 0 : 1);
        String sign = shown == 0 ? "" : shown < 0 ? "−" : isAlong ? "+" : "";
        return isAlong ? sign + number : number + (shown == 0 ? "" : shown < 0 ? " L" : " R");
    }

    /** Writes at the place where a line enters the window, by the edge it leans to. */
    private void label(Graphics graphics, String text, ScenePoint start, ScenePoint end) {
        Font font = graphics.getFont();
        int wide = FigureUtilities.getTextWidth(text, font);
        int high = FigureUtilities.getFontMetrics(font).getHeight();
        Rectangle window = getBounds();
        boolean steep = Math.abs(end.y() - start.y()) > Math.abs(end.x() - start.x());
        double share = steep ? (EDGE_PX - start.y()) / (end.y() - start.y()) : (EDGE_PX - start.x()) / (end.x() - start.x());
        double x = start.x() + share * (end.x() - start.x());
        double y = start.y() + share * (end.y() - start.y());
        int left = (int) Math.round(steep ? x - wide / 2.0 : EDGE_PX);
        int top = (int) Math.round(steep ? EDGE_PX : y - high / 2.0);
        Rectangle box = new Rectangle(left - 2, top, wide + 4, high);
        if (window.contains(box)) {
            graphics.setBackgroundColor(Inks.colour(Ink.PAPER));
            graphics.setAlpha(200);
            graphics.fillRectangle(box);
            graphics.setAlpha(OPAQUE);
            graphics.setForegroundColor(Inks.colour(Ink.DIMENSION));
            graphics.drawText(text, left, top);
        }
    }
}
