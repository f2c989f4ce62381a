package slopewright.evaluation.landing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.Consumer;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.TrialSite;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.portable.SightLine;
import slopewright.evaluation.portable.SightLines;
import slopewright.evaluation.remedy.OtherDirection;
import slopewright.model.ApproachType;
import slopewright.model.EquipmentType;
import slopewright.model.GroundLevel;
import slopewright.model.Helipad;
import slopewright.model.LightColour;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.ObstacleSurvey;
import slopewright.model.Place;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SurveyBlock;
import slopewright.model.Transition;
import slopewright.siting.SitingException;

/** Landing directions against hand arithmetic, and against the ordinary evaluation of each direction and slope by itself. */
class LandingDirectionsTest {
    private static final String SECTOR_RULES = "icao:9th";
    private static final String TRI_COLOUR_RULES = "faa:2010";
    private static final double SAME_M = 1e-6;
    private static final SlopewrightFactory MAKE = SlopewrightFactory.eINSTANCE;

    @TempDir
    private Path folder;

    /**
     * A sector unit under the ICAO rules, safety area 30 m. How the FATO of 0.5 m by 30 m lies is not known: its edge is 0.25 m to
     * hypot(0.25, 15) = 15.0021 m before its middle, so the surface begins 3.25 m before the middle and is as low as one from 18.0021 m.
     */
    private static TrialSite sectorSite() {
        TrialSite site = smallPad(TrialSite.helipad("heliport-sector", 6));
        site.aid().setPortable(false);
        site.host().setApproachType(ApproachType.VISUAL);
        return site.laidOut(SECTOR_RULES);
    }

    /** A FATO as wide as the safety area of the trial site, 30 m, and so short that a unit 15.1 m from its middle is clear of it. */
    private static TrialSite smallPad(TrialSite site) {
        Helipad pad = site.aerodrome().getHelipads().get(0);
        pad.setFatoLengthM(0.5);
        pad.setFatoWidthM(30.0);
        return site;
    }

    private static TrialSite triColourSite() {
        TrialSite site = smallPad(TrialSite.helipad("tri-colour", 6));
        EquipmentType type = MAKE.createEquipmentType();
        sector(type, -3, LightColour.NONE, LightColour.RED);
        sector(type, -0.5, LightColour.RED, LightColour.GREEN);
        sector(type, 0.5, LightColour.GREEN, LightColour.AMBER);
        type.setMinSettingDeg(1.0);
        type.setMaxSettingDeg(12.0);
        site.aerodrome().getEquipmentTypes().add(type);
        site.aid().setEquipment(type);
        return site.laidOut(TRI_COLOUR_RULES);
    }

    private static void sector(EquipmentType type, double offsetDeg, LightColour below, LightColour above) {
        Transition sector = MAKE.createTransition();
        sector.setOffsetDeg(offsetDeg);
        sector.setBelowColour(below);
        sector.setAboveColour(above);
        type.getSectors().add(sector);
    }

    private static ObstacleSurvey survey(TrialSite site, boolean allRound, double reachM, double halfWidthM) {
        ObstacleSurvey survey = MAKE.createObstacleSurvey();
        survey.setReachM(reachM);
        survey.setHalfWidthM(halfWidthM);
        survey.setAllRound(allRound);
        survey.setDate("2026-05-01");
        survey.setSource("survey, invented");
        survey.setHorizontalAccuracyM(0.5);
        survey.setVerticalAccuracyM(0.3);
        survey.getHosts().add(site.host());
        site.aerodrome().getObstacleSurveys().add(survey);
        return survey;
    }

    private static LandingDirections directions(TrialSite site, String rules) {
        return LandingDirections.of(site.evaluation(rules));
    }

