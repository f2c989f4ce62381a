package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;

/** Many runway ends, and a folder of projects, against what stands there. */
class SweepTest {

    private static final String ROW = " --family four-unit-row --rule-set icao:5th --slope-deg 3 --runway-width-m 45 --code 4"
            + " --approach instrument --eye-to-wheel-m 6.63";
    private static final double ACCURACY_M = 0.001;
    private static final String SAID = " --date 2026-05-20 --vertical-datum sea --horizontal-accuracy-m 0.001 --vertical-accuracy-m 0.001";
    private static final String HEADER = "id,aerodrome,latitudeDeg,longitudeDeg,trueBearingDeg,elevationM,verticalDatum\n";
    /** A degree of the meridian about 46.9955 north on WGS 84: 111132.954 - 559.822 cos 2 phi + 1.175 cos 4 phi. */
    private static final double DEGREE_M = 111_170.75;

    @TempDir
    private Path folder;

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private Path points(String rows) throws IOException {
        return write("points.csv", "id,latitudeDeg,longitudeDeg,topElevationM\n" + rows + "far-s,44,9,1\nfar-n,50,13,1\n");
    }

    private Map<String, JsonNode> rows(Words words) {
        Map<String, JsonNode> rows = new HashMap<>();
        words.json().get("rows").forEach(row -> rows.put(row.get("end").asText(), row));
        return rows;
    }

    /** The surface starts 60 m before the threshold and rises 1.93 degrees; the point lies 0.009 degrees south on the extended axis. */
    @Test
    void everyEndHasItsRow() throws IOException {
        Path ends = write("ends.csv", HEADER + "N,ZZAA,47,11,0,100,sea\nS,ZZAA,47,11,180,100,sea\nfar,ZZBB,20,100,90,5,sea\n"
                + "other,ZZCC,47,11,0,100,lake\npole,ZZDD,97,11,0,100,sea\nN,ZZEE,47,11,0,100,sea\nnone,ZZFF,47,11,NaN,100,sea\n");
        Words words = Words.line("sweep --json " + ends + " --against " + points("mast,46.991,11,133.5\n") + SAID + ROW);
        assertEquals(1, words.code(), words.err());
        assertEquals(7, words.json().get("rows").size());
        assertEquals(64, words.json().get("againstSha256").get(0).asText().length());
        Map<String, JsonNode> rows = rows(words);
        JsonNode north = rows.get("N");
        assertEquals("above", north.get("state").asText());
        assertEquals("mast", north.get("governing").asText());
        assertEquals((0.009 * DEGREE_M - 60 - ACCURACY_M) * Math.tan(Math.toRadians(1.93)) - 33.5 - ACCURACY_M,
                north.get("marginM").asDouble(), 1e-3);
        assertEquals("not evaluated", rows.get("S").get("state").asText(), "nobody said that the points hold everything");
        assertTrue(rows.get("S").get("reason").asText().startsWith("no point lies inside"), rows.get("S").toString());
        assertTrue(rows.get("S").get("marginM").isNull());
        assertEquals("the surface reaches beyond the points", rows.get("far").get("reason").asText());
        assertEquals("the points are in another vertical datum than 'lake'", rows.get("other").get("reason").asText());
        List<String> refused = List.of("latitudeDeg is 97.0", "has the id 'N' of a row before it", "NaN");
        for (int i = 0; i < refused.size(); i++) {
            JsonNode row = words.json().get("rows").get(4 + i);
            assertEquals("not evaluated", row.get("state").asText());
            assertTrue(row.get("reason").asText().contains(refused.get(i)), row.toString());
        }
    }

    /** Two surveys far apart: between them stands nothing that anybody surveyed, unless it is said that they hold everything. */
    @Test
    void whereNoPointLiesNobodyKnowsWhatStandsThere() throws IOException {
        Path ends = write("ends.csv", HEADER + "S,ZZAA,47,11,180,100,sea\n");
        String line = "sweep --json " + ends + " --against " + points("mast,46.991,11,133.5\n") + SAID + ROW;
        assertEquals(5, Words.line(line).code());
        Words said = Words.line(line + " --complete");
        assertEquals(0, said.code(), said.err());
        assertEquals("nothing inside", rows(said).get("S").get("state").asText());
    }

