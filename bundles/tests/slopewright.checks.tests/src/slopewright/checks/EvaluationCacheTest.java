package slopewright.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.evaluation.EvaluationCache;
import slopewright.evaluation.ReadBacks;
import slopewright.model.Identified;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SurveyBlock;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Ids;
import slopewright.siting.site.SurveyPoints;

/**
 * A check with a cache says what a check says that begins anew. Survey points are compared with numbers worked from the surface of
 * the base row: it starts 60 m before the threshold at its elevation, 75 m to each side, diverges by 10 % and rises at 1.93 degrees.
 */
class EvaluationCacheTest {

    private static final double RISE = Math.tan(Math.toRadians(1.93));

    private final Random random = new Random(5);

    @Test
    void aCacheChangesNoOutcome() {
        Sample sample = Bases.row();
        Project project = sample.project();
        for (int i = 0; i < 60; i++) {
            scatter(sample, i);
        }
        Ids.assign(project);
        EvaluationCache cache = new EvaluationCache();
        for (int round = 0; round < 96; round++) {
            cache.forget(project, change(sample, round));
            CheckResult cached = Checks.run(project, cache, (done, all) -> true).orElseThrow();
            assertEquals(Checks.run(project, Optional.empty()).outcomes(), cached.outcomes(), "after change " + round);
        }
    }

    private Obstacle scatter(Sample sample, int number) {
        Obstacle obstacle = sample.obstacle("tree " + number, -4000 * random.nextDouble(), 600 * (random.nextDouble() - 0.5),
                100 + 140 * random.nextDouble());
        obstacle.setHorizontalAccuracyM(random.nextDouble() * 3);
        return obstacle;
    }

    /** Changes something as an edit does and returns the ids that the edit would name. */
    private Set<String> change(Sample sample, int round) {
        List<Obstacle> obstacles = sample.aerodrome().getObstacles();
        Obstacle one = obstacles.get(random.nextInt(obstacles.size()));
        switch (round % 12) {
            case 0:
                one.setTopElevationM(100 + 140 * random.nextDouble());
                one.getPlaces().get(0).setElevationM(null);
                return Set.of(one.getId(), one.getPlaces().get(0).getId());
            case 1:
                one.getPlaces().get(0).setNorthM(200 * random.nextDouble());
                return Set.of(one.getPlaces().get(0).getId());
            case 2:
                Obstacle added = scatter(sample, 100 + round);
                Ids.assign(sample.project());
                return Set.of(sample.aerodrome().getId(), added.getId(), added.getPlaces().get(0).getId());
            case 3:
                obstacles.remove(one);
                return Set.of(sample.aerodrome().getId(), one.getId(), one.getPlaces().get(0).getId());
            case 4:
                one.setShielded(!Boolean.TRUE.equals(one.getShielded()));
                one.setShieldedBy(obstacles.get(random.nextInt(obstacles.size())));
                return Set.of(one.getId());
            case 5:
                sample.moveAlong(random.nextDouble() * 20 - 10);
                Set<String> units = new HashSet<>();
                sample.units(unit -> units.add(unit.getId()));
                return units;
            case 6:
                sample.aerodrome().setName("Aerodrome " + round);
                sample.aid().setName("indicator " + round);
                return Set.of(sample.aerodrome().getId(), sample.aid().getId());
            case 7:
                sample.aid().setName("row " + round);
                sample.aid().setSlopeDeg(round % 2 == 0 ? 3.0 : 31.0);
                return Set.of(sample.aid().getId());
            case 8:
                sample.project().setDate(round % 2 == 0 ? "2026-01-10" : "2026-13-10");
                return Set.of(sample.project().getId());
            case 9:
                sample.project().setAuthor("A. Alder");
                ReadBacks.keep(sample.project(), ReadBacks.elements(sample.project()), "B. Bole", "2026-01-06");
                return Stream.concat(Stream.of(sample.project()), sample.project().getReadBacks().stream()).map(Identified::getId)
                        .collect(Collectors.toSet());
            case 10:
                one.setDate(round % 3 == 0 ? "1999-02-30" : "2025-05-01");
                one.setSource("survey " + round);
                return Set.of(one.getId());
            default:
                sample.end().setTrueBearingDeg(90 + random.nextDouble());
                return Set.of(sample.end().getId());
        }
    }

