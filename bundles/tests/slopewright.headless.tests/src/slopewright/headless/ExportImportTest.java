package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The commands {@code export} and {@code import}: files, exit codes, messages. */
class ExportImportTest {

    @TempDir
    private Path folder;

    private static String demo() {
        return Words.demo("harrow-vale/harrow-vale.slopewright").toString();
    }

    @ParameterizedTest
    @ValueSource(strings = {"geojson", "kml"})
    void exportWritesTheSameBytesTwiceAndReplacesOnlyWhenTold(String ending) throws IOException {
        Path file = folder.resolve("map." + ending);
        Words first = Words.run("export", demo(), "-o", file.toString());
        assertEquals(0, first.code(), first.err());
        assertEquals("", first.out());
        assertTrue(first.err().contains("Harrow Vale local mean sea level"), first.err());
        byte[] bytes = Files.readAllBytes(file);
        assertEquals(2, Words.run("export", demo(), "-o", file.toString()).code());
        assertArrayEquals(bytes, Files.readAllBytes(file));
        assertEquals(0, Words.run("export", demo(), "-o", file.toString(), "--force").code());
        assertArrayEquals(bytes, Files.readAllBytes(file));
    }

    @Test
    void exportShowsOneAidWhenOneIsNamed() throws IOException {
        Path file = folder.resolve("one.geojson");
        assertEquals(0, Words.run("export", demo(), "-o", file.toString(), "--aid", "PAPI 27", "--beam-length-m", "3280.8399ft").code());
        JsonNode features = new ObjectMapper().readTree(file.toFile()).get("features");
        int units = 0;
        for (JsonNode feature : features) {
            JsonNode facts = feature.get("properties");
            assertTrue(!facts.has("aid") || facts.get("aid").asText().equals("approach-aid-2"));
            units += facts.get("kind").asText().equals("unit") ? 1 : 0;
            if (facts.get("kind").asText().equals("sector-edge")) {
                assertEquals(1000, facts.get("lengthM").asDouble(), 1e-3, "3280.8399 ft");
            }
        }
        assertEquals(4, units);
    }

    @ParameterizedTest
    @ValueSource(strings = {"-o map.shp", "-o map.kml --aid nobody", "-o map.kml --beam-length-m 0", "-o map.kml --rule-set none"})
    void exportRefusesWordsThatDoNotFitTogether(String words) {
        String[] rest = words.replace("map.", folder.resolve("map.").toString()).split(" ");
        String[] line = new String[rest.length + 2];
        line[0] = "export";
        line[1] = demo();
        System.arraycopy(rest, 0, line, 2, rest.length);
        assertEquals(2, Words.run(line).code());
        assertFalse(Files.exists(folder.resolve("map.kml")));
    }

    private static String survey(String name) {
        return Words.demo("harrow-vale/survey/" + name).toString();
    }

    @Test
    void goodRowsAreTakenWhereThatIsAskedAndTheOthersNamed() throws IOException {
        Path survey = Files.writeString(folder.resolve("rows.csv"), "id,latitudeDeg,longitudeDeg,topElevationM\nA,47.3011,-11.9218,100\n"
                + "B,47.3012,no,100\n");
        Path file = folder.resolve("rows.slopewright");
        Words whole = Words.run("import", survey.toString(), "--into", demo(), "-o", file.toString());
        assertEquals(3, whole.code());
        assertFalse(Files.exists(file));
        Words good = Words.run("import", survey.toString(), "--into", demo(), "-o", file.toString(), "--good-rows");
        assertEquals(1, good.code(), good.err());
        assertTrue(good.err().contains("1 obstacles added"), good.err());
        assertTrue(good.err().contains("refused: " + survey + ":3: longitudeDeg: 'no' is not a number"), good.err());
        assertTrue(Files.readString(file).contains("47.3011"));
    }

    @Test
    void pointsInGreatNumberBecomeABlockUnasked() throws IOException {
        StringBuilder text = new StringBuilder("latitudeDeg,longitudeDeg,topElevationM\n");
        for (int i = 0; i < 6000; i++) {
            text.append(47.28 + i * 1e-6).append(",-11.95,95.5\n");
        }
        Path survey = Files.writeString(folder.resolve("many.csv"), text);
        Path file = folder.resolve("many.slopewright");
        Words words = Words.run("import", survey.toString(), "--into", demo(), "-o", file.toString());
        assertEquals(0, words.code(), words.err());
        assertTrue(words.err().contains("6000 points added"), words.err());
        assertTrue(words.err().contains(".swpoints"), words.err());
    }

    @Test
    void importWritesAProjectThatCanBeRead() throws IOException {
        Path file = folder.resolve("new.slopewright");
        Words words = Words.run("import", survey("obstacles.csv"), "--into", demo(), "-o", file.toString(), "--date", "2026-05-20");
        assertEquals(0, words.code(), words.err());
        assertEquals("", words.out());
        assertTrue(words.err().contains("4 obstacles added"), words.err());
        byte[] bytes = Files.readAllBytes(file);
        assertEquals(2, Words.run("import", survey("obstacles.csv"), "--into", demo(), "-o", file.toString()).code());
        assertArrayEquals(bytes, Files.readAllBytes(file));
        Words again = Words.run("import", survey("obstacles.kml"), "--into", file.toString(), "-o", file.toString(), "--force");
        assertTrue(again.err().contains("4 obstacles skipped, the project has them already"), again.err());
        assertArrayEquals(bytes, Files.readAllBytes(file));
        assertEquals(0, Words.run("export", file.toString(), "-o", folder.resolve("new.kml").toString()).code());
    }

    @Test
    void aFaultyImportWritesNothing() throws IOException {
        Path survey = Files.writeString(folder.resolve("bad.csv"), "id,latitudeDeg,longitudeDeg,elevationM\na,47.3,-11.9,90\nb,47.3,,90\n");
        for (String form : new String[] {"obstacles", "ground-levels", "obstacle-block"}) {
            Words words = Words.run("import", survey.toString(), "--into", demo(), "-o", folder.resolve("p.slopewright").toString(), "--as",
                    form);
            assertEquals(3, words.code(), words.err());
            assertTrue(words.err().contains("bad.csv:3: longitudeDeg"), words.err());
        }
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(1, files.count());
        }
        assertEquals(2, Words.run("import", survey.toString(), "--into", demo(), "-o", folder.resolve("p.xml").toString()).code());
        assertEquals(2, Words.run("import", survey.toString(), "--into", demo(), "-o", folder.resolve("p.slopewright").toString(), "--as",
                "walls").code());
    }

    @Test
    void aBlockLiesBesideTheProjectAndStaysThere() throws IOException {
        Path file = folder.resolve("p.slopewright");
        Words words = Words.run("import", survey("canopy-points.csv"), "--into", demo(), "-o", file.toString(), "--as", "obstacle-block");
        assertEquals(0, words.code(), words.err());
        assertTrue(words.err().contains("600 points added"), words.err());
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(1, files.filter(path -> path.toString().endsWith(".swpoints")).count());
        }
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere")).resolve("p.slopewright");
        Words moved = Words.run("import", survey("obstacles.csv"), "--into", file.toString(), "-o", elsewhere.toString());
        assertEquals(2, moved.code());
        assertTrue(moved.err().contains("into the same folder"), moved.err());
    }
}
