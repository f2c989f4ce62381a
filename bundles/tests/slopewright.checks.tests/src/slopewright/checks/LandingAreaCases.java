package slopewright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.ProfilePoint;
import slopewright.model.SlopewrightFactory;

/**
 * Cases of what stands on the runway, on the FATO or around it. The runway runs from 0 to 2400 m and 22.5 m to each side; the FATO is 20 m
 * long and wide around (0, 0), and its safety area 30 m. A quarter of a metre above the ground is let pass.
 */
final class LandingAreaCases {

    private LandingAreaCases() {
    }

    static List<RuleCase> all() {
        List<RuleCase> cases = new ArrayList<>();
        ground(cases);
        length(cases);
        top(cases);
        pad(cases);
        return cases;
    }

    private static RuleCase onRunway(Result expected, String name, Consumer<Sample> change) {
        return RuleCase.of("OBS-10", expected, name, Bases::row, change);
    }

    private static RuleCase onPad(Result expected, String name, Consumer<Sample> change) {
        return RuleCase.of("OBS-10", expected, name, Bases::padSector, change);
    }

    private static void farEnd(Sample sample, Double elevationM) {
        sample.runway().getEnds().get(1).setThresholdElevationM(elevationM);
    }

    private static void centreLine(Sample sample, double... chainageAndElevation) {
        for (int i = 0; i < chainageAndElevation.length; i += 2) {
            ProfilePoint point = SlopewrightFactory.eINSTANCE.createProfilePoint();
            point.setChainageM(chainageAndElevation[i]);
            point.setElevationM(chainageAndElevation[i + 1]);
            sample.runway().getCentreLine().add(point);
        }
    }

    private static Obstacle kerb(Sample sample, double fromM, double toM, double topM) {
        Obstacle kerb = sample.obstacle("kerb", fromM, 20, topM);
        kerb.setKind(ObstacleKind.LINE);
        kerb.getPlaces().add(Sample.place(toM, 20, topM));
        return kerb;
    }

