package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.rcp.internal.ProjectOpener;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.review.FindingsView;

/** Rows whose elements differ at the end of their way look different in a narrow column, and a tooltip says the whole way. */
class PathPainterTest {
    private static final int NARROW_PX = 90;
    private static final int ELEMENT = 1;

    @TempDir
    private Path folder;

    @Test
    void theNameOfAnElementIsSeenInANarrowColumn() throws Exception {
        IWorkbenchPage page = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
        FindingsView view = (FindingsView) page.showView(FindingsView.ID);
        IEditorPart editor = page.openEditor(new ProjectInput(DemoProjects.copy("harrow-vale-faults", folder)), ProjectOpener.EDITOR);
        try {
            ProjectDocument document = Adapters.adapt(editor, ProjectDocument.class);
            Patience.await("the project is checked", () -> document.lastResult().isPresent() && !document.isChecking());
            page.activate(view);
            Tree tree = view.tree();
            List<TreeItem> rows = Stream.of(tree.getItem(0).getItems()).filter(row -> row.getText(0).startsWith("DATA-47")).toList();
            assertEquals(3, rows.size(), "three units as high as they do not say");
            tree.getColumn(ELEMENT).setWidth(NARROW_PX);
            tree.showItem(rows.get(0));
            Patience.pause(400);
            assertFalse(Arrays.equals(painted(tree, rows.get(0)), painted(tree, rows.get(1))), "the first two differ: "
                    + rows.get(0).getText(ELEMENT) + ", " + rows.get(1).getText(ELEMENT));
            assertNotEquals(rows.get(0).getText(ELEMENT), rows.get(1).getText(ELEMENT));
            assertTrue(rows.get(0).getText(ELEMENT).startsWith("runway 03 > APAPI 03 > "), "whoever copies has the whole");
            move(tree, rows.get(0).getBounds(ELEMENT));
            assertEquals(rows.get(0).getText(ELEMENT), tree.getToolTipText());
            tree.setSelection(rows.get(0));
            Patience.pause(300);
            double contrast = Contrast.in(Contrast.painted(tree), rows.get(0).getBounds(ELEMENT));
            assertTrue(contrast >= Contrast.LEAST, "selected: " + contrast);
            tree.getColumn(ELEMENT).setWidth(600);
            Patience.pause(300);
            move(tree, rows.get(0).getBounds(ELEMENT));
            assertNull(tree.getToolTipText(), "what is seen whole needs none");
        } finally {
            page.closeEditor(editor, false);
        }
    }

    private static void move(Tree tree, Rectangle cell) {
        Event event = new Event();
        event.x = cell.x + 10;
        event.y = cell.y + cell.height / 2;
        tree.notifyListeners(SWT.MouseMove, event);
    }

    /** The pixels of the cell. */
    private static int[] painted(Tree tree, TreeItem row) {
        Rectangle cell = row.getBounds(ELEMENT);
        Image shot = new Image(tree.getDisplay(), cell.width, cell.height);
        GC gc = new GC(tree);
        try {
            gc.copyArea(shot, cell.x, cell.y);
            ImageData data = shot.getImageData();
            int[] pixels = IntStream.range(0, data.width * data.height).map(i -> data.getPixel(i % data.width, i / data.width)).toArray();
            Set<Integer> colours = new HashSet<>();
            Arrays.stream(pixels).forEach(colours::add);
            assertTrue(colours.size() > 2, "something is painted for " + row.getText(ELEMENT));
            return pixels;
        } finally {
            gc.dispose();
            shot.dispose();
        }
    }
}
