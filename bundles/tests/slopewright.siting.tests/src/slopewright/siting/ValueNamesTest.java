package slopewright.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.standards.Citation;
import slopewright.standards.CitedChoice;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleSets;

/** Values are called something that a reader understands. */
class ValueNamesTest {
    private static String name(Locale language, String key) {
        return MessageRenderer.of(language).render(Message.of("plain", ValueNames.of(key)));
    }

    @Test
    void everyValueAndTableHasAName() {
        List<String> unnamed = new ArrayList<>();
        RuleSets.all().forEach(rules -> Stream.of(rules.values().stream().map(CitedValue::key), rules.choices().stream()
                .map(CitedChoice::key), rules.tableCitations().stream().map(Citation::key)).flatMap(keys -> keys).forEach(key -> {
                    for (Locale language : List.of(Locale.ENGLISH, Locale.GERMAN)) {
                        if (name(language, key).equals(key)) {
                            unnamed.add(key + " in " + language);
                        }
                    }
                }));
        assertEquals(List.of(), unnamed.stream().distinct().toList());
    }

    private static String number(Locale language, String key, double value, String unit) {
        return MessageRenderer.of(language).render(Message.of("plain", ValueNames.number(key, value, unit)));
    }

    /** A number that is confirmed is shown with every digit: 8e-7 lx is no 0. */
    @Test
    void aNumberIsShownAsItIsHeldAgainstTheDocument() {
        assertEquals("0.0000008 lx", number(Locale.ENGLISH, "range.eye-illuminance-night-lx", 8e-7, "lx"));
        assertEquals("0,0000008 lx", number(Locale.GERMAN, "range.eye-illuminance-night-lx", 8e-7, "lx"));
        assertEquals("80000 cd", number(Locale.ENGLISH, "x", 80_000, "cd"));
        assertEquals("30′", number(Locale.ENGLISH, "four-unit-row.outer-offset-min", 30, "min"));
        assertEquals("level of the threshold", number(Locale.ENGLISH, "obstacle.surface-datum", 1, "choice"));
        assertEquals("nein", number(Locale.GERMAN, "four-unit-row.frangible", 2, "flag"));
        assertEquals("3", number(Locale.ENGLISH, "four-unit-row.frangible", 3, "flag"), "no word of that place");
        assertEquals("sum of all numbers 48.5", number(Locale.ENGLISH, "table.wheel-clearance", 48.5, ""));
    }

    @Test
    void aNameSaysTheFamilyAndWhat() {
        assertEquals("PAPI: Inner unit to the runway edge", name(Locale.ENGLISH, "four-unit-row.inner-unit-to-edge-m"));
        assertEquals("PAPI: Innere Einheit zur Pistenkante", name(Locale.GERMAN, "four-unit-row.inner-unit-to-edge-ft"));
        assertEquals("Threshold of contrast", name(Locale.ENGLISH, "range.contrast-threshold-percent"));
        assertEquals("four-unit-row.nothing-m", name(Locale.ENGLISH, "four-unit-row.nothing-m"));
    }
}
