package slopewright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.drawing.pilot.PilotGround;
import slopewright.drawing.pilot.PilotScene;
import slopewright.drawing.plan.PlanScene;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.section.SectionScene;
import slopewright.drawing.signal.SignalScene;
import slopewright.geometry.FramePoint;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.UnitPlan;
import slopewright.testkit.DemoProjects;

/** What is drawn stands where the numbers say. */
class ScenesTest {

    private static List<Mark.Label> labels(Scene scene) {
        return scene.marks().stream().filter(Mark.Label.class::isInstance).map(Mark.Label.class::cast).toList();
    }

    private static List<Mark.Disc> discs(Scene scene) {
        return scene.marks().stream().filter(Mark.Disc.class::isInstance).map(Mark.Disc.class::cast).toList();
    }

    private static List<Mark.Path> paths(Scene scene, Ink line) {
        return scene.marks().stream().filter(Mark.Path.class::isInstance).map(Mark.Path.class::cast).filter(path -> path.style()
                .line() == line)
                .toList();
    }

    private static ScenePoint middle(Mark.Path path) {
        double x = path.points().stream().mapToDouble(ScenePoint::x).average().orElseThrow();
        double y = path.points().stream().mapToDouble(ScenePoint::y).average().orElseThrow();
        return new ScenePoint(Math.round(x * 1e6) / 1e6, Math.round(y * 1e6) / 1e6);
    }

    @Test
    void thePlanShowsEachUnitAtItsPlaceWithItsSetting() {
        DrawnAid drawn = DemoAids.drawn("PAPI 09");
        Scene scene = PlanScene.layout(drawn);
        for (UnitPlan unit : drawn.siting().units()) {
            ScenePoint place = new ScenePoint(unit.place().alongM(), -unit.place().rightM());
            assertTrue(paths(scene, Ink.UNIT).stream().anyMatch(path -> path.closed() && middle(path).equals(place)), unit.id());
        }
        List<String> texts = labels(scene).stream().map(Mark.Label::text).toList();
        assertTrue(texts.containsAll(List.of("A  2°25'", "B  2°45'", "C  3°15'", "D  3°35'", "330.46 m", "15.00", "9.00", "09", "N")),
                texts::toString);
    }

    /** Ten million kilometres are a slip of the keys; marks every 60 m along them filled the memory. */
    @ParameterizedTest
    @ValueSource(strings = {"length", "width", "displacement"})
    void aRunwayOfAnySizeHasMarksThatCanBeCounted(String wrong) {
        Project project = DemoProjects.load(DemoProjects.GOOD);
        RunwayEnd end = (RunwayEnd) Projects.host(DemoProjects.aid(project, "PAPI 09")).orElseThrow();
        Runway runway = Projects.runway(end).orElseThrow();
        switch (wrong) {
            case "length" -> runway.setLengthM(1e10);
            case "width" -> runway.setWidthM(1e10);
            default -> end.setDisplacedThresholdM(1e10);
        }
        int usual = PlanScene.layout(DemoAids.drawn("PAPI 09")).marks().size();
        assertTrue(PlanScene.layout(DemoAids.drawn(project, "PAPI 09")).marks().size() < usual + 300);
        PilotGround ground = PilotGround.of(end);
        assertTrue(ground.shapes().size() < 2000, () -> "shapes " + ground.shapes().size());
        assertTrue(ground.lamps().size() < 2000, () -> "lamps " + ground.lamps().size());
    }

    @Test
    void theSectionShowsTheSurfaceAtItsSlope() {
        DrawnAid drawn = DemoAids.drawn("PAPI 27");
        Scene scene = SectionScene.of(drawn);
        Mark.Path surface = paths(scene, Ink.SURFACE).get(0);
        ScenePoint start = surface.points().get(0);
        ScenePoint end = surface.points().get(1);
        assertEquals(-60, start.x(), 1e-9);
        double slope = Math.toDegrees(Math.atan2(end.y() - start.y(), start.x() - end.x()));
        assertEquals(3 - 0.57, slope, 1e-9);
        assertTrue(labels(scene).stream().anyMatch(label -> label.text().startsWith("Cold Barrow hill")));
    }

    /** Refraction of 0.13 leaves 15.4 of the 17.7 m by which the Earth drops at 15 km; the view must lower what is far by that much. */
    @Test
    void thePilotsViewTakesCurvatureIntoAccount() {
        DrawnAid drawn = DemoAids.drawn("PAPI 09");
        UnitPlan unit = drawn.siting().units().get(0);
        FramePoint eye = new FramePoint(unit.place().alongM() - 15_000, unit.place().rightM(), 800);
        Scene scene = PilotScene.of(drawn, eye);
        double flat = Math.toDegrees(Math.atan2(unit.place().heightM() - 800, 15_000));
        double seen = discs(scene).stream().mapToDouble(disc -> disc.centre().y()).min().orElseThrow();
        double drop = Math.tan(Math.toRadians(flat)) * 15_000 - Math.toRadians(seen) * 15_000;
        assertEquals(15_000.0 * 15_000 / 2 / 6_371_008.8 * 0.87, drop, 0.05);
        assertTrue(scene.captions().toString().contains("refraction"));
    }

    @Test
    void thePilotsViewShowsTheSignal() {
        DrawnAid drawn = DemoAids.drawn("PAPI 27");
        Scene scene = PilotScene.of(drawn, PilotScene.eyeOnSlope(drawn, 2000));
        List<Ink> fromTheRunway = discs(scene).stream().map(disc -> disc.style().fill()).toList();
        assertEquals(List.of(Ink.RED, Ink.RED, Ink.PAPER, Ink.PAPER), fromTheRunway);
        assertTrue(scene.captions().get(0).contains("on slope"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"PAPI 09", "PAPI 27", "APAPI 03", "Portable unit, north pad"})
    void everyAidHasEveryView(String name) {
        DrawnAid drawn = DemoAids.drawn(name);
        for (Scene scene : List.of(PlanScene.layout(drawn), PlanScene.detail(drawn), PlanScene.surface(drawn), SectionScene.of(drawn),
                SectionScene.near(drawn), SignalScene.of(drawn), PilotScene.of(drawn, PilotScene.eyeOnSlope(drawn, 400)))) {
            assertFalse(scene.marks().isEmpty(), scene.title());
            for (Mark mark : scene.marks()) {
                if (mark instanceof Mark.Path path) {
                    assertTrue(path.points().stream().allMatch(point -> Double.isFinite(point.x()) && Double.isFinite(point.y())),
                            scene.title());
                }
            }
        }
    }
}