    /** Both stand above the surface, which is 67 and 85 m above the threshold there; the hill is as high as the mast, and then lower. */
    @Test
    void aShieldThatIsLoweredShieldsNoMore() {
        Sample sample = Bases.row();
        Project project = sample.project();
        Obstacle hill = sample.obstacle("hill", -2600, 0, 100 + 95);
        Obstacle mast = sample.obstacle("mast", -2060, 0, 100 + 92);
        mast.setShielded(true);
        mast.setShieldedBy(hill);
        Ids.assign(project);
        EvaluationCache cache = new EvaluationCache();
        Predicate<Outcome> ofMast = outcome -> "OBS-01".equals(outcome.rule()) && mast.getId().equals(outcome.elementId());
        assertEquals(Result.PASS, Checks.run(project, cache, (done, all) -> true).orElseThrow().outcomes().stream().filter(ofMast)
                .findFirst().orElseThrow().result());
        hill.setTopElevationM(100 + 90.0);
        hill.getPlaces().get(0).setElevationM(100 + 90.0);
        cache.forget(project, Set.of(hill.getId(), hill.getPlaces().get(0).getId()));
        assertEquals(Result.NOT_EVALUATED, Checks.run(project, cache, (done, all) -> true).orElseThrow().outcomes().stream()
                .filter(ofMast).findFirst().orElseThrow().result());
    }

    @Test
    void aCheckThatIsNotWantedAnyMoreEnds() {
        Project project = Bases.row().project();
        List<Integer> heard = new ArrayList<>();
        Optional<CheckResult> result = Checks.run(project, new EvaluationCache(), (done, all) -> {
            heard.add(done);
            return done < 5;
        });
        assertTrue(result.isEmpty());
        assertEquals(List.of(0, 1, 2, 3, 4, 5), heard);
    }

    @Test
    void surveyPointsAreComparedWithTheSurface(@TempDir Path folder) throws Exception {
        double limitM = 100 + (1060 - 60) * RISE;
        Project project = withPoints(folder, new double[] {-1060, -1060, -1060, -3000}, new double[] {0, 180, 0, 0},
                new double[] {limitM - 0.5, limitM + 50, limitM - 0.25, 0});
        Outcome clear = outcome(project);
        assertEquals(Result.PASS, clear.result());
        assertEquals(0.25, clear.value().orElseThrow(), 1e-8);
        String said = clear.explanation().english();
        assertTrue(said.contains("3 of them within") && said.contains("point 3,"), said);

        project.getSurveyBlocks().get(0).setVerticalAccuracyM(0.4);
        Outcome unsure = outcome(project);
        assertEquals(Result.FAIL, unsure.result());
        assertEquals(-0.15, unsure.value().orElseThrow(), 1e-9);

        project.getSurveyBlocks().get(0).setHorizontalAccuracyM(10.0);
        assertEquals(-50.4 - 10 * RISE, outcome(project).value().orElseThrow(), 1e-6, "the point beside may lie within the surface");
    }

    @Test
    void pointsThatCanNotBeReadAreNotPassed(@TempDir Path folder) throws Exception {
        Project project = withPoints(folder, new double[] {-1000}, new double[] {0}, new double[] {100});
        Files.write(folder.resolve("trees.swpoints"), new SurveyPoints(true, new double[] {1}, new double[] {1}, new double[] {1},
                List.of()).bytes());
        Outcome replaced = outcome(project);
        assertEquals(Result.NOT_EVALUATED, replaced.result());
        assertTrue(replaced.explanation().english().contains("the file was changed or replaced"), replaced.explanation().english());
        Files.delete(folder.resolve("trees.swpoints"));
        assertTrue(outcome(project).explanation().english().contains("there is no such file"));
    }

    private static Outcome outcome(Project project) {
        List<Outcome> found = Checks.run(project, Optional.empty()).outcomes().stream().filter(outcome -> "OBS-06".equals(outcome.rule()))
                .toList();
        assertEquals(1, found.size());
        return found.get(0);
    }

    private static Project withPoints(Path folder, double[] alongM, double[] rightM, double[] elevationM) throws Exception {
        Project project = Bases.row().project();
        project.setRuleSetKey("icao:5th");
        double[] north = new double[rightM.length];
        for (int i = 0; i < north.length; i++) {
            north[i] = -rightM[i];
        }
        byte[] bytes = new SurveyPoints(true, north, alongM, elevationM, List.of()).bytes();
        write(folder.resolve("trees.swpoints"), bytes);
        SurveyBlock block = SlopewrightFactory.eINSTANCE.createSurveyBlock();
        block.setHorizontalAccuracyM(1e-9);
        block.setVerticalAccuracyM(1e-9);
        block.setName("trees");
        block.setPath("trees.swpoints");
        block.setSha256(SurveyPoints.sha256(bytes));
        block.setPointCount(alongM.length);
        project.getSurveyBlocks().add(block);
        Ids.assign(project);
        ProjectFile.save(project, folder.resolve("site.slopewright"));
        return ProjectFile.load(folder.resolve("site.slopewright"));
    }

    private static void write(Path file, byte[] bytes) throws IOException {
        Files.write(file, bytes);
    }
}
