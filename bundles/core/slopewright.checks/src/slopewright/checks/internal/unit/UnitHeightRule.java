package slopewright.checks.internal.unit;

import java.util.Comparator;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.standards.CitedValue;

/** Units stand low: they are obstacles themselves. Severity fail: an aeroplane strikes one that stands higher. */
public final class UnitHeightRule extends AidRule {
    /** Made by the service loader. */
    public UnitHeightRule() {
        super("UNIT-02", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue limit = facts.length("maximum-height-above-ground");
        EquipmentType type = facts.aid().getEquipment();
        UnitAt worst = facts.units().stream().max(Comparator.comparingDouble(unit -> heightM(unit, type))).orElseThrow();
        double height = heightM(worst, type);
        outcomes.about(facts.aid()).measured(Measure.atMost(height, limit.value(), "m")).resting(limit)
                .saying("compared", worst.name(), Words.m(height), Words.m(limit.value())).advising("lower").add();
    }

    private static double heightM(UnitAt unit, EquipmentType type) {
        Double own = unit.unit().getHeightAboveGroundM();
        return UnitAt.need(own != null || type == null ? own : type.getHeightAboveGroundM(),
                Message.of("missing.unit-height", unit.name()));
    }
}
