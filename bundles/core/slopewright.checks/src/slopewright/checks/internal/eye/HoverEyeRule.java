package slopewright.checks.internal.eye;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Words;
import slopewright.standards.CitedValue;

/** At a helipad the path passes through the eye at the hover. */
public final class HoverEyeRule extends AidRule {

    /** Made by the service loader. */
    public HoverEyeRule() {
        super("EYE-04", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        if (facts.atRunway()) {
            return;
        }
        CitedValue tolerance = facts.common("siting.eye-height-tolerance-m");
        double wanted = AidFacts.need(facts.helipad().getHoverHeightM(), "hover height")
                + AidFacts.need(facts.helipad().getEyeAboveSkidsM(), "eye height above the skids");
        double height = facts.nominalEyeHeightM();
        compare(findings, facts.aid(), Measure.within(height, wanted, tolerance.value(), "m"),
                tolerance.citation(),
                "The path passes " + Words.m(height) + " over the hover point; the eye is at " + Words.m(wanted) + ", within "
                        + Words.m(tolerance.value()) + ".", "Move the unit " + (height < wanted ? "away from" : "towards")
                        + " the hover point.");
    }
}
