package slopewright.edit.site;

import java.util.OptionalDouble;

/** A number that a new site needs: what it may be, and what is assumed until somebody says better. */
public enum SiteNumber {

    /** Latitude of the threshold or of the middle of the FATO, degrees north; none for a local site. */
    LATITUDE(-90, 90, OptionalDouble.empty(), true, true),
    /** Longitude of the same place, degrees east; none for a local site. */
    LONGITUDE(-180, 180, OptionalDouble.empty(), true, true),
    /** Elevation of the same place, metres. */
    ELEVATION(-500, 6000, OptionalDouble.of(0), true, true),
    /** True bearing of landing, degrees. */
    BEARING(0, 360, OptionalDouble.of(90), true, true),
    /** Length of the runway, metres. */
    LENGTH(200, 6000, OptionalDouble.of(1200), true, false),
    /** Width of the runway, metres. */
    WIDTH(10, 100, OptionalDouble.of(30), true, false),
    /** Side of the FATO, metres. */
    FATO(8, 200, OptionalDouble.of(20), false, true),
    /** Approach slope, degrees. */
    SLOPE(2, 12, OptionalDouble.of(3), true, true),
    /** Eye-to-wheel height of the aeroplanes in regular use, metres. */
    EYE_TO_WHEEL(0.5, 14, OptionalDouble.of(3.66), true, false),
    /** Height of the pilot's eyes over the skids, metres. */
    EYE_ABOVE_SKIDS(0.5, 6, OptionalDouble.of(1.8), false, true);

    private final double min;
    private final double max;
    private final OptionalDouble assumed;
    private final boolean runway;
    private final boolean helipad;

    SiteNumber(double min, double max, OptionalDouble assumed, boolean runway, boolean helipad) {
        this.min = min;
        this.max = max;
        this.assumed = assumed;
        this.runway = runway;
        this.helipad = helipad;
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

    /** Returns whether it is needed where the site is a helipad, or a runway. */
    public boolean isAsked(boolean atHelipad) {
        return atHelipad ? helipad : runway;
    }
}
