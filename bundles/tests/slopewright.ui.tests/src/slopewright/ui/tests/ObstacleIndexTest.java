package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.model.SlopewrightFactory;
import slopewright.ui.diagram.WorldBox;
import slopewright.ui.plan.internal.places.ObstacleIndex;
import slopewright.ui.plan.internal.places.ObstacleIndex.Entry;

/** The index of obstacles against going through all of them. */
class ObstacleIndexTest {

    private static final double REACH_M = 10_000;

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 10, 601, 5000})
    void pointsAreFoundWhereTheyAre(int count) {
        Random random = new Random(count);
        compare(entries(random, count, 0), random);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 5, 700, 3000})
    void areasAndLinesOfEverySizeAreFoundOnce(int count) {
        Random random = new Random(count);
        List<Entry> entries = entries(random, count, 50);
        entries.addAll(entries(random, 20, REACH_M));
        compare(entries, random);
    }

    @Test
    void oneThatStandsFarAwayHidesNoOther() {
        Random random = new Random(9);
        List<Entry> entries = entries(random, 1000, 1);
        entries.add(entry(new WorldBox(1.5e7, -1.2e7, 1.5e7, -1.2e7)));
        compare(entries, random);
    }

    @Test
    void obstaclesThatAllStandInOnePlaceAreAllFound() {
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < 100; i++) {
            entries.add(entry(new WorldBox(5, 5, 5, 5)));
        }
        compare(entries, new Random(1));
        assertEquals(100, found(new ObstacleIndex(entries), new WorldBox(5, 5, 5, 5)).size());
    }

    private static void compare(List<Entry> entries, Random random) {
        ObstacleIndex index = new ObstacleIndex(entries);
        assertEquals(entries.size(), index.size());
        List<WorldBox> boxes = new ArrayList<>(List.of(new WorldBox(-1e9, -1e9, 1e9, 1e9), new WorldBox(1e8, 1e8, 2e8, 2e8),
                new WorldBox(-1e300, -1e300, 1e300, 1e300)));
        entries.stream().limit(50).forEach(entry -> boxes.add(entry.box()));
        for (int i = 0; i < 100; i++) {
            boxes.add(box(random, REACH_M * random.nextDouble() * random.nextDouble()));
        }
        for (WorldBox box : boxes) {
            List<Entry> found = found(index, box);
            Set<Entry> expected = new HashSet<>(entries.stream().filter(entry -> entry.box().meets(box)).toList());
            assertEquals(expected, new HashSet<>(found), box.toString());
            assertEquals(expected.size(), found.size(), "one was found twice in " + box);
        }
    }

    private static List<Entry> found(ObstacleIndex index, WorldBox box) {
        List<Entry> found = new ArrayList<>();
        index.query(box, found::add);
        return found;
    }

    private static List<Entry> entries(Random random, int count, double mostSizeM) {
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            entries.add(entry(box(random, mostSizeM * random.nextDouble())));
        }
        return entries;
    }

    private static Entry entry(WorldBox box) {
        return new Entry(SlopewrightFactory.eINSTANCE.createObstacle(), box);
    }

    private static WorldBox box(Random random, double sizeM) {
        double x = REACH_M * (random.nextDouble() - 0.5);
        double y = REACH_M * (random.nextDouble() - 0.5) / 3;
        return new WorldBox(x, y, x + sizeM * random.nextDouble(), y + sizeM * random.nextDouble());
    }
}
