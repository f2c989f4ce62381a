package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.edit.MoveAid;
import slopewright.edit.SetAttribute;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Projects;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.FileWatch;
import slopewright.ui.document.FileWatch.State;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.document.UnsavedDialog;
import slopewright.ui.document.UnsavedWork;
import slopewright.ui.plan.PlanEditor;
import slopewright.ui.properties.DifferenceTable;
import slopewright.ui.review.FindingsView;

/** Unsaved work is offered, kept or dropped; what was undone stays undone; other windows and other programs are noticed. */
class UnsavedWorkTest {

    @TempDir
    private Path folder;
    private final List<ProjectDocument> opened = new ArrayList<>();

    @AfterEach
    void dispose() {
        opened.forEach(ProjectDocument::dispose);
    }

    private ProjectDocument open(Path file) throws Exception {
        ProjectDocument document = ProjectDocument.open(file);
        opened.add(document);
        return document;
    }

    private static ApproachAid aid(ProjectDocument document) {
        return Projects.aids(document.project()).get(0);
    }

    private static void rename(ProjectDocument document, String name) {
        document.history().perform(SetAttribute.of(document.project(), Literals.NAMED__NAME, name));
    }

    private static void awaitKept(Path kept, String words) {
        Patience.await("the work is kept", () -> {
            try {
                return Files.exists(kept) && Files.readString(kept).contains(words);
            } catch (IOException e) {
                return false;
            }
        });
    }

    @Test
    void workThatWasUndoneStaysUndone() throws Exception {
        Path file = DemoProjects.copy("harrow-vale", folder);
        ProjectDocument document = open(file);
        document.history().perform(MoveAid.by(aid(document), 12, 3));
        Patience.await("the work is kept", () -> Files.exists(Kills.unsaved(file)));
        document.history().undo();
        assertFalse(Files.exists(Kills.unsaved(file)), "a kill right after the undo finds nothing to bring back");
        Patience.pause(500);
        assertFalse(Files.exists(Kills.unsaved(file)), "and nothing comes later");
        document.history().redo();
        Patience.await("what is made again is kept again", () -> Files.exists(Kills.unsaved(file)));
    }

    @Test
    void editsThatFollowEachOtherAreKeptWithoutAPause() throws Exception {
        Path file = DemoProjects.copy("harrow-vale", folder);
        ProjectDocument document = open(file);
        long end = System.currentTimeMillis() + 4000;
        for (int i = 1; System.currentTimeMillis() < end && !Files.exists(Kills.unsaved(file)); i++) {
            rename(document, "step " + i);
            Patience.pause(40);
        }
        assertTrue(Files.exists(Kills.unsaved(file)), "a key that is held down does not put keeping off");
    }

    @Test
    void whatDiffersIsSaidAndDroppedWorkIsGone() throws Exception {
        Path file = DemoProjects.copy("harrow-vale", folder);
        assertEquals(List.of(), UnsavedWork.of(file));
        ProjectDocument killed = open(file);
        rename(killed, "Harrow Vale, second draft");
        awaitKept(Kills.unsaved(file), "second draft");
        Path left = Kills.asLeft(file, folder.resolve("left"));
        UnsavedWork work = UnsavedWork.of(left).get(0);
        assertTrue(work.belongs());
        List<String[]> rows = DifferenceTable.rows(work.saved().orElseThrow(), work.work());
        assertEquals(1, rows.size());
        assertEquals(ProjectFile.load(left).getName(), rows.get(0)[2]);
        assertEquals("Harrow Vale, second draft", rows.get(0)[3]);
        work.drop();
        assertEquals(0, open(left).restoredWorks());
        assertFalse(Files.exists(Kills.unsaved(left)));
    }

    @Test
    void workOverAnotherContentIsOfferedAndComesBackWhereItIsKept() throws Exception {
        Path file = DemoProjects.copy("harrow-vale", folder);
        ProjectDocument killed = open(file);
        rename(killed, "not saved");
        awaitKept(Kills.unsaved(file), "not saved");
        Path left = Kills.asLeft(file, folder.resolve("left"));
        Project other = ProjectFile.load(left);
        other.setName("saved by another program");
        ProjectFile.save(other, left);
        UnsavedWork work = UnsavedWork.of(left).get(0);
        assertFalse(work.belongs());
        work.keep();
        ProjectDocument document = open(left);
        assertEquals("not saved", document.project().getName());
        document.history().undo();
        assertEquals("saved by another program", document.project().getName());
    }

    /** A project as two windows leave it that are killed with work of their own. */
    private Path leftByTwoWindows() throws Exception {
        Path file = DemoProjects.copy("harrow-vale", folder);
        ProjectDocument first = open(file);
        ProjectDocument second = open(file);
        rename(first, "of the first window");
        rename(second, "of the second window");
        awaitKept(Kills.unsaved(file), "of the first window");
        awaitKept(file.resolveSibling(".harrow-vale.slopewright.unsaved.2"), "of the second window");
        return Kills.asLeft(file, folder.resolve("left"));
    }

    @Test
    void theWorkOfTwoWindowsOnOneProjectIsKeptApart() throws Exception {
        Path left = leftByTwoWindows();
        assertEquals(2, UnsavedWork.of(left).size());
        ProjectDocument document = open(left);
        assertEquals("of the first window", document.project().getName());
        document.history().undo();
        assertEquals("of the second window", document.project().getName());
        document.history().undo();
        assertFalse(document.isDirty());
        assertFalse(Files.exists(Kills.unsaved(left)));
    }

