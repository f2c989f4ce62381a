package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicReference;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.comparison.Candidate;
import slopewright.evaluation.comparison.FamilyComparison;
import slopewright.evaluation.site.SiteNumber;
import slopewright.evaluation.site.SiteTemplate;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Projects;
import slopewright.rcp.internal.site.SiteWizard;
import slopewright.rcp.internal.site.Templates;
import slopewright.ui.MessageTexts;
import slopewright.ui.document.ProjectDocument;

/** From a site to a first layout, by the controls of the wizard. */
class WizardTest {

    @TempDir
    private Path folder;
    private SiteWizard wizard;
    private WizardDialog dialog;

    @BeforeEach
    void open() {
        wizard = new SiteWizard(window());
        dialog = SiteWizard.dialog(window(), wizard);
        dialog.setBlockOnOpen(false);
        dialog.open();
    }

    @AfterEach
    void close() {
        dialog.close();
        window().getActivePage().closeAllEditors(false);
    }

    @Test
    void threeStepsLeadToAProjectWithAnAid() {
        Path file = folder.resolve("site.slopewright");
        wizard.setTarget(file);
        next();
        assertEquals("page.aeroplanes", dialog.getCurrentPage().getName());
        next();
        assertEquals("page.family", dialog.getCurrentPage().getName());
        assertTrue(wizard.canFinish());
        Table families = Widgets.all(dialog.getShell(), Table.class).filter(Table::isVisible).findFirst().orElseThrow();
        assertTrue(families.getItem(0).getText(1).startsWith("fits"), families.getItem(0).getText(1));
        assertTrue(wizard.performFinish());
        ProjectDocument document = document();
        assertEquals(Optional.of(file), document.path());
        List<ApproachAid> aids = Projects.aids(document.project());
        assertEquals(1, aids.size());
        assertFalse(aids.get(0).getUnits().isEmpty());
        Patience.await("the findings are there", () -> document.lastResult().isPresent());
        assertTrue(document.lastResult().orElseThrow().anythingEvaluated());
    }

    /**
     * A runway of open data by the code of its airport: the dialog lists the ends, what is shown of the chosen one is what the project
     * holds, and the file keeps the source with its licence. The airport is invented; 0.01 degrees of the equator are 1113.195 m.
     */
    @Test
    void aRunwayOfOpenDataIsTakenOverAsItIsShown() throws IOException {
        Path data = folder.resolve("runways.csv");
        Files.writeString(folder.resolve("LICENSE"), "Licence of a case");
        Files.writeString(data, "id,airport_ident,length_ft,width_ft,surface,closed,le_ident,le_latitude_deg,le_longitude_deg,"
                + "le_elevation_ft,le_heading_degT,le_displaced_threshold_ft,he_ident,he_latitude_deg,he_longitude_deg,he_elevation_ft,"
                + "he_heading_degT,he_displaced_threshold_ft\n1,ZZAL,3652,100,ASP,0,09,0,-11,100,90,500,27,0,-10.99,120,270,\n"
                + "2,ZZAL,3652,100,ASP,1,18,0,-11,100,180,,36,-0.01,-11,,0,\n");
        AtomicReference<String> shown = new AtomicReference<>("");
        AtomicReference<String> closed = new AtomicReference<>("");
        Display.getCurrent().asyncExec(() -> {
            Shell shell = Display.getCurrent().getActiveShell();
            type(shell, "runway-data.file", data.toString());
            type(shell, "runway-data.code", "zzal");
            Table ends = Widgets.all(shell, Table.class).findFirst().orElseThrow();
            closed.set(ends.getItem(2).getText(0) + ends.getItem(2).getText(4));
            shown.set(Widgets.all(shell, Text.class).filter(text -> (text.getStyle() & SWT.MULTI) != 0).findFirst().orElseThrow()
                    .getText());
            Widgets.all(shell, Button.class).filter(button -> button.getText().equals("OK")).findFirst().orElseThrow()
                    .notifyListeners(SWT.Selection, new Event());
        });
        Combo start = Widgets.all(dialog.getShell(), Combo.class).filter(combo -> "site.start".equals(combo.getData("question")))
                .findFirst().orElseThrow();
        start.select(start.getItemCount() - 1);
        start.notifyListeners(SWT.Selection, new Event());
        assertEquals("18the data say that the runway is closed", closed.get());
        assertTrue(shown.get().matches("(?s)09: threshold at 0 °, -10\\.99863.*true bearing 90°00'.*elevation 31\\.31.*"), shown.get());
        assertTrue(dialog.getCurrentPage().getMessage().contains("not surveyed"), dialog.getCurrentPage().getMessage());
        next();
        next();
        Path file = folder.resolve("alder.slopewright");
        wizard.setTarget(file);
        assertTrue(wizard.performFinish());
        Runway runway = document().project().getAerodrome().getRunways().get(0);
        assertEquals("Licence of a case", runway.getOpenDataLicence());
        assertEquals(152.4, runway.getEnds().get(0).getDisplacedThresholdM(), 0.001);
        assertEquals(-10.99, runway.getEnds().get(1).getThreshold().getLongitudeDeg());
        assertEquals(-11 + 0.01 * 152.4 / 1113.19491, runway.getEnds().get(0).getThreshold().getLongitudeDeg(), 1e-6);
    }

