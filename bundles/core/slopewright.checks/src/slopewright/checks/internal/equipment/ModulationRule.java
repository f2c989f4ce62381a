package slopewright.checks.internal.equipment;

import slopewright.checks.Measure;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.messages.Argument;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.standards.CitedValue;

/** A flashing sector goes nearly dark in between. Severity fail, as the rate is. */
public final class ModulationRule extends EquipmentRule {
    /** Made by the service loader. */
    public ModulationRule() {
        super("EQUIP-08", Severity.FAIL);
    }

    @Override
    CitedValue limit(AidFacts facts) {
        return facts.value("modulation-percent");
    }

    @Override
    Number number(AidFacts facts, EquipmentType type) {
        return type.getModulationPercent();
    }

    @Override
    Measure compare(double value, double limit) {
        return Measure.atLeast(value, limit, "%");
    }

    @Override
    Argument written(double value) {
        return Words.percent(value);
    }
}