    /** A mast of 3 m near the threshold is lower than the far end of a runway that rises by 10 m, and stands on it all the same. */
    private static void ground(List<RuleCase> cases) {
        cases.add(onRunway(Result.PASS, "0.25 m exactly", sample -> sample.obstacle("light", 500, 0, 100.25)));
        cases.add(onRunway(Result.NOT_EVALUATED, "a mast lower than the far end, no profile", sample -> {
            farEnd(sample, 110.0);
            sample.obstacle("mast", 100, 0, 103);
        }));
        cases.add(onRunway(Result.FAIL, "a mast lower than the far end, on a profile", sample -> {
            farEnd(sample, 110.0);
            centreLine(sample, 0, 100, 2400, 110);
            sample.obstacle("mast", 100, 0, 103);
        }));
        cases.add(onRunway(Result.FAIL, "a mast lower than the far end and one above it, no profile", sample -> {
            farEnd(sample, 110.0);
            sample.obstacle("mast", 100, 0, 103);
            sample.obstacle("tower", 200, 0, 110.26);
        }));
        cases.add(onRunway(Result.PASS, "no higher than the lower end", sample -> {
            farEnd(sample, 110.0);
            sample.obstacle("light", 100, 0, 100.25);
        }));
        cases.add(onRunway(Result.NOT_EVALUATED, "a light beside the higher end, the far one lies lower", sample -> {
            farEnd(sample, 99.9);
            sample.obstacle("light", 500, 0, 100.2);
        }));
        cases.add(onRunway(Result.NOT_EVALUATED, "a light, nobody knows how high the far end lies", sample -> {
            farEnd(sample, null);
            sample.obstacle("light", 500, 0, 100.2);
        }));
        cases.add(onRunway(Result.FAIL, "a mast, nobody knows how high the far end lies", sample -> {
            farEnd(sample, null);
            sample.obstacle("mast", 500, 0, 103);
        }));
        // The profile ends at 1000 m: what stands behind it is judged by the ends, which lie 10 m apart.
        cases.add(onRunway(Result.NOT_EVALUATED, "behind the profile of the centre line", sample -> {
            farEnd(sample, 110.0);
            centreLine(sample, 0, 100, 1000, 104);
            sample.obstacle("mast", 1001, 0, 107);
        }));
        cases.add(onRunway(Result.FAIL, "at the end of the profile of the centre line", sample -> {
            farEnd(sample, 110.0);
            centreLine(sample, 0, 100, 1000, 104);
            sample.obstacle("mast", 1000, 0, 104.26);
        }));
        // A dip of 0.1 m at 500 m: a top of 100.2 m rises 0.3 m there and 0.2 m where the kerb begins and ends.
        cases.add(onRunway(Result.FAIL, "a kerb over a dip", sample -> {
            centreLine(sample, 0, 100, 400, 100, 500, 99.9, 600, 100, 2400, 100);
            kerb(sample, 300, 700, 100.2);
        }));
        cases.add(onRunway(Result.PASS, "a kerb over a dip, 0.24 m", sample -> {
            centreLine(sample, 0, 100, 400, 100, 500, 99.9, 600, 100, 2400, 100);
            kerb(sample, 300, 700, 100.14);
        }));
        cases.add(onRunway(Result.PASS, "a kerb before a dip", sample -> {
            centreLine(sample, 0, 100, 400, 100, 500, 99.9, 600, 100, 2400, 100);
            kerb(sample, 300, 400, 100.2);
        }));
        // The centre line falls by 0.01 %: from 300 to 1300 m by 0.1 m, and the top is level.
        cases.add(onRunway(Result.FAIL, "a kerb along a runway that falls", sample -> {
            centreLine(sample, 0, 100, 2400, 99.76);
            kerb(sample, 300, 1300, 100.15);
        }));
        cases.add(onRunway(Result.FAIL, "a kerb along a runway that rises", sample -> {
            centreLine(sample, 0, 100, 2400, 100.24);
            kerb(sample, 300, 1300, 100.29);
        }));
        cases.add(onRunway(Result.PASS, "a kerb over the end of the runway", sample -> {
            centreLine(sample, 0, 100, 2400, 100);
            kerb(sample, 2300, 2500, 100.2);
        }));
        cases.add(onRunway(Result.NOT_EVALUATED, "no elevation of the threshold", sample -> sample.end().setThresholdElevationM(null)));
    }

    /** The runway ends at its length behind the extremity, or where what is declared for landing ends, whichever is farther. */
    private static void length(List<RuleCase> cases) {
        cases.add(onRunway(Result.FAIL, "just before the far end", sample -> sample.obstacle("mast", 2399, 0, 103)));
        cases.add(onRunway(Result.FAIL, "just behind the threshold", sample -> sample.obstacle("mast", 1, 0, 103)));
        cases.add(onRunway(Result.NOT_APPLICABLE, "just before the threshold", sample -> sample.obstacle("mast", -1, 0, 100.3)));
        cases.add(onRunway(Result.FAIL, "declared for landing behind the length", sample -> {
            sample.end().setLandingDistanceM(2500.0);
            sample.obstacle("mast", 2450, 0, 103);
        }));
        cases.add(onRunway(Result.FAIL, "no length, before what is declared for landing", sample -> {
            sample.runway().setLengthM(null);
            sample.end().setLandingDistanceM(1000.0);
            sample.obstacle("mast", 999, 0, 103);
        }));
        cases.add(onRunway(Result.NOT_APPLICABLE, "no length, behind what is declared for landing", sample -> {
            sample.runway().setLengthM(null);
            sample.end().setLandingDistanceM(1000.0);
            sample.obstacle("mast", 1001, 0, 103);
        }));
        cases.add(onRunway(Result.FAIL, "a displaced threshold, before the end", sample -> displaced(sample, 2099)));
        cases.add(onRunway(Result.NOT_APPLICABLE, "a displaced threshold, behind the end", sample -> displaced(sample, 2101)));
        cases.add(onRunway(Result.NOT_EVALUATED, "neither length nor declared distance", sample -> {
            sample.runway().setLengthM(null);
            sample.end().setLandingDistanceM(null);
        }));
    }

    private static void displaced(Sample sample, double mastM) {
        sample.end().setDisplacedThresholdM(300.0);
        sample.end().setLandingDistanceM(null);
        sample.obstacle("mast", mastM, 0, 103);
    }

