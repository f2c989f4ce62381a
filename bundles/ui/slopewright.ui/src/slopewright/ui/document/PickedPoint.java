package slopewright.ui.document;

/**
 * One point of a survey block that was picked in a view.
 *
 * @param blockId id of the block
 * @param index   which of its points, from 0
 */
public record PickedPoint(String blockId, int index) {
}
