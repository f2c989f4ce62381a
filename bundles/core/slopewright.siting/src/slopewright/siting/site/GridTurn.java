package slopewright.siting.site;

/**
 * How a grid lies at a place on the ground. Places and bearings are brought through the projection itself, which has both in it; this is
 * for people who compare with what was measured in the field.
 *
 * @param convergenceDeg where its north lies from true north, decimal degrees, clockwise positive
 * @param scale          how long a metre of the ground is on it, along the meridian, a number near one
 */
public record GridTurn(double convergenceDeg, double scale) {
}
