package slopewright.evaluation.portable;

import java.util.Arrays;
import java.util.List;

import slopewright.geometry.Angles;

/**
 * What a unit that is not level does to the path. Tilted along its axis the slope is wrong by the whole tilt; tilted across, only away
 * from the axis, by the tangent of the azimuth.
 *
 * @param minutes         tilt, minutes of arc
 * @param slopeDeg        the slope that was meant, decimal degrees
 * @param slopeErrorDeg   error of the slope on the axis for a tilt along it, decimal degrees
 * @param edgeAzimuthDeg  azimuth of the edge of the beam from its axis, decimal degrees
 * @param acrossEdgeMin   error at that edge for a tilt across the axis, minutes of arc
 * @param heights         what the tilt along the axis makes of the height of the path
 */
public record LevellingEffect(double minutes, double slopeDeg, double slopeErrorDeg, double edgeAzimuthDeg, double acrossEdgeMin,
        List<HeightError> heights) {

    private static final double[] DISTANCES_M = {100, 250, 500, 1000, 2000};

    /**
     * The height of the path at one distance.
     *
     * @param distanceM  from the unit, metres
     * @param heightM    height that was meant above the lens, metres
     * @param downM      by how much it is lower when the unit is tilted down, metres, zero or more
     * @param upM        by how much it is higher when the unit is tilted up, metres, zero or more
     */
    public record HeightError(double distanceM, double heightM, double downM, double upM) {
    }

    /** Copies the list. */
    public LevellingEffect {
        heights = List.copyOf(heights);
    }

    /**
     * Works the effect out.
     *
     * @param slopeDeg       the slope, decimal degrees
     * @param minutes        tilt, minutes of arc, zero or more
     * @param edgeAzimuthDeg azimuth of the edge of the beam, decimal degrees from its axis
     * @return the effect
     */
    public static LevellingEffect of(double slopeDeg, double minutes, double edgeAzimuthDeg) {
        double error = Angles.minutesToDeg(minutes);
        List<HeightError> heights = Arrays.stream(DISTANCES_M).mapToObj(distance -> {
            double meant = distance * Angles.tanDeg(slopeDeg);
            return new HeightError(distance, meant, meant - distance * Angles.tanDeg(slopeDeg - error),
                    distance * Angles.tanDeg(slopeDeg + error) - meant);
        }).toList();
        double across = Angles.tanDeg(edgeAzimuthDeg) * Angles.tanDeg(error);
        return new LevellingEffect(minutes, slopeDeg, error, edgeAzimuthDeg, Angles.degToMinutes(Math.toDegrees(Math.atan(across))),
                heights);
    }
}
