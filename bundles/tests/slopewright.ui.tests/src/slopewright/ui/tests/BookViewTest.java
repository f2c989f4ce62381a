package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.checks.BookKeeping;
import slopewright.rcp.internal.ProjectOpener;
import slopewright.standards.ValueBook;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.review.BookView;

/** The book of values beside a project: begun, decided, signed off, taken, changed. Every name is invented. */
class BookViewTest {
    private static final String ACCURACY = "icao:9th four-unit-row.setting-accuracy-min";

    @TempDir
    private Path folder;
    private IWorkbenchPage page;
    private IEditorPart editor;
    private BookView view;
    private ProjectDocument document;

    @BeforeEach
    void open() throws Exception {
        page = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
        view = (BookView) page.showView(BookView.ID);
        editor = page.openEditor(new ProjectInput(DemoProjects.copy("harrow-vale", folder)), ProjectOpener.EDITOR);
        document = Adapters.adapt(editor, ProjectDocument.class);
        Patience.await("the project is checked", () -> document.lastResult().isPresent() && !document.isChecking());
        Patience.await("the values are listed", () -> !view.rows().isEmpty());
    }

    @AfterEach
    void close() {
        page.closeEditor(editor, false);
        page.hideView(view);
    }

    private BookKeeping.Row row(String name) {
        return view.rows().stream().filter(row -> row.entry().name().equals(name)).findFirst().orElseThrow();
    }

    @Test
    void aValueIsShownWithItsNumberSourceAndResults() {
        assertTrue(view.state().contains("names no book"), view.state());
        view.select(List.of(row(ACCURACY)));
        assertTrue(view.details().contains("PAPI: Accuracy of the setting: 1′"), view.details());
        assertTrue(view.details().contains("UK CAP 168 (restated), 6.200"), view.details());
        assertTrue(view.details().contains("ROW-07"), view.details());
        assertTrue(view.details().contains(row(ACCURACY).entry().restsOnIt() + " results rest on it"), view.details());
        assertTrue(view.details().contains("Said in the project: invented for the demo"), view.details());
        int open = view.rows().size();
        view.showAll(true);
        assertTrue(view.rows().size() > open, "published ones too");
        assertEquals(view.table().getItemCount(), view.rows().size());
    }

    @Test
    void aBookIsBegunSignedTakenAndNoticedWhenItChanges() throws Exception {
        Path book = folder.resolve("book.csv");
        assertEquals(Optional.empty(), view.beginBook(book));
        assertTrue(view.state().contains("not taken into this project"), view.state());
        ValueBook.Entry decided = row(ACCURACY).entry().decided(ValueBook.Decision.CONFIRMED, Optional.empty(), "",
                new ValueBook.Compared("our copy", "9th", "6.200", "A. Ames", "2026-05-01"));
        view.write(List.of(decided));
        assertTrue(view.details().contains("values are selected") || view.details().contains("confirmed"), view.details());
        assertFalse(row(ACCURACY).entry().isSigned());
        view.write(List.of(row(ACCURACY).entry().signedOff("B. Bole", "2026-05-02")));
        assertTrue(ValueBook.read(book).entries().stream().anyMatch(entry -> entry.name().equals(ACCURACY) && entry.isSigned()));
        view.take();
        assertEquals("book.csv", document.project().getBookPath());
        assertTrue(document.project().getConfirmations().stream().anyMatch(said -> "B. Bole".equals(said.getSecondPerson())));
        assertTrue(view.state().contains("as the project took it"), view.state());
        Patience.await("checked again", () -> !document.isChecking());

        Files.writeString(book, Files.readString(book) + "## looked at again\n");
        view.setFocus();
        assertTrue(view.state().contains("changed since the project took it"), view.state());
        document.history().undo();
        assertEquals(null, document.project().getBookPath());
    }

    /** What somebody else wrote meanwhile is never overwritten. */
    @Test
    void aBookThatSomebodyElseChangedIsReadAgain() throws Exception {
        Path book = folder.resolve("book.csv");
        view.beginBook(book);
        String theirs = Files.readString(book) + "## theirs\n";
        Files.writeString(book, theirs);
        view.write(List.of(row(ACCURACY).entry().decided(ValueBook.Decision.REJECTED, Optional.empty(), "not ours",
                new ValueBook.Compared("our copy", "9th", "6.200", "A. Ames", "2026-05-01"))));
        assertTrue(view.state().contains("changed by somebody else"), view.state());
        assertEquals(theirs, Files.readString(book));
    }
}
