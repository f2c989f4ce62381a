package slopewright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import slopewright.model.ApproachAid;
import slopewright.model.Helipad;
import slopewright.model.util.Projects;

/**
 * Cases of the rules about setting up in the field. The pad has a FATO of 20 m by 20 m in a safety area 30 m wide: 10 m and 15 m from its
 * middle. One knot is 1852 / 0.3048 / 60 = 101.2686 ft/min.
 */
final class FieldCases {
    private FieldCases() {
    }

    static List<RuleCase> all() {
        List<RuleCase> cases = new ArrayList<>();
        pad(cases);
        hover(cases);
        speeds(cases);
        descent(cases);
        beam(cases);
        unnoticed(cases);
        deck(cases);
        return cases;
    }

    private static RuleCase unit(String rule, Result result, String what, double alongM, double rightM) {
        return RuleCase.of(rule, result, what, Bases::padTriColour, sample -> {
            sample.unit(0).setAlongM(alongM);
            sample.unit(0).setRightM(rightM);
        });
    }

    private static RuleCase turned(Result result, String what, double fatoDeg, double alongM, double rightM) {
        return RuleCase.of("FIELD-01", result, what, Bases::padTriColour, sample -> {
            sample.pad().setFatoBearingDeg(fatoDeg);
            sample.unit(0).setAlongM(alongM);
            sample.unit(0).setRightM(rightM);
        });
    }

    private static void pad(List<RuleCase> cases) {
        cases.add(RuleCase.of("FIELD-01", Result.PASS, "as laid out", Bases::padTriColour, Sample::unchanged));
        // A safety area of 30 m by 30 m reaches 15 m along the approach and, turned by 45 degrees, 15 x 1.41421 = 21.2132 m.
        cases.add(unit("FIELD-01", Result.PASS, "clear however the FATO lies", 21.22, 0));
        cases.add(unit("FIELD-01", Result.NOT_EVALUATED, "a centimetre nearer, in a corner of it if it is turned", 21.21, 0));
        cases.add(unit("FIELD-01", Result.NOT_EVALUATED, "at the edge of the safety area along the approach", 15, 0));
        cases.add(unit("FIELD-01", Result.FAIL, "a centimetre in the safety area", 14.99, 0));
        cases.add(unit("FIELD-01", Result.FAIL, "at the edge of the FATO", 10, 0));
        cases.add(unit("FIELD-01", Result.FAIL, "on the FATO", 5, 5));
        cases.add(unit("FIELD-01", Result.NOT_EVALUATED, "15 m beside", 0, -15));
        cases.add(unit("FIELD-01", Result.FAIL, "14 m beside", 0, 14));
        // Landing toward 090. Turned by 45 degrees a corner points ahead, 15 x 1.41421 = 21.2132 m away, and 14.5 m ahead and 14.5 m beside
        // are 20.5 m straight across a side. Lying 060, across it is 150, 60 degrees to the right: 14.99 m are 7.495 m ahead and 12.982 m
        // beside, 15.01 m are 7.505 m and 12.999 m.
        cases.add(turned(Result.PASS, "at the edge, and so the FATO lies", 90, 15, 0));
        cases.add(turned(Result.FAIL, "in the corner that points ahead", 45, 21.21, 0));
        cases.add(turned(Result.PASS, "a centimetre before that corner", 45, 21.22, 0));
        cases.add(turned(Result.PASS, "across a side", 45, 14.5, 14.5));
        cases.add(turned(Result.FAIL, "a centimetre within a side", 60, 7.495, 12.982));
        cases.add(turned(Result.PASS, "a centimetre outside of it, said the other way round", 240, 7.505, 12.999));
        cases.add(RuleCase.of("FIELD-01", Result.NOT_APPLICABLE, "a runway", Bases::row, Sample::unchanged));
        List<Consumer<Helipad>> gaps = List.of(pad -> pad.setFatoLengthM(null), pad -> pad.setFatoWidthM(null),
                pad -> pad.setSafetyAreaWidthM(null));
        gaps.forEach(gap -> cases.add(RuleCase.of("FIELD-01", Result.NOT_EVALUATED, "gap " + gaps.indexOf(gap), Bases::padTriColour,
                sample -> gap.accept(Projects.helipad(sample.host()).orElseThrow()))));
    }

