package slopewright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;

import slopewright.drawing.paint.SvgPainter;
import slopewright.drawing.pilot.PilotScene;
import slopewright.drawing.plan.PlanScene;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.section.SectionScene;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.AidLayouts;
import slopewright.evaluation.AidRequests;
import slopewright.evaluation.EvaluationCache;
import slopewright.geometry.FramePoint;
import slopewright.messages.MessageRenderer;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.siting.Meaning;
import slopewright.siting.Signals;
import slopewright.siting.Siting;
import slopewright.standards.Citation;
import slopewright.standards.CitedText;
import slopewright.standards.CitedValue;
import slopewright.standards.Provenance;
import slopewright.standards.RuleSet;
import slopewright.standards.Source;

/** What is done with a family that was registered as a service and nowhere else: found, laid out, put into a project, read, drawn. */
public final class TrialRun implements Runnable {

    private static final SlopewrightFactory MAKE = SlopewrightFactory.eINSTANCE;

    private static RuleSet rules() {
        Citation citation = new Citation(TrialBox.TO_EDGE, new Source("trial", CitedText.of("trial text"), CitedText.of("1")),
                CitedText.of("1"), Provenance.FROM_MEMORY, CitedText.of(""), "");
        var none = RuleSet.Tables.none();
        return new RuleSet(new RuleSet.Descriptor("trial", "1", CitedText.of("Trial"), CitedText.of("trial text"), CitedText.of(""),
                List.of("trial-box"), "table",
                "outer-first"), Map.of(citation.key(), new CitedValue(12, "m", citation)), none);
    }

    private static ApproachAid aid() {
        Project project = MAKE.createProject();
        project.setAerodrome(MAKE.createAerodrome());
        project.getAerodrome().setCoordinateReference("local");
        Runway runway = MAKE.createRunway();
        runway.setDesignator("09/27");
        runway.setWidthM(45.0);
        runway.setLengthM(1800.0);
        RunwayEnd end = MAKE.createRunwayEnd();
        end.setDesignator("09");
        end.setThreshold(MAKE.createPlace());
        end.getThreshold().setEastM(0.0);
        end.getThreshold().setNorthM(0.0);
        end.setThresholdElevationM(50.0);
        end.setTrueBearingDeg(90.0);
        runway.getEnds().add(end);
        project.getAerodrome().getRunways().add(runway);
        ApproachAid aid = MAKE.createApproachAid();
        aid.setName("trial");
        aid.setFamilyKey("trial-box");
        aid.setSlopeDeg(3.0);
        aid.setTargetEyeHeightM(15.0);
        end.getAids().add(aid);
        Ids.assign(project);
        return aid;
    }

    /** The box stands 15 m / tan 3° = 286.22 m from the threshold and 22.5 m + 12 m from the centre line. */
    @Override
    public void run() {
        assertTrue(Families.all().stream().anyMatch(family -> family.key().equals("trial-box")), "it is registered");
        assertTrue(Families.all().size() > 1, "beside the others");
        ApproachAid aid = aid();
        Siting solved = Families.site("trial-box", AidRequests.of(aid), rules());
        aid.getUnits().addAll(AidLayouts.toModel(solved, 50));
        Ids.assign(Projects.project(aid).orElseThrow());
        AidEvaluation evaluation = AidEvaluation.of(aid, rules(), new EvaluationCache());
        Siting laid = evaluation.siting().orThrow();
        assertEquals(286.217, laid.distanceM(), 5e-4);
        assertEquals(-34.5, laid.units().get(0).place().rightM(), 1e-6);
        assertEquals(Meaning.ABOVE, Signals.observe(laid, new FramePoint(-2000, 0, 140)).meaning());
        assertEquals(Meaning.BELOW, Signals.observe(laid, new FramePoint(-2000, 0, 100)).meaning());
        DrawnAid drawn = DrawnAid.of(evaluation, MessageRenderer.of(Locale.ENGLISH));
        String id = aid.getUnits().get(0).getId();
        for (Scene scene : List.of(PlanScene.layout(drawn), PlanScene.detail(drawn), SectionScene.of(drawn))) {
            assertTrue(scene.marks().stream().anyMatch(mark -> id.equals(mark.elementId())), scene.title());
            assertFalse(SvgPainter.paint(scene, 297, 210).contains("NaN"), scene.title());
        }
        assertTrue(captions(drawn, 140).contains("reads: above."), captions(drawn, 140));
        assertTrue(captions(drawn, 100).contains("reads: below."), captions(drawn, 100));
    }

    private static String captions(DrawnAid drawn, double heightM) {
        return String.join(" ", PilotScene.of(drawn, new FramePoint(-2000, 0, heightM)).captions());
    }
}
