package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.model.ApproachAid;
import slopewright.model.ApproachDirection;
import slopewright.model.util.Projects;
import slopewright.rcp.internal.ProjectOpener;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.profile.DirectionsView;

/** The landing directions of the demonstration project: looked for in the background, chosen by keys, taken by the button. */
class DirectionsViewTest {

    @TempDir
    private Path folder;
    private IEditorPart editor;
    private DirectionsView view;
    private ProjectDocument document;
    private ApproachAid aid;

    @BeforeEach
    void open() throws Exception {
        editor = page().openEditor(new ProjectInput(DemoProjects.copy("harrow-vale", folder)), ProjectOpener.EDITOR);
        document = Adapters.adapt(editor, ProjectDocument.class);
        aid = DemoProjects.aid(document.project(), "Portable unit, north pad");
        document.viewState().choose(aid.getId());
        view = (DirectionsView) page().showView(DirectionsView.ID);
        Patience.await("the directions are found", () -> !view.isLooking() && !view.page().read().get(0).isEmpty());
    }

    @AfterEach
    void close() {
        page().closeEditor(editor, false);
    }

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    private static Event key(int code, int mask) {
        Event event = new Event();
        event.keyCode = code;
        event.stateMask = mask;
        return event;
    }

    @Test
    void aDirectionIsChosenAndTakenAndLookedAtAgain() {
        assertTrue(view.page().read().get(0).startsWith("250"), view.page().read().toString());
        view.page().chart().notifyListeners(SWT.KeyDown, key(SWT.ARROW_RIGHT, SWT.SHIFT));
        assertTrue(view.page().read().get(0).startsWith("260"), view.page().read().toString());
        Widgets.all(view.page().control(), Button.class).findFirst().orElseThrow().notifyListeners(SWT.Selection, new Event());
        assertEquals(260, ((ApproachDirection) Projects.host(aid).orElseThrow()).getTrueBearingDeg());
        Patience.await("they are looked for again", () -> !view.isLooking());
        assertEquals(Optional.empty(), view.explanation());
        document.history().undo();
        assertEquals(250, ((ApproachDirection) Projects.host(aid).orElseThrow()).getTrueBearingDeg());
    }
}
