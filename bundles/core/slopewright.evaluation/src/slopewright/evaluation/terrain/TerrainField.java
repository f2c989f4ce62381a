package slopewright.evaluation.terrain;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import slopewright.evaluation.obstacles.Surroundings;
import slopewright.evaluation.obstacles.SurveyedShape;
import slopewright.geometry.FramePoint;
import slopewright.model.SurveyBlock;
import slopewright.siting.site.SurveyPoints;

/**
 * A model of the terrain in the frame of an approach: the points of a survey block that was imported as terrain. Every place of a model is
 * known from the middle of a cell that lies no farther away than the horizontal accuracy of the block, for half the diagonal of a cell is
 * part of it; a place without such a point lies outside of the model, and nothing is known there. Immutable.
 */
public final class TerrainField {

    /** What {@link SurveyBlock#getKind()} says of a model of the terrain. */
    public static final String KIND = "terrain";

    /** So many times the reach the cells that lie beside the nearest one are looked at as well: a cell is less than 1.42 times as wide. */
    private static final double AROUND = 1.5;
    private static final double LEAST_REACH_M = 0.1;
    private static final double MOST_CELLS = 1 << 24;

    private final SurveyBlock block;
    private final SurveyPoints.InFrame places;
    private final double reachM;
    private final double verticalM;
    private final double cellM;
    private final double leastAlongM;
    private final double leastRightM;
    private final int columns;
    private final int rows;
    private final int[] first;
    private final int[] order;

    /**
     * The ground at a place.
     *
     * @param heightM   its height in the frame, metres, as the nearest cell has it
     * @param accuracyM by how much it may be higher or lower: the accuracy of the model, and by how much the cells around differ, metres
     */
    public record Ground(double heightM, double accuracyM) {
    }

    private TerrainField(SurveyBlock block, SurveyPoints.InFrame places, double reachM, double verticalM) {
        this.block = block;
        this.places = places;
        this.reachM = Math.max(reachM, LEAST_REACH_M);
        this.verticalM = verticalM;
        double[] along = range(places.alongM());
        double[] right = range(places.rightM());
        leastAlongM = along[0];
        leastRightM = right[0];
        double area = (along[1] - along[0] + this.reachM) * (right[1] - right[0] + this.reachM);
        cellM = Math.max(this.reachM, Math.sqrt(area / MOST_CELLS));
        columns = (int) ((right[1] - right[0]) / cellM) + 1;
        rows = (int) ((along[1] - along[0]) / cellM) + 1;
        first = new int[columns * rows + 1];
        order = new int[places.alongM().length];
        sort();
    }

    private static double[] range(double[] numbers) {
        return new double[] {Arrays.stream(numbers).min().orElse(0), Arrays.stream(numbers).max().orElse(0)};
    }

    private void sort() {
        int[] cells = new int[order.length];
        for (int i = 0; i < cells.length; i++) {
            cells[i] = row(places.alongM()[i]) * columns + column(places.rightM()[i]);
            first[cells[i] + 1]++;
        }
        for (int cell = 0; cell < first.length - 1; cell++) {
            first[cell + 1] += first[cell];
        }
        int[] next = first.clone();
        for (int i = 0; i < cells.length; i++) {
            order[next[cells[i]]++] = i;
        }
    }

    private int row(double alongM) {
        return (int) Math.floor((alongM - leastAlongM) / cellM);
    }

    private int column(double rightM) {
        return (int) Math.floor((rightM - leastRightM) / cellM);
    }

    /** Returns the models of the terrain among everything that stands around an approach. */
    public static List<TerrainField> of(Surroundings surroundings) {
        return surroundings.keep(TerrainField.class, () -> surroundings.blocks().stream().filter(block -> isTerrain(block.block()))
                .filter(block -> block.points().count() > 0).map(block -> new TerrainField(block.block(), block.points().places(),
                        block.points().horizontalAccuracyM(), Math.abs(block.block().getVerticalAccuracyM()))).toList());
    }

    /** Returns whether a block is a model of the terrain that says how accurate it is. */
    public static boolean isTerrain(SurveyBlock block) {
        return KIND.equals(block.getKind()) && SurveyedShape.isAccuracy(block.getHorizontalAccuracyM())
                && SurveyedShape.isAccuracy(block.getVerticalAccuracyM());
    }

    /** Returns the block. */
    public SurveyBlock block() {
        return block;
    }

    /** Returns how far from a place the point may lie from which it is known, metres. */
    public double reachM() {
        return reachM;
    }

    /** Returns by how much the ground may be higher than a point of the model, metres. */
    public double verticalAccuracyM() {
        return verticalM;
    }

    /** Returns how many points it has. */
    public int count() {
        return order.length;
    }

    /** Returns one of its points. */
    public FramePoint point(int index) {
        return new FramePoint(places.alongM()[index], places.rightM()[index], places.heightM()[index]);
    }

    /** Returns the points in the frame; the arrays are shared and must not be changed. */
    SurveyPoints.InFrame places() {
        return places;
    }

    /** Returns the ground at a place, empty outside of the model. */
    public Optional<Ground> at(double alongM, double rightM) {
        double around = AROUND * reachM;
        double nearest = Double.POSITIVE_INFINITY;
        double height = Double.NaN;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int row = Math.max(0, row(alongM - around)); row <= Math.min(rows - 1, row(alongM + around)); row++) {
            for (int column = Math.max(0, column(rightM - around)); column <= Math.min(columns - 1, column(rightM + around)); column++) {
                for (int at = first[row * columns + column]; at < first[row * columns + column + 1]; at++) {
                    int i = order[at];
                    double away = Math.hypot(places.alongM()[i] - alongM, places.rightM()[i] - rightM);
                    if (away <= around) {
                        least = Math.min(least, places.heightM()[i]);
                        most = Math.max(most, places.heightM()[i]);
                    }
                    if (away <= reachM && away < nearest) {
                        nearest = away;
                        height = places.heightM()[i];
                    }
                }
            }
        }
        return Double.isNaN(height) ? Optional.empty()
                : Optional.of(new Ground(height, verticalM + Math.max(most - height, height - least)));
    }

    /** Returns whether the ground is known at a place. */
    public boolean isKnown(FramePoint place) {
        return at(place.alongM(), place.rightM()).isPresent();
    }
}
