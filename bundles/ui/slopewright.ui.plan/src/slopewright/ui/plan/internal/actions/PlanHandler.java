package slopewright.ui.plan.internal.actions;

import java.util.Map;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.menus.UIElement;

/** Lets menus and keys of the workbench carry out an action of the active plan. */
final class PlanHandler extends AbstractHandler implements IElementUpdater {

    private final PlanAction action;

    PlanHandler(PlanAction action) {
        this.action = action;
    }

    @Override
    public Object execute(ExecutionEvent event) {
        action.run();
        ICommandService commands = PlatformUI.getWorkbench().getService(ICommandService.class);
        commands.refreshElements(action.command().id(), null);
        return null;
    }

    @Override
    public boolean isEnabled() {
        return action.isEnabled();
    }

    @Override
    @SuppressWarnings("rawtypes")
    public void updateElement(UIElement element, Map parameters) {
        element.setChecked(action.isChecked());
    }
}
