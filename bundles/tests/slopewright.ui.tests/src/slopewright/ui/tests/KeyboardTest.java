package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.core.commands.Command;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Identified;
import slopewright.model.LightUnit;
import slopewright.model.Obstacle;
import slopewright.model.util.Projects;
import slopewright.rcp.internal.CheckingPerspective;
import slopewright.rcp.internal.PartRound;
import slopewright.rcp.internal.PilotPerspective;
import slopewright.rcp.internal.SitingPerspective;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.plan.PlanEditor;
import slopewright.ui.profile.PilotView;
import slopewright.ui.profile.SectionView;
import slopewright.ui.review.FindingsView;

/** What is done without a mouse: going round views and elements, placing, and the arrangements of the views. */
class KeyboardTest {
    private static final double SAME_PLACE_M = 1e-6;
    private static final String NEXT = "org.eclipse.ui.navigate.next";
    private static final String PREVIOUS = "org.eclipse.ui.navigate.previous";

    @TempDir
    private Path folder;
    private PlanEditor editor;
    private PlanDriver plan;

    @BeforeEach
    void open() throws Exception {
        editor = (PlanEditor) page().openEditor(new ProjectInput(DemoProjects.copy("harrow-vale", folder)), PlanEditor.ID);
        plan = new PlanDriver(editor);
        Patience.await("the plan has a size", () -> editor.view().widthPx() > 0);
    }

    @AfterEach
    void close() throws Exception {
        run("slopewright.rcp.drafting");
        page().hideView(page().findView(SectionView.ID));
        page().closeAllEditors(false);
    }

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    private static void run(String command) throws Exception {
        PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(command, null);
        Patience.pause(50);
    }

    private List<ApproachAid> aids() {
        return Projects.aids(plan.document().project());
    }

    private List<Identified> selection() {
        return plan.document().viewState().selection();
    }

    @Test
    void theRoundOfTheViewsComesBackToWhereItBegan() throws Exception {
        page().activate(editor);
        List<IWorkbenchPart> round = PartRound.parts(page());
        assertTrue(round.size() >= 3, round.toString());
        assertEquals(editor, round.get(0), "the plan comes first");
        List<IWorkbenchPart> reached = new ArrayList<>();
        for (int i = 0; i < round.size(); i++) {
            run("slopewright.rcp.nextView");
            reached.add(page().getActivePart());
        }
        List<IWorkbenchPart> expected = new ArrayList<>(round.subList(1, round.size()));
        expected.add(editor);
        assertEquals(expected, reached);
        run("slopewright.rcp.previousView");
        assertEquals(round.get(round.size() - 1), page().getActivePart());
    }

    @Test
    void eachArrangementShowsWhatItIsFor() throws Exception {
        run("slopewright.rcp.pilot");
        assertEquals(PilotPerspective.ID, page().getPerspective().getId());
        assertTrue(page().isPartVisible(page().findView(PilotView.ID)));
        assertTrue(page().isPartVisible(page().findView(SectionView.ID)));
        assertTrue(page().isPartVisible(editor));
        run("slopewright.rcp.checking");
        assertEquals(CheckingPerspective.ID, page().getPerspective().getId());
        assertTrue(page().isPartVisible(page().findView(FindingsView.ID)));
        run("slopewright.rcp.drafting");
        assertEquals(SitingPerspective.ID, page().getPerspective().getId());
    }

    /** The demonstration has three indicators at its runways, 12 units all in all with the one of the pad, and seven obstacles at least. */
    @Test
    void theRoundOfTheElementsReachesEveryUnitAndObstacle() throws Exception {
        page().activate(editor);
        editor.viewer().deselectAll();
        Set<Identified> reached = new LinkedHashSet<>();
        run(NEXT);
        Identified first = selection().get(0);
        do {
            reached.add(selection().get(0));
            run(NEXT);
        } while (!selection().get(0).equals(first) && reached.size() < 200);
        for (ApproachAid aid : aids()) {
            assertTrue(reached.contains(aid), String.valueOf(aid.getName()));
            assertTrue(reached.containsAll(aid.getUnits()));
        }
        assertTrue(reached.containsAll(plan.document().project().getAerodrome().getObstacles()));
        run(PREVIOUS);
        assertNotEquals(first, selection().get(0));
    }

