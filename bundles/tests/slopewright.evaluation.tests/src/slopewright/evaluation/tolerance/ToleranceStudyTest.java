package slopewright.evaluation.tolerance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.EvaluationCache;
import slopewright.geometry.FramePoint;
import slopewright.model.Aerodrome;
import slopewright.model.AeroplaneGroup;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachType;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Input;
import slopewright.siting.Side;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** Sensitivities, worst cases and random trials against what can be worked out by hand. */
class ToleranceStudyTest {

    private static final SlopewrightFactory MAKE = SlopewrightFactory.eINSTANCE;
    private static final double PER_MINUTE = Math.PI / 180 / 60;
    private static final Tolerances USUAL = new Tolerances(3, 0.05, 0.5);

    private final Project project = MAKE.createProject();
    private final RunwayEnd end = MAKE.createRunwayEnd();
    private final ApproachAid aid = MAKE.createApproachAid();

    ToleranceStudyTest() {
        Aerodrome aerodrome = MAKE.createAerodrome();
        Runway runway = MAKE.createRunway();
        project.setAerodrome(aerodrome);
        aerodrome.setCoordinateReference("WGS84");
        aerodrome.getRunways().add(runway);
        runway.setWidthM(45.0);
        runway.setCodeNumber(4);
        runway.getEnds().add(end);
        end.setDesignator("09");
        end.setTrueBearingDeg(90.0);
        end.setThresholdElevationM(0.0);
        end.setThreshold(place(51, -1));
        end.setDesiredSlopeDeg(3.0);
        end.setApproachType(ApproachType.VISUAL);
        end.getAids().add(aid);
        aid.setFamilyKey("four-unit-row");
        aid.setTargetEyeHeightM(15.0);
    }

    private static Place place(double latitudeDeg, double longitudeDeg) {
        Place place = MAKE.createPlace();
        place.setLatitudeDeg(latitudeDeg);
        place.setLongitudeDeg(longitudeDeg);
        return place;
    }

    private static RuleSet rules(String name) {
        return RuleSets.find(name).orElseThrow();
    }

    private void mast(FramePoint top, double horizontalM, double verticalM) {
        Obstacle mast = MAKE.createObstacle();
        mast.setName("mast");
        mast.setKind(ObstacleKind.POINT);
        mast.setHorizontalAccuracyM(horizontalM);
        mast.setVerticalAccuracyM(verticalM);
        Place place = MAKE.createPlace();
        SiteFrame.of(end).fromFrame(top, place);
        mast.getPlaces().add(place);
        project.getAerodrome().getObstacles().add(mast);
    }

    private void aeroplanes(double... eyeToWheelAndShare) {
        for (int i = 0; i < eyeToWheelAndShare.length; i += 2) {
            AeroplaneGroup group = MAKE.createAeroplaneGroup();
            group.setName("group " + i / 2);
            group.setEyeToWheelM(eyeToWheelAndShare[i]);
            group.setSharePercent(eyeToWheelAndShare[i + 1]);
            project.getAerodrome().getAeroplaneGroups().add(group);
            end.getRegularGroups().add(group);
        }
    }

    private ToleranceStudy study(Tolerances tolerances, int samples, long seed) {
        return ToleranceStudy.of(AidEvaluation.of(aid, rules("icao:5th"), new EvaluationCache()), tolerances, samples, seed);
    }

    private static double perUnit(ToleranceStudy study, Quantity quantity, ErrorSource.Kind kind, String subject) {
        return study.sensitivities().stream().filter(sensitivity -> sensitivity.quantity() == quantity
                && sensitivity.source().kind() == kind && sensitivity.source().subject().equals(subject))
                .findFirst().orElseThrow().perUnit();
    }

