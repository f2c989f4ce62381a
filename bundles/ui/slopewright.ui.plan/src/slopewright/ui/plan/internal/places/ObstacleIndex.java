package slopewright.ui.plan.internal.places;

import java.util.List;
import java.util.function.Consumer;

import slopewright.drawing.scene.ScenePoint;
import slopewright.model.Obstacle;
import slopewright.ui.diagram.WorldBox;

/**
 * Finds the obstacles in a box of the plan without going through all of them. They are sorted into the cells of a grid by their middle; the
 * few that are wider than a cell are gone through.
 */
public final class ObstacleIndex {

    /** So many obstacles there are in a cell where they stand evenly. */
    private static final int IN_A_CELL = 4;

    /**
     * An obstacle where it lies on the plan.
     *
     * @param obstacle the obstacle
     * @param box      the smallest box around its places, metres
     */
    public record Entry(Obstacle obstacle, WorldBox box) {

        /** Returns the middle of it. */
        public ScenePoint middle() {
            return new ScenePoint(middleX(), middleY());
        }

        private double middleX() {
            return (box.minX() + box.maxX()) / 2;
        }

        private double middleY() {
            return (box.minY() + box.maxY()) / 2;
        }

        private boolean isWithin(double size) {
            return box.maxX() - box.minX() <= size && box.maxY() - box.minY() <= size;
        }
    }

    private final int size;
    private final double minX;
    private final double minY;
    private final double cellM;
    private final int columns;
    private final int rows;
    private final List<Entry> wide;
    /** The others, cell by cell and row by row, and where each cell begins. */
    private final Entry[] sorted;
    private final int[] begin;

    /** Sorts obstacles. */
    public ObstacleIndex(List<Entry> entries) {
        size = entries.size();
        double leastX = Double.MAX_VALUE;
        double leastY = Double.MAX_VALUE;
        double mostX = -Double.MAX_VALUE;
        double mostY = -Double.MAX_VALUE;
        for (Entry entry : entries) {
            leastX = Math.min(leastX, entry.middleX());
            leastY = Math.min(leastY, entry.middleY());
            mostX = Math.max(mostX, entry.middleX());
            mostY = Math.max(mostY, entry.middleY());
        }
        minX = leastX;
        minY = leastY;
        int along = (int) Math.ceil(Math.sqrt((double) size / IN_A_CELL));
        cellM = Math.max(1, Math.max(mostX - leastX, mostY - leastY) / Math.max(1, along));
        columns = size == 0 ? 0 : column(mostX) + 1;
        rows = size == 0 ? 0 : row(mostY) + 1;
        wide = entries.stream().filter(entry -> !entry.isWithin(cellM)).toList();
        begin = new int[columns * rows + 1];
        entries.stream().filter(entry -> entry.isWithin(cellM)).forEach(entry -> begin[cell(entry) + 1]++);
        for (int cell = 0; cell < columns * rows; cell++) {
            begin[cell + 1] += begin[cell];
        }
        sorted = new Entry[size - wide.size()];
        int[] next = begin.clone();
        entries.stream().filter(entry -> entry.isWithin(cellM)).forEach(entry -> sorted[next[cell(entry)]++] = entry);
    }

    private int column(double x) {
        return (int) Math.floor((x - minX) / cellM);
    }

    private int row(double y) {
        return (int) Math.floor((y - minY) / cellM);
    }

    private int cell(Entry entry) {
        return row(entry.middleY()) * columns + column(entry.middleX());
    }

    /** Returns how many there are. */
    public int size() {
        return size;
    }

    /** Passes on each obstacle whose box meets a box, once. */
    public void query(WorldBox box, Consumer<Entry> found) {
        wide.stream().filter(entry -> entry.box().meets(box)).forEach(found);
        // none that is looked at reaches farther from its middle than half a cell
        int fromColumn = Math.max(0, column(box.minX() - cellM));
        int toColumn = Math.min(columns - 1, column(box.maxX() + cellM));
        int toRow = Math.min(rows - 1, row(box.maxY() + cellM));
        for (int row = Math.max(0, row(box.minY() - cellM)); row <= toRow && fromColumn <= toColumn; row++) {
            int end = begin[row * columns + toColumn + 1];
            for (int i = begin[row * columns + fromColumn]; i < end; i++) {
                if (sorted[i].box().meets(box)) {
                    found.accept(sorted[i]);
                }
            }
        }
    }
}
