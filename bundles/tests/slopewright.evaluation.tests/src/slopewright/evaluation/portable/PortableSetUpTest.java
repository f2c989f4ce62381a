package slopewright.evaluation.portable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.EvaluationCache;
import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.siting.SitingException;
import slopewright.siting.magnetic.MagneticModel;
import slopewright.siting.magnetic.SiteVariation;
import slopewright.standards.Provenance;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** The set-up of a portable unit at an invented helipad. */
class PortableSetUpTest {

    private static final LocalDate DAY = LocalDate.of(2026, 7, 1);
    private static final RuleSet FAA = RuleSets.find("faa").orElseThrow();

    private static PortableSetUp setUp(PortableSite site) {
        return setUp(site, FAA);
    }

    private static PortableSetUp setUp(PortableSite site, RuleSet rules) {
        return PortableSetUp.of(AidEvaluation.of(site.aid, rules, new EvaluationCache()), DAY);
    }

    private static SightLine line(PortableSetUp setUp, SightLine.Kind kind) {
        return setUp.sight().line(kind).orElseThrow();
    }

    private static List<String> blockers(PortableSetUp setUp) {
        return setUp.blockers().stream().map(Message::english).toList();
    }

    /** The path passes the eye at the hover: (2.0 + 1.8) / tan 6 = 36.155 m beyond the hover point. */
    @Test
    void theUnitStandsWhereThePathMeetsTheHoveringEye() {
        PortableSetUp found = setUp(new PortableSite());
        assertTrue(found.solved());
        assertEquals(36.155, found.siting().distanceM(), 5e-4);
        assertTrue(found.notes().contains(Message.of("portable.solved")));
    }

    /** Landing toward 270, the beam looks to 090; variation of the model at 51 N 1 W, 100 m, on the day. */
    @Test
    void theAzimuthIsTrueAndByCompass() {
        PortableSite site = new PortableSite();
        site.aid.setAxisTurnDeg(4.0);
        Azimuth azimuth = setUp(site).azimuth();
        assertEquals(270, azimuth.landingTrueDeg(), 1e-9);
        assertEquals(94, azimuth.beamTrueDeg(), 1e-9);
        double model = MagneticModel.bundled().declination(51, -1, 100, DAY).declinationDeg();
        assertEquals(model, azimuth.variation().variationDeg(), 1e-9);
        assertEquals(94 - model, azimuth.beamMagneticDeg(), 1e-9);
        assertEquals(270 - model, azimuth.landingMagneticDeg(), 1e-9);
        assertTrue(azimuth.variation().source().english().contains("WMM2025, epoch 2025.0"));
        assertFalse(azimuth.variation().entered());
    }

    /** 1.0 degree east on 1 January 2026 and 0.2 a year make 1.0 + 0.2 x 181 / 365 on 1 July. */
    @Test
    void anEnteredVariationIsBroughtToTheDay() {
        PortableSite site = new PortableSite();
        site.variation(1.0, 0.2, "2026-01-01");
        SiteVariation variation = setUp(site).azimuth().variation();
        assertEquals(1 + 0.2 * 181 / 365, variation.variationDeg(), 1e-12);
        assertTrue(variation.entered());
        assertTrue(variation.source().english().contains("aeronautical chart, invented"));
        assertEquals(Provenance.OVERRIDE, variation.citation().provenance());
        assertTrue(variation.notes().isEmpty(), variation.notes().toString());
    }

    @Test
    void anEnteredVariationIsRemarkedOnWhereSomethingIsMissingOrTheModelDiffers() {
        PortableSite site = new PortableSite();
        site.variation(-4.0, null, "2026-01-01");
        SiteVariation variation = SiteVariation.of(site.direction, DAY);
        assertEquals(-4, variation.variationDeg());
        assertTrue(variation.notes().get(0).english().contains("no annual change"));
        assertTrue(variation.notes().get(1).english().contains("WMM2025") && variation.notes().get(1).english().contains("differs"));
        site.variation(1.0, 0.2, "in spring");
        assertTrue(assertThrows(SitingException.class, () -> SiteVariation.of(site.direction, DAY)).getMessage().contains("in spring"));
    }

