package slopewright.drawing.pilot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.ScenePoint;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.terrain.TerrainField;
import slopewright.geometry.FramePoint;
import slopewright.messages.MessageRenderer;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.SurveyBlock;
import slopewright.model.util.Projects;
import slopewright.testkit.DemoProjects;
import slopewright.testkit.SurveySamples;

/** A hill 4 km beyond the threshold, 300 m high and 200 m wide, seen from 2 km before it at 100 m. */
class SkylineTest {

    private static final FramePoint EYE = new FramePoint(-2000, 0, 100);
    private static final double REACH_M = 15;

    @TempDir
    private Path folder;

    private DrawnAid drawn(double topM) {
        Project project = DemoProjects.load(DemoProjects.copy(DemoProjects.GOOD, folder));
        ApproachAid aid = DemoProjects.aid(project, "PAPI 09");
        List<FramePoint> points = new ArrayList<>();
        for (double along = 3900; along <= 4000; along += 20) {
            for (double right = -100; right <= 100; right += 20) {
                points.add(new FramePoint(along, right, along == 4000 ? topM : -50));
            }
        }
        SurveyBlock block = SurveySamples.add(project, Projects.host(aid).orElseThrow(), "hill", points.toArray(FramePoint[]::new));
        block.setKind("terrain");
        block.setHorizontalAccuracyM(REACH_M);
        block.setVerticalAccuracyM(2.0);
        return DrawnAid.of(ProjectEvaluation.of(project, Optional.empty()).aid(aid), MessageRenderer.of(Locale.ENGLISH));
    }

    /** Worked by hand: 200 m less 6000 x 6000 x 0.87 / (2 x 6371008.8) = 2.458 m over 6000 m are 1.8864 degrees of the picture. */
    @Test
    void aHillRisesWhereItStands() {
        PilotPicture picture = new PilotPicture(EYE, 0);
        List<List<ScenePoint>> hills = Skyline.of(picture, TerrainField.of(drawn(300).surroundings()), 5, Integer.MAX_VALUE).hills();
        assertEquals(1, hills.size());
        List<ScenePoint> hill = hills.get(0);
        assertEquals(Math.toDegrees((200 - 2.458) / 6000), hill.stream().mapToDouble(ScenePoint::y).max().orElseThrow(), 1e-4);
        // as wide as the cells and their reach: 115 m of 6000 m to each side, in columns of 1/48 degree
        assertEquals(-Math.toDegrees(115.0 / 6000), hill.get(0).x(), 0.03);
        assertEquals(Math.toDegrees(115.0 / 6000), hill.get(hill.size() - 1).x(), 0.03);
        assertEquals(picture.horizonDeg(), hill.get(0).y());
        assertTrue(hill.stream().allMatch(at -> at.y() >= picture.horizonDeg()));
    }

    /** The horizon of level land lies 0.2994 degrees below the level; a hill of 60 m lies 42.458 m lower than the eye, 0.4054 degrees. */
    @Test
    void whatLiesBelowTheHorizonIsNoHill() {
        assertEquals(List.of(), Skyline.of(new PilotPicture(EYE, 0), TerrainField.of(drawn(60).surroundings()), 5, 1000).hills());
    }

    @Test
    void whatLiesBehindIsNoHill() {
        List<TerrainField> terrain = TerrainField.of(drawn(300).surroundings());
        assertEquals(List.of(), Skyline.of(new PilotPicture(new FramePoint(9000, 0, 100), 0), terrain, 5, 1000).hills());
        assertEquals(List.of(), Skyline.of(new PilotPicture(EYE, 0), List.of(), 5, 1000).hills());
    }

    @Test
    void theDrawingSaysWhereItsHillsComeFrom() {
        Scene scene = PilotScene.of(drawn(300), EYE);
        String said = scene.captions().toString();
        assertTrue(said.contains("Hills are those of hill, a model of the terrain within 2.00 m and no survey"), said);
    }
}
