package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.io.ProjectFile;
import slopewright.testkit.DemoProjects;
import slopewright.ui.properties.ReadBackDialog;

/** The dialog of a read-back: what is wrong is said, and what is read aloud stands in the words of the window. */
class ReadBackDialogTest {

    @TempDir
    private Path folder;
    private Project project;
    private ReadBackDialog dialog;

    @BeforeEach
    void open() throws Exception {
        project = ProjectFile.load(DemoProjects.copy("harrow-vale", folder));
        dialog = new ReadBackDialog(PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell(), project,
                project.getAerodrome().getRunways(), LocalDate.of(2026, 6, 1));
        dialog.setBlockOnOpen(false);
        dialog.open();
    }

    @AfterEach
    void close() {
        dialog.close();
    }

    private Text field(int index) {
        return Widgets.all(dialog.getShell(), Text.class).filter(text -> (text.getStyle() & SWT.READ_ONLY) == 0).skip(index).findFirst()
                .orElseThrow();
    }

    private String said() {
        return Widgets.all(dialog.getShell(), Text.class).filter(text -> (text.getStyle() & SWT.READ_ONLY) != 0).findFirst().orElseThrow()
                .getText().strip();
    }

    private Button ok() {
        return Widgets.all(dialog.getShell(), Button.class).filter(button -> button.getText().replace("&", "").equals("OK")).findFirst()
                .orElseThrow();
    }

    @Test
    void whatIsWrongIsSaidAndNothingTypedIsLost() {
        for (String who : List.of("", "  ", "\t", project.getAuthor(), " " + project.getAuthor().toUpperCase() + " ")) {
            field(0).setText("B. Second");
            field(0).setText(who);
            assertFalse(ok().isEnabled(), who);
            assertFalse(said().isEmpty() || said().startsWith("Tick"), said());
        }
        field(0).setText("B. Second");
        assertTrue(ok().isEnabled(), said());
        for (String when : List.of("", "yesterday", "2026-02-30", "01.06.2026", "2026-6-1", "NaN", "2026-06-02", "2126-01-01")) {
            field(1).setText(when);
            assertFalse(ok().isEnabled(), when);
            assertTrue(said().contains(when.equals("2026-06-02") || when.equals("2126-01-01") ? when : "2026-05-31"), said());
            assertEquals("B. Second", field(0).getText());
        }
        field(1).setText(" 2026-06-01 ");
        assertTrue(ok().isEnabled(), said());
    }

    /** Heights and places are those of the demonstration; nobody reads the names of a data model aloud. */
    @Test
    void whatIsReadAloudStandsInTheWordsOfTheWindow() {
        Table list = Widgets.all(dialog.getShell(), Table.class).findFirst().orElseThrow();
        TableItem end = Stream.of(list.getItems()).filter(item -> item.getData() instanceof RunwayEnd).findFirst().orElseThrow();
        Event event = new Event();
        event.item = end;
        list.notifyListeners(SWT.Selection, event);
        String read = Widgets.all(dialog.getShell(), StyledText.class).findFirst().orElseThrow().getText();
        assertTrue(read.contains("86.4 m") && read.contains("92"), read);
        assertFalse(read.contains("thresholdElevationM") || read.contains("RunwayEnd"), read);
        list.select(list.indexOf(end));
        for (TableItem item : list.getItems()) {
            event.item = item;
            list.notifyListeners(SWT.Selection, event);
            String words = Widgets.all(dialog.getShell(), StyledText.class).findFirst().orElseThrow().getText();
            assertFalse(words.matches("(?s).*[a-z](Deg|Elevation)M?:.*") || words.contains("null"), words);
        }
    }
}
