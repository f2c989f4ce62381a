package slopewright.drawing.landing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;

import slopewright.drawing.DemoAids;
import slopewright.drawing.View;
import slopewright.drawing.pilot.Daylight;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.PaperArea;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.ScenePoint;
import slopewright.evaluation.landing.LandingDirections;
import slopewright.evaluation.landing.LandingWind;
import slopewright.evaluation.landing.SettableSlopes;
import slopewright.geometry.FramePoint;

/** The chart of landing directions: where things lie on it, and that it is read without colour. */
class DirectionSceneTest {
    private static final DrawnAid UNIT = DemoAids.drawn("Portable unit, north pad");
    private static final LandingDirections FOUND = LandingDirections.of(UNIT.evaluation(), SettableSlopes.of(UNIT.evaluation(), 1));

    private static List<Mark.Label> labels(Scene scene) {
        return scene.marks().stream().filter(Mark.Label.class::isInstance).map(Mark.Label.class::cast).toList();
    }

    /** North is up and east to the right: landing toward 090° on 5° lies at (5, 0), toward 180° on 3° at (0, -3). */
    @Test
    void aPlaceIsADirectionAndASlope() {
        ScenePoint east = DirectionScene.place(new DirectionScene.Chosen(90, 5));
        assertEquals(5, east.x(), 1e-9);
        assertEquals(0, east.y(), 1e-9);
        DirectionScene.Chosen south = DirectionScene.at(FOUND, 0, -3).orElseThrow();
        assertEquals(180, south.trueDeg(), 1e-9);
        assertEquals(3, south.slopeDeg(), 1e-9);
        assertEquals(Optional.empty(), DirectionScene.at(FOUND, 9, 9), "12.7° is steeper than the unit can be set");
    }

    @Test
    void blockedAndUnknownAreTold() {
        Scene scene = DirectionScene.of(FOUND, DirectionScene.Told.of(UNIT), PaperArea.usual());
        assertTrue(scene.marks().stream().anyMatch(mark -> mark instanceof Mark.Path path && !path.closed()
                && path.style().line() == Ink.OBSTACLE), "strokes over what is blocked");
        assertTrue(scene.marks().stream().anyMatch(mark -> mark instanceof Mark.Disc disc && disc.style().fill() == Ink.DIMENSION),
                "dots over what nobody knows");
        assertEquals(List.of("clear", "blocked (strokes)", "not evaluated: nobody knows (dots)",
                "lowest slope from which every steeper one is clear"), scene.legend().stream().map(entry -> entry.text()).toList());
        assertTrue(labels(scene).stream().anyMatch(label -> "as it stands: 250°, 7.04°".equals(label.text())));
        assertTrue(scene.captions().get(1).contains("is clear from"), scene.captions().get(1));
    }

    /** A variation of 2 degrees east turns the rim: compass north lies 2 degrees to the right of true north. */
    @Test
    void theRimTurnsToTheCompass() {
        Scene scene = DirectionScene.of(FOUND, new DirectionScene.Told("chart", UNIT.language(), Optional.empty(),
                Optional.of(new LandingWind(240, 15)), OptionalDouble.of(2)), PaperArea.usual());
        Mark.Label north = labels(scene).stream().filter(label -> "000°".equals(label.text())).findFirst().orElseThrow();
        assertEquals(Math.tan(Math.toRadians(2)), north.at().x() / north.at().y(), 1e-9);
        assertTrue(labels(scene).stream().anyMatch(label -> label.text().startsWith("wind 15")));
    }

    @Test
    void aRunwayHasNoChart() {
        DrawnAid runway = DemoAids.drawn("PAPI 09");
        assertFalse(View.DIRECTIONS.fits(runway.aid()));
        assertTrue(View.DIRECTIONS.fits(UNIT.aid()));
        PaperArea area = PaperArea.usual();
        FramePoint eye = new FramePoint(-900, 0, 50);
        assertThrows(IllegalArgumentException.class, () -> View.DIRECTIONS.scene(runway, area, eye, Daylight.NIGHT));
    }
}
