package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.PropertyResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.jface.action.IAction;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeColumn;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.views.properties.IPropertyDescriptor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.evaluation.AidEvaluation;
import slopewright.model.ApproachAid;
import slopewright.model.Identified;
import slopewright.model.LightUnit;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.properties.ElementPropertyPage;
import slopewright.ui.properties.ElementPropertySource;
import slopewright.ui.review.FindingsView;
import slopewright.ui.units.QuantityFormat;

/** The property sheet as a page: parts of the element, adding measured values and inspections, reasons inline, what a value means. */
class PropertiesTest {

    private static final int USUAL_WIDTH = 1366 / 4;

    @TempDir
    private Path folder;
    private ProjectDocument document;
    private ApproachAid aid;
    private LightUnit unit;
    private Shell shell;
    private ElementPropertyPage page;

    @BeforeEach
    void open() throws Exception {
        document = ProjectDocument.open(DemoProjects.copy("every-family", folder));
        aid = Projects.aids(document.project()).stream().filter(candidate -> candidate.getUnits().size() > 1).findFirst().orElseThrow();
        unit = aid.getUnits().get(0);
        unit.setMeasured(null);
        shell = new Shell(Display.getCurrent());
        shell.setLayout(new FillLayout());
        shell.setSize(300, 700);
        page = new ElementPropertyPage(document);
        page.createControl(shell);
        shell.open();
    }

    @AfterEach
    void close() {
        page.dispose();
        shell.dispose();
        document.dispose();
    }

    private void show(Object element) {
        page.selectionChanged(null, new StructuredSelection(element));
    }

    private IAction action(String text) {
        return page.actions().stream().filter(action -> action.getText().equals(text)).findFirst().orElseThrow();
    }

    private Tree tree() {
        return Widgets.all(shell, Tree.class).findFirst().orElseThrow();
    }

    private List<String> groups() {
        return Stream.of(tree().getItems()).map(TreeItem::getText).toList();
    }

    @Test
    void theColumnsAreNamedByTheProduct() {
        show(unit);
        assertEquals(List.of("Property", "Value"), Stream.of(tree().getColumns()).map(TreeColumn::getText).toList());
    }

    /** A quarter of a screen of 1366 pixels, as the sheet is laid out first: no name of any element of a project is cut there. */
    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void noNameIsCutAtTheUsualWidth(String language) {
        Locale before = Locale.getDefault();
        Locale.setDefault(Locale.forLanguageTag(language));
        try {
            assertEquals(Set.of(), cutNames(figureNames(Locale.getDefault())));
        } finally {
            Locale.setDefault(before);
        }
    }

    /**
     * Names that are wider than their column. The words of figures were read in the language in which the window began; the rows bear their
     * names in the language that is looked at.
     */
    private Set<String> cutNames(Map<String, String> figures) {
        shell.setSize(USUAL_WIDTH, 700);
        Set<String> cut = new TreeSet<>();
        GC gc = new GC(tree());
        Set<Object> kinds = new HashSet<>();
        document.project().eAllContents().forEachRemaining(element -> {
            if (element instanceof Identified && kinds.add(element.eClass())) {
                show(element);
                rows().forEach(item -> item.setText(0, figures.getOrDefault(item.getText(0), item.getText(0))));
                tree().notifyListeners(SWT.Resize, new Event());
                for (TreeItem item : rows().toList()) {
                    int end = item.getTextBounds(0).x + gc.textExtent(item.getText(0)).x;
                    if (end > tree().getColumn(0).getWidth()) {
                        cut.add(item.getText(0) + " by " + (end - tree().getColumn(0).getWidth()));
                    }
                }
            }
        });
        gc.dispose();
        assertTrue(kinds.size() > 10, kinds.size() + " kinds of elements");
        return cut;
    }

    private Stream<TreeItem> rows() {
        return Stream.of(tree().getItems()).flatMap(group -> Stream.of(group.getItems()));
    }

    private static Map<String, String> figureNames(Locale language) {
        ClassLoader loader = ElementPropertyPage.class.getClassLoader();
        PropertyResourceBundle english = catalogue("slopewright.ui.properties.messages", Locale.ROOT, loader);
        PropertyResourceBundle wanted = catalogue("slopewright.ui.properties.messages",
                language.equals(Locale.GERMAN) ? language : Locale.ROOT, loader);
        return english.keySet().stream().filter(key -> !english.getString(key).contains("%"))
                .collect(Collectors.toMap(english::getString, wanted::getString, (one, other) -> one));
    }

