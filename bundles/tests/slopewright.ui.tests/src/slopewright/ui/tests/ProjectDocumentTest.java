package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.checks.CheckResult;
import slopewright.checks.Checks;
import slopewright.edit.MoveAid;
import slopewright.edit.SetAttribute;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.model.io.FileChangedException;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;
import slopewright.model.util.Projects;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.DocumentListener;
import slopewright.ui.document.ProjectDocument;

/** A project in the window: opening, editing, background checking, saving, recovery. */
class ProjectDocumentTest {

    @TempDir
    private Path folder;

    private final List<ProjectDocument> opened = new ArrayList<>();

    private ProjectDocument open(Path file) throws ProjectFileException {
        ProjectDocument document = ProjectDocument.open(file);
        opened.add(document);
        return document;
    }

    @AfterEach
    void disposeAll() {
        opened.forEach(ProjectDocument::dispose);
    }

    private static ApproachAid aid(ProjectDocument document) {
        return Projects.aids(document.project()).get(0);
    }

    private static void awaitCheck(ProjectDocument document) {
        Patience.await("the project is checked", () -> document.lastResult().isPresent() && !document.isChecking());
    }

    @Test
    void anOpenedProjectIsCheckedInTheBackground() throws Exception {
        ProjectDocument document = open(DemoProjects.copy("harrow-vale-faults", folder));
        assertEquals(Optional.empty(), document.lastResult(), "nothing is checked before the call returns");
        assertTrue(document.isChecking());
        awaitCheck(document);
        assertEquals(Checks.run(document.project(), Optional.empty()).counts(), document.lastResult().orElseThrow().counts());
        assertFalse(document.isDirty());
        assertSame(document, ProjectDocument.of(aid(document).getUnits().get(0)).orElseThrow());
    }

    @Test
    void editsAreToldAtOnceAndCheckedOnceTheyPause() throws Exception {
        ProjectDocument document = open(DemoProjects.copy("harrow-vale", folder));
        awaitCheck(document);
        List<Set<String>> changes = new ArrayList<>();
        List<CheckResult> results = new ArrayList<>();
        document.addListener(new DocumentListener() {
            @Override
            public void changed(Set<String> ids) {
                changes.add(ids);
            }

            @Override
            public void checked(CheckResult result) {
                assertSame(Thread.currentThread(), Display.getDefault().getThread());
                results.add(result);
            }
        });
        ApproachAid aid = aid(document);
        for (int i = 0; i < 5; i++) {
            document.history().perform(MoveAid.by(aid, 20, 0));
        }
        assertEquals(5, changes.size());
        assertTrue(changes.get(0).contains(aid.getUnits().get(0).getId()));
        assertEquals(0, results.size(), "no check on the thread of the edit");
        assertTrue(document.isChecking());
        awaitCheck(document);
        assertEquals(1, results.size(), "five edits in one go are checked once");
        assertEquals(Checks.run(document.project(), Optional.empty()).outcomes().size(), results.get(0).outcomes().size());
        assertTrue(document.isDirty());
        for (int i = 0; i < 5; i++) {
            document.history().undo();
        }
        assertFalse(document.isDirty());
    }

    @Test
    void aRuleSetThatIsUnknownIsSaidAndCanBeMended() throws Exception {
        ProjectDocument document = open(DemoProjects.copy("harrow-vale", folder));
        awaitCheck(document);
        document.history().perform(SetAttribute.of(document.project(), Literals.PROJECT__RULE_SET_KEY, "nowhere"));
        Patience.await("the reason is told", () -> document.checkProblem().isPresent());
        assertTrue(document.checkProblem().orElseThrow().contains("nowhere"));
        document.history().undo();
        Patience.await("it is checked again", () -> document.checkProblem().isEmpty() && !document.isChecking());
    }

