package slopewright.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.geometry.FramePoint;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.model.Aerodrome;
import slopewright.model.AidSide;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachType;
import slopewright.model.GlidePathAid;
import slopewright.model.GroundLevel;
import slopewright.model.Place;
import slopewright.model.ProfilePoint;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.siting.GlidePathIntercept;
import slopewright.siting.GroundSource;
import slopewright.siting.Input;
import slopewright.siting.Side;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;
import slopewright.testkit.DemoProjects;

/**
 * What the model says of the ground: surveyed levels are the ground under the lights, the glide path meets the centre line, D1 is solved or
 * entered. By hand: the plane of 2 deg 48 (2 deg 50 of unit B less 2 minutes, tan 0.0489082) passes 15 m over the threshold.
 */
class SiteGroundTest {
    private static final SlopewrightFactory MAKE = SlopewrightFactory.eINSTANCE;
    private static final RuleSet RULES = RuleSets.find("icao:5th").orElseThrow();

    private final Project project = MAKE.createProject();
    private final Aerodrome aerodrome = MAKE.createAerodrome();
    private final Runway runway = MAKE.createRunway();
    private final RunwayEnd end = MAKE.createRunwayEnd();
    private final RunwayEnd far = MAKE.createRunwayEnd();
    private final ApproachAid aid = MAKE.createApproachAid();

    SiteGroundTest() {
        project.setAerodrome(aerodrome);
        aerodrome.setCoordinateReference("WGS84");
        aerodrome.getRunways().add(runway);
        runway.setWidthM(45.0);
        runway.setCodeNumber(4);
        runway.setLengthM(2000.0);
        runway.getEnds().addAll(List.of(end, far));
        place(end, "09", 90, -1);
        place(far, "27", 270, -0.97);
        end.getAids().add(aid);
        aid.setFamilyKey("four-unit-row");
        aid.setTargetEyeHeightM(15.0);
    }

    private static void place(RunwayEnd end, String designator, double bearingDeg, double longitudeDeg) {
        end.setDesignator(designator);
        end.setTrueBearingDeg(bearingDeg);
        end.setThresholdElevationM(50.0);
        end.setDesiredSlopeDeg(3.0);
        end.setApproachType(ApproachType.VISUAL);
        Place place = MAKE.createPlace();
        place.setLatitudeDeg(51.0);
        place.setLongitudeDeg(longitudeDeg);
        end.setThreshold(place);
    }

    private GroundLevel level(double alongM, double rightM, double heightM) {
        GroundLevel level = MAKE.createGroundLevel();
        level.setPlace(MAKE.createPlace());
        SiteFrame.of(end).fromFrame(new FramePoint(alongM, rightM, heightM), level.getPlace());
        aerodrome.getGroundLevels().add(level);
        return level;
    }

    private static ProfilePoint point(double chainageM, double elevationM) {
        ProfilePoint point = MAKE.createProfilePoint();
        point.setChainageM(chainageM);
        point.setElevationM(elevationM);
        return point;
    }

    private Siting solved() {
        return Families.site("four-unit-row", AidRequests.of(aid), RULES);
    }

    /** Ground that falls 2 m to 400 m and is level beyond: D 0.0489082 - 0.005 D = 15, so D = 341.62 m; level ground gives 306.70 m. */
    @Test
    void surveyedLevelsAreTheGroundUnderTheLights() {
        assertEquals(306.70, solved().distanceM(), 0.005);
        assertEquals(GroundSource.LEVEL, solved().ground());
        level(400, -60, -2);
        level(0, -40, 0);
        level(700, -50, -2);
        Siting surveyed = solved();
        assertEquals(341.62, surveyed.distanceM(), 0.01);
        assertEquals(GroundSource.SURVEYED_LEVELS, surveyed.ground());
        Message note = surveyed.notes().stream().filter(found -> found.key().equals("evaluation.note.surveyed-ground")).findFirst()
                .orElseThrow();
        assertEquals(3, ((Argument.Quantity) note.arguments().get(0)).value());
        aerodrome.getGroundLevels().clear();
        end.getSiteProfile().addAll(List.of(point(700, 48), point(0, 50), point(400, 48)));
        Siting typed = solved();
        assertEquals(surveyed.distanceM(), typed.distanceM(), 1e-5, "the same levels typed give the same distance");
        assertEquals(GroundSource.TYPED_PROFILE, typed.ground());
    }

