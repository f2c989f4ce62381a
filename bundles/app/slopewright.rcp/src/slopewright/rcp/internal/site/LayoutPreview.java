package slopewright.rcp.internal.site;

import java.util.List;
import java.util.Optional;

import org.eclipse.draw2d.SWTGraphics;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.Scene;
import slopewright.ui.diagram.WorldBox;
import slopewright.ui.diagram.WorldView;
import slopewright.ui.diagram.figures.Fonts;
import slopewright.ui.diagram.figures.Inks;
import slopewright.ui.diagram.figures.LabelRoom;
import slopewright.ui.diagram.figures.MarkPainter;
import slopewright.ui.theme.Lettering;

/** A small picture of a layout in plan. */
final class LayoutPreview extends Canvas {

    private static final double MARGIN_PX = 12;

    private final Fonts fonts;
    private final Lettering letters;
    private Optional<Scene> scene = Optional.empty();

    LayoutPreview(Composite parent) {
        super(parent, SWT.BORDER | SWT.DOUBLE_BUFFERED);
        fonts = new Fonts(this);
        letters = Lettering.on(this);
        addListener(SWT.Paint, event -> paint(event.gc));
    }

    void show(Optional<Scene> picture) {
        scene = picture;
        redraw();
    }

    private void paint(GC gc) {
        letters.begin();
        Rectangle area = getClientArea();
        gc.setBackground(Inks.colour(Ink.PAPER));
        gc.fillRectangle(area);
        scene.ifPresent(picture -> {
            WorldView view = new WorldView();
            view.resize(area.width, area.height);
            view.show(new WorldBox(picture.minX(), picture.minY(), picture.maxX(), picture.maxY()), MARGIN_PX);
            SWTGraphics graphics = new SWTGraphics(gc);
            try {
                MarkPainter painter = new MarkPainter(view, fonts);
                List<Mark> marks = LabelRoom.arranged(picture.marks(), painter, new org.eclipse.draw2d.geometry.Rectangle(0, 0, area.width,
                        area.height));
                painter.paint(graphics, marks);
                painter.note(letters, marks);
            } finally {
                graphics.dispose();
            }
        });
    }
}
