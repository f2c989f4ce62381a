package slopewright.ui.plan.internal.obstacle;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

import slopewright.evaluation.landing.SightedObstacles;
import slopewright.evaluation.landing.Sighting;
import slopewright.model.ApproachHost;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.Place;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Projects;
import slopewright.siting.magnetic.SiteVariation;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.units.Quantity;
import slopewright.ui.units.QuantityFormat;

/** An obstacle as it is typed: by coordinates, by bearing, distance and height, or by a clinometer angle. */
final class ObstacleEntry {

    /** How it was measured. */
    enum Way {
        /** By its coordinates. */
        COORDINATES,
        /** By bearing, distance and height from the middle of the pad. */
        HEIGHT,
        /** By bearing, distance and the angle of a clinometer. */
        ANGLE
    }

    /** What it is. */
    enum Shape {
        /** A mast, or the top of anything. */
        POINT,
        /** A tree, with the radius of its crown. */
        TREE,
        /** A wire between two supports, with its sag. */
        WIRE,
        /** A slope of the ground between two places. */
        SLOPE
    }

    /** A number that is typed, with what it is, between which numbers it makes sense, and what is assumed at first. */
    enum Number {
        FIRST_COORDINATE(Quantity.LATITUDE), SECOND_COORDINATE(Quantity.LONGITUDE),
        TOP(Quantity.LENGTH, -Number.HIGHEST_M, Number.HIGHEST_M), PLACE_ACCURACY(Quantity.LENGTH, 0, Number.FARTHEST_M),
        TOP_ACCURACY(Quantity.LENGTH, 0, Number.HIGHEST_M), BEARING(Quantity.ANGLE, -360, 360),
        DISTANCE(Quantity.LENGTH, 0, Number.FARTHEST_M), HEIGHT(Quantity.LENGTH, -Number.HIGHEST_M, Number.HIGHEST_M),
        ANGLE(Quantity.ANGLE, -80, 80), TO_BEARING(Quantity.ANGLE, -360, 360), TO_DISTANCE(Quantity.LENGTH, 0, Number.FARTHEST_M),
        TO_HEIGHT(Quantity.LENGTH, -Number.HIGHEST_M, Number.HIGHEST_M), TO_ANGLE(Quantity.ANGLE, -80, 80),
        SAG(Quantity.LENGTH, 0, Number.HIGHEST_M), CROWN(Quantity.LENGTH, 0, Number.HIGHEST_M),
        BEARING_ACCURACY(Quantity.ANGLE, 0, 180, "2"), DISTANCE_ACCURACY(Quantity.PERCENT, 0, 100, "5"),
        ANGLE_ACCURACY(Quantity.ANGLE, 0, 80, "0.5"), HEIGHT_ACCURACY(Quantity.LENGTH, 0, Number.HIGHEST_M, "1 m"),
        EYE(Quantity.LENGTH, 0, Number.HIGHEST_M, "1.6 m");

        /** Nothing that is asked for stands higher or lower, metres. */
        private static final double HIGHEST_M = 10_000;
        /** Nothing that is seen from a pad is farther, metres. */
        private static final double FARTHEST_M = 100_000;

        private final Quantity quantity;
        private final double least;
        private final double most;
        private final String assumed;

        Number(Quantity quantity) {
            this(quantity, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        }

        Number(Quantity quantity, double least, double most) {
            this(quantity, least, most, "");
        }

        Number(Quantity quantity, double least, double most, String assumed) {
            this.quantity = quantity;
            this.least = least;
            this.most = most;
            this.assumed = assumed;
        }

        Quantity quantity() {
            return quantity;
        }
    }

    private final ApproachHost host;
    private final Map<Number, String> typed = new EnumMap<>(Number.class);
    private Way way = Way.HEIGHT;
    private Shape shape = Shape.POINT;
    private String name = "";
    private boolean magnetic;

    ObstacleEntry(ApproachHost host) {
        this.host = host;
        for (Number number : Number.values()) {
            typed.put(number, number.assumed);
        }
    }

    void choose(Way chosen) {
        way = chosen;
        shape = chosen == Way.COORDINATES ? Shape.POINT : shape;
    }

    void choose(Shape chosen) {
        shape = chosen;
    }

    void setMagnetic(boolean to) {
        magnetic = to;
    }

    void setName(String to) {
        name = to;
    }

    void type(Number number, String words) {
        typed.put(number, words);
    }

    String text(Number number) {
        return typed.get(number);
    }

    Shape shape() {
        return shape;
    }

    /** Returns whether a number is asked for as things are chosen. */
    boolean isAsked(Number number) {
        boolean sighted = way != Way.COORDINATES;
        boolean line = sighted && (shape == Shape.WIRE || shape == Shape.SLOPE);
        return switch (number) {
            case FIRST_COORDINATE, SECOND_COORDINATE, TOP, PLACE_ACCURACY, TOP_ACCURACY -> !sighted;
            case BEARING, DISTANCE, BEARING_ACCURACY, DISTANCE_ACCURACY -> sighted;
            case HEIGHT, HEIGHT_ACCURACY -> way == Way.HEIGHT;
            case ANGLE, ANGLE_ACCURACY, EYE -> way == Way.ANGLE;
            case TO_BEARING, TO_DISTANCE -> line;
            case TO_HEIGHT -> line && way == Way.HEIGHT;
            case TO_ANGLE -> line && way == Way.ANGLE;
            case SAG -> sighted && shape == Shape.WIRE;
            case CROWN -> sighted && shape == Shape.TREE;
        };
    }