    private static void type(Shell shell, String question, String words) {
        Widgets.all(shell, Text.class).filter(text -> question.equals(text.getData("question"))).findFirst().orElseThrow().setText(words);
    }

    /** Whatever family is chosen, the figures that the wizard shows are those of the file that it writes, at both ends. */
    @Test
    void whatIsShownIsWhatIsWritten() throws Exception {
        field(SiteNumber.OTHER_ELEVATION).setText("2");
        next();
        next();
        Table families = Widgets.all(dialog.getShell(), Table.class).filter(Table::isVisible).findFirst().orElseThrow();
        String said = Widgets.all(dialog.getShell(), Text.class).filter(text -> text.isVisible() && !text.getEditable()
                && text.getText().contains("units")).findFirst().orElseThrow().getText();
        Path file = folder.resolve("both.slopewright");
        wizard.setTarget(file);
        assertEquals(0, families.getSelectionIndex());
        assertTrue(wizard.performFinish());
        List<AidEvaluation> made = ProjectEvaluation.of(ProjectFile.load(file), Optional.empty()).aids();
        assertEquals(2, made.size());
        for (AidEvaluation aid : made) {
            String line = said.lines().filter(words -> words.startsWith(Projects.label(aid.host()) + ": ")).findFirst().orElseThrow();
            assertTrue(line.contains(aid.aid().getUnits().size() + " units"), line);
            Matcher distance = Pattern.compile(", ([0-9.]+ m) from the threshold").matcher(line);
            assertTrue(distance.find(), line);
            assertEquals(MessageTexts.length(aid.siting().orThrow().distanceM()), distance.group(1), "as everywhere else in the window");
        }
    }

    @Test
    void aDesignatorThatIsNoneIsRefused() {
        Text designator = Widgets.all(dialog.getShell(), Text.class).filter(text -> "site.designator".equals(text.getData("question")))
                .findFirst().orElseThrow();
        for (String none : List.of("37", "00", "9", "09X", "main")) {
            designator.setText(none);
            assertFalse(dialog.getCurrentPage().isPageComplete(), none);
        }
        designator.setText("09C");
        assertTrue(dialog.getCurrentPage().isPageComplete());
        field(SiteNumber.LATITUDE).setText("48");
        field(SiteNumber.LONGITUDE).setText("11");
        designator.setText("30");
        assertTrue(dialog.getCurrentPage().getMessage().startsWith("DATA-16"), "30 at a bearing of 90: " + dialog.getCurrentPage()
                .getMessage());
    }

