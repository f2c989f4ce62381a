package slopewright.siting.site;

import java.util.Arrays;
import java.util.List;

import slopewright.siting.internal.DataFile;
import slopewright.standards.StandardsException;

/**
 * How high mean sea level lies above the WGS 84 ellipsoid, coarsely: the geoid of EGM96 at every second degree of latitude and longitude,
 * in whole metres, straight between. Six sevenths of the Earth lie within a metre of the full model, 994 of 1000 places within
 * {@link #MOSTLY_MISSED_M}, all of it within {@link #MISSED_M}. To tell a slip from an offset that can be true, never to work with.
 * Immutable.
 */
public final class GeoidModel {
    /** By how much the coarse grid misses the full one at most, metres, rounded up; compared at every quarter of a degree. */
    public static final double MISSED_M = 17;
    /** By how much it misses it at most at 994 of 1000 places, metres; the others lie beside trenches and high islands. */
    public static final double MOSTLY_MISSED_M = 4;

    private static final String FILE = "/data/geoid/egm96-2-degrees.csv";
    private static final double STEP_DEG = 2;
    private static final double POLE_DEG = 90;
    private static final double HALF_TURN_DEG = 180;

    /** Heights from the north pole southward, each row from 180 degrees west eastward to 180 degrees east. */
    private final double[][] heightsM;

    private GeoidModel(DataFile file, String path) {
        List<double[]> rows = file.rows();
        int columns = (int) (2 * HALF_TURN_DEG / STEP_DEG) + 1;
        heightsM = new double[rows.size()][];
        for (int i = 0; i < heightsM.length; i++) {
            double[] row = rows.get(i);
            if (row[0] != POLE_DEG - i * STEP_DEG || row.length != columns + 1 || row[1] != row[columns]) {
                throw new StandardsException(path, 0, "does not hold the whole row of latitude " + (POLE_DEG - i * STEP_DEG));
            }
            heightsM[i] = Arrays.copyOfRange(row, 1, row.length);
        }
        if (heightsM.length != (int) (2 * POLE_DEG / STEP_DEG) + 1) {
            throw new StandardsException(path, 0, "does not reach from pole to pole");
        }
    }

    private static final class Bundled {
        private static final GeoidModel MODEL = new GeoidModel(DataFile.bundled(FILE), FILE);
    }

    /** Returns the model that comes with the product; it is read when it is asked for first. */
    public static GeoidModel bundled() {
        return Bundled.MODEL;
    }

    /**
     * Returns the height of the geoid above the ellipsoid, metres.
     *
     * @param latitudeDeg  decimal degrees, north positive, from -90 to 90
     * @param longitudeDeg decimal degrees, east positive, from -180 to 180
     * @throws IllegalArgumentException for a place that is none
     */
    public double heightM(double latitudeDeg, double longitudeDeg) {
        if (!(Math.abs(latitudeDeg) <= POLE_DEG) || !(Math.abs(longitudeDeg) <= HALF_TURN_DEG)) {
            throw new IllegalArgumentException("no place: " + latitudeDeg + ", " + longitudeDeg);
        }
        double down = (POLE_DEG - latitudeDeg) / STEP_DEG;
        double east = (longitudeDeg + HALF_TURN_DEG) / STEP_DEG;
        int row = Math.min((int) down, heightsM.length - 2);
        int column = Math.min((int) east, heightsM[0].length - 2);
        return between(down - row, between(east - column, heightsM[row][column], heightsM[row][column + 1]),
                between(east - column, heightsM[row + 1][column], heightsM[row + 1][column + 1]));
    }

    private static double between(double share, double from, double to) {
        return from + share * (to - from);
    }
}
