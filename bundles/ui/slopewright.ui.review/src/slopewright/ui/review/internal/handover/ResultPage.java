package slopewright.ui.review.internal.handover;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.IWizardPage;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

import slopewright.report.handover.Handover;
import slopewright.ui.AccessibleName;
import slopewright.ui.MessageTexts;
import slopewright.ui.review.internal.Messages;
import slopewright.ui.theme.TypeScale;

/** What was written, what was left alone and what failed, with the way to the folder. */
public final class ResultPage extends WizardPage {

    private final HandoverPlan plan;
    private Table table;

    /** Makes the page. */
    public ResultPage(HandoverPlan plan) {
        super("result", Messages.get("handover.result"), null);
        this.plan = plan;
    }

    @Override
    public void createControl(Composite parent) {
        Composite area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().margins(8, 8).applyTo(area);
        table = new Table(area, SWT.BORDER | SWT.FULL_SELECTION | SWT.V_SCROLL);
        AccessibleName.give(table, getTitle());
        table.setHeaderVisible(true);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(table);
        String[] keys = {"handover.file", "handover.state", "handover.reason"};
        int[] widths = {260, 130, 360};
        for (int i = 0; i < keys.length; i++) {
            TableColumn column = new TableColumn(table, SWT.LEFT);
            column.setText(Messages.get(keys[i]));
            column.setWidth(TypeScale.px(widths[i]));
        }
        table.addListener(SWT.DefaultSelection, event -> Program.launch(((Handover.Entry) event.item.getData()).file().toString()));
        Button open = new Button(area, SWT.PUSH);
        open.setText(Messages.get("handover.openFolder"));
        open.addListener(SWT.Selection, event -> Program.launch(plan.folder()));
        setControl(area);
    }

    @Override
    public void setVisible(boolean visible) {
        super.setVisible(visible);
        if (visible) {
            table.removeAll();
            for (Handover.Entry entry : plan.entries()) {
                TableItem item = new TableItem(table, SWT.NONE);
                item.setData(entry);
                item.setText(new String[] {entry.file().getFileName().toString(), Messages.get("handover.entry." + entry.state()),
                        entry.reason().map(MessageTexts::of).orElse("")});
            }
            long written = count(Handover.State.WRITTEN);
            long failed = count(Handover.State.FAILED);
            setMessage(Messages.get("handover.done", written, count(Handover.State.KEPT), failed), failed > 0 ? WARNING : INFORMATION);
        }
    }

    private long count(Handover.State state) {
        return plan.entries().stream().filter(entry -> entry.state() == state).count();
    }

    /** What is written stays written; there is no way back. */
    @Override
    public IWizardPage getPreviousPage() {
        return null;
    }
}
