package slopewright.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

import slopewright.evaluation.ProjectEvaluation;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.ValueConfirmation;
import slopewright.model.ValueOverride;
import slopewright.testkit.DemoProjects;

/**
 * What the rules say when a project moves from one edition to the next and nothing else is done: what was confirmed for the old one is to
 * clear up, and nothing gets better but where the new edition itself, read in its text, says so.
 */
class EditionMoveTest {
    private static final String OLD = "icao:5th";
    private static final String NEW = "icao:9th";
    /** Annex 14 Vol I, 9th ed., and Vol II, 4th ed.: keys in the list of sources. */
    private static final Set<String> READ = Set.of("annex14-i-9", "annex14-ii-4");

    private static List<Outcome> check(Project project) {
        return Checks.run(ProjectEvaluation.of(project, Optional.empty()), rule -> true).outcomes();
    }

    private static Project older() {
        Project project = DemoProjects.load(DemoProjects.olderEdition());
        assertEquals(OLD, project.getRuleSetKey());
        return project;
    }

    private static List<Outcome> of(List<Outcome> outcomes, Verdict verdict) {
        return outcomes.stream().filter(outcome -> outcome.verdict() == verdict).toList();
    }

    @Test
    void underItsEditionTheOlderProjectIsMet() {
        List<Outcome> outcomes = check(older());
        assertEquals(List.of(), of(outcomes, Verdict.NOT_MET));
        assertEquals(List.of(), of(outcomes, Verdict.TO_CLEAR_UP));
    }

    /** Each confirmation of the old edition, and no other, is to clear up and says for which edition it was made and which one counts. */
    @Test
    void whatWasConfirmedForTheOldEditionLapses() {
        Project project = older();
        Set<String> old = project.getConfirmations().stream().filter(said -> OLD.equals(said.getRuleSetKey()))
                .map(ValueConfirmation::getId).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(49, old.size());
        project.setRuleSetKey(NEW);
        List<Outcome> lapsed = of(check(project), Verdict.TO_CLEAR_UP).stream().filter(outcome -> outcome.rule().equals("DATA-40"))
                .toList();
        assertEquals(old, lapsed.stream().map(Outcome::elementId).collect(Collectors.toCollection(TreeSet::new)));
        for (Outcome outcome : lapsed) {
            String text = outcome.explanation().english();
            assertTrue(text.contains("confirmed for icao:5th") && text.contains("stands under icao:9th"), text);
            assertTrue(outcome.missing().get(0).english().endsWith("for icao:9th"), outcome.missing().toString());
        }
    }

    /** 0.9 m is of Doc 9157, which nobody read for either edition: an own figure of 0.7 m for the old one would fall away silently. */
    @Test
    void aNumberOfTheOrganisationDoesNotFallAwaySilently() {
        Project project = older();
        ValueOverride own = SlopewrightFactory.eINSTANCE.createValueOverride();
        own.setId("own");
        own.setRuleSetKey(OLD);
        own.setValueKey("four-unit-row.maximum-height-above-ground-m");
        own.setValue(0.7);
        own.setReason("aerodrome manual (invented)");
        project.getOverrides().add(own);
        project.setRuleSetKey(NEW);
        List<Outcome> said = check(project).stream().filter(outcome -> outcome.elementId().equals("own")
                && outcome.verdict() == Verdict.TO_CLEAR_UP).toList();
        assertEquals(1, said.size());
        assertTrue(said.get(0).explanation().english().contains("changes nothing here"), said.get(0).explanation().english());
    }

    /** As long as one aid stands under the old edition, what was confirmed for it counts. */
    @Test
    void whatAnAidOfTheOldEditionRestsOnStays() {
        Project project = older();
        project.setRuleSetKey(NEW);
        DemoProjects.aid(project, "PAPI 09").setRuleSetKey(OLD);
        assertEquals(0, of(check(project), Verdict.TO_CLEAR_UP).stream().filter(outcome -> outcome.rule().equals("DATA-40")).count());
    }

    @Test
    void nothingGetsBetterInASoundProjectButByTheTextOfTheNewEdition() {
        Project project = older();
        assertEquals(Set.of("EQUIP-10"), better(project));
        List<Outcome> moved = check(project);
        assertFalse(of(moved, Verdict.TO_CLEAR_UP).isEmpty());
        assertTrue(of(moved, Verdict.MET).stream().noneMatch(Outcome::toConfirm));
    }

    /**
     * Where nobody confirmed anything, what was read of the new edition is met: Fig 5-19 (inner unit, spacing, levels), Table 5-3 and
     * Fig 5-21 (surface), Fig A2-23 (beam). No planted fault becomes one less.
     */
    @Test
    void noFaultGetsBetterInAFaultyProject() {
        Project project = DemoProjects.load(DemoProjects.FAULTS);
        project.setRuleSetKey(OLD);
        List<String> before = faults(check(project));
        assertEquals(Set.of("LIGHT-03", "OBS-01", "ROW-03", "ROW-04", "ROW-09"), better(project));
        assertEquals(before, faults(check(project)));
    }

    private static List<String> faults(List<Outcome> outcomes) {
        return of(outcomes, Verdict.NOT_MET).stream().map(outcome -> outcome.rule() + " " + outcome.elementId()).sorted().toList();
    }

    /**
     * Moves a project and returns the rules of which a result got better. Each of these cites the new edition as read, and nothing that is
     * to confirm.
     */
    private static Set<String> better(Project project) {
        Map<String, List<Verdict>> before = new HashMap<>();
        check(project).forEach(outcome -> before.computeIfAbsent(outcome.rule() + " " + outcome.elementId(), key -> new ArrayList<>())
                .add(outcome.verdict()));
        project.setRuleSetKey(NEW);
        Set<String> better = new TreeSet<>();
        Map<String, Integer> seen = new HashMap<>();
        for (Outcome outcome : check(project)) {
            String key = outcome.rule() + " " + outcome.elementId();
            List<Verdict> was = before.getOrDefault(key, List.of());
            int index = seen.merge(key, 1, Integer::sum) - 1;
            if (outcome.verdict() != Verdict.MET || index < was.size() && was.get(index) == Verdict.MET) {
                continue;
            }
            better.add(outcome.rule());
            assertTrue(outcome.citations().stream().anyMatch(citation -> READ.contains(citation.source().key())), outcome.toString());
            assertFalse(outcome.toConfirm(), outcome.toString());
        }
        return better;
    }
}
