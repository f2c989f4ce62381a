package slopewright.drawing.signal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

import slopewright.drawing.pilot.PilotPicture;
import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.siting.Light;
import slopewright.siting.Meaning;
import slopewright.siting.SectorEdge;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;

/**
 * What an indicator shows into each height over one place of the approach: a column a unit from left to right, and what the pattern
 * tells. Heights are above the origin of the frame, with the curvature of the Earth and refraction as in {@link PilotPicture}.
 *
 * @param lowM     lower end, metres
 * @param highM    upper end, metres
 * @param slopeM   height of the slope, metres
 * @param columns  the units; empty for panels
 * @param readings what the pattern tells, the lowest first
 */
public record SignalStrip(double lowM, double highM, double slopeM, List<Column> columns, List<Reading> readings) {

    private static final double LARGEST_ABOVE_DEG = 3;
    private static final double LEAST_ROOM_DEG = 0.35;
    private static final double PANEL_ROOM_DEG = 1;
    private static final int STEPS = 96;
    private static final int HALVINGS = 24;

    /**
     * What one unit shows.
     *
     * @param unit  the unit
     * @param bands what it shows, the lowest first
     */
    public record Column(UnitPlan unit, List<Band> bands) {

        /** Copies the bands. */
        public Column {
            bands = List.copyOf(bands);
        }
    }

    /**
     * One light over a range of heights.
     *
     * @param lowM  lower end, metres
     * @param highM upper end, metres
     * @param below the light at the lower end
     * @param above the light at the upper end; another one in the change from one to the other
     */
    public record Band(double lowM, double highM, Light below, Light above) {
    }

    /**
     * What a pattern tells over a range of heights.
     *
     * @param lowM     lower end, metres
     * @param highM    upper end, metres
     * @param meanings the meaning for each path by name
     */
    public record Reading(double lowM, double highM, Map<String, Meaning> meanings) {

