package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.drawing.scene.Mark;
import slopewright.model.ApproachAid;
import slopewright.model.util.Projects;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.plan.PlanEditor;
import slopewright.ui.profile.PilotView;
import slopewright.ui.profile.SectionView;
import slopewright.ui.theme.Lettering;

/** No text that is painted covers another one, in any demonstration: what has no room is left out for a dot, and said when pointed at. */
class LabelsTest {
    private static final int SHARED_PX = 1;
    private static final int LARGE_PT = 15;
    /** What the strip of the pilot's view says of a height; what the section says has other words beside. */
    private static final String STRIP = "too high|high|on slope|low|too low";

    @TempDir
    private Path folder;
    private final List<String> covered = new ArrayList<>();
    private int looked;

    @AfterEach
    void close() {
        page().closeAllEditors(false);
        page().hideView(page().findView(SectionView.ID));
        page().hideView(page().findView(PilotView.ID));
    }

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    private static void run(String command) throws Exception {
        PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(command, null);
        Patience.pause(50);
    }

    @ParameterizedTest
    @ValueSource(strings = {"harrow-vale", "harrow-vale-faults", "every-family"})
    void noLabelCoversAnother(String demo) throws Exception {
        walk(demo, DemoProjects.copy(demo, folder));
    }

    /** Letters at 150 %: those of the diagrams are as much larger, and there is still none on another. */
    @Test
    void labelsGrowWithTheType() throws Exception {
        Path project = DemoProjects.copy("every-family", folder);
        double usual = labelHeight(project);
        FontData[] dialog = JFaceResources.getDialogFont().getFontData();
        JFaceResources.getFontRegistry().put(JFaceResources.DIALOG_FONT,
                FontDescriptor.createFrom(dialog).setHeight(LARGE_PT).getFontData());
        try {
            assertEquals(1.5, labelHeight(project) / usual, 0.1);
            walk("every-family", project);
        } finally {
            page().closeAllEditors(false);
            JFaceResources.getFontRegistry().put(JFaceResources.DIALOG_FONT, dialog);
        }
    }

    /** The height of the largest labels, those of runway ends, pixels. */
    private static double labelHeight(Path project) throws Exception {
        PlanDriver plan = new PlanDriver((PlanEditor) page().openEditor(new ProjectInput(project), PlanEditor.ID));
        Patience.await("the project is checked", () -> plan.document().lastResult().isPresent() && !plan.document().isChecking());
        double height = plan.labels().values().stream().mapToDouble(box -> box.height).max().orElseThrow();
        page().closeAllEditors(false);
        return height;
    }

    private void walk(String demo, Path project) throws Exception {
        PlanEditor editor = (PlanEditor) page().openEditor(new ProjectInput(project), PlanEditor.ID);
        PlanDriver plan = new PlanDriver(editor);
        Patience.await("the project is checked", () -> plan.document().lastResult().isPresent() && !plan.document().isChecking());
        plan(demo, plan);
        run("slopewright.ui.plan.showAll");
        plan(demo + ", all", plan);
        List<ApproachAid> aids = Projects.aids(plan.document().project());
        for (ApproachAid aid : aids) {
            editor.reveal(aid.getId());
            run("slopewright.ui.plan.showSelection");
            plan(demo + ", " + aid.getName(), plan);
        }
        for (String id : List.of(SectionView.ID, PilotView.ID)) {
            page().showView(id);
            for (ApproachAid aid : aids) {
                plan.document().viewState().choose(aid.getId());
                Patience.pause(150);
                painted(demo + ", " + id + ", " + aid.getName());
            }
        }
        assertEquals(List.of(), covered);
        assertTrue(looked > 40, looked + " texts");
    }

    private void plan(String what, PlanDriver plan) {
        List<Map.Entry<Mark.Label, Rectangle>> labels = plan.labels().entrySet().stream()
                .filter(entry -> entry.getValue().intersects(plan.window())).toList();
        look(what, labels.stream().map(entry -> entry.getKey().text()).toList(), labels.stream().map(Map.Entry::getValue).toList());
        for (Rectangle sign : plan.signs()) {
            labels.stream().filter(entry -> entry.getValue().intersects(sign))
                    .forEach(entry -> covered.add(what + ": a sign and " + entry.getKey().text()));
        }
    }

    private void painted(String what) {
        Shell shell = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell();
        Widgets.all(shell, Canvas.class).filter(Control::isVisible).forEach(canvas -> Lettering.of(canvas).ifPresent(letters -> {
            canvas.redraw();
            canvas.update();
            look(what, letters.written().stream().map(Lettering.Written::text).toList(),
                    letters.written().stream().map(Lettering.Written::where).toList());
            if (what.startsWith("harrow-vale")) {
                struck(what, letters.written());
            }
        }));
    }

    /** The line at the height of the eye, which its number stands beside, runs through no word of the strip. */
    private void struck(String what, List<Lettering.Written> written) {
        List<Rectangle> lengths = written.stream().filter(each -> each.text().matches("-?\\d+(\\.\\d)? m")).map(Lettering.Written::where)
                .filter(where -> written.stream().anyMatch(each -> each.text().matches(STRIP) && each.where().x > where.x)).toList();
        int scale = lengths.stream().mapToInt(where -> where.x).max().orElse(0);
        List<Rectangle> heights = lengths.stream().filter(where -> where.x == scale).toList();
        if (written.stream().noneMatch(each -> each.text().matches("too high|too low"))) {
            return;
        }
        int highest = heights.stream().mapToInt(where -> where.y).min().orElse(0);
        int lowest = heights.stream().mapToInt(where -> where.y).max().orElse(0);
        for (Rectangle eye : heights) {
            int line = eye.y + eye.height / 2;
            if (eye.y > highest && eye.y < lowest) {
                written.stream().filter(each -> each.text().matches(STRIP) && each.where().y < line - 1
                        && each.where().y + each.where().height > line + 1)
                        .forEach(each -> covered.add(what + ": a line and " + each.text()));
            }
        }
    }

    /** A pixel is shared by the rounding of two neighbours. */
    private void look(String what, List<String> texts, List<Rectangle> places) {
        looked += texts.size();
        for (int i = 0; i < texts.size(); i++) {
            for (int j = i + 1; j < texts.size(); j++) {
                Rectangle shared = places.get(i).intersection(places.get(j));
                if (shared.width > SHARED_PX && shared.height > SHARED_PX) {
                    covered.add(what + ": " + texts.get(i) + " and " + texts.get(j));
                }
            }
        }
    }
}
