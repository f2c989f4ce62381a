package slopewright.checks.internal.unit;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Stage;
import slopewright.standards.CitedValue;

/** Units that were measured still point where they were set: one that does not shows another slope. Severity fail for that reason. */
public final class MeasuredSettingRule extends AidRule {
    /** Made by the service loader. */
    public MeasuredSettingRule() {
        super("UNIT-05", Severity.FAIL);
    }

    @Override
    public Stage stage() {
        return Stage.SET_UP;
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue limit = facts.value("reset-beyond-min");
        List<UnitAt> measured = facts.units().stream()
                .filter(unit -> unit.unit().getMeasured() != null && unit.unit().getMeasured().getSettingDeg() != null).toList();
        if (measured.isEmpty()) {
            throw Stop.notApplicable(Message.of("outcome.no-measured-angle"));
        }
        for (UnitAt unit : measured) {
            guarded(unit.unit(), outcomes, () -> {
                double found = unit.unit().getMeasured().getSettingDeg();
                double off = Angles.degToMinutes(Math.abs(found - unit.settingDeg()));
                outcomes.about(unit.unit()).measured(Measure.atMost(off, limit.value(), "min")).resting(limit)
                        .saying("compared", unit.name(), Words.deg(found), Words.min(off), Words.deg(unit.settingDeg()),
                                Words.min(limit.value()))
                        .advising("reset").add();
            });
        }
    }
}
