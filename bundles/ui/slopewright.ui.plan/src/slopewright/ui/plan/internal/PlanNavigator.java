package slopewright.ui.plan.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.gef.EditPartViewer;

import slopewright.drawing.scene.ScenePoint;
import slopewright.geometry.FramePoint;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Identified;
import slopewright.model.LightUnit;
import slopewright.model.Obstacle;
import slopewright.model.Place;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.site.PlanPoint;
import slopewright.ui.diagram.WorldBox;
import slopewright.ui.diagram.parts.ElementPart;
import slopewright.ui.plan.internal.figures.AidMarks;
import slopewright.ui.plan.internal.figures.RunwayMarks;
import slopewright.ui.plan.internal.parts.AerodromePart;
import slopewright.ui.plan.internal.places.Obstructions;
import slopewright.ui.plan.internal.places.PlanPlaces;

/** Where to look in a plan, and what lies where the pointer is. */
public final class PlanNavigator {

    private static final double MARGIN_PX = 60;
    private static final double AROUND_M = 8;
    private static final double END_BEFORE_M = 120;
    private static final double END_AFTER_M = 520;
    private static final double END_SIDE_M = 110;

    private final PlanContext context;
    private final Placing placing;

    /** Makes the navigator of a plan. */
    public PlanNavigator(PlanContext context) {
        this.context = context;
        this.placing = new Placing(context);
    }

    /** Shows the runways, helipads and aids; the obstacles where there is nothing else. */
    public void showAerodrome() {
        show(WorldBox.around(aerodrome()).or(() -> WorldBox.around(obstacles())));
    }

    /** Shows the runways, helipads, aids and obstacles. */
    public void showAll() {
        List<ScenePoint> points = aerodrome();
        points.addAll(obstacles());
        show(WorldBox.around(points));
    }

    /** Shows where the units of a runway end or helipad stand. */
    public void show(ApproachHost host) {
        context.axis(host).ifPresent(axis -> {
            double share = host instanceof RunwayEnd ? 1 : 0.25;
            List<ScenePoint> points = new ArrayList<>();
            for (double along : new double[] {-END_BEFORE_M * share, END_AFTER_M * share}) {
                points.add(PlanPlaces.point(axis, along, -END_SIDE_M * share));
                points.add(PlanPlaces.point(axis, along, END_SIDE_M * share));
            }
            host.getAids().forEach(aid -> points.addAll(places(aid)));
            show(WorldBox.around(points));
        });
    }

    /** Shows some elements as large as they fit, none closer than a few metres. */
    public void show(List<? extends Identified> elements) {
        List<ScenePoint> points = new ArrayList<>();
        elements.forEach(element -> points.addAll(places(element)));
        show(WorldBox.around(points).map(box -> box.grown(AROUND_M)));
    }

    private List<ScenePoint> places(Identified element) {
        if (element instanceof ApproachAid aid) {
            return places(aid);
        }
        if (element instanceof LightUnit unit) {
            return AidMarks.place(context, unit).stream().toList();
        }
        if (element instanceof Obstacle obstacle) {
            return context.places().points(obstacle);
        }
        if (element instanceof Runway runway) {
            return runway.getEnds().stream().flatMap(end -> context.axis(end).stream()).map(axis -> PlanPlaces.point(axis.origin()))
                    .toList();
        }
        Object known = context.diagram().viewer().getEditPartRegistry().get(element);
        return known instanceof ElementPart<?> part ? part.anchor().stream().toList() : List.of();
    }

    private void show(Optional<WorldBox> box) {
        box.ifPresent(found -> context.diagram().view().show(found, MARGIN_PX));
    }

    private List<ScenePoint> aerodrome() {
        List<ScenePoint> points = new ArrayList<>();
        for (ApproachHost host : Projects.hosts(context.project())) {
            context.axis(host).ifPresent(axis -> {
                double before = host instanceof RunwayEnd end ? RunwayMarks.displacedM(end) : 50;
                points.add(PlanPlaces.point(axis, -before, 0));
                double length = Projects.runway(host).map(runway -> RunwayMarks.lengthM(context, runway)).orElse(100.0);
                points.add(PlanPlaces.point(axis, length - before, 0));
            });
            host.getAids().forEach(aid -> points.addAll(places(aid)));
        }
        return points;
    }

