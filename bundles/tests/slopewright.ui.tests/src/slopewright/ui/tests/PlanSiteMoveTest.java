package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.checks.Checks;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.model.ApproachDirection;
import slopewright.model.GlidePathAid;
import slopewright.model.Helipad;
import slopewright.model.Identified;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Ids;
import slopewright.siting.site.PlanPlane;
import slopewright.siting.site.PlanPoint;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.plan.PlanEditor;

/**
 * Runways, their ends, helipads, approach directions and antennas are dragged in the plan. Where each comes to lie is where the mouse went,
 * a pixel a metre; what is said while it is held is what a fresh check says after the drop; and one step back brings all of it again.
 */
class PlanSiteMoveTest {
    private static final double PIXEL_M = 1.01;

    @TempDir
    private Path folder;
    private PlanEditor editor;
    private PlanDriver plan;
    private Project before;
    private String said = "";

    @BeforeEach
    void open() throws Exception {
        editor = (PlanEditor) page().openEditor(new ProjectInput(DemoProjects.copy("harrow-vale", folder)), PlanEditor.ID);
        plan = new PlanDriver(editor);
        Patience.await("the plan has a size", () -> editor.view().widthPx() > 0);
        settle();
        before = EcoreUtil.copy(project());
    }

    @AfterEach
    void close() {
        page().closeEditor(editor, false);
    }

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    private Project project() {
        return plan.document().project();
    }

    private void settle() {
        Patience.await("it is checked", () -> plan.document().lastResult().isPresent() && !plan.document().isChecking());
    }

    /** Drags, and looks whether what was said before the drop holds after it. */
    private void drag(Point from, int byX, int byY, int keys) {
        Point to = new Point(from.x + byX, from.y + byY);
        plan.press(from);
        plan.drag(from, to, keys);
        Patience.await("the verdict is there", () -> plan.readoutText().contains(" not met  ·  "));
        Patience.await("it is that of this place", () -> !plan.readoutText().contains("All rules: …"));
        said = plan.readoutText();
        plan.release(to, keys);
        String after = DragVerdictTest.line(Checks.run(ProjectFile.copy(project()), Optional.empty()).outcomes());
        assertTrue(said.contains(after), said + "\nbut after the drop " + after);
    }

    private void assertUndoneWhole() {
        editor.viewer().getEditDomain().getCommandStack().undo();
        assertTrue(EcoreUtil.equals(before, project()), "one step back");
        assertFalse(plan.document().history().canUndo(), "it was one step");
    }

    private double movedM(Place now, Place then, double byEastM, double byNorthM) {
        PlanPlane plane = PlanPlane.of(before).orElseThrow();
        PlanPoint from = plane.toPlane(then);
        PlanPoint to = plane.toPlane(now);
        return Math.hypot(to.eastM() - from.eastM() - byEastM, to.northM() - from.northM() - byNorthM);
    }

    private <T extends Identified> T then(T element, Class<T> type) {
        return type.cast(Ids.find(before, element.getId()).orElseThrow());
    }

    private Point sign(Identified element) {
        Rectangle box = plan.labels().entrySet().stream().filter(entry -> element.getId().equals(entry.getKey().elementId())).findFirst()
                .orElseThrow().getValue();
        return new Point(box.x + box.width / 2, box.y + box.height / 2);
    }

    @Test
    void aRunwayIsMovedWholeOnceItIsSelected() {
        Runway runway = plan.element("runway-1", Runway.class);
        plan.lookAt(runway, 1);
        Point middle = new Point(plan.at(runway).x, plan.at(runway).y + 15);
        plan.dragAndDrop(middle, new Point(middle.x + 60, middle.y - 40), 0);
        assertTrue(EcoreUtil.equals(before, project()), "what is not selected is not dragged by mistake");
        plan.click(middle);
        assertEquals(Optional.of(runway), plan.selected());
        Point still = plan.at(plan.element("obstacle-1", Identified.class));
        drag(middle, 60, -40, 0);
        for (RunwayEnd end : runway.getEnds()) {
            assertTrue(movedM(end.getThreshold(), then(end, RunwayEnd.class).getThreshold(), 60, 40) < PIXEL_M, end.getDesignator());
        }
        assertTrue(said.contains("Both ends move along") && said.contains("Elevations stay as entered"), said);
        assertEquals(still, plan.at(plan.element("obstacle-1", Identified.class)), "what was not moved is drawn where it was");
        runway.getEnds().forEach(end -> assertTrue(EcoreUtil.equals(then(end, RunwayEnd.class).getAids(), end.getAids()), "aids go along"));
        assertUndoneWhole();
    }

