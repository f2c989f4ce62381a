package slopewright.evaluation.portable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.EvaluationCache;
import slopewright.evaluation.Proposals;
import slopewright.evaluation.TrialSite;
import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.model.PlateSense;
import slopewright.model.PlateZero;

/** What the hand does at a unit: plate, slope scale and walk. */
class HandUnitTest {
    private static final LocalDate DAY = LocalDate.of(2026, 7, 1);

    private static PortableSetUp setUp(PortableSite site) {
        return PortableSetUp.of(AidEvaluation.of(site.aid, TrialSite.rules("faa"), new EvaluationCache()), DAY);
    }

    /**
     * The pointer looks along the beam, outward, so that it reads beam less zero where the numbers run clockwise and zero less beam where
     * they do not. Landing toward 070 by compass the beam looks to 250, toward 250 to 070.
     * North, clockwise: 250 - 0 = 250; 70 - 0 = 70.
     * North, anticlockwise: 0 - 250 + 360 = 110; 0 - 70 + 360 = 290.
     * South, clockwise: 250 - 180 = 70; 70 - 180 + 360 = 250: the landing direction itself.
     * South, anticlockwise: 180 - 250 + 360 = 290; 180 - 70 = 110.
     * Landing direction, the beam turned four degrees clockwise: 254 - 70 = 184 and 74 - 250 + 360 = 184; anticlockwise 70 - 254 + 360 =
     * 176 and 250 - 74 = 176.
     */
    @ParameterizedTest
    @CsvSource({"NORTH, CLOCKWISE, 70, 250, 250", "NORTH, CLOCKWISE, 250, 70, 70", "NORTH, ANTICLOCKWISE, 70, 250, 110",
            "NORTH, ANTICLOCKWISE, 250, 70, 290", "SOUTH, CLOCKWISE, 70, 250, 70", "SOUTH, CLOCKWISE, 250, 70, 250",
            "SOUTH, ANTICLOCKWISE, 70, 250, 290", "SOUTH, ANTICLOCKWISE, 250, 70, 110", "LANDING_DIRECTION, CLOCKWISE, 70, 254, 184",
            "LANDING_DIRECTION, CLOCKWISE, 250, 74, 184", "LANDING_DIRECTION, ANTICLOCKWISE, 70, 254, 176",
            "LANDING_DIRECTION, ANTICLOCKWISE, 250, 74, 176"})
    void thePlateReads(PlateZero zero, PlateSense sense, double landing, double beam, double reading) {
        AzimuthPlate.Reading found = new AzimuthPlate(zero, sense, 1).reading(beam, landing);
        assertEquals(reading, found.exactDeg(), 1e-9);
        assertEquals(reading, found.markDeg(), 1e-9);
    }

    /** Marks of five degrees: 253.9 is nearest to 255, 1.1 off; 358.2 to 360, which is the zero, 1.8 off; 2.4 to 0. */
    @ParameterizedTest
    @CsvSource({"253.9, 255, 1.1", "358.2, 0, 1.8", "2.4, 0, 2.4", "2.6, 5, 2.4"})
    void theNearestMarkIsRead(double beam, double mark, double off) {
        AzimuthPlate.Reading found = new AzimuthPlate(PlateZero.NORTH, PlateSense.CLOCKWISE, 5).reading(beam, 0);
        assertEquals(beam, found.exactDeg(), 1e-9);
        assertEquals(mark, found.markDeg(), 1e-9);
        assertEquals(off, found.offDeg(), 1e-9);
    }

    /** Landing toward 270 true with 2 degrees east: 268 by compass, the beam to 088; the zero lies to 180, and 88 - 180 + 360 = 268. */
    @Test
    void theSetUpReadsThePlateByCompass() {
        PortableSite site = new PortableSite();
        site.variation(2.0, 0.0, "2026-07-01");
        site.type.setPlateZero(PlateZero.SOUTH);
        site.type.setPlateSense(PlateSense.CLOCKWISE);
        assertTrue(setUp(site).hands().get(0).plate().isEmpty(), "no graduation, no reading");
        site.type.setPlateStepDeg(1.0);
        HandUnit hand = setUp(site).hands().get(0);
        assertEquals(88, hand.beamMagneticDeg(), 1e-9);
        assertEquals(180, hand.plate().orElseThrow().zeroMagneticDeg(), 1e-9);
        assertEquals(268, hand.plate().orElseThrow().markDeg(), 1e-9);
    }

    /** 30 m on and 40 m to the right of a landing direction of 270: 50 m toward 270 + atan(40 / 30) = 323.13. */
    @Test
    void theWalkIsFromTheHoverPoint() {
        PortableSite site = new PortableSite();
        site.variation(2.0, 0.0, "2026-07-01");
        site.enterSectors(-1.5);
        site.aid.getUnits().add(site.unit(30, 40));
        HandUnit hand = setUp(site).hands().get(0);
        assertEquals(50, hand.walkM(), 1e-9);
        assertEquals(323.1301, hand.walkTrueDeg(), 1e-4);
        assertEquals(321.1301, hand.walkMagneticDeg(), 1e-4);
    }

