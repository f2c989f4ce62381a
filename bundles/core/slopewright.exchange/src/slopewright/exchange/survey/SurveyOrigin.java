package slopewright.exchange.survey;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is said of a survey as a whole; what its file says of a shape comes first.
 *
 * @param source              where it comes from
 * @param date                the day of the survey, of the form 2026-01-31; empty where it is not known
 * @param grid                coordinate reference of metres east and north, of the form EPSG:32629; empty for that of the aerodrome
 * @param horizontalAccuracyM radius in which true places may lie, metres; empty where it is not known
 * @param verticalAccuracyM   by how much tops may be higher, metres; empty where it is not known
 * @param heights             what its elevations are where the file leaves it open
 * @param verticalDatum       the vertical datum of its elevations, as the aerodrome names it; empty where it is not known
 * @param classes             which points of a cloud are taken
 */
public record SurveyOrigin(String source, Optional<String> date, Optional<String> grid, OptionalDouble horizontalAccuracyM,
        OptionalDouble verticalAccuracyM, SurveyHeights heights, Optional<String> verticalDatum, PointClasses classes) {

    /** Refuses missing parts. */
    public SurveyOrigin {
        Objects.requireNonNull(source);
        Objects.requireNonNull(date);
        Objects.requireNonNull(grid);
        Objects.requireNonNull(horizontalAccuracyM);
        Objects.requireNonNull(verticalAccuracyM);
        Objects.requireNonNull(heights);
        Objects.requireNonNull(verticalDatum);
        Objects.requireNonNull(classes);
    }

    /** Makes what is said of a survey whose vertical datum is not named. */
    public SurveyOrigin(String source, Optional<String> date, Optional<String> grid, OptionalDouble horizontalAccuracyM,
            OptionalDouble verticalAccuracyM, SurveyHeights heights) {
        this(source, date, grid, horizontalAccuracyM, verticalAccuracyM, heights, Optional.empty());
    }

    /** Makes what is said of a survey of which the usual classes of points are taken. */
    public SurveyOrigin(String source, Optional<String> date, Optional<String> grid, OptionalDouble horizontalAccuracyM,
            OptionalDouble verticalAccuracyM, SurveyHeights heights, Optional<String> verticalDatum) {
        this(source, date, grid, horizontalAccuracyM, verticalAccuracyM, heights, verticalDatum, PointClasses.STANDING);
    }
}
