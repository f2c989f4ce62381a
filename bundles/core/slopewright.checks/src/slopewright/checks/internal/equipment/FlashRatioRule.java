package slopewright.checks.internal.equipment;

import slopewright.checks.Measure;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.messages.Argument;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.standards.CitedValue;

/** A flashing sector is on as long as it is off. Severity fail, as the rate is: a sector that is nearly always on is read as steady. */
public final class FlashRatioRule extends EquipmentRule {
    /** Made by the service loader. */
    public FlashRatioRule() {
        super("EQUIP-07", Severity.FAIL);
    }

    @Override
    CitedValue limit(AidFacts facts) {
        return facts.value("flash-on-percent");
    }

    @Override
    Number number(AidFacts facts, EquipmentType type) {
        return type.getFlashOnPercent();
    }

    @Override
    Measure compare(double value, double limit) {
        return Measure.within(value, limit, 0, "%");
    }

    @Override
    Argument written(double value) {
        return Words.percent(value);
    }
}
