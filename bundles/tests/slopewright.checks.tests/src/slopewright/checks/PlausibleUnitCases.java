package slopewright.checks;

import java.util.ArrayList;
import java.util.List;

import slopewright.model.AidSide;
import slopewright.model.ClearanceChoice;
import slopewright.model.EquipmentType;
import slopewright.model.LightColour;
import slopewright.model.LightState;
import slopewright.model.MeasuredIntensity;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleSurvey;
import slopewright.model.ProfilePoint;
import slopewright.model.SettingsForm;
import slopewright.model.SlopewrightFactory;

/** Cases of the rules about what cannot be true of units and equipment; the bands stand in the rules. */
final class PlausibleUnitCases {
    private static final SlopewrightFactory MAKE = SlopewrightFactory.eINSTANCE;

    private PlausibleUnitCases() {
    }

    static List<RuleCase> all() {
        List<RuleCase> cases = new ArrayList<>();
        stand(cases);
        labels(cases);
        equipment(cases);
        places(cases);
        choices(cases);
        nearby(cases);
        ownValues(cases);
        return cases;
    }

    /** The lenses of the base stand 0.8 m above the level ground, and so high is the type. */
    private static void stand(List<RuleCase> cases) {
        cases.add(RuleCase.of("DATA-47", Result.PASS, "as high as its type", Bases::row,
                sample -> sample.units(unit -> unit.setHeightAboveGroundM(0.8))));
        cases.add(RuleCase.of("DATA-47", Result.PASS, "0.3 m lower", Bases::row, sample -> sample.unit(0).setHeightAboveGroundM(0.5)));
        cases.add(RuleCase.of("DATA-47", Result.FAIL, "0.31 m lower", Bases::row, sample -> sample.unit(0).setHeightAboveGroundM(0.49)));
        cases.add(RuleCase.of("DATA-47", Result.PASS, "the ground a decimetre lower", Bases::row, sample -> ground(sample, 99.9)));
        cases.add(RuleCase.of("DATA-47", Result.FAIL, "the ground 0.11 m lower", Bases::row, sample -> ground(sample, 99.89)));
        cases.add(RuleCase.of("DATA-47", Result.PASS, "two metres high", Bases::tForm, sample -> tall(sample, 2)));
        cases.add(RuleCase.of("DATA-47", Result.FAIL, "2.01 m high", Bases::tForm, sample -> tall(sample, 2.01)));
        cases.add(RuleCase.of("DATA-47", Result.NOT_APPLICABLE, "neither height", Bases::row, sample -> {
            sample.units(unit -> unit.setHeightAboveGroundM(null));
        }));
    }

    private static void tall(Sample sample, double heightM) {
        sample.equipment().setHeightAboveGroundM(heightM);
        sample.units(unit -> unit.setHeightAboveGroundM(heightM));
    }

    private static void ground(Sample sample, double elevationM) {
        for (double along : new double[] {0, 600}) {
            ProfilePoint point = MAKE.createProfilePoint();
            point.setChainageM(along);
            point.setElevationM(elevationM);
            sample.end().getSiteProfile().add(point);
        }
        sample.units(unit -> {
            unit.setHeightAboveGroundM(0.8);
            unit.setLensElevationM(100.8);
        });
    }

