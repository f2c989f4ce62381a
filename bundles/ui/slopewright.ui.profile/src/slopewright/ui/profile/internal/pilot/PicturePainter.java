package slopewright.ui.profile.internal.pilot;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;

import slopewright.drawing.pilot.Daylight;
import slopewright.drawing.pilot.LightMix;
import slopewright.drawing.pilot.PilotGround;
import slopewright.drawing.pilot.PilotPicture;
import slopewright.drawing.pilot.Skyline;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.ScenePoint;
import slopewright.geometry.FramePoint;
import slopewright.siting.LightForm;
import slopewright.siting.SeenUnit;
import slopewright.ui.MessageTexts;
import slopewright.ui.profile.internal.Messages;
import slopewright.ui.theme.Lettering;

/** Paints what the pilot sees through a lens: sky, land, runway or helipad, and the lights as they are at the moment. */
final class PicturePainter {

    /** So many points of a model are looked at for each picture, of which there are many a second. */
    private static final int MOST_TERRAIN_POINTS = 100_000;
    private static final int OPAQUE = 255;
    private static final int LINE_ALPHA = 150;
    private static final int LAMP_ALPHA = 210;
    private static final double PANEL_HALF_WIDTH_M = 1.2;
    private static final double PANEL_HALF_HEIGHT_M = 0.6;
    private static final double NAMED_FROM_PX = 20;
    private static final int NAMED_HEIGHT_PX = 84;
    private static final double USUAL_STRENGTH = 2;
    private static final double BAR_SHARE = 0.3;
    private static final double[] BAR_MINUTES = {0.5, 1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 1200, 1800};

    private final GC gc;
    private final Lettering letters;
    private final Sight sight;
    private final Playback playback;

    PicturePainter(GC gc, Lettering letters, Sight sight, Playback playback) {
        this.gc = gc;
        this.letters = letters;
        this.sight = sight;
        this.playback = playback;
    }

    /**
     * Paints the view.
     *
     * @param lens      what is shown where
     * @param magnified how many times larger than in the picture beside it; zero where it is that picture
     */
    void paint(Lens lens, double magnified) {
        gc.setClipping(lens.area());
        ground(lens);
        caption(lens, magnified > 0 ? Messages.get("pilot.draw.magnified", factor(magnified))
                : Messages.get("pilot.draw.field", degrees(lens.area().width / lens.scale()), degrees(lens.area().height / lens.scale())));
        scaleBar(lens);
        lights(lens, magnified > 0);
        gc.setClipping((Rectangle) null);
    }

    private static String factor(double value) {
        return MessageTexts.renderer().fixed(value, value < 9.95 ? 1 : 0);
    }

    private static String degrees(double value) {
        return MessageTexts.renderer().fixed(value, value < 9.95 ? 1 : 0) + "°";
    }

    private void ground(Lens lens) {
        Daylight light = sight.daylight();
        Rectangle area = lens.area();
        int horizon = (int) Math.max(area.y, Math.min(area.y + area.height, Math.round(lens.y(sight.picture().horizonDeg()))));
        gc.setBackground(Tints.of(light.sky()));
        gc.fillRectangle(area.x, area.y, area.width, horizon - area.y);
        gc.setBackground(Tints.of(light.land()));
        gc.fillRectangle(area.x, horizon, area.width, area.y + area.height - horizon);
        double half = area.width / lens.scale() / 2 + Math.abs(lens.centreXDeg());
        for (List<ScenePoint> hill : Skyline.of(sight.picture(), sight.indicator().terrain(), half, MOST_TERRAIN_POINTS).hills()) {
            polygon(lens, hill, Tints.of(light.land()), Tints.of(Ink.GROUND));
        }
        Color marking = Tints.of(light.marking());
        for (PilotGround.Shape shape : sight.indicator().ground().shapes()) {
            boolean paved = shape.part() == PilotGround.Part.PAVEMENT;
            polygon(lens, sight.picture().area(shape.corners()), paved ? Tints.of(light.pavement()) : marking,
                    shape.part() == PilotGround.Part.LINE ? marking : null);
        }
        if (light.runwayLights()) {
            lamps(lens);
        }
    }