    @Test
    void savingWritesTheFileAndEndsTheDirtyState() throws Exception {
        Path file = DemoProjects.copy("harrow-vale", folder);
        ProjectDocument document = open(file);
        document.history().perform(MoveAid.by(aid(document), 1, 0));
        document.save();
        assertFalse(document.isDirty());
        assertArrayEquals(ProjectFile.bytes(document.project()), Files.readAllBytes(file));
        Path other = folder.resolve("other.slopewright");
        document.saveAs(other);
        assertEquals(Optional.of(other), document.path());
        assertArrayEquals(Files.readAllBytes(file), Files.readAllBytes(other));
        document.history().undo();
        assertTrue(document.isDirty());
    }

    @Test
    void aNewProjectIsDirtyUntilItsFirstSave() throws Exception {
        Path file = folder.resolve("fresh.slopewright");
        ProjectDocument document = open(file);
        assertTrue(document.isDirty());
        assertFalse(Files.exists(file));
        assertEquals("fresh", document.project().getName());
        document.save();
        assertFalse(document.isDirty());
        assertEquals("fresh", ProjectFile.load(file).getName());
    }

    @Test
    void aFileThatCannotBeReadIsLeftAlone() throws IOException {
        Path file = Files.writeString(folder.resolve("bad.slopewright"), "<slopewright");
        ProjectFileException fault = assertThrows(ProjectFileException.class, () -> ProjectDocument.open(file));
        assertTrue(fault.getMessage().contains("bad.slopewright"), fault.getMessage());
        assertEquals("<slopewright", Files.readString(file));
    }

    @Test
    void unsavedWorkComesBackAfterAKill() throws Exception {
        Path file = DemoProjects.copy("harrow-vale", folder);
        byte[] saved = Files.readAllBytes(file);
        ProjectDocument killed = open(file);
        killed.history().perform(MoveAid.by(aid(killed), 12, 3));
        awaitCheck(killed);
        Patience.await("the work is kept", () -> Files.exists(folder.resolve(".harrow-vale.slopewright.unsaved")));
        byte[] unsaved = ProjectFile.bytes(killed.project());
        Path left = Kills.asLeft(file, folder.resolve("left"));
        ProjectDocument document = open(left);
        assertEquals(1, document.restoredWorks());
        assertTrue(document.isDirty());
        assertArrayEquals(unsaved, ProjectFile.bytes(document.project()));
        assertEquals(ProjectDocument.RESTORE, document.history().undoLabel());
        document.history().undo();
        assertFalse(document.isDirty());
        assertArrayEquals(saved, ProjectFile.bytes(document.project()), "undo goes back to the saved file");
        document.history().redo();
        document.save();
        assertEquals(0, document.restoredWorks());
        assertArrayEquals(unsaved, Files.readAllBytes(left));
        assertEquals(0, open(Kills.asLeft(left, folder.resolve("again"))).restoredWorks());
    }

    @Test
    void closingGivesUnsavedWorkUp() throws Exception {
        Path file = DemoProjects.copy("harrow-vale", folder);
        ProjectDocument document = ProjectDocument.open(file);
        document.history().perform(MoveAid.by(aid(document), 12, 3));
        Patience.await("the work is kept", () -> Files.exists(folder.resolve(".harrow-vale.slopewright.unsaved")));
        document.dispose();
        assertEquals(0, open(file).restoredWorks());
    }

    @Test
    void workThatIsOlderThanTheFileIsPutAside() throws Exception {
        Path file = DemoProjects.copy("harrow-vale", folder);
        Path kept = Files.writeString(folder.resolve(".harrow-vale.slopewright.unsaved"), "older");
        Files.setLastModifiedTime(kept, FileTime.fromMillis(Files.getLastModifiedTime(file).toMillis() - 60_000));
        assertEquals(0, open(file).restoredWorks());
        assertEquals("older", Files.readString(folder.resolve(".harrow-vale.slopewright.unsaved.old")));
    }

    /** A clock that went back makes the work look older than the file that it goes on from. */
    @Test
    void workThatGoesOnFromTheFileComesBackWhateverTheClockSays() throws Exception {
        Path file = DemoProjects.copy("harrow-vale", folder);
        ProjectDocument killed = open(file);
        killed.history().perform(MoveAid.by(aid(killed), 12, 3));
        Path kept = folder.resolve(".harrow-vale.slopewright.unsaved");
        Patience.await("the work is kept", () -> Files.exists(kept));
        Path left = Kills.asLeft(file, folder.resolve("left"));
        Files.setLastModifiedTime(Kills.unsaved(left), FileTime.fromMillis(Files.getLastModifiedTime(left).toMillis() - 3_600_000));
        assertEquals(1, open(left).restoredWorks());
    }

