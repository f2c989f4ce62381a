package slopewright.checks.internal.row;

import java.util.List;

import slopewright.checks.internal.UnitAt;

/**
 * The straight line through the lens levels of a row.
 *
 * @param gradient   rise for each metre to the side
 * @param departureM greatest departure of a lens from the line
 * @param rangeM     difference between the highest and the lowest lens
 * @param planeM     greatest departure of a lens from the mean level
 */
record LensLine(double gradient, double departureM, double rangeM, double planeM) {

    /** Fits the line by least squares. */
    static LensLine of(List<UnitAt> side) {
        double place = side.stream().mapToDouble(UnitAt::rightM).average().orElseThrow();
        double level = side.stream().mapToDouble(UnitAt::lensElevationM).average().orElseThrow();
        double product = 0;
        double square = 0;
        for (UnitAt unit : side) {
            product += (unit.rightM() - place) * (unit.lensElevationM() - level);
            square += (unit.rightM() - place) * (unit.rightM() - place);
        }
        double gradient = square == 0 ? 0 : product / square;
        double departure = 0;
        double plane = 0;
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (UnitAt unit : side) {
            double lens = unit.lensElevationM();
            departure = Math.max(departure, Math.abs(lens - level - gradient * (unit.rightM() - place)));
            plane = Math.max(plane, Math.abs(lens - level));
            lowest = Math.min(lowest, lens);
            highest = Math.max(highest, lens);
        }
        return new LensLine(gradient, departure, highest - lowest, plane);
    }
}
