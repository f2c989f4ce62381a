package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.rcp.internal.CommandLineProjects;
import slopewright.rcp.internal.ProjectOpener;
import slopewright.ui.document.ProjectInput;

/** From a file, or the words of the command line, to the editor. */
class OpeningTest {

    private static final int LOOK_AGAIN_MS = 50;
    private static final int MOST_LOOKS = 200;

    @TempDir
    private Path folder;

    @Test
    void onlyAFileThatCanBeReadMayBeOpened() throws IOException {
        Path project = Files.createFile(folder.resolve("a.slopewright"));
        Path missing = folder.resolve("b.slopewright");
        assertEquals(Optional.empty(), ProjectOpener.obstacle(project));
        assertEquals(Optional.of(missing + ": there is no such file."), ProjectOpener.obstacle(missing));
        assertEquals(Optional.of(folder + " is a folder, not a project file."), ProjectOpener.obstacle(folder));
    }

    @Test
    void aDialogSaysWhyAFileCannotBeOpened() {
        Path missing = folder.resolve("missing.slopewright");
        IWorkbenchWindow window = PlatformUI.getWorkbench().getWorkbenchWindows()[0];
        List<String> said = new ArrayList<>();
        readAndCloseDialog("The project can't be opened", said, 0);
        assertFalse(ProjectOpener.open(window, missing));
        assertTrue(said.contains(missing + ": there is no such file."), said.toString());
    }

    @Test
    void projectFilesAreFoundAmongTheWordsOfTheCommandLine() {
        Path one = folder.resolve("one.slopewright");
        Path two = folder.resolve("two.slopewright");
        assertEquals(List.of(one, two), CommandLineProjects.among(new String[] {"-port", "1234", one.toString(), two.toString()}));
        assertEquals(List.of(folder.resolve("odd name")), CommandLineProjects.among(new String[] {folder + "/x/../odd name"}));
        assertEquals(List.of(), CommandLineProjects.among(new String[] {"-port", "1234"}));
        assertEquals(List.of(), CommandLineProjects.among(new String[] {"-port"}));
        assertEquals(List.of(), CommandLineProjects.among(new String[0]));
    }

    @Test
    void twoInputsOfOneFileAreEqual() throws IOException {
        Path project = folder.resolve("a.slopewright");
        ProjectInput input = new ProjectInput(project);
        ProjectInput detour = new ProjectInput(folder.resolve("x/../a.slopewright"));
        assertEquals(input, detour);
        assertEquals(input.hashCode(), detour.hashCode());
        assertNotEquals(input, new ProjectInput(folder.resolve("b.slopewright")));
        assertEquals("a.slopewright", input.getName());
        assertEquals(project, input.getAdapter(Path.class));
        assertFalse(input.exists());
        Files.createFile(project);
        assertTrue(input.exists());
    }

    /** Looks from time to time, while the caller waits in the dialog, for the dialog; notes its texts and closes it. */
    private static void readAndCloseDialog(String title, List<String> said, int looks) {
        Display display = Display.getCurrent();
        display.timerExec(LOOK_AGAIN_MS, () -> {
            Optional<Shell> dialog = Stream.of(display.getShells()).filter(shell -> shell.getText().equals(title)).findFirst();
            if (dialog.isPresent()) {
                Widgets.all(dialog.get(), Label.class).map(Label::getText).forEach(said::add);
                dialog.get().close();
            } else if (looks < MOST_LOOKS) {
                readAndCloseDialog(title, said, looks + 1);
            }
        });
    }
}
