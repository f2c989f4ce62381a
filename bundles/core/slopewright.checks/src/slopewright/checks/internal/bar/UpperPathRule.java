package slopewright.checks.internal.bar;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/**
 * The upper path of three bars lies a step above the lower one. Severity fail: tall aeroplanes follow the upper path, and their wheels
 * hang on it.
 */
public final class UpperPathRule extends AidRule {

    /** Made by the service loader. */
    public UpperPathRule() {
        super("BAR-08", Severity.FAIL, Trait.BARS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        if (facts.indicator().bars().size() < 3) {
            throw Stop.notApplicable(Message.of("BAR-08.one-path"));
        }
        CitedValue step = facts.angle("upper-path-step");
        CitedValue accuracy = facts.value("setting-accuracy-min");
        double middle = facts.bar(2).stream().mapToDouble(UnitAt::settingDeg).average().orElseThrow();
        double far = facts.bar(3).stream().mapToDouble(UnitAt::settingDeg).average().orElseThrow();
        double rise = Angles.degToMinutes(far - middle);
        double wanted = Angles.degToMinutes(step.value());
        outcomes.about(facts.aid()).measured(Measure.within(rise, wanted, accuracy.value(), "min")).resting(step, accuracy)
                .saying("step", Words.min(rise), Words.min(wanted), Words.min(accuracy.value())).advising("correct")
                .step("angle-difference", Words.deg(far), Words.deg(middle), Words.min(rise)).add();
    }
}