    /** The layout names its ground, with whose it is, from when and how accurate; of several levels the least accurate counts. */
    @Test
    void aLayoutSaysWhichGroundItUsed() {
        assertEquals("none is known: it is taken as level with the threshold or the touchdown area", ground());
        GroundLevel first = level(0, -40, 0);
        GroundLevel second = level(400, -60, -2);
        assertTrue(ground().endsWith("; source, date and accuracy not said"), ground());
        first.setSource("survey 7");
        first.setDate("2026-03-01");
        first.setVerticalAccuracyM(0.02);
        assertEquals("2 surveyed levels near the line of the units, 0.00 m to 400.00 m along the runway; source: not said and "
                + "survey 7; date: not said and 2026-03-01; accuracy: not said", ground());
        second.setSource("survey 7");
        second.setDate("2026-03-01");
        second.setVerticalAccuracyM(0.05);
        assertEquals("2 surveyed levels near the line of the units, 0.00 m to 400.00 m along the runway; source: survey 7; "
                + "date: 2026-03-01; accuracy: 0.05 m", ground());
        end.getSiteProfile().addAll(List.of(point(600, 48), point(0, 50)));
        assertEquals("site profile of 2 points, 0.00 m to 600.00 m along the runway; source, date and accuracy not said", ground());
        end.setSiteProfileSource("drawing 3");
        end.setSiteProfileDate("2026-04-01");
        end.setSiteProfileAccuracyM(0.1);
        assertTrue(ground().endsWith("source: drawing 3; date: 2026-04-01; accuracy: 0.10 m"), ground());
        end.getSiteProfile().add(point(0, 51));
        assertTrue(ground().startsWith("none that can be used: "), ground());
    }

    /** Every layout of the demonstrations names whose ground it rests on. */
    @ParameterizedTest
    @ValueSource(strings = {DemoProjects.GOOD, DemoProjects.EVERY_FAMILY, DemoProjects.FAULTS})
    void theDemonstrationsSayWhoseGroundTheyUse(String demo) {
        int profiles = 0;
        for (ApproachAid each : Projects.aids(DemoProjects.load(demo))) {
            String said = GroundUsed.of(AidEvaluation.of(each)).english();
            if (Projects.host(each).orElseThrow() instanceof RunwayEnd typed && !typed.getSiteProfile().isEmpty()) {
                profiles++;
                assertTrue(said.endsWith("source: ground survey (invented); date: 2026-05-12; accuracy: 0.02 m"), said);
            }
        }
        assertTrue(profiles > 1);
    }

    private String ground() {
        return GroundUsed.of(AidEvaluation.of(aid)).english();
    }

    /**
     * Beside the runway on the side of the units, from its edge at 22.5 m to 60 m beyond it; the pavement and the far side do not count. On
     * the right 1 m, 5 m at 200 m and 1 m at 500 m: 200 x 0.0489082 + 5 = 14.782, then 0.218 / (0.0489082 - 4 / 300) = 6.14 m farther.
     */
    @Test
    void onlyLevelsNearTheLineOfTheUnitsCount() {
        level(0, -40, 0);
        level(600, -40, 0);
        level(200, -10, 5);
        level(200, 40, 5);
        level(200, -83, 5);
        assertEquals(306.70, solved().distanceM(), 0.005);
        aid.setSide(AidSide.RIGHT);
        assertEquals(GroundSource.LEVEL, solved().ground(), "one level on that side is no ground");
        assertTrue(solved().notes().contains(Message.of("evaluation.note.too-few-levels")));
        level(0, 50, 1);
        level(500, 30, 1);
        assertEquals(206.14, solved().distanceM(), 0.01);
        assertEquals(GroundSource.SURVEYED_LEVELS, solved().ground());
    }

    /** Two levels at 300 m under the row, 1 m and 2 m up, are one place at 1.5 m: D 0.0489082 + 0.005 D = 15, D = 278.25 m. */
    @Test
    void levelsAcrossTheRowAreOnePlace() {
        level(0, -40, 0);
        level(300, -40, 1);
        level(300.4, -64, 2);
        level(900, -40, 4.5);
        assertEquals(278.25, solved().distanceM(), 0.1);
    }

    /** The plane needs ground up to 306.70 m; 250 m of it are not stretched. */
    @Test
    void surveyedGroundIsNotStretched() {
        level(0, -40, 0);
        level(250, -40, 0);
        SitingException refused = assertThrows(SitingException.class, this::solved);
        assertEquals("siting.refused.no-place", refused.reason().key());
    }

    @Test
    void levelsThatContradictTheEnteredProfileAreNamed() {
        end.getSiteProfile().addAll(List.of(point(0, 50), point(600, 53)));
        GroundLevel agreeing = level(200, -40, 1.04);
        GroundLevel contradicting = level(400, -40, 2.2);
        level(700, -40, 9);
        level(300, 40, 9);
        List<SiteGround.Contradiction> found = SiteGround.contradictions(end);
        assertEquals(List.of(contradicting), found.stream().map(SiteGround.Contradiction::level).toList(),
                "4 cm are within the tolerance; beyond the profile and on the other side nothing is compared");
        assertEquals(0.2, found.get(0).differenceM(), 1e-4);
        assertEquals(2, found.get(0).profileM(), 1e-4);
        assertEquals(GroundSource.TYPED_PROFILE, SiteGround.of(end, Side.LEFT).source());
        end.getSiteProfile().clear();
        assertTrue(SiteGround.contradictions(end).isEmpty());
        aerodrome.getGroundLevels().remove(agreeing);
    }

