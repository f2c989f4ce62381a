package slopewright.ui.review;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.WeakHashMap;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;

import slopewright.checks.BookKeeping;
import slopewright.checks.CheckResult;
import slopewright.edit.TakeBook;
import slopewright.evaluation.BookUse;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.standards.ValueBook;
import slopewright.ui.AccessibleName;
import slopewright.ui.LateView;
import slopewright.ui.MessageTexts;
import slopewright.ui.document.DocumentFollower;
import slopewright.ui.document.DocumentListener;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.review.internal.Messages;
import slopewright.ui.review.internal.SearchField;
import slopewright.ui.review.internal.book.BookDesk;
import slopewright.ui.review.internal.book.BookTable;
import slopewright.ui.review.internal.book.BookTable.Shown;
import slopewright.ui.review.internal.book.BookTexts;
import slopewright.ui.review.internal.book.SignOffDialog;
import slopewright.ui.review.internal.book.ValueDialog;

/**
 * The organisation's book of values beside the project: every value that results rest on, those that most rests on first, what the book
 * says of it, and how people decide and sign. What was decided is written into the book at once; the project takes it when told to.
 */
public final class BookView extends LateView {

    /** Id of the view. */
    public static final String ID = "slopewright.ui.review.book";

    private final Map<ProjectDocument, Path> chosen = new WeakHashMap<>();
    private DocumentFollower follower;
    private CLabel state;
    private Button begin;
    private Button open;
    private Button decide;
    private Button sign;
    private Button take;
    private Combo shown;
    private Text search;
    private BookTable table;
    private StyledText details;
    private Optional<BookDesk> desk = Optional.empty();
    private Optional<ValueBook.Compared> last = Optional.empty();

    private final class Follow implements DocumentListener {

        @Override
        public void changed(Set<String> elementIds) {
            // the check that follows says what rests on what
        }

        @Override
        public void checked(CheckResult result) {
            update();
        }

        @Override
        public void unchecked() {
            update();
        }

        @Override
        public void stateChanged() {
            enable();
        }
    }

    @Override
    protected void fill(Composite parent) {
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
        state = new CLabel(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).indent(3, 2).hint(60, SWT.DEFAULT).applyTo(state);
        Composite head = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(head);
        RowLayoutFactory.fillDefaults().wrap(true).center(true).spacing(4).margins(6, 2).applyTo(head);
        begin = button(head, "book.begin", this::begin);
        open = button(head, "book.open", this::choose);
        decide = button(head, "book.decide", this::decide);
        sign = button(head, "book.sign", this::sign);
        take = button(head, "book.take", this::take);
        shown = new Combo(head, SWT.READ_ONLY);
        for (Shown which : Shown.values()) {
            shown.add(Messages.get("book.shown." + which.name()));
        }
        shown.select(0);
        shown.setToolTipText(Messages.get("book.shown.tip"));
        shown.addListener(SWT.Selection, event -> filter());
        search = new Text(head, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        SearchField.clearByEscape(search);
        search.setMessage(Messages.get("book.search"));
        search.setLayoutData(new RowData(SearchField.width(search, 150), SWT.DEFAULT));
        search.addListener(SWT.Modify, event -> filter());
        SashForm sash = new SashForm(parent, SWT.HORIZONTAL | SWT.SMOOTH);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
        table = new BookTable(sash);
        AccessibleName.give(table.control(), getPartName());
        table.onSelection(this::updateDetails);
        table.control().addListener(SWT.DefaultSelection, event -> decide());
        details = new StyledText(sash, SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL);
        AccessibleName.give(details, getPartName());
        details.setCaret(null);
        details.setMargins(6, 4, 6, 4);
        details.setAlwaysShowScrollBars(false);
        sash.setWeights(70, 30);
        follower = new DocumentFollower(getSite().getPage(), new Follow(), document -> update());
        update();
    }

    private static Button button(Composite parent, String key, Runnable action) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(Messages.get(key));
        button.setToolTipText(Messages.get(key + ".tip"));
        button.addListener(SWT.Selection, event -> action.run());
        return button;
    }

    private Optional<ProjectDocument> document() {
        return follower == null ? Optional.empty() : follower.document();
    }

    private void update() {
        if (state == null || state.isDisposed()) {
            return;
        }
        Optional<ProjectDocument> document = document();
        Optional<CheckResult> result = document.flatMap(ProjectDocument::lastResult);
        try {
            desk = result.map(checked -> {
                ProjectEvaluation evaluation = document.get().evaluation();
                return BookDesk.of(evaluation, checked.outcomes(), Optional.ofNullable(chosen.get(document.get())));
            });
            say(desk.map(BookDesk::state).orElse(Messages.get(document.isPresent() ? "book.unchecked" : "book.noProject")));
        } catch (IllegalArgumentException e) {
            desk = Optional.empty();
            say(MessageTexts.reason(e));
        }
        table.show(desk.map(BookDesk::rows).orElse(List.of()));
        updateDetails();
    }