    private void polygon(Lens lens, List<ScenePoint> corners, Color inside, Color outline) {
        if (corners.size() < 3) {
            return;
        }
        Path path = new Path(gc.getDevice());
        try {
            path.moveTo((float) lens.x(corners.get(0)), (float) lens.y(corners.get(0)));
            corners.stream().skip(1).forEach(corner -> path.lineTo((float) lens.x(corner), (float) lens.y(corner)));
            path.close();
            gc.setBackground(inside);
            gc.fillPath(path);
            if (outline != null) {
                gc.setForeground(outline);
                gc.setAlpha(LINE_ALPHA);
                gc.drawPath(path);
                gc.setAlpha(OPAQUE);
            }
        } finally {
            path.dispose();
        }
    }

    private void lamps(Lens lens) {
        gc.setAlpha(LAMP_ALPHA);
        for (PilotGround.Lamp lamp : sight.indicator().ground().lamps()) {
            Optional<ScenePoint> at = sight.picture().place(lamp.place());
            if (at.isPresent()) {
                disc(lens.x(at.get()), lens.y(at.get()), 1.2, Tints.of(lamp.colour()));
            }
        }
        gc.setAlpha(OPAQUE);
    }

    private void disc(double x, double y, double radius, Color colour) {
        gc.setBackground(colour);
        Path path = circle(x, y, radius);
        gc.fillPath(path);
        path.dispose();
    }

    private void ring(double x, double y, double radius, Color colour) {
        gc.setForeground(colour);
        Path path = circle(x, y, radius);
        gc.drawPath(path);
        path.dispose();
    }

    private Path circle(double x, double y, double radius) {
        Path path = new Path(gc.getDevice());
        path.addArc((float) (x - radius), (float) (y - radius), (float) (2 * radius), (float) (2 * radius), 0, 360);
        return path;
    }

    private void lights(Lens lens, boolean magnified) {
        double gap = gapPx(lens);
        for (SeenUnit seen : sight.seen()) {
            Optional<ScenePoint> at = sight.picture().place(seen.unit().place());
            if (at.isEmpty()) {
                continue;
            }
            double below = 4;
            if (seen.offsetMin().isPresent()) {
                below = panel(lens, seen);
            } else {
                double radius = radius(seen, gap, magnified);
                light(lens.x(at.get()), lens.y(at.get()), radius, seen, magnified);
                below += radius;
            }
            if (magnified && gap > NAMED_FROM_PX && lens.area().height >= NAMED_HEIGHT_PX) {
                name(lens.x(at.get()), lens.y(at.get()) + below, seen);
            }
        }
    }

    private void name(double x, double y, SeenUnit seen) {
        String text = seen.unit().id();
        if (seen.offsetMin().isPresent() && Math.abs(seen.offsetMin().getAsDouble()) > 0) {
            double offset = seen.offsetMin().getAsDouble();
            text += (offset < 0 ? "  -" : "  +") + MessageTexts.renderer().fixed(Math.abs(offset), 1) + "′";
        }
        gc.setForeground(chalk());
        Point size = gc.textExtent(text);
        letters.writeWhereFree(gc, text, (int) Math.round(x - size.x / 2.0), (int) Math.round(y));
    }

    private Color chalk() {
        return sight.daylight() == Daylight.DAY ? Tints.INK : Tints.CHALK;
    }

    /** Returns how many pixels the closest two units are apart. */
    private double gapPx(Lens lens) {
        double least = lens.area().width / 2.0;
        List<ScenePoint> places = sight.seen().stream().map(seenUnit -> sight.picture().place(seenUnit.unit().place()))
                .flatMap(Optional::stream)
                .toList();
        for (int i = 0; i < places.size(); i++) {
            for (int j = i + 1; j < places.size(); j++) {
                double across = (places.get(i).x() - places.get(j).x()) * lens.scale();
                double up = (places.get(i).y() - places.get(j).y()) * lens.scale();
                least = Math.min(least, Math.hypot(across, up));
            }
        }
        return least;
    }

