package slopewright.evaluation.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

import slopewright.evaluation.Attempt;
import slopewright.evaluation.FamilyEquipment;
import slopewright.evaluation.portable.BatteryEndurance;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.Circuit;
import slopewright.model.EquipmentType;
import slopewright.model.Project;
import slopewright.siting.ElementNames;
import slopewright.siting.IndicatorFamily;
import slopewright.standards.RuleSet;

/**
 * What a family needs to run, from the equipment and the circuits that the project holds for it. What nobody entered stays unknown.
 *
 * @param leastUnits      the least number of units that the family comes in
 * @param usualUnits      the usual number of units
 * @param lampPowerW      power of one lamp, watts; empty where it is not known
 * @param loadW           power of all lamps of the layout, watts, regulators and cables left out; empty where it is not known
 * @param supply          what feeds it, as it was entered; empty where it is not known, or nothing has to
 * @param brightnessSteps steps of brightness of its circuit; empty where they are not known
 * @param battery         how long the battery of its circuit lasts; empty where there is none
 * @param notes           which equipment and circuit were taken, and what is not known
 */
public record OperationalContext(int leastUnits, int usualUnits, OptionalDouble lampPowerW, OptionalDouble loadW, String supply,
        OptionalInt brightnessSteps, Optional<BatteryEndurance> battery, List<Message> notes) {

    /** Copies the list. */
    public OperationalContext {
        notes = List.copyOf(notes);
    }

    /**
     * Reads the context of a family: the first equipment type of the family in the project, and the first circuit that feeds an aid of
     * the family, one with a battery first.
     *
     * @param project the project
     * @param family  the family
     * @param rules   a rule set, for the usual supply voltages of batteries
     * @param units   number of units that are laid out
     * @return the context
     */
    public static OperationalContext of(Project project, IndicatorFamily family, RuleSet rules, int units) {
        int least = family.unitCounts().stream().min(Integer::compare).orElseThrow();
        int usual = family.unitCounts().get(0);
        if (family.displayForm() == IndicatorFamily.DisplayForm.PANELS) {
            return new OperationalContext(least, usual, OptionalDouble.empty(), OptionalDouble.empty(), "", OptionalInt.empty(),
                    Optional.empty(), List.of(Message.of("context.panels")));
        }
        Optional<Aerodrome> aerodrome = Optional.ofNullable(project.getAerodrome());
        Optional<EquipmentType> type = FamilyEquipment.in(project, family).findFirst();
        List<Circuit> circuits = aerodrome.map(site -> site.getCircuits().stream().filter(each -> each.getAids().stream()
                .anyMatch(aid -> family.key().equals(aid.getFamilyKey()))).toList()).orElse(List.of());
        Optional<Circuit> circuit = circuits.stream().filter(each -> each.getCapacityAh() != null).findFirst()
                .or(() -> circuits.stream().findFirst());
        OptionalDouble lamp = number(type.map(EquipmentType::getLampPowerW));
        OptionalDouble lamps = number(type.map(EquipmentType::getLampsPerUnit));
        OptionalDouble load = lamp.isPresent() && lamps.isPresent()
                ? OptionalDouble.of(lamp.getAsDouble() * lamps.getAsDouble() * units) : OptionalDouble.empty();
        String supply = type.map(EquipmentType::getSupply).or(() -> circuit.map(Circuit::getSupply)).orElse("");
        OptionalInt steps = circuit.map(Circuit::getBrightnessSteps).map(OptionalInt::of).orElseGet(OptionalInt::empty);
        List<Message> notes = new ArrayList<>();
        notes.add(type.map(found -> Message.of("context.equipment", ElementNames.of(found)))
                .orElse(Message.of("context.no-equipment")));
        notes.add(circuit.map(found -> Message.of("context.circuit", ElementNames.of(found)))
                .orElse(Message.of("context.no-circuit")));
        Attempt<Optional<BatteryEndurance>> battery = Attempt.of(() -> circuit.filter(found -> found.getCapacityAh() != null)
                .map(found -> BatteryEndurance.of(found, type, rules)));
        battery.reason().ifPresent(reason -> notes.add(Message.of("portable.battery-unknown", reason)));
        return new OperationalContext(least, usual, lamp, load, supply, steps, battery.value().flatMap(found -> found), notes);
    }

    private static OptionalDouble number(Optional<? extends Number> found) {
        return found.map(value -> OptionalDouble.of(value.doubleValue())).orElseGet(OptionalDouble::empty);
    }

    /** Returns how long the battery lasts at the greatest load, hours; empty where there is none. */
    public OptionalDouble batteryHours() {
        return battery.map(found -> OptionalDouble.of(found.leastHours())).orElseGet(OptionalDouble::empty);
    }

    /** Returns the numbers of units for people: the least, and the usual one where it is another. */
    public Message units() {
        return leastUnits == usualUnits ? Message.of("context.units", Words.count(leastUnits))
                : Message.of("context.units-least-and-usual", Words.count(leastUnits), Words.count(usualUnits));
    }
}
