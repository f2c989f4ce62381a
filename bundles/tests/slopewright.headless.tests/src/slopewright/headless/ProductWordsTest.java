package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Iterator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.model.io.Program;
import slopewright.testkit.DemoProjects;

/** Version, help, completion and manual know all commands. */
class ProductWordsTest {

    private static List<String> commands() {
        return Pattern.compile("(?m)^  ([a-z-]{3,})  ").matcher(Words.run("--help").out()).results().map(found -> found.group(1)).toList();
    }

    /** The version is that of the root pom, without what marks a build. */
    @Test
    void theVersionIsThatOfTheBuild() throws IOException {
        Matcher pom = Pattern.compile("<version>([0-9.]+)(?:-SNAPSHOT)?</version>")
                .matcher(Files.readString(DemoProjects.root().resolve("pom.xml")));
        assertTrue(pom.find());
        Words version = Words.run("--version");
        assertEquals(0, version.code());
        assertEquals("slopewright " + pom.group(1), version.out().strip());
    }

    @Test
    void helpSaysWhatACommandSaysOfItself() {
        assertTrue(commands().size() > 25, commands().toString());
        for (String command : commands()) {
            Words help = Words.run("help", command);
            assertEquals(0, help.code(), command);
            assertEquals(Words.run(command, "--help").out(), help.out());
        }
        assertEquals(Words.run("--help").out(), Words.run("help").out());
        assertEquals(2, Words.run("help", "poster").code());
    }

    @ParameterizedTest
    @ValueSource(strings = {"bash", "zsh", "fish"})
    void aShellCompletesEveryCommand(String shell) {
        Words script = Words.run("completion", shell);
        assertEquals(0, script.code());
        for (String command : commands()) {
            assertTrue(script.out().contains(command), command);
        }
        assertTrue(script.out().contains("rule-set"));
        for (String word : List.of("icao:9th", "two-unit-row", "mounting", "above-ground", "operation")) {
            assertTrue(script.out().contains(word), word);
        }
    }

    @Test
    void theManualHasAPageForEveryCommand() {
        String all = Words.run("manual").out();
        assertTrue(all.startsWith(".TH SLOPEWRIGHT 1 "), all.substring(0, 60));
        for (String command : commands()) {
            assertTrue(all.contains("\n.B " + command.replace("-", "\\-") + "\n"), command);
            String page = Words.run("manual", command).out();
            assertTrue(page.contains(".SH SYNOPSIS") && page.contains("\\-\\-help") && page.contains(".SH CAUTION"), command);
            assertTrue(page.lines().noneMatch(line -> line.startsWith("'")), command);
        }
        assertEquals(2, Words.run("manual", "poster").code());
    }

    /** Whoever reads a document knows its form and the program that wrote it before anything else. */
    @Test
    void everyDocumentBeginsWithItsFormAndTheProgram() {
        String demo = DemoProjects.file(DemoProjects.GOOD).toString();
        for (String[] words : List.of(new String[] {"variation", "--latitude", "50", "--longitude", "1", "--date", "2026-01-01", "--json"},
                new String[] {"site", demo, "--end", "09", "--family", "four-unit-row", "--json"},
                new String[] {"tolerance", demo, "--aid", "approach-aid-1", "--samples", "10", "--json"},
                new String[] {"compare-versions", demo, demo, "--json"}, new String[] {"check", demo, "--json"})) {
            Words run = Words.run(words);
            Iterator<String> names = run.json().fieldNames();
            assertEquals("schema", names.next(), words[0]);
            assertEquals("program", names.next(), words[0]);
            assertEquals(Program.TEXT, run.json().get("program").asText());
        }
    }
}
