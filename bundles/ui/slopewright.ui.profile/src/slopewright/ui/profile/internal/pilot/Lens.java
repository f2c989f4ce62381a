package slopewright.ui.profile.internal.pilot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.graphics.Rectangle;

import slopewright.drawing.pilot.PilotPicture;
import slopewright.drawing.scene.ScenePoint;
import slopewright.geometry.FramePoint;
import slopewright.siting.UnitPlan;

/**
 * What part of a picture is shown where on the screen, and how large.
 *
 * @param area       the place on the screen, pixels
 * @param centreXDeg what is in its middle, degrees to the right in the picture
 * @param centreYDeg what is in its middle, degrees up in the picture
 * @param scale      pixels a degree
 */
public record Lens(Rectangle area, double centreXDeg, double centreYDeg, double scale) {

    private static final double LEAST_HEIGHT_DEG = 0.5;
    private static final double LEAST_ACROSS_M = 14;
    private static final double STEEP = 3;
    private static final double MARGIN = 0.18;
    private static final double SHARE_ACROSS = 0.74;
    private static final double SHARE_UP = 0.5;

    /** Shows the runway or helipad from the threshold to the horizon, with the whole indicator. */
    static Lens wide(Sight sight, Rectangle area) {
        PilotPicture picture = sight.picture();
        List<ScenePoint> units = places(sight);
        double horizon = picture.horizonDeg();
        double low = units.stream().mapToDouble(ScenePoint::y).min().orElse(horizon - 1);
        Optional<ScenePoint> threshold = picture.place(new FramePoint(0, 0, 0));
        double steep = horizon - STEEP * Math.max(LEAST_HEIGHT_DEG, horizon - low);
        low = Math.min(low, threshold.map(at -> Math.max(steep, at.y())).orElse(low));
        double high = Math.max(horizon, units.stream().mapToDouble(ScenePoint::y).max().orElse(horizon));
        double tall = Math.max(LEAST_HEIGHT_DEG, high - low) * (1 + 2 * MARGIN);
        double half = units.stream().mapToDouble(at -> Math.abs(at.x())).max().orElse(0) * (1 + MARGIN) + 1e-3;
        double scale = Math.min(area.height / tall, area.width / (2 * half));
        return new Lens(area, 0, (low + high) / 2, scale);
    }

    /** Shows the units of the indicator as large as they fit. */
    static Lens close(Sight sight, Rectangle area) {
        List<ScenePoint> units = places(sight);
        double minX = units.stream().mapToDouble(ScenePoint::x).min().orElse(0);
        double maxX = units.stream().mapToDouble(ScenePoint::x).max().orElse(0);
        double minY = units.stream().mapToDouble(ScenePoint::y).min().orElse(0);
        double maxY = units.stream().mapToDouble(ScenePoint::y).max().orElse(0);
        double depth = Math.max(PilotPicture.CLOSEST_M, sight.indicator().siting().units().stream()
                .mapToDouble(unit -> sight.picture().depthM(unit.place())).min().orElse(PilotPicture.CLOSEST_M));
        double across = Math.max(maxX - minX, Math.toDegrees(LEAST_ACROSS_M / depth));
        double scale = area.width * SHARE_ACROSS / across;
        if (maxY > minY) {
            scale = Math.min(scale, area.height * SHARE_UP / (maxY - minY));
        }
        return new Lens(area, (minX + maxX) / 2, (minY + maxY) / 2, scale);
    }

    private static List<ScenePoint> places(Sight sight) {
        List<ScenePoint> places = new ArrayList<>();
        for (UnitPlan unit : sight.indicator().siting().units()) {
            sight.picture().place(unit.place()).ifPresent(places::add);
        }
        return places;
    }

    double x(ScenePoint at) {
        return area.x + area.width / 2.0 + (at.x() - centreXDeg) * scale;
    }

    double y(ScenePoint at) {
        return area.y + area.height / 2.0 - (at.y() - centreYDeg) * scale;
    }

    double y(double degrees) {
        return y(new ScenePoint(0, degrees));
    }
}