    @Test
    void anEndIsMovedAlongTheCentreLine() {
        RunwayEnd end = plan.element("runway-end-1", RunwayEnd.class);
        plan.lookAt(end, 1);
        drag(sign(end), -50, 30, 0);
        Runway runway = (Runway) end.eContainer();
        double cosine = Math.cos(Math.toRadians(2));
        double along = -50 * cosine + 30 * Math.sin(Math.toRadians(2));
        assertEquals(2400 - along, runway.getLengthM(), PIXEL_M);
        assertEquals(92.0, end.getTrueBearingDeg(), 0.001, "it goes along its line");
        assertEquals(2400 - along, end.getLandingDistanceM(), PIXEL_M);
        assertTrue(said.contains("between the thresholds"), said);
        assertUndoneWhole();
    }

    /** The threshold of 27 is displaced by 300 m, so it lies 2100 m on 92° from that of 09, which goes 100 m to the north. */
    @Test
    void anEndTurnsTheRunwayWithTheKeyForIt() {
        RunwayEnd end = plan.element("runway-end-1", RunwayEnd.class);
        plan.lookAt(end, 1);
        drag(sign(end), 0, -100, SWT.SHIFT);
        double northM = 2100 * Math.cos(Math.toRadians(92)) - 100;
        assertEquals(Math.toDegrees(Math.atan2(2100 * Math.sin(Math.toRadians(92)), northM)), end.getTrueBearingDeg(), 0.03);
        assertUndoneWhole();
    }

    @Test
    void aHelipadIsMovedWithItsDirections() {
        Helipad pad = plan.element("helipad-1", Helipad.class);
        plan.lookAt(pad, 4);
        drag(plan.at(pad), 80, 40, 0);
        assertTrue(movedM(pad.getPlace(), then(pad, Helipad.class).getPlace(), 20, -10) < PIXEL_M);
        assertTrue(said.contains("Its approach directions and their indicators move along"), said);
        assertUndoneWhole();
    }

    /** It is taken in its middle and led a quarter of a turn on: it landed on 250° and lands on 340° then. */
    @Test
    void aDirectionIsTurnedAboutItsPad() {
        Helipad pad = plan.element("helipad-1", Helipad.class);
        ApproachDirection direction = pad.getDirections().get(0);
        plan.lookAt(pad, 3);
        List<ScenePoint> arrow = plan.part(direction).orElseThrow().markFigure().marks().stream().filter(Mark.Path.class::isInstance)
                .map(mark -> ((Mark.Path) mark).points()).findFirst().orElseThrow();
        Point from = plan.at(new ScenePoint((arrow.get(0).x() + arrow.get(1).x()) / 2, (arrow.get(0).y() + arrow.get(1).y()) / 2));
        Point centre = plan.at(pad);
        drag(from, -(from.y - centre.y) - (from.x - centre.x), from.x - centre.x - (from.y - centre.y), 0);
        // a quarter of a turn, to the degree that a pixel is of so short an arrow
        double turned = direction.getTrueBearingDeg();
        assertEquals(340, turned, 1);
        assertEquals(Math.rint(turned), turned, "whole degrees");
        assertEquals("H-" + (int) turned, direction.getDesignator());
        assertTrue(said.contains("Lands on " + (int) turned + ".0° (true)"), said);
        assertUndoneWhole();
    }

    @Test
    void anAntennaIsMovedAlongAndAcross() {
        GlidePathAid path = plan.element("glide-path-aid-1", GlidePathAid.class);
        plan.lookAt(path, 2);
        drag(plan.at(path), 40, 60, 0);
        assertEquals(315 + 20 * Math.cos(Math.toRadians(2)) - 30 * Math.sin(Math.toRadians(-2)), path.getAntennaAlongM(), 1);
        assertEquals(130 + 30, path.getAntennaRightM(), 2);
        assertUndoneWhole();
    }

    /** By the keys: an end by metres along its line, a direction by degrees. */
    @Test
    void theKeysMoveWhatIsSelected() {
        RunwayEnd end = plan.element("runway-end-1", RunwayEnd.class);
        plan.lookAt(end, 1);
        plan.click(sign(end));
        plan.key(SWT.ARROW_LEFT, (char) 0, SWT.MOD1);
        assertEquals(2410, ((Runway) end.eContainer()).getLengthM(), 0.002);
        editor.viewer().getEditDomain().getCommandStack().undo();
        ApproachDirection direction = plan.element("approach-direction-1", ApproachDirection.class);
        plan.lookAt(plan.element("helipad-1", Helipad.class), 3);
        plan.click(sign(direction));
        assertEquals(Optional.of(direction), plan.selected());
        plan.key(SWT.ARROW_RIGHT, (char) 0, 0);
        assertEquals(251.0, direction.getTrueBearingDeg());
        assertUndoneWhole();
    }
}
