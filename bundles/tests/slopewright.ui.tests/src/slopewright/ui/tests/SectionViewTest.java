package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.drawing.section.BeamEdge;
import slopewright.edit.MoveAid;
import slopewright.edit.RemoveAid;
import slopewright.edit.SetAttribute;
import slopewright.evaluation.AidEvaluation;
import slopewright.geometry.FramePoint;
import slopewright.model.AeroplaneGroup;
import slopewright.model.ApproachAid;
import slopewright.model.LightUnit;
import slopewright.model.ProfilePoint;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightPackage;
import slopewright.model.util.Projects;
import slopewright.rcp.internal.ProjectOpener;
import slopewright.siting.Meaning;
import slopewright.siting.Observation;
import slopewright.siting.Signals;
import slopewright.siting.Siting;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.document.Viewpoint;
import slopewright.ui.preferences.Preferences;
import slopewright.ui.profile.SectionView;
import slopewright.ui.profile.internal.section.ReadoutPanel.Sign;
import slopewright.ui.profile.internal.section.SectionCanvas;

/** The section of the demonstration project, worked by mouse and keyboard events. */
class SectionViewTest {

    @TempDir
    private Path folder;
    private IEditorPart editor;
    private SectionView view;
    private SectionDriver section;
    private ProjectDocument document;

    @BeforeEach
    void open() throws Exception {
        Preferences.store().setValue(Preferences.ANGLE_FORM, Preferences.DECIMAL);
        editor = page().openEditor(new ProjectInput(DemoProjects.copy("harrow-vale", folder)), ProjectOpener.EDITOR);
        document = Adapters.adapt(editor, ProjectDocument.class);
        view = (SectionView) page().showView(SectionView.ID);
        section = new SectionDriver(view);
        Patience.await("the section has a size", () -> view.canvas().section().isPresent() && section.world().widthPx() > 100);
    }

    @AfterEach
    void close() {
        page().closeEditor(editor, false);
        Preferences.store().setToDefault(Preferences.ANGLE_FORM);
    }

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    private ApproachAid row() {
        return Projects.aids(document.project()).get(0);
    }

    private List<Double> alongs() {
        return row().getUnits().stream().map(LightUnit::getAlongM).toList();
    }

    private List<Double> settings() {
        return row().getUnits().stream().map(LightUnit::getSettingDeg).toList();
    }

    private Siting laid() {
        return AidEvaluation.of(row()).siting().orThrow();
    }

    /** A place on the edge of unit C, 1200 m before the threshold. */
    private Point onEdge() {
        BeamEdge edge = section.edge("C");
        return section.at(-1200, edge.heightM(-1200));
    }

    @Test
    void theSceneOfTheChosenAidIsShown() {
        assertEquals(laid(), section.siting());
        List<String> texts = section.texts();
        for (String start : List.of("D  3", "B  2", "obstacle surface", "slope", "threshold", "MEHT", "on slope")) {
            assertTrue(texts.stream().anyMatch(text -> text.startsWith(start)), start + " of " + texts);
        }
        section.choose(view.bar().aids(), "APAPI 03");
        assertEquals("APAPI 03", document.viewState().aid().orElseThrow().getName());
        assertEquals(2, section.siting().units().size());
        document.viewState().choose(row().getId());
        assertEquals(4, section.siting().units().size());
        assertTrue(view.bar().aids().getText().startsWith("PAPI 09"), view.bar().aids().getText());
    }

    @Test
    void theWheelsAreThoseOfTheChosenAeroplanes() {
        assertEquals(laid().wheelClearanceM().orElseThrow(), view.canvas().section().orElseThrow().wheelHeightM().orElseThrow(), 1e-9);
        AeroplaneGroup lowest = Projects.host(row()).orElseThrow().getRegularGroups().stream()
                .min(Comparator.comparingDouble(AeroplaneGroup::getEyeToWheelM)).orElseThrow();
        section.choose(view.bar().groups(), lowest.getName());
        assertEquals(laid().mehtM() - lowest.getEyeToWheelM(), view.canvas().section().orElseThrow().wheelHeightM().orElseThrow(), 1e-9);
    }

