package slopewright.rcp.internal;

import java.io.IOException;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;

/** Opens the guide where it speaks of what is before the user, on F1 and in the menu. */
public final class GuideHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        Shell shell = Display.getCurrent().getActiveShell();
        try {
            String address = Guide.address(shell);
            if (!Program.launch(address)) {
                MessageDialog.openInformation(shell, Messages.get("guide.title"), Messages.get("guide.no-browser", address));
            }
        } catch (IOException e) {
            MessageDialog.openError(shell, Messages.get("guide.title"), Messages.get("guide.no-pages", e.getMessage()));
        }
        return null;
    }
}
