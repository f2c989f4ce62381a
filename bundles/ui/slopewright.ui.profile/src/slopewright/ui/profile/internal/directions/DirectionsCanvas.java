package slopewright.ui.profile.internal.directions;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.draw2d.SWTGraphics;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import slopewright.drawing.landing.DirectionScene;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.PaperArea;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.evaluation.landing.LandingDirections;
import slopewright.ui.diagram.WorldBox;
import slopewright.ui.diagram.WorldView;
import slopewright.ui.diagram.figures.Fonts;
import slopewright.ui.diagram.figures.Inks;
import slopewright.ui.diagram.figures.MarkPainter;
import slopewright.ui.profile.internal.Messages;
import slopewright.ui.theme.Lettering;

/** Paints the chart and tells which direction and slope the mouse or the keys point at. */
final class DirectionsCanvas {
    private static final double LEAST_PX = 40;
    private static final double MARGIN_PX = 4;

    private final Canvas canvas;
    private final Lettering letters;
    private final WorldView view = new WorldView();
    private final Fonts fonts;
    private final MarkPainter painter;
    private final Consumer<DirectionScene.Chosen> chosen;
    private Optional<LandingDirections> found = Optional.empty();
    private Optional<DirectionScene.Told> told = Optional.empty();
    private Optional<DirectionScene.Chosen> marked = Optional.empty();
    private Optional<Scene> scene = Optional.empty();

    /**
     * Makes an empty chart.
     *
     * @param parent  where it stands
     * @param pointed is told what the mouse is over
     * @param chosen  is told what was clicked, or reached with the keys
     */
    DirectionsCanvas(Composite parent, Consumer<DirectionScene.Chosen> pointed, Consumer<DirectionScene.Chosen> chosen) {
        this.chosen = chosen;
        canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND);
        letters = Lettering.on(canvas);
        fonts = new Fonts(canvas);
        painter = new MarkPainter(view, fonts);
        canvas.addListener(SWT.Paint, event -> paint(event.gc));
        canvas.addListener(SWT.Resize, event -> scene = Optional.empty());
        canvas.addListener(SWT.FocusIn, event -> canvas.redraw());
        canvas.addListener(SWT.FocusOut, event -> canvas.redraw());
        canvas.addListener(SWT.MouseMove, event -> at(event).ifPresent(pointed));
        canvas.addListener(SWT.MouseDown, event -> {
            canvas.setFocus();
            at(event).ifPresent(chosen);
        });
        canvas.addListener(SWT.KeyDown, this::key);
        canvas.addListener(SWT.Traverse, event -> event.doit = event.detail == SWT.TRAVERSE_TAB_NEXT
                || event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
        canvas.getAccessible().addAccessibleListener(new AccessibleAdapter() {

            @Override
            public void getName(AccessibleEvent event) {
                event.result = Messages.get("directions.canvas");
            }

            @Override
            public void getHelp(AccessibleEvent event) {
                event.result = Messages.get("directions.canvas.help");
            }
        });
    }

    Canvas control() {
        return canvas;
    }

    /** Shows directions. */
    void show(LandingDirections newFound, DirectionScene.Told newTold) {
        found = Optional.of(newFound);
        told = Optional.of(newTold);
        scene = Optional.empty();
        canvas.redraw();
    }

    /** Shows nothing. */
    void clear() {
        found = Optional.empty();
        marked = Optional.empty();
        scene = Optional.empty();
        canvas.redraw();
    }

    /** Marks a direction and slope. */
    void mark(Optional<DirectionScene.Chosen> newMarked) {
        marked = newMarked;
        canvas.redraw();
    }

    /** Left and right turn by a degree, with Shift by ten; up and down change the slope by a step, with Shift by a degree. */
    private void key(Event event) {
        if (found.isEmpty() || marked.isEmpty()) {
            return;
        }
        boolean far = (event.stateMask & SWT.SHIFT) != 0;
        double turn = far ? 10 : 1;
        double step = far ? 1 : found.get().slopes().stepDeg();
        double bearing = Math.round(marked.get().trueDeg());
        double slope = marked.get().slopeDeg();
        switch (event.keyCode) {
            case SWT.ARROW_RIGHT -> choose(bearing + turn, slope);
            case SWT.ARROW_LEFT -> choose(bearing - turn, slope);
            case SWT.ARROW_UP -> choose(bearing, slope + step);
            case SWT.ARROW_DOWN -> choose(bearing, slope - step);
            default -> {
                // nothing of the chart
            }
        }
    }

    private void choose(double trueDeg, double slopeDeg) {
        chosen.accept(new DirectionScene.Chosen((trueDeg + LandingDirections.COUNT) % LandingDirections.COUNT, Math.max(
                found.orElseThrow().slopes().fromDeg(), Math.min(found.orElseThrow().slopes().toDeg(), slopeDeg))));
    }

    private Optional<DirectionScene.Chosen> at(Event event) {
        return found.flatMap(all -> DirectionScene.at(all, view.worldX(event.x), view.worldY(event.y)));
    }

    private Optional<Scene> laidOut(Rectangle client) {
        if (scene.isEmpty() && found.isPresent()) {
            view.resize(client.width, client.height);
            Scene made = DirectionScene.of(found.get(), told.orElseThrow(),
                    new PaperArea(client.width / fonts.pxPerMm(), client.height / fonts.pxPerMm(), 1, 0));
            view.show(new WorldBox(made.minX(), made.minY(), made.maxX(), made.maxY()), MARGIN_PX);
            scene = Optional.of(made);
        }
        return scene;
    }

    private void paint(GC gc) {
        Rectangle client = canvas.getClientArea();
        gc.setBackground(Inks.colour(Ink.PAPER));
        gc.fillRectangle(client);
        if (client.width < LEAST_PX || client.height < LEAST_PX) {
            return;
        }
        SWTGraphics graphics = new SWTGraphics(gc);
        try {
            letters.begin();
            laidOut(client).ifPresent(made -> {
                painter.paint(graphics, made.marks());
                painter.note(letters, made.marks());
            });
            marked.ifPresent(mark -> {
                ScenePoint at = DirectionScene.place(mark);
                painter.paint(graphics, List.of(
                        new Mark.Path(List.of(new ScenePoint(0, 0), at), false, Style.line(Ink.SURFACE, 0.5), ""),
                        new Mark.Disc(at, 1.5, Style.line(Ink.SURFACE, 0.6), "")));
            });
        } finally {
            graphics.dispose();
        }
        if (canvas.isFocusControl()) {
            gc.setForeground(Inks.colour(Ink.WHEELS));
            gc.setLineWidth(2);
            gc.drawRectangle(1, 1, client.width - 2, client.height - 2);
        }
    }
}
