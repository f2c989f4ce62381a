package slopewright.arch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;

/** Why something is refused is said by a key of the catalogues, never by words that stand in the sources. */
class ReasonsTest {

    /** What carries a reason to people. Its argument ends where its brackets close. */
    private static final Pattern REFUSING = Pattern.compile("(?:new (?:ExchangeException|RefusedException|EditException|ReportException"
            + "|ProjectFileException|RulesException|RefusedFileException|FileSystemException|UnwritableException|Fault|Broken)"
            + "|TemplateFault\\.in|\\berror|\\bfault|\\bheadFault|\\brefused|\\bwhole|\\brefuse|\\brequire|\\.note|\\.skip)\\(");
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");
    /** A sentence, and no option, key, ending or command. */
    private static final Pattern WORDS = Pattern.compile(".*\\p{L}{2,} \\p{L}{2,}.*");
    private static final Pattern COMMAND = Pattern.compile("--.*|pdal .*|laszip .*");

    @Test
    void noReasonIsSpelledOutInTheSources() {
        Set<String> found = new TreeSet<>();
        int[] looked = {0};
        for (String bundle : List.of("core/slopewright.exchange", "core/slopewright.model", "core/slopewright.report",
                "core/slopewright.standards", "app/slopewright.edit")) {
            for (Path file : SourceTree.files(SourceTree.root().resolve("bundles").resolve(bundle).resolve("src"), ".java")) {
                String text = SourceTree.text(file);
                REFUSING.matcher(text).results().forEach(match -> {
                    looked[0]++;
                    LITERAL.matcher(argument(text, match)).results().map(literal -> literal.group(1))
                            .filter(literal -> WORDS.matcher(literal).matches() && !COMMAND.matcher(literal).matches())
                            .forEach(literal -> found.add(file.getFileName() + ": " + literal));
                });
            }
        }
        assertTrue(looked[0] > 330, looked[0] + " reasons");
        assertEquals(Set.of(), found);
    }

    private static String argument(String text, MatchResult call) {
        int depth = 1;
        int at = call.end();
        for (; at < text.length() && depth > 0; at++) {
            depth += text.charAt(at) == '(' ? 1 : text.charAt(at) == ')' ? -1 : 0;
        }
        return text.substring(call.end(), at);
    }
}
