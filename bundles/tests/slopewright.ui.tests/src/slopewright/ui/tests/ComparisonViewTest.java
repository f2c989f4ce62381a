package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
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
import slopewright.checks.compare.FamilyVerdicts;
import slopewright.edit.SetAttribute;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.comparison.FamilyComparison;
import slopewright.model.ApproachHost;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.model.util.Projects;
import slopewright.rcp.internal.ProjectOpener;
import slopewright.siting.Families;
import slopewright.siting.Side;
import slopewright.standards.RuleSets;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.preferences.Preferences;
import slopewright.ui.review.ComparisonView;

/** Families side by side, rule sets side by side, sorting, the chart, using one of them, giving up. */
class ComparisonViewTest {

    @TempDir
    private Path folder;
    private IWorkbenchPage page;
    private IEditorPart editor;
    private ComparisonView view;
    private ProjectDocument document;

    @BeforeEach
    void open() throws Exception {
        page = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
        view = (ComparisonView) page.showView(ComparisonView.ID);
        editor = page.openEditor(new ProjectInput(DemoProjects.copy("harrow-vale", folder)), ProjectOpener.EDITOR);
        document = Adapters.adapt(editor, ProjectDocument.class);
        choose(0, 0);
    }

    @AfterEach
    void close() {
        page.closeEditor(editor, false);
        page.hideView(view);
    }

    private Table table() {
        return view.viewer().getTable();
    }

    private Composite root() {
        return table().getParent().getParent();
    }

    private Combo combo(int index) {
        return Widgets.all(root(), Combo.class).toList().get(index);
    }

    private void choose(int combo, int item) {
        combo(combo).select(item);
        combo(combo).notifyListeners(SWT.Selection, new Event());
    }

    private Button button(int index) {
        return Widgets.all(root(), Button.class).toList().get(index);
    }

    private void compare() {
        button(0).notifyListeners(SWT.Selection, new Event());
        Patience.await("the comparison ends", () -> table().getItemCount() > 0);
    }

    private int index(String title) {
        return Stream.of(table().getColumns()).map(column -> column.getText()).toList().indexOf(title);
    }

    private List<String> column(String title) {
        return Stream.of(table().getItems()).map(item -> item.getText(index(title))).toList();
    }

    /** Titles are whole, and the button says what it does after it was used, too. */
    @Test
    void nothingOfTitlesAndButtonsIsCut() {
        choose(1, 0);
        compare();
        GC gc = new GC(table());
        try {
            for (TableColumn column : table().getColumns()) {
                assertTrue(column.getWidth() > gc.textExtent(column.getText()).x, column.getText() + " in " + column.getWidth());
            }
        } finally {
            gc.dispose();
        }
        Button compare = button(0);
        Patience.await("the button has its words back", () -> compare.getText().contains("Compare"));
        Patience.pause(300);
        ImageData picture = Contrast.painted(compare);
        Set<Integer> colours = new HashSet<>();
        for (int x = 10; x < picture.width - 10; x++) {
            for (int y = 8; y < picture.height - 8; y++) {
                colours.add(picture.getPixel(x, y));
            }
        }
        assertTrue(colours.size() > 4, colours.size() + " colours: the button is bare");
    }

