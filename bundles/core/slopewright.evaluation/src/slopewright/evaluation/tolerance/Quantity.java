package slopewright.evaluation.tolerance;

/** What is watched while units are set a little wrong. All in metres. */
public enum Quantity {

    /** Eye height over the threshold, or at the hover, on the lowest on-slope signal. */
    EYE_HEIGHT("eyeHeightM", "eye height"),
    /** Wheel height over the threshold of the most demanding aeroplane on that signal. */
    WHEEL_CLEARANCE("wheelClearanceM", "wheel clearance"),
    /** Height of the obstacle surface above the governing obstacle. */
    SURFACE_MARGIN("surfaceMarginM", "margin of the obstacle surface");

    private final String key;
    private final String label;

    Quantity(String key, String label) {
        this.key = key;
        this.label = label;
    }

    /** Returns its name in output. */
    public String key() {
        return key;
    }

    /** Returns what it is, for people. */
    public String label() {
        return label;
    }
}
