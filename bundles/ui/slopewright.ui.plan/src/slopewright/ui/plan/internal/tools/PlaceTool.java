package slopewright.ui.plan.internal.tools;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.tools.CreationTool;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;

import slopewright.edit.AddAid;
import slopewright.edit.AddChild;
import slopewright.model.Identified;
import slopewright.ui.diagram.commands.HistoryCommand;

/** Places what the palette offers with one click, and selects it. */
public final class PlaceTool extends CreationTool {

    /** Makes a tool; the entry of the palette tells it what it places. */
    public PlaceTool() {
        setUnloadWhenFinished(true);
    }

    @Override
    protected void performCreation(int button) {
        Command command = getCurrentCommand();
        EditPartViewer viewer = getCurrentViewer();
        eraseTargetFeedback();
        super.performCreation(button);
        if (command instanceof HistoryCommand placing) {
            select(viewer, placing);
        }
    }

    private static void select(EditPartViewer viewer, HistoryCommand command) {
        Identified child = command.edit() instanceof AddChild added ? added.child() : null;
        Identified made = command.edit() instanceof AddAid added ? added.aid() : child;
        if (made != null && viewer.getEditPartRegistry().get(made) instanceof EditPart part) {
            viewer.flush();
            viewer.select(part);
        }
    }

    @Override
    protected boolean handleKeyDown(KeyEvent event) {
        if (event.keyCode == SWT.ESC) {
            eraseTargetFeedback();
            getDomain().loadDefaultTool();
            return true;
        }
        return super.handleKeyDown(event);
    }
}
