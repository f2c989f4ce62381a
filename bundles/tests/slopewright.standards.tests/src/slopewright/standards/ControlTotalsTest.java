package slopewright.standards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;

/** The sum of a table, by which a person who compared it confirms it, against the sum of the printed numbers made by hand. */
class ControlTotalsTest {

    private static double total(String rules, String key) {
        return FreshRuleSets.find(rules).orElseThrow().confirmable(key).orElseThrow();
    }

    /** Annex 14 Vol I Table 5-2: edges 0 3 3 5 5 8 8 14, minimum 3 4 5 6, 1.5 for light aeroplanes; desired 6 9 9 9. */
    @Test
    void wheelClearances() {
        assertEquals(46 + 18 + 1.5, total("icao:5th", "table.wheel-clearance"), 1e-9);
        assertEquals(33, total("icao:5th", "table.wheel-clearance-desired"), 1e-9);
    }

    /** Table 5-1: edges 0 800 800 1200 1200 2400 2400, distances 150 250 300 400. */
    @Test
    void aimingPoints() {
        assertEquals(8800 + 1100, total("icao:5th", "table.aiming-point"), 1e-9);
    }

    /** Vol II Table 5-1: 3 and 60 m, 10 and 15 %, 2500 m twice, 0.57, 0.9 and 0.65 degrees twice. */
    @Test
    void heliportSurfaces() {
        assertEquals(63 + 25 + 5000 + 2 * (0.57 + 0.9 + 0.65), total("icao:5th", "table.heliport-surface"), 1e-9);
    }

    /**
     * Table 5-3: codes 1 to 4 twice; inner edges 60 80 150 150 150 150 300 300; starts 30 and seven times 60; 10 % four times, 15 % four
     * times; lengths 7500 7500 15000 15000 twice; of the T form 150 and 15000 at code 2, twice; slopes 1.9 six, 0.57 seven, 0.9 four times.
     * What the table says of the T form holds for the whole one and the abbreviated one, and counts for each.
     */
    @Test
    void runwaySurfaces() {
        double slopes = 2 * 6 * 1.9 + 7 * 0.57 + 4 * 0.9;
        assertEquals(20 + 1340 + 450 + 100 + 90_000 + 2 * 2 * 15_150 + slopes, total("icao:5th", "table.surface"), 1e-9);
    }

    @Test
    void aTableThatIsNotThereHasNoTotal() {
        RuleSet guide = FreshRuleSets.find("easa").orElseThrow();
        for (String key : List.of("table.crossing-height", "table.heliport-surface", "table.fig-0", "nobody")) {
            assertEquals(OptionalDouble.empty(), guide.confirmable(key), key);
            assertTrue(guide.tableCitation(key).isEmpty(), key);
        }
    }
}
