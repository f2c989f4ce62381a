package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reading back on the command line; every name is invented. The demonstration is at the stage of setting up and was read back whole. */
class ReadBackTest {
    private static final Path DEMO = Path.of(System.getProperty("slopewright.root"), "demo-data/harrow-vale/harrow-vale.slopewright");

    @TempDir
    private Path folder;

    private Path changed(String from, String to) throws IOException {
        String text = Files.readString(DEMO);
        assertTrue(text.contains(from), from);
        return Files.writeString(folder.resolve("changed.slopewright"), text.replace(from, to));
    }

    @Test
    void aChangedEntryIsToClearUpUntilItIsReadBackAgain() throws IOException {
        Path file = changed("chainageM=\"1200.0\" elevationM=\"89.3\"", "chainageM=\"1200.0\" elevationM=\"89.4\"");
        Words check = Words.run("check", file.toString(), "--rules", "REC");
        assertEquals(1, check.code());
        assertTrue(check.out().contains("09/27 (runway-1), or its read-back, was changed since N. Ferrow (invented) read it back"),
                check.out());
        Words list = Words.run("read-back", file.toString());
        assertTrue(list.out().contains("[runway-1]: changed since it was read back by N. Ferrow (invented) on 2026-06-01"), list.out());
        assertTrue(list.out().contains("elevationM = 89.4"), list.out());
        long all = Files.readAllLines(DEMO).stream().filter(line -> line.contains("<readBacks ")).count();
        assertTrue(list.out().contains("1 of " + all + " elements are not as they were read back"), list.out());

        Path again = folder.resolve("again.slopewright");
        Words kept = Words.run("read-back", file.toString(), "--by", "B. Bole", "--date", "2026-06-01", "-o", again.toString());
        assertTrue(kept.out().contains("1 elements read back by B. Bole"), kept.out() + kept.err());
        assertEquals(0, Words.run("check", again.toString()).code());
        assertEquals(all - 1, Files.readString(again).split(" person=\"N. Ferrow", -1).length - 1);
    }

    /** A confirmation that was changed says nothing until a second person, who is not the one who confirmed it, signs it off. */
    @Test
    void aChangedConfirmationIsSignedOffAgain() throws IOException {
        String allowance = "xmi:id=\"value-confirmation-1\" valueKey=\"four-unit-row.boundary-allowance-min\""
                + " ruleSetKey=\"icao:9th\" source=\"";
        Path file = changed(allowance + "invented", allowance + "Invented");
        Words check = Words.run("check", file.toString(), "--rules", "DATA-40");
        assertEquals(1, check.code());
        assertTrue(check.out().contains("four-unit-row.boundary-allowance-min of icao:9th is not as it was confirmed"), check.out());
        Words list = Words.run("read-back", file.toString());
        assertTrue(list.out().contains("[value-confirmation-1]: not sealed, or changed since it was"), list.out());
        assertTrue(list.out().contains("value = 2.0"), list.out());
        Path again = folder.resolve("again.slopewright");
        assertEquals(2, Words.run("read-back", file.toString(), "--by", "R Tamsin", "--date", "2026-06-01", "-o", again.toString()).code());
        Words kept = Words.run("read-back", file.toString(), "--by", "B. Bole", "--date", "2026-06-01", "-o", again.toString());
        assertTrue(kept.out().contains("1 confirmations signed off by B. Bole"), kept.out() + kept.err());
        assertEquals(0, Words.run("check", again.toString()).code());
    }

    @Test
    void whatIsNotReadBackIsToClearUp() throws IOException {
        Path file = changed("xmi:id=\"read-back-1\" elementId=\"aerodrome-1\"", "xmi:id=\"read-back-1\" elementId=\"gone\"");
        Words check = Words.run("check", file.toString(), "--rules", "REC");
        assertTrue(check.out().contains("gone was read back, and the project holds it no longer"), check.out());
        assertTrue(check.out().contains("Harrow Vale (aerodrome-1) was not read back by a second person"), check.out());
        Path again = folder.resolve("again.slopewright");
        Words.run("read-back", file.toString(), "profile-point-1", "--by", "B. Bole", "--date", "2026-06-02", "-o", again.toString());
        String text = Files.readString(again);
        assertTrue(!text.contains("elementId=\"gone\"") && text.contains("elementId=\"runway-1\" person=\"B. Bole\""), text);
    }

    /** Without an author, or with a day that is not over by the date of the project, nobody can rely on the seal. */
    @Test
    void aReadBackNeedsAnAuthorAndADayOfTheProject() throws IOException {
        Path nobody = changed(" author=\"R. Tamsin\"", "");
        Words check = Words.run("check", nobody.toString(), "--rules", "REC");
        assertEquals(1, check.code());
        assertTrue(check.out().contains("Read-backs count only in a project that has a date and names its author"), check.out());
        for (String day : new String[] {"1900-01-01", "2099-01-01"}) {
            Path again = folder.resolve("day-" + day + ".slopewright");
            Words.run("read-back", DEMO.toString(), "runway-1", "--by", "B. Bole", "--date", day, "-o", again.toString());
            Words read = Words.run("check", again.toString(), "--rules", "REC");
            assertEquals(1, read.code(), day);
            assertTrue(read.out().contains("09/27 (runway-1) was read back by B. Bole on " + day), read.out());
        }
    }

    /** To ask at another stage than that of the project changes nothing that was read back; to write another into the file does. */
    @Test
    void theStageIsReadBackAsItStandsInTheFile() throws IOException {
        assertEquals(0, Words.run("check", DEMO.toString(), "--rules", "REC", "--stage", "design").code());
        Path design = changed(" stage=\"SET_UP\"", "");
        assertEquals(1, Words.run("check", design.toString(), "--rules", "REC").code());
    }

    @Test
    void halfAReadBackIsRefused() {
        assertEquals(2, Words.run("read-back", DEMO.toString(), "--by", "B. Bole").code());
        assertEquals(2, Words.run("read-back", DEMO.toString(), "nothing").code());
        Path out = folder.resolve("out.slopewright");
        Words author = Words.run("read-back", DEMO.toString(), "--by", "R Tamsin", "--date", "2026-06-02", "-o", out.toString());
        assertEquals(2, author.code());
        assertTrue(author.err().contains("is the author of the project") && !Files.exists(out), author.err());
    }
}
