package slopewright.evaluation.portable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.EvaluationCache;
import slopewright.evaluation.TrialSite;
import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Helipad;
import slopewright.model.LightColour;
import slopewright.model.LightState;
import slopewright.model.SlopewrightFactory;
import slopewright.model.Transition;

/**
 * What makes a sight line clear, and what never does. The portable unit stands 3.8 / tan 6 = 36.155 m beyond the hover point, its lowest
 * on-slope signal is 5.5 degrees, the published margin 1 degree below it, the accuracy of setting 5 minutes (taken over).
 */
class SightLinesTest {
    private static final LocalDate DAY = LocalDate.of(2026, 7, 1);
    private static final double LENS_M = 3.8 / Math.tan(Math.toRadians(6));

    private static PortableSetUp setUp(PortableSite site) {
        return PortableSetUp.of(AidEvaluation.of(site.aid, TrialSite.rules("faa"), new EvaluationCache()), DAY);
    }

    private static List<String> blockers(PortableSite site) {
        return setUp(site).blockers().stream().map(Message::english).toList();
    }

    private static PortableSite site(double redFromDeg) {
        PortableSite site = new PortableSite();
        site.enterSectors(redFromDeg);
        return site;
    }

    /** 1000 tan 4.5 = 78.702 over a top of 78: clear by 0.70. 5 minutes lower 1000 tan 4.41667 = 77.240: 0.76 through. */
    @Test
    void theUnitAtTheEndOfItsAllowanceDecides() {
        PortableSite site = site(-1.0);
        site.mast("mast", new FramePoint(LENS_M - 1000, 0, 78));
        SightLine line = setUp(site).sight().line(SightLine.Kind.MARGIN).orElseThrow();
        assertEquals(1000 * Math.tan(Math.toRadians(4.5)) - 78, line.marginM().orElseThrow(), 2e-3);
        assertEquals(1000 * Math.tan(Math.toRadians(4.5 - 5 / 60.0)) - 78, line.lowestMarginM().orElseThrow(), 2e-3);
        assertFalse(line.isClear());
        assertEquals(List.of("mast stands 0.76 m through the published margin below the lowest on-slope signal when the unit is 5.0' off."),
                blockers(site));
    }

    /** A red sector down to 6 degrees below the axis starts at the horizon, and below it when the unit is off. */
    @Test
    void anEdgeBelowTheHorizonIsNotClear() {
        PortableSite site = site(-6.0);
        site.mast("far away", new FramePoint(-5000, 0, -300));
        assertEquals(List.of("The lower edge of the red sector at 0°00' is below the horizon when the unit is 5.0' off."), blockers(site));
        assertEquals(List.of(), blockers(siteWithMast(-5.5)), "half a degree above the horizon, nothing near it");
    }

    private static PortableSite siteWithMast(double redFromDeg) {
        PortableSite site = site(redFromDeg);
        site.mast("far away", new FramePoint(-5000, 0, -300));
        return site;
    }

    @Test
    void nobodyKnowsWithoutASurvey() {
        PortableSetUp found = setUp(site(-1.0));
        assertEquals(List.of(Message.of("portable.no-survey")), found.blockers());
        assertFalse(found.sight().isClear());
        assertFalse(found.blockers().isEmpty());
    }

    /** One top is missing: the card is written all the same, and says so; what could be compared is compared. */
    @Test
    void aMissingTopIsNamedAndTakesNoCardAway() {
        PortableSite site = site(-1.0);
        site.mast("mast", new FramePoint(LENS_M - 1000, 0, 60));
        site.mast("tree", new FramePoint(LENS_M - 500, 0, 0)).getPlaces().get(0).setElevationM(null);
        PortableSetUp found = setUp(site);
        assertEquals(List.of(Message.of("portable.uncompared", Words.list(List.of(Message.of("evaluation.obstacle-without-top",
                Words.name("tree")))))), found.blockers());
        assertEquals(1000 * Math.tan(Math.toRadians(4.5)) - 60,
                found.sight().line(SightLine.Kind.MARGIN).orElseThrow().marginM().orElseThrow(), 2e-3);
    }

