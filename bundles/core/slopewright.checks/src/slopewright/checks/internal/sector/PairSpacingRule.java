package slopewright.checks.internal.sector;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** The units of a pair stand beside each other. Severity fail: side by side they are read together, elsewhere not. */
public final class PairSpacingRule extends AidRule {
    /** Made by the service loader. */
    public PairSpacingRule() {
        super("BOX-06", Severity.FAIL, Trait.PAIR);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue wanted = facts.length("unit-spacing");
        CitedValue printed = facts.length("unit-spacing-printed");
        List<UnitAt> units = facts.units();
        if (units.size() != 2) {
            throw Stop.missing(Message.of("missing.pair"), Message.of("BOX-06.no-pair", Words.count(units.size())));
        }
        double spacing = Math.abs(units.get(0).rightM() - units.get(1).rightM());
        double tolerance = Math.abs(printed.value() - wanted.value());
        outcomes.about(facts.aid()).measured(Measure.within(spacing, wanted.value(), tolerance, "m")).resting(wanted, printed)
                .saying("compared", Words.mFt(spacing), Words.mFt(wanted.value()), Words.m(printed.value()))
                .advising("apart", Words.m(wanted.value())).add();
    }
}
