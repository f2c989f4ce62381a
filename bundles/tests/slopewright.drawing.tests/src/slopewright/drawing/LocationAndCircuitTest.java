package slopewright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;

import org.junit.jupiter.api.Test;

import slopewright.drawing.circuit.CircuitScene;
import slopewright.drawing.plan.LocationScene;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.PaperArea;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.sheet.SheetFormat;
import slopewright.model.Project;
import slopewright.testkit.DemoProjects;

/** Where an aid stands on the aerodrome, and what feeds it. */
class LocationAndCircuitTest {

    private static final PaperArea A4 = SheetFormat.A4.area(0);

    private static List<String> texts(Scene scene) {
        return scene.marks().stream().filter(Mark.Label.class::isInstance).map(mark -> ((Mark.Label) mark).text()).toList();
    }

    /**
     * Unit D stands 330.46 m along a landing direction of 92 degrees and 37.5 m left of it: 330.46 sin 92 - 37.5 cos 92 = 331.57 m east and
     * 330.46 cos 92 + 37.5 sin 92 = 25.94 m north of the threshold.
     */
    @Test
    void aUnitStandsEastAndNorthOfItsThreshold() {
        DrawnAid drawn = DemoAids.drawn("PAPI 09");
        Scene scene = LocationScene.of(drawn, A4);
        String unit = drawn.aid().getUnits().stream().filter(each -> each.getLabel().equals("D")).findFirst().orElseThrow().getId();
        Mark.Disc disc = (Mark.Disc) scene.marks().stream().filter(mark -> mark.elementId().equals(unit)).findFirst().orElseThrow();
        assertEquals(331.57, disc.centre().x(), 0.02);
        assertEquals(25.94, disc.centre().y(), 0.02);
        assertTrue(texts(scene).containsAll(List.of("PAPI 09, runway 09", "PAPI 27, runway 27", "APAPI 03, runway 03",
                "Portable unit, north pad, approach H-250", "09", "27", "03", "21", "aerodrome reference point")), texts(scene).toString());
    }

    @Test
    void whatHasNoPlaceIsNamed() {
        Project project = DemoProjects.load(DemoProjects.GOOD);
        DemoProjects.aid(project, "APAPI 03").getUnits().clear();
        project.getAerodrome().getRunways().get(1).setLengthM(null);
        String said = String.join(" ", LocationScene.of(DemoAids.drawn(project, "PAPI 09"), A4).captions());
        assertTrue(said.contains("Not drawn, no place is known here: runway 03/21 and APAPI 03."), said);
    }

    /**
     * 10 units of 3 and 2 x 3 lamps of 200 W are 4 x 600 + 4 x 600 + 2 x 600 = 6000 W; 5 km of 3 ohm/km take 6.6 squared x 15 = 653.4 W;
     * together 6653.4 VA of 7500.
     */
    @Test
    void aCircuitSaysWhatItsUnitsAndItsCableTake() {
        List<String> texts = texts(CircuitScene.of(DemoAids.drawn("PAPI 27"), A4));
        assertTrue(texts.containsAll(List.of("Series circuit 1", "constant-current regulator 6.6 A", "rated 7.5 kVA", "current 6.6 A",
                "cable 5000 m", "4 \u00d7 3 \u00d7 200 W = 2400 W", "2 \u00d7 3 \u00d7 200 W = 1200 W", "Lamps together: 6000 W",
                "Cable at 3 ohm/km: 653.4 W", "Lamps and cable: 6653.4 VA, 88.71 % of the rating")), texts.toString());
        assertEquals(10, texts.stream().filter(text -> text.matches("[A-D]")).count());
    }

    @Test
    void whatIsNotEnteredIsNotKnownAndNeverZero() {
        Project project = DemoProjects.load(DemoProjects.GOOD);
        project.getAerodrome().getCircuits().get(0).setCableLengthM(null);
        DemoProjects.aid(project, "PAPI 09").getEquipment().setLampPowerW(null);
        List<String> texts = texts(CircuitScene.of(DemoAids.drawn(project, "PAPI 27"), A4));
        assertTrue(texts.containsAll(List.of("cable not known", "Lamps together: not known W",
                "Lamps and cable: not known VA, not known % of the rating")), texts.toString());
        List<String> german = texts(CircuitScene.of(DemoAids.drawn(project, "PAPI 27", Locale.GERMAN), A4));
        assertTrue(german.contains("Kabel nicht bekannt"), german.toString());
    }

    @Test
    void anAidWithoutACircuitHasNoDiagram() {
        Project project = DemoProjects.load(DemoProjects.GOOD);
        project.getAerodrome().getCircuits().clear();
        DrawnAid drawn = DemoAids.drawn(project, "PAPI 09");
        assertFalse(View.CIRCUIT.fits(drawn.aid()));
        assertThrows(IllegalArgumentException.class, () -> CircuitScene.of(drawn, A4));
    }
}
