package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.edit.AddAid;
import slopewright.evaluation.AidEvaluation;
import slopewright.model.AidSide;
import slopewright.model.ApproachAid;
import slopewright.model.LightUnit;
import slopewright.model.Obstacle;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.Side;
import slopewright.siting.Siting;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.document.Viewpoint;
import slopewright.ui.plan.PlanEditor;

/** Arranging units and aids in the plan, choosing what all views look at, and placing the pilot's eye. */
class PlanArrangeTest {

    private static final String ROW_09 = "approach-aid-1";
    private static final String END_09 = "runway-end-1";
    private static final String END_27 = "runway-end-2";
    private static final String END_21 = "runway-end-4";

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
    void close() {
        page().closeEditor(editor, false);
    }

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    private ApproachAid row() {
        return plan.element(ROW_09, ApproachAid.class);
    }

    private LightUnit unit(int index) {
        return row().getUnits().get(index);
    }

    private static List<Double> rights(ApproachAid aid) {
        return aid.getUnits().stream().map(LightUnit::getRightM).toList();
    }

    private void run(String command) throws Exception {
        editor.getSite().getService(IHandlerService.class).executeCommand("slopewright.ui.plan." + command, null);
    }

    /** Selects units one by one: the first click means the row, the second the unit, and with Ctrl others join. */
    private void selectUnits(int... indices) {
        plan.click(plan.at(unit(indices[0])));
        Patience.pause(600);
        plan.click(plan.at(unit(indices[0])));
        for (int i = 1; i < indices.length; i++) {
            Patience.pause(600);
            plan.click(plan.at(unit(indices[i])), SWT.CTRL);
        }
        assertEquals(indices.length, editor.viewer().getSelectedEditParts().size());
    }

    @Test
    void unitsThatWereNudgedApartAreAlignedAndSpacedAgain() throws Exception {
        plan.lookAt(row(), 8);
        selectUnits(1, 2);
        double along = unit(1).getAlongM();
        double right = unit(1).getRightM();
        plan.key(SWT.ARROW_RIGHT, (char) 0, 0);
        plan.key(SWT.ARROW_UP, (char) 0, 0);
        assertEquals(along + 1, unit(1).getAlongM(), 1e-9, "units that are selected together move together, once");
        assertEquals(along + 1, unit(2).getAlongM(), 1e-9);
        assertEquals(right - 1, unit(1).getRightM(), 1e-9);
        assertEquals(along, unit(0).getAlongM(), 1e-9);
        plan.key(SWT.ESC, SWT.ESC, 0);
        selectUnits(1, 2, 3, 0);
        run("alignBar");
        row().getUnits().forEach(unit -> assertEquals(along, unit.getAlongM(), 1e-9, "on the bar line of the unit selected last"));
        run("distribute");
        List<Double> spaced = rights(row());
        double step = spaced.get(1) - spaced.get(0);
        assertEquals(step, spaced.get(2) - spaced.get(1), 0.0011);
        assertEquals(step, spaced.get(3) - spaced.get(2), 0.0011);
        editor.viewer().getEditDomain().getCommandStack().undo();
        assertNotEquals(spaced, rights(row()));
    }

    @Test
    void keysNudgeByATenthAMetreAndTenMetres() {
        plan.lookAt(row(), 4);
        double along = unit(0).getAlongM();
        plan.click(plan.at(unit(0)));
        plan.key(SWT.ARROW_RIGHT, (char) 0, SWT.CTRL);
        assertEquals(along + 10, unit(0).getAlongM(), 1e-9);
        plan.key(SWT.ARROW_RIGHT, (char) 0, SWT.SHIFT);
        assertEquals(along + 10.1, unit(0).getAlongM(), 1e-9);
        Obstacle mast = plan.element("obstacle-2", Obstacle.class);
        plan.lookAt(mast, 4);
        double x = plan.part(mast).orElseThrow().anchor().orElseThrow().x();
        plan.click(plan.at(mast));
        plan.key(SWT.ARROW_LEFT, (char) 0, SWT.CTRL);
        assertEquals(x - 10, plan.part(mast).orElseThrow().anchor().orElseThrow().x(), 0.01);
    }

    @Test
    void aRowIsCopiedToTheOtherEndInBothWays() throws Exception {
        RunwayEnd other = plan.element(END_27, RunwayEnd.class);
        int before = other.getAids().size();
        plan.lookAt(row(), 4);
        plan.click(plan.at(unit(0)));
        run("copySame");
        ApproachAid same = other.getAids().get(before);
        assertEquals(rights(row()), rights(same));
        assertEquals(Optional.of(same), plan.selected(), "the copy is shown and selected");
        editor.viewer().getEditDomain().getCommandStack().undo();
        assertEquals(before, other.getAids().size());
        plan.lookAt(row(), 4);
        plan.click(plan.at(unit(0)));
        run("copyAnew");
        ApproachAid anew = other.getAids().get(before);
        Siting solved = AidEvaluation.of(anew).siting().orThrow();
        assertEquals(solved.unshifted().distanceM().orElseThrow(), anew.getUnits().get(0).getAlongM(), 0.01, "laid out for its own end");
        assertEquals(Optional.of(anew), plan.document().viewState().aid(), "what is selected is what all views look at");
    }

