package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.edit.AddChild;
import slopewright.edit.SetAttribute;
import slopewright.evaluation.AidEvaluation;
import slopewright.geometry.Curvature;
import slopewright.geometry.FramePoint;
import slopewright.model.ApproachAid;
import slopewright.model.SlopewrightPackage;
import slopewright.model.SurveyBlock;
import slopewright.model.util.Projects;
import slopewright.rcp.internal.ProjectOpener;
import slopewright.siting.Light;
import slopewright.siting.SeenUnit;
import slopewright.siting.Signals;
import slopewright.siting.Siting;
import slopewright.testkit.DemoProjects;
import slopewright.testkit.SurveySamples;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.document.Viewpoint;
import slopewright.ui.profile.PilotView;
import slopewright.ui.profile.internal.pilot.PilotPage;
import slopewright.ui.profile.internal.pilot.PlayBar;
import slopewright.ui.profile.internal.pilot.Playback;

/** The pilot's view beside an open project: what is typed, pressed and flown, and what is seen. Its clock is wound by hand. */
class PilotViewTest {

    @TempDir
    private Path folder;
    private IWorkbenchPage page;
    private IEditorPart editor;
    private PilotView view;
    private ProjectDocument document;

    @BeforeEach
    void open() throws Exception {
        page = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
        editor = page.openEditor(new ProjectInput(DemoProjects.copy("every-family", folder)), ProjectOpener.EDITOR);
        document = Adapters.adapt(editor, ProjectDocument.class);
        view = (PilotView) page.showView(PilotView.ID);
        page.setPartState(page.getReference(view), IWorkbenchPage.STATE_MAXIMIZED);
        Patience.await("an indicator is seen", () -> view.page().isShowing() && isLarge());
    }

    private boolean isLarge() {
        return shown().canvas().control().getSize().x > 200 && shown().canvas().control().getSize().y > 150;
    }

    @AfterEach
    void close() {
        page.setPartState(page.getReference(view), IWorkbenchPage.STATE_RESTORED);
        page.closeEditor(editor, false);
        page.hideView(view);
    }

    private PilotPage shown() {
        return view.page();
    }

    private ApproachAid aid(String family) {
        return Projects.aids(document.project()).stream().filter(candidate -> family.equals(candidate.getFamilyKey())).findFirst()
                .orElseThrow();
    }

    private void choose(String family) {
        document.viewState().choose(aid(family).getId());
        Patience.await(family + " is seen", () -> shown().sight().filter(sight -> sight.indicator().aid() == aid(family)).isPresent());
    }

    private static void type(Text field, String number) {
        field.setText(number);
        field.notifyListeners(SWT.DefaultSelection, new Event());
    }

    private void key(int keyCode, int stateMask) {
        Event event = new Event();
        event.keyCode = keyCode;
        event.stateMask = stateMask;
        shown().canvas().control().notifyListeners(SWT.KeyDown, event);
    }

    private Text eyeField(int index) {
        return shown().controls().eyeFields().get(index).text();
    }

    private FramePoint eye() {
        return document.viewState().viewpoint().orElseThrow().eye();
    }

    private List<Light> lights() {
        return shown().sight().orElseThrow().seen().stream().map(SeenUnit::light).toList();
    }

    /** Paints the picture as the window does and returns its pixels. */
    private ImageData painted() {
        Control control = shown().canvas().control();
        control.update();
        Image image = new Image(control.getDisplay(), control.getSize().x, control.getSize().y);
        GC gc = new GC(image);
        Event event = new Event();
        event.gc = gc;
        event.setBounds(new Rectangle(0, 0, control.getSize().x, control.getSize().y));
        control.notifyListeners(SWT.Paint, event);
        gc.dispose();
        ImageData data = image.getImageData();
        image.dispose();
        return data;
    }

    private static int differing(ImageData one, ImageData other) {
        int count = 0;
        for (int y = 0; y < one.height; y++) {
            for (int x = 0; x < one.width; x++) {
                count += one.getPixel(x, y) == other.getPixel(x, y) ? 0 : 1;
            }
        }
        return count;
    }

    /** The lights are drawn though a hill would hide them: the words say that hills are a model's, and that they do not tell it. */
    @Test
    void whatHillsHideIsSaidNotToBeTold() {
        choose("four-unit-row");
        assertFalse(view.words().stream().anyMatch(line -> line.contains("what they hide")), view.words().toString());
        SurveyBlock block = SurveySamples.block(document.project(), Projects.host(aid("four-unit-row")).orElseThrow(), "hills",
                new FramePoint(5000, 0, 400));
        block.setKind("terrain");
        block.setHorizontalAccuracyM(20.0);
        block.setVerticalAccuracyM(2.0);
        document.history().perform(AddChild.of(document.project(), SlopewrightPackage.Literals.PROJECT__SURVEY_BLOCKS, block));
        Patience.await("the hills are told", () -> view.words().stream()
                .anyMatch(line -> line.contains("hills") && line.contains("no survey; what they hide is not told here")));
    }

