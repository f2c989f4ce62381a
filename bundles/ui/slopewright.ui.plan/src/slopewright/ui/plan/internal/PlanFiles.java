package slopewright.ui.plan.internal;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;

import slopewright.model.io.FileChangedException;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;

/** Saves the project of a plan, and tells the user in a dialog why that can't be done. */
public final class PlanFiles {

    private final ProjectDocument document;
    private final Supplier<Shell> shell;

    /**
     * Makes it for a document.
     *
     * @param document the document
     * @param shell    over which dialogs open
     */
    public PlanFiles(ProjectDocument document, Supplier<Shell> shell) {
        this.document = document;
        this.shell = shell;
    }

    /** Saves the project into its file; returns whether it was. */
    public boolean save() {
        return document.path().map(this::saveAs).orElse(false);
    }

    /** Saves the project into another file; returns whether it was. */
    public boolean saveAs(Path file) {
        try {
            document.saveAs(file);
            return true;
        } catch (ProjectFileException e) {
            return e.getCause() instanceof FileChangedException ? askAndSaveOver(file, e) : failed(e);
        }
    }

    private boolean askAndSaveOver(Path file, ProjectFileException changed) {
        String[] answers = {Messages.get("save.over"), Messages.get("save.not")};
        String question = Messages.get("save.changed", changed.getMessage(), file.getFileName() + ProjectFile.PREVIOUS_SUFFIX);
        if (MessageDialog.open(MessageDialog.WARNING, shell.get(), Messages.get("save.failed"), question, SWT.NONE, answers) != 0) {
            return false;
        }
        try {
            document.saveOver(file);
            return true;
        } catch (ProjectFileException e) {
            return failed(e);
        }
    }

    private boolean failed(ProjectFileException e) {
        MessageDialog.openError(shell.get(), Messages.get("save.failed"), e.getMessage());
        return false;
    }

    /** Lets the user choose a file to save into, empty where the user does not. */
    public Optional<Path> choose() {
        FileDialog dialog = new FileDialog(shell.get(), SWT.SAVE);
        dialog.setFilterExtensions(new String[] {"*" + ProjectInput.FILE_SUFFIX});
        dialog.setOverwrite(true);
        document.path().ifPresent(path -> dialog.setFileName(path.toString()));
        return Optional.ofNullable(dialog.open())
                .map(chosen -> Path.of(chosen.endsWith(ProjectInput.FILE_SUFFIX) ? chosen : chosen + ProjectInput.FILE_SUFFIX));
    }
}
