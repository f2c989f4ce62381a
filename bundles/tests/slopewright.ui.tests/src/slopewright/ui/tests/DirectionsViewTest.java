package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
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
import slopewright.ui.preferences.Preferences;
import slopewright.ui.profile.DirectionsView;

/** The landing directions of the demonstration project: looked for in the background, read by keys and mouse, taken by the button. */
class DirectionsViewTest {

    @TempDir
    private Path folder;
    private IEditorPart editor;
    private DirectionsView view;
    private ProjectDocument document;
    private ApproachAid aid;

    @BeforeEach
    void open() throws Exception {
        Preferences.store().setValue(Preferences.ANGLE_FORM, Preferences.DECIMAL);
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
        Preferences.store().setToDefault(Preferences.ANGLE_FORM);
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

    /** What the head reads: bearing and slope, whatever else it says. */
    private double[] read() {
        Matcher head = Pattern.compile("(\\d{3})°\\D+(\\d+(?:\\.\\d+)?)°.*").matcher(view.page().read().get(0));
        assertTrue(head.matches(), view.page().read().get(0));
        return new double[] {Double.parseDouble(head.group(1)), Double.parseDouble(head.group(2))};
    }

    private double[] mouse(int type, int x, int y) {
        Event event = new Event();
        event.x = x;
        event.y = y;
        event.button = type == SWT.MouseDown ? 1 : 0;
        view.page().chart().notifyListeners(type, event);
        return read();
    }

    /** Returns the middle of the chart: where a bearing turns from west to east, and from north to south. */
    private Point middle() {
        Rectangle area = view.page().chart().getClientArea();
        int x = 0;
        for (int at = area.width / 4; at < area.width * 3 / 4 && x == 0; at++) {
            boolean west = mouse(SWT.MouseMove, at, area.height / 2)[0] > 180;
            x = !west && mouse(SWT.MouseMove, at - 1, area.height / 2)[0] > 180 ? at : 0;
        }
        int y = 0;
        for (int at = area.height / 4; at < area.height * 3 / 4 && y == 0; at++) {
            boolean south = isSouth(mouse(SWT.MouseMove, x + 3, at)[0]);
            y = south && !isSouth(mouse(SWT.MouseMove, x + 3, at - 1)[0]) ? at : 0;
        }
        assertTrue(x > 0 && y > 0, "the chart has a middle in " + area);
        return new Point(x, y);
    }

    private static boolean isSouth(double bearing) {
        return bearing > 90 && bearing < 270;
    }

    /** The chart is a compass rose: north up, east to the right, and a slope twice as steep twice as far from the middle. */
    @Test
    void theMouseReadsAndAClickIsTaken() {
        Rectangle area = view.page().chart().getClientArea();
        assertTrue(Math.min(area.width, area.height) > 120, "the chart has room: " + area);
        view.page().chart().redraw();
        view.page().chart().update();
        Patience.pause(300);
        Point middle = middle();
        int far = Math.min(area.width, area.height) / 7;
        assertEquals(90, mouse(SWT.MouseMove, middle.x + far, middle.y)[0], 3);
        assertEquals(270, mouse(SWT.MouseMove, middle.x - far, middle.y)[0], 3);
        assertEquals(180, mouse(SWT.MouseMove, middle.x, middle.y + far)[0], 3);
        assertEquals(135, mouse(SWT.MouseMove, middle.x + far, middle.y + far)[0], 3);
        double bearing = mouse(SWT.MouseMove, middle.x, middle.y - far)[0];
        assertEquals(0, Math.min(bearing, 360 - bearing), 3);
        double near = mouse(SWT.MouseMove, middle.x + far, middle.y)[1];
        assertEquals(2 * near, mouse(SWT.MouseMove, middle.x + 2 * far, middle.y)[1], 1.01, "a step of a degree, rounded twice");

        double[] clicked = mouse(SWT.MouseDown, middle.x + far, middle.y + far);
        mouse(SWT.MouseMove, middle.x - far, middle.y);
        Widgets.all(view.page().control(), Button.class).findFirst().orElseThrow().notifyListeners(SWT.Selection, new Event());
        ApproachDirection taken = (ApproachDirection) Projects.host(aid).orElseThrow();
        assertEquals(clicked[0], taken.getTrueBearingDeg(), "what was clicked is taken, not what the mouse is over since");
        assertEquals(clicked[1], aid.getSlopeDeg(), 1e-9);
        document.history().undo();
        assertEquals(250, taken.getTrueBearingDeg());
    }
}
