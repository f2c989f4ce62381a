package slopewright.checks.internal.equipment;

import java.util.Objects;

import slopewright.checks.Measure;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.messages.Argument;
import slopewright.messages.Words;
import slopewright.model.Circuit;
import slopewright.model.EquipmentType;
import slopewright.standards.CitedValue;

/**
 * The brightness can be controlled: the unit, or else the circuit that feeds it, has more than one step. A warning: a dazzling unit
 * still shows the right colour.
 */
public final class BrightnessControlRule extends EquipmentRule {
    /** Made by the service loader. */
    public BrightnessControlRule() {
        super("EQUIP-04", Severity.WARNING);
    }

    @Override
    CitedValue limit(AidFacts facts) {
        return facts.value("brightness-steps");
    }

    @Override
    Number number(AidFacts facts, EquipmentType type) {
        return type.getBrightnessSteps() != null ? type.getBrightnessSteps() : facts.evaluation().project().getAerodrome().getCircuits()
                .stream().filter(circuit -> circuit.getAids().contains(facts.aid())).map(Circuit::getBrightnessSteps)
                .filter(Objects::nonNull).min(Integer::compare).orElse(null);
    }

    @Override
    Measure compare(double value, double limit) {
        return Measure.atLeast(value, limit, "");
    }

    @Override
    Argument written(double value) {
        return Words.count(Math.round(value));
    }
}
