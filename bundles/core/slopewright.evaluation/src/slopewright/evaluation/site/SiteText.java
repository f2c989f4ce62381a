package slopewright.evaluation.site;

/** A text that a new site needs; empty where nobody said it yet. */
public enum SiteText {

    /** Who begins the project. */
    AUTHOR,
    /** The day on which it is begun, year, month and day. */
    DATE,
    /** To what elevations refer. */
    VERTICAL_DATUM,
    /** Where the survey of what stands round the pad comes from. */
    SURVEY_SOURCE,
    /** The day of that survey, year, month and day. */
    SURVEY_DATE,
    /** Where the magnetic variation stands. */
    VARIATION_SOURCE,
    /** The day for which it stands there, year, month and day. */
    VARIATION_DATE
}
