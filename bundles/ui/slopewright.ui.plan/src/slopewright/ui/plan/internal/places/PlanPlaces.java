package slopewright.ui.plan.internal.places;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

import slopewright.drawing.scene.ScenePoint;
import slopewright.model.ApproachHost;
import slopewright.model.Obstacle;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.siting.SitingException;
import slopewright.siting.site.PlanAxis;
import slopewright.siting.site.PlanPlane;
import slopewright.siting.site.PlanPoint;
import slopewright.ui.MessageTexts;
import slopewright.ui.diagram.WorldBox;

/**
 * The plane that a project is drawn on, and where its elements lie there. What was worked out is kept until it is forgotten.
 */
public final class PlanPlaces {

    /** So many obstacles are brought onto the plane on all processors. */
    private static final int MANY = 2000;

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
            plane = PlanPlane.of(project, plane);
        } catch (SitingException e) {
            plane = Optional.empty();
            problem = Optional.of(MessageTexts.reason(e));
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
        return place == null ? Optional.empty() : points.computeIfAbsent(place, key -> plane.flatMap(ground -> onPlane(ground, key)));
    }

    private static Optional<ScenePoint> onPlane(PlanPlane ground, Place place) {
        try {
            return Optional.of(point(ground.toPlane(place)));
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
            index = Optional.of(new ObstacleIndex(entries()));
        }
        return index.get();
    }

    private List<ObstacleIndex.Entry> entries() {
        if (project.getAerodrome() == null || plane.isEmpty()) {
            return List.of();
        }
        List<Obstacle> all = project.getAerodrome().getObstacles();
        int parts = all.size() < MANY ? 1 : Runtime.getRuntime().availableProcessors();
        // each part with a plane of its own, for that of a grid counts in fields
        return IntStream.range(0, parts).parallel().mapToObj(part -> entries(PlanPlane.of(project, plane).orElseThrow(),
                all.subList(share(all, part, parts), share(all, part + 1, parts)))).flatMap(List::stream).toList();
    }

    private static int share(List<Obstacle> all, int part, int parts) {
        return (int) ((long) all.size() * part / parts);
    }

    private static List<ObstacleIndex.Entry> entries(PlanPlane ground, List<Obstacle> obstacles) {
        List<ObstacleIndex.Entry> entries = new ArrayList<>(obstacles.size());
        for (Obstacle obstacle : obstacles) {
            List<ScenePoint> places = new ArrayList<>(1);
            for (Place place : obstacle.getPlaces()) {
                onPlane(ground, place).ifPresent(places::add);
            }
            WorldBox.around(places).ifPresent(box -> entries.add(new ObstacleIndex.Entry(obstacle, box)));
        }
        return entries;
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
