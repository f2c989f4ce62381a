package slopewright.evaluation.terrain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.evaluation.obstacles.ObstacleField;
import slopewright.evaluation.obstacles.Surroundings;
import slopewright.evaluation.obstacles.SurveyField;
import slopewright.evaluation.obstacles.Uncompared;
import slopewright.evaluation.sweep.SweptEnd;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SurveyBlock;
import slopewright.siting.site.PlacedPoints;
import slopewright.siting.site.SurveyPoints;

/**
 * A lens 2 m over flat ground, a sector of 3 degrees to each side whose lower edge rises by 1 degree, 8000 m far, and a ridge 6000 m out.
 * Worked by hand: the line is 2 + 6000 tan 1 = 106.7304 m high there; the Earth curves away by 6000 x 6000 / (2 x 6371008.8) = 2.8253 m,
 * less 0.13 of it for refraction 2.4580 m, so that a ridge hides the unit from 109.1884 m on.
 */
class BeamViewTest {

    private static final double STEP_M = 20;
    /** Half the diagonal of a cell, and half a metre. */
    private static final double REACH_M = 14.65;
    private static final FramePoint LENS = new FramePoint(0, 0, 2);
    private static final ProtectionSurface SECTOR = new ProtectionSurface(0, 0, 2, 0, Math.tan(Math.toRadians(3)), 8000, 1, 0);
    private static final double LINE_M = 109.1884;

    private static Surroundings.Block block(String kind, double farM, double verticalM, DoubleBinaryOperator height, double[] hole) {
        List<FramePoint> points = new ArrayList<>();
        for (double along = 100; along >= -farM; along -= STEP_M) {
            for (double right = -600; right <= 600; right += STEP_M) {
                boolean isHole = hole.length > 0 && Math.abs(along - hole[0]) < hole[2] && Math.abs(right - hole[1]) < hole[2];
                if (!isHole) {
                    points.add(new FramePoint(along, right, height.applyAsDouble(along, right)));
                }
            }
        }
        return block(kind, verticalM, points);
    }

    private static Surroundings.Block block(String kind, double verticalM, List<FramePoint> points) {
        SurveyPoints.InFrame places = new SurveyPoints.InFrame(points.stream().mapToDouble(FramePoint::alongM).toArray(),
                points.stream().mapToDouble(FramePoint::rightM).toArray(), points.stream().mapToDouble(FramePoint::heightM).toArray());
        SurveyBlock block = SlopewrightFactory.eINSTANCE.createSurveyBlock();
        block.setName("model");
        block.setKind(kind);
        block.setHorizontalAccuracyM(REACH_M);
        block.setVerticalAccuracyM(verticalM);
        SurveyPoints named = new SurveyPoints(true, places.alongM(), places.rightM(), places.heightM(), List.of());
        return new Surroundings.Block(block, new SurveyField(named, PlacedPoints.of(places), REACH_M, verticalM));
    }

    /** Beside the blocks there is a low thing far below every line, so that something is known of what stands on the ground. */
    private static Surroundings around(List<Uncompared> uncompared, Surroundings.Block... blocks) {
        List<Surroundings.Block> all = new ArrayList<>(List.of(blocks));
        all.add(block("obstacles", 0.1, List.of(new FramePoint(-4000, 0, -30))));
        return bare(uncompared, all.toArray(Surroundings.Block[]::new));
    }

    private static Surroundings bare(List<Uncompared> uncompared, Surroundings.Block... blocks) {
        ObstacleField none = ObstacleField.of(List.of(), new SweptEnd("end", "", 47, 11, 0, 100, "datum").frame());
        return new Surroundings(none, List.of(blocks), uncompared);
    }

    private static BeamView view(Surroundings surroundings, double refraction) {
        return BeamView.of(LENS, SECTOR, surroundings, TerrainField.of(surroundings), refraction, true);
    }

    private static Surroundings ridge(double heightM, double verticalM, double farM) {
        return around(List.of(), block("terrain", farM, verticalM, (along, right) -> along == -6000 && right == 200 ? heightM : 0,
                new double[0]));
    }

    /** Height of the ridge, accuracy of the model, refraction, what is found. Between both the model cannot tell. */
    @ParameterizedTest
    @CsvSource({"109.0, 0.1, 0.13, NOT_TOLD", "108.0, 0.1, 0.13, SEEN", "108.0, 0.5, 0.13, SEEN", "108.0, 1.5, 0.13, NOT_TOLD",
        "109.25, 0.1, 0.13, HIDDEN", "109.25, 0.1, 0, NOT_TOLD", "109.6, 0.1, 0, HIDDEN", "107.5, 0.1, 0.99, HIDDEN"})
    void aRidgeHidesFromItsHeightOn(double heightM, double verticalM, double refraction, BeamView.State state) {
        BeamView view = view(ridge(heightM, verticalM, 8400), refraction);
        assertEquals(state, view.state(), view.toString());
        assertEquals(8000, view.knownToM());
        if (refraction == 0.13) {
            assertEquals(heightM - LINE_M, view.ground().orElseThrow().aboveM(), 1e-3);
            // on the safe side it stands nearer by the reach: the line is lower there by 14.65 (tan 1 + 6000 x 0.87 / 6371008.8), to 1e-3 m
            assertEquals(heightM + verticalM - LINE_M + REACH_M * (0.0174551 + 0.0008193), view.ground().orElseThrow().atMostM(), 1e-3);
            assertEquals(-6000, view.ground().orElseThrow().place().alongM());
        }
    }

