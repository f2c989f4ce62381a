package slopewright.ui.plan.internal;

/**
 * How an obstacle stands against the obstacle surface that it is worst for.
 *
 * @param excessM metres above the surface; negative below
 * @param aid     the aid whose surface it is
 */
public record Obstruction(double excessM, String aid) {
}
