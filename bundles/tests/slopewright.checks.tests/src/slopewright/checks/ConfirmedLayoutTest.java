package slopewright.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import slopewright.evaluation.ProjectEvaluation;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.standards.Citation;
import slopewright.testkit.DemoProjects;

/**
 * A value that decides no other outcome keeps the project from being met as long as nobody confirmed it. From memory is, in the data of the
 * rule set: the difference in level from which a row is moved (Doc 9157 Part 4, 8.3), which is that of both rows of the main runway.
 */
class ConfirmedLayoutTest {
    private static final String LEVEL = "four-unit-row.level-correction-from-m";

    private Project project;

    @BeforeEach
    void load() throws Exception {
        project = DemoProjects.load(DemoProjects.olderEdition());
    }

    private CheckResult check() {
        return Checks.run(ProjectEvaluation.of(project, Optional.empty()), rule -> true);
    }

    @Test
    void nothingIsMetOnWhatNobodyConfirmed() {
        assertEquals(new Standing(Verdict.MET, 0, 0, true), Standing.of(check()));
        assertTrue(project.getConfirmations().removeIf(confirmation -> LEVEL.equals(confirmation.getValueKey())));
        CheckResult open = check();
        assertEquals(new Standing(Verdict.TO_CLEAR_UP, 0, 2, true), Standing.of(open));
        List<Outcome> found = open.findings();
        assertEquals(List.of("PAPI 09", "PAPI 27"), found.stream().map(outcome -> Projects.aids(project).stream()
                .filter(aid -> aid.getId().equals(outcome.elementId())).findFirst().orElseThrow().getName()).toList());
        for (Outcome outcome : found) {
            assertEquals("DATA-65", outcome.rule());
            assertEquals(List.of(LEVEL), outcome.citations().stream().filter(Citation::toConfirm).map(Citation::key).toList());
            assertTrue(outcome.explanation().english().contains("Level difference above which the row is moved"),
                    outcome.explanation().english());
        }
        assertEquals(List.of(LEVEL), Standing.toConfirm(open.outcomes()).stream().map(Citation::key).toList());
    }

    /** A value that somebody confirmed stays in the book that is collected of the project, with whatever rests on it. */
    @Test
    void theBookKeepsWhatIsConfirmed() {
        assertTrue(rests());
        project.getConfirmations().removeIf(confirmation -> LEVEL.equals(confirmation.getValueKey()));
        assertTrue(rests());
    }

    private boolean rests() {
        return RestingValues.of(List.of(ProjectEvaluation.of(project, Optional.empty()))).stream()
                .anyMatch(value -> value.key().equals(LEVEL) && value.restsOnIt() == 2);
    }

    /** The width of its sectors is from memory and depends on the make: what was entered of the unit in hand stands in for it. */
    @Test
    void sectorsOfTheUnitInHandStandInForThoseOfTheRules() {
        project.getConfirmations().removeIf(confirmation -> confirmation.getValueKey().startsWith("tri-colour."));
        assertFalse(namesSector(check()));
        Projects.aids(project).forEach(aid -> Optional.ofNullable(aid.getEquipment()).ifPresent(type -> type.getSectors().clear()));
        assertTrue(namesSector(check()));
    }

    private static boolean namesSector(CheckResult result) {
        return result.outcomes().stream().filter(outcome -> outcome.rule().equals("DATA-65"))
                .flatMap(outcome -> outcome.citations().stream())
                .anyMatch(citation -> citation.key().equals("tri-colour.on-slope-sector-deg"));
    }
}
