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
            "from-memory", "Doc 9157 Part 4 (not read), 8.3", 12, "EYE-01 ROW-03", ValueBook.Decision.CONFIRMED,
            Optional.empty(), "", "Doc, with \"quotes\"", "5th", "8.3", "R. Tamsin", "2026-05-01", "J. Doe", "2026-05-02");

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
                "a textbook, \"siting\"", 3, "EYE-07")), "");
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

    /** A decision is of one number and one unit: where the rule set has another now, somebody looks again. */
    @Test
    void aDecisionHoldsForItsNumber() {
        ValueBook.Entry now = ValueBook.Entry.open(SIGNED.ruleSet(), SIGNED.key(), 2, "min", "secondary", "another text", 3, "EYE-01");
        ValueBook.Entry kept = SIGNED.asNow(now);
        assertTrue(kept.isSigned());
        assertEquals("another text", kept.source());
        assertEquals(3, kept.restsOnIt());
        assertFalse(SIGNED.asNow(ValueBook.Entry.open(SIGNED.ruleSet(), SIGNED.key(), 3, "min", "", "", 3, "")).isSigned());
        assertFalse(SIGNED.asNow(ValueBook.Entry.open(SIGNED.ruleSet(), SIGNED.key(), 2, "deg", "", "", 3, "")).isSigned());
    }

    /** What an entry lacks is said by name; a keystroke is no document, no reason and no person. */
    @Test
    void whatAnEntryLacksIsNamed() {
        ValueBook.Compared with = new ValueBook.Compared("our copy", "5th", "8.3", "R. Tamsin", "2026-05-01");
        ValueBook.Entry open = SIGNED.undecided();
        assertEquals(ValueBook.Lack.DECISION, open.lacks().get(0));
        ValueBook.Entry corrected = open.decided(ValueBook.Decision.CORRECTED, Optional.of(3.0), "printed 3'", with);
        assertEquals(List.of(ValueBook.Lack.SECOND_PERSON, ValueBook.Lack.SECOND_DATE), corrected.lacks());
        assertEquals(List.of(), corrected.lacksToDecide());
        assertEquals(List.of(ValueBook.Lack.OWN_VALUE, ValueBook.Lack.REASON),
                open.decided(ValueBook.Decision.CORRECTED, Optional.of(2.0), " ", with).lacksToDecide(), "the number that it has");
        assertEquals(List.of(ValueBook.Lack.REASON), open.decided(ValueBook.Decision.REJECTED, Optional.empty(), "y", with)
                .lacksToDecide());
        assertEquals(List.of(ValueBook.Lack.DOCUMENT, ValueBook.Lack.EDITION, ValueBook.Lack.CLAUSE, ValueBook.Lack.PERSON,
                ValueBook.Lack.DATE), open.decided(ValueBook.Decision.CONFIRMED, Optional.empty(), "", new ValueBook.Compared("y", "", " ",
                        "y", "yesterday")).lacksToDecide());
        assertEquals(List.of(ValueBook.Lack.SECOND_PERSON), corrected.signedOff("r tamsin", "2026-05-02").lacks(), "the same person");
        assertEquals(List.of(ValueBook.Lack.SECOND_DATE), corrected.signedOff("J. Doe", "2026-04-30").lacks(), "before it was compared");
        assertTrue(corrected.signedOff("J. Doe", "2026-05-01").isSigned());
        assertFalse(corrected.signedOff("J. Doe", "2026-05-01").decided(ValueBook.Decision.CONFIRMED, Optional.empty(), "", with)
                .isSigned(), "another decision than was signed off");
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "confirmed; corrected; values.csv:2: a corrected value needs the number of the document in own_value",
        "confirmed; rejected; values.csv:2: a value that is rejected needs a reason",
        "confirmed; yes; values.csv:2: decision is open, confirmed, corrected or rejected, not 'yes'",
        ",min,(.*),confirmed,-,,; ,-,$1,corrected,3,read so,; values.csv:2: a table cannot be corrected by one number",
        ",2,min; ,two,min; values.csv:2: value:"})
    void whatIsWrongIsRefusedWithFileAndLine(String from, String to, String message) {
        String text = new ValueBook(List.of(SIGNED), "").text().replaceFirst(from, to);
        String said = assertThrows(StandardsException.class, () -> written(text)).getMessage();
        assertTrue(said.contains(message), said);
    }
}
