package slopewright.evaluation.obstacles;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import slopewright.geometry.Curvature;
import slopewright.geometry.FramePoint;
import slopewright.geometry.Penetration;
import slopewright.geometry.ProtectionSurface;
import slopewright.geometry.SurfaceSweep;
import slopewright.model.Identified;

/**
 * Finds what governs against very many surfaces about one place. It compares nothing itself: what may govern is compared as
 * {@link Surroundings} compares it, and what a bound shows to stand lower is passed over. Immutable, safe for use by many threads at once
 * as long as the project does not change.
 */
public final class GoverningSearch {
    private static final int NO_BLOCK = -1;

    private final List<ObstacleField.Placed> placed;
    private final List<Surroundings.Block> blocks;
    private final double[] alongM;
    private final double[] rightM;
    private final double[] topM;
    private final double[] radiusM;
    private final double[] accuracyM;
    private final boolean[] shielded;
    private final int[] block;
    private final int[] index;

    /**
     * What governs against one surface.
     *
     * @param element the obstacle or the survey block
     * @param label   what it is called, for people
     * @param worst   how it stands against the surface
     */
    public record Standing(Identified element, String label, Penetration worst) {

        /** Returns the height of the surface above it, metres; negative where it stands through. */
        public double marginM() {
            return -worst.excessM();
        }
    }

    /** One shape as the search passes over it: a circle in plan with its highest top. */
    private record Circle(double alongM, double rightM, double topM, double radiusM, double accuracyM, boolean shielded, int block,
            int index) {

        /** Roughly how steep it is seen from the origin. */
        private double steepness() {
            return topM / Math.max(1, Math.hypot(alongM, rightM) - radiusM);
        }
    }

    /** Prepares a search. */
    public GoverningSearch(Surroundings surroundings) {
        placed = surroundings.obstacles().placed();
        blocks = surroundings.blocks();
        IntStream obstacles = IntStream.range(0, placed.size());
        List<Circle> all = Stream.concat(obstacles.mapToObj(this::circle), IntStream.range(0, blocks.size()).boxed()
                .flatMap(number -> IntStream.range(0, blocks.get(number).points().count()).mapToObj(point -> circle(number, point))))
                .sorted(Comparator.comparingDouble(Circle::steepness).reversed()).toList();
        alongM = all.stream().mapToDouble(Circle::alongM).toArray();
        rightM = all.stream().mapToDouble(Circle::rightM).toArray();
        topM = all.stream().mapToDouble(Circle::topM).toArray();
        radiusM = all.stream().mapToDouble(Circle::radiusM).toArray();
        accuracyM = all.stream().mapToDouble(Circle::accuracyM).toArray();
        block = all.stream().mapToInt(Circle::block).toArray();
        index = all.stream().mapToInt(Circle::index).toArray();
        shielded = new boolean[all.size()];
        for (int i = 0; i < shielded.length; i++) {
            shielded[i] = all.get(i).shielded();
        }
    }

    private Circle circle(int number) {
        ObstacleField.Placed found = placed.get(number);
        List<FramePoint> points = found.shape().points();
        double along = points.stream().mapToDouble(FramePoint::alongM).average().orElseThrow();
        double right = points.stream().mapToDouble(FramePoint::rightM).average().orElseThrow();
        double radius = points.stream().mapToDouble(point -> Math.hypot(point.alongM() - along, point.rightM() - right)).max()
                .orElseThrow();
        double top = points.stream().mapToDouble(FramePoint::heightM).max().orElseThrow() + found.shape().verticalAccuracyM();
        boolean studied = found.shielding().kind() == Shielding.Kind.BY_STUDY;
        return new Circle(along, right, top, radius, found.shape().horizontalAccuracyM(), studied, NO_BLOCK, number);
    }

    private Circle circle(int number, int point) {
        SurveyField field = blocks.get(number).points();
        return new Circle(field.places().alongM()[point], field.places().rightM()[point],
                field.places().heightM()[point] + field.verticalAccuracyM(), 0, field.horizontalAccuracyM(), false, number, point);
    }