    @Test
    void aTypedEyeChangesThePictureAndTheWords() {
        choose("four-unit-row");
        type(eyeField(0), "2000");
        type(eyeField(2), "122");
        ImageData onSlope = painted();
        List<String> words = view.words();
        type(eyeField(2), "250");
        assertEquals(new FramePoint(-2000, 0, 250), eye());
        assertEquals(List.of(Light.WHITE, Light.WHITE, Light.WHITE, Light.WHITE), lights());
        assertNotEquals(words, view.words());
        assertTrue(view.words().get(1).contains("250 m"), view.words().toString());
        assertTrue(differing(onSlope, painted()) > 100);
        type(eyeField(2), "20");
        assertEquals(List.of(Light.RED, Light.RED, Light.RED, Light.RED), lights());
    }

    @Test
    void whatIsNoNumberIsSaidInThePageAndChangesNothing() {
        choose("four-unit-row");
        type(eyeField(2), "122");
        type(eyeField(2), "high");
        assertFalse(shown().problem().isEmpty());
        assertEquals(122, eye().heightM());
        type(shown().controls().approachFields().get(1).text(), "-5");
        assertTrue(shown().problem().contains("Ground speed"), shown().problem());
        type(eyeField(2), "123");
        assertTrue(shown().problem().isEmpty());
    }

    /** For every family the lights are those of the signals for an eye lowered by curvature less refraction. */
    @Test
    void whatIsDrawnIsWhatTheSignalsSay() {
        for (ApproachAid aid : Projects.aids(document.project())) {
            choose(aid.getFamilyKey());
            key(SWT.HOME, 0);
            key(SWT.ARROW_UP, SWT.SHIFT);
            Siting siting = AidEvaluation.of(aid).siting().orThrow();
            double drop = Curvature.dropM(eye().planDistanceM(siting.reference()), Curvature.USUAL_REFRACTION);
            FramePoint lowered = eye().atHeight(eye().heightM() - drop);
            assertEquals(Signals.observe(siting, lowered).seen().stream().map(SeenUnit::light).toList(), lights(), aid.getName());
            assertEquals(Signals.observe(siting, lowered).meanings(), shown().sight().orElseThrow().observation().meanings());
            assertTrue(view.words().size() > siting.units().size(), aid.getName());
        }
    }

    @Test
    void dayDuskAndNightLookDifferent() {
        choose("four-unit-row");
        ImageData dusk = painted();
        shown().controls().lights().select(0);
        shown().controls().lights().notifyListeners(SWT.Selection, new Event());
        ImageData day = painted();
        shown().controls().lights().select(2);
        shown().controls().lights().notifyListeners(SWT.Selection, new Event());
        ImageData night = painted();
        Rectangle wide = shown().canvas().parts().wide();
        int least = wide.width * wide.height / 2;
        assertTrue(differing(dusk, day) > least && differing(day, night) > least);
    }

    @Test
    void anApproachMovesTheEyeAndStopsAtTheThreshold() {
        choose("four-unit-row");
        type(shown().controls().approachFields().get(1).text(), "100");
        key(' ', 0);
        assertTrue(shown().playback().isPlaying());
        double start = eye().alongM();
        view.advance(1);
        double later = eye().alongM();
        assertEquals(100 * 1852 / 3600.0 * shown().playback().factor(), later - start, 1e-6);
        for (int i = 0; i < 1000 && shown().playback().isPlaying(); i++) {
            view.advance(1);
        }
        assertFalse(shown().playback().isPlaying());
        assertEquals(0, eye().alongM());
        assertEquals(shown().bar().slider().getMaximum(), shown().bar().slider().getSelection());
        shown().bar().slider().setSelection(500);
        shown().bar().slider().notifyListeners(SWT.Selection, new Event());
        assertEquals(start / 2, eye().alongM(), 1e-6);
        shown().bar().play().notifyListeners(SWT.Selection, new Event());
        shown().bar().play().notifyListeners(SWT.Selection, new Event());
        assertFalse(shown().playback().isPlaying());
    }

    /** Flashes of 2 Hz, on as long as off: lit at first, dark after 0.3 s, lit after 0.6 s. */
    @Test
    void flashesKeepTimeAndCanBeHeld() {
        choose("heliport-sector");
        key(SWT.HOME, 0);
        type(eyeField(2), "300");
        assertEquals(List.of(Light.FLASHING_GREEN), lights());
        shown().bar().hold().setSelection(false);
        boolean[] lit = new boolean[3];
        for (int i = 0; i < lit.length; i++) {
            lit[i] = isLit();
            view.advance(0.25);
        }
        assertTrue(lit[0] != lit[1] && lit[1] != lit[2], "on and off every quarter of a second");
        assertTrue(view.words().stream().anyMatch(line -> line.contains("5.3.6.8")), view.words().toString());
        assertTrue(view.words().stream().noneMatch(line -> line.contains("from-memory") || line.contains("common-practice")),
                view.words().toString());
        shown().bar().hold().setSelection(true);
        shown().bar().hold().notifyListeners(SWT.Selection, new Event());
        for (int i = 0; i < 8; i++) {
            assertTrue(isLit());
            view.advance(0.125);
        }
        assertFalse(shown().isMoving());
    }