    /**
     * A mast due south, 1018.0021 m before the hover point, 1000 tan 3 degrees = 52.4078 m high. A is the top of the flashing red,
     * slope - 22.5' - 15'; the surface rises with A - 0.65 = slope - 1.275 degrees (Annex 14 Vol II Table 5-1) from no farther than
     * 18.0021 m before the hover point. It clears the mast from slope - 1.275 >= 3, or 4.275 degrees: in tenths from 4.3. Its half width
     * there is 15 m + 10 % of the distance from where it begins at the nearest, 3.25 m before the hover point: 6 degrees beside the axis
     * the mast is 106.4 m off and the surface 115.9 m wide, 7 beside 124.1 m and 115.7 m.
     */
    @Test
    void oneMastBlocksTheDirectionsThatLeadOverIt() {
        TrialSite site = sectorSite();
        site.mast("mast", -1018.0021, 0, 1000 * Math.tan(Math.toRadians(3)));
        survey(site, true, 4000, 0);
        LandingDirections all = directions(site, SECTOR_RULES);
        assertEquals(111, all.directions().get(0).cells().size(), "1° to 12° in tenths");
        assertEquals(OptionalDouble.of(4.3), all.at(0).clearFromDeg());
        assertEquals(OptionalDouble.of(4.3), all.at(6).clearFromDeg());
        assertEquals(OptionalDouble.of(4.3), all.at(354).clearFromDeg());
        assertEquals(OptionalDouble.of(1), all.at(7).clearFromDeg());
        assertEquals(List.of(new ClearSector(7, 353, 1), new ClearSector(354, 6, 5)), all.sectors());
        LandingCell at4 = all.at(0).at(4).orElseThrow();
        assertEquals(LandingCell.State.BLOCKED, at4.state());
        // 1000 (tan 2.725° − tan 3°) = 47.5950 − 52.4078
        assertEquals(1000 * (Math.tan(Math.toRadians(2.725)) - Math.tan(Math.toRadians(3))), at4.marginM().orElseThrow(), 1e-3);
        assertEquals("mast", at4.governing().orElseThrow().label());
        assertEquals(LandingCell.Line.SURFACE, at4.line().orElseThrow());
        assertEquals(new ClearSector(354, 6, 5), all.nearestSector(4).orElseThrow());
    }

    /** The same mast: 7° is the nearest direction that is clear at any slope, but 4° turned 354° to 6° is clear from 5° as it lies. */
    @Test
    void theRemedyNamesTheNearestDirection() {
        TrialSite site = sectorSite();
        site.mast("mast", -1003, 0, 1000 * Math.tan(Math.toRadians(3)));
        survey(site, true, 4000, 0);
        assertEquals("stay with this landing direction and land on a slope from 5° on",
                OtherDirection.of(site.evaluation(SECTOR_RULES)).orElseThrow().english());
        // higher than any slope clears: 12° less 1.275° = 10.725°, at 1000 m 189.4 m
        site.mast("tower", -1003, 0, 190);
        assertEquals("land toward 007° true: 007° to 353° is clear from 1°",
                OtherDirection.of(site.evaluation(SECTOR_RULES)).orElseThrow().english());
        site.aerodrome().getObstacleSurveys().clear();
        assertEquals("no other landing direction is known to be clear at any slope",
                OtherDirection.of(site.evaluation(SECTOR_RULES)).orElseThrow().english());
    }

    @Test
    void withoutASurveyNothingIsClear() {
        TrialSite site = sectorSite();
        site.mast("mast", -1003, 0, 52);
        LandingDirections all = directions(site, SECTOR_RULES);
        assertTrue(all.directions().stream().noneMatch(LandingDirection::isClearSomewhere));
        assertEquals(LandingCell.State.BLOCKED, all.at(0).at(4).orElseThrow().state());
        assertEquals("landing.no-survey", all.at(90).at(6).orElseThrow().reason().orElseThrow().key());
        assertEquals("no direction is clear", all.sentences(0).get(0).english());
        survey(site, true, 4000, 0).setDate("2010-05-01");
        assertEquals(List.of(), directions(site, SECTOR_RULES).sectors(), "what was surveyed long ago is no survey");
    }

