package slopewright.rcp.internal;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;

import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;
import slopewright.ui.MessageTexts;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.document.UnsavedDialog;
import slopewright.ui.document.UnsavedWork;

/** Opens project files in the plan editor, and says why where one can't be opened. */
public final class ProjectOpener {

    /** The editor that opens a project. */
    public static final String EDITOR = "slopewright.ui.plan.editor";

    /** Reads a project file. */
    @FunctionalInterface
    public interface Reading {

        /** Returns the project of a file, as {@link ProjectFile#load(Path)} does. */
        Project read(Path project) throws ProjectFileException;
    }

    private ProjectOpener() {
    }

    /**
     * Opens an existing project, or tells the user in a dialog why that can't be done. Unsaved work that an earlier run left beside it is
     * offered first.
     *
     * @param window the window to open it in
     * @param project the project file
     * @return true where an editor was opened
     */
    public static boolean open(IWorkbenchWindow window, Path project) {
        return open(window, List.of(project), ProjectFile::load) == 1;
    }

    /**
     * Opens projects, or tells the user in one dialog which can't be opened. Unsaved work that an earlier run left beside any of them is
     * offered first, in one dialog too.
     *
     * @param window   the window to open them in
     * @param projects the project files; one that is not there is begun again where unsaved work of it is kept
     * @param reading  how they are read
     * @return how many were opened
     */
    public static int open(IWorkbenchWindow window, List<Path> projects, Reading reading) {
        IWorkbenchPage page = window.getActivePage();
        List<Path> closed = projects.stream().distinct().filter(project -> page.findEditor(new ProjectInput(project)) == null).toList();
        UnsavedDialog.offer(window.getShell(), closed.stream().flatMap(project -> UnsavedWork.of(project).stream()).toList());
        List<String> problems = new ArrayList<>();
        int opened = 0;
        for (Path project : projects) {
            Optional<String> problem = closed.contains(project) ? openFirst(window, project, reading)
                    : tryToEdit(window, project, reading);
            problem.filter(text -> !text.isEmpty()).ifPresent(problems::add);
            opened += problem.isEmpty() ? 1 : 0;
        }
        if (!problems.isEmpty()) {
            MessageDialog.openError(window.getShell(), Messages.get("open.failed"), String.join("\n\n", problems));
        }
        return opened;
    }

    private static Optional<String> openFirst(IWorkbenchWindow window, Path project, Reading reading) {
        Optional<String> obstacle = UnsavedWork.of(project).isEmpty() ? obstacle(project) : Optional.empty();
        return obstacle.or(() -> held(window, project)).or(() -> tryToEdit(window, project, reading));
    }

    /** Asks where another window has the project open; an empty text where the user does not want it then. */
    private static Optional<String> held(IWorkbenchWindow window, Path project) {
        Optional<String> holder = UnsavedWork.holder(project);
        if (holder.isEmpty()) {
            return Optional.empty();
        }
        String[] answers = {Messages.get("held.open"), Messages.get("held.not")};
        int answer = MessageDialog.open(MessageDialog.WARNING, window.getShell(), Messages.get("held.title"),
                Messages.get("held.text", project.getFileName(), holder.get()), SWT.NONE, answers);
        return answer == 0 ? Optional.empty() : Optional.of("");
    }

    /**
     * Opens the editor on a project whose file need not exist yet, or tells the user in a dialog why that can't be done.
     *
     * @param window the window to open it in
     * @param project the project file
     * @return true where an editor was opened
     */
    public static boolean edit(IWorkbenchWindow window, Path project) {
        Optional<String> problem = tryToEdit(window, project, ProjectFile::load);
        problem.ifPresent(text -> MessageDialog.openError(window.getShell(), Messages.get("open.failed"), text));
        return problem.isEmpty();
    }

    /** Opens an editor; returns in one sentence why there is none. What the editor cannot read it must not open a page of errors about. */
    private static Optional<String> tryToEdit(IWorkbenchWindow window, Path project, Reading reading) {
        try {
            ProjectInput input = new ProjectInput(project);
            if (Files.exists(project) && window.getActivePage().findEditor(input) == null) {
                input = new ProjectInput(project, reading.read(project));
            }
            return window.getActivePage().openEditor(input, EDITOR) == null ? Optional.of("") : Optional.empty();
        } catch (ProjectFileException | PartInitException e) {
            return Optional.of(MessageTexts.reason(e));
        }
    }

    /**
     * Tells what stands against reading a file.
     *
     * @param project the file
     * @return the reason in words that name the file; empty where there is none
     */
    public static Optional<String> obstacle(Path project) {
        if (!Files.exists(project)) {
            return Optional.of(Messages.get("open.missing", project));
        }
        if (Files.isDirectory(project)) {
            return Optional.of(Messages.get("open.folder", project));
        }
        if (!Files.isReadable(project)) {
            return Optional.of(Messages.get("open.permission", project));
        }
        return Optional.empty();
    }
}
