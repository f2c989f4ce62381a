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

import slopewright.edit.AddAid;
import slopewright.edit.EditException;
import slopewright.edit.EditHistory;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.comparison.Candidate;
import slopewright.evaluation.comparison.FamilyComparison;
import slopewright.model.ApproachHost;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;
import slopewright.model.util.Projects;
import slopewright.rcp.internal.Messages;
import slopewright.rcp.internal.ProjectOpener;
import slopewright.siting.Side;
import slopewright.siting.SitingException;
import slopewright.standards.RuleSet;
import slopewright.ui.document.ProjectInput;

/** Leads from a site to a first layout: the site, the aeroplanes, the family; then asks for a file and opens it in the plan. */
public final class SiteWizard extends Wizard {

    private final IWorkbenchWindow window;
    private final SiteDraft draft = new SiteDraft();
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
        addPage(new FamilyPage(draft));
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
            ProjectFile.save(laidOut(), file.get());
        } catch (ProjectFileException | SitingException | EditException e) {
            if (getContainer().getCurrentPage() instanceof WizardPage page) {
                page.setErrorMessage(e.getMessage());
            }
            return false;
        }
        return ProjectOpener.open(window, file.get());
    }

    private Project laidOut() {
        Project project = draft.project();
        ApproachHost host = Projects.hosts(project).get(0);
        RuleSet rules = FamilyComparison.of(ProjectEvaluation.of(project, Optional.empty()), host).stream()
                .filter(one -> one.family().key().equals(draft.familyKey())).findFirst().map(Candidate::rules).orElseGet(draft::rules);
        AddAid edit = AddAid.solve(host, draft.familyKey(), rules, Side.LEFT);
        new EditHistory().perform(edit);
        if (!rules.key().equals(draft.rules().key())) {
            edit.aid().setRuleSetKey(rules.key());
        }
        return project;
    }

    private Optional<Path> ask() {
        FileDialog dialog = new FileDialog(getShell(), SWT.SAVE);
        dialog.setText(Messages.get("wizard.file"));
        dialog.setFilterExtensions(new String[] {"*" + ProjectInput.FILE_SUFFIX});
        dialog.setFileName(draft.name().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-") + ProjectInput.FILE_SUFFIX);
        dialog.setOverwrite(true);
        return Optional.ofNullable(dialog.open())
                .map(chosen -> Path.of(chosen.endsWith(ProjectInput.FILE_SUFFIX) ? chosen : chosen + ProjectInput.FILE_SUFFIX));
    }

    /**
     * Keeps a project as a template.
     *
     * @param project the project
     * @param name    what the template is called
     * @return the file
     * @throws IOException where it can not be written; the message says why
     */
    public static Path keepAsTemplate(Project project, String name) throws IOException {
        Path file = Templates.folder().resolve(name.replaceAll("[^\\p{L}\\p{N} .-]+", "-") + ProjectInput.FILE_SUFFIX);
        Files.createDirectories(file.getParent());
        try {
            ProjectFile.save(project, file);
        } catch (ProjectFileException e) {
            throw new IOException(e.getMessage(), e);
        }
        return file;
    }
}
