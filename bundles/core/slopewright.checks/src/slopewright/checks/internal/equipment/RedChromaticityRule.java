package slopewright.checks.internal.equipment;

import slopewright.checks.Measure;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.messages.Argument;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.standards.CitedValue;

/** The red is red enough. Severity fail: a red that drifts towards amber is read as white from afar, and white says that all is well. */
public final class RedChromaticityRule extends EquipmentRule {
    /** Made by the service loader. */
    public RedChromaticityRule() {
        super("EQUIP-03", Severity.FAIL);
    }

    @Override
    CitedValue limit(AidFacts facts) {
        return facts.value("red-chromaticity-y");
    }

    @Override
    Number number(AidFacts facts, EquipmentType type) {
        return type.getRedChromaticityY();
    }

    @Override
    Measure compare(double value, double limit) {
        return Measure.atMost(value, limit, "");
    }

    @Override
    Argument written(double value) {
        return Words.quantity(value, Notation.THOUSANDTHS);
    }
}