    /** Entered with source and date it serves on a day for which the model does not hold; without, that day is refused. */
    @Test
    void outsideTheModelsTimeTheVariationMustBeEntered() {
        PortableSite site = new PortableSite();
        LocalDate late = LocalDate.of(2031, 1, 1);
        assertTrue(assertThrows(SitingException.class, () -> SiteVariation.of(site.direction, late)).getMessage().contains("2030.0"));
        site.variation(1.0, 0.2, "2030-01-01");
        assertEquals(1.2, SiteVariation.of(site.direction, late).variationDeg(), 1e-12);
    }

    /**
     * Lowest on-slope signal 5.5 degrees, margin 1 degree below it: 4.5. A mast 1000 m before the lens, 80 m high: the margin line is
     * 1000 tan 4.5 = 78.702 m high there, which leaves -1.298 m. The red edge at 6 - 1.0 = 5.0: 87.489 m, and the Earth drops
     * 1000 squared / (2 x 6371008.8) x 0.87 = 0.0683 m, which leaves 7.557 m.
     */
    @Test
    void theMarginGovernsWhereItIsStricter() {
        PortableSite site = new PortableSite();
        site.enterSectors(-1.0);
        double lens = 3.8 / Math.tan(Math.toRadians(6));
        site.mast("mast", new FramePoint(lens - 1000, 20, 80));
        PortableSetUp found = setUp(site);
        SightLine margin = line(found, SightLine.Kind.MARGIN);
        assertEquals(4.5, margin.angleDeg(), 1e-9);
        assertEquals(1000 * Math.tan(Math.toRadians(4.5)) - 80, margin.marginM().orElseThrow(), 2e-3);
        assertFalse(margin.kind().isCurved());
        SightLine red = line(found, SightLine.Kind.RED_EDGE);
        assertEquals(5.0, red.angleDeg(), 1e-9);
        assertEquals(1000 * Math.tan(Math.toRadians(5)) + 1e6 / (2 * 6371008.8) * 0.87 - 80, red.marginM().orElseThrow(), 2e-3);
        assertTrue(red.kind().isCurved() && red.curvature().english().contains("0.13"));
        assertEquals(SightLine.Kind.MARGIN, found.sight().governing().orElseThrow().kind());
        assertEquals("mast", margin.obstacle());
        assertFalse(found.sight().isClear());
        assertEquals(List.of("mast stands 1.30 m through the published margin below the lowest on-slope signal."), blockers(found));
    }

    /**
     * Common practice, no source: the sight line of a portable unit is the lower edge of the red sector. The published text (Order 8200.1,
     * 7.10) has a margin of 1 degree below the lowest on-slope signal; both lines are drawn, and the stricter governs.
     */
    @Test
    void theSightLineOfTheTradeIsTheLowerEdgeOfRed() {
        for (double lower : new double[] {-1.5, -2.0, -3.0}) {
            PortableSite site = new PortableSite();
            site.enterSectors(lower);
            assertEquals(6 + lower, line(setUp(site), SightLine.Kind.RED_EDGE).angleDeg(), 1e-9);
            assertEquals(4.5, line(setUp(site), SightLine.Kind.MARGIN).angleDeg(), 1e-9);
        }
    }

    /** A red sector that reaches down to 3 degrees is stricter than the margin: 6 - 3 = 3 degrees against 4.5. */
    @Test
    void theRedEdgeGovernsWhereItIsStricter() {
        PortableSite site = new PortableSite();
        site.enterSectors(-3.0);
        site.mast("mast", new FramePoint(-1000, 0, 40));
        PortableSetUp found = setUp(site);
        assertEquals(SightLine.Kind.RED_EDGE, found.sight().governing().orElseThrow().kind());
        assertEquals(3.0, found.sight().governing().orElseThrow().angleDeg(), 1e-9);
        assertTrue(found.sight().isClear() && found.blockers().isEmpty(), found.blockers().toString());
    }

