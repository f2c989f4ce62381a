package slopewright.ui.profile.internal.pilot;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Pattern;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;

import slopewright.drawing.pilot.LightMix;
import slopewright.drawing.signal.SignalStrip;
import slopewright.siting.Light;
import slopewright.siting.LightForm;
import slopewright.siting.Meaning;
import slopewright.ui.theme.Lettering;
import slopewright.ui.units.Quantity;
import slopewright.ui.units.QuantityFormat;

/** Paints what the indicator shows into each height at the distance of the eye, with the eye in it. */
final class HeightPainter {

    private static final int DIMMED = 90;
    private static final int OPAQUE = 255;
    private static final int MARGIN = 4;
    private static final int ARROW = 6;
    private static final int BESIDE_LINE = 2;

    private final GC gc;
    private final Lettering letters;
    private final Sight sight;
    private final Color ink;
    private final Rectangle area;
    private final QuantityFormat format = QuantityFormat.preferred();
    private final int letter;

    HeightPainter(GC gc, Lettering letters, Sight sight, Color ink, Rectangle area) {
        this.gc = gc;
        this.letters = letters;
        this.sight = sight;
        this.ink = ink;
        letter = gc.textExtent("0").y;
        this.area = new Rectangle(area.x, area.y + MARGIN, area.width, area.height - 2 * MARGIN);
    }

    private double y(double heightM) {
        SignalStrip strip = sight.strip();
        return area.y + area.height * (strip.highM() - heightM) / (strip.highM() - strip.lowM());
    }

    void paint() {
        SignalStrip strip = sight.strip();
        int scaleWidth = Math.max(gc.textExtent(length(strip.highM())).x, gc.textExtent(length(sight.eye().heightM())).x) + ARROW + 4;
        int left = area.x + scaleWidth;
        int room = area.x + area.width - left - MARGIN;
        int words = Math.min(wordsWidth(), room * 7 / 10);
        int columns = strip.columns().size();
        double width = columns == 0 ? 0 : Math.min(22, (room - words) / (double) columns);
        for (int i = 0; i < columns; i++) {
            column(strip.columns().get(i), left + i * width, Math.max(1, width - (width > 4 ? 1 : 0)));
        }
        int from = (int) Math.round(left + columns * width) + (columns == 0 ? 0 : 3);
        readings(strip.readings(), from, area.x + area.width - MARGIN - from);
        slope(left);
        eye(left);
    }

    private int wordsWidth() {
        return 5 + Stream.of(Meaning.values()).mapToInt(meaning -> gc.textExtent(Words.brief(meaning)).x).max().orElse(0);
    }

    private static String whole(double value) {
        return String.valueOf(Math.round(value));
    }

    private String length(double metres) {
        double rounded = Math.abs(metres) < 20 ? Math.round(metres * 10) / 10.0 : Math.round(metres);
        String text = format.show(rounded, Quantity.LENGTH);
        return (text.indexOf('.') > 0 && Math.abs(metres) >= 20 ? whole(Double.parseDouble(text)) : text) + " " + format.unit(
                Quantity.LENGTH);
    }

    private void column(SignalStrip.Column column, double x, double width) {
        for (SignalStrip.Band band : column.bands()) {
            double top = y(band.highM());
            double bottom = y(band.lowM());
            int left = (int) Math.round(x);
            int wide = Math.max(1, (int) Math.round(x + width) - left);
            int high = Math.max(1, (int) Math.round(bottom) - (int) Math.round(top));
            if (band.below().equals(band.above())) {
                gc.setBackground(Tints.of(band.below().colour()));
                gc.fillRectangle(left, (int) Math.round(top), wide, high);
                timed(band.below(), left, (int) Math.round(top), wide, high);
            } else {
                mixed(band, left, (int) Math.round(top), wide, high);
            }
        }
    }

    /** Hatches what flashes or pulsates. */
    private void timed(Light light, int left, int top, int wide, int high) {
        if (light.form() == LightForm.STEADY || light.form() == LightForm.OFF) {
            return;
        }
        gc.setForeground(Tints.DARK);
        gc.setAlpha(DIMMED);
        for (int y = top + 2; y < top + high; y += 5) {
            gc.drawLine(left, y, left + wide - 1, y);
        }
        gc.setAlpha(OPAQUE);
    }

