package slopewright.checks.internal.data;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Missing;
import slopewright.model.Helipad;

/** What the rule sets ask of a helipad. */
public final class HelipadDataRule extends AidRule {

    /** Made by the service loader. */
    public HelipadDataRule() {
        super("DATA-05", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        if (facts.atRunway()) {
            return;
        }
        Helipad pad = facts.helipad();
        Missing missing = new Missing();
        missing.unless(pad.getHoverHeightM() != null, "hover height");
        missing.unless(pad.getEyeAboveSkidsM() != null, "eye height above the skids");
        missing.unless(pad.getFatoLengthM() != null, "FATO length");
        missing.unless(pad.getSafetyAreaWidthM() != null, "safety area width");
        boolean fromDescent = facts.aid().getGroundSpeedKt() != null && facts.aid().getDescentFtmin() != null;
        missing.unless(facts.aid().getSlopeDeg() != null || facts.host().getDesiredSlopeDeg() != null || fromDescent,
                "approach slope, or ground speed and rate of descent");
        Missing.report(findings, facts.aid(), missing.names(), "Hover height, eye height, FATO, safety area and slope are known.");
    }
}
