package slopewright.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

import slopewright.checks.Workings.Kind;
import slopewright.checks.Workings.Step;
import slopewright.checks.compare.ProjectDifference;
import slopewright.model.Project;

/** Formulas with their numbers put in, checked by doing the sum again, and the difference between two versions. */
class WorkingsTest {

    private static Outcome outcome(double value, double limit, double margin, String unit) {
        return new Outcome("WHEEL-01", "Wheels", "x", "x", Verdict.PASS, Severity.FAIL, OptionalDouble.of(value), OptionalDouble.of(limit),
                OptionalDouble.of(margin), unit, List.of(), Optional.empty(), false, "");
    }

    /** 4.71 - 4 = 0.71 and 4 - 4.71 = -0.71. */
    @Test
    void theMarginIsWrittenAsADifference() {
        assertEquals("Margin = value \u2212 least = 4.71 m \u2212 4.00 m = +0.71 m",
                Workings.margin(outcome(4.71, 4, 4.71 - 4, "m")).orElseThrow().text());
        assertEquals("Margin = limit \u2212 value = 4.00 m \u2212 4.71 m = -0.71 m",
                Workings.margin(outcome(4.71, 4, 4 - 4.71, "m")).orElseThrow().text());
        assertEquals("Margin = limit \u2212 value = 1.00\u2032 \u2212 6.00\u2032 = -5.00\u2032",
                Workings.margin(outcome(6, 1, -5, "min")).orElseThrow().text());
    }

    /** A margin that is no difference of value and limit, as of a value that must lie in a range, gets no formula. */
    @Test
    void aMarginThatIsNoDifferenceGetsNoFormula() {
        assertTrue(Workings.margin(outcome(6, 1, 0.3, "m")).isEmpty());
    }

    /** Every formula must give what it says it gives: the sum is done again from the printed numbers. */
    @Test
    void everyFormulaGivesItsResult() {
        Sample sample = Bases.row();
        sample.obstacle("mast", -2060, 0, 160);
        Project project = sample.project();
        List<Outcome> outcomes = Checks.run(project, Optional.empty()).outcomes();
        List<Step> steps = outcomes.stream().flatMap(one -> Workings.of(one, project).stream()).toList();
        for (Kind kind : Kind.values()) {
            assertTrue(steps.stream().anyMatch(step -> step.kind() == kind), kind + " is used");
        }
        for (Step step : steps) {
            List<Double> numbers = step.numbers().stream().map(WorkingsTest::number).toList();
            double result = switch (step.kind()) {
                case EYE_HEIGHT, SURFACE_HEIGHT -> numbers.get(0) + numbers.get(1) * Math.tan(Math.toRadians(numbers.get(2)));
                case WHEEL_CLEARANCE, MARGIN_AT_LEAST, MARGIN_AT_MOST -> numbers.get(0) - numbers.get(1);
            };
            double tolerance = step.kind() == Kind.SURFACE_HEIGHT ? 0.35 : step.kind() == Kind.EYE_HEIGHT ? 0.06 : 0.0101;
            assertEquals(numbers.get(numbers.size() - 1), result, tolerance, step.text());
        }
    }

    /** The rounding of an angle to a hundredth of a minute moves the product at 2 km by up to 0.3 m. */
    private static double number(String text) {
        if (text.contains("\u00b0") && text.contains("'")) {
            String[] parts = text.split("[\u00b0']");
            return Double.parseDouble(parts[0]) + Double.parseDouble(parts[1]) / 60;
        }
        return Double.parseDouble(text.replaceAll("[^0-9.+-].*", ""));
    }

    @Test
    void anOutcomeWithoutNumbersHasNoWorkings() {
        Project project = Bases.row().project();
        Outcome bare = new Outcome("DATA-06", "Family", "x", "x", Verdict.FAIL, Severity.FAIL, OptionalDouble.empty(),
                OptionalDouble.empty(), OptionalDouble.empty(), "", List.of(), Optional.empty(), false, "");
        assertTrue(Workings.of(bare, project).isEmpty());
    }

    /** An aid that moves by 40 m changes one distance by 40 m and nothing of the ids. */
    @Test
    void aDifferenceNamesWhatChangedAndWhatItDid() {
        Sample sample = Bases.row();
        Project older = sample.project();
        Project newer = EcoreUtil.copy(older);
        assertTrue(new ProjectDifference(older, newer).changes().isEmpty());
        assertTrue(new ProjectDifference(older, newer).outcomeChanges().isEmpty());
        sample.aid().getUnits().forEach(unit -> unit.setAlongM(unit.getAlongM() - 40));
        ProjectDifference difference = new ProjectDifference(newer, older);
        assertEquals(sample.aid().getUnits().size(), difference.changes().size());
        assertTrue(difference.changes().stream().allMatch(one -> one.kind().equals("changed") && one.attribute().equals("alongM")));
        var distance = difference.resultChanges().stream().filter(one -> one.quantity().equals("distanceM")).findFirst().orElseThrow();
        assertEquals(-40, distance.after().getAsDouble() - distance.before().getAsDouble(), 1e-6);
        assertFalse(difference.outcomeChanges().isEmpty(), "the eye passes lower over the threshold");
    }
}
