package slopewright.ui.plan.internal.actions;

import java.util.List;
import java.util.Map;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.graphics.Point;

import slopewright.drawing.scene.ScenePoint;
import slopewright.model.Identified;
import slopewright.model.util.Ids;
import slopewright.ui.diagram.WorldView;
import slopewright.ui.diagram.parts.ElementPart;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.PlanNavigator;

/** Goes from one element of a plan to the next, in the order of the outline, and brings it into sight. */
final class ElementRound {

    private final PlanContext context;
    private final PlanNavigator navigator;

    ElementRound(PlanContext context, PlanNavigator navigator) {
        this.context = context;
        this.navigator = navigator;
    }

    void next() {
        go(1);
    }

    void previous() {
        go(-1);
    }

    private void go(int by) {
        GraphicalViewer viewer = context.diagram().viewer();
        Map<?, ?> known = viewer.getEditPartRegistry();
        List<ElementPart<?>> round = Ids.elements(context.project()).stream().map(known::get).filter(ElementPart.class::isInstance)
                .<ElementPart<?>>map(part -> (ElementPart<?>) part).filter(part -> part.anchor().isPresent()).toList();
        if (round.isEmpty()) {
            return;
        }
        List<EditPart> selected = new PlanSelection(context).parts();
        int now = selected.isEmpty() ? -1 : round.indexOf(selected.get(selected.size() - 1));
        int next = now < 0 ? by > 0 ? 0 : round.size() - 1 : Math.floorMod(now + by, round.size());
        ElementPart<? extends Identified> part = round.get(next);
        ScenePoint place = part.anchor().orElseThrow();
        viewer.select(part);
        navigator.reveal(place);
        WorldView view = context.diagram().view();
        Point at = new Point((int) view.toX(place.x()), (int) view.toY(place.y()));
        context.setPointer(at.x, at.y);
    }
}
