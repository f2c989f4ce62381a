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

/** Comparisons of versions and of rule sets. */
class CompareTest {

    private static final String DEMO = Words.demo("harrow-vale/harrow-vale.slopewright").toString();

    @TempDir
    private Path folder;

    @Test
    void aVersionIsTheSameAsItself() {
        JsonNode same = Words.run("compare-versions", DEMO, DEMO, "--json").json();
        assertTrue(same.get("changes").isEmpty());
        assertTrue(same.get("results").isEmpty());
        assertTrue(same.get("outcomes").isEmpty());
        assertTrue(same.get("newer").get("verdict").asText().startsWith("Met"));
    }

    /** What is wrong in both versions differs in nothing: whoever reads of no difference reads the verdict too. */
    @Test
    void twoVersionsThatAreWrongAlikeSayThatTheyAreWrong() {
        String faults = Words.demo("harrow-vale-faults/harrow-vale-faults.slopewright").toString();
        Words run = Words.run("compare-versions", faults, faults);
        assertTrue(run.out().contains("0 outcomes differ") && run.out().contains("newer: Not met"), run.out());
        JsonNode same = Words.run("compare-versions", faults, faults, "--json").json();
        assertTrue(same.get("older").get("verdict").asText().startsWith("Not met"));
    }

    @Test
    void aChangedSettingIsToldWithWhatItDid() throws IOException {
        String text = Files.readString(Path.of(DEMO));
        assertTrue(text.contains("settingDeg=\"2.75\""));
        Path changed = Files.writeString(folder.resolve("b.slopewright"), text.replaceFirst("settingDeg=\"2.75\"", "settingDeg=\"2.85\""));
        JsonNode difference = Words.run("compare-versions", DEMO, changed.toString(), "--json").json();
        assertEquals(1, difference.get("changes").size());
        JsonNode change = difference.get("changes").get(0);
        assertEquals("changed", change.get("kind").asText());
        assertEquals("settingDeg", change.get("attribute").asText());
        assertEquals("2.75", change.get("before").asText());
        JsonNode eye = difference.get("results").get(1);
        assertEquals("eyeHeightOverThresholdM", eye.get("quantity").asText());
        assertTrue(eye.get("after").asDouble() > eye.get("before").asDouble());
        boolean rowSeven = false;
        for (JsonNode outcome : difference.get("outcomes")) {
            rowSeven |= outcome.get("rule").asText().equals("ROW-07") && outcome.get("before").get("outcome").asText().equals("PASS")
                    && outcome.get("after").get("outcome").asText().equals("FAIL");
        }
        assertTrue(rowSeven, difference.toString());
    }

    /**
     * What an element refers to is a change, and so is the order of the places of a line. Of three aeroplanes the first two go, which may
     * fly 4.5 degrees; the one that may fly 5.5 stays, and says what it said before.
     */
    @Test
    void whatIsReferredToAndInWhichOrderIsToldAsWell() throws IOException {
        String text = Files.readString(Path.of(DEMO));
        String groups = "regularGroups=\"aeroplane-group-1 aeroplane-group-2 aeroplane-group-3\" trueBearingDeg=\"92.0\"";
        String equipment = "beamRightLimitDeg=\"8.0\" equipment=\"equipment-type-2\"";
        assertTrue(text.contains(groups) && text.contains(equipment));
        Path changed = Files.writeString(folder.resolve("b.slopewright"), text.replace(groups, groups.replaceFirst("aeroplane.*-2 ", ""))
                .replace(equipment, equipment.replace("-2", "-1"))
                .replaceFirst("(?s)( *<places xmi:id=\"place-13\".*?\n)( *<places xmi:id=\"place-14\".*?\n)", "$2$1"));
        JsonNode difference = Words.run("compare-versions", DEMO, changed.toString(), "--json").json();
        List<String> changes = new ArrayList<>();
        difference.get("changes").forEach(change -> changes.add(change.get("kind").asText() + " " + change.get("element").asText() + " "
                + change.get("attribute").asText() + " " + change.get("after").asText()));
        assertEquals(List.of("changed runway-end-1 regularGroups Turboprop", "changed approach-aid-3 equipment Four-unit set, 0.60 m",
                "reordered obstacle-3 places place-14, place-13, place-15"), changes);
        List<String> slopes = new ArrayList<>();
        difference.get("outcomes").forEach(outcome -> {
            if (outcome.get("rule").asText().equals("EYE-05")) {
                slopes.add(outcome.get("before").get("margin").asText() + outcome.get("after").size());
            }
        });
        assertEquals(List.of("1.50", "1.50"), slopes);
    }

