package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What speaks against a place goes along with whatever is solved there. The thresholds of 09 lie on 92 degrees. */
class PlaceStandingTest {

    private static final String DEMO = Words.demo("harrow-vale/harrow-vale.slopewright").toString();

    @TempDir
    private Path folder;

    private String changed(String from, String to) throws IOException {
        String text = Files.readString(Path.of(DEMO));
        assertTrue(text.contains(from));
        return Files.writeString(folder.resolve("changed.slopewright"), text.replace(from, to)).toString();
    }

    private static Words site(String project) {
        return Words.run("site", project, "--end", "09", "--family", "four-unit-row", "--json");
    }

    @Test
    void nothingIsSaidOfASoundPlace() {
        Words run = site(DEMO);
        assertEquals(0, run.code());
        assertEquals("", run.err());
        assertTrue(run.json().get("madeFrom").get("verdict").asText().startsWith("Met"));
        assertFalse(run.json().get("notes").toString().contains("DATA-"));
    }

    @Test
    void aContradictoryPlaceIsSaidWithTheSiting() throws IOException {
        Words run = site(changed("trueBearingDeg=\"92.0\"", "trueBearingDeg=\"122.0\""));
        assertEquals(1, run.code());
        assertTrue(run.err().contains("Not met"), run.err());
        JsonNode site = run.json();
        assertTrue(site.get("madeFrom").get("verdict").asText().startsWith("Not met"));
        assertTrue(site.get("notes").get(0).asText().contains("DATA-15") && site.get("notes").get(0).asText().contains("122.00"));
    }

    /** 27 has an instrument approach: that 09 has none can be so, and nobody knows. No family fits there, and a siting says it. */
    @Test
    void anOpenQuestionOfThePlaceIsSaidToo() throws IOException {
        String project = changed("approachType=\"PRECISION_CAT_I\"", "approachType=\"NON_PRECISION\"");
        Words run = site(project);
        assertEquals(0, run.code());
        assertTrue(run.json().get("madeFrom").get("verdict").asText().startsWith("To clear up"), run.out());
        assertTrue(run.json().get("notes").get(0).asText().contains("DATA-72"), run.out());
        for (JsonNode family : Words.run("compare", project, "--end", "09", "--json").json().get("families")) {
            assertFalse(family.get("fits").asBoolean(), family.toString());
        }
    }

    @Test
    void aSurfaceAndASignalAtSuchAPlaceSayItToo() throws IOException {
        String project = changed("trueBearingDeg=\"92.0\"", "trueBearingDeg=\"122.0\"");
        Path points = Files.writeString(folder.resolve("points.csv"), "id,alongM,rightM,heightM\np,-1000,0,5\n");
        Words surface = Words.run("surface", project, "--end", "09", "--family", "four-unit-row", "--points", points.toString(), "--json");
        assertTrue(surface.json().get("madeFrom").get("verdict").asText().startsWith("Not met"));
        Words signal = Words.run("signal", project, "--end", "09", "--family", "four-unit-row", "--along-m", "-1000", "--right-m", "0",
                "--height-m", "70", "--json");
        assertTrue(signal.json().get("madeFrom").get("verdict").asText().startsWith("Not met"));
    }
}
