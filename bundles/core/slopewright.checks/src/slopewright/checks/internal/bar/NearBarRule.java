package slopewright.checks.internal.bar;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** The near bar stands in the usual range of distances. */
public final class NearBarRule extends AidRule {

    /** Made by the service loader. */
    public NearBarRule() {
        super("BAR-04", Severity.WARNING, Trait.BARS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        CitedValue from = facts.length("near-bar-from");
        CitedValue to = facts.length("near-bar-to");
        double near = facts.barAlongM(1);
        Measure measure = near - from.value() < to.value() - near ? Measure.atLeast(near, from.value(), "m")
                : Measure.atMost(near, to.value(), "m");
        compare(findings, facts.aid(), measure, OutcomeCollector.weakest(List.of(from.citation(), to.citation())),
                "The near bar stands " + Words.m(near) + " from the threshold; " + Words.m(from.value()) + " to " + Words.m(to.value())
                        + " are usual.",
                "Move it, or choose an eye height that puts it there.");
    }
}
