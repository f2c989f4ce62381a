package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.checks.Checks;
import slopewright.checks.Outcome;
import slopewright.checks.Verdict;
import slopewright.model.Identified;
import slopewright.model.LightUnit;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Projects;
import slopewright.testkit.DemoProjects;
import slopewright.ui.diagram.figures.ReadoutFigure;
import slopewright.ui.diagram.figures.ReadoutFigure.Line;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.plan.PlanEditor;

/**
 * What is said while something is dragged is what a check says after the drop: of every rule, over 200 seeded drags. The check it is held
 * against is run afresh over the project as it stands then, without anything that the window keeps.
 */
class DragVerdictTest {

    private static final int DRAGS = 200;
    private static final int MOST_TRIES = 400;

    @TempDir
    private Path folder;
    private PlanEditor editor;
    private PlanDriver plan;

    @AfterEach
    void close() {
        page().closeAllEditors(false);
    }

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    private void open(String demo) throws Exception {
        page().closeAllEditors(false);
        editor = (PlanEditor) page().openEditor(new ProjectInput(DemoProjects.copy(demo, folder)), PlanEditor.ID);
        plan = new PlanDriver(editor);
        Patience.await("the plan has a size", () -> editor.view().widthPx() > 0);
        settle();
    }

    private void settle() {
        Patience.await("it is checked", () -> plan.document().lastResult().isPresent() && !plan.document().isChecking());
    }

    @Test
    void theReadoutWhileHeldEqualsTheOutcomesAfterTheDrop() throws Exception {
        Random random = new Random(20260713);
        List<Long> waits = new ArrayList<>();
        int done = 0;
        int withChange = 0;
        for (String demo : List.of("harrow-vale", "every-family")) {
            open(demo);
            int wanted = demo.equals("harrow-vale") ? DRAGS / 2 : DRAGS;
            for (int tries = 0; done < wanted && tries < MOST_TRIES; tries++) {
                List<Outcome> before = plan.document().lastResult().orElseThrow().outcomes();
                Optional<List<Line>> held = drag(random, waits);
                if (held.isPresent()) {
                    done++;
                    withChange += compare(before, held.get());
                    plan.document().history().undo();
                    settle();
                }
            }
        }
        assertEquals(DRAGS, done);
        assertTrue(withChange > DRAGS / 4, withChange + " drags change a verdict");
        long[] sorted = waits.stream().mapToLong(Long::longValue).sorted().toArray();
        System.out.println("drag verdict, ms: median " + sorted[sorted.length / 2] + ", p99 " + sorted[sorted.length * 99 / 100]);
    }

    @Test
    void nothingIsSaidOfAPlaceBeforeItIsChecked() throws Exception {
        open("harrow-vale");
        LightUnit unit = Projects.aids(plan.document().project()).get(0).getUnits().get(0);
        plan.lookAt(unit, 2);
        Point from = plan.at(unit);
        plan.press(from);
        for (int step = 1; step <= 40; step++) {
            plan.drag(new Point(from.x + 12 + 3 * step, from.y));
            assertFalse(isSaid(), plan.readout().toString());
            assertTrue(plan.readout().stream().anyMatch(line -> line.text().equals("All rules: …")), plan.readout().toString());
            Patience.pause(step % 4);
        }
        Patience.await("the verdict is there", this::isSaid);
        plan.release(from, 0);
    }

    @Test
    void whatThePalettePlacesIsCheckedBeforeTheClick() throws Exception {
        open("harrow-vale");
        RunwayEnd end = plan.element("runway-end-4", RunwayEnd.class);
        plan.lookAt(end, 1);
        List<Outcome> before = plan.document().lastResult().orElseThrow().outcomes();
        plan.chooseTool("APAPI");
        Point at = new Point(plan.at(end).x - 110, plan.at(end).y);
        plan.move(at);
        Patience.await("the verdict is there", this::isSaid);
        List<Line> held = List.copyOf(plan.readout());
        plan.click(at);
        assertTrue(plan.document().isDirty(), "it was placed");
        assertEquals(1, compare(before, held));
    }

