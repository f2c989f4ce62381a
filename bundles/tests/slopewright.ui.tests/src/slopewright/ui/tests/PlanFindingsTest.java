package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.views.properties.IPropertySheetPage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.plan.PlanEditor;
import slopewright.ui.properties.ElementPropertyPage;

/** What the plan shows of a check, of an empty project and of a damaged file. */
class PlanFindingsTest {

    @TempDir
    private Path folder;

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    @AfterEach
    void close() {
        page().closeAllEditors(false);
    }

    @Test
    void elementsWithFindingsAreMarkedAfterTheBackgroundCheck() throws Exception {
        PlanEditor editor = (PlanEditor) page().openEditor(new ProjectInput(DemoProjects.copy(DemoProjects.FAULTS, folder)),
                PlanEditor.ID);
        ProjectDocument document = Adapters.adapt(editor, ProjectDocument.class);
        Patience.await("the project is checked", () -> document.lastResult().isPresent());
        Patience.pause(50);
        assertTrue(editor.markedElements() >= 3, "marked: " + editor.markedElements());
    }

    @Test
    void theSelectionFillsThePropertySheet() throws Exception {
        PlanEditor editor = (PlanEditor) page().openEditor(new ProjectInput(DemoProjects.copy("harrow-vale", folder)), PlanEditor.ID);
        assertInstanceOf(ElementPropertyPage.class, editor.getAdapter(IPropertySheetPage.class));
    }

    @Test
    void aNewProjectOpensEmptyAndDirty() throws Exception {
        PlanEditor editor = (PlanEditor) page().openEditor(new ProjectInput(folder.resolve("new.slopewright")), PlanEditor.ID);
        assertTrue(editor.isDirty());
        PlanDriver plan = new PlanDriver(editor);
        plan.chooseTool("PAPI");
        plan.move(new Point(200, 200));
        plan.click(new Point(200, 200));
        assertTrue(editor.notice().contains("there is none whose place"), editor.notice());
    }

    @Test
    void aDamagedFileIsNotOpenedAndTheReasonNamesIt() throws Exception {
        Path damaged = Files.writeString(folder.resolve("damaged.slopewright"), "<not a project");
        IEditorPart editor = page().openEditor(new ProjectInput(damaged), PlanEditor.ID);
        assertTrue(!(editor instanceof PlanEditor plan) || plan.viewer() == null, "no plan of a damaged file");
        assertEquals("<not a project", Files.readString(damaged));
    }
}
