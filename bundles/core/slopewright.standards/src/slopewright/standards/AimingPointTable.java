package slopewright.standards;

import java.util.List;

import slopewright.geometry.StoredResolution;

/**
 * Distance from the threshold to the beginning of the aiming point marking by landing distance, where no slope indicator decides.
 *
 * @param bands    bands without gap, shortest first
 * @param citation the printed table
 */
public record AimingPointTable(List<Band> bands, Citation citation) {

    /**
     * One band of landing distances.
     *
     * @param fromM     shortest landing distance, metres
     * @param belowM    first landing distance above the band, metres; infinite in the last band
     * @param distanceM threshold to marking, metres
     */
    public record Band(double fromM, double belowM, double distanceM) {
    }

    /** Copies the bands. */
    public AimingPointTable {
        bands = List.copyOf(bands);
    }

    /**
     * Returns the distance for a landing distance. One that stands at an edge within the stored resolution falls into the band above.
     *
     * @param landingDistanceM metres, zero or more
     * @return metres from the threshold
     */
    public double distanceM(double landingDistanceM) {
        return bands.stream().filter(band -> StoredResolution.hasReached(landingDistanceM, band.fromM())
                && !StoredResolution.hasReached(landingDistanceM, band.belowM())).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("a landing distance of " + landingDistanceM + " m is out of range"))
                .distanceM();
    }
}
