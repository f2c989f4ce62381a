package slopewright.rcp.internal.site;

import java.util.List;
import java.util.Locale;
import slopewright.ui.units.Quantity;

/** A number of the site that the wizard asks for: what it is, what it may be, and what is assumed until somebody says better. */
public enum SiteField {

    /** Latitude of the threshold or of the middle of the FATO, degrees north; empty for a local site. */
    LATITUDE(Quantity.COORDINATE, -90, 90, "", true, true),
    /** Longitude of the same place, degrees east; empty for a local site. */
    LONGITUDE(Quantity.COORDINATE, -180, 180, "", true, true),
    /** Elevation of the same place, metres. */
    ELEVATION(Quantity.LENGTH, -500, 6000, "0", true, true),
    /** True bearing of landing, degrees. */
    BEARING(Quantity.ANGLE, 0, 360, "90", true, true),
    /** Length of the runway, metres. */
    LENGTH(Quantity.LENGTH, 200, 6000, "1200", true, false),
    /** Width of the runway, metres. */
    WIDTH(Quantity.LENGTH, 10, 100, "30", true, false),
    /** Side of the FATO, metres. */
    FATO(Quantity.LENGTH, 8, 200, "20", false, true),
    /** Approach slope, degrees. */
    SLOPE(Quantity.ANGLE, 2, 12, "3", true, true),
    /** Eye-to-wheel height of the aeroplanes in regular use, metres. */
    EYE_TO_WHEEL(Quantity.LENGTH, 0.5, 14, "3.66", true, false),
    /** Height of the pilot's eyes over the skids, metres. */
    EYE_ABOVE_SKIDS(Quantity.LENGTH, 0.5, 6, "1.8", false, true);

    private final Quantity quantity;
    private final double least;
    private final double greatest;
    private final String assumed;
    private final boolean runway;
    private final boolean helipad;

    SiteField(Quantity quantity, double least, double greatest, String assumed, boolean runway, boolean helipad) {
        this.quantity = quantity;
        this.least = least;
        this.greatest = greatest;
        this.assumed = assumed;
        this.runway = runway;
        this.helipad = helipad;
    }

    /** The fields of the first step, in order. */
    static final List<SiteField> OF_SITE = List.of(LATITUDE, LONGITUDE, ELEVATION, BEARING, LENGTH, WIDTH, FATO);

    /** Returns what kind of number it is. */
    public Quantity quantity() {
        return quantity;
    }

    /** Returns the least number that makes sense, in the unit of the model. */
    public double least() {
        return least;
    }

    /** Returns the greatest number that makes sense, in the unit of the model. */
    public double greatest() {
        return greatest;
    }

    /** Returns what is assumed at first, in the unit of the model; empty where nothing is. */
    public String assumed() {
        return assumed;
    }

    /** Returns whether it is asked for where the site is a helipad, or a runway. */
    public boolean isAsked(boolean atHelipad) {
        return atHelipad ? helipad : runway;
    }

    /** Returns the key of its name in the catalogue. */
    public String key() {
        return "site." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
