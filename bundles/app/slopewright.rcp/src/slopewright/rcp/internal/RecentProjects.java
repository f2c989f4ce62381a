package slopewright.rcp.internal;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.PartInitException;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.preferences.Preferences;

/** The projects that were open last, the latest first, kept in the preferences. */
public final class RecentProjects {

    /** Key of the preference: one file a line. */
    public static final String KEY = "recentProjects";

    /** How many are kept. */
    public static final int MOST = 10;

    private RecentProjects() {
    }

    /** Returns the files, the latest first; a file may be gone by now. */
    public static List<Path> all() {
        return Preferences.store().getString(KEY).lines().map(RecentProjects::path).flatMap(Optional::stream).toList();
    }

    /** Puts a file at the top. */
    public static void add(Path file) {
        List<Path> files = new ArrayList<>(all());
        files.remove(file);
        files.add(0, file);
        keep(files.subList(0, Math.min(MOST, files.size())));
    }

    /** Takes a file off the list; the file itself stays. */
    public static void remove(Path file) {
        keep(all().stream().filter(kept -> !kept.equals(file)).toList());
    }

    private static void keep(List<Path> files) {
        Preferences.store().setValue(KEY, String.join("\n", files.stream().map(Path::toString).toList()));
    }

    private static Optional<Path> path(String line) {
        try {
            return line.isBlank() ? Optional.empty() : Optional.of(Path.of(line));
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    /** Notes each project that an editor of a page opens from now on, or goes over to. */
    public static void follow(IWorkbenchPage page) {
        page.addPartListener(new IPartListener2() {

            @Override
            public void partOpened(IWorkbenchPartReference reference) {
                note(reference);
            }

            @Override
            public void partInputChanged(IWorkbenchPartReference reference) {
                note(reference);
            }
        });
        Stream.of(page.getEditorReferences()).forEach(RecentProjects::note);
    }

    private static void note(IWorkbenchPartReference reference) {
        if (reference instanceof IEditorReference editor) {
            try {
                IEditorInput input = editor.getEditorInput();
                if (input instanceof ProjectInput project && project.exists()) {
                    add(project.path());
                }
            } catch (PartInitException e) {
                // an editor that could not be opened has nothing to note
                return;
            }
        }
    }
}
