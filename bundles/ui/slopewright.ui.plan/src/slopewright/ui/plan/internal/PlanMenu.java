package slopewright.ui.plan.internal;

import java.util.List;

import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.ContextMenuProvider;
import org.eclipse.gef.ui.actions.ActionRegistry;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.ui.actions.ActionFactory;

import slopewright.edit.EditHistory;
import slopewright.model.ApproachHost;
import slopewright.ui.MessageTexts;
import slopewright.ui.plan.internal.actions.PlanCommand;
import slopewright.ui.plan.internal.actions.PlanCommands;

/** The context menu of a plan. */
public final class PlanMenu extends ContextMenuProvider {

    private static final List<PlanCommand> ARRANGE = List.of(PlanCommand.LAY_OUT_AGAIN, PlanCommand.TAKE_GROUND, PlanCommand.ALIGN_BAR,
            PlanCommand.ALIGN_OFFSET, PlanCommand.DISTRIBUTE, PlanCommand.COPY_ANEW, PlanCommand.COPY_SAME, PlanCommand.MIRROR);
    private static final List<PlanCommand> LOOK = List.of(PlanCommand.LOOK_HERE, PlanCommand.ADD_IMAGE, PlanCommand.SCALE_IMAGE,
            PlanCommand.REMOVE_IMAGE);
    private static final List<PlanCommand> SHOW = List.of(PlanCommand.SHOW_AERODROME, PlanCommand.SHOW_ALL, PlanCommand.SHOW_SELECTION,
            PlanCommand.GRID, PlanCommand.SNAP);

    private final PlanContext context;
    private final PlanNavigator navigator;
    private final ActionRegistry registry;
    private final PlanCommands commands;

    /**
     * Makes the menu.
     *
     * @param context   the context
     * @param navigator shows parts of the plan
     * @param registry  the common actions of the editor
     * @param commands  the commands of the plan
     */
    public PlanMenu(PlanContext context, PlanNavigator navigator, ActionRegistry registry, PlanCommands commands) {
        super(context.diagram().viewer());
        this.context = context;
        this.navigator = navigator;
        this.registry = registry;
        this.commands = commands;
    }

    @Override
    public void buildContextMenu(IMenuManager menu) {
        EditHistory history = context.document().history();
        common(menu, ActionFactory.UNDO, Messages.get("menu.undo", history.undoLabel()));
        common(menu, ActionFactory.REDO, Messages.get("menu.redo", history.redoLabel()));
        common(menu, ActionFactory.DELETE, Messages.get("menu.delete"));
        menu.add(new Separator());
        addAll(menu, ARRANGE, true);
        menu.add(new Separator());
        addAll(menu, LOOK, true);
        menu.add(new Separator());
        addAll(menu, SHOW, false);
        MenuManager ends = new MenuManager(Messages.get("menu.go-to"));
        for (ApproachHost host : navigator.hosts()) {
            ends.add(action(capital(MessageTexts.label(host)), () -> navigator.show(host)));
        }
        menu.add(ends);
        MenuManager layers = new MenuManager(Messages.get("menu.layers"));
        for (PlanLayer layer : PlanLayer.values()) {
            layers.add(toggle(layer));
        }
        menu.add(layers);
    }

    /** Adds a common action in the words of the window; those of the diagram library are English. */
    private void common(IMenuManager menu, ActionFactory factory, String text) {
        IAction common = registry.getAction(factory.getId());
        if (common == null) {
            return;
        }
        IAction shown = action(text.strip(), common::run);
        shown.setId(factory.getId());
        shown.setActionDefinitionId(factory.getCommandId());
        shown.setImageDescriptor(common.getImageDescriptor());
        shown.setDisabledImageDescriptor(common.getDisabledImageDescriptor());
        shown.setEnabled(common.isEnabled());
        menu.add(shown);
    }

    private static String capital(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    /** Adds the actions of commands, those that have nothing to work on only where they are asked for. */
    private void addAll(IMenuManager menu, List<PlanCommand> group, boolean onlyWhatCan) {
        group.stream().filter(command -> !onlyWhatCan || commands.canRun(command)).forEach(command -> menu.add(commands.get(command)));
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
