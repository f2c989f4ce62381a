package slopewright.ui.review.internal.book;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

import slopewright.standards.ValueBook;
import slopewright.standards.ValueBook.Compared;
import slopewright.standards.ValueBook.Decision;
import slopewright.standards.ValueBook.Lack;
import slopewright.ui.review.internal.FieldFault;
import slopewright.ui.review.internal.Messages;

/**
 * Shows values one after the other, each with number, unit, source and clause, and asks what one's own copy of the document says. The
 * number is typed, not taken over: only one that is the same confirms the value. What was entered last stays for the next.
 */
public final class ValueDialog extends TitleAreaDialog {
    private static final int SKIP = IDialogConstants.CLIENT_ID;
    private static final int NEXT = IDialogConstants.CLIENT_ID + 1;
    private static final int FIELD_WIDTH = 420;
    private static final int SOURCE_LINES = 2;

    private final List<ValueBook.Entry> entries;
    private final boolean confirmOnly;
    private final Map<Decision, Button> choices = new EnumMap<>(Decision.class);
    private final List<ValueBook.Entry> decided = new ArrayList<>();
    private Compared last;
    private int at;
    private Label number;
    private Label rules;
    private Label source;
    private Label known;
    private NumberField own;
    private Text reason;
    private Text document;
    private Text edition;
    private Text clause;
    private Text person;
    private Text date;

    /**
     * Makes the dialog.
     *
     * @param shell       its parent
     * @param entries     the values
     * @param confirmOnly whether a value can only be confirmed, as in a project without a book
     * @param last        what was entered last
     */
    public ValueDialog(Shell shell, List<ValueBook.Entry> entries, boolean confirmOnly, Optional<Compared> last) {
        super(shell);
        this.entries = List.copyOf(entries);
        this.confirmOnly = confirmOnly;
        this.last = last.orElseGet(() -> new Compared("", "", "", "", LocalDate.now().toString()));
        setShellStyle(getShellStyle() | SWT.RESIZE);
        setHelpAvailable(false);
    }

    /** Returns the entries that were decided, once the dialog was closed with OK. */
    public List<ValueBook.Entry> decided() {
        return List.copyOf(decided);
    }

    /** Returns what was entered last. */
    public Compared last() {
        return last;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(Messages.get("value.shell"));
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(10, 10).applyTo(area);
        number = shown(area, "value.number");
        number.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        rules = shown(area, "value.rules");
        source = shown(area, "value.source");
        GridDataFactory.fillDefaults().grab(true, false).hint(FIELD_WIDTH, SOURCE_LINES * number.computeSize(SWT.DEFAULT, SWT.DEFAULT).y)
                .applyTo(source);
        known = shown(area, "value.known");
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(new Label(area, SWT.SEPARATOR | SWT.HORIZONTAL));
        if (!confirmOnly) {
            new Label(area, SWT.NONE).setText(Messages.get("value.own") + ":");
            Composite buttons = new Composite(area, SWT.NONE);
            GridLayoutFactory.fillDefaults().numColumns(3).applyTo(buttons);
            for (Decision decision : List.of(Decision.CONFIRMED, Decision.CORRECTED, Decision.REJECTED)) {
                Button button = new Button(buttons, SWT.RADIO);
                button.setText(Messages.get("value.choose." + decision.key()));
                button.addListener(SWT.Selection, event -> enable());
                choices.put(decision, button);
            }
        }
        own = new NumberField(area);
        reason = field(area, "value.reason");
        document = field(area, "value.document");
        edition = field(area, "value.edition");
        clause = field(area, "value.clause");
        person = field(area, "value.person");
        date = field(area, "value.date");
        show();
        return area;
    }

