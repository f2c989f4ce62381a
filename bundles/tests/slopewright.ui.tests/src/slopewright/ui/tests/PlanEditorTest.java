package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.edit.SetAttribute;
import slopewright.evaluation.AidEvaluation;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachDirection;
import slopewright.model.LightUnit;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightPackage;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.testkit.DemoProjects;
import slopewright.ui.diagram.WorldBox;
import slopewright.ui.document.ElementRevealer;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.plan.PlanEditor;
import slopewright.ui.preferences.Preferences;

/** The plan editor on the demonstration project, worked by mouse and keyboard events. */
class PlanEditorTest {

    private static final String ROW_09 = "approach-aid-1";
    private static final String END_21 = "runway-end-4";
    private static final String MAST = "obstacle-2";

    @TempDir
    private Path folder;
    private Path file;
    private PlanEditor editor;
    private PlanDriver plan;

    @BeforeEach
    void open() throws Exception {
        file = DemoProjects.copy("harrow-vale", folder);
        editor = (PlanEditor) page().openEditor(new ProjectInput(file), PlanEditor.ID);
        plan = new PlanDriver(editor);
        Patience.await("the plan has a size", () -> editor.view().widthPx() > 0);
    }

    @AfterEach
    void close() {
        page().closeEditor(editor, false);
    }

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    private ApproachAid row() {
        return plan.element(ROW_09, ApproachAid.class);
    }

    private List<Double> alongs() {
        return row().getUnits().stream().map(LightUnit::getAlongM).toList();
    }

    private List<Double> rights() {
        return row().getUnits().stream().map(LightUnit::getRightM).toList();
    }

    private static List<Double> plus(List<Double> values, double by) {
        return values.stream().map(value -> Math.round((value + by) * 1000) / 1000.0).toList();
    }

    @Test
    void everythingThatHasAPlaceHasAPartAndCanBeSeen() {
        Project project = plan.document().project();
        Projects.aids(project).forEach(aid -> {
            assertTrue(plan.part(aid).isPresent(), aid.getId());
            aid.getUnits().forEach(unit -> assertTrue(plan.part(unit).orElseThrow().anchor().isPresent(), unit.getId()));
        });
        project.getAerodrome().getObstacles().forEach(obstacle -> assertTrue(plan.part(obstacle).isPresent(), obstacle.getId()));
        WorldBox seen = editor.view().visible();
        Projects.hosts(project).stream().filter(RunwayEnd.class::isInstance).map(end -> plan.part(end).orElseThrow().anchor().orElseThrow())
                .forEach(place -> assertTrue(seen.contains(place.x(), place.y()), place.toString()));
    }

    /** Labels give way to each other, but those of the runway ends are never left out while there is room. */
    @Test
    void theEndsOfTheRunwaysAreNamed() {
        for (String id : List.of("runway-end-1", "runway-end-2", "runway-end-3", END_21)) {
            RunwayEnd end = plan.element(id, RunwayEnd.class);
            assertEquals(List.of(end.getDesignator()), plan.labels(end));
        }
        assertTrue(plan.labels(row()).get(0).startsWith("PAPI 09"), plan.labels(row()).toString());
        plan.lookAt(row(), 4);
        assertEquals(List.of("PAPI 09  3°00'  330.46 m", "D  3°35'", "C  3°15'", "B  2°45'", "A  2°25'"), plan.labels(row()));
    }

    /** The thresholds of 09 and 27 lie 2100 m apart: 2400 m of runway less 300 m of displaced threshold, as the project says. */
    @Test
    void thePlanIsTrueToScale() {
        Point one = plan.at(plan.element("runway-end-1", RunwayEnd.class));
        Point other = plan.at(plan.element("runway-end-2", RunwayEnd.class));
        double metres = Math.hypot(other.x - one.x, other.y - one.y) / editor.view().scale();
        assertEquals(2100, metres, 3 / editor.view().scale());
        assertTrue(other.x > one.x && Math.abs(other.y - one.y) < other.x - one.x, "09 lies in the west, east is to the right");
    }