    private GlidePathIntercept intercept(RunwayEnd of) {
        GlidePathAid path = MAKE.createGlidePathAid();
        path.setReferenceDatumHeightM(15.24);
        path.setPathAngleDeg(3.0);
        of.setGlidePath(path);
        return GlidePathIntercept.of(AidRequests.ofHost(of).build(), 3).orElseThrow();
    }

    /**
     * The centre line rises 1 % from the first end: 15.24 / (0.0524078 + 0.01) = 244.20 m. The second end sees it fall 1 % from its own
     * level of 70 m: 15.24 / (0.0524078 - 0.01) = 359.37 m. A displaced threshold counts from the extremity.
     */
    @Test
    void theCentreLineIsReadFromBothEnds() {
        runway.getCentreLine().addAll(List.of(point(2000, 70), point(0, 50), point(1000, 60)));
        far.setThresholdElevationM(70.0);
        assertEquals(244.20, intercept(end).originM(), 0.005);
        assertEquals(2.442, intercept(end).groundM(), 0.0005);
        assertEquals(359.37, intercept(far).originM(), 0.005);
        assertEquals(GlidePathIntercept.Datum.PROFILE, intercept(far).datum());
        end.setDisplacedThresholdM(300.0);
        end.setThresholdElevationM(53.0);
        assertEquals(244.20, intercept(end).originM(), 0.005);
        runway.setLengthM(null);
        assertEquals("evaluation.refused.centre-line-without-length",
                assertThrows(SitingException.class, () -> intercept(far)).reason().key());
        runway.getCentreLine().clear();
        assertEquals(290.80, intercept(far).originM(), 0.005);
        assertEquals(GlidePathIntercept.Datum.LEVEL, intercept(far).datum());
    }

    private Siting standing(double alongM, double lensElevationM, String ruleSet) {
        RuleSet rules = RuleSets.find(ruleSet).orElseThrow();
        SitingRequest request = SitingRequest.builder().set(Input.SLOPE, 3.0)
                .set(Input.RUNWAY_WIDTH, 45.0).set(Input.DISTANCE, alongM).build();
        aid.getUnits().clear();
        aid.getUnits().addAll(AidLayouts.toModel(Families.site("four-unit-row", request, rules), 50));
        aid.getUnits().forEach(unit -> unit.setLensElevationM(lensElevationM));
        return AidLayouts.evaluate(aid, rules);
    }

    /**
     * D1 + 60 m from the indicator, D1 before any move that cures a penetration (Table 5-3 of the 9th edition, note e): where nobody says
     * that it was moved, the surface starts 60 m before the threshold, however far the row stands.
     */
    @Test
    void whatNobodySaysWasMovedStandsWhereItAlwaysStood() {
        end.getSiteProfile().addAll(List.of(point(0, 50), point(900, 41)));
        Siting stands = standing(326.25, 51, "icao:9th");
        assertEquals(326.25, stands.unshifted().distanceM().orElseThrow(), 0.005);
        assertEquals(-60, stands.surface().orElseThrow().startAlongM(), 0.005);
        assertEquals(GroundSource.UNITS, stands.ground());
    }

    /** By hand: 310 m less 300 m are a move of 10 m, so the surface starts 50 m before the threshold; 340 m is no move away from it. */
    @Test
    void anUnshiftedDistanceCountsOnlyWithItsReason() {
        aid.setUnshiftedDistanceM(300.0);
        assertEquals(310, standing(310, 50, "icao:9th").unshifted().distanceM().orElseThrow(), 1e-9);
        aid.setUnshiftedDistanceReason(" ");
        assertEquals(310, standing(310, 50, "icao:9th").unshifted().distanceM().orElseThrow(), 1e-9);
        aid.setUnshiftedDistanceReason("moved 10 m upwind in 2019 for the trees");
        assertEquals(300, standing(310, 50, "icao:9th").unshifted().distanceM().orElseThrow(), 1e-9);
        assertEquals(-50, standing(310, 50, "icao:9th").surface().orElseThrow().startAlongM(), 1e-9);
        aid.setUnshiftedDistanceM(340.0);
        assertEquals(-60, standing(310, 50, "icao:9th").surface().orElseThrow().startAlongM(), 1e-9);
    }

    /** Where it stands is known without any aeroplane. */
    @Test
    void theSurfaceNeedsNoSolvedDistance() {
        aid.setTargetEyeHeightM(null);
        assertEquals(-60, standing(310, 50, "icao:9th").surface().orElseThrow().startAlongM(), 1e-9);
        assertEquals(-60, standing(310, 50, "icao:5th").surface().orElseThrow().startAlongM(), 1e-9);
    }

    /** Nothing is taken for granted: a file that does not say how it is approached has no surface of the printed table. */
    @Test
    void anApproachThatIsNotStatedStaysSo() {
        end.setApproachType(ApproachType.NOT_STATED);
        assertEquals(Message.of("surface.none-without-approach"), standing(310, 50, "icao:5th").noSurface().orElseThrow());
    }
}
