package slopewright.siting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;

/**
 * What an eye sees of an indicator. Sectors are planes through the lens, square to its azimuth, so the distance along the axis
 * counts, not the slant distance: an eye far off the axis sees what an eye on the axis sees at the same distance along it.
 */
public final class Signals {
    private static final double LEAST_BAND_M = 1e-9;

    private static final Comparator<UnitPlan> RUNWAY_OUTWARD = Comparator.<UnitPlan>comparingInt(UnitPlan::bar)
            .thenComparing(unit -> unit.place().rightM() > 0).thenComparingDouble(unit -> Math.abs(unit.place().rightM()));

    private Signals() {
    }

    /** Returns units in the order of reading: near bar first, left before right, from the runway outward. */
    public static List<UnitPlan> inOrder(List<UnitPlan> units) {
        List<UnitPlan> ordered = new ArrayList<>(units);
        ordered.sort(RUNWAY_OUTWARD);
        return List.copyOf(ordered);
    }

    /** Returns what each light shows to an eye, in the order of the units. */
    public static List<SeenUnit> lights(List<UnitPlan> units, FramePoint eye) {
        return units.stream().map(unit -> {
            double elevation = unit.elevationDeg(eye);
            return new SeenUnit(unit, unit.lightAt(elevation), unit.isInTransition(elevation), elevation, OptionalDouble.empty());
        }).toList();
    }

    /**
     * Returns what an eye sees.
     *
     * @param family    the family, for the meaning of the pattern
     * @param units     the units in any order
     * @param reference the siting's reference point
     * @param eye       the eye in the same frame
     * @return the observation
     */
    public static Observation observe(IndicatorFamily family, List<UnitPlan> units, FramePoint reference, FramePoint eye) {
        List<SeenUnit> seen = family.look(inOrder(units), eye);
        double distance = reference.alongM() - eye.alongM();
        double elevation = distance > 0 ? Angles.elevationDeg(eye.heightM() - reference.heightM(), distance) : Double.NaN;
        boolean behind = seen.stream().anyMatch(one -> Double.isNaN(one.elevationDeg()));
        Map<String, Meaning> meanings = behind ? outside(family.meanings(seen)) : family.meanings(seen);
        return new Observation(seen, meanings, elevation, family.remarks(seen));
    }

    /** Returns what an eye sees of a solved layout. */
    public static Observation observe(Siting siting, FramePoint eye) {
        return observe(Families.get(siting.family()), siting.units(), siting.reference(), eye);
    }

    /**
     * Finds the least eye height over the origin of the frame, on the centre line, at which the pattern of the units means on slope: of all
     * the edges that the units have there, the lowest above which the only or the lowest path reads on slope. Units of unequal level are
     * each taken at their own.
     *
     * @param family       the family, for the meaning of the pattern
     * @param units        the units in any order
     * @param allowanceDeg taken off the angle of the edge that bounds the signal, decimal degrees
     * @return the bound, empty where no height over the origin reads on slope
     */
    static Optional<OnSlopeBound> lowestOnSlope(IndicatorFamily family, List<UnitPlan> units, double allowanceDeg) {
        FramePoint ground = new FramePoint(0, 0, 0);
        List<OnSlopeBound> edges = new ArrayList<>();
        for (UnitPlan unit : units) {
            double distance = unit.axisDistanceM(ground);
            if (distance > 0) {
                unit.edges().forEach(edge -> edges.add(new OnSlopeBound(unit.id(), edge.angleDeg(),
                        unit.place().heightM() + distance * Angles.tanDeg(edge.angleDeg()))));
            }
        }
        edges.sort(Comparator.comparingDouble(OnSlopeBound::heightM));
        List<UnitPlan> ordered = inOrder(units);
        for (int i = 0; i < edges.size(); i++) {
            double low = edges.get(i).heightM();
            double high = i + 1 < edges.size() ? edges.get(i + 1).heightM() : low + 1;
            if (high - low > LEAST_BAND_M && isOnSlope(family, ordered, new FramePoint(0, 0, (low + high) / 2))) {
                OnSlopeBound bound = edges.get(i);
                UnitPlan unit = units.stream().filter(one -> one.id().equals(bound.unitId())).findFirst().orElseThrow();
                double angle = bound.angleDeg() - allowanceDeg;
                return Optional.of(new OnSlopeBound(bound.unitId(), angle,
                        unit.place().heightM() + unit.axisDistanceM(ground) * Angles.tanDeg(angle)));
            }
        }
        return Optional.empty();
    }

    private static boolean isOnSlope(IndicatorFamily family, List<UnitPlan> ordered, FramePoint eye) {
        List<SeenUnit> seen = family.look(ordered, eye);
        return seen.stream().noneMatch(one -> Double.isNaN(one.elevationDeg()))
                && family.meanings(seen).values().iterator().next() == Meaning.ON_SLOPE;
    }

    private static Map<String, Meaning> outside(Map<String, Meaning> meanings) {
        Map<String, Meaning> none = new java.util.LinkedHashMap<>(meanings);
        none.replaceAll((path, meaning) -> Meaning.OUTSIDE);
        return none;
    }
}
