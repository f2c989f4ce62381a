package slopewright.checks.internal.range;

import java.util.Comparator;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.range.Separation;
import slopewright.standards.CitedValue;

/** Units that run together for the eye show no pattern. A note: what an eye splits is an estimate; the spacing has rules of its own. */
public final class UnitsApartRule extends AidRule {
    /** Made by the service loader. */
    public UnitsApartRule() {
        super("RANGE-02", Severity.NOTE);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        UsefulRange useful = new UsefulRange(facts);
        CitedValue range = useful.expected().stream().map(UsefulRange.Expected::range)
                .max(Comparator.comparingDouble(CitedValue::value)).orElseThrow();
        CitedValue clear = facts.common("range.clear-separation-min");
        CitedValue split = facts.common("range.resolution-min");
        Separation apart = useful.ofLayout().separation()
                .orElseThrow(() -> Stop.notApplicable(Message.of("RANGE-02.none-apart", facts.familyName())));
        outcomes.about(facts.aid()).measured(Measure.atLeast(apart.clearRangeM(), range.value(), "m")).resting(range, clear)
                .step("range-of-gap", Words.m(apart.apparentGapM()), Words.min(clear.value()), Words.m(apart.clearRangeM()))
                .saying("compared", Words.m(apart.apparentGapM()), Words.min(clear.value()), Words.km(apart.clearRangeM()),
                        Words.min(split.value()), Words.km(apart.splitRangeM()), Words.km(range.value()))
                .advising("apart").add();
    }
}
