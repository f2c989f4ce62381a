package slopewright.ui.diagram.figures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

import org.eclipse.draw2d.geometry.Rectangle;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.Style;

/**
 * Finds room for all labels of a diagram: those of no element (what the diagram itself has to say) first, then large ones, then those of
 * obstacles that stand through a surface, then those of higher layers. A label that would cover another, a small symbol, a sign or what
 * stays in its place over the diagram is moved up or down a little, and one at the edge of the window is moved into it. Where that does not
 * help a dot stands for it, and the element says it when it is pointed at; the label comes back closer up.
 */
public final class LabelRoom {

    private static final double[] SHIFTS_MM = {0, 3, -3, 6, -6};
    private static final int CELL_PX = 64;
    private static final int SYMBOL_PX = 32;
    private static final double DOT_MM = 0.45;

    private record Entry(MarkFigure figure, int index, Mark.Label label, int order) {
    }

    private final MarkPainter painter;
    private final Rectangle window;
    private final Map<Long, List<Rectangle>> taken = new HashMap<>();

    private LabelRoom(MarkPainter painter, Rectangle window) {
        this.painter = painter;
        this.window = window;
    }

    /**
     * Arranges the labels of figures.
     *
     * @param figures the figures, those of the highest layer first
     * @param signs   what lies over the diagram and is no part of it, pixels
     * @param painter knows how large labels are
     * @param window  what can be seen, pixels
     */
    public static void arrange(List<MarkFigure> figures, List<Rectangle> signs, MarkPainter painter, Rectangle window) {
        LabelRoom room = new LabelRoom(painter, window);
        signs.forEach(room::take);
        room.arrange(figures);
    }

    /**
     * Arranges the labels of a scene that is painted as it is, large ones first.
     *
     * @param marks   the marks
     * @param painter knows how large labels are
     * @param window  what can be seen, pixels
     * @return the marks with their labels where there is room, and dots where there is none
     */
    public static List<Mark> arranged(List<Mark> marks, MarkPainter painter, Rectangle window) {
        LabelRoom room = new LabelRoom(painter, window);
        List<Mark> arranged = new ArrayList<>(marks);
        IntStream.range(0, marks.size()).filter(i -> marks.get(i) instanceof Mark.Label).boxed()
                .sorted(Comparator.comparingDouble(i -> -((Mark.Label) marks.get(i)).sizeMm())).forEach(i -> {
                    Mark.Label label = (Mark.Label) marks.get(i);
                    arranged.set(i, room.place(label).<Mark>map(placed -> placed).orElseGet(() -> dot(label)));
                });
        return arranged;
    }

    private void arrange(List<MarkFigure> figures) {
        List<Entry> entries = new ArrayList<>();
        for (MarkFigure figure : figures) {
            if (figure.isShowing()) {
                figure.reserved().forEach(this::take);
                collect(figure, entries);
            }
        }
        entries.sort(Comparator.<Entry, Boolean>comparing(entry -> !entry.label().elementId().isEmpty())
                .thenComparing(entry -> -entry.label().sizeMm())
                .thenComparing(entry -> entry.label().ink() != Ink.PENETRATION).thenComparing(Entry::order));
        for (Entry entry : entries) {
            entry.figure().showLabel(entry.index(), place(entry.label()).<Mark>map(label -> label).orElseGet(() -> dot(entry.label())));
        }
        entries.stream().map(Entry::figure).distinct().forEach(MarkFigure::settle);
    }

    /** Notes the labels of a figure; a small one without labels is a symbol, which labels keep clear of. */
    private void collect(MarkFigure figure, List<Entry> entries) {
        List<Mark> wanted = figure.wantedMarks();
        boolean labelled = false;
        for (int i = 0; i < wanted.size(); i++) {
            if (wanted.get(i) instanceof Mark.Label label) {
                entries.add(new Entry(figure, i, label, entries.size()));
                labelled = true;
            }
        }
        Rectangle box = figure.getBounds();
        if (!labelled && !box.isEmpty() && box.width <= SYMBOL_PX && box.height <= SYMBOL_PX) {
            take(box);
        }
    }

    private Optional<Mark.Label> place(Mark.Label label) {
        for (double shift : SHIFTS_MM) {
            Mark.Label moved = new Mark.Label(label.at(), label.text(), label.anchor(), label.sizeMm(), label.dyMm() + shift, label.ink(),
                    label.elementId());
            Rectangle box = painter.box(moved);
            if (!window.intersects(box)) {
                if (shift == 0) {
                    return Optional.of(label);
                }
                continue;
            }
            int into = Math.max(window.x - box.x, 0) - Math.max(box.x + box.width - window.x - window.width, 0);
            if (into != 0 && box.width < window.width) {
                moved = painter.moved(moved, into);
                box = painter.box(moved);
            }
            if (isFree(box)) {
                take(box);
                return Optional.of(moved);
            }
        }
        return Optional.empty();
    }

    private static Mark dot(Mark.Label label) {
        return new Mark.Disc(label.at(), DOT_MM, Style.fill(label.ink()), label.elementId());
    }

    private boolean isFree(Rectangle box) {
        for (int x = box.x / CELL_PX; x <= (box.x + box.width) / CELL_PX; x++) {
            for (int y = box.y / CELL_PX; y <= (box.y + box.height) / CELL_PX; y++) {
                if (taken.getOrDefault(key(x, y), List.of()).stream().anyMatch(box::intersects)) {
                    return false;
                }
            }
        }
        return true;
    }

    private void take(Rectangle box) {
        for (int x = box.x / CELL_PX; x <= (box.x + box.width) / CELL_PX; x++) {
            for (int y = box.y / CELL_PX; y <= (box.y + box.height) / CELL_PX; y++) {
                taken.computeIfAbsent(key(x, y), cell -> new ArrayList<>()).add(box);
            }
        }
    }

    private static long key(int x, int y) {
        return (long) x << 32 | y & 0xffffffffL;
    }
}
