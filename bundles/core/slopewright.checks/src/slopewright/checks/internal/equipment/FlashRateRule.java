package slopewright.checks.internal.equipment;

import slopewright.checks.Measure;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.messages.Argument;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.standards.CitedValue;

/** A flashing sector flashes quickly enough to be told from a steady one. Severity fail: the two mean different things. */
public final class FlashRateRule extends EquipmentRule {
    /** Made by the service loader. */
    public FlashRateRule() {
        super("EQUIP-06", Severity.FAIL);
    }

    @Override
    CitedValue limit(AidFacts facts) {
        return facts.value("flash-rate-hz");
    }

    @Override
    Number number(AidFacts facts, EquipmentType type) {
        return type.getFlashRateHz();
    }

    @Override
    Measure compare(double value, double limit) {
        return Measure.atLeast(value, limit, "");
    }

    @Override
    Argument written(double value) {
        return Words.quantity(value, Notation.HERTZ);
    }
}
