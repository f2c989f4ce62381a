package slopewright.rcp.internal.site;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.jface.wizard.IWizardPage;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.ui.IWorkbenchWindow;

import slopewright.edit.EditException;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;
import slopewright.rcp.internal.Messages;
import slopewright.rcp.internal.ProjectOpener;
import slopewright.siting.SitingException;
import slopewright.ui.MessageTexts;
import slopewright.ui.document.ProjectInput;

/** Leads from a site to a first layout: the site, the aeroplanes, the family; then asks for a file and opens it in the plan. */
public final class SiteWizard extends Wizard {

    private final IWorkbenchWindow window;
    private final SiteDraft draft = new SiteDraft();
    private final PadsPage pads = new PadsPage(draft);
    private Optional<Path> target = Optional.empty();

    /**
     * Makes the wizard.
     *
     * @param window the window to open the project in
     */
    public SiteWizard(IWorkbenchWindow window) {
        this.window = window;
        setWindowTitle(Messages.get("wizard.title"));
    }

    @Override
    public void addPages() {
        addPage(new SitePage(draft));
        addPage(new AeroplanePage(draft));
        addPage(pads);
        addPage(new FamilyPage(draft));
    }

    /** A runway has no pads. */
    @Override
    public IWizardPage getNextPage(IWizardPage page) {
        IWizardPage next = super.getNextPage(page);
        return next == pads && !draft.site().isHelipad() ? super.getNextPage(pads) : next;
    }

    @Override
    public IWizardPage getPreviousPage(IWizardPage page) {
        IWizardPage previous = super.getPreviousPage(page);
        return previous == pads && !draft.site().isHelipad() ? super.getPreviousPage(pads) : previous;
    }

    /** Returns what the wizard knows so far. */
    public SiteDraft draft() {
        return draft;
    }

    /** Names the file to write, so that the wizard does not ask. */
    public void setTarget(Path file) {
        target = Optional.of(file);
    }

    @Override
    public boolean canFinish() {
        IWizardPage page = getContainer().getCurrentPage();
        return page instanceof FamilyPage && super.canFinish();
    }

    @Override
    public boolean performFinish() {
        Optional<Path> file = target.or(this::ask);
        if (file.isEmpty()) {
            return false;
        }
        try {
            ProjectFile.save(draft.laidOut(), file.get());
        } catch (ProjectFileException | SitingException | EditException | IllegalArgumentException e) {
            return refuse(MessageTexts.reason(e));
        }
        return ProjectOpener.open(window, file.get());
    }

    private boolean refuse(String reason) {
        if (getContainer().getCurrentPage() instanceof WizardPage page) {
            page.setErrorMessage(reason);
        }
        return false;
    }

    private Optional<Path> ask() {
        FileDialog dialog = new FileDialog(getShell(), SWT.SAVE);
        dialog.setText(Messages.get("wizard.file"));
        dialog.setFilterExtensions(new String[] {"*" + ProjectInput.FILE_SUFFIX});
        dialog.setFileName(draft.site().name().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-") + ProjectInput.FILE_SUFFIX);
        dialog.setOverwrite(true);
        return Optional.ofNullable(dialog.open())
                .map(chosen -> Path.of(chosen.endsWith(ProjectInput.FILE_SUFFIX) ? chosen : chosen + ProjectInput.FILE_SUFFIX));
    }

    /**
     * Keeps a project as a template; the project itself stays that of its own file.
     *
     * @param project the project
     * @param name    what the template is called
     * @return the file
     * @throws IOException where it cannot be written; the message says why
     */
    public static Path keepAsTemplate(Project project, String name) throws IOException {
        Path file = Templates.folder().resolve(name.replaceAll("[^\\p{L}\\p{N} .-]+", "-") + ProjectInput.FILE_SUFFIX);
        Files.createDirectories(file.getParent());
        try {
            ProjectFile.save(ProjectFile.copy(project), file);
        } catch (ProjectFileException e) {
            throw new IOException(MessageTexts.reason(e), e);
        }
        return file;
    }
}
