package slopewright.ui.profile.internal.pilot;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import slopewright.drawing.scene.Ink;
import slopewright.ui.diagram.figures.Inks;
import slopewright.ui.profile.internal.Messages;
import slopewright.ui.theme.Lettering;

/**
 * The picture of a pilot's view with its strips: the view itself, the indicator magnified, the signals against height at the right edge,
 * the signals along the approach at the lower edge. Low and wide, the two pictures stand side by side; else one above the other.
 */
public final class PilotCanvas {

    private static final int GAP = 3;
    /** Room for the frame that shows the focus. */
    private static final int EDGE = 3;
    private static final double SIDE_BY_SIDE = 1.9;
    private static final double CLOSE_SHARE = 0.36;
    private static final double TRACE_SHARE = 0.17;
    private static final int LEAST_TRACE = 34;
    private static final int LARGEST_TRACE = 92;
    private static final double HEIGHTS_SHARE = 0.2;
    private static final int LEAST_HEIGHTS = 168;
    private static final int LARGEST_HEIGHTS = 230;

    private final Canvas canvas;
    private final Lettering letters;
    private Optional<Sight> sight = Optional.empty();
    private Playback playback;
    private List<Playback.Sample> samples = List.of();
    private String description = "";
    private int paints;

    /**
     * Where the parts of the picture lie, pixels.
     *
     * @param wide    the view
     * @param close   the indicator magnified
     * @param heights the signals against height
     * @param trace   the signals along the approach
     */
    public record Parts(Rectangle wide, Rectangle close, Rectangle heights, Rectangle trace) {

        static Parts of(Rectangle room) {
            Parts parts = of(room.width - 2 * EDGE, room.height - 2 * EDGE);
            return new Parts(moved(parts.wide), moved(parts.close), moved(parts.heights), moved(parts.trace));
        }

        private static Rectangle moved(Rectangle part) {
            return new Rectangle(part.x + EDGE, part.y + EDGE, part.width, part.height);
        }

        private static Parts of(int width, int height) {
            int trace = (int) Math.max(LEAST_TRACE, Math.min(LARGEST_TRACE, height * TRACE_SHARE));
            int heights = (int) Math.max(LEAST_HEIGHTS, Math.min(LARGEST_HEIGHTS, width * HEIGHTS_SHARE));
            int left = Math.max(1, width - heights - GAP);
            int top = Math.max(1, height - trace - GAP);
            Rectangle right = new Rectangle(left + GAP, 0, heights, height);
            Rectangle foot = new Rectangle(0, top + GAP, left, trace);
            if (left > top * SIDE_BY_SIDE) {
                int half = (left - GAP) / 2;
                return new Parts(new Rectangle(0, 0, half, top), new Rectangle(half + GAP, 0, left - half - GAP, top), right, foot);
            }
            int close = (int) (top * CLOSE_SHARE);
            return new Parts(new Rectangle(0, close + GAP, left, top - close - GAP), new Rectangle(0, 0, left, close), right, foot);
        }
    }

    /**
     * Makes an empty picture.
     *
     * @param parent where it stands
     * @param seek   is told to which share of the approach to go, from 0 to 1
     */
    public PilotCanvas(Composite parent, DoubleConsumer seek) {
        canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND);
        letters = Lettering.on(canvas);
        Named.describe(canvas, Messages.get("pilot.canvas"), () -> description);
        canvas.addListener(SWT.Paint, event -> paint(event.gc));
        canvas.addListener(SWT.MouseDown, event -> {
            canvas.setFocus();
            scrub(event, seek);
        });
        canvas.addListener(SWT.MouseMove, event -> {
            if ((event.stateMask & SWT.BUTTON1) != 0) {
                scrub(event, seek);
            }
        });
        canvas.addListener(SWT.FocusIn, event -> canvas.redraw());
        canvas.addListener(SWT.FocusOut, event -> canvas.redraw());
        canvas.setToolTipText(Messages.get("pilot.canvas.help"));
    }

    private void scrub(Event event, DoubleConsumer seek) {
        Rectangle trace = parts().trace();
        if (trace.contains(event.x, event.y)) {
            Rectangle run = TracePainter.run(trace);
            seek.accept(Math.max(0, Math.min(1, (event.x - run.x) / (double) run.width)));
        }
    }

    /** Returns its control. */
    public Canvas control() {
        return canvas;
    }

    /** Shows something else. */
    void show(Sight newSight, Playback newPlayback, List<Playback.Sample> newSamples, String words) {
        sight = Optional.of(newSight);
        playback = newPlayback;
        samples = newSamples;
        description = words;
        canvas.redraw();
    }

    /** Paints again what blinks. */
    void redrawPictures() {
        Parts parts = parts();
        canvas.redraw(parts.wide().x, parts.wide().y, parts.wide().width, parts.wide().height, false);
        canvas.redraw(parts.close().x, parts.close().y, parts.close().width, parts.close().height, false);
    }

    /** Returns where the parts lie now. */
    public Parts parts() {
        Rectangle client = canvas.getClientArea();
        return Parts.of(client);
    }

    /** Returns how often it was painted. */
    public int paints() {
        return paints;
    }

    private void paint(GC gc) {
        paints++;
        letters.begin();
        Rectangle client = canvas.getClientArea();
        gc.setBackground(Inks.colour(Ink.PAPER));
        gc.fillRectangle(client);
        if (sight.isEmpty() || client.width < 2 || client.height < 2) {
            return;
        }
        gc.setAntialias(SWT.ON);
        gc.setTextAntialias(SWT.ON);
        Parts parts = Parts.of(client);
        PicturePainter pictures = new PicturePainter(gc, letters, sight.get(), playback);
        Lens wide = Lens.wide(sight.get(), parts.wide());
        Lens close = Lens.close(sight.get(), parts.close());
        pictures.paint(wide, 0);
        pictures.paint(close, close.scale() / wide.scale());
        Color ink = Inks.colour(Ink.TEXT);
        new HeightPainter(gc, letters, sight.get(), ink, parts.heights()).paint();
        new TracePainter(gc, letters, ink, parts.trace(), samples, playback).paint();
        if (canvas.isFocusControl()) {
            gc.setForeground(Inks.colour(Ink.WHEELS));
            gc.setLineWidth(2);
            gc.drawRectangle(1, 1, client.width - 2, client.height - 2);
            gc.setLineWidth(1);
        }
    }
}
