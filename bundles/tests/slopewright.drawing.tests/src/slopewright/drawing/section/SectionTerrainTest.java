package slopewright.drawing.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.PaperArea;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.TextWidth;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.geometry.FramePoint;
import slopewright.messages.MessageRenderer;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.SurveyBlock;
import slopewright.model.util.Projects;
import slopewright.testkit.DemoProjects;
import slopewright.testkit.SurveySamples;

/** Terrain in a section: a slope that falls by a fortieth away from the threshold, known from 200 to 900 m before it. */
class SectionTerrainTest {

    private static final double STEP_M = 20;

    @TempDir
    private Path folder;
    private Project project;
    private SurveyBlock block;

    @BeforeEach
    void load() {
        project = DemoProjects.load(DemoProjects.copy(DemoProjects.GOOD, folder));
        ApproachAid aid = aid();
        List<FramePoint> points = new ArrayList<>();
        for (double along = -900; along <= -200; along += STEP_M) {
            for (double right = -100; right <= 100; right += STEP_M) {
                points.add(new FramePoint(along, right, along / 40));
            }
        }
        block = SurveySamples.add(project, Projects.host(aid).orElseThrow(), "slope",
                points.toArray(FramePoint[]::new));
        block.setKind("terrain");
        block.setHorizontalAccuracyM(15.0);
        block.setVerticalAccuracyM(1.5);
        block.setSource("county height model");
        block.setDate("2026-05-20");
    }

    private ApproachAid aid() {
        return DemoProjects.aid(project, "PAPI 09");
    }

    private DrawnAid drawn() {
        return DrawnAid.of(ProjectEvaluation.of(project, Optional.empty()).aid(aid()), MessageRenderer.of(Locale.ENGLISH));
    }

    private List<Mark.Path> lines(DrawnAid drawn) {
        Section section = new Section(drawn, Optional.empty(), TextWidth::mm);
        return section.marks(section.whole(240, 110)).stream().filter(Mark.Path.class::isInstance).map(Mark.Path.class::cast)
                .filter(path -> block.getId().equals(path.elementId()) && path.style().line() == Ink.GROUND).toList();
    }

    @Test
    void theGroundStandsUnderTheApproachWhereItIsKnown() {
        List<Mark.Path> lines = lines(drawn());
        assertEquals(1, lines.size());
        List<ScenePoint> points = lines.get(0).points();
        // as far as a cell reaches beyond its middle, and no farther; drawn in steps of half a millimetre
        assertTrue(points.get(0).x() >= -915 && points.get(0).x() < -880, points.get(0).toString());
        ScenePoint last = points.get(points.size() - 1);
        assertTrue(last.x() <= -185 && last.x() > -215, last.toString());
        for (ScenePoint point : points) {
            assertEquals(point.x() / 40, point.y(), 15.0 / 40 + 1e-3, point.toString());
        }
    }

    @Test
    void itIsMarkedAsTerrainWithSourceDayAndAccuracy() {
        Scene scene = SectionScene.of(drawn(), PaperArea.usual());
        assertTrue(scene.legend().stream().anyMatch(entry -> entry.text().equals("terrain, no survey")), scene.legend().toString());
        assertTrue(scene.captions().stream().anyMatch(text -> text.contains("county height model of 2026-05-20, within 1.50 m")),
                scene.captions().toString());
    }

    @Test
    void pointsThatAreNoTerrainMakeNoGround() {
        block.setKind("obstacles");
        assertEquals(List.of(), lines(drawn()));
        block.setKind("terrain");
        block.setVerticalAccuracyM(null);
        assertEquals(List.of(), lines(drawn()));
    }
}
