package slopewright.checks.internal.range;

import java.util.ArrayList;
import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.siting.range.RangeEstimate;
import slopewright.standards.CitedValue;

/**
 * A light that is too weak guides nobody at the distance at which it should. A warning: the range is an estimate, and a shorter one may be
 * stated.
 */
public final class SeenRangeRule extends AidRule {
    /** Made by the service loader. */
    public SeenRangeRule() {
        super("RANGE-01", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        UsefulRange useful = new UsefulRange(facts);
        List<UsefulRange.Expected> expected = useful.expected();
        RangeEstimate estimate = useful.ofEquipment();
        CitedValue visibility = useful.visibility();
        OutcomeCollector.Entry entry = outcomes.about(facts.aid()).resting(visibility, facts.common("range.contrast-threshold-percent"));
        List<Argument> seen = new ArrayList<>();
        Measure worst = null;
        for (UsefulRange.Expected one : expected) {
            double range = estimate.rangeM(one.condition()).orElseThrow();
            seen.add(Message.of("RANGE-01.seen", Words.km(range), Words.term("light." + one.condition().key()),
                    Words.km(one.range().value())));
            Measure measure = Measure.atLeast(range, one.range().value(), "m");
            worst = worst == null ? measure : Measure.worse(worst, measure);
            entry.resting(one.range(), facts.common("range.eye-illuminance-" + one.condition().key() + "-lx"));
        }
        entry.measured(worst).saying("compared", Words.quantity(estimate.intensityCd().orElseThrow(), Notation.CANDELA),
                Words.km(visibility.value()), Words.list(seen)).advising("stronger").add();
    }
}
