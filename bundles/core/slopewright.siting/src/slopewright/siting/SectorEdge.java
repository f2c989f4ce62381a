package slopewright.siting;

import java.util.Objects;

/**
 * The boundary between two vertical sectors of a unit: a plane through the lens, square to the unit's azimuth.
 *
 * @param angleDeg     elevation of the plane along the axis, decimal degrees
 * @param widthMinutes how wide the change from one light to the other is, minutes of arc, centred on the plane
 * @param below        what is seen below
 * @param above        what is seen above
 */
public record SectorEdge(double angleDeg, double widthMinutes, Light below, Light above) {

    /** Refuses missing parts and numbers out of range. */
    public SectorEdge {
        Objects.requireNonNull(below);
        Objects.requireNonNull(above);
        if (!Double.isFinite(angleDeg) || !(widthMinutes >= 0)) {
            throw new IllegalArgumentException("a sector edge needs a finite angle and a width of zero or more");
        }
    }

    /** Returns the edge turned up by an angle, decimal degrees. */
    public SectorEdge raised(double byDeg) {
        return new SectorEdge(angleDeg + byDeg, widthMinutes, below, above);
    }

    /** Spelled out: what a record has by itself is written anew at every start. */
    @Override
    public boolean equals(Object other) {
        return other instanceof SectorEdge that && Double.compare(angleDeg, that.angleDeg) == 0
                && Double.compare(widthMinutes, that.widthMinutes) == 0 && below.equals(that.below)
                && above.equals(that.above);
    }

    @Override
    public int hashCode() {
        int hash = Double.hashCode(angleDeg);
        hash = 31 * hash + Double.hashCode(widthMinutes);
        hash = 31 * hash + below.hashCode();
        return 31 * hash + above.hashCode();
    }
}
