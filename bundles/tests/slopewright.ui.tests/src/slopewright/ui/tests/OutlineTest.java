package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.views.contentoutline.ContentOutline;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.edit.SetAttribute;
import slopewright.model.ApproachAid;
import slopewright.model.Obstacle;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SlopewrightPackage;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Ids;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.elements.OutlineView;
import slopewright.ui.plan.PlanEditor;

/** The outline of a plan. */
class OutlineTest {

    private static final int MANY = 1500;

    @TempDir
    private Path folder;
    private PlanEditor editor;
    private PlanDriver plan;
    private ContentOutline view;

    private void open(Path file) throws Exception {
        editor = (PlanEditor) page().openEditor(new ProjectInput(file), PlanEditor.ID);
        plan = new PlanDriver(editor);
        view = (ContentOutline) page().showView(OutlineView.ID);
        page().activate(editor);
        Patience.await("the plan has a size", () -> editor.view().widthPx() > 0);
        Patience.await("the outline shows the project", () -> view.getCurrentPage().getControl() instanceof Tree tree
                && tree.getItemCount() == 1);
    }

    @AfterEach
    void close() {
        page().closeEditor(editor, false);
        page().hideView(view);
    }

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    private Tree tree() {
        return (Tree) view.getCurrentPage().getControl();
    }

    private static List<TreeItem> all(TreeItem... items) {
        List<TreeItem> all = new ArrayList<>();
        for (TreeItem item : items) {
            all.add(item);
            all.addAll(all(item.getItems()));
        }
        return all;
    }

    private TreeItem item(String text) {
        return all(tree().getItems()).stream().filter(item -> item.getText().startsWith(text)).findFirst()
                .orElseThrow(() -> new AssertionError(text + " is not in the tree"));
    }

    @Test
    void theProjectIsATreeDownToTheAids() throws Exception {
        open(DemoProjects.copy("harrow-vale", folder));
        TreeItem aid = item("PAPI 09");
        assertTrue(aid.getParentItem().getText().startsWith("09"), aid.getParentItem().getText());
        assertTrue(aid.getParentItem().getParentItem().getText().startsWith("Runway 09/27"), aid.getParentItem().getParentItem().getText());
        assertTrue(item("Obstacles (5)").getParentItem() == tree().getItem(0));
    }

    @Test
    void whatIsSelectedInOneIsSelectedInTheOther() throws Exception {
        open(DemoProjects.copy("harrow-vale", folder));
        ApproachAid row = plan.element("approach-aid-1", ApproachAid.class);
        tree().setSelection(item("PAPI 27"));
        tree().notifyListeners(SWT.Selection, new Event());
        ApproachAid other = plan.element("approach-aid-2", ApproachAid.class);
        assertEquals(Optional.of(other), plan.selected());
        assertEquals(Optional.of(other), plan.document().viewState().aid());
        plan.lookAt(row, 4);
        plan.click(plan.at(row.getUnits().get(0)));
        assertTrue(tree().getSelection()[0].getText().startsWith("PAPI 09"), tree().getSelection()[0].getText());
        Patience.pause(600);
        plan.click(plan.at(row.getUnits().get(0)));
        assertTrue(tree().getSelection()[0].getText().startsWith("Unit "), tree().getSelection()[0].getText());
    }

    @Test
    void anEditIsSeenAndFindingsAreCounted() throws Exception {
        open(DemoProjects.copy("harrow-vale-faults", folder));
        Patience.await("failures are counted at the project", () -> tree().getItem(0).getText().contains("✕"));
        ApproachAid row = plan.element("approach-aid-1", ApproachAid.class);
        plan.document().history().perform(SetAttribute.of(row, SlopewrightPackage.Literals.NAMED__NAME, "Renamed row"));
        assertTrue(item("Renamed row").getText().startsWith("Renamed row"));
    }

    @Test
    void ofManyObstaclesTheFirstThousandAreListed() throws Exception {
        Path file = DemoProjects.copy("harrow-vale", folder);
        Project project = ProjectFile.load(file);
        for (int i = 0; i < MANY; i++) {
            Obstacle obstacle = SlopewrightFactory.eINSTANCE.createObstacle();
            obstacle.setName("T" + i);
            obstacle.setTopElevationM(90.0);
            Place place = SlopewrightFactory.eINSTANCE.createPlace();
            place.setLatitudeDeg(47.3 + i * 1e-5);
            place.setLongitudeDeg(-11.89);
            obstacle.getPlaces().add(place);
            project.getAerodrome().getObstacles().add(obstacle);
        }
        Ids.assign(project);
        ProjectFile.save(project, file);
        open(file);
        TreeItem group = item("Obstacles (1505)");
        Obstacle last = project.getAerodrome().getObstacles().get(MANY);
        editor.reveal(last.getId());
        assertEquals(last.getId(), ((Obstacle) plan.selected().orElseThrow()).getId(), "one of many gets a part when it is revealed");
        assertEquals(group, tree().getSelection()[0], "what is not listed is found at its group");
        editor.reveal(project.getAerodrome().getObstacles().get(10).getId());
        TreeItem more = group.getItem(group.getItemCount() - 1);
        Patience.pause(50);
        assertEquals(1001, group.getItemCount());
        tree().showItem(more);
        Patience.await("the rest is named", () -> group.getItem(1000).getText().equals("and 505 more"));
    }
}