    @Test
    void exaggerationChangesThePictureAndNotTheModel() {
        section.choose(view.bar().factors(), "Heights × 10");
        assertEquals(10, section.world().exaggeration(), 1e-9);
        assertEquals(10 * (section.world().toX(1) - section.world().toX(0)), section.world().toY(0) - section.world().toY(1), 1e-9);
        section.choose(view.bar().factors(), "Heights to fit");
        FramePoint lens = laid().reference();
        assertTrue(section.world().visible().contains(lens.alongM(), lens.heightM()));
        assertFalse(document.isDirty());
        assertEquals(laid(), section.siting());
    }

    private RunwayEnd end() {
        return (RunwayEnd) row().eContainer();
    }

    private ProfilePoint lastPoint() {
        return end().getSiteProfile().get(end().getSiteProfile().size() - 1);
    }

    /** A point of the ground is dragged with the verdict of all rules, one edit; a click selects it and a double click adds one. */
    @Test
    void theGroundIsEditedInTheSection() {
        view.canvas().fit(SectionCanvas.Extent.NEAR);
        section.world().zoomAt(section.at(700, 0).x, section.at(700, 0).y, 0.4);
        int points = end().getSiteProfile().size();
        ProfilePoint point = lastPoint();
        double along = point.getChainageM();
        double elevation = point.getElevationM();
        Point from = section.at(along, elevation - end().getThresholdElevationM());
        Point to = new Point(from.x + 15, from.y - 12);
        section.press(from);
        section.drag(from, to, 0);
        assertTrue(view.readout().text().startsWith("Ground"), view.readout().text());
        assertEquals(along, point.getChainageM(), "nothing moves before the drop");
        section.release(to, 0);
        double moved = (to.x - from.x) / section.world().scale();
        double raised = (from.y - to.y) / (section.world().scale() * section.world().exaggeration());
        assertEquals(along + moved, point.getChainageM(), 0.26, "to the half metre");
        assertEquals(elevation + raised, point.getElevationM(), 0.006, "to the centimetre");
        section.click(section.at(point.getChainageM(), point.getElevationM() - end().getThresholdElevationM()));
        assertEquals(List.of(point), document.viewState().selection());
        document.history().undo();
        assertEquals(List.of(along, elevation), List.of(point.getChainageM(), point.getElevationM()));
        Event twice = new Event();
        Point free = section.at(600, -3);
        twice.x = free.x;
        twice.y = free.y;
        twice.button = 1;
        section.control().notifyListeners(SWT.MouseDoubleClick, twice);
        assertEquals(points + 1, end().getSiteProfile().size());
        assertEquals(600, lastPoint().getChainageM(), 1 / section.world().scale());
        document.history().undo();
        assertEquals(points, end().getSiteProfile().size());
    }

    @Test
    void theCrosshairReadsWhatThePilotSeesThere() {
        for (double height : new double[] {40, 55, 70, 80, 95}) {
            Point at = section.at(-1000, height);
            section.move(at);
            FramePoint place = view.canvas().crosshair().orElseThrow();
            assertEquals(section.world().worldX(at.x), place.alongM(), 1e-9);
            Observation seen = Signals.observe(laid(), place);
            long white = seen.seen().stream().filter(seenUnit -> seenUnit.light().colour().key().equals("white")).count();
            String signal = section.value("Signal");
            assertEquals(white > 0, signal.contains(white + " white"), signal);
            assertEquals(white < 4, signal.contains(4 - white + " red"), signal);
            assertEquals(word(seen.meaning()), section.value("Meaning"));
            double margin = height(place) - place.heightM();
            assertTrue(section.value("Surface").endsWith(margin > 0 ? "below it" : "above it"), section.value("Surface"));
            assertEquals(seen.elevationDeg(), Double.parseDouble(section.value("Angle").split("°")[0]), 1e-4);
        }
    }

    private double height(FramePoint place) {
        var surface = laid().surface().orElseThrow().geometry();
        return surface.heightAtOutwardM(surface.outwardM(place.alongM(), place.rightM()));
    }

    private static String word(Meaning meaning) {
        return switch (meaning) {
            case WELL_ABOVE -> "well above the slope";
            case ABOVE -> "above the slope";
            case ON_SLOPE -> "on the slope";
            case BELOW -> "below the slope";
            case WELL_BELOW -> "well below the slope";
            case OUTSIDE -> "no signal of this aid";
        };
    }

