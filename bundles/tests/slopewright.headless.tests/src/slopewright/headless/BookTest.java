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
        Path half = Files.writeString(folder.resolve("half.csv"), signed.replace("Data plate,2,sheet 1,", "Data plate,,,"));
        Words none = Words.run("book", half.toString(), "--into", open().toString(), "-o", folder.resolve("half.slopewright").toString());
        assertTrue(none.out().contains("0 entries taken") && none.err().contains("lacks edition, clause"), none.out() + none.err());
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

    /** A spacing of 8 m where Annex 14 Vol I, 9th ed., Fig 5-19 prints 9 m, of the class that an own rule set gives it. */
    @Test
    void anOwnRuleSetIsNamedOnTheCommandLine() throws IOException {
        Path own = folder.resolve("own");
        Words.run("rule-sets", "--new", own.toString(), "--over", "icao:9th");
        Files.writeString(own.resolve("values.csv"), Files.readString(own.resolve("values.csv"))
                .replace("## four-unit-row.unit-spacing-m,9,", "four-unit-row.unit-spacing-m,8,"));
        Words check = Words.run("check", DEMO.toString(), "--rule-set", own.toString(), "--rules", "ROW-04", "--json");
        assertEquals(0, check.code(), "9 m stand within 1 m of 8 m" + check.err());
        assertTrue(check.out().contains("\"provenance\" : \"organisation\""), check.out());
        assertTrue(check.out().contains("\"ruleSet\" : \"our-own\""), check.out());
        Words other = Words.run("check", DEMO.toString(), "--rule-set", folder.resolve("none").toString());
        assertEquals(2, other.code());
        assertTrue(other.err().contains("and a folder with one of your own"), other.err());
        Files.writeString(own.resolve("values.csv"), "key\n");
        Words damaged = Words.run("check", DEMO.toString(), "--rule-set", own.toString());
        assertEquals(3, damaged.code());
        assertTrue(damaged.err().contains("values.csv:1: "), damaged.err());
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
