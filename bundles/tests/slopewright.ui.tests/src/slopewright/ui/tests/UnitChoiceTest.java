package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeColumn;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.checks.Outcome;
import slopewright.drawing.scene.Mark;
import slopewright.model.Identified;
import slopewright.model.Named;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.testkit.DemoProjects;
import slopewright.ui.MessageTexts;
import slopewright.ui.diagram.parts.ElementPart;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.elements.ElementKind;
import slopewright.ui.elements.ElementsView;
import slopewright.ui.plan.PlanEditor;
import slopewright.ui.preferences.Preferences;
import slopewright.ui.profile.PilotView;
import slopewright.ui.profile.SectionView;
import slopewright.ui.properties.OutcomeTexts;
import slopewright.ui.properties.PropertiesView;
import slopewright.ui.properties.ReadBackDialog;
import slopewright.ui.review.BookView;
import slopewright.ui.review.ComparisonView;
import slopewright.ui.review.FindingsView;
import slopewright.ui.review.MeasuredView;

/**
 * The choice of units is one choice: with feet chosen no metre is left in any text of the window, with decimal degrees no minute, with
 * minutes no angle of elevation in decimal degrees but in the brackets beside them. Bearings, which are written with two decimals, and
 * coordinates have no minutes, and the book of values has numbers as their texts print them. Looked at are the controls with their
 * tooltips, what is drawn in the plan and in the section, and every sentence about the demonstration; names are whatever their giver made
 * them.
 */
class UnitChoiceTest {

    private static final Pattern METRES = Pattern.compile("\\d ?(m|km|metres)\\b(?!/)|\\((m|km|metres)\\)|\\bmetres\\b");
    private static final Pattern MINUTES = Pattern.compile("(?<![(\\d])(?<!\\(-)\\d+°\\d\\d");
    private static final Pattern DECIMAL = Pattern.compile("(?<![(\\d.])\\d+\\.\\d{3,4}°");

    @TempDir
    private Path folder;
    private PlanEditor editor;
    private PlanDriver plan;
    private ProjectDocument document;
    private final List<String> texts = new ArrayList<>();
    private final List<String> names = new ArrayList<>();

    @AfterEach
    void close() {
        Preferences.store().setToDefault(Preferences.LENGTH_UNIT);
        Preferences.store().setToDefault(Preferences.ANGLE_FORM);
        page().closeAllEditors(false);
    }

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    @Test
    void noMetreIsLeftWhereFeetAreChosen() throws Exception {
        open();
        Preferences.store().setValue(Preferences.LENGTH_UNIT, Preferences.FEET);
        collect();
        assertTrue(texts.stream().anyMatch(text -> text.matches("(?s).*\\d ft\\b.*")));
        assertEquals(List.of(), faults(METRES));
        assertEquals(List.of(), faults(MINUTES));
    }

    /** The dialogs that ask for lengths, or say some: an import and a read-back. */
    @Test
    void noMetreIsLeftInADialogWhereFeetAreChosen() throws Exception {
        open();
        Preferences.store().setValue(Preferences.LENGTH_UNIT, Preferences.FEET);
        Ids.elements(document.project()).stream().filter(Named.class::isInstance).map(element -> ((Named) element).getName())
                .filter(Objects::nonNull).forEach(names::add);
        editor.importSurvey(Files.writeString(folder.resolve("f.csv"), "name,latitudeDeg,longitudeDeg,elevationM\nMast,47.3,-11.9,99\n"));
        Shell shell = Stream.of(Display.getCurrent().getShells()).filter(open -> open.getText().equals("Import a survey")).findFirst()
                .orElseThrow();
        read(shell);
        shell.close();
        assertTrue(texts.contains("Accuracy of places (ft)"), texts.toString());
        ReadBackDialog dialog = new ReadBackDialog(page().getWorkbenchWindow().getShell(), document.project(), List.of(),
                LocalDate.of(2026, 6, 1));
        dialog.setBlockOnOpen(false);
        dialog.open();
        Table list = Widgets.all(dialog.getShell(), Table.class).findFirst().orElseThrow();
        for (TableItem item : list.getItems()) {
            Event event = new Event();
            event.item = item;
            list.notifyListeners(SWT.Selection, event);
            texts.add(Widgets.all(dialog.getShell(), StyledText.class).findFirst().orElseThrow().getText());
        }
        dialog.close();
        assertTrue(texts.stream().anyMatch(text -> text.contains("283.46 ft")), "86.4 m, the threshold of runway 09, by hand");
        assertEquals(List.of(), faults(METRES));
    }

    @Test
    void noDecimalDegreeIsLeftWhereMinutesAreChosen() throws Exception {
        open();
        Preferences.store().setValue(Preferences.ANGLE_FORM, Preferences.MINUTES);
        collect();
        assertTrue(texts.stream().anyMatch(text -> MINUTES.matcher(text).find()));
        assertEquals(List.of(), faults(DECIMAL));
    }