    @Test
    void draggingAUnitMovesTheAidAsOneEdit() {
        List<Double> before = alongs();
        FramePoint lens = laid().reference();
        Point from = section.at(lens.alongM(), lens.heightM());
        Point to = new Point(from.x + 30, from.y);
        section.press(from);
        section.drag(from, to, 0);
        assertEquals(before, alongs(), "nothing is changed before the button is released");
        assertTrue(view.readout().text().startsWith("Moving the aid"), view.readout().text());
        double shown = section.siting().distanceM();
        assertEquals(Math.round(30 / section.world().scale() * 10) / 10.0, shown - lens.alongM(), 0.051);
        section.release(to, 0);
        assertEquals(shown, laid().distanceM(), 1e-9);
        assertEquals("Move aid", document.history().undoLabel());
        document.history().undo();
        assertEquals(before, alongs());
        assertFalse(document.history().canUndo());
        assertEquals(lens.alongM(), section.siting().distanceM(), 1e-9);
    }

    @Test
    void draggingABeamTurnsAllUnitsByTheSameAngleAsOneEdit() {
        List<Double> before = settings();
        Point from = onEdge();
        Point to = new Point(from.x, from.y + 14);
        section.press(from);
        section.drag(from, to, 0);
        assertEquals(before, settings());
        double by = section.edge("C").angleDeg() - before.get(1);
        assertTrue(by < -0.05, "the beam follows the pointer downward, by " + by);
        Patience.await("the rules are asked", () -> view.readout().rows().stream().anyMatch(row -> row.value().contains(" not met  ·  ")
                && row.sign() == Sign.BAD));
        section.release(to, 0);
        for (int i = 0; i < before.size(); i++) {
            assertEquals(before.get(i) + by, settings().get(i), 2e-6);
        }
        assertEquals(0, (settings().get(1) * 60) % 1, 1e-3, "whole minutes of arc");
        document.history().undo();
        assertEquals(before, settings());
        assertFalse(document.history().canUndo());
    }

    @Test
    void withTheKeyOneUnitIsTurnedAlone() {
        List<Double> before = settings();
        Point from = onEdge();
        section.dragAndDrop(from, new Point(from.x, from.y - 9), SWT.MOD1);
        assertTrue(settings().get(1) > before.get(1));
        assertEquals(before.get(0), settings().get(0));
        assertEquals(before.subList(2, 4), settings().subList(2, 4));
        document.history().undo();
        assertEquals(before, settings());
    }

    @Test
    void escapeGivesADragUp() {
        List<Double> before = settings();
        Point from = onEdge();
        section.press(from);
        section.drag(from, new Point(from.x, from.y + 12), 0);
        section.key(SWT.ESC);
        section.release(new Point(from.x, from.y + 12), 0);
        assertEquals(before, settings());
        assertFalse(document.history().canUndo());
        assertEquals(laid(), section.siting());
    }

    @Test
    void aClickPlacesThePilotsEyeWhichCanBeDragged() {
        Point at = section.at(-1500, 120);
        section.click(at);
        Viewpoint placed = document.viewState().viewpoint().orElseThrow();
        assertEquals(Projects.host(row()).orElseThrow().getId(), placed.hostId());
        assertEquals(-1500, placed.eye().alongM(), 1 / section.world().scale());
        assertEquals(Optional.of(placed.eye()), view.canvas().eye());
        Point to = new Point(at.x + 40, at.y + 10);
        section.dragAndDrop(at, to, 0);
        FramePoint moved = document.viewState().viewpoint().orElseThrow().eye();
        assertEquals(section.world().worldX(to.x), moved.alongM(), 1e-6);
        assertEquals(section.world().worldY(to.y), moved.heightM(), 1e-6);
        assertFalse(document.isDirty(), "looking is no edit");
        document.viewState().look(new Viewpoint(placed.hostId(), new FramePoint(-900, 5, 60)));
        assertEquals(Optional.of(new FramePoint(-900, 5, 60)), view.canvas().eye());
        section.press(section.at(-900, 60));
        section.drag(section.at(-900, 60), section.at(-700, 40), 0);
        section.key(SWT.ESC);
        assertEquals(new FramePoint(-900, 5, 60), document.viewState().viewpoint().orElseThrow().eye());
    }

