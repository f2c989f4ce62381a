package slopewright.ui.profile.internal.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.SWTGraphics;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.drawing.section.BeamEdge;
import slopewright.drawing.section.Section;
import slopewright.drawing.section.SectionWindow;
import slopewright.drawing.section.SurveyPointAt;
import slopewright.geometry.FramePoint;
import slopewright.ui.diagram.WorldBox;
import slopewright.ui.diagram.WorldView;
import slopewright.ui.diagram.figures.Fonts;
import slopewright.ui.diagram.figures.Inks;
import slopewright.ui.diagram.figures.MarkPainter;
import slopewright.ui.profile.internal.Messages;
import slopewright.ui.theme.Lettering;

/** Paints a section with crosshair and pilot's eye, and knows what part of it is shown at which exaggeration. */
public final class SectionCanvas {

    /** What the view was fitted to last. */
    public enum Extent {
        /** The whole approach. */
        WHOLE,
        /** The surroundings of the threshold. */
        NEAR,
        /** Where the user has moved it. */
        FREE
    }

    private static final int AROUND_TEXT_PX = 4;
    private static final double LEAST_PX = 2;
    private static final double LEAST_EXAGGERATION = 0.2;
    private static final double MOST_EXAGGERATION = 200;
    private static final double HANDLE_PX = 3;
    private static final double NEAR_PX = 6;
    private static final double RING_MM = 2;

    private final Canvas canvas;
    private final Lettering letters;
    private final WorldView view = new WorldView();
    private final MarkPainter painter;
    private final Fonts fonts;
    private Optional<Section> section = Optional.empty();
    private List<Mark> marks = List.of();
    private boolean stale = true;
    private Extent extent = Extent.WHOLE;
    private OptionalDouble factor = OptionalDouble.empty();
    private boolean fitting;
    private Optional<FramePoint> crosshair = Optional.empty();
    private Optional<FramePoint> eye = Optional.empty();
    private Optional<FramePoint> picked = Optional.empty();
    private Optional<BeamEdge> hot = Optional.empty();
    private Optional<String> note = Optional.empty();
    private Runnable beforePaint = () -> {
        // nothing yet
    };

