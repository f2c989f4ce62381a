package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.checks.Outcome;
import slopewright.checks.Verdict;
import slopewright.edit.MoveAid;
import slopewright.edit.SetAttribute;
import slopewright.model.ApproachAid;
import slopewright.model.LightUnit;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Ids;
import slopewright.rcp.internal.ProjectOpener;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.review.FindingsView;

/**
 * One entry of a layout that meets every rule is made wrong; the remedy that changes just that brings every rule back to met. The right
 * values are those of the demonstration.
 */
class QuickFixTest {

    @TempDir
    private Path folder;
    private IWorkbenchPage page;
    private IEditorPart editor;
    private FindingsView view;
    private ProjectDocument document;

    @BeforeEach
    void open() throws Exception {
        page = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
        view = (FindingsView) page.showView(FindingsView.ID);
        editor = page.openEditor(new ProjectInput(DemoProjects.copy("harrow-vale", folder)), ProjectOpener.EDITOR);
        document = Adapters.adapt(editor, ProjectDocument.class);
        awaitCheck();
        assertEquals(0, notMet());
    }

    @AfterEach
    void close() {
        page.closeEditor(editor, false);
    }

    private void awaitCheck() {
        Patience.await("the project is checked", () -> document.lastResult().isPresent() && !document.isChecking());
    }

    private int notMet() {
        return document.lastResult().orElseThrow().counts().get(Verdict.NOT_MET);
    }

    private void spoil(String unit, EAttribute attribute, double value) {
        document.history().perform(SetAttribute.of((LightUnit) Ids.find(document.project(), unit).orElseThrow(), attribute, value));
        awaitCheck();
    }

    private void select(String rule) {
        view.select(view.rows().stream().filter(row -> row.rule().equals(rule)).findFirst().orElseThrow());
        Patience.await("remedies of " + rule, () -> !view.remedies().isEmpty());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            azimuthOffsetDeg | 4.0   | ROW-14 | Turn the beams along the axis
            lensElevationM   | 88.5  | ROW-12 | Bring the lenses of each bar to one level
            alongM           | 333.0 | ROW-13 | Bring each bar into line
            rightM           | -44.0 | ROW-04 | Space the units of each bar equally
            rightM           | -28.0 | ROW-03 | Move the units to the distances of the layout from the centre line
            settingDeg       | 3.4   | ROW-07 | Set the units to the rule's angles
            """)
    void theEntryThatIsWrongIsPutRight(String attribute, double value, String rule, String remedy) {
        double right = (Double) unit().eGet(feature(attribute));
        spoil("light-unit-2", feature(attribute), value);
        assertTrue(notMet() > 0, attribute);
        select(rule);
        List<String> offered = view.remedies();
        int index = offered.indexOf(offered.stream().filter(text -> text.startsWith(remedy)).findFirst()
                .orElseThrow(() -> new AssertionError(offered.toString())));
        view.applyRemedy(index);
        awaitCheck();
        assertEquals(0, notMet(), offered.toString());
        assertEquals(right, (Double) unit().eGet(feature(attribute)), 0.01);
        document.history().undo();
        assertEquals(value, unit().eGet(feature(attribute)), "one step of undo");
    }

    private LightUnit unit() {
        return (LightUnit) Ids.find(document.project(), "light-unit-2").orElseThrow();
    }

    private static EAttribute feature(String name) {
        return (EAttribute) Literals.LIGHT_UNIT.getEStructuralFeature(name);
    }

    @Test
    void anAidThatIsTooFarBackIsMovedAsAWhole() {
        ApproachAid aid = (ApproachAid) Ids.find(document.project(), "approach-aid-1").orElseThrow();
        document.history().perform(MoveAid.by(aid, -60, 0));
        awaitCheck();
        Outcome low = document.lastResult().orElseThrow().outcomes().stream().filter(outcome -> outcome.verdict() == Verdict.NOT_MET)
                .findFirst().orElseThrow();
        select(low.rule());
        assertTrue(view.remedies().stream().anyMatch(text -> text.startsWith("Move the whole to the distance of the layout")),
                view.remedies().toString());
    }

    @Test
    void severalFindingsAreCuredInOneStep() {
        String before = new String(ProjectFile.bytes(document.project()), StandardCharsets.UTF_8);
        spoil("light-unit-2", Literals.LIGHT_UNIT__AZIMUTH_OFFSET_DEG, 4);
        spoil("light-unit-3", Literals.LIGHT_UNIT__SETTING_DEG, 2.5);
        int wrong = notMet();
        assertTrue(wrong > 2, "rules of two subjects");
        Patience.await("the rows are shown", () -> view.rows().stream().filter(row -> row.verdict() == Verdict.NOT_MET).count() == wrong);
        TreeItem heading = view.tree().getItem(0);
        view.tree().setSelection(heading);
        Event event = new Event();
        event.item = heading;
        view.tree().notifyListeners(SWT.Selection, event);
        assertTrue(view.explanation().contains(wrong + " findings are selected"), view.explanation());
        Patience.await("one step for all", () -> view.remedies().size() == 1);
        assertTrue(view.remedies().get(0).startsWith("Cure " + wrong + " of them: "), view.remedies().toString());
        view.previewRemedy(0);
        assertTrue(view.explanation().matches("(?s).*2(\\.5|°30').*"), view.explanation());
        view.applyRemedy(0);
        awaitCheck();
        assertEquals(0, notMet());
        document.history().undo();
        document.history().undo();
        document.history().undo();
        assertEquals(before, new String(ProjectFile.bytes(document.project()), StandardCharsets.UTF_8));
    }
}
