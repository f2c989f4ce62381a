package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.views.properties.IPropertyDescriptor;
import org.eclipse.ui.views.properties.IPropertySource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.checks.Outcome;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.WheelClearance;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Identified;
import slopewright.model.LightUnit;
import slopewright.model.SettingsForm;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.preferences.Preferences;
import slopewright.ui.properties.ElementPropertySource;
import slopewright.ui.properties.OutcomeTexts;
import slopewright.ui.units.Quantity;
import slopewright.ui.units.QuantityFormat;

/** The property sheet: units, groups, validation, editing through the history, derived values. */
class PropertySourceTest {

    private static final QuantityFormat METRES = new QuantityFormat(false, false);
    private static final QuantityFormat FEET = new QuantityFormat(true, true);

    @TempDir
    private Path folder;
    private ProjectDocument document;
    private ApproachAid aid;
    private LightUnit unit;

    @BeforeEach
    void open() throws Exception {
        document = ProjectDocument.open(DemoProjects.copy("harrow-vale", folder));
        aid = Projects.aids(document.project()).get(0);
        unit = aid.getUnits().get(0);
    }

    @AfterEach
    void close() {
        document.dispose();
    }

    private static IPropertyDescriptor descriptor(ElementPropertySource source, Object id) {
        return Stream.of(source.getPropertyDescriptors()).filter(descriptor -> descriptor.getId().equals(id)).findFirst().orElseThrow();
    }

    private static IPropertyDescriptor named(ElementPropertySource source, String name) {
        return Stream.of(source.getPropertyDescriptors()).filter(descriptor -> descriptor.getDisplayName().equals(name)).findFirst()
                .orElseThrow();
    }

    private static String shown(ElementPropertySource source, IPropertyDescriptor descriptor) {
        return descriptor.getLabelProvider().getText(source.getPropertyValue(descriptor.getId()));
    }

    @Test
    void everyAttributeStandsWithItsUnitInAGroup() {
        ElementPropertySource source = new ElementPropertySource(unit, METRES);
        assertEquals("Setting (°)", descriptor(source, Literals.LIGHT_UNIT__SETTING_DEG).getDisplayName());
        assertEquals("Along runway (m)", descriptor(source, Literals.LIGHT_UNIT__ALONG_M).getDisplayName());
        assertEquals("Place", descriptor(source, Literals.LIGHT_UNIT__ALONG_M).getCategory());
        for (Identified element : Ids.elements(document.project())) {
            for (IPropertyDescriptor descriptor : new ElementPropertySource(element, METRES).getPropertyDescriptors()) {
                assertNotNull(descriptor.getCategory(), descriptor.getDisplayName());
                assertFalse(descriptor.getDescription().isBlank(), descriptor.getDisplayName());
            }
        }
    }

    @Test
    void anAngleIsShownInMinutesToo() {
        unit.setSettingDeg(3.25);
        ElementPropertySource source = new ElementPropertySource(unit, METRES);
        assertEquals("3.25° (3°15')", shown(source, descriptor(source, Literals.LIGHT_UNIT__SETTING_DEG)));
        ElementPropertySource minutes = new ElementPropertySource(unit, FEET);
        assertEquals("3°15' (3.25°)", shown(minutes, descriptor(minutes, Literals.LIGHT_UNIT__SETTING_DEG)));
    }

