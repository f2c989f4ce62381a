package slopewright.witness;

/**
 * A point of an obstacle.
 *
 * @param alongM along the landing direction from the threshold, metres
 * @param rightM to the right, metres
 * @param heightM top above the threshold, metres
 */
public record Spot(double alongM, double rightM, double heightM) {
}
