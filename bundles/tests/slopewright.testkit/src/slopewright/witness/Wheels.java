package slopewright.witness;

/** Wheel clearance over the threshold, Table 5-2. */
public final class Wheels {
    private static final int ROWS = 4;
    /** What a stored height can be off by: kept to the millimetre, one entered in feet lies half of one beside its limit. */
    private static final double STORED_M = 0.0015;

    private Wheels() {
    }

    /** Row of the table, 1 to 4, for an eye-to-wheel height in metres; its upper limits, as kept, belong to the next row. */
    public static int row(Edition edition, double eyeToWheelM) {
        for (int row = 1; row <= ROWS; row++) {
            if (eyeToWheelM < cell(edition, row, "eye-to-wheel-below-m") - STORED_M) {
                return row;
            }
        }
        throw new IllegalArgumentException("no row for " + eyeToWheelM + " m");
    }

    /** Desired clearance, metres. */
    public static double desiredM(Edition edition, double eyeToWheelM) {
        return cell(edition, row(edition, eyeToWheelM), "desired-m");
    }

    /** Minimum clearance, metres; {@code light} for runways of light aeroplanes other than turbojets (note e). */
    public static double minimumM(Edition edition, double eyeToWheelM, boolean light) {
        int row = row(edition, eyeToWheelM);
        return cell(edition, row, light && row == 1 ? "minimum-light-m" : "minimum-m");
    }

    private static double cell(Edition edition, int row, String name) {
        return Transcription.number(edition, "wheel-clearance", "row" + row + "." + name);
    }
}
