package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.testkit.DemoProjects;

/** A file that names a rule set without its edition is checked under the older one, and the check says how it moves. */
class BareEditionTest {
    @TempDir
    private Path folder;

    private Path bare() throws Exception {
        String older = Files.readString(DemoProjects.olderEdition());
        int at = older.indexOf("ruleSetKey=\"icao:5th\"");
        assertTrue(at > 0 && at < older.indexOf("<aerodrome"), "the first is that of the project");
        return Files.writeString(folder.resolve("older.slopewright"), older.replaceFirst("ruleSetKey=\"icao:5th\"",
                "ruleSetKey=\"icao\""));
    }

    @Test
    void theWordsThatItNamesMoveTheProject() throws Exception {
        Path file = bare();
        Words said = Words.run("check", file.toString());
        assertTrue(said.err().contains("'icao' names no edition and is read as icao:5th"), said.err());
        assertTrue(said.err().contains("lapse"), said.err());
        String named = said.err().substring(said.err().indexOf("'slopewright enter ") + "'slopewright ".length());
        Path moved = folder.resolve("moved.slopewright");
        List<String> words = new ArrayList<>(List.of(named.substring(0, named.indexOf('\'')).split(" ")));
        assertEquals("FILE", words.set(words.size() - 1, moved.toString()));
        Words entered = Words.run(words.toArray(String[]::new));
        assertEquals(0, entered.code(), entered.err());
        assertTrue(Files.readString(moved).contains("ruleSetKey=\"icao:9th\" stage"));
        Words after = Words.run("check", moved.toString());
        assertFalse(after.err().contains("names no edition"), after.err());
        assertTrue(after.out().contains("DATA-40"), "what was confirmed for the older edition is to clear up");
    }

    @Test
    void nothingIsSaidWhereTheEditionIsNamed() throws Exception {
        assertFalse(Words.run("check", DemoProjects.olderEdition().toString()).err().contains("edition"));
        assertFalse(Words.run("check", bare().toString(), "--rule-set", "icao:5th").err().contains("edition"));
    }
}
