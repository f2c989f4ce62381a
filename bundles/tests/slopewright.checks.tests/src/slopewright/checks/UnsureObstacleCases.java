package slopewright.checks;

import java.util.ArrayList;
import java.util.List;

import slopewright.geometry.FramePoint;
import slopewright.model.Obstacle;
import slopewright.model.SurveyBlock;
import slopewright.testkit.SurveySamples;

/**
 * Cases of obstacles of which nobody says how well their place was surveyed. The surface of the base row is 275 m wide to each side at
 * 2060 m before the threshold, its sides splay by a tenth, and it rises at 1.93 degrees (Table 5-3). A place may be off by 50 m, so at the
 * side by the root of 1.01 times as much, 50.2 m, and outward by 50 m x tan 1.93 degrees, 1.7 m; a top may be off by 30 m (own bands).
 */
final class UnsureObstacleCases {

    private static final double SURFACE_M = 100 + 2000 * Math.tan(Math.toRadians(1.93));
    private static final double HALF_WIDTH_M = 275;

    private UnsureObstacleCases() {
    }

    static List<RuleCase> all() {
        List<RuleCase> cases = new ArrayList<>();
        besideSurface(cases);
        inBeam(cases);
        onRunway(cases);
        return cases;
    }

    private static Obstacle unsure(Obstacle obstacle) {
        obstacle.setHorizontalAccuracyM(null);
        return obstacle;
    }

    private static SurveyBlock block(Sample sample, double rightM, double aboveM) {
        sample.putInFolder();
        return SurveySamples.add(sample.project(), sample.host(), "points",
                new FramePoint(-2060, rightM, SURFACE_M - Sample.DATUM_M + aboveM));
    }

    private static void besideSurface(List<RuleCase> cases) {
        cases.add(RuleCase.of("OBS-01", Result.NOT_EVALUATED, "50 m beside, surveyed nobody knows where", Bases::row,
                sample -> unsure(sample.obstacle("mast", -2060, HALF_WIDTH_M + 50, SURFACE_M + 5))));
        cases.add(RuleCase.of("OBS-01", Result.PASS, "51 m beside, surveyed nobody knows where", Bases::row,
                sample -> unsure(sample.obstacle("mast", -2060, HALF_WIDTH_M + 51, SURFACE_M + 5))));
        cases.add(RuleCase.of("OBS-01", Result.PASS, "50 m beside, surveyed to a metre", Bases::row,
                sample -> sample.obstacle("mast", -2060, HALF_WIDTH_M + 50, SURFACE_M + 5).setHorizontalAccuracyM(1.0)));
        cases.add(RuleCase.of("OBS-01", Result.NOT_EVALUATED, "1.6 m lower than the surface beside it, nobody knows where", Bases::row,
                sample -> unsure(sample.obstacle("mast", -2060, HALF_WIDTH_M + 20, SURFACE_M - 1.6))));
        cases.add(RuleCase.of("OBS-01", Result.PASS, "1.8 m lower than the surface beside it, nobody knows where", Bases::row,
                sample -> unsure(sample.obstacle("mast", -2060, HALF_WIDTH_M + 20, SURFACE_M - 1.8))));
        cases.add(RuleCase.of("OBS-01", Result.NOT_EVALUATED, "31 m lower beside it, nobody knows where nor how high", Bases::row,
                sample -> unsure(sample.obstacle("mast", -2060, HALF_WIDTH_M + 20, SURFACE_M - 31)).setVerticalAccuracyM(null)));
        cases.add(RuleCase.of("OBS-01", Result.PASS, "32 m lower beside it, nobody knows where nor how high", Bases::row,
                sample -> unsure(sample.obstacle("mast", -2060, HALF_WIDTH_M + 20, SURFACE_M - 32)).setVerticalAccuracyM(null)));
        cases.add(RuleCase.of("OBS-01", Result.PASS, "beside it nobody knows where, but a study shields it", Bases::row, sample -> {
            Obstacle mast = unsure(sample.obstacle("mast", -2060, HALF_WIDTH_M + 50, SURFACE_M + 5));
            mast.setShielded(true);
            mast.setShieldingStudy("aeronautical study 7");
            mast.setShieldingStudyDate("2024-05-02");
            mast.setShieldingStudyPerson("J. Doe");
        }));
        cases.add(RuleCase.of("OBS-06", Result.NOT_EVALUATED, "50 m beside, surveyed nobody knows where", Bases::row,
                sample -> block(sample, HALF_WIDTH_M + 50, 5).setHorizontalAccuracyM(null)));
        cases.add(RuleCase.of("OBS-06", Result.PASS, "51 m beside, surveyed nobody knows where", Bases::row,
                sample -> block(sample, HALF_WIDTH_M + 51, 5).setHorizontalAccuracyM(null)));
    }