    /** 5 km out the drop is 1.707 m; the line of sight takes it into account, the rule does not. */
    @Test
    void curvatureCountsForTheLineOfSightOnly() {
        PortableSite site = new PortableSite();
        site.enterSectors(-1.5);
        double lens = 3.8 / Math.tan(Math.toRadians(6));
        site.mast("far", new FramePoint(lens - 5000, 0, 300));
        PortableSetUp found = setUp(site);
        double gap = line(found, SightLine.Kind.RED_EDGE).marginM().orElseThrow() - line(found, SightLine.Kind.MARGIN).marginM()
                .orElseThrow();
        assertEquals(25e6 / (2 * 6371008.8) * 0.87, gap, 1e-2);
        assertEquals(line(found, SightLine.Kind.RED_EDGE).angleDeg(), line(found, SightLine.Kind.MARGIN).angleDeg(), 1e-9);
    }

    /** 10 degrees to each side: at 1000 m that is 176.3 m. */
    @ParameterizedTest
    @CsvSource({"170, true", "-170, true", "180, false", "-180, false"})
    void theSectorIsTenDegreesToEachSide(double rightM, boolean inside) {
        PortableSite site = new PortableSite();
        double lens = 3.8 / Math.tan(Math.toRadians(6));
        site.mast("mast", new FramePoint(lens - 1000, rightM, 200));
        assertEquals(inside, line(setUp(site), SightLine.Kind.MARGIN).marginM().isPresent());
    }

    /** The survey accuracy counts on the safe side: 2 m higher. */
    @Test
    void surveyAccuracyTakesFromTheMargin() {
        PortableSite site = new PortableSite();
        var mast = site.mast("mast", new FramePoint(-1000, 0, 60));
        double before = line(setUp(site), SightLine.Kind.MARGIN).marginM().orElseThrow();
        mast.setVerticalAccuracyM(2.0);
        assertEquals(before - 2, line(setUp(site), SightLine.Kind.MARGIN).marginM().orElseThrow(), 1e-9);
    }

    @Test
    void withoutSectorsThereIsNoCard() {
        PortableSetUp found = setUp(new PortableSite());
        assertEquals(PortableSetUp.SectorSource.UNCONFIRMED, found.sectors());
        assertFalse(found.blockers().isEmpty());
        assertFalse(found.sight().isClear(), "one of the lines could not be drawn");
        assertTrue(found.blockers().contains(Message.of("portable.sectors-unconfirmed")));
        assertTrue(found.toConfirm().stream().anyMatch(citation -> citation.key().equals("tri-colour.on-slope-sector-deg")));
        RuleSet confirmed = FAA;
        for (String key : new String[] {"tri-colour.on-slope-sector-deg", "tri-colour.dark-amber-min"}) {
            confirmed = confirmed.withConfirmation(key, "J. Doe against the data sheet");
        }
        PortableSite site = new PortableSite();
        assertEquals(PortableSetUp.SectorSource.CONFIRMED, setUp(site, confirmed).sectors());
    }

    @Test
    void sectorsOfTheEquipmentMustBeThoseOfTheLayout() {
        PortableSite site = new PortableSite();
        site.enterSectors(-2.0);
        assertEquals(PortableSetUp.SectorSource.ENTERED, setUp(site).sectors());
        site.mast("mast", new FramePoint(-1000, 0, 10));
        assertEquals(List.of(), blockers(setUp(site)));
        assertTrue(setUp(site).notes().stream().noneMatch(note -> note.english().contains("from memory")),
                "those of the rule set decide nothing");
        assertTrue(setUp(site).citations().stream().noneMatch(citation -> citation.key().equals("tri-colour.on-slope-sector-deg")));
        site.type.getSectors().get(1).setOffsetDeg(-0.4);
        assertEquals(List.of(Message.of("portable.sectors-differ")), setUp(site).blockers());
    }

