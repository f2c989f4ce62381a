package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

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
}
