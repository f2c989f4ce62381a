package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.testkit.DemoProjects;

/**
 * How a project stands is one answer: every door counts the same outcomes, and a value that decides none of them is to clear up in all of
 * them. The counts of the faulty demo are those of its list of planted faults and of no other door.
 */
class SameStandingTest {
    private static final String LEVEL = "valueKey=\"four-unit-row.level-correction-from-m\"";

    @TempDir
    private Path folder;

    private static String plain(String markup) {
        return markup.replaceAll("<style>(?s:.*?)</style>", "").replaceAll("<[^>]*>", "\n").replaceAll("\\s+", " ");
    }

    private String written(String name, String... words) throws IOException {
        String[] all = new String[words.length + 2];
        System.arraycopy(words, 0, all, 0, words.length);
        all[words.length] = "-o";
        all[words.length + 1] = folder.resolve(name).toString();
        Words run = Words.run(all);
        assertTrue(Files.exists(folder.resolve(name)), run.err());
        return plain(Files.readString(folder.resolve(name)));
    }

    private static String found(String pattern, String text) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        assertTrue(matcher.find(), pattern + " in " + text.substring(0, Math.min(3000, text.length())));
        return matcher.group(1);
    }

    /**
     * The sound demo under the older edition without what was confirmed of the level from which a row is moved: two rows rest on it, and no
     * other outcome does.
     */
    private Path open() throws IOException {
        Path file = folder.resolve("open.slopewright");
        Files.write(file, Files.readAllLines(DemoProjects.olderEdition()).stream()
                .filter(line -> !line.contains(LEVEL)).toList());
        return file;
    }

    private void everyDoorCounts(String file, int notMet, int toClearUp) throws IOException {
        Words json = Words.run("check", file, "--json");
        JsonNode counts = json.project().get("counts");
        assertEquals(notMet, counts.get("not-met").asInt());
        assertEquals(toClearUp, counts.get("to-clear-up").asInt());
        assertEquals(notMet + toClearUp > 0 ? 1 : 0, json.code());
        int met = counts.get("met").asInt();
        String text = notMet + " not met, " + toClearUp + " to clear up (";
        assertTrue(Words.run("check", file).out().contains("\n" + text), text);
        assertEquals(toClearUp, Words.run("check", file, "--csv").out().lines().filter(line -> line.contains(",to-clear-up,")).count());
        assertEquals(toClearUp, Words.run("check", file, "--junit").out().split("message=\"to clear up", -1).length - 1);
        String report = written("r.html", "report", file, "--date", "2026-06-01");
        assertEquals(notMet + " " + toClearUp + " " + met, found("all rules (\\d+ \\d+ \\d+) ", report));
        String bericht = written("b.html", "report", file, "--date", "2026-06-01", "--language", "de");
        assertEquals(notMet + " " + toClearUp + " " + met, found("Regeln insgesamt (\\d+ \\d+ \\d+) ", bericht));
        assertEquals(notMet > 0 ? "Not met" : toClearUp > 0 ? "To clear up" : "Met", found(" (Not met|To clear up|Met): ", report));
        assertEquals(notMet > 0 ? "Nicht erf\u00fcllt" : toClearUp > 0 ? "Zu kl\u00e4ren" : "Erf\u00fcllt",
                found(" (Nicht erf\u00fcllt|Zu kl\u00e4ren|Erf\u00fcllt): ", bericht));
    }

    @ParameterizedTest
    @CsvSource({"harrow-vale", "every-family"})
    void theSoundDemosAreMetThroughEveryDoor(String name) throws IOException {
        everyDoorCounts(Words.demo(name + "/" + name + ".slopewright").toString(), 0, 0);
    }

    @Test
    void theFaultyDemoIsNotMetThroughEveryDoor() throws IOException {
        String file = Words.demo("harrow-vale-faults/harrow-vale-faults.slopewright").toString();
        int planted = (int) Files.readAllLines(Words.demo("harrow-vale-faults/expected-findings.csv")).stream()
                .filter(line -> line.endsWith(",FAIL")).count();
        int toClearUp = (int) StreamSupport.stream(Words.run("check", file, "--json").project().get("outcomes").spliterator(), false)
                .filter(outcome -> outcome.get("outcome").asText().equals("NOT_EVALUATED") || outcome.get("outcome").asText().equals("PASS")
                        && outcome.get("toConfirm").asBoolean()).count();
        everyDoorCounts(file, planted, toClearUp);
    }

    @Test
    void aValueThatDecidesNothingIsToClearUpThroughEveryDoor() throws IOException {
        String file = open().toString();
        everyDoorCounts(file, 0, 2);
        String named = "PAPI: Level difference above which the row is moved";
        assertTrue(Words.run("check", file).out().contains(named));
        assertTrue(written("n.html", "report", file, "--force").contains(named));
        String sheet = written("s.svg", "draw", file, "--aid", "PAPI 09", "--view", "plan", "--paper", "A3");
        assertTrue(sheet.contains("To clear up: 0 not met, 1 to clear up"), sheet);
    }

    /** What is worked out of an aid alone goes with the verdict of the aid: one row of the two that rest on the value. */
    @ParameterizedTest
    @CsvSource({"tolerance,--samples 0", "signal,--along-m -3000 --right-m 0 --height-m 170", "view,''", "surface,--points POINTS"})
    void figuresOfAnAidGoWithItsVerdict(String command, String further) throws IOException {
        Path points = Files.writeString(folder.resolve("points.csv"), "id,alongM,rightM,heightM\na,-500,0,5\n");
        Words open = asked(command, open(), further, points);
        assertEquals("To clear up: 0 not met, 1 to clear up", open.json().get("madeFrom").get("verdict").asText());
        assertTrue(open.err().contains("To clear up: 0 not met, 1 to clear up"), open.err());
        Words met = asked(command, DemoProjects.olderEdition(), further, points);
        assertTrue(met.json().get("madeFrom").get("verdict").asText().startsWith("Met"), met.out());
        assertEquals("", met.err());
    }

    private static Words asked(String command, Path file, String further, Path points) {
        return Words.line((command + " " + file + " --aid approach-aid-1 --json " + further).strip().replace("POINTS", points.toString()));
    }
}
