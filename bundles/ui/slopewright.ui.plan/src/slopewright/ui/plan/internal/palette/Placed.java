package slopewright.ui.plan.internal.palette;

/** What an entry of the palette places. */
public sealed interface Placed {

    /**
     * An aid of a family.
     *
     * @param key key of the family
     */
    record Aid(String key) implements Placed {
    }

    /** A point obstacle. */
    record PointObstacle() implements Placed {
    }
}
