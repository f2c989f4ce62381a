package slopewright.ui.profile.internal.pilot;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;

import slopewright.drawing.pilot.LightMix;
import slopewright.drawing.scene.Ink;
import slopewright.siting.Meaning;
import slopewright.siting.SeenUnit;
import slopewright.ui.diagram.figures.Inks;
import slopewright.ui.theme.Lettering;
import slopewright.ui.units.Quantity;
import slopewright.ui.units.QuantityFormat;

/** Paints what is seen along an approach, from its start on the left to the threshold: a row a unit, and what the pattern tells. */
final class TracePainter {

    private static final int AHEAD = 90;
    private static final int OPAQUE = 255;
    private static final int MARGIN = 8;
    private static final int MOST_TICKS = 6;

    private final GC gc;
    private final Lettering letters;
    private final Color ink;
    private final Rectangle area;
    private final List<Playback.Sample> samples;
    private final Playback playback;
    private final int letter;

    TracePainter(GC gc, Lettering letters, Color ink, Rectangle area, List<Playback.Sample> samples, Playback playback) {
        this.gc = gc;
        this.letters = letters;
        this.ink = ink;
        this.area = area;
        this.samples = samples;
        this.playback = playback;
        letter = gc.textExtent("0").y;
    }

    /** Returns the part of an area in which time runs. */
    static Rectangle run(Rectangle area) {
        return new Rectangle(area.x + MARGIN, area.y, Math.max(1, area.width - 2 * MARGIN), area.height);
    }

    void paint() {
        if (samples.isEmpty()) {
            return;
        }
        Rectangle run = run(area);
        int body = Math.max(8, area.height - letter - 2);
        int meaningHeight = Math.max(5, Math.min(letter + 2, body / 2));
        for (int i = 0; i + 1 < samples.size(); i++) {
            int from = run.x + run.width * i / (samples.size() - 1);
            int to = run.x + run.width * (i + 1) / (samples.size() - 1);
            gc.setAlpha(samples.get(i).timeS() < playback.timeS() ? OPAQUE : AHEAD);
            units(samples.get(i), from, Math.max(1, to - from), area.y, body - meaningHeight - 1);
            meanings(samples.get(i), from, Math.max(1, to - from), area.y + body - meaningHeight, meaningHeight);
        }
        gc.setAlpha(OPAQUE);
        words(run, area.y + body - meaningHeight, meaningHeight);
        ticks(run, area.y + body);
        head(run, body);
    }

    private void units(Playback.Sample sample, int x, int width, int top, int height) {
        List<SeenUnit> seen = sample.observation().seen().stream().filter(seenUnit -> seenUnit.offsetMin().isEmpty()).toList();
        for (int i = 0; i < seen.size(); i++) {
            int y = top + height * i / seen.size();
            gc.setBackground(Tints.of(LightMix.of(seen.get(i))));
            gc.fillRectangle(x, y, width, Math.max(1, top + height * (i + 1) / seen.size() - y));
        }
    }

    private void meanings(Playback.Sample sample, int x, int width, int top, int height) {
        List<Meaning> meanings = new ArrayList<>(sample.observation().meanings().values());
        for (int i = 0; i < meanings.size(); i++) {
            int y = top + height * i / meanings.size();
            gc.setBackground(Tints.of(meanings.get(i)));
            gc.fillRectangle(x, y, width, Math.max(1, top + height * (i + 1) / meanings.size() - y));
        }
    }

    /** Writes each meaning into its stretch where it has room; where there are two paths the colours alone speak. */
    private void words(Rectangle run, int top, int height) {
        if (height < letter || samples.get(0).observation().meanings().size() > 1) {
            return;
        }
        int start = 0;
        for (int i = 1; i <= samples.size(); i++) {
            if (i == samples.size() || samples.get(i).observation().meaning() != samples.get(start).observation().meaning()) {
                int from = run.x + run.width * start / (samples.size() - 1);
                int to = run.x + run.width * Math.min(i, samples.size() - 1) / (samples.size() - 1);
                String text = Words.brief(samples.get(start).observation().meaning());
                Point size = gc.textExtent(text);
                if (size.x + 4 <= to - from) {
                    word(run, samples.get(start).observation().meaning(), text, new Rectangle((from + to - size.x) / 2,
                            top + (height - size.y) / 2, size.x, size.y));
                }
                start = i;
            }
        }
    }

    /** Writes a word in two inks where the head stands within it: what is ahead has a fainter ground. */
    private void word(Rectangle run, Meaning meaning, String text, Rectangle where) {
        Color full = Tints.of(meaning);
        Color faint = Tints.mixed(full, Inks.colour(Ink.PAPER), AHEAD / (double) OPAQUE);
        int head = headX(run);
        Rectangle clipping = gc.getClipping();
        for (boolean isAhead : new boolean[] {false, true}) {
            int from = isAhead ? Math.max(where.x, head) : where.x;
            int to = isAhead ? where.x + where.width : Math.min(where.x + where.width, head);
            Rectangle part = new Rectangle(from, where.y, to - from, where.height).intersection(clipping);
            if (to > from && !part.isEmpty()) {
                gc.setClipping(part);
                gc.setForeground(Lettering.clearer((isAhead ? faint : full).getRGB(), Tints.INK, Tints.CHALK));
                gc.drawText(text, where.x, where.y, true);
                letters.note(text, new Rectangle(from, where.y, to - from, where.height), gc.getForeground().getRGB());
            }
        }
        gc.setClipping(clipping);
    }

    private int headX(Rectangle run) {
        return (int) Math.round(run.x + run.width * playback.timeS() / playback.approach().durationS());
    }

    private void ticks(Rectangle run, int top) {
        gc.setForeground(ink);
        QuantityFormat format = QuantityFormat.preferred();
        double perUnit = format.read("1", Quantity.LENGTH);
        double start = playback.approach().startM() / perUnit;
        double step = Math.pow(10, Math.floor(Math.log10(start)));
        while (start / step < MOST_TICKS / 2.0) {
            step /= 2;
        }
        int free = Integer.MAX_VALUE;
        for (double tick = 0; tick <= start * (1 + 1e-9); tick += step) {
            int x = (int) Math.round(run.x + run.width * (1 - tick / start));
            String text = Math.round(tick) + (tick == 0 ? " " + format.unit(Quantity.LENGTH) : "");
            Point size = gc.textExtent(text);
            int left = Math.max(area.x, Math.min(area.x + area.width - size.x, x - size.x / 2));
            gc.drawLine(x, top, x, top + 2);
            if (left + size.x < free) {
                letters.write(gc, text, left, top + 2);
                free = left - 6;
            }
        }
    }

    private void head(Rectangle run, int body) {
        int x = headX(run);
        gc.setForeground(ink);
        gc.setBackground(ink);
        gc.setLineWidth(2);
        gc.drawLine(x, area.y, x, area.y + body + 1);
        gc.setLineWidth(1);
        gc.fillPolygon(new int[] {x - 5, area.y, x + 6, area.y, x, area.y + 6});
    }
}
