package slopewright.drawing.scene;

/**
 * A place in a scene.
 *
 * @param x scene units to the right
 * @param y scene units up
 */
public record ScenePoint(double x, double y) {
}
