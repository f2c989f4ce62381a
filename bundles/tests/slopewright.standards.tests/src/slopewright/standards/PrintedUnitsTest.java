package slopewright.standards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers keep the digits of their source; lengths are read in metres by the exact factors of the international yard and nautical mile. */
class PrintedUnitsTest {
    private final RuleSet faa = FreshRuleSets.find("faa:2010").orElseThrow();

    @ParameterizedTest
    @CsvSource({"two-bar.bar-spacing-m, 700, ft, 213.36", "four-unit-row.level-difference-m, 1, in, 0.0254",
        "two-bar.surface-length-m, 4, NM, 7408", "tri-colour.surface-length-m, 4, mi, 6437.376"})
    void lengthsAreReadInMetres(String key, double printed, String unit, double metres) {
        CitedValue value = faa.value(key);
        assertEquals(printed, value.printed());
        assertEquals(unit, value.printedUnit());
        assertEquals(metres, value.value(), 1e-9);
        assertEquals("m", value.unit());
        assertEquals(printed, faa.confirmable(key).orElseThrow(), "a person confirms what is printed");
    }

    @Test
    void anOverrideIsInThePrintedUnit() {
        assertEquals(152.4, faa.withOverride("two-bar.bar-spacing-m", 500, "why").value("two-bar.bar-spacing-m").value(), 1e-9);
    }

    /** What is printed in round feet, inches or miles does not stand as metres. */
    @Test
    void noConvertedMetresAreLeft() {
        List<String> converted = FreshRuleSets.all().stream().flatMap(rules -> rules.values().stream())
                .filter(value -> value.printedUnit().equals("m") && value.value() > 0)
                .filter(value -> isRound(value.value() / 0.3048) && !isRound(value.value() * 10)).map(CitedValue::key).toList();
        assertTrue(converted.isEmpty(), converted.toString());
    }

    private static boolean isRound(double number) {
        return Math.abs(number - Math.rint(number)) < 1e-6;
    }
}
