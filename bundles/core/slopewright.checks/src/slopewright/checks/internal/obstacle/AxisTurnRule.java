package slopewright.checks.internal.obstacle;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Words;
import slopewright.standards.CitedValue;

/** The axis may be turned a little to keep clear of obstacles. */
public final class AxisTurnRule extends AidRule {

    /** Made by the service loader. */
    public AxisTurnRule() {
        super("OBS-02", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
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
