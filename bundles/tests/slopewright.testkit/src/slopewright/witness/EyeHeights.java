package slopewright.witness;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Eye heights over a place on the centre line, found by looking at the lights between every two heights at which one of them changes. */
public final class EyeHeights {
    /** Edges nearer to each other are one. */
    private static final double SAME_M = 1e-9;
    private static final double STEEPEST_DEG = 89;

    private EyeHeights() {
    }

    /** Allowance off the bounding setting, minutes: 2' for rows under the ICAO family (2.12 e), none elsewhere. */
    public static double allowanceMin(Edition edition, Family family) {
        return family.row() ? Transcription.number(edition, family, "eye-height-allowance-min") : 0;
    }

    /** MEHT: least on-slope eye height over the threshold (or hover point), after the allowance, metres; NaN where none. */
    public static double mehtM(Layout layout) {
        return leastOnSlopeM(layout, 0, allowanceMin(layout.edition(), layout.family()), false);
    }

    /** Least on-slope eye height of the upper path of three bars over the threshold, metres. */
    public static double upperMehtM(Layout layout) {
        return leastOnSlopeM(layout, 0, 0, true);
    }

    /**
     * Least height of an eye over the centre line at a distance at which the pattern says on slope, metres; NaN where none. An eye that
     * climbs there sees a light change where it passes an edge of one of its sectors, and nothing in between: one look from the middle
     * tells what is seen from one edge to the next.
     */
    public static double leastOnSlopeM(Layout layout, double alongM, double allowanceMin, boolean upper) {
        for (Gap gap : gaps(layout, alongM, allowanceMin)) {
            if (onSlope(layout, alongM, gap.middleM(), allowanceMin, upper)) {
                return gap.fromM();
            }
        }
        return Double.NaN;
    }

    /** Greatest height of the lowest on-slope part at a distance, metres, without allowance; NaN where none. */
    public static double greatestOnSlopeM(Layout layout, double alongM, boolean upper) {
        boolean found = false;
        for (Gap gap : gaps(layout, alongM, 0)) {
            boolean here = onSlope(layout, alongM, gap.middleM(), 0, upper);
            if (found && !here) {
                return gap.fromM();
            }
            found = here;
        }
        return Double.NaN;
    }

    /**
     * Heights between which no light changes, metres.
     *
     * @param fromM   height of the lower edge
     * @param middleM a height between it and the next one
     */
    private record Gap(double fromM, double middleM) {
    }

    /** The gaps above every edge that an eye passes that climbs over a place of the centre line, from below upward. */
    private static List<Gap> gaps(Layout layout, double alongM, double allowanceMin) {
        List<Double> edges = new ArrayList<>();
        for (LightUnit unit : layout.units()) {
            double run = Signals.bearing(layout, unit.alongM(), unit.rightM(), new Eye(alongM, 0, 0))[0];
            for (Sector sector : unit.sectors()) {
                for (double deg : new double[] {sector.fromDeg(), sector.toDeg()}) {
                    if (run > 0 && Math.abs(deg) < STEEPEST_DEG) {
                        edges.add(unit.heightM() + run * Angles.tanDeg(deg - allowanceMin / 60));
                    }
                }
            }
        }
        Collections.sort(edges);
        List<Gap> gaps = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            double from = edges.get(i);
            double to = i + 1 < edges.size() ? edges.get(i + 1) : from + 2;
            if (to - from > SAME_M) {
                gaps.add(new Gap(from, (from + to) / 2));
            }
        }
        return gaps;
    }

    /** Height over a distance of the nominal slope through the reference of the layout, metres. */
    public static double nominalM(Layout layout, double alongM) {
        return layout.referenceHeightM() + (layout.referenceAlongM() - alongM) * Angles.tanDeg(layout.slopeDeg());
    }

    /** Wheel clearance over the threshold of an aeroplane on the lowest on-slope signal, metres (Fig 5-19 a). */
    public static double wheelClearanceM(Layout layout, double eyeToWheelM) {
        return mehtM(layout) - eyeToWheelM;
    }

    /** Wheel clearance over the ground at another place, such as a runway extremity (Table 5-2 note d), metres. */
    public static double wheelClearanceM(Layout layout, double eyeToWheelM, double alongM, double groundHeightM) {
        double allowance = allowanceMin(layout.edition(), layout.family());
        return leastOnSlopeM(layout, alongM, allowance, false) - eyeToWheelM - groundHeightM;
    }

    /** All bands of equal pattern over the centre line at a distance, from below upward, between two elevations in degrees. */
    public static List<Band> bands(Layout layout, double alongM, double fromDeg, double toDeg) {
        double base = layout.referenceHeightM();
        double run = layout.referenceAlongM() - alongM;
        List<Band> list = new ArrayList<>();
        double startDeg = fromDeg;
        View view = Signals.view(layout, new Eye(alongM, 0, base + run * Angles.tanDeg(fromDeg)));
        for (double deg = fromDeg; deg < toDeg; deg += 0.004) {
            View next = Signals.view(layout, new Eye(alongM, 0, base + run * Angles.tanDeg(deg + 0.004)));
            if (!next.pattern().equals(view.pattern())) {
                String old = view.pattern();
                double at = Angles.change(deg, deg + 0.004, d -> Signals.view(layout,
                    new Eye(alongM, 0, base + run * Angles.tanDeg(d))).pattern().equals(old));
                list.add(new Band(old, view.meaning(), base + run * Angles.tanDeg(startDeg), base + run * Angles.tanDeg(at)));
                startDeg = at;
                view = next;
            }
        }
        list.add(new Band(view.pattern(), view.meaning(), base + run * Angles.tanDeg(startDeg), base + run * Angles.tanDeg(toDeg)));
        return list;
    }

    private static boolean onSlope(Layout layout, double alongM, double heightM, double allowanceMin, boolean upper) {
        View view = Signals.view(layout, new Eye(alongM, 0, heightM), allowanceMin);
        return (upper ? view.upper() : view.meaning()) == Meaning.ON_SLOPE;
    }
}
