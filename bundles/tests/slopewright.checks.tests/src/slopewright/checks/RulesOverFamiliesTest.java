package slopewright.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import slopewright.checks.internal.AidRule;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.model.util.Ids;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Meaning;
import slopewright.siting.SeenUnit;
import slopewright.siting.Siting;
import slopewright.siting.SitingRequest;
import slopewright.siting.Trait;
import slopewright.siting.UnitPlan;
import slopewright.siting.UnshiftedDistance;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/**
 * No rule is silent about a covered aid, of whatever family: the registered ones, and one that nobody has heard of, which does all that a
 * row of four does under a name of its own.
 */
class RulesOverFamiliesTest {
    /** A row of four that is registered nowhere; it stands on what a family must say and nothing else. */
    private static final IndicatorFamily TRIAL = new IndicatorFamily() {
        private final IndicatorFamily row = Families.get("four-unit-row");

        @Override
        public String key() {
            return "trial-row";
        }

        @Override
        public String ruleKey() {
            return row.key();
        }

        @Override
        public Set<Trait> traits() {
            return row.traits();
        }

        @Override
        public String name() {
            return "trial row";
        }

        @Override
        public List<Integer> unitCounts() {
            return row.unitCounts();
        }

        @Override
        public boolean atHelipads() {
            return true;
        }

        @Override
        public Siting site(SitingRequest request, RuleSet rules) {
            return row.site(request, rules);
        }

        @Override
        public Siting assess(SitingRequest request, RuleSet rules, List<UnitPlan> units, UnshiftedDistance unshifted) {
            return row.assess(request, rules, units, unshifted);
        }

        @Override
        public Map<String, Meaning> meanings(List<SeenUnit> seen) {
            return row.meanings(seen);
        }
    };

    /** A place with an aid of one family under one rule set. */
    private record Covered(String ruleSet, IndicatorFamily family, boolean atRunway) {
        Sample sample() {
            String shipped = family == TRIAL ? TRIAL.ruleKey() : family.key();
            Sample sample = atRunway ? Sample.runway(ruleSet, shipped, made -> prepare(made, shipped))
                    : Sample.helipad(ruleSet, shipped, 6, Sample::unchanged);
            sample.aid().setFamilyKey(family.key());
            return sample;
        }

        private void prepare(Sample sample, String shipped) {
            if (shipped.startsWith("t-form")) {
                sample.aid().setTargetEyeHeightM(15.0);
            } else if (ruleSet.startsWith("faa")) {
                sample.aid().setHeightGroup(3);
            } else if (!RuleSets.find(ruleSet).orElseThrow().wheelClearance().isPresent()) {
                sample.aid().setTargetEyeHeightM(15.0);
            }
            if (shipped.equals("two-unit-row")) {
                sample.runway().setCodeNumber(2);
            }
        }

        List<Outcome> outcomes(Sample sample) {
            Ids.assign(sample.project());
            Function<String, Optional<IndicatorFamily>> known = key -> key.equals(TRIAL.key()) ? Optional.of(TRIAL) : Families.find(key);
            ProjectEvaluation evaluation = ProjectEvaluation.of(sample.project(), Optional.of(ruleSet), known);
            assertEquals(List.of(true), evaluation.aids().stream().map(AidEvaluation::isCovered).toList(), toString());
            return Checks.run(evaluation, rule -> true).outcomes();
        }

        @Override
        public String toString() {
            return family.key() + " under " + ruleSet + (atRunway ? " at a runway" : " at a helipad");
        }
    }

    static List<Covered> covered() {
        List<Covered> all = new ArrayList<>();
        for (RuleSet rules : RuleSets.all()) {
            Stream.concat(Families.all().stream(), Stream.of(TRIAL)).filter(family -> rules.covers(family.ruleKey())).forEach(family -> {
                String name = rules.key() + ":" + rules.edition();
                if (family.atRunways()) {
                    all.add(new Covered(name, family, true));
                }
                boolean laidOut = !family.has(Trait.ROW) || rules.find("helipad.on-slope-sector-min").isPresent();
                if (family.atHelipads() && laidOut) {
                    all.add(new Covered(name, family, false));
                }
            });
        }
        return all;
    }