    /** Makes an empty canvas. */
    public SectionCanvas(Composite parent) {
        canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND);
        letters = Lettering.on(canvas);
        fonts = new Fonts(canvas);
        painter = new MarkPainter(view, fonts);
        canvas.addListener(SWT.Paint, event -> paint(event.gc));
        canvas.addListener(SWT.Resize, event -> resized());
        canvas.addListener(SWT.FocusIn, event -> canvas.redraw());
        canvas.addListener(SWT.FocusOut, event -> canvas.redraw());
        canvas.getAccessible().addAccessibleListener(new AccessibleAdapter() {

            @Override
            public void getName(AccessibleEvent event) {
                event.result = Messages.get("section.canvas");
            }

            @Override
            public void getHelp(AccessibleEvent event) {
                event.result = Messages.get("section.canvas.help");
            }
        });
        view.addListener(this::viewChanged);
    }

    /** Returns its control. */
    public Canvas control() {
        return canvas;
    }

    /** Returns what part of the section is shown. */
    public WorldView view() {
        return view;
    }

    /** Returns its fonts. */
    public Fonts fonts() {
        return fonts;
    }

    /** Returns how wide a text is on the screen, millimetres. */
    public double widthMm(String text, double sizeMm) {
        return (FigureUtilities.getTextWidth(text, fonts.of(sizeMm)) + AROUND_TEXT_PX) / fonts.pxPerMm();
    }

    /** Sets what is run before anything is painted. */
    public void beforePaint(Runnable work) {
        beforePaint = work;
    }

    /** Shows a section, empty for none. */
    public void show(Optional<Section> newSection) {
        section = newSection;
        repaint();
    }

    /** Returns the section that is shown. */
    public Optional<Section> section() {
        return section;
    }

    /** Paints everything anew. */
    public void repaint() {
        stale = true;
        canvas.redraw();
    }

    /** Returns what is drawn. */
    public List<Mark> marks() {
        if (stale && section.isPresent() && view.widthPx() > LEAST_PX && view.heightPx() > LEAST_PX) {
            marks = section.get().marks(window());
        } else if (section.isEmpty()) {
            marks = List.of();
        }
        stale = false;
        return marks;
    }

    private SectionWindow window() {
        WorldBox box = view.visible();
        return new SectionWindow(box.minX(), box.minY(), box.maxX(), box.maxY(), view.widthPx() / fonts.pxPerMm(),
                view.heightPx() / fonts.pxPerMm());
    }

    /** Returns what it was fitted to last. */
    public Extent extent() {
        return extent;
    }

    /** Returns how many times heights are exaggerated where that was chosen; empty where they fill the window. */
    public OptionalDouble factor() {
        return factor;
    }

    /** Chooses how many times heights are exaggerated; empty fills the window with what was fitted. */
    public void exaggerate(OptionalDouble newFactor) {
        factor = newFactor;
        if (newFactor.isEmpty()) {
            fit(extent == Extent.FREE ? Extent.WHOLE : extent);
        } else if (extent == Extent.FREE) {
            view.setExaggeration(newFactor.getAsDouble());
        } else {
            fit(extent);
        }
    }

    /** Shows an extent as large as it fits. */
    public void fit(Extent wanted) {
        extent = wanted;
        if (section.isEmpty() || wanted == Extent.FREE || view.widthPx() < LEAST_PX || view.heightPx() < LEAST_PX) {
            return;
        }
        double wide = view.widthPx() / fonts.pxPerMm();
        double high = view.heightPx() / fonts.pxPerMm();
        SectionWindow window = wanted == Extent.NEAR ? section.get().near(wide, high) : section.get().whole(wide, high);
        fitting = true;
        try {
            view.setExaggeration(factor.orElse(Math.max(LEAST_EXAGGERATION, Math.min(MOST_EXAGGERATION, window.exaggeration()))));
            view.show(new WorldBox(window.minAlongM(), window.minHeightM(), window.maxAlongM(), window.maxHeightM()), 0);
        } finally {
            fitting = false;
        }
    }

    private void resized() {
        Rectangle area = canvas.getClientArea();
        fitting = true;
        try {
            view.resize(area.width, area.height);
        } finally {
            fitting = false;
        }
        fit(extent);
    }

    private void viewChanged() {
        if (!fitting) {
            extent = Extent.FREE;
        }
        repaint();
    }

    /** Moves the crosshair; empty takes it away. */
    public void crosshair(Optional<FramePoint> place) {
        crosshair = place;
        canvas.redraw();
    }

    /** Returns where the crosshair is. */
    public Optional<FramePoint> crosshair() {
        return crosshair;
    }

    /** Shows the pilot's eye, empty for none. */
    public void eye(Optional<FramePoint> place) {
        eye = place;
        canvas.redraw();
    }

    /** Returns the pilot's eye. */
    public Optional<FramePoint> eye() {
        return eye;
    }

    /** Puts a ring around the survey point that was picked, empty for none. */
    public void picked(Optional<FramePoint> place) {
        picked = place;
        canvas.redraw();
    }

    /** Returns the survey point that was picked. */
    public Optional<FramePoint> picked() {
        return picked;
    }

    /** Returns the survey point that is drawn nearest to a pixel, empty where none is near. */
    public Optional<SurveyPointAt> surveyPoint(double x, double y) {
        return section.filter(shown -> view.widthPx() > LEAST_PX && view.heightPx() > LEAST_PX).flatMap(shown -> shown.surveyPoint(
                window(), view.worldX(x), view.worldY(y), NEAR_PX / fonts.pxPerMm()));
    }

    /** Makes the edge of a beam stand out, empty for none. */
    public void highlight(Optional<BeamEdge> edge) {
        if (!hot.equals(edge)) {
            hot = edge;
            canvas.redraw();
        }
    }

    /** Writes a short text beside the crosshair, empty for none. */
    public void note(Optional<String> text) {
        note = text;
        canvas.redraw();
    }

    /** Paints the section as it is shown, crosshair and eye included. */
    public void paint(GC gc) {
        beforePaint.run();
        Rectangle area = canvas.getClientArea();
        gc.setBackground(Inks.colour(Ink.PAPER));
        gc.fillRectangle(area);
        Graphics graphics = new SWTGraphics(gc);
        try {
            letters.begin();
            for (List<Mark> painted : List.of(marks(), overlay())) {
                painter.paint(graphics, painted);
                painter.note(letters, painted);
            }
        } finally {
            graphics.dispose();
        }
        if (canvas.isFocusControl()) {
            gc.setLineStyle(SWT.LINE_SOLID);
            gc.setLineWidth(1);
            gc.setForeground(Inks.colour(Ink.WHEELS));
            gc.drawRectangle(0, 0, area.width - 1, area.height - 1);
        }
    }

    private List<Mark> overlay() {
        List<Mark> overlay = new ArrayList<>();
        WorldBox box = view.visible();
        hot.ifPresent(edge -> overlay.add(line(Style.line(Ink.UNIT, 0.6), box.minX(), edge.heightM(box.minX()), edge.unit().place()
                .alongM(), edge.unit().place().heightM())));
        crosshair.ifPresent(at -> {
            Style hair = Style.line(Ink.DIMENSION, 0.1);
            overlay.add(line(hair, at.alongM(), box.minY(), at.alongM(), box.maxY()));
            overlay.add(line(hair, box.minX(), at.heightM(), box.maxX(), at.heightM()));
            section.map(shown -> shown.siting().reference()).filter(lens -> at.alongM() < lens.alongM())
                    .ifPresent(lens -> overlay.add(line(Style
                    .dashed(Ink.DIMENSION, 0.1), at.alongM(), at.heightM(), lens.alongM(), lens.heightM())));
            note.ifPresent(text -> overlay.add(new Mark.Label(new ScenePoint(at.alongM(), at.heightM()), text,
                    view.toX(at.alongM()) > view.widthPx() * 0.6 ? Mark.Anchor.END : Mark.Anchor.START, Section.LETTERS_MM, 4, Ink.TEXT,
                    "")));
        });
        section.ifPresent(shown -> GroundPoints.of(shown).stream().filter(at -> Double.isFinite(at.alongM() + at.heightM()))
                .forEach(at -> overlay.add(handle(at))));
        picked.ifPresent(at -> overlay.add(new Mark.Disc(new ScenePoint(at.alongM(), at.heightM()), RING_MM, Style.line(Ink.WHEELS, 0.5),
                "")));
        eye.ifPresent(at -> overlay.addAll(eyeMarks(at)));
        return overlay;
    }

    /** A point of the ground that can be taken: a small square. */
    private Mark handle(FramePoint at) {
        double x = HANDLE_PX / view.scale();
        double y = HANDLE_PX / (view.scale() * view.exaggeration());
        return new Mark.Path(List.of(new ScenePoint(at.alongM() - x, at.heightM() - y), new ScenePoint(at.alongM() + x, at.heightM() - y),
                new ScenePoint(at.alongM() + x, at.heightM() + y), new ScenePoint(at.alongM() - x, at.heightM() + y)), true,
                Style.line(Ink.GROUND, 0.3), "");
    }

    private static Mark line(Style style, double x1, double y1, double x2, double y2) {
        return new Mark.Path(List.of(new ScenePoint(x1, y1), new ScenePoint(x2, y2)), false, style, "");
    }

    /** An eye: two lids and an iris, in pixels around its place. */
    private List<Mark> eyeMarks(FramePoint at) {
        List<ScenePoint> lids = new ArrayList<>();
        for (int i = 0; i <= 24; i++) {
            double turn = Math.PI * i / 12;
            double x = -9 * Math.cos(turn);
            double y = 5.5 * Math.sin(turn) * Math.abs(Math.sin(turn));
            lids.add(new ScenePoint(at.alongM() + x / view.scale(), at.heightM() + y / (view.scale() * view.exaggeration())));
        }
        return List.of(new Mark.Path(lids, true, Style.area(Ink.TEXT, Ink.PAPER, 0.4), ""), new Mark.Disc(new ScenePoint(at.alongM(), at
                .heightM()), 0.8, Style.fill(Ink.WHEELS), ""));
    }
}
