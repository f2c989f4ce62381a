package slopewright.ui.plan.internal.figures;

import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;

import slopewright.drawing.scene.Ink;
import slopewright.ui.diagram.Diagram;
import slopewright.ui.diagram.figures.Inks;

/** A notice at the top of the plan: why something could not be done. It stays until the next edit, a click or Escape. */
public final class NoticeFigure extends Figure {

    private static final int EDGE_PX = 8;
    private static final int SIGN_PX = 22;
    private static final double SIZE_MM = 2.4;

    private final Diagram diagram;
    private String text = "";
    private String lines = "";

    /** Makes a notice that is not shown yet. */
    public NoticeFigure(Diagram diagram) {
        this.diagram = diagram;
        setVisible(false);
    }

    /** Returns what it says; empty while it is not shown. */
    public String text() {
        return isVisible() ? text : "";
    }

    /** Shows a text. */
    public void show(String newText) {
        Font font = diagram.fonts().of(SIZE_MM);
        int most = (int) Math.max(120, diagram.view().widthPx() - 120);
        text = newText;
        lines = wrapped(newText, font, most - 2 * EDGE_PX - SIGN_PX);
        var size = FigureUtilities.getTextExtents(lines, font);
        setBounds(new Rectangle(EDGE_PX, EDGE_PX, size.width + 2 * EDGE_PX + SIGN_PX, size.height + 2 * EDGE_PX));
        setVisible(true);
        repaint();
    }

    private static String wrapped(String text, Font font, int widthPx) {
        StringBuilder lines = new StringBuilder();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            if (!line.isEmpty() && FigureUtilities.getTextWidth(line + " " + word, font) > widthPx) {
                lines.append(line).append('\n');
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        return lines.append(line).toString();
    }

    /** Takes it away. */
    public void dismiss() {
        setVisible(false);
    }

    @Override
    public boolean containsPoint(int x, int y) {
        return false;
    }

    @Override
    protected void paintFigure(Graphics graphics) {
        Rectangle box = getBounds();
        graphics.pushState();
        graphics.setAntialias(SWT.ON);
        graphics.setBackgroundColor(Inks.colour(Ink.PAPER));
        graphics.fillRoundRectangle(box.getResized(-1, -1), 8, 8);
        graphics.setForegroundColor(Inks.colour(Ink.PENETRATION));
        graphics.setLineWidth(2);
        graphics.drawRoundRectangle(box.getResized(-2, -2).translate(1, 1), 8, 8);
        int x = box.x + EDGE_PX + 1;
        int y = box.y + EDGE_PX + 2;
        graphics.drawLine(x + 7, y, x, y + 13);
        graphics.drawLine(x + 7, y, x + 14, y + 13);
        graphics.drawLine(x, y + 13, x + 14, y + 13);
        graphics.setForegroundColor(Inks.colour(Ink.TEXT));
        graphics.setFont(diagram.fonts().of(SIZE_MM));
        graphics.drawText(lines, box.x + EDGE_PX + SIGN_PX, box.y + EDGE_PX);
        graphics.popState();
    }
}
