package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Random;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;
import slopewright.model.Obstacle;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Ids;
import slopewright.rcp.internal.ProjectOpener;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.profile.SectionView;

/** The section of a site with ten thousand obstacles. What a frame costs the processor is reported, not judged. */
class SectionBulkTest {

    private static final int OBSTACLES = 10_000;
    private static final int MOVES = 60;
    private static final double SPREAD_DEG = 0.03;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    @TempDir
    private Path folder;

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    /** Masts up to 30 m high, most of them west of the threshold of runway 09, where its approach is. */
    private Path crowded() throws Exception {
        Path file = DemoCopy.of("harrow-vale", folder);
        Project project = ProjectFile.load(file);
        Random random = new Random(7);
        for (int i = 0; i < OBSTACLES; i++) {
            Obstacle obstacle = SlopewrightFactory.eINSTANCE.createObstacle();
            obstacle.setName("T" + i);
            obstacle.setTopElevationM(86 + random.nextDouble() * 30);
            Place place = SlopewrightFactory.eINSTANCE.createPlace();
            place.setLatitudeDeg(47.3 + (random.nextDouble() - 0.5) * SPREAD_DEG * 0.1);
            place.setLongitudeDeg(-11.9 - random.nextDouble() * SPREAD_DEG);
            obstacle.getPlaces().add(place);
            project.getAerodrome().getObstacles().add(obstacle);
        }
        Ids.assign(project);
        ProjectFile.save(project, file);
        return file;
    }

    @Test
    void thePointerAndADragStayFluidOverTenThousandObstacles(TestReporter reporter) throws Exception {
        IEditorPart editor = page().openEditor(new ProjectInput(crowded()), ProjectOpener.EDITOR);
        try {
            ProjectDocument document = Adapters.adapt(editor, ProjectDocument.class);
            SectionView view = (SectionView) page().showView(SectionView.ID);
            SectionDriver section = new SectionDriver(view);
            DemoCopy.await("the section has a size", () -> view.canvas().live().isPresent() && section.world().widthPx() > 100);
            assertTrue(view.canvas().live().get().obstacles().worstFirst().size() > OBSTACLES / 2);
            assertTrue(view.canvas().marks().size() < 600, view.canvas().marks().size() + " marks");
            Image image = new Image(Display.getCurrent(), (int) section.world().widthPx(), (int) section.world().heightPx());
            GC gc = new GC(image);
            double pointer = median(view, gc, i -> section.move(new Point(100 + i, 60)));
            double zoom = median(view, gc, i -> section.wheel(new Point(200, 60), i % 2 == 0 ? 1 : -1));
            double along = section.siting().distanceM();
            Point unit = section.at(along, section.siting().reference().heightM());
            section.press(unit);
            double drag = median(view, gc, i -> section.drag(new Point(unit.x + 6 + i / 2, unit.y)));
            section.release(new Point(unit.x + 20, unit.y), 0);
            gc.dispose();
            image.dispose();
            assertTrue(document.isDirty());
            document.history().undo();
            assertEquals(along, section.siting().distanceM(), 1e-9);
            reporter.publishEntry("10 000 obstacles", String.format(Locale.ROOT,
                    "processor time of a frame, median: pointer %.1f ms, zoom %.1f ms, drag %.1f ms", pointer, zoom, drag));
        } finally {
            page().closeEditor(editor, false);
        }
    }

    /** What is done once a frame. */
    private interface Step {

        void run(int frame);
    }

    private static double median(SectionView view, GC gc, Step step) {
        double[] frames = new double[MOVES];
        for (int i = 0; i < MOVES; i++) {
            long start = THREADS.getCurrentThreadCpuTime();
            step.run(i);
            view.canvas().paint(gc);
            frames[i] = (THREADS.getCurrentThreadCpuTime() - start) / 1e6;
        }
        Arrays.sort(frames);
        return frames[MOVES / 2];
    }
}
