package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.review.HandoverWizard;

/** The hand-over wizard with its real widgets: choose, look, write, never replace unasked. */
class HandoverWizardTest {

    @TempDir
    private Path folder;
    private ProjectDocument document;
    private WizardDialog dialog;

    @BeforeEach
    void open() throws Exception {
        document = ProjectDocument.open(DemoProjects.copy("harrow-vale", folder));
        dialog = HandoverWizard.dialog(PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell(), document);
        dialog.setBlockOnOpen(false);
        dialog.open();
    }

    @AfterEach
    void close() {
        dialog.close();
        document.dispose();
    }

    private Button button(String text) {
        return Widgets.all(dialog.getShell(), Button.class).filter(button -> button.getText().replace("&", "").startsWith(text)).findFirst()
                .orElseThrow();
    }

    private void press(String text) {
        assertTrue(button(text).isEnabled(), text);
        button(text).notifyListeners(SWT.Selection, new Event());
    }

    private void tick(String label) {
        Tree tree = Widgets.all(dialog.getShell(), Tree.class).findFirst().orElseThrow();
        TreeItem item = Stream.of(tree.getItems()).flatMap(heading -> Stream.of(heading.getItems()))
                .filter(widget -> widget.getText().equals(label)).findFirst().orElseThrow();
        item.setChecked(true);
        Event event = new Event();
        event.item = item;
        event.detail = SWT.CHECK;
        tree.notifyListeners(SWT.Selection, event);
    }

    /** Ticks a file of one indicator. */
    private void tick(String subject, String label) {
        Tree tree = Widgets.all(dialog.getShell(), Tree.class).findFirst().orElseThrow();
        TreeItem heading = Stream.of(tree.getItems()).filter(item -> item.getText().contains(subject)).findFirst().orElseThrow();
        TreeItem item = Stream.of(heading.getItems()).filter(file -> file.getText().equalsIgnoreCase(label)).findFirst().orElseThrow(
                () -> new AssertionError(label + " is none of " + Stream.of(heading.getItems()).map(TreeItem::getText).toList()));
        item.setChecked(true);
        Event event = new Event();
        event.item = item;
        event.detail = SWT.CHECK;
        tree.notifyListeners(SWT.Selection, event);
    }

    private List<TableItem> rows() {
        Table table = Widgets.all(dialog.getShell(), Table.class).filter(Table::isVisible).findFirst().orElseThrow();
        return List.of(table.getItems());
    }

    @Test
    void scheduleAndDrawingAreShownAndWritten() throws Exception {
        press("None");
        assertFalse(button("Next").isEnabled(), "nothing is ticked");
        assertEquals("Tick at least one file.", dialog.getCurrentPage().getErrorMessage());
        tick("Setting-out schedule  (CSV)");
        press("Next");
        HandoverWizard wizard = (HandoverWizard) dialog.getCurrentPage().getWizard();
        Patience.await("the rows are shown", () -> wizard.previewed().endsWith(" rows"));
        press("< Back");
        tick("Drawing: plan  (PDF)");
        press("Next");
        Patience.await("the picture is shown", () -> wizard.previewed().matches("\\d+ x \\d+"));
        assertEquals(List.of("new", "new"), rows().stream().map(item -> item.getText(1)).toList());
        press("Write");
        assertEquals(List.of("written", "written"), rows().stream().map(item -> item.getText(1)).toList());
        Path target = folder.resolve("handover");
        assertTrue(Files.readString(target.resolve("schedule.csv")).contains("PAPI"));
        assertEquals("%PDF", new String(Files.readAllBytes(target.resolve(rows().get(1).getText(0))), 0, 4));
        assertTrue(button("Close").isEnabled());
    }

