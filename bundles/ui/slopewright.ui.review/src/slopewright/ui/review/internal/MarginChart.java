package slopewright.ui.review.internal;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.PaintEvent;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import slopewright.checks.compare.MarginKind;
import slopewright.ui.AccessibleName;
import slopewright.ui.properties.OutcomeTexts;
import slopewright.ui.theme.Lettering;
import slopewright.ui.theme.ScreenTheme;
import slopewright.ui.theme.TypeScale;

/**
 * The margins of what is compared as bars from a common zero line: to the right and behind a disc where the limit is kept, to the left
 * and behind a cross where it is not, each with its number and a word.
 */
public final class MarginChart {

    private static final int USUAL_ROW = 24;
    private static final int PAD = 6;
    /** Room of the sign before the words. */
    private static final int MARK = 15;
    private static final double LEAST_NAME_SHARE = 0.2;
    private static final int LEAST_PLOT = 60;
    private static final int USUAL_PLOT = 180;

    private final Canvas canvas;
    private final int rowHeight = TypeScale.px(USUAL_ROW);
    private final Lettering letters;
    private final Runnable repaint;
    private List<ComparedOption> options = List.of();
    private MarginKind kind = MarginKind.OBSTACLE;

    /** Makes the chart. */
    public MarginChart(Composite parent) {
        canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.V_SCROLL);
        letters = Lettering.on(canvas);
        canvas.addPaintListener(this::paint);
        AccessibleName.give(canvas, Messages.get("comparison.chart"));
        canvas.getVerticalBar().addListener(SWT.Selection, event -> canvas.redraw());
        canvas.addListener(SWT.Resize, event -> updateBar());
        repaint = canvas::redraw;
        ScreenTheme.addListener(repaint);
        canvas.addDisposeListener(event -> ScreenTheme.removeListener(repaint));
    }

    /** Returns the widget. */
    public Canvas control() {
        return canvas;
    }

    /** Returns a width in which names, bars and words all have room, pixels. */
    int neededWidth() {
        return width(USUAL_PLOT);
    }

    /** Returns a width in which nothing of them is cut, pixels. */
    int leastWidth() {
        return width(LEAST_PLOT);
    }

    private int width(int plot) {
        GC gc = new GC(canvas);
        try {
            int names = options.stream().mapToInt(option -> gc.textExtent(option.name()).x).max().orElse(0);
            int words = options.stream().mapToInt(option -> gc.textExtent(words(option)).x).max().orElse(0);
            return names + words + MARK + TypeScale.px(plot) + 6 * PAD;
        } finally {
            gc.dispose();
        }
    }

    /** Shows the margins of some options, in this order. */
    public void show(List<ComparedOption> shown, MarginKind which) {
        options = List.copyOf(shown);
        kind = which;
        updateBar();
        canvas.redraw();
    }

    /** Returns what a kind of margin is called. */
    public static String label(MarginKind of) {
        return Messages.get("comparison.margin." + of.name().toLowerCase(Locale.ROOT));
    }

    /** Returns what stands in the rows, as a screen reader and tests see it. */
    public List<String> lines() {
        return options.stream().map(option -> option.name() + ": " + words(option)).toList();
    }

    private String words(ComparedOption option) {
        OptionalDouble margin = option.margin(kind);
        if (margin.isEmpty()) {
            return Messages.get(option.siting().isEmpty() ? "comparison.noLayout" : "comparison.noMargin");
        }
        return OutcomeTexts.signed(margin, "m") + " " + Messages.get(margin.getAsDouble() < 0 ? "comparison.notKept" : "comparison.kept");
    }

    private void updateBar() {
        int needed = options.size() * rowHeight + PAD;
        int height = canvas.getClientArea().height;
        canvas.getVerticalBar().setVisible(needed > height);
        if (needed > height && height > 0) {
            canvas.getVerticalBar().setValues(canvas.getVerticalBar().getSelection(), 0, needed, height, rowHeight, height);
        } else {
            canvas.getVerticalBar().setSelection(0);
        }
    }

    private void paint(PaintEvent event) {
        GC gc = event.gc;
        letters.begin();
        Rectangle area = canvas.getClientArea();
        gc.setAntialias(SWT.ON);
        boolean dark = ScreenTheme.isDark();
        gc.setBackground(dark ? canvas.getBackground() : canvas.getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND));
        gc.fillRectangle(area);
        gc.setForeground(dark ? canvas.getForeground() : canvas.getDisplay().getSystemColor(SWT.COLOR_LIST_FOREGROUND));
        int top = PAD / 2 - (canvas.getVerticalBar().isVisible() ? canvas.getVerticalBar().getSelection() : 0);
        int longest = options.stream().mapToInt(option -> gc.textExtent(option.name()).x).max().orElse(0);
        int textWidth = options.stream().mapToInt(option -> gc.textExtent(words(option)).x).max().orElse(0);
        int free = area.width - textWidth - MARK - LEAST_PLOT - 3 * PAD;
        int nameWidth = Math.min(Math.max((int) (area.width * LEAST_NAME_SHARE), free), longest + 2 * PAD);
        int plotLeft = nameWidth + PAD;
        int plotWidth = Math.max(LEAST_PLOT, area.width - plotLeft - textWidth - MARK - 2 * PAD);
        double least = options.stream().mapToDouble(option -> Math.min(0, option.margin(kind).orElse(0))).min().orElse(0);
        double most = options.stream().mapToDouble(option -> Math.max(0, option.margin(kind).orElse(0))).max().orElse(0);
        double scale = plotWidth / Math.max(1e-6, most - least);
        int zero = plotLeft + (int) Math.round(-least * scale);
        for (int i = 0; i < options.size(); i++) {
            row(gc, options.get(i), new Rectangle(PAD, top + i * rowHeight, area.width, rowHeight), nameWidth, zero, scale,
                    plotLeft + plotWidth + PAD);
        }
        if (!options.isEmpty()) {
            gc.setLineWidth(1);
            gc.drawLine(zero, 0, zero, Math.min(area.height, top + options.size() * rowHeight));
        }
    }

    private void row(GC gc, ComparedOption option, Rectangle row, int nameWidth, int zero, double scale, int textLeft) {
        int middle = row.y + rowHeight / 2;
        Point size = gc.textExtent(option.name());
        letters.write(gc, shortened(gc, option.name(), nameWidth - PAD), row.x, middle - size.y / 2);
        OptionalDouble margin = option.margin(kind);
        if (margin.isPresent()) {
            boolean kept = margin.getAsDouble() >= 0;
            Color ink = new Color(ink(kept));
            int length = (int) Math.round(Math.abs(margin.getAsDouble()) * scale);
            gc.setBackground(ink);
            gc.fillRectangle(kept ? zero : zero - length, middle - 5, Math.max(1, length), 10);
            mark(gc, ink, kept, textLeft + 5, middle);
        }
        letters.write(gc, words(option), textLeft + (margin.isPresent() ? MARK : 0), middle - size.y / 2);
    }

    /** A disc for what is kept, a cross for what is not. */
    private static void mark(GC gc, Color ink, boolean kept, int x, int y) {
        Color text = gc.getForeground();
        gc.setForeground(ink);
        gc.setLineWidth(3);
        if (kept) {
            gc.fillOval(x - 5, y - 5, 10, 10);
        } else {
            gc.drawLine(x - 4, y - 4, x + 4, y + 4);
            gc.drawLine(x - 4, y + 4, x + 4, y - 4);
        }
        gc.setLineWidth(1);
        gc.setForeground(text);
    }

    private static RGB ink(boolean kept) {
        if (ScreenTheme.isDark()) {
            return kept ? new RGB(88, 196, 132) : new RGB(240, 110, 98);
        }
        return kept ? new RGB(46, 139, 87) : new RGB(192, 57, 43);
    }

    private static String shortened(GC gc, String text, int width) {
        String shown = text;
        while (shown.length() > 1 && gc.textExtent(shown.equals(text) ? shown : shown + "…").x > width) {
            shown = shown.substring(0, shown.length() - 1);
        }
        return shown.equals(text) ? text : shown.strip() + "…";
    }
}