    /**
     * The eye height over the threshold hangs on unit B alone: its lens height plus its distance times the tangent of its lower edge,
     * 2 deg 48 min. At 15 m that distance is 15 / tan 2.8 deg = 306.71 m. One minute of B moves it by 306.71 / cos^2(2.8 deg) x
     * pi / 10800 = 0.08943 m, one metre of level by 1 m, one metre of place by tan 2.8 deg = 0.048908 m.
     */
    @Test
    void derivativesOfARowAreTheAnalyticOnes() {
        ToleranceStudy study = study(USUAL, 0, 1);
        assertEquals(0.08943, perUnit(study, Quantity.EYE_HEIGHT, ErrorSource.Kind.ANGLE, "B"), 5e-6);
        assertEquals(1, perUnit(study, Quantity.EYE_HEIGHT, ErrorSource.Kind.LEVEL, "B"), 1e-8);
        assertEquals(0.048908, perUnit(study, Quantity.EYE_HEIGHT, ErrorSource.Kind.PLACE, "B"), 5e-7);
        for (String unit : List.of("A", "C", "D")) {
            for (ErrorSource.Kind kind : List.of(ErrorSource.Kind.ANGLE, ErrorSource.Kind.LEVEL, ErrorSource.Kind.PLACE)) {
                assertEquals(0, perUnit(study, Quantity.EYE_HEIGHT, kind, unit), 1e-12, kind + " of " + unit);
            }
        }
        assertEquals(3 * 0.08943 + 0.05 + 0.5 * 0.048908, study.worst(Quantity.EYE_HEIGHT).orElseThrow().linearM(), 2e-5);
    }

    /** At the ends the eye is at (306.71 - 0.5) tan(2.8 deg - 3 min) - 0.05, and at (306.71 + 0.5) tan(2.8 deg + 3 min) + 0.05. */
    @Test
    void theWorstCasesOfARowAreTheExactOnes() {
        WorstCase worst = study(USUAL, 0, 1).worst(Quantity.EYE_HEIGHT).orElseThrow();
        double distance = 15 / Math.tan(Math.toRadians(2.8));
        assertEquals(15, worst.nominalM(), 1e-9);
        assertEquals((distance - 0.5) * Math.tan(Math.toRadians(2.75)) - 0.05, worst.lowM(), 1e-9);
        assertEquals((distance + 0.5) * Math.tan(Math.toRadians(2.85)) + 0.05, worst.highM(), 1e-9);
    }

    /**
     * The surface starts 60 m before the threshold and rises 2.5 - 0.57 = 1.93 degrees. A mast 1060 m before the threshold, surveyed to
     * 5 m in place and 1 m in height, counts 995 m out and 1 m higher: 995 tan 1.93 - 31 is the margin. One minute of unit A moves it by
     * 995 / cos^2 x pi / 10800 there; the mast's top counts fully, but can only be lower.
     */
    @Test
    void derivativesOfTheSurfaceMarginAreTheAnalyticOnes() {
        mast(new FramePoint(-1060, 0, 30), 5, 1);
        ToleranceStudy study = study(USUAL, 0, 1);
        double slope = Math.toRadians(1.93);
        assertEquals(995 * Math.tan(slope) - 31, study.worst(Quantity.SURFACE_MARGIN).orElseThrow().nominalM(), 1e-4);
        assertEquals(995 / Math.pow(Math.cos(slope), 2) * PER_MINUTE,
                perUnit(study, Quantity.SURFACE_MARGIN, ErrorSource.Kind.ANGLE, "A"), 1e-6);
        assertEquals(0, perUnit(study, Quantity.SURFACE_MARGIN, ErrorSource.Kind.ANGLE, "B"), 1e-9);
        assertEquals(-1, perUnit(study, Quantity.SURFACE_MARGIN, ErrorSource.Kind.OBSTACLE_TOP, "mast"), 1e-8);
        assertEquals(-Math.tan(slope), perUnit(study, Quantity.SURFACE_MARGIN, ErrorSource.Kind.OBSTACLE_PLACE, "mast"), 1e-8);
        WorstCase worst = study.worst(Quantity.SURFACE_MARGIN).orElseThrow();
        assertEquals(995 * Math.tan(slope - 3 * PER_MINUTE) - 31, worst.lowM(), 1e-4);
        assertEquals(1005 * Math.tan(slope + 3 * PER_MINUTE) - 29, worst.highM(), 1e-4);
        assertEquals("surveyed top of mast", study.strongest(Quantity.SURFACE_MARGIN, 1).get(0).source().message().english());
    }

