package slopewright.ui.plan.internal.tools;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import slopewright.edit.AddChild;
import slopewright.edit.AddObstacle;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachDirection;
import slopewright.model.GroundLevel;
import slopewright.model.Helipad;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.Place;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.model.TaxiwayEdge;
import slopewright.siting.site.PlanPlane;
import slopewright.siting.site.PlanPoint;
import slopewright.ui.plan.internal.Messages;

/**
 * What is drawn on the plan with one click a place. Places come from the plan; heights, widths and all else are left to the property sheet,
 * so that nobody takes a guess for a survey.
 */
public enum SiteShape {
    /** A wire or a wall: two places or more. */
    LINE_OBSTACLE(2, Integer.MAX_VALUE),
    /** A wood or a building: three places or more. */
    AREA_OBSTACLE(3, Integer.MAX_VALUE),
    /** A level of the ground. */
    GROUND_LEVEL(1, 1),
    /** The edge of a taxiway or an apron. */
    TAXIWAY_EDGE(2, Integer.MAX_VALUE),
    /** A runway from threshold to threshold. */
    RUNWAY(2, 2),
    /** A helipad by its middle. */
    HELIPAD(1, 1);

    private static final int TURN = 36;
    private static final int HALF_TURN = 18;
    private static final double MILLIMETRES = 1000;

    private final int least;
    private final int most;

    SiteShape(int least, int most) {
        this.least = least;
        this.most = most;
    }

    /** Returns the name by which texts and pictures of it are found. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Returns how many places it needs. */
    public int least() {
        return least;
    }

    /** Returns with how many places it is whole. */
    public int most() {
        return most;
    }

    /**
     * Returns the edit that adds it.
     *
     * @param aerodrome the aerodrome
     * @param plane     brings places of the plan to the aerodrome
     * @param points    its places, as many as it needs
     */
    AddChild add(Aerodrome aerodrome, PlanPlane plane, List<PlanPoint> points) {
        SlopewrightFactory make = SlopewrightFactory.eINSTANCE;
        List<Place> places = points.stream().map(point -> place(plane, point)).toList();
        switch (this) {
            case LINE_OBSTACLE, AREA_OBSTACLE -> {
                Obstacle obstacle = make.createObstacle();
                obstacle.setKind(this == LINE_OBSTACLE ? ObstacleKind.LINE : ObstacleKind.AREA);
                obstacle.setName(Messages.get("place.obstacle-name", aerodrome.getObstacles().size() + 1));
                obstacle.getPlaces().addAll(places);
                return AddObstacle.of(aerodrome, obstacle);
            }
            case GROUND_LEVEL -> {
                GroundLevel level = make.createGroundLevel();
                level.setPlace(places.get(0));
                return AddChild.of(aerodrome, Literals.AERODROME__GROUND_LEVELS, level);
            }
            case TAXIWAY_EDGE -> {
                TaxiwayEdge edge = make.createTaxiwayEdge();
                edge.getPoints().addAll(places);
                return AddChild.of(aerodrome, Literals.AERODROME__TAXIWAY_EDGES, edge);
            }
            case RUNWAY -> {
                return AddChild.of(aerodrome, Literals.AERODROME__RUNWAYS, runway(points, places));
            }
            default -> {
                Helipad pad = make.createHelipad();
                pad.setName(Messages.get("draw.helipad-name", aerodrome.getHelipads().size() + 1));
                pad.setPlace(places.get(0));
                ApproachDirection direction = make.createApproachDirection();
                pad.getDirections().add(direction);
                return AddChild.of(aerodrome, Literals.AERODROME__HELIPADS, pad);
            }
        }
    }

    private static Place place(PlanPlane plane, PlanPoint point) {
        Place place = SlopewrightFactory.eINSTANCE.createPlace();
        plane.toPlace(point, place);
        return place;
    }

    /** Length and bearings follow from the thresholds; the designators are those of the true bearing until somebody types others. */
    private static Runway runway(List<PlanPoint> points, List<Place> places) {
        double east = points.get(1).eastM() - points.get(0).eastM();
        double north = points.get(1).northM() - points.get(0).northM();
        double bearing = (Math.toDegrees(Math.atan2(east, north)) + 360) % 360;
        int tens = (int) Math.round(bearing / 10) % TURN;
        Runway runway = SlopewrightFactory.eINSTANCE.createRunway();
        runway.setLengthM(Math.round(Math.hypot(east, north) * MILLIMETRES) / MILLIMETRES);
        List<String> designators = Stream.of(tens, (tens + HALF_TURN) % TURN).map(number -> String.format(Locale.ROOT, "%02d",
                number == 0 ? TURN : number)).toList();
        runway.setDesignator(String.join("/", designators));
        runway.setName(Messages.get("draw.runway-name", runway.getDesignator()));
        for (int i = 0; i < 2; i++) {
            RunwayEnd end = SlopewrightFactory.eINSTANCE.createRunwayEnd();
            end.setDesignator(designators.get(i));
            end.setThreshold(places.get(i));
            runway.getEnds().add(end);
        }
        return runway;
    }
}