    /** Another element is shown from its beginning, wherever the one before was scrolled to; an edit leaves the sheet where it is. */
    @Test
    void anotherElementIsShownFromItsBeginning() {
        shell.setSize(300, 300);
        show(aid);
        TreeItem last = tree().getItem(tree().getItemCount() - 1);
        tree().setTopItem(last);
        Patience.pause(100);
        assertNotEquals(tree().getItem(0), tree().getTopItem());
        show(aid);
        assertNotEquals(tree().getItem(0), tree().getTopItem(), "it is shown already");
        show(unit);
        Patience.pause(100);
        assertEquals(tree().getItem(0), tree().getTopItem());
    }

    @Test
    void measuredValuesAreAddedEnteredAndTakenBack() {
        show(unit);
        assertFalse(groups().contains("Measured"), groups().toString());
        assertTrue(action("Add measured values").isEnabled());
        action("Add measured values").run();
        assertNotNull(unit.getMeasured());
        assertTrue(groups().contains("Measured"), groups().toString());
        ElementPropertySource source = new ElementPropertySource(unit, new QuantityFormat(false, false));
        IPropertyDescriptor setting = Stream.of(source.getPropertyDescriptors())
                .filter(descriptor -> "Measured".equals(descriptor.getCategory()) && descriptor.getDisplayName().equals("Setting (°)"))
                        .findFirst()
                .orElseThrow();
        source.setPropertyValue(setting.getId(), "3°12'");
        assertEquals(3.2, unit.getMeasured().getSettingDeg(), 1e-12);
        document.history().undo();
        assertNull(unit.getMeasured().getSettingDeg());
        action("Remove the measured values").run();
        assertNull(unit.getMeasured());
    }

    @Test
    void anInspectionIsAddedToTheAid() {
        show(aid);
        int before = aid.getInspections().size();
        action("Add an inspection").run();
        assertEquals(before + 1, aid.getInspections().size());
        assertTrue(groups().contains("Inspection " + (before + 1)), groups().toString());
        document.history().undo();
        assertEquals(before, aid.getInspections().size());
        assertFalse(action("Add a circuit").isEnabled(), "an aid has no circuits");
        show(document.project());
        assertTrue(action("Add a circuit").isEnabled());
        action("Add a circuit").run();
        List<String> labels = Stream.of(new ElementPropertySource(document.project()).getPropertyDescriptors())
                .map(IPropertyDescriptor::getDisplayName).toList();
        assertTrue(labels.containsAll(List.of("Checked by", "Approved by", "Document number", "Client", "Length of the cable loop (m)",
                "Cable resistance (Ω/km)")), labels.toString());
    }

    /** The eye height is lens height + distance x tan(lowest on-slope signal). */
    @Test
    void aDerivedValueSaysHowItComesAbout() {
        ApproachAid row = Projects.aids(document.project()).stream().filter(candidate -> "four-unit-row".equals(candidate.getFamilyKey()))
                .findFirst()
                .orElseThrow();
        ElementPropertySource source = new ElementPropertySource(row);
        IPropertyDescriptor eye = Stream.of(source.getPropertyDescriptors())
                .filter(descriptor -> descriptor.getDisplayName().equals("Eye height (MEHT)"))
                .findFirst().orElseThrow();
        Siting siting = AidEvaluation.of(row).siting().orThrow();
        String formula = String.format(Locale.ROOT, "lowest on-slope signal) = %.2f m + %.2f m", siting.reference().heightM(),
                siting.distanceM());
        assertTrue(eye.getDescription().contains(formula), eye.getDescription());
        show(row);
        TreeItem item = Stream.of(tree().getItems()).flatMap(group -> Stream.of(group.getItems()))
                .filter(widget -> widget.getText().equals("Eye height (MEHT)")).findFirst().orElseThrow();
        tree().setSelection(item);
        Event event = new Event();
        event.item = item;
        tree().notifyListeners(SWT.Selection, event);
        assertTrue(page.why().contains(formula), page.why());
    }

    @Test
    void theReasonStandsAtTheCellWhileTyping() {
        ElementPropertySource source = new ElementPropertySource(unit, new QuantityFormat(false, false));
        IPropertyDescriptor setting = Stream.of(source.getPropertyDescriptors())
                .filter(descriptor -> descriptor.getDisplayName().equals("Setting (°)"))
                .findFirst().orElseThrow();
        var editor = setting.createPropertyEditor(tree());
        Text text = (Text) editor.getControl();
        text.setVisible(true);
        editor.activate();
        text.setText("95");
        assertTrue(String.valueOf(text.getToolTipText()).contains("not between"), text.getToolTipText());
        text.setText("3 15");
        assertNull(text.getToolTipText());
        editor.dispose();
    }