    @Test
    void aNumberOutOfReasonIsRefusedWhereItIsTyped() {
        Text width = field(SiteNumber.WIDTH);
        width.setText("1 km");
        assertTrue(dialog.getCurrentPage().getErrorMessage().startsWith("Runway width"), dialog.getCurrentPage().getErrorMessage());
        assertFalse(dialog.getCurrentPage().isPageComplete());
        width.setText("4");
        assertEquals("Runway width: between 10 m and 100 m.", dialog.getCurrentPage().getErrorMessage());
        width.setText("100 ft");
        assertNull(dialog.getCurrentPage().getErrorMessage());
        assertEquals(30.48, wizard.draft().site().number(SiteNumber.WIDTH).orElseThrow(), 1e-9, "a foot is 0.3048 m by definition");
        field(SiteNumber.LATITUDE).setText("48");
        assertFalse(dialog.getCurrentPage().isPageComplete());
        field(SiteNumber.LONGITUDE).setText("11");
        assertTrue(dialog.getCurrentPage().isPageComplete());
    }

    /** Nothing of any page is cut, and all of it has room on a screen of 1366 by 768 pixels, below a bar and above another. */
    @ParameterizedTest
    @CsvSource({"false", "true"})
    void nothingIsCutOnAnyPage(boolean helipad) {
        if (helipad) {
            wizard.draft().start(SiteTemplate.FIELD_SITE.project());
        }
        Set<String> cut = new TreeSet<>();
        Set<String> pages = new TreeSet<>();
        while (pages.add(dialog.getCurrentPage().getName())) {
            Patience.pause(100);
            Composite area = (Composite) dialog.getCurrentPage().getControl();
            for (Control control : area.getChildren()) {
                int wanted = control instanceof Label && (control.getStyle() & SWT.WRAP) == 0 ? control.computeSize(-1, -1).x : 0;
                Rectangle bounds = control.getBounds();
                if (control.getVisible() && (bounds.width < wanted || bounds.x + bounds.width > area.getSize().x
                        || bounds.y + bounds.height > area.getSize().y)) {
                    cut.add(dialog.getCurrentPage().getName() + ": " + control + " " + bounds + " of " + area.getSize());
                }
            }
            if (dialog.getCurrentPage().getNextPage() != null) {
                next();
            }
        }
        assertEquals(Set.of(), cut);
        assertEquals(helipad ? 4 : 3, pages.size());
        Point size = dialog.getShell().getSize();
        assertTrue(size.x <= 1366 && size.y <= 700, size.toString());
    }

    /** Whatever is typed into a field in error is named with the field and kept as it is, leads nowhere and is no value of the site. */
    @ParameterizedTest
    @CsvSource({"false", "true"})
    void nonsenseInAnyFieldLeadsNowhere(boolean helipad) {
        if (helipad) {
            wizard.draft().start(SiteTemplate.FIELD_SITE.project());
        }
        Set<String> pages = new TreeSet<>();
        int fields = 0;
        while (pages.add(dialog.getCurrentPage().getName())) {
            List<Text> texts = Widgets.all((Composite) dialog.getCurrentPage().getControl(), Text.class)
                    .filter(text -> text.getData("field") instanceof SiteNumber number && number.isAsked(helipad)
                            && text.isEnabled()).toList();
            for (Text text : texts) {
                SiteNumber number = (SiteNumber) text.getData("field");
                String before = text.getText();
                for (String nonsense : List.of("abc", "NaN", "1e9", "-1e9", "3\n15", "1e999")) {
                    text.setText(nonsense);
                    String said = number + " " + nonsense.strip() + ": " + dialog.getCurrentPage().getErrorMessage();
                    assertFalse(dialog.getCurrentPage().isPageComplete(), said);
                    assertNotNull(dialog.getCurrentPage().getErrorMessage(), said);
                    assertEquals(nonsense, text.getText());
                    assertFalse(wizard.canFinish(), said);
                }
                text.setText(before);
                assertTrue(dialog.getCurrentPage().isPageComplete(), number + ": " + dialog.getCurrentPage().getErrorMessage());
                fields++;
            }
            if (dialog.getCurrentPage().getNextPage() != null) {
                next();
            }
        }
        assertTrue(fields >= 10, fields + " fields");
    }

