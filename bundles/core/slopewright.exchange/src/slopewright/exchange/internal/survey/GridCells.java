package slopewright.exchange.internal.survey;

import java.util.List;
import java.util.Map;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyInput;
import slopewright.exchange.survey.SurveyShape;
import slopewright.exchange.survey.SurveyVertex;
import slopewright.messages.Message;
import slopewright.siting.site.SurveyPoints;

/**
 * The cells of a model of the terrain, each known at its middle. Between these places nothing is known, so every point says how far the
 * corners of its cell lie away. Cells of a tenth of a metre and more are metres east and north, those of a hundredth of a degree and less
 * are longitude and latitude; what lies between is refused, for it could be either. A model with cells that hold no elevation is refused
 * too: what is not known must not look free.
 */
final class GridCells {

    private static final double GREATEST_DEG = 0.01;
    private static final double LEAST_M = 0.1;
    private static final double METRES_PER_DEGREE = 111_700;

    private final SurveyInput input;
    private final Frame frame;
    private final boolean degrees;
    private final Map<SurveyShape.Fact, String> facts;
    private long voids;

    /**
     * Where the cells lie.
     *
     * @param columns number of columns
     * @param rows    number of rows, the northernmost first
     * @param west    east or longitude of the middle of the first column
     * @param north   north or latitude of the middle of the first row
     * @param across  width of a cell, metres or decimal degrees
     * @param down    height of a cell, the same
     */
    record Frame(long columns, long rows, double west, double north, double across, double down) {
    }

    /**
     * Begins.
     *
     * @throws ExchangeException where there are more cells than a block may hold, or they are of no size
     */
    GridCells(SurveyInput input, Frame frame) throws ExchangeException {
        this.input = input;
        this.frame = frame;
        if (frame.columns() < 1 || frame.rows() < 1 || frame.columns() > SurveyPoints.MOST_POINTS / frame.rows()) {
            throw input.fault(1, Message.said("survey-file.grid-cells", frame.columns(), frame.rows(), SurveyPoints.MOST_POINTS));
        }
        degrees = isDegrees(frame.across()) && isDegrees(frame.down());
        if (!degrees && !(frame.across() >= LEAST_M && frame.down() >= LEAST_M)) {
            throw input.fault(1, Message.said("survey-file.grid-units", frame.across(), frame.down()));
        }
        double unit = degrees ? METRES_PER_DEGREE : 1;
        facts = Map.of(SurveyShape.Fact.REACH, String.valueOf(Math.hypot(frame.across() * unit, frame.down() * unit) / 2));
    }

    private static boolean isDegrees(double size) {
        return size > 0 && size <= GREATEST_DEG;
    }

    /** Returns whether the cells are longitude and latitude. */
    boolean isDegrees() {
        return degrees;
    }

    /** Hands on a cell; one of longitude and latitude that lies far from the aerodrome is left out. */
    void take(long row, long column, double elevationM, long line) throws ExchangeException {
        SurveyVertex vertex = vertex(row, column, elevationM);
        if (isFar(vertex)) {
            input.skip(Message.of("survey-file.skip.far-cells"));
        } else {
            input.emit(SurveyShape.Kind.POINT, !degrees, List.of(vertex), facts, line);
        }
    }

    /** Counts a cell that holds no elevation. */
    void isVoid(long row, long column) {
        if (!isFar(vertex(row, column, Double.NaN))) {
            voids++;
        }
    }

    private SurveyVertex vertex(long row, long column, double elevationM) {
        return new SurveyVertex(frame.north() - row * frame.down(), frame.west() + column * frame.across(), elevationM);
    }

    private boolean isFar(SurveyVertex vertex) {
        return degrees && !input.isNear(vertex.north(), vertex.east());
    }

    /**
     * Ends.
     *
     * @throws ExchangeException where a cell held no elevation
     */
    void end() throws ExchangeException {
        if (voids > 0) {
            throw input.fault(0, Message.said("survey-file.grid-voids", voids, frame.columns() * frame.rows()));
        }
    }
}
