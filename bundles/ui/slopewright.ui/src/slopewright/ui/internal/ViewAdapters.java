package slopewright.ui.internal;

import org.eclipse.core.runtime.IAdapterFactory;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.views.properties.IPropertySheetPage;

import slopewright.ui.properties.ElementPropertyPage;

/** Gives every view the property sheet of the active project, so that it does not go blank where a view has the focus. */
public final class ViewAdapters implements IAdapterFactory {

    @Override
    public <T> T getAdapter(Object object, Class<T> type) {
        return type == IPropertySheetPage.class && object instanceof IViewPart view && view.getSite() != null
                ? type.cast(new ElementPropertyPage(view.getSite().getPage())) : null;
    }

    @Override
    public Class<?>[] getAdapterList() {
        return new Class<?>[] {IPropertySheetPage.class};
    }
}