    /** Returns how large a light looks: the stronger at the eye, the larger, by the logarithm; never so large that two run together. */
    private double radius(SeenUnit seen, double gap, boolean magnified) {
        OptionalDouble strength = sight.strength(seen);
        double size = 1.4 + Math.max(0, Math.min(4, strength.orElse(USUAL_STRENGTH))) * 0.9;
        return magnified ? Math.max(1.8, Math.min(size * 2, gap * 0.42)) : size;
    }

    private void light(double x, double y, double radius, SeenUnit seen, boolean magnified) {
        boolean off = seen.light().form() == LightForm.OFF || !playback.isLit(sight, seen);
        boolean weak = sight.strength(seen).orElse(0) < 0 || sight.isBeside(seen);
        if (off || weak) {
            if (magnified) {
                ring(x, y, Math.max(2, radius * 0.7), off ? Tints.DARK : Tints.of(LightMix.of(seen)));
            }
            return;
        }
        Color colour = Tints.of(LightMix.of(seen));
        if (sight.daylight() != Daylight.DAY) {
            gc.setAlpha(36);
            disc(x, y, radius * 2.3, colour);
            gc.setAlpha(70);
            disc(x, y, radius * 1.55, colour);
            gc.setAlpha(OPAQUE);
        }
        disc(x, y, radius, colour);
        if (sight.daylight() == Daylight.DAY && magnified) {
            gc.setAlpha(110);
            ring(x, y, radius, Tints.DARK);
            gc.setAlpha(OPAQUE);
        }
    }

    /** Paints a panel at its true size, though never smaller than can be made out; returns how far down it reaches. */
    private double panel(Lens lens, SeenUnit seen) {
        FramePoint place = seen.unit().place();
        PilotPicture picture = sight.picture();
        ScenePoint middle = picture.place(place).orElseThrow();
        double depth = picture.depthM(place);
        double halfWidth = Math.max(2, Math.toDegrees(PANEL_HALF_WIDTH_M / depth) * lens.scale());
        double halfHeight = Math.max(1, Math.toDegrees(PANEL_HALF_HEIGHT_M / depth) * lens.scale());
        Path path = new Path(gc.getDevice());
        path.addRectangle((float) (lens.x(middle) - halfWidth), (float) (lens.y(middle) - halfHeight), (float) (2 * halfWidth),
                (float) (2 * halfHeight));
        gc.setAlpha(sight.daylight() == Daylight.NIGHT ? LINE_ALPHA / 3 : OPAQUE);
        gc.setBackground(Tints.of(Ink.AMBER));
        gc.fillPath(path);
        gc.setForeground(Tints.DARK);
        gc.drawPath(path);
        gc.setAlpha(OPAQUE);
        path.dispose();
        return halfHeight + 3;
    }

    private void scaleBar(Lens lens) {
        double chosen = BAR_MINUTES[0];
        for (double minutes : BAR_MINUTES) {
            if (minutes / 60 * lens.scale() <= lens.area().width * BAR_SHARE) {
                chosen = minutes;
            }
        }
        int length = (int) Math.round(chosen / 60 * lens.scale());
        if (length > lens.area().width) {
            return;
        }
        Rectangle area = lens.area();
        int x = area.x + area.width - length - 8;
        int y = area.y + area.height - 6;
        String text = chosen < 60 ? (chosen < 1 ? "0.5′" : Math.round(chosen) + "′") : Math.round(chosen / 60) + "°";
        gc.setForeground(chalk());
        gc.drawLine(x, y, x + length, y);
        gc.drawLine(x, y - 3, x, y + 3);
        gc.drawLine(x + length, y - 3, x + length, y + 3);
        Point size = gc.textExtent(text);
        letters.writeWhereFree(gc, text, x + length / 2 - size.x / 2, y - size.y - 2);
    }

    private void caption(Lens lens, String text) {
        gc.setForeground(chalk());
        letters.write(gc, text, lens.area().x + 6, lens.area().y + 3);
    }
}
