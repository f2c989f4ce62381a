package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.runtime.ILogListener;
import org.eclipse.core.runtime.IProduct;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.rcp.internal.CautionItem;
import slopewright.rcp.internal.ErrorsToSend;
import slopewright.rcp.internal.SitingPerspective;
import slopewright.ui.properties.PropertiesView;

/** The window as it stands after the start. */
class WorkbenchTest {

    @Test
    void theSitingPerspectiveIsOpen() {
        assertEquals(SitingPerspective.ID, window().getActivePage().getPerspective().getId());
        assertTrue(window().getActivePage().isEditorAreaVisible());
        assertNotNull(window().getActivePage().findView(PropertiesView.ID));
    }

    @Test
    void theTitleNamesTheProduct() {
        assertTrue(window().getShell().getText().endsWith("Slopewright"), window().getShell().getText());
    }

    @ParameterizedTest
    @ValueSource(strings = {"design aid", "does not replace the current edition of the standard", "the authority's approval",
        "ground survey", "flight inspection", "licensed engineer's judgement", "local codes come first",
        "Never set up or switch on an indicator at an operational aerodrome without the operator's authorisation",
        "hot, bright and electrically powered"})
    void theAboutTextHoldsTheCaution(String caution) {
        assertTrue(product().getProperty("aboutText").contains(caution), product().getProperty("aboutText"));
    }

    @Test
    void theStatusLineHoldsTheCaution() {
        List<String> labels = Widgets.all(window().getShell(), CLabel.class).map(CLabel::getText).toList();
        assertTrue(labels.contains(CautionItem.text()), labels.toString());
    }

    @ParameterizedTest
    @ValueSource(ints = {16, 32, 48, 64, 128})
    void theWindowHasAnImageOfEachSize(int size) {
        List<Integer> widths = Stream.of(product().getProperty("windowImages").split(","))
                .map(path -> ImageDescriptor.createFromURL(product().getDefiningBundle().getEntry(path)))
                .map(descriptor -> descriptor.getImageData(100))
                .peek(data -> assertNotNull(data, "an image of the window is missing"))
                .map((ImageData data) -> data.width)
                .toList();
        assertTrue(widths.contains(size), widths.toString());
    }

    @Test
    void theMenusOfferTheCommonActions() {
        Menu bar = window().getShell().getMenuBar();
        List<String> menus = Stream.of(bar.getItems()).map(item -> plain(item.getText())).toList();
        assertTrue(menus.containsAll(List.of("File", "Edit", "View", "Window", "Help")), menus.toString());
        assertOffers(bar, "File", List.of("New Site…", "New Empty Project…", "Open…", "Open Recent",
                "Close Editor", "Save", "Save as Template…", "Import…", "Hand over…", "Exit"));
        assertOffers(bar, "Edit", List.of("Undo", "Redo", "Delete"));
        assertOffers(bar, "View", List.of("Show View", "Dark"));
        assertOffers(bar, "Help", List.of("Welcome", "About Slopewright"));
    }

    /** Holds the entries of a menu and their order against those expected. */
    private static void assertOffers(Menu bar, String name, List<String> expected) {
        MenuItem item = Stream.of(bar.getItems()).filter(each -> plain(each.getText()).equals(name)).findFirst().orElseThrow();
        item.getMenu().notifyListeners(SWT.Show, new Event());
        List<String> offered = Stream.of(item.getMenu().getItems()).map(each -> plain(each.getText())).toList();
        item.getMenu().notifyListeners(SWT.Hide, new Event());
        assertEquals(expected, offered.stream().filter(expected::contains).toList(), "offered: " + offered);
    }

    /** The text of a menu entry without mnemonic and key. */
    private static String plain(String text) {
        return text.replace("&", "").replaceFirst("\t.*", "");
    }

    private static IProduct product() {
        IProduct product = Platform.getProduct();
        assertEquals("slopewright.rcp.product", product.getId());
        assertFalse(product.getProperty("aboutText").isBlank());
        return product;
    }

    /** The log that a user sends to somebody else says what went wrong, and not where files lie on the user's machine. */
    @Test
    void anErrorIsKeptWithoutFolders(@TempDir Path folder) throws Exception {
        Path log = folder.resolve("error.log");
        System.setProperty("slopewright.log", log.toString());
        ILogListener listener = ErrorsToSend.keep();
        try {
            Platform.getLog(ErrorsToSend.class).error("a test: /home/mary/secret client/site.slopewright is odd",
                    new IllegalStateException("C:\\Users\\mary\\b.csv"));
            Patience.await("the error is kept", () -> Files.exists(log));
        } finally {
            Platform.removeLogListener(listener);
            System.clearProperty("slopewright.log");
        }
        String said = Files.readString(log);
        assertTrue(said.contains("a test: .../site.slopewright is odd"), said);
        assertTrue(said.contains("IllegalStateException: .../b.csv"), said);
        assertFalse(said.contains("mary"), said);
    }

    private static IWorkbenchWindow window() {
        return PlatformUI.getWorkbench().getActiveWorkbenchWindow() == null
                ? PlatformUI.getWorkbench().getWorkbenchWindows()[0]
                : PlatformUI.getWorkbench().getActiveWorkbenchWindow();
    }
}
