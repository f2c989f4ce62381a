package slopewright.checks.internal.bar;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Words;
import slopewright.geometry.Angles;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** The upper path of three bars lies a step above the lower one. */
public final class UpperPathRule extends AidRule {

    /** Made by the service loader. */
    public UpperPathRule() {
        super("BAR-08", Severity.FAIL, Trait.BARS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        CitedValue step = facts.angle("upper-path-step");
        CitedValue accuracy = facts.value("setting-accuracy-min");
        double middle = facts.bar(2).stream().mapToDouble(UnitAt::settingDeg).average().orElseThrow();
        double far = facts.bar(3).stream().mapToDouble(UnitAt::settingDeg).average().orElseThrow();
        double value = Angles.degToMinutes(far - middle);
        double wanted = Angles.degToMinutes(step.value());
        compare(findings, facts.aid(), Measure.within(value, wanted, accuracy.value(), "min"),
                OutcomeCollector.weakest(List.of(step.citation(), accuracy.citation())), "The far bar is set " + Words.min(value)
                        + " above the middle bar; "
                        + Words.min(wanted) + " are wanted, within " + Words.min(accuracy.value()) + ".", "Correct the settings.");
    }
}
