package slopewright.ui.diagram.figures;

import java.util.List;

import org.eclipse.draw2d.Graphics;

import slopewright.ui.diagram.Diagram;

/** The ground of a diagram: as large as the window, hit where nothing else is. */
public final class GroundFigure extends MarkFigure {

    /** Makes the ground of a diagram. */
    public GroundFigure(Diagram diagram) {
        super(diagram, List::of);
    }

    @Override
    public void update() {
        repaint();
    }

    @Override
    protected void paintFigure(Graphics graphics) {
        // the paper of the root shows through
    }

    @Override
    public boolean containsPoint(int x, int y) {
        return getBounds().contains(x, y);
    }
}
