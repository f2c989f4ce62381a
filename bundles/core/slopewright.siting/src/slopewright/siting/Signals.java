package slopewright.siting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;

/**
 * What an eye sees of an indicator. Sectors are planes through the lens, square to its azimuth, so the distance along the axis
 * counts, not the slant distance: an eye far off the axis sees what an eye on the axis sees at the same distance along it.
 */
public final class Signals {

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

    private static Map<String, Meaning> outside(Map<String, Meaning> meanings) {
        Map<String, Meaning> none = new java.util.LinkedHashMap<>(meanings);
        none.replaceAll((path, meaning) -> Meaning.OUTSIDE);
        return none;
    }
}
