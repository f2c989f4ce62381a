package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The documents of {@code site} and {@code signal}. */
class SiteAndSignalTest {

    private static final String ROW = "site --json --family four-unit-row --rule-set icao:5th --slope-deg 3 --runway-width-m 45 --code 4"
            + " --approach instrument --eye-to-wheel-m 6.63";

    private static List<String> names(JsonNode node) {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    /** Distances computed from the rules by hand: 15.63 cot 2 deg 48' = 319.58 and 11.63 cot 2 deg 48' = 237.79. */
    @Test
    void siteTellsDistanceSettingsAndSurface() {
        JsonNode site = Words.line(ROW).json();
        assertTrue(names(site).containsAll(List.of("family", "ruleSet", "slopeDeg", "distanceM", "lowestOnSlopeDeg",
                "eyeHeightOverThresholdM",
                "wheelClearanceM", "units", "obstacleSurface", "notes", "citations")));
        assertEquals(319.58, site.get("distanceM").asDouble(), 0.005);
        assertEquals(2.8, site.get("lowestOnSlopeDeg").asDouble(), 1e-6);
        assertEquals(15.63, site.get("eyeHeightOverThresholdM").asDouble(), 1e-6);
        assertEquals(9, site.get("wheelClearanceM").asDouble(), 1e-6);
        assertEquals(List.of("id", "bar", "alongM", "rightM", "heightM", "settingDeg"), names(site.get("units").get(0)));
        JsonNode surface = site.get("obstacleSurface");
        assertEquals(1.93, surface.get("slopeDeg").asDouble(), 1e-6);
        assertEquals(-60, surface.get("startAlongM").asDouble());
        assertEquals(0, surface.get("startHeightM").asDouble());
        assertEquals(300, surface.get("innerEdgeM").asDouble());
        assertEquals(15, surface.get("divergencePercent").asDouble());
        assertEquals(15000, surface.get("lengthM").asDouble());
        JsonNode citation = site.get("citations").get(0);
        assertTrue(names(citation).containsAll(List.of("value", "source", "clause", "provenance")));
        assertEquals(237.79, Words.line(ROW + " --clearance minimum").json().get("distanceM").asDouble(), 0.005);
        assertEquals(237.79, Words.line(ROW + " --clearance 5").json().get("distanceM").asDouble(), 0.005);
    }

    @Test
    void clearanceUnderTheDesiredOnePrintsItsNote() {
        assertTrue(Words.line(ROW + " --clearance minimum").json().get("notes").toString().contains("aeronautical study"));
        assertTrue(Words.line(ROW + " --clearance 7").json().get("notes").toString().contains("less than the desired"));
    }

    /** Feet are exact: 50 ft at 2 deg 50' gives 1010.28 ft, 150 ft wide with 50 ft to the edge gives 125 ft. */
    @Test
    void takesFeetInEveryLengthOption() {
        JsonNode site = Words.line("site --json --family four-unit-row --rule-set faa --slope-deg 3 --runway-width-m 150ft --code 4"
                + " --approach visual --eye-height-m 50ft").json();
        assertEquals(1010.28, site.get("distanceM").asDouble() / 0.3048, 0.005);
        assertEquals(-125, site.get("units").get(0).get("rightM").asDouble() / 0.3048, 1e-6);
        assertTrue(site.get("notes").toString().contains("954.1 ft"));
    }

    @Test
    void sameInputGivesTheSameBytes() {
        assertEquals(Words.line(ROW).out(), Words.line(ROW).out());
    }

    /** Common practice of the trade: from too high to too low 4 white, 3 white 1 red, 2 and 2, 1 white 3 red, 4 red. */
    @ParameterizedTest
    @CsvSource({"3.6, WWWW, well-above", "3.3, RWWW, above", "3.0, RRWW, on-slope", "2.7, RRRW, below", "2.4, RRRR, well-below"})
    void signalReadsTheRow(double elevationDeg, String pattern, String meaning) {
        double height = 2000 * Math.tan(Math.toRadians(elevationDeg));
        JsonNode signal = Words.line("signal --json --family four-unit-row --rule-set icao:5th --slope-deg 3 --distance-m 300 "
                + "--runway-width-m 45"
                + " --along-m -1700 --height-m " + height).json();
        StringBuilder seen = new StringBuilder();
        signal.get("seen").forEach(unit -> seen.append(Character.toUpperCase(unit.get("colour").asText().charAt(0))));
        assertEquals(pattern, seen.toString());
        assertEquals(meaning, signal.get("meaning").asText());
        assertEquals(elevationDeg, signal.get("elevationDeg").asDouble(), 1e-6);
        assertEquals("steady", signal.get("seen").get(0).get("state").asText());
    }

    /** Bars at 600 and 1300 ft set to 2.5 and 3.0 degrees, 1000 ft out: on path from 69.86 to 120.54 ft. */
    @ParameterizedTest
    @CsvSource({"69.8, red, red, below", "69.9, white, red, on-slope", "120.5, white, red, on-slope", "120.6, white, white, above"})
    void signalReadsGivenBars(String feet, String near, String far, String meaning) {
        JsonNode signal = Words.line("signal --json --by-bar --family two-bar --rule-set faa --bar-distances-m 600ft,1300ft "
                + "--bar-settings-deg 2.5,3.0"
                + " --along-m -1000ft --height-m " + feet + "ft").json();
        assertEquals("near", signal.get("seen").get(0).get("id").asText());
        assertEquals(near, signal.get("seen").get(0).get("colour").asText());
        assertEquals(far, signal.get("seen").get(1).get("colour").asText());
        assertEquals(meaning, signal.get("meaning").asText());
    }

    @Test
    void signalHasOneMeaningForEachPath() {
        JsonNode signal = Words.line("signal --json --family three-bar --rule-set faa --bar-distances-m 200,413,626 --bar-settings-deg "
                + "2.75,3,3.25"
                + " --along-m -2000 --height-m 120").json();
        assertEquals(List.of("lower", "upper"), names(signal.get("meaning")));
    }

    @Test
    void readsAnAidOfAFileAsItStands() {
        JsonNode signal = Words.run("signal", Words.demo("harrow-vale/harrow-vale.slopewright").toString(), "--aid", "PAPI 09", "--json",
                "--along-m",
                "-3000", "--height-m", "174").json();
        assertEquals("on-slope", signal.get("meaning").asText());
        assertEquals(4, signal.get("seen").size());
    }

    @Test
    void solvesOnARunwayEndAndAHelipadOfAFile() {
        String demo = Words.demo("harrow-vale/harrow-vale.slopewright").toString();
        JsonNode end = Words.run("site", demo, "--end", "27", "--family", "four-unit-row", "--json").json();
        assertEquals(3.5, end.get("slopeDeg").asDouble());
        assertEquals(15.6, end.get("eyeHeightOverThresholdM").asDouble(), 1e-6);
        JsonNode pad = Words.run("site", demo, "--helipad", "North pad", "--family", "heliport-sector", "--slope-deg", "6", "--json")
                .json();
        assertEquals((3.8 - 0.5) / Math.tan(Math.toRadians(6)), pad.get("distanceM").asDouble(), 1e-6, "the lens stands 0.5 m high");
        assertTrue(pad.get("notes").toString().contains("0.50 m above the ground"), pad.get("notes").toString());
        JsonNode flat = Words.run("site", demo, "--helipad", "North pad", "--family", "heliport-sector", "--slope-deg", "6",
                "--lens-above-ground-m", "0", "--json").json();
        assertEquals(3.8 / Math.tan(Math.toRadians(6)), flat.get("distanceM").asDouble(), 1e-6);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "site | --family is missing",
        "site --family lantern | --family: there is no family 'lantern'; known are four-unit-row (PAPI), two-unit-row (APAPI)",
        "site --family two-bar --rule-set icao:5th --slope-deg 3 | does not cover",
        "site --family four-unit-row --rule-set moon | there is no rule set 'moon'",
        "site --family four-unit-row --slope-deg 3 --runway-width-m 45 --code 4 | eye-to-wheel-m",
        "site --family four-unit-row --eye-to-wheel-m 5 --runway-width-m 45 --code 4 | slope-deg",
        "site --family four-unit-row --slope-deg 3 --eye-to-wheel-m 5 --code 4 | runway-width-m",
        "site --family four-unit-row --slope-deg three | 'three' is not a number",
        "site --family four-unit-row --slope-deg 3 --code 5 | a code number is 1, 2, 3 or 4",
        "site --family four-unit-row --slope-deg 3 --runway-width-m 45 --eye-to-wheel-m 15 --code 4 | outside the table",
        "site --family four-unit-row --slope-deg 3 --runway-width-m 45 --eye-to-wheel-m 5 --lens-height-m 1 --ground-slope-percent 1 | "
                + "exclude each other",
        "site --family heliport-sector --slope-deg 6 | for helipads",
        "site --nonsense | Unknown option",
        "signal --family four-unit-row --slope-deg 3 --distance-m 300 --along-m -2000 | --height-m",
        "nonsense | nonsense",
    })
    void saysInOneLineWhatIsWrong(String line, String reason) {
        Words words = Words.line(line);
        assertEquals(2, words.code(), words.err());
        assertEquals("", words.out());
        assertTrue(words.err().contains(reason), words.err());
        assertEquals(1, words.err().strip().lines().count(), words.err());
    }

    /** The cautions end the help of the program, once, and not that of each command. */
    @Test
    void theCautionsStandOnceUnderTheHelp() {
        String caution = "Never set up or switch on an indicator";
        for (String command : Arrays.asList("check", "site", "signal", "compare", "surface", "families", "rules", "rule-sets")) {
            Words help = Words.run(command, "--help");
            assertEquals(0, help.code(), command);
            assertFalse(help.out().replaceAll("\\s+", " ").contains(caution), command);
        }
        assertEquals(2, Words.run("--help").out().replaceAll("\\s+", " ").split(caution, -1).length);
        assertEquals(2, Words.run().code());
    }

    /** Both descriptions are published (AIM 2-1-2 e; pulse-light specification with 2.25 a second) and exclude each other. */
    @Test
    void theFormOfPulsesIsChosenAndNamed() {
        String site = "site --json --family pulsating --rule-set faa --slope-deg 3 --runway-width-m 45 --eye-height-m 15 --approach visual";
        assertTrue(Words.line(site).json().get("notes").toString().contains("their rate rises"));
        assertTrue(Words.line(site + " --pulse-form length").json().get("notes").toString().contains("2.25 Hz"));
        assertEquals(2, Words.line(site + " --pulse-form colour").code());
    }
}
