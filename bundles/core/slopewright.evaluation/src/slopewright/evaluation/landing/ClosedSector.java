package slopewright.evaluation.landing;

import java.util.Objects;

/**
 * Landing directions beside one another that are not clear from any slope on, for one reason.
 *
 * @param fromTrueDeg first direction, whole degrees from true north
 * @param toTrueDeg   last direction, clockwise from the first
 * @param steepest    what stands against the steepest slope that can be set, in the direction in which it stands highest
 */
public record ClosedSector(int fromTrueDeg, int toTrueDeg, LandingCell steepest) {

    /** Refuses missing parts. */
    public ClosedSector {
        Objects.requireNonNull(steepest);
    }
}