    /**
     * What a party takes along: set-up card, pocket sheet and briefing of the portable unit. It lands on 250 degrees true; the variation of
     * -2.5 degrees at the beginning of the year, 0.19 a year, makes it 252 degrees by compass on the first of June.
     */
    @Test
    void thePaperOfALandingSiteIsWritten() throws Exception {
        Widgets.all(dialog.getShell(), Text.class).filter(text -> text.getText().matches("\\d{4}-\\d\\d-\\d\\d")).findFirst().orElseThrow()
                .setText("2026-06-01");
        press("None");
        tick("Portable unit", "Set-up card  (PDF)");
        tick("Portable unit", "pocket sheet  (PDF)");
        tick("Portable unit", "pilot's briefing  (TXT)");
        tick("Portable unit", "pilot's briefing  (HTML)");
        press("Next");
        assertEquals(4, rows().size());
        press("Write");
        assertEquals(List.of("written", "written", "written", "written"), rows().stream().map(item -> item.getText(1)).toList());
        for (TableItem row : rows()) {
            byte[] bytes = Files.readAllBytes(folder.resolve("handover").resolve(row.getText(0)));
            String beginning = new String(bytes, 0, 200, StandardCharsets.ISO_8859_1);
            if (row.getText(0).endsWith(".pdf")) {
                assertTrue(beginning.startsWith("%PDF"), row.getText(0));
            } else {
                String text = new String(bytes, StandardCharsets.UTF_8);
                assertTrue(text.contains("252°") && text.contains("250°"), text);
                assertFalse(text.contains("<script"), "a page without script");
            }
        }
    }

    @Test
    void aFileThatIsThereStaysUntilItIsTicked() throws Exception {
        Path mine = Files.createDirectories(folder.resolve("handover")).resolve("schedule.csv");
        Files.writeString(mine, "mine");
        press("None");
        tick("Setting-out schedule  (CSV)");
        press("Next");
        assertEquals("there, stays", rows().get(0).getText(1));
        press("Write");
        assertEquals("left alone", rows().get(0).getText(1));
        assertEquals("mine", Files.readString(mine));
    }

    @Test
    void aTickedFileIsReplaced() throws Exception {
        Path mine = Files.createDirectories(folder.resolve("handover")).resolve("schedule.csv");
        Files.writeString(mine, "mine");
        press("None");
        tick("Setting-out schedule  (CSV)");
        press("Next");
        TableItem row = rows().get(0);
        row.setChecked(true);
        Event event = new Event();
        event.item = row;
        event.detail = SWT.CHECK;
        row.getParent().notifyListeners(SWT.Selection, event);
        assertEquals("there, is replaced", row.getText(1));
        press("Write");
        assertTrue(Files.readString(mine).contains("PAPI"), "the schedule in its place");
    }

    @Test
    void aWrongDateIsSaidAtOnce() {
        Text date = Widgets.all(dialog.getShell(), Text.class).filter(text -> text.getText().matches("\\d{4}-\\d\\d-\\d\\d")).findFirst()
                .orElseThrow();
        date.setText("yesterday");
        assertTrue(dialog.getCurrentPage().getErrorMessage().contains("'yesterday' is no date"), dialog.getCurrentPage().getErrorMessage());
        assertFalse(button("Next").isEnabled());
        date.setText("2026-06-01");
        assertTrue(button("Next").isEnabled());
    }

    /** Where nothing can be written is said where it is typed, and not when everything was prepared. */
    @Test
    void aFolderThatCannotBeIsSaidAtOnce() throws Exception {
        Path file = Files.writeString(folder.resolve("file"), "no folder");
        Text where = Widgets.all(dialog.getShell(), Text.class).filter(text -> text.getText().startsWith("/")).findFirst().orElseThrow();
        String before = where.getText();
        for (String typed : List.of("", "handover", "../handover", file.toString(), file + "/handover", file + "/hand/over")) {
            where.setText(typed);
            String said = dialog.getCurrentPage().getErrorMessage();
            assertEquals(typed.startsWith("/") ? file + " is a file, not a folder." : "Name a folder with its whole path.", said, typed);
            assertFalse(button("Next").isEnabled(), typed);
            assertEquals(typed, where.getText(), "what was typed stays");
        }
        where.setText(before);
        assertTrue(button("Next").isEnabled());
    }

    @Test
    void theFileMenuOffersIt() {
        Menu bar = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell().getMenuBar();
        MenuItem file = Stream.of(bar.getItems()).filter(item -> item.getText().replace("&", "").equals("File")).findFirst().orElseThrow();
        file.getMenu().notifyListeners(SWT.Show, new Event());
        assertNotNull(Stream.of(file.getMenu().getItems()).filter(item -> item.getText().replace("&", "").startsWith("Hand over"))
                .findFirst().orElse(null));
        file.getMenu().notifyListeners(SWT.Hide, new Event());
    }
}
