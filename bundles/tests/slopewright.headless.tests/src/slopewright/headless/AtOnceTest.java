package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Several commands write the same files at once: none is lost without a word. */
class AtOnceTest {

    @TempDir
    private Path folder;

    private static List<Words> atOnce(List<Callable<Words>> commands) throws Exception {
        ExecutorService all = Executors.newFixedThreadPool(commands.size());
        try {
            List<Words> said = new ArrayList<>();
            for (Future<Words> each : all.invokeAll(commands)) {
                said.add(each.get());
            }
            return said;
        } finally {
            all.shutdownNow();
        }
    }

    private Path survey(int number) throws IOException {
        return Files.writeString(folder.resolve("survey-" + number + ".csv"), "id,latitudeDeg,longitudeDeg,elevationM\nmast-" + number
                + ",47.3" + number + ",-11.9,90\n");
    }

    private List<String> left() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).filter(name -> !name.startsWith("survey-")).sorted().toList();
        }
    }

    /** What an import said it had added is in the project; an import that came second says so and adds nothing. */
    @Test
    void importsIntoOneProjectLoseNothing() throws Exception {
        Path project = folder.resolve("p.slopewright");
        Files.copy(Words.demo("harrow-vale/harrow-vale.slopewright"), project);
        List<Callable<Words>> commands = new ArrayList<>();
        for (int number = 0; number < 6; number++) {
            Path survey = survey(number);
            commands.add(() -> Words.run("import", survey.toString(), "--into", project.toString(), "-o", project.toString(), "--force",
                    "--heights", "top"));
        }
        List<Words> said = atOnce(commands);
        String text = Files.readString(project);
        assertTrue(said.stream().anyMatch(words -> words.code() == 0), said.toString());
        for (int number = 0; number < said.size(); number++) {
            Words words = said.get(number);
            assertEquals(words.code() == 0, text.contains("mast-" + number), words.err());
            if (words.code() != 0) {
                assertEquals(2, words.code(), words.err());
                assertTrue(words.err().contains("another program changed it since it was read"), words.err());
            }
        }
        assertEquals(List.of("p.slopewright", "p.slopewright.previous"), left());
    }

    @Test
    void ofExportsIntoOneNewFileOneWins() throws Exception {
        Path map = folder.resolve("map.geojson");
        String demo = Words.demo("harrow-vale/harrow-vale.slopewright").toString();
        List<Words> said = atOnce(IntStream.range(0, 4).<Callable<Words>>mapToObj(number -> () -> Words.run("export", demo, "-o",
                map.toString())).toList());
        assertEquals(1, said.stream().filter(words -> words.code() == 0).count());
        said.stream().filter(words -> words.code() != 0)
                .forEach(words -> assertTrue(words.err().contains("is there already"), words.err()));
        assertEquals(List.of("map.geojson"), left());
    }

    /** The same block of points is brought in twice at once: the project that was made has it beside it. */
    @Test
    void aBlockStaysBesideTheProjectThatRefersToIt() throws Exception {
        Path project = folder.resolve("p.slopewright");
        String demo = Words.demo("harrow-vale/harrow-vale.slopewright").toString();
        String points = Words.demo("harrow-vale/survey/canopy-points.csv").toString();
        List<Words> said = atOnce(IntStream.range(0, 4).<Callable<Words>>mapToObj(number -> () -> Words.run("import", points, "--into",
                demo, "-o", project.toString(), "--as", "obstacle-block")).toList());
        assertEquals(1, said.stream().filter(words -> words.code() == 0).count(), said.toString());
        List<String> blocks = left().stream().filter(name -> name.endsWith(".swpoints")).toList();
        assertEquals(1, blocks.size(), blocks.toString());
        assertTrue(Files.readString(project).contains(blocks.get(0)));
    }

    @Test
    void aDeviceIsNeverReplaced() throws IOException {
        String demo = Words.demo("harrow-vale/harrow-vale.slopewright").toString();
        Path device = Files.createSymbolicLink(folder.resolve("map.kml"), Path.of("/dev/null"));
        Words words = Words.run("export", demo, "-o", device.toString(), "--force");
        assertEquals(4, words.code(), words.err());
        assertTrue(words.err().contains("it is no ordinary file"), words.err());
        assertFalse(Files.isRegularFile(Path.of("/dev/null")));
    }
}
