package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.checks.Outcome;
import slopewright.checks.Verdict;
import slopewright.evaluation.Reviews;
import slopewright.model.Project;
import slopewright.model.ReviewKind;
import slopewright.model.io.ProjectFile;
import slopewright.rcp.internal.ProjectOpener;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.review.FindingsView;
import slopewright.ui.review.ReviewView;

/** A review in the window by two people: comment, answer, return, acceptance, signature. Every name is invented. */
class ReviewViewTest {
    private static final String CHECKER = "B. Bole";
    private static final LocalDate DAY = LocalDate.of(2026, 6, 2);

    @TempDir
    private Path folder;
    private IWorkbenchPage page;
    private IEditorPart editor;
    private ReviewView view;
    private FindingsView findings;
    private ProjectDocument document;

    @BeforeEach
    void open() throws Exception {
        page = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
        findings = (FindingsView) page.showView(FindingsView.ID);
        view = (ReviewView) page.showView(ReviewView.ID);
        editor = page.openEditor(new ProjectInput(DemoProjects.copy("harrow-vale-faults", folder)), ProjectOpener.EDITOR);
        document = Adapters.adapt(editor, ProjectDocument.class);
        awaitCheck();
    }

    @AfterEach
    void close() {
        page.closeEditor(editor, false);
        page.hideView(view);
    }

    private void awaitCheck() {
        Patience.await("the project is checked", () -> document.lastResult().isPresent() && !document.isChecking());
    }

    /** What is not met and to clear up; what a rule says of the notes themselves is met. */
    private Map<Verdict, Integer> counts() {
        Map<Verdict, Integer> counts = new EnumMap<>(document.lastResult().orElseThrow().counts());
        counts.keySet().retainAll(List.of(Verdict.NOT_MET, Verdict.TO_CLEAR_UP));
        return counts;
    }

    private static Reviews.Said said(String words, String person) {
        return new Reviews.Said(words, person, DAY);
    }

    private boolean isEnabled(String label) {
        return Widgets.all(view.tree().getParent(), Button.class).filter(button -> button.getText().replace("&", "").equals(label))
                .findFirst().orElseThrow().isEnabled();
    }

    @Test
    void aReviewGoesFromACommentOnAFindingToTheSignature() throws Exception {
        Map<Verdict, Integer> before = counts();
        String author = document.project().getAuthor();
        Outcome finding = findings.rows().stream().filter(outcome -> outcome.verdict() == Verdict.NOT_MET).findFirst().orElseThrow();
        assertTrue(view.state().startsWith("0 of 0 comments are open"), view.state());
        assertEquals(Optional.empty(), view.comment(Optional.of(finding.elementId()), Optional.of(finding.rule()),
                said("Why does it stand so?", CHECKER)));
        awaitCheck();
        assertEquals(before, counts(), "no note changes a verdict");
        assertTrue(view.state().startsWith("1 of 1 comments are open") && view.state().contains("not signed off"), view.state());
        assertTrue(view.lines().get(0).startsWith("Why does it stand so?\t" + finding.elementPath() + ", " + finding.rule() + "\topen\t"
                + CHECKER), view.lines().toString());
        Outcome now = findings.rows().stream().filter(outcome -> outcome.rule().equals(finding.rule())
                && outcome.elementId().equals(finding.elementId())).findFirst().orElseThrow();
        findings.select(now);
        assertTrue(findings.explanation().contains("Review, open: Why does it stand so? (" + CHECKER), findings.explanation());
        assertTrue(Stream.of(findings.tree().getItems()).flatMap(heading -> Stream.of(heading.getItems())).map(row -> row.getText(0))
                .anyMatch(row -> row.contains(finding.rule()) && row.endsWith("[review: open]")));

        String id = document.project().getReviewNotes().get(0).getId();
        assertTrue(view.signOff(said("", CHECKER)).orElseThrow().contains(id), "what is open is named");
        assertFalse(isEnabled("Sign off…"));
        view.select(id);
        assertTrue(isEnabled("Answer…") && isEnabled("Return…") && isEnabled("Accept…"));
        assertEquals(Optional.empty(), view.reply(id, ReviewKind.ANSWER, said("The survey says so.", author)));
        assertTrue(view.reply(id, ReviewKind.ACCEPTED, said("", author)).orElseThrow().contains("is the author"));
        assertEquals(Optional.empty(), view.reply(id, ReviewKind.RETURNED, said("Which survey?", CHECKER)));
        assertEquals(Optional.empty(), view.reply(id, ReviewKind.ANSWER, said("That of May.", author)));
        assertEquals(Optional.empty(), view.reply(id, ReviewKind.ACCEPTED, said("", CHECKER)));
        assertEquals(5, view.lines().size(), "four replies under the comment");
        assertFalse(isEnabled("Answer…"), "what is accepted is settled");
        view.openOnly(true);
        assertEquals(List.of(), view.lines());
        view.openOnly(false);

        awaitCheck();
        assertTrue(isEnabled("Sign off…"));
        assertEquals(Optional.empty(), view.signOff(said("Looked through.", CHECKER)));
        awaitCheck();
        assertTrue(view.state().contains("signed off by " + CHECKER + ", 2026-06-02, as it stands"), view.state());
        assertTrue(view.lines().get(5).startsWith("Looked through. (" + before.get(Verdict.NOT_MET) + " not met, "
                + before.get(Verdict.TO_CLEAR_UP) + " to clear up)"), view.lines().toString());
        editor.doSave(new NullProgressMonitor());
        Project saved = ProjectFile.load(document.path().orElseThrow());
        assertEquals(Reviews.State.ACCEPTED, Reviews.threads(saved).get(0).state());
        assertTrue(Reviews.isAsSigned(saved, Reviews.signedOff(saved).orElseThrow()), "also as it was saved");

        document.history().undo();
        assertTrue(view.state().contains("not signed off"), view.state());
        document.history().redo();
        assertTrue(view.state().contains("as it stands"), view.state());
    }

    @Test
    void escapeEmptiesASearch() {
        Text search = Widgets.all(findings.tree().getParent().getParent(), Text.class).filter(text -> (text.getStyle() & SWT.SEARCH) != 0)
                .findFirst().orElseThrow();
        int all = findings.rows().size();
        search.setText("EYE-01");
        assertTrue(findings.rows().size() < all);
        Event escape = new Event();
        escape.detail = SWT.TRAVERSE_ESCAPE;
        escape.doit = true;
        search.notifyListeners(SWT.Traverse, escape);
        assertEquals(all, findings.rows().size());
        assertFalse(escape.doit, "nothing else happens by it");
    }

    @Test
    void whatIsRefusedIsSaidAndLeavesNothing() {
        assertTrue(view.comment(Optional.empty(), Optional.empty(), said(" ", CHECKER)).orElseThrow().contains("needs words"));
        assertTrue(view.comment(Optional.empty(), Optional.empty(), said("x", "?")).orElseThrow().contains("needs the name"));
        assertEquals(0, document.project().getReviewNotes().size());
        assertFalse(document.history().isDirty());
    }
}
