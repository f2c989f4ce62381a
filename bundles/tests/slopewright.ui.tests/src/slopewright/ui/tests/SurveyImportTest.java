package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.plan.PlanEditor;

/** A survey of somebody else is brought into the open project: looked at first, then taken in one step. */
class SurveyImportTest {

    private static final String ROWS = "Nr;Bezeichnung;Breite;Länge;Oberkante\nQ1;Mühle;47,3011;-11,9218;102,5\n"
            + "Q2;Mast;47,3019;keine;99,0\nQ3;Pappel;47,3021;-11,9120;98,25\n";
    private static final int MANY = 100_000;

    @TempDir
    private Path folder;
    private IWorkbenchPage page;
    private PlanEditor editor;
    private ProjectDocument document;

    @BeforeEach
    void open() throws Exception {
        page = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
        editor = (PlanEditor) page.openEditor(new ProjectInput(DemoProjects.copy("harrow-vale", folder)), PlanEditor.ID);
        document = Adapters.adapt(editor, ProjectDocument.class);
        page.activate(editor);
    }

    @AfterEach
    void close() {
        Stream.of(Display.getCurrent().getShells()).filter(SurveyImportTest::isImport).forEach(Shell::close);
        page.closeEditor(editor, false);
    }

    private static boolean isImport(Shell shell) {
        return shell.getText().equals("Import a survey");
    }

    private Shell ask(Path file) {
        editor.importSurvey(file);
        return Stream.of(Display.getCurrent().getShells()).filter(SurveyImportTest::isImport).findFirst().orElseThrow();
    }

    private static <T extends Control> Stream<T> all(Composite parent, Class<T> type) {
        return Stream.of(parent.getChildren()).flatMap(child -> Stream.concat(type.isInstance(child) ? Stream.of(type.cast(child))
                : Stream.of(), child instanceof Composite part ? all(part, type) : Stream.of()));
    }

    private static String said(Shell shell) {
        return all(shell, Text.class).filter(text -> (text.getStyle() & SWT.MULTI) != 0 && (text.getStyle() & SWT.BORDER) != 0).findFirst()
                .orElseThrow().getText();
    }

    private static Combo combo(Shell shell, String question) {
        return all(shell, Combo.class).filter(combo -> question.equals(combo.getData("question"))).findFirst().orElseThrow();
    }

    private static void choose(Combo combo, String item) {
        combo.select(combo.indexOf(item));
        combo.notifyListeners(SWT.Selection, new Event());
    }

    private static Button ok(Shell shell) {
        return all(shell, Button.class).filter(button -> Integer.valueOf(IDialogConstants.OK_ID).equals(button.getData())).findFirst()
                .orElseThrow();
    }

    private static void waitFor(Shell shell, String words) {
        try {
            Patience.await(words, () -> said(shell).contains(words));
        } catch (AssertionError e) {
            throw new AssertionError("it says: " + said(shell), e);
        }
    }

    private List<Obstacle> obstacles() {
        return document.project().getAerodrome().getObstacles();
    }

    @Test
    void goodRowsAreTakenInOneStepAndTheChoiceOfColumnsIsKept() throws Exception {
        Path file = Files.write(folder.resolve("feldbuch.csv"), ROWS.getBytes(Charset.forName("windows-1252")));
        int before = obstacles().size();
        Shell shell = ask(file);
        waitFor(shell, "2 taken, 0 there already, 1 refused");
        assertTrue(said(shell).contains("feldbuch.csv:3: longitudeDeg: 'keine' is not a number"), said(shell));
        assertEquals(before, obstacles().size(), "nothing changes before the import");
        assertFalse(document.isDirty());
        choose(combo(shell, "column.Oberkante"), "(left out)");
        waitFor(shell, "0 taken, 0 there already, 3 refused");
        assertFalse(ok(shell).isEnabled());
        choose(combo(shell, "column.Oberkante"), "elevation");
        waitFor(shell, "2 taken, 0 there already, 1 refused");
        ok(shell).notifyListeners(SWT.Selection, new Event());
        assertTrue(shell.isDisposed());
        List<Obstacle> added = new ArrayList<>(obstacles().subList(before, obstacles().size()));
        assertEquals(List.of("Mühle", "Pappel"), added.stream().map(Obstacle::getName).toList());
        assertEquals(98.25, added.get(1).getTopElevationM());
        document.history().undo();
        assertEquals(before, obstacles().size(), "one step");
        Shell again = ask(file);
        assertEquals("elevation", combo(again, "column.Oberkante").getText());
    }