    /**
     * Makes the obstacle.
     *
     * @param day the day of the measurement
     * @return an obstacle that is nowhere yet
     * @throws IllegalArgumentException where something typed makes no sense, also as a {@code SitingException}
     */
    Obstacle obstacle(LocalDate day) {
        if (name.isBlank()) {
            throw new IllegalArgumentException(Messages.get("obstacle.needs-name"));
        }
        Obstacle made = way == Way.COORDINATES ? byCoordinates() : sighted(day);
        made.setDate(day.toString());
        return made;
    }

    private Obstacle byCoordinates() {
        Place place = SlopewrightFactory.eINSTANCE.createPlace();
        if (isGeographic()) {
            place.setLatitudeDeg(number(Number.FIRST_COORDINATE));
            place.setLongitudeDeg(number(Number.SECOND_COORDINATE));
        } else {
            place.setEastM(number(Number.FIRST_COORDINATE));
            place.setNorthM(number(Number.SECOND_COORDINATE));
        }
        Obstacle obstacle = SlopewrightFactory.eINSTANCE.createObstacle();
        obstacle.setName(name.strip());
        obstacle.setKind(ObstacleKind.POINT);
        obstacle.getPlaces().add(place);
        obstacle.setTopElevationM(number(Number.TOP));
        obstacle.setHorizontalAccuracyM(number(Number.PLACE_ACCURACY));
        obstacle.setVerticalAccuracyM(number(Number.TOP_ACCURACY));
        return obstacle;
    }

    /** Returns whether places of the project have latitude and longitude. */
    boolean isGeographic() {
        return Projects.helipad(host).map(pad -> pad.getPlace() != null && pad.getPlace().getLatitudeDeg() != null)
                .orElse(false);
    }

    private Obstacle sighted(LocalDate day) {
        double turn = magnetic ? SiteVariation.of(host, day).variationDeg() : 0;
        boolean angle = way == Way.ANGLE;
        Sighting.Instrument instrument = new Sighting.Instrument(number(Number.BEARING_ACCURACY), 0, number(Number.DISTANCE_ACCURACY),
                number(Number.ANGLE_ACCURACY), number(Number.HEIGHT_ACCURACY), number(Number.EYE));
        SightedObstacles made = new SightedObstacles(host, instrument);
        Sighting first = sighting(number(Number.BEARING) + turn, number(Number.DISTANCE), angle ? Number.ANGLE : Number.HEIGHT);
        return switch (shape) {
            case POINT -> made.point(name.strip(), first);
            case TREE -> made.tree(name.strip(), first, number(Number.CROWN));
            case WIRE -> made.wire(name.strip(), first, end(turn), number(Number.SAG));
            case SLOPE -> made.slope(name.strip(), first, end(turn));
        };
    }

    private Sighting end(double turn) {
        return sighting(number(Number.TO_BEARING) + turn, number(Number.TO_DISTANCE), way == Way.ANGLE ? Number.TO_ANGLE
                : Number.TO_HEIGHT);
    }

    private Sighting sighting(double bearing, double distance, Number top) {
        OptionalDouble value = OptionalDouble.of(number(top));
        return way == Way.ANGLE ? new Sighting(bearing, distance, OptionalDouble.empty(), value)
                : new Sighting(bearing, distance, value, OptionalDouble.empty());
    }

    /** What is not asked for is what is assumed, whatever was typed there before. */
    private double number(Number number) {
        String words = isAsked(number) ? text(number) : number.assumed;
        if (words.isBlank()) {
            throw new IllegalArgumentException(Messages.get("obstacle.needs", label(number)));
        }
        QuantityFormat format = QuantityFormat.preferred();
        double value;
        try {
            value = format.read(words, quantity(number));
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(label(number) + ": " + e.getMessage(), e);
        }
        if (value < number.least || value > number.most) {
            throw new IllegalArgumentException(Messages.get("obstacle.range", label(number), format.showWithUnit(value, quantity(number)),
                    format.showWithUnit(number.least, quantity(number)), format.showWithUnit(number.most, quantity(number))));
        }
        return value;
    }

    private Quantity quantity(Number number) {
        return !isGeographic() && number.quantity().isCoordinate() ? Quantity.LENGTH : number.quantity();
    }

    /** Returns the name of a number, with its unit. */
    String label(Number number) {
        String unit = QuantityFormat.preferred().unit(quantity(number));
        String key = number.name().toLowerCase(Locale.ROOT).replace('_', '-');
        String grid = number.quantity().isCoordinate() && !isGeographic() ? "-on-grid" : "";
        return Messages.get("obstacle.number." + key + grid) + (unit.isEmpty() ? "" : " (" + unit + ")");
    }
}
