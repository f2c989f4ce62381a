package slopewright.ui.document;

import java.io.IOException;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.ui.AccessibleName;
import slopewright.ui.MessageTexts;
import slopewright.ui.properties.DifferenceTable;
import slopewright.ui.theme.TypeScale;

/** Offers unsaved work of a run that ended unexpectedly: each project, what differs, and whether it comes back. */
public final class UnsavedDialog extends TitleAreaDialog {

    private static final int[] WIDTHS = {190, 260, 150, 190};
    private static final int WIDTH = 820;

    private final List<UnsavedWork> works;
    private Table table;
    private DifferenceTable differences;

    private UnsavedDialog(Shell shell, List<UnsavedWork> works) {
        super(shell);
        this.works = works;
        setShellStyle(getShellStyle() | SWT.RESIZE);
    }

    /**
     * Asks what becomes of unsaved work, where there is any. Whoever closes the dialog without an answer keeps it all.
     *
     * @param shell over which the dialog opens
     * @param works the work
     */
    public static void offer(Shell shell, List<UnsavedWork> works) {
        if (!works.isEmpty()) {
            UnsavedDialog dialog = new UnsavedDialog(shell, works);
            if (dialog.open() != OK) {
                works.forEach(work -> keep(shell, work));
            }
        }
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(Messages.get("unsaved.window"));
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        setTitle(Messages.get("unsaved.title"));
        setMessage(Messages.get("unsaved.text"));
        Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
        GridLayoutFactory.swtDefaults().applyTo(area);
        table = new Table(area, SWT.CHECK | SWT.BORDER | SWT.FULL_SELECTION);
        AccessibleName.give(table, getShell().getText());
        table.setHeaderVisible(true);
        String[] titles = {"unsaved.project", "unsaved.folder", "unsaved.when", "unsaved.differs"};
        for (int i = 0; i < titles.length; i++) {
            TableColumn column = new TableColumn(table, SWT.LEFT);
            column.setText(Messages.get(titles[i]));
            column.setWidth(TypeScale.px(WIDTHS[i]));
        }
        works.forEach(this::row);
        GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH, 150).applyTo(table);
        differences = new DifferenceTable(area, Messages.get("unsaved.saved"), Messages.get("unsaved.work"));
        GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH, 190).applyTo(differences.control());
        table.addListener(SWT.Selection, event -> showDifference());
        table.select(0);
        table.setFocus();
        showDifference();
        return area;
    }

    private void row(UnsavedWork work) {
        TableItem item = new TableItem(table, SWT.NONE);
        DateTimeFormatter format = DateTimeFormatter.ofLocalizedDateTime(FormatStyle.SHORT, FormatStyle.MEDIUM);
        String when = format.format(work.when().atZone(ZoneId.systemDefault()));
        item.setText(new String[] {String.valueOf(work.project().getFileName()), String.valueOf(work.project().getParent()), when,
                differs(work)});
        item.setChecked(true);
    }

    /** Returns in words what is different about some work. */
    static String differs(UnsavedWork work) {
        if (work.saved().isEmpty()) {
            return Messages.get("unsaved.new");
        }
        String count = DifferenceTable.count(work.saved().get(), work.work());
        return work.belongs() ? count : Messages.get("unsaved.changed", count);
    }

    private void showDifference() {
        int index = table.getSelectionIndex();
        if (index >= 0) {
            Project work = works.get(index).work();
            differences.show(works.get(index).saved().orElse(SlopewrightFactory.eINSTANCE.createProject()), work);
        }
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, Messages.get("unsaved.open"), true);
    }

    @Override
    protected void okPressed() {
        for (int i = 0; i < works.size(); i++) {
            if (table.getItem(i).getChecked()) {
                keep(getShell(), works.get(i));
            } else {
                works.get(i).drop();
            }
        }
        super.okPressed();
    }

    private static void keep(Shell shell, UnsavedWork work) {
        try {
            work.keep();
        } catch (IOException e) {
            MessageDialog.openError(shell, Messages.get("unsaved.window"),
                    Messages.get("unsaved.failed", work.project(), MessageTexts.reason(e)));
        }
    }
}
