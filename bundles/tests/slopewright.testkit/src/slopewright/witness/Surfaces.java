package slopewright.witness;

import java.util.Comparator;
import java.util.OptionalDouble;

/** The obstacle surface of an indicator under each text. */
public final class Surfaces {
    private Surfaces() {
    }

    /**
     * The surface of an indicator at a runway. ICAO 5th: Table 5-3, from the threshold. ICAO 9th and EASA: Tables 5-3 and
     * M-2, D1 + 30 or 60 m from the indicator, from the level of the threshold. United States: angular, from 300 ft before a
     * row or from the foremost light, from the level of the runway reference point. Australia: 1.9 degrees from the threshold.
     *
     * @param layout indicator as it stands
     * @param code code number 1 to 4
     * @param approach approach type
     * @param d1M distance from the threshold before any move to cure a penetration, metres; NaN for the distance as it stands
     * @param runway runway profile (United States only)
     */
    public static Surface runway(Layout layout, int code, Approach approach, double d1M, GroundLine runway) {
        if (layout.edition().american()) {
            return american(layout, runway);
        }
        if (layout.edition() == Edition.CASA) {
            return australian(layout, approach);
        }
        Edition edition = layout.edition();
        String family = layout.family().key();
        double place = layout.referenceAlongM();
        String cell = "surface." + approach.key() + "." + code + ".";
        double start;
        if (edition.surfaceFromIndicator()) {
            double d1 = Double.isNaN(d1M) ? place : d1M;
            start = place - (d1 + Transcription.number(edition, family, cell + "beyond-d1-m"));
        } else {
            start = -Transcription.number(edition, family, cell + "start-m");
        }
        return new Surface(start, 0, Transcription.number(edition, family, cell + "inner-edge-m"),
            Transcription.number(edition, family, "surface." + approach.key() + ".divergence-percent"), Double.NaN,
            tableSlopeDeg(layout, cell), Transcription.number(edition, family, cell + "length-m"), place, layout.axisTurnDeg());
    }

    private static double tableSlopeDeg(Layout layout, String cell) {
        OptionalDouble fixed = Transcription.maybe(layout.edition(), layout.family().key(), cell + "slope-deg");
        if (fixed.isPresent()) {
            return fixed.getAsDouble();
        }
        OptionalDouble offset = Transcription.maybe(layout.edition(), layout.family().key(), cell + "slope-offset-deg");
        return offset.isPresent() ? layout.leastSettingDeg() + offset.getAsDouble() : Double.NaN;
    }

    /**
     * United States, pack section 5: rows 300 ft before the row, 1 degree below the third unit from the runway (four) or the
     * outer unit (two), 4 statute miles; others from the foremost light, 1 degree below the path, bars to 4 nautical miles
     * from the threshold, single units 4 statute miles; 10 degrees each side from the origin of the surface.
     */
    private static Surface american(Layout layout, GroundLine runway) {
        Edition edition = layout.edition();
        String family = layout.family().key();
        double foremost = layout.units().stream().mapToDouble(LightUnit::alongM).min().orElseThrow();
        double below = Transcription.number(edition, family, "surface.below-unit-deg");
        double splay = Transcription.number(edition, family, "surface.divergence-deg");
        double length = Transcription.number(edition, family, "surface.length-sm") * Angles.STATUTE_MILE_M;
        double start = foremost;
        double slope = layout.slopeDeg() - below;
        if (layout.family().row()) {
            start = layout.referenceAlongM() - Transcription.number(edition, family, "surface.before-row-ft") * Angles.FOOT_M;
            slope = governing(layout).settingDeg() - below;
        } else if (layout.family().bars()) {
            length = Transcription.number(edition, family, "bar-surface.length-nm") * Angles.NAUTICAL_MILE_M + foremost;
        }
        return new Surface(start, referencePointHeightM(layout, runway), 0, Double.NaN, splay, slope, length,
            layout.referenceAlongM(), layout.axisTurnDeg());
    }

    /** Third unit from the runway of four, outer unit of two: the unit with the second least, or the least, setting. */
    private static LightUnit governing(Layout layout) {
        boolean four = layout.family() == Family.FOUR_UNIT_ROW;
        double side = Math.signum(layout.units().get(0).rightM());
        return layout.units().stream().filter(unit -> Math.signum(unit.rightM()) == side)
            .sorted(Comparator.comparingDouble((LightUnit unit) -> -Math.abs(unit.rightM()))).skip(four ? 1 : 0).findFirst()
            .orElseThrow();
    }

    /** Distance from the threshold of the runway reference point: where the visual path meets the runway profile, metres. */
    public static double referencePointM(Layout layout, GroundLine runway) {
        return Angles.firstTrue(runway.bendsM(-1000, 8000), x -> EyeHeights.nominalM(layout, x) <= runway.heightM(x));
    }

    /** Height of the runway reference point above the threshold, metres. */
    public static double referencePointHeightM(Layout layout, GroundLine runway) {
        return runway.heightM(referencePointM(layout, runway));
    }

    private static Surface australian(Layout layout, Approach approach) {
        Edition edition = layout.edition();
        double lengthNm = Transcription.number(edition, Transcription.ALL, "surface." + approach.key() + ".length-nm");
        return new Surface(0, 0, 0, Double.NaN, Transcription.number(edition, Transcription.ALL, "surface.divergence-deg"),
            Transcription.number(edition, Transcription.ALL, "surface.slope-deg"), lengthNm * Angles.NAUTICAL_MILE_M,
            layout.referenceAlongM(), layout.axisTurnDeg());
    }

    /**
     * The surface of an indicator at a heliport. ICAO: Vol II Table 5-1, inner edge the safety area width, 3 m (instrument 60 m)
     * before the FATO end; A the least setting of a row, the upper limit of below slope of a sector unit. United States: 1 degree
     * below the lowest on-slope signal, 10 degrees each side, from the unit; no length is printed.
     *
     * @param layout indicator, frame of the helipad
     * @param approach approach type
     * @param safetyAreaWidthM width of the safety area, metres
     * @param fatoEndAlongM approach end of the FATO in the frame of the helipad (negative), metres
     */
    public static Surface heliport(Layout layout, Approach approach, double safetyAreaWidthM, double fatoEndAlongM) {
        Edition edition = layout.edition();
        String family = layout.family().key();
        if (edition.american()) {
            double below = Transcription.number(edition, family, "heliport-surface.below-lowest-deg");
            return new Surface(layout.referenceAlongM(), layout.referenceHeightM(), 0, Double.NaN,
                Transcription.number(edition, family, "heliport-surface.divergence-deg"),
                Settings.lowestOnSlopeDeg(layout) - below, Double.POSITIVE_INFINITY, layout.referenceAlongM(), layout.axisTurnDeg());
        }
        String column = "heliport-surface." + approach.key() + ".";
        double lowest = layout.leastSettingDeg();
        if (layout.family() == Family.HELIPORT_SECTOR) {
            lowest = layout.units().get(0).sectors().get(1).fromDeg();
        }
        return new Surface(fatoEndAlongM - Transcription.number(edition, family, column + "start-m"), 0, safetyAreaWidthM,
            Transcription.number(edition, family, column + "divergence-percent"), Double.NaN,
            lowest + Transcription.number(edition, family, "heliport-surface.slope-offset-deg"),
            Transcription.number(edition, family, column + "length-m"), layout.referenceAlongM(), layout.axisTurnDeg());
    }
}
