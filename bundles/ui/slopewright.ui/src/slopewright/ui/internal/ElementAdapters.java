package slopewright.ui.internal;

import org.eclipse.core.runtime.IAdapterFactory;
import org.eclipse.ui.views.properties.IPropertySource;

import slopewright.model.Identified;
import slopewright.ui.properties.ElementPropertySource;

/** Gives elements of the model their property source. */
public final class ElementAdapters implements IAdapterFactory {

    @Override
    public <T> T getAdapter(Object object, Class<T> type) {
        return type == IPropertySource.class && object instanceof Identified element ? type.cast(new ElementPropertySource(element)) : null;
    }

    @Override
    public Class<?>[] getAdapterList() {
        return new Class<?>[] {IPropertySource.class};
    }
}
