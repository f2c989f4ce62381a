package slopewright.drawing.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import slopewright.drawing.DemoAids;
import slopewright.drawing.paint.DxfPainter;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.drawing.sheet.TitleBlock;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.siting.site.SiteFrame;
import slopewright.testkit.DemoProjects;

/** A plan on the grid of the aerodrome. */
class GridPlacementTest {

    private static final SlopewrightFactory MAKE = SlopewrightFactory.eINSTANCE;

    /** Threshold at 1000 m east, 2000 m north on a local grid; landing direction 30 degrees from north. */
    private static SiteFrame frame() {
        Project project = MAKE.createProject();
        project.setAerodrome(MAKE.createAerodrome());
        project.getAerodrome().setCoordinateReference("local");
        Runway runway = MAKE.createRunway();
        project.getAerodrome().getRunways().add(runway);
        RunwayEnd end = MAKE.createRunwayEnd();
        runway.getEnds().add(end);
        end.setThreshold(MAKE.createPlace());
        end.getThreshold().setEastM(1000.0);
        end.getThreshold().setNorthM(2000.0);
        end.setThresholdElevationM(10.0);
        end.setTrueBearingDeg(30.0);
        return SiteFrame.of(end);
    }

    /** 100 m along at 30 degrees: 50 m east, 86.6025 m north; 20 m left of it: 17.3205 m west, 10 m north. */
    @Test
    void aPointLandsOnItsCoordinates() {
        GridPlacement placement = GridPlacement.of(frame()).orElseThrow();
        ScenePoint placed = placement.place().apply(new ScenePoint(100, 20));
        assertEquals(1000 + 50 - 17.320508, placed.x(), 1e-5);
        assertEquals(2000 + 86.602540 + 10, placed.y(), 1e-5);
        assertEquals(60, placement.turnDeg(), 1e-9);
    }

    @Test
    void theFileHoldsGridCoordinatesAndTurnsItsText() {
        Scene scene = new Scene("t", 0, 0, 100, 50, 1, List.of(new Mark.Path(List.of(new ScenePoint(0, 0), new ScenePoint(100, 0)), false,
                Style.line(Ink.AXIS, 0.2), ""), new Mark.Label(new ScenePoint(0, 0), "x", Mark.Anchor.START, 2, 0, Ink.TEXT, "")),
                List.of());
        String dxf = DxfPainter.paint(scene, 100, GridPlacement.of(frame()).orElseThrow());
        assertTrue(dxf.contains(" 10\n1000.000000\n 20\n2000.000000\n"), dxf);
        assertTrue(dxf.contains(" 10\n1050.000000\n 20\n2086.602540\n"), dxf);
        assertTrue(dxf.contains(" 50\n60.000000\n"), dxf);
    }

    /**
     * UTM zone 29 at 11.9 degrees west: 0.9996 (1 + E2 / (2 R2)) with E = 218.9 km / 0.9996 from its meridian and R = 6380 km, so 0.99960 *
     * 1.000589 = 1.000189. A plane of its own has no scale, and neither have latitude and longitude.
     */
    @Test
    void aGridOfAProjectionHasAScale() {
        Project project = DemoProjects.load(DemoProjects.GOOD);
        project.getAerodrome().setCoordinateReference("EPSG:32629");
        DrawnAid drawn = DemoAids.drawn(project, "PAPI 09");
        assertEquals(0.9996 * (1 + Math.pow(218_900 / 0.9996 / 6.38e6, 2) / 2), GridPlacement.scaleFactor(drawn.frame()).orElseThrow(),
                2e-6);
        assertTrue(TitleBlock.datum(drawn).matches(".*; grid scale factor 1\\.00019\\d at the threshold"), TitleBlock.datum(drawn));
        assertTrue(GridPlacement.scaleFactor(frame()).isEmpty());
        assertTrue(GridPlacement.scaleFactor(DemoAids.drawn("PAPI 09").frame()).isEmpty());
    }

    @Test
    void anAerodromeWithoutAGridHasNone() {
        assertTrue(GridPlacement.of(DemoAids.drawn("PAPI 09").frame()).isEmpty());
    }
}
