package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import java.util.Random;

import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.checks.Checks;
import slopewright.model.ApproachAid;
import slopewright.model.Obstacle;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Ids;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.plan.PlanEditor;

/** The plan of a site with ten thousand obstacles. How fast it is, the benchmark measures. */
class PlanBulkTest {

    private static final int OBSTACLES = 10_000;
    private static final int MOVES = 20;
    private static final int MOST_PARTS = 1_000;
    private static final double SPREAD_DEG = 0.06;

    @TempDir
    private Path folder;

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    private Path crowded() throws Exception {
        Path file = DemoProjects.copy("harrow-vale", folder);
        Project project = ProjectFile.load(file);
        Random random = new Random(7);
        for (int i = 0; i < OBSTACLES; i++) {
            Obstacle obstacle = SlopewrightFactory.eINSTANCE.createObstacle();
            obstacle.setName("T" + i);
            obstacle.setTopElevationM(90 + random.nextDouble() * 10);
            Place place = SlopewrightFactory.eINSTANCE.createPlace();
            place.setLatitudeDeg(47.3 + (random.nextDouble() - 0.5) * SPREAD_DEG);
            place.setLongitudeDeg(-11.89 + (random.nextDouble() - 0.5) * SPREAD_DEG * 2);
            obstacle.getPlaces().add(place);
            project.getAerodrome().getObstacles().add(obstacle);
        }
        Ids.assign(project);
        ProjectFile.save(project, file);
        return file;
    }

    @Test
    void aRowIsDraggedOverTenThousandObstacles() throws Exception {
        Path file = crowded();
        PlanEditor editor = (PlanEditor) page().openEditor(new ProjectInput(file), PlanEditor.ID);
        paint();
        try {
            PlanDriver plan = new PlanDriver(editor);
            assertTrue(editor.viewer().getEditPartRegistry().size() < MOST_PARTS, "not every obstacle has a part of its own");
            ApproachAid row = plan.element("approach-aid-1", ApproachAid.class);
            plan.lookAt(row, 2);
            double before = row.getUnits().get(0).getAlongM();
            Point from = plan.at(row.getUnits().get(0));
            plan.press(from);
            for (int i = 0; i < MOVES; i++) {
                plan.drag(new Point(from.x + i, from.y));
                paint();
            }
            assertFalse(plan.readout().isEmpty(), "values follow the drag");
            plan.release(new Point(from.x + MOVES, from.y), 0);
            paint();
            assertEquals(OBSTACLES + 5, plan.document().project().getAerodrome().getObstacles().size());
            assertTrue(editor.isDirty());
            assertNotEquals(before, row.getUnits().get(0).getAlongM());
            Patience.await("the site is checked", () -> plan.document().lastResult().isPresent() && !plan.document().isChecking());
            assertEquals(Checks.run(plan.document().project(), Optional.empty()).outcomes(),
                    plan.document().lastResult().orElseThrow().outcomes());
            plan.document().history().undo();
            assertEquals(before, row.getUnits().get(0).getAlongM());
        } finally {
            page().closeEditor(editor, false);
        }
    }

    /** Carries out what was asked to be painted. */
    private static void paint() {
        Display display = Display.getCurrent();
        boolean more = true;
        while (more) {
            more = display.readAndDispatch();
        }
        display.update();
    }
}
