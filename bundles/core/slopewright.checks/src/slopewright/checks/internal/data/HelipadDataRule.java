package slopewright.checks.internal.data;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Missing;
import slopewright.messages.Message;
import slopewright.model.Helipad;

/** What the rule sets ask of a helipad. A warning: what rests on a missing entry is not evaluated by the rule that needs it. */
public final class HelipadDataRule extends AidRule {
    /** Made by the service loader. */
    public HelipadDataRule() {
        super("DATA-05", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        Helipad pad = facts.helipad();
        Missing missing = new Missing();
        missing.unless(pad.getHoverHeightM() != null, "missing.hover-height");
        missing.unless(pad.getEyeAboveSkidsM() != null, "missing.eye-above-skids");
        missing.unless(pad.getFatoLengthM() != null, "missing.fato-length");
        missing.unless(pad.getSafetyAreaWidthM() != null, "missing.safety-area-width");
        boolean fromDescent = facts.aid().getGroundSpeedKt() != null && facts.aid().getDescentFtmin() != null;
        missing.unless(facts.aid().getSlopeDeg() != null || facts.host().getDesiredSlopeDeg() != null || fromDescent,
                "missing.slope-or-descent");
        missing.report(facts.aid(), outcomes, Message.of("DATA-05.complete"));
    }
}