    /** Who prefers the saved file gets it, and not the work of the next window, and is told of how many windows work was brought back. */
    @Test
    void theSavedFileIsPreferredToTheWorkOfBothWindows() throws Exception {
        Path left = leftByTwoWindows();
        String saved = ProjectFile.load(left).getName();
        IWorkbenchPage page = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
        page.showView(FindingsView.ID);
        IEditorPart editor = page.openEditor(new ProjectInput(left), PlanEditor.ID);
        try {
            ProjectDocument document = Adapters.adapt(editor, ProjectDocument.class);
            Patience.await("both works are there", () -> document.restoredWorks() == 2);
            Patience.await("it is said", () -> link().getVisible() && link().getText().contains("2 windows"));
            link().notifyListeners(SWT.Selection, new Event());
            assertEquals(saved, document.project().getName());
            assertFalse(document.isDirty());
            Patience.await("nothing is offered any more", () -> !link().getVisible());
        } finally {
            page.closeEditor(editor, false);
        }
    }

    private static Link link() {
        return Widgets.all(PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell(), Link.class)
                .filter(link -> link.getText().contains("Use the saved file")).findFirst().orElseThrow();
    }

    @Test
    void noLinkLeadsRecoveryElsewhere() throws Exception {
        Path file = DemoProjects.copy("harrow-vale", folder);
        Path elsewhere = DemoProjects.copy("harrow-vale-faults", Files.createDirectory(folder.resolve("elsewhere")));
        byte[] bytes = Files.readAllBytes(elsewhere);
        Files.createLink(Kills.unsaved(file), elsewhere);
        Path claimed = Files.createFile(folder.resolve("claimed"));
        Files.createSymbolicLink(file.resolveSibling(".harrow-vale.slopewright.open"), claimed);
        assertEquals(List.of(), UnsavedWork.of(file), "a further name of another file is not read");
        ProjectDocument document = open(file);
        assertEquals(0, document.restoredWorks());
        rename(document, "not saved");
        awaitKept(Kills.unsaved(file), "not saved");
        assertArrayEquals(bytes, Files.readAllBytes(elsewhere));
        assertEquals(0, Files.size(claimed), "nothing is written through a link");
    }

    @Test
    void aFileThatAnotherProgramChangesIsNoticedAndTakenOver() throws Exception {
        Path file = DemoProjects.copy("harrow-vale", folder);
        ProjectDocument document = open(file);
        FileWatch watch = new FileWatch(document);
        assertEquals(State.SAME, watch.look().state());
        String before = document.project().getName();
        Project other = ProjectFile.load(file);
        other.setName("saved by another program");
        ProjectFile.save(other, file);
        assertEquals(State.CHANGED, watch.look().state());
        watch.accept();
        assertEquals(State.SAME, watch.look().state(), "who keeps the own work is not asked again");
        other.setName("saved once more");
        ProjectFile.save(other, file);
        assertEquals(State.CHANGED, watch.look().state());
        document.takeOver("Take over");
        assertEquals(State.SAME, watch.look().state());
        assertEquals("saved once more", document.project().getName());
        assertFalse(document.isDirty());
        document.history().undo();
        assertEquals(before, document.project().getName());
        assertTrue(document.isDirty());
        document.save();
        assertEquals(before, ProjectFile.load(file).getName());
        assertEquals(State.SAME, watch.look().state());
        Files.writeString(file, "no project");
        assertEquals(State.UNREADABLE, watch.look().state());
        Files.delete(file);
        assertEquals(State.GONE, watch.look().state());
    }

    @Test
    void theDialogShowsEachProjectAndDropsWhatIsNotTicked() throws Exception {
        List<Path> left = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            Path file = DemoProjects.copy("harrow-vale", Files.createDirectory(folder.resolve("p" + i)));
            ProjectDocument killed = open(file);
            rename(killed, "draft " + i);
            awaitKept(Kills.unsaved(file), "draft " + i);
            left.add(Kills.asLeft(file, folder.resolve("left" + i)));
        }
        List<String> rows = new ArrayList<>();
        answer(rows, 1, 0);
        UnsavedDialog.offer(null, left.stream().flatMap(file -> UnsavedWork.of(file).stream()).toList());
        assertEquals(3, rows.size(), rows.toString());
        assertEquals(1, open(left.get(0)).restoredWorks());
        assertEquals(0, open(left.get(1)).restoredWorks());
        assertEquals(1, open(left.get(2)).restoredWorks());
    }

    /** Waits for the dialog, unticks one row and goes on. */
    private static void answer(List<String> rows, int dropped, int looks) {
        Display.getCurrent().timerExec(50, () -> {
            List<Shell> found = Stream.of(Display.getCurrent().getShells())
                    .filter(shell -> shell.getData() instanceof UnsavedDialog).toList();
            if (found.isEmpty() && looks < 200) {
                answer(rows, dropped, looks + 1);
            } else {
                Table table = Widgets.all(found.get(0), Table.class).findFirst().orElseThrow();
                Stream.of(table.getItems()).forEach(item -> rows.add(item.getText(0) + " " + item.getText(3)));
                table.getItem(dropped).setChecked(false);
                Widgets.all(found.get(0), Button.class).filter(button -> Integer.valueOf(Window.OK).equals(button.getData()))
                        .findFirst().orElseThrow().notifyListeners(SWT.Selection, new Event());
            }
        });
    }
}
