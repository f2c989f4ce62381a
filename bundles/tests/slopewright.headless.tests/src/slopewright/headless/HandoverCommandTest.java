package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.report.handover.Deliverables;
import slopewright.report.handover.HandoverFile;
import slopewright.testkit.DemoProjects;

/** The hand-over of the command line is that of the window. */
class HandoverCommandTest {

    @TempDir
    Path folder;

    private final String demo = DemoProjects.file(DemoProjects.GOOD).toString();

    private Set<String> written() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("out"))) {
            return files.map(file -> file.getFileName().toString()).collect(Collectors.toCollection(TreeSet::new));
        }
    }

    @Test
    void itWritesWhatTheWindowTicks() throws IOException {
        Words run = Words.run("handover", demo, "-o", folder.resolve("out").toString(), "--date", "2026-06-01");
        assertEquals(0, run.code(), run.err());
        Set<String> usual = Deliverables.of(DemoProjects.load(DemoProjects.GOOD)).stream().filter(HandoverFile::usual)
                .map(HandoverFile::fileName).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(usual, written());
        assertEquals(usual.size(), run.out().lines().count());
    }

    @Test
    void whatIsThereStays() throws IOException {
        Path schedule = Files.createDirectories(folder.resolve("out")).resolve("schedule.csv");
        Files.writeString(schedule, "mine");
        String[] words = {"handover", demo, "-o", folder.resolve("out").toString(), "--only", "schedule,report"};
        Words refused = Words.run(words);
        assertEquals(2, refused.code());
        assertTrue(refused.err().contains("schedule.csv is there already"), refused.err());
        assertEquals(Set.of("schedule.csv"), written());
        String[] forced = Arrays.copyOf(words, words.length + 1);
        forced[words.length] = "--force";
        assertEquals(0, Words.run(forced).code());
        assertFalse(Files.readString(schedule).equals("mine"));
    }

    @Test
    void anUnknownKindIsRefusedWithThoseThatThereAre() {
        Words refused = Words.run("handover", demo, "--list", "--only", "poster");
        assertEquals(2, refused.code());
        assertTrue(refused.err().contains("'poster'") && refused.err().contains("report"), refused.err());
        assertEquals(2, Words.run("handover", demo).code());
    }

    /** What stands against several files is said once, with the names of all. */
    @Test
    void oneReasonIsOneSentence() throws IOException {
        String faults = DemoProjects.file("harrow-vale-faults").toString();
        Words run = Words.run("handover", faults, "-o", folder.resolve("out").toString(), "--only",
                "commissioning,drawing-plan,drawing-section", "--date", "2026-06-01");
        assertEquals(1, run.code());
        assertEquals(1, run.err().lines().filter(line -> line.contains("lantern-stack")).count(), run.err());
        assertEquals(2 * 3 + 1, run.err().split("unknown-indicator-21-", -1).length - 1,
                "two drawings in three forms and a sheet");
        assertTrue(written().stream().noneMatch(name -> name.startsWith("unknown-")), written().toString());
    }

    /** The row at 09 stands 330.46 m from the threshold: 330.46 / 0.3048 = 1084.2 ft, and D is set to 3 degrees 35 minutes. */
    @Test
    void documentsAreInTheUnitsThatWereAskedFor() throws IOException {
        Path sheet = folder.resolve("sheet.html");
        Words run = Words.run("commission", demo, "--aid", "PAPI 09", "--units", "feet", "--angles", "decimal", "--date", "2026-06-01",
                "-o", sheet.toString());
        assertEquals(0, run.code(), run.err());
        String text = Files.readString(sheet);
        assertTrue(text.contains("1084.2 ft") && text.contains("3.5833\u00b0") && !text.contains("330.46 m"), text);
        Path card = folder.resolve("card.html");
        Words.run("card", demo, "--aid", "approach-aid-4", "--units", "feet", "--date", "2026-06-01", "-o", card.toString());
        String field = Files.readString(card);
        assertTrue(field.contains("87.7\u00a0ft") && !field.contains("26.7\u00a0m"), "26.72 m from the hover point are 87.7 ft");
    }
}
