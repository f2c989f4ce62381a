package slopewright.siting;

import java.util.Arrays;
import java.util.Optional;

/** The numbers that a siting may need. The key is also the name of the option on the command line. */
public enum Input {

    /** Approach slope. */
    SLOPE("slope-deg", "approach slope", Kind.ANGLE),
    /** Runway width. */
    RUNWAY_WIDTH("runway-width-m", "runway width", Kind.LENGTH),
    /** Aerodrome reference code number. */
    CODE("code", "code number", Kind.COUNT),
    /** Eye-path-to-wheel-path height of the most demanding aeroplane in approach configuration. */
    EYE_TO_WHEEL("eye-to-wheel-m", "eye-to-wheel height", Kind.LENGTH),
    /** Wheel clearance that the user chose instead of one of the table. */
    CHOSEN_CLEARANCE("clearance-m", "chosen wheel clearance", Kind.LENGTH),
    /** Lens above threshold at the site, the same wherever the units stand. */
    LENS_HEIGHT("lens-height-m", "lens height above threshold", Kind.LENGTH),
    /** Uniform rise of the ground in the landing direction. */
    GROUND_SLOPE("ground-slope-percent", "ground slope", Kind.PERCENT),
    /** Lens above the ground where it stands. */
    LENS_ABOVE_GROUND("lens-above-ground-m", "lens height above ground", Kind.LENGTH),
    /** Threshold to the effective origin of the electronic glide path. */
    GLIDE_PATH_ORIGIN("glide-path-origin-m", "distance to the glide path origin", Kind.LENGTH),
    /** Height of the electronic glide path over the threshold. */
    REFERENCE_DATUM_HEIGHT("reference-datum-height-m", "reference datum height", Kind.LENGTH),
    /** Smallest eye-to-antenna height in regular use. */
    EYE_TO_ANTENNA_MIN("eye-to-antenna-min-m", "smallest eye-to-antenna height", Kind.LENGTH),
    /** Greatest eye-to-antenna height in regular use. */
    EYE_TO_ANTENNA_MAX("eye-to-antenna-max-m", "greatest eye-to-antenna height", Kind.LENGTH),
    /** Eye height over the threshold itself, instead of aeroplane plus clearance. */
    EYE_HEIGHT("eye-height-m", "eye height over the threshold", Kind.LENGTH),
    /** Height group of aeroplanes. */
    HEIGHT_GROUP("height-group", "height group", Kind.COUNT),
    /** Number of light units. */
    UNITS("units", "number of units", Kind.COUNT),
    /** Distance of a layout that is given, not solved. */
    DISTANCE("distance-m", "distance from the threshold", Kind.LENGTH),
    /** Height of the skids over the hover point. */
    HOVER_HEIGHT("hover-height-m", "hover height", Kind.LENGTH),
    /** Eye above the skids. */
    EYE_ABOVE_SKIDS("eye-above-skids-m", "eye height above the skids", Kind.LENGTH),
    /** Width of the safety area around the FATO. */
    SAFETY_AREA_WIDTH("safety-area-width-m", "safety area width", Kind.LENGTH),
    /** Length of the FATO along the approach. */
    FATO_LENGTH("fato-length-m", "FATO length", Kind.LENGTH),
    /** Ground speed on the approach. */
    GROUND_SPEED("ground-speed-kt", "ground speed", Kind.SPEED),
    /** Rate of descent on the approach. */
    DESCENT("descent-ftmin", "rate of descent", Kind.DESCENT),
    /** Turn of the approach axis, clockwise seen from above. */
    AXIS_TURN("axis-turn-deg", "turn of the axis", Kind.ANGLE),
    /** Distance between front and rear panels. */
    PANEL_DISTANCE("panel-distance-m", "distance between the panels", Kind.LENGTH),
    /** Width of the on-slope sector of the unit in hand. */
    ON_SLOPE_SECTOR("on-slope-sector-deg", "on-slope sector", Kind.ANGLE);

    /** What kind of quantity an input is. */
    public enum Kind {
        /** Metres; feet with a suffix on the command line. */
        LENGTH,
        /** Decimal degrees. */
        ANGLE,
        /** A whole number. */
        COUNT,
        /** Per cent. */
        PERCENT,
        /** Knots. */
        SPEED,
        /** Feet a minute. */
        DESCENT
    }

    private final String key;
    private final String label;
    private final Kind kind;

    Input(String key, String label, Kind kind) {
        this.key = key;
        this.label = label;
        this.kind = kind;
    }

    /** Returns its name in files and on the command line, without dashes in front. */
    public String key() {
        return key;
    }

    /** Returns what it is, for people. */
    public String label() {
        return label;
    }

    /** Returns its kind. */
    public Kind kind() {
        return kind;
    }

    /** Returns the input with a key, empty where there is none. */
    public static Optional<Input> of(String key) {
        return Arrays.stream(values()).filter(one -> one.key.equals(key)).findFirst();
    }
}