    /** What is wrong with the pads says so, and does not stand in the way of a runway, which is not asked about pads. */
    @Test
    void whatIsWrongWithPadsDoesNotHoldUpARunway() {
        wizard.draft().start(SiteTemplate.FIELD_SITE.project());
        next();
        next();
        field(SiteNumber.GROUND_SPEED).setText("fast");
        assertFalse(dialog.getCurrentPage().isPageComplete());
        dialog.showPage(wizard.getPage("page.site"));
        wizard.draft().site().setHelipad(false);
        wizard.draft().site().setDesignator("09");
        wizard.draft().setFamilyKey("");
        dialog.showPage(wizard.getPage("page.aeroplanes"));
        next();
        assertEquals("page.family", dialog.getCurrentPage().getName());
        assertTrue(dialog.getCurrentPage().isPageComplete(), dialog.getCurrentPage().getErrorMessage());
        assertTrue(wizard.canFinish());
    }

    @ParameterizedTest
    @CsvSource({"1, 1e9", "2, -1e9", "3, 1e9", "1, NaN", "4, 400", "4, north"})
    void aPadOutOfReasonIsRefused(int column, String typed) {
        wizard.draft().start(SiteTemplate.FIELD_SITE.project());
        next();
        next();
        Widgets.all(dialog.getShell(), Button.class).filter(button -> button.getText().contains("Add a pad")).findFirst().orElseThrow()
                .notifyListeners(SWT.Selection, new Event());
        assertTrue(dialog.getCurrentPage().isPageComplete(), dialog.getCurrentPage().getErrorMessage());
        Table pads = Widgets.all(dialog.getShell(), Table.class).filter(Table::isVisible).findFirst().orElseThrow();
        Rectangle cell = pads.getItem(1).getBounds(column);
        Event press = new Event();
        press.button = 1;
        press.x = cell.x + 5;
        press.y = cell.y + cell.height / 2;
        pads.select(1);
        pads.notifyListeners(SWT.MouseDown, press);
        Text text = Widgets.all(pads, Text.class).findFirst().orElseThrow();
        text.setText(typed);
        text.notifyListeners(SWT.DefaultSelection, new Event());
        assertEquals(typed, pads.getItem(1).getText(column));
        assertFalse(dialog.getCurrentPage().isPageComplete());
        assertTrue(dialog.getCurrentPage().getErrorMessage().contains(typed), dialog.getCurrentPage().getErrorMessage());
    }

    /** A name that is pasted in two lines is one line of the project. */
    @Test
    void aNameIsOneLine() {
        type(dialog.getShell(), "site.name", "Harrow\n  Vale\n");
        assertEquals("Harrow Vale", wizard.draft().site().name());
        assertTrue(dialog.getCurrentPage().isPageComplete());
    }

    /** Only where the ground moves in the reference of the place is the epoch asked for, beside its field. */
    @Test
    void theEpochIsAskedForOnceThePlaceIsOnTheGlobe() {
        Label wanted = Widgets.all(dialog.getShell(), Label.class).filter(label -> label.getText().equals("needed on WGS 84")).findFirst()
                .orElseThrow();
        assertFalse(wanted.getVisible(), "a plane of its own");
        field(SiteNumber.LATITUDE).setText("48");
        field(SiteNumber.LONGITUDE).setText("11");
        assertTrue(wanted.getVisible());
        assertTrue(dialog.getCurrentPage().isPageComplete(), "the site can be begun");
        field(SiteNumber.EPOCH).setText("1983");
        assertEquals("Epoch of the coordinates: between 1984 and 2100.", dialog.getCurrentPage().getErrorMessage());
        field(SiteNumber.EPOCH).setText("2099.5");
        assertTrue(dialog.getCurrentPage().getMessage().startsWith("DATA-67"), "after the day of the project");
        field(SiteNumber.EPOCH).setText("2020,5");
        assertFalse(wanted.getVisible());
        assertEquals(2020.5, wizard.draft().project().getAerodrome().getCoordinateEpoch());
    }

