package slopewright.checks.internal.sector;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Words;
import slopewright.standards.CitedValue;

/** The path brings the helicopter to a hover at the published height. */
public final class HoverHeightRule extends AidRule {

    /** Made by the service loader. */
    public HoverHeightRule() {
        super("BOX-05", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        if (facts.atRunway()) {
            return;
        }
        CitedValue from = facts.common("helipad.hover-height-from-m");
        CitedValue to = facts.common("helipad.hover-height-to-m");
        double eye = AidFacts.need(facts.helipad().getEyeAboveSkidsM(), "eye height above the skids");
        double height = facts.nominalEyeHeightM() - eye;
        Measure measure = height - from.value() < to.value() - height ? Measure.atLeast(height, from.value(), "m")
                : Measure.atMost(height, to.value(), "m");
        compare(findings, facts.aid(), measure, OutcomeCollector.weakest(List.of(from.citation(), to.citation())), "The path brings the skids to "
                + Words.mFt(height) + " over the TLOF; " + Words.mFt(from.value()) + " to " + Words.mFt(to.value()) + " are published.",
                "Move the unit along the approach.");
    }
}
