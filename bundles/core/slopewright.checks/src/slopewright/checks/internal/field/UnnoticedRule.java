package slopewright.checks.internal.field;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.evaluation.portable.SettingAllowance;
import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.messages.Words;

/**
 * By all that goes unnoticed when a portable unit is set up by hand - the accuracy of setting, the bubble, the nearest mark, what is left
 * of a deck - its signal is off by no more than half of its on-slope sector. Where a rule set prints the tilt at which a unit of the family
 * goes out, that decides (BOX-04, EQUIP-05). Severity fail: farther off, an eye on the slope that was planned sees another sector, and an
 * eye that sees on slope flies another slope.
 */
public final class UnnoticedRule extends AidRule {

    /** Made by the service loader. */
    public UnnoticedRule() {
        super("FIELD-07", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        if (!Boolean.TRUE.equals(facts.aid().getPortable())) {
            throw Stop.notApplicable(Message.of("FIELD-05.not-portable"));
        }
        if (facts.find("tilt-switch-off-deg").isPresent()) {
            throw Stop.notApplicable(Message.of("FIELD-07.printed", facts.familyName()));
        }
        double half = Angles.degToMinutes(facts.laid().slopeDeg() - facts.laid().lowestOnSlopeDeg());
        SettingAllowance allowance = SettingAllowance.of(facts.evaluation());
        outcomes.about(facts.aid()).measured(Measure.atMost(allowance.minutes(), half, "min")).resting(allowance.accuracy())
                .citing(allowance.citations())
                .saying("compared", Words.min(allowance.minutes()), Words.min(half), allowance.message()).advising("level").add();
    }
}
