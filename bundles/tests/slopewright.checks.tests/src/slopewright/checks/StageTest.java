package slopewright.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

import slopewright.messages.MessageRenderer;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.Stage;

/**
 * A rule of a later stage than the project's says nothing yet, is counted apart, and never passes; what is wrong is wrong at every
 * stage.
 */
class StageTest {
    private static final String MEASURED_SETTING = "UNIT-05";

    private static List<Outcome> at(Stage stage, double offDeg) {
        Sample sample = Bases.row();
        Bases.measure(sample.unit(0), offDeg);
        sample.project().setStage(stage);
        return Checks.run(sample.project(), Optional.of("icao:5th"), rule -> rule.id().equals(MEASURED_SETTING)).outcomes();
    }

    /** A file that does not say is one of a design: EMF gives the first literal. */
    @Test
    void aProjectThatDoesNotSayIsADesign() {
        Project project = SlopewrightFactory.eINSTANCE.createProject();
        assertEquals(Stage.DESIGN, project.getStage());
        assertEquals(Stage.DESIGN, Checks.run(project, Optional.empty()).stage());
    }

    @Test
    void whatIsMetLaterIsNoPassBefore() {
        Outcome design = at(Stage.DESIGN, 0).get(0);
        assertEquals(Result.NOT_AT_THIS_STAGE, design.result());
        assertEquals(Verdict.NOT_APPLICABLE, design.verdict());
        assertTrue(design.measure().isEmpty() && design.weight().isEmpty() && !design.toConfirm());
        assertTrue(design.explanation().english().contains("from the stage of set-up on; the project stands at the stage of design"));
        assertEquals(Result.PASS, at(Stage.SET_UP, 0).get(0).result());
        assertEquals(Result.PASS, at(Stage.OPERATION, 0).get(0).result());
    }

    /** Half a degree off: 30' where 3' are allowed. */
    @ParameterizedTest
    @EnumSource(Stage.class)
    void whatIsNotMetIsSaidAtEveryStage(Stage stage) {
        Outcome outcome = at(stage, 0.5).get(0);
        assertEquals(Verdict.NOT_MET, outcome.verdict());
        assertEquals(Severity.FAIL, outcome.severity());
    }

    /** Set within 1', set again in use beyond 3' (values.csv, setting-accuracy-min and reset-beyond-min). */
    @ParameterizedTest
    @CsvSource({"SET_UP, 0.9, PASS", "SET_UP, 1.1, FAIL", "OPERATION, 1.1, PASS", "OPERATION, 3.1, FAIL", "DESIGN, 1.1, FAIL"})
    void anAngleIsHeldAgainstTheToleranceOfItsStage(Stage stage, double offMin, Result expected) {
        assertEquals(expected, at(stage, offMin / 60).get(0).result());
    }

    @Test
    void outcomesOfALaterStageAreCountedApartAndOnce() {
        Sample sample = Bases.row();
        Bases.measure(sample.unit(0), 0);
        sample.project().setStage(Stage.DESIGN);
        CheckResult design = sample.check();
        long later = design.outcomes().stream().filter(outcome -> outcome.result() == Result.NOT_AT_THIS_STAGE).count();
        assertTrue(later > 0);
        assertEquals(later, design.notAtThisStage());
        assertEquals(design.outcomes().size(), design.counts().values().stream().mapToInt(Integer::intValue).sum());
        assertTrue(design.counts().get(Verdict.NOT_APPLICABLE) >= later);
        sample.project().setStage(Stage.OPERATION);
        assertEquals(0, sample.check().notAtThisStage());
    }

    /** A higher stage only ever turns what said nothing yet into an answer; every other outcome stays. */
    @Test
    void theStageChangesNothingElse() {
        Sample sample = Bases.row();
        sample.units(unit -> Bases.measure(unit, 0));
        sample.project().setStage(Stage.OPERATION);
        List<Outcome> operation = beside(sample.check());
        sample.project().setStage(Stage.DESIGN);
        List<Outcome> design = beside(sample.check());
        assertEquals(operation.size(), design.size());
        for (int i = 0; i < operation.size(); i++) {
            Outcome late = operation.get(i);
            Outcome early = design.get(i);
            if (early.result() == Result.NOT_AT_THIS_STAGE) {
                assertTrue(RuleCatalogue.find(early.rule()).orElseThrow().stage() != Stage.DESIGN, early.rule());
                assertTrue(Set.of(Result.PASS, Result.NOT_EVALUATED).contains(late.result()), late.rule());
            } else {
                assertEquals(late, early);
            }
        }
    }

    /** Returns what is said beside the rule that is about the stage itself. */
    private static List<Outcome> beside(CheckResult result) {
        return result.outcomes().stream().filter(outcome -> !outcome.rule().equals("REC-05")).toList();
    }

    @Test
    void everyStageHasRulesAndAWordInBothLanguages() {
        Set<Stage> used = RuleCatalogue.all().stream().map(Rule::stage).collect(Collectors.toCollection(() -> EnumSet.noneOf(Stage.class)));
        assertTrue(used.contains(Stage.DESIGN) && used.contains(Stage.SET_UP), used.toString());
        for (Stage stage : Stage.values()) {
            assertEquals(Optional.of(stage), Stages.find(Stages.key(stage)));
            assertFalse(MessageRenderer.of(Locale.GERMAN).write(Stages.term(stage)).isBlank());
        }
        assertEquals(Optional.empty(), Stages.find("later"));
    }
}
