package slopewright.bench.editor;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.function.BooleanSupplier;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.IStartup;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;

import com.sun.management.OperatingSystemMXBean;

import slopewright.checks.CheckResult;
import slopewright.checks.Checks;
import slopewright.drawing.scene.ScenePoint;
import slopewright.edit.MoveAid;
import slopewright.evaluation.EvaluationCache;
import slopewright.model.ApproachAid;
import slopewright.model.LightUnit;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Projects;
import slopewright.ui.diagram.parts.ElementPart;
import slopewright.ui.document.DocumentListener;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.plan.PlanEditor;

/**
 * Measures the plan editor in the product's own window and prints the figures, then closes it: opening, dragging a row, the check
 * after a drop, and the memory that many drags and undos leave. The system properties {@code slopewright.bench.demo} and
 * {@code slopewright.bench.folder} name the demo and a folder to write into; where {@code slopewright.bench.part} says {@code drag} or
 * {@code open}, it drags alone, or opens projects of two sizes alone.
 */
public final class EditorBench implements IStartup {

    private static final int CROWD = 10_000;
    private static final int SMALL_CROWD = 1_000;
    private static final int LARGE_CROWD = 100_000;
    private static final int OPENINGS = 3;
    private static final int POINTS = 1_000_000;
    private static final int FRAMES = 400;
    private static final int DROPS = 15;
    private static final int DRAGS = 3;
    private static final int CYCLES = 1_000;
    private static final double PIXELS_PER_METRE = 2;

    @Override
    public void earlyStartup() {
        Display display = PlatformUI.getWorkbench().getDisplay();
        display.asyncExec(() -> {
            try {
                measure();
            } catch (Exception e) {
                System.err.println("The measurement failed: " + e);
            } finally {
                page().closeAllEditors(false);
                PlatformUI.getWorkbench().close();
            }
        });
    }

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    private static void measure() throws Exception {
        Path demo = Path.of(System.getProperty("slopewright.bench.demo"));
        Path folder = Path.of(System.getProperty("slopewright.bench.folder"));
        switch (System.getProperty("slopewright.bench.part", "editor")) {
            case "drag" -> {
                for (int i = 0; i < DRAGS; i++) {
                    drag(Crowd.entered(demo, folder, CROWD));
                }
            }
            case "open" -> {
                page().closeEditor(open(demo).editor(), false);
                growth(Crowd.entered(demo, folder, SMALL_CROWD), Crowd.entered(demo, folder, LARGE_CROWD));
            }
            default -> all(demo, folder);
        }
    }

    private static void all(Path demo, Path folder) throws Exception {
        recheck(Crowd.entered(demo, folder, CROWD), CROWD + " obstacles", 100);
        recheck(Crowd.block(demo, folder, POINTS), POINTS + " survey points", 1000);
        PlanEditor warm = open(demo).editor();
        page().closeEditor(warm, false);
        drag(Crowd.entered(demo, folder, CROWD));
        growth(Crowd.entered(demo, folder, SMALL_CROWD), Crowd.entered(demo, folder, LARGE_CROWD));
        opening(Crowd.block(demo, folder, LARGE_CROWD), LARGE_CROWD + " survey points");
        cycles(demo);
    }

    private record Opened(PlanEditor editor, double milliseconds, double processorMs) {
    }

    private static Opened open(Path file) throws Exception {
        long begun = System.nanoTime();
        long began = processorNs();
        PlanEditor editor = (PlanEditor) page().openEditor(new ProjectInput(file), PlanEditor.ID);
        paint();
        return new Opened(editor, (System.nanoTime() - begun) / 1e6, (processorNs() - began) / 1e6);
    }

