package slopewright.evaluation.tolerance;

import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.SitingException;
import slopewright.standards.Provenance;

/**
 * By how much each unit may be wrong, to both sides.
 *
 * @param angleMinutes its angle, minutes of arc, zero or more
 * @param levelM       the level of its lens, metres, zero or more
 * @param placeM       its place along the runway, metres, zero or more
 */
public record Tolerances(double angleMinutes, double levelM, double placeM) {

    /** Usual tolerance of an angle, minutes of arc. */
    public static final double USUAL_ANGLE_MINUTES = 3;
    /** Usual tolerance of a level, metres. */
    public static final double USUAL_LEVEL_M = 0.05;
    /** Usual tolerance of a place, metres. */
    public static final double USUAL_PLACE_M = 0.5;
    /** How well the usual tolerances are known: no document that was read publishes them. */
    public static final Provenance USUAL_PROVENANCE = Provenance.COMMON_PRACTICE;

    /** Refuses numbers that are no tolerance. */
    public Tolerances {
        if (!(angleMinutes >= 0) || !(levelM >= 0) || !(placeM >= 0) || !Double.isFinite(angleMinutes + levelM + placeM)) {
            throw new SitingException(Message.of("tolerance.negative"));
        }
    }

    /** Returns what a careful setting out leaves. Every place that studies tolerances without others that were entered takes these. */
    public static Tolerances usual() {
        return new Tolerances(USUAL_ANGLE_MINUTES, USUAL_LEVEL_M, USUAL_PLACE_M);
    }

    /** Returns whether these are the usual ones. */
    public boolean isUsual() {
        return equals(usual());
    }

    /** Returns what is assumed, in a sentence, with how well it is known. */
    public Message message() {
        return Message.of(isUsual() ? "tolerance.usual" : "tolerance.entered", Words.min(angleMinutes), Words.m(levelM), Words.m(placeM),
                Words.term("provenance." + USUAL_PROVENANCE.key()));
    }
}
