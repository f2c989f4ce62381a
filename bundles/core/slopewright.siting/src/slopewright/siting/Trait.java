package slopewright.siting;

/** What families have in common. A rule names the traits that it needs; a rule that needs none has something to say about every family. */
public enum Trait {
    /** Units of sharp transition in a row square to the axis, each set higher than the next one outward. */
    ROW,
    /** Bars of units one behind the other. */
    BARS,
    /** A wing bar with legs of units that are seen only off the slope. */
    LEGS,
    /** Units that stand opposite each other on both sides. */
    MIRRORED,
    /** Units that show more than two vertical sectors. */
    SECTORS,
    /** Sectors whose widths depend on the make of the unit. */
    SECTORS_BY_MAKE,
    /** A red sector with an edge to the dark below. */
    DARK_BELOW,
    /** Two units beside each other of which the pattern is read together. */
    PAIR,
    /** Unlit panels. */
    PANELS,
    /** The eye height over the threshold may be chosen within a range; the distance does not follow from the aeroplane. */
    CHOSEN_EYE_HEIGHT
}
