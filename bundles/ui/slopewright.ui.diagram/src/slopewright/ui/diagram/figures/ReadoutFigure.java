package slopewright.ui.diagram.figures;

import java.util.List;

import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;

import slopewright.drawing.scene.Ink;
import slopewright.ui.diagram.Diagram;

/** Lines of text beside the pointer while something is placed or moved; a verdict has a shape as well as a colour. */
public final class ReadoutFigure extends Figure {

    /** How a line is meant. */
    public enum Verdict {
        /** Only a value. */
        NONE,
        /** On the good side of its limit: a tick. */
        GOOD,
        /** Good enough under a condition: a triangle. */
        WARNING,
        /** On the bad side: a cross. */
        BAD
    }

    /**
     * One line.
     *
     * @param text    what it says
     * @param verdict how it is meant
     */
    public record Line(String text, Verdict verdict) {

        /** Makes a line that is only a value. */
        public static Line of(String text) {
            return new Line(text, Verdict.NONE);
        }

        /** Makes a line that is good enough under a condition, which it names. */
        public static Line warning(String text) {
            return new Line(text, Verdict.WARNING);
        }

        /** Makes a line with a verdict. */
        public static Line of(String text, boolean good) {
            return new Line(text, good ? Verdict.GOOD : Verdict.BAD);
        }
    }

    private static final int EDGE_PX = 6;
    private static final int SIGN_PX = 14;
    private static final int AWAY_PX = 18;
    private static final double SIZE_MM = 2.2;

    private final Diagram diagram;
    private List<Line> lines = List.of();

    /** Makes a readout without lines. */
    public ReadoutFigure(Diagram diagram) {
        this.diagram = diagram;
    }

    /** Returns what it says. */
    public List<Line> lines() {
        return lines;
    }

    /**
     * Shows lines beside a place, within the window.
     *
     * @param newLines what it says
     * @param x        pixels
     * @param y        pixels
     */
    public void show(List<Line> newLines, double x, double y) {
        lines = List.copyOf(newLines);
        Font font = diagram.fonts().of(SIZE_MM);
        int widest = lines.stream().mapToInt(line -> FigureUtilities.getTextWidth(line.text(), font)).max().orElse(0);
        int width = widest + 2 * EDGE_PX + SIGN_PX;
        int height = lines.size() * lineHeight(font) + 2 * EDGE_PX;
        double left = x + AWAY_PX + width > diagram.view().widthPx() ? x - AWAY_PX - width : x + AWAY_PX;
        double top = y + AWAY_PX + height > diagram.view().heightPx() ? y - AWAY_PX - height : y + AWAY_PX;
        setBounds(new Rectangle((int) Math.max(2, left), (int) Math.max(2, top), width, height));
        repaint();
    }

    private static int lineHeight(Font font) {
        return FigureUtilities.getFontMetrics(font).getHeight() + 1;
    }

    @Override
    public boolean containsPoint(int x, int y) {
        return false;
    }

    @Override
    protected void paintFigure(Graphics graphics) {
        Rectangle box = getBounds();
        Font font = diagram.fonts().of(SIZE_MM);
        graphics.pushState();
        graphics.setAntialias(SWT.ON);
        graphics.setAlpha(240);
        graphics.setBackgroundColor(Inks.colour(Ink.PAPER));
        graphics.fillRoundRectangle(box, 8, 8);
        graphics.setAlpha(255);
        graphics.setForegroundColor(Inks.colour(Ink.DIMENSION));
        graphics.drawRoundRectangle(box.getResized(-1, -1), 8, 8);
        graphics.setFont(font);
        int y = box.y + EDGE_PX;
        for (Line line : lines) {
            sign(graphics, line.verdict(), box.x + EDGE_PX, y + lineHeight(font) / 2);
            graphics.setForegroundColor(Inks.colour(line.verdict() == Verdict.BAD ? Ink.PENETRATION : Ink.TEXT));
            graphics.drawText(line.text(), box.x + EDGE_PX + SIGN_PX, y);
            y += lineHeight(font);
        }
        graphics.popState();
    }

    private static void sign(Graphics graphics, Verdict verdict, int x, int middle) {
        graphics.setLineWidth(2);
        if (verdict == Verdict.GOOD) {
            graphics.setForegroundColor(Inks.colour(Ink.GREEN));
            graphics.drawLine(x, middle, x + 3, middle + 4);
            graphics.drawLine(x + 3, middle + 4, x + 9, middle - 4);
        } else if (verdict == Verdict.WARNING) {
            graphics.setForegroundColor(Inks.colour(Ink.AMBER));
            graphics.drawPolygon(new int[] {x, middle + 4, x + 4, middle - 4, x + 9, middle + 4});
        } else if (verdict == Verdict.BAD) {
            graphics.setForegroundColor(Inks.colour(Ink.PENETRATION));
            graphics.drawLine(x, middle - 4, x + 8, middle + 4);
            graphics.drawLine(x, middle + 4, x + 8, middle - 4);
        }
        graphics.setLineWidth(1);
    }
}
