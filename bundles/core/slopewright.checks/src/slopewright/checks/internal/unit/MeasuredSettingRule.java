package slopewright.checks.internal.unit;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Words;
import slopewright.geometry.Angles;
import slopewright.standards.CitedValue;

/** Units that were measured still point where they were set. */
public final class MeasuredSettingRule extends AidRule {

    /** Made by the service loader. */
    public MeasuredSettingRule() {
        super("UNIT-05", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        List<UnitAt> measured = facts.units().stream()
                .filter(unit -> unit.unit().getMeasured() != null && unit.unit().getMeasured().getSettingDeg() != null).toList();
        CitedValue limit = facts.value("reset-beyond-min");
        if (measured.isEmpty()) {
            findings.notApplicable(facts.aid(), "No measured angle was entered.");
            return;
        }
        for (UnitAt unit : measured) {
            double off = Angles.degToMinutes(Math.abs(unit.unit().getMeasured().getSettingDeg() - unit.settingDeg()));
            compare(findings, unit.unit(), Measure.atMost(off, limit.value(), "min"), limit.citation(),
                    unit.label() + " was measured at " + Words.deg(unit.unit().getMeasured().getSettingDeg()) + ", " + Words.min(off)
                            + " off its setting of "
                            + Words.deg(unit.settingDeg()) + "; " + Words.min(limit.value()) + " are allowed.", "Set it again.");
        }
    }
}
