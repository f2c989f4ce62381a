package slopewright.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.EvaluationCache;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.comparison.Candidate;
import slopewright.evaluation.comparison.FamilyComparison;
import slopewright.evaluation.remedy.Remedies;
import slopewright.evaluation.remedy.Remedy;
import slopewright.geometry.FramePoint;
import slopewright.model.ApproachAid;
import slopewright.model.Obstacle;
import slopewright.model.Place;
import slopewright.model.SlopewrightFactory;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.RemedyKind;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** What was proposed is what is placed, and what was offered is what is carried out, through the cycle of execute, undo and redo. */
class ProposalEditsTest {
    private static final RuleSet EASA = RuleSets.find("easa").orElseThrow();

    private final Sample sample = new Sample();

    private AidEvaluation evaluation(ApproachAid aid) {
        return AidEvaluation.of(aid, EASA, new EvaluationCache());
    }

    /** A mast 2060 m before the threshold, so many metres over a surface that starts 60 m before it and rises 1.93 degrees. */
    private void mast(double aboveM) {
        Obstacle mast = SlopewrightFactory.eINSTANCE.createObstacle();
        mast.setName("mast");
        Place place = SlopewrightFactory.eINSTANCE.createPlace();
        SiteFrame.of(sample.end).fromFrame(new FramePoint(-2060, 0, 2000 * Math.tan(Math.toRadians(1.93)) + aboveM), place);
        mast.getPlaces().add(place);
        mast.setHorizontalAccuracyM(0.001);
        mast.setVerticalAccuracyM(0.001);
        sample.aerodrome.getObstacles().add(mast);
    }

    @Test
    void theAidThatIsPlacedIsTheOneThatWasProposed() {
        mast(-3);
        Candidate row = FamilyComparison.of(ProjectEvaluation.of(sample.project, Optional.of("easa")), sample.end).stream()
                .filter(found -> found.family().key().equals("four-unit-row")).findFirst().orElseThrow();
        assertTrue(sample.end.getAids().isEmpty(), "a comparison places nothing");
        AddAid edit = AddAid.proposed(sample.end, row, true);
        EditHarness.cycle(sample.project, edit, () -> assertEquals(1, sample.end.getAids().size()));
        ApproachAid placed = sample.end.getAids().get(0);
        assertEquals("easa:" + EASA.edition(), placed.getRuleSetKey());
        assertEquals(row.siting().orElseThrow().distanceM(), evaluation(placed).siting().orThrow().distanceM(), 0);
        assertEquals(row.obstacleMarginM(), evaluation(placed).marginM());
        assertEquals(3, evaluation(placed).marginM().orElseThrow(), 1e-2);
    }

    /** 5 m above, rising 1.93 degrees: 5 / tan 1.93 = 148.4, so 149 m upwind. */
    @Test
    void aRemedyIsCarriedOutAsItWasOffered() {
        sample.withRow();
        mast(5);
        ApproachAid aid = sample.end.getAids().get(0);
        AidEvaluation before = evaluation(aid);
        List<Remedy> remedies = Remedies.of(before);
        Remedy move = remedies.stream().filter(remedy -> remedy.kind() == RemedyKind.MOVE_UPWIND_UNTIL_CLEAR).findFirst().orElseThrow();
        double along = aid.getUnits().get(0).getAlongM();
        EditHarness.cycle(sample.project, CarryOutRemedy.of("Move upwind", before, move),
                () -> assertEquals(along + 149, aid.getUnits().get(0).getAlongM(), 1e-9));
        assertFalse(evaluation(aid).obstacles().orThrow().isPenetrated());
        Remedy narrow = remedies.stream().filter(remedy -> remedy.kind() == RemedyKind.NARROW_BEAM).findFirst().orElseThrow();
        assertFalse(narrow.helps(), "the mast stands on the axis");
        assertThrows(EditException.class, () -> CarryOutRemedy.of("Narrow the beam", before, narrow));
    }
}
