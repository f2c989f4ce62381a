package slopewright.ui.plan.internal.actions;

import java.util.Optional;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

/** Imports into the project in the active editor, also while a view beside it has the focus. */
public final class ImportHandler extends AbstractHandler {

    @Override
    public boolean isEnabled() {
        return commands().isPresent();
    }

    @Override
    public Object execute(ExecutionEvent event) {
        commands().ifPresent(found -> found.get(PlanCommand.IMPORT).run());
        return null;
    }

    private static Optional<PlanCommands> commands() {
        return Optional.ofNullable(PlatformUI.getWorkbench().getActiveWorkbenchWindow()).map(IWorkbenchWindow::getActivePage)
                .map(IWorkbenchPage::getActiveEditor).map(editor -> editor.getAdapter(PlanCommands.class));
    }
}
