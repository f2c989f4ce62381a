package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.gef.EditPart;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.drawing.scene.ScenePoint;
import slopewright.edit.SetAttribute;
import slopewright.model.Aerodrome;
import slopewright.model.GroundLevel;
import slopewright.model.Identified;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.siting.site.PlanPlane;
import slopewright.siting.site.PlanPoint;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.plan.PlanEditor;

/**
 * What a site has is drawn on the plan with a click for each place, moved, taken back and removed. Where it stands is read from the model
 * by the plane of the plan and compared with where the mouse was; a pixel is a metre here, and a click is as good as a pixel.
 */
class PlanDrawTest {
    private static final double PIXEL_M = 1.01;

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
        plan.lookAt(plan.element("runway-end-1", RunwayEnd.class), 1);
    }

    @AfterEach
    void close() {
        page().closeEditor(editor, false);
    }

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    private Aerodrome aerodrome() {
        return plan.document().project().getAerodrome();
    }

    /** A place so many pixels from the middle of the view. */
    private Point at(int x, int y) {
        return new Point((int) (editor.view().widthPx() / 2) + x, (int) (editor.view().heightPx() / 2) + y);
    }

    private void assertAt(Point expected, Place place) {
        PlanPoint found = PlanPlane.of(plan.document().project()).orElseThrow().toPlane(place);
        double x = editor.view().worldX(expected.x);
        double y = editor.view().worldY(expected.y);
        assertTrue(Math.hypot(found.eastM() - x, found.northM() - y) < PIXEL_M, found + " is not at " + new ScenePoint(x, y));
    }

    private void undo() {
        editor.viewer().getEditDomain().getCommandStack().undo();
    }

    private static int count(Aerodrome aerodrome) {
        return aerodrome.getObstacles().size() + aerodrome.getGroundLevels().size() + aerodrome.getTaxiwayEdges().size()
                + aerodrome.getRunways().size() + aerodrome.getHelipads().size();
    }

    /** Each shape with as many clicks as it needs, and Enter where it could go on; one step back takes it away whole. */
    @ParameterizedTest
    @CsvSource({"Line obstacle, 3, true", "Area obstacle, 4, true", "Ground level, 1, false", "Taxiway edge, 3, true", "Runway, 2, false",
            "Helipad, 1, false"})
    void aShapeIsDrawnSelectedAndTakenBack(String tool, int clicks, boolean ends) {
        Project before = EcoreUtil.copy(plan.document().project());
        int elements = count(aerodrome());
        List<Point> places = List.of(at(-60, 80), at(40, 90), at(60, 140), at(-40, 150)).subList(0, clicks);
        plan.chooseTool(tool);
        for (Point place : places) {
            plan.move(place);
            assertTrue(plan.readoutText().contains(tool.split(" ")[0]), plan.readoutText());
            plan.click(place);
        }
        if (ends) {
            assertEquals(elements, count(aerodrome()), "nothing is made before the end");
            plan.key(SWT.CR, SWT.CR, 0);
        }
        assertEquals(elements + 1, count(aerodrome()));
        Identified made = (Identified) plan.selected().orElseThrow();
        List<Place> drawn = places(made);
        assertEquals(clicks, drawn.size());
        for (int i = 0; i < clicks; i++) {
            assertAt(places.get(i), drawn.get(i));
        }
        undo();
        assertTrue(EcoreUtil.equals(before, plan.document().project()), "one step back");
        assertEquals(Optional.empty(), plan.part(made));
    }

    private static List<Place> places(Identified element) {
        List<Place> found = new ArrayList<>();
        element.eAllContents().forEachRemaining(part -> {
            if (part instanceof Place place) {
                found.add(place);
            }
        });
        return found;
    }

    /** Heights are nobody's guess, the length of a runway follows from its thresholds, and what is drawn to the east is called 09. */
    @Test
    void whatAPlanCannotKnowStaysOpen() {
        plan.chooseTool("Runway");
        plan.click(at(-150, 100));
        plan.click(at(150, 100));
        Runway runway = aerodrome().getRunways().get(aerodrome().getRunways().size() - 1);
        assertEquals(300, runway.getLengthM(), 2 * PIXEL_M);
        assertEquals("09/27", runway.getDesignator());
        assertNull(runway.getWidthM());
        assertNull(runway.getEnds().get(0).getThresholdElevationM());
        assertTrue(plan.part(runway).orElseThrow().anchor().isPresent(), "it is seen before anybody knows its elevation");
        assertTrue(plan.labels(runway.getEnds().get(0)).contains("09"), plan.labels(runway.getEnds().get(0)).toString());
        plan.chooseTool("Line obstacle");
        plan.click(at(-50, 60));
        plan.click(at(50, 60));
        plan.key(SWT.CR, SWT.CR, 0);
        Obstacle wire = aerodrome().getObstacles().get(aerodrome().getObstacles().size() - 1);
        assertEquals(ObstacleKind.LINE, wire.getKind());
        assertNull(wire.getTopElevationM());
    }

    /** A place that was taken too many comes back with Backspace, and Escape leaves nothing behind. */
    @Test
    void aPlaceIsTakenBackAndADrawingGivenUp() {
        int elements = count(aerodrome());
        plan.chooseTool("Taxiway edge");
        plan.click(at(-60, 80));
        plan.click(at(0, 80));
        plan.click(at(60, 80));
        plan.key(SWT.BS, SWT.BS, 0);
        plan.key(SWT.CR, SWT.CR, 0);
        assertEquals(2, aerodrome().getTaxiwayEdges().get(aerodrome().getTaxiwayEdges().size() - 1).getPoints().size());
        undo();
        plan.chooseTool("Area obstacle");
        plan.click(at(-60, 80));
        plan.click(at(0, 80));
        plan.click(at(60, 120));
        plan.key(SWT.ESC, SWT.ESC, 0);
        assertEquals(elements, count(aerodrome()));
        assertFalse(plan.document().history().canUndo(), "nothing to take back");
    }

    /** The key that removes an obstacle removes everything else of the site too, and one step back brings all of it again. */
    @ParameterizedTest
    @CsvSource({"runway-2", "runway-end-4", "helipad-1", "approach-direction-1", "taxiway-edge-1", "ground-level-1"})
    void everythingIsRemovedByItsKeyAndComesBack(String id) {
        Project before = EcoreUtil.copy(plan.document().project());
        Identified element = plan.element(id, Identified.class);
        editor.viewer().select((EditPart) editor.viewer().getEditPartRegistry().get(element));
        plan.key(SWT.DEL, SWT.DEL, 0);
        assertNull(element.eContainer(), "removed");
        undo();
        assertTrue(EcoreUtil.equals(before, plan.document().project()), "one step back");
    }

    /** A ground level is moved over the ground, with what all rules say of it, and removed by its key. */
    @Test
    void aGroundLevelIsMovedAndRemoved() throws Exception {
        plan.chooseTool("Ground level");
        plan.click(at(60, 80));
        GroundLevel level = aerodrome().getGroundLevels().get(aerodrome().getGroundLevels().size() - 1);
        plan.dragAndDrop(at(60, 80), at(90, 120), 0);
        assertAt(at(90, 120), level.getPlace());
        undo();
        assertAt(at(60, 80), level.getPlace());
        plan.key(SWT.DEL, SWT.DEL, 0);
        assertNull(level.eContainer(), "removed");
        undo();
        assertEquals(aerodrome(), level.eContainer());
    }

    /** Whoever begins with an empty project is told what comes next, until there is something to lay out at. */
    @Test
    void anEmptyProjectLeadsOn() throws Exception {
        page().closeEditor(editor, false);
        editor = (PlanEditor) page().openEditor(new ProjectInput(folder.resolve("empty.slopewright")), PlanEditor.ID);
        plan = new PlanDriver(editor);
        Patience.await("the plan has a size", () -> editor.view().widthPx() > 0);
        List<String> first = plan.texts("REMARKS");
        assertTrue(first.get(0).startsWith("Nothing has a place yet"), first.toString());
        assertTrue(first.get(1).contains("type the reference point"), first.toString());
        plan.document().history().perform(SetAttribute.of(aerodrome(), Literals.AERODROME__LATITUDE_DEG, 47.3));
        plan.document().history().perform(SetAttribute.of(aerodrome(), Literals.AERODROME__LONGITUDE_DEG, -11.9));
        assertTrue(plan.texts("REMARKS").get(0).startsWith("Draw a runway or a helipad"), plan.texts("REMARKS").toString());
        plan.chooseTool("Runway");
        plan.click(at(-150, 100));
        plan.click(at(150, 100));
        assertEquals(List.of(), plan.texts("REMARKS"));
    }
}