    /** A coarse model of 10 m with a fine one of 12 m in it, that has a hole; behind the fine one the coarse one alone knows the ground. */
    @Test
    void ofSeveralModelsTheMostAccurateOneThatKnowsThePlaceCounts() {
        Surroundings.Block coarse = block("terrain", 2000, 5, (along, right) -> 10, new double[0]);
        Surroundings.Block fine = block("terrain", 1000, 0.1, (along, right) -> 12, new double[] {-500, 0, 50});
        Surroundings.Block alike = block("terrain", 1000, 0.1, (along, right) -> 13, new double[0]);
        List<TerrainField> models = TerrainField.of(around(List.of(), coarse, fine));
        assertEquals(new KnownGround(models.get(1), 12, 0.1), KnownGround.at(models, -200, 0).orElseThrow());
        assertEquals(new KnownGround(models.get(0), 10, 5), KnownGround.at(models, -500, 0).orElseThrow());
        assertEquals(new KnownGround(models.get(0), 10, 5), KnownGround.at(models, -1500, 0).orElseThrow());
        assertEquals(Optional.empty(), KnownGround.at(models, -2500, 0));
        assertEquals(Optional.empty(), KnownGround.at(List.of(), 0, 0));
        assertEquals(12, KnownGround.at(TerrainField.of(around(List.of(), fine, alike)), -200, 0).orElseThrow().heightM(), "the first");
    }

    @Test
    void withoutTerrainNobodyKnows() {
        BeamView none = view(around(List.of()), 0.13);
        assertEquals(BeamView.State.NOT_EVALUATED, none.state());
        assertEquals(0, none.knownToM());
        Surroundings.Block points = block("obstacles", 8400, 0.1, (along, right) -> 0, new double[0]);
        assertEquals(BeamView.State.NOT_EVALUATED, view(around(List.of(), points), 0.13).state());
    }

    @Test
    void terrainThatEndsOrHasAHoleIsNotEvaluatedUnlessSomethingHides() {
        BeamView ends = view(ridge(0, 0.1, 5000), 0.13);
        assertEquals(BeamView.State.NOT_EVALUATED, ends.state());
        assertEquals(5000, ends.knownToM(), 2 * STEP_M);
        Surroundings hole = around(List.of(), block("terrain", 8400, 0.1, (along, right) -> 0, new double[] {-7000, 100, 35}));
        assertEquals(BeamView.State.NOT_EVALUATED, view(hole, 0.13).state());
        assertEquals(7000, view(hole, 0.13).knownToM(), 60);
        Surroundings hidden = around(List.of(), block("terrain", 5000, 0.1, (along, right) -> along == -3000 ? 200 : 0, new double[0]));
        assertEquals(BeamView.State.HIDDEN, view(hidden, 0.13).state());
    }

    @Test
    void whatStandsOnTheGroundHidesTooAndWhatIsNotComparedIsNotClear() {
        Surroundings.Block flat = block("terrain", 8400, 0.1, (along, right) -> 0, new double[0]);
        assertEquals(BeamView.State.SEEN, view(around(List.of(), flat), 0.13).state());
        Surroundings far = around(List.of(), flat, block("obstacles", 0.1, List.of(new FramePoint(3000, 0, 0))));
        BeamView alone = BeamView.of(LENS, SECTOR, far, TerrainField.of(far), 0.13, false);
        assertEquals(BeamView.State.NOT_EVALUATED, alone.state());
        assertFalse(alone.surveyed());
        Surroundings.Block mast = block("obstacles", 0.1, List.of(new FramePoint(-6000, 0, 120)));
        BeamView view = view(around(List.of(), flat, mast), 0.13);
        assertEquals(BeamView.State.HIDDEN, view.state());
        assertTrue(view.other().orElseThrow().marginM() < 0);
        Uncompared unread = new Uncompared(flat.block(), "model", Message.of("plain", Words.name("not read")));
        assertEquals(BeamView.State.NOT_EVALUATED, view(around(List.of(unread), flat), 0.13).state());
    }

    /** A place is known from a cell within reach; how far the cells around differ is part of how well. */
    @Test
    void theGroundIsKnownFromItsCells() {
        Surroundings slope = around(List.of(), block("terrain", 200, 0.3, (along, right) -> -along / 10, new double[0]));
        TerrainField field = TerrainField.of(slope).get(0);
        Optional<TerrainField.Ground> middle = field.at(-100, 0);
        assertEquals(10, middle.orElseThrow().heightM(), 1e-12);
        // the rows before and behind, 20 m away, differ by 2 m
        assertEquals(0.3 + 2, middle.orElseThrow().accuracyM(), 1e-9);
        // 10 m from two rows of cells that differ by 2 m
        assertEquals(0.3 + 2, field.at(-110, 0).orElseThrow().accuracyM(), 1e-9);
        assertTrue(field.at(-214, 0).isPresent());
        assertFalse(field.at(-216, 0).isPresent());
        assertFalse(field.at(0, 5000).isPresent());
        assertFalse(field.at(Double.NaN, 0).isPresent());
    }
}