    /** The surface ends 2500 m from the farthest of its beginnings, 2518.002 m out, 15 m + 10 % of 2514.752 m = 266.475 m to each side. */
    @Test
    void aSurveyOfOneApproachCoversThatDirectionAndNotTheOpposite() {
        TrialSite site = sectorSite();
        survey(site, false, 2518.01, 266.48);
        LandingDirections all = directions(site, SECTOR_RULES);
        assertEquals(OptionalDouble.of(1), all.at(0).clearFromDeg());
        assertFalse(all.at(1).isClearSomewhere(), "turned by a degree the far corner lies 308 m off the axis");
        assertFalse(all.at(180).isClearSomewhere());
    }

    @Test
    void aSurveyAllRoundMustReachTheFarCorner() {
        TrialSite site = sectorSite();
        // the far corner lies hypot(2518.002, 266.475) = 2532.06 m from the hover point
        ObstacleSurvey survey = survey(site, true, 2531.9, 0);
        assertEquals(List.of(), directions(site, SECTOR_RULES).sectors());
        survey.setReachM(2532.1);
        assertEquals(List.of(new ClearSector(0, 359, 1)), directions(site, SECTOR_RULES).sectors());
    }

    /** What a survey must say of itself is what rule OBS-09 asks of it. */
    @Test
    void aSurveyThatDoesNotSayEverythingOfItselfCoversNothing() {
        List<Consumer<ObstacleSurvey>> gaps = List.of(survey -> survey.setDate(null), survey -> survey.setSource(" "),
                survey -> survey.setHorizontalAccuracyM(null), survey -> survey.setVerticalAccuracyM(null));
        for (Consumer<ObstacleSurvey> gap : gaps) {
            TrialSite site = sectorSite();
            ObstacleSurvey survey = survey(site, true, 4000, 0);
            assertEquals(LandingCell.State.CLEAR, directions(site, SECTOR_RULES).at(90).at(6).orElseThrow().state());
            gap.accept(survey);
            LandingCell cell = directions(site, SECTOR_RULES).at(90).at(6).orElseThrow();
            assertEquals(LandingCell.State.NOT_EVALUATED, cell.state());
            assertEquals("landing.survey-lacking", cell.reason().orElseThrow().key());
            survey(site, true, 4000, 0);
            assertEquals(LandingCell.State.CLEAR, directions(site, SECTOR_RULES).at(90).at(6).orElseThrow().state(),
                    "a whole one beside it");
        }
    }

    /** A mast that is low enough where it was entered may stand higher, or elsewhere, where nobody says how well it was surveyed. */
    @Test
    void withAnObstacleOfUnknownAccuracyNothingIsClear() {
        List<Consumer<Obstacle>> gaps = List.of(mast -> mast.setHorizontalAccuracyM(null), mast -> mast.setVerticalAccuracyM(null));
        for (Consumer<Obstacle> gap : gaps) {
            TrialSite site = sectorSite();
            survey(site, true, 4000, 0);
            Obstacle mast = site.mast("mast", -1003, 0, 1);
            assertEquals(LandingCell.State.CLEAR, directions(site, SECTOR_RULES).at(0).at(6).orElseThrow().state());
            gap.accept(mast);
            LandingCell cell = directions(site, SECTOR_RULES).at(0).at(6).orElseThrow();
            assertEquals(LandingCell.State.NOT_EVALUATED, cell.state());
            assertTrue(cell.reason().orElseThrow().english().contains("how accurately mast was surveyed"), cell.reason().toString());
        }
    }

    /** Rule FIELD-06 asks for pitch, roll and swing of a deck that floats, and whether one floats for which they are entered. */
    @Test
    void aDeckOfUnknownMotionIsNotEvaluated() {
        TrialSite site = sectorSite();
        survey(site, true, 4000, 0);
        Helipad pad = site.aerodrome().getHelipads().get(0);
        pad.setFloating(true);
        assertNotEvaluated(site);
        pad.setDeckPitchDeg(0.3);
        pad.setDeckRollDeg(0.4);
        assertNotEvaluated(site);
        pad.setDeckHeadingDeg(2.0);
        assertEquals(LandingCell.State.CLEAR, directions(site, SECTOR_RULES).at(5).at(6).orElseThrow().state());
        pad.setFloating(null);
        assertNotEvaluated(site);
        pad.setDeckPitchDeg(null);
        pad.setDeckRollDeg(null);
        pad.setDeckHeadingDeg(null);
        assertNotEvaluated(site);
        pad.setDeckHeadingDeg(2.0);
        pad.setFloating(false);
        assertNotEvaluated(site);
    }

