package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.checks.Checks;
import slopewright.checks.Outcome;
import slopewright.drawing.section.BeamEdge;
import slopewright.geometry.FramePoint;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Projects;
import slopewright.rcp.internal.ProjectOpener;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.profile.SectionView;
import slopewright.ui.profile.internal.section.ReadoutPanel.Row;
import slopewright.ui.profile.internal.section.ReadoutPanel.Sign;

/**
 * What the section says of all rules while a beam is turned or an aid is moved is what a fresh check says after the drop, as in the plan.
 */
class SectionVerdictTest {

    private static final int DRAGS = 60;

    @TempDir
    private Path folder;
    private IEditorPart editor;
    private SectionView view;
    private SectionDriver section;
    private ProjectDocument document;

    @BeforeEach
    void open() throws Exception {
        editor = page().openEditor(new ProjectInput(DemoProjects.copy("harrow-vale", folder)), ProjectOpener.EDITOR);
        document = Adapters.adapt(editor, ProjectDocument.class);
        view = (SectionView) page().showView(SectionView.ID);
        section = new SectionDriver(view);
        Patience.await("the section has a size", () -> view.canvas().section().isPresent() && section.world().widthPx() > 100);
        settle();
    }

    @AfterEach
    void close() {
        page().closeEditor(editor, false);
    }

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    private void settle() {
        Patience.await("it is checked", () -> document.lastResult().isPresent() && !document.isChecking());
    }

    private List<Row> verdicts() {
        return view.readout().rows().stream().filter(row -> row.value().contains(" not met  ·  ") && row.sign() != Sign.NONE).toList();
    }

    @Test
    void theReadoutWhileHeldEqualsTheOutcomesAfterTheDrop() {
        Random random = new Random(20260714);
        Set<String> different = new HashSet<>();
        int moved = 0;
        for (int i = 0; i < DRAGS; i++) {
            Point from = i % 2 == 0 ? onUnit() : onEdge();
            Point to = new Point(from.x + random.nextInt(160) - 80, from.y + random.nextInt(40) - 20);
            int keys = (random.nextBoolean() ? SWT.SHIFT : 0) | (random.nextInt(4) == 0 ? SWT.MOD1 : 0);
            section.press(from);
            section.drag(from, to, keys);
            if (!view.readout().text().contains("All rules")) {
                section.release(to, keys);
                continue;
            }
            Patience.await("the rules are asked", () -> !verdicts().isEmpty());
            List<Row> held = new ArrayList<>(verdicts());
            section.release(to, keys);
            List<Outcome> after = Checks.run(ProjectFile.copy(document.project()), Optional.empty()).outcomes();
            assertEquals(DragVerdictTest.line(after), held.get(0).value());
            different.add(held.get(0).value());
            moved++;
            if (document.history().canUndo()) {
                document.history().undo();
            }
            settle();
        }
        assertTrue(moved > DRAGS / 2, moved + " drags");
        assertTrue(different.size() > 2, different.toString());
    }

    private Point onUnit() {
        FramePoint lens = section.siting().reference();
        return section.at(lens.alongM(), lens.heightM());
    }

    private Point onEdge() {
        BeamEdge edge = section.edge(Projects.aids(document.project()).get(0).getUnits().get(1).getLabel());
        return section.at(-1200, edge.heightM(-1200));
    }
}
