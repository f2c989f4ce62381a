package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.jface.action.IAction;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.model.Project;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.properties.ElementPropertyPage;

/** The property sheet of a project under an older edition offers the newer one, says what changes, and moves it as one step. */
class EditionOfferTest {
    private static final String OFFER = "Move to the newer edition";
    private static final int LOOK_MS = 100;

    @TempDir
    private Path folder;
    private ProjectDocument document;
    private Shell shell;
    private ElementPropertyPage page;
    private final List<String> asked = new ArrayList<>();

    @BeforeEach
    void open() throws Exception {
        document = ProjectDocument.open(Files.copy(DemoProjects.olderEdition(), folder.resolve("older.slopewright")));
        shell = new Shell(Display.getCurrent());
        shell.setLayout(new FillLayout());
        page = new ElementPropertyPage(document);
        page.createControl(shell);
        shell.open();
        page.selectionChanged(null, new StructuredSelection(document.project()));
    }

    @AfterEach
    void close() {
        page.dispose();
        shell.dispose();
        document.dispose();
    }

    private IAction offer() {
        return page.actions().stream().filter(action -> action.getText().startsWith(OFFER)).findFirst().orElseThrow();
    }

    private void answer(String label) {
        Display.getCurrent().timerExec(LOOK_MS, () -> {
            Stream.of(Display.getCurrent().getShells()).filter(open -> OFFER.equals(open.getText())).findFirst().ifPresentOrElse(open -> {
                Widgets.all(open, Label.class).map(Label::getText).forEach(asked::add);
                Widgets.all(open, Text.class).map(Text::getText).forEach(asked::add);
                Widgets.all(open, Button.class).filter(button -> label.equals(button.getText())).findFirst().orElseThrow()
                        .notifyListeners(SWT.Selection, null);
            }, () -> answer(label));
        });
    }

    @Test
    void itAsksWithWhatChangesAndMovesAsOneStep() {
        Project project = document.project();
        assertTrue(offer().isEnabled());
        answer("Stay");
        offer().run();
        assertEquals("icao:5th", project.getRuleSetKey());
        assertFalse(document.history().canUndo());
        String said = String.join("\n", asked);
        assertTrue(said.contains("from icao:5th to icao:9th") && said.contains("lapse (49 of them)"), said);
        assertTrue(said.contains("EQUIP-10") && said.contains("DATA-40"), said);
        answer("Move");
        offer().run();
        assertEquals("icao:9th", project.getRuleSetKey());
        page.selectionChanged(null, new StructuredSelection(project));
        assertFalse(offer().isEnabled(), "there is no newer one");
        document.history().undo();
        assertEquals("icao:5th", project.getRuleSetKey());
        assertFalse(document.history().canUndo());
    }
}
