package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;

import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.testkit.DemoProjects;
import slopewright.ui.diagram.figures.ReadoutFigure;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.plan.PlanEditor;

/** What stands below the surface gets a tick while an aid is dragged only where a survey says that nothing else stands there. */
class UnsurveyedDragTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void clearIsATickOnlyWhereItWasSurveyed(boolean surveyed) throws Exception {
        Path file = DemoProjects.copy(DemoProjects.GOOD, folder);
        Project project = DemoProjects.load(file);
        if (!surveyed) {
            project.getAerodrome().getObstacleSurveys().clear();
            ProjectFile.save(project, file);
        }
        IWorkbenchPage page = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
        PlanEditor editor = (PlanEditor) page.openEditor(new ProjectInput(file), PlanEditor.ID);
        try {
            PlanDriver plan = new PlanDriver(editor);
            Patience.await("the plan has a size", () -> editor.view().widthPx() > 0);
            ApproachAid row = DemoProjects.aid(plan.document().project(), "PAPI 09");
            plan.lookAt(row, 4);
            Point from = plan.at(row.getUnits().get(0));
            plan.press(from);
            plan.drag(from, new Point(from.x + 8, from.y), 0);
            ReadoutFigure.Line line = plan.readout().stream().filter(shown -> shown.text().startsWith("Clear by")).findFirst()
                    .orElseThrow(() -> new AssertionError(plan.readoutText()));
            assertEquals(surveyed ? ReadoutFigure.Verdict.GOOD : ReadoutFigure.Verdict.NONE, line.verdict(), line.text());
            plan.release(new Point(from.x + 8, from.y), 0);
        } finally {
            page.closeEditor(editor, false);
        }
    }
}
