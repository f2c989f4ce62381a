package slopewright.witness;

/** Which set of unit settings is used. */
public enum Variant {
    /** The ordinary settings; steeper slopes change to the steep ones by themselves. */
    STANDARD("standard"),
    /** Beside an electronic glide path (wider on-slope sector). */
    GLIDE_PATH("glide-path"),
    /** At a heliport, on-slope sector 45'. */
    HELIPORT("heliport"),
    /** Two bars set half a degree below the slope and at the slope (the 2.5 and 3.0 degree custom). */
    LOW_CUSTOM("low-custom");

    private final String key;

    Variant(String key) {
        this.key = key;
    }

    /** The written key. */
    public String key() {
        return key;
    }
}