    @Test
    void ruleSetsAreComparedSideBySide() {
        JsonNode compared = Words.run("compare-rule-sets", DEMO, "--rule-sets", "icao,faa", "--json").json();
        assertEquals(2, compared.get("ruleSets").size());
        assertTrue(compared.get("differences").size() > 5);
        boolean surface = false;
        for (JsonNode difference : compared.get("differences")) {
            assertTrue(difference.get("outcomes").size() >= 1);
            surface |= difference.get("rule").asText().equals("ROW-04");
        }
        assertTrue(surface, compared.toString());
        assertEquals(2, Words.run("compare-rule-sets", DEMO, "--rule-sets", "moon").code());
    }

    @Test
    void aCardIsWrittenForThePortableUnitAndNeverOverAFile() throws IOException {
        Path card = folder.resolve("card.html");
        String[] words = {"card", DEMO, "--aid", "Portable unit, north pad", "-o", card.toString(), "--date", "2026-06-01"};
        assertEquals(0, Words.run(words).code());
        String text = Files.readString(card);
        assertTrue(text.contains("Never set up or switch on"), "the cautions stand on the card");
        assertTrue(text.contains("2026-06-01"));
        assertEquals(2, Words.run(words).code());
        assertEquals(text, Files.readString(card));
        Path none = folder.resolve("none.html");
        Words fixed = Words.run("card", DEMO, "--aid", "PAPI 09", "-o", none.toString());
        assertEquals(2, fixed.code());
        assertTrue(fixed.err().contains("PAPI 09 is not portable") && fixed.err().contains("--aid"), fixed.err());
        assertFalse(Files.exists(none));
    }

    /** What fits stands before what is to be cleared up, and that before what does not fit; among alike the greater score first. */
    @Test
    void familiesStandInTheOrderOfTheVerdictsThenOfTheScores() {
        List<String> order = List.of("fits", "to-clear-up", "does-not-fit");
        int before = 0;
        double most = 101;
        for (JsonNode family : Words.run("compare", DEMO, "--end", "09", "--json").json().get("families")) {
            int place = order.indexOf(family.get("fit").asText());
            double score = family.has("score") ? family.get("score").asDouble() : -1;
            assertTrue(place > before || place == before && score <= most, family.toString());
            before = place;
            most = score;
        }
        assertEquals(2, before);
    }

    /** No family fits a runway end whose bearing contradicts its thresholds: the surface is compared with what stands elsewhere. */
    @Test
    void nothingFitsAPlaceThatContradictsItself() throws IOException {
        assertEquals("fits", fit(Path.of(DEMO)));
        Path turned = folder.resolve("turned.slopewright");
        Files.writeString(turned, Files.readString(Path.of(DEMO)).replace("trueBearingDeg=\"92.0\"", "trueBearingDeg=\"122.0\""));
        assertEquals("to-clear-up", fit(turned));
    }

    private static String fit(Path project) {
        for (JsonNode family : Words.run("compare", project.toString(), "--end", "09", "--json").json().get("families")) {
            if (family.get("family").asText().equals("four-unit-row")) {
                return family.get("fit").asText();
            }
        }
        return "";
    }

    /** An approach without a slope of its own is compared at that of its indicator, its lens 0.5 m high: 3.3 m cot 7.04 degrees. */
    @Test
    void aHelipadIsComparedAtTheSlopeOfItsIndicator() {
        Words run = Words.run("compare", Words.demo("harrow-vale/harrow-vale.slopewright").toString(), "--end", "H-250");
        assertEquals(0, run.code(), run.err());
        String sector = run.out().lines().filter(line -> line.startsWith("heliport-sector")).findFirst().orElseThrow();
        assertTrue(sector.contains(" 26.72 ") && sector.contains("At the slope of Portable unit"), sector);
    }

    /**
     * The proposal is right where the row that stands is not. Unit B at 2°57' instead of 2°45': the eye on 2°55' at the threshold is
     * 0.731 m + 330.462 m * tan 2°55' = 17.568 m high.
     */
    @Test
    void aProposalTellsItselfFromARowThatStandsOtherwise() throws IOException {
        String sound = Words.run("compare", DEMO, "--end", "09").out();
        assertFalse(sound.contains("is not laid out so"), sound);
        Path wrong = folder.resolve("wrong.slopewright");
        Files.writeString(wrong, Files.readString(Path.of(DEMO)).replace("rightM=\"-55.5\" lensElevationM=\"87.131\""
                + " azimuthOffsetDeg=\"0.0\" settingDeg=\"2.75\"", "rightM=\"-55.5\" lensElevationM=\"87.131\" azimuthOffsetDeg=\"0.0\""
                + " settingDeg=\"2.95\""));
        String said = Words.run("compare", wrong.toString(), "--end", "09").out();
        assertTrue(said.contains("PAPI 09 has a distance of 330.46 m and an eye height (MEHT) of 17.57 m"), said);
    }
}
