package slopewright.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.EvaluationCache;
import slopewright.evaluation.remedy.Remedies;
import slopewright.evaluation.remedy.Remedy;
import slopewright.evaluation.remedy.RemedyChange;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.ApproachAid;
import slopewright.model.Obstacle;
import slopewright.model.ProfilePoint;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SurveyBlock;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Projects;
import slopewright.siting.site.SurveyPoints;
import slopewright.standards.RemedyKind;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** Remedies against closed formulas, and carried out: each leaves nothing above the surface, and a little less of it does not. */
class RemediesTest {
    private static final double SLOPE_DEG = 1.93;
    private static final double TAN = Math.tan(Math.toRadians(SLOPE_DEG));

    private static RuleSet rules(String name) {
        return RuleSets.find(name).orElseThrow();
    }

    private static AidEvaluation evaluation(ApproachAid aid, String rules) {
        return AidEvaluation.of(aid, rules(rules), new EvaluationCache());
    }

    private static Map<RemedyKind, Remedy> remedies(Sample sample, String rules) {
        return Remedies.of(evaluation(sample.aid(), rules)).stream().collect(Collectors.toMap(Remedy::kind, remedy -> remedy));
    }

    private static Map<RemedyKind, Remedy> remedies(Sample sample) {
        return remedies(sample, "icao:5th");
    }

    private static Sample withMast(double beforeM, double rightM, double aboveM) {
        Sample sample = Bases.row();
        sample.obstacle("mast", -beforeM, rightM, 100 + (beforeM - 60) * TAN + aboveM);
        return sample;
    }

    private static double amount(Map<RemedyKind, Remedy> remedies, RemedyKind kind) {
        return remedies.get(kind).amount().orElseThrow();
    }

    private static boolean isClear(ApproachAid aid, String rules) {
        return !evaluation(aid, rules).obstacles().orThrow().isPenetrated();
    }

    @Test
    void nothingPenetratesNothingToCure() {
        assertTrue(remedies(withMast(2060, 0, -0.01)).isEmpty());
    }

    /**
     * What each edition lists (5th edition as transposed 5.3.5.45: displacing the threshold, moving by the crossing height; 9th edition
     * 5.3.5.46: no displaced threshold, moving until nothing penetrates; CS-ADR-DSN.M.655 (d): both of displacing and moving until clear).
     */
    @Test
    void remediesThatAnEditionDoesNotListAreNotOffered() {
        Sample sample = withMast(2060, 0, 60);
        List<RemedyKind> common = List.of(RemedyKind.RAISE_SLOPE, RemedyKind.NARROW_BEAM, RemedyKind.TURN_AXIS);
        Map<String, List<RemedyKind>> more = Map.of(
                "icao:5th", List.of(RemedyKind.DISPLACE_THRESHOLD, RemedyKind.MOVE_UPWIND_BY_CROSSING_HEIGHT),
                "icao:9th", List.of(RemedyKind.MOVE_UPWIND_UNTIL_CLEAR),
                "easa", List.of(RemedyKind.DISPLACE_THRESHOLD, RemedyKind.MOVE_UPWIND_UNTIL_CLEAR));
        more.forEach((rules, own) -> {
            List<RemedyKind> expected = new ArrayList<>(common);
            expected.addAll(own);
            assertEquals(expected, Remedies.of(evaluation(sample.aid(), rules)).stream().map(Remedy::kind).toList(), rules);
        });
    }

    /** The surface rises with the settings about its fixed start: its slope must reach the top of the mast. */
    @Test
    void theSlopeRisesByWhatTheSurfaceNeeds() {
        Map<RemedyKind, Remedy> remedies = remedies(withMast(2060, 0, 5));
        double needed = Math.toDegrees(Math.atan((2000 * TAN + 5) / 2000)) - SLOPE_DEG;
        assertEquals(3 + needed, amount(remedies, RemedyKind.RAISE_SLOPE), 1e-5);
        assertEquals(Math.ceil((3 + needed) * 100) / 100, remedies.get(RemedyKind.RAISE_SLOPE).step().orElseThrow(), 1e-9);
    }

    @Test
    void theThresholdMovesByWhatTheSurfaceNeeds() {
        Map<RemedyKind, Remedy> remedies = remedies(withMast(2060, 0, 5));
        assertEquals(5 / TAN, amount(remedies, RemedyKind.DISPLACE_THRESHOLD), 1e-3);
        assertEquals(Math.ceil(5 / TAN), remedies.get(RemedyKind.DISPLACE_THRESHOLD).step().orElseThrow(), 1e-9);
    }

    /** Where the surface starts at the indicator (CS-ADR-DSN.M.655, Table M-2) it moves with it until the mast stands below. */
    @Test
    void theIndicatorMovesUntilItsSurfaceIsClear() {
        assertEquals(5 / TAN, amount(remedies(withMast(2060, 0, 5), "easa"), RemedyKind.MOVE_UPWIND_UNTIL_CLEAR), 1e-3);
    }

