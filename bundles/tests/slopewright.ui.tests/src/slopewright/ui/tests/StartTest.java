package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IPerspectiveDescriptor;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;
import slopewright.rcp.internal.ReadAhead;
import slopewright.ui.AfterStart;

/** What waits for the window as it starts, and what is read meanwhile. */
class StartTest {

    @TempDir
    private Path folder;

    @AfterEach
    void theStartIsOver() {
        AfterStart.end(Display.getCurrent(), shell());
    }

    @Test
    void workWaitsForTheWindowInItsOrderAndNoneForAnother() {
        List<String> done = new ArrayList<>();
        AfterStart.run(Display.getCurrent(), () -> done.add("before"));
        AfterStart.begin(Display.getCurrent());
        AfterStart.run(Display.getCurrent(), () -> done.add("first"));
        AfterStart.run(Display.getCurrent(), () -> {
            throw new IllegalStateException("this one fails");
        });
        AfterStart.run(Display.getCurrent(), () -> done.add("last"));
        assertEquals(List.of("before"), done);
        AfterStart.end(Display.getCurrent(), shell());
        assertEquals(List.of("before", "first", "last"), done);
        AfterStart.run(Display.getCurrent(), () -> done.add("after"));
        assertEquals(List.of("before", "first", "last", "after"), done);
    }

    @ParameterizedTest
    @ValueSource(strings = {"slopewright.ui.review.findings", "slopewright.ui.properties"})
    void aViewOfTheStartIsFilledOnceTheWindowWasPainted(String id) throws PartInitException {
        IWorkbenchPage page = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
        leaveOneArrangement(page);
        page.hideView(page.findView(id));
        AfterStart.begin(Display.getCurrent());
        IViewPart view = page.showView(id);
        view.setFocus();
        assertEquals(0, view.getViewSite().getActionBars().getToolBarManager().getItems().length);
        AfterStart.end(Display.getCurrent(), shell());
        assertTrue(view.getViewSite().getActionBars().getToolBarManager().getItems().length > 0, "the view stays empty");
        view.setFocus();
    }

    /** Closes the arrangements that are not in sight, for a view that another holds is not made anew. */
    private static void leaveOneArrangement(IWorkbenchPage page) {
        for (IPerspectiveDescriptor other : page.getOpenPerspectives()) {
            if (!other.equals(page.getPerspective())) {
                page.closePerspective(other, false, false);
            }
        }
    }

    @Test
    void aViewThatWasClosedBeforeThatStaysClosed() throws PartInitException {
        IWorkbenchPage page = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
        for (String id : List.of("slopewright.ui.review.versions", "slopewright.ui.review.measured", "slopewright.ui.profile.pilot")) {
            AfterStart.begin(Display.getCurrent());
            page.hideView(page.showView(id));
            AfterStart.end(Display.getCurrent(), shell());
            assertEquals(null, page.findView(id));
        }
    }

    @Test
    void aProjectThatWasReadAheadIsHandedOutOnce() throws ProjectFileException {
        Path file = written("Harrow");
        ReadAhead ahead = ReadAhead.of(List.of(file));
        Project first = ahead.read(file);
        assertEquals("Harrow", first.getName());
        assertEquals(ProjectFile.hash(file), ProjectFile.seen(first));
        assertNotSame(first, ahead.read(file));
    }

    @Test
    void aProjectThatWasWrittenSinceIsReadAgain() throws ProjectFileException, IOException {
        Path file = written("Harrow");
        ReadAhead ahead = ReadAhead.of(List.of(file, folder.resolve("none.slopewright")));
        assertThrows(ProjectFileException.class, () -> ahead.read(folder.resolve("none.slopewright")), "read after the other");
        Files.writeString(file, Files.readString(file).replace("Harrow", "Meadow"));
        Files.setLastModifiedTime(file, FileTime.fromMillis(0));
        assertEquals("Meadow", ahead.read(file).getName());
    }

    @Test
    void aFileThatCannotBeReadSaysWhyWhenItIsAskedFor() throws IOException {
        Path broken = Files.writeString(folder.resolve("broken.slopewright"), "<no project");
        ReadAhead ahead = ReadAhead.of(List.of(broken));
        ProjectFileException thrown = assertThrows(ProjectFileException.class, () -> ahead.read(broken));
        assertTrue(thrown.getMessage().contains("broken.slopewright"), thrown.getMessage());
        Path missing = folder.resolve("missing.slopewright");
        assertThrows(ProjectFileException.class, () -> ahead.read(missing));
    }

    private Path written(String name) throws ProjectFileException {
        Project project = SlopewrightFactory.eINSTANCE.createProject();
        project.setName(name);
        project.setAerodrome(SlopewrightFactory.eINSTANCE.createAerodrome());
        Path file = folder.resolve(name + ".slopewright");
        ProjectFile.save(project, file);
        return file;
    }

    private static Shell shell() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell();
    }
}
