package slopewright.drawing.pilot;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.DoubleStream;

import slopewright.drawing.internal.layout.SceneBuilder;
import slopewright.drawing.internal.obstacles.OmittedObstacles;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Frame;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.PaperArea;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.evaluation.terrain.TerrainField;
import slopewright.geometry.Curvature;
import slopewright.geometry.FramePoint;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Colour;
import slopewright.siting.LightForm;
import slopewright.siting.Meaning;
import slopewright.siting.Observation;
import slopewright.siting.SeenUnit;

/** What a pilot sees from a point, in degrees of view: runway and lights in perspective, with the curvature of the Earth and refraction. */
public final class PilotScene {

    private static final Set<String> PATHS = Set.of("lower", "upper");
    private static final double OUTSIDE_DEG = 1e6;
    private static final double PANEL_HALF_WIDTH_M = 1.2;
    private static final double PANEL_HALF_HEIGHT_M = 0.6;

    private final DrawnAid drawn;
    private final FramePoint eye;
    private final PilotPicture picture;
    private final Daylight daylight;
    private final SceneBuilder scene;

    private PilotScene(DrawnAid drawn, FramePoint eye, Daylight daylight, PaperArea area) {
        this.drawn = drawn;
        this.eye = eye;
        this.daylight = daylight;
        picture = PilotPicture.toward(eye, drawn.siting().reference());
        scene = new SceneBuilder(area);
    }

    /**
     * Draws the view.
     *
     * @param drawn the aid
     * @param eye   the pilot's eye in the frame, on the approach side
     * @return the scene
     */
    public static Scene of(DrawnAid drawn, FramePoint eye) {
        return of(drawn, eye, Daylight.DUSK, PaperArea.usual());
    }

    /**
     * Draws the view for an area on paper.
     *
     * @param drawn    the aid
     * @param eye      the pilot's eye in the frame, on the approach side
     * @param daylight how light it is
     * @param area     the area
     * @return the scene
     */
    public static Scene of(DrawnAid drawn, FramePoint eye, Daylight daylight, PaperArea area) {
        return new PilotScene(drawn, eye, daylight, area).build();
    }

    /** Returns the eye on the slope at a distance before the threshold, metres. */
    public static FramePoint eyeOnSlope(DrawnAid drawn, double beforeM) {
        return PilotPicture.eyeAt(drawn.siting(), beforeM, drawn.siting().slopeDeg());
    }

    private Scene build() {
        ScenePoint threshold = view(0, 0, 0);
        double horizon = picture.horizonDeg();
        double tall = picture.spreadDeg(drawn.siting());
        Frame frame = new Frame(-tall, threshold.y() - tall * 0.3, tall, threshold.y() + tall * 1.15).atLeast(2);
        frame = scene.paper().shaped(frame);
        double half = frame.maxX();
        scene.area(Style.fill(daylight.sky()), "", -half, horizon, half, horizon, half, frame.maxY() + 1, -half, frame.maxY() + 1);
        scene.area(Style.fill(daylight.land()), "", -half, frame.minY(), half, frame.minY(), half, horizon, -half, horizon);
        List<TerrainField> terrain = TerrainField.of(drawn.surroundings());
        skyline(Skyline.of(picture, terrain, half, Integer.MAX_VALUE));
        ground(PilotGround.of(drawn.host()));
        Observation observation = lights();
        List<Argument> meanings = observation.meanings().entrySet().stream().map(path -> meaning(path.getKey(), path.getValue())).toList();
        List<String> captions = new ArrayList<>();
        Argument side = eye.rightM() == 0 ? Message.of("drawing.pilot.centre-line")
                : Message.of(eye.rightM() < 0 ? "drawing.pilot.left" : "drawing.pilot.right", Words.wholeM(Math.abs(eye.rightM())));
        captions.add(drawn.say("drawing.pilot.caption", Words.wholeM(-eye.alongM()), drawn.origin(), side, Words.dm(eye.heightM()),
                Words.list(meanings)));
        observation.remarks().forEach(remark -> captions.add(drawn.language().render(remark)));
        terrain.forEach(model -> captions.add(drawn.say("drawing.pilot.terrain", Words.name(String.valueOf(model.block().getName())),
                Words.m(model.verticalAccuracyM()))));
        captions.add(drawn.say("drawing.pilot.curvature", Words.number(Curvature.USUAL_REFRACTION)));
        return OmittedObstacles.untold(scene.build(drawn.say("drawing.pilot.title", Words.name(drawn.name())), frame, 1, captions,
                List.of(), Scene.Unit.NO_LENGTH), drawn);
    }

    private static Argument meaning(String path, Meaning meaning) {
        Argument told = Words.term("drawing.meaning." + meaning.key());
        return path.isEmpty() ? told : Message.of("drawing.path", PATHS.contains(path) ? Words.term("drawing.path." + path)
                : Words.name(path), told);
    }

    /** Returns where a place appears; far outside the picture where it is behind the eye. */
    private ScenePoint view(double alongM, double rightM, double heightM) {
        return picture.place(new FramePoint(alongM, rightM, heightM)).orElse(new ScenePoint(0, -OUTSIDE_DEG));
    }

    /** Hills are told from the land before them by their outline. */
    private void skyline(Skyline skyline) {
        for (List<ScenePoint> hill : skyline.hills()) {
            scene.area(Style.area(Ink.GROUND, daylight.land(), 0.2), "",
                    hill.stream().flatMapToDouble(at -> DoubleStream.of(at.x(), at.y())).toArray());
        }
    }

    private void ground(PilotGround ground) {
        for (PilotGround.Shape shape : ground.shapes()) {
            double[] corners = picture.area(shape.corners()).stream().flatMapToDouble(at -> DoubleStream.of(at.x(), at.y())).toArray();
            if (corners.length > 0) {
                scene.area(Style.fill(shape.part() == PilotGround.Part.PAVEMENT ? daylight.pavement() : daylight.marking()), "", corners);
            }
        }
        if (daylight.runwayLights()) {
            for (PilotGround.Lamp lamp : ground.lamps()) {
                picture.place(lamp.place()).ifPresent(at -> scene.disc(at.x(), at.y(), 0.35, Style.fill(ink(lamp.colour())), ""));
            }
        }
    }

    private Observation lights() {
        Observation observation = picture.observe(drawn.siting());
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
