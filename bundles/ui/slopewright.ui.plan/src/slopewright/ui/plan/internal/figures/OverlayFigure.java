package slopewright.ui.plan.internal.figures;

import java.util.List;

import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.PointList;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;

import slopewright.drawing.scene.Ink;
import slopewright.geometry.Lengths;
import slopewright.ui.MessageTexts;
import slopewright.ui.diagram.Diagram;
import slopewright.ui.diagram.WorldView;
import slopewright.ui.diagram.figures.Inks;
import slopewright.ui.diagram.figures.MarkFigure;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.preferences.Preferences;

/** What stays where it is when the plan moves: scale bar, north arrow and legend. */
public final class OverlayFigure extends MarkFigure {

    private static final int EDGE_PX = 14;
    private static final double WANTED_BAR_PX = 150;
    private static final int LEAST_BAR_ROOM_PX = 22;
    private static final int ARROW_PX = 34;

    private record Entry(Ink ink, int form, String key) {

        String text() {
            return Messages.get("legend." + key);
        }
    }

    private static final int LINE = 0;
    private static final int DASHED = 1;
    private static final int CROSS = 2;
    private static final int MAST = 3;
    private static final int BOX = 4;

    private static final List<Entry> LEGEND = List.of(new Entry(Ink.UNIT, BOX, "unit"),
            new Entry(Ink.SURFACE, DASHED, "surface"), new Entry(Ink.OBSTACLE, MAST, "obstacle"),
            new Entry(Ink.PENETRATION, CROSS, "through"), new Entry(Ink.TAXIWAY, LINE, "taxiway"));

    private final Diagram diagram;

    /** Makes the overlay of a diagram. */
    public OverlayFigure(Diagram diagram) {
        super(diagram, List::of);
        this.diagram = diagram;
    }

    @Override
    public void update() {
        WorldView view = diagram.view();
        setBounds(new Rectangle(0, 0, (int) view.widthPx(), (int) view.heightPx()));
        repaint();
    }

    @Override
    public boolean containsPoint(int x, int y) {
        return false;
    }

    @Override
    protected void paintFigure(Graphics graphics) {
        graphics.pushState();
        graphics.setAntialias(SWT.ON);
        graphics.setFont(diagram.fonts().of(2));
        scaleBar(graphics, diagram.fonts().of(2));
        northArrow(graphics, diagram.fonts().of(2));
        if (hasLegend()) {
            legend(graphics, diagram.fonts().of(2));
        }
        graphics.popState();
    }

    private boolean hasLegend() {
        return diagram.view().heightPx() > 320 && diagram.view().widthPx() > 520;
    }

    @Override
    public List<Rectangle> reserved() {
        Font font = diagram.fonts().of(2);
        return hasLegend() ? List.of(barRoom(font), arrowRoom(font), legendRoom(font)) : List.of(barRoom(font), arrowRoom(font));
    }

    private Rectangle barRoom(Font font) {
        boolean feet = Preferences.isFeet();
        double scale = diagram.view().scale() * (feet ? Lengths.METRES_PER_FOOT : 1);
        double length = bar(scale);
        int high = Math.max(LEAST_BAR_ROOM_PX, lineHeight(font) + 6);
        return new Rectangle(EDGE_PX - 6, getBounds().height - EDGE_PX - 3 - high / 2, (int) Math.round(length * scale)
                + FigureUtilities.getTextWidth(barText(length, feet), font) + 22, high);
    }

    private Rectangle arrowRoom(Font font) {
        return new Rectangle(getBounds().width - EDGE_PX - 30, EDGE_PX - 6, 32, ARROW_PX + 8 + lineHeight(font));
    }

    private Rectangle legendRoom(Font font) {
        int wide = LEGEND.stream().mapToInt(entry -> FigureUtilities.getTextWidth(entry.text(), font)).max().orElse(0) + 40;
        int high = LEGEND.size() * lineHeight(font) + 8;
        return new Rectangle(getBounds().width - EDGE_PX - wide, getBounds().height - EDGE_PX - high, wide, high);
    }

    private static int lineHeight(Font font) {
        return FigureUtilities.getFontMetrics(font).getHeight() + 2;
    }

    /**
     * Returns the length of a scale bar: 1, 2 or 5 times a power of ten.
     *
     * @param scale pixels a unit of length
     * @return in that unit
     */
    static double bar(double scale) {
        double wanted = WANTED_BAR_PX / scale;
        double decade = Math.pow(10, Math.floor(Math.log10(wanted)));
        double share = wanted / decade;
        return decade * (share >= 5 ? 5 : share >= 2 ? 2 : 1);
    }

