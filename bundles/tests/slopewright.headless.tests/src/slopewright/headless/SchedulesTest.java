package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The sheets of the command {@code schedule}. */
class SchedulesTest {

    @TempDir
    private Path folder;

    private Words schedule(String file, String... rest) {
        String[] line = new String[rest.length + 4];
        line[0] = "schedule";
        line[1] = Words.demo("harrow-vale/harrow-vale.slopewright").toString();
        line[2] = "-o";
        line[3] = folder.resolve(file).toString();
        System.arraycopy(rest, 0, line, 4, rest.length);
        return Words.run(line);
    }

    /** The head of each sheet and its number of lines: 11 units, 4 aids and 2 circuits, 4 aids. */
    @ParameterizedTest
    @CsvSource({"setting-out,runway end or approach,12", "circuits,circuit,7", "publish,runway or approach,5"})
    void everySheetIsWritten(String sheet, String first, int lines) throws IOException {
        Words words = schedule("s.csv", "--sheet", sheet, "--date", "2026-06-01");
        assertEquals(0, words.code(), words.err());
        assertEquals("", words.out() + words.err());
        assertTrue(Files.readAllLines(folder.resolve("s.csv")).get(1).endsWith(",\"Met: 0 not met, 0 to clear up\""), "all of it is met");
        List<String> read = Files.readAllLines(folder.resolve("s.csv"));
        assertTrue(read.get(0).startsWith(first + ","), read.get(0));
        assertEquals(lines, read.size());
        assertEquals(0, schedule("s.xlsx", "--sheet", sheet, "--date", "2026-06-01").code());
        byte[] bytes = Files.readAllBytes(folder.resolve("s.xlsx"));
        assertEquals(2, schedule("s.xlsx", "--sheet", sheet).code());
        assertEquals(0, schedule("s.xlsx", "--sheet", sheet, "--date", "2026-06-01", "--force").code());
        assertArrayEquals(bytes, Files.readAllBytes(folder.resolve("s.xlsx")));
    }

    /** The demo with planted faults: the table that is handed over says so in its last column, and so does the command. */
    @Test
    void noTableLeavesWithoutTheVerdict() throws IOException {
        for (String sheet : List.of("setting-out", "circuits", "publish")) {
            Words words = Words.run("schedule", Words.demo("harrow-vale-faults/harrow-vale-faults.slopewright").toString(), "-o",
                    folder.resolve(sheet + ".csv").toString(), "--sheet", sheet);
            assertEquals(0, words.code(), words.err());
            assertTrue(words.err().contains("verdict of the check, which the file carries: Not met: "), words.err());
            List<String> read = Files.readAllLines(folder.resolve(sheet + ".csv"));
            assertTrue(read.get(0).endsWith(",verdict"), read.get(0));
            assertTrue(read.subList(1, read.size()).stream().allMatch(line -> line.contains(",\"Not met: ")), sheet);
        }
    }

    /** 2.5 degrees west in January, brought to June: -2.5 + 0.19 x 151 / 365 = -2.421; the tolerance of the rule set. */
    @Test
    void settingOutIsTheUsualSheet() throws IOException {
        assertEquals(0, schedule("s.csv", "--date", "2026-06-01").code());
        String first = Files.readAllLines(folder.resolve("s.csv")).get(1);
        assertTrue(first.contains(",272.000,274.421,no grid,3°35',3.58333,62.62,1.00,"), first);
        assertTrue(first.contains("UK CAP 168 (restated), 6.200 [secondary]"), first);
    }

    @ParameterizedTest
    @ValueSource(strings = {"--sheet walls", "--rule-set none", "--date May"})
    void wordsThatDoNotFitAreRefused(String words) {
        assertEquals(2, schedule("s.csv", words.split(" ")).code());
        assertTrue(Files.notExists(folder.resolve("s.csv")));
    }
}
