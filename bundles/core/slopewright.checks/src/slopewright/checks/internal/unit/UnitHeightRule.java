package slopewright.checks.internal.unit;

import java.util.Comparator;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Words;
import slopewright.model.EquipmentType;
import slopewright.standards.CitedValue;

/** Units stand low. */
public final class UnitHeightRule extends AidRule {

    /** Made by the service loader. */
    public UnitHeightRule() {
        super("UNIT-02", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        CitedValue limit = facts.length("maximum-height-above-ground");
        EquipmentType type = facts.aid().getEquipment();
        UnitAt worst = facts.units().stream().max(Comparator.comparingDouble(unit -> heightM(unit, type))).orElseThrow();
        double height = heightM(worst, type);
        compare(findings, facts.aid(), Measure.atMost(height, limit.value(), "m"), limit.citation(),
                worst.label() + " rises " + Words.m(height) + " above the ground; " + Words.m(limit.value()) + " are allowed.",
                "Lower it or choose another equipment type.");
    }

    private static double heightM(UnitAt unit, EquipmentType type) {
        Double own = unit.unit().getHeightAboveGroundM();
        return unit.need(own != null || type == null ? own : type.getHeightAboveGroundM(), "height above ground");
    }
}
