package slopewright.witness;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Settings of the units of a family for an approach slope. */
public final class Settings {
    private static final double STEEP_DEG = 4;
    private static final double VERY_STEEP_DEG = 7;

    private Settings() {
    }

    /**
     * Settings of a row by unit letter, A outermost, degrees. Fig 5-20 and pack section 3.2; the steep differences (above 4
     * and above 7 degrees, ICAO family only) are from memory; beside a glide path they are not settled above 4 degrees.
     */
    public static Map<String, Double> row(Edition edition, Family family, Variant variant, double slopeDeg) {
        String set = variant.key();
        if (!edition.american() && variant != Variant.HELIPORT && slopeDeg > STEEP_DEG) {
            if (variant == Variant.GLIDE_PATH && family == Family.FOUR_UNIT_ROW) {
                throw new IllegalArgumentException("steep settings beside a glide path are not settled");
            }
            set = slopeDeg > VERY_STEEP_DEG ? "steep-over-7" : "steep-over-4";
        }
        Map<String, Double> map = new TreeMap<>();
        List<String> letters = family == Family.FOUR_UNIT_ROW ? List.of("A", "B", "C", "D") : List.of("A", "B");
        for (String letter : letters) {
            double offsetMin = Transcription.number(edition, family, "setting." + set + "." + letter + "-min");
            map.put(letter, slopeDeg + offsetMin / 60);
        }
        return map;
    }

    /** Setting of a bar ({@code near}, {@code middle}, {@code far}), degrees; US pack 3.2.9 and 3.2.10. */
    public static double bar(Edition edition, Family family, Variant variant, double slopeDeg, String bar) {
        return slopeDeg + Transcription.number(edition, family, "setting." + variant.key() + "." + bar + "-deg");
    }

    /** Cut-off of a leg unit of a T form, {@code leg} is fly-up or fly-down, number 1 to 3 from the bar, degrees; 5.3.5.20. */
    public static double leg(Edition edition, Family family, double slopeDeg, String leg, int number) {
        return slopeDeg + Transcription.number(edition, family, leg + "." + number + ".cut-off-min") / 60;
    }

    /** Whether a setting is one the unit can be given: 1 deg 30' to 4 deg 30' (rows), 1 to 12 degrees (heliport sector unit). */
    public static boolean adjustable(Edition edition, Family family, double settingDeg) {
        double from = Transcription.number(edition, family, "adjustable-from-deg");
        double to = Transcription.number(edition, family, "adjustable-to-deg");
        return settingDeg >= from - 1e-6 && settingDeg <= to + 1e-6;
    }

    /**
     * The lowest on-slope angle of the pattern, after the allowance of 2' where the text takes one, degrees: row of four B,
     * row of two A (2.12 e), bars the near bar, T form the slope itself, sector unit the lower edge of the on-slope sector.
     */
    public static double lowestOnSlopeDeg(Layout layout) {
        double deg = switch (layout.family()) {
            case FOUR_UNIT_ROW -> setting(layout, "B");
            case TWO_UNIT_ROW -> setting(layout, "A");
            case TWO_BAR, THREE_BAR -> layout.units().get(0).settingDeg();
            case T_FORM, T_FORM_ABBREVIATED, ALIGNMENT_PANELS -> layout.slopeDeg();
            case HELIPORT_SECTOR -> layout.units().get(0).sectors().get(2).fromDeg();
            case HELIPORT_PAIR -> layout.unit("high").sectors().get(1).fromDeg();
            case TRI_COLOUR -> layout.units().get(0).sectors().get(1).fromDeg();
            case PULSATING -> layout.units().get(0).sectors().get(2).fromDeg();
        };
        return deg - EyeHeights.allowanceMin(layout.edition(), layout.family()) / 60;
    }

    private static double setting(Layout layout, String letter) {
        return layout.units().stream().filter(unit -> unit.id().endsWith(letter)).findFirst().orElseThrow().settingDeg();
    }
}
