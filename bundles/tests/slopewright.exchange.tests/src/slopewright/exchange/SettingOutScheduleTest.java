package slopewright.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipFile;

import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;

/** The setting-out schedule of the demo. */
class SettingOutScheduleTest {

    @TempDir
    private Path folder;

    private static Project demo() {
        try {
            return ProjectFile.load(Path.of(System.getProperty("slopewright.root"), "demo-data", "harrow-vale", "harrow-vale.slopewright"));
        } catch (ProjectFileException e) {
            throw new AssertionError(e);
        }
    }

    /** The oracle of the position is the geodesic from the threshold at 47.3 N 11.9 W along 92 degrees, as GeographicLib solves it. */
    @Test
    void listsEveryUnitWithItsPosition() {
        List<List<String>> rows = SettingOutSchedule.rows(demo());
        assertEquals(1 + 4 + 4 + 2 + 1, rows.size());
        List<String> first = rows.get(1);
        assertEquals(List.of("runway 09", "PAPI 09", "D", "330.462", "-37.500"), first.subList(0, 5));
        double turn = Math.toDegrees(Math.atan2(-37.5, 330.462));
        GeodesicData unit = Geodesic.WGS84.Direct(47.3, -11.9, 92 + turn, Math.hypot(330.462, 37.5));
        assertEquals(unit.lat2, Double.parseDouble(first.get(7)), 5e-9);
        assertEquals(unit.lon2, Double.parseDouble(first.get(8)), 5e-9);
        assertEquals("272.000", first.get(11));
        assertEquals("3°35'", first.get(12));
    }

    @Test
    void writesCommaSeparatedValues() {
        String text = new String(SettingOutSchedule.csv(demo()), StandardCharsets.UTF_8);
        assertEquals(12, text.lines().count());
        assertTrue(text.contains("\"Portable unit, north pad\""), text);
    }

    @Test
    void writesAWorkbookWithNumbersAsNumbers() throws IOException {
        Path file = Files.write(folder.resolve("schedule.xlsx"), SettingOutSchedule.xlsx(demo()));
        String sheet;
        try (ZipFile zip = new ZipFile(file.toFile()); InputStream in = zip.getInputStream(zip.getEntry("xl/worksheets/sheet1.xml"))) {
            sheet = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        assertTrue(sheet.contains("<v>330.462</v>"), sheet);
        assertEquals(12, sheet.split("<row ", -1).length - 1);
    }
}