    @Test
    void draggingAUnitMovesItsRowAlongTheRunwayAsOneEdit() {
        List<Double> before = alongs();
        List<Double> beside = rights();
        double height = row().getUnits().get(0).getLensElevationM();
        plan.lookAt(row(), 4);
        Point from = plan.at(row().getUnits().get(1));
        Point to = new Point(from.x + 120, from.y - 30);
        plan.press(from);
        plan.drag(from, to, 0);
        assertTrue(plan.readoutText().contains("MEHT"), plan.readoutText());
        assertTrue(plan.readoutText().contains("Wheel clearance"), plan.readoutText());
        assertTrue(plan.readoutText().contains("from the threshold"), plan.readoutText());
        assertEquals(before, alongs(), "nothing moves before the drop");
        assertFalse(editor.isDirty());
        plan.release(to, 0);
        assertEquals("", plan.readoutText());
        double moved = alongs().get(0) - before.get(0);
        assertEquals(30, moved, 1.5, "120 pixels are 30 m along a runway that points nearly east");
        assertEquals(plus(before, moved), alongs());
        assertEquals(beside, rights(), "without the key a row stays at its offset");
        assertTrue(row().getUnits().get(0).getLensElevationM() > height, "the lenses follow the rising ground");
        assertTrue(editor.isDirty());
        assertEquals(Optional.of(row()), plan.selected());
        editor.viewer().getEditDomain().getCommandStack().undo();
        assertEquals(before, alongs());
        assertFalse(editor.isDirty());
        editor.viewer().getEditDomain().getCommandStack().redo();
        assertEquals(plus(before, moved), alongs());
    }

    /** What is shown before the drop is what the model gives after it. */
    @Test
    void theLiveEyeHeightIsThatOfTheDroppedLayout() {
        plan.lookAt(row(), 4);
        Point from = plan.at(row().getUnits().get(0));
        Point to = new Point(from.x + 200, from.y);
        plan.press(from);
        plan.drag(from, to, 0);
        String shown = plan.readoutText();
        plan.release(to, 0);
        double eyeHeight = AidEvaluation.of(row()).siting().orThrow().mehtM();
        assertTrue(shown.contains("MEHT " + Math.round(eyeHeight * 100) / 100.0), shown + " / " + eyeHeight);
    }

    /** What is typed in the preferences as the step in metres is the step of a drag, here past every place to which a row snaps. */
    @Test
    void aRowMovesByTheStepThatIsTyped() {
        Preferences.store().setValue(Preferences.SNAP_STEP_M, "2.5");
        try {
            double before = alongs().get(0);
            plan.lookAt(row(), 4);
            Point from = plan.at(row().getUnits().get(1));
            plan.dragAndDrop(from, new Point(from.x + 125, from.y), SWT.CTRL);
            double moved = alongs().get(0) - before;
            assertTrue(moved > 20 && Math.abs(moved / 2.5 - Math.rint(moved / 2.5)) < 1e-6, "moved by " + moved);
        } finally {
            Preferences.store().setToDefault(Preferences.SNAP_STEP_M);
        }
    }

    @Test
    void withShiftARowMovesAcrossToo() {
        List<Double> beside = rights();
        plan.lookAt(row(), 4);
        Point from = plan.at(row().getUnits().get(0));
        plan.dragAndDrop(from, new Point(from.x, from.y - 40), SWT.SHIFT);
        assertEquals(-10, rights().get(0) - beside.get(0), 1, "40 pixels up are 10 m to the left of a landing toward the east");
    }

    @Test
    void aRowSnapsToTheDistanceThatTheRulesGive() {
        plan.lookAt(row(), 4);
        Point from = plan.at(row().getUnits().get(0));
        plan.dragAndDrop(from, new Point(from.x + 100, from.y), 0);
        plan.lookAt(row(), 4);
        from = plan.at(row().getUnits().get(0));
        Point to = new Point(from.x - 98, from.y);
        plan.press(from);
        plan.drag(from, to, 0);
        assertTrue(plan.readoutText().contains("at the solved distance"), plan.readoutText());
        plan.release(to, 0);
        assertEquals(330.462, alongs().get(0), 0.005, "where the demonstration project was solved");
    }

    @Test
    void escapeEndsADragWithoutAnEdit() {
        List<Double> before = alongs();
        plan.lookAt(row(), 4);
        Point from = plan.at(row().getUnits().get(0));
        Point to = new Point(from.x + 100, from.y);
        plan.press(from);
        plan.drag(from, to, 0);
        plan.key(SWT.ESC, SWT.ESC, 0);
        assertEquals("", plan.readoutText());
        plan.release(to, 0);
        assertEquals(before, alongs());
        assertFalse(editor.isDirty());
    }

    @Test
    void theSecondClickSelectsTheUnitItself() {
        plan.lookAt(row(), 6);
        LightUnit unit = row().getUnits().get(2);
        plan.click(plan.at(unit));
        assertEquals(Optional.of(row()), plan.selected());
        Patience.pause(600);
        plan.click(plan.at(unit));
        assertEquals(Optional.of(unit), plan.selected());
        List<Double> before = alongs();
        Point from = plan.at(unit);
        plan.dragAndDrop(from, new Point(from.x + 60, from.y), 0);
        assertEquals(10, unit.getAlongM() - before.get(2), 0.6);
        assertEquals(before.get(1), alongs().get(1), "the other units stay");
    }

