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
}
