package slopewright.checks.internal.bar;

import java.util.List;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** Farther bars are set higher. */
public final class BarOrderRule extends AidRule {

    /** Made by the service loader. */
    public BarOrderRule() {
        super("BAR-06", Severity.FAIL, Trait.BARS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        List<Double> places = BarSpacings.placesM(facts);
        CitedValue offset = facts.angle("far-offset");
        for (int i = 1; i < places.size(); i++) {
            double before = facts.bar(i).stream().mapToDouble(UnitAt::settingDeg).max().orElseThrow();
            double after = facts.bar(i + 1).stream().mapToDouble(UnitAt::settingDeg).min().orElseThrow();
            decide(findings, facts.aid(), places.get(i) > places.get(i - 1) && after > before, offset.citation(),
                    "Bar " + (i + 1) + " stands at " + Words.m(places.get(i)) + " and is set to " + Words.deg(after) + "; bar " + i
                            + " stands at "
                            + Words.m(places.get(i - 1)) + " and is set to " + Words.deg(before) + ".",
                    "Exchange the bars: a near bar that is red under a far bar that is white is no signal of a healthy system.");
        }
    }
}
