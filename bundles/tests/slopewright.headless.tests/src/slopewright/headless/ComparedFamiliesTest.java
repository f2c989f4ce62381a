package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a consultant reads beside the figures of families: reasons, sides, weights, and what the place has against all of them, once. */
class ComparedFamiliesTest {

    private static final String DEMO = Words.demo("harrow-vale/harrow-vale.slopewright").toString();
    private static final String FAULTS = Words.demo("harrow-vale-faults/harrow-vale-faults.slopewright").toString();

    @TempDir
    private Path folder;

    private static int times(String text, String part) {
        return text.split(java.util.regex.Pattern.quote(part), -1).length - 1;
    }

    /** The thresholds of 09 lie on 92 degrees. */
    @Test
    void whatThePlaceHasAgainstAllIsSaidOnce() throws IOException {
        Path turned = folder.resolve("turned.slopewright");
        Files.writeString(turned, Files.readString(Path.of(DEMO)).replace("trueBearingDeg=\"92.0\"", "trueBearingDeg=\"122.0\""));
        String said = Words.run("compare", turned.toString(), "--end", "09").out();
        assertEquals(1, times(said, "DATA-15"), said);
        JsonNode json = Words.run("compare", turned.toString(), "--end", "09", "--json").json();
        assertTrue(json.get("place").get(0).asText().contains("122.00"), json.get("place").toString());
        assertFalse(json.get("families").toString().contains("122.00"));
        String csv = Words.run("compare", turned.toString(), "--end", "09", "--csv").out();
        assertTrue(csv.lines().skip(1).allMatch(line -> line.contains("not met (DATA-15")), csv);
    }

    /** A hill stands in the surface of the row at 27, which is nothing that 09 has against it; where something is solved at 27 it is. */
    @Test
    void whatStandsInTheSurfaceOfAnotherEndIsNotHeldAgainstThisOne() {
        assertFalse(Words.run("compare", FAULTS, "--end", "09", "--json").out().contains("PAPI 27"));
        assertFalse(Words.run("site", FAULTS, "--end", "09", "--family", "four-unit-row", "--json").out().contains("Cold Barrow"));
        assertTrue(Words.run("site", FAULTS, "--end", "27", "--family", "four-unit-row", "--json").out().contains("Cold Barrow hill"));
    }

    /** The rule set knows T-VASIS no longer as a standard system: the rule is named, by id and title. */
    @Test
    void whatDoesNotFitNamesTheRuleThatItBreaks() {
        for (JsonNode family : Words.run("compare", DEMO, "--end", "09", "--json").json().get("families")) {
            String reason = family.get("reason").asText();
            if (family.get("rules").get("not-met").asInt() > 0) {
                assertTrue(reason.matches(".*Not met: [A-Z]+-\\d+ [A-Z].*"), reason);
            }
            if (family.get("fit").asText().equals("to-clear-up")) {
                assertTrue(reason.contains("An input is missing for: ") || reason.contains("on values to confirm"), reason);
            }
            if (family.get("family").asText().equals("t-form")) {
                assertTrue(reason.contains("FAM-04 Standard system"), reason);
            }
            if (family.has("distanceM")) {
                assertTrue(reason.contains(family.get("rulesApplied").asInt() + " rules applied"), reason);
            }
        }
    }

    /** The indicators of this demo were inspected, which is nothing that a design of the same family breaks. */
    @Test
    void whatWasReadAtWhatStandsThereIsNotHeldAgainstAProposal() {
        String project = Words.demo("every-family/every-family.slopewright").toString();
        JsonNode row = Words.run("compare", project, "--end", "09", "--json").json().get("families");
        for (JsonNode family : row) {
            assertFalse(family.get("reason").asText().contains("REC-05"), family.toString());
            if (family.get("family").asText().equals("four-unit-row")) {
                assertEquals("fits", family.get("fit").asText(), family.toString());
            }
        }
    }

