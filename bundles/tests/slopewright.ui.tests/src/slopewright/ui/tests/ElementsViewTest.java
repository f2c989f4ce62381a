package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.model.Aerodrome;
import slopewright.model.AeroplaneGroup;
import slopewright.model.Identified;
import slopewright.model.Obstacle;
import slopewright.model.Place;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightPackage;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.elements.ElementKind;
import slopewright.ui.elements.ElementsView;
import slopewright.ui.plan.PlanEditor;

/** The tables of a project that begins empty: elements of every kind are made, typed, pasted, doubled and removed there. */
class ElementsViewTest {

    /** What is entered elsewhere: in the properties, by the book of values, by a read-back, with a picture. */
    private static final Set<String> ELSEWHERE = Set.of("Project.confirmations", "Project.surveyBlocks", "Project.readBacks",
            "Aerodrome.backgroundImages", "RunwayEnd.threshold", "Helipad.place", "GroundLevel.place", "LightUnit.transitions",
            "LightUnit.measured", "BackgroundImage.firstPlace", "BackgroundImage.secondPlace");

    @TempDir
    private Path folder;
    private IWorkbenchPage page;
    private IEditorPart editor;
    private ProjectDocument document;
    private ElementsView view;

    @BeforeEach
    void open() throws Exception {
        page = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
        editor = page.openEditor(new ProjectInput(folder.resolve("empty.slopewright")), PlanEditor.ID);
        document = Adapters.adapt(editor, ProjectDocument.class);
        view = (ElementsView) page.showView(ElementsView.ID);
        Patience.pause(50);
    }

    @AfterEach
    void close() {
        page.closeEditor(editor, false);
        page.hideView(view);
    }

    private void show(String label) {
        view.show(ElementKind.all().stream().filter(kind -> kind.label().equals(label)).findFirst().orElseThrow());
    }

    private Aerodrome aerodrome() {
        return document.project().getAerodrome();
    }

    private void press(String words) {
        Widgets.all(view.table().getParent(), Button.class).filter(button -> button.getText().equals(words)).findFirst().orElseThrow()
                .notifyListeners(SWT.Selection, new Event());
    }

    private List<String> column(String title) {
        List<String> titles = Stream.of(view.table().getColumns()).map(TableColumn::getText).toList();
        return Stream.of(view.table().getItems()).map(item -> item.getText(titles.indexOf(title))).toList();
    }

