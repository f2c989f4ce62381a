package slopewright.checks.internal.sector;

import java.util.List;
import java.util.OptionalDouble;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Words;
import slopewright.geometry.Angles;
import slopewright.siting.Light;
import slopewright.siting.SectorEdge;
import slopewright.siting.Trait;
import slopewright.siting.UnitPlan;
import slopewright.standards.CitedValue;

/** The sectors of a heliport indicator are as wide as published. */
public final class SectorWidthRule extends AidRule {

    /** Made by the service loader. */
    public SectorWidthRule() {
        super("BOX-03", Severity.FAIL, Trait.SECTORS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        CitedValue accuracy = facts.value("sector-accuracy-min");
        UnitPlan unit = facts.laid().units().get(0);
        width(facts, findings, unit, Light.GREEN, facts.angle("on-slope-sector"), accuracy);
        width(facts, findings, unit, Light.RED, facts.angle("slightly-below-sector"), accuracy);
    }

    private void width(AidFacts facts, OutcomeCollector findings, UnitPlan unit, Light light, CitedValue wanted, CitedValue accuracy) {
        OptionalDouble from = unit.edges().stream().filter(edge -> edge.above().equals(light))
                .mapToDouble(SectorEdge::angleDeg).findFirst();
        OptionalDouble to = unit.edges().stream().filter(edge -> edge.below().equals(light)).mapToDouble(SectorEdge::angleDeg).findFirst();
        String name = "steady " + light.colour().key();
        if (from.isEmpty() || to.isEmpty()) {
            decide(findings, facts.aid(), false, wanted.citation(), "The unit has no " + name + " sector with two edges.",
                    "Enter its sectors.");
            return;
        }
        double minutes = Angles.degToMinutes(to.getAsDouble() - from.getAsDouble());
        double right = Angles.degToMinutes(wanted.value());
        compare(findings, facts.aid(), Measure.within(minutes, right, accuracy.value(), "min"),
                OutcomeCollector.weakest(List.of(wanted.citation(), accuracy.citation())), "The " + name + " sector is " + Words.min(minutes)
                        + " wide; "
                        + Words.min(right) + " are wanted, within " + Words.min(accuracy.value()) + ".", "Use a unit with these sectors.");
    }
}
