package slopewright.checks.field;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;

import slopewright.geometry.FramePoint;
import slopewright.geometry.Penetration;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.Obstacle;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.siting.remedy.SurveyedShape;
import slopewright.siting.site.SiteFrame;

/**
 * The obstacles of a project in one frame. What was compared with a surface is kept, so that a check in which neither the surface nor an
 * obstacle has changed compares nothing anew. The obstacles must not change while a field of them is in use. Not for several threads.
 */
public final class ObstacleField {

    private static final int MOST_KEPT = 64;

    /**
     * One obstacle that could be placed.
     *
     * @param obstacle the obstacle of the model
     * @param shape    its shape in the frame
     */
    public record Placed(Obstacle obstacle, SurveyedShape shape) {

        /** Returns the name of the obstacle for people. */
        public String label() {
            return Projects.label(obstacle);
        }

        /** Returns whether an existing immovable object shields it. */
        public boolean isShielded() {
            return Boolean.TRUE.equals(obstacle.getShielded());
        }
    }

    /**
     * One obstacle that could not.
     *
     * @param obstacle the obstacle of the model
     * @param reason   what it lacks
     */
    public record Broken(Obstacle obstacle, String reason) {
    }

    /**
     * One obstacle under or over a surface.
     *
     * @param placed the obstacle
     * @param worst  the place where it stands highest against the surface
     */
    public record Compared(Placed placed, Penetration worst) {
    }

    private final SiteFrame frame;
    private final Map<Obstacle, Object> byObstacle = new IdentityHashMap<>();
    private final List<Placed> placed = new ArrayList<>();
    private final List<Broken> broken = new ArrayList<>();
    private final double[] boxes;
    private final Map<Object, Object> kept = new LinkedHashMap<>(MOST_KEPT, 0.75f, true) {

        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Object, Object> eldest) {
            return size() > MOST_KEPT;
        }
    };

    private ObstacleField(SiteFrame frame, List<Obstacle> obstacles, Map<Obstacle, Object> known) {
        this.frame = frame;
        for (Obstacle obstacle : obstacles) {
            Object one = known.get(obstacle);
            add(obstacle, one == null ? place(obstacle) : one);
        }
        boxes = boxes();
    }

    /** Places obstacles in a frame. */
    public static ObstacleField of(List<Obstacle> obstacles, SiteFrame frame) {
        return new ObstacleField(frame, obstacles, Map.of());
    }

    /**
     * Returns the field after a change of the project, with nothing kept but the places of obstacles that did not change.
     *
     * @param obstacles all obstacles there are now
     * @param changed   whether an obstacle is not what it was
     */
    public ObstacleField after(List<Obstacle> obstacles, Predicate<Obstacle> changed) {
        Map<Obstacle, Object> known = new IdentityHashMap<>(byObstacle);
        known.keySet().removeIf(changed);
        return new ObstacleField(frame, obstacles, known);
    }

    private Object place(Obstacle obstacle) {
        try {
            return new Placed(obstacle, SurveyedShape.of(obstacle, frame));
        } catch (SitingException e) {
            return new Broken(obstacle, e.getMessage());
        }
    }

    private void add(Obstacle obstacle, Object one) {
        byObstacle.put(obstacle, one);
        if (one instanceof Placed whole) {
            placed.add(whole);
        } else {
            broken.add((Broken) one);
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
            double grown = shape.horizontalAccuracyM() * 2;
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
    public List<Broken> broken() {
        return List.copyOf(broken);
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
    public List<Compared> compare(ProtectionSurface surface) {
        return kept(surface, () -> compareAll(surface));
    }

    private List<Compared> compareAll(ProtectionSurface surface) {
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
        List<Compared> found = new ArrayList<>();
        for (int i = 0; i < placed.size(); i++) {
            boolean near = boxes[4 * i] <= mostAlong + slack && boxes[4 * i + 1] >= leastAlong - slack
                    && boxes[4 * i + 2] <= mostRight + slack && boxes[4 * i + 3] >= leastRight - slack;
            if (near) {
                Placed one = placed.get(i);
                Optional<Penetration> worst = one.shape().compare(surface);
                worst.ifPresent(place -> found.add(new Compared(one, place)));
            }
        }
        return List.copyOf(found);
    }

    /**
     * Returns what a computation over these obstacles gives, from the last time where that is still at hand.
     *
     * @param key  everything that decides the result beside the obstacles, with equality
     * @param work the computation
     * @param <T>  what it gives, immutable
     */
    @SuppressWarnings("unchecked")
    public <T> T kept(Object key, Supplier<T> work) {
        Object found = kept.get(key);
        if (found == null) {
            found = work.get();
            kept.put(key, found);
        }
        return (T) found;
    }
}
