package slopewright.checks.internal.sector;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.evaluation.portable.SettingAllowance;
import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/**
 * A unit that shows the whole signal by itself is set to the slope of its indicator, as exactly as it is set: five minutes of arc (Annex 14
 * Vol II, 5.3.6.8-21), where a rule set prints nothing for a family. Severity fail: another setting is another slope.
 */
public final class SectorSettingRule extends AidRule {
    /** Made by the service loader. */
    public SectorSettingRule() {
        super("BOX-10", Severity.FAIL, Trait.SECTORS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        if (facts.indicator().has(Trait.PAIR)) {
            throw Stop.notApplicable(Message.of("BOX-10.pair"));
        }
        double slope = facts.laid().slopeDeg();
        CitedValue accuracy = SettingAllowance.of(facts.evaluation()).accuracy();
        for (UnitAt unit : facts.units()) {
            guarded(unit.unit(), outcomes, () -> compare(unit, slope, accuracy, outcomes));
        }
    }

    private static void compare(UnitAt unit, double slopeDeg, CitedValue accuracy, OutcomeCollector outcomes) {
        double offMin = Angles.degToMinutes(Math.abs(unit.settingDeg() - slopeDeg));
        outcomes.about(unit.unit()).measured(Measure.atMost(offMin, accuracy.value(), "min")).resting(accuracy)
                .saying("setting", unit.name(), Words.deg(unit.settingDeg()), Words.deg(slopeDeg), Words.min(accuracy.value()))
                .advising("set", Words.deg(slopeDeg)).add();
    }
}
