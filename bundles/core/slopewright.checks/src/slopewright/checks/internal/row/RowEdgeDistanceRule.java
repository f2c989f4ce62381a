package slopewright.checks.internal.row;

import java.util.List;
import java.util.Optional;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.messages.Words;
import slopewright.siting.Trait;

/**
 * The unit nearest to the runway keeps its distance from the edge. Severity fail: an aeroplane that leaves the runway strikes a unit
 * that stands nearer.
 */
public final class RowEdgeDistanceRule extends AidRule {

    /** Made by the service loader. */
    public RowEdgeDistanceRule() {
        super("ROW-03", Severity.FAIL, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        facts.end();
        double half = facts.halfWidthM();
        List<RowLayout> layouts = RowLayout.of(facts);
        for (List<UnitAt> side : facts.sides()) {
            UnitAt inner = side.get(0);
            double distance = Math.abs(inner.rightM()) - half;
            RowLayout layout = RowLayout.nearest(layouts, Optional.of(distance), Neighbours.of(side));
            LengthRange range = layout.edge();
            outcomes.about(facts.aid()).measured(range.measure(distance)).citing(range.citations())
                    .saying("distance", inner.name(), Words.m(distance), layout.term(), Words.m(range.leastM()), Words.m(range.mostM()))
                    .advising(distance < range.leastM() ? "outward" : "inward", Words.m(Math.abs(distance - range.usualM())))
                    .step("edge-distance", Words.mm(Math.abs(inner.rightM())), Words.mm(half), Words.mm(distance)).add();
        }
    }
}
