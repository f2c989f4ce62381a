package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static slopewright.testkit.HandWorkedSite.DISTANCE_M;
import static slopewright.testkit.HandWorkedSite.GOVERNING;
import static slopewright.testkit.HandWorkedSite.MARGIN_M;
import static slopewright.testkit.HandWorkedSite.MAST_MARGIN_M;
import static slopewright.testkit.HandWorkedSite.MEHT_M;
import static slopewright.testkit.HandWorkedSite.OWN_RULES_DISTANCE_M;
import static slopewright.testkit.HandWorkedSite.OWN_RULES_GOVERNING;
import static slopewright.testkit.HandWorkedSite.OWN_RULES_MARGIN_M;
import static slopewright.testkit.HandWorkedSite.OWN_RULES_MEHT_M;
import static slopewright.testkit.HandWorkedSite.OWN_RULES_ROW;
import static slopewright.testkit.HandWorkedSite.PORTABLE;
import static slopewright.testkit.HandWorkedSite.PORTABLE_DISTANCE_M;
import static slopewright.testkit.HandWorkedSite.PORTABLE_MARGIN_M;
import static slopewright.testkit.HandWorkedSite.ROW;
import static slopewright.testkit.HandWorkedSite.SIGHT_LINE_MARGIN_M;
import static slopewright.testkit.HandWorkedSite.TILTED_SIGHT_LINE_MARGIN_M;
import static slopewright.testkit.HandWorkedSite.WHEEL_CLEARANCE_M;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

import slopewright.testkit.HandWorkedSite;

/**
 * One project, with survey blocks in it and aids under a rule set of their own, read through every door of the command line: each figure is
 * the one that {@link HandWorkedSite} works out on paper from the clauses.
 */
class EveryDoorTest {
    private static final double DIGIT_M = 0.0006;

    @TempDir
    private Path folder;
    private String project;

    @BeforeEach
    void writeTheSite() {
        project = HandWorkedSite.write(folder).toString();
    }

    private static String metres(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }

    private static String plain(String markup) {
        return markup.replaceAll("<style>(?s:.*?)</style>", "").replaceAll("<[^>]*>", "\n").replaceAll("\\s+", " ");
    }

    private String written(String name, String... words) throws IOException {
        Path file = folder.resolve(name);
        String[] all = new String[words.length + 3];
        all[0] = words[0];
        all[1] = project;
        System.arraycopy(words, 1, all, 2, words.length - 1);
        all[words.length + 1] = "-o";
        all[words.length + 2] = file.toString();
        Words run = Words.run(all);
        assertTrue(Files.exists(file), run.err());
        return Files.readString(file);
    }

    private JsonNode outcome(String rule, String element) {
        List<JsonNode> found = StreamSupport.stream(Words.run("check", project, "--json").project().get("outcomes").spliterator(), false)
                .filter(outcome -> outcome.get("rule").asText().equals(rule) && outcome.get("element").asText().equals(element)).toList();
        assertEquals(1, found.size(), rule + " " + element);
        return found.get(0);
    }

    /** The check, as JSON: margin, MEHT and wheels of each aid, and no verdict that the numbers do not bear. */
    @ParameterizedTest
    @CsvSource({"OBS-01,approach-aid-1,margin," + MARGIN_M, "OBS-01,obstacle-1,margin," + MAST_MARGIN_M,
            "OBS-01,approach-aid-2,margin," + OWN_RULES_MARGIN_M, "OBS-01,approach-aid-3,margin," + PORTABLE_MARGIN_M,
            "EYE-01,approach-aid-1,value," + MEHT_M, "EYE-01,approach-aid-2,value," + OWN_RULES_MEHT_M,
            "WHEEL-01,approach-aid-1,value," + WHEEL_CLEARANCE_M, "WHEEL-02,approach-aid-1,value," + WHEEL_CLEARANCE_M,
            "DIST-01,approach-aid-1,value,0", "DIST-01,approach-aid-2,value,0"})
    void theCheck(String rule, String element, String field, double expected) {
        JsonNode outcome = outcome(rule, element);
        assertEquals(expected, outcome.get(field).asDouble(), 0.001, outcome.toString());
        assertFalse(outcome.get("verdict").asText().equals("not met"), outcome.toString());
    }

    @Test
    void theCheckAsText() {
        String text = Words.run("check", project, "--all").out();
        for (String expected : List.of("the governing one, " + GOVERNING + ", stands " + metres(MARGIN_M) + " m below",
                "the governing one, " + OWN_RULES_GOVERNING + ", stands " + metres(OWN_RULES_MARGIN_M) + " m below",
                "It stands " + metres(DISTANCE_M) + " m from the threshold; " + metres(DISTANCE_M) + " m are solved",
                "It stands " + metres(OWN_RULES_DISTANCE_M) + " m from the threshold; " + metres(OWN_RULES_DISTANCE_M) + " m are solved",
                "(MEHT) is " + metres(MEHT_M) + " m", "(MEHT) is " + metres(OWN_RULES_MEHT_M) + " m",
                "clears the threshold by " + metres(WHEEL_CLEARANCE_M) + " m")) {
            assertTrue(text.contains(expected), expected + " is not in " + text);
        }
    }

