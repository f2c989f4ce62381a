package slopewright.checks.internal.bar;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** Bars do not stand too far apart. */
public final class BarMostSpacingRule extends AidRule {

    /** Made by the service loader. */
    public BarMostSpacingRule() {
        super("BAR-03", Severity.WARNING, Trait.BARS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        CitedValue most = facts.length("bar-spacing-most");
        List<Double> places = BarSpacings.placesM(facts);
        for (int i = 1; i < places.size(); i++) {
            double spacing = places.get(i) - places.get(i - 1);
            compare(findings, facts.aid(), Measure.atMost(spacing, most.value(), "m"), most.citation(),
                    "Bar " + (i + 1) + " stands " + Words.m(spacing) + " beyond bar " + i + "; at most " + Words.m(most.value())
                            + " are usual.",
                    "Set the bars closer together.");
        }
    }
}
