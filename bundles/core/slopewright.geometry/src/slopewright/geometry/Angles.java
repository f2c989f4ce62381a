package slopewright.geometry;

import java.util.Locale;

/** Conversions and text forms of angles, which are decimal degrees everywhere unless a name says minutes. */
public final class Angles {

    /** Minutes of arc in one degree. */
    public static final double MINUTES_PER_DEGREE = 60.0;

    private Angles() {
    }

    /**
     * Turns degrees and minutes into decimal degrees.
     *
     * @param degrees whole degrees, zero or more
     * @param minutes minutes of arc
     * @return decimal degrees
     */
    public static double ofDegreesMinutes(int degrees, double minutes) {
        return degrees + minutes / MINUTES_PER_DEGREE;
    }

    /** Returns minutes of arc as decimal degrees. */
    public static double minutesToDeg(double minutes) {
        return minutes / MINUTES_PER_DEGREE;
    }

    /** Returns decimal degrees as minutes of arc. */
    public static double degToMinutes(double degrees) {
        return degrees * MINUTES_PER_DEGREE;
    }

    /** Returns the tangent of an angle in decimal degrees. */
    public static double tanDeg(double degrees) {
        return Math.tan(Math.toRadians(degrees));
    }

    /** Returns the cotangent of an angle in decimal degrees; infinite at zero. */
    public static double cotDeg(double degrees) {
        return 1.0 / tanDeg(degrees);
    }

    /**
     * Returns the elevation angle of a point.
     *
     * @param heightM    height of the point above the lens, metres
     * @param distanceM  horizontal distance from the lens, metres, more than zero
     * @return decimal degrees
     */
    public static double elevationDeg(double heightM, double distanceM) {
        return Math.toDegrees(Math.atan2(heightM, distanceM));
    }

    /**
     * Brings an angle into the range from 0 (included) to 360 (excluded).
     *
     * @param degrees any finite angle in decimal degrees
     * @return the same direction between 0 and 360
     */
    public static double normaliseBearingDeg(double degrees) {
        double turned = degrees % 360.0;
        double positive = turned < 0 ? turned + 360.0 : turned;
        return positive >= 360.0 ? 0.0 : positive;
    }

    /** Brings an angle into the range from -180 (excluded) to 180 (included). */
    public static double normaliseTurnDeg(double degrees) {
        double bearing = normaliseBearingDeg(degrees);
        return bearing > 180.0 ? bearing - 360.0 : bearing;
    }

    /**
     * Writes an angle as degrees and minutes, to the tenth of a minute where it is no whole minute: {@code 2°50'}.
     *
     * @param degrees decimal degrees
     * @return the text, with a minus sign in front of a negative angle
     */
    public static String format(double degrees) {
        long tenths = Math.round(Math.abs(degrees) * MINUTES_PER_DEGREE * 10);
        long whole = tenths / 600;
        long rest = tenths % 600;
        String sign = degrees < 0 && tenths > 0 ? "-" : "";
        String minutes = rest % 10 == 0 ? String.format(Locale.ROOT, "%02d", rest / 10) : String.format(Locale.ROOT, "%04.1f", rest / 10.0);
        return sign + whole + "°" + minutes + "'";
    }
}
