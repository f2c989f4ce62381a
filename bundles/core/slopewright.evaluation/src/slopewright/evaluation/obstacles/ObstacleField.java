package slopewright.evaluation.obstacles;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Predicate;

import slopewright.geometry.FramePoint;
import slopewright.geometry.Penetration;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.Obstacle;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.siting.site.SiteFrame;

/** The obstacles of a project in one frame. The obstacles must not change while a field of them is in use. Not for several threads. */
public final class ObstacleField {

    /**
     * One obstacle that could be placed.
     *
     * @param obstacle  the obstacle of the model
     * @param shape     its shape in the frame
     * @param shielding whether something shields it
     */
    public record Placed(Obstacle obstacle, SurveyedShape shape, Shielding shielding) {

        /** Returns the name of the obstacle for people. */
        public String label() {
            return Projects.label(obstacle);
        }

        Optional<ObstacleComparison> compare(ProtectionSurface surface, DoubleUnaryOperator liftM) {
            return shape.compare(surface).map(worst -> new ObstacleComparison(obstacle, label(), lifted(worst, surface, liftM), shielding,
                    Optional.empty()));
        }

        /** Whether it lies beside a surface, and may stand through it: nobody says how well its place was surveyed. */
        private boolean mayStandThrough(ProtectionSurface surface, DoubleUnaryOperator liftM) {
            if (SurveyedShape.isPlaceKnown(obstacle) || shielding.kind() == Shielding.Kind.BY_STUDY || shape.compare(surface).isPresent()) {
                return false;
            }
            Placed most = new Placed(obstacle, shape.atMost(obstacle), shielding);
            return most.compare(surface, liftM).filter(ObstacleComparison::isPenetrating).isPresent();
        }

        private boolean standsThrough(ProtectionSurface surface) {
            return shape.compare(surface).filter(hit -> hit.excessM() > 0).isPresent();
        }

        /** For what is no point the lift at its nearest place counts, which is on the safe side. */
        private Penetration lifted(Penetration worst, ProtectionSurface surface, DoubleUnaryOperator liftM) {
            double nearest = shape.points().stream().mapToDouble(point -> surface.outwardM(point.alongM(), point.rightM())).min()
                    .orElseThrow();
            double lift = liftM.applyAsDouble(Math.max(0, nearest - shape.horizontalAccuracyM()));
            return lift == 0 ? worst : new Penetration(worst.point(), worst.limitM() + lift, worst.excessM() - lift);
        }
    }

    private final SiteFrame frame;
    private final Map<Obstacle, Object> byObstacle = new IdentityHashMap<>();
    private final List<Placed> placed = new ArrayList<>();
    private final List<Uncompared> unplaced = new ArrayList<>();
    private final double[] boxes;
    /** Whether it is said of every place how well it was surveyed. */
    private final boolean isKnown;
    /** The obstacle that stood above the surface of the last question; in a search it mostly stands above that of the next as well. */
    private Optional<Placed> lastAbove = Optional.empty();

    private ObstacleField(SiteFrame frame, List<Obstacle> obstacles, Map<Obstacle, Object> known) {
        this.frame = frame;
        for (Obstacle obstacle : obstacles) {
            Object earlier = known.get(obstacle);
            add(obstacle, earlier == null ? place(obstacle) : earlier);
        }
        boxes = boxes();
        isKnown = placed.stream().allMatch(shape -> SurveyedShape.isPlaceKnown(shape.obstacle()));
    }

    /** Places obstacles in a frame. */
    public static ObstacleField of(List<Obstacle> obstacles, SiteFrame frame) {
        return new ObstacleField(frame, obstacles, Map.of());
    }

    /**
     * Returns the field after a change of the project, with nothing kept but the places of obstacles that did not change, and that no
     * other one shields, which may have changed.
     *
     * @param obstacles all obstacles there are now
     * @param changed   whether an obstacle is not what it was
     */
    public ObstacleField after(List<Obstacle> obstacles, Predicate<Obstacle> changed) {
        Map<Obstacle, Object> known = new IdentityHashMap<>(byObstacle);
        known.keySet().removeIf(changed.or(obstacle -> Boolean.TRUE.equals(obstacle.getShielded())));
        return new ObstacleField(frame, obstacles, known);
    }

    private Object place(Obstacle obstacle) {
        try {
            return new Placed(obstacle, SurveyedShape.of(obstacle, frame), Shielding.of(obstacle));
        } catch (SitingException e) {
            return new Uncompared(obstacle, Projects.label(obstacle), e.reason());
        }
    }

    private void add(Obstacle obstacle, Object found) {
        byObstacle.put(obstacle, found);
        if (found instanceof Placed shape) {
            placed.add(shape);
        } else {
            unplaced.add((Uncompared) found);
        }
    }

