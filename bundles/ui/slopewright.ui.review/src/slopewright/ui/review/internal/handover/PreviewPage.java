package slopewright.ui.review.internal.handover;

import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

import slopewright.model.Project;
import slopewright.report.ReportException;
import slopewright.report.handover.HandoverFile;
import slopewright.report.handover.HandoverOptions;
import slopewright.report.handover.HandoverSource;
import slopewright.siting.SitingException;
import slopewright.ui.AccessibleName;
import slopewright.ui.MessageTexts;
import slopewright.ui.review.internal.Messages;
import slopewright.ui.theme.TypeScale;

/** The files that would be written, those that are there already to be ticked, and what the selected one looks like. */
public final class PreviewPage extends WizardPage {

    private final HandoverPlan plan;
    private Table table;
    private FilePreview preview;
    private Optional<Job> job = Optional.empty();
    private int request;

    /** Makes the page. */
    public PreviewPage(HandoverPlan plan) {
        super("preview", Messages.get("handover.preview"), null);
        this.plan = plan;
        setDescription(Messages.get("handover.preview.about"));
    }

    @Override
    public void createControl(Composite parent) {
        Composite area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().margins(8, 8).applyTo(area);
        SashForm sash = new SashForm(area, SWT.HORIZONTAL | SWT.SMOOTH);
        GridDataFactory.fillDefaults().grab(true, true).hint(760, 320).applyTo(sash);
        table = new Table(sash, SWT.CHECK | SWT.BORDER | SWT.FULL_SELECTION | SWT.V_SCROLL);
        AccessibleName.give(table, getTitle());
        table.setHeaderVisible(true);
        for (String key : List.of("handover.file", "handover.state")) {
            TableColumn column = new TableColumn(table, SWT.LEFT);
            column.setText(Messages.get(key));
            column.setWidth(TypeScale.px(key.endsWith("file") ? 250 : 140));
        }
        preview = new FilePreview(sash);
        sash.setWeights(46, 54);
        table.addListener(SWT.Selection, event -> {
            TableItem item = (TableItem) event.item;
            if (event.detail == SWT.CHECK) {
                tick(item);
            } else {
                show((HandoverFile) item.getData());
            }
        });
        setControl(area);
    }

    private void tick(TableItem item) {
        HandoverFile file = (HandoverFile) item.getData();
        if (plan.isThere(file)) {
            plan.replace(file, item.getChecked());
        } else {
            item.setChecked(true);
        }
        describe(item, file);
        count();
    }

    private void describe(TableItem item, HandoverFile file) {
        boolean there = plan.isThere(file);
        item.setText(0, file.fileName());
        item.setText(1, Messages.get(!there ? "handover.new" : plan.isReplaced(file) ? "handover.replaced" : "handover.kept"));
        item.setChecked(!there || plan.isReplaced(file));
    }

    private void count() {
        long there = plan.wanted().stream().filter(plan::isThere).count();
        setMessage(there == 0 ? Messages.get("handover.toWrite", plan.wanted().size())
                : Messages.get("handover.someThere", plan.wanted().size(), there), there == 0 ? NONE : WARNING);
    }

    @Override
    public void setVisible(boolean visible) {
        super.setVisible(visible);
        if (visible) {
            setErrorMessage(null);
            table.removeAll();
            for (HandoverFile file : plan.wanted()) {
                TableItem item = new TableItem(table, SWT.NONE);
                item.setData(file);
                describe(item, file);
            }
            count();
            plan.wanted().stream().filter(file -> file.picture().isPresent()).findFirst()
                    .or(() -> plan.wanted().stream().findFirst()).ifPresent(file -> {
                        table.setSelection(plan.wanted().indexOf(file));
                        table.setTopIndex(0);
                        show(file);
                    });
        } else {
            cancel();
        }
    }

    private void cancel() {
        request++;
        job.ifPresent(Job::cancel);
        job = Optional.empty();
    }

    private void show(HandoverFile file) {
        cancel();
        int mine = request;
        Project project = plan.snapshot();
        HandoverOptions options = plan.options();
        Display display = table.getDisplay();
        preview.say(Messages.get("handover.working"));
        Job work = Job.create(Messages.get("handover.working"), (IProgressMonitor monitor) -> {
            Runnable shown = look(file, project, options);
            if (!display.isDisposed() && !monitor.isCanceled()) {
                display.asyncExec(() -> {
                    if (mine == request && !table.isDisposed()) {
                        shown.run();
                    }
                });
            }
            return Status.OK_STATUS;
        });
        work.setSystem(true);
        work.schedule();
        job = Optional.of(work);
    }

    private Runnable look(HandoverFile file, Project project, HandoverOptions options) {
        try {
            byte[] bytes = file.picture().orElse(file.writer()).write(new HandoverSource(project), options);
            return () -> preview.show(file, bytes);
        } catch (ReportException | SitingException | IllegalArgumentException e) {
            return () -> preview.say(Messages.get("handover.cannot", MessageTexts.reason(e)));
        }
    }

    /** Returns what the preview says, for tests. */
    public String shown() {
        return preview.shown();
    }

    @Override
    public void dispose() {
        cancel();
        super.dispose();
    }
}
