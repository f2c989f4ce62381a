package slopewright.exchange.settingout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;

import org.junit.jupiter.api.Test;

import slopewright.exchange.Demo;
import slopewright.exchange.sheet.Sheet;
import slopewright.model.LightUnit;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.magnetic.MagneticModel;

/** The setting-out schedule of the demo. */
class SettingOutScheduleTest {

    /** The day for which the demo has its magnetic variation. */
    private static final LocalDate DAY = LocalDate.of(2026, 1, 1);

    /** The variation is put to 4 degrees west of the day. */
    private static SettingOutSchedule settingOut(Project project) {
        project.getAerodrome().getMagneticVariation().setVariationDeg(-4.0);
        return SettingOutSchedule.of(Demo.evaluate(project), DAY);
    }

    private static String cell(Sheet sheet, int row, String column) {
        return sheet.rows().get(row).get(sheet.columns().indexOf(column)).text();
    }

    private static double number(Sheet sheet, int row, String column) {
        return sheet.rows().get(row).get(sheet.columns().indexOf(column)).number().orElseThrow();
    }

    /** The oracle of the position is the geodesic from the threshold at 47.3 N 11.9 W along 92 degrees, as GeographicLib solves it. */
    @Test
    void settingOutHasEveryUnitAtItsPosition() {
        Sheet sheet = settingOut(Demo.project()).sheet(Demo.ENGLISH);
        assertEquals(4 + 4 + 2 + 1, sheet.rows().size());
        double turn = Math.toDegrees(Math.atan2(-37.5, 330.462));
        GeodesicData unit = Geodesic.WGS84.Direct(47.3, -11.9, 92 + turn, Math.hypot(330.462, 37.5));
        assertEquals(unit.lat2, number(sheet, 0, "latitude deg"), 5e-10);
        assertEquals(unit.lon2, number(sheet, 0, "longitude deg"), 5e-10);
        assertEquals("-37.500", cell(sheet, 0, "offset m"));
        assertEquals("no grid", cell(sheet, 0, "east m"));
        assertEquals(578.217, number(sheet, 4, "chainage from runway extremity m"), 1e-9, "278.217 and 300 of displaced threshold");
        assertEquals("not applicable", cell(sheet, 10, "chainage from runway extremity m"));
    }

    /** Tangents of 3.583333 degrees from a pocket calculator: 0.0626226; 272 degrees with 4 degrees of westerly variation are 276. */
    @Test
    void settingOutTellsWhatAStaffAndAClinometerRead() {
        Sheet sheet = settingOut(Demo.project()).sheet(Demo.ENGLISH);
        assertEquals("3°35'", cell(sheet, 0, "setting"));
        assertEquals("62.62", cell(sheet, 0, "gradient mm per m"));
        assertEquals("87.444", cell(sheet, 0, "staff level at 5 m"), "87.131 and 0.313");
        assertEquals("87.757", cell(sheet, 0, "staff level at 10 m"), "87.131 and 0.626");
        assertEquals("88.383", cell(sheet, 0, "staff level at 20 m"), "87.131 and 1.252");
        assertEquals("1.252", cell(sheet, 0, "above lens at 20 m"));
        assertEquals("86.531", cell(sheet, 0, "ground elevation m"), "87.131 less 0.6");
        assertEquals("272.000", cell(sheet, 0, "azimuth true deg"));
        assertEquals("276.000", cell(sheet, 0, "azimuth magnetic deg"));
        assertEquals("1.00", cell(sheet, 0, "setting tolerance min"), "icao/9th/values.csv: four-unit-row.setting-accuracy-min");
        assertTrue(cell(sheet, 0, "tolerance source").contains("CAP 168 (restated), 6.200 [secondary]"),
                cell(sheet, 0, "tolerance source"));
    }

    /** What was entered stands beside what the model of the Earth's field gives for the day. */
    @Test
    void theEnteredVariationStandsBesideTheComputedOne() {
        String said = cell(settingOut(Demo.project()).sheet(Demo.ENGLISH), 0, "magnetic variation");
        double modelDeg = MagneticModel.bundled().declination(47.3, -11.9, 86.4 + 52.4, DAY).declinationDeg();
        assertTrue(said.startsWith("runway 09: magnetic variation 4.00\u00b0 west (entered: -4.00\u00b0 on 2026-01-01"), said);
        assertTrue(said.contains(String.format(Locale.ROOT, ": %.2f\u00b0, 2026-01-01)", modelDeg)), said);
        assertTrue(Math.abs(modelDeg + 4) > 1, "not the same number by chance");
    }

    /** On a local grid turned by 10 degrees, a beam toward 272 degrees true lies at 262 degrees of the grid. */
    @Test
    void settingOutOnALocalGrid() {
        Project project = Demo.project();
        project.getAerodrome().setCoordinateReference("local");
        project.getAerodrome().setGridRotationDeg(10.0);
        Projects.hosts(project).forEach(host -> {
            if (host instanceof RunwayEnd end) {
                end.getThreshold().setEastM(5000.0);
                end.getThreshold().setNorthM(7000.0);
            }
        });
        Sheet sheet = settingOut(project).sheet(Demo.ENGLISH);
        assertEquals("262.000", cell(sheet, 0, "azimuth grid deg"));
        double along = Math.toRadians(92 - 10);
        assertEquals(5000 + 330.462 * Math.sin(along) - 37.5 * Math.cos(along), number(sheet, 0, "east m"), 0.0006);
        assertEquals(7000 + 330.462 * Math.cos(along) + 37.5 * Math.sin(along), number(sheet, 0, "north m"), 0.0006);
        assertEquals("not known", cell(sheet, 0, "latitude deg"));
    }

    /** Whoever sets out reads on which ground the levels rest; the demo has a profile of its ground by an invented survey. */
    @Test
    void theScheduleSaysWhichGroundTheLevelsRestOn() {
        Project project = Demo.project();
        List<String> notes = settingOut(project).sheet(Demo.ENGLISH).notes();
        assertTrue(notes.stream().anyMatch(note -> note.startsWith("runway 09, ground under the units: site profile of ")
                && note.endsWith("; source: ground survey (invented); date: 2026-05-12; accuracy: 0.02 m.")), notes.toString());
        Projects.hosts(project).forEach(host -> {
            if (host instanceof RunwayEnd end) {
                end.getSiteProfile().clear();
            }
        });
        project.getAerodrome().getGroundLevels().clear();
        List<String> unknown = settingOut(project).sheet(Demo.ENGLISH).notes();
        assertTrue(unknown.contains("runway 09, ground under the units: none is known: it is taken as level with the threshold or the "
                + "touchdown area."), unknown.toString());
    }

    @Test
    void whatIsNotKnownIsNotZero() {
        Project project = Demo.project();
        LightUnit unit = Projects.aids(project).get(0).getUnits().get(0);
        unit.setSettingDeg(null);
        unit.setHeightAboveGroundM(null);
        Sheet sheet = settingOut(project).sheet(Demo.ENGLISH);
        for (String column : List.of("setting", "setting deg", "gradient mm per m", "staff level at 5 m", "ground elevation m")) {
            assertEquals("not known", cell(sheet, 0, column), column);
        }
    }
}
