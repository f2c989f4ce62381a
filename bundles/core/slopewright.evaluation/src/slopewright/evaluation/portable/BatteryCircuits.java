package slopewright.evaluation.portable;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import slopewright.evaluation.circuit.CircuitLoad;
import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.evaluation.ProjectRules;
import slopewright.model.BrightnessLevel;
import slopewright.model.Circuit;
import slopewright.model.EquipmentType;
import slopewright.model.LightColour;
import slopewright.model.LightState;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleSet;

/** Reads capacity and load of a battery circuit from the model. */
final class BatteryCircuits {

    private static final double FULL_PERCENT = 100;

    private BatteryCircuits() {
    }

    static BatteryEndurance endurance(Circuit circuit, EquipmentType type, RuleSet rules) {
        List<Message> notes = new ArrayList<>();
        BatteryEndurance.Left left = left(circuit, notes);
        List<Citation> citations = new ArrayList<>();
        CitedValue usualFrom = ProjectRules.common(rules, "portable.supply-from-v");
        CitedValue usualTo = ProjectRules.common(rules, "portable.supply-to-v");
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
        OptionalDouble power = current.isPresent() ? OptionalDouble.empty() : power(circuit, type, notes);
        BatteryEndurance found = BatteryEndurance.of(circuit.getCapacityAh(), current, power, from, to, left, notes, citations);
        List<Double> levels = type == null ? List.of() : type.getBrightnessLevels().stream().map(BrightnessLevel::getPowerPercent)
                .toList();
        return levels.stream().allMatch(percent -> percent != null && percent > 0) ? found.with(levels) : found;
    }

    /** Returns what age and cold leave, and says what was not entered. */
    private static BatteryEndurance.Left left(Circuit circuit, List<Message> notes) {
        Double age = circuit.getAgeLeftPercent();
        Double cold = circuit.getColdLeftPercent();
        if (age == null && cold == null) {
            notes.add(BatteryEndurance.CAPACITY_NOTE);
            return BatteryEndurance.Left.ALL;
        }
        BatteryEndurance.Left left = new BatteryEndurance.Left(age == null ? FULL_PERCENT : age, cold == null ? FULL_PERCENT : cold);
        notes.add(Message.of(age == null ? "battery.age-unknown" : cold == null ? "battery.cold-unknown" : "battery.left",
                Words.percent(left.share() * FULL_PERCENT)));
        return left;
    }

    /**
     * Returns the power of all lamps that burn at a time, watts; empty where it is not known. A lamp counts for the share of time for
     * which it is on only where everything that the unit shows flashes: with one steady sector the lamp burns all the time.
     */
    private static OptionalDouble power(Circuit circuit, EquipmentType type, List<Message> notes) {
        Double all = CircuitLoad.of(circuit).powerW();
        if (all == null && (type == null || type.getLampPowerW() == null)) {
            return OptionalDouble.empty();
        }
        double full = all != null ? all : type.getLampPowerW() * (type.getLampsPerUnit() == null ? 1 : type.getLampsPerUnit());
        if (type != null && type.getFlashOnPercent() != null && isFlashingOnly(type)) {
            notes.add(Message.of("battery.flashing", Words.percent(type.getFlashOnPercent())));
            return OptionalDouble.of(full * type.getFlashOnPercent() / FULL_PERCENT);
        }
        return OptionalDouble.of(full);
    }

    private static boolean isFlashingOnly(EquipmentType type) {
        return !type.getSectors().isEmpty() && type.getSectors().stream().allMatch(sector -> isDarkOrFlashes(sector.getBelowColour(), sector
                .getBelowState()) && isDarkOrFlashes(sector.getAboveColour(), sector.getAboveState()));
    }

    private static boolean isDarkOrFlashes(LightColour colour, LightState state) {
        return colour == LightColour.NONE || state == LightState.FLASHING || state == LightState.PULSATING;
    }

    private static double used(CitedValue value, List<Citation> citations) {
        if (!citations.contains(value.citation())) {
            citations.add(value.citation());
        }
        return value.value();
    }
}
