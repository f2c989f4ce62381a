package slopewright.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.evaluation.ProjectEvaluation;
import slopewright.model.Project;
import slopewright.standards.RuleSets;
import slopewright.testkit.DemoProjects;

/** Whatever a verdict waits for can be collected into a book: a value that is not listed could never be confirmed once for all. */
class RestingValuesTest {

    @ParameterizedTest
    @ValueSource(strings = {"harrow-vale", "every-family"})
    void everyValueThatAVerdictWaitsForIsListed(String demo) throws Exception {
        Project project = DemoProjects.load(demo);
        project.getConfirmations().clear();
        List<Optional<String>> ruleSets = new ArrayList<>();
        ruleSets.add(Optional.empty());
        RuleSets.all().forEach(rules -> ruleSets.add(Optional.of(rules.key() + ":" + rules.edition())));
        for (Optional<String> ruleSet : ruleSets) {
            ProjectEvaluation evaluation = ProjectEvaluation.of(project, ruleSet);
            Set<String> waitedFor = Checks.run(evaluation, rule -> true).outcomes().stream()
                    .flatMap(outcome -> outcome.citations().stream()).filter(citation -> citation.toConfirm())
                    .map(citation -> citation.key()).collect(Collectors.toCollection(TreeSet::new));
            assertTrue(waitedFor.size() > 5, "without confirmations much is waited for");
            Set<String> listed = RestingValues.of(List.of(evaluation)).stream().map(RestingValues.Resting::key)
                    .collect(Collectors.toSet());
            waitedFor.removeAll(listed);
            assertEquals(Set.of(), waitedFor, ruleSet.orElse("the rule sets of the project and its aids"));
        }
    }

    /** Texts that disagree are listed too, so that one of them can be confirmed before any verdict rests on it. */
    @Test
    void whatTextsDisagreeAboutIsListed() throws Exception {
        Project project = DemoProjects.load("harrow-vale");
        project.getConfirmations().clear();
        ProjectEvaluation evaluation = ProjectEvaluation.of(project, Optional.empty());
        Outcome open = Checks.run(evaluation, rule -> rule.id().equals("RANGE-01")).outcomes().stream()
                .filter(outcome -> outcome.elementPath().english().endsWith("PAPI 09")).findFirst().orElseThrow();
        assertEquals(Result.NOT_EVALUATED, open.result());
        Set<String> listed = RestingValues.of(evaluation, List.of(open)).stream().map(RestingValues.Resting::key)
                .collect(Collectors.toSet());
        assertEquals(Set.of("range.eye-illuminance-day-lx", "range.eye-illuminance-day-lighting-circular-lx"), listed);
    }
}