    /** The most demanding group has 6.6 m: the wheel clearance is the eye height less that, and moves with it. */
    @Test
    void theWheelClearanceFollowsTheEyeHeight() {
        aeroplanes(4.0, 50, 6.6, 50);
        ToleranceStudy study = study(USUAL, 0, 1);
        WorstCase eye = study.worst(Quantity.EYE_HEIGHT).orElseThrow();
        WorstCase wheel = study.worst(Quantity.WHEEL_CLEARANCE).orElseThrow();
        assertEquals(15 - 6.6, wheel.nominalM(), 1e-9);
        assertEquals(eye.lowM() - 6.6, wheel.lowM(), 1e-9);
        assertEquals(eye.highM() - 6.6, wheel.highM(), 1e-9);
        assertEquals(List.of("group 0", "group 1"), study.mix().stream().map(Aeroplane::name).toList());
    }

    /** The level of unit B, uniform over 5 cm to both sides, deviates by 0.05 / sqrt 3 = 28.87 mm; three errors of 20000 trials. */
    @Test
    void randomTrialsSpreadAsTheyMust() {
        int samples = 20000;
        Distribution trials = study(new Tolerances(0, 0.05, 0), samples, 42).distribution(Quantity.EYE_HEIGHT).orElseThrow();
        double deviation = 0.05 / Math.sqrt(3);
        assertEquals(samples, trials.samples());
        assertEquals(15, trials.meanM(), 3 * deviation / Math.sqrt(samples));
        assertEquals(deviation, trials.deviationM(), 3 * deviation / Math.sqrt(2.0 * samples));
        assertEquals(15, trials.percentileM(50), 5 * deviation / Math.sqrt(samples));
    }

    @Test
    void randomTrialsStayWithinTheWorstCase() {
        mast(new FramePoint(-1060, 0, 30), 5, 1);
        aeroplanes(4.0, 50, 6.6, 50);
        ToleranceStudy study = study(USUAL, 3000, 7);
        for (Quantity quantity : List.of(Quantity.EYE_HEIGHT, Quantity.SURFACE_MARGIN)) {
            WorstCase worst = study.worst(quantity).orElseThrow();
            Distribution trials = study.distribution(quantity).orElseThrow();
            double before = worst.lowM();
            for (Distribution.Percentile percentile : trials.percentiles()) {
                assertTrue(percentile.valueM() >= before && percentile.valueM() <= worst.highM(), quantity + " " + percentile);
                before = percentile.valueM();
            }
        }
    }

    @Test
    void theSameSeedGivesTheSameStudy() {
        assertEquals(study(USUAL, 500, 11), study(USUAL, 500, 11));
        assertNotEquals(study(USUAL, 500, 11).distributions(), study(USUAL, 500, 12).distributions());
    }

    /** Without tolerances nothing moves but the aeroplane: 30 % of trials fly 4.0 m and 70 % 6.6 m. */
    @Test
    void aeroplanesAreDrawnByTheirShare() {
        aeroplanes(4.0, 30, 6.6, 70);
        Distribution trials = study(new Tolerances(0, 0, 0), 10000, 3).distribution(Quantity.WHEEL_CLEARANCE).orElseThrow();
        assertEquals(15 - (0.3 * 4.0 + 0.7 * 6.6), trials.meanM(), 0.04, "three errors of the mean");
        assertEquals(15 - 6.6, trials.percentileM(5), 1e-9);
        assertEquals(15 - 4.0, trials.percentileM(95), 1e-9);
        List<Aeroplane> mix = List.of(new Aeroplane("a", 1, 25), new Aeroplane("b", 2, 75));
        assertEquals(List.of("a", "a", "b", "b"), DoubleStream.of(0, 0.2499, 0.25, 0.9999)
                .mapToObj(share -> Sampling.draw(mix, share).name()).toList());
    }