    /** The findings and the command line say 4.30 m or 14.1 ft of the demonstration with faults; the properties said 4.3 m and 14.11 ft. */
    @ParameterizedTest
    @ValueSource(strings = {Preferences.METRES, Preferences.FEET})
    void whatIsWorkedOutReadsAsInTheFindings(String unitOfLength) {
        Preferences.store().setValue(Preferences.LENGTH_UNIT, unitOfLength);
        try {
            Patience.await("checked", () -> document.lastResult().isPresent() && !document.isChecking());
            int compared = 0;
            for (Outcome outcome : document.lastResult().orElseThrow().outcomes()) {
                if (outcome.rule().equals("EYE-01") && outcome.value().isPresent()) {
                    ApproachAid about = Projects.aids(document.project()).stream().filter(each -> each.getId().equals(outcome.elementId()))
                            .findFirst().orElseThrow();
                    ElementPropertySource source = new ElementPropertySource(about, QuantityFormat.preferred());
                    assertEquals(OutcomeTexts.value(outcome), shown(source, named(source, "Eye height (MEHT)")));
                    compared++;
                }
            }
            assertTrue(compared > 1, "eye heights of " + compared);
        } finally {
            Preferences.store().setToDefault(Preferences.LENGTH_UNIT);
        }
    }

    @Test
    void aTypedValueGoesThroughTheHistory() {
        double before = unit.getSettingDeg();
        ElementPropertySource source = new ElementPropertySource(unit, METRES);
        source.setPropertyValue(Literals.LIGHT_UNIT__SETTING_DEG, "3 15");
        assertEquals(3.25, unit.getSettingDeg());
        assertTrue(document.isDirty());
        assertEquals("3.25", source.getPropertyValue(Literals.LIGHT_UNIT__SETTING_DEG));
        document.history().undo();
        assertEquals(before, unit.getSettingDeg());
        assertFalse(document.isDirty());
        source.setPropertyValue(Literals.LIGHT_UNIT__SETTING_DEG, source.getPropertyValue(Literals.LIGHT_UNIT__SETTING_DEG));
        assertFalse(document.isDirty(), "the same text is no edit");
    }