    static List<Covered> coveredAtRunways() {
        return covered().stream().filter(Covered::atRunway).toList();
    }

    private static Set<String> about(Sample sample, List<Outcome> outcomes) {
        Set<String> parts = new HashSet<>();
        Ids.elements(sample.aid()).forEach(part -> parts.add(part.getId()));
        Set<String> rules = new TreeSet<>();
        outcomes.stream().filter(outcome -> parts.contains(outcome.elementId())).map(Outcome::rule).forEach(rules::add);
        return rules;
    }

    @ParameterizedTest
    @MethodSource("covered")
    void noRuleIsSilent(Covered covered, TestReporter reporter) {
        Sample sample = covered.sample();
        Set<String> spoke = about(sample, covered.outcomes(sample));
        List<AidRule> concerned = RuleCatalogue.all().stream().filter(AidRule.class::isInstance).map(AidRule.class::cast)
                .filter(rule -> covered.family().traits().containsAll(rule.needs())).toList();
        List<String> general = concerned.stream().filter(rule -> rule.needs().isEmpty()).map(Rule::id).toList();
        assertTrue(general.size() >= 25, general.toString());
        reporter.publishEntry(covered.toString(), "general rules: " + String.join(" ", general.stream().filter(spoke::contains).toList()));
        assertEquals(List.of(), concerned.stream().map(Rule::id).filter(rule -> !spoke.contains(rule)).toList(), "silent rules");
    }

    /** An obstacle and the wheels are never passed over: there is an outcome, or the rule set says why there is none. */
    @ParameterizedTest
    @MethodSource("coveredAtRunways")
    void everyAidAtARunwayIsHeldAgainstObstaclesAndWheels(Covered covered) {
        Sample sample = covered.sample();
        List<Outcome> outcomes = covered.outcomes(sample);
        for (String rule : List.of("OBS-01", "WHEEL-02")) {
            List<Outcome> found = outcomes.stream()
                    .filter(outcome -> outcome.rule().equals(rule) && outcome.elementId().equals(sample.aid().getId()))
                    .toList();
            assertFalse(found.isEmpty(), rule);
            for (Outcome outcome : found) {
                String authority = covered.ruleSet().substring(0, covered.ruleSet().indexOf(':')).toUpperCase(Locale.ROOT);
                assertTrue(outcome.result() != Result.NOT_APPLICABLE || outcome.explanation().english().contains(authority),
                        rule + " names no rule set: " + outcome.explanation());
                assertTrue(outcome.result() != Result.NOT_EVALUATED || !outcome.missing().isEmpty(), rule + ": " + outcome.explanation());
            }
        }
    }

    @Test
    void aFamilyThatNobodyHasHeardOfIsJudgedLikeTheRowThatItIs() {
        Sample row = new Covered("icao:9th", Families.get("four-unit-row"), true).sample();
        row.obstacle("mast", -2060, 0, 180);
        Sample trial = new Covered("icao:9th", TRIAL, true).sample();
        trial.obstacle("mast", -2060, 0, 180);
        List<String> expected = verdicts(new Covered("icao:9th", Families.get("four-unit-row"), true).outcomes(row));
        List<String> found = verdicts(new Covered("icao:9th", TRIAL, true).outcomes(trial));
        assertTrue(expected.contains("OBS-01 FAIL"), expected.toString());
        assertTrue(expected.size() > 60, expected.size() + " outcomes");
        assertEquals(expected, found);
    }

    private static List<String> verdicts(List<Outcome> outcomes) {
        return outcomes.stream().map(outcome -> outcome.rule() + " " + outcome.result()).toList();
    }
}
