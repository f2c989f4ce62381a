package slopewright.exchange.survey;

import java.util.Optional;

import slopewright.siting.site.PackedIds;

/**
 * The points of a table in flat arrays, where it holds nothing but points in degrees with their tops: many are read so without an object
 * each. The arrays are shared and may be longer than there are points.
 *
 * @param count       how many points
 * @param north       latitudes in decimal degrees, within 90
 * @param east        longitudes in decimal degrees, within 180
 * @param topM        elevations that a column names as those of the top, or no closer, metres
 * @param horizontalM accuracies of the places, metres, NaN where a row says nothing; empty where no column does
 * @param verticalM   accuracies of the elevations, the same
 * @param ids         names of the points; empty where no column names them
 */
public record PointColumns(int count, double[] north, double[] east, double[] topM, Optional<double[]> horizontalM,
        Optional<double[]> verticalM, Optional<PackedIds> ids) {
}
