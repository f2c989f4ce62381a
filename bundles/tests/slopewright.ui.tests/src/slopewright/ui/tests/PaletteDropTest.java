package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.gef.palette.ToolEntry;
import org.eclipse.gef.ui.palette.PaletteViewer;
import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.model.ApproachAid;
import slopewright.model.RunwayEnd;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.plan.PlanEditor;

/** What is dragged from the palette onto the plan by a hand on the mouse stands there as after a click, and is undone as one step. */
class PaletteDropTest {

    private static final String END = "runway-end-4";

    @TempDir
    private Path folder;
    private PlanEditor editor;
    private PlanDriver plan;

    @BeforeEach
    void open() throws Exception {
        editor = (PlanEditor) page().openEditor(new ProjectInput(DemoProjects.copy("harrow-vale", folder)), PlanEditor.ID);
        plan = new PlanDriver(editor);
        Patience.await("the plan has a size", () -> editor.view().widthPx() > 0);
        Patience.await("it is checked", () -> plan.document().lastResult().isPresent() && !plan.document().isChecking());
        plan.lookAt(plan.element(END, RunwayEnd.class), 1);
    }

    @AfterEach
    void close() {
        page().closeAllEditors(false);
    }

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    /** Has a hand on the mouse do something, and the window answer meanwhile; a drag of the toolkit needs real events. */
    private static void hand(String... words) throws IOException {
        Process process = new ProcessBuilder(Stream.concat(Stream.of("xdotool"), Stream.of(words)).toList()).inheritIO().start();
        Patience.await("the mouse moved", () -> !process.isAlive());
        Patience.pause(100);
    }

    private static void move(Point to) throws IOException {
        hand("mousemove", String.valueOf(to.x), String.valueOf(to.y));
    }

    /** Where an entry of the palette lies on the screen. */
    private Point entry(String label) {
        PaletteViewer palette = editor.viewer().getEditDomain().getPaletteViewer();
        // An animated palette keeps its animator among its parts.
        EditPart part = Stream.of(palette.getEditPartRegistry().values().toArray()).filter(EditPart.class::isInstance)
                .map(EditPart.class::cast).filter(each -> each.getModel() instanceof ToolEntry tool && tool.getLabel().equals(label))
                .findFirst().orElseThrow();
        palette.reveal(part);
        Patience.pause(200);
        IFigure figure = ((GraphicalEditPart) part).getFigure();
        Rectangle box = figure.getBounds().getCopy();
        figure.translateToAbsolute(box);
        return palette.getControl().toDisplay(box.x + Math.min(30, box.width / 2), box.y + box.height / 2);
    }

    /** Presses, moves in steps as a hand does, and lets go; a drag begins only once the mouse went some way. */
    private static void drag(Point from, Point to) throws IOException {
        move(from);
        hand("mousedown", "1", "sleep", "0.2", "mousemove_relative", "6", "2", "sleep", "0.1", "mousemove_relative", "6", "2", "sleep",
                "0.1",
                "mousemove_relative", "12", "4");
        for (int step = 1; step <= 8; step++) {
            move(new Point(from.x + (to.x - from.x) * step / 8, from.y + (to.y - from.y) * step / 8));
        }
        Patience.pause(300);
        hand("mouseup", "1");
        Patience.pause(500);
    }

    @Test
    void whatIsDroppedStandsAtTheRunwayEnd() throws IOException {
        RunwayEnd end = plan.element(END, RunwayEnd.class);
        List<ApproachAid> before = List.copyOf(end.getAids());
        Point at = plan.at(end);
        drag(entry("APAPI"), plan.control().toDisplay(at.x - 110, at.y));
        Patience.await("it was placed", () -> end.getAids().size() > before.size());
        assertEquals(before.size() + 1, end.getAids().size());
        ApproachAid placed = end.getAids().get(end.getAids().size() - 1);
        assertEquals("two-unit-row", placed.getFamilyKey());
        assertEquals(2, placed.getUnits().size());
        plan.document().history().undo();
        assertEquals(before, List.copyOf(end.getAids()));
        assertFalse(plan.document().isDirty());
    }

    @Test
    void whatIsLetGoBesideThePlanIsNotPlaced() throws IOException {
        RunwayEnd end = plan.element(END, RunwayEnd.class);
        int before = end.getAids().size();
        Point from = entry("APAPI");
        drag(from, new Point(from.x + 10, from.y + 40));
        assertEquals(before, end.getAids().size());
        assertFalse(plan.document().isDirty());
    }
}
