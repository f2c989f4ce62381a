package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.views.properties.PropertySheet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.checks.Outcome;
import slopewright.drawing.scene.Mark;
import slopewright.edit.MoveUnits;
import slopewright.edit.RecordedEdit;
import slopewright.edit.RemoveElement;
import slopewright.edit.SetAttribute;
import slopewright.model.AeroplaneGroup;
import slopewright.model.ApproachAid;
import slopewright.model.Identified;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Ids;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.plan.PlanEditor;
import slopewright.ui.profile.PilotView;
import slopewright.ui.profile.SectionView;
import slopewright.ui.properties.PropertiesView;
import slopewright.ui.review.ComparisonView;
import slopewright.ui.review.FindingsView;
import slopewright.ui.review.MeasuredView;

/**
 * No pane goes on saying what held before: after each kind of change every pane says what it says in a window that was just opened on the
 * same file; where a check was ended or cannot be made, nothing says "met" without a word about it.
 */
class StaleTruthTest {
    private static final List<String> VIEWS = List.of(PropertiesView.ID, FindingsView.ID, SectionView.ID, PilotView.ID, MeasuredView.ID);
    /** What stands at the axes follows what part is looked at, which stays as it was chosen. */
    private static final Pattern TICK = Pattern.compile("-?[\\d., ]+ m");

    @TempDir
    private Path folder;
    private Path file;
    private PlanEditor editor;
    private PlanDriver plan;
    private ProjectDocument document;

    @AfterEach
    void close() {
        page().closeAllEditors(false);
    }

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    private void open() throws Exception {
        file = file == null ? DemoProjects.copy("harrow-vale", folder) : file;
        VIEWS.forEach(id -> Optional.ofNullable(page().findView(id)).ifPresent(page()::hideView));
        editor = (PlanEditor) page().openEditor(new ProjectInput(file), PlanEditor.ID);
        plan = new PlanDriver(editor);
        document = Adapters.adapt(editor, ProjectDocument.class);
        settle();
        for (String view : VIEWS) {
            page().showView(view);
            Patience.pause(50);
        }
        editor.reveal("approach-aid-1");
    }

    private void settle() {
        await("it is checked", () -> document.lastResult().isPresent() && !document.isChecking());
    }

    private static void await(String what, BooleanSupplier condition) {
        Patience.await(what, condition);
        Patience.pause(100);
    }

    private <T extends Identified> T element(String id, Class<T> type) {
        return type.cast(Ids.find(document.project(), id).orElseThrow());
    }

    private void perform(RecordedEdit edit) {
        document.history().perform(edit);
    }

    private FindingsView findings() throws Exception {
        FindingsView view = (FindingsView) page().showView(FindingsView.ID);
        Patience.pause(50);
        return view;
    }

    /** What the panes say, each by its name. */
    private Map<String, List<String>> said() throws Exception {
        Map<String, List<String>> said = new LinkedHashMap<>();
        FindingsView findings = findings();
        said.put("findings", List.of(findings.summary(), findings.copied(), findings.explanation()));
        for (String id : List.of("approach-aid-1", "obstacle-2", "runway-end-1", "light-unit-2")) {
            editor.reveal(id);
            page().showView(PropertiesView.ID);
            Patience.pause(50);
            said.put("properties of " + id, properties());
        }
        editor.reveal("approach-aid-1");
        SectionView section = (SectionView) page().showView(SectionView.ID);
        paint(section.canvas().control());
        await("the section is there", () -> section.canvas().section().isPresent() || section.explanation().isPresent());
        said.put("section", Stream.concat(Stream.of(section.readout().text(), section.explanation().orElse("")),
                labels(section.canvas().marks()).filter(label -> !TICK.matcher(label).matches())).toList());
        PilotView pilot = (PilotView) page().showView(PilotView.ID);
        paint(pilot.page().canvas().control());
        await("something is seen, or said why not", () -> pilot.explanation().isPresent() || !pilot.words().get(0).isBlank());
        said.put("pilot's view", pilot.explanation().map(List::of).orElseGet(() -> List.copyOf(pilot.words())));
        MeasuredView measured = (MeasuredView) page().showView(MeasuredView.ID);
        Patience.pause(50);
        said.put("measured", Stream.concat(Stream.of(measured.summary()), cells(measured.viewer().getTable())).toList());
        List<String> drawn = new ArrayList<>();
        Ids.elements(document.project()).forEach(each -> plan.part(each).ifPresent(part -> {
            drawn.add(part.description());
            labels(part.markFigure().marks()).forEach(drawn::add);
        }));
        said.put("plan", drawn);
        return said;
    }

    /** A view that comes to the front reads what has changed before it is painted; on a busy machine that is not at once. */
    private static void paint(Control control) {
        Patience.pause(50);
        control.redraw();
        control.update();
    }

    private static Stream<String> labels(List<Mark> marks) {
        return marks.stream().filter(Mark.Label.class::isInstance).map(mark -> ((Mark.Label) mark).text());
    }

    private static Stream<String> cells(Table table) {
        return Stream.of(table.getItems()).map(item -> row(table, item));
    }

