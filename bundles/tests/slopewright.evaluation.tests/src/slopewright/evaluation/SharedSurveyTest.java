package slopewright.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Uncompared;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.SurveyBlock;
import slopewright.testkit.DemoProjects;
import slopewright.testkit.SurveySamples;

/** A cache that must not wait takes survey points from the one that reads them, and says what is still to come. */
class SharedSurveyTest {
    private static final double ABOVE_M = 22.5;

    @TempDir
    private Path folder;
    private Project project;
    private ApproachAid aid;

    @BeforeEach
    void load() {
        project = DemoProjects.load(DemoProjects.copy(DemoProjects.GOOD, folder));
        aid = DemoProjects.aid(project, "PAPI 09");
    }

    private static SurfaceComparison comparison(Project project, ApproachAid aid, EvaluationCache cache) {
        return ProjectEvaluation.of(project, Optional.empty(), cache).aid(aid).obstacles().orThrow();
    }

    /** Adds a block with one point so far above the obstacle surface, on its axis, 1000 m out from its inner edge. */
    private SurveyBlock pointAbove() {
        ProtectionSurface surface = comparison(project, aid, new EvaluationCache()).surface();
        double along = surface.startAlongM() - 1000;
        // height of the surface there: inner edge + 1000 m x tan(slope)
        double height = surface.startHeightM() + 1000 * Math.tan(Math.toRadians(surface.slopeDeg())) + ABOVE_M;
        return SurveySamples.add(project, AidEvaluation.of(aid).host(), "ridge", new FramePoint(along, 0, height));
    }

    @Test
    void aBlockThatNobodyHasReadIsNamedAndThenCompared() {
        SurveyBlock block = pointAbove();
        EvaluationCache reading = new EvaluationCache();
        EvaluationCache waiting = reading.withoutReading();
        SurfaceComparison before = comparison(project, aid, waiting);
        assertEquals(List.of(block), before.uncompared().stream().map(Uncompared::element).toList());
        assertFalse(before.isComplete(), "nothing may be taken to be clear while points are still being read");
        assertTrue(waiting.takeWaiting());

        assertEquals(-ABOVE_M, comparison(project, aid, reading).marginM().orElseThrow(), 1e-6);
        SurfaceComparison after = comparison(project, aid, waiting);
        assertEquals(-ABOVE_M, after.marginM().orElseThrow(), 1e-6);
        assertEquals(List.of(), after.uncompared());
        assertFalse(waiting.takeWaiting());
    }

    @Test
    void whyABlockCannotBeReadIsSharedToo() {
        SurveyBlock block = pointAbove();
        block.setSha256("00");
        EvaluationCache reading = new EvaluationCache();
        EvaluationCache waiting = reading.withoutReading();
        List<Uncompared> found = comparison(project, aid, reading).uncompared();
        assertEquals(List.of(block), found.stream().map(Uncompared::element).toList());
        assertEquals(found, comparison(project, aid, waiting).uncompared());
    }
}
