package slopewright.ui.plan.internal.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPartFactory;

import slopewright.drawing.scene.ScenePoint;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachDirection;
import slopewright.model.ApproachHost;
import slopewright.model.GlidePathAid;
import slopewright.model.GroundLevel;
import slopewright.model.Helipad;
import slopewright.model.Identified;
import slopewright.model.LightUnit;
import slopewright.model.Obstacle;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.TaxiwayEdge;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.PlanLayer;
import slopewright.ui.plan.internal.figures.RunwayMarks;
import slopewright.ui.plan.internal.figures.SiteMarks;
import slopewright.ui.plan.internal.places.PlanPlaces;
import slopewright.ui.plan.internal.policies.AntennaMover;
import slopewright.ui.plan.internal.policies.PadMover;
import slopewright.ui.plan.internal.policies.PlacesMover;
import slopewright.ui.plan.internal.policies.RunwayMover;

/** Makes the parts of a plan. */
public final class PlanPartFactory implements EditPartFactory {

    private final PlanContext context;

    /** Makes the factory of a plan. */
    public PlanPartFactory(PlanContext context) {
        this.context = context;
    }

    @Override
    public EditPart createEditPart(EditPart parent, Object model) {
        if (model instanceof Project project) {
            return new ProjectPart(project, context);
        }
        if (model instanceof ApproachAid aid) {
            return new AidPart(aid, context);
        }
        if (model instanceof LightUnit unit) {
            return new UnitPart(unit, context);
        }
        if (model instanceof Obstacle obstacle) {
            return new ObstaclePart(obstacle, context);
        }
        return sitePart((Identified) model);
    }

    private EditPart sitePart(Identified model) {
        if (model instanceof Aerodrome aerodrome) {
            return new AerodromePart(aerodrome, context);
        }
        if (model instanceof Runway runway) {
            return new SitePart<>(runway, context, PlanLayer.GROUND, drawn -> RunwayMarks.of(context, drawn)).with(runway::getEnds)
                    .pinnedAt(() -> middle(runway)).movedBy(RunwayMover.whole()).onceSelected();
        }
        if (model instanceof RunwayEnd end) {
            return new SitePart<>(end, context, PlanLayer.GROUND, drawn -> RunwayMarks.sign(context, drawn)).with(() -> children(end))
                    .pinnedAt(() -> context.drawn(end).map(axis -> PlanPlaces.point(axis, 0, 0))).movedBy(RunwayMover.end());
        }
        if (model instanceof Helipad pad) {
            return new SitePart<>(pad, context, PlanLayer.GROUND, drawn -> SiteMarks.helipad(context, drawn)).with(pad::getDirections)
                    .pinnedAt(() -> context.places().point(pad.getPlace())).movedBy(PadMover.whole());
        }
        if (model instanceof ApproachDirection direction) {
            return new SitePart<>(direction, context, PlanLayer.GROUND, drawn -> SiteMarks.direction(context, drawn))
                    .with(() -> children(direction)).pinnedAt(() -> context.axis(direction).map(axis -> PlanPlaces.point(axis, -20, 0)))
                    .movedBy(PadMover.direction());
        }
        if (model instanceof GlidePathAid path) {
            return new SitePart<>(path, context, PlanLayer.AIDS, drawn -> SiteMarks.glidePath(context, drawn))
                    .pinnedAt(() -> SiteMarks.antenna(context, path)).movedBy(AntennaMover.get());
        }
        if (model instanceof TaxiwayEdge edge) {
            return new SitePart<>(edge, context, PlanLayer.TAXIWAYS, drawn -> SiteMarks.edge(context, drawn))
                    .pinnedAt(() -> edge.getPoints().stream().flatMap(place -> context.places().point(place).stream()).findFirst())
                    .movedBy(PlacesMover.of(TaxiwayEdge::getPoints));
        }
        if (model instanceof GroundLevel level) {
            return new SitePart<>(level, context, PlanLayer.LEVELS, drawn -> SiteMarks.level(context, drawn))
                    .pinnedAt(() -> context.places().point(level.getPlace())).movedBy(PlacesMover.of(drawn -> of(drawn.getPlace())));
        }
        throw new IllegalArgumentException("a plan has no part for " + model.eClass().getName());
    }

    private Optional<ScenePoint> middle(Runway runway) {
        double half = RunwayMarks.lengthM(context, runway) / 2;
        return runway.getEnds().stream().flatMap(end -> context.drawn(end).stream()).findFirst()
                .map(axis -> PlanPlaces.point(axis, half, 0));
    }

    private static List<Place> of(Place place) {
        return place == null ? List.of() : List.of(place);
    }

    private static List<Identified> children(ApproachHost host) {
        List<Identified> children = new ArrayList<>(host.getAids());
        if (host.getGlidePath() != null) {
            children.add(host.getGlidePath());
        }
        return children;
    }
}