    /**
     * What breaks a rule has no score, whatever it is otherwise; the scores are between 0 and 100, and the reasons stand beside the counts.
     * How many rules were applied is what the outcomes of the proposal themselves name.
     */
    @Test
    void whatBreaksARuleHasNoScoreAndTheRulesAreCounted() throws Exception {
        Patience.await("the project is checked", () -> document.lastResult().isPresent() && !document.isChecking());
        ProjectEvaluation snapshot = document.snapshot();
        ApproachHost host = Projects.hosts(snapshot.project()).get(0);
        Map<String, List<String>> applied = Families.all().stream().filter(family -> family.atRunways())
                .map(family -> FamilyVerdicts.of(snapshot, FamilyComparison.of(snapshot, host, family, Optional.of(Side.LEFT))))
                .filter(each -> !each.outcomes().isEmpty())
                .collect(Collectors.toMap(each -> each.candidate().family().name(), each -> each.outcomes().stream()
                        .filter(outcome -> outcome.verdict() != Verdict.NOT_APPLICABLE).map(Outcome::rule).distinct().sorted().toList()));
        choose(1, 0);
        choose(2, 0);
        compare();
        List<String> notMet = column("Not met");
        List<String> scores = column("Score");
        List<String> rules = column("Rules");
        List<String> why = column("What speaks against it");
        assertTrue(index("What speaks against it") < index("Distance"), "in sight");
        assertTrue(scores.stream().anyMatch(score -> !score.isEmpty()) && notMet.stream().anyMatch(count -> !count.equals("0")));
        for (int i = 0; i < notMet.size(); i++) {
            assertEquals(notMet.get(i).equals("0"), !scores.get(i).isEmpty(), column("Family or rule set").get(i));
            assertTrue(scores.get(i).isEmpty() || Integer.parseInt(scores.get(i)) <= 100);
            assertEquals(notMet.get(i).equals("0"), !why.get(i).contains("Not met: ") && !column("Distance").get(i).isEmpty());
            assertEquals(column("Verdict").get(i).equals("fits"), why.get(i).isEmpty(), "what is to be cleared up is said as well");
        }
        List<String> order = List.of("fits", "to clear up", "does not fit");
        List<Integer> verdicts = column("Verdict").stream().map(order::indexOf).toList();
        assertEquals(verdicts.stream().sorted().toList(), verdicts, "in the order of the verdicts, whatever the scores");
        List<String> names = column("Family or rule set");
        for (int i = 0; i < names.size(); i++) {
            if (!rules.get(i).isEmpty()) {
                assertEquals(applied.get(names.get(i)).size(), Integer.valueOf(rules.get(i)), names.get(i) + applied.get(names.get(i)));
            }
        }
        assertTrue(view.state().contains("fewer are no merit"), view.state());
        Path file = folder.resolve("compared.csv");
        assertTrue(view.export(file).startsWith(names.size() + " rows"));
        String written = Files.readString(file);
        assertTrue(names.stream().allMatch(written::contains) && written.contains("Score (Rules met 1, "), written);
    }

    /** Whoever works by keys goes on where the button was pressed. */
    @Test
    void theKeysStayAtTheButton() {
        page.activate(view);
        Patience.pause(300);
        Patience.await("the button has the keys", () -> button(0).setFocus() && button(0).isFocusControl());
        compare();
        Patience.pause(500);
        assertTrue(button(0).isFocusControl(), String.valueOf(page.getWorkbenchWindow().getShell().getDisplay().getFocusControl()));
    }

    /** What was weighed last is weighed in the next comparison; what nobody can have meant is no weight. */
    @Test
    void weightsAreKept() throws Exception {
        try {
            for (String kept : List.of("rules=5,load=0", "moon=1")) {
                Preferences.store().setValue(Preferences.COMPARISON_WEIGHTS, kept);
                page.hideView(view);
                view = (ComparisonView) page.showView(ComparisonView.ID);
                choose(1, 0);
                compare();
                Path file = folder.resolve(kept + ".csv");
                view.export(file);
                String wanted = kept.startsWith("moon") ? "Score (Rules met 1, " : "Score (Rules met 5, ";
                assertTrue(Files.readString(file).contains(wanted), kept);
            }
        } finally {
            Preferences.store().setToDefault(Preferences.COMPARISON_WEIGHTS);
        }
    }

    @Test
    void everyEndIsCompared() {
        choose(1, combo(1).getItemCount() - 1);
        compare();
        assertEquals(Projects.hosts(document.project()).size(), column("Where").stream().distinct().count());
    }

    @Test
    void everySideIsCompared() {
        choose(2, combo(2).getItemCount() - 1);
        compare();
        assertEquals(3, column("Where").stream().distinct().count(), column("Where").toString());
    }

    @Test
    void everyFamilyIsLaidOutAndDrawn() {
        compare();
        List<String> names = column("Family or rule set");
        assertTrue(names.size() >= 5 && names.stream().anyMatch(name -> name.contains("PAPI")), names.toString());
        assertEquals(names, view.chartLines().stream().map(line -> line.substring(0, line.indexOf(": "))).toList());
        assertTrue(view.chartLines().stream().anyMatch(line -> line.endsWith(" kept") || line.endsWith(" not kept")),
                view.chartLines().toString());
        assertFalse(document.isDirty(), "a comparison changes nothing");
    }

