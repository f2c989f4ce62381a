package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.edit.MoveAid;
import slopewright.edit.SetAttribute;
import slopewright.model.ApproachAid;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.model.util.Projects;
import slopewright.rcp.internal.ProjectOpener;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.review.VersionsView;

/** Changes since another version: what changed, what it did to results and outcomes, live and filtered. */
class VersionsViewTest {

    @TempDir
    private Path folder;
    private IWorkbenchPage page;
    private IEditorPart editor;
    private VersionsView view;
    private ProjectDocument document;

    @BeforeEach
    void open() throws Exception {
        page = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
        view = (VersionsView) page.showView(VersionsView.ID);
        editor = page.openEditor(new ProjectInput(DemoProjects.copy("harrow-vale", folder)), ProjectOpener.EDITOR);
        document = Adapters.adapt(editor, ProjectDocument.class);
        Patience.await("the project is checked", () -> document.lastResult().isPresent() && !document.isChecking());
    }

    @AfterEach
    void close() {
        page.closeEditor(editor, false);
        page.hideView(view);
    }

    private void sinceSaving() {
        Button button = Widgets.all(view.tree().getParent(), Button.class).findFirst().orElseThrow();
        assertTrue(button.isEnabled());
        button.notifyListeners(SWT.Selection, new Event());
    }

    @Test
    void whatChangedSinceSavingAndWhatItDidIsListed() {
        sinceSaving();
        Patience.await("nothing differs yet", () -> view.state().startsWith("0 changes"));
        ApproachAid aid = Projects.aids(document.project()).get(0);
        double before = aid.getUnits().get(0).getAlongM();
        document.history().perform(MoveAid.by(aid, -40, 0));
        Patience.await("the move is listed", () -> view.lines().stream().anyMatch(line -> line.contains("\tDistance\t")));
        assertTrue(view.lines().stream().anyMatch(line -> line.contains("\tAlong runway\t") && line.contains(trimmed(before) + " m")),
                view.lines().toString());
        assertTrue(view.lines().stream().anyMatch(line -> line.contains("EYE-01") || line.contains("DIST-")), view.lines().toString());
        assertTrue(view.tree().getItem(0).getExpanded());
        document.history().undo();
        Patience.await("the list is empty again", () -> view.lines().isEmpty());
    }

    private static String trimmed(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    @Test
    void anotherFileIsComparedAndWordsNarrowTheRows() throws Exception {
        Path older = Files.copy(folder.resolve("harrow-vale.slopewright"), folder.resolve("older.slopewright"));
        document.history().perform(SetAttribute.of(document.project(), Literals.PROJECT__CLIENT, "Harrow Vale Council"));
        document.history().perform(SetAttribute.of(document.project(), Literals.PROJECT__REVISION, "Z"));
        view.compareWith(older);
        Patience.await("both changes are listed", () -> view.lines().size() == 2);
        Text search = Widgets.all(view.tree().getParent(), Text.class).findFirst().orElseThrow();
        search.setText("council");
        assertEquals(1, view.lines().size());
        assertTrue(view.lines().get(0).endsWith("\tClient\tnothing\tHarrow Vale Council"), view.lines().toString());
        search.setText("");
        Path damaged = Files.writeString(folder.resolve("damaged.slopewright"), "<not a project");
        view.compareWith(damaged);
        Patience.await("the reason is said", () -> view.state().contains("damaged.slopewright"));
        Patience.await("nothing is listed", () -> view.lines().isEmpty());
        assertFalse(view.state().startsWith("0 changes"), view.state());
    }
}
