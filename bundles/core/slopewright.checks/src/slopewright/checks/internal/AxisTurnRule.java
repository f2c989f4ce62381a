package slopewright.checks.internal;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.standards.CitedValue;

/** The axis may be turned a little to keep clear of obstacles. */
public final class AxisTurnRule extends AidRule {

    /** Made by the service loader. */
    public AxisTurnRule() {
        super("OBS-02", "Turn of the axis",
                "The axis of the indicator and its surface is turned from the centre line by no more than the limit.",
                Severity.FAIL, ALL);
    }

    @Override
    void check(AidFacts facts, Findings findings) {
        Double turn = facts.aid().getAxisTurnDeg();
        if (turn == null || turn == 0) {
            findings.notApplicable(facts.aid(), "The axis is not turned.");
            return;
        }
        CitedValue limit = facts.common("obstacle.axis-turn-limit-deg");
        compare(findings, facts.aid(), Measure.atMost(Math.abs(turn), limit.value(), "deg"), limit.citation(),
                "The axis is turned by " + Words.degrees(Math.abs(turn)) + "; " + Words.degrees(limit.value()) + " are allowed.",
                "Turn it less and cure the obstacle in another way.");
    }
}
