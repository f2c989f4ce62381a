package slopewright.ui.profile.internal.section;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import slopewright.drawing.scene.Ink;
import slopewright.siting.Colour;
import slopewright.siting.Light;
import slopewright.siting.LightForm;
import slopewright.siting.SeenUnit;
import slopewright.ui.diagram.figures.Inks;
import slopewright.ui.profile.internal.Messages;
import slopewright.ui.theme.Lettering;

/** The readout beside the section: a heading, lamps as the pilot sees them, and lines of a name, a value and a verdict. */
public final class ReadoutPanel {

    /** How a line is meant. */
    public enum Sign {
        /** Only a value. */
        NONE,
        /** On the good side of its limit: a tick. */
        GOOD,
        /** Good enough under a condition, or not known: a triangle. */
        WARNING,
        /** On the bad side: a cross. */
        BAD
    }

    /**
     * One line.
     *
     * @param name  what it is; empty for a line that is only a text
     * @param value its value
     * @param sign  how it is meant
     */
    public record Row(String name, String value, Sign sign) {

        static Row of(String name, String value) {
            return new Row(name, value, Sign.NONE);
        }

        static Row of(String name, String value, boolean good) {
            return new Row(name, value, good ? Sign.GOOD : Sign.BAD);
        }
    }

    private static final int SMALLER_PT = -2;
    private static final int TIGHT_LAMPS_LINE = 2;
    private static final int EDGE = 8;
    private static final int GAP = 8;
    private static final int SIGN_WIDTH = 14;
    private static final int LAMP = 15;
    private static final int LEAST_LAMP = 7;
    private static final int LAMP_GAP = 4;

    private final Canvas canvas;
    private final Lettering letters;
    private final Font small;
    private String heading = "";
    private List<List<SeenUnit>> lamps = List.of();
    private List<Row> rows = List.of();

