package slopewright.ui.plan.internal.actions;

import java.util.List;

import org.eclipse.swt.graphics.Point;

import slopewright.ui.diagram.WorldView;
import slopewright.ui.plan.internal.PilotEye;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.PlanNavigator;
import slopewright.ui.plan.internal.PlanSettings;

/** Commands that change what is seen and not the project. */
final class ViewActions {

    private static final double ZOOM = 1.3;

    private final PlanContext context;
    private final PlanNavigator navigator;
    private final PilotEye eye;
    private final PlanSelection selection;

    ViewActions(PlanContext context, PlanNavigator navigator, PilotEye eye) {
        this.context = context;
        this.navigator = navigator;
        this.eye = eye;
        this.selection = new PlanSelection(context);
    }

    List<PlanAction> all() {
        WorldView view = context.diagram().view();
        PlanSettings settings = context.settings();
        return List.of(PlanAction.of(PlanCommand.SHOW_AERODROME, navigator::showAerodrome, () -> true),
                PlanAction.of(PlanCommand.SHOW_ALL, navigator::showAll, () -> true),
                PlanAction.of(PlanCommand.SHOW_SELECTION, () -> navigator.show(selection.elements()), () -> !selection.parts().isEmpty()),
                PlanAction.of(PlanCommand.ZOOM_IN, () -> view.zoom(ZOOM), () -> true),
                PlanAction.of(PlanCommand.ZOOM_OUT, () -> view.zoom(1 / ZOOM), () -> true),
                PlanAction.toggle(PlanCommand.GRID, () -> settings.setGrid(!settings.isGrid()), settings::isGrid),
                PlanAction.toggle(PlanCommand.SNAP, () -> settings.setSnap(!settings.isSnap()), settings::isSnap),
                PlanAction.of(PlanCommand.LOOK_HERE, this::look, () -> context.document().viewState().aid().isPresent()));
    }

    private void look() {
        Point at = context.pointer();
        eye.lookFrom(at.x, at.y);
    }
}