    private static String row(Table table, TableItem item) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < table.getColumnCount(); i++) {
            cells.add(item.getText(i));
        }
        return String.join(" | ", cells);
    }

    private List<String> properties() {
        PropertySheet sheet = (PropertySheet) page().findView(PropertiesView.ID);
        Tree tree = Widgets.all((Composite) sheet.getCurrentPage().getControl(), Tree.class).findFirst().orElseThrow();
        return Stream.of(tree.getItems()).flatMap(group -> Stream.of(group.getItems()))
                .map(item -> item.getText(0) + " = " + item.getText(1)).toList();
    }

    /** Saves, opens the file in a window without anything of before, selects the same finding, and compares. */
    private void assertAsFresh(String after) throws Exception {
        settle();
        Optional<Outcome> chosen = findings().selected();
        editor.doSave(new NullProgressMonitor());
        await("it is saved", () -> !document.isDirty());
        Map<String, List<String>> here = said();
        page().closeAllEditors(false);
        open();
        FindingsView fresh = findings();
        chosen.ifPresent(wanted -> fresh.rows().stream().filter(row -> row.rule().equals(wanted.rule())
                && row.elementId().equals(wanted.elementId())).findFirst().ifPresent(fresh::select));
        Patience.pause(100);
        Map<String, List<String>> there = said();
        there.forEach((pane, texts) -> assertEquals(String.join("\n", texts), String.join("\n", here.get(pane)), pane + " after " + after));
    }

    @Test
    void everyPaneSaysWhatAFreshWindowSays() throws Exception {
        open();
        perform(SetAttribute.of(element("obstacle-2", Obstacle.class), Literals.OBSTACLE__TOP_ELEVATION_M, 190.0));
        settle();
        FindingsView findings = findings();
        findings.rows().stream().filter(row -> "obstacle-2".equals(row.elementId())).findFirst().or(() -> findings.rows().stream()
                .findFirst()).ifPresent(findings::select);
        assertAsFresh("an obstacle was raised");
        perform(SetAttribute.of(element("obstacle-2", Obstacle.class), Literals.OBSTACLE__TOP_ELEVATION_M, 92.0));
        settle();
        assertAsFresh("it was lowered while its finding was selected");
        perform(MoveUnits.by(element("approach-aid-1", ApproachAid.class).getUnits(), 25, 0));
        perform(SetAttribute.of(element("light-unit-2", Identified.class), Literals.LIGHT_UNIT__SETTING_DEG, 3.4));
        document.history().undo();
        document.history().undo();
        document.history().redo();
        assertAsFresh("units were moved, with steps back and forth");
        perform(SetAttribute.of(document.project(), Literals.PROJECT__RULE_SET_KEY, "faa:2010"));
        settle();
        document.history().undo();
        settle();
        perform(SetAttribute.of(document.project(), Literals.PROJECT__RULE_SET_KEY, "icao:5th"));
        assertAsFresh("another rule set");
        perform(SetAttribute.of(element("runway-end-1", RunwayEnd.class), Literals.RUNWAY_END__THRESHOLD_ELEVATION_M, 88.0));
        perform(SetAttribute.of(element("aeroplane-group-1", AeroplaneGroup.class), Literals.AEROPLANE_GROUP__EYE_TO_WHEEL_M, 12.0));
        assertAsFresh("threshold and aeroplane");
        Project other = ProjectFile.load(file);
        ((Obstacle) Ids.find(other, "obstacle-2").orElseThrow()).setTopElevationM(170.0);
        ProjectFile.save(other, file);
        document.takeOver("Take over");
        assertAsFresh("the file of another program was taken over");
        perform(RemoveElement.of(element("obstacle-2", Obstacle.class)));
        document.history().undo();
        settle();
        perform(SetAttribute.of(element("light-unit-2", Identified.class), Literals.LIGHT_UNIT__SETTING_DEG, null));
        assertAsFresh("a setting was taken away");
    }

    @Test
    void whereNothingCanBeCheckedNothingIsMet() throws Exception {
        open();
        assertTrue(properties().stream().anyMatch(text -> text.endsWith("= met")), properties().toString());
        perform(SetAttribute.of(document.project(), Literals.PROJECT__RULE_SET_KEY, "nobody:1st"));
        await("it is said", () -> document.checkProblem().isPresent() && !document.isChecking());
        assertEquals(List.of(), findings().rows());
        assertTrue(findings().summary().startsWith("The project cannot be checked: "), findings().summary());
        page().showView(PropertiesView.ID);
        assertTrue(properties().stream().noneMatch(text -> text.contains("= met")), properties().toString());
        assertTrue(document.currentResult().isEmpty(), "and nobody signs it off");
        document.history().undo();
        settle();
        assertFalse(findings().summary().contains("cannot"), findings().summary());
        assertTrue(properties().stream().anyMatch(text -> text.endsWith("= met")), properties().toString());
    }

    @Test
    void whatACheckThatWasEndedLeavesIsCalledOlder() throws Exception {
        open();
        perform(SetAttribute.of(element("runway-end-1", RunwayEnd.class), Literals.RUNWAY_END__THRESHOLD_ELEVATION_M, 96.0));
        document.stopChecking();
        Patience.pause(100);
        assertTrue(findings().summary().contains("the check was ended: what is listed is older than the project"), findings().summary());
        page().showView(PropertiesView.ID);
        List<String> met = properties().stream().filter(text -> text.contains("= met")).toList();
        assertFalse(met.isEmpty());
        assertTrue(met.stream().allMatch(text -> text.endsWith(" (before the last change)")), met.toString());
        assertTrue(document.currentResult().isEmpty(), "and nobody signs it off");
        document.history().undo();
        settle();
        assertTrue(properties().stream().noneMatch(text -> text.contains("before the last change")), properties().toString());
    }

    @Test
    void whatIsEditedDuringAComparisonIsNotCalledCompared() throws Exception {
        open();
        ComparisonView view = (ComparisonView) page().showView(ComparisonView.ID);
        view.compare();
        perform(SetAttribute.of(element("runway-end-1", RunwayEnd.class), Literals.RUNWAY_END__THRESHOLD_ELEVATION_M, 96.0));
        await("it ends", () -> view.viewer().getTable().getItemCount() > 0);
        assertEquals("The project has changed since; compare again.", view.state());
        IViewPart part = view;
        page().hideView(part);
    }
}
