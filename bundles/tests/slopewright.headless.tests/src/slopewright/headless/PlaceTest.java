package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.model.AidSide;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;
import slopewright.testkit.DemoProjects;

/** Placing an indicator from the command line. */
class PlaceTest {

    private static final String DEMO = DemoProjects.file("harrow-vale").toString();

    @TempDir
    private Path folder;

    private String out() {
        return folder.resolve("placed.slopewright").toString();
    }

    private ApproachAid placed(String name) throws ProjectFileException {
        return DemoProjects.aid(ProjectFile.load(Path.of(out())), name);
    }

    /**
     * The inner unit of a pair stands 10 m from the edge of the runway, as document 9157 part 4 is cited for: half the width of the runway
     * and 10 m from the centre line, on the right where that is asked. The main runway is near there, which stands against it.
     */
    @Test
    void anIndicatorStandsWhereItsRuleSetLaysItOut() throws ProjectFileException {
        Words run = Words.run("place", DEMO, "--end", "21", "--family", "two-unit-row", "--side", "right", "--name", "New row",
                "-o", out());
        assertEquals(1, run.code(), run.err());
        assertTrue(run.out().contains("Against it: ROW-06"), run.out());
        ApproachAid aid = placed("New row");
        assertEquals(AidSide.RIGHT, aid.getSide());
        double half = DemoProjects.load(DemoProjects.GOOD).getAerodrome().getRunways().get(1).getWidthM() / 2;
        assertEquals(half + 10, aid.getUnits().stream().mapToDouble(unit -> unit.getRightM()).min().orElseThrow(), 1e-3);
        assertEquals(2, aid.getUnits().size());
        assertTrue(run.out().contains("units: 2"), run.out());
    }

    @Test
    void aSlopeThatIsNamedIsThatOfTheLayout() throws ProjectFileException {
        Words run = Words.run("place", DEMO, "--end", "21", "--family", "two-unit-row", "--slope-deg", "3.5", "-o", out());
        assertEquals(1, run.code(), run.err());
        assertTrue(run.out().contains("Against it: UNIT-12"), "a unit would stand on the main runway: " + run.out());
        assertEquals(3.5, placed("APAPI").getSlopeDeg());
        double above = placed("APAPI").getUnits().stream().mapToDouble(unit -> unit.getSettingDeg()).average().orElseThrow();
        assertEquals(3.5, above, 1e-6, "a pair stands 15 minutes above and below the slope");
    }

    /** The light single that lands there may fly 6 degrees at most: a row for 7 is placed, and something stands against it. */
    @Test
    void aSlopeThatNoAeroplaneFliesStandsAgainstIt() throws ProjectFileException {
        Words run = Words.run("place", DEMO, "--end", "03", "--family", "two-unit-row", "--side", "right", "--slope-deg", "7",
                "--name", "Steep row", "-o", out());
        assertEquals(1, run.code(), run.err());
        assertTrue(run.out().contains("Against it: EYE-05"), run.out());
        assertEquals(7.0, placed("Steep row").getSlopeDeg());
    }

    @Test
    void aSecondOneOfTheFamilyGoesToTheOtherSideOnly() throws ProjectFileException {
        Words run = Words.run("place", DEMO, "--end", "09", "--family", "four-unit-row", "-o", out());
        assertEquals(2, run.code());
        assertTrue(run.err().contains("approach-aid-1 of that family stands there already"), run.err());
        assertFalse(Files.exists(Path.of(out())));
        assertEquals(0, Words.run("place", DEMO, "--end", "09", "--family", "four-unit-row", "--side", "right", "--name", "Other", "-o",
                out()).code());
        Project project = ProjectFile.load(Path.of(out()));
        ApproachAid first = DemoProjects.aid(project, "PAPI 09");
        ApproachAid other = DemoProjects.aid(project, "Other");
        assertEquals(-first.getUnits().get(0).getRightM(), other.getUnits().stream().mapToDouble(unit -> unit.getRightM()).min()
                .orElseThrow(), 1e-3, "as far from the centre line");
    }

    @Test
    void wordsThatDoNotFitAreRefused() {
        assertEquals(2, Words.run("place", DEMO, "--family", "four-unit-row", "-o", out()).code());
        assertEquals(2, Words.run("place", DEMO, "--end", "09", "--family", "heliport-sector", "-o", out()).code());
        assertEquals(2, Words.run("place", DEMO, "--end", "09", "--family", "two-bar", "--side", "both", "-o", out()).code());
        assertEquals(2, Words.run("place", DEMO, "--end", "21", "--family", "two-unit-row", "--equipment", "none", "-o", out()).code());
    }
}
