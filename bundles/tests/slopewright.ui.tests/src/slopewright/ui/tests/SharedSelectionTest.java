package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.views.properties.IPropertySheetPage;
import org.eclipse.ui.views.properties.PropertySheet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.edit.SetAttribute;
import slopewright.model.ApproachAid;
import slopewright.model.Identified;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.elements.OutlineView;
import slopewright.ui.plan.PlanEditor;
import slopewright.ui.properties.ElementPropertyPage;
import slopewright.ui.properties.PropertiesView;
import slopewright.ui.review.FindingsView;

/** One selection in all views, and undo and redo from each of them. */
class SharedSelectionTest {

    private static final List<String> VIEWS = List.of("slopewright.ui.review.findings", "slopewright.ui.profile.section",
            "slopewright.ui.profile.pilot", "slopewright.ui.review.measured", "slopewright.ui.review.comparison",
            "slopewright.ui.review.versions", "slopewright.ui.review.book", PropertiesView.ID, OutlineView.ID);

    @TempDir
    private Path folder;
    private PlanEditor editor;
    private ProjectDocument document;
    private PropertySheet sheet;

    @BeforeEach
    void open() throws Exception {
        editor = (PlanEditor) page().openEditor(new ProjectInput(DemoProjects.copy("harrow-vale", folder)), PlanEditor.ID);
        document = Adapters.adapt(editor, ProjectDocument.class);
        sheet = (PropertySheet) page().showView(PropertiesView.ID);
        page().activate(editor);
        Patience.await("it is checked", () -> document.lastResult().isPresent() && !document.isChecking());
    }

    @AfterEach
    void close() {
        page().closeEditor(editor, false);
    }

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    /** The names and values that the property sheet paints. */
    private List<String> painted() {
        IPropertySheetPage shown = (IPropertySheetPage) sheet.getCurrentPage();
        assertInstanceOf(ElementPropertyPage.class, shown);
        Tree tree = Widgets.all((Composite) shown.getControl(), Tree.class).findFirst().orElseThrow();
        return Stream.of(tree.getItems()).flatMap(group -> Stream.of(group.getItems())).map(SharedSelectionTest::text).toList();
    }

    private static String text(TreeItem item) {
        return item.getText(0) + " = " + item.getText(1);
    }

    @Test
    void propertiesShowTheSelectedElementWhicheverViewHasTheFocus() throws Exception {
        ApproachAid aid = Projects.aids(document.project()).get(1);
        editor.reveal(aid.getId());
        Patience.pause(100);
        List<String> first = painted();
        assertTrue(first.stream().anyMatch(text -> text.contains(String.valueOf(aid.getName()))), first.toString());
        for (String id : VIEWS) {
            IWorkbenchPart part = page().showView(id);
            page().activate(part);
            Patience.pause(100);
            assertEquals(first, painted(), id + " has the focus");
        }
    }

    @Test
    void whatIsSelectedInTheFindingsIsSelectedInThePlan() throws Exception {
        ApproachAid aid = Projects.aids(document.project()).get(1);
        editor.reveal(aid.getId());
        document.history().perform(SetAttribute.of(Ids.find(document.project(), "obstacle-2").orElseThrow(),
                Literals.OBSTACLE__TOP_ELEVATION_M, 190.0));
        FindingsView findings = (FindingsView) page().showView(FindingsView.ID);
        Patience.await("it is found", () -> findings.rows().stream().anyMatch(row -> "obstacle-2".equals(row.elementId())));
        findings.select(findings.rows().stream().filter(row -> "obstacle-2".equals(row.elementId())).findFirst().orElseThrow());
        PlanDriver plan = new PlanDriver(editor);
        assertEquals("obstacle-2", ((Identified) plan.selected().orElseThrow()).getId());
        Patience.pause(100);
        assertTrue(painted().contains("Id = obstacle-2"), painted().toString());
        editor.reveal(aid.getId());
        Patience.pause(100);
        assertTrue(painted().contains("Id = " + aid.getId()), "back at what was selected before: " + painted());
    }

    @Test
    void anEditIsTakenBackAndMadeAgainFromEveryView() throws Exception {
        ApproachAid aid = Projects.aids(document.project()).get(1);
        String before = String.valueOf(aid.getName());
        IHandlerService handlers = PlatformUI.getWorkbench().getService(IHandlerService.class);
        for (String id : VIEWS) {
            page().activate(page().showView(id));
            document.history().perform(SetAttribute.of(aid, Literals.NAMED__NAME, "renamed in " + id));
            handlers.executeCommand("org.eclipse.ui.edit.undo", null);
            assertEquals(before, String.valueOf(aid.getName()), id);
            assertFalse(document.isDirty(), id);
            handlers.executeCommand("org.eclipse.ui.edit.redo", null);
            assertEquals("renamed in " + id, aid.getName());
            handlers.executeCommand("org.eclipse.ui.edit.undo", null);
        }
    }
}
