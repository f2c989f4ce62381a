package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Random;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;
import slopewright.model.ApproachAid;
import slopewright.model.Obstacle;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Ids;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.plan.PlanEditor;

/** The plan of a site with ten thousand obstacles stays fluid. Figures are reported; the bounds leave room for a loaded machine. */
class PlanBulkTest {

    private static final int OBSTACLES = Integer.getInteger("slopewright.obstacles", 10_000);
    private static final int MOVES = 120;
    private static final double SPREAD_DEG = 0.06;

    @TempDir
    private Path folder;

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    private Path crowded() throws Exception {
        Path file = DemoCopy.of("harrow-vale", folder);
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
    void draggingARowOverTenThousandObstaclesStaysFluid(TestReporter reporter) throws Exception {
        Path file = crowded();
        long opened = System.nanoTime();
        PlanEditor editor = (PlanEditor) page().openEditor(new ProjectInput(file), PlanEditor.ID);
        paint();
        double openMs = (System.nanoTime() - opened) / 1e6;
        try {
            PlanDriver plan = new PlanDriver(editor);
            ApproachAid row = plan.element("approach-aid-1", ApproachAid.class);
            plan.lookAt(row, 2);
            Point from = plan.at(row.getUnits().get(0));
            plan.press(from);
            double[] frames = new double[MOVES];
            for (int i = 0; i < MOVES; i++) {
                long start = System.nanoTime();
                plan.drag(new Point(from.x + i, from.y));
                paint();
                frames[i] = (System.nanoTime() - start) / 1e6;
            }
            long dropped = System.nanoTime();
            plan.release(new Point(from.x + MOVES, from.y), 0);
            paint();
            double dropMs = (System.nanoTime() - dropped) / 1e6;
            Arrays.sort(frames);
            reporter.publishEntry(OBSTACLES + " obstacles", String.format(Locale.ROOT,
                    "open %.0f ms, drag median %.1f ms, 99 %% within %.1f ms, drop %.0f ms", openMs, frames[MOVES / 2],
                    frames[MOVES * 99 / 100], dropMs));
            assertEquals(OBSTACLES + 5, plan.document().project().getAerodrome().getObstacles().size());
            assertTrue(editor.isDirty());
            assertTrue(frames[MOVES / 2] < 100, "median frame " + frames[MOVES / 2] + " ms");
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