    /** Where it starts before the threshold (Table 5-3 of the 5th edition) a higher crossing leaves the mast above it: no remedy. */
    @Test
    void aHigherCrossingClearsNothingThatStartsAtTheThreshold() {
        Remedy remedy = remedies(withMast(2060, 0, 5)).get(RemedyKind.MOVE_UPWIND_BY_CROSSING_HEIGHT);
        assertFalse(remedy.helps());
        double move = Math.ceil(5 / Math.tan(Math.toRadians(2.8)));
        assertEquals("moving the indicator " + Math.round(move) + " m upwind raises the crossing height by the penetration of 5.00 m, but "
                + "leaves the surface penetrated", remedy.message().english());
    }

    /** Near the edge of the surface a small turn leaves the mast outside; on the axis no turn within 5 degrees does. */
    @Test
    void theAxisTurnsAwayFromTheMast() {
        assertTrue(remedies(withMast(4060, 0, 60)).get(RemedyKind.TURN_AXIS).amount().isEmpty());
        Sample sample = withMast(4060, 400, 30);
        double turn = amount(remedies(sample), RemedyKind.TURN_AXIS);
        assertTrue(turn > 0 && turn < 5, "the mast stands on the right, the axis turns to the left of the landing direction: " + turn);
        ProtectionSurface surface = evaluation(sample.aid(), "icao:5th").siting().orThrow().surface().orElseThrow().geometry();
        FramePoint mast = new FramePoint(-4060, 400, 4000 * TAN + 30);
        assertTrue(surface.compare(mast, 0, 0).orElseThrow().excessM() > 0);
        assertTrue(surface.withAxisTurnDeg(turn - 0.01).compare(mast, 0, 0).isPresent());
        assertTrue(surface.withAxisTurnDeg(turn + 1e-9).compare(mast, 0, 0).filter(found -> found.excessM() > 0).isEmpty());
    }

    @Test
    void theBeamNarrowsToTheMastsAzimuth() {
        Sample sample = withMast(2060, 200, 5);
        double distance = sample.unit(0).getAlongM() + 2060;
        Remedy narrow = remedies(sample).get(RemedyKind.NARROW_BEAM);
        assertEquals(Math.toDegrees(Math.atan2(200, distance)), narrow.amount().orElseThrow(), 1e-4);
        assertFalse(narrow.onLeft());
        sample.obstacle("second mast", -2060, -200, 180);
        assertTrue(remedies(sample).get(RemedyKind.NARROW_BEAM).amount().isEmpty(), "one on each side");
        assertTrue(remedies(withMast(2060, 0, 5)).get(RemedyKind.NARROW_BEAM).amount().isEmpty(), "on the axis");
    }

    /** Two points of one block stand through, one on each side: only the higher governs, both count. */
    @Test
    void everySurveyPointThatPenetratesCountsForTheBeam(@TempDir Path folder) {
        Sample sample = Bases.row();
        double top = 100 + 2000 * TAN;
        block(sample, folder, new double[] {-2060, 200, top + 9}, new double[] {-2060, -200, top + 2});
        assertFalse(remedies(sample).get(RemedyKind.NARROW_BEAM).helps());
    }

    /** The surface of a T form rises 1.9 degrees (Table 5-3), whatever its slope: a steeper one clears nothing. */
    @Test
    void aSteeperTFormHasTheSameSurface() {
        Sample sample = Bases.tForm();
        sample.obstacle("mast", -2060, 0, 100 + 2000 * Math.tan(Math.toRadians(1.9)) + 5);
        assertFalse(remedies(sample).get(RemedyKind.RAISE_SLOPE).helps());
        assertEquals(5 / Math.tan(Math.toRadians(1.9)), amount(remedies(sample), RemedyKind.DISPLACE_THRESHOLD), 1e-3);
    }

    @Test
    void aLayoutWithoutSurfaceHasNothingToCure() {
        Sample sample = Bases.row();
        sample.runway().setCodeNumber(1);
        assertTrue(remedies(sample).isEmpty());
    }

    /** Ground that rises 1 in 50 past the threshold: the displaced threshold takes it, and the units keep their height above it. */
    @Test
    void aDisplacedThresholdTakesTheGround() {
        Sample sample = withMast(2060, 0, 5);
        profile(sample, -100, -2, 0, 0, 600, 12);
        sample.aid().getUnits().forEach(unit -> unit.setLensElevationM(100 + unit.getAlongM() / 50 + Sample.LENS_M));
        AidEvaluation before = evaluation(sample.aid(), "icao:5th");
        Remedy displace = Remedies.of(before).stream().filter(remedy -> remedy.kind() == RemedyKind.DISPLACE_THRESHOLD).findFirst()
                .orElseThrow();
        assertEquals(5 / (TAN + 1 / 50.0), displace.amount().orElseThrow(), 1e-3);
        double by = displace.step().orElseThrow();
        RemedyChange.carryOut(displace, sample.aid(), rules("icao:5th"));
        assertEquals(100 + by / 50, sample.end().getThresholdElevationM(), 1e-3);
        sample.aid().getUnits().forEach(unit -> assertEquals(100 + (by + unit.getAlongM()) / 50 + Sample.LENS_M, unit.getLensElevationM(),
                2e-3));
        assertTrue(isClear(sample.aid(), "icao:5th"));
    }

