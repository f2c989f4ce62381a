package slopewright.rcp.internal;

import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;

/** Puts the name of the active project before that of the product in the title of a window. */
public final class WindowTitle implements IPartListener2 {

    /** The name of the product, as it stands in the title. */
    public static final String PRODUCT = "Slopewright";

    private final IWorkbenchWindowConfigurer configurer;

    private WindowTitle(IWorkbenchWindowConfigurer configurer) {
        this.configurer = configurer;
    }

    /**
     * Keeps the title of a window up to date from now on.
     *
     * @param configurer the window's configurer
     */
    public static void follow(IWorkbenchWindowConfigurer configurer) {
        WindowTitle title = new WindowTitle(configurer);
        configurer.getWindow().getPartService().addPartListener(title);
        title.update();
    }

    @Override
    public void partActivated(IWorkbenchPartReference reference) {
        update();
    }

    @Override
    public void partBroughtToTop(IWorkbenchPartReference reference) {
        update();
    }

    @Override
    public void partClosed(IWorkbenchPartReference reference) {
        update();
    }

    @Override
    public void partInputChanged(IWorkbenchPartReference reference) {
        update();
    }

    private void update() {
        IWorkbenchPage page = configurer.getWindow().getActivePage();
        IEditorPart editor = page == null ? null : page.getActiveEditor();
        configurer.setTitle(editor == null ? PRODUCT : editor.getTitle() + " – " + PRODUCT);
    }
}
