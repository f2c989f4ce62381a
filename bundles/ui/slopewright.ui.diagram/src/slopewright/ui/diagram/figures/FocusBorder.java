package slopewright.ui.diagram.figures;

import java.util.function.Supplier;

import org.eclipse.draw2d.AbstractBorder;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Insets;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.widgets.Control;

import slopewright.drawing.scene.Ink;

/** A frame around what is painted, there while the keys go to it; it takes no room. */
public final class FocusBorder extends AbstractBorder {

    private static final int WIDTH_PX = 2;

    private final Supplier<Control> control;

    /**
     * Makes the frame of a figure.
     *
     * @param control gives the control whose focus counts
     */
    public FocusBorder(Supplier<Control> control) {
        this.control = control;
    }

    @Override
    public Insets getInsets(IFigure figure) {
        return new Insets();
    }

    @Override
    public void paint(IFigure figure, Graphics graphics, Insets insets) {
        Control shown = control.get();
        if (shown != null && !shown.isDisposed() && shown.isFocusControl()) {
            Rectangle area = figure.getBounds();
            graphics.setForegroundColor(Inks.colour(Ink.WHEELS));
            graphics.setLineStyle(Graphics.LINE_SOLID);
            graphics.setLineWidth(WIDTH_PX);
            graphics.drawRectangle(area.x + 1, area.y + 1, area.width - WIDTH_PX, area.height - WIDTH_PX);
        }
    }
}
