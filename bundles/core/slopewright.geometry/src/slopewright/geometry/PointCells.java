package slopewright.geometry;

import java.util.Arrays;

/**
 * Points put into cells of neighbours, some hundred in each however unevenly they are spread: a grid whose fuller cells are grids again.
 * What a cell lies within follows from its place in the grid, so that only its highest point is looked for. Points of a cell keep their
 * order. Immutable, safe for use by many threads at once.
 */
public final class PointCells {

    /** So many points are meant to be in a cell; at most twice as many are. */
    public static final int POINTS_IN_A_CELL = 256;

    private final int[] order;
    private final int[] starts;
    private final double[] boxes;
    private final Range x;
    private final Range y;

    /**
     * The least and the most of some numbers; not a number where one of them is none.
     *
     * @param least the least, positive infinity of none
     * @param most  the most, negative infinity of none
     */
    public record Range(double least, double most) {

        private static Range of(double[] numbers, int[] part) {
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (int index : part) {
                least = Math.min(least, numbers[index]);
                most = Math.max(most, numbers[index]);
            }
            return new Range(least, most);
        }

        private double width() {
            return most - least;
        }

        /** Returns the middle. */
        public double middle() {
            return (least + most) / 2;
        }

        /** Returns half of the width. */
        public double half() {
            return width() / 2;
        }
    }

    /** A box of five numbers for each cell: the least and the most on both axes, and the top. */
    private static final int SIDES = 5;

    /**
     * Puts points together; the arrays are not kept.
     *
     * @param x      places on one axis, of any unit
     * @param y      places on the other, of the same unit
     * @param height heights
     */
    public static PointCells of(double[] x, double[] y, double[] height) {
        int[] all = new int[x.length];
        for (int i = 0; i < all.length; i++) {
            all[i] = i;
        }
        Work work = new Work(x, y, height);
        Range overX = Range.of(x, all);
        Range overY = Range.of(y, all);
        if (all.length > 0) {
            work.split(all, 0, overX, overY, Work.DEEPEST);
        }
        return new PointCells(work, overX, overY);
    }

    private PointCells(Work work, Range x, Range y) {
        order = work.order;
        starts = Arrays.copyOf(work.starts, work.count + 1);
        starts[work.count] = order.length;
        boxes = work.boxes;
        this.x = x;
        this.y = y;
    }

    /** What is under way. */
    private static final class Work {

        /** A grid in a grid is at most half as wide on one side: deeper than this no number tells points apart. */
        private static final int DEEPEST = 120;
        private static final int MOST = 2 * POINTS_IN_A_CELL;
        /** What lies within this lies at one place: its inverse is a number still. */
        private static final double LEAST_WIDTH = 1e-290;
        /** Share of the width of a grid that covers what rounding does to the sides of its cells. */
        private static final double ROUNDING = 1e-9;

        private final double[] x;
        private final double[] y;
        private final double[] height;
        private final int[] order;
        private int count;
        private int[] starts = new int[16];
        private double[] boxes = new double[16 * SIDES];

        Work(double[] x, double[] y, double[] height) {
            this.x = x;
            this.y = y;
            this.height = height;
            order = new int[x.length];
        }