    private void scaleBar(Graphics graphics, Font font) {
        boolean feet = Preferences.isFeet();
        double scale = diagram.view().scale() * (feet ? Lengths.METRES_PER_FOOT : 1);
        double length = bar(scale);
        int px = (int) Math.round(length * scale);
        int y = getBounds().height - EDGE_PX - 6;
        String text = barText(length, feet);
        back(graphics, barRoom(font));
        graphics.setForegroundColor(Inks.colour(Ink.TEXT));
        graphics.setBackgroundColor(Inks.colour(Ink.TEXT));
        graphics.fillRectangle(EDGE_PX, y, px / 2, 6);
        graphics.drawRectangle(EDGE_PX, y, px - 1, 5);
        graphics.drawText(text, EDGE_PX + px + 6, y + 3 - FigureUtilities.getFontMetrics(font).getHeight() / 2);
    }

    private static String barText(double length, boolean feet) {
        boolean kilometres = !feet && length >= 1000;
        String number = MessageTexts.renderer().fixed(kilometres ? length / 1000 : length, length < 1 ? 1 : 0);
        return number + (feet ? " ft" : kilometres ? " km" : " m");
    }

    private void northArrow(Graphics graphics, Font font) {
        int x = getBounds().width - EDGE_PX - 14;
        int y = EDGE_PX - 3 + lineHeight(font) + ARROW_PX / 2;
        back(graphics, arrowRoom(font));
        PointList left = new PointList(new int[] {x, y - 16, x - 9, y + 16, x, y + 9});
        PointList right = new PointList(new int[] {x, y - 16, x + 9, y + 16, x, y + 9});
        graphics.setBackgroundColor(Inks.colour(Ink.TEXT));
        graphics.setForegroundColor(Inks.colour(Ink.TEXT));
        graphics.fillPolygon(left);
        graphics.drawPolygon(left);
        graphics.drawPolygon(right);
        graphics.drawText("N", x - FigureUtilities.getTextWidth("N", font) / 2, EDGE_PX - 3);
    }

    private void legend(Graphics graphics, Font font) {
        int line = lineHeight(font);
        Rectangle room = legendRoom(font);
        int x = room.x;
        int y = room.y;
        back(graphics, room);
        for (int i = 0; i < LEGEND.size(); i++) {
            int middle = y + 4 + i * line + line / 2;
            symbol(graphics, LEGEND.get(i), x + 8, middle);
            graphics.setForegroundColor(Inks.colour(Ink.TEXT));
            graphics.drawText(LEGEND.get(i).text(), x + 34, middle - line / 2);
        }
    }

    private static void symbol(Graphics graphics, Entry entry, int x, int y) {
        graphics.pushState();
        graphics.setForegroundColor(Inks.colour(entry.ink()));
        graphics.setBackgroundColor(Inks.colour(Ink.RED));
        graphics.setLineWidth(2);
        int middle = x + 9;
        switch (entry.form()) {
            case CROSS -> {
                graphics.drawLine(middle - 5, y - 5, middle + 5, y + 5);
                graphics.drawLine(middle - 5, y + 5, middle + 5, y - 5);
            }
            case MAST -> {
                graphics.drawLine(middle - 4, y + 5, middle, y - 6);
                graphics.drawLine(middle, y - 6, middle + 4, y + 5);
            }
            case BOX -> {
                graphics.setLineWidth(1);
                graphics.fillRectangle(middle - 4, y - 5, 4, 5);
                graphics.setBackgroundColor(Inks.colour(Ink.WHITE));
                graphics.fillRectangle(middle - 4, y, 4, 5);
                graphics.drawRectangle(middle - 4, y - 5, 8, 10);
            }
            default -> {
                graphics.setLineStyle(entry.form() == DASHED ? Graphics.LINE_DASH : Graphics.LINE_SOLID);
                graphics.drawLine(x, y, x + 18, y);
            }
        }
        graphics.popState();
    }

    private static void back(Graphics graphics, Rectangle box) {
        graphics.setAlpha(215);
        graphics.setBackgroundColor(Inks.colour(Ink.PAPER));
        graphics.fillRoundRectangle(box, 6, 6);
        graphics.setAlpha(255);
    }
}