    @Test
    void workOnAnotherContentThanTheFileHoldsIsPutAside() throws Exception {
        Path file = DemoProjects.copy("harrow-vale", folder);
        ProjectDocument killed = open(file);
        killed.history().perform(MoveAid.by(aid(killed), 12, 3));
        Path kept = folder.resolve(".harrow-vale.slopewright.unsaved");
        Patience.await("the work is kept", () -> Files.exists(kept));
        byte[] work = Files.readAllBytes(kept);
        Path left = Kills.asLeft(file, folder.resolve("left"));
        Project other = ProjectFile.load(left);
        other.setName("saved by another program");
        ProjectFile.save(other, left);
        Files.setLastModifiedTime(Kills.unsaved(left), FileTime.fromMillis(Files.getLastModifiedTime(left).toMillis() + 3_600_000));
        assertEquals(0, open(left).restoredWorks());
        assertArrayEquals(work, Files.readAllBytes(left.resolveSibling(".harrow-vale.slopewright.unsaved.old")));
    }

    @Test
    void aLinkInThePlaceOfUnsavedWorkIsNeitherReadNorFollowed() throws Exception {
        Path file = DemoProjects.copy("harrow-vale", folder);
        Path elsewhere = DemoProjects.copy("harrow-vale-faults", Files.createDirectory(folder.resolve("elsewhere")));
        byte[] bytes = Files.readAllBytes(elsewhere);
        Path link = Files.createSymbolicLink(folder.resolve(".harrow-vale.slopewright.unsaved"), elsewhere);
        ProjectDocument document = open(file);
        assertEquals(0, document.restoredWorks());
        document.history().perform(MoveAid.by(aid(document), 12, 3));
        Patience.await("the work is kept", () -> Files.isRegularFile(link, LinkOption.NOFOLLOW_LINKS));
        assertArrayEquals(bytes, Files.readAllBytes(elsewhere));
    }

    @Test
    void aFileThatAnotherProgramChangedIsOnlySavedOverWhenAsked() throws Exception {
        Path file = DemoProjects.copy("harrow-vale", folder);
        ProjectDocument document = open(file);
        document.history().perform(MoveAid.by(aid(document), 12, 3));
        Project other = ProjectFile.load(file);
        other.setName("saved by another program");
        ProjectFile.save(other, file);
        ProjectFileException changed = assertThrows(ProjectFileException.class, document::save);
        assertInstanceOf(FileChangedException.class, changed.getCause());
        assertTrue(document.isDirty());
        assertEquals("saved by another program", ProjectFile.load(file).getName());
        document.saveOver(file);
        assertFalse(document.isDirty());
        assertArrayEquals(ProjectFile.bytes(document.project()), Files.readAllBytes(file));
        assertEquals("saved by another program", ProjectFile.load(folder.resolve("harrow-vale.slopewright.previous")).getName());
        document.history().undo();
        document.save();
    }

    @Test
    void aCheckCanBeEndedAndTheNextEditAsksForANewOne() throws Exception {
        ProjectDocument document = open(DemoProjects.copy("harrow-vale", folder));
        awaitCheck(document);
        CheckResult before = document.lastResult().orElseThrow();
        document.history().perform(MoveAid.by(aid(document), 5, 0));
        assertTrue(document.isChecking());
        document.stopChecking();
        assertFalse(document.isChecking());
        assertTrue(document.isCheckStopped());
        assertSame(before, document.lastResult().orElseThrow(), "the last result stays");
        document.history().perform(MoveAid.by(aid(document), 5, 0));
        assertFalse(document.isCheckStopped());
        awaitCheck(document);
        assertEquals(Checks.run(document.project(), Optional.empty()).outcomes(), document.lastResult().orElseThrow().outcomes());
    }
}
