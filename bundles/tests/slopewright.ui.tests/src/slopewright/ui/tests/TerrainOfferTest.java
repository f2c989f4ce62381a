package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import org.eclipse.core.commands.Command;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.geometry.FramePoint;
import slopewright.model.ApproachAid;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.SurveyBlock;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Projects;
import slopewright.testkit.DemoProjects;
import slopewright.testkit.SurveySamples;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.plan.PlanEditor;
import slopewright.ui.properties.ElementPropertyPage;

/** Side levels are taken from a model of the terrain in the plan and in the sheet: what changes is shown before, and it is one step. */
class TerrainOfferTest {
    private static final String TITLE = "Side levels from terrain";
    private static final String COMMAND = "slopewright.ui.plan.takeGround";
    private static final int LOOK_MS = 100;
    private static final double UNDER_M = 2;

    @TempDir
    private Path folder;
    private PlanEditor editor;
    private PlanDriver plan;
    private ProjectDocument document;
    private final List<String> asked = new ArrayList<>();
    private final List<String> rows = new ArrayList<>();

    /** A level model two metres under the threshold, known within 0.4 m, so that every figure is known beforehand. */
    private void open(boolean withTerrain) throws Exception {
        Path file = DemoProjects.copy(DemoProjects.GOOD, folder);
        if (withTerrain) {
            Project project = DemoProjects.load(file);
            List<FramePoint> cells = new ArrayList<>();
            for (int along = -50; along <= 600; along += 10) {
                for (int right = -100; right <= 100; right += 10) {
                    cells.add(new FramePoint(along, right, -UNDER_M));
                }
            }
            SurveyBlock block = SurveySamples.add(project, Projects.host(DemoProjects.aid(project, "PAPI 09")).orElseThrow(), "plain",
                    cells.toArray(FramePoint[]::new));
            block.setKind("terrain");
            block.setHorizontalAccuracyM(7.072);
            block.setVerticalAccuracyM(0.4);
            block.setSource("invented model");
            block.setDate("2026-05-20");
            ProjectFile.save(project, file);
        }
        editor = (PlanEditor) page().openEditor(new ProjectInput(file), PlanEditor.ID);
        plan = new PlanDriver(editor);
        document = plan.document();
        Patience.await("the plan has a size", () -> editor.view().widthPx() > 0);
        page().activate(editor);
        awaitCommand();
    }

    /** The commands are those of the plan as soon as its window is the active one again. */
    private static void awaitCommand() {
        Patience.await("the commands are those of the plan", () -> command().isHandled());
    }

    @BeforeEach
    void forget() {
        asked.clear();
        rows.clear();
    }

    @AfterEach
    void close() {
        page().closeEditor(editor, false);
    }

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    private ApproachAid row() {
        return DemoProjects.aid(document.project(), "PAPI 09");
    }

    private RunwayEnd end() {
        return (RunwayEnd) Projects.host(row()).orElseThrow();
    }

    private void select(Identified element) {
        editor.viewer().select(plan.part(element).orElseThrow());
    }

    private void answer(String label) {
        Display.getCurrent().timerExec(LOOK_MS, () -> {
            Stream.of(Display.getCurrent().getShells()).filter(open -> TITLE.equals(open.getText())).findFirst().ifPresentOrElse(open -> {
                Widgets.all(open, Label.class).map(Label::getText).forEach(asked::add);
                Widgets.all(open, Text.class).map(Text::getText).forEach(asked::add);
                Widgets.all(open, Table.class).flatMap(table -> Stream.of(table.getItems())).map(TerrainOfferTest::cells)
                        .forEach(rows::add);
                Widgets.all(open, Button.class).filter(button -> label.equals(button.getText())).findFirst().orElseThrow()
                        .notifyListeners(SWT.Selection, null);
            }, () -> answer(label));
        });
    }

    private static String cells(TableItem item) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < item.getParent().getColumnCount(); i++) {
            cells.add(item.getText(i));
        }
        return String.join(" | ", cells);
    }

    private static void run() throws Exception {
        awaitCommand();
        PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(COMMAND, null);
    }

    private static Command command() {
        return PlatformUI.getWorkbench().getService(ICommandService.class).getCommand(COMMAND);
    }

    private static boolean isOffered() {
        return command().isEnabled();
    }

    @Test
    void thePlanShowsWhatChangesAndTakesItAsOneStep() throws Exception {
        open(true);
        byte[] before = ProjectFile.bytes(document.project());
        assertFalse(isOffered(), "nothing is selected");
        select(row());
        answer("Leave as it is");
        run();
        assertFalse(document.history().canUndo());
        String said = String.join("\n", asked);
        assertTrue(said.contains("plain: invented model") && said.contains("2026-05-20"), said);
        assertTrue(said.contains("known within 0.4 m"), said);
        assertTrue(said.contains(document.project().getAerodrome().getVerticalDatum()), said);
        assertTrue(said.contains("DATA-68"), "a model of 0.4 m is no survey, and the rule will say so: " + said);
        double threshold = end().getThresholdElevationM();
        assertTrue(rows.get(0).startsWith("0 m | "), rows.toString());
        assertTrue(rows.stream().allMatch(row -> row.contains(String.format("| %s m |", number(threshold - UNDER_M)))
                && row.endsWith("| 0.4 m | plain")), rows.toString());
        answer("Take");
        run();
        assertEquals("model of the terrain, no survey (plain: invented model)", end().getSiteProfileSource());
        assertEquals(0.4, end().getSiteProfileAccuracyM());
        end().getSiteProfile().forEach(point -> assertEquals(threshold - UNDER_M, point.getElevationM(), 5e-4));
        assertEquals("Take ground from terrain", document.history().undoLabel());
        document.history().undo();
        assertEquals(new String(before, StandardCharsets.UTF_8), new String(ProjectFile.bytes(document.project()),
                StandardCharsets.UTF_8));
        assertFalse(document.history().canUndo());
    }

    private static String number(double value) {
        return new DecimalFormat("0.###", DecimalFormatSymbols.getInstance(Locale.ROOT)).format(value);
    }

    @Test
    void whereThereIsNoModelItSaysSoAndChangesNothing() throws Exception {
        open(false);
        select(end());
        assertTrue(isOffered(), "its only aid is meant");
        answer("OK");
        run();
        String said = String.join("\n", asked);
        assertTrue(said.contains("no model of the terrain was imported"), said);
        assertFalse(document.history().canUndo());
    }

    /** The sheet of an aid at a runway end offers it, the one of a helipad's does not. */
    @Test
    void theSheetOffersItToo() throws Exception {
        open(true);
        Shell shell = new Shell(Display.getCurrent());
        ElementPropertyPage sheet = new ElementPropertyPage(document);
        try {
            shell.setLayout(new FillLayout());
            sheet.createControl(shell);
            shell.open();
            sheet.selectionChanged(null, new StructuredSelection(DemoProjects.aid(document.project(), "Portable unit, north pad")));
            IAction offer = sheet.actions().stream().filter(action -> action.getText().startsWith(TITLE)).findFirst().orElseThrow();
            assertFalse(offer.isEnabled());
            sheet.selectionChanged(null, new StructuredSelection(row()));
            assertTrue(offer.isEnabled());
            answer("Take");
            offer.run();
            assertEquals(0.4, end().getSiteProfileAccuracyM());
        } finally {
            sheet.dispose();
            shell.dispose();
        }
    }
}
