package slopewright.arch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** F1 finds a place of the guide for each view, editor, dialog, wizard and page of preferences, in both languages. */
class GuidePlacesTest {
    private static final Pattern PART = Pattern.compile("<(?:view|editor|page)\\s[^>]*class=\"[\\w.]*\\.(\\w+)\"");
    private static final Pattern DIALOG = Pattern.compile("class (\\w{7,})\\s+extends (?:\\w*Dialog|Wizard)\\b");

    private static Set<String> subjects() {
        Set<String> found = new TreeSet<>();
        CatalogueTest.windowBundles().forEach(bundle -> {
            Path plugin = bundle.folder().resolve("plugin.xml");
            if (plugin.toFile().isFile()) {
                PART.matcher(SourceTree.text(plugin)).results().forEach(match -> found.add(match.group(1)));
            }
            SourceTree.files(bundle.sources(), ".java").forEach(file -> DIALOG.matcher(SourceTree.text(file)).results()
                    .forEach(match -> found.add(match.group(1))));
        });
        return found;
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void everySubjectHasItsPlace(String language) {
        Set<String> subjects = subjects();
        assertTrue(subjects.size() >= 25, subjects.toString());
        String page = SourceTree.text(SourceTree.root().resolve("bundles/app/slopewright.rcp/docs/guide/" + language + "/window.html"));
        subjects.removeIf(subject -> page.contains(" id=\"" + subject + "\""));
        assertEquals(Set.of(), subjects, "add them to the words of the guide, and write it anew");
    }
}
