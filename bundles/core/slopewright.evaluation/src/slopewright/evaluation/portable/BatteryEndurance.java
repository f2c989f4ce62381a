package slopewright.evaluation.portable;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.messages.Message;
import slopewright.model.Circuit;
import slopewright.model.EquipmentType;
import slopewright.siting.SitingException;
import slopewright.standards.Citation;
import slopewright.standards.RuleSet;

/**
 * How long a battery feeds a unit: capacity over load. The full rated capacity is counted; age, cold and the rate of discharge are not.
 *
 * @param capacityAh  rated capacity, ampere-hours
 * @param leastLoadA  least current, at the highest supply voltage, amperes
 * @param mostLoadA   greatest current, at the lowest supply voltage, amperes
 * @param leastHours  endurance at the greatest current, hours
 * @param mostHours   endurance at the least current, hours
 * @param supplyFromV lowest supply voltage, volts
 * @param supplyToV   highest supply voltage, volts
 * @param notes       what a reader must know
 * @param citations   where the supply range comes from
 */
public record BatteryEndurance(double capacityAh, double leastLoadA, double mostLoadA, double leastHours, double mostHours,
        double supplyFromV, double supplyToV, List<Message> notes, List<Citation> citations) {

    /** What every endurance says. */
    static final Message CAPACITY_NOTE = Message.of("battery.full-capacity");

    /** Copies the lists. */
    public BatteryEndurance {
        notes = List.copyOf(notes);
        citations = List.copyOf(citations);
    }

    /**
     * Works the endurance out.
     *
     * @param capacityAh  rated capacity, ampere-hours
     * @param currentA    current, amperes; empty where the power counts
     * @param powerW      power of the lamps, watts, held constant over the supply range; empty where it is not known
     * @param supplyFromV lowest supply voltage, volts
     * @param supplyToV   highest supply voltage, volts
     * @param notes       what was taken for granted
     * @param citations   where the supply range comes from
     * @return the endurance
     * @throws SitingException where there is neither current nor power, or a number is out of its range
     */
    public static BatteryEndurance of(double capacityAh, OptionalDouble currentA, OptionalDouble powerW, double supplyFromV,
            double supplyToV, List<Message> notes, List<Citation> citations) {
        if (!(capacityAh > 0) || !(supplyFromV > 0) || !(supplyToV >= supplyFromV)) {
            throw new SitingException(Message.of("battery.out-of-range"));
        }
        if (currentA.isEmpty() && powerW.isEmpty()) {
            throw new SitingException(Message.of("battery.no-load"));
        }
        double least = currentA.orElseGet(() -> powerW.getAsDouble() / supplyToV);
        double most = currentA.orElseGet(() -> powerW.getAsDouble() / supplyFromV);
        if (!(least > 0)) {
            throw new SitingException(Message.of("battery.zero-load"));
        }
        return new BatteryEndurance(capacityAh, least, most, capacityAh / most, capacityAh / least, supplyFromV, supplyToV, notes,
                citations);
    }

    /**
     * Works the endurance out of what a project holds.
     *
     * @param circuit a circuit with a battery capacity
     * @param type    the equipment that it feeds; empty where the supply voltages that are usual count
     * @param rules   a rule set, for the usual supply voltages
     * @return the endurance
     * @throws SitingException where capacity or load is missing or out of its range
     */
    public static BatteryEndurance of(Circuit circuit, Optional<EquipmentType> type, RuleSet rules) {
        if (circuit.getCapacityAh() == null) {
            throw new SitingException(Message.of("battery.no-capacity"));
        }
        return BatteryCircuits.endurance(circuit, type.orElse(null), rules);
    }
}