    @Test
    void everyColumnSortsBothWays() {
        compare();
        int index = Stream.of(table().getColumns()).map(column -> column.getText()).toList().indexOf("Distance");
        table().getColumn(index).notifyListeners(SWT.Selection, new Event());
        List<Double> up = distances();
        assertEquals(up.stream().sorted().toList(), up);
        table().getColumn(index).notifyListeners(SWT.Selection, new Event());
        assertEquals(up.stream().sorted(Comparator.reverseOrder()).toList(), distances());
        assertEquals(column("Family or rule set").get(0), view.chartLines().get(0).substring(0, view.chartLines().get(0).indexOf(": ")),
                "the chart follows the table");
    }

    private List<Double> distances() {
        return column("Distance").stream().filter(text -> !text.isEmpty()).map(text -> Double.valueOf(text.replace(" m", ""))).toList();
    }

    @Test
    void theChosenFamilyIsPlacedAndTakenBack() {
        compare();
        ApproachHost host = Projects.hosts(document.project()).get(Math.max(0, combo(1).getSelectionIndex()));
        List<String> before = host.getAids().stream().map(aid -> aid.getFamilyKey()).toList();
        TableItem row = Stream.of(table().getItems()).filter(item -> item.getText(0).contains("APAPI")).findFirst().orElseThrow();
        table().setSelection(row);
        table().notifyListeners(SWT.Selection, new Event());
        assertTrue(button(1).isEnabled());
        button(1).notifyListeners(SWT.Selection, new Event());
        assertEquals(List.of("two-unit-row"), host.getAids().stream().map(aid -> aid.getFamilyKey()).toList());
        document.history().undo();
        assertEquals(before, host.getAids().stream().map(aid -> aid.getFamilyKey()).toList());
        assertFalse(document.isDirty());
    }

    @Test
    void anAidIsJudgedByEveryRuleSet() {
        choose(0, 1);
        assertEquals(Projects.aids(document.project()).size(), combo(1).getItemCount());
        compare();
        assertEquals(RuleSets.all().size(), table().getItemCount());
        List<String> met = new ArrayList<>(column("Not met"));
        assertTrue(met.stream().anyMatch(text -> !text.isEmpty()), met.toString());
        var aid = Projects.aids(document.project()).get(0);
        Optional<String> own = Optional.ofNullable(aid.getRuleSetKey());
        TableItem row = Stream.of(table().getItems()).filter(item -> !item.getText(index("Distance")).isEmpty())
                .reduce((a, b) -> b).orElseThrow();
        table().setSelection(row);
        table().notifyListeners(SWT.Selection, new Event());
        button(1).notifyListeners(SWT.Selection, new Event());
        assertTrue(RuleSets.find(aid.getRuleSetKey()).isPresent(), view.state());
        document.history().undo();
        assertEquals(own, Optional.ofNullable(aid.getRuleSetKey()));
    }

    /** The thresholds of runway 09/27 lie on 92 degrees: at 122 degrees nothing fits there, and it is said once below them. */
    @Test
    void whatAPlaceHasAgainstItIsSaidOnce() throws Exception {
        RunwayEnd end = (RunwayEnd) Projects.hosts(document.project()).get(0);
        document.history().perform(SetAttribute.of(end, Literals.RUNWAY_END__TRUE_BEARING_DEG, 122.0));
        for (int mode : new int[] {0, 1}) {
            choose(0, mode);
            compare();
            List<String> verdicts = column("Verdict");
            List<String> why = column("What speaks against it");
            for (int i = 0; i < verdicts.size(); i++) {
                boolean laid = !column("Distance").get(i).isEmpty();
                assertFalse(verdicts.get(i).equals("fits"), column("Family or rule set").get(i) + ", mode " + mode + ": " + why.get(i));
                assertTrue(!laid || !why.get(i).contains("122.00"), verdicts.get(i) + " " + why.get(i));
            }
            assertEquals(2, view.reasons().split("bearing is entered as 122\\.00", -1).length, view.reasons());
            assertTrue(Widgets.all(root(), Text.class).anyMatch(text -> text.isVisible() && text.getText().contains("122.00")));
            Path file = folder.resolve("against" + mode + ".csv");
            view.export(file);
            assertTrue(Files.readString(file).contains("not met (DATA-15"), "the rows of a file name the rule");
        }
    }

    @Test
    void aComparisonCanBeGivenUp() {
        button(0).notifyListeners(SWT.Selection, new Event());
        assertEquals("&Cancel", button(0).getText());
        button(0).notifyListeners(SWT.Selection, new Event());
        assertEquals("Cancelled.", view.state());
        assertEquals("&Compare", button(0).getText());
        Patience.pause(200);
        assertEquals(0, table().getItemCount(), "nothing of it arrives any more");
    }
}
