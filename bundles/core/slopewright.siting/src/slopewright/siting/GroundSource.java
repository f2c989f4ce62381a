package slopewright.siting;

import java.util.Locale;

/** From what the height of the lenses over the threshold follows. */
public enum GroundSource {
    /** A profile of the ground along the units that somebody entered. */
    TYPED_PROFILE,
    /** Levels of the ground that were surveyed beside the line of the units. */
    SURVEYED_LEVELS,
    /** A uniform slope of the ground. */
    UNIFORM_SLOPE,
    /** The height of the lenses themselves. */
    LENS_HEIGHT,
    /** Nothing is known of the ground: it is taken as level with the threshold. */
    LEVEL,
    /** The elevations of units that stand already. */
    UNITS;

    /** Returns the word used in files and output. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
