package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.views.properties.IPropertyDescriptor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.checks.Outcome;
import slopewright.checks.Verdict;
import slopewright.drawing.scene.ScenePoint;
import slopewright.edit.AddChild;
import slopewright.edit.SetAttribute;
import slopewright.evaluation.AidEvaluation;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.ApproachAid;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.model.SurveyBlock;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Projects;
import slopewright.siting.site.PlanAxis;
import slopewright.siting.site.PlanPlane;
import slopewright.siting.site.PlanPoint;
import slopewright.testkit.DemoProjects;
import slopewright.testkit.SurveySamples;
import slopewright.ui.diagram.figures.ReadoutFigure;
import slopewright.ui.document.PickedPoint;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.document.Viewpoint;
import slopewright.ui.plan.PlanEditor;
import slopewright.ui.plan.internal.figures.TerrainLayer;
import slopewright.ui.profile.SectionView;
import slopewright.ui.properties.ElementPropertySource;

/** Survey points count in the plan as obstacles do: they are drawn, a drag is judged by them, and what could not be compared is named. */
class PlanSurveyTest {

    private static final double ABOVE_M = 22.5;

    @TempDir
    private Path folder;
    private PlanEditor editor;
    private PlanDriver plan;
    private ProjectDocument document;

    /** A point on the axis of the obstacle surface of PAPI 09, 1000 m out from its inner edge and so far above it. */
    @BeforeEach
    void open() throws Exception {
        Path file = DemoProjects.copy(DemoProjects.GOOD, folder);
        Project project = DemoProjects.load(file);
        AidEvaluation aid = AidEvaluation.of(DemoProjects.aid(project, "PAPI 09"));
        ProtectionSurface surface = aid.obstacles().orThrow().surface();
        double height = surface.startHeightM() + 1000 * Math.tan(Math.toRadians(surface.slopeDeg())) + ABOVE_M;
        SurveySamples.add(project, aid.host(), "ridge", new FramePoint(surface.startAlongM() - 1000, 0, height));
        ProjectFile.save(project, file);
        editor = (PlanEditor) page().openEditor(new ProjectInput(file), PlanEditor.ID);
        plan = new PlanDriver(editor);
        document = plan.document();
        Patience.await("the plan has a size", () -> editor.view().widthPx() > 0);
        awaitCheck();
    }

    @AfterEach
    void close() {
        page().closeEditor(editor, false);
    }

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    private void awaitCheck() {
        Patience.await("the project is checked", () -> document.lastResult().isPresent() && !document.isChecking());
        Patience.pause(50);
    }

    private ApproachAid row() {
        return DemoProjects.aid(document.project(), "PAPI 09");
    }

    private Outcome surfaceOutcome() {
        return document.lastResult().orElseThrow().outcomes().stream()
                .filter(outcome -> outcome.rule().equals("OBS-01") && outcome.elementId().equals(row().getId())).findFirst().orElseThrow();
    }

    @Test
    void aPointThatStandsThroughIsDrawnWithItsName() {
        assertTrue(plan.texts("OBSTACLES").stream().anyMatch(text -> text.contains("ridge") && text.contains("22.50 m through")),
                plan.texts("OBSTACLES").toString());
    }

    /** A click beside it picks nothing; one on it selects its block, and the sheet has the margin that the check found. */
    @Test
    void aPointThatIsClickedIsSelectedAndTheSheetSaysHowItStands() {
        SurveyBlock block = document.project().getSurveyBlocks().get(0);
        ScenePoint at = point();
        editor.view().centreOn(at.x(), at.y());
        Point pixel = plan.at(at);
        plan.press(new Point(pixel.x + 60, pixel.y));
        plan.release(new Point(pixel.x + 60, pixel.y), 0);
        assertEquals(Optional.empty(), document.viewState().picked(), "nothing stands there");
        plan.press(pixel);
        plan.release(pixel, 0);
        assertEquals(Optional.of(new PickedPoint(block.getId(), 0)), document.viewState().picked());
        assertEquals(List.of(block), document.viewState().selection());
        ElementPropertySource sheet = new ElementPropertySource(block);
        Map<String, String> shown = Stream.of(sheet.getPropertyDescriptors()).filter(row -> "Picked point".equals(row.getCategory()))
                .collect(Collectors.toMap(IPropertyDescriptor::getDisplayName, row -> String.valueOf(sheet.getPropertyValue(row.getId()))));
        String margin = shown.entrySet().stream().filter(row -> row.getKey().contains("PAPI 09")).findFirst().orElseThrow().getValue();
        double through = -surfaceOutcome().margin().orElseThrow();
        assertTrue(margin.startsWith(String.format(Locale.ROOT, "\u2212%.2f m", through)) || margin.startsWith(String.format(Locale.ROOT,
                "-%.2f m", through)), margin + " / " + through);
        assertTrue(margin.endsWith("0 m to the right") || margin.endsWith("0 m to the left"), margin);
        document.viewState().select(List.of(row()));
        assertEquals(Optional.empty(), document.viewState().picked(), "something else was selected");
    }

