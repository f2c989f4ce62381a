package slopewright.evaluation.circuit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import slopewright.model.ApproachAid;
import slopewright.model.Circuit;
import slopewright.model.EquipmentType;
import slopewright.model.util.Projects;

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
        return known ? Double.valueOf(counted().stream().mapToDouble(AidLoad::powerW).sum()) : null;
    }

    /**
     * Returns the loads that burn at a time: a portable unit that serves several directions of a helipad stands in one of them, so its
     * greatest load counts once.
     */
    public List<AidLoad> counted() {
        Map<Object, AidLoad> counted = new LinkedHashMap<>();
        for (AidLoad load : aids) {
            counted.merge(unit(load.aid()), load, (first, second) -> watts(second) > watts(first) ? second : first);
        }
        return List.copyOf(counted.values());
    }

    private static Object unit(ApproachAid aid) {
        boolean moved = Boolean.TRUE.equals(aid.getPortable()) && aid.getEquipment() != null && Projects.helipad(aid).isPresent();
        return moved ? List.of(Projects.helipad(aid).get(), aid.getEquipment()) : aid;
    }

    private static double watts(AidLoad load) {
        return load.powerW() == null ? 0 : load.powerW();
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

    /** Returns what age and cold leave of the rated capacity, ampere-hours; null where there is no battery. */
    public Double usableAh() {
        return hasBattery() ? Double.valueOf(circuit.getCapacityAh() * share(circuit.getAgeLeftPercent()) * share(circuit
                .getColdLeftPercent())) : null;
    }

    private static double share(Double percent) {
        return percent == null ? 1 : percent / PERCENT;
    }

    /** Returns how long the battery feeds the circuit at most, hours; without a current, of the power at the lowest voltage. */
    public Double batteryHours() {
        Double current = circuit.getCurrentA() != null ? circuit.getCurrentA() : currentOfLampsA();
        return !hasBattery() || current == null || !(current > 0) ? null : Double.valueOf(usableAh() / current);
    }

    private Double currentOfLampsA() {
        double sum = 0;
        for (AidLoad aid : counted()) {
            EquipmentType type = aid.aid().getEquipment();
            if (aid.powerW() == null || type == null || type.getMinVoltageV() == null || !(type.getMinVoltageV() > 0)) {
                return null;
            }
            sum += aid.powerW() / type.getMinVoltageV();
        }
        return sum;
    }
}
