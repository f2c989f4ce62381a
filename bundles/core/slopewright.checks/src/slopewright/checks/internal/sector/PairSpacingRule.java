package slopewright.checks.internal.sector;

import java.util.List;
import java.util.Set;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** The units of a pair stand beside each other. */
public final class PairSpacingRule extends AidRule {

    /** Made by the service loader. */
    public PairSpacingRule() {
        super("BOX-06", Severity.FAIL, Trait.PAIR);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        CitedValue wanted = facts.length("unit-spacing");
        CitedValue printed = facts.length("unit-spacing-printed");
        List<UnitAt> units = facts.units();
        if (units.size() != 2) {
            throw Stop.missing("pair of units", "Not evaluated: the layout has " + units.size() + " units where 2 are needed.");
        }
        double spacing = Math.abs(units.get(0).rightM() - units.get(1).rightM());
        double tolerance = Math.abs(printed.value() - wanted.value());
        compare(findings, facts.aid(), Measure.within(spacing, wanted.value(), tolerance, "m"),
                wanted.citation(),
                "The units stand " + Words.mFt(spacing) + " apart; about " + Words.mFt(wanted.value()) + " are published, with "
                        + Words.m(printed.value()) + " beside it.", "Set them " + Words.m(wanted.value()) + " apart.");
    }
}