    @Test
    void arrowsNudgeByAMetreAndWithShiftByATenth() {
        List<Double> before = alongs();
        List<Double> beside = rights();
        plan.lookAt(row(), 4);
        plan.click(plan.at(row().getUnits().get(0)));
        plan.key(SWT.ARROW_RIGHT, (char) 0, 0);
        assertEquals(plus(before, 1), alongs());
        plan.key(SWT.ARROW_LEFT, (char) 0, SWT.SHIFT);
        assertEquals(plus(before, 0.9), alongs());
        plan.key(SWT.ARROW_UP, (char) 0, 0);
        assertEquals(plus(beside, -1), rights());
        plan.key('z', (char) 26, SWT.CTRL);
        plan.key('z', (char) 26, SWT.CTRL);
        plan.key('z', (char) 26, SWT.CTRL);
        assertEquals(before, alongs());
        assertFalse(editor.isDirty());
        plan.key('y', (char) 25, SWT.CTRL);
        assertEquals(plus(before, 1), alongs());
    }

    @Test
    void deleteRemovesAnAidWithAllItsFiguresAndUndoBringsItBack() {
        RunwayEnd end = (RunwayEnd) row().eContainer();
        ApproachAid aid = row();
        plan.lookAt(aid, 4);
        plan.click(plan.at(aid.getUnits().get(0)));
        plan.key(SWT.ESC, SWT.ESC, 0);
        int figures = plan.figures();
        plan.click(plan.at(aid.getUnits().get(0)));
        plan.key(SWT.DEL, SWT.DEL, 0);
        assertTrue(end.getAids().isEmpty());
        assertEquals(figures - 4 - aid.getUnits().size(), plan.figures(), "nothing of it is drawn any more");
        editor.viewer().getEditDomain().getCommandStack().undo();
        assertEquals(List.of(aid), end.getAids());
        assertEquals(figures, plan.figures());
    }

    @Test
    void thePaletteOffersTheFamiliesOfTheRuleSet() {
        assertTrue(plan.tools().containsAll(List.of("Select", "Pan", "PAPI", "APAPI", "Point obstacle")), plan.tools().toString());
        List<String> icao = plan.tools();
        Project project = plan.document().project();
        plan.document().history().perform(SetAttribute.of(project, SlopewrightPackage.Literals.PROJECT__RULE_SET_KEY, "faa"));
        assertFalse(plan.tools().equals(icao), "another rule set covers other families");
        editor.viewer().getEditDomain().getCommandStack().undo();
        assertEquals(icao, plan.tools());
    }

    @Test
    void oneClickPlacesASolvedRowOnTheSideOfTheClick() {
        RunwayEnd end = plan.element(END_21, RunwayEnd.class);
        plan.lookAt(end, 1);
        Point threshold = plan.at(end);
        plan.chooseTool("APAPI");
        Point right = new Point(threshold.x - 110, threshold.y);
        plan.move(right);
        assertTrue(plan.readoutText().startsWith("runway 21, right"), plan.readoutText());
        Point left = new Point(threshold.x + 60, threshold.y + 60);
        plan.move(left);
        assertTrue(plan.readoutText().startsWith("runway 21, left"), plan.readoutText());
        plan.click(left);
        assertEquals(1, end.getAids().size());
        ApproachAid placed = end.getAids().get(0);
        assertEquals("two-unit-row", placed.getFamilyKey());
        assertEquals(2, placed.getUnits().size());
        placed.getUnits().forEach(unit -> assertTrue(unit.getRightM() < 0, "left of a landing on 21"));
        assertEquals(Optional.of(placed), plan.selected());
        assertEquals("", plan.readoutText());
        editor.viewer().getEditDomain().getCommandStack().undo();
        assertTrue(end.getAids().isEmpty());
    }

    @Test
    void whatCanNotBePlacedIsExplainedAndChangesNothing() {
        ApproachDirection pad = plan.element("approach-direction-1", ApproachDirection.class);
        int aids = pad.getAids().size();
        plan.lookAt(pad, 2);
        plan.chooseTool("HAPI");
        plan.move(plan.at(pad));
        assertTrue(plan.readoutText().contains("approach slope"), plan.readoutText());
        plan.click(plan.at(pad));
        assertTrue(editor.notice().contains("approach slope") && editor.notice().contains("H-250"), editor.notice());
        assertEquals(aids, pad.getAids().size());
        assertFalse(editor.isDirty());
        plan.key(SWT.ESC, SWT.ESC, 0);
        assertEquals("", editor.notice());
    }

