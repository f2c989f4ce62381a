package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.rcp.internal.CautionItem;
import slopewright.rcp.internal.CheckingPerspective;
import slopewright.rcp.internal.PilotPerspective;
import slopewright.rcp.internal.ProjectOpener;
import slopewright.rcp.internal.SitingPerspective;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.profile.PilotView;
import slopewright.ui.review.BookView;
import slopewright.ui.review.ComparisonView;
import slopewright.ui.review.FindingsView;
import slopewright.ui.review.MeasuredView;
import slopewright.ui.review.ReviewView;
import slopewright.ui.review.VersionsView;
import slopewright.ui.theme.TypeScale;

/**
 * With type at 150 % and in German, whose words are longer, nothing is cut on a small laptop and on a larger screen. It runs in a process
 * of its own (see the build file), for the desktop fixes the size of its letters when a program starts.
 */
class LargeTypeTest {
    private static final double LARGE = 1.5;
    private static final int SMALL_WIDTH = 1366;
    private static final int HEIGHT = 746;

    @TempDir
    private Path folder;
    private ProjectDocument document;
    private final List<String> cut = new ArrayList<>();
    private int looked;

    @BeforeEach
    void open() throws Exception {
        assertEquals("de", Locale.getDefault().getLanguage(), "the language of the process");
        assertEquals(LARGE, TypeScale.factor(), 0.1, "the size of letters");
        size(SMALL_WIDTH, HEIGHT);
        page().closeAllEditors(false);
        assertTrue(ProjectOpener.open(window(), DemoProjects.copy("harrow-vale-faults", folder)));
        document = Adapters.adapt(page().getActiveEditor(), ProjectDocument.class);
        Patience.await("the project is checked", () -> document.lastResult().isPresent() && !document.isChecking());
    }

