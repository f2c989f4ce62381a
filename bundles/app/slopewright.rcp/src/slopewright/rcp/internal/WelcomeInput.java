package slopewright.rcp.internal;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;
import slopewright.ui.Images;

/** The input of the welcome page; all are equal, so that the page is open once. */
public final class WelcomeInput implements IEditorInput {

    @Override
    public boolean exists() {
        return true;
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return Images.PROJECT.descriptor();
    }

    @Override
    public String getName() {
        return Messages.get("welcome.tab");
    }

    @Override
    public IPersistableElement getPersistable() {
        return null;
    }

    @Override
    public String getToolTipText() {
        return getName();
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return null;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof WelcomeInput;
    }

    @Override
    public int hashCode() {
        return WelcomeInput.class.hashCode();
    }
}
