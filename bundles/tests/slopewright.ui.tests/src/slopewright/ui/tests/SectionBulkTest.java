package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Random;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.model.Obstacle;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Ids;
import slopewright.rcp.internal.ProjectOpener;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.profile.SectionView;

/** The section of a site with ten thousand obstacles shows them with few marks, and works. */
class SectionBulkTest {

    private static final int OBSTACLES = 10_000;
    private static final int MOVES = 20;
    private static final int MOST_MARKS = 600;
    private static final double SPREAD_DEG = 0.03;

    @TempDir
    private Path folder;

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    /** Masts up to 30 m high, most of them west of the threshold of runway 09, where its approach is. */
    private Path crowded() throws Exception {
        Path file = DemoProjects.copy("harrow-vale", folder);
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
    void thePointerAndADragWorkOverTenThousandObstacles() throws Exception {
        IEditorPart editor = page().openEditor(new ProjectInput(crowded()), ProjectOpener.EDITOR);
        try {
            ProjectDocument document = Adapters.adapt(editor, ProjectDocument.class);
            SectionView view = (SectionView) page().showView(SectionView.ID);
            SectionDriver section = new SectionDriver(view);
            Patience.await("the section shows the obstacles", () -> section.world().widthPx() > 100
                    && view.canvas().section().filter(shown -> shown.drawn().surroundings().count() > OBSTACLES / 2).isPresent());
            assertTrue(view.canvas().marks().size() < MOST_MARKS, view.canvas().marks().size() + " marks");
            for (int i = 0; i < MOVES; i++) {
                section.move(new Point(100 + i, 60));
                section.wheel(new Point(200, 60), i % 2 == 0 ? 1 : -1);
                assertTrue(view.canvas().marks().size() < MOST_MARKS, view.canvas().marks().size() + " marks");
            }
            double along = section.siting().distanceM();
            Point unit = section.at(along, section.siting().reference().heightM());
            section.press(unit);
            for (int i = 0; i < MOVES; i++) {
                section.drag(new Point(unit.x + 6 + i, unit.y));
            }
            section.release(new Point(unit.x + 20, unit.y), 0);
            assertTrue(document.isDirty());
            document.history().undo();
            assertEquals(along, section.siting().distanceM(), 1e-9);
        } finally {
            page().closeEditor(editor, false);
        }
    }
}
