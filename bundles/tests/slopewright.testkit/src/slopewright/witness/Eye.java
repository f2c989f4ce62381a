package slopewright.witness;

/**
 * A pilot's eye in the runway frame.
 *
 * @param alongM along the landing direction from the threshold, negative on approach, metres
 * @param rightM to the right, metres
 * @param heightM above the threshold, metres
 */
public record Eye(double alongM, double rightM, double heightM) {
}