    /** 80 kt and 1000 ft/min make 7.04 degrees; a unit set to 6 degrees is 1.04 flatter, one without a slope is solved for it. */
    @Test
    void theDescentGivesTheSlope() {
        PortableSite site = new PortableSite();
        site.aid.setGroundSpeedKt(80.0);
        site.aid.setDescentFtmin(1000.0);
        PortableSetUp found = setUp(site);
        assertEquals(7.04, found.descent().orElseThrow().slopeDeg(), 0.005);
        PlannedDescent planned = PlannedDescent.of(AidEvaluation.of(site.aid, FAA, new EvaluationCache())).orElseThrow();
        assertEquals(7.04, planned.plannedDeg(), 0.005);
        assertEquals(6, planned.setDeg(), 1e-9);
        assertEquals(-1.04 * 60, planned.offMin(), 0.3);
        site.aid.setSlopeDeg(null);
        site.aid.setGroundSpeedKt(null);
        site.aid.setAirSpeedKt(80.0);
        PortableSetUp solved = setUp(site);
        assertEquals(7.0903, solved.siting().slopeDeg(), 5e-5);
        assertTrue(solved.notes().stream().anyMatch(note -> note.english().startsWith("Still air")));
        assertTrue(solved.citations().stream().anyMatch(citation -> citation.key().equals("table.rate-of-descent")));
    }

    /** 5 minutes on 6 degrees at 1000 m: 1000 (tan 6.08333 - tan 6) = 1.4707 m up, 1.4703 m down. */
    @Test
    void aTiltedUnitMovesThePath() {
        PortableSite site = new PortableSite();
        LevellingEffect effect = setUp(site).levelling();
        assertEquals(5, effect.minutes());
        assertEquals(5 / 60.0, effect.slopeErrorDeg(), 1e-12);
        LevellingEffect.HeightError far = effect.heights().stream().filter(height -> height.distanceM() == 1000).findFirst().orElseThrow();
        assertEquals(1.4707, far.upM(), 5e-5);
        assertEquals(1.4703, far.downM(), 5e-5);
        assertEquals(5 * Math.tan(Math.toRadians(8)), effect.acrossEdgeMin(), 1e-4, "across the axis only the edge of the beam moves");
    }

    /** 55 Ah: 4.2 A last 13.095 h; 100 W take 4.545 A at 22 V (12.1 h) and 3.571 A at 28 V (15.4 h). */
    @Test
    void theBatteryLastsAsLongAsItsLoadLets() {
        PortableSite site = new PortableSite();
        site.battery(55.0, 4.2);
        BatteryEndurance byCurrent = setUp(site).battery().orElseThrow();
        assertEquals(13.095, byCurrent.leastHours(), 5e-4);
        assertEquals(byCurrent.leastHours(), byCurrent.mostHours());
        assertEquals(22, byCurrent.supplyFromV());
        assertEquals(28, byCurrent.supplyToV());
        assertTrue(byCurrent.citations().stream().allMatch(citation -> citation.provenance() == Provenance.COMMON_PRACTICE));
        PortableSite other = new PortableSite();
        other.battery(55.0, null);
        other.type.setLampPowerW(50.0);
        other.type.setLampsPerUnit(2);
        BatteryEndurance byPower = setUp(other).battery().orElseThrow();
        assertEquals(12.1, byPower.leastHours(), 1e-9);
        assertEquals(15.4, byPower.mostHours(), 1e-9);
        other.type.setMinVoltageV(23.5);
        assertTrue(setUp(other).battery().orElseThrow().notes().stream().anyMatch(note -> note.english().contains("22 V to 28 V")));
        other.type.setLampPowerW(null);
        assertTrue(setUp(other).battery().isEmpty());
        assertTrue(setUp(other).notes().contains(Message.of("portable.battery-unknown", Message.of("battery.no-load"))),
                "an unknown endurance does not take the card away");
        assertTrue(setUp(new PortableSite()).battery().isEmpty());
    }
}
