package slopewright.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import slopewright.checks.internal.AidRule;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.SitingException;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** No rule passes a covered aid over in silence: it compares, or says what is missing, or why it does not apply. */
class EveryAidAnsweredTest {
    /** Rules about obstacles and about clearance, which no family may slip past. */
    private static final Set<String> GENERAL = Set.of("OBS-01", "OBS-02", "OBS-03", "OBS-04", "OBS-05", "WHEEL-01", "WHEEL-02",
            "WHEEL-03", "FAM-01", "FAM-02", "FAM-03");

    /** A covered aid of a family at a runway or a helipad. */
    private record Covered(String rules, String family, boolean atHelipad) {
        Sample sample() {
            return atHelipad ? Sample.helipad(rules, family, 6) : Sample.runway(rules, family, made -> {
                made.aid().setTargetEyeHeightM(15.0);
                made.aid().setHeightGroup(3);
            });
        }
    }

    static List<Covered> covered() {
        List<Covered> found = new ArrayList<>();
        for (RuleSet rules : RuleSets.all()) {
            for (IndicatorFamily family : Families.all()) {
                if (rules.covers(family.ruleKey())) {
                    String name = rules.key() + ":" + rules.edition();
                    Stream.of(new Covered(name, family.key(), false), new Covered(name, family.key(), true))
                            .filter(aid -> aid.atHelipad() ? family.atHelipads() : family.atRunways()).filter(EveryAidAnsweredTest::isSited)
                            .forEach(found::add);
                }
            }
        }
        return found;
    }

    /** Some rule sets cover a family at runways alone, which siting says. */
    private static boolean isSited(Covered aid) {
        try {
            aid.sample();
            return true;
        } catch (SitingException e) {
            return false;
        }
    }

    @ParameterizedTest
    @MethodSource("covered")
    void everyRuleAnswersForEveryAid(Covered aid) {
        assertAnswered(aid);
    }

    private static void assertAnswered(Covered aid) {
        Sample sample = aid.sample();
        sample.aid().setLevelAccuracyM(0.002);
        ProjectEvaluation evaluation = ProjectEvaluation.of(sample.project(), Optional.of(aid.rules()));
        AidEvaluation evaluated = evaluation.aids().get(0);
        for (Rule rule : RuleCatalogue.all()) {
            if (rule instanceof AidRule asked && asked.asksAbout(evaluated)) {
                OutcomeCollector outcomes = new OutcomeCollector(rule);
                rule.check(evaluation, outcomes);
                assertFalse(outcomes.outcomes().isEmpty(), rule.id() + " says nothing about " + aid);
            }
            assertTrue(!GENERAL.contains(rule.id()) || rule instanceof AidRule asked && asked.asksAbout(evaluated), rule.id()
                    + " does not ask about " + aid);
        }
    }

    @Test
    void everyFamilyIsThereSomewhere() {
        assertEquals(Families.all().stream().map(IndicatorFamily::key).collect(Collectors.toSet()),
                covered().stream().map(Covered::family).collect(Collectors.toSet()));
    }

    /** Asserts the same for every family that is registered, for a test that registers one more. */
    static void assertAllAnswered() {
        covered().forEach(EveryAidAnsweredTest::assertAnswered);
    }
}
