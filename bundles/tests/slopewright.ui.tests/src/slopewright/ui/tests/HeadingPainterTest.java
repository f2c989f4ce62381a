package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.rcp.internal.ProjectOpener;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.review.FindingsView;

/** The heading of a group goes on behind its column, where the cells of the heading are empty. */
class HeadingPainterTest {

    @TempDir
    private Path folder;

    @Test
    void aHeadingIsNotCutByItsColumn() throws Exception {
        IWorkbenchPage page = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
        FindingsView view = (FindingsView) page.showView(FindingsView.ID);
        IEditorPart editor = page.openEditor(new ProjectInput(DemoProjects.copy("harrow-vale-faults", folder)), ProjectOpener.EDITOR);
        try {
            ProjectDocument document = Adapters.adapt(editor, ProjectDocument.class);
            Patience.await("the project is checked", () -> document.lastResult().isPresent() && !document.isChecking());
            page.activate(view);
            Tree tree = view.tree();
            TreeItem heading = tree.getItem(0);
            assertTrue(heading.getItemCount() > 0 && !heading.getText(0).isBlank(), "it is a heading");
            assertEquals("", heading.getText(1));
            tree.getColumn(0).setWidth(heading.getTextBounds(0).x + 30);
            tree.redraw();
            Patience.pause(300);
            tree.setSelection(heading);
            for (IWorkbenchPart active : List.of(view, editor)) {
                page.activate(active);
                Patience.pause(300);
                double contrast = Contrast.in(Contrast.painted(tree), heading.getTextBounds(0));
                assertTrue(contrast >= Contrast.LEAST, "selected, " + active.getTitle() + " is active: " + contrast);
            }
            Rectangle cell = heading.getBounds(0);
            assertTrue(colours(tree, new Rectangle(cell.x + cell.width + 2, cell.y + 2, 60, cell.height - 4)) > 2,
                    "the words of " + heading.getText(0) + " go on");
        } finally {
            page.closeEditor(editor, false);
        }
    }

    private static int colours(Tree tree, Rectangle part) {
        Image shot = new Image(tree.getDisplay(), part.width, part.height);
        GC gc = new GC(tree);
        try {
            gc.copyArea(shot, part.x, part.y);
            ImageData data = shot.getImageData();
            Set<Integer> found = new HashSet<>();
            for (int x = 0; x < data.width; x++) {
                for (int y = 0; y < data.height; y++) {
                    found.add(data.getPixel(x, y));
                }
            }
            return found.size();
        } finally {
            gc.dispose();
            shot.dispose();
        }
    }
}
