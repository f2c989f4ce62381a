package slopewright.standards;

import java.util.List;
import java.util.Optional;

import slopewright.geometry.StoredResolution;

/**
 * Wheel clearance over the threshold by eye-to-wheel height in approach configuration.
 *
 * @param groups   bands without gap, lowest first; each includes its lower and excludes its upper end
 * @param citation the printed table, for its minimum clearances
 * @param desired  where its desired clearances come from, which may be known worse
 */
public record WheelClearanceTable(List<Group> groups, Citation citation, Citation desired) {

    /**
     * One band.
     *
     * @param fromM             lowest eye-to-wheel height, metres
     * @param belowM            first eye-to-wheel height above the band, metres
     * @param desiredM          clearance to be provided where practicable, metres
     * @param minimumM          clearance that an aeronautical study may accept, metres
     * @param lightAeroplaneM   reduced minimum for runways mainly used by light aeroplanes without turbojets, metres; empty where
     *                          the table has none
     */
    public record Group(double fromM, double belowM, double desiredM, double minimumM, Optional<Double> lightAeroplaneM) {
    }

    /** Copies the bands. */
    public WheelClearanceTable {
        groups = List.copyOf(groups);
    }

    /** Returns the first eye-to-wheel height above the table, metres. */
    public double belowM() {
        return groups.get(groups.size() - 1).belowM();
    }

    /**
     * Returns the band of an eye-to-wheel height. A height that stands at an edge within the stored resolution, as one that was entered in
     * feet, falls into the band above, which asks for more.
     *
     * @param eyeToWheelM metres
     * @return the band, empty where the table does not reach so far
     */
    public Optional<Group> group(double eyeToWheelM) {
        return groups.stream().filter(group -> StoredResolution.hasReached(eyeToWheelM, group.fromM())
                && !StoredResolution.hasReached(eyeToWheelM, group.belowM())).findFirst();
    }
}
