package slopewright.checks.internal;

import java.util.List;

import slopewright.checks.Findings;
import slopewright.checks.Severity;
import slopewright.standards.CitedValue;

/** Farther bars are set higher. */
public final class BarOrderRule extends AidRule {

    /** Made by the service loader. */
    public BarOrderRule() {
        super("BAR-06", "Order of the bars",
                "Each bar stands beyond and is set higher than the one before it, so that red shows above white on the path.",
                Severity.FAIL, BARS);
    }

    @Override
    void check(AidFacts facts, Findings findings) {
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
