package slopewright.checks.internal;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.geometry.Angles;
import slopewright.siting.Light;
import slopewright.siting.SectorEdge;
import slopewright.siting.UnitPlan;
import slopewright.standards.CitedValue;

/** The sectors of a heliport indicator are as wide as published. */
public final class SectorWidthRule extends AidRule {

    /** Made by the service loader. */
    public SectorWidthRule() {
        super("BOX-03", "Widths of the sectors", "The on-slope and slightly-below sectors are as wide as published, within the accuracy.",
                Severity.FAIL,
                Set.of("heliport-sector"));
    }

    @Override
    void check(AidFacts facts, Findings findings) {
        CitedValue accuracy = facts.value("sector-accuracy-min");
        UnitPlan unit = facts.laid().units().get(0);
        width(facts, findings, unit, Light.GREEN, facts.angle("on-slope-sector"), accuracy);
        width(facts, findings, unit, Light.RED, facts.angle("slightly-below-sector"), accuracy);
    }

    private void width(AidFacts facts, Findings findings, UnitPlan unit, Light light, CitedValue wanted, CitedValue accuracy) {
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
                Findings.weakest(List.of(wanted.citation(), accuracy.citation())), "The " + name + " sector is " + Words.min(minutes)
                        + " wide; "
                        + Words.min(right) + " are wanted, within " + Words.min(accuracy.value()) + ".", "Use a unit with these sectors.");
    }
}
