package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

import javax.imageio.ImageIO;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The command that writes drawings. */
class DrawTest {

    private static final Path FILE = Words.demo("harrow-vale/harrow-vale.slopewright");

    private static final Pattern INSERTED_UNIT = Pattern.compile("LIGHT_UNIT\n 10\n(\\S+)\n 20\n(\\S+)\n");

    @TempDir
    private Path folder;

    private Path draw(String name, String... words) {
        Path target = folder.resolve(name);
        Words done = run(FILE, target, words);
        assertEquals(0, done.code(), done.err());
        return target;
    }

    private static Words run(Path file, Path target, String... words) {
        List<String> all = new ArrayList<>(List.of("draw", file.toString(), "--aid", "PAPI 09", "--date", "2026-06-01", "-o",
                target.toString()));
        all.addAll(Arrays.asList(words));
        return Words.run(all.toArray(String[]::new));
    }

    private static String text(Path svg) throws IOException {
        return Files.readString(svg, StandardCharsets.UTF_8).replaceAll("<[^>]*>", " ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan", "section", "near", "detail", "surface", "pilot", "signals"})
    void everyViewHasATitleBlock(String view) throws IOException {
        String text = text(draw(view + ".svg", "--view", view));
        for (String expected : List.of("Harrow Vale", "R. Tamsin", "2026-06-01", "Checked by", "Document number", "Revision", "Scale",
                "Sheet", "Annex 14 Vol I, 9th ed. (2022)", "A design aid: it does not replace")) {
            assertTrue(text.contains(expected), view + " lacks " + expected);
        }
    }

    /** A4 and letter on their sides in millimetres; 8 pixels a millimetre. */
    @ParameterizedTest
    @CsvSource({"A4, 297, 210", "A3, 420, 297", "letter, 279.4, 215.9"})
    void thePaperHasItsSize(String paper, double widthMm, double heightMm) throws IOException {
        BufferedImage image = ImageIO.read(draw(paper + ".png", "--view", "section", "--paper", paper).toFile());
        assertEquals(widthMm * 8, image.getWidth(), 1);
        assertEquals(heightMm * 8, image.getHeight(), 1);
    }

