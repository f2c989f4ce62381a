package slopewright.checks.internal.bar;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.messages.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** Bars do not stand too far apart. A warning: the corridor grows wider, and both of its edges stay true. */
public final class BarMostSpacingRule extends AidRule {

    /** Made by the service loader. */
    public BarMostSpacingRule() {
        super("BAR-03", Severity.WARNING, Trait.BARS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue most = facts.length("bar-spacing-most");
        for (BarPair pair : BarPair.of(facts)) {
            outcomes.about(facts.aid()).measured(Measure.atMost(pair.spacingM(), most.value(), "m")).resting(most)
                    .saying("spacing", Words.count(pair.far()), Words.m(pair.spacingM()), Words.count(pair.near()), Words.m(most.value()))
                    .advising("closer").add();
        }
    }
}
