package slopewright.rcp.internal.site;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.jface.wizard.IWizardPage;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
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
import slopewright.ui.theme.TypeScale;

/** Leads from a site to a first layout: the site, the aeroplanes, the family; then asks for a file and opens it in the plan. */
public final class SiteWizard extends Wizard {

    private static final int LEAST_WIDTH = 880;
    private static final int LEAST_HEIGHT = 430;
    /** What a wizard has around its page. */
    private static final int AROUND_PX = 240;

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

    /**
     * Makes the dialog of a wizard, as large as the largest of its pages needs.
     *
     * @param window the window that it belongs to
     * @param wizard the wizard
     */
    public static WizardDialog dialog(IWorkbenchWindow window, SiteWizard wizard) {
        WizardDialog dialog = new WizardDialog(window.getShell(), wizard);
        Rectangle screen = window.getShell().getMonitor().getClientArea();
        dialog.setMinimumPageSize(Math.min(TypeScale.px(LEAST_WIDTH), screen.width - AROUND_PX / 4),
                Math.min(TypeScale.px(LEAST_HEIGHT), screen.height - AROUND_PX));
        return dialog;
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

    /** What is wrong on the page of pads does not count at a runway, which is not asked about it. */
    @Override
    public boolean canFinish() {
        boolean answered = Stream.of(getPages()).filter(page -> page != pads || draft.site().isHelipad())
                .allMatch(IWizardPage::isPageComplete);
        return getContainer().getCurrentPage() instanceof FamilyPage && answered;
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