    /** Returns the boxes of all shapes in plan, grown by their accuracy: least and greatest along, least and greatest right. */
    private double[] boxes() {
        double[] found = new double[placed.size() * 4];
        for (int i = 0; i < placed.size(); i++) {
            SurveyedShape shape = placed.get(i).shape();
            double leastAlong = Double.POSITIVE_INFINITY;
            double mostAlong = Double.NEGATIVE_INFINITY;
            double leastRight = Double.POSITIVE_INFINITY;
            double mostRight = Double.NEGATIVE_INFINITY;
            for (FramePoint point : shape.points()) {
                leastAlong = Math.min(leastAlong, point.alongM());
                mostAlong = Math.max(mostAlong, point.alongM());
                leastRight = Math.min(leastRight, point.rightM());
                mostRight = Math.max(mostRight, point.rightM());
            }
            double grown = 2 * (SurveyedShape.isPlaceKnown(placed.get(i).obstacle()) ? shape.horizontalAccuracyM()
                    : SurveyedShape.UNKNOWN_HORIZONTAL_M);
            found[4 * i] = leastAlong - grown;
            found[4 * i + 1] = mostAlong + grown;
            found[4 * i + 2] = leastRight - grown;
            found[4 * i + 3] = mostRight + grown;
        }
        return found;
    }

    /** Returns the obstacles that could be placed, in the order of the project. */
    public List<Placed> placed() {
        return List.copyOf(placed);
    }

    /** Returns the obstacles that could not be placed, in the order of the project. */
    public List<Uncompared> unplaced() {
        return List.copyOf(unplaced);
    }

    /** Returns how many obstacles could be placed. */
    public int count() {
        return placed.size();
    }

    /**
     * Compares the obstacles with a surface.
     *
     * @param surface the surface
     * @return those under or over it, in the order of the project
     */
    public List<ObstacleComparison> compare(ProtectionSurface surface) {
        return compare(surface, outwardM -> 0);
    }

    /** Compares the obstacles with a surface that rises by a lift over its plane, metres, which grows with the distance outward. */
    List<ObstacleComparison> compare(ProtectionSurface surface, DoubleUnaryOperator liftM) {
        List<ObstacleComparison> found = new ArrayList<>();
        visit(surface, obstacle -> {
            obstacle.compare(surface, liftM).ifPresent(found::add);
            return true;
        });
        Set<Object> through = Collections.newSetFromMap(new IdentityHashMap<>());
        found.stream().filter(ObstacleComparison::isPenetrating).map(ObstacleComparison::element).forEach(through::add);
        found.replaceAll(one -> one.shielding().kind() == Shielding.Kind.BY_OBJECT
                && !through.contains(one.obstacle().orElseThrow().getShieldedBy()) ? one.with(Shielding.UNBACKED) : one);
        return found;
    }

    /**
     * Returns the obstacles that lie beside a surface and may stand through it, since nobody says how well their place was surveyed; in
     * the order of the project.
     */
    List<Obstacle> mayStandThrough(ProtectionSurface surface, DoubleUnaryOperator liftM) {
        if (isKnown) {
            return List.of();
        }
        List<Obstacle> found = new ArrayList<>();
        visit(surface, obstacle -> {
            if (obstacle.mayStandThrough(surface, liftM)) {
                found.add(obstacle.obstacle());
            }
            return true;
        });
        return found;
    }

    /** Returns whether an obstacle stands above a surface, and no study nor an object that stands through it too shields it there. */
    private boolean standsAbove(Placed obstacle, ProtectionSurface surface) {
        return switch (obstacle.shielding().kind()) {
            case BY_STUDY -> false;
            case BY_OBJECT -> obstacle.standsThrough(surface) && !(byObstacle.get(obstacle.obstacle().getShieldedBy()) instanceof Placed
                    shield && shield.standsThrough(surface));
            default -> obstacle.standsThrough(surface);
        };
    }

    /** Returns whether no obstacle that nothing named shields stands above a surface. */
    boolean isClear(ProtectionSurface surface) {
        if (lastAbove.filter(last -> standsAbove(last, surface)).isPresent()) {
            return false;
        }
        return visit(surface, obstacle -> {
            boolean above = standsAbove(obstacle, surface);
            lastAbove = above ? Optional.of(obstacle) : lastAbove;
            return !above;
        });
    }

    /** Goes through the obstacles whose box touches that of a surface, as long as the visitor wants more; returns whether it always did. */
    private boolean visit(ProtectionSurface surface, Predicate<Placed> visitor) {
        double leastAlong = Double.POSITIVE_INFINITY;
        double mostAlong = Double.NEGATIVE_INFINITY;
        double leastRight = Double.POSITIVE_INFINITY;
        double mostRight = Double.NEGATIVE_INFINITY;
        for (FramePoint corner : surface.corners()) {
            leastAlong = Math.min(leastAlong, corner.alongM());
            mostAlong = Math.max(mostAlong, corner.alongM());
            leastRight = Math.min(leastRight, corner.rightM());
            mostRight = Math.max(mostRight, corner.rightM());
        }
        double slack = 1 + surface.divergence();
        for (int i = 0; i < placed.size(); i++) {
            boolean near = boxes[4 * i] <= mostAlong + slack && boxes[4 * i + 1] >= leastAlong - slack
                    && boxes[4 * i + 2] <= mostRight + slack && boxes[4 * i + 3] >= leastRight - slack;
            if (near && !visitor.test(placed.get(i))) {
                return false;
            }
        }
        return true;
    }
}
