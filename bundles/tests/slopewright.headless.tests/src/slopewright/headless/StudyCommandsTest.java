package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The documents and exit codes of {@code variation}, {@code portable} and {@code tolerance}, and the ranges of {@code compare}. */
class StudyCommandsTest {

    private static String demo() {
        return Words.demo("harrow-vale/harrow-vale.slopewright").toString();
    }

    /** A place of the published test values: 50 S, 103 W, 3 km on 2025.0: 27.96 degrees. */
    @Test
    void variationOfAPublishedPlace() {
        Words words = Words.line("variation --latitude -50 --longitude -103 --height-m 3000 --date 2025-01-01 --json");
        assertEquals(0, words.code(), words.err());
        assertEquals(27.96, words.json().get("variationDeg").asDouble(), 0.005);
        assertEquals("WMM2025", words.json().get("model").asText());
        assertEquals(2025, words.json().get("epoch").asDouble());
        assertEquals(2025, words.json().get("decimalYear").asDouble());
        assertEquals("secondary", words.json().get("provenance").asText());
        Words inFeet = Words.line("variation --latitude -50 --longitude -103 --height-m 9842.5197ft --date 2025-01-01 --json");
        assertEquals(words.json().get("variationDeg").asDouble(), inFeet.json().get("variationDeg").asDouble(), 1e-8);
        Words text = Words.line("variation --latitude -50 --longitude -103 --height-m 3000 --date 2025-01-01");
        assertTrue(text.out().startsWith("Magnetic variation 27.96° east on 2025-01-01"), text.out());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "--latitude 50 --longitude 10 --date 2030-01-01 | WMM2025 holds from 2025.0 up to but not including 2030.0",
        "--latitude 50 --longitude 10 --date 1.5.2026 | '1.5.2026' is no date",
                "--latitude 90 --longitude 10 --date 2026-01-01 | between the poles",
        "--latitude x --longitude 10 | 'x' is not a number", "--latitude 50 | Missing required option"})
    void variationNamesWhatItCanNotSay(String flags, String reason) {
        Words words = Words.line("variation " + flags);
        assertEquals(2, words.code());
        assertEquals("", words.out());
        assertTrue(words.err().contains(reason), words.err());
    }

    /** The demo's unit lands toward 250 degrees; 80 kt and 1000 ft/min make 7.04 degrees; 55 Ah at 4.2 A last 13.095 h. */
    @Test
    void portableTellsTheSetUp() {
        Words words = Words.run("portable", demo(), "--aid", "approach-aid-4", "--date", "2026-07-01", "--json");
        JsonNode found = words.json();
        assertEquals(7.04, found.get("descent").get("slopeDeg").asDouble(), 0.005);
        assertEquals("tangent", found.get("descent").get("form").asText());
        assertEquals("sine", found.get("descent").get("table").get("form").asText());
        assertFalse(found.get("descent").get("stillAir").asBoolean());
        double variation = -2.5 + 0.19 * 181 / 365;
        assertEquals(variation, found.get("azimuth").get("variationDeg").asDouble(), 1e-9, "entered, brought to the day");
        assertEquals(70, found.get("azimuth").get("beamTrueDeg").asDouble(), 1e-9);
        assertEquals(70 - variation, found.get("azimuth").get("beamMagneticDeg").asDouble(), 1e-9);
        assertEquals(55 / 4.2, found.get("battery").get("leastHours").asDouble(), 1e-9);
        assertEquals("entered", found.get("sectors").asText());
        assertFalse(found.get("sightLines").isEmpty());
        assertEquals(found.get("ready").asBoolean() ? 0 : 1, words.code());
        assertEquals(found.get("ready").asBoolean(), found.get("blockers").isEmpty());
        for (JsonNode citation : found.get("citations")) {
            assertFalse(citation.get("provenance").asText().isEmpty());
        }
        Words text = Words.run("portable", demo(), "--aid", "approach-aid-4", "--date", "2026-07-01");
        assertTrue(text.out().contains("70.0° true, 72.4° magnetic") && text.out().contains("tangent form"), text.out());
        assertEquals(words.out(), Words.run("portable", demo(), "--aid", "approach-aid-4", "--date", "2026-07-01", "--json").out());
    }

    /** The lowest of four settings and the surveyed top are what the margin hangs on; the eye height hangs on unit B. */
    @Test
    void toleranceTellsWhatGoesWrongByHowMuch() {
        String[] line = {"tolerance", demo(), "--aid", "PAPI 27", "--samples", "400", "--seed", "9", "--json"};
        Words words = Words.run(line);
        assertEquals(0, words.code(), words.err());
        JsonNode study = words.json();
        assertEquals(400, study.get("samples").asInt());
        assertEquals(9, study.get("seed").asInt());
        JsonNode eye = study.get("quantities").get(0);
        assertEquals("eyeHeightM", eye.get("quantity").asText());
        assertTrue(eye.get("lowM").asDouble() < eye.get("nominalM").asDouble()
                && eye.get("nominalM").asDouble() < eye.get("highM").asDouble());
        assertEquals(400, eye.get("trials").get("samples").asInt());
        assertEquals("surfaceMarginM", study.get("quantities").get(2).get("quantity").asText());
        assertEquals(words.out(), Words.run(line).out(), "the same seed gives the same bytes");
        Words text = Words.run("tolerance", demo(), "--aid", "PAPI 27", "--samples", "0", "--angle-minutes", "2");
        assertTrue(text.out().contains("The angle of unit B, wrong by 2.0', takes up to 0.16 m away"), text.out());
        assertFalse(text.out().contains("trials:"), "none were asked for");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"--aid nobody | there is no approach aid 'nobody'",
            "--aid approach-aid-1 --samples -1 | number of trials",
        "--aid approach-aid-1 --level-m -1 | tolerances must be zero or more", "--aid approach-aid-1 --rule-set none | none"})
    void toleranceNamesWhatItCanNotStudy(String flags, String reason) {
        String[] rest = flags.split(" ");
        String[] line = new String[rest.length + 2];
        line[0] = "tolerance";
        line[1] = demo();
        System.arraycopy(rest, 0, line, 2, rest.length);
        Words words = Words.run(line);
        assertEquals(2, words.code());
        assertTrue(words.err().contains(reason), words.err());
    }

    /** Published ranges stay; where a rule set has none they are estimated with the equipment's intensity, or a reason stands there. */
    @Test
    void compareSaysHowItsRangesWereHad() {
        for (JsonNode family : Words.run("compare", demo(), "--end", "27", "--json").json().get("families")) {
            if (!family.get("fits").asBoolean()) {
                continue;
            }
            String note = family.get("rangeNote").asText();
            boolean published = family.get("ruleSet").asText().equals("faa");
            assertEquals(published, note.startsWith("Ranges as published"), family.toString());
            if (family.get("family").asText().endsWith("unit-row")) {
                assertTrue(note.startsWith("Ranges estimated with 15000 cd and a visibility of 10000 m"), note);
                assertTrue(family.get("rangeNightM").asDouble() > family.get("rangeDayM").asDouble());
            }
            if (family.get("family").asText().startsWith("t-form")) {
                assertTrue(family.get("rangeDayM").isNull() && note.contains("No intensity is known"), note);
            }
        }
    }
}