    /**
     * Picks what may lie within some surfaces when they are turned about the origin.
     *
     * @param surfaces the surfaces, at least one
     * @param turnDeg  by how much they are turned, decimal degrees, clockwise seen from above
     */
    public Near near(Collection<ProtectionSurface> surfaces, double turnDeg) {
        double widening = surfaces.stream().mapToDouble(surface -> surface.divergence()
                + Math.abs(Math.tan(Math.toRadians(surface.axisTurnDeg())))).max().orElseThrow();
        List<FramePoint> corners = surfaces.stream().flatMap(surface -> surface.corners().stream()).toList();
        double behind = corners.stream().mapToDouble(FramePoint::alongM).max().orElseThrow();
        double ahead = corners.stream().mapToDouble(corner -> -corner.alongM()).max().orElseThrow();
        double half = corners.stream().mapToDouble(corner -> Math.abs(corner.rightM()) - widening * (behind - corner.alongM())).max()
                .orElseThrow();
        double cos = Math.cos(Math.toRadians(turnDeg));
        double sin = Math.sin(Math.toRadians(turnDeg));
        double share = Math.hypot(1, widening);
        int[] found = new int[alongM.length];
        int count = 0;
        for (int i = 0; i < found.length; i++) {
            double reach = radiusM[i] + accuracyM[i] + 1;
            double along = alongM[i] * cos + rightM[i] * sin;
            double aside = Math.abs(rightM[i] * cos - alongM[i] * sin);
            if (along <= behind + reach && -along <= ahead + reach && aside <= half + widening * (behind - along) + reach * share) {
                found[count++] = i;
            }
        }
        return new Near(Arrays.copyOf(found, count));
    }

    /** What may lie within surfaces that are turned one way. What governed last is asked first. Not for several threads. */
    public final class Near {
        private final int[] near;
        private int last;

        private Near(int[] near) {
            this.near = near;
            last = near.length == 0 ? 0 : near[0];
        }

        /**
         * Finds what governs against a surface.
         *
         * @param surface one of the surfaces, turned
         * @param sight   whether it is a line of sight, which leaves the Earth as it curves away
         * @param backed  whether what a study shields counts; what an object shields counts always, for it may stand elsewhere
         * @return what stands highest against it, empty where nothing lies within
         */
        public Optional<Standing> governing(ProtectionSurface surface, boolean sight, boolean backed) {
            SurfaceSweep sweep = new SurfaceSweep(surface);
            DoubleUnaryOperator lift = sight ? outwardM -> Curvature.dropM(outwardM, Curvature.USUAL_REFRACTION) : outwardM -> 0;
            int of = last;
            boolean counts = near.length > 0 && (backed || !shielded[of]);
            Penetration worst = counts ? compare(of, surface, lift).orElse(null) : null;
            for (int i : near) {
                double most = sweep.mostExcessM(alongM[i], rightM[i], topM[i], radiusM[i], accuracyM[i]);
                boolean decides = most > Double.NEGATIVE_INFINITY && (worst == null || most > worst.excessM());
                if (!decides || shielded[i] && !backed) {
                    continue;
                }
                Penetration exact = compare(i, surface, lift).orElse(null);
                if (exact != null && (worst == null || exact.excessM() > worst.excessM())) {
                    worst = exact;
                    of = i;
                }
            }
            last = of;
            return worst == null ? Optional.empty() : Optional.of(standing(of, worst));
        }
    }

    private Optional<Penetration> compare(int i, ProtectionSurface surface, DoubleUnaryOperator lift) {
        return block[i] == NO_BLOCK ? placed.get(index[i]).compare(surface, lift).map(ObstacleComparison::worst)
                : blocks.get(block[i]).points().compare(index[i], surface, lift);
    }

    private Standing standing(int i, Penetration worst) {
        return block[i] == NO_BLOCK ? new Standing(placed.get(index[i]).obstacle(), placed.get(index[i]).label(), worst)
                : new Standing(blocks.get(block[i]).block(), blocks.get(block[i]).label(index[i]), worst);
    }
}