    private static void labels(List<RuleCase> cases) {
        cases.add(RuleCase.of("DATA-48", Result.PASS, "as laid out", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-48", Result.PASS, "names of their own", Bases::row, sample -> {
            for (int i = 0; i < sample.aid().getUnits().size(); i++) {
                sample.unit(i).setLabel("P" + i);
            }
        }));
        cases.add(RuleCase.of("DATA-48", Result.FAIL, "two exchanged", Bases::row, sample -> {
            String first = sample.unit(0).getLabel();
            sample.unit(0).setLabel(sample.unit(1).getLabel());
            sample.unit(1).setLabel(first);
        }));
        cases.add(RuleCase.of("DATA-48", Result.FAIL, "one renamed", Bases::row, sample -> sample.unit(0).setLabel("left")));
        cases.add(RuleCase.of("DATA-48", Result.FAIL, "none", Bases::row, sample -> sample.unit(0).setLabel(" ")));
    }

    private static EquipmentType type(Sample sample) {
        return sample.aid().getEquipment();
    }

    private static void equipment(List<RuleCase> cases) {
        cases.add(RuleCase.of("DATA-55", Result.PASS, "1 to 12 degrees", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-55", Result.PASS, "0 to 12 degrees", Bases::row, sample -> type(sample).setMinSettingDeg(0.0)));
        cases.add(RuleCase.of("DATA-55", Result.FAIL, "1.5 minutes", Bases::row, sample -> type(sample).setMinSettingDeg(0.025)));
        cases.add(RuleCase.of("DATA-55", Result.FAIL, "12 to 12 degrees", Bases::row, sample -> type(sample).setMinSettingDeg(12.0)));
        cases.add(RuleCase.of("DATA-55", Result.PASS, "14 to 28 V", Bases::row, sample -> supply(sample, 14, 28)));
        cases.add(RuleCase.of("DATA-55", Result.FAIL, "13 to 28 V", Bases::row, sample -> supply(sample, 13, 28)));
        cases.add(RuleCase.of("DATA-55", Result.FAIL, "13.9 to 28 V", Bases::row, sample -> supply(sample, 13.9, 28)));
        cases.add(RuleCase.of("DATA-55", Result.FAIL, "28 to 22 V", Bases::row, sample -> supply(sample, 28, 22)));
        // Stated 15 000 cd: a light that was measured with 14 300 cd is within a twentieth of it, one with 14 200 cd is not.
        cases.add(RuleCase.of("DATA-55", Result.PASS, "measured 14 300 cd", Bases::row, sample -> measured(sample, 14_300, null)));
        cases.add(RuleCase.of("DATA-55", Result.FAIL, "measured 14 200 cd", Bases::row, sample -> measured(sample, 14_200, null)));
        cases.add(RuleCase.of("DATA-55", Result.PASS, "white by itself", Bases::row, sample -> measured(sample, 15_000, 90_000.0)));
        cases.add(RuleCase.of("DATA-55", Result.FAIL, "white too weak", Bases::row, sample -> measured(sample, 15_000, 96_000.0)));
        // 15 000 cd of 30 W are 500 cd for a watt.
        cases.add(RuleCase.of("DATA-55", Result.PASS, "500 cd for a watt", Bases::row, sample -> lamp(sample, 30)));
        cases.add(RuleCase.of("DATA-55", Result.FAIL, "517 cd for a watt", Bases::row, sample -> lamp(sample, 29)));
    }

    private static void supply(Sample sample, double leastV, double mostV) {
        type(sample).setMinVoltageV(leastV);
        type(sample).setMaxVoltageV(mostV);
    }

    /** Red as measured and 90 000 cd of white on the axis. */
    private static void measured(Sample sample, double redCd, Double whiteStatedCd) {
        type(sample).getIntensities().clear();
        for (LightColour colour : List.of(LightColour.RED, LightColour.WHITE)) {
            MeasuredIntensity point = MAKE.createMeasuredIntensity();
            point.setColour(colour);
            point.setAzimuthDeg(0.0);
            point.setElevationDeg(0.0);
            point.setIntensityCd(colour == LightColour.RED ? redCd : 90_000.0);
            type(sample).getIntensities().add(point);
        }
        type(sample).setIntensityCd(15_000.0);
        type(sample).setWhiteIntensityCd(whiteStatedCd);
    }

    private static void lamp(Sample sample, double powerW) {
        type(sample).setIntensityCd(15_000.0);
        type(sample).setIntensityCd(15_000.0);
        type(sample).setLampPowerW(powerW);
        type(sample).setLampsPerUnit(1);
    }

    private static void places(List<RuleCase> cases) {
        cases.add(RuleCase.of("DATA-56", Result.PASS, "as laid out", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-56", Result.PASS, "90 m beside the edge", Bases::row, sample -> sample.unit(3).setRightM(-112.5)));
        cases.add(RuleCase.of("DATA-56", Result.FAIL, "91 m beside the edge", Bases::row, sample -> sample.unit(3).setRightM(-113.5)));
        cases.add(RuleCase.of("DATA-56", Result.FAIL, "on the runway", Bases::row, sample -> sample.unit(0).setRightM(-22.4)));
        cases.add(RuleCase.of("DATA-56", Result.FAIL, "on the other side", Bases::row, sample -> sample.unit(0).setRightM(37.5)));
        cases.add(RuleCase.of("DATA-56", Result.FAIL, "the other side named", Bases::row, sample -> sample.aid().setSide(AidSide.RIGHT)));
        cases.add(RuleCase.of("DATA-56", Result.FAIL, "rigid", Bases::triColour, sample -> sample.unit(0).setFrangible(false)));
        cases.add(RuleCase.of("DATA-56", Result.FAIL, "61 m from the approach", Bases::padSector,
                sample -> sample.unit(0).setRightM(-61.0)));
        cases.add(RuleCase.of("DATA-56", Result.FAIL, "a lens in feet", Bases::row, sample -> sample.unit(0).setLensElevationM(330.0)));
        cases.add(RuleCase.of("DATA-57", Result.PASS, "as laid out", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-57", Result.PASS, "0.1 degrees from its setting", Bases::row,
                sample -> sample.unit(0).getTransitions().get(0).setOffsetDeg(0.1)));
        cases.add(RuleCase.of("DATA-57", Result.FAIL, "0.11 degrees from its setting", Bases::row,
                sample -> sample.unit(0).getTransitions().get(0).setOffsetDeg(0.11)));
        cases.add(RuleCase.of("DATA-57", Result.FAIL, "a steady nothing", Bases::row, sample -> {
            sample.unit(0).getTransitions().get(0).setBelowColour(LightColour.NONE);
            sample.unit(0).getTransitions().get(0).setBelowState(LightState.STEADY);
        }));
        cases.add(RuleCase.of("DATA-57", Result.FAIL, "red and off", Bases::row,
                sample -> sample.unit(0).getTransitions().get(0).setBelowState(LightState.OFF)));
    }

    /** The aid of the base has a slope of 3.0 degrees. */
    private static void choices(List<RuleCase> cases) {
        cases.add(RuleCase.of("DATA-59", Result.NOT_APPLICABLE, "nothing chosen", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-59", Result.PASS, "3.05 degrees wanted", Bases::row, sample -> sample.host().setDesiredSlopeDeg(3.05)));
        cases.add(RuleCase.of("DATA-59", Result.FAIL, "3.06 degrees wanted", Bases::row, sample -> sample.host().setDesiredSlopeDeg(3.06)));
        // 424 ft/min are 129.2 m/min; 80 kt are 2469 m/min: the slope is atan(0.05234) = 2.996 degrees.
        cases.add(RuleCase.of("DATA-59", Result.PASS, "80 kt and 424 ft/min", Bases::row, sample -> descent(sample, 80, 424)));
        cases.add(RuleCase.of("DATA-59", Result.FAIL, "80 km/h as knots", Bases::row, sample -> descent(sample, 43.2, 424)));
        cases.add(RuleCase.of("DATA-59", Result.FAIL, "no glide path", Bases::row,
                sample -> sample.aid().setSettings(SettingsForm.GLIDE_PATH)));
        cases.add(RuleCase.of("DATA-59", Result.FAIL, "no clearance", Bases::row,
                sample -> sample.aid().setClearance(ClearanceChoice.CHOSEN)));
        cases.add(RuleCase.of("DATA-59", Result.FAIL, "portable on the series circuit", Bases::row,
                sample -> sample.aid().setPortable(true)));
        // The row clears the wheels by 9 m on 2 degrees 48 minutes; the minimum of 5 m is 4 m / tan = 81.8 m nearer (Table 5-2).
        cases.add(RuleCase.of("DATA-59", Result.PASS, "81 m before a shift", Bases::rowOfToday, sample -> shift(sample, 81, "hill")));
        cases.add(RuleCase.of("DATA-59", Result.FAIL, "83 m before a shift", Bases::rowOfToday, sample -> shift(sample, 83, "hill")));
        cases.add(RuleCase.of("DATA-59", Result.FAIL, "a shift to the threshold", Bases::rowOfToday, sample -> shift(sample, -1, "hill")));
        cases.add(RuleCase.of("DATA-59", Result.FAIL, "a shift without reason", Bases::rowOfToday, sample -> shift(sample, 50, " ")));
        // 15 m / tan 3 degrees = 286.2 m, a fifth of which is 57.2 m; the antenna of the base stands at 286 m, 120 m beside.
        cases.add(RuleCase.of("DATA-60", Result.PASS, "286 m", Bases::rowBesideGlidePath, Sample::unchanged));
        cases.add(RuleCase.of("DATA-60", Result.PASS, "343 m", Bases::rowBesideGlidePath,
                sample -> sample.host().getGlidePath().setAntennaAlongM(343.0)));
        cases.add(RuleCase.of("DATA-60", Result.FAIL, "344 m", Bases::rowBesideGlidePath,
                sample -> sample.host().getGlidePath().setAntennaAlongM(344.0)));
        cases.add(RuleCase.of("DATA-60", Result.FAIL, "59 m beside", Bases::rowBesideGlidePath,
                sample -> sample.host().getGlidePath().setAntennaRightM(-59.0)));
    }

    private static void descent(Sample sample, double speedKt, double descentFtmin) {
        sample.aid().setGroundSpeedKt(speedKt);
        sample.aid().setDescentFtmin(descentFtmin);
    }

    /** The edge of the taxiway of the base runs 120 m beside the runway, level with it. */
    private static void nearby(List<RuleCase> cases) {
        cases.add(RuleCase.of("DATA-58", Result.PASS, "beside the runway", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-58", Result.FAIL, "5.1 km off", Bases::row,
                sample -> sample.aerodrome().getTaxiwayEdges().get(0).getPoints().get(0).setEastM(-5100.0)));
        cases.add(RuleCase.of("DATA-58", Result.NOT_EVALUATED, "without coordinates", Bases::row,
                sample -> sample.aerodrome().getTaxiwayEdges().get(0).getPoints().get(0).setEastM(null)));
        // 10 m + 0.03 x 120 m = 13.6 m.
        cases.add(RuleCase.of("DATA-58", Result.PASS, "13.6 m higher", Bases::row,
                sample -> sample.aerodrome().getTaxiwayEdges().get(0).getPoints().get(0).setElevationM(113.6)));
        cases.add(RuleCase.of("DATA-58", Result.FAIL, "13.7 m higher", Bases::row,
                sample -> sample.aerodrome().getTaxiwayEdges().get(0).getPoints().get(0).setElevationM(113.7)));
        cases.add(RuleCase.of("DATA-61", Result.PASS, "of an approach", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-61", Result.FAIL, "of no approach and no obstacle", Bases::row,
                sample -> sample.aerodrome().getObstacleSurveys().add(MAKE.createObstacleSurvey())));
        cases.add(RuleCase.of("DATA-61", Result.PASS, "0.7 m of 0.5 m", Bases::row, sample -> surveyed(sample, 0.7)));
        cases.add(RuleCase.of("DATA-61", Result.FAIL, "0.71 m of 0.5 m", Bases::row, sample -> surveyed(sample, 0.71)));
        cases.add(RuleCase.of("DATA-61", Result.FAIL, "0.5 ft of 0.5 m", Bases::row, sample -> surveyed(sample, 0.152)));
    }

    private static void surveyed(Sample sample, double accuracyM) {
        ObstacleSurvey survey = MAKE.createObstacleSurvey();
        survey.setSource("survey two");
        survey.setDate("2026-01-02");
        survey.setHorizontalAccuracyM(0.5);
        survey.setVerticalAccuracyM(0.5);
        sample.aerodrome().getObstacleSurveys().add(survey);
        Obstacle obstacle = sample.aerodrome().getObstacles().get(0);
        obstacle.setSource("survey two");
        obstacle.setDate("2026-01-02");
        obstacle.setHorizontalAccuracyM(0.5);
        obstacle.setVerticalAccuracyM(accuracyM);
    }

    private static void shift(Sample sample, double byM, String reason) {
        sample.aid().setUnshiftedDistanceM(sample.unit(0).getAlongM() - byM);
        sample.aid().setUnshiftedDistanceReason(reason);
    }

    /**
     * The greatest accuracy of setting of an edition is 2 minutes (US MIL-HDBK-1023/4, Table A-5), 9 m are the usual spacing, and two
     * minutes come off the lowest signal (Annex 14 Vol I, 2.12 e).
     */
    private static void ownValues(List<RuleCase> cases) {
        cases.add(own(Result.PASS, "three times the accuracy of setting", "setting-accuracy-min", 6));
        cases.add(own(Result.FAIL, "3.01 times the accuracy of setting", "setting-accuracy-min", 6.02));
        cases.add(own(Result.FAIL, "an hour for a minute", "setting-accuracy-min", 60));
        cases.add(own(Result.PASS, "a third of the spacing", "unit-spacing-m", 3));
        cases.add(own(Result.FAIL, "less than a third of the spacing", "unit-spacing-m", 2.9));
        cases.add(own(Result.FAIL, "an allowance of the other sign", "boundary-allowance-min", -2));
        // Table 5-2 of Annex 14 Vol I has 6 m desired and 3 m least below 3 m; 18 m are three times, 59 ft as metres more than that.
        cases.add(clearances(Result.PASS, "three times the clearance", "18,3"));
        cases.add(clearances(Result.FAIL, "a clearance in feet", "19.7,3"));
        cases.add(clearances(Result.PASS, "a third of the least clearance", "6,1"));
        cases.add(clearances(Result.FAIL, "less than a third of the least clearance", "6,0.99"));
        cases.add(RuleCase.of("DATA-63", null, "a shipped rule set", Bases::row, Sample::unchanged));
    }

    private static RuleCase clearances(Result expected, String name, String first) {
        return RuleCase.of("DATA-63", expected, name, Bases::row, sample -> sample.ownTable(
                "four-unit-row.unit-spacing-m,9,m,-,1,organisation,\n",
                "tab-5-2.csv", String.join("\n",
                "# title: Clearances", "# source: -", "# clause: 1", "# provenance: organisation",
                "eye_to_wheel_from_m,eye_to_wheel_below_m,desired_clearance_m,minimum_clearance_m,light_aeroplane_clearance_m",
                "0,3," + first + ",-", "3,5,9,4,-", "5,8,9,5,-", "8,14,9,6,-", "")));
    }

    private static RuleCase own(Result expected, String name, String key, double value) {
        String unit = key.endsWith("-min") ? "min" : "m";
        return RuleCase.of("DATA-63", expected, name, Bases::row, sample -> sample.ownValue("four-unit-row." + key, value, unit));
    }
}
