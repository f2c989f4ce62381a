package slopewright.siting;

import java.util.Locale;

/** How a light shows in time. */
public enum LightForm {
    /** Always on. */
    STEADY,
    /** On with a rhythm that tells how far off the slope the pilot is. */
    PULSATING,
    /** On and off at an even rate. */
    FLASHING,
    /** Not lit. */
    OFF;

    /** Returns the word used in files and output. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
