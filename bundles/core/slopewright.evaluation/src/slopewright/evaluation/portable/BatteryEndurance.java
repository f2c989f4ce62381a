package slopewright.evaluation.portable;

import java.util.ArrayList;
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
 * How long a battery feeds a unit at most: capacity over load. Age and cold count where they are entered; the rate of discharge does not.
 *
 * @param capacityAh  rated capacity, ampere-hours
 * @param usableAh    what age and cold leave of it, ampere-hours
 * @param leastLoadA  least current, at the highest supply voltage, amperes
 * @param mostLoadA   greatest current, at the lowest supply voltage, amperes
 * @param leastHours  endurance at the greatest current, hours
 * @param mostHours   endurance at the least current, hours
 * @param supplyFromV lowest supply voltage, volts
 * @param supplyToV   highest supply voltage, volts
 * @param levels      endurance by the steps of the brightness knob; empty where they are not entered
 * @param notes       what a reader must know
 * @param citations   where the supply range comes from
 */
public record BatteryEndurance(double capacityAh, double usableAh, double leastLoadA, double mostLoadA, double leastHours,
        double mostHours, double supplyFromV, double supplyToV, List<Level> levels, List<Message> notes, List<Citation> citations) {
    private static final double PERCENT = 100;

    /**
     * The endurance at one step of the brightness knob.
     *
     * @param step         its number on the knob, from one
     * @param powerPercent power of the lamps there, per cent of the full one
     * @param hours        how long the battery lasts at most, hours
     */
    public record Level(int step, double powerPercent, double hours) {
    }

    /**
     * What age and cold leave of a battery.
     *
     * @param agePercent  what is left at its age, per cent of the rated capacity
     * @param coldPercent what is left at the temperature that is expected, per cent
     */
    public record Left(double agePercent, double coldPercent) {
        /** A new battery in the warm. */
        public static final Left ALL = new Left(PERCENT, PERCENT);

        /** Refuses what is not a share. */
        public Left {
            if (!(agePercent > 0) || agePercent > PERCENT || !(coldPercent > 0) || coldPercent > PERCENT) {
                throw new SitingException(Message.of("battery.no-share"));
            }
        }

        /** Returns the share that is left by both, from zero to one. */
        public double share() {
            return agePercent / PERCENT * coldPercent / PERCENT;
        }
    }

    /** What every endurance says. */
    static final Message CAPACITY_NOTE = Message.of("battery.full-capacity");

    /** Copies the lists. */
    public BatteryEndurance {
        levels = List.copyOf(levels);
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
     * @param left        what age and cold leave of the capacity
     * @param notes       what was taken for granted
     * @param citations   where the supply range comes from
     * @return the endurance
     * @throws SitingException where there is neither current nor power, or a number is out of its range
     */
    public static BatteryEndurance of(double capacityAh, OptionalDouble currentA, OptionalDouble powerW, double supplyFromV,
            double supplyToV, Left left, List<Message> notes, List<Citation> citations) {
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
        double usable = capacityAh * left.share();
        return new BatteryEndurance(capacityAh, usable, least, most, usable / most, usable / least, supplyFromV, supplyToV, List.of(),
                notes, citations);
    }

    /**
     * Adds the endurance at the steps of a brightness knob.
     *
     * @param powerPercents power at each step, per cent of the full one, in the order of the knob
     * @return the endurance with its levels
     */
    public BatteryEndurance with(List<Double> powerPercents) {
        List<Level> found = new ArrayList<>();
        for (Double percent : powerPercents) {
            found.add(new Level(found.size() + 1, percent, leastHours * PERCENT / percent));
        }
        return new BatteryEndurance(capacityAh, usableAh, leastLoadA, mostLoadA, leastHours, mostHours, supplyFromV, supplyToV, found,
                notes, citations);
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
