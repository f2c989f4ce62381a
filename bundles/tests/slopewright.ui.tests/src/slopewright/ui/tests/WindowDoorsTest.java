package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static slopewright.testkit.HandWorkedSite.DISTANCE_M;
import static slopewright.testkit.HandWorkedSite.GOVERNING;
import static slopewright.testkit.HandWorkedSite.MARGIN_M;
import static slopewright.testkit.HandWorkedSite.OWN_RULES_GOVERNING;
import static slopewright.testkit.HandWorkedSite.OWN_RULES_MARGIN_M;
import static slopewright.testkit.HandWorkedSite.OWN_RULES_ROW;
import static slopewright.testkit.HandWorkedSite.ROW;
import static slopewright.testkit.HandWorkedSite.WHEEL_CLEARANCE_M;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.checks.Outcome;
import slopewright.geometry.FramePoint;
import slopewright.model.ApproachAid;
import slopewright.rcp.internal.ProjectOpener;
import slopewright.testkit.DemoProjects;
import slopewright.testkit.HandWorkedSite;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.profile.SectionView;
import slopewright.ui.properties.ElementPropertyPage;
import slopewright.ui.review.ComparisonView;
import slopewright.ui.review.FindingsView;

/** The hand-worked site read through the panes of the window: findings, properties, section, a drag, comparison. */
class WindowDoorsTest {

    @TempDir
    private Path folder;
    private IWorkbenchPage page;
    private IEditorPart editor;
    private ProjectDocument document;

    @BeforeEach
    void open() throws Exception {
        page = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
        editor = page.openEditor(new ProjectInput(HandWorkedSite.write(folder)), ProjectOpener.EDITOR);
        document = Adapters.adapt(editor, ProjectDocument.class);
    }

    @AfterEach
    void close() {
        page.closeEditor(editor, false);
    }

    private static String metres(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }

    private ApproachAid aid(String name) {
        return DemoProjects.aid(document.project(), name);
    }

    @Test
    void theFindings() throws Exception {
        page.showView(FindingsView.ID);
        Patience.await("the project is checked", () -> document.lastResult().isPresent() && !document.isChecking());
        for (String[] expected : new String[][] {{ROW, GOVERNING, metres(MARGIN_M)},
                {OWN_RULES_ROW, OWN_RULES_GOVERNING, metres(OWN_RULES_MARGIN_M)}}) {
            List<String> said = document.lastResult().orElseThrow().outcomes().stream().filter(outcome -> "OBS-01".equals(outcome.rule())
                    && aid(expected[0]).getId().equals(outcome.elementId())).map(Outcome::explanation)
                    .map(message -> message.english()).toList();
            assertEquals(1, said.size());
            assertTrue(said.get(0).contains(expected[1] + ", stands " + expected[2] + " m below"), said.toString());
        }
    }

    /** Survey blocks are read in the background; until then the margin says what it does not count, and then it is shown anew by itself. */
    @Test
    void theProperties() {
        Shell shell = new Shell(Display.getCurrent());
        shell.setLayout(new FillLayout());
        shell.setSize(400, 900);
        ElementPropertyPage sheet = new ElementPropertyPage(document);
        sheet.createControl(shell);
        shell.open();
        try {
            sheet.selectionChanged(null, new StructuredSelection(aid(ROW)));
            String early = texts(shell);
            assertTrue(early.contains(GOVERNING) || early.contains("Not compared: South survey and North survey."), early);
            Patience.await("the project is checked", () -> document.lastResult().isPresent() && !document.isChecking());
            assertShown(shell, ROW, "Distance 294.43 m", "Eye height (MEHT) 15.00 m", "Wheels over threshold 9.00 m",
                    "Obstacle margin +" + metres(MARGIN_M) + " m, " + GOVERNING);
            sheet.selectionChanged(null, new StructuredSelection(aid(OWN_RULES_ROW)));
            assertShown(shell, OWN_RULES_ROW, "Distance 272.09 m", "Eye height (MEHT) 13.72 m",
                    "Obstacle margin +" + metres(OWN_RULES_MARGIN_M) + " m, " + OWN_RULES_GOVERNING);
        } finally {
            sheet.dispose();
            shell.dispose();
        }
    }

