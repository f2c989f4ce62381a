package slopewright.siting;

import java.util.Arrays;
import java.util.Optional;

import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;

/** The numbers that a siting may need. The key is also the name of the option on the command line. */
public enum Input {

    /** Approach slope. */
    SLOPE("slope-deg", Kind.ANGLE),
    /** Runway width. */
    RUNWAY_WIDTH("runway-width-m", Kind.LENGTH),
    /** Aerodrome reference code number. */
    CODE("code", Kind.COUNT),
    /** Eye-path-to-wheel-path height of the most demanding aeroplane in approach configuration. */
    EYE_TO_WHEEL("eye-to-wheel-m", Kind.LENGTH),
    /** Wheel clearance that the user chose instead of one of the table. */
    CHOSEN_CLEARANCE("clearance-m", Kind.LENGTH),
    /** Lens above threshold at the site, the same wherever the units stand. */
    LENS_HEIGHT("lens-height-m", Kind.LENGTH),
    /** Uniform rise of the ground in the landing direction. */
    GROUND_SLOPE("ground-slope-percent", Kind.PERCENT),
    /** Lens above the ground where it stands. */
    LENS_ABOVE_GROUND("lens-above-ground-m", Kind.LENGTH),
    /** Threshold to the effective origin of the electronic glide path. */
    GLIDE_PATH_ORIGIN("glide-path-origin-m", Kind.LENGTH),
    /** Height of the electronic glide path over the threshold. */
    REFERENCE_DATUM_HEIGHT("reference-datum-height-m", Kind.LENGTH),
    /** Angle of the electronic glide path. */
    GLIDE_PATH_ANGLE("glide-path-angle-deg", Kind.ANGLE),
    /** Smallest eye-to-antenna height in regular use. */
    EYE_TO_ANTENNA_MIN("eye-to-antenna-min-m", Kind.LENGTH),
    /** Greatest eye-to-antenna height in regular use. */
    EYE_TO_ANTENNA_MAX("eye-to-antenna-max-m", Kind.LENGTH),
    /** Eye height over the threshold itself, instead of aeroplane plus clearance. */
    EYE_HEIGHT("eye-height-m", Kind.LENGTH),
    /** Height group of aeroplanes. */
    HEIGHT_GROUP("height-group", Kind.COUNT),
    /** Number of light units. */
    UNITS("units", Kind.COUNT),
    /** Distance of a layout that is given, not solved. */
    DISTANCE("distance-m", Kind.LENGTH),
    /** Height of the skids over the hover point. */
    HOVER_HEIGHT("hover-height-m", Kind.LENGTH),
    /** Eye above the skids. */
    EYE_ABOVE_SKIDS("eye-above-skids-m", Kind.LENGTH),
    /** Width of the safety area around the FATO. */
    SAFETY_AREA_WIDTH("safety-area-width-m", Kind.LENGTH),
    /** Length of the FATO along the approach; the greatest that it may have where how it lies is not known. */
    FATO_LENGTH("fato-length-m", Kind.LENGTH),
    /** Least length that the FATO may have along the approach, where how it lies is not known. */
    FATO_LEAST_LENGTH("fato-least-length-m", Kind.LENGTH),
    /** Ground speed on the approach. */
    GROUND_SPEED("ground-speed-kt", Kind.SPEED),
    /** Rate of descent on the approach. */
    DESCENT("descent-ftmin", Kind.DESCENT),
    /** Turn of the approach axis, clockwise seen from above. */
    AXIS_TURN("axis-turn-deg", Kind.ANGLE),
    /** Distance between front and rear panels. */
    PANEL_DISTANCE("panel-distance-m", Kind.LENGTH),
    /** Width of the on-slope sector of the unit in hand. */
    ON_SLOPE_SECTOR("on-slope-sector-deg", Kind.ANGLE);

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
    private final Kind kind;

    Input(String key, Kind kind) {
        this.key = key;
        this.kind = kind;
    }

    /** Returns its name in files and on the command line, without dashes in front. */
    public String key() {
        return key;
    }

    /** Returns what it is, for people, with its name. */
    public Message message() {
        return Message.of("siting.input", term(), Words.name(key));
    }

    /** Returns what it is, for people. */
    public Argument term() {
        return Words.term("input." + key);
    }

    /** Returns its kind. */
    public Kind kind() {
        return kind;
    }

    /** Returns the input with a key, empty where there is none. */
    public static Optional<Input> of(String key) {
        return Arrays.stream(values()).filter(input -> input.key.equals(key)).findFirst();
    }
}
