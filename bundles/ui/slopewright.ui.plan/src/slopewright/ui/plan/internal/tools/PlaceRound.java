package slopewright.ui.plan.internal.tools;

import java.util.List;
import java.util.Optional;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.requests.CreateRequest;

import slopewright.geometry.FramePoint;
import slopewright.model.ApproachHost;
import slopewright.model.Runway;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.siting.site.PlanAxis;
import slopewright.siting.site.PlanPoint;
import slopewright.ui.diagram.WorldView;
import slopewright.ui.plan.internal.Placing;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.PlanNavigator;
import slopewright.ui.plan.internal.actions.PlanSelection;
import slopewright.ui.plan.internal.palette.Placed;
import slopewright.ui.plan.internal.places.PlanPlaces;

/**
 * Where something is placed without a mouse. An indicator is offered at the runway end or helipad that is selected, else at the first
 * suitable one that has none yet, on the left; arrows along the runway go to the next end, those across it to the other side. An obstacle
 * is offered in the middle of the view, and arrows move it.
 */
public final class PlaceRound {

    private static final String VIEWER_KEY = "slopewright.placeRound";
    private static final String PLACE_KEY = "slopewright.place";
    private static final double BESIDE_M = 8;
    private static final double HALF_A_PAD_M = 20;

    private final PlanContext context;
    private final PlanNavigator navigator;

    private PlaceRound(PlanContext context, PlanNavigator navigator) {
        this.context = context;
        this.navigator = navigator;
    }

    /** Lets the tools of a viewer place things by the keys. */
    public static void install(EditPartViewer viewer, PlanContext context, PlanNavigator navigator) {
        viewer.setProperty(VIEWER_KEY, new PlaceRound(context, navigator));
    }

    static Optional<PlaceRound> of(EditPartViewer viewer) {
        return viewer != null && viewer.getProperty(VIEWER_KEY) instanceof PlaceRound round ? Optional.of(round) : Optional.empty();
    }

    /** Returns the place that a request was given by the keys, empty where it is that of the mouse. */
    public static Optional<PlanPoint> place(CreateRequest request) {
        return Optional.ofNullable((PlanPoint) request.getExtendedData().get(PLACE_KEY));
    }

    /** Gives a request a place; empty leaves it to the mouse. */
    @SuppressWarnings("unchecked")
    static void setPlace(CreateRequest request, Optional<PlanPoint> place) {
        place.ifPresentOrElse(at -> request.getExtendedData().put(PLACE_KEY, at), () -> request.getExtendedData().remove(PLACE_KEY));
    }

    /** Returns where a thing is offered first, empty where it can stand nowhere. */
    Optional<PlanPoint> first(Placed placed) {
        if (placed instanceof Placed.Aid aid) {
            List<ApproachHost> hosts = hosts(aid);
            Optional<ApproachHost> selected = new PlanSelection(context).elements().stream().flatMap(one -> Projects.host(one).stream())
                    .filter(hosts::contains).findFirst();
            return selected.or(() -> hosts.stream().filter(host -> host.getAids().isEmpty()).findFirst())
                    .or(() -> hosts.stream().findFirst()).map(host -> beside(host, -1));
        }
        WorldView view = context.diagram().view();
        return context.plane().map(plane -> new PlanPoint(view.worldX(view.widthPx() / 2), view.worldY(view.heightPx() / 2)));
    }

    /**
     * Returns where an arrow leads from a place.
     *
     * @param placed what is placed
     * @param from   the place
     * @param toX    1 for an arrow to the right, -1 to the left
     * @param toY    1 for an arrow up, -1 down
     * @param stepM  how far an obstacle moves, metres
     */
    PlanPoint step(Placed placed, PlanPoint from, int toX, int toY, double stepM) {
        if (!(placed instanceof Placed.Aid aid)) {
            return from.moved(toX * stepM, toY * stepM);
        }
        List<ApproachHost> hosts = hosts(aid);
        Optional<ApproachHost> here = new Placing(context).nearest(from, hosts::contains);
        if (here.isEmpty()) {
            return from;
        }
        PlanAxis axis = context.axis(here.get()).orElseThrow();
        double along = axis.alongM(toX, toY);
        double right = axis.rightM(toX, toY);
        double side = axis.toFrame(from, 0).rightM() < 0 ? -1 : 1;
        if (Math.abs(along) < Math.abs(right)) {
            return beside(here.get(), Math.signum(right));
        }
        int next = Math.floorMod(hosts.indexOf(here.get()) + (along > 0 ? 1 : -1), hosts.size());
        return beside(hosts.get(next), side);
    }

    private List<ApproachHost> hosts(Placed.Aid aid) {
        return navigator.hosts().stream().filter(host -> Placing.suits(Families.get(aid.key()), host)).toList();
    }

    /** A place beside the threshold or centre, at which nothing else is nearer. */
    private PlanPoint beside(ApproachHost host, double side) {
        double half = Projects.runway(host).map(Runway::getWidthM).map(width -> width / 2).orElse(HALF_A_PAD_M);
        return context.axis(host).orElseThrow().toPlane(new FramePoint(0, side * (half + BESIDE_M), 0));
    }

    void reveal(PlanPoint place) {
        navigator.reveal(PlanPlaces.point(place));
    }

    /** Returns the part that takes what is placed. */
    EditPart target() {
        return context.diagram().viewer().getContents();
    }
}