    private static void top(List<RuleCase> cases) {
        cases.add(onRunway(Result.FAIL, "a place higher than the top of the whole", sample -> sample.obstacle("mast", 500, 0, 103)
                .setTopElevationM(100.0)));
        cases.add(onRunway(Result.FAIL, "the top of a place alone", sample -> sample.obstacle("mast", 500, 0, 103)
                .setTopElevationM(null)));
        cases.add(onRunway(Result.FAIL, "the lower of two comes first", sample -> {
            sample.obstacle("light", 400, 0, 100.2);
            sample.obstacle("mast", 500, 0, 103);
        }));
        cases.add(onRunway(Result.FAIL, "one without a top, and a mast", sample -> {
            sample.obstacle("mast", 500, 0, 103);
            Obstacle bare = sample.obstacle("bare", 600, 0, 100);
            bare.setTopElevationM(null);
            bare.getPlaces().get(0).setElevationM(null);
        }));
    }

    private static void pad(List<RuleCase> cases) {
        cases.add(onPad(Result.PASS, "a light of 0.25 m on the FATO", sample -> sample.obstacle("light", 5, 0, 100.25)));
        cases.add(onPad(Result.FAIL, "0.26 m on the FATO", sample -> sample.obstacle("light", 5, 0, 100.26)));
        for (double along : new double[] {-14.9, 14.9}) {
            cases.add(onPad(Result.FAIL, "in the safety area at " + along + " m", sample -> sample.obstacle("hedge", along, 0, 101)));
        }
        for (double along : new double[] {-15.1, 15.1}) {
            cases.add(onPad(Result.NOT_APPLICABLE, "beyond the safety area at " + along + " m", sample -> {
                sample.pad().setFatoBearingDeg(90.0);
                sample.obstacle("hedge", along, 0, 101);
            }));
        }
        cases.add(onPad(Result.NOT_APPLICABLE, "0.24 m in what may be a corner", sample -> sample.obstacle("light", 3, -15.1, 100.24)));
        cases.add(onPad(Result.NOT_EVALUATED, "0.26 m in what may be a corner", sample -> sample.obstacle("light", 3, -15.1, 100.26)));
        cases.add(onPad(Result.NOT_EVALUATED, "behind, in what may be a corner", sample -> sample.obstacle("hedge", 21, 0, 101)));
        cases.add(onPad(Result.NOT_EVALUATED, "before, in what may be a corner", sample -> sample.obstacle("hedge", -21, 0, 101)));
        cases.add(onPad(Result.FAIL, "a mast on the FATO, and one in what may be a corner", sample -> {
            sample.obstacle("mast", 0, 0, 103);
            sample.obstacle("hedge", 21, 0, 101);
        }));
        // Twice as long as wide, turned across the approach: 15 m before the middle is out, 15 m beside it is in.
        cases.add(onPad(Result.NOT_APPLICABLE, "before a FATO that lies across", sample -> {
            across(sample);
            sample.obstacle("hedge", 16, 0, 101);
        }));
        cases.add(onPad(Result.FAIL, "beside a FATO that lies across", sample -> {
            across(sample);
            sample.obstacle("hedge", 0, 24.9, 101);
        }));
        cases.add(onPad(Result.NOT_APPLICABLE, "beyond a FATO that lies across", sample -> {
            across(sample);
            sample.obstacle("hedge", 0, 25.1, 101);
        }));
        cases.add(onPad(Result.NOT_EVALUATED, "no length of the FATO", sample -> sample.pad().setFatoLengthM(null)));
        cases.add(onPad(Result.NOT_EVALUATED, "no width of the FATO", sample -> sample.pad().setFatoWidthM(null)));
        cases.add(onPad(Result.NOT_EVALUATED, "no safety area", sample -> sample.pad().setSafetyAreaWidthM(null)));
    }

    /** A FATO of 40 m by 20 m with its safety area 5 m around it, across an approach due east. */
    private static void across(Sample sample) {
        sample.pad().setFatoLengthM(40.0);
        sample.pad().setFatoBearingDeg(0.0);
    }
}
