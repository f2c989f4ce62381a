package slopewright.rcp.internal;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;

import slopewright.ui.document.ProjectInput;
import slopewright.ui.document.UnsavedWork;
import slopewright.ui.preferences.Preferences;

/**
 * The projects that are open, kept in the preferences from one moment to the next, so that they are open again at the next start however
 * the program ended. The platform's own memory of editors is written at a regular end only, see {@link LeftoverEditors}.
 */
public final class OpenProjects {

    /** Key of the preference: one file a line. */
    public static final String KEY = "openProjects";

    private OpenProjects() {
    }

    /** Returns the projects that were open last; those that are gone without unsaved work are left out. */
    public static List<Path> ofLastTime() {
        return Preferences.store().getString(KEY).lines().map(OpenProjects::path).flatMap(Optional::stream)
                .filter(project -> Files.exists(project) || !UnsavedWork.of(project).isEmpty()).toList();
    }

    private static Optional<Path> path(String line) {
        try {
            return line.isBlank() ? Optional.empty() : Optional.of(Path.of(line));
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    /** Notes what is open in a page from now on, until the program ends. */
    public static void follow(IWorkbenchPage page) {
        page.addPartListener(new IPartListener2() {

            @Override
            public void partOpened(IWorkbenchPartReference reference) {
                keep(page);
            }

            @Override
            public void partClosed(IWorkbenchPartReference reference) {
                keep(page);
            }

            @Override
            public void partInputChanged(IWorkbenchPartReference reference) {
                keep(page);
            }
        });
        keep(page);
    }

    /** What a page shows while the program is ending is what the next start shows. */
    private static void keep(IWorkbenchPage page) {
        if (!PlatformUI.getWorkbench().isClosing()) {
            Preferences.store().setValue(KEY, String.join("\n", Stream.of(page.getEditorReferences()).map(OpenProjects::project)
                    .flatMap(Optional::stream).map(Path::toString).toList()));
        }
    }

    private static Optional<Path> project(IEditorReference editor) {
        try {
            IEditorInput input = editor.getEditorInput();
            return input instanceof ProjectInput project ? Optional.of(project.path()) : Optional.empty();
        } catch (PartInitException e) {
            return Optional.empty();
        }
    }
}
