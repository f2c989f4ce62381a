package slopewright.checks.internal.eye;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Helipad;
import slopewright.standards.CitedValue;

/** At a helipad the path passes through the eye at the hover. Severity fail: lower, the helicopter is led into the ground. */
public final class HoverEyeRule extends AidRule {
    /** Made by the service loader. */
    public HoverEyeRule() {
        super("EYE-04", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        Helipad pad = facts.helipad();
        CitedValue tolerance = facts.common("siting.eye-height-tolerance-m");
        double hover = AidFacts.need(pad.getHoverHeightM(), Message.of("missing.hover-height"));
        double above = AidFacts.need(pad.getEyeAboveSkidsM(), Message.of("missing.eye-above-skids"));
        double wanted = hover + above;
        double height = facts.nominalEyeHeightM();
        outcomes.about(facts.aid()).measured(Measure.within(height, wanted, tolerance.value(), "m")).resting(tolerance)
                .step("hover-eye", Words.m(hover), Words.m(above), Words.m(wanted))
                .saying("compared", Words.m(height), Words.m(wanted), Words.m(tolerance.value()))
                .advising(height < wanted ? "move-away" : "move-towards").add();
    }
}