    private boolean isLit() {
        Playback playback = shown().playback();
        return playback.isLit(shown().sight().orElseThrow(), shown().sight().orElseThrow().seen().get(0));
    }

    @Test
    void keysMoveTheEyeAndOtherViewsFollow() {
        choose("four-unit-row");
        key(SWT.HOME, 0);
        FramePoint before = eye();
        key(SWT.ARROW_UP, 0);
        key(SWT.ARROW_RIGHT, SWT.SHIFT);
        key(SWT.PAGE_UP, 0);
        assertEquals(new FramePoint(before.alongM() + 50, before.rightM() + 50, before.heightM() + 1), eye());
        String host = Projects.host(aid("four-unit-row")).orElseThrow().getId();
        document.viewState().look(new Viewpoint(host, new FramePoint(-900, 3, 70)));
        assertEquals("900", eyeField(0).getText());
        assertEquals("70", eyeField(2).getText());
    }

    @Test
    void anEyeBesideTheBeamAndBehindTheAidIsSaid() {
        choose("four-unit-row");
        aid("four-unit-row").setBeamLeftLimitDeg(8.0);
        aid("four-unit-row").setBeamRightLimitDeg(8.0);
        type(eyeField(0), "1000");
        type(eyeField(1), "900");
        assertTrue(view.words().stream().anyMatch(line -> line.contains("outside its beam")), view.words().toString());
        type(eyeField(1), "0");
        assertFalse(view.words().stream().anyMatch(line -> line.contains("outside its beam")), view.words().toString());
        type(eyeField(0), "-900");
        assertTrue(view.words().get(0).startsWith("Past the aid"), view.words().toString());
        assertNotNull(painted());
    }

    @Test
    void panelsAreToldByTheirOffsets() {
        choose("alignment-panels");
        key(SWT.HOME, 0);
        assertTrue(view.words().stream().anyMatch(line -> line.startsWith("Panel") && line.contains("in line")), view.words().toString());
        key(SWT.PAGE_UP, SWT.SHIFT);
        key(SWT.ARROW_UP, SWT.SHIFT);
        assertTrue(view.words().stream().anyMatch(line -> line.contains("above the line")), view.words().toString());
        assertNotNull(painted());
    }

    @Test
    void whereThereIsNothingToSeeItSaysWhatToDo() {
        document.history().perform(SetAttribute.of(aid("four-unit-row").getUnits().get(0),
                SlopewrightPackage.Literals.LIGHT_UNIT__SETTING_DEG,
                null));
        document.viewState().choose(aid("two-unit-row").getId());
        document.viewState().choose(aid("four-unit-row").getId());
        assertTrue(view.explanation().orElseThrow().contains("setting"), view.explanation()::toString);
        page.closeEditor(editor, false);
        Patience.await("the view is empty", () -> view.explanation().isPresent());
        assertTrue(view.explanation().orElseThrow().startsWith("Open a project"), view.explanation()::toString);
    }

    /** The timer runs only while something moves and is seen. */
    @Test
    void theTimerStopsWhereNothingMoves() throws Exception {
        choose("heliport-sector");
        type(eyeField(2), "300");
        Patience.await("the clock runs", view::isTicking);
        page.showView("slopewright.ui.review.findings");
        Patience.await("the clock stops where the view is hidden", () -> !view.isTicking());
        page.showView(PilotView.ID);
        Patience.await("the clock runs again", view::isTicking);
    }

    /** On a small screen the row of keys and switches takes two rows, and nothing of it is cut; on a large one it takes one. */
    @ParameterizedTest
    @CsvSource({"370, true", "340, true", "900, false"})
    void nothingOfThePlayBarIsCut(int width, boolean inTwoRows) {
        Shell shell = new Shell(Display.getCurrent());
        try {
            GridLayoutFactory.fillDefaults().applyTo(shell);
            List<Object> told = new ArrayList<>();
            PlayBar bar = new PlayBar(shell, new PlayBar.Target(() -> told.add("play"), told::add, told::add, told::add, told::add));
            shell.setSize(width, 200);
            shell.open();
            Patience.pause(200);
            Widgets.all(shell, Control.class).forEach(control -> {
                Point end = shell.getDisplay().map(control.getParent(), shell, control.getLocation().x + control.getSize().x,
                        control.getLocation().y + control.getSize().y);
                assertTrue(end.x <= shell.getClientArea().width && end.y <= shell.getClientArea().height, control + " " + end);
            });
            assertTrue(bar.slider().getSize().x >= 60, bar.slider().getSize().toString());
            int keys = shell.getDisplay().map(bar.play(), shell, 0, 0).y;
            int rest = shell.getDisplay().map(bar.hold(), shell, 0, 0).y;
            assertEquals(inTwoRows, rest - keys > 20, keys + " and " + rest);
        } finally {
            shell.dispose();
        }
    }
}