    @Test
    void anObstacleIsPlacedWhereItIsClickedAndCanBeMoved() {
        plan.lookAt(plan.element("runway-end-1", RunwayEnd.class), 0.5);
        Point at = new Point(200, 150);
        double east = editor.view().worldX(at.x);
        double north = editor.view().worldY(at.y);
        plan.chooseTool("Point obstacle");
        plan.move(at);
        plan.click(at);
        List<Obstacle> obstacles = plan.document().project().getAerodrome().getObstacles();
        Obstacle placed = obstacles.get(obstacles.size() - 1);
        assertEquals(east, plan.part(placed).orElseThrow().anchor().orElseThrow().x(), 0.01);
        assertEquals(north, plan.part(placed).orElseThrow().anchor().orElseThrow().y(), 0.01);
        Patience.pause(600);
        plan.dragAndDrop(at, new Point(at.x + 40, at.y + 20), 0);
        assertEquals(east + 80, plan.part(placed).orElseThrow().anchor().orElseThrow().x(), 0.01);
        assertEquals(north - 40, plan.part(placed).orElseThrow().anchor().orElseThrow().y(), 0.01);
        editor.viewer().getEditDomain().getCommandStack().undo();
        assertEquals(east, plan.part(placed).orElseThrow().anchor().orElseThrow().x(), 0.01);
    }

    @Test
    void theWheelZoomsAboutThePointer() {
        Point at = new Point(120, 90);
        double x = editor.view().worldX(at.x);
        double y = editor.view().worldY(at.y);
        double scale = editor.view().scale();
        plan.wheel(at, 3);
        assertTrue(editor.view().scale() > scale);
        assertEquals(x, editor.view().worldX(at.x), 1e-6);
        assertEquals(y, editor.view().worldY(at.y), 1e-6);
        plan.wheel(at, -3);
        assertEquals(scale, editor.view().scale(), 1e-9);
    }

    @Test
    void draggingTheGroundMovesTheView() {
        Point from = new Point(40, 40);
        double x = editor.view().worldX(0);
        double scale = editor.view().scale();
        plan.dragAndDrop(from, new Point(from.x + 90, from.y), 0);
        assertEquals(x - 90 / scale, editor.view().worldX(0), 1.5 / scale);
        assertFalse(editor.isDirty());
    }

    @Test
    void aFindingLeadsToItsElement() {
        Obstacle mast = plan.element(MAST, Obstacle.class);
        plan.lookAt(row(), 10);
        Adapters.adapt(editor, ElementRevealer.class).reveal(MAST);
        assertEquals(Optional.of(mast), plan.selected());
        Point at = plan.at(mast);
        assertTrue(at.x > 0 && at.x < editor.view().widthPx() && at.y > 0 && at.y < editor.view().heightPx(), at.toString());
        Adapters.adapt(editor, ElementRevealer.class).reveal("transition-1");
        LightUnit unit = plan.element("light-unit-1", LightUnit.class);
        assertEquals(Optional.of(unit), plan.selected(), "what is inside a unit leads to the unit");
    }

    @Test
    void whatIsEditedElsewhereIsDrawnAtOnce() {
        LightUnit unit = row().getUnits().get(0);
        double x = plan.part(unit).orElseThrow().anchor().orElseThrow().x();
        double along = unit.getAlongM() + 50;
        plan.document().history().perform(SetAttribute.of(unit, SlopewrightPackage.Literals.LIGHT_UNIT__ALONG_M, along));
        assertEquals(x + 50, plan.part(unit).orElseThrow().anchor().orElseThrow().x(), 0.1);
        assertTrue(editor.isDirty());
        assertTrue(editor.viewer().getEditDomain().getCommandStack().canUndo(), "one history for plan and property sheet");
    }

    @Test
    void whatIsSavedIsReadAgain() throws Exception {
        plan.lookAt(row(), 4);
        plan.click(plan.at(row().getUnits().get(0)));
        plan.key(SWT.ARROW_RIGHT, (char) 0, 0);
        editor.doSave(new NullProgressMonitor());
        assertFalse(editor.isDirty());
        assertEquals(alongs(), ((ApproachAid) Ids.find(ProjectFile.load(file), ROW_09).orElseThrow()).getUnits().stream()
                .map(LightUnit::getAlongM).toList());
        Path copy = folder.resolve("copy.slopewright");
        editor.saveAs(copy);
        assertEquals(new ProjectInput(copy), editor.getEditorInput());
        assertEquals("copy.slopewright", editor.getTitle());
        assertEquals(ProjectFile.load(file).getName(), ProjectFile.load(copy).getName());
    }
}
