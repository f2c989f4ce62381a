package slopewright.siting.range;

/** Under which light an eye looks. Each has its own threshold of illuminance at the eye. */
public enum LightCondition {

    /** By day. */
    DAY("day"),
    /** At twilight, which tables call intermediate. */
    TWILIGHT("twilight"),
    /** At night. */
    NIGHT("night");

    private final String key;

    LightCondition(String key) {
        this.key = key;
    }

    /** Returns the word used in keys and output. */
    public String key() {
        return key;
    }
}
