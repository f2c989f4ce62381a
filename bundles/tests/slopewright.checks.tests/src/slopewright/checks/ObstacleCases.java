package slopewright.checks;

import java.util.ArrayList;
import java.util.List;

import slopewright.geometry.FramePoint;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.ReviewNote;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SurveyBlock;
import slopewright.testkit.SurveySamples;

/** Cases of the rules about obstacles. The surface of the base row starts 60 m before the threshold and rises at 1.93 degrees. */
final class ObstacleCases {

    /** 1.93 degrees = 2 degrees 30 minutes less 0.57 (Table 5-3). */
    private static final double RISE = Math.tan(Math.toRadians(1.93));

    private ObstacleCases() {
    }

    static List<RuleCase> all() {
        List<RuleCase> cases = new ArrayList<>();
        surface(cases);
        beside(cases);
        rest(cases);
        survey(cases);
        landingArea(cases);
        return cases;
    }

    private static double surfaceM(double beforeM) {
        return 100 + (beforeM - 60) * RISE;
    }

    private static Obstacle shielded(Sample sample, Obstacle by) {
        Obstacle mast = sample.obstacle("mast", -2060, 0, surfaceM(2060) + 5);
        mast.setShielded(true);
        mast.setShieldedBy(by);
        return mast;
    }

    private static void allRound(Sample sample, double reachM) {
        sample.obstacleSurvey().setAllRound(true);
        sample.obstacleSurvey().setHalfWidthM(null);
        sample.obstacleSurvey().setReachM(reachM);
    }

    private static Obstacle study(Obstacle obstacle, String person) {
        obstacle.setShielded(true);
        obstacle.setShieldingStudy("aeronautical study 7");
        obstacle.setShieldingStudyDate("2024-05-02");
        obstacle.setShieldingStudyPerson(person);
        return obstacle;
    }

