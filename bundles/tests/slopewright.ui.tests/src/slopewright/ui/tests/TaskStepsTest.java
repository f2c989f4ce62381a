package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.model.ApproachAid;
import slopewright.model.LightUnit;
import slopewright.model.Obstacle;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.rcp.internal.site.SiteWizard;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.elements.ElementKind;
import slopewright.ui.elements.ElementsView;
import slopewright.ui.plan.PlanEditor;
import slopewright.ui.review.FindingsView;

/**
 * Ten tasks of a drafter, each walked with the window and counted: a click, a drag, a key or chord, and a field that is filled in are one
 * step each. The counts are those of the table in {@code bundles/app/slopewright.rcp/docs/tasks.md}.
 */
class TaskStepsTest {

    private static final Path TABLE = Path.of("bundles", "app", "slopewright.rcp", "docs", "tasks.md");

    @TempDir
    private Path folder;
    private final Map<String, Integer> counted = new LinkedHashMap<>();
    private PlanEditor editor;
    private PlanDriver plan;
    private int steps;

    @AfterEach
    void close() {
        page().closeAllEditors(false);
    }

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    private void step(Runnable input) {
        steps++;
        input.run();
        Patience.pause(30);
    }

    /** A chord that the window binds to a command. */
    private void chord(String command) {
        step(() -> {
            try {
                PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(command, null);
            } catch (Exception e) {
                throw new AssertionError(command, e);
            }
        });
    }

    private void task(String name) {
        counted.put(name, steps);
        steps = 0;
    }

    private ApproachAid row() {
        return Projects.aids(plan.document().project()).get(0);
    }

    private List<Obstacle> obstacles() {
        return plan.document().project().getAerodrome().getObstacles();
    }

    @Test
    void theTasksTakeTheStepsOfTheTable() throws Exception {
        begin();
        editor = (PlanEditor) page().openEditor(new ProjectInput(DemoProjects.copy("harrow-vale", folder)), PlanEditor.ID);
        plan = new PlanDriver(editor);
        Patience.await("it is checked", () -> editor.view().widthPx() > 0 && plan.document().lastResult().isPresent()
                && !plan.document().isChecking());
        inThePlan();
        inTheTables();
        inTheFindings();
        assertEquals(table(), counted);
    }

    private void begin() {
        SiteWizard wizard = new SiteWizard(page().getWorkbenchWindow());
        wizard.setTarget(folder.resolve("new.slopewright"));
        WizardDialog dialog = new WizardDialog(page().getWorkbenchWindow().getShell(), wizard);
        dialog.setBlockOnOpen(false);
        step(dialog::open);
        step(() -> press(dialog, "Next"));
        step(() -> press(dialog, "Next"));
        step(() -> press(dialog, "Finish"));
        ProjectDocument made = Adapters.adapt(page().getActiveEditor(), ProjectDocument.class);
        assertEquals(1, Projects.aids(made.project()).size());
        task("A new site with a first layout");
        page().closeAllEditors(false);
    }

    private static void press(WizardDialog dialog, String words) {
        Widgets.all(dialog.getShell(), Button.class).filter(button -> button.getText().replace("&", "").startsWith(words)).findFirst()
                .orElseThrow().notifyListeners(SWT.Selection, new Event());
    }

    private void inThePlan() {
        RunwayEnd end = plan.element("runway-end-4", RunwayEnd.class);
        plan.lookAt(end, 1);
        int aids = end.getAids().size();
        step(() -> plan.chooseTool("APAPI"));
        Point at = new Point(plan.at(end).x - 110, plan.at(end).y);
        step(() -> plan.click(at));
        assertEquals(aids + 1, end.getAids().size());
        task("An indicator at a runway end");
        chord("org.eclipse.ui.edit.undo");
        assertEquals(aids, end.getAids().size());
        task("Taking the last edit back");
        int before = obstacles().size();
        step(() -> plan.chooseTool("Point obstacle"));
        step(() -> plan.click(new Point(200, 150)));
        assertEquals(before + 1, obstacles().size());
        task("An obstacle by eye");
        LightUnit unit = row().getUnits().get(0);
        plan.lookAt(unit, 2);
        double along = unit.getAlongM();
        Point from = plan.at(unit);
        step(() -> plan.dragAndDrop(from, new Point(from.x + 60, from.y), 0));
        assertTrue(Math.abs(unit.getAlongM() - along) > 1);
        task("Moving a row along the runway");
    }

    private void inTheTables() throws Exception {
        ElementsView tables = (ElementsView) page().showView(ElementsView.ID);
        int before = obstacles().size();
        step(() -> tables.show(kind("Obstacles")));
        Clipboard clipboard = new Clipboard(tables.table().getDisplay());
        clipboard.setContents(new Object[] {"Name\tTop elevation (m)\tPosition\nMast\t98.4\t47.298, -11.934\nTank\t97\t47.297, -11.935\n"},
                new Transfer[] {TextTransfer.getInstance()});
        clipboard.dispose();
        tables.table().setFocus();
        chord("org.eclipse.ui.edit.paste");
        assertEquals(before + 2, obstacles().size(), tables.said());
        task("Obstacles from a spreadsheet");
        step(() -> select(tables, before));
        chord("org.eclipse.ui.edit.copy");
        chord("org.eclipse.ui.edit.paste");
        assertEquals(before + 3, obstacles().size(), tables.said());
        task("A copy of an obstacle");
        step(() -> select(tables, before + 2));
        chord("org.eclipse.ui.edit.delete");
        assertEquals(before + 2, obstacles().size(), tables.said());
        task("Removing an obstacle");
    }

    private static void select(ElementsView tables, int row) {
        tables.table().setFocus();
        tables.table().setSelection(row);
        tables.table().notifyListeners(SWT.Selection, new Event());
    }

    private static ElementKind kind(String label) {
        return ElementKind.all().stream().filter(found -> found.label().equals(label)).findFirst().orElseThrow();
    }

    private void inTheFindings() throws Exception {
        FindingsView findings = (FindingsView) page().showView(FindingsView.ID);
        Patience.await("it is checked", () -> !plan.document().isChecking() && !findings.rows().isEmpty());
        step(() -> findings.select(findings.rows().get(0)));
        Patience.await("it is explained", () -> findings.explanation().length() > 20);
        task("Reading why a rule is not met");
        chord("org.eclipse.ui.file.save");
        assertTrue(!plan.document().isDirty());
        task("Saving");
    }

    private static Map<String, Integer> table() throws Exception {
        Map<String, Integer> found = new LinkedHashMap<>();
        try (Stream<String> lines = Files.lines(Path.of(System.getProperty("slopewright.root")).resolve(TABLE))) {
            lines.map(line -> line.split(" *\\| *")).filter(cells -> cells.length > 3 && cells[2].matches("\\d+"))
                    .forEach(cells -> found.put(cells[1], Integer.parseInt(cells[2])));
        }
        return found;
    }
}
