package slopewright.ui.plan.internal.figures;

import java.util.Optional;

import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.graphics.Color;

import slopewright.drawing.scene.Ink;
import slopewright.evaluation.terrain.TerrainField;
import slopewright.siting.site.PlanPoint;
import slopewright.ui.diagram.WorldView;
import slopewright.ui.diagram.figures.Inks;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.PlanLayer;
import slopewright.ui.plan.internal.Readings;
import slopewright.ui.plan.internal.places.Obstructions;
import slopewright.ui.plan.internal.places.PlanTerrain;

/** Shades the plan by the height of the ground, where a model of the terrain knows it; what it does not know stays bare. */
public final class TerrainLayer extends Figure {

    private static final int CELL_PX = 4;
    private static final int BANDS = 10;
    private static final double PALEST = 0.12;
    private static final double DARKEST = 0.62;
    /** A cell is at most so many times as wide as its point knows the ground around it. */
    private static final double ACROSS = 1.42;
    private static final int KEY_PX = 12;
    private static final int KEY_FROM_EDGE_PX = 60;

    private final PlanContext context;
    private Optional<Obstructions> read = Optional.empty();
    private Optional<PlanTerrain> terrain = Optional.empty();
    private double leastM;
    private double mostM;
    private byte[] bands = {};
    private int columns;

    /** Lays the shading under a plan. */
    public TerrainLayer(PlanContext context) {
        this.context = context;
        context.diagram().layer(PlanLayer.IMAGES).add(this);
        context.diagram().view().addListener(this::update);
    }

    /** Shades anew after the view or the project has changed. */
    public void update() {
        Optional<Obstructions> now = context.obstructions();
        if (!now.equals(read)) {
            read = now;
            terrain = now.flatMap(Obstructions::terrain);
            leastM = Double.POSITIVE_INFINITY;
            mostM = Double.NEGATIVE_INFINITY;
            terrain.ifPresent(found -> found.fields().forEach(this::measure));
        }
        WorldView view = context.diagram().view();
        setBounds(new Rectangle(0, 0, (int) view.widthPx(), (int) view.heightPx()));
        columns = (int) (view.widthPx() / CELL_PX) + 1;
        bands = terrain.map(found -> shaded(found, view)).orElse(new byte[0]);
        repaint();
    }

    private void measure(TerrainField field) {
        for (int i = 0; i < field.count(); i++) {
            leastM = Math.min(leastM, field.point(i).heightM());
            mostM = Math.max(mostM, field.point(i).heightM());
        }
    }

    /** Returns the band of each cell of the screen, 0 where nothing is known. */
    private byte[] shaded(PlanTerrain ground, WorldView view) {
        int rows = (int) (view.heightPx() / CELL_PX) + 1;
        byte[] found = new byte[columns * rows];
        for (TerrainField field : ground.fields()) {
            int around = Math.min(columns + rows, (int) Math.ceil(ACROSS * field.reachM() * view.scale() / CELL_PX / 2));
            for (int i = 0; i < field.count(); i++) {
                PlanPoint at = ground.axis().toPlane(field.point(i));
                int column = (int) Math.floor(view.toX(at.eastM()) / CELL_PX);
                int row = (int) Math.floor(view.toY(at.northM()) / CELL_PX);
                byte band = band(field.point(i).heightM());
                for (int y = Math.max(0, row - around); y <= Math.min(rows - 1, row + around); y++) {
                    for (int x = Math.max(0, column - around); x <= Math.min(columns - 1, column + around); x++) {
                        found[y * columns + x] = (byte) Math.max(found[y * columns + x], band);
                    }
                }
            }
        }
        return found;
    }

    private byte band(double heightM) {
        double share = mostM > leastM ? (heightM - leastM) / (mostM - leastM) : 0;
        return (byte) (1 + Math.min(BANDS - 1, (int) (share * BANDS)));
    }

    /** Returns the band that is shown at a pixel, from 1 for the lowest; 0 where the ground is not known. */
    public int band(int xPx, int yPx) {
        int at = yPx / CELL_PX * columns + xPx / CELL_PX;
        return at >= 0 && at < bands.length ? bands[at] : 0;
    }

    private static Color colour(int band) {
        Color paper = Inks.colour(Ink.PAPER);
        Color ground = Inks.colour(Ink.GROUND);
        double share = PALEST + (DARKEST - PALEST) * (band - 1) / (BANDS - 1);
        return new Color(between(paper.getRed(), ground.getRed(), share), between(paper.getGreen(), ground.getGreen(), share),
                between(paper.getBlue(), ground.getBlue(), share));
    }

    private static int between(int from, int to, double share) {
        return (int) Math.round(from + (to - from) * share);
    }

    @Override
    protected void paintFigure(Graphics graphics) {
        for (int start = 0; start < bands.length;) {
            int end = start + 1;
            while (end < bands.length && end % columns != 0 && bands[end] == bands[start]) {
                end++;
            }
            if (bands[start] != 0) {
                graphics.setBackgroundColor(colour(bands[start]));
                graphics.fillRectangle(start % columns * CELL_PX, start / columns * CELL_PX, (end - start) * CELL_PX, CELL_PX);
            }
            start = end;
        }
        terrain.ifPresent(ground -> key(graphics, ground));
    }

    /** Says at the right edge which shade is how high. */
    private void key(Graphics graphics, PlanTerrain ground) {
        int left = getBounds().width - KEY_FROM_EDGE_PX;
        int top = (getBounds().height - BANDS * KEY_PX) / 2;
        for (int band = 1; band <= BANDS; band++) {
            graphics.setBackgroundColor(colour(band));
            graphics.fillRectangle(left, top + (BANDS - band) * KEY_PX, KEY_PX, KEY_PX);
        }
        graphics.setForegroundColor(Inks.colour(Ink.TEXT));
        graphics.drawText(Readings.coarse(ground.originElevationM() + mostM), left, top - 2 * KEY_PX);
        graphics.drawText(Readings.coarse(ground.originElevationM() + leastM), left, top + BANDS * KEY_PX + 2);
    }

    @Override
    public boolean containsPoint(int x, int y) {
        return false;
    }
}
