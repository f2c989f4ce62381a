package slopewright.ui.review.internal.notes;

import java.time.LocalDate;
import java.util.Optional;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

import slopewright.evaluation.Reviews;
import slopewright.ui.review.internal.FieldFault;
import slopewright.ui.review.internal.Messages;

/** Asks for the words of a note, who says them and when; what is refused is said in the dialog, which stays open. */
final class NoteDialog extends TitleAreaDialog {
    private static final int WIDTH = 460;
    private static final int HEIGHT = 90;
    private static final String PLAIN = "field.why";

    /** What a note is refused for. */
    enum Part {
        /** Who says it. */
        PERSON,
        /** The day. */
        DATE,
        /** Something that stands in no field. */
        NONE
    }

    /**
     * A note that was refused.
     *
     * @param why  the reason, for people
     * @param part what it is about
     */
    record Refused(String why, Part part) {
    }

    /** Keeps what was said. */
    interface Keeping {

        /** Returns whether nothing can be said without words. */
        boolean needsWords();

        /** Keeps a note; returns why it cannot be, empty where it was. */
        Optional<Refused> keep(Reviews.Said said);
    }

    private final String key;
    private final String about;
    private final String person;
    private final Keeping keeping;
    private Text words;
    private Text name;
    private Text date;

    /**
     * Makes the dialog.
     *
     * @param shell   its parent
     * @param key     what is asked for, as the texts name it
     * @param about   what it is about
     * @param person  who said something last
     * @param keeping keeps what was said
     */
    NoteDialog(Shell shell, String key, String about, String person, Keeping keeping) {
        super(shell);
        this.key = key;
        this.about = about;
        this.person = person;
        this.keeping = keeping;
        setShellStyle(getShellStyle() | SWT.RESIZE);
        setHelpAvailable(false);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        getShell().setText(Messages.get("notes.dialog." + key));
        setTitle(Messages.get("notes.dialog." + key));
        setMessage(about);
        Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(10, 10).applyTo(area);
        words = field(area, "notes.words", SWT.MULTI | SWT.WRAP | SWT.V_SCROLL, "");
        GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH, HEIGHT).applyTo(words);
        // The key leads on to the name instead of standing among the words.
        words.addListener(SWT.Traverse, event -> event.doit = event.doit || event.detail == SWT.TRAVERSE_TAB_NEXT
                || event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
        name = field(area, "notes.person", SWT.NONE, person);
        date = field(area, "notes.date", SWT.NONE, LocalDate.now().toString());
        words.setFocus();
        return area;
    }

    private static Text field(Composite area, String label, int style, String first) {
        new Label(area, SWT.NONE).setText(Messages.get(label));
        Text text = new Text(area, SWT.BORDER | style);
        text.setText(first);
        if ((style & SWT.MULTI) == 0) {
            text.addListener(SWT.FocusIn, event -> text.selectAll());
        }
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(text);
        return text;
    }

    @Override
    protected void okPressed() {
        Optional<FieldFault> fault = words().or(() -> FieldFault.named(name)).or(() -> FieldFault.day(date, LocalDate.now()))
                .or(this::keep);
        if (fault.isPresent()) {
            fault.get().show(this);
        } else {
            super.okPressed();
        }
    }

    private Optional<FieldFault> words() {
        return keeping.needsWords() && words.getText().isBlank() ? Optional.of(FieldFault.of(words, "field.no-words"))
                : FieldFault.text(words);
    }

    private Optional<FieldFault> keep() {
        Reviews.Said said = new Reviews.Said(words.getText(), name.getText(), LocalDate.parse(date.getText().strip()));
        return keeping.keep(said).map(refused -> switch (refused.part()) {
            case PERSON -> FieldFault.of(name, PLAIN, refused.why());
            case DATE -> FieldFault.of(date, PLAIN, refused.why());
            case NONE -> new FieldFault(words, refused.why());
        });
    }

    /** Words are not thrown away by one key. */
    @Override
    protected void cancelPressed() {
        if (words.getText().isBlank() || MessageDialog.open(MessageDialog.QUESTION, getShell(), getShell().getText(),
                Messages.get("notes.leave"), SWT.SHEET, Messages.get("notes.stay"), Messages.get("notes.drop")) == 1) {
            super.cancelPressed();
        }
    }
}