    @Test
    void aRowIsMirroredToTheOtherSide() throws Exception {
        plan.lookAt(row(), 4);
        plan.click(plan.at(unit(0)));
        List<Double> before = rights(row());
        run("mirror");
        assertEquals(AidSide.RIGHT, row().getSide());
        assertEquals(before.stream().map(right -> -right).toList(), rights(row()));
        assertTrue(plan.at(unit(0)).y > plan.at(plan.element(END_09, RunwayEnd.class)).y - 200, "south of the centre line");
    }

    /** A row on both sides is taken by a unit on the right: that side follows the mouse and the other one is its mirror. */
    @Test
    void bothSidesStaySymmetricalWhileOneIsDragged() {
        RunwayEnd end = plan.element(END_21, RunwayEnd.class);
        AddAid add = AddAid.solve(end, "four-unit-row", plan.document().rules(), Side.BOTH);
        plan.document().history().perform(add);
        ApproachAid both = add.aid();
        plan.lookAt(both, 3);
        LightUnit taken = both.getUnits().stream().filter(unit -> unit.getRightM() > 0).findFirst().orElseThrow();
        List<Double> before = rights(both);
        Point from = plan.at(taken);
        double turn = Math.toRadians(end.getTrueBearingDeg());
        Point to = new Point(from.x + (int) Math.round(60 * Math.cos(turn)), from.y + (int) Math.round(60 * Math.sin(turn)));
        plan.dragAndDrop(from, to, SWT.SHIFT | SWT.ALT);
        double out = taken.getRightM() - before.get(both.getUnits().indexOf(taken));
        assertEquals(20, out, 1.2, "60 pixels are 20 m to the right of the landing");
        for (int i = 0; i < before.size(); i++) {
            assertEquals(before.get(i) + (before.get(i) > 0 ? out : -out), rights(both).get(i), 1e-6);
        }
    }

    @Test
    void selectingAnAidOrAUnitChoosesItForAllViews() {
        ApproachAid other = Projects.aids(plan.document().project()).stream().filter(aid -> aid != row()).findFirst().orElseThrow();
        plan.lookAt(other, 8);
        plan.click(plan.at(other.getUnits().get(0)));
        assertEquals(Optional.of(other), plan.document().viewState().aid());
        plan.lookAt(row(), 8);
        plan.click(plan.at(unit(0)));
        assertEquals(Optional.of(row()), plan.document().viewState().aid());
    }

    /** The eye is put on the slope: its height over the row is the distance before it times the tangent of the slope. */
    @Test
    void theEyeIsPlacedOnTheSlopeWhereTheUserPoints() throws Exception {
        plan.lookAt(row(), 0.5);
        plan.click(plan.at(unit(0)));
        Point at = new Point(plan.at(plan.element(END_09, RunwayEnd.class)).x - 100, plan.at(unit(0)).y + 5);
        plan.move(at);
        run("lookHere");
        Viewpoint eye = plan.document().viewState().viewpoint().orElseThrow();
        assertEquals(END_09, eye.hostId());
        Siting siting = AidEvaluation.of(row()).siting().orThrow();
        double before = siting.reference().alongM() - eye.eye().alongM();
        assertTrue(before > 300, "the pixel lies 200 m before the threshold");
        double slope = Math.toDegrees(Math.atan((eye.eye().heightM() - siting.reference().heightM()) / before));
        assertEquals(siting.slopeDeg(), slope, 1e-9);
        assertTrue(plan.texts("EYE").get(0).startsWith("Eye "), plan.texts("EYE").toString());
        plan.move(new Point(plan.at(unit(0)).x + 100, at.y));
        run("lookHere");
        assertTrue(editor.notice().contains("behind the lights"), editor.notice());
        assertEquals(eye, plan.document().viewState().viewpoint().orElseThrow());
        assertFalse(editor.isDirty(), "the eye is no part of the project");
    }

    /** Dimensions belong to the chosen aid and follow it, as it stands on the screen. */
    @Test
    void dimensionsFollowTheChosenAid() {
        plan.lookAt(row(), 6);
        plan.click(plan.at(unit(0)));
        List<String> before = plan.texts("DIMENSIONS");
        assertTrue(before.stream().anyMatch(text -> text.endsWith(" m")), before.toString());
        plan.key(SWT.ARROW_UP, (char) 0, SWT.CTRL);
        assertNotEquals(before, plan.texts("DIMENSIONS"), "ten metres further out");
        assertTrue(plan.isShown("BEAMS"));
        assertEquals("Move aid", editor.viewer().getEditDomain().getCommandStack().getUndoCommand().getLabel());
    }
}
