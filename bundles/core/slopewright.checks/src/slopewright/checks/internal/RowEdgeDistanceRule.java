package slopewright.checks.internal;

import java.util.List;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.standards.CitedValue;

/** The unit nearest to the runway keeps its distance from the edge. */
public final class RowEdgeDistanceRule extends AidRule {

    /** Made by the service loader. */
    public RowEdgeDistanceRule() {
        super("ROW-03", "Inner unit to runway edge",
                "The distance of the inner unit from the runway edge is that of the rule set, within its tolerance, on each side.",
                Severity.FAIL, ROWS);
    }

    @Override
    void check(AidFacts facts, Findings findings) {
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
            double value = SettingOut.length(SettingOut.length(distance, least), most);
            Measure measure = value <= wanted ? Measure.atLeast(value, least, "m") : Measure.atMost(value, most, "m");
            compare(findings, facts.aid(), measure,
                    Findings.weakest(List.of(choice.edge().citation(), value <= wanted ? closer.citation() : further.citation())),
                    side.get(0).label() + " stands " + Words.m(distance) + " from the runway edge; " + choice.name() + " is "
                            + Words.m(wanted)
                            + ", " + Words.m(closer.value()) + " closer or " + Words.m(further.value()) + " further.",
                    "Move the row to the side by " + Words.m(Math.abs(distance - wanted)) + (distance < wanted ? " outward." : " inward."));
        }
    }
}
