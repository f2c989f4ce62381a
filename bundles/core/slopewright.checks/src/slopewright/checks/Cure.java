package slopewright.checks;

/** What kind of change may cure a rule that is not met; whether one does is found out by trying it. */
public enum Cure {
    /** The units are set or laid out as the rule set has them. */
    LAYOUT,
    /** One of the published remedies against what stands above an obstacle surface. */
    OBSTACLE_SURFACE,
    /** Something is entered, measured or decided; nothing can be worked out. */
    ENTRY
}
