package slopewright.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import slopewright.messages.MessageRenderer;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;

/** What holds for every rule of the catalogue, and every case of every rule. */
class RuleContractTest {

    /** Rules that name what is missing and cannot fail. */
    private static final Set<String> COMPLETENESS = Set.of("DATA-01", "DATA-02", "DATA-03", "DATA-04", "DATA-05", "DATA-11",
            "DATA-13", "DATA-30", "DATA-64", "DATA-65", "DATA-69", "INSP-01", "EQUIP-13", "EQUIP-14", "REC-04", "DATA-72", "DATA-73",
            "DATA-74");

    /** Rules that say what is no longer recommended and cannot pass. */
    private static final Set<String> NEVER_PASS = Set.of("FAM-04");

    /** Rules to which nothing can be missing, and why. */
    private static final Map<String, String> NOTHING_MISSING = Map.ofEntries(Map.entry("FAM-01", "family and place are there"),
            Map.entry("FAM-03", "no displacement means none"), Map.entry("DATA-07", "a rule set covers a family or not"),
            Map.entry("DATA-08", "one that is not named is that of the project"), Map.entry("DATA-09", "what is missing is the finding"),
            Map.entry("DATA-10", "what is missing is the finding"), Map.entry("DATA-18", "one entry contradicts nothing"),
            Map.entry("DATA-19", "one entry contradicts nothing"), Map.entry("DATA-20", "one entry contradicts nothing"),
            Map.entry("DATA-22", "an aid without units stands nowhere"), Map.entry("DATA-25", "a number that is not there is not wrong"),
            Map.entry("DATA-40", "what is missing is the finding"), Map.entry("DATA-42", "one entry contradicts nothing"),
            Map.entry("DATA-44", "one entry contradicts nothing"),
            Map.entry("DATA-45", "what is missing is the finding"), Map.entry("DATA-46", "one entry contradicts nothing"),
            Map.entry("DATA-47", "one entry contradicts nothing"), Map.entry("DATA-49", "one entry contradicts nothing"),
            Map.entry("DATA-50", "what is missing is named elsewhere"),
            Map.entry("DATA-54", "one entry contradicts nothing"),
            Map.entry("DATA-55", "one entry contradicts nothing"), Map.entry("DATA-59", "one entry contradicts nothing"),
            Map.entry("DATA-60", "one entry contradicts nothing"), Map.entry("DATA-61", "one entry contradicts nothing"),
            Map.entry("DATA-63", "a rule set is there"),
            Map.entry("DATA-26", "one entry contradicts nothing"), Map.entry("DATA-27", "what has no place is not far off"),
            Map.entry("REC-01", "a note that names nothing is about the whole"), Map.entry("REC-02", "what has no date is not wrong"),
            Map.entry("REC-05", "a project is at a stage"),
            Map.entry("FAM-04", "the family is there"));

    /** Rules that weigh as a note, and why none of them hides a danger. */
    private static final Map<String, String> NOTES = Map.of("FAM-03", "a recommendation; the signal is true", "FAM-04",
            "a recommendation; the signal is true", "ILS-04", "no published value asks for it; clearance has rules of its own", "RANGE-02",
            "how far off units are told apart; nearer they are");

    static List<Rule> rules() {
        return RuleCatalogue.all();
    }

    static List<RuleCase> cases() {
        return Stream.of(DataCases.all(), ContradictionCases.all(), RowCases.all(), RowLevelCases.all(), ClearanceCases.all(),
                ObstacleCases.all(), OtherFamilyCases.all(), RangeCases.all(), LightCases.all(), SignalCases.all(), BookCases.all(),
                EquipmentCases.all(), FieldCases.all(), CircuitCases.all(), InspectionCases.all(), ReadBackCases.all(), SitingCases.all(),
                PlausibleCases.all(), PlausibleUnitCases.all(), UnitLineCases.all(), UnsureObstacleCases.all(),
                GeoidCases.all(), GroundAccuracyCases.all(), GroundUnderUnitsCases.all(), LikelyCases.all(), LandingAreaCases.all(),
                ObstacleShapeCases.all())
                .flatMap(List::stream)
                .toList();
    }

    @Test
    void idsAreUniqueAndInOrder() {
        List<String> ids = rules().stream().map(Rule::id).toList();
        assertEquals(ids.stream().distinct().sorted().toList(), ids);
        assertTrue(ids.size() >= 80, ids.size() + " rules");
        Set<String> groups = ids.stream().map(id -> id.substring(0, id.indexOf('-'))).collect(Collectors.toSet());
        assertEquals(Set.of("DATA", "FAM", "ROW", "UNIT", "DIST", "EYE", "WHEEL", "ILS", "OBS", "SIG", "AIM", "BAR", "TF", "BOX", "PANEL",
                "RANGE", "LIGHT", "EQUIP", "CIRC", "INSP", "REC", "FIELD"),
                groups);
    }

    @Test
    void aNoteNeverCarriesASafetyFailure() {
        assertEquals(NOTES.keySet(), rules().stream().filter(rule -> rule.severity() == Severity.NOTE).map(Rule::id)
                .collect(Collectors.toSet()));
    }

