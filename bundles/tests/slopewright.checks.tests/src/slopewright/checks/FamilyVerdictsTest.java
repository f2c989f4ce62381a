package slopewright.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

import slopewright.checks.compare.FamilyVerdicts;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.comparison.Candidate;
import slopewright.evaluation.comparison.FamilyComparison;
import slopewright.model.ApproachHost;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.Side;

/** The rules over families that are only proposed. */
class FamilyVerdictsTest {
    /** Whether an aid names a rule set of its own, as a proposal does. */
    private static final String NAMED = "DATA-08";

    private static FamilyVerdicts row(Sample sample) {
        return FamilyVerdicts.of(ProjectEvaluation.of(sample.project(), Optional.of("icao:5th")), Projects.host(sample.aid()).orElseThrow())
                .stream().filter(found -> found.candidate().family().key().equals("four-unit-row")).findFirst().orElseThrow();
    }

    /** The aid stands as the rule set lays it out: the rules say of the proposal what they say of the aid, and the project is as it was. */
    @Test
    void aProposalOfWhatStandsIsJudgedAsWhatStands() {
        Sample sample = Bases.row();
        var before = EcoreUtil.copy(sample.project());
        List<String> proposed = row(sample).outcomes().stream()
                .filter(outcome -> !outcome.rule().equals(NAMED)).map(outcome -> outcome.rule() + " " + outcome.result()).sorted().toList();
        List<String> standing = Checks.run(sample.project(), Optional.of("icao:5th")).outcomes().stream()
                .filter(outcome -> Ids.elements(sample.aid()).stream().anyMatch(part -> outcome.elementId().equals(part.getId())))
                .filter(outcome -> !outcome.rule().equals(NAMED)).map(outcome -> outcome.rule() + " " + outcome.result()).sorted().toList();
        assertTrue(standing.size() > 20, standing.toString());
        assertEquals(standing, proposed);
        assertTrue(EcoreUtil.equals(before, sample.project()));
    }

    /** 5 m over the surface (60 m before the threshold, 1.93 degrees): broken as a proposal, and OBS-01 says so. */
    @Test
    void aPenetratedProposalDoesNotFit() {
        Sample sample = Bases.row();
        sample.obstacle("mast", -2060, 0, 100 + 2000 * Math.tan(Math.toRadians(1.93)) + 5);
        FamilyVerdicts row = row(sample);
        assertEquals(Candidate.Fit.DOES_NOT_FIT, row.fit());
        assertTrue(row.outcomes().stream().anyMatch(outcome -> outcome.rule().equals("OBS-01") && outcome.verdict() == Verdict.NOT_MET));
        assertTrue(row.count(Verdict.NOT_MET) > 0);
        assertTrue(row.reasons().stream().anyMatch(reason -> reason.english().startsWith("Not met: ")
                && reason.english().contains("OBS-01 Obstacle surface")), row.reasons().toString());
    }

    /** The mast stands in the surface of the row that is there; a family that is tried in its place has a surface of its own. */
    @Test
    void whatStandsInTheSurfaceOfOneFamilyIsNotHeldAgainstAnother() {
        Sample sample = Bases.row();
        sample.obstacle("mast", -2060, 0, 100 + 2000 * Math.tan(Math.toRadians(1.93)) + 5).setId("mast");
        ProjectEvaluation evaluation = ProjectEvaluation.of(sample.project(), Optional.of("icao:5th"));
        ApproachHost host = Projects.host(sample.aid()).orElseThrow();
        assertTrue(PlaceStanding.of(evaluation, host).broken().stream().anyMatch(outcome -> outcome.rule().equals("OBS-01")));
        assertEquals(List.of(), PlaceStanding.bare(evaluation, host).broken());
        assertEquals(List.of(), row(sample).place().broken());
    }

    /** The thresholds lie on 90 degrees: no family is to blame for a bearing of 120 degrees, and it is said beside them. */
    @Test
    void whatIsNotMetOfThePlaceIsSaidBesideTheFamilies() {
        Sample sample = Bases.row();
        assertEquals(List.of(), row(sample).place().broken());
        sample.end().setTrueBearingDeg(120.0);
        FamilyVerdicts row = row(sample);
        assertTrue(row.place().broken().stream().anyMatch(outcome -> outcome.rule().equals("DATA-15")), row.place().toString());
        assertTrue(row.place().reasons().stream().anyMatch(reason -> reason.english().contains("120.00")), row.place().toString());
        assertTrue(row.place().rules().english().contains("DATA-15"));
        assertTrue(row.reasons().stream().noneMatch(reason -> reason.english().contains("120.00")), row.reasons().toString());
        assertTrue(row.fit() != Candidate.Fit.FITS);
        ProjectEvaluation evaluation = ProjectEvaluation.of(sample.project(), Optional.of("icao:5th"));
        FamilyVerdicts alone = FamilyVerdicts.of(evaluation, FamilyComparison.of(evaluation, Projects.host(sample.aid()).orElseThrow(),
                row.candidate().family(), Optional.of(Side.LEFT)));
        assertEquals(row.place().reasons(), alone.place().reasons(), "a family that is tried alone stands in a copy of the place");
        assertTrue(alone.fit() != Candidate.Fit.FITS);
    }
}