    /** The section picks what the plan picks; beside it a click places the pilot's eye, as it did before. */
    @Test
    void aPointIsPickedInTheSectionToo() throws Exception {
        SectionView view = (SectionView) page().showView(SectionView.ID);
        document.viewState().choose(row().getId());
        SectionDriver section = new SectionDriver(view);
        FramePoint point = AidEvaluation.of(row()).surroundings().orThrow().blocks().get(0).points().point(0);
        String block = document.project().getSurveyBlocks().get(0).getId();
        Patience.await("the section shows the points", () -> section.world().widthPx() > 100
                && view.canvas().section().filter(shown -> shown.surveyPoint(block, 0).isPresent()).isPresent());
        Point pixel = section.at(point.alongM(), point.heightM());
        section.press(new Point(pixel.x + 60, pixel.y));
        section.release(new Point(pixel.x + 60, pixel.y), 0);
        assertEquals(Optional.empty(), document.viewState().picked(), "nothing stands there");
        Optional<Viewpoint> eye = document.viewState().viewpoint();
        assertTrue(eye.isPresent());
        section.press(pixel);
        section.release(pixel, 0);
        assertEquals(Optional.of(new PickedPoint(block, 0)), document.viewState().picked());
        assertEquals(eye, document.viewState().viewpoint(), "the eye stays");
        assertEquals(Optional.of(point), view.canvas().picked(), "it is ringed");
        document.viewState().select(List.of(row()));
        assertEquals(Optional.empty(), view.canvas().picked());
    }

    /** A model whose ground rises to the right by 40 m: it is darker there, and bare where nobody knows the ground; no dots cover it. */
    @Test
    void aModelOfTheTerrainShadesThePlanByItsHeight() {
        List<FramePoint> cells = new ArrayList<>();
        for (int along = -2000; along <= -1000; along += 40) {
            for (int right = -400; right <= 400; right += 40) {
                cells.add(new FramePoint(along, right, 10 + (right + 400) / 20.0));
            }
        }
        SurveyBlock block = SurveySamples.block(document.project(), Projects.host(row()).orElseThrow(), "ground", cells.toArray(
                FramePoint[]::new));
        block.setKind("terrain");
        block.setHorizontalAccuracyM(28.3);
        block.setVerticalAccuracyM(1.0);
        document.history().perform(AddChild.of(document.project(), Literals.PROJECT__SURVEY_BLOCKS, block));
        awaitCheck();
        PlanAxis axis = PlanPlane.of(document.project()).orElseThrow().axis(Projects.host(row()).orElseThrow());
        PlanPoint middle = axis.toPlane(-1500, 0);
        editor.view().centreOn(middle.eastM(), middle.northM());
        Patience.pause(50);
        int low = band(axis.toPlane(-1500, -390));
        int high = band(axis.toPlane(-1500, 390));
        assertEquals(List.of(1, 10), List.of(low, high));
        assertEquals(0, band(axis.toPlane(-1500, 900)), "nobody knows the ground there");
    }

    private int band(PlanPoint place) {
        Point pixel = plan.at(new ScenePoint(place.eastM(), place.northM()));
        return plan.figures("IMAGES").stream().filter(TerrainLayer.class::isInstance).map(TerrainLayer.class::cast).findFirst()
                .orElseThrow().band(pixel.x, pixel.y);
    }

    /** Where the point lies in the plan: its axis is that of the runway end. */
    private ScenePoint point() {
        AidEvaluation aid = AidEvaluation.of(row());
        PlanPlane plane = PlanPlane.of(document.project()).orElseThrow();
        PlanPoint at = plane.axis(aid.host()).toPlane(aid.surroundings().orThrow().blocks().get(0).points().point(0));
        return new ScenePoint(at.eastM(), at.northM());
    }

    /** What is shown while dragging is what the check says after the drop, to the centimetre that is shown. */
    @Test
    void aDragIsJudgedBySurveyPointsAndSaysWhatTheCheckSays() {
        plan.lookAt(row(), 4);
        Point from = plan.at(row().getUnits().get(0));
        Point to = new Point(from.x + 200, from.y);
        plan.press(from);
        plan.drag(from, to, 0);
        ReadoutFigure.Line line = plan.readout().stream().filter(shown -> shown.text().contains("ridge")).findFirst()
                .orElseThrow(() -> new AssertionError(plan.readoutText()));
        assertEquals(ReadoutFigure.Verdict.BAD, line.verdict(), line.text());
        plan.release(to, 0);
        awaitCheck();
        Outcome outcome = surfaceOutcome();
        assertEquals(Verdict.NOT_MET, outcome.verdict());
        double through = -outcome.margin().orElseThrow();
        assertEquals(-AidEvaluation.of(row()).marginM().orElseThrow(), through, 1e-9);
        String shown = String.format(Locale.ROOT, "%.2f", through);
        assertTrue(line.text().contains(shown + " m"), line.text() + " / " + through);
    }

    @Test
    void anObstacleWithoutHeightIsNamedInsteadOfBeingTakenForLow() {
        Obstacle obstacle = document.project().getAerodrome().getObstacles().get(0);
        obstacle.getPlaces().forEach(place -> place.setElevationM(null));
        document.history().perform(SetAttribute.of(obstacle, Literals.OBSTACLE__TOP_ELEVATION_M, null));
        Patience.pause(50);
        assertTrue(plan.texts("REMARKS").stream().anyMatch(text -> text.contains("Not compared") && text.contains(obstacle.getName())),
                plan.texts("REMARKS").toString());
    }
}
