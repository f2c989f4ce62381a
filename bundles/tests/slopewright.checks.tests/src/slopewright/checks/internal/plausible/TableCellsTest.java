package slopewright.checks.internal.plausible;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.standards.Citation;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** Every cell of every printed table is named by what it says, with its number as it is printed. */
class TableCellsTest {

    private static Map<String, Double> cells(String ruleSet) {
        return TableCells.of(rules(ruleSet), citation -> true);
    }

    private static RuleSet rules(String name) {
        return RuleSets.find(name).orElseThrow();
    }

    /** Annex 14 Vol I Table 5-2: below 3, 5, 8 and 14 m of eye-to-wheel height 6, 9, 9 and 9 m desired and 3, 4, 5 and 6 m at least. */
    @ParameterizedTest
    @CsvSource({"0, 6, 3", "2, 6, 3", "3, 9, 4", "4, 9, 4", "5, 9, 5", "7, 9, 5", "8, 9, 6", "13, 9, 6"})
    void clearances(int heightM, double desiredM, double minimumM) {
        Map<String, Double> cells = cells("icao:5th");
        assertEquals(desiredM, cells.get("wheel-clearance " + heightM + " m desired-m"));
        assertEquals(minimumM, cells.get("wheel-clearance " + heightM + " m minimum-m"));
        assertNull(cells.get("wheel-clearance 14 m minimum-m"), "the table ends at 14 m");
    }

    /** Note e of the table: 1.5 m for light aeroplanes, in the lowest group alone. */
    @Test
    void lightAeroplanes() {
        Map<String, Double> cells = cells("icao:5th");
        assertEquals(Set.of("wheel-clearance 0 m light-m", "wheel-clearance 1 m light-m", "wheel-clearance 2 m light-m"),
                cells.keySet().stream().filter(name -> name.endsWith("light-m")).collect(Collectors.toSet()));
        assertEquals(1.5, cells.get("wheel-clearance 2 m light-m"));
    }

    /** Annex 14 Vol I Table 5-3, whole: inner edge, start, divergence and length, and the slopes of the families that it prints. */
    @ParameterizedTest
    @CsvSource({"visual, 1, 60, 30, 10, 7500, , 0.9, ", "visual, 2, 80, 60, 10, 7500, 0.57, 0.9, 1.9",
        "visual, 3, 150, 60, 10, 15000, 0.57, , 1.9", "visual, 4, 150, 60, 10, 15000, 0.57, , 1.9",
        "instrument, 1, 150, 60, 15, 7500, 0.57, 0.9, ", "instrument, 2, 150, 60, 15, 7500, 0.57, 0.9, 1.9",
        "instrument, 3, 300, 60, 15, 15000, 0.57, , 1.9", "instrument, 4, 300, 60, 15, 15000, 0.57, , 1.9"})
    void surfaces(String approach, int code, double innerEdgeM, double startM, double divergencePercent, double lengthM, Double four,
            Double two, Double tForm) {
        Map<String, Double> cells = cells("icao:5th");
        String name = "surface " + approach + " " + code + " ";
        assertEquals(innerEdgeM, cells.get(name + "inner-edge-m"));
        assertEquals(startM, cells.get(name + "start-m"));
        assertEquals(divergencePercent, cells.get(name + "divergence-percent"));
        assertEquals(lengthM, cells.get(name + "length-m"));
        assertEquals(four, cells.get(name + "four-unit-row BELOW_LOWEST_SETTING slope-deg"));
        assertEquals(two, cells.get(name + "two-unit-row BELOW_LOWEST_SETTING slope-deg"));
        assertEquals(tForm, cells.get(name + "t-form FIXED slope-deg"));
        assertEquals(code == 2 ? 150.0 : null, cells.get(name + "t-form inner-edge-m"), "its own for code number 2");
        assertEquals(code == 2 ? 15000.0 : null, cells.get(name + "t-form length-m"), "its own for code number 2");
    }

    /** Annex 14 Vol II Table 5-1. */
    @ParameterizedTest
    @CsvSource({"visual, 3, 10", "non-precision, 60, 15"})
    void surfacesAtHeliports(String approach, double startM, double divergencePercent) {
        Map<String, Double> cells = cells("icao:5th");
        String name = "heliport-surface " + approach + " ";
        assertEquals(startM, cells.get(name + "start-m"));
        assertEquals(divergencePercent, cells.get(name + "divergence-percent"));
        assertEquals(2500, cells.get(name + "length-m"));
        assertEquals(0.57, cells.get(name + "four-unit-row below-deg"));
        assertEquals(0.9, cells.get(name + "two-unit-row below-deg"));
        assertEquals(0.65, cells.get(name + "heliport-sector below-deg"));
    }

    /** US height groups: cockpit to wheel and threshold crossing height with its tolerances, feet. */
    @ParameterizedTest
    @CsvSource({"1, 10, 40, 5, 20", "2, 15, 45, 5, 20", "3, 20, 50, 5, 15", "4, 25, 75, 5, 15"})
    void crossingHeights(int group, double cockpitToWheelFt, double heightFt, double aboveFt, double belowFt) {
        Map<String, Double> cells = cells("faa:2010");
        String name = "crossing-height " + group + " ";
        assertEquals(cockpitToWheelFt, cells.get(name + "cockpit-to-wheel-ft"));
        assertEquals(heightFt, cells.get(name + "height-ft"));
        assertEquals(aboveFt, cells.get(name + "above-ft"));
        assertEquals(belowFt, cells.get(name + "below-ft"));
    }

    /** Annex 14 Vol I Table 5-1: 150, 250, 300 and 400 m for less than 800, 1200 and 2400 m, and more. */
    @ParameterizedTest
    @CsvSource({"400, 150", "1000, 250", "1800, 300", "3000, 400"})
    void aimingPoints(int landingM, double distanceM) {
        assertEquals(distanceM, cells("icao:5th").get("aiming-point " + landingM + " m distance-m"));
    }

    /** Red of a unit within 2 degrees (Japan, article 117): 15 000 cd of four, 5000 cd of two; nothing is printed beyond. */
    @Test
    void intensities() {
        Map<String, Double> cells = cells("icao:5th");
        for (String at : List.of("0 0", "2 0", "0 2")) {
            assertEquals(15_000, cells.get("light four-unit-row red ANY " + at + " cd"), at);
            assertEquals(5000, cells.get("light two-unit-row red ANY " + at + " cd"), at);
        }
        assertNull(cells.get("light four-unit-row red ANY 4 0 cd"));
        assertNull(cells.get("light four-unit-row red ANY 0 3 cd"));
    }

    /** What is not wanted is left out, table by table. */
    @Test
    void onlyWhatIsWanted() {
        for (String ruleSet : List.of("icao:5th", "faa:2010")) {
            assertEquals(Map.of(), TableCells.of(rules(ruleSet), citation -> false), ruleSet);
        }
        Map<String, Predicate<Citation>> tables = Map.of("wheel-clearance", clause("Table 5-2"), "surface", clause("Table 5-3"),
                "heliport-surface", clause("Vol II Table 5-1"), "aiming-point", clause("Table 5-1"));
        tables.forEach((name, wanted) -> {
            Map<String, Double> cells = TableCells.of(rules("icao:5th"), wanted);
            assertFalse(cells.isEmpty(), name);
            assertEquals(Set.of(name), cells.keySet().stream().map(cell -> cell.substring(0, cell.indexOf(' ')))
                    .collect(Collectors.toSet()));
        });
    }

    private static Predicate<Citation> clause(String clause) {
        return citation -> citation.clause().english().equals(clause);
    }
}
