package slopewright.ui.plan.internal.obstacles;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

import slopewright.evaluation.obstacles.SurveyedShape;
import slopewright.geometry.Penetration;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.ApproachAid;
import slopewright.model.Obstacle;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SurfacePlan;
import slopewright.siting.site.PlanAxis;
import slopewright.siting.site.SiteFrame;
import slopewright.ui.diagram.WorldBox;
import slopewright.ui.plan.internal.Obstruction;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.figures.ObstacleMarks;

/** How the obstacles of a plan stand against the obstacle surfaces; only those near a surface are compared with it. */
public final class Obstructions {

    /** More than any survey accuracy: so far beside a surface an obstacle may still count, metres. */
    private static final double NEAR_M = 500;

    private final PlanContext context;
    private Optional<Map<Obstacle, Obstruction>> found = Optional.empty();
    private Optional<ObstacleIndex> index = Optional.empty();

    /** Makes them for a plan; all is worked out when it is first asked for. */
    public Obstructions(PlanContext context) {
        this.context = context;
    }

    /** Forgets how obstacles stand against surfaces. */
    public void forgetSurfaces() {
        found = Optional.empty();
    }

    /** Forgets where obstacles lie. */
    public void forgetPlaces() {
        index = Optional.empty();
        found = Optional.empty();
    }

    /** Returns the obstacles by where they lie. */
    public ObstacleIndex index() {
        if (index.isEmpty()) {
            ObstacleIndex made = new ObstacleIndex();
            if (context.project().getAerodrome() != null) {
                context.project().getAerodrome().getObstacles().forEach(one -> made.add(one, ObstacleMarks.places(context, one)));
            }
            index = Optional.of(made);
        }
        return index.get();
    }

    /** Returns how an obstacle stands against the surface that it is worst for, empty where it lies outside all of them. */
    public Optional<Obstruction> of(Obstacle obstacle) {
        if (found.isEmpty()) {
            found = Optional.of(compareAll());
        }
        return Optional.ofNullable(found.get().get(obstacle));
    }

    private Map<Obstacle, Obstruction> compareAll() {
        Map<Obstacle, Obstruction> all = new HashMap<>();
        for (ApproachAid aid : Projects.aids(context.project())) {
            context.layout(aid).flatMap(Siting::surface).ifPresent(surface -> compare(aid, surface, all));
        }
        return all;
    }

    private void compare(ApproachAid aid, SurfacePlan surface, Map<Obstacle, Obstruction> all) {
        Optional<SiteFrame> frame = Projects.host(aid).flatMap(PlanContext::frame);
        Optional<WorldBox> box = Projects.host(aid).flatMap(context::axis).flatMap(axis -> box(axis, surface.geometry()));
        if (frame.isPresent() && box.isPresent()) {
            index().query(box.get().grown(NEAR_M), entry -> compare(entry.obstacle(), aid, frame.get(), surface, all));
        }
    }

    private static void compare(Obstacle obstacle, ApproachAid aid, SiteFrame frame, SurfacePlan surface, Map<Obstacle, Obstruction> all) {
        try {
            SurveyedShape.of(obstacle, frame).compare(surface.geometry()).map(Penetration::excessM)
                    .ifPresent(excess -> all.merge(obstacle, new Obstruction(excess, Projects.label(aid)),
                            (one, other) -> one.excessM() >= other.excessM() ? one : other));
        } catch (SitingException e) {
            // an obstacle without height is a finding of its own; it stands against nothing here
            return;
        }
    }

    /** Returns the smallest box of the plan around an obstacle surface. */
    public static Optional<WorldBox> box(PlanAxis axis, ProtectionSurface surface) {
        return WorldBox.around(surface.corners().stream().map(corner -> PlanContext.point(axis.toPlane(corner))).toList());
    }
}
