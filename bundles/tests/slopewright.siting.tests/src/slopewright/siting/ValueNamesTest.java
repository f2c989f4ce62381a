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

    @Test
    void aNameSaysTheFamilyAndWhat() {
        assertEquals("PAPI: Inner unit to the runway edge", name(Locale.ENGLISH, "four-unit-row.inner-unit-to-edge-m"));
        assertEquals("PAPI: Innere Einheit zur Pistenkante", name(Locale.GERMAN, "four-unit-row.inner-unit-to-edge-ft"));
        assertEquals("Threshold of contrast", name(Locale.ENGLISH, "range.contrast-threshold-percent"));
        assertEquals("four-unit-row.nothing-m", name(Locale.ENGLISH, "four-unit-row.nothing-m"));
    }
}
