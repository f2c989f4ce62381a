package slopewright.rcp.internal;

import java.util.List;
import java.util.Locale;

import org.eclipse.e4.ui.model.application.MApplication;
import org.eclipse.e4.ui.model.application.ui.advanced.MPerspective;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.e4.ui.workbench.modeling.EModelService;
import org.eclipse.ui.IPerspectiveDescriptor;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.views.IViewDescriptor;

/**
 * Names tabs and layouts anew where the last start spoke another language. The platform keeps their names with the layout, so that each
 * view that is not in front would keep the name of the language in which it was first shown.
 */
public final class TabNames {
    private static final String LANGUAGE = "slopewright.language";

    private TabNames() {
    }

    /** Names all anew, before the window opens, where the language is not that of the last start. */
    public static void renew(IWorkbench workbench) {
        MApplication application = workbench.getService(MApplication.class);
        String language = Locale.getDefault().getLanguage();
        if (application == null || language.equals(application.getPersistedState().get(LANGUAGE))) {
            return;
        }
        EModelService model = workbench.getService(EModelService.class);
        List<MPart> parts = model.findElements(application, null, MPart.class, null, EModelService.ANYWHERE
                | EModelService.IN_SHARED_AREA);
        for (MPart part : parts) {
            IViewDescriptor view = workbench.getViewRegistry().find(part.getElementId());
            if (view != null) {
                part.setLabel(view.getLabel());
            }
        }
        for (MPerspective layout : model.findElements(application, null, MPerspective.class, null, EModelService.ANYWHERE)) {
            IPerspectiveDescriptor known = workbench.getPerspectiveRegistry().findPerspectiveWithId(layout.getElementId());
            if (known != null) {
                layout.setLabel(known.getLabel());
            }
        }
        application.getPersistedState().put(LANGUAGE, language);
    }
}
