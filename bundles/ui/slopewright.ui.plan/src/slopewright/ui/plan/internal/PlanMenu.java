package slopewright.ui.plan.internal;

import java.util.List;
import java.util.Optional;

import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.ContextMenuProvider;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.ui.actions.ActionRegistry;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.ui.actions.ActionFactory;

import slopewright.edit.ResolveAid;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Identified;
import slopewright.model.util.Projects;
import slopewright.ui.diagram.commands.HistoryCommand;

/** The context menu of a plan. */
public final class PlanMenu extends ContextMenuProvider {

    private final PlanContext context;
    private final PlanNavigator navigator;
    private final ActionRegistry registry;

    /**
     * Makes the menu.
     *
     * @param context   the context
     * @param navigator shows parts of the plan
     * @param registry  the common actions of the editor
     */
    public PlanMenu(PlanContext context, PlanNavigator navigator, ActionRegistry registry) {
        super(context.diagram().viewer());
        this.context = context;
        this.navigator = navigator;
        this.registry = registry;
    }

    @Override
    public void buildContextMenu(IMenuManager menu) {
        for (ActionFactory factory : List.of(ActionFactory.UNDO, ActionFactory.REDO, ActionFactory.DELETE)) {
            IAction action = registry.getAction(factory.getId());
            if (action != null) {
                menu.add(action);
            }
        }
        selectedAid().ifPresent(aid -> {
            menu.add(new Separator());
            menu.add(action("Lay out again", () -> layOutAgain(aid)));
        });
        menu.add(new Separator());
        menu.add(action("Show aerodrome", navigator::showAerodrome));
        menu.add(action("Show all", navigator::showAll));
        MenuManager ends = new MenuManager("Go to");
        for (ApproachHost host : navigator.hosts()) {
            ends.add(action(capital(Projects.label(host)), () -> navigator.show(host)));
        }
        menu.add(ends);
        MenuManager layers = new MenuManager("Layers");
        for (PlanLayer layer : PlanLayer.values()) {
            layers.add(toggle(layer));
        }
        menu.add(layers);
    }

    private static String capital(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    private Optional<ApproachAid> selectedAid() {
        List<?> selected = getViewer().getSelectedEditParts();
        return selected.size() == 1 && ((EditPart) selected.get(0)).getModel() instanceof Identified element ? Projects.aid(element)
                : Optional.empty();
    }

    private void layOutAgain(ApproachAid aid) {
        try {
            getViewer().getEditDomain().getCommandStack().execute(new HistoryCommand(ResolveAid.of(aid, context.rules(aid))));
        } catch (IllegalArgumentException e) {
            context.notice(e.getMessage());
        }
    }

    private IAction toggle(PlanLayer layer) {
        IFigure figure = context.diagram().layer(layer);
        Action toggle = new Action(layer.label(), IAction.AS_CHECK_BOX) {

            @Override
            public void run() {
                figure.setVisible(isChecked());
            }
        };
        toggle.setChecked(figure.isVisible());
        return toggle;
    }

    private static IAction action(String text, Runnable work) {
        return new Action(text) {

            @Override
            public void run() {
                work.run();
            }
        };
    }
}