    @Test
    void aTemplateFillsThePage() {
        Combo start = Widgets.all(dialog.getShell(), Combo.class).filter(combo -> "site.start".equals(combo.getData("question")))
                .findFirst()
                .orElseThrow();
        start.select(2);
        start.notifyListeners(SWT.Selection, new Event());
        assertEquals("45", field(SiteNumber.WIDTH).getText());
        assertEquals(4, wizard.draft().site().code());
        assertTrue(wizard.draft().site().hasGlidePath());
        assertFalse(wizard.draft().site().isAssumed(SiteNumber.WIDTH));
    }

    /** At a new site nobody has surveyed the obstacles, so what stands against no family is still to be cleared up. */
    @ParameterizedTest
    @CsvSource({"0", "1", "2", "3", "4"})
    void everyTemplateLeadsToALayout(int index) throws IOException {
        wizard.draft().start(Templates.all().get(index).load());
        Project project = wizard.draft().project();
        List<Candidate> found = FamilyComparison.of(ProjectEvaluation.of(project, Optional.empty()),
                Projects.hosts(project).get(0));
        assertTrue(found.stream().anyMatch(candidate -> candidate.fit() == Candidate.Fit.TO_CLEAR_UP), found.stream()
                .map(Candidate::reasons).toList().toString());
    }

    /** 80 kt are 80 x 101.2686 = 8101.5 ft/min over the ground, and 850 ft/min of them atan(0.104919) = 5.99 degrees. */
    @Test
    void aPartyBeginsWithItsUnitAndSeveralDirections() {
        wizard.draft().start(SiteTemplate.FIELD_SITE.project());
        wizard.setTarget(folder.resolve("field.slopewright"));
        next();
        next();
        assertEquals("page.pads", dialog.getCurrentPage().getName());
        field(SiteNumber.GROUND_SPEED).setText("80");
        field(SiteNumber.DESCENT).setText("850");
        wizard.draft().site().furtherPads().clear();
        Table pads = Widgets.all(dialog.getShell(), Table.class).findFirst().orElseThrow();
        assertEquals(1, pads.getItemCount());
        Widgets.all(dialog.getShell(), Button.class).filter(button -> button.getText().contains("Add a pad")).findFirst().orElseThrow()
                .notifyListeners(SWT.Selection, new Event());
        assertEquals(2, pads.getItemCount());
        next();
        assertEquals("page.family", dialog.getCurrentPage().getName());
        assertEquals("tri-colour", wizard.draft().familyKey());
        assertTrue(wizard.performFinish());
        List<ApproachAid> aids = Projects.aids(document().project());
        assertEquals(2, aids.size());
        assertEquals(5.99, aids.get(0).getSlopeDeg(), 0.005);
        assertEquals(aids.get(0).getEquipment(), aids.get(1).getEquipment());
    }

    @Test
    void aProjectIsKeptAsTemplate() throws IOException {
        int before = Templates.all().size();
        Project project = wizard.draft().project();
        ProjectFile.settle(project, Path.of("fields", "mine.slopewright"));
        Optional<Path> home = ProjectFile.folder(project);
        Path file = SiteWizard.keepAsTemplate(project, "My field / 2");
        try {
            assertEquals(home, ProjectFile.folder(project), "what lies beside the project's own file still belongs to it");
            assertEquals("My field - 2.slopewright", String.valueOf(file.getFileName()));
            List<Templates.Template> all = Templates.all();
            assertEquals(before + 1, all.size());
            assertEquals("My field - 2", all.get(before).label());
            assertEquals(1, Projects.hosts(all.get(before).load()).size());
        } finally {
            Files.delete(file);
        }
    }

    private Text field(SiteNumber field) {
        return Widgets.all(dialog.getShell(), Text.class).filter(text -> text.getData("field") == field).findFirst().orElseThrow();
    }

    private void next() {
        dialog.showPage(dialog.getCurrentPage().getNextPage());
    }

    private static ProjectDocument document() {
        return window().getActivePage().getActiveEditor().getAdapter(ProjectDocument.class);
    }

    private static IWorkbenchWindow window() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0];
    }
}
