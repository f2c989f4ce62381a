package slopewright.checks.internal;

import java.util.List;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.standards.CitedValue;

/** Bars do not stand too far apart. */
public final class BarMostSpacingRule extends AidRule {

    /** Made by the service loader. */
    public BarMostSpacingRule() {
        super("BAR-03", "Bars not too far apart", "Neighbouring bars stand no farther apart than the published distance.", Severity.WARNING,
                BARS);
    }

    @Override
    void check(AidFacts facts, Findings findings) {
        CitedValue most = facts.length("bar-spacing-most");
        List<Double> places = BarSpacings.placesM(facts);
        for (int i = 1; i < places.size(); i++) {
            double spacing = places.get(i) - places.get(i - 1);
            compare(findings, facts.aid(), Measure.atMost(SettingOut.length(spacing, most.value()), most.value(), "m"), most.citation(),
                    "Bar " + (i + 1) + " stands " + Words.m(spacing) + " beyond bar " + i + "; at most " + Words.m(most.value())
                            + " are usual.",
                    "Set the bars closer together.");
        }
    }
}
