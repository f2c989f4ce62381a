package slopewright.witness;

/** The approach type that selects the columns of the obstacle surface tables (Table 5-3, Table 5-1 of Vol II). */
public enum Approach {
    /** Non-instrument. */
    VISUAL("visual"),
    /** Any instrument approach. */
    INSTRUMENT("instrument");

    private final String key;

    Approach(String key) {
        this.key = key;
    }

    /** The written key. */
    public String key() {
        return key;
    }
}
