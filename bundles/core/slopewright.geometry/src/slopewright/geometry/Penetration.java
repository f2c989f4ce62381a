package slopewright.geometry;

/**
 * Where something stands highest against a surface.
 *
 * @param point   the governing point, at the height that was compared
 * @param limitM  height of the surface there, metres in the frame
 * @param excessM height above the surface, metres; negative where the point stays below
 */
public record Penetration(FramePoint point, double limitM, double excessM) {
}
