package slopewright.checks.internal;

import java.util.List;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.standards.CitedValue;

/** The near bar stands in the usual range of distances. */
public final class NearBarRule extends AidRule {

    /** Made by the service loader. */
    public NearBarRule() {
        super("BAR-04", "Place of the near bar", "The near bar stands within the published range of distances from the threshold.",
                Severity.WARNING,
                BARS);
    }

    @Override
    void check(AidFacts facts, Findings findings) {
        CitedValue from = facts.length("near-bar-from");
        CitedValue to = facts.length("near-bar-to");
        double near = SettingOut.length(SettingOut.length(facts.barAlongM(1), from.value()), to.value());
        Measure measure = near - from.value() < to.value() - near ? Measure.atLeast(near, from.value(), "m")
                : Measure.atMost(near, to.value(), "m");
        compare(findings, facts.aid(), measure, Findings.weakest(List.of(from.citation(), to.citation())),
                "The near bar stands " + Words.m(near) + " from the threshold; " + Words.m(from.value()) + " to " + Words.m(to.value())
                        + " are usual.",
                "Move it, or choose an eye height that puts it there.");
    }
}