    private List<String> faults(Pattern wrong) {
        return texts.stream().map(this::withoutNames).flatMap(String::lines).filter(text -> wrong.matcher(text).find()).distinct()
                .limit(25).toList();
    }

    private String withoutNames(String text) {
        String rest = text;
        for (String name : names) {
            rest = rest.replace(name, "…");
        }
        return rest;
    }

    /** Opens everything before other units are chosen, so that what does not follow is found too. */
    private void open() throws Exception {
        Preferences.store().setValue(Preferences.ANGLE_FORM, Preferences.DECIMAL);
        Optional.ofNullable(page().findView(BookView.ID)).ifPresent(page()::hideView);
        editor = (PlanEditor) page().openEditor(new ProjectInput(DemoProjects.copy("harrow-vale", folder)), PlanEditor.ID);
        plan = new PlanDriver(editor);
        document = Adapters.adapt(editor, ProjectDocument.class);
        Patience.await("it is checked", () -> document.lastResult().isPresent() && !document.isChecking());
        editor.reveal(Projects.aids(document.project()).get(0).getId());
        for (String view : List.of(PropertiesView.ID, SectionView.ID, PilotView.ID, ElementsView.ID, MeasuredView.ID,
                FindingsView.ID)) {
            page().showView(view);
            Patience.pause(100);
        }
    }

    private void collect() throws Exception {
        Patience.pause(300);
        for (Outcome outcome : document.lastResult().orElseThrow().outcomes()) {
            texts.add(MessageTexts.of(outcome.explanation()));
            texts.add(OutcomeTexts.value(outcome));
            texts.add(OutcomeTexts.margin(outcome));
            texts.addAll(OutcomeTexts.steps(outcome));
        }
        for (Identified element : Ids.elements(document.project())) {
            if (element instanceof Named named && named.getName() != null) {
                names.add(named.getName());
            }
            plan.part(element).ifPresent(this::drawn);
        }
        page().showView(PropertiesView.ID);
        SectionView section = (SectionView) page().showView(SectionView.ID);
        Patience.pause(300);
        Patience.await("the section is there", () -> section.canvas().section().isPresent());
        section.canvas().marks().stream().filter(Mark.Label.class::isInstance).forEach(mark -> texts.add(((Mark.Label) mark).text()));
        texts.add(section.readout().text());
        PilotView pilot = (PilotView) page().showView(PilotView.ID);
        Patience.pause(300);
        texts.addAll(pilot.words());
        controls();
        ElementsView tables = (ElementsView) page().showView(ElementsView.ID);
        for (ElementKind kind : ElementKind.all()) {
            tables.show(kind);
            read(tables.table().getParent());
        }
        for (String view : List.of(FindingsView.ID, MeasuredView.ID, ComparisonView.ID)) {
            IViewPart shown = page().showView(view);
            Patience.pause(200);
            if (shown instanceof FindingsView findings) {
                findings.rows().stream().findFirst().ifPresent(findings::select);
                Patience.pause(100);
                texts.add(findings.explanation());
            }
            controls();
        }
    }

    private void drawn(ElementPart<?> part) {
        texts.add(part.description());
        Optional.ofNullable(part.markFigure()).ifPresent(figure -> figure.marks().stream().filter(Mark.Label.class::isInstance)
                .forEach(mark -> texts.add(((Mark.Label) mark).text())));
    }

    private void controls() {
        Patience.pause(100);
        read(page().getWorkbenchWindow().getShell());
    }

    private void read(Composite parent) {
        for (Control child : parent.getChildren()) {
            Stream.of(Optional.ofNullable(child.getToolTipText()), said(child)).flatMap(Optional::stream).forEach(texts::add);
            if (child instanceof Table table) {
                Stream.of(table.getColumns()).map(TableColumn::getText).forEach(texts::add);
                Stream.of(table.getItems()).forEach(item -> cells(table, item));
            } else if (child instanceof Tree tree) {
                Stream.of(tree.getColumns()).map(TreeColumn::getText).forEach(texts::add);
                Stream.of(tree.getItems()).forEach(item -> cells(tree, item));
            } else if (child instanceof Composite composite) {
                read(composite);
            }
        }
    }

    private static Optional<String> said(Control control) {
        return control instanceof Label label ? Optional.of(label.getText()) : control instanceof Button button
                ? Optional.of(button.getText()) : control instanceof Text text ? Optional.of(text.getText())
                : control instanceof Combo combo ? Optional.of(combo.getText()) : control instanceof Group group
                ? Optional.of(group.getText()) : Optional.empty();
    }

    private void cells(Table table, TableItem item) {
        for (int i = 0; i < Math.max(1, table.getColumnCount()); i++) {
            texts.add(item.getText(i));
        }
    }

    private void cells(Tree tree, TreeItem item) {
        for (int i = 0; i < Math.max(1, tree.getColumnCount()); i++) {
            texts.add(item.getText(i));
        }
        Stream.of(item.getItems()).forEach(inner -> cells(tree, inner));
    }
}
