package slopewright.ui.plan.internal.figures;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.Label;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.graphics.Point;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.model.Obstacle;
import slopewright.ui.MessageTexts;
import slopewright.ui.diagram.WorldBox;
import slopewright.ui.diagram.WorldView;
import slopewright.ui.diagram.figures.Inks;
import slopewright.ui.diagram.figures.MarkFigure;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.PlanLayer;
import slopewright.ui.plan.internal.places.ObstacleIndex;

/**
 * Draws obstacles in great number as one figure. Close up each has its symbol and label; from afar there is a dot for each place on the
 * screen where one stands, and those through an obstacle surface keep their symbol.
 */
public final class ObstacleField {

    private static final int MOST_SYMBOLS = 400;
    private static final int DOT_PX = 3;
    private static final int CELL_PX = 5;
    private static final double REACH_PX = 8;

    private final PlanContext context;
    private final MarkFigure symbols;
    private final Dots dots = new Dots();
    private Set<Obstacle> apart = Set.of();
    private int[] cells = {};

    /** Makes the field of a plan and lays it into the layer of the obstacles. */
    public ObstacleField(PlanContext context) {
        this.context = context;
        this.symbols = MarkFigure.passive(context.diagram(), this::marks);
        layer().add(dots);
        layer().add(symbols);
    }

    /** Takes the field out of its layer. */
    public void remove() {
        layer().remove(symbols);
        layer().remove(dots);
    }

    private IFigure layer() {
        return context.diagram().layer(PlanLayer.OBSTACLES);
    }

    /** Returns the figure that is hit where an obstacle stands. */
    public IFigure figure() {
        return dots;
    }

    /** Draws anew; some obstacles are drawn elsewhere. */
    public void update(Set<Obstacle> drawnElsewhere) {
        apart = new HashSet<>(drawnElsewhere);
        symbols.update();
    }

    /** Returns the obstacle that stands at a pixel, the nearest one, empty where none does. */
    public Optional<Obstacle> at(int x, int y) {
        WorldView view = context.diagram().view();
        double reach = REACH_PX / view.scale();
        ScenePoint place = new ScenePoint(view.worldX(x), view.worldY(y));
        List<ObstacleIndex.Entry> near = new ArrayList<>();
        context.places().obstacles().query(new WorldBox(place.x(), place.y(), place.x(), place.y()).grown(reach), near::add);
        return near.stream().filter(entry -> !apart.contains(entry.obstacle()))
                .min((first, second) -> Double.compare(distance(first, place), distance(second, place))).map(ObstacleIndex.Entry::obstacle);
    }

    private static double distance(ObstacleIndex.Entry entry, ScenePoint place) {
        return Math.hypot(entry.middle().x() - place.x(), entry.middle().y() - place.y());
    }

    /** Asked for after each change of the view: sorts what can be seen into symbols and dots. */
    private List<Mark> marks() {
        WorldView view = context.diagram().view();
        dots.setBounds(new Rectangle(0, 0, (int) view.widthPx(), (int) view.heightPx()));
        List<ObstacleIndex.Entry> seen = new ArrayList<>();
        context.places().obstacles().query(view.visible(), seen::add);
        boolean close = seen.size() <= MOST_SYMBOLS;
        List<Mark> marks = new ArrayList<>();
        int crossed = 0;
        for (ObstacleIndex.Entry entry : seen) {
            boolean through = !close && crossed < MOST_SYMBOLS && isThrough(entry.obstacle());
            crossed += through ? 1 : 0;
            if ((close || through) && !apart.contains(entry.obstacle())) {
                marks.addAll(ObstacleMarks.of(context, entry.obstacle()));
            }
        }
        cells = close ? new int[0] : cells(seen, view);
        dots.repaint();
        return marks;
    }

    private boolean isThrough(Obstacle obstacle) {
        return context.obstruction(obstacle).filter(worst -> worst.excessM() > 0).isPresent();
    }

    private static int[] cells(List<ObstacleIndex.Entry> seen, WorldView view) {
        int columns = (int) (view.widthPx() / CELL_PX) + 2;
        int rows = (int) (view.heightPx() / CELL_PX) + 2;
        boolean[] taken = new boolean[columns * rows];
        int[] found = new int[2 * Math.min(seen.size(), columns * rows)];
        int count = 0;
        for (ObstacleIndex.Entry entry : seen) {
            int x = (int) view.toX((entry.box().minX() + entry.box().maxX()) / 2);
            int y = (int) view.toY((entry.box().minY() + entry.box().maxY()) / 2);
            int cell = y / CELL_PX * columns + x / CELL_PX;
            if (x >= 0 && y >= 0 && cell < taken.length && x / CELL_PX < columns && !taken[cell]) {
                taken[cell] = true;
                found[count++] = x;
                found[count++] = y;
            }
        }
        return Arrays.copyOf(found, count);
    }

    /** The dots, and what the mouse finds. */
    private final class Dots extends Figure {

        @Override
        protected void paintFigure(Graphics graphics) {
            if (cells.length == 0) {
                return;
            }
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
            return getBounds().contains(x, y) && at(x, y).isPresent();
        }

        @Override
        public IFigure getToolTip() {
            Point pointer = context.pointer();
            return at(pointer.x, pointer.y).<IFigure>map(found -> new Label(MessageTexts.label(found))).orElse(null);
        }
    }
}
