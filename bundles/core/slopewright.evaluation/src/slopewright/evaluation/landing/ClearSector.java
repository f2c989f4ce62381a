package slopewright.evaluation.landing;

import java.util.OptionalDouble;

import slopewright.geometry.Angles;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;

/**
 * Landing directions beside one another in each of which every settable slope from one on is clear, up to another where steeper ones are
 * not.
 *
 * @param fromTrueDeg first direction, whole degrees from true north
 * @param toTrueDeg   last direction, clockwise from the first; less than the first where north lies between
 * @param clearFromDeg the slope from which all of them are clear, decimal degrees
 * @param clearToDeg  the slope up to which they are, decimal degrees; empty where every steeper one is clear too
 */
public record ClearSector(int fromTrueDeg, int toTrueDeg, double clearFromDeg, OptionalDouble clearToDeg) {

    /** Makes a sector in which every steeper slope is clear too. */
    public ClearSector(int fromTrueDeg, int toTrueDeg, double clearFromDeg) {
        this(fromTrueDeg, toTrueDeg, clearFromDeg, OptionalDouble.empty());
    }

    /** Returns the clear slopes: the one from which on, or from which to which. */
    public Argument slopes() {
        return clearToDeg.isEmpty() ? Words.wholeDegrees(clearFromDeg)
                : Message.of("landing.slopes", Words.wholeDegrees(clearFromDeg), Words.wholeDegrees(clearToDeg.getAsDouble()));
    }

    /** Returns how many directions it holds. */
    public int count() {
        return Math.floorMod(toTrueDeg - fromTrueDeg, LandingDirections.COUNT) + 1;
    }

    /** Returns whether it holds a direction. */
    public boolean holds(double trueDeg) {
        return Angles.normaliseBearingDeg(trueDeg - fromTrueDeg) <= count() - 1;
    }

    /** Returns how far it is to turn from a direction into it, decimal degrees, zero within. */
    public double turnDeg(double trueDeg) {
        return Math.abs(signedTurnDeg(trueDeg));
    }

    /** Returns the direction in it that is nearest to one, decimal degrees from true north. */
    public double nearestDeg(double trueDeg) {
        return Angles.normaliseBearingDeg(trueDeg + signedTurnDeg(trueDeg));
    }

    private double signedTurnDeg(double trueDeg) {
        if (holds(trueDeg)) {
            return 0;
        }
        double onward = Angles.normaliseBearingDeg(fromTrueDeg - trueDeg);
        double back = Angles.normaliseBearingDeg(trueDeg - toTrueDeg);
        return onward <= back ? onward : -back;
    }

    /** Returns the sector in a sentence, bearings as they are turned by a variation: zero for true bearings. */
    public Message message(double variationDeg) {
        String key = count() == LandingDirections.COUNT ? "landing.all-round" : count() == 1 ? "landing.one-direction" : "landing.sector";
        return Message.of(key, bearing(fromTrueDeg - variationDeg), bearing(toTrueDeg - variationDeg), slopes());
    }

    private static Argument bearing(double deg) {
        return Words.quantity(deg, Notation.BEARING);
    }
}
