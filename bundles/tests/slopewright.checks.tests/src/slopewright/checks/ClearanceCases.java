package slopewright.checks;

import java.util.ArrayList;
import java.util.List;

import slopewright.model.AeroplaneGroup;

/** Cases of the rules about distance, eye height, wheel clearance, glide path and marking. */
final class ClearanceCases {

    private ClearanceCases() {
    }

    static List<RuleCase> all() {
        List<RuleCase> cases = new ArrayList<>();
        distance(cases);
        eye(cases);
        wheel(cases);
        glidePath(cases);
        return cases;
    }

    private static void distance(List<RuleCase> cases) {
        cases.add(RuleCase.of("DIST-01", Result.PASS, "solved", Bases::row, Sample::unchanged));
        // 0.3 m of eye height on 2 degrees 48 minutes are 6.13 m along.
        cases.add(RuleCase.of("DIST-01", Result.PASS, "6 m nearer", Bases::row, sample -> sample.moveAlong(-6)));
        cases.add(RuleCase.of("DIST-01", Result.PASS, "6.1 m nearer", Bases::row, sample -> sample.moveAlong(-6.1)));
        cases.add(RuleCase.of("DIST-01", Result.FAIL, "6.2 m nearer", Bases::row, sample -> sample.moveAlong(-6.2)));
        cases.add(RuleCase.of("DIST-01", Result.FAIL, "7 m nearer", Bases::row, sample -> sample.moveAlong(-7)));
        cases.add(RuleCase.of("DIST-01", Result.FAIL, "50 m farther", Bases::row, sample -> sample.moveAlong(50)));
        cases.add(RuleCase.of("DIST-01", Result.PASS, "a lens 1 m low, moved by its level", Bases::row, sample -> {
            sample.units(unit -> unit.setLensElevationM(unit.getLensElevationM() - 1));
            sample.moveAlong(20.4465);
        }));
        cases.add(RuleCase.of("DIST-01", Result.NOT_APPLICABLE, "beside a glide path", Bases::rowBesideGlidePath, Sample::unchanged));
        cases.add(RuleCase.of("DIST-01", Result.NOT_EVALUATED, "no aeroplanes", Bases::row,
                sample -> sample.host().getRegularGroups().clear()));
        cases.add(RuleCase.of("DIST-02", Result.PASS, "on the runway", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DIST-02", Result.FAIL, "before the threshold", Bases::row, sample -> sample.moveAlong(-400)));
        cases.add(RuleCase.of("DIST-02", Result.FAIL, "behind the runway", Bases::row, sample -> sample.end().setLandingDistanceM(300.0)));
        // The units stand 303.22 m behind the threshold.
        cases.add(RuleCase.of("DIST-02", Result.PASS, "at the end of the runway", Bases::row,
                sample -> sample.end().setLandingDistanceM(303.3)));
        cases.add(RuleCase.of("DIST-02", Result.FAIL, "just behind the runway", Bases::row,
                sample -> sample.end().setLandingDistanceM(303.2)));
        cases.add(RuleCase.of("DIST-02", Result.NOT_EVALUATED, "no length", Bases::row, sample -> {
            sample.end().setLandingDistanceM(null);
            sample.runway().setLengthM(null);
        }));
    }

    private static void eye(List<RuleCase> cases) {
        cases.add(RuleCase.of("EYE-01", Result.PASS, "solved", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("EYE-01", Result.PASS, "farther", Bases::row, sample -> sample.moveAlong(20)));
        cases.add(RuleCase.of("EYE-01", Result.FAIL, "1 m nearer", Bases::row, sample -> sample.moveAlong(-1)));
        cases.add(RuleCase.of("EYE-01", Result.FAIL, "lenses lower", Bases::row,
                sample -> sample.units(unit -> unit.setLensElevationM(99.5))));
        cases.add(RuleCase.of("EYE-01", Result.FAIL, "a taller aeroplane", Bases::row,
                sample -> sample.host().getRegularGroups().get(0).setEyeToWheelM(7.0)));
        cases.add(RuleCase.of("EYE-01", Result.NOT_EVALUATED, "no lens elevation", Bases::row,
                sample -> sample.unit(0).setLensElevationM(null)));
        cases.add(RuleCase.of("EYE-02", Result.PASS, "50 ft", Bases::usRow, Sample::unchanged));
        cases.add(RuleCase.of("EYE-02", Result.FAIL, "about 21 ft", Bases::usRow, sample -> sample.moveAlong(-180)));
        cases.add(RuleCase.of("EYE-02", Result.FAIL, "about 80 ft", Bases::usRow, sample -> sample.moveAlong(190)));
        // 25 ft are 7.62 m less than 50 ft; on 2 degrees 50 minutes, 154.0 m along.
        cases.add(RuleCase.of("EYE-02", Result.PASS, "25.2 ft", Bases::usRow, sample -> sample.moveAlong(-153)));
        cases.add(RuleCase.of("EYE-02", Result.FAIL, "24.8 ft", Bases::usRow, sample -> sample.moveAlong(-155)));
        cases.add(RuleCase.of("EYE-02", Result.NOT_APPLICABLE, "ICAO", Bases::row, Sample::unchanged));
        // Group 3: 50 ft, +5 and -15 ft; 1 ft on 2 degrees 50 minutes is 6.16 m along.
        cases.add(RuleCase.of("EYE-03", Result.PASS, "50 ft", Bases::usRow, Sample::unchanged));
        cases.add(RuleCase.of("EYE-03", Result.PASS, "35.2 ft", Bases::usRow, sample -> sample.moveAlong(-91)));
        cases.add(RuleCase.of("EYE-03", Result.FAIL, "34.8 ft", Bases::usRow, sample -> sample.moveAlong(-94)));
        cases.add(RuleCase.of("EYE-03", Result.FAIL, "55.2 ft", Bases::usRow, sample -> sample.moveAlong(32)));
        cases.add(RuleCase.of("EYE-03", Result.NOT_EVALUATED, "no group", Bases::usRow, sample -> sample.aid().setHeightGroup(null)));
        demandingGroup(cases);
        cases.add(RuleCase.of("EYE-04", Result.PASS, "at the hover", Bases::padSector, Sample::unchanged));
        cases.add(RuleCase.of("EYE-04", Result.PASS, "row at a helipad", Bases::padRow, Sample::unchanged));
        cases.add(RuleCase.of("EYE-04", Result.FAIL, "5 m farther", Bases::padSector, sample -> sample.moveAlong(5)));
        // 0.3 m on 6 degrees are 2.85 m along.
        cases.add(RuleCase.of("EYE-04", Result.PASS, "2.8 m farther", Bases::padSector, sample -> sample.moveAlong(2.8)));
        cases.add(RuleCase.of("EYE-04", Result.FAIL, "2.9 m farther", Bases::padSector, sample -> sample.moveAlong(2.9)));
        cases.add(RuleCase.of("EYE-04", Result.NOT_EVALUATED, "no hover height", Bases::padSector,
                sample -> sample.pad().setHoverHeightM(null)));
        cases.add(RuleCase.of("AIM-01", Result.PASS, "at the row", Bases::row, Sample::unchanged));
        // 0.3 m of eye height on 3 degrees are 5.72 m along; the marking, in whole metres, begins 0.22 m before the origin.
        cases.add(RuleCase.of("AIM-01", Result.PASS, "5.9 m farther", Bases::row, sample -> aimAside(sample, 5.9)));
        cases.add(RuleCase.of("AIM-01", Result.FAIL, "6.0 m farther", Bases::row, sample -> aimAside(sample, 6.0)));
        cases.add(RuleCase.of("AIM-01", Result.FAIL, "at 400 m", Bases::row, sample -> sample.end().setAimingPointDistanceM(400.0)));
        cases.add(RuleCase.of("AIM-01", Result.NOT_EVALUATED, "not known", Bases::row,
                sample -> sample.end().setAimingPointDistanceM(null)));
        cases.add(RuleCase.of("AIM-01", Result.NOT_APPLICABLE, "US", Bases::usRow, Sample::unchanged));
    }

    /** Table 5-2: an eye-to-wheel height of 6.63 m has 9 m desired and 5 m minimum. */
    private static void wheel(List<RuleCase> cases) {
        cases.add(RuleCase.of("WHEEL-01", Result.PASS, "9 m", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("WHEEL-01", Result.FAIL, "8.95 m", Bases::row, sample -> sample.moveAlong(-1)));
        cases.add(RuleCase.of("WHEEL-01", Result.NOT_EVALUATED, "a group without height", Bases::row,
                sample -> {
                    AeroplaneGroup others = sample.group("others", 3, 1);
                    others.setEyeToWheelM(null);
                    sample.host().getRegularGroups().add(others);
                }));
        cases.add(RuleCase.of("WHEEL-01", Result.NOT_APPLICABLE, "US", Bases::usRow, Sample::unchanged));
        cases.add(RuleCase.of("WHEEL-02", Result.PASS, "5.05 m", Bases::row, sample -> sample.moveAlong(-80.8)));
        cases.add(RuleCase.of("WHEEL-02", Result.FAIL, "4.9 m", Bases::row, sample -> sample.moveAlong(-83.8)));
        cases.add(RuleCase.of("WHEEL-02", Result.PASS, "2 m, light aeroplanes only", Bases::row, sample -> light(sample, true)));
        cases.add(RuleCase.of("WHEEL-02", Result.FAIL, "2 m, with turbojets", Bases::row, sample -> light(sample, false)));
        cases.add(RuleCase.of("WHEEL-02", Result.NOT_EVALUATED, "taller than the table", Bases::row,
                sample -> sample.host().getRegularGroups().add(sample.group("giants", 14, 6))));
        cases.add(RuleCase.of("WHEEL-02", Result.NOT_EVALUATED, "no aeroplanes", Bases::row,
                sample -> sample.host().getRegularGroups().clear()));
        cases.add(RuleCase.of("WHEEL-03", Result.NOT_APPLICABLE, "not displaced", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("WHEEL-03", Result.NOT_APPLICABLE, "displaced with the desired clearance", Bases::row,
                sample -> sample.end().setDisplacedThresholdM(150.0)));
        // 40 m nearer: 7.04 m at the threshold. At 150 m before it the eye is 7.34 m higher: 13.67 + 7.34 - 8 m = 13.0 m over level ground.
        cases.add(RuleCase.of("WHEEL-03", Result.PASS, "cut clearance, extremity level", Bases::row, sample -> cut(sample, 150, 100.0)));
        cases.add(RuleCase.of("WHEEL-03", Result.FAIL, "cut clearance, extremity 5 m higher", Bases::row,
                sample -> cut(sample, 150, 105.0)));
        // 13.01 m over level ground, 9 m desired: 4.0 m higher is met, 4.1 m is not.
        cases.add(RuleCase.of("WHEEL-03", Result.PASS, "cut clearance, extremity 4.0 m higher", Bases::row,
                sample -> cut(sample, 150, 104.0)));
        cases.add(RuleCase.of("WHEEL-03", Result.FAIL, "cut clearance, extremity 4.1 m higher", Bases::row,
                sample -> cut(sample, 150, 104.1)));
        cases.add(RuleCase.of("WHEEL-03", Result.NOT_EVALUATED, "no elevation of the extremity", Bases::row,
                sample -> cut(sample, 150, null)));
    }

    private static void aimAside(Sample sample, double byM) {
        sample.end().setAimingPointDistanceM(sample.end().getAimingPointDistanceM() + byM);
    }

    private static void light(Sample sample, boolean light) {
        AeroplaneGroup group = sample.host().getRegularGroups().get(0);
        group.setEyeToWheelM(2.0);
        group.setLightNonTurbojet(light);
        sample.units(unit -> unit.setAlongM(4 * 20.4465));
    }

    private static void cut(Sample sample, double displacedM, Double extremityM) {
        sample.moveAlong(-40);
        sample.end().setDisplacedThresholdM(displacedM);
        sample.end().setExtremityElevationM(extremityM);
    }

    private static void glidePath(List<RuleCase> cases) {
        cases.add(RuleCase.of("ILS-01", Result.NOT_APPLICABLE, "no glide path", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("ILS-01", Result.PASS, "same angle", Bases::rowBesideGlidePath, Sample::unchanged));
        cases.add(RuleCase.of("ILS-01", Result.FAIL, "6' off", Bases::rowBesideGlidePath,
                sample -> sample.host().getGlidePath().setPathAngleDeg(3.1)));
        cases.add(RuleCase.of("ILS-01", Result.PASS, "US, 0.2 degrees off", Bases::usRowBesideGlidePath,
                sample -> sample.host().getGlidePath().setPathAngleDeg(3.2)));
        cases.add(RuleCase.of("ILS-01", Result.FAIL, "US, 0.21 degrees off", Bases::usRowBesideGlidePath,
                sample -> sample.host().getGlidePath().setPathAngleDeg(3.21)));
        cases.add(RuleCase.of("ILS-01", Result.FAIL, "US, 0.25 degrees off", Bases::usRowBesideGlidePath,
                sample -> sample.host().getGlidePath().setPathAngleDeg(3.25)));
        cases.add(RuleCase.of("ILS-01", Result.NOT_EVALUATED, "no angle", Bases::rowBesideGlidePath, sample -> {
            sample.host().getGlidePath().setOriginAlongM(286.0);
            sample.host().getGlidePath().setPathAngleDeg(null);
        }));
        cases.add(RuleCase.of("ILS-02", Result.PASS, "at the intercept", Bases::usRowBesideGlidePath, Sample::unchanged));
        cases.add(RuleCase.of("ILS-02", Result.FAIL, "20 m nearer", Bases::usRowBesideGlidePath, sample -> sample.moveAlong(-20)));
        // 3 ft are 0.914 m: with the 0.03 m that the row stands off, 17.8 m along on 2 degrees 50 minutes.
        cases.add(RuleCase.of("ILS-02", Result.PASS, "17 m nearer", Bases::usRowBesideGlidePath, sample -> sample.moveAlong(-17)));
        cases.add(RuleCase.of("ILS-02", Result.FAIL, "18 m nearer", Bases::usRowBesideGlidePath, sample -> sample.moveAlong(-18)));
        cases.add(RuleCase.of("ILS-02", Result.NOT_EVALUATED, "neither height nor origin", Bases::usRowBesideGlidePath,
                sample -> sample.host().getGlidePath().setReferenceDatumHeightM(null)));
        cases.add(RuleCase.of("ILS-02", Result.PASS, "the height by its origin, 286 m on 3 degrees",
                Bases::usRowBesideGlidePath, sample -> {
            sample.host().getGlidePath().setOriginAlongM(286.0);
            sample.host().getGlidePath().setReferenceDatumHeightM(null);
        }));
        cases.add(RuleCase.of("ILS-02", Result.NOT_EVALUATED, "the height by its origin, the runway not measured",
                Bases::usRowBesideGlidePath, sample -> {
            sample.host().getGlidePath().setOriginAlongM(286.0);
            sample.host().getGlidePath().setReferenceDatumHeightM(null);
            sample.runway().getCentreLine().clear();
        }));
        cases.add(RuleCase.of("ILS-02", Result.PASS, "its height entered, the runway not measured", Bases::usRowBesideGlidePath,
                sample -> sample.runway().getCentreLine().clear()));
        cases.add(RuleCase.of("ILS-02", Result.NOT_APPLICABLE, "ICAO", Bases::rowBesideGlidePath, Sample::unchanged));
        cases.add(RuleCase.of("ILS-03", Result.PASS, "at the best place", Bases::rowBesideGlidePath, Sample::unchanged));
        cases.add(RuleCase.of("ILS-03", Result.FAIL, "30 m farther", Bases::rowBesideGlidePath, sample -> sample.moveAlong(30)));
        cases.add(RuleCase.of("ILS-03", Result.NOT_EVALUATED, "no eye-to-antenna height", Bases::rowBesideGlidePath,
                sample -> sample.host().getRegularGroups().get(0).setEyeToAntennaM(null)));
        cases.add(RuleCase.of("ILS-03", Result.NOT_EVALUATED, "by its origin, the runway not measured", Bases::rowBesideGlidePath,
                sample -> sample.host().getGlidePath().setOriginAlongM(286.0)));
        // A runway that rises by 1 % meets a path 15 m high on 3 degrees 240 m from the threshold, not 286 m: the row would stand 46 m off.
        cases.add(RuleCase.of("ILS-03", Result.NOT_EVALUATED, "US, by its height, the runway not measured", Bases::usRowBesideGlidePath,
                sample -> sample.runway().getCentreLine().clear()));
        cases.add(RuleCase.of("ILS-03", Result.FAIL, "US, by its height, the runway rises by 1 %", Bases::usRowBesideGlidePath,
                sample -> sample.runway().getCentreLine().get(1).setElevationM(Sample.DATUM_M + 24)));
        cases.add(RuleCase.of("ILS-03", Result.PASS, "US, by its origin, the runway not measured", Bases::usRowBesideGlidePath, sample -> {
            sample.host().getGlidePath().setOriginAlongM(286.0);
            sample.runway().getCentreLine().clear();
        }));
        cases.add(RuleCase.of("ILS-03", Result.PASS, "US, 9.1 m off", Bases::usRowBesideGlidePath, sample -> sample.moveAlong(-9.1)));
        cases.add(RuleCase.of("ILS-03", Result.FAIL, "US, 9.2 m off", Bases::usRowBesideGlidePath, sample -> sample.moveAlong(-9.2)));
        cases.add(RuleCase.of("ILS-03", Result.PASS, "US, group 4, 15 m farther", Bases::usRowGroupFour, sample -> sample.moveAlong(15)));
        cases.add(RuleCase.of("ILS-03", Result.FAIL, "US, group 4, 16 m farther", Bases::usRowGroupFour, sample -> sample.moveAlong(16)));
        cases.add(RuleCase.of("ILS-03", Result.FAIL, "US, group 4, 1 m nearer", Bases::usRowGroupFour, sample -> sample.moveAlong(-1)));
        cases.add(RuleCase.of("ILS-04", Result.PASS, "one group", Bases::rowBesideGlidePath, Sample::unchanged));
        cases.add(RuleCase.of("ILS-04", Result.NOT_EVALUATED, "by its origin, the runway not measured", Bases::rowBesideGlidePath,
                sample -> sample.host().getGlidePath().setOriginAlongM(286.0)));
        cases.add(RuleCase.of("ILS-04", Result.FAIL, "one eye far above its antenna", Bases::rowBesideGlidePath,
                sample -> sample.host().getRegularGroups().add(sample.group("tall", 12, 12))));
    }

    /**
     * Height groups of AC 150/5340-30: to 10 ft (3.048 m) group 1, to 15 ft (4.572 m) group 2, to 20 ft (6.096 m) group 3, above that 4;
     * least crossing heights 20, 25, 35 and 60 ft. The most demanding one that uses the runway governs (JO 6850.2B, as quoted).
     */
    private static void demandingGroup(List<RuleCase> cases) {
        cases.add(RuleCase.of("EYE-06", Result.PASS, "20 ft and group 3", Bases::usRow, sample -> cockpit(sample, 6.096)));
        cases.add(RuleCase.of("EYE-06", Result.FAIL, "20.1 ft and group 3", Bases::usRow, sample -> cockpit(sample, 6.126)));
        cases.add(RuleCase.of("EYE-06", Result.FAIL, "a wide-body on a row of group 3", Bases::usRow, sample -> cockpit(sample, 9.0)));
        cases.add(RuleCase.of("EYE-06", Result.PASS, "a wide-body on a row of group 4", Bases::usRow, sample -> {
            cockpit(sample, 9.0);
            sample.aid().setHeightGroup(4);
            sample.moveAlong(154); // 50 ft become 75 ft: 7.62 m / tan 2 deg 50 min
        }));
        cases.add(RuleCase.of("EYE-06", Result.FAIL, "two bars whose signal crosses at 10 m, and a wide-body", Bases::twoBar,
                sample -> cockpit(sample, 9.0)));
        cases.add(RuleCase.of("EYE-06", Result.PASS, "two bars whose signal crosses at 10 m, and 15 ft", Bases::twoBar,
                sample -> cockpit(sample, 4.5)));
        // 35 ft are 10.668 m, 0.668 m above the 10 m; one metre along on 2.75 degrees is 0.048033 m of height.
        cases.add(RuleCase.of("EYE-06", Result.PASS, "35.02 ft, and 20 ft", Bases::twoBar, sample -> {
            cockpit(sample, 6.0);
            sample.moveAlong(14.05);
        }));
        cases.add(RuleCase.of("EYE-06", Result.FAIL, "34.98 ft, and 20 ft", Bases::twoBar, sample -> {
            cockpit(sample, 6.0);
            sample.moveAlong(13.8);
        }));
        // Group 3 is chosen, whose signal crosses at 50 ft or up to 15 ft lower; the aeroplane needs less.
        cases.add(RuleCase.of("EYE-06", Result.PASS, "two bars of group 3 at 35.02 ft", Bases::twoBar, sample -> chosen(sample, 14.05)));
        cases.add(RuleCase.of("EYE-06", Result.FAIL, "two bars of group 3 at 34.98 ft", Bases::twoBar, sample -> chosen(sample, 13.8)));
        cases.add(RuleCase.of("EYE-06", Result.NOT_EVALUATED, "no height from cockpit to wheel", Bases::usRow, Sample::unchanged));
        cases.add(RuleCase.of("EYE-06", Result.NOT_EVALUATED, "no aeroplanes", Bases::usRow,
                sample -> sample.host().getRegularGroups().clear()));
        cases.add(RuleCase.of("EYE-06", Result.NOT_APPLICABLE, "a table of wheel clearances instead", Bases::row, Sample::unchanged));
    }

    private static void chosen(Sample sample, double alongM) {
        cockpit(sample, 4.5);
        sample.aid().setHeightGroup(3);
        sample.moveAlong(alongM);
    }

    private static void cockpit(Sample sample, double heightM) {
        sample.host().getRegularGroups().get(0).setStaticCockpitToWheelM(heightM);
    }
}
