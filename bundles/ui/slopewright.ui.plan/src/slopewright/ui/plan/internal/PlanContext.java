package slopewright.ui.plan.internal;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.Attempt;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.geometry.Angles;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Obstacle;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.site.PlanAxis;
import slopewright.siting.site.PlanPlane;
import slopewright.siting.site.PlanPoint;
import slopewright.standards.RuleSet;
import slopewright.ui.diagram.Diagram;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.plan.internal.places.Obstruction;
import slopewright.ui.plan.internal.places.Obstructions;
import slopewright.ui.plan.internal.places.PlanPlaces;

/**
 * What the parts of one plan share: the document with its evaluation, and where the elements lie on the plane that all is drawn on.
 */
public final class PlanContext {

    /** With so many obstacles the plan is painted before they are compared with the surfaces. */
    private static final int MANY_OBSTACLES = 2000;
    private static final int AFTER_PAINTING_MS = 100;

    private final ProjectDocument document;
    private final Diagram diagram;
    private final Consumer<String> notices;
    private final PlanPlaces places;
    private final PlanSettings settings = new PlanSettings();
    private Optional<Point> pointer = Optional.empty();
    private Optional<Obstructions> obstructions = Optional.empty();
    private boolean isComparing;

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
        this.places = new PlanPlaces(document.project());
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
        if (rest.isEmpty()) {
            return;
        }
        Set<String> frames = new HashSet<>(Set.of(String.valueOf(project().getId())));
        if (project().getAerodrome() != null) {
            frames.add(project().getAerodrome().getId());
            project().getAerodrome().getRunways().forEach(runway -> Ids.elements(runway).forEach(part -> frames.add(part.getId())));
            project().getAerodrome().getHelipads().forEach(pad -> Ids.elements(pad).forEach(part -> frames.add(part.getId())));
        }
        if (rest.stream().anyMatch(frames::contains)) {
            places.forget();
        } else {
            places.forget(rest);
        }
        obstructions = Optional.empty();
    }

    /** Returns where things lie. */
    public PlanPlaces places() {
        return places;
    }

    /** Returns the plane that all is drawn on, empty where nothing has a place. */
    public Optional<PlanPlane> plane() {
        return places.plane();
    }

    /** Returns how the frame of a runway end or helipad lies on the plane, empty where its place or bearing are not known. */
    public Optional<PlanAxis> axis(ApproachHost host) {
        return places.axis(host);
    }

    /**
     * Returns how a runway end lies on the plane, by both thresholds where its elevation is not known yet: so it is seen as soon as it is
     * drawn. Nothing is worked out by it.
     */
    public Optional<PlanAxis> drawn(RunwayEnd end) {
        return axis(end).or(() -> end.eContainer() instanceof Runway runway && plane().isPresent() ? runway.getEnds().stream()
                .filter(far -> far != end && far.getThreshold() != null && end.getThreshold() != null).findFirst()
                .flatMap(far -> between(plane().get(), end.getThreshold(), far.getThreshold())) : Optional.empty());
    }

    private static Optional<PlanAxis> between(PlanPlane plane, Place here, Place there) {
        try {
            PlanPoint from = plane.toPlane(here);
            PlanPoint to = plane.toPlane(there);
            return Optional.of(new PlanAxis(from, Angles.normaliseBearingDeg(Math.toDegrees(Math.atan2(to.eastM() - from.eastM(),
                    to.northM() - from.northM())))));
        } catch (SitingException e) {
            return Optional.empty();
        }
    }

    /**
     * Returns the rule set of the project.
     *
     * @throws IllegalArgumentException where it is unknown
     */
    public RuleSet rules() {
        return document.rules();
    }

    /** Returns what an aid gives as it stands under its own rule set, or why nothing can be evaluated. */
    public Attempt<AidEvaluation> evaluation(ApproachAid aid) {
        return document.evaluation(aid);
    }

    /** Returns what the units of an aid give as they stand, empty where that cannot be worked out. */
    public Optional<Siting> layout(ApproachAid aid) {
        return evaluation(aid).then(AidEvaluation::siting).value();
    }

    /**
     * Has very many obstacles painted before they are compared with the obstacle surfaces.
     *
     * @param compared is called when they are
     */
    public void paintFirst(Runnable compared) {
        if (project().getAerodrome() == null || project().getAerodrome().getObstacles().size() < MANY_OBSTACLES) {
            return;
        }
        isComparing = true;
        Control control = diagram.viewer().getControl();
        control.addListener(SWT.Paint, new Listener() {

            @Override
            public void handleEvent(Event event) {
                control.removeListener(SWT.Paint, this);
                control.getDisplay().timerExec(AFTER_PAINTING_MS, () -> {
                    isComparing = false;
                    if (!control.isDisposed()) {
                        compared.run();
                    }
                });
            }
        });
    }

    /** Returns whether the obstacles were not yet compared with the surfaces, so that nothing is known of how they stand. */
    public boolean isComparing() {
        return isComparing;
    }

    /** Returns how everything stands against the obstacle surfaces, empty where nothing can be evaluated, or is not yet. */
    public Optional<Obstructions> obstructions() {
        if (isComparing) {
            return Optional.empty();
        }
        try {
            ProjectEvaluation now = document.evaluation();
            if (obstructions.filter(known -> known.evaluation() == now).isEmpty()) {
                obstructions = Optional.of(new Obstructions(places, now));
            }
        } catch (IllegalArgumentException e) {
            obstructions = Optional.empty();
        }
        return obstructions;
    }

    /** Returns how an obstacle stands against the surface that it is worst for, empty where it lies outside all of them. */
    public Optional<Obstruction> obstruction(Obstacle obstacle) {
        return obstructions().flatMap(all -> all.of(obstacle));
    }
}
