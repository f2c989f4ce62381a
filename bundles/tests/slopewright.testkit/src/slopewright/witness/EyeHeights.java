package slopewright.witness;

import java.util.ArrayList;
import java.util.List;

/** Eye heights over a place on the centre line, found by scanning what the lights show to an eye that climbs there. */
public final class EyeHeights {
    private static final double SCAN_FROM_DEG = -2;
    private static final double SCAN_TO_DEG = 30;
    private static final double SCAN_STEP_DEG = 0.02;

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
     * Least height of an eye over the centre line at a distance at which the pattern says on slope, metres; NaN where none.
     * The eye climbs in steps of 0.02 degrees as seen from the layout; the change found is then halved down.
     */
    public static double leastOnSlopeM(Layout layout, double alongM, double allowanceMin, boolean upper) {
        double base = layout.referenceHeightM();
        double run = layout.referenceAlongM() - alongM;
        double elevationDeg = Angles.firstTrue(scanFromDeg(layout, alongM, allowanceMin), SCAN_TO_DEG, SCAN_STEP_DEG,
            deg -> onSlope(layout, alongM, base + run * Angles.tanDeg(deg), allowanceMin, upper));
        return base + run * Angles.tanDeg(elevationDeg);
    }

    /** Where the climb begins: a metre below the lowest edge of any light over the place, for nothing changes beneath it, degrees. */
    private static double scanFromDeg(Layout layout, double alongM, double allowanceMin) {
        double lowestM = Double.POSITIVE_INFINITY;
        for (LightUnit unit : layout.units()) {
            for (Sector sector : unit.sectors()) {
                for (double deg : new double[] {sector.fromDeg(), sector.toDeg()}) {
                    if (deg >= SCAN_FROM_DEG && deg <= SCAN_TO_DEG) {
                        double slopeDeg = deg - allowanceMin / 60;
                        lowestM = Math.min(lowestM, unit.heightM() + Math.max(0, unit.alongM() - alongM) * Angles.tanDeg(slopeDeg));
                    }
                }
            }
        }
        double run = layout.referenceAlongM() - alongM;
        double fromDeg = run > 0 ? Angles.atanDeg((lowestM - 1 - layout.referenceHeightM()) / run) : SCAN_FROM_DEG;
        return Math.max(SCAN_FROM_DEG, fromDeg);
    }

    /** Greatest on-slope eye height at a distance, metres, without allowance; NaN where none. */
    public static double greatestOnSlopeM(Layout layout, double alongM, boolean upper) {
        double base = layout.referenceHeightM();
        double run = layout.referenceAlongM() - alongM;
        double from = Angles.firstTrue(SCAN_FROM_DEG, SCAN_TO_DEG, SCAN_STEP_DEG,
            deg -> onSlope(layout, alongM, base + run * Angles.tanDeg(deg), 0, upper));
        double to = Angles.firstTrue(from + 1e-9, SCAN_TO_DEG, SCAN_STEP_DEG,
            deg -> !onSlope(layout, alongM, base + run * Angles.tanDeg(deg), 0, upper));
        return base + run * Angles.tanDeg(to);
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
