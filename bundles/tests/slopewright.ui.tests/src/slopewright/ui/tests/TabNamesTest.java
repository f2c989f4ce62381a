package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;

import org.eclipse.e4.ui.model.application.MApplication;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.e4.ui.workbench.modeling.EModelService;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

import slopewright.rcp.internal.TabNames;

/** A tab that the last start named in another language is named anew, whether its view is in front or not. */
class TabNamesTest {
    private final Locale before = Locale.getDefault();
    private final IWorkbench workbench = PlatformUI.getWorkbench();

    @AfterEach
    void back() {
        Locale.setDefault(before);
        TabNames.renew(workbench);
    }

    private List<MPart> views() {
        return workbench.getService(EModelService.class).findElements(workbench.getService(MApplication.class), null, MPart.class, null,
                EModelService.ANYWHERE | EModelService.IN_SHARED_AREA).stream()
                .filter(part -> workbench.getViewRegistry().find(part.getElementId()) != null).toList();
    }

    @Test
    void everyTabIsNamedAnewWhereTheLanguageChanged() throws Exception {
        workbench.getActiveWorkbenchWindow().getActivePage().showView("slopewright.ui.review.findings");
        assertTrue(views().size() >= 3, views().toString());
        TabNames.renew(workbench);
        views().forEach(part -> part.setLabel("Ansicht"));
        TabNames.renew(workbench);
        assertTrue(views().stream().allMatch(part -> part.getLabel().equals("Ansicht")), "nothing is done where the language is the same");
        Locale.setDefault(Locale.forLanguageTag("fr"));
        TabNames.renew(workbench);
        views().forEach(part -> assertEquals(workbench.getViewRegistry().find(part.getElementId()).getLabel(), part.getLabel()));
    }
}
