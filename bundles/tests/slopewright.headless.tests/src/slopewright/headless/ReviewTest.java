package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Words that contradict each other are refused, and messages are one clean line. */
class ReviewTest {

    private static final String DEMO = Words.demo("harrow-vale/harrow-vale.slopewright").toString();
    private static final String ROW = "--family four-unit-row --rule-set icao:5th --slope-deg 3 --runway-width-m 45 --code 4"
            + " --approach visual --eye-to-wheel-m 5 ";

    @TempDir
    private Path folder;

    private static void refused(Words words, String reason) {
        assertEquals(2, words.code(), words.out() + words.err());
        assertEquals("", words.out());
        assertEquals(1, words.err().lines().count(), words.err());
        assertTrue(words.err().contains(reason), words.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"--ground-speed-kt 80 --descent-ftmin 400", "--lens-height-m 1 --lens-above-ground-m 1",
        "--lens-height-m 1 --ground-slope-percent 1"})
    void twoWordsForOneThingAreRefused(String words) {
        refused(Words.line("site --json " + ROW + words), "exclude each other");
    }

    @Test
    void oneSideOfATwoSidedFamilyIsRefused() {
        refused(Words.line("site --json --family t-form --rule-set icao:5th --slope-deg 3 --runway-width-m 45 --code 4 --side left"),
                "both sides");
        refused(Words.line("site --json --family two-bar --rule-set faa --slope-deg 3 --runway-width-m 45 --eye-height-m 12 --units 12"
                + " --side left"), "both sides");
        assertEquals(0, Words.line("site --json --family two-bar --rule-set faa --slope-deg 3 --runway-width-m 45 --eye-height-m 12"
                + " --units 4 --side left").code());
    }

    @Test
    void anAidStandsAsItStands() {
        String eye = " --along-m -3000 --height-m 170";
        refused(Words.line("signal " + DEMO + " --aid approach-aid-1 --slope-deg 4" + eye), "--slope-deg");
        refused(Words.line("signal " + DEMO + " --aid approach-aid-1 --end 09" + eye), "exclude each other");
        refused(Words.line("site " + DEMO + " --helipad x --end 09 --family four-unit-row"), "exclude each other");
        assertEquals(0, Words.line("signal " + DEMO + " --aid approach-aid-1 --rule-set easa" + eye).code());
    }

    /** 15.60 m on 3 deg 18' with 1 % of rise: 15.6 / (tan 3.3 + 0.01) = 230.57 m. */
    @Test
    void groundThatIsGivenReplacesTheProfileOfTheFile() {
        var site = Words.line("site --json " + DEMO
                + " --end 27 --family four-unit-row --ground-slope-percent 1 --lens-above-ground-m 0").json();
        assertEquals(230.57, site.get("distanceM").asDouble(), 0.005);
        assertTrue(site.get("notes").toString().contains("set aside"));
    }

    /** atan(500 ft/min over 60 kt of 101.2686 ft/min) = 4.70 deg, from the table of descents. */
    @Test
    void aDescentReplacesTheSlopeOfTheFile() {
        assertEquals(4.70, Words.line("site --json " + DEMO + " --end 27 --family four-unit-row --ground-speed-kt 60 --descent-ftmin 500")
                .json().get("slopeDeg").asDouble(), 0.005);
    }

    @Test
    void pointFilesWithoutAPointEvaluateNothing() throws IOException {
        Path points = Files.writeString(folder.resolve("none.csv"), "id,alongM,rightM,heightM\n");
        Words surface = Words.line("surface --json " + ROW + "--points " + points);
        assertEquals(5, surface.code());
        assertEquals(0, surface.json().get("points").asInt());
        assertTrue(surface.err().contains("holds no point"), surface.err());
    }

    @Test
    void theReasonWhyThereIsNoSurfaceIsSaidAlone() throws IOException {
        Path points = Files.writeString(folder.resolve("p.csv"), "id,alongM,rightM,heightM\na,-500,0,1\n");
        Words surface = Words.line("surface --family four-unit-row --rule-set icao:5th --slope-deg 3 --runway-width-m 45 --code 1"
                + " --approach visual --eye-to-wheel-m 2 --points " + points);
        refused(surface, "prints no slope");
        assertFalse(surface.err().contains("layout is used"), surface.err());
    }

    @Test
    void hostileTextDoesNotReachTheTerminal() throws IOException {
        Path points = Files.writeString(folder.resolve("bad.csv"), "\u001b[2Jid\u000b\u2028x" + "y".repeat(5000) + "\n");
        Words surface = Words.line("surface " + ROW + "--points " + points);
        assertEquals(3, surface.code());
        String line = surface.err().stripTrailing();
        assertTrue(line.length() < 400, line);
        assertTrue(IntStream.range(0, line.length()).noneMatch(i -> Character.isISOControl(line.charAt(i)) || line.charAt(i) == '\u2028'),
                line);
    }

    @Test
    void aProjectWithoutAnAidIsNoPass() throws IOException {
        String text = Files.readString(Path.of(DEMO));
        Path bare = Files.writeString(folder.resolve("bare.slopewright"), text.replaceAll("(?s)<aerodrome.*</aerodrome>", ""));
        Words check = Words.run("check", bare.toString(), "--json");
        assertEquals(5, check.code());
        assertTrue(check.err().contains("no approach aid"), check.err());
        assertTrue(check.project().has("counts"));
    }

    /** Clause 5.3.5.4: the two-unit row is for code 1 and 2; runway 09 of the demo has code 4, runway 03 code 1 or 2. */
    @Test
    void aFamilyThatTheCodeForbidsDoesNotFit() {
        assertFalse(fits("09"));
        assertTrue(fits("03"));
    }

    private static boolean fits(String end) {
        for (var family : Words.run("compare", DEMO, "--end", end, "--json").json().get("families")) {
            if ("two-unit-row".equals(family.get("family").asText())) {
                assertEquals(family.get("fits").asBoolean(), !family.get("reason").asText().contains("for code"), family.toString());
                assertEquals(family.get("fits").asBoolean(), "fits".equals(family.get("fit").asText()));
                return family.get("fits").asBoolean();
            }
        }
        throw new AssertionError("two-unit-row is missing");
    }

    /** 6.6 m of eye to wheel are 21.7 ft, height group 4 of the rule set: a crossing height of 75 ft, 22.86 m, within the millimetre. */
    @Test
    void familiesAreComparedUnderARuleSetWithoutWheelClearances() {
        for (var family : Words.run("compare", DEMO, "--end", "09", "--rule-set", "faa", "--json").json().get("families")) {
            if ("two-bar".equals(family.get("family").asText())) {
                assertEquals(75 * 0.3048, family.get("eyeHeightOverThresholdM").asDouble(), 0.001);
            }
        }
    }
}
