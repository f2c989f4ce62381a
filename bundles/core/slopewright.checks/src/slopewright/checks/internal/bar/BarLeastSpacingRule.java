package slopewright.checks.internal.bar;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.geometry.Angles;
import slopewright.messages.Argument;
import slopewright.messages.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** Bars stand so far apart that an eye can tell which is red. Severity fail: bars that run together show neither path. */
public final class BarLeastSpacingRule extends AidRule {

    /** Made by the service loader. */
    public BarLeastSpacingRule() {
        super("BAR-02", Severity.FAIL, Trait.BARS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue least = facts.length("bar-spacing-least");
        CitedValue resolution = facts.angle("resolution");
        double slope = facts.slopeDeg();
        for (BarPair pair : BarPair.of(facts)) {
            double range = pair.splitRangeM(slope, resolution.value());
            Argument resolved = Words.min(Angles.degToMinutes(resolution.value()));
            outcomes.about(facts.aid()).measured(Measure.atLeast(pair.spacingM(), least.value(), "m")).resting(least)
                    .saying("spacing", Words.count(pair.far()), Words.m(pair.spacingM()), Words.count(pair.near()), Words.m(least.value()),
                            resolved, Words.m(range))
                    .advising("apart", Words.m(range))
                    .step("split-range", Words.m(pair.spacingM()), Words.deg(slope), resolved, Words.m(range)).add();
        }
    }
}