    @Test
    void theSectionFollowsEditsAndUndo() {
        double before = section.siting().distanceM();
        document.history().perform(MoveAid.by(row(), -20, 0));
        assertEquals(before - 20, section.siting().distanceM(), 1e-6);
        document.history().undo();
        assertEquals(before, section.siting().distanceM(), 1e-9);
        document.history().perform(SetAttribute.of(row().getUnits().get(0), SlopewrightPackage.Literals.LIGHT_UNIT__SETTING_DEG, 3.7));
        assertEquals(3.7, section.edge("D").angleDeg(), 1e-9);
    }

    @Test
    void theWheelZoomsAboutThePointerAndTheGroundIsDragged() {
        Point at = section.at(-800, 50);
        double along = section.world().worldX(at.x);
        double height = section.world().worldY(at.y);
        double scale = section.world().scale();
        section.wheel(at, 1);
        assertEquals(scale * 1.2, section.world().scale(), 1e-9);
        assertEquals(along, section.world().worldX(at.x), 1e-6);
        assertEquals(height, section.world().worldY(at.y), 1e-6);
        Point ground = section.at(-600, 5);
        double there = section.world().worldX(ground.x);
        section.dragAndDrop(ground, new Point(ground.x + 25, ground.y + 5), 0);
        assertEquals(there, section.world().worldX(ground.x + 25), 1e-6);
        assertEquals(Optional.empty(), document.viewState().viewpoint(), "moving the view is no click");
    }

    @Test
    void theKeyboardDoesWhatTheMouseDoes() {
        section.key(SWT.ARROW_LEFT);
        FramePoint first = view.canvas().crosshair().orElseThrow();
        section.key(SWT.ARROW_UP);
        FramePoint second = view.canvas().crosshair().orElseThrow();
        assertEquals(first.alongM(), second.alongM(), 1e-6);
        assertTrue(second.heightM() > first.heightM());
        section.key(SWT.ARROW_RIGHT, '\0', SWT.SHIFT);
        assertEquals(1 / section.world().scale(), view.canvas().crosshair().orElseThrow().alongM() - second.alongM(), 1e-6);
        section.key(SWT.CR, '\r', 0);
        assertEquals(view.canvas().crosshair(), document.viewState().viewpoint().map(Viewpoint::eye));
        double scale = section.world().scale();
        section.key('+', '+', 0);
        assertEquals(scale * 1.2, section.world().scale(), 1e-9);
        section.key('-', '-', 0);
        assertEquals(scale, section.world().scale(), 1e-9);
        section.key(SWT.END);
        assertEquals(SectionCanvas.Extent.NEAR, view.canvas().extent());
        section.key(SWT.HOME);
        assertEquals(SectionCanvas.Extent.WHOLE, view.canvas().extent());
        List<Double> settings = settings();
        section.key(SWT.ARROW_UP, '\0', SWT.ALT);
        assertEquals(settings.get(0) + 1 / 60.0, settings().get(0), 2e-6);
        double along = alongs().get(0);
        section.key(SWT.ARROW_RIGHT, '\0', SWT.ALT);
        assertEquals(along + 1, alongs().get(0), 1e-9);
    }

    @Test
    void whatIsMissingIsSaidWithAWayOn() {
        document.history().perform(SetAttribute.of(row(), SlopewrightPackage.Literals.APPROACH_AID__FAMILY_KEY, "lantern-stack"));
        assertTrue(view.explanation().orElseThrow().contains("lantern-stack"), view.explanation().toString());
        document.history().undo();
        assertEquals(Optional.empty(), view.explanation());
        for (ApproachAid aid : List.copyOf(Projects.aids(document.project()))) {
            document.history().perform(RemoveAid.of(aid));
        }
        assertTrue(view.explanation().orElseThrow().contains("no approach aid yet"), view.explanation().toString());
        page().closeEditor(editor, false);
        Patience.await("the view knows", () -> view.explanation().orElse("").startsWith("Open a project"));
    }
}
