package slopewright.ui.plan.internal.grid;

import java.util.Optional;

import org.eclipse.gef.EditPart;

import slopewright.model.ApproachHost;
import slopewright.model.Identified;
import slopewright.model.util.Projects;
import slopewright.siting.site.PlanPoint;
import slopewright.ui.diagram.WorldView;
import slopewright.ui.plan.internal.Placing;
import slopewright.ui.plan.internal.PlanContext;

/** The frame in which the grid lies: that of the runway end or helipad of what is selected, else the one nearest to the middle. */
public final class GridFrame {

    private static final double LEAST_PX = 56;

    private final PlanContext context;
    private final Placing placing;

    /** Makes the frame of a plan. */
    public GridFrame(PlanContext context) {
        this.context = context;
        this.placing = new Placing(context);
    }

    /** Returns the runway end or helipad in whose frame the grid lies now, empty where there is none with a place. */
    public Optional<ApproachHost> host() {
        for (Object part : context.diagram().viewer().getSelectedEditParts()) {
            Optional<ApproachHost> host = ((EditPart) part).getModel() instanceof Identified element ? Projects.host(element)
                    : Optional.empty();
            if (host.flatMap(context::axis).isPresent()) {
                return host;
            }
        }
        WorldView view = context.diagram().view();
        PlanPoint middle = new PlanPoint(view.worldX(view.widthPx() / 2), view.worldY(view.heightPx() / 2));
        return placing.nearest(middle, any -> true);
    }

    /** Returns the spacing of the grid at a scale: 1, 2 or 5 times a power of ten, never finer than a decimetre, metres. */
    public static double spacingM(double pixelsPerMetre) {
        double wanted = Math.max(0.1, LEAST_PX / pixelsPerMetre);
        double decade = Math.pow(10, Math.floor(Math.log10(wanted) + 1e-9));
        double share = wanted / decade;
        return decade * (share <= 1 + 1e-9 ? 1 : share <= 2 ? 2 : share <= 5 ? 5 : 10);
    }
}