    /** 50 ft are 15.24 m exactly. */
    @Test
    void feetAreReadAndKeptAsMetres() {
        ElementPropertySource source = new ElementPropertySource(unit, FEET);
        assertEquals("Along runway (ft)", descriptor(source, Literals.LIGHT_UNIT__ALONG_M).getDisplayName());
        source.setPropertyValue(Literals.LIGHT_UNIT__ALONG_M, "50");
        assertEquals(15.24, unit.getAlongM(), 1e-12);
        assertEquals("50", source.getPropertyValue(Literals.LIGHT_UNIT__ALONG_M));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"steep | not understood", "95 | not between", "3°75' | 60 minutes", "3 m | not understood",
        "NaN | not understood", "-3 | not between", "1e9 | not between"})
    void nonsenseIsRefusedWithTheReason(String typed, String reason) {
        ElementPropertySource source = new ElementPropertySource(unit, METRES);
        double before = unit.getSettingDeg();
        source.setPropertyValue(Literals.LIGHT_UNIT__SETTING_DEG, typed);
        assertEquals(before, unit.getSettingDeg());
        Shell shell = new Shell(Display.getCurrent());
        try {
            var editor = descriptor(source, Literals.LIGHT_UNIT__SETTING_DEG).createPropertyEditor(new Composite(shell, 0));
            editor.setValue(typed);
            String said = editor.getValidator().isValid(typed);
            assertTrue(said.contains(reason), said);
        } finally {
            shell.dispose();
        }
    }

    /** What may be a thousand or one and a bit is neither; a German window has one decimal sign, and degrees are no thousands. */
    @Test
    void aCommaBeforeThreeDigitsIsNotGuessedAt() {
        for (String typed : List.of("1,234", "-1,234 ft", "12,500 m")) {
            String said = assertThrows(IllegalArgumentException.class, () -> METRES.read(typed, Quantity.LENGTH), typed).getMessage();
            assertTrue(said.contains("two ways"), said);
        }
        assertEquals("'1,234' can be read in two ways; type 1234 or 1.234.",
                assertThrows(IllegalArgumentException.class, () -> METRES.read("1,234", Quantity.LENGTH)).getMessage());
        assertEquals(1.234, new QuantityFormat(false, false, Locale.GERMAN).read("1,234", Quantity.LENGTH));
        assertEquals(0.125, METRES.read("0,125", Quantity.LENGTH));
        assertEquals(12.5, METRES.read("12,5", Quantity.LENGTH));
        assertEquals(1.2345, METRES.read("1,2345", Quantity.LENGTH));
        assertEquals(3.125, METRES.read("3,125", Quantity.ANGLE));
        assertEquals(47.305, METRES.read("47,305", Quantity.LATITUDE));
    }

    /** A column that was pasted into one cell: two lines are not degrees and minutes. */
    @Test
    void severalLinesAreNoNumber() {
        for (String lines : List.of("3\n15", "3\r\n15", "3\u202815")) {
            for (Quantity quantity : List.of(Quantity.ANGLE, Quantity.LENGTH, Quantity.LATITUDE, Quantity.NUMBER)) {
                String said = assertThrows(IllegalArgumentException.class, () -> METRES.read(lines, quantity)).getMessage();
                assertEquals("Several lines are no number; type one.", said);
            }
        }
        assertEquals(3, METRES.read("3\n", Quantity.ANGLE));
    }

    /** What was pasted in several lines into a name is one line of it: every list, drawing and file shows a name in one line. */
    @Test
    void aNameKeepsItsWordsInOneLine() {
        ElementPropertySource source = new ElementPropertySource(aid, METRES);
        source.setPropertyValue(Literals.NAMED__NAME, "Row\r\n  left\n");
        assertEquals("Row left", aid.getName());
    }

    @Test
    void choicesAndReferencesAreListed() {
        ElementPropertySource source = new ElementPropertySource(aid, METRES);
        IPropertyDescriptor form = descriptor(source, Literals.APPROACH_AID__SETTINGS);
        SettingsForm before = aid.getSettings();
        int other = before == SettingsForm.STANDARD ? 1 : 0;
        source.setPropertyValue(form.getId(), other);
        assertEquals(SettingsForm.get(other), aid.getSettings());
        document.history().undo();
        assertEquals(before, aid.getSettings());
        ApproachHost host = Projects.host(aid).orElseThrow();
        ElementPropertySource hostSource = new ElementPropertySource(host, METRES);
        IPropertyDescriptor groups = descriptor(hostSource, Literals.APPROACH_HOST__REGULAR_GROUPS);
        String names = shown(hostSource, groups);
        assertTrue(names.contains(host.getRegularGroups().get(0).getName()), names);
        hostSource.setPropertyValue(groups.getId(), List.of(host.getRegularGroups().get(0)));
        assertEquals(1, host.getRegularGroups().size());
        document.history().undo();
        assertTrue(host.getRegularGroups().size() > 1);
    }

    @Test
    void aResetTakesTheValueAway() {
        ElementPropertySource source = new ElementPropertySource(unit, METRES);
        source.resetPropertyValue(Literals.LIGHT_UNIT__HEIGHT_ABOVE_GROUND_M);
        assertNull(unit.getHeightAboveGroundM());
        assertEquals("", source.getPropertyValue(Literals.LIGHT_UNIT__HEIGHT_ABOVE_GROUND_M));
        document.history().undo();
        assertNotNull(unit.getHeightAboveGroundM());
    }

    @Test
    void anAidShowsWhatItGivesAsItStands() {
        Patience.await("the project is checked", () -> document.lastResult().isPresent());
        ApproachAid plain = Projects.aids(document.project()).stream()
                .filter(candidate -> Projects.host(candidate).orElseThrow().getGlidePath() == null).findFirst().orElseThrow();
        Siting laid = AidEvaluation.of(plain).siting().orThrow();
        ElementPropertySource source = new ElementPropertySource(plain, METRES);
        String height = shown(source, named(source, "Eye height (MEHT)"));
        assertEquals(laid.mehtM(), Double.parseDouble(height.replace(" m", "")), 0.0051, height);
        String distance = shown(source, named(source, "Distance"));
        assertEquals(laid.distanceM(), Double.parseDouble(distance.replace(" m", "")), 0.0051, distance);
        String clearance = shown(source, named(source, "Wheels over threshold"));
        double least = AidEvaluation.of(plain).wheelClearances().stream().mapToDouble(WheelClearance::clearanceM).min().orElseThrow();
        assertEquals(least, Double.parseDouble(clearance.replace(" m", "")), 0.0051, clearance);
        assertTrue(named(source, "Wheels over threshold").getDescription().contains("["), "the source is named");
        assertTrue(Stream.of(source.getPropertyDescriptors())
                .anyMatch(descriptor -> "Rules".equals(descriptor.getCategory())), "what the rules say");
    }

    /** The demonstration was read back whole. */
    @Test
    void whoReadAnElementBackIsShown() {
        ElementPropertySource source = new ElementPropertySource(unit, METRES);
        assertEquals("by N. Ferrow (invented) on 2026-06-01", shown(source, named(source, "Read back")));
        unit.setSettingDeg(unit.getSettingDeg() + 0.01);
        source = new ElementPropertySource(unit, METRES);
        assertEquals("changed since N. Ferrow (invented) read it back on 2026-06-01", shown(source, named(source, "Read back")));
        document.project().getReadBacks().clear();
        source = new ElementPropertySource(unit, METRES);
        assertEquals("by nobody yet", shown(source, named(source, "Read back")));
    }

    @Test
    void elementsAdaptToTheirSource() {
        assertNotNull(Adapters.adapt(unit, IPropertySource.class));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"15.2 | LENGTH | 15.2", "15,2 m | LENGTH | 15.2", "50 ft | LENGTH | 15.24", "-7.5 | LENGTH | -7.5",
        "3°05' | ANGLE | 3.0833333333333335", "-3°30' | ANGLE | -3.5", "195' | ANGLE | 3.25", "3.5° | ANGLE | 3.5", "2 deg | ANGLE | 2",
        "3' | MINUTES | 3", "12 % | PERCENT | 12", "1e3 | NUMBER | 1000", "90 kt | KNOTS | 90"})
    void whatPeopleTypeIsUnderstood(String text, Quantity quantity, double expected) {
        assertEquals(expected, METRES.read(text, quantity), 1e-12);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"'' | LENGTH", "3 kg | LENGTH", "NaN | LENGTH", "1e999 | LENGTH", "3°70' | ANGLE",
        "5 m | PERCENT"})
    void whatIsNoQuantityIsRefused(String text, Quantity quantity) {
        assertThrows(IllegalArgumentException.class, () -> METRES.read(text, quantity));
    }

    /** What cannot be taken is said in the language of the window: each sentence differs from the English one and keeps what was typed. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"47 N 3 | LATITUDE", "11 E | LATITUDE", "-11 W | LONGITUDE", "47 75 10 N | LATITUDE",
        "181 | LONGITUDE", "3 kg | LENGTH", "3°70' | ANGLE", "x | NUMBER"})
    void whatIsRefusedIsSaidInEitherLanguage(String text, Quantity quantity) {
        String english = assertThrows(IllegalArgumentException.class, () -> METRES.read(text, quantity)).getMessage();
        String german = assertThrows(IllegalArgumentException.class, () -> new QuantityFormat(false, false, Locale.GERMAN).read(text,
                quantity)).getMessage();
        assertFalse(english.equals(german), german);
        assertTrue(german.matches(".*\\b(ist|Grad|hat|sind|Sekunden)\\b.*"), german);
        assertTrue(german.contains(text.startsWith("3°") ? "70" : text), german);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"3.0833333 | 3°05'", "2.9999999 | 3°00'", "-0.5 | -0°30'", "3.3375 | 3°20.25'", "0 | 0°00'"})
    void degreesAndMinutesAreRounded(double valueDeg, String expected) {
        assertEquals(expected, new QuantityFormat(false, false).degreesMinutes(valueDeg));
    }
}
