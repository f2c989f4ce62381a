package slopewright.checks.internal.bar;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.messages.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/**
 * The near bar stands in the usual range of distances. A warning: the range is usual and no limit; what it does to the eye height has
 * rules of its own.
 */
public final class NearBarRule extends AidRule {

    /** Made by the service loader. */
    public NearBarRule() {
        super("BAR-04", Severity.WARNING, Trait.BARS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue from = facts.length("near-bar-from");
        CitedValue to = facts.length("near-bar-to");
        double near = facts.barAlongM(1);
        outcomes.about(facts.aid()).measured(Measure.between(near, from.value(), to.value(), "m")).resting(from, to)
                .saying("place", Words.m(near), Words.m(from.value()), Words.m(to.value())).advising("move").add();
    }
}