    /** On the right of the runway the row breaks the rule about its side (left, Annex 14 Vol I, 5.3.5.25); T-VASIS stands on both. */
    @Test
    void everySideIsCompared() {
        List<String> sides = new ArrayList<>();
        for (JsonNode family : Words.run("compare", DEMO, "--end", "09", "--side", "each", "--json").json().get("families")) {
            if (family.get("family").asText().matches("four-unit-row|t-form")) {
                sides.add(family.get("family").asText() + " " + family.get("side").asText() + " "
                        + family.get("reason").asText().contains("ROW-02"));
            }
        }
        assertTrue(sides.containsAll(List.of("four-unit-row left false", "four-unit-row right true", "t-form both false")),
                sides.toString());
        assertEquals(1, sides.stream().filter(side -> side.startsWith("t-form")).count(), sides.toString());
        assertEquals(2, Words.run("compare", DEMO, "--end", "09", "--side", "above").code());
    }

    /** By few units alone a single unit has all the points and the row of four has fewer. */
    @Test
    void weightsAreChosenAndSaid() {
        String[] words = {"compare", DEMO, "--end", "09", "--weights", "rules=0,wheels=0,obstacles=0,eye=0,units=1,load=0"};
        JsonNode json = Words.run(append(words, "--json")).json();
        assertEquals(1, json.get("weights").get("units").asInt());
        assertEquals(0, json.get("weights").get("rules").asInt());
        for (JsonNode family : json.get("families")) {
            if (family.has("score") && family.get("units").asInt() == 1) {
                assertEquals(100, family.get("score").asDouble(), 1e-9);
            } else if (family.has("score")) {
                assertTrue(family.get("score").asDouble() < 100);
            }
        }
        assertTrue(Words.run(words).out().contains("few units 1 and little power 0"));
        Words wrong = Words.run("compare", DEMO, "--end", "09", "--weights", "moon=1");
        assertTrue(wrong.code() == 2 && wrong.err().contains("'moon=1' is no weight"), wrong.err());
    }

    private static String[] append(String[] words, String more) {
        List<String> all = new ArrayList<>(List.of(words));
        all.add(more);
        return all.toArray(String[]::new);
    }

    @Test
    void theReportComparesByTheWeightsThatWereChosen() throws IOException {
        Path report = folder.resolve("report.html");
        assertEquals(0, Words.run("report", DEMO, "-o", report.toString(), "--weights", "units=5,load=0").code());
        String text = Files.readString(report);
        assertTrue(text.contains("few units 5 and little power 0"));
        assertTrue(text.contains("Laid out on the left, seen in the landing direction."));
        assertTrue(text.contains("It is otherwise on the right for:") && text.contains("ROW-02 Side of the runway"));
        assertTrue(text.contains("FAM-04 Standard system"));
        assertEquals(0, Words.run("report", DEMO, "-o", report.toString(), "--language", "de", "--force").code());
        text = Files.readString(report);
        assertTrue(text.contains("Gewichte: erfüllte Regeln 1") && text.contains("Ausgelegt links, in Landerichtung gesehen."));
        assertTrue(text.contains("Anders ist es rechts für:") && text.contains("nicht besser"));
    }

    /** A project that has no indicator yet is the one in which a family is to be chosen. */
    @Test
    void aReportWithoutAnIndicatorComparesWhatCouldStandThere() throws IOException {
        Path project = folder.resolve("bare.slopewright");
        Files.writeString(project, Files.readString(Path.of(DEMO)).replaceAll("(?s)<aids .*?</aids>", "")
                .replaceAll(" aids=\"[^\"]*\"", ""));
        Path report = folder.resolve("bare.html");
        Words run = Words.run("report", project.toString(), "-o", report.toString());
        assertEquals(0, run.code(), run.err());
        String text = Files.readString(report);
        assertTrue(text.contains("Choice of the indicator") && text.contains("pulsating VASI"));
    }
}
