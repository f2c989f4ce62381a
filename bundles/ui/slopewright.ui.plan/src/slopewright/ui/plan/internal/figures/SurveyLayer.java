package slopewright.ui.plan.internal.figures;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.ui.diagram.WorldView;
import slopewright.ui.diagram.figures.Inks;
import slopewright.ui.diagram.figures.MarkFigure;
import slopewright.ui.document.PickedPoint;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.PlanLayer;
import slopewright.ui.plan.internal.Readings;
import slopewright.ui.plan.internal.places.Obstruction;
import slopewright.ui.plan.internal.places.Obstructions;

/**
 * Draws the points of survey blocks: a dot for each place on the screen where one lies, a cross for those that stand above an obstacle
 * surface, and by how much beside the governing one of each block.
 */
public final class SurveyLayer {

    private static final int CELL_PX = 3;
    private static final int DOT_PX = 2;
    private static final double CROSS_PX = 3.5;
    private static final double BESIDE_PX = 10;
    private static final double LABEL_MM = 2;
    private static final double REACH_PX = 6;
    private static final double RING_MM = 2;

    private final PlanContext context;
    private final MarkFigure crosses;
    private final Dots dots = new Dots();
    private Optional<Obstructions> read = Optional.empty();
    private float[] points = {};
    private int[] cells = {};

    /** Lays the points into the layer of the obstacles of a plan. */
    public SurveyLayer(PlanContext context) {
        this.context = context;
        this.crosses = MarkFigure.passive(context.diagram(), this::marks);
        context.diagram().layer(PlanLayer.OBSTACLES).add(dots);
        context.diagram().layer(PlanLayer.OBSTACLES).add(crosses);
    }

    /** Draws the points as they stand now. */
    public void update() {
        crosses.update();
    }

    /** Returns whether the project was evaluated anew since the points were drawn. */
    public boolean isOutdated() {
        return !context.obstructions().equals(read);
    }

    /**
     * Returns the point that is drawn nearest to a pixel, empty where none is near.
     *
     * @param xPx pixels of the control
     * @param yPx pixels of the control
     */
    public Optional<PickedPoint> at(int xPx, int yPx) {
        WorldView view = context.diagram().view();
        double x = view.worldX(xPx);
        double y = view.worldY(yPx);
        double nearest = REACH_PX / view.scale();
        int found = -1;
        for (int i = 0; i < points.length; i += 2) {
            double distance = Math.hypot(points[i] - x, points[i + 1] - y);
            if (distance < nearest) {
                nearest = distance;
                found = i / 2;
            }
        }
        int number = found;
        return number < 0 ? Optional.empty() : read.flatMap(all -> all.surveyPoint(number));
    }

    /** Returns how many points are shown as standing above a surface. */
    public int crossed() {
        return context.obstructions().map(all -> all.pointsAbove().size()).orElse(0);
    }

    /** Asked for after each change of the view. */
    private List<Mark> marks() {
        Optional<Obstructions> now = context.obstructions();
        if (!now.equals(read)) {
            points = now.map(Obstructions::surveyPoints).orElse(new float[0]);
            read = now;
        }
        WorldView view = context.diagram().view();
        dots.setBounds(new Rectangle(0, 0, (int) view.widthPx(), (int) view.heightPx()));
        cells = cells(view);
        dots.repaint();
        Marks marks = new Marks("");
        now.ifPresent(all -> draw(marks, all, 1 / view.scale()));
        return marks.list();
    }

    private void draw(Marks marks, Obstructions all, double px) {
        context.document().viewState().picked().flatMap(all::place).ifPresent(at -> marks.disc(at, RING_MM, Style.line(Ink.WHEELS,
                0.5)));
        for (ScenePoint point : all.pointsAbove()) {
            cross(marks, point, CROSS_PX * px);
        }
        for (Obstruction block : all.blocks()) {
            if (block.excessM() > 0) {
                all.place(block).ifPresent(at -> {
                    cross(marks, at, 2 * CROSS_PX * px);
                    String text = block.comparison().label() + "  ✕ " + Messages.get("plan.through", Readings.length(block.excessM()));
                    marks.text(new ScenePoint(at.x() + BESIDE_PX * px, at.y()), text, Mark.Anchor.START, LABEL_MM, 0, Ink.PENETRATION);
                });
            }
        }
    }

    private static void cross(Marks marks, ScenePoint at, double arm) {
        Style style = Style.line(Ink.PENETRATION, 0.4);
        marks.line(style, List.of(new ScenePoint(at.x() - arm, at.y() - arm), new ScenePoint(at.x() + arm, at.y() + arm)));
        marks.line(style, List.of(new ScenePoint(at.x() - arm, at.y() + arm), new ScenePoint(at.x() + arm, at.y() - arm)));
    }

    /** Returns the middle of each cell of the screen in which a point lies, x and y alternating. */
    private int[] cells(WorldView view) {
        int columns = (int) (view.widthPx() / CELL_PX) + 1;
        int rows = (int) (view.heightPx() / CELL_PX) + 1;
        boolean[] taken = new boolean[columns * rows];
        int[] found = new int[Math.min(points.length, 2 * columns * rows)];
        int count = 0;
        for (int i = 0; i < points.length; i += 2) {
            int column = (int) Math.floor(view.toX(points[i]) / CELL_PX);
            int row = (int) Math.floor(view.toY(points[i + 1]) / CELL_PX);
            if (column >= 0 && column < columns && row >= 0 && row < rows && !taken[row * columns + column]) {
                taken[row * columns + column] = true;
                found[count++] = column * CELL_PX + CELL_PX / 2;
                found[count++] = row * CELL_PX + CELL_PX / 2;
            }
        }
        return Arrays.copyOf(found, count);
    }

    /** The dots; the mouse does not find them. */
    private final class Dots extends Figure {

        @Override
        protected void paintFigure(Graphics graphics) {
            Rectangle clip = graphics.getClip(new Rectangle());
            graphics.setBackgroundColor(Inks.colour(Ink.OBSTACLE));
            for (int i = 0; i < cells.length; i += 2) {
                if (clip.contains(cells[i], cells[i + 1])) {
                    graphics.fillRectangle(cells[i] - 1, cells[i + 1] - 1, DOT_PX, DOT_PX);
                }
            }
        }

        @Override
        public boolean containsPoint(int x, int y) {
            return false;
        }
    }
}
