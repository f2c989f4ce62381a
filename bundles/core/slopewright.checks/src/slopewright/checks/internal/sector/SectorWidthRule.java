package slopewright.checks.internal.sector;

import java.util.OptionalDouble;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.geometry.Angles;
import slopewright.messages.Argument;
import slopewright.messages.Words;
import slopewright.siting.Light;
import slopewright.siting.SectorEdge;
import slopewright.siting.Trait;
import slopewright.siting.UnitPlan;
import slopewright.standards.CitedValue;

/**
 * The sectors of a heliport indicator are as wide as published: another width shows the slope where it is not. Severity fail for that
 * reason.
 */
public final class SectorWidthRule extends AidRule {
    /** Made by the service loader. */
    public SectorWidthRule() {
        super("BOX-03", Severity.FAIL, Trait.SECTORS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue accuracy = facts.value("sector-accuracy-min");
        UnitPlan unit = facts.laid().units().get(0);
        width(facts, outcomes, unit, Light.GREEN, facts.angle("on-slope-sector"), accuracy);
        width(facts, outcomes, unit, Light.RED, facts.angle("slightly-below-sector"), accuracy);
    }

    private static void width(AidFacts facts, OutcomeCollector outcomes, UnitPlan unit, Light light, CitedValue wanted,
            CitedValue accuracy) {
        OptionalDouble from = unit.edges().stream().filter(edge -> edge.above().equals(light))
                .mapToDouble(SectorEdge::angleDeg).findFirst();
        OptionalDouble to = unit.edges().stream().filter(edge -> edge.below().equals(light)).mapToDouble(SectorEdge::angleDeg).findFirst();
        Argument colour = Words.term("steady." + light.colour().key());
        if (from.isEmpty() || to.isEmpty()) {
            outcomes.about(facts.aid()).met(false).resting(wanted).saying("none", colour).advising("enter").add();
            return;
        }
        double minutes = Angles.degToMinutes(to.getAsDouble() - from.getAsDouble());
        double right = Angles.degToMinutes(wanted.value());
        outcomes.about(facts.aid()).measured(Measure.within(minutes, right, accuracy.value(), "min")).resting(wanted, accuracy)
                .step("sector", Words.deg(to.getAsDouble()), Words.deg(from.getAsDouble()), Words.min(minutes))
                .saying("compared", colour, Words.min(minutes), Words.min(right), Words.min(accuracy.value())).advising("choose").add();
    }
}
