package slopewright.standards;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Printed minimum intensities of a light unit by direction: contours around the axis of the beam, the inner one first. Inside the smallest
 * contour that encloses a direction its intensity holds; the source gives nothing between contours, so nothing is interpolated, and
 * outside the last one nothing is known.
 *
 * @param families  keys of the families
 * @param colour    key of the colour
 * @param condition when the intensities hold
 * @param contours  from the inner to the outer, intensity falling
 * @param citation  the printed figure
 */
public record PhotometryTable(List<String> families, String colour, Condition condition, List<Contour> contours, Citation citation) {
    /** When intensities hold. */
    public enum Condition {
        /** By day and by night. */
        ANY,
        /** By day. */
        DAY,
        /** By night. */
        NIGHT
    }

    /** How a contour is drawn. */
    public enum Shape {
        /** A circle; both extents are its radius. */
        CIRCLE,
        /** An ellipse. */
        ELLIPSE,
        /** Straight flanks with half-round ends. */
        STADIUM,
        /** Limits in azimuth alone, over the whole height of the beam. */
        AZIMUTH
    }

    /**
     * One contour.
     *
     * @param shape        how it is drawn
     * @param intensityCd  least intensity inside, candela
     * @param azimuthDeg   extent to each side of the axis, decimal degrees
     * @param elevationDeg extent above and below the axis, decimal degrees; 90 where there is no limit
     */
    public record Contour(Shape shape, double intensityCd, double azimuthDeg, double elevationDeg) {

        /** Returns whether a direction lies inside or on the contour. */
        public boolean encloses(double azimuth, double elevation) {
            double side = Math.abs(azimuth);
            double height = Math.abs(elevation);
            return switch (shape) {
                case CIRCLE -> Math.hypot(side, height) <= azimuthDeg;
                case ELLIPSE -> Math.hypot(side / azimuthDeg, height / elevationDeg) <= 1;
                case STADIUM -> Math.hypot(Math.max(0, side - (azimuthDeg - elevationDeg)), height) <= elevationDeg;
                case AZIMUTH -> side <= azimuthDeg;
            };
        }
    }

    /** Copies the lists. */
    public PhotometryTable {
        families = List.copyOf(families);
        contours = List.copyOf(contours);
        Objects.requireNonNull(colour);
        Objects.requireNonNull(condition);
        Objects.requireNonNull(citation);
    }

    /**
     * Returns the least intensity in a direction.
     *
     * @param azimuthDeg   to the side of the axis of the beam, decimal degrees
     * @param elevationDeg above the axis of the beam, decimal degrees
     * @return candela, empty outside the last contour, where the source prints nothing
     */
    public OptionalDouble intensityCd(double azimuthDeg, double elevationDeg) {
        return contours.stream().filter(contour -> contour.encloses(azimuthDeg, elevationDeg)).mapToDouble(Contour::intensityCd)
                .findFirst();
    }

    boolean isFor(String family, String wantedColour, boolean night) {
        return families.contains(family) && colour.equals(wantedColour) && condition != (night ? Condition.DAY : Condition.NIGHT);
    }

    /** Returns the same table with another citation. */
    PhotometryTable citing(Citation other) {
        return new PhotometryTable(families, colour, condition, contours, other);
    }

    /** Returns the same table, known no better than a given class. */
    public PhotometryTable atMost(Provenance weakest) {
        return citing(citation.atMost(weakest));
    }
}