        /** Puts some points into cells, from a position on. */
        void split(int[] part, int at, Range overX, Range overY, int depth) {
            double wideX = overX.width() < LEAST_WIDTH ? 0 : overX.width();
            double wideY = overY.width() < LEAST_WIDTH ? 0 : overY.width();
            boolean apart = wideX + wideY > 0 && wideX + wideY < Double.MAX_VALUE;
            if (part.length <= MOST || !apart || depth == 0) {
                plain(part, at);
                return;
            }
            int wanted = part.length / POINTS_IN_A_CELL;
            int columns = (int) Math.max(wideX >= wideY ? 2 : 1, Math.min(wanted, Math.rint(Math.sqrt(wanted * wideX / wideY))));
            int rows = Math.max(wideX >= wideY ? 1 : 2, wanted / columns);
            int[] next = new int[columns * rows + 1];
            double[] tops = new double[columns * rows];
            Arrays.fill(tops, Double.NEGATIVE_INFINITY);
            int[] cells = new int[part.length];
            double perX = wideX > 0 ? columns / wideX : 0;
            double perY = wideY > 0 ? rows / wideY : 0;
            for (int i = 0; i < cells.length; i++) {
                int index = part[i];
                int column = (int) Math.min(columns - 1, (x[index] - overX.least) * perX);
                int cell = column * rows + (int) Math.min(rows - 1, (y[index] - overY.least) * perY);
                cells[i] = cell;
                next[cell + 1]++;
                tops[cell] = Math.max(tops[cell], height[index]);
            }
            for (int cell = 0; cell < tops.length; cell++) {
                next[cell + 1] += next[cell];
            }
            int[] from = next.clone();
            for (int i = 0; i < cells.length; i++) {
                order[at + next[cells[i]]++] = part[i];
            }
            for (int cell = 0; cell < tops.length; cell++) {
                int points = from[cell + 1] - from[cell];
                int start = at + from[cell];
                if (points > MOST) {
                    int[] fuller = Arrays.copyOfRange(order, start, start + points);
                    split(fuller, start, Range.of(x, fuller), Range.of(y, fuller), depth - 1);
                } else if (points > 0) {
                    Range sideX = share(overX, cell / rows, columns);
                    Range sideY = share(overY, cell % rows, rows);
                    add(start, sideX, sideY, tops[cell]);
                }
            }
        }

        /** Returns one of the equal parts of a range, a little wider than it is for what rounding does to its sides. */
        private static Range share(Range range, int part, int parts) {
            double width = range.width() / parts;
            double spare = range.width() * ROUNDING + 4 * Math.ulp(Math.max(Math.abs(range.least), Math.abs(range.most)));
            return new Range(part == 0 ? range.least : range.least + part * width - spare,
                    part == parts - 1 ? range.most : range.least + (part + 1) * width + spare);
        }

        /** Cuts points that cannot be told apart, or need not be, into cells as they come; each is looked at. */
        private void plain(int[] part, int at) {
            System.arraycopy(part, 0, order, at, part.length);
            int size = part.length <= MOST ? MOST : POINTS_IN_A_CELL;
            for (int from = 0; from < part.length; from += size) {
                int[] run = Arrays.copyOfRange(part, from, Math.min(part.length, from + size));
                add(at + from, Range.of(x, run), Range.of(y, run), Range.of(height, run).most);
            }
        }

        private void add(int start, Range overX, Range overY, double top) {
            if (count + 1 == starts.length) {
                starts = Arrays.copyOf(starts, 2 * starts.length);
                boxes = Arrays.copyOf(boxes, 2 * boxes.length);
            }
            starts[count] = start;
            int box = count * SIDES;
            boxes[box] = overX.least;
            boxes[box + 1] = overX.most;
            boxes[box + 2] = overY.least;
            boxes[box + 3] = overY.most;
            boxes[box + 4] = top;
            count++;
        }
    }

    /** Returns how many cells there are; each has a point. */
    public int count() {
        return starts.length - 1;
    }

    /** Returns the first position of a cell, for {@link #index}. */
    public int from(int cell) {
        return starts[cell];
    }

    /** Returns the position after the last of a cell. */
    public int to(int cell) {
        return starts[cell + 1];
    }

    /** Returns the index of the point at a position. */
    public int index(int position) {
        return order[position];
    }

    /** Returns the indices of the points of a cell, rising. */
    public int[] indices(int cell) {
        return Arrays.copyOfRange(order, from(cell), to(cell));
    }

    /** Returns what the points of a cell lie within on the first axis; it may be wider than they lie. */
    public Range x(int cell) {
        return new Range(boxes[cell * SIDES], boxes[cell * SIDES + 1]);
    }

    /** Returns what the points of a cell lie within on the second axis; it may be wider than they lie. */
    public Range y(int cell) {
        return new Range(boxes[cell * SIDES + 2], boxes[cell * SIDES + 3]);
    }

    /** Returns the height of the highest point of a cell. */
    public double top(int cell) {
        return boxes[cell * SIDES + 4];
    }

    /** Returns the least and the most of all points on the first axis. */
    public Range x() {
        return x;
    }

    /** Returns the least and the most of all points on the second axis. */
    public Range y() {
        return y;
    }

    /** Returns how many points there are. */
    public int points() {
        return order.length;
    }
}
