package slopewright.checks.internal.data;

import java.util.Optional;

import slopewright.model.Aerodrome;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.siting.site.AerodromePlaces;

/**
 * What the thresholds of a runway say of its length and direction. No rule set that was read says how well these must agree, so the rules
 * take what a survey and the printed digits can hold: a threshold to a metre, an elevation to a decimetre.
 */
final class RunwayGeometry {
    /** How well the places of two thresholds together are known. */
    static final double THRESHOLDS_M = 2;

    private RunwayGeometry() {
    }

    /** Returns the other end of the runway. */
    static Optional<RunwayEnd> opposite(RunwayEnd end) {
        return end.eContainer() instanceof Runway runway ? runway.getEnds().stream().filter(far -> far != end).findFirst()
                : Optional.empty();
    }

    /** Returns by how much a threshold is displaced, metres; nothing where nothing was entered. */
    static double displacedM(RunwayEnd end) {
        return end.getDisplacedThresholdM() == null ? 0 : end.getDisplacedThresholdM();
    }

    /** Returns the distance between the thresholds, metres; empty where one of them has no place. */
    static Optional<Double> betweenThresholdsM(RunwayEnd end) {
        return places(end).flatMap(places -> opposite(end).filter(far -> far.getThreshold() != null && end.getThreshold() != null)
                .map(far -> places.distanceM(end.getThreshold(), far.getThreshold())));
    }

    /** Returns the true bearing from the threshold to the other one, decimal degrees; empty where one of them has no place. */
    static Optional<Double> bearingDeg(RunwayEnd end) {
        return places(end).flatMap(places -> opposite(end).filter(far -> far.getThreshold() != null && end.getThreshold() != null)
                .map(far -> places.bearingDeg(end.getThreshold(), far.getThreshold())));
    }

    private static Optional<AerodromePlaces> places(RunwayEnd end) {
        return end.eContainer() instanceof Runway runway && runway.eContainer() instanceof Aerodrome aerodrome
                ? Optional.of(AerodromePlaces.of(aerodrome)) : Optional.empty();
    }

    /** Returns how far two directions are apart, decimal degrees, 0 to 180. */
    static double apartDeg(double bearingDeg, double otherDeg) {
        double turn = Math.abs(bearingDeg - otherDeg) % 360;
        return Math.min(turn, 360 - turn);
    }
}
