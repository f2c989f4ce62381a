package slopewright.checks.internal;

import java.util.List;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.standards.CitedValue;

/** The path brings the helicopter to a hover at the published height. */
public final class HoverHeightRule extends AidRule {

    /** Made by the service loader. */
    public HoverHeightRule() {
        super("BOX-05", "Height of the hover", "The path brings the helicopter to a hover between the published heights over the TLOF.",
                Severity.FAIL,
                BOXES);
    }

    @Override
    void check(AidFacts facts, Findings findings) {
        if (facts.atRunway()) {
            return;
        }
        CitedValue from = facts.common("helipad.hover-height-from-m");
        CitedValue to = facts.common("helipad.hover-height-to-m");
        double eye = AidFacts.need(facts.helipad().getEyeAboveSkidsM(), "eye height above the skids");
        double height = SettingOut.height(SettingOut.height(facts.laid().eyeHeightM() - eye, from.value()), to.value());
        Measure measure = height - from.value() < to.value() - height ? Measure.atLeast(height, from.value(), "m")
                : Measure.atMost(height, to.value(), "m");
        compare(findings, facts.aid(), measure, Findings.weakest(List.of(from.citation(), to.citation())), "The path brings the skids to "
                + Words.mFt(height) + " over the TLOF; " + Words.mFt(from.value()) + " to " + Words.mFt(to.value()) + " are published.",
                "Move the unit along the approach.");
    }
}
