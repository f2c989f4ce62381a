package slopewright.evaluation.tolerance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.TrialSite;
import slopewright.evaluation.obstacles.Uncompared;

/**
 * The margin of the study is that of the evaluation. The surface of a row of four on 3 degrees, code 4, visual, starts 60 m before the
 * threshold and rises 2.5 - 0.57 = 1.93 degrees (transposition of the 5th edition, table of obstacle surfaces).
 */
class ToleranceMarginTest {
    private static final double TAN = Math.tan(Math.toRadians(1.93));

    private final TrialSite site = TrialSite.runway("four-unit-row").laidOut("icao:5th");

    private static ToleranceStudy study(AidEvaluation evaluation) {
        return ToleranceStudy.of(evaluation, Tolerances.usual(), 0, 1);
    }

    private static WorstCase margin(AidEvaluation evaluation) {
        return study(evaluation).worst(Quantity.SURFACE_MARGIN).orElseThrow();
    }

    /** The mast, surveyed to 5 m and 1 m, counts 995 m out and 1 m higher: 995 tan 1.93 - 30 = 3.528; the point 1000 tan 1.93 - 31. */
    @Test
    void theNominalMarginIsTheOneOfTheEvaluation(@TempDir Path folder) {
        var mast = site.mast("mast", -1060, 0, 29);
        mast.setHorizontalAccuracyM(5.0);
        mast.setVerticalAccuracyM(1.0);
        AidEvaluation withMast = site.evaluation("icao:5th");
        assertEquals(995 * TAN - 30, margin(withMast).nominalM(), 1e-6);
        assertEquals(withMast.marginM().orElseThrow(), margin(withMast).nominalM(), 0);
        site.block(folder, "trees", new double[] {-1060, 20, 31});
        AidEvaluation withBlock = site.evaluation("icao:5th");
        assertEquals(1000 * TAN - 31, margin(withBlock).nominalM(), 1e-6);
        assertEquals(withBlock.marginM().orElseThrow(), margin(withBlock).nominalM(), 0);
    }

    /** 100 m out a mast leaves 1 m; 6000 m out a tree leaves 3 m, and stands through when unit A points 3 minutes lower. */
    @Test
    void whatGovernsOnlyWhenUnitsAreOffCountsToo(@TempDir Path folder) {
        site.mast("near", -160, 0, 100 * TAN - 1);
        double top = 6000 * TAN - 3;
        site.block(folder, "trees", new double[] {-6060, 0, top}, new double[] {-3060, 0, -50}, new double[] {-4060, 0, -50});
        AidEvaluation evaluation = site.evaluation("icao:5th");
        assertEquals(1, margin(evaluation).nominalM(), 1e-6);
        assertEquals(6000 * Math.tan(Math.toRadians(1.93 - 3 / 60.0)) - top, margin(evaluation).lowM(), 1e-4);
        assertTrue(margin(evaluation).lowM() < 0);
    }

    /** More obstacles than take part in the search: the least margin is still that of everything. */
    @Test
    void manyObstaclesLeaveTheWorstCaseTrue() {
        for (int i = 0; i < 2 * StudiedShapes.MOST; i++) {
            site.mast("near " + i, -160, i / 10.0, 100 * TAN - 1 - i * 1e-3);
        }
        site.mast("far", -6060, 0, 6000 * TAN - 3);
        assertEquals(3 - 6000 * (TAN - Math.tan(Math.toRadians(1.88))), margin(site.evaluation("icao:5th")).lowM(), 1e-4);
    }

    @Test
    void aMissingTopIsNamedAndTakesNothingAway() {
        site.mast("mast", -1060, 0, 30);
        site.unknownTop("tree", -2000);
        ToleranceStudy study = study(site.evaluation("icao:5th"));
        assertEquals(1000 * TAN - 30, study.worst(Quantity.SURFACE_MARGIN).orElseThrow().nominalM(), 1e-6);
        assertEquals(List.of("tree"), study.uncompared().stream().map(Uncompared::label).toList());
        assertTrue(study.notes().stream().anyMatch(note -> note.key().equals("tolerance.uncompared")));
    }

    @Test
    void whatMayStandThroughIsNamedAndTakesNothingAway() {
        site.mast("mast", -1060, 0, 30);
        site.mast("tree", -2060, 0, 20).setVerticalAccuracyM(null);
        ToleranceStudy study = study(site.evaluation("icao:5th"));
        assertEquals(1000 * TAN - 30, study.worst(Quantity.SURFACE_MARGIN).orElseThrow().nominalM(), 1e-6);
        assertEquals(List.of("tree"), study.uncompared().stream().map(Uncompared::label).toList());
    }
}
