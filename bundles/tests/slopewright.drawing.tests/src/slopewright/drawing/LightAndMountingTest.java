package slopewright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import slopewright.drawing.equipment.LightScene;
import slopewright.drawing.equipment.MountingScene;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.PaperArea;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.sheet.SheetFormat;
import slopewright.evaluation.equipment.LightDistribution;
import slopewright.evaluation.equipment.LightDistribution.Contour;
import slopewright.model.Project;
import slopewright.siting.Colour;
import slopewright.testkit.DemoProjects;

/** The light of the equipment against what is asked of it, and how its units stand. */
class LightAndMountingTest {

    private static final PaperArea A4 = SheetFormat.A4.area(0);

    private static List<String> texts(Scene scene) {
        return scene.marks().stream().filter(Mark.Label.class::isInstance).map(mark -> ((Mark.Label) mark).text()).toList();
    }

    private static DrawnAid ninth() {
        Project project = DemoProjects.load(DemoProjects.GOOD);
        project.setRuleSetKey("icao:9th");
        DemoProjects.aid(project, "PAPI 09").setRuleSetKey(null);
        return DemoAids.drawn(project, "PAPI 09");
    }

    /**
     * Fig A2-23 for red light of a row of four, as printed: 15000, 10000, 7000 and 4000 cd inside 2, 4, 6 and 8 degrees to each side and 2,
     * 2.5, 3 and 3.5 above and below. The second is a stadium of flanks 1.5 long to each side with ends of radius 2.5: at 45 degrees
     * (x - 1.5)\u00b2 + x\u00b2 = 2.5\u00b2 gives x = (3 + \u221a41) / 4.
     */
    @Test
    void theContoursAreThoseOfTheFigure() {
        LightDistribution red = LightDistribution.of(ninth().evaluation()).stream().filter(light -> light.colour() == Colour.RED)
                .findFirst().orElseThrow();
        assertEquals(List.of(15000.0, 10000.0, 7000.0, 4000.0), red.required().stream().map(Contour::intensityCd).toList());
        double[][] ends = {{2, 2}, {4, 2.5}, {6, 3}, {8, 3.5}};
        for (int i = 0; i < ends.length; i++) {
            assertEquals(ends[i][0], red.required().get(i).at(0, 90).azimuthDeg(), 1e-6);
            assertEquals(-ends[i][1], red.required().get(i).at(-Math.PI / 2, 90).elevationDeg(), 1e-6);
        }
        assertEquals((3 + Math.sqrt(41)) / 4, red.required().get(1).at(Math.PI / 4, 90).azimuthDeg(), 1e-6);
        List<String> texts = texts(LightScene.of(ninth(), A4));
        assertTrue(texts.containsAll(List.of("15000 cd", "10000 cd", "7000 cd", "4000 cd", "90000", "20000")), texts.toString());
    }

    /** 20000 cd at the axis and at 2 degrees to both sides and below; with 14000 at the axis the area of 15000 is no area any more. */
    @Test
    void whatWasMeasuredStandsBesideWhatIsAskedAndAHoleIsNoArea() {
        DrawnAid drawn = ninth();
        LightDistribution red = LightDistribution.of(drawn.evaluation()).stream().filter(light -> light.colour() == Colour.RED)
                .findFirst().orElseThrow();
        assertEquals(3, red.reached(15000).size());
        assertEquals(0, texts(LightScene.of(drawn, A4)).stream().filter(text -> text.contains("<")).count());
        drawn.aid().getEquipment().getIntensities().stream().filter(point -> point.getElevationDeg() == -2.0).findFirst().orElseThrow()
                .setIntensityCd(14999.0);
        List<String> texts = texts(LightScene.of(drawn, A4));
        assertTrue(texts.contains("14999 < 15000 cd"), texts.toString());
    }

    @Test
    void withoutATableNothingIsEvaluated() {
        DrawnAid drawn = ninth();
        drawn.aid().getEquipment().getIntensities().clear();
        Scene scene = LightScene.of(drawn, A4);
        assertTrue(texts(scene).contains("red: not evaluated, nothing was measured"), texts(scene).toString());
        assertTrue(scene.captions().contains("Not evaluated: no intensities of Four-unit set, 0.60 m are entered."), scene.captions()
                .toString());
        drawn.aid().setEquipment(null);
        assertTrue(LightScene.of(drawn, A4).captions().contains("Not evaluated: no type of equipment is entered."));
        DrawnAid portable = DemoAids.drawn("Portable unit, north pad");
        assertFalse(LightScene.fits(portable));
        assertTrue(texts(LightScene.of(portable, A4)).get(0).startsWith("Not evaluated"), texts(LightScene.of(portable, A4)).toString());
    }

    /** Unit D as it was entered: its lens at 87.131 m, 0.60 m above the ground that was levelled there, 38 kg. */
    @Test
    void everyUnitHasItsLevelsAndWhatIsNotEnteredIsSaid() {
        DrawnAid drawn = ninth();
        List<String> texts = texts(MountingScene.of(drawn, A4));
        int unit = texts.indexOf("D");
        assertEquals(List.of("D", "86.531", "87.131", "0.600", "0.600", "3\u00b035'", "0\u00b000'", "38.0", "frangible"),
                texts.subList(unit, unit + 9));
        drawn.aid().getEquipment().setMassKg(null);
        drawn.aid().getUnits().get(0).setFrangible(null);
        drawn.aid().getUnits().get(0).setHeightAboveGroundM(null);
        drawn.aid().getEquipment().setHeightAboveGroundM(null);
        texts = texts(MountingScene.of(drawn, A4));
        unit = texts.indexOf("D");
        assertEquals(List.of("-", "-", "not entered"), List.of(texts.get(unit + 4), texts.get(unit + 7), texts.get(unit + 8)));
    }
}
