package slopewright.standards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A book of values; every name in it is invented. */
class ValueBookTest {
    private static final ValueBook.Entry SIGNED = new ValueBook.Entry("icao:9th", "four-unit-row.boundary-allowance-min", 2, "min",
            "from-memory", 12, ValueBook.Decision.CONFIRMED, Optional.empty(), "", "Doc, with \"quotes\"", "5th", "8.3", "R. Tamsin",
            "2026-05-01", "J. Doe", "2026-05-02");

    @TempDir
    private Path folder;

    private ValueBook written(String text) throws IOException {
        Path file = folder.resolve("values.csv");
        Files.writeString(file, text);
        return ValueBook.read(file);
    }

    @Test
    void aBookIsReadAsItWasWritten() throws IOException {
        ValueBook book = new ValueBook(List.of(SIGNED, ValueBook.Entry.open("faa:2010", "table.crossing-height", 123.5, "", "secondary",
                3)),
                "");
        ValueBook read = written(book.text());
        assertEquals(book.entries(), read.entries());
        assertEquals(64, read.sha256().length());
        assertFalse(read.sha256().equals(written(book.text() + "## one more line\n").sha256()));
    }

    @Test
    void onlyASignedEntryOfTheSameNumberCounts() throws IOException {
        RuleSet rules = RuleSets.find("icao:9th").orElseThrow();
        String text = new ValueBook(List.of(SIGNED), "").text();
        assertTrue(written(text).signed(rules, SIGNED.key()).isPresent());
        assertTrue(written(text.replace("J. Doe", "")).signed(rules, SIGNED.key()).isEmpty(), "no second name");
        assertTrue(written(text.replace("J. Doe", "R. Tamsin")).signed(rules, SIGNED.key()).isEmpty(), "twice the same name");
        assertTrue(written(text.replace(",2,min", ",3,min")).signed(rules, SIGNED.key()).isEmpty(), "another number");
        assertTrue(written(text.replace("icao:9th", "icao:5th")).signed(rules, SIGNED.key()).isEmpty(), "another edition");
        assertTrue(written(text.replace("confirmed", "open")).signed(rules, SIGNED.key()).isEmpty(), "nobody has looked");
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "confirmed; corrected; values.csv:2: a corrected value needs the number of the document in own_value",
        "confirmed; rejected; values.csv:2: a value that is rejected needs a reason",
        "confirmed; yes; values.csv:2: decision is open, confirmed, corrected or rejected, not 'yes'",
        ",2,min; ,two,min; values.csv:2: value:"})
    void whatIsWrongIsRefusedWithFileAndLine(String from, String to, String message) {
        String text = new ValueBook(List.of(SIGNED), "").text().replaceFirst(from, to);
        String said = assertThrows(StandardsException.class, () -> written(text)).getMessage();
        assertTrue(said.contains(message), said);
    }
}