    /** Drags an element anywhere and drops it; returns what was said before the drop, empty where nothing was moved. */
    private Optional<List<Line>> drag(Random random, List<Long> waits) {
        List<Identified> elements = new ArrayList<>();
        Project project = plan.document().project();
        Projects.aids(project).forEach(aid -> elements.addAll(aid.getUnits()));
        elements.addAll(project.getAerodrome().getObstacles());
        elements.removeIf(element -> plan.part(element).flatMap(part -> part.anchor()).isEmpty());
        Identified element = elements.get(random.nextInt(elements.size()));
        plan.lookAt(element, Math.pow(10, random.nextDouble() * 1.6 - 0.4));
        Point from = plan.at(element);
        Point to = new Point(from.x + random.nextInt(300) - 150, from.y + random.nextInt(160) - 80);
        int keys = random.nextBoolean() ? SWT.SHIFT : 0;
        String undo = plan.document().history().undoLabel();
        byte[] start = ProjectFile.bytes(project);
        plan.press(from);
        plan.drag(from, to, keys);
        if (plan.readout().isEmpty()) {
            plan.release(to, keys);
            return Optional.empty();
        }
        long begun = System.nanoTime();
        Patience.await("the verdict is there", this::isSaid);
        waits.add((System.nanoTime() - begun) / 1_000_000);
        List<Line> held = List.copyOf(plan.readout());
        plan.release(to, keys);
        boolean moved = !undo.equals(plan.document().history().undoLabel()) || !Arrays.equals(start, ProjectFile.bytes(project));
        return moved ? Optional.of(held) : Optional.empty();
    }

    /** While an answer is under way, the line that counts has no sign. */
    private boolean isSaid() {
        return plan.readout().stream().anyMatch(line -> line.text().contains(" not met  ·  ")
                && line.verdict() != ReadoutFigure.Verdict.NONE);
    }

    private static long count(List<Outcome> outcomes, Verdict verdict) {
        return outcomes.stream().filter(outcome -> outcome.verdict() == verdict).count();
    }

    /** How many outcomes there are of each verdict, as a readout says it. */
    static String line(List<Outcome> outcomes) {
        return count(outcomes, Verdict.NOT_MET) + " not met  ·  " + count(outcomes, Verdict.TO_CLEAR_UP) + " to clear up  ·  "
                + count(outcomes, Verdict.MET) + " met";
    }

    private int compare(List<Outcome> before, List<Line> held) {
        Project project = plan.document().project();
        List<Outcome> after = Checks.run(ProjectFile.copy(project), Optional.empty()).outcomes();
        long open = count(after, Verdict.NOT_MET);
        long clear = count(after, Verdict.TO_CLEAR_UP);
        String line = line(after);
        int at = held.stream().map(Line::text).toList().indexOf(line);
        assertTrue(at >= 0, line + " in " + held);
        assertEquals(open > 0 ? ReadoutFigure.Verdict.BAD : clear > 0 ? ReadoutFigure.Verdict.WARNING : ReadoutFigure.Verdict.GOOD,
                held.get(at).verdict());
        Map<String, Verdict> was = verdicts(before);
        List<String> changed = new ArrayList<>();
        verdicts(after).forEach((name, verdict) -> {
            Verdict first = was.get(name);
            boolean isWorse = (verdict == Verdict.NOT_MET || verdict == Verdict.TO_CLEAR_UP) && verdict != first;
            boolean isBetter = verdict == Verdict.MET && (first == Verdict.NOT_MET || first == Verdict.TO_CLEAR_UP
                    || first == Verdict.NOT_APPLICABLE);
            if (isWorse || isBetter) {
                changed.add(name.substring(0, name.indexOf(' ')) + " " + verdict);
            }
        });
        List<String> said = held.subList(at + 1, held.size()).stream().map(Line::text).toList();
        int more = said.stream().filter(text -> text.startsWith("… and ")).mapToInt(text -> Integer.parseInt(text.split(" ")[2])).sum();
        List<String> named = said.stream().filter(text -> !text.startsWith("… and ")).map(DragVerdictTest::named).toList();
        assertEquals(changed.size(), named.size() + more, changed + " against " + said);
        Set<String> all = new TreeSet<>(changed);
        named.forEach(name -> assertTrue(all.contains(name), name + " in " + all));
        return changed.isEmpty() ? 0 : 1;
    }

    private static String named(String text) {
        String verdict = text.substring(text.lastIndexOf(": ") + 2);
        return text.substring(0, text.indexOf(' ')) + " " + switch (verdict) {
            case "not met" -> Verdict.NOT_MET;
            case "to clear up" -> Verdict.TO_CLEAR_UP;
            default -> Verdict.MET;
        };
    }

    private static Map<String, Verdict> verdicts(List<Outcome> outcomes) {
        Map<String, Integer> seen = new HashMap<>();
        Map<String, Verdict> verdicts = new TreeMap<>();
        for (Outcome outcome : outcomes) {
            String name = outcome.rule() + " " + outcome.elementId() + " " + outcome.elementPath();
            verdicts.put(name + " " + seen.merge(name, 1, Integer::sum), outcome.verdict());
        }
        return verdicts;
    }
}
