package slopewright.checks.internal;

import java.util.List;
import java.util.Set;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.standards.CitedValue;

/** The units of a pair stand beside each other. */
public final class PairSpacingRule extends AidRule {

    /** Made by the service loader. */
    public PairSpacingRule() {
        super("BOX-06", "Spacing of the pair",
                "The two units stand apart by the published distance, within the difference of the two figures that the text prints for"
                + " it.", Severity.FAIL,
                Set.of("heliport-pair"));
    }

    @Override
    void check(AidFacts facts, Findings findings) {
        CitedValue wanted = facts.length("unit-spacing");
        CitedValue printed = facts.length("unit-spacing-printed");
        List<UnitAt> units = facts.units();
        if (units.size() != 2) {
            throw Stop.missing("pair of units", "Not evaluated: the layout has " + units.size() + " units where 2 are needed.");
        }
        double spacing = Math.abs(units.get(0).rightM() - units.get(1).rightM());
        double tolerance = Math.abs(printed.value() - wanted.value());
        compare(findings, facts.aid(), Measure.within(SettingOut.length(spacing, wanted.value()), wanted.value(), tolerance, "m"),
                wanted.citation(),
                "The units stand " + Words.mFt(spacing) + " apart; about " + Words.mFt(wanted.value()) + " are published, with "
                        + Words.m(printed.value()) + " beside it.", "Set them " + Words.m(wanted.value()) + " apart.");
    }
}
