package slopewright.drawing.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.TextWidth;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.messages.MessageRenderer;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.testkit.DemoProjects;
import slopewright.testkit.SurveySamples;

/** A point of a survey block is found in a section where it is drawn, and what is not drawn is not found. */
class SectionPointsTest {
    private static final double REACH_MM = 1.5;
    /** Well below the obstacle surface; the higher one of two that stand over one place hides the lower. */
    private static final FramePoint HIGH = new FramePoint(-800, 20, 6);
    private static final FramePoint HIDDEN = new FramePoint(-800, -30, 1);
    private static final FramePoint BESIDE = new FramePoint(-700, 2500, 9);
    private static final FramePoint ALONE = new FramePoint(-500, -10, 3);

    @TempDir
    private Path folder;
    private Section section;
    private SectionWindow window;
    private FramePoint through;

    /** Of the two that stand through the surface at one place, the lower one stands through it as well, and is drawn with a cross. */
    @BeforeEach
    void load() {
        Project project = DemoProjects.load(DemoProjects.copy(DemoProjects.GOOD, folder));
        ApproachAid aid = DemoProjects.aid(project, "PAPI 09");
        ProtectionSurface surface = ProjectEvaluation.of(project, Optional.empty()).aid(aid).obstacles().orThrow().surface();
        double top = surface.startHeightM() + 1000 * Math.tan(Math.toRadians(surface.slopeDeg()));
        through = new FramePoint(surface.startAlongM() - 1000, 0, top + 5);
        FramePoint higher = new FramePoint(through.alongM(), 1, top + 30);
        SurveySamples.add(project, Projects.host(aid).orElseThrow(), "points", HIDDEN, HIGH, BESIDE, ALONE, through, higher);
        section = new Section(DrawnAid.of(ProjectEvaluation.of(project, Optional.empty()).aid(aid), MessageRenderer.of(Locale.ENGLISH)),
                Optional.empty(), TextWidth::mm);
        window = section.whole(240, 110);
    }

    private Optional<Integer> at(double alongM, double heightM) {
        return section.surveyPoint(window, alongM, heightM, REACH_MM).map(SurveyPointAt::index);
    }

    @Test
    void whatIsDrawnIsFoundWithinReach() {
        double mm = 1 / window.mmAlong();
        assertEquals(Optional.of(1), at(HIGH.alongM(), HIGH.heightM()));
        assertEquals(Optional.of(3), at(ALONE.alongM() + 1.4 * mm, ALONE.heightM()));
        assertEquals(Optional.empty(), at(ALONE.alongM() + 1.6 * mm, ALONE.heightM()));
        assertEquals(Optional.of(4), at(through.alongM(), through.heightM()), "it stands through the surface");
        assertEquals(Optional.of(5), at(through.alongM(), through.heightM() + 25));
        FramePoint found = section.surveyPoint(window, ALONE.alongM(), ALONE.heightM(), REACH_MM).orElseThrow().place();
        assertEquals(ALONE.rightM(), found.rightM(), 1e-3);
    }

    @Test
    void whatIsNotDrawnIsNotFound() {
        SectionWindow near = new SectionWindow(HIDDEN.alongM() - 20, -2, HIDDEN.alongM() + 20, 8, 240, 110);
        assertEquals(Optional.empty(), section.surveyPoint(near, HIDDEN.alongM(), HIDDEN.heightM(), REACH_MM), "a higher one is drawn");
        assertEquals(Optional.empty(), at(BESIDE.alongM(), BESIDE.heightM()), "too far beside the approach");
        assertTrue(section.surveyPoint(near, HIGH.alongM(), HIGH.heightM(), REACH_MM).isPresent());
    }
}