    @Test
    void aScaleIsKeptOrRefused() throws IOException {
        assertTrue(text(draw("a.svg", "--view", "plan", "--scale", "1:4000")).contains("1:4000"));
        assertTrue(text(draw("b.svg", "--view", "plan", "--scale", "3000")).contains("1:3000"));
        Words refused = run(FILE, folder.resolve("c.svg"), "--view", "plan", "--scale", "1:500");
        assertEquals(2, refused.code());
        assertTrue(refused.err().contains("does not fit the paper") && refused.err().contains("1:2000"), refused.err());
        assertFalse(Files.exists(folder.resolve("c.svg")));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"--view|elevation|plan, section, near, detail, surface, pilot, signals",
        "--paper|A9|A4, A3, A2, A1, A0, letter", "--scale|1:0|1:500", "--scale|two|1:500", "--daylight|noon|day, dusk, night"})
    void wordsThatAreNotKnownAreNamedWithThoseThatAre(String option, String word, String known) {
        List<String> words = new ArrayList<>(List.of(option, word));
        if (!"--view".equals(option)) {
            words.addAll(List.of("--view", "plan"));
        }
        Words refused = run(FILE, folder.resolve("x.svg"), words.toArray(String[]::new));
        assertEquals(2, refused.code());
        assertTrue(refused.err().contains(option) && refused.err().contains(word) && refused.err().contains(known), refused.err());
    }

    @Test
    void nightIsDarkerThanDay() throws IOException {
        Path day = draw("day.png", "--view", "pilot", "--daylight", "day");
        Path night = draw("night.png", "--view", "pilot", "--daylight", "night");
        int daySky = ImageIO.read(day.toFile()).getRGB(1200, 120) & 0xff;
        int nightSky = ImageIO.read(night.toFile()).getRGB(1200, 120) & 0xff;
        assertTrue(nightSky + 100 < daySky, daySky + " by day, " + nightSky + " by night");
    }

    /** 330.46 m are 1084.2 ft of 0.3048 m, 9 m are 29.5 ft; 2 degrees 25 minutes are 2.4167 degrees. */
    @Test
    void lengthsAndAnglesAreWrittenAsWanted() throws IOException {
        String plan = text(draw("feet.svg", "--view", "plan", "--units", "feet", "--angles", "decimal"));
        assertTrue(plan.contains("1084.2 ft") && plan.contains("29.5") && plan.contains("2.4167\u00b0"), plan);
        assertTrue(plan.contains("Dimensions in feet."), plan);
        Words refused = run(FILE, folder.resolve("yards.svg"), "--view", "plan", "--units", "yards");
        assertEquals(2, refused.code());
        assertTrue(refused.err().contains("--units takes metres or feet, not 'yards'"), refused.err());
    }

    @Test
    void theEyeMayStandAnywhere() throws IOException {
        String low = text(draw("low.svg", "--view", "pilot", "--along-m", "-2000", "--right-m", "50", "--height-m", "200ft"));
        assertTrue(low.contains("Eye 2000 m before the threshold, 50 m right of it, 61.0 m above it"), low);
        assertTrue(low.contains("well below"), low);
    }

    /** On the grid a unit stands where the schedule has it: where its block is inserted, metres to the millimetre. */
    @Test
    void aPlanStandsOnTheGridOfTheAerodrome() throws IOException {
        Path grid = folder.resolve("grid.slopewright");
        Files.writeString(grid, Files.readString(FILE).replace("coordinateReference=\"WGS84\"", "coordinateReference=\"local\"")
                .replaceAll("(<(?!aerodrome)[^>]*) latitudeDeg=\"[^\"]*\" longitudeDeg=\"[^\"]*\"", "$1 eastM=\"5000\" northM=\"7000\""));
        assertEquals(0, Words.run("schedule", grid.toString(), "-o", folder.resolve("grid.csv").toString()).code());
        List<String> unit = Arrays.asList(Files.readAllLines(folder.resolve("grid.csv")).get(1).split(","));
        double east = Double.parseDouble(unit.get(9));
        double north = Double.parseDouble(unit.get(10));
        assertEquals(0, run(grid, folder.resolve("grid.dxf"), "--view", "plan").code());
        String dxf = Files.readString(folder.resolve("grid.dxf"));
        boolean found = INSERTED_UNIT.matcher(dxf).results().anyMatch(unitAt -> Math.abs(Double.parseDouble(unitAt.group(1)) - east) < 0.001
                && Math.abs(Double.parseDouble(unitAt.group(2)) - north) < 0.001);
        assertTrue(found, "no unit at " + east + ", " + north);
        assertTrue(dxf.contains("Coordinates: metres east and north, local, epoch 2026.4, accuracy in plan 0.020 m."),
                "the file does not say what its coordinates are");
    }

    @Test
    void theSameInputGivesTheSameBytes() throws IOException {
        for (String form : List.of("svg", "pdf", "png", "dxf")) {
            byte[] first = Files.readAllBytes(draw("1." + form, "--view", "detail"));
            assertEquals(-1, Arrays.mismatch(first, Files.readAllBytes(draw("2." + form, "--view", "detail"))), form);
            assertNotEquals(0, first.length);
        }
    }

    @Test
    void panelsHaveNoChartOfSignals() {
        Words refused = Words.run("draw", Words.demo("every-family/every-family.slopewright").toString(), "--aid", "Alignment panels",
                "--view", "signals", "-o", folder.resolve("p.svg").toString());
        assertEquals(2, refused.code());
        assertTrue(refused.err().contains("none of the units has sectors"), refused.err());
    }
}
