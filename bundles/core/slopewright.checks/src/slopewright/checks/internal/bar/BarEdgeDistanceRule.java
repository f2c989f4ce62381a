package slopewright.checks.internal.bar;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Worst;
import slopewright.messages.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/**
 * The units nearest to the runway keep their distance from its edge. Severity fail: an aeroplane that leaves the runway strikes a unit
 * that stands nearer.
 */
public final class BarEdgeDistanceRule extends AidRule {

    /** Made by the service loader. */
    public BarEdgeDistanceRule() {
        super("BAR-07", Severity.FAIL, Trait.BARS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue least = facts.length("inner-unit-to-edge");
        double half = facts.halfWidthM();
        Worst<UnitAt> nearest = Worst.of(facts.units(), unit -> Measure.atLeast(Math.abs(unit.rightM()) - half, least.value(), "m"));
        outcomes.about(facts.aid()).measured(nearest.measure()).resting(least)
                .saying("distance", nearest.item().name(), Words.m(nearest.measure().value()), Words.m(least.value()))
                .advising("outward", Words.margin(-nearest.measure().margin()))
                .step("edge-distance", Words.mm(Math.abs(nearest.item().rightM())), Words.mm(half), Words.mm(nearest.measure().value()))
                .add();
    }
}
