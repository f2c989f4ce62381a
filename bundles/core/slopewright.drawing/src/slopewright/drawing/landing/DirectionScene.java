package slopewright.drawing.landing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.drawing.internal.layout.SceneBuilder;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Frame;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.LegendEntry;
import slopewright.drawing.scene.Mark.Anchor;
import slopewright.drawing.scene.PaperArea;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.evaluation.landing.LandingCell;
import slopewright.evaluation.landing.LandingCell.State;
import slopewright.evaluation.landing.LandingDirection;
import slopewright.evaluation.landing.LandingDirections;
import slopewright.evaluation.landing.LandingWind;
import slopewright.geometry.Angles;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Notation;
import slopewright.messages.Words;

/**
 * The landing directions round a helipad: north up, each direction where its landing leads to, the slope from the middle outward. A scene
 * unit is a degree of slope. What is clear is plain, what is blocked has strokes, what nobody knows has dots: no colour is needed.
 */
public final class DirectionScene {
    private static final double LABEL_MM = 1.8;
    private static final double SMALL_MM = 1.5;
    private static final int TICK_DEG = 10;
    private static final int NAMED_DEG = 30;
    private static final int STROKE_DEG = 3;
    private static final int DOT_DEG = 6;
    private static final double DOT_RING_DEG = 1;
    private static final int MOST_NAMED = 8;
    private static final double ROOM = 1.32;

    private final SceneBuilder scene;
    private final LandingDirections found;
    private final Told told;
    private final double rim;

    /**
     * What a chart tells beside the directions.
     *
     * @param title        what it shows
     * @param language     in which language it is lettered
     * @param own          landing direction and slope of the aid as it stands, empty where it stands nowhere yet
     * @param wind         the wind, empty where none was given
     * @param variationDeg magnetic variation by which the rim is turned to the compass, decimal degrees; empty for true bearings
     */
    public record Told(String title, MessageRenderer language, Optional<Chosen> own, Optional<LandingWind> wind,
            OptionalDouble variationDeg) {

        /** Refuses missing parts. */
        public Told {
            Objects.requireNonNull(title);
            Objects.requireNonNull(language);
            Objects.requireNonNull(own);
            Objects.requireNonNull(wind);
            Objects.requireNonNull(variationDeg);
        }

        /** Tells the title of an aid that is drawn, and how it stands. */
        public static Told of(DrawnAid drawn) {
            return new Told(drawn.say("drawing.directions.title", Words.name(drawn.name())), drawn.language(),
                    Optional.of(new Chosen(drawn.frame().bearingDeg(), drawn.siting().slopeDeg())), Optional.empty(),
                    OptionalDouble.empty());
        }

        private String say(String key, Argument... arguments) {
            return language.render(Message.of(key, arguments));
        }
    }

    /**
     * A landing direction with a slope.
     *
     * @param trueDeg  decimal degrees from true north
     * @param slopeDeg decimal degrees
     */
    public record Chosen(double trueDeg, double slopeDeg) {
    }

    /** Slopes of one state in one direction, from the middle outward. */
    private record Band(State state, double fromDeg, double toDeg) {
    }

    private DirectionScene(LandingDirections found, Told told, PaperArea area) {
        this.found = found;
        this.told = told;
        scene = new SceneBuilder(area);
        rim = found.slopes().toDeg();
    }

    /**
     * Draws the chart.
     *
     * @param found the directions
     * @param told  what is told beside them
     * @param area  the area on paper
     * @return the scene
     */
    public static Scene of(LandingDirections found, Told told, PaperArea area) {
        return new DirectionScene(found, told, area).build();
    }

    /**
     * Draws the chart of an aid at a helipad.
     *
     * @throws slopewright.siting.SitingException where it is at none
     */
    public static Scene of(DrawnAid drawn, PaperArea area) {
        return of(LandingDirections.of(drawn.evaluation()), Told.of(drawn), area);
    }

    /** Returns the direction and slope that a place of a scene stands for, empty outside the rim. */
    public static Optional<Chosen> at(LandingDirections found, double x, double y) {
        double slope = Math.hypot(x, y);
        return slope > found.slopes().toDeg() ? Optional.empty()
                : Optional.of(new Chosen(Angles.normaliseBearingDeg(Math.toDegrees(Math.atan2(x, y))), slope));
    }

    /** Returns the place of a scene at which a direction and slope lie. */
    public static ScenePoint place(Chosen chosen) {
        double angle = Math.toRadians(chosen.trueDeg());
        return new ScenePoint(chosen.slopeDeg() * Math.sin(angle), chosen.slopeDeg() * Math.cos(angle));
    }

    private static ScenePoint place(double trueDeg, double radius) {
        return place(new Chosen(trueDeg, radius));
    }

