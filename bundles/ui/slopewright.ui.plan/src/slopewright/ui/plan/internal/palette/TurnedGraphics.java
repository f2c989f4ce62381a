package slopewright.ui.plan.internal.palette;

import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.ScaledGraphics;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Image;

/** Paints with light and dark changed over; the colours of the control itself, which follow the window, stay. */
final class TurnedGraphics extends ScaledGraphics {

    private final TurnedColours turned;
    private final Color foreground;
    private final Color background;

    TurnedGraphics(Graphics graphics, TurnedColours turned, Color foreground, Color background) {
        super(graphics);
        this.turned = turned;
        this.foreground = foreground;
        this.background = background;
    }

    @Override
    public void setForegroundColor(Color colour) {
        super.setForegroundColor(turned(colour));
    }

    @Override
    public void setBackgroundColor(Color colour) {
        super.setBackgroundColor(turned(colour));
    }

    private Color turned(Color colour) {
        return colour == null || colour.equals(foreground) || colour.equals(background) ? colour : turned.of(colour);
    }

    @Override
    public void drawImage(Image image, int x, int y) {
        super.drawImage(turned.of(image), x, y);
    }
}
