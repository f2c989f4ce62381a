package slopewright.checks.internal.bar;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Words;
import slopewright.geometry.Angles;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** Bars stand so far apart that an eye can tell which is red. */
public final class BarLeastSpacingRule extends AidRule {

    /** Made by the service loader. */
    public BarLeastSpacingRule() {
        super("BAR-02", Severity.FAIL, Trait.BARS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        CitedValue least = facts.length("bar-spacing-least");
        CitedValue resolution = facts.angle("resolution");
        List<Double> places = BarSpacings.placesM(facts);
        double slope = facts.laid().slopeDeg();
        for (int i = 1; i < places.size(); i++) {
            double spacing = places.get(i) - places.get(i - 1);
            double range = BarSpacings.splitRangeM(spacing, slope, resolution.value());
            compare(findings, facts.aid(), Measure.atLeast(spacing, least.value(), "m"), least.citation(),
                    "Bar " + (i + 1) + " stands " + Words.m(spacing) + " beyond bar " + i + "; at least " + Words.m(least.value())
                            + " are needed. An eye that splits " + Words.min(Angles.degToMinutes(resolution.value()))
                            + " tells them apart up to "
                            + Words.m(range) + ".", "Set the bars farther apart. The 7 m that popular texts give is no layout of any"
                            + " standard: beyond "
                                    + Words.m(range) + " the bars look as one.");
        }
    }
}
