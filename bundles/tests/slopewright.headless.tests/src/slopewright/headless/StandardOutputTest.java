package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

import slopewright.testkit.DemoProjects;

/** Standard output in the place of a file, and documents that say what they were made from. */
class StandardOutputTest {

    private static final String DEMO = DemoProjects.file("harrow-vale").toString();

    @TempDir
    private Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(List<String> words) {
        out.reset();
        err.reset();
        return Main.run(words.toArray(String[]::new), new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true,
                StandardCharsets.UTF_8), new ByteArrayInputStream(new byte[0]));
    }

    /** The same bytes as in a file, and no line beside them, whatever the command says of its work. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"report|html|--date 2026-06-01", "draw|dxf|--aid approach-aid-1 --view plan --date 2026-06-01",
            "draw|png|--aid approach-aid-1 --view circuit --date 2026-06-01", "schedule|csv|--date 2026-06-01",
            "schedule|xlsx|--sheet circuits",
            "export|kml|", "export|gpkg|", "export|aixm|--date 2026-06-01", "briefing|txt|--aid approach-aid-1 --date 2026-06-01",
            "card|html|--aid approach-aid-4 --date 2026-06-01", "commission|html|--aid approach-aid-1 --date 2026-06-01",
            "take|slopewright|--aid approach-aid-4 --bearing-deg 250 --slope-deg 4",
            "sight|slopewright|--helipad helipad-1 --name Mast --bearing-deg 20 --distance-m 300 --height-m 20",
            "enter|slopewright|light-unit-1.lampsOut=0"})
    void standardOutputHoldsTheBytesOfTheFile(String command, String form, String words) throws IOException {
        List<String> line = new ArrayList<>(List.of(command, DEMO));
        if (words != null) {
            line.addAll(List.of(words.split(" ")));
        }
        List<String> toFile = new ArrayList<>(line);
        Path file = folder.resolve("made." + form);
        toFile.addAll(List.of("-o", file.toString()));
        int code = run(toFile);
        assertTrue(Files.exists(file), err.toString(StandardCharsets.UTF_8));
        line.addAll(List.of("-o", "-", "--form", form));
        assertEquals(code, run(line), err.toString(StandardCharsets.UTF_8));
        assertArrayEquals(Files.readAllBytes(file), out.toByteArray());
    }

    @Test
    void aFormIsAskedForWhereThereAreSeveral() {
        assertEquals(2, run(List.of("report", DEMO, "-o", "-")));
        assertEquals(0, out.size());
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("-o - needs --form, one of pdf, html"));
        assertEquals(2, run(List.of("report", DEMO, "-o", "-", "--form", "png")));
        assertEquals(2, run(List.of("report", DEMO, "-o", folder.resolve("a.pdf").toString(), "--form", "pdf")));
    }

    /** A read-back and its line for people: the project alone is on standard output. */
    @Test
    void whereAFileIsOptionalTheLinesGoElsewhere() {
        assertEquals(0, run(List.of("read-back", DEMO, "--by", "Q. Second", "--date", "2026-06-01", "-o", "-")));
        assertTrue(out.toString(StandardCharsets.UTF_8).startsWith("<?xml"));
        assertTrue(out.toString(StandardCharsets.UTF_8).endsWith("</slopewright:Project>\n"));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("read back by Q. Second"));
    }

    /** The hash is that of the bytes of the file, worked out beside the program. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"site|--end 09 --family four-unit-row", "signal|--aid approach-aid-1 --along-m -900 --height-m 50",
            "compare|--end 09", "compare-rule-sets|--rule-sets icao:5th,icao:9th", "portable|--aid approach-aid-4",
            "tolerance|--aid approach-aid-1 --samples 0",
            "directions|--aid approach-aid-4 --step-deg 1", "review|"})
    void everyDocumentOfAProjectSaysWhatItWasMadeFrom(String command, String words) throws IOException, NoSuchAlgorithmException {
        List<String> line = new ArrayList<>(List.of(command, DEMO));
        if (words != null) {
            line.addAll(List.of(words.split(" ")));
        }
        line.add("--json");
        run(line);
        JsonNode made = new ObjectMapper().readTree(out.toByteArray()).get("madeFrom");
        byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(Path.of(DEMO)));
        assertEquals(HexFormat.of().formatHex(digest), made.get("projectFileSha256").asText());
        assertEquals("A", made.get("revision").asText());
        assertEquals("Harrow Vale", made.get("project").asText());
        assertTrue(made.get("program").asText().startsWith("slopewright "));
    }
}