    private static Label shown(Composite area, String key) {
        new Label(area, SWT.NONE).setText(Messages.get(key) + ":");
        Label label = new Label(area, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(FIELD_WIDTH, SWT.DEFAULT).applyTo(label);
        return label;
    }

    private static Text field(Composite area, String key) {
        new Label(area, SWT.NONE).setText(Messages.get(key) + ":");
        Text text = new Text(area, SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, false).hint(FIELD_WIDTH, SWT.DEFAULT).applyTo(text);
        return text;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        if (entries.size() > 1) {
            createButton(parent, SKIP, Messages.get("value.skip"), false);
            createButton(parent, NEXT, Messages.get("value.next"), true);
        }
        createButton(parent, IDialogConstants.OK_ID, Messages.get("value.finish"), entries.size() == 1);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        enableButtons();
    }

    /** The key Return goes on to the next value, and finishes at the last one. */
    private void enableButtons() {
        for (int id : new int[] {SKIP, NEXT}) {
            if (getButton(id) != null) {
                getButton(id).setEnabled(at < entries.size() - 1);
            }
        }
        getShell().setDefaultButton(getButton(at < entries.size() - 1 ? NEXT : IDialogConstants.OK_ID));
    }

    /** Shows the value at hand, with what was decided of it before or entered for the last one. */
    private void show() {
        ValueBook.Entry entry = entries.get(at);
        setErrorMessage(null);
        setTitle(BookTexts.name(entry));
        setMessage(Messages.get("value.place", at + 1, entries.size(), entry.restsOnIt()));
        number.setText(BookTexts.number(entry));
        rules.setText(entry.ruleSet() + "  " + entry.key());
        source.setText(BookTexts.source(entry));
        known.setText(BookTexts.provenance(entry));
        own.show(entry);
        boolean isDecided = entry.decision() != Decision.OPEN;
        Decision chosen = isDecided ? entry.decision() : Decision.CONFIRMED;
        choices.forEach((decision, button) -> button.setSelection(decision == chosen));
        reason.setText(entry.reason());
        document.setText(isDecided ? entry.document() : last.document());
        edition.setText(isDecided ? entry.edition() : last.edition());
        clause.setText(isDecided ? entry.clause() : "");
        person.setText(isDecided ? entry.person() : last.person());
        date.setText(isDecided ? entry.date() : last.date());
        enable();
        number.getParent().layout(true, true);
        own.focus();
    }

    private Decision chosen() {
        return choices.entrySet().stream().filter(choice -> choice.getValue().getSelection()).map(Map.Entry::getKey).findFirst()
                .orElse(Decision.CONFIRMED);
    }

    /** A table is confirmed by the sum of its numbers, and cannot be corrected by one. */
    private void enable() {
        boolean isTable = entries.get(at).unit().isEmpty();
        if (!confirmOnly) {
            choices.get(Decision.CORRECTED).setEnabled(!isTable);
        }
        own.enable(chosen() != Decision.REJECTED);
        reason.setEnabled(chosen() != Decision.CONFIRMED);
    }

    /** Takes what was entered; where something is missing or wrong, says so and leads there. */
    private boolean take() {
        ValueBook.Entry entry = entries.get(at);
        Decision what = chosen();
        Optional<Double> typed = what == Decision.REJECTED ? Optional.empty() : own.number();
        Compared with = new Compared(document.getText().strip(), edition.getText().strip(), clause.getText().strip(),
                person.getText().strip(), date.getText().strip());
        ValueBook.Entry made = entry.decided(what, typed, what == Decision.CONFIRMED ? "" : reason.getText().strip(), with);
        Optional<FieldFault> fault = fault(made, typed).or(() -> what == Decision.CONFIRMED && !entry.isValue(typed.get())
                ? Optional.of(own.fault(Messages.get(confirmOnly ? "value.other" : "value.choose", FieldFault.quoted(own.text()),
                        BookTexts.number(entry)))) : Optional.empty());
        fault.ifPresent(found -> found.show(this));
        if (fault.isEmpty()) {
            setErrorMessage(null);
            last = with;
            decided.add(made);
        }
        return fault.isEmpty();
    }

    /** What is missing or wrong, in the order of the fields: what is missing together, what is wrong one by one. */
    private Optional<FieldFault> fault(ValueBook.Entry made, Optional<Double> typed) {
        List<Lack> lacks = new ArrayList<>(made.lacksToDecide());
        if (made.decision() != Decision.REJECTED && typed.isEmpty() && !lacks.contains(Lack.OWN_VALUE)) {
            lacks.add(0, Lack.OWN_VALUE);
        }
        Optional<Lack> first = lacks.stream().findFirst();
        if (first.isPresent() && isBlank(first.get())) {
            return Optional.of(new FieldFault(control(first.get()), Messages.get("value.lacks", BookTexts.names(lacks.stream()
                    .filter(this::isBlank).toList()))));
        }
        return first.map(lack -> wrong(lack, made)).or(() -> Stream.of(reason, document, edition, clause, person)
                .flatMap(field -> FieldFault.text(field).stream()).findFirst()).or(() -> FieldFault.day(date, LocalDate.now()));
    }

    private FieldFault wrong(Lack lack, ValueBook.Entry made) {
        return switch (lack) {
            case OWN_VALUE -> own.fault().orElseGet(() -> own.fault(Messages.get("value.same", BookTexts.number(made))));
            case PERSON -> FieldFault.named(person).orElseThrow();
            case DATE -> FieldFault.day(date, LocalDate.now()).orElseThrow();
            default -> FieldFault.of((Text) control(lack), "field.letter", FieldFault.quoted(((Text) control(lack)).getText()));
        };
    }

    private boolean isBlank(Lack lack) {
        return lack == Lack.OWN_VALUE ? own.text().isBlank() : control(lack) instanceof Text text && text.getText().isBlank();
    }

    private Control control(Lack lack) {
        return switch (lack) {
            case REASON -> reason;
            case DOCUMENT -> document;
            case EDITION -> edition;
            case CLAUSE -> clause;
            case PERSON -> person;
            case DATE -> date;
            default -> own.control();
        };
    }

    /** What was decided of the values before is not thrown away with the one at hand unless somebody says so. */
    @Override
    protected void cancelPressed() {
        int answer = decided.isEmpty() ? 1 : MessageDialog.open(MessageDialog.QUESTION, getShell(), Messages.get("value.shell"),
                Messages.get("value.leave", decided.size()), SWT.SHEET, Messages.get("value.keep"), Messages.get("value.drop"),
                Messages.get("value.stay"));
        if (answer == 0) {
            super.okPressed();
        } else if (answer == 1) {
            super.cancelPressed();
        }
    }

    @Override
    protected void buttonPressed(int id) {
        if (id == SKIP || id == NEXT && take()) {
            at++;
            show();
            enableButtons();
        } else if (id != NEXT) {
            super.buttonPressed(id);
        }
    }

    @Override
    protected void okPressed() {
        if (take()) {
            super.okPressed();
        }
    }
}