    private static void assertNotEvaluated(TrialSite site) {
        LandingCell cell = directions(site, SECTOR_RULES).at(5).at(6).orElseThrow();
        assertEquals(LandingCell.State.NOT_EVALUATED, cell.state());
        assertEquals("landing.deck-unknown", cell.reason().orElseThrow().key());
    }

    /**
     * The steeper the slope, the nearer the unit: eye 3.8 m over the pad and a lens between it and 0.5 m make 15.5 to 17.9 m at 12 degrees,
     * 23.5 to 27.1 m at 8 and more than 37 m at 5. A FATO of 20 m in a safety area of 40 m reaches 20 m along the approach, and 28.3 m
     * over its corners.
     */
    @Test
    void aUnitOnThePadIsNoClearDirection() {
        TrialSite site = triColourSite();
        site.mast("far", -2000, 0, 1);
        survey(site, true, 20_000, 0);
        Helipad pad = site.aerodrome().getHelipads().get(0);
        pad.setFatoLengthM(20.0);
        pad.setFatoWidthM(20.0);
        pad.setSafetyAreaWidthM(40.0);
        LandingDirections unknown = directions(site, TRI_COLOUR_RULES);
        assertCell(unknown, 45, 12, LandingCell.State.BLOCKED, "landing.on-pad");
        assertCell(unknown, 45, 8, LandingCell.State.NOT_EVALUATED, "landing.fato-bearing");
        assertCell(unknown, 45, 5, LandingCell.State.CLEAR, "");
        pad.setFatoWidthM(null);
        assertCell(directions(site, TRI_COLOUR_RULES), 45, 5, LandingCell.State.NOT_EVALUATED, "landing.no-fato");
        pad.setFatoWidthM(20.0);
        pad.setFatoBearingDeg(0.0);
        LandingDirections known = directions(site, TRI_COLOUR_RULES);
        assertCell(known, 0, 12, LandingCell.State.BLOCKED, "landing.on-pad");
        assertCell(known, 0, 8, LandingCell.State.CLEAR, "");
        assertCell(known, 270, 8, LandingCell.State.CLEAR, "");
        assertCell(known, 45, 8, LandingCell.State.BLOCKED, "landing.on-pad");
        assertCell(known, 45, 5, LandingCell.State.CLEAR, "");
    }

    private static void assertCell(LandingDirections all, int trueDeg, double slopeDeg, LandingCell.State state, String reason) {
        LandingCell cell = all.at(trueDeg).at(slopeDeg).orElseThrow();
        assertEquals(state, cell.state(), () -> trueDeg + " at " + slopeDeg + ": " + cell.reason());
        assertEquals(reason, cell.reason().map(found -> found.key()).orElse(""));
    }

    @Test
    void anObstacleWithoutATopLeavesNothingClear() {
        TrialSite site = sectorSite();
        survey(site, true, 4000, 0);
        site.unknownTop("nobody measured it", 8000);
        LandingDirections all = directions(site, SECTOR_RULES);
        assertTrue(all.directions().stream().flatMap(direction -> direction.cells().stream())
                .allMatch(cell -> cell.state() == LandingCell.State.NOT_EVALUATED));
    }

    @Test
    void withoutASafetyAreaOrAnApproachTypeNothingIsEvaluated() {
        TrialSite site = sectorSite();
        survey(site, true, 4000, 0);
        site.host().setApproachType(ApproachType.NOT_STATED);
        assertEquals("surface.none-without-approach",
                directions(site, SECTOR_RULES).at(5).at(6).orElseThrow().reason().orElseThrow().key());
        site.host().setApproachType(ApproachType.VISUAL);
        site.aerodrome().getHelipads().get(0).setSafetyAreaWidthM(null);
        assertEquals("surface.none-without-safety-area",
                directions(site, SECTOR_RULES).at(5).at(6).orElseThrow().reason().orElseThrow().key());
    }