    @ParameterizedTest
    @MethodSource("rules")
    void aRuleDescribesItself(Rule rule) {
        assertTrue(rule.id().matches("[A-Z]{2,5}-\\d\\d"), rule.id());
        for (Locale language : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            MessageRenderer renderer = MessageRenderer.of(language);
            assertTrue(renderer.keys().containsAll(List.of(rule.title().key(), rule.description().key())), rule.id() + " in " + language);
            String title = renderer.render(rule.title());
            assertFalse(title.endsWith("."), "a title is no sentence: " + title);
            String description = renderer.render(rule.description());
            assertTrue(description.matches("\\p{Lu}.*[^.]\\.")
                    && !description.substring(0, description.length() - 1).contains(". "), "one sentence: " + description);
        }
        assertNotNull(rule.severity());
        assertEquals(rule, RuleCatalogue.find(rule.id()).orElseThrow());
        assertEquals(rule.getClass().getName(), rule.getClass().getPackageName() + "." + rule.getClass().getSimpleName());
    }

    @ParameterizedTest
    @MethodSource("rules")
    void everyRuleHasACaseThatPassesAndOneThatDoesNot(Rule rule) {
        Set<Result> verdicts = cases().stream().filter(ruleCase -> ruleCase.rule().equals(rule.id())).flatMap(one -> one.expected()
                .stream())
                .collect(Collectors.toSet());
        assertTrue(verdicts.contains(Result.PASS) || NEVER_PASS.contains(rule.id()), rule.id() + " passes somewhere");
        assertTrue(verdicts.contains(COMPLETENESS.contains(rule.id()) ? Result.NOT_EVALUATED : Result.FAIL), rule.id()
                + " fails somewhere");
    }

    /** A rule of which no case misses anything must not pass an aid that has no units yet, unless it looks at none. */
    @ParameterizedTest
    @MethodSource("rules")
    void everyRuleIsNotEvaluatedWhereSomethingIsMissing(Rule rule) {
        List<RuleCase> own = cases().stream().filter(ruleCase -> ruleCase.rule().equals(rule.id())).toList();
        if (NOTHING_MISSING.containsKey(rule.id())
                || own.stream().anyMatch(ruleCase -> ruleCase.expected().equals(Optional.of(Result.NOT_EVALUATED)))) {
            return;
        }
        RuleCase passed = own.stream().filter(ruleCase -> ruleCase.expected().equals(Optional.of(Result.PASS))).findFirst().orElseThrow();
        Sample sample = passed.sample().get();
        sample.aid().getUnits().clear();
        assertEquals(Optional.of(Result.NOT_EVALUATED), heaviest(sample.outcomes(rule.id())), rule.id() + " without units");
    }

    @ParameterizedTest
    @MethodSource("rules")
    void anEmptyProjectGivesNoPass(Rule rule) {
        Project project = SlopewrightFactory.eINSTANCE.createProject();
        CheckResult result = Checks.run(project, Optional.empty(), rule::equals);
        assertEquals(List.of(), result.outcomes());
        assertFalse(result.anythingEvaluated());
    }

    @ParameterizedTest
    @MethodSource("cases")
    void aCaseComesOutAsExpected(RuleCase one) {
        List<Outcome> outcomes = one.sample().get().outcomes(one.rule());
        assertTrue(RuleCatalogue.find(one.rule()).isPresent(), "there is no rule " + one.rule());
        String all = outcomes.stream().map(outcome -> outcome.result() + " " + outcome.explanation()).collect(Collectors.joining("\n"));
        assertEquals(one.expected(), heaviest(outcomes), all);
        for (Outcome outcome : outcomes) {
            isWhole(outcome);
        }
    }

    private static Optional<Result> heaviest(List<Outcome> outcomes) {
        return Stream.of(Result.FAIL, Result.NOT_EVALUATED, Result.PASS, Result.NOT_APPLICABLE)
                .filter(verdict -> outcomes.stream().anyMatch(outcome -> outcome.result() == verdict)).findFirst();
    }

    private static void isWhole(Outcome outcome) {
        String explanation = outcome.explanation().english();
        assertFalse(explanation.isBlank());
        assertTrue(explanation.endsWith("."), explanation);
        assertFalse(explanation.contains("null"), explanation);
        assertFalse(outcome.elementPath().english().isBlank());
        assertNotNull(outcome.elementId());
        assertEquals(outcome.result() == Result.NOT_EVALUATED, !outcome.missing().isEmpty(), explanation);
        assertEquals(outcome.value().isPresent(), outcome.margin().isPresent());
        assertEquals(outcome.value().isPresent(), outcome.limit().isPresent());
        if (outcome.margin().isPresent()) {
            boolean shielded = outcome.rule().equals("OBS-01") && outcome.result() == Result.PASS;
            assertEquals(outcome.result() == Result.PASS, shielded || outcome.measure().orElseThrow().isMet(), explanation);
        }
        if (outcome.result() == Result.NOT_APPLICABLE || outcome.result() == Result.NOT_EVALUATED) {
            assertTrue(outcome.value().isEmpty());
            assertFalse(outcome.toConfirm());
        }
    }
}