        /** Copies the meanings. */
        public Reading {
            meanings = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(meanings));
        }
    }

    /** Copies the lists. */
    public SignalStrip {
        columns = List.copyOf(columns);
        readings = List.copyOf(readings);
    }

    /**
     * Makes the strip over a place.
     *
     * @param siting the indicator
     * @param eye    the place; its height is only looked at to be within the strip where it is not far off
     * @return the strip; without columns and readings where the place is abeam of or behind the reference point
     */
    public static SignalStrip of(Siting siting, FramePoint eye) {
        double distance = siting.reference().alongM() - eye.alongM();
        double drop = PilotPicture.toward(eye, siting.reference()).dropM(siting.reference());
        if (distance <= 0) {
            return new SignalStrip(0, Math.max(1, eye.heightM() * 2), 0, List.of(), List.of());
        }
        double base = siting.reference().heightM() + drop;
        double[] angles = angles(siting);
        double low = Math.max(Math.min(0, eye.heightM()), base + distance * Angles.tanDeg(angles[0]));
        double high = Math.max(low + 1, base + distance * Angles.tanDeg(angles[1]));
        if (eye.heightM() > high && eye.heightM() < high + (high - low)) {
            high = eye.heightM() + (high - low) * 0.05;
        }
        if (eye.heightM() < low) {
            low = Math.max(Math.min(0, eye.heightM()), eye.heightM() - (high - low) * 0.05);
        }
        List<Column> columns = new ArrayList<>();
        for (UnitPlan unit : siting.units().stream().filter(light -> !light.edges().isEmpty()).sorted(acrossThenFar()).toList()) {
            columns.add(new Column(unit, bands(unit, eye, drop, low, high)));
        }
        return new SignalStrip(low, high, base + distance * Angles.tanDeg(siting.slopeDeg()), columns,
                readings(siting, eye, drop, low, high));
    }

    private static java.util.Comparator<UnitPlan> acrossThenFar() {
        return java.util.Comparator.<UnitPlan>comparingDouble(unit -> unit.place().rightM()).thenComparingInt(UnitPlan::bar);
    }

    private static double[] angles(Siting siting) {
        double low = siting.slopeDeg() - PANEL_ROOM_DEG;
        double high = siting.slopeDeg() + PANEL_ROOM_DEG;
        TreeSet<Double> edges = new TreeSet<>();
        siting.units().forEach(unit -> unit.edges().forEach(edge -> edges.add(edge.angleDeg())));
        if (!edges.isEmpty()) {
            double lowest = Math.max(0, Math.min(edges.first(), siting.slopeDeg()));
            double highest = Math.max(Math.min(edges.last(), siting.slopeDeg() + LARGEST_ABOVE_DEG), siting.slopeDeg());
            double room = Math.max(LEAST_ROOM_DEG, (highest - lowest) * 0.3);
            low = lowest - room;
            high = highest + room;
        }
        return new double[] {low, high};
    }

    private static double heightM(UnitPlan unit, FramePoint eye, double dropM, double angleDeg) {
        return unit.place().heightM() + unit.axisDistanceM(eye) * Angles.tanDeg(angleDeg) + dropM;
    }

    private static List<Band> bands(UnitPlan unit, FramePoint eye, double dropM, double low, double high) {
        List<Band> bands = new ArrayList<>();
        if (unit.axisDistanceM(eye) <= 0) {
            return List.of(new Band(low, high, Light.DARK, Light.DARK));
        }
        double from = low;
        Light light = unit.edges().get(0).below();
        for (SectorEdge edge : unit.edges()) {
            double half = Angles.minutesToDeg(edge.widthMinutes()) / 2;
            double start = heightM(unit, eye, dropM, edge.angleDeg() - half);
            double end = heightM(unit, eye, dropM, edge.angleDeg() + half);
            add(bands, low, high, new Band(from, start, light, light));
            add(bands, low, high, new Band(Math.max(from, start), end, edge.below(), edge.above()));
            from = Math.max(from, end);
            light = edge.above();
        }
        add(bands, low, high, new Band(from, high, light, light));
        return bands;
    }

    private static void add(List<Band> bands, double low, double high, Band band) {
        double from = Math.max(low, band.lowM());
        double to = Math.min(high, band.highM());
        if (to > from) {
            bands.add(new Band(from, to, band.below(), band.above()));
        }
    }

    private static List<Reading> readings(Siting siting, FramePoint eye, double dropM, double low, double high) {
        TreeSet<Double> heights = new TreeSet<>();
        for (int i = 0; i <= STEPS; i++) {
            heights.add(low + (high - low) * i / STEPS);
        }
        siting.units().forEach(unit -> unit.edges().forEach(edge -> heights.add(heightM(unit, eye, dropM, edge.angleDeg()))));
        List<Double> cuts = new ArrayList<>(heights.subSet(low, true, high, true));
        List<Reading> readings = new ArrayList<>();
        for (int i = 1; i < cuts.size(); i++) {
            join(readings, siting, eye, new Reading(cuts.get(i - 1), cuts.get(i),
                    meanings(siting, eye, (cuts.get(i - 1) + cuts.get(i)) / 2)));
        }
        return readings;
    }

    /** Adds a reading, or lengthens the last one that tells the same; a boundary between two cuts is halved down. */
    private static void join(List<Reading> readings, Siting siting, FramePoint eye, Reading next) {
        if (readings.isEmpty()) {
            readings.add(next);
            return;
        }
        Reading last = readings.remove(readings.size() - 1);
        if (last.meanings().equals(next.meanings())) {
            readings.add(new Reading(last.lowM(), next.highM(), last.meanings()));
            return;
        }
        double cut = boundary(siting, eye, last, next);
        readings.add(new Reading(last.lowM(), cut, last.meanings()));
        readings.add(new Reading(cut, next.highM(), next.meanings()));
    }

    private static double boundary(Siting siting, FramePoint eye, Reading last, Reading next) {
        double below = Math.max(last.lowM(), last.highM() - (next.highM() - next.lowM()) / 2);
        double above = (next.lowM() + next.highM()) / 2;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (below + above) / 2;
            if (meanings(siting, eye, middle).equals(last.meanings())) {
                below = middle;
            } else {
                above = middle;
            }
        }
        return (below + above) / 2;
    }

    private static Map<String, Meaning> meanings(Siting siting, FramePoint eye, double heightM) {
        FramePoint at = eye.atHeight(heightM);
        return PilotPicture.toward(at, siting.reference()).observe(siting).meanings();
    }
}
