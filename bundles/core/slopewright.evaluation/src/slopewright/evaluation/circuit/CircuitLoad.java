package slopewright.evaluation.circuit;

import java.util.List;

import slopewright.model.Circuit;
import slopewright.model.EquipmentType;

/**
 * The load of one circuit; null where a number is not known, never zero.
 *
 * @param circuit the circuit
 * @param aids    its aids
 */
public record CircuitLoad(Circuit circuit, List<AidLoad> aids) {
    private static final double TO_KILO = 1000;
    private static final double PERCENT = 100;

    /** Copies the list. */
    public CircuitLoad {
        aids = List.copyOf(aids);
    }

    /** Returns the load of a circuit. */
    public static CircuitLoad of(Circuit circuit) {
        return new CircuitLoad(circuit, circuit.getAids().stream().map(AidLoad::of).toList());
    }

    /** Returns the power of the lamps of all aids, watts; null where that of one is not known, or there are none. */
    public Double powerW() {
        boolean known = !aids.isEmpty() && aids.stream().allMatch(aid -> aid.powerW() != null);
        return known ? Double.valueOf(aids.stream().mapToDouble(AidLoad::powerW).sum()) : null;
    }

    /** Returns what the cable takes, watts: current squared times resistance. */
    public Double cableW() {
        Double current = circuit.getCurrentA();
        Double perKilometre = circuit.getCableResistanceOhmPerKm();
        Double length = circuit.getCableLengthM();
        return current == null || perKilometre == null || length == null ? null
                : Double.valueOf(current * current * perKilometre * length / TO_KILO);
    }

    /** Returns lamps and cable together, volt-amperes; null where one is not known. */
    public Double totalVa() {
        return powerW() == null || cableW() == null ? null : Double.valueOf(powerW() + cableW());
    }

    /** Returns the share of the regulator's rating that lamps and cable take, per cent. */
    public Double ratingPercent() {
        Double rating = circuit.getRegulatorRatingKva();
        return totalVa() == null || rating == null || !(rating > 0) ? null : Double.valueOf(totalVa() / (rating * TO_KILO) * PERCENT);
    }

    /** Returns whether the circuit is fed by a battery: it has a capacity. */
    public boolean hasBattery() {
        return circuit.getCapacityAh() != null;
    }

    /** Returns how long the full rated capacity feeds the circuit, hours; without a current, of the power at the lowest voltage. */
    public Double batteryHours() {
        Double current = circuit.getCurrentA() != null ? circuit.getCurrentA() : currentOfLampsA();
        return !hasBattery() || current == null || !(current > 0) ? null : Double.valueOf(circuit.getCapacityAh() / current);
    }

    private Double currentOfLampsA() {
        double sum = 0;
        for (AidLoad aid : aids) {
            EquipmentType type = aid.aid().getEquipment();
            if (aid.powerW() == null || type == null || type.getMinVoltageV() == null || !(type.getMinVoltageV() > 0)) {
                return null;
            }
            sum += aid.powerW() / type.getMinVoltageV();
        }
        return sum;
    }
}
