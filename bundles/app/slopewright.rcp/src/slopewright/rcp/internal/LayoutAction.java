package slopewright.rcp.internal;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.ui.IPerspectiveDescriptor;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PerspectiveAdapter;

/** Arranges the views of a window for one kind of work; the workbench remembers what the user makes of each arrangement. */
final class LayoutAction extends Action {

    private final IWorkbenchWindow window;
    private final String perspectiveId;

    /**
     * Creates the action of one window.
     *
     * @param window        the window
     * @param command       its command, without the prefix of the product
     * @param perspectiveId the arrangement
     */
    LayoutAction(IWorkbenchWindow window, String command, String perspectiveId) {
        super(Messages.get("menu.layout-" + command), IAction.AS_RADIO_BUTTON);
        this.window = window;
        this.perspectiveId = perspectiveId;
        setId("slopewright.rcp." + command);
        setActionDefinitionId(getId());
        window.addPerspectiveListener(new PerspectiveAdapter() {

            @Override
            public void perspectiveActivated(IWorkbenchPage page, IPerspectiveDescriptor perspective) {
                setChecked(perspectiveId.equals(perspective.getId()));
            }
        });
    }

    @Override
    public void run() {
        IWorkbenchPage page = window.getActivePage();
        IPerspectiveDescriptor wanted = window.getWorkbench().getPerspectiveRegistry().findPerspectiveWithId(perspectiveId);
        if (page != null && wanted != null && page.getPerspective() != wanted) {
            page.setPerspective(wanted);
        }
    }
}
