package slopewright.exchange.survey;

/**
 * A surveyed position.
 *
 * @param north      latitude in decimal degrees, or metres north
 * @param east       longitude in decimal degrees, or metres east
 * @param elevationM elevation that the position itself carries, metres; NaN where it carries none
 */
public record SurveyVertex(double north, double east, double elevationM) {
}