    private Scene build() {
        List<List<Band>> bands = found.directions().stream().map(this::bands).toList();
        for (int first = 0; first < LandingDirections.COUNT;) {
            int next = first + 1;
            while (next < LandingDirections.COUNT && bands.get(next).equals(bands.get(first))) {
                next++;
            }
            for (Band band : bands.get(first)) {
                wedge(first - 0.5, next - 0.5, band);
            }
            first = next;
        }
        for (int bearing = 0; bearing < LandingDirections.COUNT; bearing++) {
            for (Band band : bands.get(bearing)) {
                pattern(bearing, band);
            }
        }
        rings();
        limit(false);
        limit(true);
        compass();
        names();
        told.own().ifPresent(this::own);
        told.wind().filter(wind -> wind.speedKt() > 0).ifPresent(this::wind);
        double half = rim * ROOM;
        Frame frame = scene.paper().shaped(new Frame(-half, -half, half, half));
        return scene.build(told.title(), frame, 1, captions(), legend(), Scene.Unit.NO_LENGTH);
    }

    /** Joins slopes of one state; each slope stands for half a step to either side, the lowest for all that is flatter. */
    private List<Band> bands(LandingDirection direction) {
        List<Band> joined = new ArrayList<>();
        double half = found.slopes().stepDeg() / 2;
        double from = Math.max(0, found.slopes().fromDeg() - half);
        List<LandingCell> cells = direction.cells();
        for (int i = 0; i < cells.size(); i++) {
            boolean last = i + 1 == cells.size();
            if (last || cells.get(i + 1).state() != cells.get(i).state()) {
                double to = last ? rim : cells.get(i).slopeDeg() + half;
                joined.add(new Band(cells.get(i).state(), from, to));
                from = to;
            }
        }
        return joined;
    }

    private void wedge(double fromDeg, double toDeg, Band band) {
        int steps = (int) Math.max(1, Math.ceil((toDeg - fromDeg) / 2));
        double[] outline = new double[4 * (steps + 1)];
        for (int i = 0; i <= steps; i++) {
            double bearing = fromDeg + (toDeg - fromDeg) * i / steps;
            put(outline, i, place(bearing, band.toDeg()));
            put(outline, 2 * steps + 1 - i, place(bearing, band.fromDeg()));
        }
        scene.area(Style.fill(switch (band.state()) {
            case CLEAR -> Ink.CORRIDOR;
            case BLOCKED -> Ink.PAVEMENT;
            case NOT_EVALUATED -> Ink.PAPER;
        }), "", outline);
    }

    private static void put(double[] outline, int index, ScenePoint point) {
        outline[2 * index] = point.x();
        outline[2 * index + 1] = point.y();
    }

    /** Radial strokes over what is blocked, dots over what nobody knows. */
    private void pattern(int bearing, Band band) {
        if (band.state() == State.BLOCKED && bearing % STROKE_DEG == 0) {
            line(Style.line(Ink.OBSTACLE, 0.25), place(bearing, band.fromDeg()), place(bearing, band.toDeg()));
        } else if (band.state() == State.NOT_EVALUATED && bearing % DOT_DEG == 0) {
            for (double at = Math.ceil(band.fromDeg() + 0.5); at < band.toDeg(); at += DOT_RING_DEG) {
                ScenePoint place = place(bearing, at);
                scene.disc(place.x(), place.y(), 0.3, Style.fill(Ink.DIMENSION), "");
            }
        }
    }

    private void line(Style style, ScenePoint from, ScenePoint to) {
        scene.path(style, "", from.x(), from.y(), to.x(), to.y());
    }

    private void rings() {
        double every = rim > 6 ? 2 : 1;
        for (double ring = every; ring < rim - every / 4; ring += every) {
            ring(Style.line(Ink.DIMENSION, 0.1), ring);
        }
        ring(Style.line(Ink.TEXT, 0.3), rim);
        for (double ring = every; ring < rim + 0.01; ring += every) {
            ScenePoint at = place(NAMED_DEG / 2.0, ring);
            scene.label(at.x(), at.y(), told.language().write(Words.wholeDegrees(ring)), Anchor.MIDDLE, SMALL_MM, -1.9, Ink.TEXT, "");
        }
    }

    private void ring(Style style, double radius) {
        double[] circle = new double[2 * 180];
        for (int i = 0; i < 180; i++) {
            put(circle, i, place(2 * i, radius));
        }
        scene.area(style, "", circle);
    }

    /** The slope from which every steeper one is clear, or the one up to which, as a heavy line from direction to direction. */
    private void limit(boolean steepest) {
        List<Double> run = new ArrayList<>();
        for (int i = 0; i <= LandingDirections.COUNT; i++) {
            OptionalDouble at = steepest ? found.at(i).clearToDeg() : found.at(i).clearFromDeg();
            if (at.isEmpty() || i == LandingDirections.COUNT) {
                flush(run);
                continue;
            }
            double radius = Math.max(0, at.getAsDouble() + found.slopes().stepDeg() / (steepest ? 2 : -2));
            for (double bearing : new double[] {i - 0.5, i + 0.5}) {
                ScenePoint corner = place(bearing, radius);
                run.add(corner.x());
                run.add(corner.y());
            }
        }
    }

