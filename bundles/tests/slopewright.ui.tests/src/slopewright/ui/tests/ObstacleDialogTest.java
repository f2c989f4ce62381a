package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.Place;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.plan.PlanEditor;

/**
 * The dialog of an obstacle that is typed, at the pad of the demonstration: 47.303302855 N, 11.879983425 W, TLOF 87.1 m. Metres become
 * degrees by the radii of curvature of WGS 84 at that latitude: 500 m along the parallel are 0.00661161 degrees, 300 m along the meridian
 * 0.00269841.
 */
class ObstacleDialogTest {

    private static final double LATITUDE_DEG = 47.303302855;
    private static final double LONGITUDE_DEG = -11.879983425;

    @TempDir
    private Path folder;
    private IWorkbenchPage page;
    private PlanEditor editor;
    private ProjectDocument document;

    @BeforeEach
    void open() throws Exception {
        page = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
        editor = (PlanEditor) page.openEditor(new ProjectInput(DemoProjects.copy("harrow-vale", folder)), PlanEditor.ID);
        document = Adapters.adapt(editor, ProjectDocument.class);
        page.activate(editor);
    }

    @AfterEach
    void close() {
        page.closeEditor(editor, false);
    }

    /** Opens the dialog by its command, and types what a test wants while it is open. */
    private void ask(Consumer<Shell> answers) throws Exception {
        AtomicReference<Throwable> failure = new AtomicReference<>();
        Display display = Display.getCurrent();
        display.timerExec(300, () -> {
            Shell shell = Stream.of(display.getShells()).filter(open -> open.getText().equals("Obstacle by measurement")).findFirst()
                    .orElse(null);
            try {
                answers.accept(shell);
            } catch (RuntimeException | AssertionError e) {
                failure.set(e);
            } finally {
                if (shell != null && !shell.isDisposed()) {
                    shell.close();
                }
            }
        });
        editor.getSite().getService(IHandlerService.class).executeCommand("slopewright.ui.plan.addObstacle", null);
        if (failure.get() != null) {
            throw new AssertionError(failure.get());
        }
    }

    private static void type(Shell shell, String field, String words) {
        Text text = Widgets.all(shell, Text.class).filter(found -> field.equals(found.getData("number"))
                || field.equals(found.getData("question"))).findFirst().orElseThrow();
        assertTrue(text.isVisible(), field + " is asked for");
        text.setText(words);
    }

    private static void choose(Shell shell, String question, String words) {
        Combo combo = Widgets.all(shell, Combo.class).filter(found -> question.equals(found.getData("question"))).findFirst().orElseThrow();
        combo.select(List.of(combo.getItems()).indexOf(words));
        combo.notifyListeners(SWT.Selection, new Event());
    }

    private static Button ok(Shell shell) {
        return Widgets.all(shell, Button.class).filter(button -> button.getText().replace("&", "").equals("OK")).findFirst().orElseThrow();
    }

    private static void press(Shell shell) {
        assertTrue(ok(shell).isEnabled(), "everything is typed");
        ok(shell).notifyListeners(SWT.Selection, new Event());
    }

    private Obstacle added() {
        List<Obstacle> all = document.project().getAerodrome().getObstacles();
        assertEquals(6, all.size(), "one beside the five of the demonstration");
        return all.get(5);
    }

    /** Seconds by hand: 47 degrees 18 minutes 36 seconds are 47.31, 11 degrees 52 minutes 30 seconds are 11.875. */
    @Test
    void byCoordinates() throws Exception {
        ask(shell -> {
            choose(shell, "obstacle.way", "coordinates");
            type(shell, "name", "Chimney");
            type(shell, "FIRST_COORDINATE", "47 18 36 N");
            type(shell, "SECOND_COORDINATE", "011 52 30 W");
            type(shell, "TOP", "120");
            type(shell, "PLACE_ACCURACY", "0.5");
            assertFalse(ok(shell).isEnabled(), "the accuracy in height is not typed yet");
            type(shell, "TOP_ACCURACY", "1 ft");
            press(shell);
        });
        Place place = added().getPlaces().get(0);
        assertEquals(47.31, place.getLatitudeDeg(), 1e-12);
        assertEquals(-11.875, place.getLongitudeDeg(), 1e-12);
        assertEquals(120, added().getTopElevationM());
        assertEquals(0.3048, added().getVerticalAccuracyM(), 1e-12);
        document.history().undo();
        assertEquals(5, document.project().getAerodrome().getObstacles().size());
    }

