package slopewright.checks.internal.obstacle;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.standards.CitedValue;

/**
 * The axis may be turned a little to keep clear of obstacles. Where a rule set gives no limit, nobody can tell whether a turned axis is
 * allowed. Severity fail: a pilot on the centre line may be outside a beam that is turned farther.
 */
public final class AxisTurnRule extends AidRule {

    /** Made by the service loader. */
    public AxisTurnRule() {
        super("OBS-02", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        Double turn = facts.aid().getAxisTurnDeg();
        if (turn == null || turn == 0) {
            throw Stop.notApplicable(Message.of("OBS-02.not-turned"));
        }
        CitedValue limit = facts.rules().find("obstacle.axis-turn-limit-deg").orElseThrow(() -> Stop.missing(
                Message.of("missing.axis-turn-limit"), Message.of("OBS-02.no-limit", Words.degrees(Math.abs(turn)),
                        facts.rules().descriptor().name(), Words.name(facts.rules().edition()))));
        outcomes.about(facts.aid()).measured(Measure.atMost(Math.abs(turn), limit.value(), "deg")).resting(limit)
                .saying("turned", Words.degrees(Math.abs(turn)), Words.degrees(limit.value())).advising("less").add();
    }
}
