package slopewright.checks.internal;

import java.util.List;
import java.util.Set;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.geometry.Angles;
import slopewright.standards.CitedValue;

/** The upper path of three bars lies a step above the lower one. */
public final class UpperPathRule extends AidRule {

    /** Made by the service loader. */
    public UpperPathRule() {
        super("BAR-08", "Step to the upper path",
                "The upper path of three bars lies above the lower one by the published step, within the accuracy.",
                Severity.FAIL, Set.of("three-bar"));
    }

    @Override
    void check(AidFacts facts, Findings findings) {
        CitedValue step = facts.angle("upper-path-step");
        CitedValue accuracy = facts.value("setting-accuracy-min");
        double middle = facts.bar(2).stream().mapToDouble(UnitAt::settingDeg).average().orElseThrow();
        double far = facts.bar(3).stream().mapToDouble(UnitAt::settingDeg).average().orElseThrow();
        double value = Angles.degToMinutes(far - middle);
        double wanted = Angles.degToMinutes(step.value());
        compare(findings, facts.aid(), Measure.within(value, wanted, accuracy.value(), "min"),
                Findings.weakest(List.of(step.citation(), accuracy.citation())), "The far bar is set " + Words.min(value)
                        + " above the middle bar; "
                        + Words.min(wanted) + " are wanted, within " + Words.min(accuracy.value()) + ".", "Correct the settings.");
    }
}
