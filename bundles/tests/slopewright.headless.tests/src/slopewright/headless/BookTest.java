package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An organisation's book of values and own rule set on the command line; every name is invented. */
class BookTest {
    private static final Path DEMO = Path.of(System.getProperty("slopewright.root"), "demo-data/every-family/every-family.slopewright");
    private static final String ROW = "faa:2010,two-bar.far-offset-deg,0.25,deg,";

    @TempDir
    private Path folder;

    /** The demonstration as it was before its values were confirmed. */
    private Path open() throws IOException {
        String text = Files.readString(DEMO);
        String open = text.lines().filter(line -> !line.contains("<confirmations ")).reduce("", (all, line) -> all + line + "\n");
        assertTrue(open.length() < text.length());
        return Files.writeString(folder.resolve("open.slopewright"), open);
    }

    private Path book() {
        return folder.resolve("book.csv");
    }

    @Test
    void valuesAreCollectedSignedAndTakenIntoAProject() throws IOException {
        assertEquals(0, Words.run("book", book().toString(), "--collect", open().toString()).code());
        String collected = Files.readString(book());
        assertTrue(collected.contains("\n" + ROW), collected);
        String signed = collected.lines().map(line -> line.startsWith(ROW)
                ? line.replaceFirst("open,-,,,,,,,,$", "confirmed,-,,Data plate,2,sheet 1,A. Ames,2026-01-05,B. Bole,2026-01-06") : line)
                .reduce("", (text, line) -> text + line + "\n");
        Files.writeString(book(), signed);
        Path changed = folder.resolve("changed.slopewright");
        Words taken = Words.run("book", book().toString(), "--into", open().toString(), "-o", changed.toString());
        assertTrue(taken.out().contains("1 entries taken"), taken.out() + taken.err());
        String text = Files.readString(changed);
        assertTrue(text.contains("bookPath=\"book.csv\"") && text.contains("secondPerson=\"B. Bole\""), "the entry is carried along");
        assertFalse(Words.run("check", changed.toString(), "--rules", "DATA-30").out().contains("has changed since"));

        Files.writeString(book(), signed + "## looked at again\n");
        Words after = Words.run("check", changed.toString(), "--rules", "DATA-30");
        assertTrue(after.out().contains("book.csv has changed since"), after.out());
        assertTrue(after.out().contains("0 not met, 1 to clear up"), after.out());
    }

    @Test
    void whatWasDecidedStaysWhenValuesAreCollectedAgain() throws IOException {
        Words.run("book", book().toString(), "--collect", open().toString());
        String decided = Files.readString(book()).replaceFirst("open,-,,", "rejected,-,not ours,");
        Files.writeString(book(), decided);
        Words.run("book", book().toString(), "--collect", open().toString());
        assertEquals(decided, Files.readString(book()));
    }

    @Test
    void anOwnRuleSetIsStartedAndChecked() throws IOException {
        Path own = folder.resolve("own");
        assertEquals(0, Words.run("rule-sets", "--new", own.toString(), "--over", "icao:9th").code());
        assertEquals(0, Words.run("rule-sets", "--check", own.toString()).code());
        assertEquals(2, Words.run("rule-sets", "--new", own.toString(), "--over", "icao:9th").code(), "never over what is there");
        Files.writeString(own.resolve("values.csv"), Files.readString(own.resolve("values.csv"))
                .replaceFirst("\n([^#\n]+),deg,-,", "\n$1,ft,-,"));
        Words wrong = Words.run("rule-sets", "--check", own.toString());
        assertEquals(3, wrong.code());
        assertTrue(wrong.err().contains("values.csv:4: "), wrong.err());
    }
}