    private void say(String text) {
        state.setText(text);
        state.setToolTipText(text);
    }

    private void filter() {
        table.filter(Shown.values()[shown.getSelectionIndex()], search.getText());
        updateDetails();
    }

    private void updateDetails() {
        List<BookKeeping.Row> selected = table.selected();
        details.setText(selected.size() == 1 ? BookTexts.details(selected.get(0)) : Messages.get("book.selected", selected.size(),
                table.shown().size()));
        enable();
    }

    private List<ValueBook.Entry> toSign() {
        return table.selected().stream().map(BookKeeping.Row::entry).filter(entry -> entry.lacksToDecide().isEmpty()).toList();
    }

    private void enable() {
        boolean lies = desk.flatMap(BookDesk::book).isPresent();
        begin.setEnabled(desk.isPresent());
        open.setEnabled(document().isPresent());
        decide.setEnabled(lies && !table.selected().isEmpty());
        sign.setEnabled(lies && !toSign().isEmpty());
        take.setEnabled(lies);
    }

    private void begin() {
        askFile(SWT.SAVE, "book.begin.tip").ifPresent(file -> {
            Optional<String> fault = desk.flatMap(found -> found.begin(file));
            if (fault.isPresent()) {
                say(fault.get());
            } else {
                openBook(file);
            }
        });
    }

    private void choose() {
        askFile(SWT.OPEN, "book.open.tip").ifPresent(this::openBook);
    }

    private Optional<Path> askFile(int style, String key) {
        FileDialog dialog = new FileDialog(getSite().getShell(), style);
        dialog.setText(Messages.get(key));
        dialog.setFilterExtensions(new String[] {"*.csv"});
        document().flatMap(ProjectDocument::path).map(Path::getParent).ifPresent(folder -> dialog.setFilterPath(folder.toString()));
        String name = dialog.open();
        return Optional.ofNullable(name).map(text -> Path.of(style == SWT.SAVE && !text.endsWith(".csv") ? text + ".csv" : text));
    }

    /**
     * Lays a book beside the project, without taking anything from it.
     *
     * @param file the book
     */
    public void openBook(Path file) {
        document().ifPresent(document -> chosen.put(document, file.toAbsolutePath().normalize()));
        update();
    }

    /**
     * Begins a book with the values that the project rests on.
     *
     * @param file a file that is not there yet
     * @return what went wrong, empty where nothing did
     */
    public Optional<String> beginBook(Path file) {
        Optional<String> fault = desk.flatMap(found -> found.begin(file));
        openBook(file);
        return fault;
    }

    private void decide() {
        List<ValueBook.Entry> entries = table.selected().stream().map(BookKeeping.Row::entry).toList();
        if (!decide.isEnabled()) {
            return;
        }
        ValueDialog dialog = new ValueDialog(getSite().getShell(), entries, false, last);
        if (dialog.open() == Window.OK) {
            last = Optional.of(dialog.last());
            write(dialog.decided());
            table.control().setFocus();
        }
    }

    private void sign() {
        SignOffDialog dialog = new SignOffDialog(getSite().getShell(), toSign());
        if (dialog.open() == Window.OK) {
            write(dialog.signed());
            table.control().setFocus();
        }
    }

    /**
     * Writes entries into the book as they were decided or signed off.
     *
     * @param entries the entries
     */
    public void write(List<ValueBook.Entry> entries) {
        Optional<String> fault = desk.flatMap(found -> found.write(entries));
        update();
        fault.ifPresent(this::say);
    }

    /** Takes the signed entries of the book into the project. */
    public void take() {
        Optional<ProjectDocument> document = document();
        Optional<ValueBook> book = desk.flatMap(BookDesk::book);
        if (document.isPresent() && book.isPresent()) {
            Path file = desk.flatMap(BookDesk::file).orElseThrow();
            String path = document.get().path().map(Path::toAbsolutePath).map(Path::getParent).map(folder -> BookUse.path(file, folder))
                    .orElseGet(file::toString);
            document.get().history().perform(TakeBook.of(document.get().project(), book.get(), path, desk.get().resting()));
            update();
        }
    }

    /** Returns the table of values. */
    public Table table() {
        return table.control();
    }

    /** Returns the rows that are shown, in their order. */
    public List<BookKeeping.Row> rows() {
        return table.shown();
    }

    /** Selects rows. */
    public void select(List<BookKeeping.Row> some) {
        table.select(some);
        updateDetails();
    }

    /** Shows all values, or only those that are still open. */
    public void showAll(boolean all) {
        shown.select((all ? Shown.ALL : Shown.OPEN).ordinal());
        filter();
    }

    /** Returns the line above the table. */
    public String state() {
        return state.getText();
    }

    /** Returns what is said of the selected value. */
    public String details() {
        return details.getText();
    }

    @Override
    protected void focus() {
        update();
        table.control().setFocus();
    }

    @Override
    public void dispose() {
        if (follower != null) {
            follower.dispose();
        }
        super.dispose();
    }
}
