package slopewright.evaluation.obstacles;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.DoubleUnaryOperator;

import slopewright.geometry.FramePoint;
import slopewright.geometry.Penetration;
import slopewright.geometry.ProtectionSurface;
import slopewright.geometry.SurfaceSweep;
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
    private final SurveyPoints.InFrame places;
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
    public SurveyField(SurveyPoints points, SurveyPoints.InFrame places, double horizontalM, double verticalM) {
        this.points = points;
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

    /** The sweep over a surface that is larger and lower by the accuracy finds those that may matter; these are compared exactly. */
    private Result compareAll(ProtectionSurface surface, DoubleUnaryOperator liftM) {
        SurfaceSweep coarse = new SurfaceSweep(grown(surface));
        int inside = 0;
        int above = 0;
        int worst = -1;
        Optional<Penetration> governing = Optional.empty();
        for (int i = 0; i < count(); i++) {
            double excess = coarse.excessM(places.alongM()[i], places.rightM()[i], places.heightM()[i]);
            if (Double.isNaN(excess)) {
                continue;
            }
            Optional<Penetration> exact = compare(i, surface, liftM);
            if (exact.isPresent()) {
                inside++;
                above += exact.get().excessM() > 0 ? 1 : 0;
                if (governing.isEmpty() || exact.get().excessM() > governing.get().excessM()) {
                    governing = exact;
                    worst = i;
                }
            }
        }
        return new Result(inside, above, worst, governing);
    }

    /** Compares one point with a surface that rises by a lift over its plane. */
    Optional<Penetration> compare(int index, ProtectionSurface surface, DoubleUnaryOperator liftM) {
        FramePoint point = point(index);
        return surface.compare(point, horizontalM, verticalM).map(plain -> lifted(plain, point, surface, liftM));
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
        record Hit(int index, double excessM) {
        }
        SurfaceSweep coarse = new SurfaceSweep(grown(surface));
        PriorityQueue<Hit> highest = new PriorityQueue<>(Comparator.comparingDouble(Hit::excessM));
        for (int i = 0; i < count(); i++) {
            if (Double.isNaN(coarse.excessM(places.alongM()[i], places.rightM()[i], places.heightM()[i]))) {
                continue;
            }
            int index = i;
            surface.compare(point(i), horizontalM, verticalM).ifPresent(hit -> highest.add(new Hit(index, hit.excessM())));
            if (highest.size() > most) {
                highest.remove();
            }
        }
        return highest.stream().sorted(Comparator.comparingDouble(Hit::excessM).reversed()).map(Hit::index).toList();
    }

    /** Returns the radius in which the true place of each point may lie, metres, zero or more. */
    public double horizontalAccuracyM() {
        return horizontalM;
    }

    /** Returns one point as a shape with the accuracy of the block. */
    public SurveyedShape shape(int index) {
        return new SurveyedShape(SurveyedShape.Kind.POINT, List.of(point(index)), horizontalM, verticalM);
    }

    private FramePoint point(int index) {
        return new FramePoint(places.alongM()[index], places.rightM()[index], places.heightM()[index]);
    }

    /** Returns whether no point stands above a surface, its accuracy on the safe side. */
    boolean isClear(ProtectionSurface surface) {
        return kept.containsKey(surface) ? kept.get(surface).above() == 0 : above(surface, 1).isEmpty();
    }

    /**
     * Returns points that stand above a surface, the accuracy of the survey on the safe side, in the order of the block.
     *
     * @param surface the surface
     * @param most    how many at most
     */
    public List<Above> above(ProtectionSurface surface, int most) {
        SurfaceSweep coarse = new SurfaceSweep(grown(surface));
        List<Above> found = new ArrayList<>();
        for (int i = 0; i < count() && found.size() < most; i++) {
            double excess = coarse.excessM(places.alongM()[i], places.rightM()[i], places.heightM()[i] + verticalM);
            if (!Double.isNaN(excess)) {
                FramePoint point = point(i);
                int index = i;
                surface.compare(point, horizontalM, verticalM).filter(exact -> exact.excessM() > 0)
                        .ifPresent(exact -> found.add(new Above(index, point, exact.excessM())));
            }
        }
        return found;
    }

    /** Returns the points in the frame, in the order of the block; the arrays are shared and must not be changed. */
    public SurveyPoints.InFrame places() {
        return places;
    }

    private ProtectionSurface grown(ProtectionSurface surface) {
        double turn = Math.toRadians(surface.axisTurnDeg());
        double back = 2 * horizontalM / Math.max(0.1, Math.cos(turn)) + 1;
        double side = 2 * (horizontalM * Math.hypot(1, surface.divergence())
                + back * (Math.abs(Math.tan(turn)) + surface.divergence())) + 1;
        return new ProtectionSurface(surface.startAlongM() + back, surface.startRightM(), surface.startHeightM(),
                surface.innerEdgeM() + 2 * side, surface.divergence(), surface.lengthM() + 3 * back, surface.slopeDeg(),
                        surface.axisTurnDeg());
    }
}
