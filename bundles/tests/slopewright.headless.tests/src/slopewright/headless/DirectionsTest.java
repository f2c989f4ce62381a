package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The documents and exit codes of {@code directions}. */
class DirectionsTest {
    private static final String SURVEY_ALL_ROUND = "allRound=\"true\"";

    @TempDir
    private Path folder;

    private static String demo() {
        return Words.demo("harrow-vale/harrow-vale.slopewright").toString();
    }

    @Test
    void theDemoHasClearDirections() {
        Words words = Words.run("directions", demo(), "--aid", "approach-aid-4", "--wind", "240/15", "--date", "2026-07-01", "--json");
        assertEquals(0, words.code(), words.err());
        JsonNode found = words.json();
        assertEquals(360, found.get("directions").size());
        JsonNode north = found.get("directions").get(0);
        // 15 cos 240° = −7.5: from behind; 15 sin 240° = −12.99: from the left
        assertEquals(-7.5, north.get("headwindKt").asDouble(), 1e-6);
        assertEquals(-12.9904, north.get("crosswindKt").asDouble(), 1e-4);
        // the demo's 80 kt are over the ground: 80 × 101.2686 × tan(slope)
        assertEquals(80 * 1852 / 0.3048 / 60 * Math.tan(Math.toRadians(north.get("slopeDeg").asDouble())),
                north.get("descentFtmin").asDouble(), 1e-6);
        // The lens is 0.5 m and the eye 3.8 m over the pad: 3.3 m / tan 7.25° = 25.94 m and / tan 7.5° = 25.07 m before the hover
        // point. A corner of the safety area, 36 m square, may lie 18 × 1.41421 = 25.46 m away.
        assertTrue(found.get("sectors").get(0).get("text").asText().matches("\\d{3}°( to \\d{3}°)? is clear from [0-9.]+° to 7°"));
        assertEquals(7.25, directionAt(found, 100).get("clearToDeg").asDouble(), 1e-9);
        Words text = Words.run("directions", demo(), "--helipad", "North pad", "--wind", "240/15", "--date", "2026-07-01");
        assertEquals(0, text.code());
        assertTrue(text.out().contains(found.get("sectors").get(0).get("text").asText()), text.out());
    }

    private static JsonNode directionAt(JsonNode found, int trueDeg) {
        return found.get("directions").get(trueDeg);
    }

    @Test
    void theTableHasARowADirectionOrASlope() {
        Words rows = Words.run("directions", demo(), "--aid", "approach-aid-4", "--step-deg", "1", "--date", "2026-07-01", "--csv");
        assertEquals(1 + 360, rows.out().lines().count());
        assertTrue(rows.out().startsWith("trueDeg,magneticDeg,state,clearFromDeg,clearToDeg,"),
                rows.out().lines().findFirst().orElseThrow());
        Words all = Words.run("directions", demo(), "--aid", "approach-aid-4", "--step-deg", "1", "--slopes", "--date", "2026-07-01",
                "--csv");
        assertEquals(1 + 360 * 12, all.out().lines().count(), "1° to 12° in whole degrees");
    }

    /** The survey names the approach towards 250° for 16 km and 4 km to a side: no more than that direction and its neighbours. */
    @Test
    void whatNobodySurveyedIsNotClear() throws IOException {
        Path file = folder.resolve("project.slopewright");
        String text = Files.readString(Path.of(demo())).replace(SURVEY_ALL_ROUND, "");
        Files.writeString(file, text.replaceAll("<surveyBlocks[^>]*/>", "").replaceAll("<backgroundImages.*?</backgroundImages>", ""));
        Words words = Words.run("directions", file.toString(), "--aid", "approach-aid-4", "--date", "2026-07-01", "--json");
        JsonNode directions = words.json().get("directions");
        assertTrue(directions.get(250).get("clearFromDeg").isNumber());
        assertTrue(directions.get(90).get("clearFromDeg").isNull());
        assertEquals("not-evaluated", directions.get(90).get("state").asText());
        Files.writeString(file, Files.readString(file).replaceAll("<obstacleSurveys[^>]*/>", ""));
        Words none = Words.run("directions", file.toString(), "--aid", "approach-aid-4", "--date", "2026-07-01");
        assertEquals(1, none.code(), "lines below the horizon are known to be blocked, all else is not evaluated");
        assertTrue(none.out().contains("no direction is clear"), none.out());
    }

    @Test
    void aPadWithoutAUnitGetsOneProposed() {
        Words words = Words.run("directions", demo(), "--helipad", "North pad", "--family", "heliport-sector", "--rule-set", "icao:9th",
                "--date", "2026-07-01", "--json");
        assertEquals(true, words.json().get("proposed").asBoolean());
        assertEquals("heliport-sector", words.json().get("family").asText());
        assertEquals(0, words.code(), words.out());
    }

    /** A mast 300 m due east at 30° closes landing due west, which leads over it. */
    @Test
    void whatIsSightedClosesItsDirection() {
        String out = folder.resolve("sighted.slopewright").toString();
        Words sighted = Words.run("sight", demo(), "--helipad", "North pad", "--name", "crane", "--bearing-deg", "90",
                "--distance-m", "300", "--angle-deg", "30", "--date", "2026-07-01", "-o", out);
        assertEquals(0, sighted.code(), sighted.err());
        assertTrue(sighted.out().contains("top 30.00° above the horizon by clinometer"), sighted.out());
        Words words = Words.run("directions", out, "--aid", "approach-aid-4", "--step-deg", "1", "--date", "2026-07-01", "--json");
        JsonNode west = words.json().get("directions").get(270);
        assertEquals("blocked", west.get("state").asText());
        assertEquals("crane", west.get("governing").asText());
        assertEquals(2, refused("--bearing-deg 90 --distance-m 300"), "neither height nor angle");
        assertEquals(2, refused("--bearing-deg 90 --distance-m 300 --height-m 3 --sag-m 1"), "a sag without a line");
        assertEquals(2, refused("--bearing-deg 90 --distance-m 300 --height-m 3 --to-distance-m 9"), "a line without its bearing");
    }

    private int refused(String measured) {
        return Words.line("sight " + demo() + " --helipad helipad-1 --name crane " + measured + " -o " + folder.resolve("x.slopewright"))
                .code();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"--aid approach-aid-4 --helipad North | name either an approach aid",
        "--aid approach-aid-1 | landing directions all round are looked for at helipads alone", "--wind 240 --aid approach-aid-4 | 240/15",
        "--aid approach-aid-4 --family tri-colour | --family goes with --helipad", "--helipad nowhere | there is no helipad 'nowhere'",
        "--aid approach-aid-4 --speed-kt 60 --ground-speed-kt 70 | name either", "--aid approach-aid-4 --step-deg 0 | no range of slopes",
        "--aid approach-aid-4 --speed-kt -3 | zero"})
    void wordsThatDoNotFitAreRefused(String flags, String reason) {
        Words words = Words.line("directions " + demo() + " " + flags);
        assertEquals(2, words.code(), words.out());
        assertTrue(words.err().contains(reason), words.err());
    }
}
