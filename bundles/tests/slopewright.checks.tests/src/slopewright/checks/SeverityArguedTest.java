package slopewright.checks;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Why a rule is as grave as it is stands in its javadoc, in the word of its severity. */
class SeverityArguedTest {
    private static final Path SOURCES = Path.of(System.getProperty("slopewright.root"), "bundles/core/slopewright.checks/src");
    private static final Pattern DOC = Pattern.compile(
            "/\\*\\*((?:(?!\\*/).)*)\\*/\\s*(?:@\\w+\\s*)*public\\s+(?:final\\s+)?class", Pattern.DOTALL);

    static Iterable<Rule> rules() {
        return RuleCatalogue.all();
    }

    @ParameterizedTest
    @MethodSource("rules")
    void theSeverityIsArgued(Rule rule) throws IOException {
        Path file = SOURCES.resolve(rule.getClass().getName().replace('.', '/') + ".java");
        Matcher doc = DOC.matcher(Files.readString(file));
        assertTrue(doc.find(), file + " has no javadoc");
        String text = doc.group(1).replaceAll("\\s*\\n\\s*\\*\\s*", " ");
        String word = switch (rule.severity()) {
            case NOTE -> "note";
            case WARNING -> "warning";
            case FAIL -> "fail";
        };
        assertTrue(Pattern.compile("(?i)\\b" + word).matcher(text).find(), rule.id() + " is a " + word
                + ", and its javadoc does not say why: " + text);
    }
}
