package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is seen of the demo's portable unit beside its beam, which reaches 8 degrees to each side. It stands 26.722 m past the hover point,
 * its lens 0.5 m over the pad: 500 m out on its slope of 7.04 degrees the eye is 0.5 + 526.722 tan 7.04 = 65.55 m up.
 */
class SignalBeamTest {
    private static Words signal(double alongM, double rightM, String... more) {
        String[] words = {"signal", Words.demo("harrow-vale/harrow-vale.slopewright").toString(), "--aid", "approach-aid-4", "--along-m",
            String.valueOf(alongM), "--right-m", String.valueOf(rightM), "--height-m", "65.55"};
        String[] all = java.util.Arrays.copyOf(words, words.length + more.length);
        System.arraycopy(more, 0, all, words.length, more.length);
        return Words.run(all);
    }

    /** 526.722 tan 7.9 = 73.1 m to the side is in the beam, tan 8.1: 75.0 m is not, nor is tan 14: 131.3 m. */
    @ParameterizedTest
    @CsvSource({"0, on-slope, green, steady", "73.0, on-slope, green, steady", "-73.0, on-slope, green, steady", "75.0, outside, none, off",
            "-75.0, outside, none, off", "131.3, outside, none, off"})
    void besideTheBeamThereIsNoSignal(double rightM, String meaning, String colour, String state) {
        Words words = signal(-500, rightM, "--json");
        assertEquals(0, words.code(), words.err());
        JsonNode found = words.json();
        assertEquals(meaning, found.get("meaning").asText());
        assertEquals(colour, found.get("seen").get(0).get("colour").asText());
        assertEquals(state, found.get("seen").get(0).get("state").asText());
    }

    @Test
    void behindTheUnitThereIsNoSignalAndNoNumber() {
        JsonNode found = signal(100, 0, "--json").json();
        assertEquals("outside", found.get("meaning").asText());
        assertTrue(found.get("elevationDeg").isNull());
        Words text = signal(100, 0);
        assertTrue(text.out().contains("Meaning: outside"), text.out());
        assertTrue(text.out().contains("abeam or behind"), text.out());
        assertFalse(text.out().contains("NaN"), text.out());
    }
}
