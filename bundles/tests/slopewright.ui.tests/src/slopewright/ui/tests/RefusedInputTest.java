package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.checks.BookKeeping;
import slopewright.rcp.internal.ProjectOpener;
import slopewright.standards.ValueBook;
import slopewright.standards.ValueBook.Decision;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.review.BookView;
import slopewright.ui.review.ReviewView;

/**
 * What is typed wrong into the dialogs of the book and of the review: each says which field and why, leads there, keeps what was typed, and
 * Esc throws nothing away unasked. Every name is invented.
 */
class RefusedInputTest {
    private static final int WAIT_MS = 600;
    private static final String LONG = "Ł".repeat(3000);

    @TempDir
    private Path folder;
    private IWorkbenchPage page;
    private IEditorPart editor;
    private ProjectDocument document;
    private IViewPart view;
    private Shell shell;
    private Optional<Throwable> failure = Optional.empty();

    @BeforeEach
    void open() throws Exception {
        page = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
        editor = page.openEditor(new ProjectInput(DemoProjects.copy("harrow-vale", folder)), ProjectOpener.EDITOR);
        document = Adapters.adapt(editor, ProjectDocument.class);
        Patience.await("the project is checked", () -> document.lastResult().isPresent() && !document.isChecking());
    }

    @AfterEach
    void close() {
        page.closeEditor(editor, false);
        page.hideView(view);
    }

    /** Presses a button of the view and works in the dialog that it opens, which is closed at the end. */
    private void ask(String button, Consumer<Shell> work) {
        Set<Shell> before = Set.of(Display.getCurrent().getShells());
        Display.getCurrent().timerExec(WAIT_MS, () -> {
            Shell opened = Stream.of(Display.getCurrent().getShells()).filter(found -> !before.contains(found) && found.isVisible())
                    .findFirst().orElseThrow();
            Shell outer = shell;
            shell = opened;
            try {
                work.accept(opened);
            } catch (RuntimeException | AssertionError e) {
                failure = Optional.of(e);
            } finally {
                shell = outer;
                if (!opened.isDisposed()) {
                    Widgets.all(opened, Text.class).filter(text -> (text.getStyle() & SWT.MULTI) != 0).forEach(text -> text.setText(""));
                    opened.close();
                }
            }
        });
        press(shell == null ? PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell() : shell, button);
        failure.ifPresent(found -> {
            throw new AssertionError(found.getMessage(), found);
        });
    }

    private static void press(Shell in, String label) {
        Widgets.all(in, Button.class).filter(found -> found.isVisible() && found.isEnabled()
                && found.getText().replace("&", "").startsWith(label)).findFirst().orElseThrow(() -> new AssertionError(label))
                .notifyListeners(SWT.Selection, new Event());
    }

    /** The field behind a label; what the rule set says stands in a label itself. */
    private Text field(String label) {
        return Widgets.all(shell, Label.class).filter(found -> found.getText().replace("&", "").startsWith(label)).flatMap(before -> {
            List<Control> row = List.of(before.getParent().getChildren());
            Control field = row.get(row.indexOf(before) + 1);
            return field instanceof Text text ? Stream.of(text) : field instanceof Composite stack ? Widgets.all(stack, Text.class)
                    : Stream.empty();
        }).findFirst().orElseThrow(() -> new AssertionError(label));
    }

    private void type(String label, String text) {
        field(label).setText(text);
    }

    private String said() {
        return Widgets.all(shell, Text.class).filter(text -> (text.getStyle() & SWT.READ_ONLY) != 0).findFirst().orElseThrow().getText()
                .strip();
    }

    /** Presses a button and looks what is said of which field, and that the words go when something else is typed there. */
    private void refused(String button, String label, String typed, String... words) {
        type(label, typed);
        press(shell, button);
        assertFalse(shell.isDisposed(), label + " was taken: " + typed);
        String said = said();
        for (String word : words) {
            assertTrue(said.contains(word), label + ": " + said);
        }
        assertTrue(said.length() < 220, said);
        assertEquals(typed, field(label).getText(), "what was typed stays");
        Text field = field(label);
        Patience.await(label + " has the focus", field::isFocusControl);
        field.setText(typed + "x");
        assertFalse(said().equals(said), "the words go: " + said);
    }

    private BookView book() throws Exception {
        view = page.showView(BookView.ID);
        BookView book = (BookView) view;
        Patience.await("the values are listed", () -> !book.rows().isEmpty());
        assertEquals(Optional.empty(), book.beginBook(folder.resolve("book.csv")));
        return book;
    }

    private static BookKeeping.Row accuracy(BookView book) {
        return book.rows().stream().filter(row -> row.entry().key().equals("four-unit-row.setting-accuracy-min")).findFirst().orElseThrow();
    }

