package slopewright.standards;

/** What may be changed where an existing object stands above the obstacle surface of an indicator. */
public enum RemedyKind {
    /** The approach slope is raised, with all settings. */
    RAISE_SLOPE,
    /** The beam is narrowed, so that the object stands outside. */
    NARROW_BEAM,
    /** The axis is turned, and the surface with it. */
    TURN_AXIS,
    /** The threshold is displaced, and the indicator and its surface with it. */
    DISPLACE_THRESHOLD,
    /** The indicator is moved upwind so far that the crossing height rises by the penetration. */
    MOVE_UPWIND_BY_CROSSING_HEIGHT,
    /** The indicator and its surface are moved upwind until nothing penetrates. */
    MOVE_UPWIND_UNTIL_CLEAR
}
