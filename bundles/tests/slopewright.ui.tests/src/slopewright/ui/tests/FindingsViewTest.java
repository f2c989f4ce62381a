package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IContributionItem;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.checks.Outcome;
import slopewright.checks.Result;
import slopewright.checks.Verdict;
import slopewright.edit.MoveAid;
import slopewright.edit.SetAttribute;
import slopewright.messages.MessageRenderer;
import slopewright.model.ApproachAid;
import slopewright.model.Runway;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.model.SlopewrightPackage;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.rcp.internal.ProjectOpener;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.review.FindingsView;

/** The findings view beside an open project: groups, filter, explanation, copying, remedies, live update. */
class FindingsViewTest {
    private static final List<String> CHECKLIST = List.of("Not met", "Not evaluated, missing", "Not evaluated", "To confirm", "Met",
            "Not applicable");

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
        editor = page.openEditor(new ProjectInput(DemoProjects.copy("harrow-vale-faults", folder)), ProjectOpener.EDITOR);
        document = Adapters.adapt(editor, ProjectDocument.class);
        assertNotNull(document, "the editor gives its document");
        run("Group by element");
        awaitCheck();
    }

    @AfterEach
    void close() {
        run("Checklist by verdict");
        page.closeEditor(editor, false);
    }

    private void awaitCheck() {
        Patience.await("the project is checked", () -> document.lastResult().isPresent() && !document.isChecking());
    }

    private List<Outcome> rows() {
        return view.rows();
    }

    /** The texts of the rows under their headings, as they are painted. */
    private List<String> painted() {
        return Stream.of(view.tree().getItems()).flatMap(heading -> Stream.of(heading.getItems())).map(item -> item.getText(0)).toList();
    }

    private Composite root() {
        return view.tree().getParent().getParent();
    }

    private void filter(String label) {
        Combo combo = Widgets.all(root(), Combo.class).findFirst().orElseThrow();
        combo.select(List.of(combo.getItems()).indexOf(label));
        combo.notifyListeners(SWT.Selection, new Event());
    }

    private void press(String label) {
        Button button = Widgets.all(root(), Button.class).filter(widget -> widget.getText().equals(label)).findFirst().orElseThrow();
        button.notifyListeners(SWT.Selection, new Event());
    }

    private void run(String action) {
        IContributionItem[] items = view.getViewSite().getActionBars().getMenuManager().getItems();
        IAction found = Stream.of(items).filter(ActionContributionItem.class::isInstance).map(ActionContributionItem.class::cast)
                .map(ActionContributionItem::getAction).filter(item -> item.getText().equals(action)).findFirst().orElseThrow();
        Stream.of(items).filter(ActionContributionItem.class::isInstance).map(ActionContributionItem.class::cast)
                .map(ActionContributionItem::getAction).filter(item -> item.getStyle() == IAction.AS_RADIO_BUTTON)
                .forEach(item -> item.setChecked(item == found));
        found.run();
    }

    private static List<String> explanations(List<Outcome> outcomes) {
        return outcomes.stream().map(outcome -> outcome.explanation().english()).sorted().toList();
    }

    private void select(Outcome outcome) {
        view.select(outcome);
    }

    private static boolean isSame(Outcome one, Outcome other) {
        return one.rule().equals(other.rule()) && one.elementPath().equals(other.elementPath());
    }

    @Test
    void findingsComeWorstFirstAndTheRestOnDemand() {
        List<Outcome> all = document.lastResult().orElseThrow().outcomes();
        List<Outcome> findings = all.stream().filter(outcome -> outcome.weight().isPresent()).toList();
        assertFalse(findings.isEmpty(), "the layout has planted faults");
        assertEquals(findings.size(), rows().size());
        run("Plain list");
        List<Verdict> verdicts = rows().stream().map(Outcome::verdict).toList();
        assertEquals(verdicts.stream().sorted().toList(), verdicts, "what is not met comes first");
        filter("All outcomes");
        assertEquals(all.size(), rows().size());
        filter("Met");
        assertEquals(all.stream().filter(outcome -> outcome.verdict() == Verdict.MET).count(), rows().size());
        filter("Findings");
        assertEquals(findings.size(), rows().size());
        run("Group by element");
        Map<Verdict, Integer> counts = document.lastResult().orElseThrow().counts();
        assertTrue(view.summary().startsWith(counts.get(Verdict.NOT_MET) + " not met  ·  " + counts.get(Verdict.TO_CLEAR_UP)
                + " to clear up  ·  " + counts.get(Verdict.MET) + " met"), view.summary());
    }

    @Test
    void rowsStandUnderTheirElementOrTheirRule() {
        List<String> elements = rows().stream().map(outcome -> outcome.elementPath().english()).distinct().toList();
        assertEquals(elements.size(), view.tree().getItemCount());
        assertTrue(view.tree().getItem(0).getExpanded(), "headings are open");
        assertEquals(rows().stream().map(row -> row.rule() + "  " + row.title()).toList(), painted());
        run("Group by rule");
        assertEquals(rows().stream().map(Outcome::rule).distinct().count(), view.tree().getItemCount());
        assertEquals(rows().stream().map(outcome -> outcome.elementPath().english()).toList(), painted());
        run("Group by element");
    }

    @Test
    void wordsNarrowTheRows() {
        Text search = Widgets.all(root(), Text.class).filter(text -> (text.getStyle() & SWT.SEARCH) != 0).findFirst().orElseThrow();
        search.setText("obs-01");
        assertFalse(rows().isEmpty());
        assertTrue(rows().stream().allMatch(row -> row.rule().equals("OBS-01")), rows().toString());
        search.setText("no rule says such a thing");
        assertEquals(0, view.tree().getItemCount());
        search.setText("");
    }

    @Test
    void theNumberIsExplainedByItsFormula() {
        filter("All outcomes");
        Outcome wheels = rows().stream().filter(row -> row.rule().equals("WHEEL-01") && row.margin().isPresent()).findFirst().orElseThrow();
        select(wheels);
        assertTrue(view.explanation().contains("Wheel clearance = eye height"), view.explanation());
        String margin = String.format(Locale.ROOT, "margin %+.2f m", wheels.margin().getAsDouble());
        assertTrue(view.explanation().contains(margin), margin + " in " + view.explanation());
        filter("Findings");
    }

    @Test
    void rowsAreCopiedAndWrittenWithTheirHeadings() throws Exception {
        assertEquals(rows().size() + 1, view.copied().lines().count(), "nothing selected: all, below their headings");
        select(rows().get(0));
        assertEquals(2, view.copied().lines().count());
        assertTrue(view.copied().startsWith("Rule\tElement\tVerdict"), view.copied());
        Path csv = folder.resolve("findings.csv");
        assertTrue(view.export(csv).contains("findings.csv"));
        assertEquals(rows().size() + 1, Files.readAllLines(csv).size());
        Path html = folder.resolve("findings.html");
        view.export(html);
        assertTrue(Files.readString(html).contains("<td>" + rows().get(0).rule()), "a table");
        assertTrue(view.export(folder.resolve("nowhere/findings.csv")).endsWith("findings.csv: there is no such file or folder"));
    }

    /** Displacing the threshold stands in the list of RD 862/2009, 5.3.5.45; in that of Annex 14 Vol I, 9th ed., 5.3.5.46, no longer. */
    @Test
    void aRemedyShowsWhatItChangesBeforeItIsApplied() {
        selectPenetration();
        assertTrue(view.remedies().stream().noneMatch(text -> text.contains("displacing the threshold")), view.remedies().toString());
        int raise = indexOf("Raise the slope");
        view.previewRemedy(raise);
        assertTrue(view.explanation().contains("Approach slope: 3°"), view.explanation());
        assertTrue(view.explanation().contains("OBS-01"), view.explanation());
        assertFalse(document.isDirty(), "a preview changes nothing");
        press("Back");
        view.previewRemedy(raise);
        press("Apply");
        document.history().undo();
        assertFalse(document.isDirty());
        document.history().perform(SetAttribute.of(document.project(), Literals.PROJECT__RULE_SET_KEY, "icao:5th"));
        awaitCheck();
        selectPenetration();
        view.previewRemedy(indexOf("Consequences of displacing the threshold"));
        assertTrue(view.explanation().contains("Landing distance available"), view.explanation());
        assertTrue(Widgets.all(root(), Button.class).noneMatch(button -> button.getText().equals("Apply")), "a proposal alone");
    }

    private void selectPenetration() {
        select(rows().stream().filter(row -> row.verdict() == Verdict.NOT_MET && row.rule().equals("OBS-01")).filter(row -> Ids.find(
                document.project(), row.elementId()).orElseThrow() instanceof ApproachAid).findFirst().orElseThrow());
        Patience.await("remedies are found", () -> view.remedies().size() >= 2);
    }

    private int indexOf(String remedy) {
        List<String> texts = view.remedies();
        return texts.indexOf(texts.stream().filter(text -> text.startsWith(remedy)).findFirst().orElseThrow());
    }

    @Test
    void theSelectedFindingIsExplained() {
        Outcome failed = rows().stream().filter(row -> row.verdict() == Verdict.NOT_MET && row.citation().isPresent()).findFirst()
                .orElseThrow();
        select(failed);
        assertTrue(view.explanation().contains(failed.explanation().english()), view.explanation());
        assertTrue(view.explanation().contains(failed.citation().orElseThrow().text().english()), view.explanation());
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
        Outcome settings = rows().stream().filter(row -> row.verdict() == Verdict.NOT_MET)
                .filter(outcome -> outcome.title().english().toLowerCase(Locale.ROOT).contains("setting")).findFirst().orElseThrow();
        select(settings);
        Patience.await("a remedy is found for " + settings.title(), () -> !view.remedies().isEmpty());
        assertFalse(document.isDirty(), "the trial leaves the project alone");
        view.applyRemedy(0);
        assertTrue(document.isDirty());
        awaitCheck();
        List<Outcome> after = document.lastResult().orElseThrow().outcomes();
        assertTrue(after.stream().noneMatch(outcome -> isSame(outcome, settings) && outcome.verdict() == Verdict.NOT_MET));
        document.history().undo();
        assertFalse(document.isDirty());
    }

    @Test
    void aPenetratedObstacleSurfaceHasRemediesThatClearIt() {
        Outcome penetrated = rows().stream().filter(row -> row.verdict() == Verdict.NOT_MET && row.rule().equals("OBS-01"))
                .filter(outcome -> Ids.find(document.project(), outcome.elementId()).orElseThrow() instanceof ApproachAid).findFirst()
                .orElseThrow();
        select(penetrated);
        Patience.await("a remedy is found", () -> !view.remedies().isEmpty());
        view.applyRemedy(0);
        awaitCheck();
        assertTrue(document.lastResult().orElseThrow().outcomes().stream()
                .noneMatch(outcome -> isSame(outcome, penetrated) && outcome.verdict() == Verdict.NOT_MET), view.remedies().toString());
    }

    @Test
    void theViewEmptiesWithTheLastEditor() {
        page.closeEditor(editor, false);
        Patience.await("the table is empty", () -> rows().isEmpty());
        assertTrue(view.summary().startsWith("Open a project"), view.summary());
    }

    /** Whatever is filtered, searched, sorted or grouped, and whatever an edit moves up or down: the same finding stays selected. */
    @Test
    void theSelectedFindingStaysTheSame() {
        run("Plain list");
        Outcome chosen = rows().get(rows().size() / 2);
        select(chosen);
        filter("All outcomes");
        assertSelected(chosen);
        sort(3);
        assertSelected(chosen);
        sort(3);
        assertSelected(chosen);
        run("Group by rule");
        assertSelected(chosen);
        search("no row contains this");
        assertEquals(0, rows().size());
        assertTrue(view.explanation().startsWith(chosen.elementPath() + ": "), "what is filtered out is still explained");
        search("");
        assertSelected(chosen);
        run("Plain list");
        filter("Findings");
        assertSelected(chosen);
        document.history().perform(MoveAid.by(Projects.aids(document.project()).get(0), 40, 0));
        awaitCheck();
        assertTrue(view.explanation().startsWith(chosen.elementPath() + ": "), view.explanation());
        document.history().undo();
        awaitCheck();
        assertSelected(chosen);
        sort(0);
        run("Group by element");
    }

    /** What is not met, then what lacks an input by the input, then what rests on a value by the value; what is met stays folded up. */
    @Test
    void theChecklistStandsByVerdict() {
        run("Checklist by verdict");
        filter("All outcomes");
        List<Outcome> all = document.lastResult().orElseThrow().outcomes();
        Map<String, Integer> counted = new LinkedHashMap<>();
        List<Integer> places = new ArrayList<>();
        for (TreeItem heading : view.tree().getItems()) {
            Matcher matcher = Pattern.compile("(.*?)(: .*)?  \\((\\d+)\\)").matcher(heading.getText(0));
            assertTrue(matcher.matches(), heading.getText(0));
            counted.merge(matcher.group(1), Integer.parseInt(matcher.group(3)), Integer::sum);
            places.add(CHECKLIST.indexOf(matcher.group(1)));
            assertEquals(!List.of("Met", "Not applicable").contains(matcher.group(1)), heading.getExpanded(), heading.getText(0));
        }
        assertEquals(places.stream().sorted().toList(), places, "in the order " + CHECKLIST);
        Map<Verdict, Integer> counts = document.lastResult().orElseThrow().counts();
        assertEquals(counts.get(Verdict.NOT_MET), counted.get("Not met"));
        assertEquals(counts.get(Verdict.MET), counted.get("Met"));
        assertEquals((int) all.stream().filter(outcome -> outcome.result() == Result.NOT_EVALUATED).count(),
                counted.getOrDefault("Not evaluated, missing", 0) + counted.getOrDefault("Not evaluated", 0));
        assertEquals((int) all.stream().filter(outcome -> outcome.result() == Result.PASS && outcome.toConfirm()).count(),
                counted.getOrDefault("To confirm", 0));
        filter("Findings");
    }

    /** An input that is missing is typed beside its finding. */
    @Test
    void aMissingInputIsFilledInPlace() {
        Runway runway = document.project().getAerodrome().getRunways().get(0);
        document.history().perform(SetAttribute.of(runway, Literals.RUNWAY__WIDTH_M, null));
        awaitCheck();
        Outcome open = rows().stream().filter(outcome -> outcome.missing().stream()
                .anyMatch(missing -> missing.key().equals("missing.runway-width"))).findFirst().orElseThrow();
        select(open);
        assertEquals(1, view.missingEntries().size(), view.missingEntries().toString());
        assertTrue(view.missingEntries().get(0).contains("(m)"), view.missingEntries().toString());
        Text field = Widgets.all(root(), Text.class).filter(text -> (text.getStyle() & (SWT.SEARCH | SWT.READ_ONLY)) == 0).findFirst()
                .orElseThrow();
        field.setText("wide");
        field.notifyListeners(SWT.DefaultSelection, new Event());
        assertNull(runway.getWidthM(), "what makes no sense is refused");
        field.setText("45");
        field.notifyListeners(SWT.DefaultSelection, new Event());
        assertEquals(45, runway.getWidthM());
        awaitCheck();
        assertFalse(rows().stream().anyMatch(outcome -> outcome.missing().stream()
                .anyMatch(missing -> missing.key().equals("missing.runway-width"))));
    }

    /** Each line names an input that rules can miss and attributes that the model has. */
    @Test
    void theFieldsOfMissingInputsAreThere() throws IOException {
        Set<String> attributes = new HashSet<>();
        SlopewrightPackage.eINSTANCE.eAllContents().forEachRemaining(found -> {
            if (found instanceof EAttribute attribute) {
                attributes.add(attribute.getName());
            }
        });
        Set<String> inputs = MessageRenderer.of(Locale.ENGLISH).keys();
        Path table = Path.of(System.getProperty("slopewright.root"),
                "bundles/ui/slopewright.ui.review/src/slopewright/ui/review/internal/missing-fields.tsv");
        List<String[]> rows = Files.readAllLines(table).stream().filter(line -> !line.startsWith("#")).map(line -> line.split("\t"))
                .toList();
        assertTrue(rows.size() > 50);
        for (String[] row : rows) {
            assertTrue(inputs.contains(row[0]), row[0]);
            List.of(row[1].split(" ")).forEach(attribute -> assertTrue(attributes.contains(attribute), row[0] + " " + attribute));
        }
    }

    /** Where there is room for all, nothing is cut; else no row needs a scroll bar. */
    @Test
    void columnsAreAsWideAsWhatTheyHold() {
        run("Checklist by verdict");
        for (int width : new int[] {620, 1500}) {
            root().setSize(width, 300);
            root().layout(true, true);
            Patience.pause(50);
            Tree tree = view.tree();
            GC gc = new GC(tree);
            int widths = 0;
            int needs = 0;
            boolean cut = false;
            for (int i = 0; i < tree.getColumnCount(); i++) {
                int column = i;
                int need = Stream.of(tree.getItems()).filter(TreeItem::getExpanded).flatMap(heading -> Stream.of(heading.getItems()))
                        .mapToInt(item -> gc.textExtent(item.getText(column)).x).max().orElse(0);
                widths += tree.getColumn(i).getWidth();
                needs += tree.getColumn(i).getWidth() == 0 ? 0 : need;
                cut |= tree.getColumn(i).getWidth() > 0 && tree.getColumn(i).getWidth() < need;
            }
            gc.dispose();
            assertTrue(widths <= tree.getClientArea().width, widths + " in " + tree.getClientArea().width + ": "
                    + Stream.of(tree.getColumns()).map(column -> column.getText() + " " + column.getWidth()).toList());
            assertTrue(!cut || needs > tree.getClientArea().width - 200, "nothing is cut while there is room for " + needs);
        }
        run("Group by element");
    }

    private void assertSelected(Outcome chosen) {
        assertEquals(1, view.tree().getSelectionCount());
        List<Outcome> same = rows().stream().filter(outcome -> isSame(outcome, chosen)).toList();
        assertTrue(view.copied().contains(chosen.rule()), view.copied());
        assertTrue(same.stream().anyMatch(outcome -> view.copied().contains(outcome.elementPath().english())), view.copied());
        assertTrue(view.explanation().startsWith(chosen.elementPath() + ": "), view.explanation());
    }

    private void sort(int column) {
        view.tree().getColumn(column).notifyListeners(SWT.Selection, new Event());
    }

    private void search(String words) {
        Widgets.all(root(), Text.class).filter(text -> (text.getStyle() & SWT.SEARCH) != 0).findFirst().orElseThrow().setText(words);
    }
}
