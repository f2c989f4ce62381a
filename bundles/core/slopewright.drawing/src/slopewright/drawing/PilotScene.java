package slopewright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import slopewright.geometry.Angles;
import slopewright.geometry.Curvature;
import slopewright.geometry.FramePoint;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.Colour;
import slopewright.siting.Families;
import slopewright.siting.LightForm;
import slopewright.siting.Observation;
import slopewright.siting.SeenUnit;
import slopewright.siting.Signals;

/** What a pilot sees from a point, in degrees of view: runway and lights in perspective, with the curvature of the Earth and refraction. */
public final class PilotScene {

    private static final double LEAST_SPREAD_DEG = 0.6;
    private static final double CLOSEST_M = 5;
    private static final double PANEL_HALF_WIDTH_M = 1.2;
    private static final double PANEL_HALF_HEIGHT_M = 0.6;
    private static final double USUAL_WIDTH_M = 30;
    private static final double USUAL_LENGTH_M = 1500;
    private static final double EDGE_LIGHTS_M = 60;
    private static final int CROSS_LIGHTS = 4;

    private final DrawnAid drawn;
    private final FramePoint eye;
    private final Daylight daylight;
    private final SceneBuilder scene;

    private PilotScene(DrawnAid drawn, FramePoint eye, Daylight daylight, Room room) {
        this.drawn = drawn;
        this.eye = eye;
        this.daylight = daylight;
        scene = new SceneBuilder(room);
    }

    /**
     * Draws the view.
     *
     * @param drawn the aid
     * @param eye   the pilot's eye in the frame, on the approach side
     * @return the scene
     */
    public static Scene of(DrawnAid drawn, FramePoint eye) {
        return of(drawn, eye, Daylight.DUSK, Room.usual());
    }

    /**
     * Draws the view for a room on paper.
     *
     * @param drawn    the aid
     * @param eye      the pilot's eye in the frame, on the approach side
     * @param daylight how light it is
     * @param room     the room
     * @return the scene
     */
    public static Scene of(DrawnAid drawn, FramePoint eye, Daylight daylight, Room room) {
        return new PilotScene(drawn, eye, daylight, room).build();
    }

    /** Returns the eye on the slope at a distance before the threshold, metres. */
    public static FramePoint eyeOnSlope(DrawnAid drawn, double beforeM) {
        double height = drawn.siting().reference().heightM()
                + (drawn.siting().distanceM() + beforeM) * Angles.tanDeg(drawn.siting().slopeDeg());
        return new FramePoint(-beforeM, 0, height);
    }

    private Scene build() {
        ScenePoint threshold = view(0, 0, 0);
        double horizon = horizonDeg();
        double widest = drawn.siting().units().stream().mapToDouble(unit -> Math.abs(view(unit.place().alongM(), unit.place().rightM(),
                unit.place().heightM()).x())).max().orElse(0);
        double tall = Math.max(LEAST_SPREAD_DEG, Math.max(horizon - threshold.y(), widest));
        Frame frame = new Frame(-tall, threshold.y() - tall * 0.3, tall, threshold.y() + tall * 1.15).atLeast(2);
        frame = scene.room().shaped(frame);
        double half = frame.maxX();
        scene.area(Style.fill(daylight.sky()), "", -half, horizon, half, horizon, half, frame.maxY() + 1, -half, frame.maxY() + 1);
        scene.area(Style.fill(daylight.land()), "", -half, frame.minY(), half, frame.minY(), half, horizon, -half, horizon);
        runway();
        runwayLights();
        Observation observation = lights();
        String meaning = String.join(", ", observation.meanings().entrySet().stream()
                .map(path -> (path.getKey().isEmpty() ? "" : path.getKey() + " path: ") + path.getValue().key()).toList());
        List<String> captions = new ArrayList<>();
        String side = eye.rightM() == 0 ? "on the centre line"
                : String.format(Locale.ROOT, "%.0f m %s of it", Math.abs(eye.rightM()), eye.rightM() < 0 ? "left" : "right");
        captions.add(String.format(Locale.ROOT, "Eye %.0f m before the %s, %s, %.1f m above it; reads: %s.", -eye.alongM(),
                drawn.originName(), side, eye.heightM(), meaning));
        captions.addAll(observation.remarks());
        captions.add(String.format(Locale.ROOT,
                "View and signals take the curvature of the Earth and refraction (coefficient %.2f) into account. Lights are drawn larger "
                + "than they are.", Curvature.USUAL_REFRACTION));
        return scene.build("Pilot's view, " + drawn.name(), frame, 1, captions, List.of(), Scene.Unit.NO_LENGTH);
    }

    private ScenePoint view(double alongM, double rightM, double heightM) {
        double distance = alongM - eye.alongM();
        double side = rightM - eye.rightM();
        double plan = Math.hypot(distance, side);
        double drop = Curvature.dropM(plan, Curvature.USUAL_REFRACTION);
        return new ScenePoint(Math.toDegrees(Math.atan2(side, distance)), Angles.elevationDeg(heightM - drop - eye.heightM(), plan));
    }

    private double horizonDeg() {
        double effective = 2 * Curvature.MEAN_RADIUS_M / (1 - Curvature.USUAL_REFRACTION);
        return -Math.toDegrees(Math.sqrt(2 * Math.max(eye.heightM(), 1) / (effective / 2)));
    }

