package slopewright.ui.plan.internal;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.ISaveablePart2;

import slopewright.model.io.FileChangedException;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;
import slopewright.ui.MessageTexts;
import slopewright.ui.document.DifferenceDialog;
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
        String question = Messages.get("save.changed", MessageTexts.reason(changed), file.getFileName() + ProjectFile.PREVIOUS_SUFFIX);
        try {
            DifferenceDialog.Sides sides = new DifferenceDialog.Sides(ProjectFile.load(file), Messages.get("save.file-has"),
                    document.project(), Messages.get("save.here"));
            if (new DifferenceDialog(shell.get(), Messages.get("save.failed"), question, sides, Messages.get("save.over"),
                    Messages.get("save.not")).open() != 0) {
                return false;
            }
            document.saveOver(file);
            return true;
        } catch (ProjectFileException e) {
            return failed(e);
        }
    }

    /** Asks what becomes of changes that are not saved before the editor closes; an answer as {@link ISaveablePart2} has them. */
    public int askBeforeClosing() {
        String[] answers = {Messages.get("close.save"), Messages.get("close.not"), Messages.get("close.cancel")};
        String name = document.path().map(path -> String.valueOf(path.getFileName())).orElse("");
        return switch (MessageDialog.open(MessageDialog.QUESTION, shell.get(), Messages.get("close.title"),
                Messages.get("close.question", name), SWT.NONE, answers)) {
            case 0 -> ISaveablePart2.YES;
            case 1 -> ISaveablePart2.NO;
            default -> ISaveablePart2.CANCEL;
        };
    }

    /** Says that a file is open in another tab and cannot be saved into. */
    public void refuse(Path file) {
        MessageDialog.openError(shell.get(), Messages.get("save.failed"), Messages.get("save.open-twice", file.getFileName()));
    }

    private boolean failed(ProjectFileException e) {
        MessageDialog.openError(shell.get(), Messages.get("save.failed"), MessageTexts.reason(e));
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
