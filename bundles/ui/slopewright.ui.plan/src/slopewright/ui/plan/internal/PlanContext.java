package slopewright.ui.plan.internal;

import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

import org.eclipse.swt.graphics.Point;

import slopewright.drawing.scene.ScenePoint;
import slopewright.evaluation.AidLayouts;
import slopewright.evaluation.ProjectRules;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Obstacle;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.site.PlanAxis;
import slopewright.siting.site.PlanPlane;
import slopewright.siting.site.PlanPoint;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.RuleSet;
import slopewright.ui.diagram.Diagram;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.plan.internal.obstacles.ObstacleIndex;
import slopewright.ui.plan.internal.obstacles.Obstructions;

/**
 * What the parts of one plan share: the document, the plane that all is drawn on, and what follows from the elements as they are now.
 * What follows is worked out when it is first asked for, and again after {@link #invalidate()}.
 */
public final class PlanContext {

    private final ProjectDocument document;
    private final Diagram diagram;
    private final Consumer<String> notices;
    private final Map<ApproachHost, Optional<PlanAxis>> axes = new HashMap<>();
    private final Map<ApproachAid, Optional<Siting>> layouts = new HashMap<>();
    private final Map<Place, Optional<ScenePoint>> points = new IdentityHashMap<>();
    private final PlanSettings settings = new PlanSettings();
    private final Obstructions obstructions = new Obstructions(this);
    private Optional<Point> pointer = Optional.empty();
    private Optional<PlanPlane> plane = Optional.empty();
    private Optional<String> problem = Optional.empty();

    /**
     * Makes the context of an editor.
     *
     * @param document the document
     * @param diagram  the diagram
     * @param notices  shows the user why something could not be done
     */
    public PlanContext(ProjectDocument document, Diagram diagram, Consumer<String> notices) {
        this.document = document;
        this.diagram = diagram;
        this.notices = notices;
        invalidate();
    }

    /** Returns the document. */
    public ProjectDocument document() {
        return document;
    }

    /** Returns the project. */
    public Project project() {
        return document.project();
    }

    /** Returns the diagram. */
    public Diagram diagram() {
        return diagram;
    }

    /** Returns whether grid and snapping are on. */
    public PlanSettings settings() {
        return settings;
    }

    /** Returns where the pointer was last seen, pixels of the control; its middle before it was. */
    public Point pointer() {
        return pointer.orElseGet(() -> new Point((int) diagram.view().widthPx() / 2, (int) diagram.view().heightPx() / 2));
    }

    /** Notes where the pointer is, pixels of the control. */
    public void setPointer(int x, int y) {
        pointer = Optional.of(new Point(x, y));
    }

    /** Shows the user why something could not be done; an empty text takes the last one away. */
    public void notice(String text) {
        notices.accept(text);
    }

    /** Forgets what followed from elements that an edit has touched: no more than what they can bear on. */
    public void invalidate(Set<String> touched) {
        Set<String> rest = new HashSet<>(touched);
        Projects.aids(project()).forEach(aid -> Ids.elements(aid).forEach(element -> rest.remove(element.getId())));
        invalidateLayouts();
        if (rest.isEmpty()) {
            return;
        }
        Set<String> frames = new HashSet<>(Set.of(String.valueOf(project().getId())));
        if (project().getAerodrome() != null) {
            frames.add(project().getAerodrome().getId());
            project().getAerodrome().getRunways().forEach(one -> Ids.elements(one).forEach(part -> frames.add(part.getId())));
            project().getAerodrome().getHelipads().forEach(one -> Ids.elements(one).forEach(part -> frames.add(part.getId())));
        }
        if (rest.stream().anyMatch(frames::contains)) {
            invalidate();
        } else {
            points.keySet().removeIf(place -> rest.contains(place.getId()));
            obstructions.forgetPlaces();
        }
    }

    /** Forgets what followed from the aids as they were. */
    public void invalidateLayouts() {
        layouts.clear();
        obstructions.forgetSurfaces();
    }

    /** Forgets all that followed from the elements as they were. */
    public void invalidate() {
        axes.clear();
        invalidateLayouts();
        points.clear();
        obstructions.forgetPlaces();
        problem = Optional.empty();
        try {
            plane = PlanPlane.of(project());
        } catch (SitingException e) {
            plane = Optional.empty();
            problem = Optional.of(e.getMessage());
        }
    }

    /** Returns the plane that all is drawn on, empty where nothing has a place. */
    public Optional<PlanPlane> plane() {
        return plane;
    }

    /** Returns why nothing can be drawn, where there is such a reason. */
    public Optional<String> problem() {
        return problem;
    }

    /** Returns how the frame of a runway end or helipad lies on the plane, empty where its place or bearing are not known. */
    public Optional<PlanAxis> axis(ApproachHost host) {
        return axes.computeIfAbsent(host, one -> plane.flatMap(ground -> {
            try {
                return Optional.of(ground.axis(one));
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

    /** Returns a place of the plane as one of the scene: metres east and north. */
    public static ScenePoint point(PlanPoint place) {
        return new ScenePoint(place.eastM(), place.northM());
    }

    /** Returns a point of a frame as a place of the scene. */
    public static ScenePoint point(PlanAxis axis, double alongM, double rightM) {
        return point(axis.toPlane(alongM, rightM));
    }

    /**
     * Returns the rule set of the project.
     *
     * @throws IllegalArgumentException where it is unknown
     */
    public RuleSet rules() {
        return document.rules();
    }

    /**
     * Returns the rule set that an aid is laid out under: its own, else that of the project.
     *
     * @throws IllegalArgumentException where it is unknown
     */
    public RuleSet rules(ApproachAid aid) {
        return ProjectRules.of(project(), aid, Optional.empty());
    }

    /** Returns the rule set that an aid is laid out under, empty where it is unknown. */
    public Optional<RuleSet> rulesOf(ApproachAid aid) {
        try {
            return Optional.of(rules(aid));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** Returns what the units of an aid give as they stand, empty where that can not be worked out. */
    public Optional<Siting> layout(ApproachAid aid) {
        return layouts.computeIfAbsent(aid, one -> {
            try {
                return Optional.of(AidLayouts.evaluate(one, rules(one)));
            } catch (SitingException | IllegalArgumentException e) {
                return Optional.empty();
            }
        });
    }

    /** Returns the obstacles by where they lie. */
    public ObstacleIndex obstacles() {
        return obstructions.index();
    }

    /** Returns how an obstacle stands against the surface that it is worst for, empty where it lies outside all of them. */
    public Optional<Obstruction> obstruction(Obstacle obstacle) {
        return obstructions.of(obstacle);
    }

    /** Returns the frame of a runway end or helipad, empty where its place, bearing or elevation are not known. */
    public static Optional<SiteFrame> frame(ApproachHost host) {
        try {
            return Optional.of(SiteFrame.of(host));
        } catch (SitingException e) {
            return Optional.empty();
        }
    }
}
