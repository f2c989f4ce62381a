package slopewright.evaluation.obstacles;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Supplier;
import java.util.stream.Stream;

import slopewright.geometry.Curvature;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.messages.Message;
import slopewright.model.Identified;
import slopewright.model.SurveyBlock;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;

/**
 * Everything that stands around one runway end or helipad, in its frame: obstacles, and the points of survey blocks. This is the one place
 * where anything is compared with a surface. Comparisons are kept, so that asking again costs nothing. Not for several threads.
 */
public final class Surroundings {
    private static final int MOST_KEPT = 64;

    /**
     * One block of survey points in the frame.
     *
     * @param block  the block
     * @param points its points
     */
    public record Block(SurveyBlock block, SurveyField points) {

        /** Returns the name of one of its points, for people. */
        public String label(int index) {
            return Projects.label(block) + ", point " + points.id(index);
        }
    }

    private final ObstacleField obstacles;
    private final List<Block> blocks;
    private final List<Uncompared> uncompared;
    private final Map<Object, Object> kept = new LinkedHashMap<>(MOST_KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Object, Object> eldest) {
            return size() > MOST_KEPT;
        }
    };

    /**
     * Puts surroundings together.
     *
     * @param obstacles    the obstacles in the frame
     * @param blocks       the survey blocks in the frame
     * @param unreadBlocks the survey blocks that could not be read, with the reason
     */
    public Surroundings(ObstacleField obstacles, List<Block> blocks, List<Uncompared> unreadBlocks) {
        this.obstacles = obstacles;
        this.blocks = List.copyOf(blocks);
        List<Uncompared> all = new ArrayList<>(obstacles.unplaced());
        all.addAll(unreadBlocks);
        uncompared = List.copyOf(all);
    }

    /** Returns the obstacles in the frame. */
    public ObstacleField obstacles() {
        return obstacles;
    }

    /** Returns the blocks of survey points in the frame. */
    public List<Block> blocks() {
        return blocks;
    }

    /** Returns what is entered but could not be brought into the frame. */
    public List<Uncompared> uncompared() {
        return uncompared;
    }

    /** Returns how many obstacles and survey points there are in the frame. */
    public long count() {
        return obstacles.count() + blocks.stream().mapToLong(block -> block.points().count()).sum();
    }

    /** Compares everything with a surface. */
    public SurfaceComparison compare(ProtectionSurface surface) {
        return keep(surface, () -> {
            List<ObstacleComparison> found = new ArrayList<>(obstacles.compare(surface));
            blocks.forEach(block -> compared(block, block.points().compare(surface)).ifPresent(found::add));
            return comparison(surface, found, outwardM -> 0);
        });
    }

    private record SightKey(ProtectionSurface plane, double refraction) {
    }

    /**
     * Compares everything with a line of sight, which leaves the Earth as it curves away. Surfaces of rules are never lifted so.
     *
     * @param plane      the plane that the line sweeps, without curvature
     * @param refraction coefficient of refraction, as in {@link Curvature#dropM}
     * @return the comparison; heights of the surface and margins in it take the curvature into account
     */
    public SurfaceComparison compareSight(ProtectionSurface plane, double refraction) {
        return keep(new SightKey(plane, refraction), () -> {
            DoubleUnaryOperator lift = outwardM -> Curvature.dropM(outwardM, refraction);
            List<ObstacleComparison> found = new ArrayList<>(obstacles.compare(plane, lift));
            blocks.forEach(block -> compared(block, block.points().compare(plane, lift)).ifPresent(found::add));
            return comparison(plane, found, lift);
        });
    }

    /**
     * Leaves out what may stand through, because nobody says how accurately it was surveyed, and names it as not compared, and so what
     * lies beside the surface and may stand in it. What stands through at the very place and height that were entered stands through.
     */
    private SurfaceComparison comparison(ProtectionSurface surface, List<ObstacleComparison> found, DoubleUnaryOperator lift) {
        List<ObstacleComparison> inside = new ArrayList<>();
        List<Uncompared> open = new ArrayList<>(uncompared);
        for (ObstacleComparison one : found) {
            if (one.isPenetrating() || SurveyedShape.isAccuracyKnown(one.element())) {
                inside.add(one);
            } else {
                open.add(withoutAccuracy(one.element()));
            }
        }
        obstacles.mayStandThrough(surface, lift).forEach(beside -> open.add(withoutAccuracy(beside)));
        blocks.stream().filter(block -> !SurveyedShape.isPlaceKnown(block.block()) && found.stream()
                .noneMatch(one -> one.element() == block.block()) && block.points().standsThrough(surface, lift,
                        SurveyedShape.UNKNOWN_HORIZONTAL_M, SurveyedShape.mostVerticalM(block.block())))
                .forEach(block -> open.add(withoutAccuracy(block.block())));
        return new SurfaceComparison(surface, count(), inside, open);
    }

    private static Uncompared withoutAccuracy(Identified element) {
        return new Uncompared(element, Projects.label(element), Message.of("evaluation.without-accuracy", ElementNames.of(element)));
    }

    /** Returns the obstacles and blocks of which nobody says how accurately they were surveyed, so that they may stand elsewhere. */
    public List<Uncompared> withoutAccuracy() {
        return Stream.concat(obstacles.placed().stream().map(ObstacleField.Placed::obstacle), blocks.stream().map(Block::block))
                .filter(element -> !SurveyedShape.isAccuracyKnown(element)).map(Surroundings::withoutAccuracy).toList();
    }

    /** Returns whether nothing that counts stands above a surface; for searches, without a comparison that is kept. */
    public boolean isClear(ProtectionSurface surface) {
        return obstacles.isClear(surface) && blocks.stream().allMatch(block -> block.points().isClear(surface));
    }

    private static Optional<ObstacleComparison> compared(Block block, SurveyField.Result result) {
        return result.governing().map(worst -> new ObstacleComparison(block.block(),
                block.label(result.worst()), worst, Shielding.NONE,
                Optional.of(new ObstacleComparison.BlockCount(block.points().count(), result.inside(), result.above(),
                        block.points().id(result.worst())))));
    }

    /**
     * Returns the points of all blocks that stand above a surface, for pictures: at most so many, the first of each block.
     *
     * @param surface the surface
     * @param most    how many at most of one block
     */
    public List<FramePoint> pointsAbove(ProtectionSurface surface, int most) {
        return blocks.stream().flatMap(block -> block.points().above(surface, most).stream()).map(SurveyField.Above::point).toList();
    }

    /**
     * Returns what a computation over these surroundings gives, from the last time where that is still at hand.
     *
     * @param key  everything that decides the result beside the surroundings, with equality
     * @param work the computation
     * @param <T>  what it gives, immutable
     */
    @SuppressWarnings("unchecked")
    public <T> T keep(Object key, Supplier<T> work) {
        Object found = kept.get(key);
        if (found == null) {
            found = work.get();
            kept.put(key, found);
        }
        return (T) found;
    }
}
