package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.rcp.internal.Messages;
import slopewright.rcp.internal.ProjectOpener;
import slopewright.rcp.internal.RecentProjects;
import slopewright.rcp.internal.ShellCommands;
import slopewright.rcp.internal.WelcomePage;
import slopewright.testkit.DemoProjects;
import slopewright.ui.Texts;
import slopewright.ui.preferences.Preferences;

/** The welcome page, the projects that were open last, and the language of the menus. */
class WelcomeTest {

    @TempDir
    private Path folder;

    @BeforeEach
    void forget() {
        Preferences.store().setToDefault(RecentProjects.KEY);
    }

    @AfterEach
    void closeAll() {
        window().getActivePage().closeAllEditors(false);
    }

    @Test
    void itSaysWhatTheProductDoesAndCautions() {
        ShellCommands.welcome(window());
        assertInstanceOf(WelcomePage.class, window().getActivePage().getActiveEditor());
        List<String> said = Widgets.all(window().getShell(), Label.class).map(Label::getText).toList();
        assertTrue(said.contains(Messages.get("welcome.sentence")), said.toString());
        assertTrue(said.contains(Messages.get("caution.full")), said.toString());
        List<String> buttons = Widgets.all(window().getShell(), Button.class).map(Button::getText).toList();
        Stream.of("welcome.site", "welcome.demo", "welcome.open", "welcome.empty")
                .forEach(key -> assertTrue(buttons.contains(Messages.get(key)), key + " in " + buttons));
    }

    @Test
    void openProjectsAreListedMarkedWhenGoneAndTakenOff() throws IOException {
        Path demo = DemoProjects.copy("harrow-vale", folder);
        assertTrue(ProjectOpener.open(window(), demo));
        assertEquals(List.of(demo), RecentProjects.all());
        window().getActivePage().closeAllEditors(false);
        Files.delete(demo);
        ShellCommands.welcome(window());
        List<Link> links = Widgets.all(window().getShell(), Link.class).toList();
        assertTrue(links.stream().anyMatch(link -> link.getText().startsWith("harrow-vale.slopewright (no longer there)")));
        Link remove = links.stream().filter(link -> link.getText().contains(Messages.get("welcome.remove"))).findFirst().orElseThrow();
        remove.notifyListeners(SWT.Selection, new Event());
        Patience.await("the list is empty", () -> RecentProjects.all().isEmpty());
    }

    @Test
    void theListKeepsTheLatestTen() {
        for (int i = 0; i < RecentProjects.MOST + 3; i++) {
            RecentProjects.add(folder.resolve(i + ".slopewright"));
        }
        RecentProjects.add(folder.resolve("5.slopewright"));
        assertEquals(RecentProjects.MOST, RecentProjects.all().size());
        assertEquals(folder.resolve("5.slopewright"), RecentProjects.all().get(0));
        assertEquals(folder.resolve("12.slopewright"), RecentProjects.all().get(1));
    }

    @Test
    void theDemonstrationIsInTheProductAndAChangedCopyStays() throws IOException {
        Path copy = ShellCommands.demoCopy(folder.resolve("demo"));
        assertEquals(-1, Files.mismatch(copy, DemoProjects.copy("harrow-vale", folder)));
        Files.writeString(copy, "changed");
        ShellCommands.demoCopy(folder.resolve("demo"));
        assertEquals("changed", Files.readString(copy));
    }

    @Test
    void noTwoEntriesOfAMenuHaveTheSameMnemonic() {
        Menu bar = window().getShell().getMenuBar();
        assertEquals(List.of(), clashes(bar));
        for (MenuItem item : bar.getItems()) {
            if (item.getMenu() != null) {
                item.getMenu().notifyListeners(SWT.Show, new Event());
                assertEquals(List.of(), clashes(item.getMenu()), item.getText());
                item.getMenu().notifyListeners(SWT.Hide, new Event());
            }
        }
    }

    @Test
    void theGermanMenusAreGerman() {
        Texts german = Texts.beside(Messages.class, Locale.GERMAN);
        assertEquals("&Datei", german.get("menu.file"));
        assertFalse(german.get("caution.full").contains("design aid"));
    }

    private static List<String> clashes(Menu menu) {
        Set<Character> seen = new HashSet<>();
        return Stream.of(menu.getItems()).map(MenuItem::getText).filter(text -> text.contains("&"))
                .filter(text -> !seen.add(Character.toLowerCase(text.charAt(text.indexOf('&') + 1)))).toList();
    }

    private static IWorkbenchWindow window() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0];
    }
}