    private void flush(List<Double> run) {
        if (run.size() > 2) {
            scene.path(Style.line(Ink.TEXT, 0.5), "", run.stream().mapToDouble(Double::doubleValue).toArray());
        }
        run.clear();
    }

    private void compass() {
        double variation = told.variationDeg().orElse(0);
        for (int bearing = 0; bearing < LandingDirections.COUNT; bearing += TICK_DEG) {
            boolean named = bearing % NAMED_DEG == 0;
            double at = bearing + variation;
            line(Style.line(Ink.TEXT, named ? 0.35 : 0.2), place(at, rim), place(at, rim * (named ? 1.04 : 1.02)));
            if (named) {
                ScenePoint text = place(at, rim * 1.1);
                scene.label(text.x(), text.y(), told.language().write(Words.quantity(bearing, Notation.BEARING)), Anchor.MIDDLE, LABEL_MM,
                        -LABEL_MM / 2, Ink.TEXT, "");
            }
        }
    }

    /** Something that closes directions, where it closes the steepest slopes. */
    private record Closing(String name, double trueDeg, double toDeg, String elementId) {
    }

    private void names() {
        List<Closing> closing = new ArrayList<>();
        for (LandingDirection direction : found.directions()) {
            direction.cells().stream().filter(cell -> cell.state() == State.BLOCKED && cell.governing().isPresent())
                    .reduce((cell, next) -> next).ifPresent(cell -> closing.add(new Closing(cell.governing().get().label(),
                            direction.trueDeg(), cell.slopeDeg(), String.valueOf(cell.governing().get().element().getId()))));
        }
        List<Closing> highest = new ArrayList<>();
        closing.sort(Comparator.comparingDouble(Closing::toDeg).reversed());
        for (Closing next : closing) {
            if (highest.size() < MOST_NAMED && highest.stream().noneMatch(known -> known.name().equals(next.name()))) {
                highest.add(next);
            }
        }
        for (Closing name : highest) {
            ScenePoint at = place(name.trueDeg(), name.toDeg());
            scene.disc(at.x(), at.y(), 0.6, Style.fill(Ink.OBSTACLE), name.elementId());
            scene.callout(at.x(), at.y(), told.say("drawing.directions.closing", Words.name(name.name()), Words.degrees(name.toDeg())),
                    SMALL_MM, 90 - name.trueDeg(), Ink.TEXT, name.elementId());
        }
    }

    private void own(Chosen chosen) {
        ScenePoint at = place(chosen);
        line(Style.dashed(Ink.TEXT, 0.35), new ScenePoint(0, 0), place(chosen.trueDeg(), rim));
        scene.disc(at.x(), at.y(), 1.1, Style.area(Ink.TEXT, Ink.PAPER, 0.5), "");
        scene.callout(at.x(), at.y(), told.say("drawing.directions.own", bearing(chosen.trueDeg()), Words.degrees(chosen.slopeDeg())),
                LABEL_MM, 90 - chosen.trueDeg(), Ink.TEXT, "");
    }

    private Argument bearing(double trueDeg) {
        return Words.quantity(trueDeg - told.variationDeg().orElse(0), Notation.BEARING);
    }

    /** An arrow outside the rim that blows inward. */
    private void wind(LandingWind wind) {
        ScenePoint tail = place(wind.fromTrueDeg(), rim * 1.28);
        ScenePoint head = place(wind.fromTrueDeg(), rim * 1.15);
        line(Style.line(Ink.TEXT, 0.5), tail, head);
        for (double side : new double[] {-1.5, 1.5}) {
            line(Style.line(Ink.TEXT, 0.5), head, place(wind.fromTrueDeg() + side, rim * 1.19));
        }
        scene.callout(tail.x(), tail.y(), told.say("drawing.directions.wind", Words.quantity(wind.speedKt(), Notation.KNOTS)), LABEL_MM,
                90 - wind.fromTrueDeg(), Ink.TEXT, "");
    }

    private List<String> captions() {
        List<String> captions = new ArrayList<>();
        captions.add(told.say(told.variationDeg().isPresent() ? "drawing.directions.magnetic" : "drawing.directions.true"));
        captions.add(told.language().render(Message.of("drawing.directions.clear", Words.list(found.sentences(told.variationDeg().orElse(
                0))))));
        return captions;
    }

    private List<LegendEntry> legend() {
        return List.of(LegendEntry.area(told.say("drawing.directions.state.clear"), Style.area(Ink.DIMENSION, Ink.CORRIDOR, 0.15)),
                LegendEntry.cross(told.say("drawing.directions.state.blocked"), Style.line(Ink.OBSTACLE, 0.25)),
                LegendEntry.dots(told.say("drawing.directions.state.not-evaluated"), Style.fill(Ink.DIMENSION)),
                LegendEntry.line(told.say("drawing.directions.limit"), Style.line(Ink.TEXT, 0.5)));
    }
}