    @Test
    void aRunwayHasNoDirectionsAllRound() {
        AidEvaluation runway = TrialSite.runway("tri-colour").evaluation(TRI_COLOUR_RULES);
        assertThrows(SitingException.class, () -> LandingDirections.of(runway));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void everyDirectionIsWhatItsOwnEvaluationSays(long seed) {
        TrialSite sector = sectorSite();
        scatter(sector, new Random(seed), false);
        survey(sector, true, 50_000, 0);
        assertBruteForce(sector, SECTOR_RULES, new Random(seed), SettableSlopes.USUAL_STEP_DEG);
        TrialSite portable = triColourSite();
        scatter(portable, new Random(seed + 100), true);
        survey(portable, true, 50_000, 0);
        assertBruteForce(portable, TRI_COLOUR_RULES, new Random(seed), SettableSlopes.USUAL_STEP_DEG);
    }

    /** Marks every 0.15°: the 6° as it stands is on one, 40 × 0.15; what is tried is up to 0.075° = 4.5' off, and 5' are allowed. */
    @Test
    void theMarksOfTheTriedSlopeCount() {
        TrialSite portable = triColourSite();
        portable.aid().getEquipment().setSlopeScaleStepDeg(0.15);
        scatter(portable, new Random(11), true);
        survey(portable, true, 50_000, 0);
        AidEvaluation evaluation = portable.evaluation(TRI_COLOUR_RULES);
        assertBruteForce(evaluation, new SettableSlopes(1, 12, 0.1, SettableSlopes.of(evaluation, 0.1).source()), new Random(11));
    }

    /** Marks every 0.25°: 6.1° is 0.1° = 6' from 6°, more than the 5' by which a setting may be off; 6.2° is 3' from 6.25°. */
    @Test
    void whatLiesBetweenTwoMarksIsNoSlopeThatCanBeSet() {
        TrialSite portable = triColourSite();
        portable.aid().getEquipment().setSlopeScaleStepDeg(0.25);
        survey(portable, true, 50_000, 0);
        portable.mast("far away", -5000, 0, -300);
        AidEvaluation evaluation = portable.evaluation(TRI_COLOUR_RULES);
        SettableSlopes marks = SettableSlopes.of(evaluation, 0.1);
        LandingDirection north = LandingDirections.of(evaluation, new SettableSlopes(1, 12, 0.1, marks.source())).at(0);
        assertEquals("landing.between-marks", north.at(6.1).orElseThrow().reason().orElseThrow().key());
        assertFalse(north.at(6.1).orElseThrow().isClear());
        assertTrue(north.at(6.2).orElseThrow().isClear());
        assertEquals(List.of(1.0, 1.25, 1.5), marks.degrees().subList(0, 3));
        assertEquals(1 + 11 * 4, marks.degrees().size(), "1° to 12° in quarters");
        assertEquals(0.5, SettableSlopes.of(evaluation, 0.3).stepDeg(), 1e-9, "every second mark");
    }

    @Test
    void groundThatDiffersByDirectionCounts() {
        TrialSite portable = triColourSite();
        portable.aid().getEquipment().setHeightAboveGroundM(0.5);
        portable.aid().getUnits().clear();
        for (double[] at : new double[][] {{600, 0, 103}, {-600, 0, 98}, {0, 600, 101}, {0, -600, 99.5}, {0, 0, 100}}) {
            GroundLevel level = MAKE.createGroundLevel();
            Place place = MAKE.createPlace();
            place.setNorthM(at[0]);
            place.setEastM(at[1]);
            place.setElevationM(at[2]);
            level.setPlace(place);
            portable.aerodrome().getGroundLevels().add(level);
        }
        portable.laidOut(TRI_COLOUR_RULES);
        scatter(portable, new Random(7), true);
        survey(portable, true, 50_000, 0);
        assertBruteForce(portable, TRI_COLOUR_RULES, new Random(7), 1);
    }

    /** Points, lines and areas of every accuracy all round, some shielded, and a block of survey points. */
    private void scatter(TrialSite site, Random random, boolean low) {
        for (int i = 0; i < 36; i++) {
            double distance = 80 + 5000 * random.nextDouble() * random.nextDouble();
            double angle = random.nextDouble() * 2 * Math.PI;
            double top = distance * Math.tan(Math.toRadians((low ? 5 : 8) * Math.pow(random.nextDouble(), 3)));
            double[] at = {distance * Math.cos(angle), distance * Math.sin(angle), top};
            Obstacle obstacle = switch (i % 3) {
                case 0 -> site.mast("mast " + i, at[0], at[1], at[2]);
                case 1 -> site.obstacle("line " + i, ObstacleKind.LINE, at, beside(at, random), beside(at, random));
                default -> site.obstacle("area " + i, ObstacleKind.AREA, at, beside(at, random), beside(at, random), beside(at, random));
            };
            obstacle.setHorizontalAccuracyM(i % 4 == 0 ? 1e-9 : 8 * random.nextDouble());
            obstacle.setVerticalAccuracyM(i % 5 == 0 ? 1e-9 : 3 * random.nextDouble());
            if (i % 11 == 0) {
                obstacle.setShielded(true);
                obstacle.setShieldingStudy("study, invented");
                obstacle.setShieldingStudyDate("2026-05-01");
                obstacle.setShieldingStudyPerson("A. Person");
            }
        }
        double[][] points = new double[40][];
        for (int i = 0; i < points.length; i++) {
            double distance = 100 + 4000 * random.nextDouble();
            double angle = random.nextDouble() * 2 * Math.PI;
            points[i] = new double[] {distance * Math.cos(angle), distance * Math.sin(angle), distance * 0.02 * random.nextDouble()};
        }
        SurveyBlock block = site.block(folder, "block", points);
        block.setHorizontalAccuracyM(4.0);
        block.setVerticalAccuracyM(1.5);
    }

    private static double[] beside(double[] at, Random random) {
        return new double[] {at[0] + 400 * (random.nextDouble() - 0.5), at[1] + 400 * (random.nextDouble() - 0.5),
                at[2] * random.nextDouble()};
    }

    /** Lays the aid out for some directions and slopes as the edit does and evaluates each in the ordinary way. */
    private static void assertBruteForce(TrialSite site, String rules, Random random, double stepDeg) {
        AidEvaluation evaluation = site.evaluation(rules);
        assertBruteForce(evaluation, SettableSlopes.of(evaluation, stepDeg), random);
    }

    private static void assertBruteForce(AidEvaluation evaluation, SettableSlopes slopes, Random random) {
        LandingDirections all = LandingDirections.of(evaluation, slopes);
        int blocked = 0;
        int clear = 0;
        for (int i = 0; i < 160; i++) {
            int bearing = random.nextInt(360);
            List<LandingCell> cells = all.at(bearing).cells();
            LandingCell cell = cells.get(random.nextInt(cells.size()));
            AidEvaluation alone = evaluation.trial(copy -> TakenDirection.take(copy, bearing, cell.slopeDeg(), evaluation.rules()));
            SurfaceComparison surface = alone.obstacles().orThrow();
            double margin = surface.governingUnshielded().map(ObstacleComparison::marginM).orElse(Double.POSITIVE_INFINITY);
            boolean stands = surface.isPenetrated();
            if (all.sighted()) {
                for (SightLine line : SightLines.of(alone).lines()) {
                    margin = Math.min(margin, line.lowestMarginM().orElse(Double.POSITIVE_INFINITY));
                    stands |= line.isBlocked() || line.isBelowHorizon();
                }
            }
            String where = bearing + "° at " + cell.slopeDeg() + "°";
            assertEquals(margin, cell.marginM().orElse(Double.POSITIVE_INFINITY), SAME_M, where);
            if (Math.abs(margin) > SAME_M) {
                assertEquals(stands ? LandingCell.State.BLOCKED : LandingCell.State.CLEAR, cell.state(), where);
            }
            blocked += stands ? 1 : 0;
            clear += stands ? 0 : 1;
        }
        assertTrue(blocked > 3 && clear > 3, "both kinds must be among those compared: " + blocked + " blocked, " + clear + " clear");
    }
}
