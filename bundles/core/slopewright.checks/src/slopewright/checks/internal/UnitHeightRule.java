package slopewright.checks.internal;

import java.util.Comparator;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.model.EquipmentType;
import slopewright.standards.CitedValue;

/** Units stand low. */
public final class UnitHeightRule extends AidRule {

    /** Made by the service loader. */
    public UnitHeightRule() {
        super("UNIT-02", "Height of the units above ground", "No unit rises higher above the ground than the rule set allows.",
                Severity.FAIL, ALL);
    }

    @Override
    void check(AidFacts facts, Findings findings) {
        CitedValue limit = facts.length("maximum-height-above-ground");
        EquipmentType type = facts.aid().getEquipment();
        UnitAt worst = facts.units().stream().max(Comparator.comparingDouble(unit -> heightM(unit, type))).orElseThrow();
        double height = heightM(worst, type);
        compare(findings, facts.aid(), Measure.atMost(SettingOut.length(height, limit.value()), limit.value(), "m"), limit.citation(),
                worst.label() + " rises " + Words.m(height) + " above the ground; " + Words.m(limit.value()) + " are allowed.",
                "Lower it or choose another equipment type.");
    }

    private static double heightM(UnitAt unit, EquipmentType type) {
        Double own = unit.unit().getHeightAboveGroundM();
        return unit.need(own != null || type == null ? own : type.getHeightAboveGroundM(), "height above ground");
    }
}
