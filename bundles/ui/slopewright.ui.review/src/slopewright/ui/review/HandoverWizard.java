package slopewright.ui.review;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Shell;

import slopewright.model.Project;
import slopewright.report.ReportException;
import slopewright.report.handover.Handover;
import slopewright.report.handover.HandoverFile;
import slopewright.report.handover.HandoverOptions;
import slopewright.ui.MessageTexts;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.review.internal.Messages;
import slopewright.ui.review.internal.handover.ChoicePage;
import slopewright.ui.review.internal.handover.HandoverPlan;
import slopewright.ui.review.internal.handover.PreviewPage;
import slopewright.ui.review.internal.handover.ResultPage;

/**
 * Hands a project over: the user chooses what to produce and where, sees the files and what they look like, and they are written in the
 * background. A file that is there already is replaced only where it was ticked.
 */
public final class HandoverWizard extends Wizard {

    private final HandoverPlan plan;
    private final PreviewPage preview;
    private boolean written;

    private HandoverWizard(HandoverPlan plan) {
        this.plan = plan;
        this.preview = new PreviewPage(plan);
        setWindowTitle(Messages.get("handover.title"));
        setNeedsProgressMonitor(true);
    }

    /**
     * Makes the dialog, closed yet.
     *
     * @param shell    its parent
     * @param document what is handed over
     */
    public static WizardDialog dialog(Shell shell, ProjectDocument document) {
        Path folder = document.path().map(path -> path.toAbsolutePath().getParent().resolve(Messages.get("handover.folderName")))
                .orElse(Path.of(System.getProperty("user.home")));
        HandoverWizard wizard = new HandoverWizard(new HandoverPlan(document.project(), folder));
        return new Dialog(shell, wizard);
    }

    @Override
    public void addPages() {
        addPage(new ChoicePage(plan));
        addPage(preview);
        addPage(new ResultPage(plan));
    }

    /** Returns what the preview shows in words. */
    public String previewed() {
        return preview.shown();
    }

    @Override
    public boolean canFinish() {
        return written;
    }

    @Override
    public boolean performFinish() {
        return true;
    }

    /** Writes the files; returns whether it came to an end. */
    private boolean write() {
        Project project = plan.snapshot();
        List<HandoverFile> wanted = plan.wanted();
        HandoverOptions options = plan.options();
        Set<String> replaced = plan.replaced();
        Path folder = Path.of(plan.folder());
        preview.setErrorMessage(null);
        try {
            getContainer().run(true, true, monitor -> {
                List<Handover.Entry> entries = write(project, wanted, folder, options, replaced, monitor);
                getShell().getDisplay().syncExec(() -> plan.wrote(entries));
            });
            written = true;
            return true;
        } catch (InvocationTargetException e) {
            preview.setErrorMessage(MessageTexts.reason(Optional.ofNullable(e.getCause()).orElse(e)));
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private static List<Handover.Entry> write(Project project, List<HandoverFile> wanted, Path folder, HandoverOptions options,
            Set<String> replaced, IProgressMonitor monitor) throws InvocationTargetException {
        monitor.beginTask(Messages.get("handover.writing"), wanted.size());
        try {
            return Handover.write(project, wanted, folder, options, replaced, next -> {
                monitor.subTask(next.fileName());
                monitor.worked(1);
                return !monitor.isCanceled();
            });
        } catch (ReportException e) {
            throw new InvocationTargetException(e);
        } finally {
            monitor.done();
        }
    }

    /** The dialog: going on from the preview writes. */
    private static final class Dialog extends WizardDialog {

        private final HandoverWizard wizard;

        Dialog(Shell shell, HandoverWizard wizard) {
            super(shell, wizard);
            this.wizard = wizard;
            setHelpAvailable(false);
        }

        @Override
        protected void nextPressed() {
            if (getCurrentPage() != wizard.preview || wizard.write()) {
                super.nextPressed();
            }
        }

        @Override
        public void updateButtons() {
            super.updateButtons();
            Button next = getButton(IDialogConstants.NEXT_ID);
            if (next != null) {
                next.setText(getCurrentPage() == wizard.preview ? Messages.get("handover.write") : IDialogConstants.NEXT_LABEL);
                setButtonLayoutData(next);
                next.getParent().layout();
            }
            Button finish = getButton(IDialogConstants.FINISH_ID);
            if (finish != null) {
                finish.setText(wizard.written ? Messages.get("handover.close") : IDialogConstants.FINISH_LABEL);
            }
        }
    }
}
