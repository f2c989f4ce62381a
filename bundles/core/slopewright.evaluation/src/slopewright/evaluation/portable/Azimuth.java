package slopewright.evaluation.portable;

import java.util.Objects;

import slopewright.geometry.Angles;
import slopewright.siting.magnetic.SiteVariation;

/**
 * Where a unit is turned to: outward along the approach.
 *
 * @param landingTrueDeg landing direction, decimal degrees from true north
 * @param beamTrueDeg    axis of the beam, decimal degrees from true north
 * @param variation      the magnetic variation on the day
 */
public record Azimuth(double landingTrueDeg, double beamTrueDeg, SiteVariation variation) {

    /** Refuses missing parts. */
    public Azimuth {
        Objects.requireNonNull(variation);
    }

    /**
     * Makes the azimuth of a unit.
     *
     * @param landingTrueDeg landing direction, decimal degrees from true north
     * @param turnDeg        turn of the unit's axis from the approach direction, decimal degrees, clockwise seen from above
     * @param variation      the magnetic variation on the day
     * @return the azimuth
     */
    public static Azimuth of(double landingTrueDeg, double turnDeg, SiteVariation variation) {
        return new Azimuth(Angles.normaliseBearingDeg(landingTrueDeg), Angles.normaliseBearingDeg(landingTrueDeg + 180 + turnDeg),
                variation);
    }

    /** Returns the landing direction by compass, decimal degrees. */
    public double landingMagneticDeg() {
        return variation.magneticDeg(landingTrueDeg);
    }

    /** Returns the axis of the beam by compass, decimal degrees. */
    public double beamMagneticDeg() {
        return variation.magneticDeg(beamTrueDeg);
    }
}