    /** A siting of its own and the comparison start from the same numbers; what stands is said beside what is proposed. */
    @Test
    void theSitingAndTheComparison() {
        JsonNode sited = Words.run("site", project, "--family", "four-unit-row", "--end", "36", "--json").json();
        assertEquals(DISTANCE_M, sited.get("distanceM").asDouble(), 0.0011);
        assertEquals(MEHT_M, sited.get("eyeHeightOverThresholdM").asDouble(), DIGIT_M);
        assertEquals(WHEEL_CLEARANCE_M, sited.get("wheelClearanceM").asDouble(), DIGIT_M);
        JsonNode families = Words.run("compare", project, "--end", "36", "--json").json().get("families");
        JsonNode row = StreamSupport.stream(families.spliterator(), false)
                .filter(family -> family.get("family").asText().equals("four-unit-row")).findFirst().orElseThrow();
        assertEquals(GOVERNING, row.get("governingObstacle").asText());
        assertEquals("to-clear-up", row.get("fit").asText());
        for (JsonNode side : List.of(row, row.get("standing"))) {
            assertEquals(DISTANCE_M, side.get("distanceM").asDouble(), 0.0011);
            assertEquals(MEHT_M, side.get("eyeHeightOverThresholdM").asDouble(), 0.001);
            assertEquals(WHEEL_CLEARANCE_M, side.get("wheelClearanceM").asDouble(), 0.001);
            assertEquals(MARGIN_M, side.get("obstacleMarginM").asDouble(), 0.001);
        }
    }

    /** The points that stand there, compared with the surface of the aid by another command. */
    @Test
    void thePointsAgainstTheSurface() throws IOException {
        Path points = folder.resolve("points.csv");
        Files.writeString(points, "id,alongM,rightM,heightM\nA,-2000,0,60\n");
        JsonNode found = Words.run("surface", project, "--aid", ROW, "--points", points.toString(), "--json").json();
        double withoutAccuracy = 1940 * Math.tan(Math.toRadians(1.93)) - 60;
        assertEquals(-withoutAccuracy, found.get("worst").get("excessM").asDouble(), 0.001, found.toString());
    }

