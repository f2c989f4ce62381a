package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;

/** The comparison of families says what each needs to run. */
class ComparedNeedsTest {

    private static final String DEMO = Words.demo("harrow-vale/harrow-vale.slopewright").toString();

    private static JsonNode context(JsonNode compared, String family) {
        for (JsonNode entry : compared.get("families")) {
            if (entry.get("family").asText().equals(family)) {
                return entry.get("context");
            }
        }
        throw new AssertionError("no " + family);
    }

    /** The demo's battery has 55 Ah and feeds 4.2 A: 13.1 h. */
    @Test
    void jsonGivesLoadSupplyAndBattery() {
        JsonNode compared = Words.run("compare", DEMO, "--end", "runway-end-1", "--json").json();
        JsonNode row = context(compared, "four-unit-row");
        assertEquals(2400, row.get("loadW").asDouble(), 1e-9);
        assertEquals("series circuit 6.6 A", row.get("supply").asText());
        assertEquals(5, row.get("brightnessSteps").asInt());
        assertTrue(row.get("batteryHours").isNull());
        assertEquals(55 / 4.2, context(compared, "tri-colour").get("batteryHours").asDouble(), 1e-6);
        assertEquals(2, context(compared, "two-bar").get("leastUnits").asInt());
        assertTrue(context(compared, "two-bar").get("loadW").isNull());
    }

    @Test
    void tablesHaveACellForEachHeading() {
        List<String> lines = Words.run("compare", DEMO, "--end", "runway-end-1", "--csv").out().lines().toList();
        assertEquals(10, lines.size());
        int columns = lines.get(0).split(",", -1).length;
        lines.forEach(line -> assertTrue(line.split(",", -1).length >= columns, line));
        assertEquals("loadW", lines.get(0).split(",")[15]);
        assertTrue(Arrays.asList(lines.get(1).split(",", -1)).contains("2400.00"), lines.get(1));
        String text = Words.run("compare", DEMO, "--end", "runway-end-1").out();
        assertTrue(text.contains("What it needs") && text.contains("battery 24 V"), text);
    }
}
