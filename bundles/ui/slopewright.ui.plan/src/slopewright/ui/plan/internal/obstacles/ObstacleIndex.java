package slopewright.ui.plan.internal.obstacles;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

import slopewright.drawing.scene.ScenePoint;
import slopewright.model.Obstacle;
import slopewright.ui.diagram.WorldBox;

/** Finds the obstacles in a box of the plan without going through all of them: they are kept by squares of the ground. */
public final class ObstacleIndex {

    private static final double CELL_M = 400;
    private static final int MOST_CELLS = 64;

    /**
     * An obstacle where it lies on the plan.
     *
     * @param obstacle the obstacle
     * @param box      the smallest box around its places, metres
     */
    public record Entry(Obstacle obstacle, WorldBox box) {

        /** Returns the middle of it. */
        public ScenePoint middle() {
            return new ScenePoint((box.minX() + box.maxX()) / 2, (box.minY() + box.maxY()) / 2);
        }
    }

    private final Map<Long, List<Entry>> cells = new HashMap<>();
    private final List<Entry> large = new ArrayList<>();
    private int size;

    /**
     * Adds an obstacle.
     *
     * @param obstacle the obstacle
     * @param places   where it lies; without any it is not kept
     */
    public void add(Obstacle obstacle, List<ScenePoint> places) {
        Optional<WorldBox> box = WorldBox.around(places);
        if (box.isEmpty()) {
            return;
        }
        Entry entry = new Entry(obstacle, box.get());
        size++;
        if (cellsOf(box.get()) > MOST_CELLS) {
            large.add(entry);
        } else {
            eachCell(box.get(), key -> cells.computeIfAbsent(key, one -> new ArrayList<>(2)).add(entry));
        }
    }

    /** Returns how many there are. */
    public int size() {
        return size;
    }

    /** Passes on each obstacle whose box meets a box, once. */
    public void query(WorldBox box, Consumer<Entry> found) {
        large.stream().filter(entry -> entry.box().meets(box)).forEach(found);
        if (cellsOf(box) > cells.size()) {
            cells.forEach((key, entries) -> entries.stream().filter(entry -> key == firstKey(entry) && entry.box().meets(box))
                    .forEach(found));
        } else {
            eachCell(box, key -> cells.getOrDefault(key, List.of()).stream()
                    .filter(entry -> key == firstIn(entry, box) && entry.box().meets(box)).forEach(found));
        }
    }

    /** Returns the first square that an entry lies in; there it is passed on and in no other. */
    private static long firstKey(Entry entry) {
        return key(column(entry.box().minX()), column(entry.box().minY()));
    }

    /** Returns the first square that an entry and a box have in common. */
    private static long firstIn(Entry entry, WorldBox box) {
        return key(Math.max(column(entry.box().minX()), column(box.minX())), Math.max(column(entry.box().minY()), column(box.minY())));
    }

    private static long cellsOf(WorldBox box) {
        return (long) (column(box.maxX()) - column(box.minX()) + 1) * (column(box.maxY()) - column(box.minY()) + 1);
    }

    private static void eachCell(WorldBox box, Consumer<Long> work) {
        for (int x = column(box.minX()); x <= column(box.maxX()); x++) {
            for (int y = column(box.minY()); y <= column(box.maxY()); y++) {
                work.accept(key(x, y));
            }
        }
    }

    private static int column(double metres) {
        return (int) Math.floor(metres / CELL_M);
    }

    private static long key(int x, int y) {
        return (long) x << 32 | y & 0xffffffffL;
    }
}