    /** Least index that so many per cent do not exceed: of 100 values the fifth for 5 per cent, of 10 the first. */
    @ParameterizedTest
    @CsvSource({"5, 100, 4", "5, 10, 0", "50, 10, 4", "99, 10, 9", "1, 3, 0"})
    void ranksOfPercentiles(double percent, int count, int rank) {
        assertEquals(rank, Sampling.rank(percent, count));
    }

    /** Two bars of a row hang on the higher of the two units B; a corner must still reach what both together do. */
    @Test
    void rowsOnBothSidesReachTheSameCorners() {
        SitingRequest request = SitingRequest.builder().set(Input.SLOPE, 3.0).set(Input.RUNWAY_WIDTH, 45.0).set(Input.CODE, 4.0)
                .set(Input.EYE_HEIGHT, 15.0).side(Side.BOTH).build();
        Siting siting = Families.site("four-unit-row", request, rules("icao:5th"));
        ToleranceStudy study = ToleranceStudy.of(request, rules("icao:5th"), siting, Optional.empty(), List.of(), USUAL, 0, 1);
        double distance = 15 / Math.tan(Math.toRadians(2.8));
        WorstCase worst = study.worst(Quantity.EYE_HEIGHT).orElseThrow();
        assertEquals((distance - 0.5) * Math.tan(Math.toRadians(2.75)) - 0.05, worst.lowM(), 1e-9);
        assertEquals((distance + 0.5) * Math.tan(Math.toRadians(2.85)) + 0.05, worst.highM(), 1e-9);
    }

    /** Every family that may stand at a runway: the eye height moves, the trials stay inside, and the rows say so. */
    @ParameterizedTest
    @ValueSource(strings = {"icao:5th", "easa", "faa", "casa"})
    void everyFamilyOfARuleSetCanBeStudied(String ruleSet) {
        SitingRequest request = SitingRequest.builder().set(Input.SLOPE, 3.0).set(Input.RUNWAY_WIDTH, 45.0).set(Input.CODE, 4.0)
                .set(Input.EYE_HEIGHT, 15.0).set(Input.PANEL_DISTANCE, 15.0).set(Input.EYE_TO_WHEEL, 6.0).build();
        for (IndicatorFamily family : Families.all()) {
            if (rules(ruleSet).covers(family.key()) && family.atRunways()) {
                Siting siting = Families.site(family.key(), request, rules(ruleSet));
                ToleranceStudy study = ToleranceStudy.of(request, rules(ruleSet), siting, Optional.empty(), List.of(), USUAL,
                        200, 5);
                WorstCase worst = study.worst(Quantity.EYE_HEIGHT).orElseThrow();
                assertEquals(siting.mehtM(), worst.nominalM(), 1e-6, family.key());
                assertTrue(worst.lowM() < worst.nominalM() - 0.05 && worst.highM() > worst.nominalM() + 0.05, family.key());
                Distribution trials = study.distribution(Quantity.EYE_HEIGHT).orElseThrow();
                assertTrue(trials.percentileM(1) >= worst.lowM() && trials.percentileM(99) <= worst.highM(), family.key());
                assertEquals("tolerance.row", study.rows().get(0).key());
                ErrorSource.Kind strongest = study.strongest(Quantity.EYE_HEIGHT, 1).get(0).source().kind();
                boolean lights = family.displayForm() == IndicatorFamily.DisplayForm.LIGHTS;
                assertEquals(lights, strongest == ErrorSource.Kind.ANGLE, family.key() + ": panels are not turned, but levelled");
            }
        }
    }

    @Test
    void whatCanNotBeStudiedIsRefused() {
        assertThrows(SitingException.class, () -> new Tolerances(-1, 0, 0));
        assertThrows(SitingException.class, () -> new Tolerances(0, Double.NaN, 0));
        assertThrows(SitingException.class, () -> new Tolerances(0, 0, Double.POSITIVE_INFINITY));
        assertThrows(SitingException.class, () -> study(USUAL, -1, 1));
        assertThrows(SitingException.class, () -> study(USUAL, 1_000_001, 1));
        aid.setTargetEyeHeightM(null);
        assertTrue(assertThrows(SitingException.class, () -> study(USUAL, 0, 1)).getMessage().contains("eye-to-wheel"));
    }
}