    private void mixed(SignalStrip.Band band, int left, int top, int wide, int high) {
        Color above = Tints.of(new LightMix(band.below(), band.above(), 1));
        Color below = Tints.of(new LightMix(band.below(), band.above(), 0));
        Pattern pattern = new Pattern(gc.getDevice(), left, top, left, top + (float) high, above, below);
        gc.setBackgroundPattern(pattern);
        gc.fillRectangle(left, top, wide, high);
        gc.setBackgroundPattern(null);
        pattern.dispose();
    }

    private void readings(List<SignalStrip.Reading> readings, int left, int width) {
        for (SignalStrip.Reading reading : readings) {
            int top = (int) Math.round(y(reading.highM()));
            int high = Math.max(1, (int) Math.round(y(reading.lowM())) - top);
            int paths = reading.meanings().size();
            int index = 0;
            for (Map.Entry<String, Meaning> path : reading.meanings().entrySet()) {
                int x = left + width * index / paths;
                index++;
                meaning(path.getValue(), x, top, left + width * index / paths - x - (index < paths ? 1 : 0), high);
            }
        }
    }

    private void meaning(Meaning meaning, int left, int top, int width, int high) {
        gc.setBackground(Tints.of(meaning));
        gc.fillRectangle(left, top, width, high);
        String text = Words.brief(meaning);
        Point size = gc.textExtent(text);
        if (size.y <= high && size.x <= width - 2) {
            gc.setForeground(Lettering.clearer(Tints.of(meaning).getRGB(), Tints.INK, Tints.CHALK));
            clearOfLines(top, high, size.y).ifPresent(place -> letters.write(gc, text, left + 2, place));
        }
    }

    /** Returns where words stand in a band: in its middle, or clear of a line that runs through them there; empty without room. */
    private Optional<Integer> clearOfLines(int top, int high, int tall) {
        int middle = top + (high - tall) / 2;
        List<Integer> lines = Stream.of(sight.eye().heightM(), sight.strip().slopeM()).map(heightM -> (int) Math.round(y(heightM)))
                .toList();
        return Stream.concat(Stream.of(middle), lines.stream().flatMap(line -> Stream.of(line - tall - BESIDE_LINE, line + BESIDE_LINE)))
                .filter(place -> place >= top && place + tall <= top + high)
                .filter(place -> lines.stream().noneMatch(line -> line >= place && line <= place + tall)).findFirst();
    }

    private void slope(int left) {
        int y = (int) Math.round(y(sight.strip().slopeM()));
        if (!sight.strip().readings().isEmpty() && y > area.y && y < area.y + area.height) {
            gc.setForeground(Tints.INK);
            gc.setLineStyle(SWT.LINE_DASH);
            gc.drawLine(left, y, area.x + area.width - MARGIN, y);
            gc.setLineStyle(SWT.LINE_SOLID);
        }
    }

    private void eye(int left) {
        double exact = y(sight.eye().heightM());
        int y = (int) Math.round(Math.max(area.y, Math.min(area.y + (double) area.height, exact)));
        boolean within = exact >= area.y && exact <= area.y + area.height;
        gc.setForeground(ink);
        gc.setBackground(ink);
        if (within) {
            gc.setLineWidth(2);
            gc.drawLine(left - 2, y, area.x + area.width - MARGIN, y);
            gc.setLineWidth(1);
            gc.fillPolygon(new int[] {left - ARROW - 2, y - ARROW / 2 - 1, left - 2, y, left - ARROW - 2, y + ARROW / 2 + 1});
        } else {
            int up = exact < area.y ? 1 : -1;
            gc.fillPolygon(new int[] {left - ARROW - 3, y + up * ARROW, left - 5, y, left, y + up * ARROW});
        }
        String text = length(sight.eye().heightM());
        Point size = gc.textExtent(text);
        int top = Math.max(area.y - MARGIN, Math.min(area.y + area.height + MARGIN - size.y, y - size.y / 2));
        letters.write(gc, text, area.x, top);
        ends(top);
    }

    private void ends(int taken) {
        int bottom = area.y + area.height + MARGIN - letter;
        if (Math.abs(bottom - taken) > letter) {
            letters.write(gc, length(sight.strip().lowM()), area.x, bottom);
        }
        if (Math.abs(taken - (area.y - MARGIN)) > letter) {
            letters.write(gc, length(sight.strip().highM()), area.x, area.y - MARGIN);
        }
    }
}