    private static IWorkbenchWindow window() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0];
    }

    private static IWorkbenchPage page() {
        return window().getActivePage();
    }

    private static void size(int width, int height) {
        Shell shell = window().getShell();
        shell.setMaximized(false);
        shell.setBounds(0, 0, width, height);
        Patience.pause(500);
    }

    private static void arrange(String perspective) throws Exception {
        PlatformUI.getWorkbench().showPerspective(perspective, window());
        page().resetPerspective();
        Patience.pause(800);
    }

    /** The caution is whole, and so is what the check says beside it. */
    @Test
    void theStatusLineIsWhole() {
        List<CLabel> labels = Widgets.all(window().getShell(), CLabel.class).filter(label -> CautionItem.text().equals(label.getText())
                || String.valueOf(label.getText()).matches("\\d+ nicht erfüllt .* \\d+ erfüllt")).filter(Control::isVisible)
                .filter(label -> isStatus(label)).toList();
        assertEquals(2, labels.size(), labels.toString());
        labels.forEach(label -> look("status line", label));
        assertEquals(List.of(), cut);
    }

    private static boolean isStatus(Control label) {
        return label.getParent().getClass().getSimpleName().equals("StatusLine");
    }

    /** What stands in the first places of each arrangement: no words of a button, a choice or a label are cut. */
    @ParameterizedTest
    @CsvSource({SitingPerspective.ID + ",1366", CheckingPerspective.ID + ",1366", PilotPerspective.ID + ",1366",
            SitingPerspective.ID + ",1600", CheckingPerspective.ID + ",1600", PilotPerspective.ID + ",1600"})
    void nothingIsCutInAnArrangement(String perspective, int width) throws Exception {
        size(width, width == SMALL_WIDTH ? HEIGHT : 978);
        arrange(perspective);
        look(perspective, window().getShell());
        assertTrue(looked >= 5, looked + " controls");
        assertEquals(List.of(), cut);
    }

    /** Views that stand behind others at first. */
    @ParameterizedTest
    @ValueSource(strings = {FindingsView.ID, ComparisonView.ID, VersionsView.ID, BookView.ID, MeasuredView.ID, ReviewView.ID})
    void nothingIsCutInAView(String id) throws Exception {
        arrange(CheckingPerspective.ID);
        IViewPart view = page().showView(id);
        Patience.pause(800);
        look(view.getTitle(), window().getShell());
        assertTrue(looked >= 5, looked + " controls");
        assertEquals(List.of(), cut);
    }

    /** Each reason is whole in its row or below the rows, and the words of the chart are whole. */
    @ParameterizedTest
    @ValueSource(ints = {1366, 1600})
    void theReasonsOfTheComparisonAreInSight(int width) throws Exception {
        size(width, width == SMALL_WIDTH ? HEIGHT : 978);
        arrange(CheckingPerspective.ID);
        ComparisonView view = (ComparisonView) page().showView(ComparisonView.ID);
        Patience.pause(500);
        Table table = view.viewer().getTable();
        Widgets.all(table.getParent().getParent(), Button.class).findFirst().orElseThrow().notifyListeners(SWT.Selection, new Event());
        Patience.await("the comparison ends", () -> table.getItemCount() > 0);
        Patience.pause(800);
        int why = Stream.of(table.getColumns()).map(TableColumn::getText).toList().indexOf("Was dagegen spricht");
        assertTrue(why > 0);
        GC gc = new GC(table);
        try {
            for (TableItem item : table.getItems()) {
                Rectangle cell = item.getBounds(why);
                int room = Math.min(cell.x + cell.width, table.getClientArea().width) - cell.x;
                boolean isWhole = gc.textExtent(item.getText(why)).x <= room;
                assertTrue(isWhole || view.reasons().contains(item.getText(0) + ": " + item.getText(why)), item.getText(0) + " in " + room
                        + ": " + item.getText(why) + " and below " + view.reasons());
            }
        } finally {
            gc.dispose();
        }
        look("comparison", window().getShell());
        assertEquals(List.of(), cut);
    }

    /** The row of the keys that fly the approach, down to the switch that holds flashing lights. */
    @Test
    void theKeysOfThePilotsViewAreWhole() throws Exception {
        arrange(PilotPerspective.ID);
        PilotView view = (PilotView) page().showView(PilotView.ID);
        Patience.pause(800);
        Shell shell = window().getShell();
        Button hold = Widgets.all(shell, Button.class).filter(button -> button.getText().equals("Blinken anhalten")).findFirst()
                .orElseThrow();
        assertTrue(hold.isVisible(), view.getTitle());
        look("pilot", hold.getParent().getParent());
        assertTrue(looked >= 7, looked + " controls");
        assertEquals(List.of(), cut);
    }

    private void look(String where, Control control) {
        if (!control.isVisible()) {
            return;
        }
        String text = text(control);
        if (!text.isBlank()) {
            looked++;
            if ((!isWhole(control, text) || !isInSight(control)) && !isInStatusLine(text)) {
                cut.add(where + ": '" + text + "' " + control.getSize() + " needs " + control.computeSize(SWT.DEFAULT, SWT.DEFAULT));
            }
        }
        if (control instanceof Composite composite && !(control instanceof Combo)) {
            Stream.of(composite.getChildren()).forEach(child -> look(where, child));
        }
    }

    /** The head of the findings repeats the counts of the status line, where they are whole, and is shortened where it has no room. */
    private static boolean isInStatusLine(String text) {
        return Widgets.all(window().getShell(), CLabel.class).filter(LargeTypeTest::isStatus).map(label -> String.valueOf(label.getText()))
                .anyMatch(said -> !said.isBlank() && text.startsWith(said) && text.length() > said.length());
    }

    private static String text(Control control) {
        return control instanceof Button button ? button.getText() : control instanceof Combo combo ? combo.getText()
                : control instanceof CLabel label ? String.valueOf(label.getText())
                : control instanceof Label label && (label.getStyle() & SWT.SEPARATOR) == 0 ? label.getText() : "";
    }

    /** A label that wraps needs height; what else has words needs width, a choice that of what is chosen. */
    private static boolean isWhole(Control control, String text) {
        Point size = control.getSize();
        if ((control.getStyle() & SWT.WRAP) != 0) {
            return size.y >= control.computeSize(size.x, SWT.DEFAULT).y;
        }
        if (control instanceof Combo) {
            GC gc = new GC(control);
            try {
                return size.x >= gc.textExtent(text).x + TypeScale.px(30);
            } finally {
                gc.dispose();
            }
        }
        return size.x >= control.computeSize(SWT.DEFAULT, SWT.DEFAULT).x;
    }

    /** Whether nothing cuts the control off; what scrolls may hide what is above or below. */
    private static boolean isInSight(Control control) {
        Rectangle own = new Rectangle(0, 0, control.getSize().x, control.getSize().y);
        boolean scrolls = false;
        for (Composite above = control.getParent(); above != null; above = above.getParent()) {
            Rectangle seen = above.getDisplay().map(control, above, own).intersection(above.getClientArea());
            scrolls |= above instanceof ScrolledComposite;
            if (seen.width < own.width && !(scrolls && seen.isEmpty()) || seen.height < own.height && !scrolls) {
                return false;
            }
        }
        return true;
    }
}
