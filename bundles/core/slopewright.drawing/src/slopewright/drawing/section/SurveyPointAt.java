package slopewright.drawing.section;

import slopewright.geometry.FramePoint;
import slopewright.model.SurveyBlock;

/**
 * A point of a survey block that a section shows.
 *
 * @param block the block
 * @param index which of its points, from zero
 * @param place its place in the frame of the approach
 */
public record SurveyPointAt(SurveyBlock block, int index, FramePoint place) {
}
