package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.model.Obstacle;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.plan.PlanEditor;

/** Cut, copy, paste, duplicate, the marquee and the measuring line of the plan. */
class PlanClipboardTest {

    @TempDir
    private Path folder;
    private PlanEditor editor;
    private PlanDriver plan;

    @BeforeEach
    void open() throws Exception {
        editor = (PlanEditor) page().openEditor(new ProjectInput(DemoProjects.copy("harrow-vale", folder)), PlanEditor.ID);
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

    private List<Obstacle> obstacles() {
        return plan.document().project().getAerodrome().getObstacles();
    }

    private static void run(String command) throws Exception {
        PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(command, null);
    }

    @Test
    void whatIsCopiedIsPastedUnderANameOfItsOwn() throws Exception {
        Obstacle first = obstacles().get(0);
        int before = obstacles().size();
        editor.reveal(first.getId());
        run("org.eclipse.ui.edit.copy");
        run("org.eclipse.ui.edit.paste");
        assertEquals(before + 1, obstacles().size());
        Obstacle pasted = obstacles().get(before);
        assertNotEquals(first.getId(), pasted.getId());
        assertEquals(first.getTopElevationM(), pasted.getTopElevationM());
        assertTrue(pasted.getName().startsWith(first.getName()), pasted.getName());
        plan.document().history().undo();
        editor.reveal(first.getId());
        run("slopewright.ui.plan.duplicate");
        assertEquals(before + 1, obstacles().size());
        plan.document().history().undo();
        editor.reveal(first.getId());
        run("org.eclipse.ui.edit.cut");
        assertEquals(before - 1, obstacles().size());
        run("org.eclipse.ui.edit.paste");
        assertEquals(before, obstacles().size());
        plan.document().history().undo();
        plan.document().history().undo();
        assertFalse(plan.document().isDirty());
        assertEquals(first, obstacles().get(0));
    }

    /** 200 pixels at two pixels a metre are 100 m; to the right of the plan is east, 90 degrees. */
    @Test
    void theMeasuringLineTellsDistanceAndBearing() {
        plan.lookAt(obstacles().get(0), 2);
        plan.chooseTool("Measure");
        Point from = new Point(300, 200);
        Point to = new Point(500, 200);
        plan.press(from);
        plan.drag(from, to, 0);
        assertTrue(plan.readoutText().contains("Distance 100.00 m"), plan.readoutText());
        assertTrue(plan.readoutText().contains("True bearing 90"), plan.readoutText());
        plan.release(to, 0);
        plan.chooseTool("Select");
        assertEquals(List.of(), plan.readout(), "the line goes with the tool");
        assertFalse(plan.document().isDirty());
    }

    @Test
    void theMarqueeSelectsWhatLiesInIt() {
        plan.chooseTool("Marquee");
        int width = (int) editor.view().widthPx();
        int height = (int) editor.view().heightPx();
        plan.dragAndDrop(new Point(3, 3), new Point(width - 3, height - 3), 0);
        assertTrue(editor.viewer().getSelectedEditParts().size() > 1, editor.viewer().getSelectedEditParts().toString());
    }
}
