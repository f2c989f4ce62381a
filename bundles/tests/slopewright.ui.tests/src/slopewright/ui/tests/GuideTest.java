package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.keys.IBindingService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import slopewright.rcp.internal.Guide;
import slopewright.ui.preferences.PreferencePage;
import slopewright.ui.review.FindingsView;

/** F1 leads to the page about what is before the user, in the language of the window. */
class GuideTest {
    private final Locale before = Locale.getDefault();

    @BeforeEach
    void english() {
        Locale.setDefault(Locale.ENGLISH);
    }

    @AfterEach
    void back() {
        Locale.setDefault(before);
    }

    private static void assertLeads(String end, String address) {
        assertTrue(address.endsWith(end), address);
        assertTrue(Files.isRegularFile(Path.of(URI.create(address.replaceFirst("#.*", "")))), address);
    }

    @Test
    void theFocusedViewIsExplained() throws PartInitException, IOException {
        Shell shell = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell();
        PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage().showView("slopewright.ui.review.findings");
        assertLeads("/docs/guide/en/window.html#" + FindingsView.class.getSimpleName(), Guide.address(shell));
        Locale.setDefault(Locale.GERMANY);
        assertLeads("/docs/guide/de/window.html#" + FindingsView.class.getSimpleName(), Guide.address(shell));
    }

    @Test
    void aPageOfPreferencesIsExplainedAndWhatHasNoPlaceLeadsToTheContents() throws IOException {
        assertLeads("/en/window.html#PreferencePage", Guide.address(new PreferencePage()));
        assertLeads("/en/index.html", Guide.address(new Object()));
        assertLeads("/en/index.html", Guide.address((Object) null));
    }

    @Test
    void theKeyIsF1() {
        assertEquals("F1", PlatformUI.getWorkbench().getService(IBindingService.class).getBestActiveBindingFormattedFor(
                "slopewright.rcp.guide"));
        assertTrue(PlatformUI.getWorkbench().getService(ICommandService.class).getCommand("slopewright.rcp.guide").isHandled());
    }
}