    /** A check that ends while something is typed shows its figures when the cell is closed, and drops nothing. */
    @Test
    void aCheckThatEndsLeavesAnOpenCellAlone() {
        document.viewState().select(List.of(unit));
        show(unit);
        TreeItem item = rows().filter(row -> row.getText().equals("Setting (°)")).findFirst().orElseThrow();
        Event enter = new Event();
        enter.item = item;
        tree().setSelection(item);
        tree().notifyListeners(SWT.Selection, enter);
        tree().notifyListeners(SWT.DefaultSelection, enter);
        Text cell = Widgets.all(tree(), Text.class).filter(Text::isVisible).findFirst().orElseThrow();
        cell.setText("3 1");
        page.refreshShown();
        assertTrue(cell.isVisible() && cell.getText().equals("3 1"), "what is typed is still there");
    }

    /** What stands in the small windows beside what they are about. */
    private static Stream<String> shownTips() {
        return Stream.of(Display.getCurrent().getShells()).filter(shell -> shell.isVisible() && (shell.getStyle() & SWT.ON_TOP) != 0)
                .flatMap(shell -> Widgets.all(shell, CLabel.class)).map(CLabel::getText);
    }

    /** Enter leaves a cell open in which stands what cannot be taken; who leaves it all the same reads below what was not taken. */
    @Test
    void whatCannotBeTakenIsNotDroppedInSilence() {
        document.viewState().select(List.of(unit));
        show(unit);
        double before = unit.getSettingDeg();
        TreeItem item = rows().filter(row -> row.getText().equals("Setting (°)")).findFirst().orElseThrow();
        Event enter = new Event();
        enter.item = item;
        tree().setSelection(item);
        tree().notifyListeners(SWT.Selection, enter);
        tree().notifyListeners(SWT.DefaultSelection, enter);
        Patience.await("the cell is open", () -> Widgets.all(tree(), Text.class).anyMatch(Text::isVisible));
        Text cell = Widgets.all(tree(), Text.class).filter(Text::isVisible).findFirst().orElseThrow();
        cell.setText("95");
        cell.notifyListeners(SWT.DefaultSelection, new Event());
        assertTrue(cell.isVisible() && cell.getText().equals("95"), "still there after Enter");
        assertTrue(shownTips().anyMatch(tip -> tip.contains("95")), shownTips().toList().toString());
        cell.setText("95.5");
        assertTrue(shownTips().allMatch(tip -> tip.contains("95.5")), "the reason is of what stands there: " + shownTips().toList());
        cell.setText("95");
        assertEquals(before, unit.getSettingDeg());
        cell.notifyListeners(SWT.FocusOut, new Event());
        assertEquals(before, unit.getSettingDeg());
        assertTrue(page.why().startsWith("'95' was not taken: ") && page.why().contains("not between"), page.why());
        TreeItem other = rows().filter(row -> row != item).findFirst().orElseThrow();
        Event away = new Event();
        away.item = other;
        tree().notifyListeners(SWT.Selection, away);
        assertTrue(page.why().startsWith("'95' was not taken: "), page.why());
        tree().notifyListeners(SWT.Selection, away);
        assertFalse(page.why().contains("not taken"), page.why());
    }

    /** Every name, group and sentence of the English catalogue has a German one; ranges are numbers and stand once. */
    @Test
    void theGermanCatalogueIsWhole() {
        ClassLoader loader = ElementPropertyPage.class.getClassLoader();
        Set<String> english = keys("slopewright.ui.properties.attributes", Locale.ROOT, loader);
        Set<String> german = keys("slopewright.ui.properties.attributes", Locale.GERMAN, loader);
        assertEquals(Set.of(), english.stream().filter(key -> !german.contains(key)).collect(Collectors.toCollection(TreeSet::new)));
        String words = "slopewright.ui.properties.messages";
        assertEquals(keys(words, Locale.ROOT, loader), keys(words, Locale.GERMAN, loader));
        String review = "slopewright.ui.review.internal.messages";
        ClassLoader other = FindingsView.class.getClassLoader();
        assertEquals(keys(review, Locale.ROOT, other), keys(review, Locale.GERMAN, other));
    }

    private static Set<String> keys(String name, Locale language, ClassLoader loader) {
        return catalogue(name, language, loader).keySet().stream().filter(key -> !key.endsWith(".range")).collect(Collectors.toSet());
    }

    private static PropertyResourceBundle catalogue(String name, Locale language, ClassLoader loader) {
        String file = name.replace('.', '/') + (language.equals(Locale.ROOT) ? "" : "_" + language.getLanguage()) + ".properties";
        try (var in = loader.getResourceAsStream(file)) {
            return new PropertyResourceBundle(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
