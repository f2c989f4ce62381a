package slopewright.siting.range;

import slopewright.geometry.Angles;

/**
 * Allard's law for a point of light seen through the air: the illuminance at the eye is the intensity, weakened by the air, over the
 * square of the distance. The air weakens by the same share on each metre.
 */
public final class Allard {

    /** The bisection ends where the range is known so well, metres. */
    public static final double STOP_WIDTH_M = 0.001;

    /**
     * A range and how it was found.
     *
     * @param rangeM   the greatest distance from which the light is still seen, metres, known to {@link Allard#STOP_WIDTH_M}
     * @param steps    number of halvings
     * @param stopRule why it ended, for people
     */
    public record Solution(double rangeM, int steps, String stopRule) {
    }

    private Allard() {
    }

    /**
     * Returns how much the air weakens light.
     *
     * @param visibilityM     meteorological optical range, metres, more than zero; infinite for clear air
     * @param contrastPercent contrast of a dark object at that range, per cent; 5 gives 2.996 over the visibility, in short 3 / V
     * @return the extinction coefficient, 1/m
     * @throws IllegalArgumentException where a number is out of its range
     */
    public static double extinctionPerM(double visibilityM, double contrastPercent) {
        if (!(visibilityM > 0) || !(contrastPercent > 0 && contrastPercent < 100)) {
            throw new IllegalArgumentException("a visibility above zero and a contrast between 0 and 100 per cent are needed");
        }
        return -Math.log(contrastPercent / 100) / visibilityM;
    }

    /**
     * Returns the illuminance at the eye.
     *
     * @param intensityCd    intensity toward the eye, candela
     * @param extinctionPerM extinction coefficient of the air, 1/m
     * @param distanceM      distance, metres, more than zero
     * @return lux
     */
    public static double illuminanceLx(double intensityCd, double extinctionPerM, double distanceM) {
        return intensityCd * Math.exp(-extinctionPerM * distanceM) / (distanceM * distanceM);
    }

    /**
     * Finds the greatest distance from which a light is seen. The illuminance only falls with the distance, so that halving an interval
     * that starts with clear air at its far end finds the one solution.
     *
     * @param intensityCd    intensity, candela, more than zero
     * @param extinctionPerM extinction coefficient, 1/m, zero or more
     * @param thresholdLx    illuminance that the eye needs, lux, more than zero
     * @return the range
     * @throws IllegalArgumentException where a number is out of its range
     */
    public static Solution range(double intensityCd, double extinctionPerM, double thresholdLx) {
        if (!(intensityCd > 0) || !(thresholdLx > 0) || !(extinctionPerM >= 0) || !Double.isFinite(intensityCd / thresholdLx)) {
            throw new IllegalArgumentException("intensity and threshold must be more than zero and finite, the extinction zero or more");
        }
        double low = 0;
        double high = Math.sqrt(intensityCd / thresholdLx);
        if (extinctionPerM == 0) {
            return new Solution(high, 0, "clear air, without iteration");
        }
        int steps = 0;
        double middle = (low + high) / 2;
        while (high - low > STOP_WIDTH_M && middle > low && middle < high) {
            if (illuminanceLx(intensityCd, extinctionPerM, middle) >= thresholdLx) {
                low = middle;
            } else {
                high = middle;
            }
            middle = (low + high) / 2;
            steps++;
        }
        return new Solution(low, steps, "halved until the interval is " + STOP_WIDTH_M + " m or less");
    }

    /**
     * Returns from how far two lights look an angle apart.
     *
     * @param apparentGapM distance between the lights square to the line of sight, metres
     * @param minutes      the angle, minutes of arc, more than zero
     * @return metres
     */
    public static double separationRangeM(double apparentGapM, double minutes) {
        return apparentGapM / Angles.tanDeg(Angles.minutesToDeg(minutes));
    }

    /**
     * Returns the angle between two lights.
     *
     * @param apparentGapM distance between the lights square to the line of sight, metres
     * @param rangeM       distance to the eye, metres, more than zero
     * @return minutes of arc
     */
    public static double separationMinutes(double apparentGapM, double rangeM) {
        return Angles.degToMinutes(Angles.elevationDeg(apparentGapM, rangeM));
    }
}
