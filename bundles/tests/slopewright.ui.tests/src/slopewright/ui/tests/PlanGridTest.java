package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.evaluation.AidEvaluation;
import slopewright.model.AeroplaneGroup;
import slopewright.model.ApproachAid;
import slopewright.model.LightUnit;
import slopewright.model.RunwayEnd;
import slopewright.testkit.DemoProjects;
import slopewright.ui.diagram.figures.ReadoutFigure;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.plan.PlanEditor;

/** Grid, snapping and guides of the plan. */
class PlanGridTest {

    private static final String ROW_09 = "approach-aid-1";

    @TempDir
    private Path folder;
    private PlanEditor editor;
    private PlanDriver plan;

    @BeforeEach
    void open() throws Exception {
        Path file = DemoProjects.copy("harrow-vale", folder);
        editor = (PlanEditor) page().openEditor(new ProjectInput(file), PlanEditor.ID);
        plan = new PlanDriver(editor);
        Patience.await("the plan has a size", () -> editor.view().widthPx() > 0);
    }

    @AfterEach
    void close() throws Exception {
        if (plan.isShown("GRID")) {
            run("grid");
        }
        page().closeEditor(editor, false);
    }

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    private void run(String command) throws Exception {
        editor.getSite().getService(IHandlerService.class).executeCommand("slopewright.ui.plan." + command, null);
    }

    private ApproachAid row() {
        return plan.element(ROW_09, ApproachAid.class);
    }

    private LightUnit unit(int index) {
        return row().getUnits().get(index);
    }

    private void selectUnit(int index) {
        plan.click(plan.at(unit(index)));
        Patience.pause(600);
        plan.click(plan.at(unit(index)));
    }

    @Test
    void theGridIsSwitchedOnAndOff() throws Exception {
        assertFalse(plan.isShown("GRID"));
        run("grid");
        assertTrue(plan.isShown("GRID"));
        run("grid");
        assertFalse(plan.isShown("GRID"));
    }

    /** The line of 10 m at 12 pixels a metre: 6 pixels are half a metre, so 0.4 m beside it a unit snaps. */
    @Test
    void aUnitSnapsToTheGridAndNotAgainstTheKey() throws Exception {
        run("grid");
        plan.lookAt(row(), 12);
        selectUnit(1);
        double along = unit(1).getAlongM();
        double line = Math.ceil(along / 5) * 5;
        int pixels = (int) Math.round((line - along + 0.3) * 12);
        Point from = plan.at(unit(1));
        Point to = new Point(from.x + pixels, from.y);
        plan.press(from);
        plan.drag(from, to, SWT.ALT);
        assertFalse(plan.readoutText().contains("on the grid"), plan.readoutText());
        plan.drag(from, to, 0);
        assertTrue(plan.readoutText().contains("on the grid"), plan.readoutText());
        plan.release(to, 0);
        assertEquals(line, unit(1).getAlongM(), 1e-9);
    }

    @Test
    void aUnitSnapsToTheSpacingOfTheRuleSetAndToTheBarLine() {
        plan.lookAt(row(), 5);
        selectUnit(3);
        double right = unit(3).getRightM();
        double along = unit(3).getAlongM();
        Point from = plan.at(unit(3));
        Point away = new Point(from.x + 37, from.y - 24);
        plan.dragAndDrop(from, away, SWT.SHIFT | SWT.ALT);
        assertNotEquals(along, unit(3).getAlongM());
        assertNotEquals(right, unit(3).getRightM());
        from = plan.at(unit(3));
        Point back = new Point(from.x - 35, from.y + 22);
        plan.press(from);
        plan.drag(from, back, SWT.SHIFT);
        assertTrue(plan.readoutText().contains("solved"), plan.readoutText());
        plan.release(back, SWT.SHIFT);
        assertEquals(along, unit(3).getAlongM(), 0.005);
        assertEquals(right, unit(3).getRightM(), 0.005);
    }

    @Test
    void withSnappingOffThingsGoWhereTheMouseIs() throws Exception {
        run("snap");
        try {
            plan.lookAt(row(), 10);
            selectUnit(1);
            Point from = plan.at(unit(1));
            plan.press(from);
            plan.drag(from, new Point(from.x + 12, from.y), 0);
            plan.drag(from, new Point(from.x + 3, from.y), 0);
            assertFalse(plan.readoutText().contains("⌖"), plan.readoutText());
            plan.release(new Point(from.x + 3, from.y), 0);
        } finally {
            run("snap");
        }
    }

    /**
     * The clearance that is shown is judged by the table of the rule set: a row that is pulled toward the threshold until the wheels
     * clear it by less than the minimum gets a cross, although they still clear it.
     */
    @Test
    void theLiveWheelClearanceIsJudgedByTheRuleSet() {
        RunwayEnd end = plan.element("runway-end-1", RunwayEnd.class);
        AeroplaneGroup group = end.getRegularGroups().get(0);
        double eyeToWheel = group.getEyeToWheelM();
        double minimum = plan.document().rules().wheelClearance().orElseThrow().group(eyeToWheel).orElseThrow().minimumM();
        plan.lookAt(row(), 2);
        Point from = plan.at(unit(0));
        plan.press(from);
        plan.drag(from, new Point(from.x + 1, from.y), 0);
        assertTrue(wheels().stream().noneMatch(line -> line.verdict() == ReadoutFigure.Verdict.BAD), plan.readoutText());
        double clearance = AidEvaluation.of(row()).siting().orThrow().mehtM() - eyeToWheel;
        int metres = (int) Math.ceil((clearance - minimum + 0.5) / Math.tan(Math.toRadians(2.75)));
        plan.drag(from, new Point(from.x - 2 * metres, from.y), 0);
        ReadoutFigure.Line line = wheels().get(0);
        assertEquals(ReadoutFigure.Verdict.BAD, line.verdict(), plan.readoutText());
        assertTrue(line.text().contains("below the minimum"), line.text());
        plan.key(SWT.ESC, SWT.ESC, 0);
    }

    private List<ReadoutFigure.Line> wheels() {
        return plan.readout().stream().filter(line -> line.text().startsWith("Wheel clearance")).toList();
    }
}
