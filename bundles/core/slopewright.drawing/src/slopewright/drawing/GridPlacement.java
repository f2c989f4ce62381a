package slopewright.drawing;

import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;

import slopewright.geometry.FramePoint;
import slopewright.model.Place;
import slopewright.model.SlopewrightFactory;
import slopewright.siting.site.SiteFrame;

/**
 * Brings a plan from the frame of a runway end or helipad onto the grid of the aerodrome: x east, y north, metres.
 *
 * @param place   brings a point of the plan onto the grid
 * @param turnDeg how far the landing direction is turned from grid east, decimal degrees, counter-clockwise
 */
public record GridPlacement(UnaryOperator<ScenePoint> place, double turnDeg) {

    private static final double BASE_M = 1000;

    /** Refuses a missing way. */
    public GridPlacement {
        Objects.requireNonNull(place);
    }

    /** Leaves a scene where it is. */
    public static GridPlacement none() {
        return new GridPlacement(UnaryOperator.identity(), 0);
    }

    /**
     * Makes the placement of a frame.
     *
     * @param frame the frame of the plan
     * @return empty where the aerodrome has no grid, only latitude and longitude
     */
    public static Optional<GridPlacement> of(SiteFrame frame) {
        Place origin = grid(frame, new ScenePoint(0, 0));
        if (origin.getEastM() == null || origin.getNorthM() == null) {
            return Optional.empty();
        }
        Place ahead = grid(frame, new ScenePoint(BASE_M, 0));
        double turn = Math.toDegrees(Math.atan2(ahead.getNorthM() - origin.getNorthM(), ahead.getEastM() - origin.getEastM()));
        return Optional.of(new GridPlacement(point -> {
            Place placed = grid(frame, point);
            return new ScenePoint(placed.getEastM(), placed.getNorthM());
        }, turn));
    }

    private static Place grid(SiteFrame frame, ScenePoint point) {
        Place place = SlopewrightFactory.eINSTANCE.createPlace();
        frame.fromFrame(new FramePoint(point.x(), -point.y(), 0), place);
        return place;
    }
}
