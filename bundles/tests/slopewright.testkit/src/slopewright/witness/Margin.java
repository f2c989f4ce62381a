package slopewright.witness;

/**
 * An obstacle against a surface.
 *
 * @param inside whether any part of it, accuracy added, lies in the plan of the surface
 * @param at the point that governs, or the first point where nothing lies inside
 * @param limitM surface over or under the governing point, on the safe side, metres; NaN outside
 * @param marginM limit less height less vertical accuracy, negative for a penetration, metres; NaN outside
 */
public record Margin(boolean inside, Spot at, double limitM, double marginM) {
}
