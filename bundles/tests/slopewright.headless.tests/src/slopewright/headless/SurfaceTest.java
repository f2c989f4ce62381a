package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.Raster;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.testkit.DemoProjects;

/** The documents and exit codes of {@code surface} and {@code compare}, and the lists. */
class SurfaceTest {

    private static final String ROW = "surface --json --family four-unit-row --rule-set icao:5th --slope-deg 3 --runway-width-m 45 --code 4"
            + " --approach instrument --eye-to-wheel-m 6.63 --points ";

    @TempDir
    private Path folder;

    private Path points(String text) throws IOException {
        return Files.writeString(folder.resolve("points.csv"), text);
    }

    /** The surface starts 60 m before the threshold and rises 1.93 degrees: 1000 m out it is 940 tan 1.93 = 31.68 m high. */
    @Test
    void surfaceListsPenetrationsWorstFirst() throws IOException {
        Words words = Words.line(ROW
                + points("id,alongM,rightM,heightM\nlow,-1000,0,31.6\nhigh,-1000,10,33.5\nhigher,-2000,-20,70\naside,-1000,400,90\n"));
        assertEquals(1, words.code(), words.err());
        JsonNode surface = words.json();
        assertEquals(4, surface.get("points").asInt());
        assertEquals(3, surface.get("inside").asInt());
        assertEquals(2, surface.get("penetrations").size());
        JsonNode worst = surface.get("worst");
        assertEquals("higher", worst.get("id").asText());
        assertEquals(4, worst.get("line").asInt());
        double limit = 1940 * Math.tan(Math.toRadians(1.93));
        assertEquals(limit, worst.get("limitM").asDouble(), 1e-6);
        assertEquals(70 - limit, worst.get("excessM").asDouble(), 1e-6);
        assertEquals("high", surface.get("penetrations").get(1).get("id").asText());
    }

    @Test
    void surfaceWithoutPenetrationEndsWithZero() throws IOException {
        Words words = Words.line(ROW + points("id,alongM,rightM,heightM\nlow,-1000,0,31.6\n"));
        assertEquals(0, words.code());
        assertEquals(0, words.json().get("penetrations").size());
        assertEquals("low", words.json().get("worst").get("id").asText());
    }

    /**
     * Two points 1000 m and 2000 m out at runway 09 of the demonstration, and one beside: two cells have a number, by the slope that the
     * document states.
     */
    @Test
    void theMarginsOfPointsGoIntoCells() throws Exception {
        String demo = DemoProjects.file(DemoProjects.GOOD).toString();
        Path tif = folder.resolve("margins.tif");
        String words = "surface " + demo + " --aid approach-aid-1 --points "
                + points("id,alongM,rightM,heightM\nlow,-1000,0,5\nhigh,-2000,-20,100\naside,-1000,900,90\n");
        Words first = Words.line(words + " --json -o " + tif);
        assertEquals(1, first.code(), first.err());
        JsonNode surface = first.json().get("obstacleSurface");
        double rise = Math.tan(Math.toRadians(surface.get("slopeDeg").asDouble()));
        double start = surface.get("startHeightM").asDouble();
        double before = -surface.get("startAlongM").asDouble();
        Raster cells = cells(tif);
        List<Float> numbers = new ArrayList<>();
        for (float cell : cells.getSamples(0, 0, cells.getWidth(), cells.getHeight(), 0, (float[]) null)) {
            if (!Float.isNaN(cell)) {
                numbers.add(cell);
            }
        }
        numbers.sort(null);
        assertEquals(2, numbers.size());
        assertEquals(start + (2000 - before) * rise - 100, numbers.get(0), 1e-3);
        assertEquals(start + (1000 - before) * rise - 5, numbers.get(1), 1e-3);
        String about = new String(Files.readAllBytes(tif), StandardCharsets.ISO_8859_1);
        assertTrue(about.contains("points.csv") && about.contains("without the accuracy of any survey"), "it says what it holds");
        assertEquals(2, Words.line(words + " --json -o " + tif).code(), "it is there already");
        assertEquals(2, Words.line(words + " --json -o -").code());
        assertEquals(2, Words.line(words + " --cell-m 5").code());
        assertEquals(2, Words.line(ROW + folder.resolve("points.csv") + " -o " + folder.resolve("no.tif")).code(), "where is it?");
        points("id,alongM,rightM,heightM\naside,-1000,900,90\n");
        Words none = Words.line(words + " -o " + folder.resolve("none.tif"));
        assertEquals(3, none.code());
        assertFalse(Files.exists(folder.resolve("none.tif")), "a raster without a number says nothing");
    }

