package slopewright.ui.internal;

import java.util.List;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.PlatformUI;

import slopewright.ui.document.ActiveDocument;
import slopewright.ui.properties.ReadBackDialog;

/** Asks what a second person held against the sheets that it comes from. */
public final class ReadBackHandler extends AbstractHandler {

    @Override
    public boolean isEnabled() {
        return ActiveDocument.get().isPresent();
    }

    @Override
    public Object execute(ExecutionEvent event) {
        ActiveDocument.get().ifPresent(document -> ReadBackDialog.ask(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell(),
                document, List.of()));
        return null;
    }
}
