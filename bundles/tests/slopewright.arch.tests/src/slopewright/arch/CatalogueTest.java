package slopewright.arch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The catalogues of what the window says: complete in both languages, of one mind about values, used, and the only place of texts. */
class CatalogueTest {

    private static final String GERMAN = "_de.properties";
    /** The end of keys of limits, which are the same in every language; names of choices in English come from the model. */
    private static final String NUMBERS_ONLY = ".range";
    private static final Pattern PLACE = Pattern.compile("%(\\d+\\$)?[-,.\\d]*[a-zA-Z]");
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");
    private static final Pattern NAMED = Pattern.compile("Messages\\.get\\(\\s*\"([^\"]+)\"\\s*[,)]");
    private static final Pattern SPOKEN = Pattern.compile("(?:\\.(?:setText|setToolTipText|setMessage|setTitle|setDescription"
            + "|setErrorMessage|setWindowTitle)|MessageDialog\\.open\\w+|new MenuManager|super)\\([^;\"]*\"([^\"]*[A-Za-z]{2}[^\"]*)\"");
    private static final Pattern ID = Pattern.compile("[a-z0-9.-]+(?:[A-Z]\\w*)?");

    static Stream<Path> catalogues() {
        return windowBundles().flatMap(bundle -> SourceTree.files(bundle.folder(), ".properties").stream())
                .filter(file -> !file.endsWith("build.properties") && !file.toString().endsWith(GERMAN));
    }

    static Stream<BundleFolder> windowBundles() {
        return SourceTree.bundles().stream().filter(bundle -> bundle.group().equals("ui") || bundle.name().equals("slopewright.rcp"));
    }

    @ParameterizedTest
    @MethodSource("catalogues")
    void germanHasTheSameTextsAndValues(Path english) {
        Path german = Path.of(english.toString().replace(".properties", GERMAN));
        assertTrue(Files.isRegularFile(german), SourceTree.relative(english) + " has no German beside it");
        Properties one = read(english);
        Properties other = read(german);
        Set<String> spoken = new TreeSet<>(one.stringPropertyNames());
        Set<String> known = new TreeSet<>(other.stringPropertyNames());
        if (english.endsWith("attributes.properties")) {
            spoken.removeIf(key -> key.endsWith(NUMBERS_ONLY));
            known.retainAll(spoken);
        }
        assertEquals(spoken, known, SourceTree.relative(english));
        for (String key : spoken) {
            assertFalse(other.getProperty(key).isBlank() && !one.getProperty(key).isBlank(), key);
            assertEquals(places(one.getProperty(key)), places(other.getProperty(key)), SourceTree.relative(german) + " " + key);
        }
    }

    @ParameterizedTest
    @MethodSource("windowBundles")
    void everyTextIsUsed(BundleFolder bundle) {
        Set<String> literals = literals(bundle);
        List<String> idle = catalogues().filter(file -> file.startsWith(bundle.sources()))
                .filter(file -> file.getFileName().toString().startsWith("messages"))
                .flatMap(file -> read(file).stringPropertyNames().stream()).filter(key -> !isUsed(key, literals)).sorted().toList();
        assertEquals(List.of(), idle);
    }

    @ParameterizedTest
    @MethodSource("windowBundles")
    void everyNamedTextIsThere(BundleFolder bundle) {
        Set<String> keys = new TreeSet<>();
        catalogues().filter(file -> file.startsWith(bundle.sources())).forEach(file -> keys.addAll(read(file).stringPropertyNames()));
        List<String> missing = new ArrayList<>();
        for (Path file : SourceTree.files(bundle.sources(), ".java")) {
            NAMED.matcher(SourceTree.text(file)).results().map(found -> found.group(1)).filter(key -> !keys.contains(key))
                    .forEach(key -> missing.add(SourceTree.relative(file) + " names " + key));
        }
        assertEquals(List.of(), missing);
    }

    @ParameterizedTest
    @MethodSource("windowBundles")
    void noTextOfAPluginFileIsWrittenOut(BundleFolder bundle) {
        Path plugin = bundle.folder().resolve("plugin.xml");
        Path texts = bundle.folder().resolve("plugin.properties");
        if (Files.isRegularFile(plugin)) {
            Properties known = Files.isRegularFile(texts) ? read(texts) : new Properties();
            List<String> wrong = Pattern.compile(" (?:name|label|tooltip)=\"([^\"]*)\"").matcher(SourceTree.text(plugin)).results()
                    .map(found -> found.group(1)).filter(text -> !isFromCatalogue(text, known)).toList();
            assertEquals(List.of(), wrong, SourceTree.relative(plugin));
        }
    }

    @ParameterizedTest
    @MethodSource("windowBundles")
    void noTextIsWrittenInTheCode(BundleFolder bundle) {
        List<String> wrong = new ArrayList<>();
        for (Path file : SourceTree.files(bundle.sources(), ".java")) {
            SPOKEN.matcher(SourceTree.text(file)).results().filter(CatalogueTest::isText)
                    .forEach(found -> wrong.add(SourceTree.relative(file) + " says " + found.group(1)));
        }
        assertEquals(List.of(), wrong);
    }

    /** Refers to a known text, or is the name of the product or an id. */
    private static boolean isFromCatalogue(String text, Properties known) {
        return text.startsWith("%") ? known.containsKey(text.substring(1)) : text.equals("Slopewright") || ID.matcher(text).matches();
    }

    /** A text, and neither a key nor an id, which have no blanks and begin small. */
    private static boolean isText(MatchResult found) {
        return !found.group().contains("Messages.get(") && !found.group().contains("Texts.") && !ID.matcher(found.group(1)).matches();
    }

    private static boolean isUsed(String key, Set<String> literals) {
        return literals.contains(key) || literals.contains(key.replaceFirst("\\d+$", ""))
                || literals.stream().anyMatch(literal -> literal.length() > 2
                && (literal.matches(".*[.-]") && key.startsWith(literal) || literal.matches("[.-].*") && key.endsWith(literal)));
    }

    private static Set<String> literals(BundleFolder bundle) {
        Set<String> found = new TreeSet<>();
        SourceTree.files(bundle.sources(), ".java")
                .forEach(file -> LITERAL.matcher(SourceTree.text(file)).results().map(match -> match.group(1)).forEach(found::add));
        return found;
    }

    private static List<String> places(String text) {
        return PLACE.matcher(text.replace("%%", "")).results().map(MatchResult::group).sorted().toList();
    }

    private static Properties read(Path file) {
        Properties properties = new Properties();
        try {
            properties.load(new StringReader(SourceTree.text(file)));
            return properties;
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
    }
}
