package slopewright.ui.review.internal.book;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

import slopewright.standards.ValueBook;
import slopewright.standards.ValueBook.Lack;
import slopewright.ui.AccessibleName;
import slopewright.ui.review.internal.FieldFault;
import slopewright.ui.review.internal.Messages;
import slopewright.ui.theme.TypeScale;

/** Shows what was decided of values, and asks the second person, who signs it off. */
public final class SignOffDialog extends TitleAreaDialog {
    private static final int HEIGHT = 220;
    private static final int[] WIDTHS = {280, 110, 180, 180, 170};
    private static final String[] COLUMNS = {"value", "number", "decision", "compared", "people"};

    private final List<ValueBook.Entry> entries;
    private Text person;
    private Text date;
    private List<ValueBook.Entry> signed = List.of();

    /**
     * Makes the dialog.
     *
     * @param shell   its parent
     * @param entries entries that somebody decided
     */
    public SignOffDialog(Shell shell, List<ValueBook.Entry> entries) {
        super(shell);
        this.entries = List.copyOf(entries);
        setShellStyle(getShellStyle() | SWT.RESIZE);
        setHelpAvailable(false);
    }

    /** Returns the entries as they were signed off, once the dialog was closed with OK. */
    public List<ValueBook.Entry> signed() {
        return signed;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(Messages.get("book.signOff.shell"));
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        setTitle(Messages.get("book.signOff.title", entries.size()));
        setMessage(Messages.get("book.signOff.message"));
        Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(10, 10).applyTo(area);
        Table table = new Table(area, SWT.BORDER | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
        AccessibleName.give(table, getShell().getText());
        table.setHeaderVisible(true);
        table.setLinesVisible(true);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, true).hint(SWT.DEFAULT, HEIGHT).applyTo(table);
        for (int i = 0; i < COLUMNS.length; i++) {
            TableColumn column = new TableColumn(table, SWT.LEFT);
            column.setText(Messages.get("book.column." + COLUMNS[i]));
            column.setWidth(TypeScale.px(WIDTHS[i]));
        }
        entries.forEach(entry -> new TableItem(table, SWT.NONE).setText(new String[] {BookTexts.name(entry), BookTexts.number(entry),
                Messages.get("book.decision." + entry.decision().key(), BookTexts.ownNumber(entry)), BookTexts.compared(entry),
                BookTexts.people(entry)}));
        person = field(area, "book.signOff.person");
        date = field(area, "book.signOff.date");
        date.setText(LocalDate.now().toString());
        person.setFocus();
        return area;
    }

    private static Text field(Composite area, String key) {
        new Label(area, SWT.NONE).setText(Messages.get(key) + ":");
        Text text = new Text(area, SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
        return text;
    }

    @Override
    protected void okPressed() {
        List<ValueBook.Entry> tried = entries.stream().map(entry -> entry.signedOff(person.getText().strip(), date.getText().strip()))
                .toList();
        Optional<FieldFault> fault = FieldFault.named(person).or(() -> same(tried)).or(() -> FieldFault.day(date, LocalDate.now()))
                .or(() -> lacking(tried).map(entry -> FieldFault.of(date, "book.signOff.badDate", entry.person(), BookTexts.name(entry),
                        entry.date())));
        if (fault.isPresent()) {
            fault.get().show(this);
            return;
        }
        signed = tried;
        super.okPressed();
    }

    /** The person who read a value signs nothing off. */
    private Optional<FieldFault> same(List<ValueBook.Entry> tried) {
        return lacking(tried).filter(entry -> entry.lacks().contains(Lack.SECOND_PERSON))
                .map(entry -> FieldFault.of(person, "book.signOff.samePerson", entry.person(), BookTexts.name(entry)));
    }

    private static Optional<ValueBook.Entry> lacking(List<ValueBook.Entry> tried) {
        return tried.stream().filter(entry -> entry.lacks().contains(Lack.SECOND_PERSON)).findFirst()
                .or(() -> tried.stream().filter(entry -> !entry.isSigned()).findFirst());
    }
}