    private List<ScenePoint> places(ApproachAid aid) {
        return aid.getUnits().stream().flatMap(unit -> AidMarks.place(context, unit).stream()).toList();
    }

    private List<ScenePoint> obstacles() {
        List<Obstacle> obstacles = context.project().getAerodrome() == null ? List.of() : context.project().getAerodrome().getObstacles();
        return obstacles.stream().flatMap(obstacle -> context.places().points(obstacle).stream()).toList();
    }

    /** Returns the part of an element, or of the nearest one around it that is shown; empty where none is. */
    public Optional<ElementPart<?>> part(String elementId) {
        EditPartViewer viewer = context.diagram().viewer();
        for (EObject shown = Ids.find(context.project(), elementId).orElse(null); shown != null; shown = shown.eContainer()) {
            if (shown instanceof Obstacle obstacle && viewer.getEditPartRegistry().get(shown.eContainer()) instanceof AerodromePart site) {
                site.setApart(obstacle);
            }
            if (viewer.getEditPartRegistry().get(shown) instanceof ElementPart<?> part && part.anchor().isPresent()) {
                return Optional.of(part);
            }
        }
        return Optional.empty();
    }

    /** Brings a place of the scene into sight where it cannot be seen. */
    public void reveal(ScenePoint place) {
        WorldBox seen = context.diagram().view().visible();
        WorldBox inner = new WorldBox(seen.minX() + seen.width() * 0.1, seen.minY() + seen.height() * 0.1,
                seen.maxX() - seen.width() * 0.1, seen.maxY() - seen.height() * 0.1);
        if (!inner.contains(place.x(), place.y())) {
            context.diagram().view().centreOn(place.x(), place.y());
        }
    }

    /**
     * Says where a pixel lies: its coordinates, its place from the nearest threshold, and how high the ground is where that is known.
     *
     * @param x pixels
     * @param y pixels
     */
    public String describe(int x, int y) {
        if (context.plane().isEmpty()) {
            return "";
        }
        PlanPoint place = new PlanPoint(context.diagram().view().worldX(x), context.diagram().view().worldY(y));
        Optional<ApproachHost> host = placing.nearest(place, any -> true);
        String ground = context.obstructions().flatMap(Obstructions::terrain).map(found -> found.elevationM(PlanPlaces.point(place)))
                .filter(OptionalDouble::isPresent)
                .map(height -> "    " + Messages.get("place.ground", Readings.length(height.getAsDouble()))).orElse("");
        return host.map(near -> from(near, place) + "    ").orElse("") + coordinates(place) + ground;
    }

    private String coordinates(PlanPoint place) {
        Place target = SlopewrightFactory.eINSTANCE.createPlace();
        context.plane().orElseThrow().toPlace(place, target);
        return target.getLatitudeDeg() == null
                ? Messages.get("place.grid", target.getEastM(), target.getNorthM())
                : Messages.get("place.degrees", target.getLatitudeDeg(), target.getLongitudeDeg());
    }

    private String from(ApproachHost host, PlanPoint place) {
        FramePoint point = context.axis(host).orElseThrow().toFrame(place, 0);
        String side = Messages.get(point.rightM() < 0 ? "place.left" : "place.right", Readings.coarse(Math.abs(point.rightM())));
        String along = (point.alongM() < 0 ? "−" : "+") + Readings.coarse(Math.abs(point.alongM()));
        return Messages.get("place.from", String.valueOf(host.getDesignator()), along, side);
    }

    /** Returns every runway end and approach direction that can be shown. */
    public List<ApproachHost> hosts() {
        return Projects.hosts(context.project()).stream().filter(host -> context.axis(host).isPresent()).toList();
    }
}
