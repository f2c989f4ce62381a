package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.model.ApproachAid;
import slopewright.model.LightUnit;
import slopewright.model.util.Projects;
import slopewright.rcp.internal.ProjectOpener;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.review.MeasuredView;

/** Measured values typed into real cells: difference, direction, verdict, undo, and the reason why nonsense is refused. */
class MeasuredViewTest {

    @TempDir
    private Path folder;
    private IWorkbenchPage page;
    private IEditorPart editor;
    private MeasuredView view;
    private ProjectDocument document;
    private ApproachAid aid;

    @BeforeEach
    void open() throws Exception {
        page = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
        view = (MeasuredView) page.showView(MeasuredView.ID);
        editor = page.openEditor(new ProjectInput(DemoProjects.copy("harrow-vale", folder)), ProjectOpener.EDITOR);
        document = Adapters.adapt(editor, ProjectDocument.class);
        aid = Projects.aids(document.project()).stream().filter(candidate -> "four-unit-row".equals(candidate.getFamilyKey())).findFirst()
                .orElseThrow();
        aid.getUnits().forEach(unit -> unit.setMeasured(null));
        document.viewState().choose(aid.getId());
        page.activate(view);
    }

    @AfterEach
    void close() {
        page.closeEditor(editor, false);
        page.hideView(view);
    }

    private Table table() {
        return view.viewer().getTable();
    }

    private int column(String title) {
        return Stream.of(table().getColumns()).map(column -> column.getText()).toList().indexOf(title);
    }

    private void type(int row, String title, String text) {
        enter(row, title, text);
        Patience.await("the cell is closed", () -> !view.viewer().isCellEditorActive());
    }

    private Text enter(int row, String title, String text) {
        view.viewer().editElement(view.viewer().getElementAt(row), column(title));
        Text cell = Widgets.all(table(), Text.class).filter(Text::isVisible).findFirst().orElseThrow();
        cell.setText(text);
        Event enter = new Event();
        enter.keyCode = SWT.CR;
        enter.character = SWT.CR;
        enter.type = SWT.KeyDown;
        cell.notifyListeners(SWT.DefaultSelection, enter);
        return cell;
    }

    private String cell(int row, String title) {
        return table().getItem(row).getText(column(title));
    }

    private void awaitCell(int row, String title, String text) {
        Patience.await(title + " says " + text, () -> cell(row, title).equals(text));
    }

    @Test
    void aMeasuredAngleIsJudgedAndTakenBack() {
        LightUnit unit = aid.getUnits().get(0);
        assertEquals(aid.getUnits().size(), table().getItemCount());
        awaitCell(0, "Verdict", "not measured");
        double off = 12 / 60.0;
        type(0, "Setting measured", String.valueOf(unit.getSettingDeg() + off));
        assertNotNull(unit.getMeasured());
        awaitCell(0, "Difference", "+12.0′, too high");
        awaitCell(0, "Verdict", "set again");
        assertNotNull(table().getItem(0).getImage(column("Verdict")), "by shape too");
        assertTrue(view.summary().contains("lower by 12.0'"), view.summary());
        type(0, "Setting measured", String.valueOf(unit.getSettingDeg() - off));
        awaitCell(0, "Difference", "-12.0′, too low");
        document.history().undo();
        document.history().undo();
        assertNull(unit.getMeasured());
        awaitCell(0, "Verdict", "not measured");
    }

    /** Who types from cell to cell sees what was typed judged at once, though the next cell is open already. */
    @Test
    void whatWasTypedIsJudgedWhileTheNextCellIsOpen() {
        LightUnit unit = aid.getUnits().get(0);
        awaitCell(0, "Verdict", "not measured");
        view.viewer().editElement(view.viewer().getElementAt(0), column("Setting measured"));
        Text cell = Widgets.all(table(), Text.class).filter(Text::isVisible).findFirst().orElseThrow();
        cell.setText(String.valueOf(unit.getSettingDeg() + 12 / 60.0));
        view.viewer().editElement(view.viewer().getElementAt(0), column("Instrument"));
        assertNotNull(unit.getMeasured(), "leaving the cell keeps it");
        assertTrue(view.viewer().isCellEditorActive());
        awaitCell(0, "Verdict", "set again");
        assertTrue(view.summary().contains("lower by 12.0'"), view.summary());
        assertTrue(view.viewer().isCellEditorActive(), "the next cell stays open");
        view.viewer().cancelEditing();
        document.history().undo();
        awaitCell(0, "Verdict", "not measured");
    }

    @Test
    void whatIsNoAngleIsRefused() {
        Text cell = enter(1, "Setting measured", "95");
        assertTrue(view.viewer().isCellEditorActive(), "Enter drops nothing in silence");
        assertEquals("95", cell.getText());
        view.viewer().cancelEditing();
        assertNull(aid.getUnits().get(1).getMeasured());
        type(1, "Instrument", "Clinometer 7");
        assertEquals("Clinometer 7", aid.getUnits().get(1).getMeasured().getInstrument());
        awaitCell(1, "Instrument", "Clinometer 7");
    }

    /** Who goes on to another cell learns that what was typed was not taken, and why. */
    @Test
    void whatIsLeftWrongIsNotDroppedInSilence() {
        for (String wrong : List.of("abc", "NaN", "-95", "1e308", "3°75'", "3 m")) {
            view.viewer().editElement(view.viewer().getElementAt(1), column("Setting measured"));
            Widgets.all(table(), Text.class).filter(Text::isVisible).findFirst().orElseThrow().setText(wrong);
            view.viewer().editElement(view.viewer().getElementAt(1), column("Instrument"));
            assertTrue(view.said().startsWith("Setting measured was not changed: "), wrong + ": " + view.said());
            assertFalse(view.said().endsWith("null"), view.said());
            assertNull(aid.getUnits().get(1).getMeasured(), wrong);
            view.viewer().cancelEditing();
        }
        type(1, "Setting measured", "3,25");
        assertEquals(3.25, aid.getUnits().get(1).getMeasured().getSettingDeg(), 1e-12);
        assertTrue(view.said().startsWith("Click"), view.said());
    }

    @Test
    void theViewFollowsTheChosenAid() {
        Combo combo = Widgets.all(table().getParent().getParent(), Combo.class).findFirst().orElseThrow();
        List<ApproachAid> all = Projects.aids(document.project());
        assertEquals(all.indexOf(aid), combo.getSelectionIndex());
        combo.select(all.size() - 1);
        combo.notifyListeners(SWT.Selection, new Event());
        assertEquals(all.get(all.size() - 1), document.viewState().aid().orElseThrow());
        assertEquals(all.get(all.size() - 1).getUnits().size(), table().getItemCount());
    }
}
