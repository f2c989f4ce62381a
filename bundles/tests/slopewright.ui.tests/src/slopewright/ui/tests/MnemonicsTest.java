package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;

import slopewright.rcp.internal.ProjectOpener;
import slopewright.testkit.DemoProjects;

/** The keys that lead through the menus: no two of one menu alike, in both languages, and every command of the product within reach. */
class MnemonicsTest {
    private static final Pattern MNEMONIC = Pattern.compile("&([^&])");
    private static final Pattern OWN_COMMAND = Pattern.compile("<command [^>]*\\bid=\"(slopewright[^\"]+)\"", Pattern.DOTALL);

    @TempDir
    private Path folder;

    private static IWorkbenchWindow window() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0];
    }

    @AfterEach
    void close() {
        window().getActivePage().closeAllEditors(false);
    }

    private void open() {
        assertTrue(ProjectOpener.open(window(), DemoProjects.copy("harrow-vale", folder)));
    }

    /** The texts of the bar and of each menu below it, under the name of the menu. */
    private static Map<String, List<String>> menus() {
        Map<String, List<String>> found = new HashMap<>();
        Shell shell = window().getShell();
        collect("bar", shell.getMenuBar(), found);
        return found;
    }

    private static void collect(String name, Menu menu, Map<String, List<String>> found) {
        menu.notifyListeners(SWT.Show, new Event());
        List<String> texts = new ArrayList<>();
        for (MenuItem item : menu.getItems()) {
            String text = item.getText().replaceFirst("\t.*", "");
            if (!text.isBlank()) {
                texts.add(text);
            }
            if (item.getMenu() != null) {
                collect(text, item.getMenu(), found);
            }
        }
        menu.notifyListeners(SWT.Hide, new Event());
        found.put(name, texts);
    }

    private static List<String> clashes(Map<String, List<String>> menus) {
        List<String> clashes = new ArrayList<>();
        menus.forEach((name, texts) -> {
            Map<String, String> taken = new HashMap<>();
            for (String text : texts) {
                Matcher key = MNEMONIC.matcher(text);
                if (key.find()) {
                    String other = taken.put(key.group(1).toLowerCase(Locale.ROOT), text);
                    if (other != null) {
                        clashes.add(name + ": " + other + " and " + text);
                    }
                }
            }
        });
        return clashes;
    }

    @Test
    void noTwoEntriesOfAMenuHaveTheSameKey() {
        open();
        Map<String, List<String>> menus = menus();
        assertTrue(menus.size() > 7, menus.keySet().toString());
        assertEquals(List.of(), clashes(menus));
    }

    /** The German texts of the same entries, found in the files by their English ones. */
    @Test
    void neitherInGerman() throws IOException {
        open();
        Map<String, String> german = german();
        Map<String, List<String>> menus = new HashMap<>();
        List<String> translated = new ArrayList<>();
        menus().forEach((name, texts) -> menus.put(name, texts.stream().map(text -> Optional.ofNullable(german.get(text)).map(found -> {
            translated.add(found);
            return found;
        }).orElse(text.replace("&", ""))).toList()));
        assertTrue(translated.size() > 40, translated.size() + " entries are found in German");
        assertEquals(List.of(), clashes(menus));
    }

    private static Map<String, String> german() throws IOException {
        Map<String, String> found = new HashMap<>();
        try (Stream<Path> files = Files.walk(Path.of(System.getProperty("slopewright.root"), "bundles"))) {
            for (Path file : files.filter(path -> path.toString().endsWith("_de.properties") && !path.toString().contains("target"))
                    .toList()) {
                Properties second = read(file);
                Properties first = read(Path.of(file.toString().replace("_de.properties", ".properties")));
                first.forEach((key, text) -> {
                    if (String.valueOf(text).contains("&")) {
                        found.put(String.valueOf(text), String.valueOf(second.get(key)));
                    }
                });
            }
        }
        return found;
    }

    private static Properties read(Path file) throws IOException {
        Properties properties = new Properties();
        try (Reader reader = Files.newBufferedReader(file)) {
            properties.load(reader);
        }
        return properties;
    }

    /** A command is within reach of the keys where a menu holds it or keys of its own are bound to it. */
    @Test
    void everyCommandIsWithinReachOfTheKeys(TestReporter report) throws IOException {
        Set<String> commands = new HashSet<>();
        Set<String> bound = new HashSet<>();
        Set<String> inMenus = new HashSet<>();
        try (Stream<Path> files = Files.walk(Path.of(System.getProperty("slopewright.root"), "bundles"))) {
            for (Path file : files.filter(path -> !path.toString().contains("target")).toList()) {
                String name = String.valueOf(file.getFileName());
                if (name.equals("plugin.xml")) {
                    String text = Files.readString(file);
                    OWN_COMMAND.matcher(text).results().forEach(match -> commands.add(match.group(1)));
                    Pattern.compile("<key commandId=\"([^\"]+)\"").matcher(text).results().forEach(match -> bound.add(match.group(1)));
                    Pattern.compile("<command commandId=\"([^\"]+)\"").matcher(text).results()
                            .forEach(match -> inMenus.add(match.group(1)));
                } else if (name.equals("SitingActionBarAdvisor.java")) {
                    Pattern.compile("\"(slopewright\\.rcp\\.[A-Za-z]+)\"").matcher(Files.readString(file)).results()
                            .forEach(match -> inMenus.add(match.group(1)));
                    inMenus.add("slopewright.rcp.openProject");
                }
            }
        }
        assertTrue(commands.size() > 25, commands.toString());
        long withKeys = commands.stream().filter(bound::contains).count();
        report.publishEntry("commands", commands.size() + ", of which " + withKeys + " with keys of their own");
        commands.removeAll(bound);
        commands.removeAll(inMenus);
        assertEquals(Set.of(), commands);
    }
}