    private static Raster cells(Path tif) throws IOException {
        ImageReader reader = ImageIO.getImageReadersByFormatName("tiff").next();
        try (ImageInputStream in = ImageIO.createImageInputStream(tif.toFile())) {
            reader.setInput(in);
            return reader.read(0).getRaster();
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "id;alongM | :1: expected the header",
        "id,alongM,rightM,heightM~a,1,2 | :2: expected four fields",
        "id,alongM,rightM,heightM~a,1,2,3~b,1,x,3 | :3: rightM: 'x' is not a number",
        "id,alongM,rightM,heightM~a,1,2,NaN | :2: heightM: 'NaN' is not a number",
        "id,alongM,rightM,heightM~a,1,2,3~~b,1,2,3 | :3: the line is empty",
    })
    void surfaceNamesTheBadLine(String text, String reason) throws IOException {
        Words words = Words.line(ROW + points(text.replace('~', '\n')));
        assertEquals(3, words.code());
        assertEquals("", words.out());
        assertTrue(words.err().contains("points.csv" + reason), words.err());
    }

    @Test
    void surfaceReadsAFileOfManyBlocks() throws IOException {
        StringBuilder text = new StringBuilder("id,alongM,rightM,heightM\n");
        for (int i = 0; i < 400_000; i++) {
            text.append("p").append(i).append(",-").append(500 + i % 1000).append(".125,").append(i % 40 - 20).append(",-5.5\n");
        }
        text.append("top,-700,0,99\n");
        JsonNode surface = Words.line(ROW + points(text.toString())).json();
        assertEquals(400_001, surface.get("points").asInt());
        assertEquals(400_001, surface.get("inside").asInt());
        assertEquals(1, surface.get("penetrations").size());
        assertEquals(400_002, surface.get("worst").get("line").asInt());
    }

    @Test
    void compareLaysOutEveryFamilyOfARunwayEnd() {
        JsonNode compared = Words.run("compare", Words.demo("harrow-vale/harrow-vale.slopewright").toString(), "--end", "27", "--json")
                .json();
        assertEquals(9, compared.get("families").size());
        JsonNode row = compared.get("families").get(0);
        assertEquals("four-unit-row", row.get("family").asText());
        assertTrue(row.get("fits").asBoolean());
        assertTrue(row.get("obstacleMarginM").asDouble() > 0);
        assertEquals("Cold Barrow hill", row.get("governingObstacle").asText());
    }

    @Test
    void listsFamiliesRulesAndRuleSets() {
        JsonNode families = Words.line("families --json").json();
        assertEquals(11, families.size());
        for (JsonNode family : families) {
            for (String name : new String[] {"key", "name", "units", "ruleSets"}) {
                assertTrue(family.has(name), name);
            }
            assertFalse(family.get("ruleSets").isEmpty());
        }
        List<String> ruleSets = new ArrayList<>();
        Words.line("rule-sets --json").json()
                .forEach(rules -> ruleSets.add(rules.get("key").asText() + ":" + rules.get("edition").asText()));
        assertTrue(ruleSets.containsAll(List.of("icao:5th", "easa:2022", "casa:guide", "faa:2010")), ruleSets.toString());
        assertFalse(Words.line("rules --json").json().isEmpty());
    }
}