    /** Every list and part of the model is in a table, or named above with the reason. */
    @Test
    void noPartOfTheModelIsForgotten() {
        Set<String> parts = SlopewrightPackage.eINSTANCE.getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast)
                .flatMap(type -> type.getEReferences().stream()).filter(reference -> reference.isContainment())
                .map(reference -> reference.getEContainingClass().getName() + "." + reference.getName()).collect(Collectors.toSet());
        Set<String> shown = ElementKind.all().stream().flatMap(kind -> kind.reference().stream())
                .map(reference -> reference.getEContainingClass().getName() + "." + reference.getName()).collect(Collectors.toSet());
        parts.removeAll(shown);
        assertEquals(new TreeSet<>(ELSEWHERE), new TreeSet<>(parts));
        assertEquals(ElementKind.all().size(), view.kinds().getItemCount());
    }

    /** A day such as 2026-06-01 and a name are whole, as long as no text is longer than anybody would read in a cell. */
    @Test
    void whatACellHoldsIsWhole() throws Exception {
        IEditorPart demo = page.openEditor(new ProjectInput(DemoProjects.copy("harrow-vale", folder)), PlanEditor.ID);
        show("Project");
        GC gc = new GC(view.table());
        try {
            assertTrue(Stream.of(view.table().getItems()).anyMatch(item -> item.getText(0).startsWith("Harrow Vale")), "the demonstration");
            for (TableColumn column : view.table().getColumns()) {
                for (TableItem item : view.table().getItems()) {
                    String text = item.getText(view.table().indexOf(column));
                    assertTrue(text.length() > 22 || column.getWidth() > gc.textExtent(text).x, text + " in " + column.getWidth());
                }
            }
        } finally {
            gc.dispose();
            page.closeEditor(demo, false);
        }
    }

    /** One of every kind is made, in the order of the list; each is one step back, and one step forward again. */
    @Test
    void oneOfEveryKindIsMadeInAnEmptyProject() {
        int made = 0;
        for (ElementKind kind : ElementKind.all()) {
            view.show(kind);
            if (kind.isListed()) {
                int before = kind.elements(document.project()).size();
                press("Add");
                Patience.pause(20);
                assertEquals(before + 1, kind.elements(document.project()).size(), kind.label() + ": " + view.said());
                document.history().undo();
                assertEquals(before, kind.elements(document.project()).size(), kind.label());
                document.history().redo();
                made++;
            }
        }
        assertTrue(made > 20, made + " kinds");
    }

    @Test
    void rowsOfASpreadsheetBecomeElements() {
        show("Runways");
        view.paste("Designator\tLength (ft)\tWidth (m)\tCode number\n09/27\t5000\t45\t4\n");
        assertEquals(1524.0, aerodrome().getRunways().get(0).getLengthM(), 1e-9, "5000 feet by hand");
        show("Runway ends");
        view.paste("Designator\tPosition\tThreshold elevation (m)\tTrue bearing of landing\tApproach type\n"
                + "09\t47 18 00 N 011 54 00 W\t86.4\t90\tvisual\n");
        view.paste("Designator\tPosition\tTrue bearing of landing (°)\n27\t09: 5000 ft 0\t270\n");
        List<RunwayEnd> ends = aerodrome().getRunways().get(0).getEnds();
        assertEquals(List.of("09", "27"), ends.stream().map(RunwayEnd::getDesignator).toList(), view.said());
        assertEquals(47.3, ends.get(0).getThreshold().getLatitudeDeg(), 1e-12);
        assertEquals(-11.9 + 0.0201509, ends.get(1).getThreshold().getLongitudeDeg(), 1e-6, "1524 m along the parallel by its radius");
    }

    /** A cell that makes no sense, a heading that is none, one cell too many: nothing is added, and it is said where. */
    @Test
    void whatCannotBePastedAddsNothing() {
        show("Aeroplane groups");
        view.paste("Jet\t4.6\t6.6\nProp\t2.6\ttall\n");
        assertEquals(List.of(), aerodrome().getAeroplaneGroups());
        assertTrue(view.said().contains("line 2") && view.said().contains("tall"), view.said());
        view.paste("Name\tEye path\nJet\t6.6\n");
        assertTrue(view.said().contains("no column Eye path"), view.said());
        view.paste("Name\tEye path to wheel path (yd)\nJet\t6.6\n");
        assertTrue(view.said().contains("line 2"), view.said());
        view.paste("\n");
        assertTrue(view.said().contains("no rows"), view.said());
        assertEquals(List.of(), aerodrome().getAeroplaneGroups());
        show("Project");
        view.paste("Another\n");
        assertTrue(view.said().contains("nothing can be pasted"), view.said());
    }

    /** What spreadsheets copy: cells with ends of lines and quotes, lines of different lengths and columns without a heading. */
    @Test
    void raggedTextIsReadWholeOrNotAtAll() {
        show("Aeroplane groups");
        view.paste("\r\n\tName\tShare of movements (%)\r\n\t\"Jet, \"\"long\"\"\r\nbody\"\t\r\n"
                + "\r\n\tProp\r\n\t5\" gun\t\t\t\r\n");
        assertEquals(List.of("Jet, \"long\" body", "Prop", "5\" gun"),
                aerodrome().getAeroplaneGroups().stream().map(AeroplaneGroup::getName).toList(), view.said());
        view.paste("Name\tName\nJet\tProp\n");
        assertTrue(view.said().contains("two columns are called Name"), view.said());
        view.paste("Name\t\nJet\t4.6\n");
        assertTrue(view.said().contains("line 2 has '4.6' in a column without a heading"), view.said());
        view.paste("Name\nJet\n\n\nProp\t4.6\n");
        assertTrue(view.said().contains("line 5 has 2 cells"), view.said());
        view.paste("Jet\t\"4.6\n6.6\"\n");
        assertTrue(view.said().contains("line 1"), view.said());
        view.paste("\"never closed\t4.6\tx\n");
        assertTrue(view.said().contains("line 1"), view.said());
        assertEquals(3, aerodrome().getAeroplaneGroups().size());
    }

    @Test
    void rowsAreDoubledSortedFilteredAndRemoved() {
        show("Aeroplane groups");
        view.paste("Name\tEye path to wheel path (m)\nJet\t6.6\nProp\t10.5\nLight\t2.1\n");
        assertEquals(List.of("Jet", "Prop", "Light"), column("Name"));
        TableColumn eye = Stream.of(view.table().getColumns()).filter(column -> column.getText().startsWith("Eye path to")).findFirst()
                .orElseThrow();
        eye.notifyListeners(SWT.Selection, new Event());
        assertEquals(List.of("Light", "Jet", "Prop"), column("Name"), "by size and not by letters");
        eye.notifyListeners(SWT.Selection, new Event());
        assertEquals(List.of("Prop", "Jet", "Light"), column("Name"));
        view.table().select(0);
        view.table().notifyListeners(SWT.Selection, new Event());
        press("Duplicate");
        assertEquals(4, aerodrome().getAeroplaneGroups().size());
        AeroplaneGroup copy = aerodrome().getAeroplaneGroups().get(3);
        assertEquals(10.5, copy.getEyeToWheelM());
        assertFalse(copy.getId().equals(aerodrome().getAeroplaneGroups().get(1).getId()));
        Text filter = Widgets.all(view.table().getParent(), Text.class).findFirst().orElseThrow();
        filter.setText("prop");
        assertEquals(2, view.shown().size());
        view.table().selectAll();
        view.table().notifyListeners(SWT.Selection, new Event());
        press("Remove");
        assertEquals(List.of("Jet", "Light"), aerodrome().getAeroplaneGroups().stream().map(AeroplaneGroup::getName).toList());
        document.history().undo();
        assertEquals(4, aerodrome().getAeroplaneGroups().size());
    }

    private static void run(String command) throws Exception {
        PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(command, null);
    }

    /** A copy has all that the row holds, in this project and in another one; other programs see the row. */
    @Test
    void whatIsCopiedIsPastedWithAllThatItHolds() throws Exception {
        show("Obstacles");
        view.paste("Name\tKind\tTop elevation (m)\nWire\tline\t118\n");
        show("Points of obstacles");
        view.paste("In\tLatitude\tLongitude\nWire\t47.304\t-11.9196\nWire\t47.300\t-11.9185\n");
        show("Obstacles");
        view.table().setFocus();
        view.table().selectAll();
        view.table().notifyListeners(SWT.Selection, new Event());
        run("org.eclipse.ui.edit.copy");
        Clipboard clipboard = new Clipboard(view.table().getDisplay());
        assertTrue(String.valueOf(clipboard.getContents(TextTransfer.getInstance())).contains("Wire\t"));
        clipboard.dispose();
        run("org.eclipse.ui.edit.paste");
        assertEquals(2, aerodrome().getObstacles().size(), view.said());
        assertEquals(List.of(47.304, 47.300), aerodrome().getObstacles().get(1).getPlaces().stream().map(Place::getLatitudeDeg).toList());
        IEditorPart other = page.openEditor(new ProjectInput(folder.resolve("other.slopewright")), PlanEditor.ID);
        try {
            page.activate(view);
            show("Obstacles");
            run("org.eclipse.ui.edit.paste");
            Aerodrome there = Adapters.adapt(other, ProjectDocument.class).project().getAerodrome();
            assertEquals(2, there.getObstacles().get(0).getPlaces().size(), view.said());
        } finally {
            page.closeEditor(other, false);
        }
    }

    /** Who leaves a cell learns that what was typed was not taken, and why. */
    @Test
    void whatIsLeftWrongIsNotDroppedInSilence() {
        show("Runways");
        view.paste("Designator\n09/27\n");
        show("Centre line levels");
        for (String wrong : List.of("abc", "NaN", "1e308", "3 kg", "1,234", "3°05'")) {
            press("Add");
            Patience.await("a cell is open", () -> Widgets.all(view.table(), Text.class).anyMatch(Text::isVisible));
            Widgets.all(view.table(), Text.class).filter(Text::isVisible).findFirst().orElseThrow().setText(wrong);
            view.kinds().setFocus();
            Patience.await("the cell is closed", () -> Widgets.all(view.table(), Text.class).noneMatch(Text::isVisible));
            assertTrue(view.said().contains(" was not changed: "), wrong + ": " + view.said());
        }
        assertTrue(aerodrome().getRunways().get(0).getCentreLine().stream().allMatch(point -> point.getChainageM() == null));
    }

    /** While a cell is typed into, undo takes letters back and leaves the project alone; when it is closed, undo is the project's. */
    @Test
    void undoWhileTypingTakesBackWhatWasTyped() throws Exception {
        show("Aeroplane groups");
        view.paste("Name\tEye path to wheel path (m)\nJet\t6.6\n");
        view.setFocus();
        press("Add");
        Patience.await("a cell of the table has the focus", () -> view.table().getDisplay().getFocusControl() instanceof Text text
                && text.getParent() == view.table());
        assertEquals(2, aerodrome().getAeroplaneGroups().size());
        Text cell = (Text) view.table().getDisplay().getFocusControl();
        cell.insert("Turbo");
        cell.insert(" prop");
        run("org.eclipse.ui.edit.undo");
        assertEquals("Turbo", cell.getText());
        run("org.eclipse.ui.edit.redo");
        assertEquals("Turbo prop", cell.getText());
        run("org.eclipse.ui.edit.undo");
        run("org.eclipse.ui.edit.undo");
        assertEquals("", cell.getText());
        assertThrows(Exception.class, () -> run("org.eclipse.ui.edit.undo"), "nothing more was typed");
        assertEquals(2, aerodrome().getAeroplaneGroups().size());
        view.kinds().setFocus();
        Patience.await("the cell is closed", () -> view.kinds().isFocusControl() && !cell.isVisible());
        run("org.eclipse.ui.edit.undo");
        assertEquals(1, aerodrome().getAeroplaneGroups().size());
    }

    /** A line has its points in a table of their own, and each row says which obstacle it belongs to. */
    @Test
    void theShapeOfAnObstacleIsPasted() {
        show("Obstacles");
        view.paste("Name\tKind\tTop elevation (m)\tPosition\nMast\tpoint\t148.4\t47.298, -11.934\nWire\tline\t118\t\n");
        show("Points of obstacles");
        view.paste("In\tLatitude\tLongitude\nWire\t47.304\t-11.9196\nWire\t47.300\t-11.9185\n");
        Obstacle wire = aerodrome().getObstacles().get(1);
        assertEquals(2, wire.getPlaces().size(), view.said());
        assertEquals(-11.9185, wire.getPlaces().get(1).getLongitudeDeg());
        assertEquals(1, aerodrome().getObstacles().get(0).getPlaces().size());
        view.paste("In\tLatitude\tLongitude\nChimney\t47.304\t-11.9196\n");
        assertTrue(view.said().contains("no 'Chimney'"), view.said());
        show("Obstacles");
        assertEquals(List.of("47.298, -11.934", "2 points"), column("Position"));
        List<Identified> shown = view.shown();
        assertEquals(aerodrome().getObstacles(), shown);
    }
}