    private static void assertShown(Shell shell, String name, String... expected) {
        String all = texts(shell);
        for (String text : expected) {
            assertTrue(all.contains(text), text + " of " + name + " is not in " + all);
        }
    }

    private static String texts(Shell shell) {
        return Widgets.all(shell, Tree.class).flatMap(tree -> Stream.of(tree.getItems())).flatMap(WindowDoorsTest::texts).toList()
                .toString();
    }

    private static Stream<String> texts(TreeItem item) {
        return Stream.concat(Stream.of(item.getText(0) + " " + item.getText(1)),
                Stream.of(item.getItems()).flatMap(WindowDoorsTest::texts));
    }

    /** The section as it is drawn, and held with the mouse: dragged away and back it says again what stands. */
    @Test
    void theSectionAndADrag() throws Exception {
        SectionView view = (SectionView) page.showView(SectionView.ID);
        SectionDriver section = new SectionDriver(view);
        Patience.await("the section has a size", () -> view.canvas().section().isPresent() && section.world().widthPx() > 100);
        document.viewState().choose(aid(ROW).getId());
        Patience.pause(50);
        Patience.await("the survey blocks are read",
                () -> document.evaluation().aid(aid(ROW)).obstacles().orThrow().uncompared().isEmpty());
        List<String> drawn = section.texts();
        assertTrue(drawn.stream().anyMatch(text -> text.startsWith("MEHT 15")), drawn.toString());
        assertTrue(drawn.stream().anyMatch(text -> text.contains("wheels 9")), drawn.toString());
        assertEquals(WHEEL_CLEARANCE_M, view.canvas().section().orElseThrow().wheelHeightM().orElseThrow(), 0.001);
        FramePoint lens = section.siting().reference();
        Point from = section.at(lens.alongM(), lens.heightM());
        Point away = new Point(from.x + 30, from.y);
        section.press(from);
        section.drag(from, away, 0);
        section.drag(away, from, 0);
        assertTrue(section.value("Obstacles").startsWith("clear by " + metres(MARGIN_M)), section.value("Obstacles"));
        assertTrue(section.value("Eye").startsWith("15.00 m above"), section.value("Eye"));
        assertTrue(section.value("Wheels").startsWith("9.00 m above"), section.value("Wheels"));
        section.release(from, 0);
    }

    @Test
    void theComparison() throws Exception {
        ComparisonView view = (ComparisonView) page.showView(ComparisonView.ID);
        try {
            Composite root = view.viewer().getTable().getParent().getParent();
            Widgets.all(root, Button.class).findFirst().orElseThrow().notifyListeners(SWT.Selection, new Event());
            Table table = view.viewer().getTable();
            Patience.await("the comparison ends", () -> table.getItemCount() > 0);
            TableItem row = Stream.of(table.getItems()).filter(item -> item.getText(0).equals("PAPI")).findFirst().orElseThrow();
            List<String> titles = Stream.of(table.getColumns()).map(column -> column.getText()).toList();
            assertTrue(row.getText(titles.indexOf("Distance")).startsWith(metres(DISTANCE_M)), row.getText(titles.indexOf("Distance")));
            assertTrue(row.getText(titles.indexOf("Eye height")).startsWith("15"), row.getText(titles.indexOf("Eye height")));
            assertTrue(row.getText(titles.indexOf("Wheel clearance")).startsWith("9"),
                    row.getText(titles.indexOf("Wheel clearance")));
            assertTrue(row.getText(titles.indexOf("Obstacle margin")).contains(metres(MARGIN_M)),
                    row.getText(titles.indexOf("Obstacle margin")));
        } finally {
            page.hideView(view);
        }
    }
}