    @Test
    void theRoundGoesThroughTheSectionToo() throws Exception {
        SectionView section = (SectionView) page().showView(SectionView.ID);
        Patience.await("there is a section", () -> section.canvas().section().isPresent());
        section.canvas().paint(new org.eclipse.swt.graphics.GC(section.canvas().control()));
        Set<Identified> reached = new LinkedHashSet<>();
        double before = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < 3; i++) {
            run(NEXT);
            reached.add(selection().get(0));
            double along = section.canvas().crosshair().orElseThrow().alongM();
            assertTrue(along >= before - SAME_PLACE_M, along + " follows " + before);
            before = along;
        }
        assertEquals(3, reached.size());
        assertTrue(reached.stream().allMatch(one -> one instanceof LightUnit || one instanceof Obstacle), reached.toString());
    }

    /** End 21 is the only runway end of the demonstration without an indicator. */
    @Test
    void whatIsChosenIsPlacedWithEnterWhereItBelongs() {
        int before = aids().size();
        plan.chooseTool("PAPI");
        plan.key(SWT.CR, SWT.CR, 0);
        assertEquals(before + 1, aids().size());
        ApproachAid made = (ApproachAid) selection().get(0);
        assertEquals("21", Projects.host(made).map(ApproachHost::getDesignator).orElseThrow());
        assertTrue(made.getUnits().stream().allMatch(unit -> unit.getRightM() < 0), "on the left");
        double along = made.getUnits().get(0).getAlongM();
        plan.key(SWT.ARROW_UP, '\0', 0);
        plan.key(SWT.ARROW_RIGHT, '\0', 0);
        assertNotEquals(along, made.getUnits().get(0).getAlongM(), "the arrows move it along the runway");
        plan.document().history().undo();
        plan.document().history().undo();
        plan.document().history().undo();
        assertEquals(before, aids().size());
    }

    @Test
    void arrowsChooseSideAndEndAndEscapeGivesUp() {
        int before = aids().size();
        ApproachHost east = aids().stream().flatMap(aid -> Projects.host(aid).stream()).filter(host -> "09".equals(host.getDesignator()))
                .findFirst().orElseThrow();
        editor.viewer().select(plan.part(east.getAids().get(0)).orElseThrow());
        plan.chooseTool("APAPI");
        plan.key(SWT.ARROW_LEFT, '\0', 0);
        assertTrue(plan.readoutText().contains("09") && plan.readoutText().contains("left"), plan.readoutText());
        plan.key(SWT.ARROW_DOWN, '\0', 0);
        assertTrue(plan.readoutText().contains("09") && plan.readoutText().contains("right"), plan.readoutText());
        plan.key(SWT.ARROW_RIGHT, '\0', 0);
        assertFalse(plan.readoutText().lines().findFirst().orElseThrow().contains("09"), plan.readoutText());
        plan.key(SWT.ESC, SWT.ESC, 0);
        assertEquals("", plan.readoutText());
        assertEquals(before, aids().size());
        assertFalse(plan.document().isDirty());
    }

    @Test
    void anObstacleIsPlacedByTheKeysToo() {
        int before = plan.document().project().getAerodrome().getObstacles().size();
        plan.chooseTool("Point obstacle");
        plan.key(SWT.ARROW_RIGHT, '\0', 0);
        plan.key(SWT.ARROW_RIGHT, '\0', 0);
        plan.key(SWT.CR, SWT.CR, 0);
        assertEquals(before + 1, plan.document().project().getAerodrome().getObstacles().size());
        assertTrue(selection().get(0) instanceof Obstacle, selection().toString());
    }

    /** The entry stands in the menu of files, whichever view the keys go to. */
    @Test
    void aSurveyIsImportedFromWhereverTheFocusIs() {
        Command imports = PlatformUI.getWorkbench().getService(ICommandService.class).getCommand("slopewright.ui.plan.import");
        page().activate(editor);
        assertTrue(imports.isEnabled(), "from the plan");
        page().activate(page().findView(FindingsView.ID));
        assertTrue(imports.isEnabled(), "from a view");
        page().closeAllEditors(false);
        assertFalse(imports.isEnabled(), "nothing is there to import into");
    }

    @Test
    void thePlanShowsThatTheKeysGoToIt() {
        Control canvas = editor.viewer().getControl();
        page().activate(editor);
        canvas.getShell().forceActive();
        canvas.setFocus();
        Patience.await("the plan has the focus", canvas::isFocusControl);
        Patience.pause(200);
        ImageData with = Contrast.painted(canvas);
        page().activate(page().findView(FindingsView.ID));
        Patience.await("the plan has lost the focus", () -> !canvas.isFocusControl());
        Patience.pause(200);
        ImageData without = Contrast.painted(canvas);
        assertNotEquals(without.palette.getRGB(without.getPixel(40, 1)), with.palette.getRGB(with.getPixel(40, 1)));
    }
}
