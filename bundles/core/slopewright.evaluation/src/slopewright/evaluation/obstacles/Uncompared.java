package slopewright.evaluation.obstacles;

import slopewright.messages.Message;
import slopewright.model.Identified;

/**
 * Something that stands there and could not be compared with anything.
 *
 * @param element the obstacle or the survey block
 * @param label   what it is called, for people
 * @param reason  what it lacks
 */
public record Uncompared(Identified element, String label, Message reason) {
}