    /** Makes an empty panel. */
    public ReadoutPanel(Composite parent) {
        canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        letters = Lettering.on(canvas);
        small = new LocalResourceManager(JFaceResources.getResources(), canvas).create(FontDescriptor.createFrom(JFaceResources
                .getDialogFont()).increaseHeight(SMALLER_PT));
        canvas.addListener(SWT.Paint, event -> paint(event.gc));
        canvas.getAccessible().addAccessibleListener(new AccessibleAdapter() {

            @Override
            public void getName(AccessibleEvent event) {
                event.result = text();
            }
        });
        canvas.getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {

            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_LABEL;
            }
        });
    }

    /** Returns its control. */
    public Canvas control() {
        return canvas;
    }

    /** Shows a readout. */
    public void show(String newHeading, List<List<SeenUnit>> newLamps, List<Row> newRows) {
        heading = newHeading;
        lamps = newLamps;
        rows = newRows;
        canvas.redraw();
    }

    /** Returns its lines. */
    public List<Row> rows() {
        return rows;
    }

    /** Returns what it says, a line each. */
    public String text() {
        return heading + rows.stream().map(row -> "\n" + (row.name().isEmpty() ? "" : row.name() + ": ") + row.value())
                .collect(Collectors.joining());
    }

    private void paint(GC gc) {
        letters.begin();
        Rectangle area = canvas.getClientArea();
        gc.setAntialias(SWT.ON);
        gc.setBackground(Inks.colour(Ink.PAPER));
        gc.fillRectangle(area);
        gc.setForeground(Inks.colour(Ink.TEXT));
        gc.setFont(JFaceResources.getDialogFont());
        boolean tight = (rows.size() + 1) * (gc.getFontMetrics().getHeight() + 1) + EDGE > area.height && !rows.isEmpty();
        int y = tight ? tightHead(gc, area) : head(gc, area);
        int names = rows.stream().mapToInt(row -> gc.textExtent(row.name()).x).max().orElse(0);
        names = names == 0 ? 0 : names + GAP;
        for (Row row : rows) {
            gc.setForeground(Inks.colour(Ink.DIMENSION));
            letters.write(gc, row.name(), EDGE, y);
            int left = EDGE + (row.name().isEmpty() ? 0 : names);
            if (row.sign() != Sign.NONE) {
                sign(gc, row.sign(), left, y + gc.getFontMetrics().getHeight() / 2);
                left += SIGN_WIDTH;
            }
            gc.setForeground(Inks.colour(row.sign() == Sign.BAD ? Ink.PENETRATION : Ink.TEXT));
            y = wrapped(gc, row.value(), left, y, area.width - left - 2);
        }
    }

    private int head(GC gc, Rectangle area) {
        int top = EDGE - 2;
        if (!rows.isEmpty()) {
            gc.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DIALOG_FONT));
        }
        int beside = EDGE + gc.textExtent(heading).x + 2 * GAP;
        int below = wrapped(gc, heading, EDGE, top, area.width - 2 * EDGE) + 2;
        gc.setFont(JFaceResources.getDialogFont());
        return lamps.size() == 1 && beside + lamps.get(0).size() * (LAMP + LAMP_GAP) < area.width
                ? Math.max(below, lamps(gc, beside, area.width, top + 1)) : lamps(gc, EDGE, area.width, below);
    }

    /** Where there is little room the letters are smaller, the heading gives way and the lamps stand beside the shorter lines. */
    private int tightHead(GC gc, Rectangle area) {
        gc.setFont(small);
        int widest = lamps.stream().mapToInt(List::size).max().orElse(0);
        int corner = area.width - EDGE - widest * (LAMP + LAMP_GAP);
        if (widest > 0 && corner > area.width / 2) {
            lamps(gc, corner, area.width, TIGHT_LAMPS_LINE * gc.getFontMetrics().getHeight());
        }
        return 1;
    }

    /** Writes a text in as many lines as it needs; returns where the next line begins. */
    private int wrapped(GC gc, String text, int x, int y, int width) {
        int top = y;
        for (String line : lines(gc, text, width)) {
            letters.write(gc, line, x, top);
            top += gc.getFontMetrics().getHeight() + (gc.getFont().equals(small) ? 0 : 1);
        }
        return top;
    }

    private static List<String> lines(GC gc, String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            if (line.length() > 0 && gc.textExtent(line + " " + word).x > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    private int lamps(GC gc, int left, int width, int top) {
        int widest = lamps.stream().mapToInt(List::size).max().orElse(0);
        if (widest == 0) {
            return top;
        }
        int high = lamps.size() > 1 ? LAMP - 4 : LAMP;
        int size = Math.max(LEAST_LAMP, Math.min(high, (width - left - EDGE) / widest - LAMP_GAP));
        int y = top;
        for (List<SeenUnit> row : lamps) {
            int x = left + (widest - row.size()) * (size + LAMP_GAP) / 2;
            for (SeenUnit seenUnit : row) {
                lamp(gc, seenUnit.light(), x, y, size);
                x += size + LAMP_GAP;
            }
            y += size + LAMP_GAP - 1;
        }
        return y + 3;
    }

    /** A steady lamp is full, one that pulses or flashes is a ring, one without light is empty; the letter names the colour. */
    private void lamp(GC gc, Light light, int x, int y, int size) {
        boolean lit = light.form() != LightForm.OFF && light.colour() != Colour.NONE;
        boolean steady = light.form() == LightForm.STEADY;
        if (lit) {
            gc.setBackground(Inks.colour(Ink.valueOf(light.colour().name())));
            gc.fillOval(x, y, size, size);
        }
        if (lit && !steady) {
            gc.setBackground(Inks.colour(Ink.PAPER));
            gc.fillOval(x + 3, y + 3, size - 6, size - 6);
        }
        gc.setForeground(Inks.colour(Ink.DIMENSION));
        gc.drawOval(x, y, size, size);
        if (lit && size >= LAMP - 2) {
            String letter = Messages.get("section.letter." + light.colour().key());
            Point extent = gc.textExtent(letter);
            gc.setForeground(steady ? Lettering.clearer(Inks.colour(Ink.valueOf(light.colour().name())).getRGB(),
                    gc.getDevice().getSystemColor(SWT.COLOR_WHITE), gc.getDevice().getSystemColor(SWT.COLOR_BLACK))
                    : Inks.colour(Ink.TEXT));
            gc.drawText(letter, x + (size - extent.x + 1) / 2, y + (size - extent.y + 1) / 2, true);
            int edge = size / LAMP_GAP;
            letters.note(letter, new Rectangle(x + edge, y + edge, size - 2 * edge, size - 2 * edge), gc.getForeground().getRGB());
        }
    }

    private static void sign(GC gc, Sign sign, int x, int middle) {
        gc.setLineWidth(2);
        gc.setForeground(Inks.colour(sign == Sign.GOOD ? Ink.GREEN : sign == Sign.WARNING ? Ink.AMBER : Ink.PENETRATION));
        if (sign == Sign.WARNING) {
            gc.drawPolygon(new int[] {x, middle + 4, x + 4, middle - 4, x + 9, middle + 4});
        } else if (sign == Sign.GOOD) {
            gc.drawLine(x, middle, x + 3, middle + 4);
            gc.drawLine(x + 3, middle + 4, x + 9, middle - 4);
        } else {
            gc.drawLine(x, middle - 4, x + 8, middle + 4);
            gc.drawLine(x, middle + 4, x + 8, middle - 4);
        }
        gc.setLineWidth(1);
    }
}
