package slopewright.rcp.internal;

import org.eclipse.e4.ui.model.application.MApplication;
import org.eclipse.e4.ui.model.application.ui.MElementContainer;
import org.eclipse.e4.ui.model.application.ui.MUIElement;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.e4.ui.workbench.modeling.EModelService;
import org.eclipse.ui.IWorkbench;

/**
 * Removes the editors that the platform remembers. It notes its layout every few minutes, and of a program that was killed it then knows
 * that there were editors and not what they showed; it would open a page of errors for each.
 */
final class LeftoverEditors {

    private static final String EDITOR = "org.eclipse.e4.ui.compatibility.editor";

    private LeftoverEditors() {
    }

    /** Removes them before the first window is shown. */
    static void remove(IWorkbench workbench) {
        MApplication application = workbench.getService(MApplication.class);
        EModelService model = workbench.getService(EModelService.class);
        if (application != null && model != null) {
            model.findElements(application, EDITOR, MPart.class).forEach(LeftoverEditors::remove);
        }
    }

    private static void remove(MPart editor) {
        MElementContainer<MUIElement> stack = editor.getParent();
        if (stack != null) {
            stack.getChildren().remove(editor);
            stack.setSelectedElement(stack.getChildren().isEmpty() ? null : stack.getChildren().get(0));
        }
    }
}