    /** A beam of 8 degrees ends 332 m beside the axis; a sign 100 m before a unit stands in its line of sight, before the surface. */
    private static void inBeam(List<RuleCase> cases) {
        cases.add(RuleCase.of("OBS-03", Result.NOT_EVALUATED, "below the plane in the beam, nobody knows how high", Bases::row,
                sample -> sample.obstacle("mast", -2060, 327, SURFACE_M - 0.1).setVerticalAccuracyM(null)));
        cases.add(RuleCase.of("OBS-03", Result.NOT_EVALUATED, "beside the beam, nobody knows where", Bases::row,
                sample -> unsure(sample.obstacle("mast", -2060, 340, SURFACE_M + 5))));
        cases.add(RuleCase.of("OBS-03", Result.PASS, "far beside the beam, nobody knows where", Bases::row,
                sample -> unsure(sample.obstacle("mast", -2060, 400, SURFACE_M + 5))));
        cases.add(RuleCase.of("OBS-08", Result.PASS, "far out in the surface, nobody knows how high", Bases::row,
                sample -> sample.obstacle("mast", -2060, 0, SURFACE_M - 0.1).setVerticalAccuracyM(null)));
        cases.add(RuleCase.of("OBS-08", Result.NOT_EVALUATED, "low before a unit, nobody knows how high", Bases::row,
                sample -> sample.obstacle("sign", sample.unit(0).getAlongM() - 100, sample.unit(0).getRightM(), Sample.DATUM_M)
                        .setVerticalAccuracyM(null)));
        cases.add(RuleCase.of("OBS-08", Result.NOT_EVALUATED, "beside the sight of a unit, nobody knows where", Bases::row,
                sample -> unsure(sample.obstacle("mast", sample.unit(0).getAlongM() - 100, sample.unit(0).getRightM() - 60,
                        Sample.DATUM_M + 9))));
    }

    /** The runway is 2400 m long, level at the datum, and 22.5 m wide to each side. */
    private static void onRunway(List<RuleCase> cases) {
        cases.add(RuleCase.of("OBS-10", Result.NOT_EVALUATED, "72 m beside the centre line, nobody knows where", Bases::row,
                sample -> unsure(sample.obstacle("mast", 500, 72, Sample.DATUM_M + 3))));
        cases.add(RuleCase.of("OBS-10", Result.NOT_APPLICABLE, "73 m beside the centre line, nobody knows where", Bases::row,
                sample -> unsure(sample.obstacle("mast", 500, 73, Sample.DATUM_M + 3))));
        cases.add(RuleCase.of("OBS-10", Result.NOT_EVALUATED, "one without a top", Bases::row, sample -> {
            Obstacle mast = sample.obstacle("mast", 500, 0, Sample.DATUM_M);
            mast.setTopElevationM(null);
            mast.getPlaces().get(0).setElevationM(null);
        }));
        cases.add(RuleCase.of("OBS-10", Result.FAIL, "on the runway behind what is declared for landing", Bases::row, sample -> {
            sample.end().setLandingDistanceM(1000.0);
            sample.obstacle("mast", 1500, 0, Sample.DATUM_M + 3);
        }));
    }
}
