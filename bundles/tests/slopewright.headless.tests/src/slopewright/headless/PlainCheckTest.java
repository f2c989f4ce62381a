package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A check whose words are read without the library says and answers what one says that is read with it. */
class PlainCheckTest {

    private static final String GOOD = Words.demo("harrow-vale/harrow-vale.slopewright").toString();
    private static final String FAULTY = Words.demo("harrow-vale-faults/harrow-vale-faults.slopewright").toString();
    private static final String MISSING = Words.demo("harrow-vale/missing.slopewright").toString();

    private static String[] words(String line) {
        return line.replace("GOOD", GOOD).replace("FAULTY", FAULTY).replace("MISSING", MISSING).split(" ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"check GOOD", "check FAULTY", "check GOOD FAULTY", "check --all GOOD", "check FAULTY --json",
        "check --csv GOOD FAULTY", "check FAULTY --junit", "check MISSING", "check MISSING GOOD --json", "check --json --csv GOOD"})
    void saysTheSameWithTheLibrary(String line) {
        Words plain = Words.run(words(line));
        Words parsed = Words.run(Stream.concat(Stream.of(words(line)), Stream.of("--fail-on", "warning", "--language", "en"))
                .toArray(String[]::new));
        assertEquals(parsed.code(), plain.code(), plain.err());
        assertEquals(parsed.out(), plain.out());
        assertEquals(parsed.err(), plain.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "check --json", "check GOOD --json --json", "check GOOD --nonsense", "check -x GOOD",
        "check GOOD --json=yes"})
    void theLibrarySaysWhatIsWrongWithWords(String line) {
        Words said = Words.run(words(line));
        assertEquals(2, said.code(), said.out());
        assertTrue(said.err().contains("Try 'slopewright check --help'"), said.err());
        assertEquals("", said.out());
    }

    @Test
    void helpAndOptionsWithAValueAreNoFiles() {
        assertTrue(Words.run("check", "--help").out().contains("--fail-on"));
        assertNotEquals(Words.run("check", FAULTY).out(), Words.run("check", FAULTY, "--language", "de").out());
    }
}
