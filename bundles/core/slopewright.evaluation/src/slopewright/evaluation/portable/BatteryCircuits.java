package slopewright.evaluation.portable;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.Circuit;
import slopewright.model.EquipmentType;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleSet;

/** Reads capacity and load of a battery circuit from the model. */
final class BatteryCircuits {

    private BatteryCircuits() {
    }

    static BatteryEndurance endurance(Circuit circuit, EquipmentType type, RuleSet rules) {
        List<Message> notes = new ArrayList<>(List.of(BatteryEndurance.CAPACITY_NOTE));
        List<Citation> citations = new ArrayList<>();
        CitedValue usualFrom = SightLines.common(rules, "portable.supply-from-v");
        CitedValue usualTo = SightLines.common(rules, "portable.supply-to-v");
        double from = type == null || type.getMinVoltageV() == null ? used(usualFrom, citations) : type.getMinVoltageV();
        double to = type == null || type.getMaxVoltageV() == null ? used(usualTo, citations) : type.getMaxVoltageV();
        if (from > usualFrom.value() || to < usualTo.value()) {
            notes.add(Message.of("battery.other-supply", Words.quantity(from, Notation.VOLTS), Words.quantity(to, Notation.VOLTS),
                    Words.quantity(usualFrom.value(), Notation.VOLTS), Words.quantity(usualTo.value(), Notation.VOLTS),
                    Words.term("provenance." + usualFrom.citation().provenance().key())));
            used(usualFrom, citations);
            used(usualTo, citations);
        }
        OptionalDouble current = circuit.getCurrentA() == null ? OptionalDouble.empty() : OptionalDouble.of(circuit.getCurrentA());
        OptionalDouble power = OptionalDouble.empty();
        if (type != null && type.getLampPowerW() != null) {
            power = OptionalDouble.of(type.getLampPowerW() * (type.getLampsPerUnit() == null ? 1 : type.getLampsPerUnit()));
        }
        return BatteryEndurance.of(circuit.getCapacityAh(), current, power, from, to, notes, citations);
    }

    private static double used(CitedValue value, List<Citation> citations) {
        if (!citations.contains(value.citation())) {
            citations.add(value.citation());
        }
        return value.value();
    }
}