    /** Returns the time that all processors together spent on this program. */
    private static long processorNs() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }

    /** Opens two projects in turn and compares the best of each. */
    private static void growth(Path small, Path large) throws Exception {
        double[] best = {Double.MAX_VALUE, Double.MAX_VALUE};
        double[] worked = {Double.MAX_VALUE, Double.MAX_VALUE};
        for (int i = 0; i < OPENINGS; i++) {
            for (int k = 0; k < best.length; k++) {
                Opened opened = open(k == 0 ? small : large);
                best[k] = Math.min(best[k], opened.milliseconds());
                worked[k] = Math.min(worked[k], opened.processorMs());
                page().closeEditor(opened.editor(), false);
                paint();
                usedAfterCollection();
            }
        }
        say("open a project with %d and with %d obstacles entered by hand to first paint: %.2f s and %.2f s, ratio %.1f (aim 3)", SMALL_CROWD,
                LARGE_CROWD, best[0] / 1e3, best[1] / 1e3, best[1] / best[0]);
        say("of that the time of all processors together: %.2f s and %.2f s, ratio %.1f", worked[0] / 1e3, worked[1] / 1e3, worked[1] / worked[0]);
    }

    private static void opening(Path file, String what) throws Exception {
        Opened opened = open(file);
        say("open a project with %s to first paint: %.2f s (aim 3)", what, opened.milliseconds() / 1e3);
        page().closeEditor(opened.editor(), false);
        paint();
    }

    /** Times the check alone after a drop, as the window does it in the background. */
    private static void recheck(Path file, String what, double aimMs) throws Exception {
        Project project = ProjectFile.load(file);
        EvaluationCache memory = new EvaluationCache();
        long first = System.nanoTime();
        Checks.run(project, memory, (done, all) -> true);
        double firstMs = (System.nanoTime() - first) / 1e6;
        ApproachAid aid = Projects.aids(project).get(0);
        double[] times = new double[DROPS];
        for (int i = 0; i < DROPS; i++) {
            Set<String> touched = new HashSet<>();
            for (LightUnit unit : aid.getUnits()) {
                unit.setAlongM(unit.getAlongM() + 1);
                touched.add(unit.getId());
            }
            long begun = System.nanoTime();
            memory.forget(project, touched);
            Checks.run(project, memory, (done, all) -> true);
            times[i] = (System.nanoTime() - begun) / 1e6;
        }
        Arrays.sort(times);
        say("check after a drop, %s: median %.0f ms (aim %.0f), worst %.0f ms; the first check %.0f ms", what, times[DROPS / 2], aimMs,
                times[DROPS - 1], firstMs);
    }

    private static void drag(Path file) throws Exception {
        Opened opened = open(file);
        PlanEditor editor = opened.editor();
        ProjectDocument document = Adapters.adapt(editor, ProjectDocument.class);
        await(() -> document.lastResult().isPresent() && !document.isChecking());
        Mouse mouse = new Mouse(editor.viewer().getControl());
        Point from = lookAtFirstUnit(editor, document);
        mouse.press(from);
        double[] frames = new double[FRAMES];
        double[] worked = new double[FRAMES];
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        for (int i = 0; i < FRAMES; i++) {
            long begun = System.nanoTime();
            long began = threads.getCurrentThreadCpuTime();
            mouse.drag(new Point(from.x + i % 200, from.y + i % 3));
            paint();
            frames[i] = (System.nanoTime() - begun) / 1e6;
            worked[i] = (threads.getCurrentThreadCpuTime() - began) / 1e6;
        }
        double[] checked = {0};
        long dropped = System.nanoTime();
        DocumentListener ear = new DocumentListener() {

            @Override
            public void checked(CheckResult result) {
                checked[0] = (System.nanoTime() - dropped) / 1e6;
            }
        };
        document.addListener(ear);
        mouse.release(new Point(from.x + 100, from.y));
        paint();
        double paintedMs = (System.nanoTime() - dropped) / 1e6;
        await(() -> checked[0] > 0);
        document.removeListener(ear);
        Arrays.sort(frames);
        say("drag of a row over %d obstacles: median %.1f ms (aim 16), 99 %% within %.1f ms (aim 50), worst %.1f ms", CROWD,
                frames[FRAMES / 2], frames[FRAMES * 99 / 100], frames[FRAMES - 1]);
        Arrays.sort(worked);
        say("of that the processor time of the window itself: median %.1f ms, 99 %% within %.1f ms", worked[FRAMES / 2],
                worked[FRAMES * 99 / 100]);
        say("after the drop: painted after %.0f ms, new outcomes shown after %.0f ms, the wait for a further edit included", paintedMs,
                checked[0]);
        say("open a project with %d obstacles entered by hand to first paint: %.2f s", CROWD, opened.milliseconds() / 1e3);
        page().closeEditor(editor, false);
        paint();
    }

    private static Point lookAtFirstUnit(PlanEditor editor, ProjectDocument document) {
        LightUnit unit = Projects.aids(document.project()).get(0).getUnits().get(0);
        ElementPart<?> part = (ElementPart<?>) editor.viewer().getEditPartRegistry().get(unit);
        ScenePoint place = part.anchor().orElseThrow();
        editor.view().centreOn(place.x(), place.y());
        editor.view().zoom(PIXELS_PER_METRE / editor.view().scale());
        paint();
        return new Point((int) Math.round(editor.view().toX(place.x())), (int) Math.round(editor.view().toY(place.y())));
    }

    /** Drags and undoes many times; what stays in memory must not grow. */
    private static void cycles(Path demo) throws Exception {
        PlanEditor editor = open(demo).editor();
        ProjectDocument document = Adapters.adapt(editor, ProjectDocument.class);
        ApproachAid aid = Projects.aids(document.project()).get(0);
        Mouse mouse = new Mouse(editor.viewer().getControl());
        Point from = lookAtFirstUnit(editor, document);
        long before = 0;
        for (int i = 0; i < CYCLES + CYCLES / 10; i++) {
            if (i == CYCLES / 10) {
                before = usedAfterCollection();
            }
            if (i % 2 == 0) {
                mouse.press(from);
                mouse.drag(new Point(from.x + 20, from.y));
                mouse.release(new Point(from.x + 20, from.y));
            } else {
                document.history().perform(MoveAid.by(aid, 1, 0));
            }
            document.history().undo();
            paint();
        }
        await(() -> !document.isChecking());
        long after = usedAfterCollection();
        say("memory in use before and after %d drags and undos: %.1f MB, %.1f MB", CYCLES, before / 1e6, after / 1e6);
        page().closeEditor(editor, false);
    }

    private static long usedAfterCollection() throws InterruptedException {
        Runtime runtime = Runtime.getRuntime();
        for (int i = 0; i < 3; i++) {
            System.gc();
            Thread.sleep(100);
        }
        return runtime.totalMemory() - runtime.freeMemory();
    }

    private static void await(BooleanSupplier condition) {
        Display display = Display.getCurrent();
        while (!condition.getAsBoolean()) {
            if (!display.readAndDispatch()) {
                display.timerExec(5, display::wake);
                display.sleep();
            }
        }
    }

    /** Carries out what was asked to be painted. */
    private static void paint() {
        Display display = Display.getCurrent();
        boolean more = true;
        while (more) {
            more = display.readAndDispatch();
        }
        display.update();
    }

    private static void say(String format, Object... values) {
        System.out.println(String.format(Locale.ROOT, format, values));
    }

    /** Sends what a mouse sends. */
    private record Mouse(Control control) {

        private void send(int type, Point at, int button, int state) {
            Event event = new Event();
            event.x = at.x;
            event.y = at.y;
            event.button = button;
            event.stateMask = state;
            event.count = 1;
            control.notifyListeners(type, event);
        }

        void press(Point at) {
            send(SWT.MouseMove, at, 0, 0);
            send(SWT.MouseDown, at, 1, 0);
        }

        void drag(Point to) {
            send(SWT.MouseMove, to, 0, SWT.BUTTON1);
        }

        void release(Point at) {
            send(SWT.MouseUp, at, 1, SWT.BUTTON1);
        }
    }
}