    /** A magnetic variation that was entered 0.6 degrees off the model makes no card, 0.4 degrees do. */
    @Test
    void aVariationFarFromTheModelMakesNoCard() {
        PortableSite site = siteWithMast(-1.0);
        double model = setUp(site).azimuth().variation().variationDeg();
        site.variation(model + 0.6, 0.0, "2026-07-01");
        assertEquals(1, blockers(site).size());
        assertTrue(blockers(site).get(0).startsWith("The entered magnetic variation of"), blockers(site).toString());
        site.variation(model + 0.4, 0.0, "2026-07-01");
        assertEquals(List.of(), blockers(site));
    }

    /** ICAO heliport sector unit: 5 minutes of setting, and half a degree of tilt before it switches itself off (5.3.6.8 ff.). */
    @Test
    void theTiltBeforeAUnitSwitchesItselfOffCounts() {
        TrialSite site = TrialSite.helipad("heliport-sector", 6);
        site.mast("mast", -1000, 0, 10);
        SightLines lines = SightLines.of(site.laidOut("icao:5th").evaluation("icao:5th"));
        assertEquals(35, lines.allowance().minutes(), 1e-9);
        SightLine line = lines.line(SightLine.Kind.MARGIN).orElseThrow();
        assertEquals(35 / 60.0, line.angleDeg() - line.lowestAngleDeg(), 1e-9);
    }

    /** hypot(0.3, 0.4) = 0.5 degrees = 30 minutes beside the 5 of setting, and 2 degrees of swing, whatever is said of the pad. */
    @Test
    void motionThatIsEnteredCountsWhateverIsSaidOfThePad() {
        TrialSite site = TrialSite.helipad("tri-colour", 6).laidOut("faa");
        assertEquals(5, SightLines.of(site.evaluation("faa")).allowance().minutes(), 1e-9);
        Helipad pad = site.aerodrome().getHelipads().get(0);
        pad.setDeckPitchDeg(0.3);
        pad.setDeckRollDeg(0.4);
        pad.setDeckHeadingDeg(2.0);
        for (Boolean floating : new Boolean[] {null, true, false}) {
            pad.setFloating(floating);
            SettingAllowance allowance = SightLines.of(site.evaluation("faa")).allowance();
            assertEquals(35, allowance.minutes(), 1e-9, "floating " + floating);
            assertEquals(2, allowance.turnDeg(), 1e-9, "floating " + floating);
        }
    }

    /**
     * A survey point 2000 m before the lens: the Earth drops 2000 squared / (2 x 6371008.8) x 0.87 =
     * 0.2731 m there, which the red edge takes and the published margin does not.
     */
    @Test
    void surveyPointsCountAndLinesOfSightCurve(@TempDir Path folder) {
        TrialSite site = TrialSite.helipad("tri-colour", 6).laidOut("faa");
        double lens = site.aid().getUnits().get(0).getAlongM();
        double right = site.aid().getUnits().get(0).getRightM();
        site.block(folder, "trees", new double[] {lens - 2000, right, 155}, new double[] {lens - 200, right, 0});
        site.aid().setEquipment(PortableSite.equipment(site.aerodrome(), -1.5));
        SightLines lines = SightLines.of(site.evaluation("faa"));
        SightLine margin = lines.line(SightLine.Kind.MARGIN).orElseThrow();
        SightLine red = lines.line(SightLine.Kind.RED_EDGE).orElseThrow();
        double height = site.aid().getUnits().get(0).getLensElevationM() - TrialSite.DATUM_M;
        assertEquals("trees, point 1", margin.obstacle());
        assertEquals(height + 2000 * Math.tan(Math.toRadians(4.5)) - 155, margin.marginM().orElseThrow(), 1e-6);
        assertEquals(margin.marginM().orElseThrow() + 4e6 / (2 * 6371008.8) * 0.87, red.marginM().orElseThrow(), 1e-6);
    }