    private static void hover(List<RuleCase> cases) {
        cases.add(unit("FIELD-02", Result.PASS, "a centimetre ahead", 0.01, 0));
        cases.add(unit("FIELD-02", Result.FAIL, "abeam", 0, 20));
        cases.add(unit("FIELD-02", Result.FAIL, "20 m before the hover point", -20, 0));
        cases.add(RuleCase.of("FIELD-02", Result.NOT_APPLICABLE, "a runway", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("FIELD-02", Result.NOT_EVALUATED, "no units", Bases::padTriColour,
                sample -> sample.aid().getUnits().clear()));
        cases.add(RuleCase.of("FIELD-02", Result.FAIL, "the second unit of a pair", Bases::padPair,
                sample -> sample.unit(1).setAlongM(-1.0)));
    }

    private static RuleCase flown(String rule, Result result, String what, Double airKt, Double windKt, Double groundKt, Double descent) {
        return RuleCase.of(rule, result, what, Bases::padTriColour, sample -> {
            ApproachAid aid = sample.aid();
            aid.setAirSpeedKt(airKt);
            aid.setWindKt(windKt);
            aid.setGroundSpeedKt(groundKt);
            aid.setDescentFtmin(descent);
        });
    }

    /** 80 kt down 1000 ft/min: the square root of 80 squared less (1000 / 101.2686) squared is 79.39 kt over the ground. */
    private static void speeds(List<RuleCase> cases) {
        cases.add(flown("FIELD-03", Result.NOT_APPLICABLE, "only a ground speed", null, null, 80.0, 1000.0));
        cases.add(flown("FIELD-03", Result.PASS, "59.39 kt are 60", 80.0, 20.0, 60.0, 1000.0));
        cases.add(flown("FIELD-03", Result.PASS, "1.99 kt too much", 80.0, 20.0, 61.38, 1000.0));
        cases.add(flown("FIELD-03", Result.FAIL, "2.01 kt too much", 80.0, 20.0, 61.40, 1000.0));
        cases.add(flown("FIELD-03", Result.FAIL, "a wind that is not in the ground speed", 80.0, 20.0, 80.0, 1000.0));
        cases.add(flown("FIELD-03", Result.FAIL, "a tail wind entered as a head wind", 80.0, 15.0, 94.0, 1000.0));
        cases.add(flown("FIELD-03", Result.PASS, "still air", 80.0, null, 79.0, 1000.0));
        cases.add(flown("FIELD-03", Result.NOT_EVALUATED, "20 kt apart and no wind", 80.0, null, 100.0, 1000.0));
        cases.add(flown("FIELD-03", Result.PASS, "level at 80 kt", 80.0, 20.0, 60.0, null));
        // 40 kt down 1000 ft/min are 38.76 kt over the ground.
        cases.add(flown("FIELD-03", Result.PASS, "0.26 kt are left", 40.0, 38.5, null, 1000.0));
        cases.add(flown("FIELD-03", Result.FAIL, "nothing is left", 40.0, 39.0, null, 1000.0));
    }

    /**
     * 80 kt are 8101.49 ft/min, so that 6 degrees need 851.5 ft/min. 863 make atan(0.106524) = 6.0804 degrees, 4.8 minutes more; 864 make
     * 6.0874, 5.2 minutes. The accuracy is 5 minutes (Annex 14 Vol II, 5.3.6). 7.04 degrees need 1000 ft/min; a unit set to 3 degrees is
     * 4.04 flatter.
     */
    private static void descent(List<RuleCase> cases) {
        cases.add(flown("FIELD-04", Result.NOT_APPLICABLE, "none planned", null, null, null, null));
        cases.add(flown("FIELD-04", Result.PASS, "6 degrees", null, null, 80.0, 851.5));
        cases.add(flown("FIELD-04", Result.PASS, "4.8 minutes off", null, null, 80.0, 863.0));
        cases.add(flown("FIELD-04", Result.FAIL, "5.2 minutes off", null, null, 80.0, 864.0));
        cases.add(flown("FIELD-04", Result.FAIL, "in the air, against 20 kt", 80.0, 20.0, null, 851.5));
        cases.add(flown("FIELD-04", Result.NOT_EVALUATED, "no descent", null, null, 80.0, null));
        cases.add(flown("FIELD-04", Result.NOT_EVALUATED, "no speed", null, null, null, 851.5));
        // 6 degrees on marks of 0.7: the nearest is 6.3, 18 minutes off.
        cases.add(RuleCase.of("FIELD-04", Result.FAIL, "no mark near", Bases::padTriColour, sample -> {
            sample.equipment().setSlopeScaleStepDeg(0.7);
            sample.aid().setGroundSpeedKt(80.0);
            sample.aid().setDescentFtmin(851.5);
        }));
    }

    /** The beam is 16 degrees wide; half a mark of one degree goes unnoticed, so that the axis may be 7.5 degrees off. */
    private static void beam(List<RuleCase> cases) {
        cases.add(RuleCase.of("FIELD-05", Result.PASS, "along the approach", Bases::padTriColour, Sample::unchanged));
        cases.add(RuleCase.of("FIELD-05", Result.PASS, "7.4 degrees off", Bases::padTriColour, sample -> sample.aid().setAxisTurnDeg(7.4)));
        cases.add(RuleCase.of("FIELD-05", Result.FAIL, "7.6 degrees off", Bases::padTriColour, sample -> sample.aid().setAxisTurnDeg(7.6)));
        cases.add(RuleCase.of("FIELD-05", Result.FAIL, "7.6 degrees to the left", Bases::padTriColour,
                sample -> sample.aid().setAxisTurnDeg(-7.6)));
        cases.add(RuleCase.of("FIELD-05", Result.FAIL, "a beam of 4 degrees to the left", Bases::padTriColour, sample -> {
            sample.aid().setBeamLeftLimitDeg(-4.0);
            sample.aid().setAxisTurnDeg(-4.0);
        }));
        cases.add(RuleCase.of("FIELD-05", Result.NOT_APPLICABLE, "a fixed row", Bases::row, Sample::unchanged));
        // The rule set of the unit prints no range of a signal; that of another one tells how far out the eye is.
        cases.add(RuleCase.of("FIELD-05", Result.FAIL, "8.1 degrees off, under a rule set that prints no range",
                () -> Sample.helipad("icao:9th", "heliport-sector", 6), sample -> {
                    sample.aid().setPortable(true);
                    sample.aid().setBeamLeftLimitDeg(-8.0);
                    sample.aid().setBeamRightLimitDeg(8.0);
                    sample.aid().setAxisTurnDeg(8.1);
                }));
        cases.add(RuleCase.of("FIELD-05", Result.NOT_EVALUATED, "no beam width", Bases::padTriColour,
                sample -> sample.equipment().setBeamWidthDeg(null)));
        // 23.8 m ahead and 4 m beside, the eye at the hover is atan(4 / 23.8) = 9.5 degrees off.
        cases.add(RuleCase.of("FIELD-05", Result.FAIL, "beside the hover", Bases::padTriColour, sample -> sample.unit(0).setRightM(4.0)));
    }

    /**
     * On-slope is half a degree to each side, 30 minutes. It is set to 5 minutes (Annex 14 Vol II, 4th ed., 5.3.6.17), on a mark of its
     * scale, so that 25 minutes are left to the bubble.
     */
    private static void unnoticed(List<RuleCase> cases) {
        cases.add(RuleCase.of("FIELD-07", Result.PASS, "a bubble of 25 minutes", Bases::padTriColour, sample -> bubble(sample, 25)));
        cases.add(RuleCase.of("FIELD-07", Result.FAIL, "a bubble of 25.1 minutes", Bases::padTriColour, sample -> bubble(sample, 25.1)));
        cases.add(RuleCase.of("FIELD-07", Result.FAIL, "a unit that stays lit at half a degree of tilt", Bases::padTriColour,
                sample -> sample.equipment().setTiltCutOffDeg(0.5)));
        cases.add(RuleCase.of("FIELD-07", Result.NOT_EVALUATED, "no setting", Bases::padTriColour,
                sample -> sample.unit(0).setSettingDeg(null)));
        // A unit of four sectors may tilt by 30 minutes before it goes out (Annex 14 Vol II, 3rd ed., 5.3.5.19 a); half a sector is 22.5.
        cases.add(RuleCase.of("FIELD-07", Result.NOT_APPLICABLE, "a family of which the tilt is printed", Bases::padSector,
                sample -> sample.aid().setPortable(true)));
        cases.add(RuleCase.of("FIELD-07", Result.NOT_APPLICABLE, "a fixed row", Bases::row, Sample::unchanged));
    }

    private static void bubble(Sample sample, double minutes) {
        sample.equipment().setTiltCutOffDeg(null);
        sample.equipment().setBubbleAccuracyMinutes(minutes);
    }

    private static RuleCase deck(Result result, String what, Double pitchDeg, Double rollDeg, Double swingDeg, Double heldToDeg) {
        return deck(result, what, true, pitchDeg, rollDeg, swingDeg, heldToDeg);
    }

    private static RuleCase deck(Result result, String what, Boolean floating, Double pitchDeg, Double rollDeg, Double swingDeg,
            Double heldToDeg) {
        return RuleCase.of("FIELD-06", result, what, Bases::padTriColour, sample -> {
            Helipad pad = Projects.helipad(sample.host()).orElseThrow();
            pad.setFloating(floating);
            pad.setDeckPitchDeg(pitchDeg);
            pad.setDeckRollDeg(rollDeg);
            pad.setDeckHeadingDeg(swingDeg);
            sample.equipment().setStabilisedToDeg(heldToDeg);
        });
    }

    /**
     * The on-slope sector is one degree wide. Pitch and roll of 0.3 and 0.4 degrees make 0.5 at once, half of it; 0.3 and 0.41 make 0.508.
     * Annex 14 Vol II, 5.3.6: a HAPI holds its beam to a quarter of a degree on a floating deck.
     */
    private static void deck(List<RuleCase> cases) {
        cases.add(RuleCase.of("FIELD-06", Result.NOT_APPLICABLE, "a firm pad", Bases::padTriColour, Sample::unchanged));
        cases.add(RuleCase.of("FIELD-06", Result.NOT_APPLICABLE, "a runway", Bases::row, Sample::unchanged));
        cases.add(deck(Result.PASS, "half the sector", 0.3, 0.4, 2.0, null));
        cases.add(deck(Result.FAIL, "more than half", 0.3, 0.41, 2.0, null));
        cases.add(deck(Result.PASS, "held to half the sector", 5.0, 8.0, 2.0, 0.5));
        cases.add(deck(Result.FAIL, "held to 0.51 degrees", 5.0, 8.0, 2.0, 0.51));
        cases.add(deck(Result.NOT_EVALUATED, "afloat without any motion", 0.0, 0.0, 0.0, null));
        cases.add(deck(Result.NOT_EVALUATED, "no pitch", null, 0.4, 2.0, null));
        cases.add(deck(Result.NOT_EVALUATED, "no roll, though held", 0.3, null, 2.0, 0.1));
        cases.add(deck(Result.NOT_EVALUATED, "no swing", 0.3, 0.4, null, null));
        cases.add(deck(Result.NOT_EVALUATED, "nobody says whether it floats", null, 0.3, 0.4, 2.0, null));
        cases.add(deck(Result.NOT_EVALUATED, "nobody says anything of it", null, null, null, null, null));
        cases.add(deck(Result.NOT_EVALUATED, "a swing alone", null, null, null, 2.0, null));
        cases.add(deck(Result.FAIL, "said not to float, and moving", false, 0.3, 0.4, 2.0, null));
        cases.add(deck(Result.FAIL, "said not to float, and swinging", false, null, null, 2.0, null));
        cases.add(deck(Result.NOT_APPLICABLE, "said not to float nor to move", false, 0.0, 0.0, 0.0, null));
        for (double heldTo : new double[] {0.25, 0.26}) {
            cases.add(RuleCase.of("FIELD-06", heldTo > 0.25 ? Result.FAIL : Result.PASS, "a HAPI held to " + heldTo,
                    Bases::padSectorOfToday, sample -> {
                        Helipad pad = Projects.helipad(sample.host()).orElseThrow();
                        pad.setFloating(true);
                        pad.setDeckPitchDeg(3.0);
                        pad.setDeckRollDeg(3.0);
                        pad.setDeckHeadingDeg(2.0);
                        sample.equipment().setStabilisedToDeg(heldTo);
                    }));
        }
    }
}
