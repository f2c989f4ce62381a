package slopewright.evaluation.obstacles;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.BiConsumer;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

import slopewright.geometry.FramePoint;
import slopewright.geometry.Penetration;
import slopewright.geometry.PointTiles;
import slopewright.geometry.ProtectionSurface;
import slopewright.geometry.SurfaceSweep;
import slopewright.siting.site.PlacedPoints;
import slopewright.siting.site.SurveyPoints;

/** The points of one survey block in one frame. What was compared with a surface is kept. Not for several threads. */
public final class SurveyField {

    private static final int MOST_KEPT = 32;

    /**
     * All points against one surface, the accuracy of the survey on the safe side.
     *
     * @param inside    how many lie under or over the surface
     * @param above     how many stand above it
     * @param worst     the one that stands highest against it, -1 where none lies inside
     * @param governing the comparison of that one, empty where none lies inside
     */
    public record Result(int inside, int above, int worst, Optional<Penetration> governing) {
    }

    /**
     * A point that stands above a surface, the accuracy of the survey on the safe side.
     *
     * @param index   its index in the block, counted from zero
     * @param point   its place in the frame
     * @param excessM by how much it stands above, metres, more than zero
     */
    public record Above(int index, FramePoint point, double excessM) {
    }

    private final SurveyPoints points;
    private final PlacedPoints places;
    private final PointTiles tiles;
    private final double horizontalM;
    private final double verticalM;
    private final Map<ProtectionSurface, Result> kept = new LinkedHashMap<>(MOST_KEPT, 0.75f, true) {

        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<ProtectionSurface, Result> eldest) {
            return size() > MOST_KEPT;
        }
    };

    /**
     * Takes points in a frame.
     *
     * @param points      the points
     * @param places      their places in the frame
     * @param horizontalM radius in which the true place of each may lie, metres, zero or more
     * @param verticalM   by how much each may stand higher, metres, zero or more
     */
    public SurveyField(SurveyPoints points, PlacedPoints places, double horizontalM, double verticalM) {
        this.points = points;
        tiles = places.tiles();
        this.horizontalM = horizontalM;
        this.verticalM = verticalM;
        this.places = places;
    }

    /** Returns the name of a point. */
    public String id(int index) {
        return points.id(index);
    }

    /** Returns how many points there are. */
    public int count() {
        return points.count();
    }

    /** Compares all points with a surface. */
    public Result compare(ProtectionSurface surface) {
        return kept.computeIfAbsent(surface, plane -> compareAll(plane, outwardM -> 0));
    }

    /** Compares all points with a surface that rises by a lift over its plane, metres, which grows with the distance outward. */
    Result compare(ProtectionSurface surface, DoubleUnaryOperator liftM) {
        return compareAll(surface, liftM);
    }

    /** Returns whether a point stands through a surface, with another accuracy than that of the block. */
    boolean standsThrough(ProtectionSurface surface, DoubleUnaryOperator liftM, double otherHorizontalM, double otherVerticalM) {
        return new SurveyField(points, places, otherHorizontalM, otherVerticalM).compareAll(surface, liftM).above() > 0;
    }

    /** What was found of the points so far. */
    private static final class Tally {
        private int inside;
        private int above;
        private int worst = -1;
        private double highest = Double.NEGATIVE_INFINITY;
        private Optional<Penetration> governing = Optional.empty();

        private void take(int index, Penetration exact) {
            double excess = exact.excessM();
            inside++;
            above += excess > 0 ? 1 : 0;
            if (governing.isEmpty() || excess > highest || excess == highest && index < worst) {
                governing = Optional.of(exact);
                highest = excess;
                worst = index;
            }
        }

        /** Returns whether what has a bound neither stands above nor governs. */
        private boolean isLower(double bound) {
            return bound < Math.min(0, highest);
        }
    }

    /**
     * A point is compared exactly where it may stand above, or as high as every one before it, or may lie on the outline. Of all others a
     * bound, of the point or of its whole tile, says enough: they lie inside and decide nothing. The tile of the highest bound comes
     * first, for the more others are passed over.
     */
    private Result compareAll(ProtectionSurface surface, DoubleUnaryOperator liftM) {
        SurfaceSweep sweep = new SurfaceSweep(surface);
        double[] bounds = IntStream.range(0, tiles.count()).mapToDouble(tile -> tiles.mostExcessM(tile, sweep, horizontalM, verticalM))
                .toArray();
        int first = IntStream.range(0, bounds.length).reduce(0, (best, tile) -> bounds[tile] > bounds[best] ? tile : best);
        Tally tally = new Tally();
        for (int turn = 0; turn < bounds.length; turn++) {
            int tile = turn == 0 ? first : turn <= first ? turn - 1 : turn;
            if (bounds[tile] == Double.NEGATIVE_INFINITY) {
                continue;
            }
            if (tally.isLower(bounds[tile]) && tiles.isInside(tile, sweep)) {
                tally.inside += tiles.to(tile) - tiles.from(tile);
            } else {
                compareTile(tile, sweep, surface, liftM, tally);
            }
        }
        return new Result(tally.inside, tally.above, tally.worst, tally.governing);
    }

    private void compareTile(int tile, SurfaceSweep sweep, ProtectionSurface surface, DoubleUnaryOperator liftM, Tally tally) {
        SurveyPoints.InFrame around = places.around(tile);
        for (int at = 0; at < around.alongM().length; at++) {
            double most = mostExcessM(sweep, around, at);
            if (most == Double.NEGATIVE_INFINITY) {
                continue;
            }
            if (tally.isLower(most) && !Double.isNaN(excessM(sweep, around, at))) {
                tally.inside++;
            } else {
                int index = tiles.index(tiles.from(tile) + at);
                compare(point(around, at), surface, liftM).ifPresent(exact -> tally.take(index, exact));
            }
        }
    }

    private static double excessM(SurfaceSweep sweep, SurveyPoints.InFrame around, int index) {
        return sweep.excessM(around.alongM()[index], around.rightM()[index], around.heightM()[index]);
    }

    /** A bound of the height of a point above a surface, metres; negative infinity where it lies outside. */
    private double mostExcessM(SurfaceSweep sweep, SurveyPoints.InFrame around, int index) {
        return sweep.mostExcessM(around.alongM()[index], around.rightM()[index], around.heightM()[index] + verticalM, 0, horizontalM);
    }

    /** Compares one point with a surface that rises by a lift over its plane. */
    Optional<Penetration> compare(int index, ProtectionSurface surface, DoubleUnaryOperator liftM) {
        return compare(point(index), surface, liftM);
    }

    private Optional<Penetration> compare(FramePoint point, ProtectionSurface surface, DoubleUnaryOperator liftM) {
        return surface.compare(point, horizontalM, verticalM).map(plain -> lifted(plain, point, surface, liftM));
    }

    /** Takes one point that lies within a surface after the other, tile by tile: its place, and how it compares. */
    public void within(ProtectionSurface surface, BiConsumer<FramePoint, Penetration> taker) {
        SurfaceSweep sweep = new SurfaceSweep(surface);
        for (int tile = 0; tile < tiles.count(); tile++) {
            if (tiles.mostExcessM(tile, sweep, horizontalM, verticalM) != Double.NEGATIVE_INFINITY) {
                SurveyPoints.InFrame around = places.around(tile);
                for (int at = 0; at < around.alongM().length; at++) {
                    FramePoint point = point(around, at);
                    surface.compare(point, horizontalM, verticalM).ifPresent(exact -> taker.accept(point, exact));
                }
            }
        }
    }

    /** Returns by how much each point may stand higher, metres, zero or more. */
    double verticalAccuracyM() {
        return verticalM;
    }

    private Penetration lifted(Penetration worst, FramePoint point, ProtectionSurface surface, DoubleUnaryOperator liftM) {
        double lift = liftM.applyAsDouble(Math.max(0, surface.outwardM(point.alongM(), point.rightM()) - horizontalM));
        return lift == 0 ? worst : new Penetration(worst.point(), worst.limitM() + lift, worst.excessM() - lift);
    }

    /**
     * Returns the points that stand highest against a surface, the accuracy of the survey on the safe side.
     *
     * @param surface the surface
     * @param most    how many at most
     * @return their indices, the least margin first
     */
    public List<Integer> leastMargins(ProtectionSurface surface, int most) {
        SurfaceSweep sweep = new SurfaceSweep(surface);
        Comparator<Hit> leastFirst = Comparator.comparingDouble(Hit::excessM).thenComparing(Hit::index, Comparator.reverseOrder());
        PriorityQueue<Hit> highest = new PriorityQueue<>(leastFirst);
        for (int tile = 0; tile < tiles.count(); tile++) {
            if (mayCount(tiles.mostExcessM(tile, sweep, horizontalM, verticalM), highest.size() < most ? null : highest.peek())) {
                SurveyPoints.InFrame around = places.around(tile);
                for (int at = 0; at < around.alongM().length; at++) {
                    if (mayCount(mostExcessM(sweep, around, at), highest.size() < most ? null : highest.peek())) {
                        int i = tiles.index(tiles.from(tile) + at);
                        surface.compare(point(around, at), horizontalM, verticalM).ifPresent(hit -> highest.add(new Hit(i, hit.excessM())));
                        if (highest.size() > most) {
                            highest.remove();
                        }
                    }
                }
            }
        }
        return highest.stream().sorted(leastFirst.reversed()).map(Hit::index).toList();
    }

    private record Hit(int index, double excessM) {
    }

    /** Returns whether what has a bound may stand as high as the least of those that count so far, of which there may be room for more. */
    private static boolean mayCount(double bound, Hit least) {
        return bound != Double.NEGATIVE_INFINITY && (least == null || !(bound < least.excessM()));
    }

    /** Returns the radius in which the true place of each point may lie, metres, zero or more. */
    public double horizontalAccuracyM() {
        return horizontalM;
    }

    /** Returns one point as a shape with the accuracy of the block. */
    public SurveyedShape shape(int index) {
        return new SurveyedShape(SurveyedShape.Kind.POINT, List.of(point(index)), horizontalM, verticalM);
    }

    /** Returns one point in the frame. */
    public FramePoint point(int index) {
        return places.point(index);
    }

    private static FramePoint point(SurveyPoints.InFrame around, int index) {
        return new FramePoint(around.alongM()[index], around.rightM()[index], around.heightM()[index]);
    }

    /** Returns whether a point lies farther than a distance from the origin of the frame, or nobody knows where. */
    public boolean reachesBeyond(double distanceM) {
        return IntStream.range(0, tiles.count()).filter(tile -> !tiles.isWithin(tile, distanceM)).anyMatch(tile -> {
            SurveyPoints.InFrame around = places.around(tile);
            return IntStream.range(0, around.alongM().length)
                    .anyMatch(at -> !(Math.hypot(around.alongM()[at], around.rightM()[at]) <= distanceM));
        });
    }

    /** Returns whether no point stands above a surface, its accuracy on the safe side. */
    boolean isClear(ProtectionSurface surface) {
        return kept.containsKey(surface) ? kept.get(surface).above() == 0
                : mayStandAbove(surface).noneMatch(i -> above(i, surface).isPresent());
    }

    /** The points that a bound does not show to stand below a surface, or beside it. */
    private IntStream mayStandAbove(ProtectionSurface surface) {
        SurfaceSweep sweep = new SurfaceSweep(surface);
        return IntStream.range(0, tiles.count()).filter(tile -> tiles.mostExcessM(tile, sweep, horizontalM, verticalM) > 0)
                .flatMap(tile -> {
                    SurveyPoints.InFrame around = places.around(tile);
                    return IntStream.range(0, around.alongM().length).filter(at -> mostExcessM(sweep, around, at) > 0)
                            .map(at -> tiles.index(tiles.from(tile) + at));
                });
    }

    private Optional<Above> above(int index, ProtectionSurface surface) {
        FramePoint point = point(index);
        return surface.compare(point, horizontalM, verticalM).filter(exact -> exact.excessM() > 0)
                .map(exact -> new Above(index, point, exact.excessM()));
    }

    /**
     * Returns points that stand above a surface, the accuracy of the survey on the safe side, in the order of the block.
     *
     * @param surface the surface
     * @param most    how many at most
     */
    public List<Above> above(ProtectionSurface surface, int most) {
        return mayStandAbove(surface).sorted().mapToObj(i -> above(i, surface)).flatMap(Optional::stream).limit(most).toList();
    }

    /** Returns the points in the frame, in the order of the block; the arrays are shared and must not be changed. */
    public SurveyPoints.InFrame places() {
        return places.all();
    }
}