    /** What is said of the whole survey, with wrong input: the field is named, and what was typed stays. */
    @Test
    void whatIsWrongIsSaidAndNothingTypedIsLost() throws Exception {
        Shell shell = ask(Files.write(folder.resolve("f.csv"), ROWS.getBytes(Charset.forName("windows-1252"))));
        waitFor(shell, "2 taken, 0 there already, 1 refused");
        Map<String, List<String>> wrong = Map.of("import.horizontal", List.of("abc", "NaN", "-1", "1e308", "5 kg", "1,234", "1\n2"),
                "import.vertical", List.of("-0.1", "1e999", "3°"), "import.date", List.of("yesterday", "2026-02-30", "1.2.2026"),
                "import.classes", List.of("x", "256", "3-1"));
        Map<String, String> names = Map.of("import.horizontal", "Accuracy of places (m): ", "import.vertical",
                "Accuracy of elevations (m): ", "import.date", "'", "import.classes", "'");
        for (String question : wrong.keySet()) {
            Text field = all(shell, Text.class).filter(text -> question.equals(text.getData("question"))).findFirst().orElseThrow();
            for (String typed : wrong.get(question)) {
                field.setText(typed);
                Patience.await(typed + " is refused: " + said(shell), () -> said(shell).startsWith(names.get(question)));
                assertFalse(ok(shell).isEnabled(), typed);
                assertEquals(typed.replace("\n", ""), field.getText().replace("\n", ""));
            }
            field.setText("");
            waitFor(shell, "2 taken, 0 there already, 1 refused");
        }
        Text ground = all(shell, Text.class).filter(text -> "import.ground".equals(text.getData("question"))).findFirst().orElseThrow();
        assertFalse(ground.isEnabled(), "no ground is asked for below elevations");
        choose(combo(shell, "import.heights"), "heights above the ground");
        assertTrue(ground.isEnabled());
        ground.setText("high");
        waitFor(shell, "Ground below (m): ");
        ground.setText("86,5");
        waitFor(shell, "2 taken, 0 there already, 1 refused");
        assertTrue(ok(shell).isEnabled());
    }

    @Test
    void aBadRowStopsTheImportWhereThatIsAsked() throws Exception {
        byte[] rows = ROWS.replace(";Oberkante", ";Top").getBytes(Charset.forName("windows-1252"));
        Shell shell = ask(Files.write(folder.resolve("f.csv"), rows));
        waitFor(shell, "2 taken, 0 there already, 1 refused");
        Button whole = all(shell, Button.class).filter(button -> button.getText().contains("no line is refused")).findFirst().orElseThrow();
        whole.setSelection(true);
        whole.notifyListeners(SWT.Selection, new Event());
        assertFalse(ok(shell).isEnabled());
    }

    @Test
    void aHundredThousandPointsBecomeABlockBesideTheProject() throws Exception {
        StringBuilder text = new StringBuilder("latitudeDeg,longitudeDeg,topElevationM\n");
        for (int i = 0; i < MANY; i++) {
            text.append(String.format(Locale.ROOT, "%.6f,%.6f,%.2f%n", 47.28 + i % 400 * 1e-4, -11.95 + i / 400 * 2e-4, 85.0 + i % 13));
        }
        Project project = document.project();
        Shell shell = ask(Files.writeString(folder.resolve("scan.csv"), text));
        waitFor(shell, MANY + " points taken as one survey block");
        ok(shell).notifyListeners(SWT.Selection, new Event());
        assertEquals(1, project.getSurveyBlocks().size());
        assertTrue(Files.exists(folder.resolve(project.getSurveyBlocks().get(0).getPath())));
        Patience.await("the block is compared", () -> document.lastResult().isPresent() && !document.isChecking());
        assertEquals(MANY, document.evaluation().aids().get(0).surroundings().orThrow().blocks().get(0).points().count());
        document.history().undo();
        assertTrue(project.getSurveyBlocks().isEmpty());
    }
}