    /** Marks of 0.25 degrees: 7.04 is nearest to 7.0, 2.4 minutes flatter; 7.13 to 7.25, 7.2 minutes steeper. */
    @Test
    void theSlopeIsSetToTheNearestMark() {
        SlopeScale scale = new SlopeScale(0.25);
        assertEquals(7.0, scale.mark(7.04).markDeg(), 1e-9);
        assertEquals(-2.4, scale.mark(7.04).offMin(), 1e-9);
        assertEquals(7.25, scale.mark(7.13).markDeg(), 1e-9);
        assertEquals(7.2, scale.mark(7.13).offMin(), 1e-9);
    }

    /** 6 degrees on marks of 0.7: the nearest is 6.3, 18 minutes off where 5 are allowed, and a cause not to use the unit. */
    @Test
    void aSettingBetweenTheMarksIsNotForUse() {
        PortableSite site = new PortableSite();
        site.type.setSlopeScaleStepDeg(0.7);
        PortableSetUp found = setUp(site);
        assertTrue(found.blockers().stream().map(Message::english).anyMatch(
                "Unit 1 cannot be set to 6°00': the nearest mark of its scale, 6.30°, is 18.0' off, and 5.0' are allowed."::equals),
                found.blockers().toString());
        assertEquals(5 + 18, found.sight().allowance().minutes(), 1e-9, "and the sight lines are that much lower");
    }

    /**
     * 5 minutes of setting; a bubble of 8 minutes makes 13. A unit that stays lit up to 0.5 degrees makes 35, whatever its bubble. Marks
     * of 0.7 degrees add 18. A deck that pitches 0.3 and rolls 0.4 degrees adds half a degree, one held to 0.1 degrees 6 minutes.
     */
    @Test
    void theAllowanceAddsUp() {
        PortableSite site = new PortableSite();
        site.type.setBubbleAccuracyMinutes(8.0);
        assertEquals(13, setUp(site).sight().allowance().minutes(), 1e-9);
        site.type.setTiltCutOffDeg(0.5);
        assertEquals(35, setUp(site).sight().allowance().minutes(), 1e-9);
        site.type.setSlopeScaleStepDeg(0.7);
        assertEquals(53, setUp(site).sight().allowance().minutes(), 1e-6);
        site.helipad.setFloating(true);
        site.helipad.setDeckPitchDeg(0.3);
        site.helipad.setDeckRollDeg(0.4);
        site.helipad.setDeckHeadingDeg(2.0);
        assertEquals(83, setUp(site).sight().allowance().minutes(), 1e-6);
        assertEquals(2, setUp(site).sight().allowance().turnDeg(), 1e-9);
        assertEquals(12, setUp(site).sight().halfDeg(), 1e-9, "10 degrees and the swing of the deck");
        site.type.setStabilisedToDeg(0.1);
        assertEquals(59, setUp(site).sight().allowance().minutes(), 1e-6);
    }

    /** Red from 4 to 0.5 degrees below the slope is 210 minutes wide, green 60; pitch of 0.3 and roll of 0.4 move each edge by 30. */
    @Test
    void aDeckLeavesLessOfEachSector() {
        PortableSite site = new PortableSite();
        site.enterSectors(-4.0);
        site.helipad.setFloating(true);
        site.helipad.setDeckPitchDeg(0.3);
        site.helipad.setDeckRollDeg(0.4);
        site.helipad.setDeckHeadingDeg(2.0);
        Proposals.layOut(site.aid, TrialSite.rules("faa"));
        PortableSetUp found = setUp(site);
        DeckMotion motion = DeckMotion.of(site.direction, site.type).orElseThrow();
        assertEquals(List.of("210 150", "60 0"), motion.left(found.siting().units().get(0)).stream()
                .map(sector -> Math.round(sector.widthMin()) + " " + Math.round(sector.leftMin())).toList());
        site.type.setStabilisedToDeg(0.1);
        assertEquals(List.of(198L, 48L), DeckMotion.of(site.direction, site.type).orElseThrow().left(found.siting().units().get(0)).stream()
                .map(sector -> Math.round(sector.leftMin())).toList());
    }

    /** A tilt of 30 minutes at 325 m is 325 (tan 4.5 - tan 4.0) = 2.85 m: more than the 0.71 m by which the line seemed to be clear. */
    @Test
    void aTiltThatEatsTheMarginBlocks() {
        PortableSite site = new PortableSite();
        site.enterSectors(-1.5);
        double lens = 3.8 / Math.tan(Math.toRadians(6));
        double height = 325 * Math.tan(Math.toRadians(4.5)) - 0.71;
        site.mast("wire", new FramePoint(lens - 325, 0, height));
        SightLine before = setUp(site).sight().line(SightLine.Kind.MARGIN).orElseThrow();
        assertEquals(0.71, before.marginM().orElseThrow(), 2e-3);
        assertEquals(List.of(), setUp(site).blockers());
        site.type.setTiltCutOffDeg(0.5);
        SightLine after = setUp(site).sight().line(SightLine.Kind.MARGIN).orElseThrow();
        assertEquals(0.71 - 325 * (Math.tan(Math.toRadians(4.5)) - Math.tan(Math.toRadians(4.5 - 35 / 60.0))),
                after.lowestMarginM().orElseThrow(), 2e-3);
        assertTrue(setUp(site).blockers().stream().map(Message::english).allMatch(text -> text.startsWith("wire stands ")),
                setUp(site).blockers().toString());
        assertEquals(2, setUp(site).blockers().size(), "both lines");
    }
}