    /** The report says one margin, one obstacle, one distance and one eye height of each aid wherever it says any. */
    @Test
    void theReport() throws IOException {
        String text = plain(written("report.html", "report", "--date", "2026-06-01"));
        Matcher governing = Pattern.compile("(\\d+\\.\\d+) m, governed by ((?:South|North) survey, point \\d)"
                + "|[Gg]overning(?: one)?[:,] ((?:South|North) survey, point \\d),(?: its survey accuracy added,)?(?: stays| stands)? "
                + "(\\d+\\.\\d+) m below").matcher(text);
        Set<String> south = new HashSet<>();
        Set<String> north = new HashSet<>();
        int count = 0;
        while (governing.find()) {
            String point = governing.group(2) == null ? governing.group(3) : governing.group(2);
            String margin = governing.group(1) == null ? governing.group(4) : governing.group(1);
            (point.startsWith("South") ? south : north).add(point + " " + margin);
            count++;
        }
        assertEquals(Set.of(GOVERNING + " " + metres(MARGIN_M)), south);
        assertEquals(Set.of(OWN_RULES_GOVERNING + " " + metres(OWN_RULES_MARGIN_M)), north);
        assertTrue(count >= 11, "said on the first page, in siting, obstacles and drawings of both: " + count);
        Matcher solved = Pattern.compile("the rule set lays it out at (\\d+\\.\\d{3}) m").matcher(text);
        Set<String> distances = solved.results().map(found -> metres(Double.parseDouble(found.group(1)))).collect(Collectors.toSet());
        assertTrue(distances.containsAll(Set.of(metres(DISTANCE_M), metres(OWN_RULES_DISTANCE_M))), distances.toString());
        for (String expected : List.of("= 0.60 m + " + metres(DISTANCE_M) + " m × tan 2°48' = " + metres(MEHT_M) + " m",
                "= " + metres(MEHT_M) + " m − 6.00 m = " + metres(WHEEL_CLEARANCE_M) + " m",
                "Chosen: PAPI. Whether it fits here, laid out afresh, is to be cleared up. ",
                "Row, wing bar or nearest bar " + metres(DISTANCE_M) + " m from the threshold")) {
            assertTrue(text.contains(expected), expected);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan", "section", "surface"})
    void theDrawings(String view) throws IOException {
        String text = plain(written(view + ".svg", "draw", "--aid", ROW, "--view", view, "--date", "2026-06-01"));
        assertTrue(text.contains("Governing: " + GOVERNING + ", its survey accuracy added, stays " + metres(MARGIN_M) + " m below"), text);
        assertEquals("section".equals(view), text.contains("MEHT " + metres(MEHT_M) + " m"), text);
        assertEquals("section".equals(view), text.contains("wheels " + metres(WHEEL_CLEARANCE_M) + " m"), text);
    }

    /** Map, setting-out and published data: the same place, settings and heights. */
    @Test
    void theMapAndTheSchedules() throws IOException {
        JsonNode map = new ObjectMapper().readTree(written("map.geojson", "export"));
        int surfaces = 0;
        for (JsonNode feature : map.get("features")) {
            JsonNode of = feature.get("properties");
            if (of.get("kind").asText().equals("surface") && of.get("aidName").asText().equals(ROW)) {
                surfaces++;
                assertEquals(DISTANCE_M, of.get("distanceM").asDouble(), DIGIT_M);
                assertEquals(MEHT_M, of.get("mehtM").asDouble(), DIGIT_M);
                assertEquals(MARGIN_M, of.get("marginM").asDouble(), DIGIT_M);
                assertEquals(GOVERNING, of.get("governing").asText());
            }
        }
        assertEquals(1, surfaces);
        String units = written("units.csv", "schedule", "--sheet", "setting-out", "--date", "2026-06-01");
        for (String unit : List.of("D,294.430,-37.500,100.600", "C,294.430,-46.500,100.600", "B,294.430,-55.500,100.600",
                "A,294.430,-64.500,100.600")) {
            assertTrue(units.contains("runway 36," + ROW + "," + unit), units);
        }
        for (String setting : List.of("3°30'", "3°10'", "2°50'", "2°30'")) {
            assertTrue(units.lines().anyMatch(line -> line.contains("," + ROW + ",") && line.contains("," + setting + ",")), setting);
        }
        String published = written("published.csv", "schedule", "--sheet", "publish", "--date", "2026-06-01");
        assertTrue(published.contains("runway 36," + ROW + ",PAPI,left,3.000,3°00',15.00,49.2,"), published);
        assertTrue(published.contains("runway 18," + OWN_RULES_ROW + ",PAPI,left,3.000,3°00',13.72,45.0,"), published);
    }

    @Test
    void theCommissioningSheetAndTheTolerances() throws IOException {
        String sheet = plain(written("sheet.html", "commission", "--aid", ROW, "--date", "2026-06-01"));
        assertTrue(sheet.contains(metres(DISTANCE_M) + " m (966.0 ft)") && sheet.contains(metres(MEHT_M) + " m (49.2 ft)"), sheet);
        JsonNode quantities = Words.run("tolerance", project, "--aid", ROW, "--json").json().get("quantities");
        List<Double> nominal = StreamSupport.stream(quantities.spliterator(), false)
                .map(quantity -> quantity.get("nominalM").asDouble()).toList();
        assertEquals(MEHT_M, nominal.get(0), DIGIT_M);
        assertEquals(WHEEL_CLEARANCE_M, nominal.get(1), DIGIT_M);
        assertEquals(MARGIN_M, nominal.get(2), DIGIT_M);
    }

    /** The set-up of the portable unit and its card have the same sight line, and neither is ready while a rule says no. */
    @Test
    void thePortableUnitAndItsCard() throws IOException {
        Words run = Words.run("portable", project, "--aid", PORTABLE, "--date", "2026-06-01", "--json");
        JsonNode found = run.json();
        assertEquals(PORTABLE_DISTANCE_M, found.get("distanceM").asDouble(), DIGIT_M);
        JsonNode line = found.get("sightLines").get(0);
        assertEquals(SIGHT_LINE_MARGIN_M, line.get("marginM").asDouble(), DIGIT_M);
        assertEquals(TILTED_SIGHT_LINE_MARGIN_M, line.get("lowestMarginM").asDouble(), DIGIT_M);
        assertFalse(found.get("ready").asBoolean(), "values are to be confirmed");
        assertEquals(1, run.code());
        String card = plain(written("card.html", "card", "--aid", PORTABLE, "--date", "2026-06-01"));
        assertTrue(card.contains("NOT FOR USE"), card);
        for (JsonNode blocker : found.get("blockers")) {
            assertTrue(card.contains(blocker.asText().replace(">", "&gt;")), blocker + " is not on " + card);
        }
        assertTrue(card.contains(metres(PORTABLE_DISTANCE_M) + " m past the hover point"), card);
        assertTrue(card.contains("lower edge of the red sector 2°00' " + metres(TILTED_SIGHT_LINE_MARGIN_M) + " m Pylon"), card);
    }
}
