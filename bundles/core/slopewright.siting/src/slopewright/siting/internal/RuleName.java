package slopewright.siting.internal;

/**
 * The name of a value without its unit, and with each unit in which a rule set may give it. Made once a family and name, because a layout
 * asks for some thirty values and is itself worked out thousands of times in a tolerance or a search.
 *
 * @param metres  the name of a length in metres
 * @param feet    of a length in feet
 * @param degrees of an angle in decimal degrees
 * @param minutes of an angle in minutes of arc
 */
record RuleName(String metres, String feet, String degrees, String minutes) {

    /** Makes the names of a value. */
    static RuleName of(String stem) {
        return new RuleName(stem + "-m", stem + "-ft", stem + "-deg", stem + "-min");
    }
}
