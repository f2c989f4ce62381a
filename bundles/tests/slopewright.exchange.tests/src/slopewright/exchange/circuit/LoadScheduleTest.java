package slopewright.exchange.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

import slopewright.exchange.Demo;
import slopewright.exchange.sheet.Sheet;
import slopewright.model.Circuit;
import slopewright.model.Project;
import slopewright.model.util.Projects;

/** Circuits and loads of the demo. */
class LoadScheduleTest {

    private static String cell(Sheet sheet, int row, String column) {
        return sheet.rows().get(row).get(sheet.columns().indexOf(column)).text();
    }

    /** 10 units of 3 lamps of 200 W are 6000 W; 6.6 A squared through 3.4 ohm/km over 2.5 km are 370.26 W; 55 Ah at 4.2 A last 13.095 h. */
    @Test
    void circuitsAddUp() {
        Project project = Demo.project();
        Circuit series = project.getAerodrome().getCircuits().get(0);
        series.setCableLengthM(null);
        series.setRegulatorRatingKva(null);
        Sheet bare = LoadSchedule.of(project).sheet(Demo.ENGLISH);
        assertEquals("6000.0", cell(bare, 3, "lamps W"));
        assertEquals("not known", cell(bare, 3, "cable W"));
        assertEquals("not known", cell(bare, 3, "lamps and cable VA"));
        assertEquals("13.10", cell(bare, 5, "battery hours at most"));
        assertEquals("not applicable", cell(bare, 3, "battery hours at most"));
        series.setCableResistanceOhmPerKm(3.4);
        series.setCableLengthM(2500.0);
        series.setRegulatorRatingKva(7.5);
        Sheet sheet = LoadSchedule.of(project).sheet(Demo.ENGLISH);
        assertEquals("370.3", cell(sheet, 3, "cable W"));
        assertEquals("6370.3", cell(sheet, 3, "lamps and cable VA"));
        assertEquals("84.9", cell(sheet, 3, "share of rating percent"));
        assertEquals("5", cell(sheet, 3, "brightness steps"));
        assertEquals("10", cell(sheet, 3, "units"));
    }

    /** 80 per cent left by age and 75 by cold are 33 Ah, which at 4.2 A last 7.857 h. */
    @Test
    void whatAgeAndColdLeaveIsNamedBesideTheHours() {
        Project project = Demo.project();
        Circuit battery = project.getAerodrome().getCircuits().get(1);
        assertEquals("not known", cell(LoadSchedule.of(project).sheet(Demo.ENGLISH), 5, "age leaves percent"));
        assertEquals("not applicable", cell(LoadSchedule.of(project).sheet(Demo.ENGLISH), 3, "cold leaves percent"));
        battery.setAgeLeftPercent(80.0);
        battery.setColdLeftPercent(75.0);
        Sheet sheet = LoadSchedule.of(project).sheet(Demo.ENGLISH);
        assertEquals("80", cell(sheet, 5, "age leaves percent"));
        assertEquals("75", cell(sheet, 5, "cold leaves percent"));
        assertEquals("7.86", cell(sheet, 5, "battery hours at most"));
    }

    @Test
    void aMissingLampMakesTheSumUnknown() {
        Project project = Demo.project();
        Projects.aids(project).get(2).getEquipment().setLampPowerW(null);
        Projects.aids(project).get(1).setEquipment(null);
        Sheet sheet = LoadSchedule.of(project).sheet(Demo.ENGLISH);
        assertEquals("2400.0", cell(sheet, 0, "lamps W"));
        assertEquals("not known", cell(sheet, 1, "lamps a unit"));
        assertEquals("not known", cell(sheet, 2, "lamps W"));
        assertEquals("not known", cell(sheet, 3, "lamps W"));
        project.getAerodrome().getCircuits().get(1).setCurrentA(null);
        assertEquals("12.10", cell(LoadSchedule.of(project).sheet(Demo.ENGLISH), 5, "battery hours at most"), "55 Ah over 100 W at 22 V");
        project.getAerodrome().getCircuits().clear();
        assertEquals("no circuit", cell(LoadSchedule.of(project).sheet(Demo.ENGLISH), 0, "circuit"));
    }
}