    /** 10 degrees to each side of the lens, which stands 40 m to the right: 1000 m out that is from -136 to 216 m. */
    @Test
    void theSectorStartsAtTheLensBesideTheCentreLine() {
        TrialSite site = TrialSite.helipad("tri-colour", 6).laidOut("faa");
        var unit = site.aid().getUnits().get(0);
        unit.setRightM(40.0);
        var mast = site.mast("mast", unit.getAlongM() - 1000, 210, 200);
        assertTrue(SightLines.of(site.evaluation("faa")).line(SightLine.Kind.MARGIN).orElseThrow().governing().isPresent());
        mast.getPlaces().get(0).setEastM(-140.0);
        assertTrue(SightLines.of(site.evaluation("faa")).line(SightLine.Kind.MARGIN).orElseThrow().governing().isEmpty());
    }

    /** Every unit of a pair has its own lens: a mast behind the farther one's sector still stands in the nearer one's. */
    @Test
    void everyUnitOfAPairCounts() {
        TrialSite site = TrialSite.helipad("heliport-pair", 6).laidOut("faa");
        assertEquals(2, site.aid().getUnits().size());
        var second = site.aid().getUnits().get(1);
        second.setLensElevationM(second.getLensElevationM() - 1);
        site.mast("mast", -1000, 0, 10);
        SightLine line = SightLines.of(site.evaluation("faa")).line(SightLine.Kind.MARGIN).orElseThrow();
        assertEquals(second.getLabel(), line.unit(), "the lower lens has the lower line");
    }

    /**
     * The second unit of a pair is turned away from the mast before the first, and its red begins 10 degrees below its setting of 6.75:
     * 3.25 degrees below the horizon. Nothing stands in its sector, and it is not clear.
     */
    @Test
    void anEdgeBelowTheHorizonOfOneUnitOfAPairIsNotClear() {
        TrialSite site = TrialSite.helipad("heliport-pair", 6).laidOut("faa");
        site.mast("mast", -1000, 0, 10);
        site.aid().getUnits().forEach(unit -> {
            Transition edge = SlopewrightFactory.eINSTANCE.createTransition();
            edge.setOffsetDeg(unit == site.aid().getUnits().get(0) ? -3.0 : -10.0);
            edge.setWidthMinutes(3.0);
            edge.setBelowColour(LightColour.NONE);
            edge.setBelowState(LightState.OFF);
            edge.setAboveColour(LightColour.RED);
            unit.getTransitions().add(0, edge);
        });
        site.aid().getUnits().get(1).setAzimuthOffsetDeg(25.0);
        SightLines lines = SightLines.of(site.evaluation("faa"));
        SightLine red = lines.line(SightLine.Kind.RED_EDGE).orElseThrow();
        assertEquals(-3.25, red.angleDeg(), 1e-9);
        assertTrue(red.marginM().isEmpty(), "nothing stands in its sector");
        assertFalse(lines.isClear());
        assertTrue(red.isBelowHorizon());
    }

    /** The sector is searched 4 miles out, 6437.4 m; the lens stands 3.8 m cot 6 degrees = 36.2 m behind the hover point. */
    @Test
    void whatNoSurveyReachesIsNotClear() {
        PortableSite site = new PortableSite();
        site.enterSectors(-1.5);
        site.mast("mast", new FramePoint(-1000, 0, 10));
        site.survey.setReachM(7_000.0);
        assertTrue(setUp(site).sight().isClear());
        site.survey.setReachM(2_500.0);
        assertFalse(setUp(site).sight().isClear());
        site.aerodrome.getObstacleSurveys().clear();
        assertFalse(setUp(site).sight().isClear());
    }
}
