package slopewright.evaluation.remedy;

import java.util.OptionalDouble;

import slopewright.messages.Message;
import slopewright.messages.Words;

/**
 * One way to cure a penetration of the obstacle surface.
 *
 * @param kind   what is changed
 * @param amount by how much, or to which value; empty where this remedy does not cure it
 * @param unit   {@code deg} or {@code m}
 * @param text   one sentence for people
 */
public record Remedy(Kind kind, OptionalDouble amount, String unit, String text) {

    /** What is changed. */
    public enum Kind {
        /** The approach slope, to the amount in decimal degrees. */
        RAISE_SLOPE,
        /** The axis, by the amount in decimal degrees, clockwise seen from above. */
        TURN_AXIS,
        /** The beam, to the amount in decimal degrees on the obstacle's side of the axis. */
        NARROW_BEAM,
        /** The threshold, by the amount in metres in the landing direction. */
        DISPLACE_THRESHOLD,
        /** The indicator, by the amount in metres in the landing direction, so that the crossing height rises by the penetration. */
        MOVE_UPWIND_BY_CROSSING_HEIGHT,
        /** The indicator and its surface, by the amount in metres in the landing direction, until nothing penetrates. */
        MOVE_UPWIND_UNTIL_CLEAR
    }

    /** Returns the sentence as data. */
    public Message message() {
        return Message.of("plain", Words.name(text));
    }

    /** Returns whether it cures the penetration. */
    public boolean helps() {
        return amount.isPresent();
    }
}
