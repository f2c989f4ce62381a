package slopewright.checks.internal.row;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** The unit nearest to the runway keeps its distance from the edge. */
public final class RowEdgeDistanceRule extends AidRule {

    /** Made by the service loader. */
    public RowEdgeDistanceRule() {
        super("ROW-03", Severity.FAIL, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        if (!facts.atRunway()) {
            return;
        }
        double half = facts.halfWidthM();
        RowLayouts layouts = RowLayouts.of(facts);
        for (List<UnitAt> side : facts.sides()) {
            double distance = Math.abs(side.get(0).rightM()) - half;
            RowLayouts.Choice choice = layouts.nearestEdge(distance);
            CitedValue further = facts.length("inner-unit-to-edge-tolerance");
            CitedValue closer = facts.hasLength("inner-unit-to-edge-tolerance-closer")
                    ? facts.length("inner-unit-to-edge-tolerance-closer") : further;
            double wanted = choice.edge().value();
            double least = wanted - closer.value();
            double most = wanted + further.value();
            double value = distance;
            Measure measure = value <= wanted ? Measure.atLeast(value, least, "m") : Measure.atMost(value, most, "m");
            compare(findings, facts.aid(), measure,
                    OutcomeCollector.weakest(List.of(choice.edge().citation(), value <= wanted ? closer.citation() : further.citation())),
                    side.get(0).label() + " stands " + Words.m(distance) + " from the runway edge; " + choice.name() + " is "
                            + Words.m(wanted)
                            + ", " + Words.m(closer.value()) + " closer or " + Words.m(further.value()) + " further.",
                    "Move the row to the side by " + Words.m(Math.abs(distance - wanted)) + (distance < wanted ? " outward." : " inward."));
        }
    }
}