    /**
     * 500 m to the east, 20 m high: 107.1 m. Off by 5 % and 2 degrees: 25 m along and 525 m times the sine of 2 degrees, 18.32 m, across
     * are 31.00 m together.
     */
    @Test
    void byBearingDistanceAndHeight() throws Exception {
        ask(shell -> {
            type(shell, "BEARING", "90");
            type(shell, "DISTANCE", "500");
            type(shell, "HEIGHT", "20");
            assertFalse(ok(shell).isEnabled(), "it has no name yet");
            type(shell, "name", "Mast");
            press(shell);
        });
        Place place = added().getPlaces().get(0);
        assertEquals(LATITUDE_DEG, place.getLatitudeDeg(), 1e-6);
        assertEquals(LONGITUDE_DEG + 0.00661161, place.getLongitudeDeg(), 1e-7);
        assertEquals(107.1, place.getElevationM(), 1e-9);
        assertEquals(31.0, added().getHorizontalAccuracyM(), 0.011);
        assertEquals(1, added().getVerticalAccuracyM(), 1e-9);
    }

    /**
     * 300 m to the north, 10 degrees from an eye 1.6 m up: 87.1 + 1.6 + 52.898 = 141.598 m. At 315 m and 10.5 degrees it would be 58.382 m
     * above the eye, 5.484 m more. A crown of 4 m radius is an area around it.
     */
    @Test
    void byClinometer() throws Exception {
        ask(shell -> {
            choose(shell, "obstacle.way", "bearing, distance, clinometer");
            choose(shell, "obstacle.shape", "a tree");
            type(shell, "name", "Oak");
            type(shell, "BEARING", "0");
            type(shell, "DISTANCE", "300");
            type(shell, "ANGLE", "10");
            type(shell, "CROWN", "4");
            assertFalse(Widgets.all(shell, Text.class).filter(text -> "HEIGHT".equals(text.getData("number"))).allMatch(Control::isVisible),
                    "no height is asked for beside an angle");
            press(shell);
        });
        Obstacle oak = added();
        assertEquals(ObstacleKind.AREA, oak.getKind());
        double north = oak.getPlaces().stream().mapToDouble(Place::getLatitudeDeg).average().orElseThrow();
        assertEquals(LATITUDE_DEG + 0.00269841, north, 1e-7);
        oak.getPlaces().forEach(place -> assertEquals(141.598, place.getElevationM(), 0.001));
        assertEquals(5.484, oak.getVerticalAccuracyM(), 0.0101);
    }

    /** One sentence for whatever is wrong, with the name of what is wrong; what stands in the other fields stays. */
    @Test
    void whatIsWrongIsSaidAndNothingTypedIsLost() throws Exception {
        ask(shell -> {
            type(shell, "name", "Mast");
            type(shell, "BEARING", "90");
            type(shell, "HEIGHT", "20");
            for (String wrong : List.of("", " ", "abc", "NaN", "Infinity", "-5", "1e308", "1e999", "500 kg", "500\n600", "1,234",
                    "200000")) {
                type(shell, "DISTANCE", wrong);
                assertFalse(ok(shell).isEnabled(), wrong);
                String said = said(shell);
                assertTrue(said.startsWith("Distance over the ground (m)"), wrong + ": " + said);
                assertFalse(said.contains("\n"), said);
                assertTrue(shell.computeSize(SWT.DEFAULT, SWT.DEFAULT).x > 0 && said.length() < 160, said);
            }
            type(shell, "DISTANCE", "500,5 m");
            for (String wrong : List.of("400", "-361", "90 m", "90 70", "east")) {
                type(shell, "BEARING", wrong);
                assertTrue(said(shell).startsWith("Bearing (°)"), said(shell));
            }
            type(shell, "BEARING", "90");
            type(shell, "HEIGHT_ACCURACY", "-1");
            assertTrue(said(shell).startsWith("Accuracy of heights (m)"), said(shell));
            choose(shell, "obstacle.way", "bearing, distance, clinometer");
            type(shell, "ANGLE", "10");
            assertTrue(ok(shell).isEnabled(), "what is no longer asked for is in nobody's way: " + said(shell));
            type(shell, "ANGLE", "89");
            assertTrue(said(shell).startsWith("Angle of the top (°)"), said(shell));
            assertEquals("500,5 m", typed(shell, "DISTANCE"));
            assertEquals("Mast", typed(shell, "name"));
        });
        assertEquals(5, document.project().getAerodrome().getObstacles().size());
    }

    private static String typed(Shell shell, String field) {
        return Widgets.all(shell, Text.class).filter(found -> field.equals(found.getData("number"))
                || field.equals(found.getData("question"))).findFirst().orElseThrow().getText();
    }

    /** The sentence at the head of the dialog. */
    private static String said(Shell shell) {
        return Widgets.all(shell, Text.class).filter(text -> (text.getStyle() & SWT.READ_ONLY) != 0).map(text -> text.getText().strip())
                .findFirst().orElse("");
    }

    /** What is cancelled adds nothing. */
    @Test
    void aDialogThatIsClosedAddsNothing() throws Exception {
        ask(shell -> type(shell, "name", "Nothing"));
        assertEquals(5, document.project().getAerodrome().getObstacles().size());
        assertFalse(document.history().canUndo());
    }
}