    private static void surface(List<RuleCase> cases) {
        cases.add(RuleCase.of("OBS-01", Result.PASS, "below", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("OBS-01", Result.PASS, "5 cm below", Bases::row, sample -> sample.obstacle("mast", -2060, 0,
                surfaceM(2060) - 0.05)));
        cases.add(RuleCase.of("OBS-01", Result.FAIL, "5 cm above", Bases::row, sample -> sample.obstacle("mast", -2060, 0, surfaceM(2060)
                + 0.05)));
        cases.add(RuleCase.of("OBS-01", Result.FAIL, "5 cm below, surveyed to 10 cm", Bases::row,
                sample -> sample.obstacle("mast", -2060, 0, surfaceM(2060) - 0.05).setVerticalAccuracyM(0.1)));
        cases.add(RuleCase.of("OBS-01", Result.NOT_EVALUATED, "5 cm below, surveyed nobody knows how well", Bases::row,
                sample -> sample.obstacle("mast", -2060, 0, surfaceM(2060) - 0.05).setVerticalAccuracyM(null)));
        cases.add(RuleCase.of("OBS-01", Result.NOT_EVALUATED, "5 cm below, surveyed nobody knows where", Bases::row,
                sample -> sample.obstacle("mast", -2060, 0, surfaceM(2060) - 0.05).setHorizontalAccuracyM(null)));
        cases.add(RuleCase.of("OBS-01", Result.FAIL, "5 cm above, surveyed nobody knows how well", Bases::row,
                sample -> sample.obstacle("mast", -2060, 0, surfaceM(2060) + 0.05).setVerticalAccuracyM(null)));
        cases.add(RuleCase.of("OBS-01", Result.FAIL, "just outside, surveyed to 20 m", Bases::row,
                sample -> sample.obstacle("mast", -2060, 75 + 200 + 10, surfaceM(2060) + 50).setHorizontalAccuracyM(20.0)));
        cases.add(RuleCase.of("OBS-01", Result.PASS, "outside", Bases::row, sample -> sample.obstacle("mast", -2060, 75 + 200 + 10,
                surfaceM(2060) + 50)));
        cases.add(RuleCase.of("OBS-01", Result.NOT_EVALUATED, "above, said to be shielded", Bases::row,
                sample -> sample.obstacle("mast", -2060, 0, surfaceM(2060) + 5).setShielded(true)));
        cases.add(RuleCase.of("OBS-01", Result.PASS, "above, shielded by an object that a study accepts", Bases::row,
                sample -> shielded(sample, study(sample.obstacle("hill", -2500, 100, surfaceM(2500) + 40), "J. Doe"))));
        cases.add(RuleCase.of("OBS-01", Result.NOT_EVALUATED, "above, shielded by an object that is lower", Bases::row,
                sample -> shielded(sample, study(sample.obstacle("hut", -300, 0, surfaceM(300) + 2), "J. Doe"))));
        cases.add(RuleCase.of("OBS-01", Result.NOT_EVALUATED, "above, shielded by an object below the surface", Bases::row,
                sample -> shielded(sample, sample.obstacle("hill", -5000, 0, surfaceM(5000) - 1))));
        cases.add(RuleCase.of("OBS-01", Result.NOT_EVALUATED, "above, shielded by an object beside the surface", Bases::row,
                sample -> shielded(sample, sample.obstacle("hill", -2500, 2000, surfaceM(2500) + 40))));
        cases.add(RuleCase.of("OBS-01", Result.NOT_EVALUATED, "above, each of three shielded by the next", Bases::row, sample -> {
            Obstacle second = sample.obstacle("second", -2100, 0, surfaceM(2060) + 5);
            Obstacle third = shielded(sample, second);
            Obstacle first = shielded(sample, third);
            second.setShielded(true);
            second.setShieldedBy(first);
        }));
        cases.add(RuleCase.of("OBS-01", Result.PASS, "above, shielded by a study", Bases::row,
                sample -> study(sample.obstacle("mast", -2060, 0, surfaceM(2060) + 5), "J. Doe")));
        cases.add(RuleCase.of("OBS-01", Result.NOT_EVALUATED, "above, a study without a person", Bases::row,
                sample -> study(sample.obstacle("mast", -2060, 0, surfaceM(2060) + 5), null)));
        cases.add(RuleCase.of("OBS-01", Result.FAIL, "a line whose middle penetrates", Bases::row, sample -> {
            Obstacle line = sample.obstacle("ridge", -2060, -400, surfaceM(2060) + 5);
            line.setKind(ObstacleKind.LINE);
            line.getPlaces().add(Sample.place(-2060, 400, surfaceM(2060) + 5));
        }));
        cases.add(RuleCase.of("OBS-01", Result.NOT_EVALUATED, "one without top", Bases::row,
                sample -> withoutTop(sample.obstacle("mast", -2060, 0, 0))));
        cases.add(RuleCase.of("OBS-01", Result.NOT_EVALUATED, "two units of one name", Bases::row,
                sample -> sample.unit(0).setLabel(sample.unit(1).getLabel())));
        cases.add(RuleCase.of("OBS-01", Result.NOT_EVALUATED, "no survey and no obstacle", Bases::row, sample -> {
            sample.aerodrome().getObstacles().clear();
            sample.aerodrome().getObstacleSurveys().clear();
        }));
        cases.add(RuleCase.of("OBS-01", Result.NOT_EVALUATED, "an obstacle below, but no survey", Bases::row,
                sample -> sample.aerodrome().getObstacleSurveys().clear()));
        cases.add(RuleCase.of("OBS-01", Result.NOT_EVALUATED, "an obstacle below, but the survey ends before the surface", Bases::row,
                sample -> sample.obstacleSurvey().setReachM(15_059.0)));
        cases.add(RuleCase.of("OBS-01", Result.FAIL, "an obstacle above, whatever the survey covers", Bases::row, sample -> {
            sample.obstacle("mast", -2060, 0, surfaceM(2060) + 0.05);
            sample.aerodrome().getObstacleSurveys().clear();
        }));
        cases.add(RuleCase.of("OBS-01", Result.PASS, "nothing stands in the survey", Bases::row,
                sample -> sample.aerodrome().getObstacles().clear()));
        cases.add(RuleCase.of("OBS-01", Result.NOT_EVALUATED, "row of four, visual code 1, no slope printed", Bases::row,
                sample -> sample.runway().setCodeNumber(1)));
        cases.add(RuleCase.of("OBS-01", Result.PASS, "helipad", Bases::padSector, Sample::unchanged));
        cases.add(RuleCase.of("OBS-01", Result.NOT_EVALUATED, "helipad without safety area", Bases::padSector,
                sample -> sample.pad().setSafetyAreaWidthM(null)));
        cases.add(RuleCase.of("OBS-01", Result.NOT_EVALUATED, "helipad without the length of its FATO", Bases::padSector,
                sample -> sample.pad().setFatoLengthM(null)));
        cases.add(RuleCase.of("OBS-01", Result.NOT_EVALUATED, "helipad without the width of its FATO, which may lie across",
                Bases::padSector, sample -> sample.pad().setFatoWidthM(null)));
        cases.add(RuleCase.of("OBS-01", Result.PASS, "helipad without the width of its FATO, which lies along",
                Bases::padSector, sample -> {
            sample.pad().setFatoWidthM(null);
            sample.pad().setFatoBearingDeg(270.0);
        }));
        // The FATO, 20 m by 20 m, ends 10 m before its middle if it lies along the approach, 14.14 m if across; 3 m on begins the surface.
        cases.add(pad(Result.PASS, "below the surface of a FATO that lies along", 90.0, 13, -0.05));
        cases.add(pad(Result.FAIL, "above the surface of a FATO that lies along", 90.0, 13, 0.05));
        cases.add(pad(Result.PASS, "below the surface of a FATO that lies across", 45.0, 17.142, -0.05));
        cases.add(pad(Result.FAIL, "above the surface of a FATO that lies across", 45.0, 17.142, 0.05));
        cases.add(pad(Result.PASS, "below the lowest surface that there may be", null, 17.142, -0.05));
        cases.add(pad(Result.FAIL, "above the lowest surface that there may be", null, 17.142, 0.05));
        cases.add(RuleCase.of("OBS-01", Result.FAIL, "between the beginnings that there may be", Bases::padSector,
                sample -> sample.obstacle("kerb", -15, 0, Sample.DATUM_M + 0.3)));
        cases.add(RuleCase.of("OBS-03", Result.NOT_EVALUATED, "helipad without the length of its FATO", Bases::padSector,
                sample -> sample.pad().setFatoLengthM(null)));
        cases.add(RuleCase.of("OBS-01", Result.FAIL, "T form, above 1.9 degrees", Bases::tForm,
                sample -> sample.obstacle("mast", -2060, 0, 100 + 2000 * Math.tan(Math.toRadians(1.9)) + 0.05)));
        cases.add(RuleCase.of("OBS-02", Result.NOT_APPLICABLE, "not turned", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("OBS-02", Result.PASS, "5 degrees", Bases::row, sample -> sample.aid().setAxisTurnDeg(-5.0)));
        cases.add(RuleCase.of("OBS-02", Result.NOT_EVALUATED, "a rule set without a limit", Bases::usRow,
                sample -> sample.aid().setAxisTurnDeg(3.0)));
        cases.add(RuleCase.of("OBS-02", Result.FAIL, "5.1 degrees", Bases::row, sample -> sample.aid().setAxisTurnDeg(5.1)));
    }

    /**
     * A heliport sector light at 6 degrees; its surface rises at 0.65 degrees below the upper limit of "below slope", which is 15' below
     * the on-slope sector, whose lower edge is 22.5' below the slope.
     */
    private static RuleCase pad(Result result, String what, Double fatoDeg, double startM, double aboveM) {
        double rise = Math.tan(Math.toRadians(6 - 37.5 / 60 - 0.65));
        return RuleCase.of("OBS-01", result, what, Bases::padSector, sample -> {
            sample.pad().setFatoBearingDeg(fatoDeg);
            sample.obstacle("mast", -1000, 0, Sample.DATUM_M + (1000 - startM) * rise + aboveM);
        });
    }

    /** At 2060 m before the threshold the surface ends 275 m, a beam of 8 degrees 332 m beside the axis. */
    private static void beside(List<RuleCase> cases) {
        cases.add(RuleCase.of("OBS-03", Result.PASS, "nothing", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("OBS-03", Result.FAIL, "between surface and beam", Bases::row, sample -> sample.obstacle("mast", -2060, 300,
                surfaceM(2060) + 5)));
        cases.add(RuleCase.of("OBS-03", Result.PASS, "0.1 m below the surface", Bases::row, sample -> sample.obstacle("mast", -2060, 300,
                surfaceM(2060) - 0.1)));
        cases.add(RuleCase.of("OBS-03", Result.FAIL, "0.1 m above the surface", Bases::row, sample -> sample.obstacle("mast", -2060, 300,
                surfaceM(2060) + 0.1)));
        cases.add(RuleCase.of("OBS-03", Result.PASS, "narrowed on that side", Bases::row, sample -> {
            sample.obstacle("mast", -2060, 300, surfaceM(2060) + 5);
            sample.aid().setBeamRightLimitDeg(7.0);
        }));
        cases.add(RuleCase.of("OBS-03", Result.FAIL, "narrowed on the other side", Bases::row, sample -> {
            sample.obstacle("mast", -2060, 300, surfaceM(2060) + 5);
            sample.aid().setBeamLeftLimitDeg(7.0);
        }));
        cases.add(RuleCase.of("OBS-03", Result.PASS, "outside the beam", Bases::row, sample -> sample.obstacle("mast", -2060, 400,
                surfaceM(2060) + 5)));
        // A beam of 7 degrees reaches 291 m there: the wire is in it from 280 m on, and highest at 320 m, where one of 8 degrees reaches.
        cases.add(RuleCase.of("OBS-03", Result.FAIL, "a wire out of the narrower side", Bases::row, sample -> {
            Obstacle wire = sample.obstacle("wire", -2060, 280, surfaceM(2060) + 5);
            wire.setKind(ObstacleKind.LINE);
            wire.getPlaces().add(Sample.place(-2060, 320, surfaceM(2060) + 15));
            wire.setTopElevationM(surfaceM(2060) + 15);
            sample.aid().setBeamRightLimitDeg(7.0);
        }));
        // A beam of 8 degrees reaches 333 m there. The wire goes round the surface, below it where it crosses the axis 4 km out; it is most
        // too high 320 m to the left, where the beam ends at 291 m, and nearly as much 323 m to the right.
        cases.add(RuleCase.of("OBS-03", Result.NOT_EVALUATED, "a wire that is lower within the wider side", Bases::row, sample -> {
            Obstacle wire = sample.obstacle("wire", -2060, -320, surfaceM(2060) + 15);
            wire.setKind(ObstacleKind.LINE);
            wire.getPlaces().add(Sample.place(-4000, -720, surfaceM(2060) + 15));
            wire.getPlaces().add(Sample.place(-4000, 720, surfaceM(2060) + 15));
            wire.getPlaces().add(Sample.place(-2080, 323, surfaceM(2060) + 15));
            wire.setTopElevationM(surfaceM(2060) + 15);
            sample.aid().setBeamLeftLimitDeg(7.0);
        }));
        cases.add(RuleCase.of("OBS-03", Result.FAIL, "beside the beam by less than the survey is exact", Bases::row, sample -> sample
                .obstacle("mast", -2060, 350, surfaceM(2060) + 5).setHorizontalAccuracyM(30.0)));
        cases.add(RuleCase.of("OBS-03", Result.PASS, "beside the beam by more than the survey is exact", Bases::row, sample -> sample
                .obstacle("mast", -2060, 350, surfaceM(2060) + 5).setHorizontalAccuracyM(10.0)));
        cases.add(RuleCase.of("OBS-03", Result.PASS, "inside the surface, which another rule reports", Bases::row,
                sample -> sample.obstacle("mast", -2060, 0, surfaceM(2060) + 5)));
        cases.add(RuleCase.of("OBS-03", Result.NOT_EVALUATED, "beam unknown", Bases::row, sample -> sample.aid().setEquipment(null)));
        // Order 8200.1 7.10: 1 degree. Lowest signal 2 degrees 50 minutes less 1 degree at 2000 m from the row.
        double top = 100 + Sample.LENS_M + 2000 * Math.tan(Math.toRadians(17.0 / 6 - 1));
        cases.add(RuleCase.of("OBS-04", Result.PASS, "just below", Bases::usRow, sample -> atRange(sample, 2000, top - 0.1)));
        cases.add(RuleCase.of("OBS-04", Result.FAIL, "just above", Bases::usRow, sample -> atRange(sample, 2000, top + 0.1)));
        cases.add(RuleCase.of("OBS-04", Result.PASS, "beyond the range", Bases::usRow, sample -> atRange(sample, 6500, 900)));
        cases.add(RuleCase.of("OBS-04", Result.FAIL, "just below, surveyed to 20 cm", Bases::usRow,
                sample -> atRange(sample, 2000, top - 0.1).setVerticalAccuracyM(0.2)));
        // The same mast 20 m nearer is 0.64 m too high: 20 m x tan 1.833 degrees.
        cases.add(RuleCase.of("OBS-04", Result.FAIL, "just below, perhaps 20 m nearer", Bases::usRow,
                sample -> atRange(sample, 2000, top - 0.1).setHorizontalAccuracyM(20.0)));
        // 10 degrees to each side reach 2000 m x tan 10 degrees = 352.7 m at the mast.
        cases.add(RuleCase.of("OBS-04", Result.FAIL, "above, within 10 degrees of the approach", Bases::usRow,
                sample -> atRange(sample, 2000, 340, top + 5)));
        cases.add(RuleCase.of("OBS-04", Result.PASS, "above, beside 10 degrees of the approach", Bases::usRow,
                sample -> atRange(sample, 2000, 390, top + 5)));
        cases.add(RuleCase.of("OBS-04", Result.PASS, "above, accepted by a study", Bases::usRow,
                sample -> study(atRange(sample, 2000, top + 5), "J. Doe")));
        cases.add(RuleCase.of("OBS-04", Result.FAIL, "above, a study without a person", Bases::usRow,
                sample -> study(atRange(sample, 2000, top + 5), null)));
        cases.add(RuleCase.of("OBS-04", Result.NOT_EVALUATED, "one without top", Bases::usRow,
                sample -> withoutTop(atRange(sample, 2000, top - 5))));
        cases.add(RuleCase.of("OBS-04", Result.FAIL, "one above and one without top", Bases::usRow, sample -> {
            withoutTop(atRange(sample, 1500, 0));
            atRange(sample, 2000, top + 0.1);
        }));
        cases.add(RuleCase.of("OBS-04", Result.NOT_APPLICABLE, "ICAO", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("OBS-04", Result.FAIL, "helipad", Bases::padPair, sample -> sample.obstacle("tree", -500, 0, 160)));
    }

    private static Obstacle atRange(Sample sample, double rangeM, double topM) {
        return atRange(sample, rangeM, 0, topM);
    }

    private static Obstacle atRange(Sample sample, double rangeM, double rightM, double topM) {
        return sample.obstacle("mast", sample.unit(0).getAlongM() - rangeM, rightM, topM);
    }

    private static void withoutTop(Obstacle obstacle) {
        obstacle.setTopElevationM(null);
        obstacle.getPlaces().get(0).setElevationM(null);
    }

    private static void rest(List<RuleCase> cases) {
        cases.add(RuleCase.of("OBS-05", Result.PASS, "antenna on the other side", Bases::rowBesideGlidePath, Sample::unchanged));
        cases.add(RuleCase.of("OBS-05", Result.NOT_EVALUATED, "antenna on the same side, no area", Bases::rowBesideGlidePath,
                sample -> sample.host().getGlidePath().setAntennaRightM(-120.0)));
        cases.add(RuleCase.of("OBS-05", Result.NOT_EVALUATED, "antenna not known", Bases::rowBesideGlidePath,
                sample -> sample.host().getGlidePath().setAntennaRightM(null)));
        cases.add(RuleCase.of("OBS-05", Result.NOT_APPLICABLE, "no glide path", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("OBS-05", Result.NOT_APPLICABLE, "helipad", Bases::padSector, Sample::unchanged));
        cases.add(RuleCase.of("OBS-06", null, "no block", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("OBS-06", Result.NOT_EVALUATED, "a block without its file", Bases::row, sample -> {
            SurveyBlock block = SlopewrightFactory.eINSTANCE.createSurveyBlock();
            block.setName("points");
            sample.project().getSurveyBlocks().add(block);
        }));
        cases.add(RuleCase.of("OBS-06", Result.PASS, "5 cm below", Bases::row, sample -> block(sample, -0.05)));
        cases.add(RuleCase.of("OBS-06", Result.NOT_EVALUATED, "5 cm below, surveyed nobody knows how well", Bases::row,
                sample -> block(sample, -0.05).setVerticalAccuracyM(null)));
        cases.add(RuleCase.of("OBS-06", Result.FAIL, "5 cm above, surveyed nobody knows how well", Bases::row,
                sample -> block(sample, 0.05).setVerticalAccuracyM(null)));
        cases.add(RuleCase.of("OBS-06", Result.FAIL, "5 cm above", Bases::row, sample -> block(sample, 0.05)));
        cases.add(RuleCase.of("OBS-06", Result.FAIL, "5 cm above, with a note that is resolved", Bases::row, sample -> {
            ReviewNote note = SlopewrightFactory.eINSTANCE.createReviewNote();
            note.setRuleId("OBS-06");
            note.setElementId(block(sample, 0.05).getId());
            note.setResolved(true);
            sample.project().getReviewNotes().add(note);
        }));
        cases.add(RuleCase.of("OBS-06", Result.NOT_EVALUATED, "no surface to compare with", Bases::row, sample -> {
            sample.runway().setCodeNumber(1);
            block(sample, -0.05);
        }));
    }

    /** A block with one point 2060 m before the threshold, so much above the surface. */
    private static SurveyBlock block(Sample sample, double aboveM) {
        sample.putInFolder();
        return SurveySamples.add(sample.project(), sample.host(), "points",
                new FramePoint(-2060, 0, surfaceM(2060) - Sample.DATUM_M + aboveM));
    }

    /** The surface of the base row (Table 5-3, visual code 4): 60 m + 15 000 m out; 75 m + 10 % of 15 000 m to each side. */
    private static void survey(List<RuleCase> cases) {
        cases.add(RuleCase.of("OBS-07", Result.PASS, "15 060 m out and 1 575 m to each side", Bases::row, sample -> {
            sample.obstacleSurvey().setReachM(15_060.0);
            sample.obstacleSurvey().setHalfWidthM(1_575.0);
        }));
        cases.add(RuleCase.of("OBS-07", Result.FAIL, "15 059 m out", Bases::row,
                sample -> sample.obstacleSurvey().setReachM(15_059.0)));
        cases.add(RuleCase.of("OBS-07", Result.FAIL, "1 574 m to each side", Bases::row,
                sample -> sample.obstacleSurvey().setHalfWidthM(1_574.0)));
        // All round the farthest corner counts: the root of 15 060² + 1 575² is 15 142.1 m.
        cases.add(RuleCase.of("OBS-07", Result.PASS, "15 143 m all round, no width", Bases::row, sample -> allRound(sample, 15_143.0)));
        cases.add(RuleCase.of("OBS-07", Result.FAIL, "15 142 m all round", Bases::row, sample -> allRound(sample, 15_142.0)));
        // Turned by 5 degrees the outer corner lies 15 000 m x sin 5 + 1 575 m x cos 5 = 2 876 m from the extended centre line.
        cases.add(RuleCase.of("OBS-07", Result.FAIL, "1 575 m beside a turned axis", Bases::row, sample -> {
            sample.obstacleSurvey().setHalfWidthM(1_575.0);
            sample.aid().setAxisTurnDeg(5.0);
        }));
        cases.add(RuleCase.of("OBS-07", Result.PASS, "US, 4 miles", Bases::usRow, sample -> sample.obstacleSurvey().setReachM(6_500.0)));
        cases.add(RuleCase.of("OBS-07", Result.FAIL, "US, 6 000 m for 4 miles less the row's place", Bases::usRow,
                sample -> sample.obstacleSurvey().setReachM(6_000.0)));
        cases.add(RuleCase.of("OBS-07", Result.NOT_EVALUATED, "none", Bases::row,
                sample -> sample.aerodrome().getObstacleSurveys().clear()));
        cases.add(RuleCase.of("OBS-07", Result.NOT_EVALUATED, "one of another place", Bases::row, sample -> {
            sample.obstacleSurvey().getHosts().clear();
            sample.obstacleSurvey().getHosts().add(sample.runway().getEnds().get(1));
        }));
        cases.add(RuleCase.of("OBS-07", Result.NOT_EVALUATED, "no date", Bases::row, sample -> sample.obstacleSurvey().setDate(null)));
        cases.add(RuleCase.of("OBS-07", Result.PASS, "ten years before the project", Bases::row,
                sample -> sample.project().setDate("2036-01-01")));
        cases.add(RuleCase.of("OBS-07", Result.NOT_EVALUATED, "ten years and a day before the project", Bases::row,
                sample -> sample.project().setDate("2036-01-02")));
        cases.add(RuleCase.of("OBS-07", Result.NOT_EVALUATED, "no accuracy", Bases::row,
                sample -> sample.obstacleSurvey().setVerticalAccuracyM(null)));
        cases.add(RuleCase.of("OBS-07", Result.NOT_EVALUATED, "no width", Bases::row,
                sample -> sample.obstacleSurvey().setHalfWidthM(null)));
        cases.add(RuleCase.of("OBS-07", Result.NOT_EVALUATED, "no source", Bases::row, sample -> sample.obstacleSurvey().setSource(" ")));
        cases.add(RuleCase.of("OBS-09", Result.PASS, "whole", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("OBS-09", Result.PASS, "1 mm", Bases::row, sample -> sample.obstacleSurvey().setVerticalAccuracyM(0.001)));
        cases.add(RuleCase.of("OBS-09", Result.FAIL, "exact", Bases::row, sample -> sample.obstacleSurvey().setVerticalAccuracyM(0.0)));
        cases.add(RuleCase.of("OBS-09", Result.NOT_EVALUATED, "no reach", Bases::row, sample -> sample.obstacleSurvey().setReachM(null)));
        cases.add(RuleCase.of("OBS-09", Result.PASS, "the source of obstacles alone, no reach", Bases::row, sample -> {
            sample.obstacleSurvey().getHosts().clear();
            sample.obstacleSurvey().setReachM(null);
        }));
        cases.add(RuleCase.of("OBS-09", Result.NOT_EVALUATED, "the source of obstacles alone, no date", Bases::row, sample -> {
            sample.obstacleSurvey().getHosts().clear();
            sample.obstacleSurvey().setDate(null);
        }));
        cases.add(RuleCase.of("OBS-09", null, "no survey", Bases::row, sample -> sample.aerodrome().getObstacleSurveys().clear()));
    }

    /** The runway is 2400 m long and 45 m wide; the FATO is 20 m long and wide, and the safety area reaches 5 m around it. */
    private static void landingArea(List<RuleCase> cases) {
        double datum = Sample.DATUM_M;
        cases.add(RuleCase.of("OBS-10", Result.NOT_APPLICABLE, "nothing", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("OBS-10", Result.FAIL, "a mast on the runway", Bases::row, sample -> sample.obstacle("mast", 500, 0, datum
                + 3)));
        cases.add(RuleCase.of("OBS-10", Result.PASS, "a light of 0.24 m", Bases::row, sample -> sample.obstacle("light", 500, 0, datum
                + 0.24)));
        cases.add(RuleCase.of("OBS-10", Result.FAIL, "a sign of 0.26 m", Bases::row, sample -> sample.obstacle("sign", 500, 22, datum
                + 0.26)));
        cases.add(RuleCase.of("OBS-10", Result.NOT_APPLICABLE, "beside the runway",
                Bases::row, sample -> sample.obstacle("mast", 500, 23, datum
                + 3)));
        cases.add(RuleCase.of("OBS-10", Result.NOT_APPLICABLE, "behind the runway",
                Bases::row, sample -> sample.obstacle("mast", 2401, 0, datum
                + 3)));
        cases.add(RuleCase.of("OBS-10", Result.FAIL, "a wire across the runway", Bases::row, sample -> {
            Obstacle wire = sample.obstacle("wire", 300, -100, datum + 8);
            wire.setKind(ObstacleKind.LINE);
            wire.getPlaces().add(Sample.place(300, 100, datum + 8));
        }));
        cases.add(RuleCase.of("OBS-10", Result.FAIL, "a mast on the FATO", Bases::padSector, sample -> sample.obstacle("mast", 4, 5, datum
                + 3)));
        cases.add(RuleCase.of("OBS-10", Result.FAIL, "a hedge in the safety area", Bases::padSector, sample -> sample.obstacle("hedge", 3,
                -14.9, datum + 1)));
        cases.add(RuleCase.of("OBS-10", Result.NOT_APPLICABLE, "a hedge beside the safety area", Bases::padSector, sample -> {
            sample.pad().setFatoBearingDeg(90.0);
            sample.obstacle("hedge", 3, -15.1, datum + 1);
        }));
        cases.add(RuleCase.of("OBS-10", Result.NOT_EVALUATED, "a hedge beside the safety area, in a corner if the FATO is turned",
                Bases::padSector, sample -> sample.obstacle("hedge", 3, -15.1, datum + 1)));
        cases.add(RuleCase.of("OBS-10", Result.NOT_EVALUATED, "the same, and a light on the pad", Bases::padSector, sample -> {
            sample.obstacle("hedge", 3, -15.1, datum + 1);
            sample.obstacle("light", 5, 0, datum + 0.2);
        }));
        cases.add(RuleCase.of("OBS-10", Result.NOT_APPLICABLE, "a hedge beyond every corner, 21.2 m from the middle", Bases::padSector,
                sample -> sample.obstacle("hedge", 0, -21.4, datum + 1)));
        // A FATO that lies at 45 degrees has its corner 21.2 m ahead, and its side no more than 15 m to the side.
        cases.add(RuleCase.of("OBS-10", Result.FAIL, "in the corner of a FATO that is turned", Bases::padSector, sample -> {
            sample.pad().setFatoBearingDeg(45.0);
            sample.obstacle("hedge", 21, 0, datum + 1);
        }));
        cases.add(RuleCase.of("OBS-10", Result.NOT_APPLICABLE, "out of the corner of a FATO that is turned", Bases::padSector, sample -> {
            sample.pad().setFatoBearingDeg(45.0);
            sample.obstacle("hedge", 14, -14, datum + 1);
        }));
        cases.add(RuleCase.of("OBS-10", Result.NOT_EVALUATED, "no width of the runway", Bases::row,
                sample -> sample.runway().setWidthM(null)));
    }
}
