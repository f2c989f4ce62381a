package slopewright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import slopewright.drawing.Mark.Anchor;
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

    private final DrawnAid drawn;
    private final FramePoint eye;
    private final SceneBuilder scene = new SceneBuilder();

    private PilotScene(DrawnAid drawn, FramePoint eye) {
        this.drawn = drawn;
        this.eye = eye;
    }

    /**
     * Draws the view.
     *
     * @param drawn the aid
     * @param eye   the pilot's eye in the frame, on the approach side
     * @return the scene
     */
    public static Scene of(DrawnAid drawn, FramePoint eye) {
        return new PilotScene(drawn, eye).build();
    }

    /** Returns the eye on the slope at a distance before the threshold, metres. */
    public static FramePoint eyeOnSlope(DrawnAid drawn, double beforeM) {
        double height = drawn.siting().reference().heightM()
                + (drawn.siting().distanceM() + beforeM) * Angles.tanDeg(drawn.siting().slopeDeg());
        return new FramePoint(-beforeM, 0, height);
    }

    private Scene build() {
        ScenePoint threshold = view(0, 0, 0);
        double spread = Math.max(LEAST_SPREAD_DEG, widestDeg());
        double low = threshold.y() - spread * 0.35;
        double high = Math.max(0.15, low + spread);
        double half = (high - low) * 0.9;
        double horizon = horizonDeg();
        scene.area(Style.fill(Ink.SKY), "", -half, horizon, half, horizon, half, high, -half, high);
        scene.area(Style.fill(Ink.LAND), "", -half, low, half, low, half, horizon, -half, horizon);
        runway();
        Observation observation = lights();
        String meaning = String.join(", ", observation.meanings().entrySet().stream()
                .map(path -> (path.getKey().isEmpty() ? "" : path.getKey() + " path: ") + path.getValue().key()).toList());
        List<String> captions = new ArrayList<>();
        String side = eye.rightM() == 0 ? "on the centre line"
                : String.format(Locale.ROOT, "%.0f m %s of it", Math.abs(eye.rightM()), eye.rightM() < 0 ? "left" : "right");
        captions.add(String.format(Locale.ROOT, "Eye %.0f m before the %s, %s, %.1f m above it; reads: %s.", -eye.alongM(),
                drawn.originName(), side, eye.heightM(), meaning));
        captions.add(String.format(Locale.ROOT,
                "Curvature of the Earth and refraction (coefficient %.2f) are taken into account in this view.",
                Curvature.USUAL_REFRACTION));
        return new Scene("Pilot's view, " + drawn.name(), -half, low, half, high, 1, scene.marks(), captions);
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

    private double widestDeg() {
        return 2.6 * drawn.siting().units().stream().mapToDouble(unit -> Math.abs(view(unit.place().alongM(), unit.place().rightM(),
                unit.place().heightM()).x())).max().orElse(0);
    }

    private void runway() {
        if (!(drawn.host() instanceof RunwayEnd)) {
            return;
        }
        Optional<Runway> runway = Projects.runway(drawn.host());
        double half = runway.map(Runway::getWidthM).orElse(30.0) / 2;
        double length = runway.map(Runway::getLengthM).orElse(1500.0);
        ScenePoint[] corners = {view(0, -half, 0), view(0, half, 0), view(length, half, 0), view(length, -half, 0)};
        scene.area(Style.area(Ink.MARKING, Ink.PAVEMENT, 0.3), "", corners[0].x(), corners[0].y(), corners[1].x(), corners[1].y(),
                corners[2].x(),
                corners[2].y(), corners[3].x(), corners[3].y());
    }

    private Observation lights() {
        Observation observation = Signals.observe(Families.get(drawn.siting().family()), drawn.siting().units(), drawn.siting().reference(),
                eye);
        for (SeenUnit seen : observation.seen()) {
            FramePoint place = seen.unit().place();
            ScenePoint at = view(place.alongM(), place.rightM(), place.heightM());
            if (seen.offsetMin().isPresent()) {
                scene.area(Style.fill(Ink.AMBER), "", at.x() - 0.02, at.y() - 0.005, at.x() + 0.02, at.y() - 0.005, at.x() + 0.02, at.y()
                        + 0.005,
                        at.x() - 0.02, at.y() + 0.005);
            } else if (seen.light().form() != LightForm.OFF) {
                Ink ink = ink(seen.light().colour());
                boolean steady = seen.light().form() == LightForm.STEADY;
                scene.disc(at.x(), at.y(), 1.3, steady ? Style.fill(ink) : Style.area(ink, Ink.NONE, 0.6), "");
            }
            scene.label(at.x(), at.y(), seen.unit().id(), Anchor.MIDDLE, 1.9, -4.2, Ink.PAPER, "");
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