    /**
     * What is offered is clear when carried out: 40 trials of each layout, obstacles and survey points strewn at random about and above
     * the surface, each remedy that helps carried out on a copy of the project, the copy evaluated afresh.
     */
    @Test
    void whatIsOfferedIsClearWhenCarriedOut(@TempDir Path folder) {
        Map<String, Supplier<Sample>> bases = Map.of("icao:5th", Bases::row, "easa", Bases::row, "icao:9th", Bases::row,
                "icao:5th T", Bases::tForm, "faa", Bases::usRow);
        Map<RemedyKind, Integer> tried = new EnumMap<>(RemedyKind.class);
        SplittableRandom random = new SplittableRandom(20_260_301);
        bases.entrySet().stream().sorted(Map.Entry.comparingByKey()).forEach(base -> {
            for (int trial = 0; trial < 40; trial++) {
                Sample sample = base.getValue().get();
                strew(sample, random, trial % 2 == 0 ? Optional.of(folder) : Optional.empty());
                carryOutAll(sample.project(), sample.aid().getId(), base.getKey().replace(" T", ""), tried);
            }
        });
        assertTrue(tried.keySet().containsAll(List.of(RemedyKind.RAISE_SLOPE, RemedyKind.TURN_AXIS, RemedyKind.DISPLACE_THRESHOLD,
                RemedyKind.MOVE_UPWIND_UNTIL_CLEAR)), tried.toString());
        assertTrue(tried.values().stream().mapToInt(count -> count).sum() > 150, tried.toString());
    }

    private static void profile(Sample sample, double... alongAndHeight) {
        for (int i = 0; i < alongAndHeight.length; i += 2) {
            ProfilePoint point = SlopewrightFactory.eINSTANCE.createProfilePoint();
            point.setChainageM(alongAndHeight[i]);
            point.setElevationM(Sample.DATUM_M + alongAndHeight[i + 1]);
            sample.end().getSiteProfile().add(point);
        }
    }

    /** Adds a block of points, metres in the frame and elevation: the runway of the sample lands east, so that right is south. */
    private static void block(Sample sample, Path folder, double[]... points) {
        double[][] columns = new double[3][points.length];
        for (int i = 0; i < points.length; i++) {
            columns[0][i] = -points[i][1];
            columns[1][i] = points[i][0];
            columns[2][i] = points[i][2];
        }
        byte[] bytes = new SurveyPoints(true, columns[0], columns[1], columns[2], List.of()).bytes();
        SurveyBlock block = SlopewrightFactory.eINSTANCE.createSurveyBlock();
        block.setHorizontalAccuracyM(1e-9);
        block.setVerticalAccuracyM(1e-9);
        block.setName("trees");
        block.setPath(SurveyPoints.sha256(bytes) + ".swpoints");
        block.setSha256(SurveyPoints.sha256(bytes));
        block.setPointCount(points.length);
        sample.project().getSurveyBlocks().add(block);
        ProjectFile.settle(sample.project(), folder.resolve("trial.slopewright"));
        try {
            Files.write(folder.resolve(block.getPath()), bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void strew(Sample sample, SplittableRandom random, Optional<Path> folder) {
        for (int i = 0; i < 1 + random.nextInt(4); i++) {
            double[] at = place(random);
            Obstacle obstacle = sample.obstacle("obstacle " + i, at[0], at[1], at[2]);
            obstacle.setHorizontalAccuracyM(random.nextDouble(0, 5));
            obstacle.setVerticalAccuracyM(random.nextDouble(0, 2));
        }
        folder.ifPresent(where -> block(sample, where, place(random), place(random), place(random)));
    }

    private static double[] place(SplittableRandom random) {
        double out = random.nextDouble(200, 5000);
        return new double[] {-60 - out, random.nextDouble(-1, 1) * (60 + 0.12 * out), 100 + out * TAN + random.nextDouble(-20, 12)};
    }

    private static void carryOutAll(Project project, String aidId, String rules, Map<RemedyKind, Integer> tried) {
        AidEvaluation original = evaluation(aid(project, aidId), rules);
        for (Remedy remedy : Remedies.of(original)) {
            if (!remedy.helps() || remedy.kind() == RemedyKind.NARROW_BEAM) {
                continue;
            }
            Project copy = ProjectFile.copy(project);
            ApproachAid aid = aid(copy, aidId);
            RemedyChange.carryOut(remedy, aid, rules(rules));
            assertTrue(isClear(aid, rules), () -> rules + ": " + remedy.message().english());
            tried.merge(remedy.kind(), 1, Integer::sum);
        }
    }

    private static ApproachAid aid(Project project, String id) {
        return Projects.aids(project).stream().filter(aid -> id.equals(aid.getId())).findFirst().orElseThrow();
    }
}
