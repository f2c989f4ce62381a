package slopewright.headless.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.checks.RuleCatalogue;
import slopewright.exchange.survey.SurveyFile;
import slopewright.headless.internal.GuideCommands;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.report.handover.Deliverables;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/**
 * The guide in the tree is what the catalogues say, and it speaks of every rule, value, command and file. {@code SLOPEWRIGHT_NEW_GUIDE=1}
 * writes it anew.
 */
class GuideTest {
    private static final Path ROOT = Path.of(System.getProperty("slopewright.root"));
    private static final Path FOLDER = ROOT.resolve("bundles/app/slopewright.rcp/docs/guide");

    @BeforeAll
    static void writeAnew() throws IOException {
        for (String language : "1".equals(System.getenv("SLOPEWRIGHT_NEW_GUIDE")) ? List.of("en", "de") : List.<String>of()) {
            Files.createDirectories(FOLDER.resolve(language));
            for (Map.Entry<String, String> page : new GuidePages(Locale.forLanguageTag(language)).make(GuideCommands.all()).entrySet()) {
                Files.writeString(FOLDER.resolve(language).resolve(page.getKey()), page.getValue());
            }
        }
    }

    private static String text(String language, String page) throws IOException {
        return Files.readString(FOLDER.resolve(language).resolve(page));
    }

    private static Set<String> anchors(String language, String page) throws IOException {
        Set<String> found = new TreeSet<>();
        Pattern.compile(" id=\"([^\"]+)\"").matcher(text(language, page)).results().forEach(match -> found.add(match.group(1)));
        return found;
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void thePagesAreWhatTheCataloguesSay(String language) throws IOException {
        Map<String, String> pages = new GuidePages(Locale.forLanguageTag(language)).make(GuideCommands.all());
        for (Map.Entry<String, String> page : pages.entrySet()) {
            Path file = FOLDER.resolve(language).resolve(page.getKey());
            assertTrue(Files.isRegularFile(file) && Files.readString(file).equals(page.getValue()),
                    file + " is not what the catalogues say: write it anew with SLOPEWRIGHT_NEW_GUIDE=1");
        }
        try (Stream<Path> files = Files.list(FOLDER.resolve(language))) {
            assertEquals(pages.size(), files.count(), "no page is left over");
        }
    }

    @Test
    void bothLanguagesSayTheSame() {
        assertEquals(GuidePages.keys(Locale.ENGLISH), GuidePages.keys(Locale.GERMAN));
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void everyRuleValueAndCommandHasItsEntry(String language) throws IOException {
        Set<String> rules = anchors(language, "rules.html");
        assertEquals(List.of(), RuleCatalogue.all().stream().map(rule -> rule.id()).filter(id -> !rules.contains(id)).toList());
        Set<String> values = anchors(language, "values.html");
        for (RuleSet set : RuleSets.all()) {
            assertEquals(List.of(), Stream.concat(set.values().stream().map(value -> value.key()), set.choices().stream()
                    .map(choice -> choice.key())).filter(key -> !values.contains(key)).toList());
        }
        Set<String> commands = anchors(language, "commands.html");
        assertEquals(List.of(), GuideCommands.all().getSubcommands().keySet().stream().filter(name -> !commands.contains(name)).toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void everyFileHasItsEntry(String language) throws Exception {
        Project project = ProjectFile.load(ROOT.resolve("demo-data/every-family/every-family.slopewright"));
        Set<String> endings = new TreeSet<>(Deliverables.of(project).stream().map(file -> file.extension()).toList());
        SurveyFile.formats().forEach(format -> endings.addAll(format.endings()));
        endings.removeAll(anchors(language, "files.html"));
        assertEquals(Set.of(), endings);
    }

    /** What a step names as menu and entry is what the window calls them. */
    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void everyEntryOfAMenuIsThere(String language) throws IOException {
        Set<String> labels = new TreeSet<>();
        for (String file : List.of("app/slopewright.rcp/plugin", "app/slopewright.rcp/src/slopewright/rcp/internal/messages",
                "ui/slopewright.ui.plan/plugin", "ui/slopewright.ui.plan/src/slopewright/ui/plan/internal/messages",
                "ui/slopewright.ui.review/plugin")) {
            Properties texts = new Properties();
            try (Reader reader = Files.newBufferedReader(ROOT.resolve("bundles/" + file + ("de".equals(language) ? "_de" : "")
                    + ".properties"))) {
                texts.load(reader);
            }
            texts.values().forEach(text -> labels.add(String.valueOf(text).replaceAll("[&\u2026]", "").strip()));
        }
        List<MatchResult> ways = Pattern.compile("([\\p{L}]+) &gt; ([\\p{L} ]+)").matcher(text(language, "tasks.html")).results().toList();
        assertTrue(ways.size() >= 4, "menus are named");
        ways.forEach(way -> assertTrue(labels.contains(way.group(1)) && labels.contains(way.group(2).strip()), way.group()));
    }

    /** Links lead to pages and pictures that are there. */
    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void everyLinkLeadsSomewhere(String language) throws IOException {
        for (String page : List.of("index.html", "tasks.html", "window.html")) {
            Pattern.compile("(?:href|src)=\"([^\"#]+)").matcher(text(language, page)).results().map(match -> match.group(1)).forEach(
                    link -> assertTrue(Files.isRegularFile(FOLDER.resolve(language).resolve(link)), page + " links to " + link));
        }
    }
}