    /** The setting of a row of four holds to a minute of arc, as the demonstration's rule set has it from its source. */
    @Test
    void aValueIsRefusedFieldByField() throws Exception {
        BookView book = book();
        book.select(List.of(accuracy(book)));
        ask("Hold against", opened -> {
            for (String label : List.of("Document", "Edition", "Clause", "Read by")) {
                type(label, "");
            }
            refused("Finish", "Number", "", "Still missing", "number as it stands there", "document", "clause", "name of who read it");
            refused("Finish", "Number", "one", "Number", "'one'");
            refused("Finish", "Number", "0x1p0", "Number", "0x1p0");
            type("Number", "1");
            refused("Finish", "Document", "", "Still missing: document, edition");
            refused("Finish", "Document", "m", "Document", "'m' is a letter");
            type("Document", "Händbuch Ω");
            type("Edition", "9.");
            type("Clause", LONG);
            refused("Finish", "Read by", "7", "Read by", "'7' names nobody");
            refused("Finish", "Read by", "Zoë\u0001 Ames", "Read by", "U+0001");
            type("Read by", "Zoë Åmes");
            for (String when : List.of("yesterday", "2026-02-30", "31.05.2026", LONG)) {
                refused("Finish", "Date", when, "Date", "is no date", when.substring(0, Math.min(when.length(), 30)));
            }
            refused("Finish", "Date", "2126-01-01", "Date", "2126-01-01 is still to come");
            type("Date", "2026-05-01");
            refused("Finish", "Number", "2", "Number", "the rule set 1");
            type("Number", "1");
            assertEquals(LONG, field("Clause").getText());
            press(shell, "Finish");
            assertTrue(shell.isDisposed(), "all is right");
        });
        book.showAll(true);
        ValueBook.Entry made = accuracy(book).entry();
        assertEquals(List.of(Decision.CONFIRMED, "Händbuch Ω", LONG, "Zoë Åmes"), List.of(made.decision(), made.document(), made.clause(),
                made.person()));
        book.select(List.of(accuracy(book)));
        ask("Sign off", opened -> {
            Patience.await("the name is asked for", () -> field("Signed off by").isFocusControl());
            refused("OK", "Signed off by", "", "Signed off by", "missing");
            refused("OK", "Signed off by", "zoe ames", "Signed off by", "a second person");
            type("Signed off by", "B. Bole");
            refused("OK", "Date", "2026-04-30", "Date", "2026-05-01");
            refused("OK", "Date", "soon", "Date", "'soon' is no date");
            type("Date", LocalDate.now().toString());
            press(shell, "OK");
            assertTrue(shell.isDisposed(), "all is right");
        });
        assertTrue(accuracy(book).entry().isSigned());
    }

    /** Esc in the second of two values asks what is to become of the first. */
    @Test
    void whatWasDecidedBeforeEscIsKept() throws Exception {
        BookView book = book();
        BookKeeping.Row first = accuracy(book);
        book.select(List.of(first, book.rows().stream().filter(row -> !row.equals(first)).findFirst().orElseThrow()));
        ask("Hold against", opened -> {
            boolean isFirst = Widgets.all(shell, Label.class).anyMatch(label -> label.getText().contains(first.entry().key()));
            if (!isFirst) {
                press(shell, "Skip");
            }
            press(shell, "the value is not");
            Widgets.all(shell, Button.class).filter(button -> (button.getStyle() & SWT.RADIO) != 0)
                    .forEach(button -> button.setSelection(button.getText().replace("&", "").startsWith("the value is not")));
            type("Reason", "not ours");
            type("Document", "our copy");
            type("Edition", "9th");
            type("Clause", "6.200");
            type("Read by", "A. Ames");
            press(shell, isFirst ? "Next" : "Finish");
            if (isFirst) {
                ask("Cancel", question -> press(question, "Go on"));
                assertFalse(opened.isDisposed(), "the dialog goes on");
                ask("Cancel", question -> press(question, "Keep"));
            }
        });
        book.showAll(true);
        assertEquals(Decision.REJECTED, accuracy(book).entry().decision());
    }

    @Test
    void aNoteIsRefusedFieldByField() throws Exception {
        view = page.showView(ReviewView.ID);
        ask("Comment", opened -> {
            refused("OK", "Words", "  ", "Words", "needs words");
            refused("OK", "Words", "why\u0001", "Words", "U+0001");
            type("Words", LONG + "\nund zweitens: Ω");
            refused("OK", "Name", "", "Name", "missing");
            refused("OK", "Name", "?", "Name", "'?' names nobody");
            type("Name", "Bø Ōle");
            refused("OK", "Date", "", "Date", "missing");
            refused("OK", "Date", "01/06/2026", "Date", "'01/06/2026' is no date");
            refused("OK", "Date", "2126-01-01", "Date", "still to come");
            type("Date", "2026-06-02");
            ask("Cancel", question -> press(question, "Go on"));
            assertFalse(opened.isDisposed(), "words are not thrown away by one key");
            assertEquals(LONG + "\nund zweitens: Ω", field("Words").getText());
            press(shell, "OK");
            assertTrue(shell.isDisposed(), "all is right");
        });
        assertEquals(LONG + "\nund zweitens: Ω", document.project().getReviewNotes().get(0).getText());
        ((ReviewView) view).select(document.project().getReviewNotes().get(0).getId());
        ask("Accept", opened -> {
            refused("OK", "Name", document.project().getAuthor(), "Name", "is the author");
            type("Name", "Bø Ōle");
            refused("OK", "Date", "2026-06-01", "Date", "2026-06-02");
        });
        assertEquals(1, document.project().getReviewNotes().size());
        document.history().undo();
        assertEquals(0, document.project().getReviewNotes().size());
    }
}
