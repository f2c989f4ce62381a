package slopewright.messages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Every key that the sources name is in the catalogues, and every key of the catalogues is named in the sources: as it stands, behind the
 * prefix of terms or steps, behind the id of a rule in the class of that rule, or behind a prefix to which the sources add a word of an
 * enumeration.
 */
class UsedKeysTest {
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");
    private static final Pattern RULE = Pattern.compile("[A-Z]{2,5}-\\d\\d");
    private static final Pattern PREFIX = Pattern.compile("\"([\\w-]+(?:\\.[\\w-]+)*[.-])\"\\s*\\+");
    private static final Pattern SUPER = Pattern.compile("class\\s+(\\w+)(?:<[^>]*>)?\\s+extends\\s+(\\w+)");
    private static final Pattern MESSAGE = Pattern.compile(
            "(?:Message\\.(?:of|said)|\\.unless)\\(\\s*(?:[^;\"]*?\\?\\s*)?\"([\\w.-]+\\.[\\w.-]*\\w)\"");
    private static final Pattern TERM = Pattern.compile("(?:Words\\.|[^.\\w])term\\(\\s*\"([\\w.-]*\\w)\"\\s*\\)");
    private static final Pattern STEP = Pattern.compile("\\.step\\(\\s*\"([\\w.-]+)\"");
    private static final Map<String, String> SOURCES = new HashMap<>();

    @BeforeAll
    static void readSources() throws IOException {
        Path root = Path.of(System.getProperty("slopewright.root"));
        for (String group : List.of("core", "app", "ui")) {
            try (Stream<Path> files = Files.walk(root.resolve("bundles").resolve(group))) {
                files.filter(file -> file.toString().endsWith(".java") && file.toString().contains("/src/")).forEach(file -> {
                    String name = file.getFileName().toString().replace(".java", "");
                    SOURCES.merge(name, text(file), String::concat);
                });
            }
        }
        assertTrue(SOURCES.size() > 500, SOURCES.size() + " sources");
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
    }

    private static Set<String> keys() {
        return MessageRenderer.of(Locale.ENGLISH).keys();
    }

    private static Set<String> literals(String source) {
        Set<String> found = new HashSet<>();
        LITERAL.matcher(source).results().map(match -> match.group(1)).forEach(found::add);
        return found;
    }

    /** The literals of a class and of those that it extends. */
    private static Set<String> literalsWithBases(String name) {
        Set<String> found = new HashSet<>();
        for (String next = name; next != null && SOURCES.containsKey(next); next = base(next)) {
            found.addAll(literals(SOURCES.get(next)));
        }
        return found;
    }

    private static String base(String name) {
        Matcher matcher = SUPER.matcher(SOURCES.get(name));
        while (matcher.find()) {
            if (matcher.group(1).equals(name)) {
                return matcher.group(2);
            }
        }
        return null;
    }

    @Test
    void everyKeyIsUsed() {
        Set<String> literals = new HashSet<>();
        Set<String> prefixes = new HashSet<>();
        Set<String> used = new HashSet<>();
        SOURCES.forEach((name, source) -> {
            Set<String> own = literals(source);
            literals.addAll(own);
            PREFIX.matcher(source).results().map(match -> match.group(1)).forEach(prefixes::add);
            own.stream().filter(literal -> RULE.matcher(literal).matches()).forEach(rule -> {
                used.add(rule + ".title");
                used.add(rule + ".description");
                literalsWithBases(name).forEach(literal -> used.add(rule + "." + literal));
            });
        });
        List<String> unused = keys().stream().filter(key -> !used.contains(key) && !literals.contains(key)
                && !isUsedInDocuments(key, literals, prefixes)
                && Stream.of("term.", "step.").noneMatch(kind -> key.startsWith(kind) && literals.contains(key.substring(kind.length())))
                && prefixes.stream().filter(prefix -> !prefix.equals("term.") && !prefix.equals("step."))
                        .noneMatch(prefix -> key.startsWith(prefix) || key.startsWith("term." + prefix)))
                .sorted().toList();
        assertEquals(List.of(), unused);
    }

    /**
     * Documents name their keys without {@code report.}, most of them without the kind of text that follows it: a head, a fact, a label.
     */
    private static boolean isUsedInDocuments(String key, Set<String> literals, Set<String> prefixes) {
        String bare = key.replaceFirst("^term\\.", "");
        if (!bare.startsWith("report.")) {
            return false;
        }
        String rest = bare.substring("report.".length());
        String kind = rest.replaceFirst("\\..*$", "");
        if (!kind.equals(rest) && (literals.contains(kind) || literals.contains(kind + "."))) {
            return true; // the word of a choice, or a label of a template
        }
        return Stream.of(rest, rest.replaceFirst("^[\\w-]+\\.", "")).anyMatch(name -> literals.contains(name)
                || prefixes.stream().anyMatch(name::startsWith));
    }

    @Test
    void everyKeyThatIsNamedIsThere() {
        Set<String> absent = new TreeSet<>();
        SOURCES.forEach((name, source) -> {
            MESSAGE.matcher(source).results().map(match -> match.group(1)).filter(key -> !keys().contains(key))
                    .forEach(key -> absent.add(name + ": " + key));
            named(TERM, source).stream().filter(key -> !keys().contains("term." + key) && !keys().contains("term.report." + key))
                    .forEach(key -> absent.add(name + ": term." + key));
            named(STEP, source).stream().filter(key -> !keys().contains("step." + key)).forEach(key -> absent.add(name + ": step." + key));
        });
        assertEquals(Set.of(), absent);
    }

    /** What a rule says under its id: the literals given to {@code saying} and {@code advising} in its class. */
    @Test
    void everySentenceOfARuleIsThere() {
        Pattern said = Pattern.compile("\\.(?:saying|advising)\\(([^\"]*?)\"([\\w-]+)\"(?:\\s*:\\s*\"([\\w-]+)\")?");
        Set<String> absent = new TreeSet<>();
        SOURCES.forEach((name, source) -> {
            List<String> rules = literals(source).stream().filter(literal -> RULE.matcher(literal).matches()
                    && keys().contains(literal + ".title") && (source.contains("super(\"" + literal)
                            || source.contains("return \"" + literal)))
                    .toList();
            for (String rule : rules) {
                List<String> sentences = new ArrayList<>();
                said.matcher(source).results().filter(match -> !match.group(1).contains("Message.of"))
                        .forEach(match -> Stream.of(match.group(2), match.group(3)).filter(word -> word != null).forEach(sentences::add));
                sentences.stream().filter(word -> !keys().contains(rule + "." + word)).forEach(word -> absent.add(rule + "." + word));
            }
        });
        assertEquals(Set.of(), absent);
    }

    private static List<String> named(Pattern pattern, String source) {
        return pattern.matcher(source).results().map((MatchResult match) -> match.group(1)).toList();
    }
}
