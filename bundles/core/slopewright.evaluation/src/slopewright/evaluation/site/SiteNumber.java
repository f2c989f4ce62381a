package slopewright.evaluation.site;

import java.util.OptionalDouble;

import slopewright.messages.Argument;
import slopewright.messages.Words;

/** A number that a new site needs: what it may be, and what is assumed until somebody says better. */
public enum SiteNumber {

    /** Latitude of the threshold or of the middle of the FATO, degrees north; none for a local site. */
    LATITUDE("latitude-deg", -90, 90, OptionalDouble.empty(), true, true),
    /** Longitude of the same place, degrees east; none for a local site. */
    LONGITUDE("longitude-deg", -180, 180, OptionalDouble.empty(), true, true),
    /** Day for which the two hold on WGS 84, a decimal year; none where nobody said it. The least is the year of the first WGS 84. */
    EPOCH("coordinate-epoch-year", 1984, 2100, OptionalDouble.empty(), true, true),
    /** Elevation of the same place, metres. */
    ELEVATION("elevation-m", -500, 6000, OptionalDouble.of(0), true, true),
    /** True bearing of landing, degrees. */
    BEARING("bearing-deg", 0, 360, OptionalDouble.of(90), true, true),
    /** Length of the runway, metres. */
    LENGTH("runway-length-m", 200, 6000, OptionalDouble.of(1200), true, false),
    /** Width of the runway, metres. */
    WIDTH("runway-width-m", 10, 100, OptionalDouble.of(30), true, false),
    /** Side of the FATO, metres. */
    FATO("fato-length-m", 8, 200, OptionalDouble.of(20), false, true),
    /** Approach slope, degrees. */
    SLOPE("slope-deg", 2, 12, OptionalDouble.of(3), true, true),
    /** Eye-to-wheel height of the aeroplanes in regular use, metres. */
    EYE_TO_WHEEL("eye-to-wheel-m", 0.5, 14, OptionalDouble.of(3.66), true, false),
    /** Height of the pilot's eyes over the skids, metres. */
    EYE_ABOVE_SKIDS("eye-above-skids-m", 0.5, 6, OptionalDouble.of(1.8), false, true),
    /** Speed over the ground on the approach, knots; none where no descent is planned. */
    GROUND_SPEED("ground-speed-kt", 5, 200, OptionalDouble.empty(), false, true),
    /** Rate of descent on the approach, feet a minute; none where no descent is planned. */
    DESCENT("descent-ftmin", 50, 3000, OptionalDouble.empty(), false, true),
    /** True bearing along the FATO, degrees; none where nobody measured it. */
    FATO_BEARING("fato-bearing-deg", 0, 360, OptionalDouble.empty(), false, true),
    /** How far all that stands round the pad was surveyed, metres; none where nobody did. */
    SURVEY_REACH("survey-reach-m", 100, 100_000, OptionalDouble.empty(), false, true),
    /** Accuracy of that survey in place, metres. */
    SURVEY_PLACE("survey-place-m", 0, 50, OptionalDouble.empty(), false, true),
    /** Accuracy of that survey in height, metres. */
    SURVEY_HEIGHT("survey-height-m", 0, 50, OptionalDouble.empty(), false, true),
    /** Magnetic variation as a chart has it, degrees, east positive; none where the model is to be asked. */
    VARIATION("variation-deg", -180, 180, OptionalDouble.empty(), true, true),
    /** Its change in a year, degrees. */
    VARIATION_CHANGE("variation-change-deg", -2, 2, OptionalDouble.empty(), true, true),
    /** Elevation of the threshold at the other end, metres; none where the runway begins with one end. */
    OTHER_ELEVATION("other-end-elevation-m", -500, 6000, OptionalDouble.empty(), true, false),
    /** How far the aerial of the aeroplanes is below the eyes, metres; it counts where there is an electronic glide path. */
    EYE_TO_ANTENNA("eye-to-antenna-m", 0.1, 10, OptionalDouble.of(1.5), true, false),
    /** Height of the electronic glide path over the threshold, metres. */
    GLIDE_PATH_HEIGHT("glide-path-height-m", 5, 30, OptionalDouble.of(15), true, false);

    private final String key;
    private final double min;
    private final double max;
    private final OptionalDouble assumed;
    private final boolean runway;
    private final boolean helipad;

    SiteNumber(String key, double min, double max, OptionalDouble assumed, boolean runway, boolean helipad) {
        this.key = key;
        this.min = min;
        this.max = max;
        this.assumed = assumed;
        this.runway = runway;
        this.helipad = helipad;
    }

    /** Returns the name of it with its unit, as a word of the command line has it. */
    public String key() {
        return key;
    }

    /** Returns what it is, for people. */
    public Argument term() {
        return Words.term("site-number." + key);
    }

    /** Returns whether it is a length, metres in the model. */
    public boolean isLength() {
        return key.endsWith("-m");
    }

    /** Returns the least number that makes sense, in the unit of the model. */
    public double min() {
        return min;
    }

    /** Returns the greatest number that makes sense, in the unit of the model. */
    public double max() {
        return max;
    }

    /** Returns what is assumed at first, in the unit of the model; empty where nothing is. */
    public OptionalDouble assumed() {
        return assumed;
    }

    /** Returns whether a site can be begun without it: a rule asks for it where it has to be known. */
    public boolean isOptional() {
        return this == LATITUDE || this == LONGITUDE || this == EPOCH || ordinal() >= GROUND_SPEED.ordinal();
    }

    /** Returns whether it is needed where the site is a helipad, or a runway. */
    public boolean isAsked(boolean atHelipad) {
        return atHelipad ? helipad : runway;
    }
}
