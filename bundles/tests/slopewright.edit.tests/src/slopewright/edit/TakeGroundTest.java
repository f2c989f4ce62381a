package slopewright.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.terrain.TakenGround;
import slopewright.evaluation.terrain.TakenGround.TakenPlace;
import slopewright.geometry.FramePoint;
import slopewright.model.ApproachAid;
import slopewright.model.ProfilePoint;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.SurveyBlock;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.testkit.DemoProjects;
import slopewright.testkit.SurveySamples;

/** Ground is taken from a model of the terrain as one step of undo, marked as what it is. */
class TakeGroundTest {
    private static final double RISE = 0.01;
    private static final double CELL_M = 10;
    /** Half the diagonal of a cell of 10 m. */
    private static final double REACH_M = 7.072;
    private static final double VERTICAL_M = 0.4;

    @TempDir
    private Path folder;
    private Project project;
    private ApproachAid aid;
    private RunwayEnd end;

    @BeforeEach
    void load() {
        project = DemoProjects.load(DemoProjects.copy(DemoProjects.GOOD, folder));
        aid = DemoProjects.aid(project, "PAPI 09");
        end = (RunwayEnd) Projects.host(aid).orElseThrow();
    }

    /** A plane that rises by a hundredth along the runway from two metres under the threshold. */
    private SurveyBlock plane(double lastM) {
        int rows = (int) ((lastM + 50) / CELL_M) + 1;
        FramePoint[] cells = new FramePoint[rows * 21];
        for (int i = 0; i < cells.length; i++) {
            double along = -50 + i / 21 * CELL_M;
            cells[i] = new FramePoint(along, (i % 21 - 10) * CELL_M, RISE * along - 2);
        }
        SurveyBlock block = SurveySamples.add(project, end, "plane", cells);
        block.setKind("terrain");
        block.setHorizontalAccuracyM(REACH_M);
        block.setVerticalAccuracyM(VERTICAL_M);
        block.setSource("invented");
        block.setDate("2026-05-20");
        return block;
    }

    private TakenGround taken() {
        return TakenGround.of(AidEvaluation.of(aid), TakenGround.USUAL_STEP_M);
    }

    /** The nearest cell lies at most its reach away, so its level is at most 0.071 m off the plane, and its accuracy says so. */
    @Test
    void theLevelsAreThoseOfTheModelAndSaySo() {
        plane(600);
        TakenGround ground = taken();
        double unit = aid.getUnits().get(0).getAlongM();
        assertTrue(ground.places().stream().anyMatch(place -> place.alongM() == unit), "the level at a unit");
        for (TakenPlace place : ground.places()) {
            double plane = end.getThresholdElevationM() - 2 + RISE * place.alongM();
            assertEquals(plane, place.elevationM(), RISE * REACH_M + 1e-4);
            assertTrue(Math.abs(plane - place.elevationM()) + VERTICAL_M <= place.accuracyM() + 1e-4, place.toString());
            assertTrue(place.accuracyM() <= VERTICAL_M + RISE * 2.5 * REACH_M + 1e-4, "its neighbours lie 1.5 times the reach away");
            assertEquals("plane", place.model());
        }
        EditHarness.cycle(project, TakeGround.of(end, ground), () -> {
            assertEquals(ground.places().size(), end.getSiteProfile().size());
            assertEquals("model of the terrain, no survey (plane: invented)", end.getSiteProfileSource());
            assertEquals("2026-05-20", end.getSiteProfileDate());
            assertTrue(end.getSiteProfileAccuracyM() >= ground.accuracyM());
            assertEquals(ground.places().size(), end.getSiteProfile().stream().map(ProfilePoint::getId).filter(Objects::nonNull)
                    .distinct().count());
        });
    }

    @Test
    void groundThatNoModelKnowsIsRefusedWithTheReason() throws Exception {
        assertEquals("terrain.none", refusal());
        SurveyBlock block = plane(200);
        assertEquals("terrain.not-known", refusal());
        block.setVerticalAccuracyM(null);
        assertEquals("terrain.without-accuracy", refusal());
        block.setVerticalAccuracyM(VERTICAL_M);
        Files.delete(folder.resolve(block.getPath()));
        assertEquals("terrain.unread", refusal());
    }

    private String refusal() {
        return assertThrows(SitingException.class, this::taken).reason().key();
    }
}
