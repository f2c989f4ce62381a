package slopewright.drawing.plan;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.ScenePoint;
import slopewright.geometry.FramePoint;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachDirection;
import slopewright.model.Helipad;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.siting.site.CoordinateBasis;
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

    /**
     * Makes the placement of an aid's drawings: onto the grid of the aerodrome, or, where it has only latitude and longitude, east and
     * north of the aerodrome reference point along the geodesics from it; without such a point, of the threshold or hover point.
     *
     * @param drawn the aid
     * @return the placement
     */
    public static GridPlacement of(DrawnAid drawn) {
        return of(drawn.frame()).orElseGet(() -> about(drawn));
    }

    /**
     * Returns how much longer a distance is on the grid than on the ellipsoid, at the threshold or hover point along the landing
     * direction, over {@value #BASE_M} m.
     *
     * @param frame the frame of the plan
     * @return the factor; empty where the aerodrome has no grid of a projection
     */
    public static OptionalDouble scaleFactor(SiteFrame frame) {
        Optional<GridPlacement> placed = frame.latLon(new FramePoint(0, 0, 0)).isEmpty() ? Optional.empty() : of(frame);
        if (placed.isEmpty()) {
            return OptionalDouble.empty();
        }
        ScenePoint from = placed.get().place().apply(new ScenePoint(-BASE_M / 2, 0));
        ScenePoint to = placed.get().place().apply(new ScenePoint(BASE_M / 2, 0));
        return OptionalDouble.of(Math.hypot(to.x() - from.x(), to.y() - from.y()) / BASE_M);
    }

    /**
     * Says what the coordinates of {@link #of(DrawnAid)} are.
     *
     * @param drawn the aid
     * @return a sentence
     */
    public static String words(DrawnAid drawn) {
        Aerodrome aerodrome = drawn.project().getAerodrome();
        if (of(drawn.frame()).isPresent()) {
            return drawn.say("drawing.grid", CoordinateBasis.of(aerodrome).words());
        }
        Place base = base(drawn);
        return drawn.say("drawing.grid-about", Words.name(drawn.language().fixed(base.getLatitudeDeg(), 8)),
                Words.name(drawn.language().fixed(base.getLongitudeDeg(), 8)));
    }

    private static GridPlacement about(DrawnAid drawn) {
        SiteFrame north = north(base(drawn));
        ScenePoint origin = about(drawn.frame(), north, new ScenePoint(0, 0));
        ScenePoint ahead = about(drawn.frame(), north, new ScenePoint(BASE_M, 0));
        double turn = Math.toDegrees(Math.atan2(ahead.y() - origin.y(), ahead.x() - origin.x()));
        return new GridPlacement(point -> about(drawn.frame(), north, point), turn);
    }

    private static ScenePoint about(SiteFrame frame, SiteFrame north, ScenePoint point) {
        FramePoint placed = north.toFrame(grid(frame, point), 0);
        return new ScenePoint(placed.rightM(), placed.alongM());
    }

    /** Returns the place that coordinates count from where there is no grid. */
    private static Place base(DrawnAid drawn) {
        Aerodrome aerodrome = drawn.project().getAerodrome();
        if (aerodrome == null || aerodrome.getLatitudeDeg() == null || aerodrome.getLongitudeDeg() == null) {
            return grid(drawn.frame(), new ScenePoint(0, 0));
        }
        Place base = SlopewrightFactory.eINSTANCE.createPlace();
        base.setLatitudeDeg(aerodrome.getLatitudeDeg());
        base.setLongitudeDeg(aerodrome.getLongitudeDeg());
        return base;
    }

    /** Makes a frame whose axis points to true north. */
    private static SiteFrame north(Place base) {
        SlopewrightFactory make = SlopewrightFactory.eINSTANCE;
        Project project = make.createProject();
        project.setAerodrome(make.createAerodrome());
        Helipad pad = make.createHelipad();
        project.getAerodrome().getHelipads().add(pad);
        pad.setPlace(base);
        pad.setElevationM(0.0);
        ApproachDirection direction = make.createApproachDirection();
        pad.getDirections().add(direction);
        direction.setTrueBearingDeg(0.0);
        return SiteFrame.of(direction);
    }

    private static Place grid(SiteFrame frame, ScenePoint point) {
        Place place = SlopewrightFactory.eINSTANCE.createPlace();
        frame.fromFrame(new FramePoint(point.x(), -point.y(), 0), place);
        return place;
    }
}