    private void runway() {
        if (!(drawn.host() instanceof RunwayEnd end)) {
            Projects.helipad(drawn.host()).ifPresent(pad -> {
                if (pad.getFatoLengthM() != null && pad.getFatoWidthM() != null) {
                    patch(edged(), -pad.getFatoLengthM() / 2, -pad.getFatoWidthM() / 2, pad
                            .getFatoLengthM() / 2, pad.getFatoWidthM() / 2);
                }
            });
            return;
        }
        Optional<Runway> runway = Projects.runway(drawn.host());
        double half = runway.map(Runway::getWidthM).orElse(USUAL_WIDTH_M) / 2;
        double length = runway.map(Runway::getLengthM).orElse(USUAL_LENGTH_M);
        double displaced = end.getDisplacedThresholdM() == null ? 0 : end.getDisplacedThresholdM();
        patch(edged(), -displaced, -half, length - displaced, half);
        for (double from = 60; from < length - displaced - 60; from += 60) {
            patch(Style.fill(daylight.marking()), from, -0.5, from + 30, 0.5);
        }
        for (int stripe = -4; stripe < 4; stripe++) {
            patch(Style.fill(daylight.marking()), 6, (stripe + 0.2) * half / 5, 36, (stripe + 0.8) * half / 5);
        }
        if (end.getAimingPointDistanceM() != null) {
            double aim = end.getAimingPointDistanceM();
            patch(Style.fill(daylight.marking()), aim, half * 0.3, aim + 45, half * 0.7);
            patch(Style.fill(daylight.marking()), aim, -half * 0.7, aim + 45, -half * 0.3);
        }
    }

    private Style edged() {
        return Style.area(daylight.marking(), daylight.pavement(), 0.25);
    }

    /** Draws the lights that a runway of the usual kind has by night: edges every 60 m, threshold and end. */
    private void runwayLights() {
        Optional<Runway> runway = Projects.runway(drawn.host());
        if (!daylight.runwayLights() || !(drawn.host() instanceof RunwayEnd end) || runway.isEmpty()) {
            return;
        }
        double displaced = end.getDisplacedThresholdM() == null ? 0 : end.getDisplacedThresholdM();
        double half = (runway.get().getWidthM() == null ? USUAL_WIDTH_M : runway.get().getWidthM()) / 2;
        double length = (runway.get().getLengthM() == null ? USUAL_LENGTH_M : runway.get().getLengthM()) - displaced;
        int pairs = (int) Math.round((length + displaced) / EDGE_LIGHTS_M);
        for (int i = 0; i <= pairs; i++) {
            double along = -displaced + (length + displaced) * i / pairs;
            lamp(along, -half, along < 0 ? Ink.RED : Ink.PAPER);
            lamp(along, half, along < 0 ? Ink.RED : Ink.PAPER);
        }
        for (int i = -CROSS_LIGHTS; i <= CROSS_LIGHTS; i++) {
            lamp(length, half * i / CROSS_LIGHTS, Ink.RED);
            lamp(0, half * i / CROSS_LIGHTS, Ink.GREEN);
        }
    }

    private void lamp(double alongM, double rightM, Ink ink) {
        if (alongM > eye.alongM() + CLOSEST_M) {
            ScenePoint at = view(alongM, rightM, 0);
            scene.disc(at.x(), at.y(), 0.35, Style.fill(ink), "");
        }
    }

    /** Draws a level rectangle; what lies behind the eye or close before it is left out. */
    private void patch(Style style, double along1, double right1, double along2, double right2) {
        double from = Math.max(along1, eye.alongM() + CLOSEST_M);
        if (from >= along2) {
            return;
        }
        ScenePoint[] corners = {view(from, right1, 0), view(from, right2, 0), view(along2, right2, 0), view(along2, right1, 0)};
        scene.area(style, "", corners[0].x(), corners[0].y(), corners[1].x(), corners[1].y(), corners[2].x(), corners[2].y(),
                corners[3].x(), corners[3].y());
    }

    private Observation lights() {
        double distance = Math.max(0, drawn.siting().reference().alongM() - eye.alongM());
        Observation observation = Signals.observe(Families.get(drawn.siting().family()), drawn.siting().units(), drawn.siting().reference(),
                new FramePoint(eye.alongM(), eye.rightM(), eye.heightM() - Curvature.dropM(distance, Curvature.USUAL_REFRACTION)));
        for (SeenUnit seen : observation.seen()) {
            FramePoint place = seen.unit().place();
            ScenePoint at = view(place.alongM(), place.rightM(), place.heightM());
            if (seen.offsetMin().isPresent()) {
                ScenePoint low = view(place.alongM(), place.rightM() - PANEL_HALF_WIDTH_M, place.heightM() - PANEL_HALF_HEIGHT_M);
                ScenePoint high = view(place.alongM(), place.rightM() + PANEL_HALF_WIDTH_M, place.heightM() + PANEL_HALF_HEIGHT_M);
                scene.box(Style.fill(Ink.AMBER), drawn.elementId(seen.unit()), low.x(), low.y(), high.x(), high.y());
            } else if (seen.light().form() != LightForm.OFF) {
                Ink ink = ink(seen.light().colour());
                boolean steady = seen.light().form() == LightForm.STEADY;
                scene.disc(at.x(), at.y(), 1.3, steady ? Style.fill(ink) : Style.area(ink, Ink.NONE, 0.6), drawn.elementId(seen.unit()));
            }
            scene.callout(at.x(), at.y(), seen.unit().id(), 1.6, -90, daylight.letters(), drawn.elementId(seen.unit()));
        }
        return observation;
    }

    private static Ink ink(Colour colour) {
        return switch (colour) {
            case WHITE -> Ink.PAPER;
            case RED -> Ink.RED;
            case GREEN -> Ink.GREEN;
            case AMBER -> Ink.AMBER;
            case NONE -> Ink.NONE;
        };
    }
}
