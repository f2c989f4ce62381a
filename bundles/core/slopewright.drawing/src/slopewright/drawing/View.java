package slopewright.drawing;

import java.util.Arrays;
import java.util.Optional;

import slopewright.drawing.circuit.CircuitScene;
import slopewright.drawing.equipment.LightScene;
import slopewright.drawing.equipment.MountingScene;
import slopewright.drawing.internal.obstacles.OmittedObstacles;
import slopewright.drawing.landing.DirectionScene;
import slopewright.drawing.pilot.Daylight;
import slopewright.drawing.pilot.PilotScene;
import slopewright.drawing.plan.LocationScene;
import slopewright.drawing.plan.PlanScene;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.PaperArea;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.section.SectionScene;
import slopewright.drawing.signal.SignalScene;
import slopewright.geometry.FramePoint;
import slopewright.model.ApproachAid;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.siting.Trait;

/** The drawings that there are of an approach aid. */
public enum View {
    /** Surroundings of the units with dimensions. */
    PLAN("plan"),
    /** Vertical section along the approach. */
    SECTION("section"),
    /** Vertical section close to the threshold or hover point. */
    NEAR("near"),
    /** Units of the nearest bar close up. */
    DETAIL("detail"),
    /** Obstacle surface with obstacles. */
    SURFACE("surface"),
    /** What a pilot sees. */
    PILOT("pilot"),
    /** What every unit shows into which angle. */
    SIGNALS("signals"),
    /** Which landing directions round a helipad are clear, and from which slope. */
    DIRECTIONS("directions"),
    /** Where it stands on the aerodrome. */
    LOCATION("location"),
    /** Single-line diagram of the circuit that feeds it. */
    CIRCUIT("circuit"),
    /** Light of the equipment against what is asked. */
    LIGHT("light"),
    /** How its units stand, for foundations and mountings. */
    MOUNTING("mounting");

    private final String key;

    View(String key) {
        this.key = key;
    }

    /** Returns its name on a command line. */
    public String key() {
        return key;
    }

    /** Finds a view by its name. */
    public static Optional<View> find(String key) {
        return Arrays.stream(values()).filter(view -> view.key.equals(key)).findFirst();
    }

    /** Tells whether it looks down on the ground, so that it has a place on a grid. */
    public boolean isPlan() {
        return this == PLAN || this == DETAIL || this == SURFACE;
    }

    /** Tells whether an aid has what the view shows, as far as its place and its circuit decide it. */
    public boolean fits(ApproachAid aid) {
        return switch (this) {
            case DIRECTIONS -> Projects.helipad(aid).isPresent();
            case CIRCUIT -> CircuitScene.feeding(aid).isPresent();
            case SIGNALS, LIGHT -> Families.find(aid.getFamilyKey()).filter(family -> family.traits().contains(Trait.PANELS)).isEmpty();
            default -> true;
        };
    }

    private static Scene directions(DrawnAid drawn, PaperArea area) {
        if (!DIRECTIONS.fits(drawn.aid())) {
            throw new IllegalArgumentException(drawn.say("drawing.no-directions"));
        }
        return OmittedObstacles.byName(DirectionScene.of(drawn, area), drawn);
    }

    /**
     * Draws the view.
     *
     * @param drawn    the aid
     * @param area     the area on paper
     * @param eye      the pilot's eye in the frame; only the pilot's view looks at it
     * @param daylight how light it is in the pilot's view
     * @return the scene
     * @throws IllegalArgumentException where the scale of the area does not do, or the aid has nothing that the view shows; the message
     *                                  says so
     */
    public Scene scene(DrawnAid drawn, PaperArea area, FramePoint eye, Daylight daylight) {
        return switch (this) {
            case PLAN -> PlanScene.layout(drawn, area);
            case SECTION -> SectionScene.of(drawn, area);
            case NEAR -> SectionScene.near(drawn, area);
            case DETAIL -> PlanScene.detail(drawn, area);
            case SURFACE -> PlanScene.surface(drawn, area);
            case PILOT -> PilotScene.of(drawn, eye, daylight, area);
            case SIGNALS -> OmittedObstacles.untold(SignalScene.of(drawn, area), drawn);
            case DIRECTIONS -> directions(drawn, area);
            case LOCATION -> LocationScene.of(drawn, area);
            case CIRCUIT -> CircuitScene.of(drawn, area);
            case LIGHT -> LightScene.of(drawn, area);
            case MOUNTING -> MountingScene.of(drawn, area);
        };
    }
}