    /** One low house under a surface of four kilometres says what stands there, not that nothing else does. */
    @Test
    void fewPointsUnderASurfaceDoNotMakeItClear() throws IOException {
        Path ends = write("ends.csv", HEADER + "N,ZZAA,47,11,0,100,sea\n");
        String line = "sweep --json " + ends + " --against " + points("house,46.991,11,105\n") + SAID + ROW;
        Words alone = Words.line(line);
        assertEquals(5, alone.code(), alone.err());
        JsonNode row = rows(alone).get("N");
        assertEquals("not evaluated", row.get("state").asText());
        assertTrue(row.get("reason").asText().startsWith("those that lie inside stay below, and nobody said"), row.toString());
        assertEquals(1, row.get("inside").asInt());
        assertTrue(row.get("marginM").asDouble() > 0, "the figures are told all the same");
        assertEquals("below", rows(Words.line(line + " --complete")).get("N").get("state").asText());
    }

    /** The demonstration without its survey: what is entered stays below, and nobody says that nothing else stands there. */
    @Test
    void obstaclesWithoutASurveyDoNotMakeASurfaceClear() throws Exception {
        Path demo = Path.of(System.getProperty("slopewright.root"), "demo-data", "harrow-vale", "harrow-vale.slopewright");
        Project project = ProjectFile.load(demo);
        project.getAerodrome().getObstacleSurveys().clear();
        project.getSurveyBlocks().clear();
        project.getAerodrome().getBackgroundImages().clear();
        ProjectFile.save(project, folder.resolve("unsurveyed.slopewright"));
        Words words = Words.line("sweep --json " + folder);
        assertEquals(5, words.code(), words.err());
        JsonNode first = words.json().get("rows").get(0);
        assertEquals("no survey says that nothing else stands there", first.get("reason").asText());
        assertEquals("Tannery power line", first.get("governing").asText());
    }

    /** Turned by 30 degrees, against its thresholds, the surface looks where nothing stands: the row says what the check says of it. */
    @Test
    void aRowSaysWhatTheCheckSaysOfTheAid() throws IOException {
        Path demo = Path.of(System.getProperty("slopewright.root"), "demo-data", "harrow-vale", "harrow-vale.slopewright");
        Path survey = Files.createDirectories(folder.resolve("survey"));
        try (Stream<Path> files = Files.list(demo.resolveSibling("survey"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, survey.resolve(file.getFileName()));
            }
        }
        Path site = Files.copy(demo, folder.resolve("site.slopewright"));
        Words sound = Words.line("sweep --json " + folder);
        assertEquals(0, sound.code(), sound.err() + sound.out());
        assertTrue(sound.json().get("rows").get(0).get("verdict").asText().startsWith("Met"), sound.out());
        Files.writeString(site, Files.readString(site).replace("trueBearingDeg=\"92.0\"", "trueBearingDeg=\"122.0\""));
        Words turned = Words.line("sweep --json " + folder);
        JsonNode first = turned.json().get("rows").get(0);
        assertEquals("nothing inside", first.get("state").asText());
        assertTrue(first.get("verdict").asText().startsWith("Not met"), first.toString());
        assertEquals(1, turned.code());
    }

    /** Seven rows in four parts: what several machines say one after the other is what one says. */
    @Test
    void partsAreTheWhole() throws IOException {
        StringBuilder table = new StringBuilder(HEADER);
        for (int i = 0; i < 7; i++) {
            table.append(i == 4 ? "E0" : "E" + i).append(",ZZAA,47,11,").append(40 * i).append(",100,sea\n");
        }
        Path ends = write("ends.csv", table.toString());
        String line = "sweep --csv " + ends + " --against " + points("mast,46.991,11,133.5\n") + SAID + ROW + " --complete";
        List<String> whole = Words.line(line).out().lines().toList();
        assertEquals(8, whole.size());
        List<String> parts = new ArrayList<>(List.of(whole.get(0)));
        for (int i = 1; i <= 4; i++) {
            parts.addAll(Words.line(line + " --part " + i + "/4").out().lines().skip(1).toList());
        }
        assertEquals(whole, parts);
        for (String wrong : List.of("0/4", "5/4", "1", "a/b", "1/0", "1/9999999")) {
            assertEquals(2, Words.line(line + " --part " + wrong).code(), wrong);
        }
    }

