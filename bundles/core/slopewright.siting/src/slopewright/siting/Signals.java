package slopewright.siting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
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
    /** A band of heights less than this is none, metres. */
    public static final double LEAST_BAND_M = 1e-9;
    private static final FramePoint ORIGIN = new FramePoint(0, 0, 0);
    private static final Comparator<Edge> LOWEST_FIRST = (low, high) -> Double.compare(low.heightM(), high.heightM());

    private static final Comparator<UnitPlan> RUNWAY_OUTWARD = Signals::outward;

    private Signals() {
    }

    private static int outward(UnitPlan first, UnitPlan second) {
        if (first.bar() != second.bar()) {
            return Integer.compare(first.bar(), second.bar());
        }
        double right = first.place().rightM();
        double otherRight = second.place().rightM();
        if (right > 0 != otherRight > 0) {
            return right > 0 ? 1 : -1;
        }
        return Double.compare(Math.abs(right), Math.abs(otherRight));
    }

    /** Returns units in the order of reading: near bar first, left before right, from the runway outward. */
    public static List<UnitPlan> inOrder(List<UnitPlan> units) {
        for (int i = 1; i < units.size(); i++) {
            if (RUNWAY_OUTWARD.compare(units.get(i - 1), units.get(i)) > 0) {
                List<UnitPlan> ordered = new ArrayList<>(units);
                ordered.sort(RUNWAY_OUTWARD);
                return List.copyOf(ordered);
            }
        }
        return List.copyOf(units);
    }

    /** Returns what each light shows to an eye, in the order of the units. */
    public static List<SeenUnit> lights(List<UnitPlan> units, FramePoint eye) {
        List<SeenUnit> seen = new ArrayList<>(units.size());
        for (UnitPlan unit : units) {
            double elevation = unit.elevationDeg(eye);
            seen.add(new SeenUnit(unit, unit.lightAt(elevation), unit.isInTransition(elevation), elevation, OptionalDouble.empty()));
        }
        return seen;
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
        boolean behind = seen.stream().anyMatch(unit -> Double.isNaN(unit.elevationDeg()));
        Map<String, Meaning> meanings = behind ? outside(family.meanings(seen)) : family.meanings(seen);
        return new Observation(seen, meanings, elevation, family.remarks(seen));
    }

    /**
     * Returns what an eye sees of units whose beams have limits. Outside the beam of a unit there is nothing to be seen of it, and where
     * one of them cannot be seen the pattern says nothing.
     *
     * @param family    the family, for the meaning of the pattern
     * @param units     the units in any order
     * @param reference the siting's reference point
     * @param eye       the eye in the same frame
     * @param limits    how far the beams reach
     * @return the observation
     */
    public static Observation observe(IndicatorFamily family, List<UnitPlan> units, FramePoint reference, FramePoint eye,
            BeamLimits limits) {
        Observation within = observe(family, units, reference, eye);
        if (units.stream().allMatch(unit -> limits.contains(unit, eye))) {
            return within;
        }
        List<SeenUnit> seen = within.seen().stream().map(unit -> limits.contains(unit.unit(), eye) ? unit
                : new SeenUnit(unit.unit(), Light.DARK, false, unit.elevationDeg(), OptionalDouble.empty())).toList();
        return new Observation(seen, outside(within.meanings()), within.elevationDeg(), within.remarks());
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
        List<Edge> edges = new ArrayList<>();
        for (UnitPlan unit : units) {
            double distance = unit.axisDistanceM(ORIGIN);
            if (distance > 0) {
                for (SectorEdge edge : unit.edges()) {
                    edges.add(new Edge(unit, distance, edge.angleDeg(),
                            unit.place().heightM() + distance * Angles.tanDeg(edge.angleDeg())));
                }
            }
        }
        edges.sort(LOWEST_FIRST);
        List<UnitPlan> ordered = inOrder(units);
        for (int i = 0; i < edges.size(); i++) {
            double low = edges.get(i).heightM();
            double high = i + 1 < edges.size() ? edges.get(i + 1).heightM() : low + 1;
            if (high - low > LEAST_BAND_M && isOnSlope(family, ordered, new FramePoint(0, 0, (low + high) / 2))) {
                return Optional.of(edges.get(i).bound(allowanceDeg));
            }
        }
        return Optional.empty();
    }

    /** An edge of a unit with its height over the origin of the frame. */
    private record Edge(UnitPlan unit, double axisDistanceM, double angleDeg, double heightM) {

        private OnSlopeBound bound(double allowanceDeg) {
            double angle = angleDeg - allowanceDeg;
            return new OnSlopeBound(unit.id(), angle, unit.place().heightM() + axisDistanceM * Angles.tanDeg(angle));
        }
    }

    private static boolean isOnSlope(IndicatorFamily family, List<UnitPlan> ordered, FramePoint eye) {
        List<SeenUnit> seen = family.look(ordered, eye);
        for (SeenUnit unit : seen) {
            if (Double.isNaN(unit.elevationDeg())) {
                return false;
            }
        }
        return family.meanings(seen).values().iterator().next() == Meaning.ON_SLOPE;
    }

    private static Map<String, Meaning> outside(Map<String, Meaning> meanings) {
        Map<String, Meaning> none = new LinkedHashMap<>(meanings);
        none.replaceAll((path, meaning) -> Meaning.OUTSIDE);
        return none;
    }
}
