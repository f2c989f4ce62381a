package slopewright.ui.plan.internal.places;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import slopewright.drawing.scene.ScenePoint;
import slopewright.model.ApproachHost;
import slopewright.model.Obstacle;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.siting.SitingException;
import slopewright.siting.site.PlanAxis;
import slopewright.siting.site.PlanPlane;
import slopewright.siting.site.PlanPoint;

/**
 * The plane that a project is drawn on, and where its elements lie there. What was worked out is kept until it is forgotten.
 */
public final class PlanPlaces {

    private final Project project;
    private final Map<ApproachHost, Optional<PlanAxis>> axes = new HashMap<>();
    private final Map<Place, Optional<ScenePoint>> points = new IdentityHashMap<>();
    private Optional<PlanPlane> plane = Optional.empty();
    private Optional<String> problem = Optional.empty();
    private Optional<ObstacleIndex> index = Optional.empty();

    /** Makes the places of a project. */
    public PlanPlaces(Project project) {
        this.project = project;
        forget();
    }

    /** Forgets everything: the plane may be another one. */
    public void forget() {
        axes.clear();
        points.clear();
        index = Optional.empty();
        problem = Optional.empty();
        try {
            plane = PlanPlane.of(project);
        } catch (SitingException e) {
            plane = Optional.empty();
            problem = Optional.of(e.getMessage());
        }
    }

    /** Forgets some places, and where the obstacles are. */
    public void forget(Set<String> placeIds) {
        points.keySet().removeIf(place -> placeIds.contains(place.getId()));
        index = Optional.empty();
    }

    /** Returns the plane, empty where nothing has a place. */
    public Optional<PlanPlane> plane() {
        return plane;
    }

    /** Returns why nothing can be drawn, where there is such a reason. */
    public Optional<String> problem() {
        return problem;
    }

    /** Returns how the frame of a runway end or helipad lies on the plane, empty where its place or bearing are not known. */
    public Optional<PlanAxis> axis(ApproachHost host) {
        return axes.computeIfAbsent(host, key -> plane.flatMap(ground -> {
            try {
                return Optional.of(ground.axis(key));
            } catch (SitingException e) {
                return Optional.empty();
            }
        }));
    }

    /** Returns where a place lies in the scene, empty where it has no coordinates. */
    public Optional<ScenePoint> point(Place place) {
        return place == null ? Optional.empty() : points.computeIfAbsent(place, this::onPlane);
    }

    private Optional<ScenePoint> onPlane(Place place) {
        try {
            return plane.map(ground -> point(ground.toPlane(place)));
        } catch (SitingException e) {
            return Optional.empty();
        }
    }

    /** Returns where an obstacle lies: its places that have coordinates. */
    public List<ScenePoint> points(Obstacle obstacle) {
        return obstacle.getPlaces().stream().flatMap(place -> point(place).stream()).toList();
    }

    /** Returns the obstacles by where they lie. */
    public ObstacleIndex obstacles() {
        if (index.isEmpty()) {
            ObstacleIndex made = new ObstacleIndex();
            if (project.getAerodrome() != null) {
                project.getAerodrome().getObstacles().forEach(obstacle -> made.add(obstacle, points(obstacle)));
            }
            index = Optional.of(made);
        }
        return index.get();
    }

    /** Returns a place of the plane as one of the scene: metres east and north. */
    public static ScenePoint point(PlanPoint place) {
        return new ScenePoint(place.eastM(), place.northM());
    }

    /** Returns a point of a frame as a place of the scene. */
    public static ScenePoint point(PlanAxis axis, double alongM, double rightM) {
        return point(axis.toPlane(alongM, rightM));
    }
}