    @Test
    void theTableSaysWhatItWasMadeFrom() throws IOException {
        Path ends = write("ends.csv", HEADER + "N,ZZAA,47,11,0,100,sea\n");
        Words words = Words.line("sweep --csv " + ends + " --against " + points("mast,46.991,11,120\n") + SAID + ROW + " --complete");
        assertEquals(0, words.code(), words.err());
        List<String> lines = words.out().lines().toList();
        assertEquals("file,projectFileSha256,aerodrome,end,aid,ruleSet,verdict,state,reason,inside,above,governing,governingLatitudeDeg,"
                + "governingLongitudeDeg,governingElevationM,marginM,program,againstSha256", lines.get(0));
        assertTrue(lines.get(1).matches("ends.csv,,ZZAA,N,,icao:5th,,below,,1,0,mast,46.991000000,11.000000000,120.0000,11.69[0-9]*,"
                + "slopewright [0-9.]+,[0-9a-f]{64}"), lines.get(1));
    }

    /** Without date, datum or accuracy nothing is compared; a table needs something to be held against. */
    @ParameterizedTest
    @ValueSource(strings = {"--vertical-datum sea --horizontal-accuracy-m 0.001 --vertical-accuracy-m 0.001",
        "--date 2026-05-20 --horizontal-accuracy-m 0.001 --vertical-accuracy-m 0.001", "--date 2026-05-20 --vertical-datum sea",
        "--date 2026-05-20 --vertical-datum sea --horizontal-accuracy-m 0.5 --vertical-accuracy-m 0",
        "--date 2026-05-20 --vertical-datum sea --horizontal-accuracy-m -0.5 --vertical-accuracy-m 1"})
    void nothingOfThePointsIsAssumed(String said) throws IOException {
        Path ends = write("ends.csv", HEADER + "N,ZZAA,47,11,0,100,sea\n");
        assertEquals(2, Words.line("sweep " + ends + " --against " + points("mast,46.991,11,120\n") + " " + said + ROW).code());
        assertEquals(2, Words.line("sweep " + ends + ROW).code());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "id,latitudeDeg\n", HEADER, HEADER + "\"N,ZZAA,47,11,0,100,sea\n"})
    void aTableThatIsNoneIsRefused(String text) throws IOException {
        Path ends = write("ends.csv", text);
        assertEquals(3, Words.line("sweep " + ends + " --against " + points("") + SAID + ROW).code());
    }

    /** The demonstration has no terrain, so nobody knows what the ground hides; below the horizon the ground around hides everything. */
    @Test
    void withoutTerrainNobodyKnowsWhatIsSeen() {
        Path demo = Path.of(System.getProperty("slopewright.root"), "demo-data", "harrow-vale", "harrow-vale.slopewright");
        Words words = Words.line("view --json " + demo + " --aid approach-aid-1 --half-width-deg 8");
        assertEquals(5, words.code(), words.err());
        assertEquals(4, words.json().get("units").size());
        words.json().get("units").forEach(unit -> {
            assertEquals("not evaluated", unit.get("state").asText());
            assertEquals(0, unit.get("groundKnownToM").asDouble());
        });
        assertEquals(1, Words.line("view " + demo + " --aid approach-aid-1 --half-width-deg 8 --lowest-deg -5").code());
        assertEquals(2, Words.line("view " + demo + " --aid approach-aid-1 --half-width-deg 80").code());
    }

    /** A plane that rises by a hundredth to the north, in cells of ten metres: known within 0.5 m and what the cells beside it differ. */
    @Test
    void theGroundUnderTheUnitsIsToldFromTerrainAndIsNoSurvey() throws IOException, ProjectFileException {
        Path demo = Path.of(System.getProperty("slopewright.root"), "demo-data", "harrow-vale", "harrow-vale.slopewright");
        Path file = Files.copy(demo, folder.resolve("site.slopewright"));
        assertEquals(5, Words.line("terrain " + file + " --aid approach-aid-1").code());
        StringBuilder grid = new StringBuilder("ncols 160\nnrows 60\nxllcorner 280400\nyllcorner 5242350\ncellsize 10\n");
        for (int row = 0; row < 60; row++) {
            grid.append((90 - 0.1 * row + " ").repeat(160)).append('\n');
        }
        Words imported = Words.run("import", write("plane.asc", grid.toString()).toString(), "--into", file.toString(), "-o",
                file.toString(), "--force", "--grid", "EPSG:32629", "--date", "2026-05-20", "--horizontal-accuracy-m", "1",
                "--vertical-accuracy-m", "0.5", "--as", "obstacle-block", "--vertical-datum",
                "Harrow Vale local mean sea level (invented)");
        assertEquals(0, imported.code(), imported.err());
        Words words = Words.line("terrain --json " + file + " --aid approach-aid-1 --step-m 100");
        assertEquals(1, words.code(), words.err());
        JsonNode unit = words.json().get("places").get(0);
        assertEquals("too coarse for a level", unit.get("state").asText());
        assertEquals("2026-05-20", unit.get("date").asText());
        assertTrue(unit.get("accuracyM").asDouble() >= 0.6 && unit.get("accuracyM").asDouble() <= 0.7, unit.toString());
        JsonNode last = words.json().get("places").get(words.json().get("places").size() - 1);
        assertEquals("not known", last.get("state").asText());
        assertTrue(last.get("elevationM").isNull());

        Path taken = folder.resolve("taken.slopewright");
        assertEquals(2, Words.run("terrain", file.toString(), "--aid", "approach-aid-1", "--take").code(), "where to?");
        Words take = Words.run("terrain", file.toString(), "--aid", "approach-aid-1", "--take", "-o", taken.toString());
        assertEquals(0, take.code(), take.err());
        RunwayEnd end = ProjectFile.load(taken).getAerodrome().getRunways().get(0).getEnds().get(0);
        assertTrue(end.getSiteProfileSource().startsWith("model of the terrain, no survey"), end.getSiteProfileSource());
        assertEquals("2026-05-20", end.getSiteProfileDate());
        double elevation = unit.get("elevationM").asDouble();
        double atUnit = end.getSiteProfile().stream().min(Comparator.comparingDouble(point -> Math.abs(point.getChainageM()
                - unit.get("alongM").asDouble()))).orElseThrow().getElevationM();
        assertEquals(elevation, atUnit, 0.35, "the line of the units is the middle of their row, 13.5 m from the outer one");
        Words check = Words.run("check", taken.toString(), "--rules", "DATA-68", "--json");
        assertTrue(check.out().contains("\"verdict\" : \"not-met\""), check.out());
        assertEquals(2, Words.run("terrain", file.toString(), "--aid", "approach-aid-2", "--take", "-o", folder.resolve("no.slopewright")
                .toString()).code(), "no model knows the ground there");
    }

    /** What the check says of each aid of the demonstration (demo-data/harrow-vale), a project that is none, and a survey beside. */
    @Test
    void aFolderOfProjectsIsSwept() throws IOException {
        Path demo = Path.of(System.getProperty("slopewright.root"), "demo-data", "harrow-vale", "harrow-vale.slopewright");
        Words alone = Words.line("sweep --json " + demo.getParent());
        assertEquals(0, alone.code(), alone.err());
        JsonNode first = alone.json().get("rows").get(0);
        assertEquals("PAPI 09", first.get("aid").asText());
        assertEquals("Tannery power line", first.get("governing").asText());
        Files.copy(demo, folder.resolve("a.slopewright"));
        write("b.slopewright", "no project");
        Words broken = Words.line("sweep --json " + folder);
        assertEquals(1, broken.code());
        JsonNode last = broken.json().get("rows").get(broken.json().get("rows").size() - 1);
        assertEquals("b.slopewright", last.get("file").asText());
        assertEquals("not evaluated", last.get("state").asText());
        Words beyond = Words.line("sweep --json " + demo.getParent() + " --against " + points("") + SAID);
        assertEquals(5, beyond.code());
        assertEquals(2, Words.line("sweep " + demo.getParent() + " --slope-deg 3").code());
    }
}
