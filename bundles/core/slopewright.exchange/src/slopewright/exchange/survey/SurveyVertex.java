package slopewright.exchange.survey;

/**
 * A surveyed position.
 *
 * @param north      latitude in decimal degrees, or metres north
 * @param east       longitude in decimal degrees, or metres east
 * @param elevationM third number of the position, as a rule an elevation, metres; NaN where it has none
 */
public record SurveyVertex(double north, double east, double elevationM) {
}
