package slopewright.checks.internal.sector;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Helipad;
import slopewright.standards.CitedValue;

/**
 * The path brings the helicopter to a hover at the published height: lower it strikes, higher it hovers without ground effect. Severity
 * fail for that reason.
 */
public final class HoverHeightRule extends AidRule {
    /** Made by the service loader. */
    public HoverHeightRule() {
        super("BOX-05", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        Helipad pad = facts.helipad();
        CitedValue from = facts.common("helipad.hover-height-from-m");
        CitedValue to = facts.common("helipad.hover-height-to-m");
        double above = AidFacts.need(pad.getEyeAboveSkidsM(), Message.of("missing.eye-above-skids"));
        double eye = facts.nominalEyeHeightM();
        double height = eye - above;
        outcomes.about(facts.aid()).measured(Measure.between(height, from.value(), to.value(), "m")).resting(from, to)
                .step("skids", Words.m(eye), Words.m(above), Words.m(height))
                .saying("compared", Words.mFt(height), Words.mFt(from.value()), Words.mFt(to.value())).advising("move").add();
    }
}
