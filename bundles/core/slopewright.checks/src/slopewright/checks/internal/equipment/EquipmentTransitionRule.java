package slopewright.checks.internal.equipment;

import slopewright.checks.Measure;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.messages.Argument;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.standards.CitedValue;

/**
 * The change from one colour to the next is as sharp as the rule set wants it, in the unit itself. Severity fail: a blurred change is a
 * band in which the signal says nothing.
 */
public final class EquipmentTransitionRule extends EquipmentRule {
    /** Made by the service loader. */
    public EquipmentTransitionRule() {
        super("EQUIP-09", Severity.FAIL);
    }

    @Override
    CitedValue limit(AidFacts facts) {
        return facts.value("transition-width-min");
    }

    @Override
    Number number(AidFacts facts, EquipmentType type) {
        return type.getTransitionMinutes();
    }

    @Override
    Measure compare(double value, double limit) {
        return Measure.atMost(value, limit, "min");
    }

    @Override
    Argument written(double value) {
        return Words.min(value);
    }
}
