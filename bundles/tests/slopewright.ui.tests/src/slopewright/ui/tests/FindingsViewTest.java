package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slopewright.checks.Outcome;
import slopewright.checks.Verdict;
import slopewright.edit.MoveAid;
import slopewright.model.ApproachAid;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.rcp.internal.ProjectOpener;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.review.ComparisonView;
import slopewright.ui.review.FindingsView;

/** The findings view beside an open project: rows, filter, explanation, remedies, live update; and the comparison. */
class FindingsViewTest {

    @TempDir
    private Path folder;
    private IWorkbenchPage page;
    private IEditorPart editor;
    private FindingsView view;
    private ProjectDocument document;

    @BeforeEach
    void open() throws Exception {
        page = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
        view = (FindingsView) page.showView(FindingsView.ID);
        editor = page.openEditor(new ProjectInput(DemoCopy.of("harrow-vale-faults", folder)), ProjectOpener.EDITOR);
        document = Adapters.adapt(editor, ProjectDocument.class);
        assertNotNull(document, "the editor gives its document");
        awaitCheck();
    }

    @AfterEach
    void close() {
        page.closeEditor(editor, false);
    }

    private void awaitCheck() {
        DemoCopy.await("the project is checked", () -> document.lastResult().isPresent() && !document.isChecking());
    }

    private List<Outcome> rows() {
        return Stream.of(view.viewer().getTable().getItems()).map(TableItem::getData).map(Outcome.class::cast).toList();
    }

    private static List<String> explanations(List<Outcome> outcomes) {
        return outcomes.stream().map(Outcome::explanation).sorted().toList();
    }

    private void select(Outcome outcome) {
        view.viewer().setSelection(new StructuredSelection(outcome), true);
    }

    private static boolean isSame(Outcome one, Outcome other) {
        return one.rule().equals(other.rule()) && one.elementPath().equals(other.elementPath());
    }

    @Test
    void findingsComeWeightiestFirstAndTheRestOnDemand() {
        List<Outcome> all = document.lastResult().orElseThrow().outcomes();
        List<Outcome> findings = all.stream().filter(one -> one.weight().isPresent()).toList();
        assertFalse(findings.isEmpty(), "the layout has planted faults");
        assertEquals(findings.size(), rows().size());
        List<Integer> weights = rows().stream().map(one -> -one.weight().orElseThrow().ordinal()).toList();
        assertEquals(weights.stream().sorted().toList(), weights);
        view.showAll(true);
        assertEquals(all.size(), rows().size());
        view.showAll(false);
        assertEquals(findings.size(), rows().size());
        assertTrue(view.summary().contains(all.stream().filter(one -> one.verdict() == Verdict.PASS).count() + " met"), view.summary());
    }

    @Test
    void theSelectedFindingIsExplained() {
        Outcome failed = rows().stream().filter(one -> one.verdict() == Verdict.FAIL && one.citation().isPresent()).findFirst()
                .orElseThrow();
        select(failed);
        assertTrue(view.explanation().contains(failed.explanation()), view.explanation());
        assertTrue(view.explanation().contains(failed.citation().orElseThrow().text()), view.explanation());
    }

    @Test
    void anEditIsSeenWithoutAnyFurtherStep() {
        ApproachAid aid = Projects.aids(document.project()).get(0);
        List<Outcome> before = rows();
        document.history().perform(MoveAid.by(aid, -250, 0));
        awaitCheck();
        assertFalse(before.equals(rows()), "250 m closer to the threshold changes what the rules say");
        document.history().undo();
        awaitCheck();
        assertEquals(explanations(before), explanations(rows()));
    }

    @Test
    void aRemedyIsTriedOutFirstAndCuresTheFinding() {
        Outcome settings = rows().stream().filter(one -> one.verdict() == Verdict.FAIL && one.title().toLowerCase().contains("setting"))
                .findFirst().orElseThrow();
        select(settings);
        DemoCopy.await("a remedy is found for " + settings.title(), () -> !view.remedies().isEmpty());
        assertFalse(document.isDirty(), "the trial leaves the project alone");
        view.applyRemedy(0);
        assertTrue(document.isDirty());
        awaitCheck();
        List<Outcome> after = document.lastResult().orElseThrow().outcomes();
        assertTrue(after.stream().noneMatch(one -> isSame(one, settings) && one.verdict() == Verdict.FAIL));
        document.history().undo();
        assertFalse(document.isDirty());
    }

    @Test
    void aPenetratedObstacleSurfaceHasRemediesThatClearIt() {
        Outcome penetrated = rows().stream().filter(one -> one.verdict() == Verdict.FAIL && one.rule().equals("OBS-01"))
                .filter(one -> Ids.find(document.project(), one.elementId()).orElseThrow() instanceof ApproachAid).findFirst()
                .orElseThrow();
        select(penetrated);
        DemoCopy.await("a remedy is found", () -> !view.remedies().isEmpty());
        view.applyRemedy(0);
        awaitCheck();
        assertTrue(document.lastResult().orElseThrow().outcomes().stream()
                .noneMatch(one -> isSame(one, penetrated) && one.verdict() == Verdict.FAIL), view.remedies().toString());
    }

    @Test
    void theViewEmptiesWithTheLastEditor() {
        page.closeEditor(editor, false);
        DemoCopy.await("the table is empty", () -> rows().isEmpty());
        assertTrue(view.summary().startsWith("Open a project"), view.summary());
    }

    @Test
    void theComparisonLaysEveryFamilyOut() throws Exception {
        ComparisonView comparison = (ComparisonView) page.showView(ComparisonView.ID);
        comparison.compare();
        DemoCopy.await("families are compared", () -> comparison.viewer().getTable().getItemCount() >= 5);
        List<String> names = Stream.of(comparison.viewer().getTable().getItems()).map(item -> item.getText(0)).toList();
        assertTrue(names.stream().anyMatch(name -> name.contains("PAPI")), names.toString());
        page.hideView(comparison);
    }
}
