package slopewright.checks;

import java.util.ArrayList;
import java.util.List;

import slopewright.model.AidSide;
import slopewright.model.LightUnit;
import slopewright.model.MeasuredUnit;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SettingsForm;
import slopewright.model.SlopewrightFactory;

/** Cases of the rules about rows and single units. Limits as the rule sets print them; their sources stand in the rule sets. */
final class RowCases {

    private static final SlopewrightFactory MAKE = SlopewrightFactory.eINSTANCE;

    private RowCases() {
    }

    static List<RuleCase> all() {
        List<RuleCase> cases = new ArrayList<>();
        counts(cases);
        lateral(cases);
        pavements(cases);
        settings(cases);
        square(cases);
        units(cases);
        built(cases);
        return cases;
    }

    private static void counts(List<RuleCase> cases) {
        cases.add(RuleCase.of("ROW-01", Result.PASS, "four", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("ROW-01", Result.PASS, "eight on both sides", Bases::rowBothSides, Sample::unchanged));
        cases.add(RuleCase.of("ROW-01", Result.FAIL, "three", Bases::row, sample -> sample.aid().getUnits().remove(0)));
        cases.add(RuleCase.of("ROW-01", Result.FAIL, "four on both sides", Bases::row, sample -> sample.aid().setSide(AidSide.BOTH)));
        cases.add(RuleCase.of("ROW-01", Result.FAIL, "three, as the aid asks", Bases::row, sample -> {
            sample.aid().getUnits().remove(0);
            sample.aid().setUnitCount(3);
        }));
        cases.add(RuleCase.of("ROW-01", Result.FAIL, "five and three on both sides", Bases::rowBothSides,
                sample -> sample.unit(0).setRightM(-sample.unit(0).getRightM())));
        cases.add(RuleCase.of("ROW-01", Result.NOT_EVALUATED, "none", Bases::row, sample -> sample.aid().getUnits().clear()));
        cases.add(RuleCase.of("ROW-02", Result.PASS, "left", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("ROW-02", Result.PASS, "both", Bases::rowBothSides, Sample::unchanged));
        cases.add(RuleCase.of("ROW-02", Result.FAIL, "right", () -> Sample.runway("icao:5th", "four-unit-row",
                sample -> sample.aid().setSide(AidSide.RIGHT)), Sample::unchanged));
        cases.add(RuleCase.of("ROW-02", Result.FAIL, "right, with a reason", () -> Sample.runway("icao:5th", "four-unit-row",
                sample -> sample.aid().setSide(AidSide.RIGHT)), sample -> sample.aid().setRemarks("a river on the left")));
        cases.add(RuleCase.of("ROW-02", Result.FAIL, "left, but on the right", Bases::row,
                sample -> sample.units(unit -> unit.setRightM(-unit.getRightM()))));
    }

    private static void shift(Sample sample, double outwardM) {
        sample.units(unit -> unit.setRightM(unit.getRightM() + Math.signum(unit.getRightM()) * outwardM));
    }

    private static void lateral(List<RuleCase> cases) {
        cases.add(RuleCase.of("ROW-03", Result.PASS, "15 m", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("ROW-03", Result.PASS, "16 m", Bases::row, sample -> shift(sample, 1)));
        cases.add(RuleCase.of("ROW-03", Result.PASS, "14 m", Bases::row, sample -> shift(sample, -1)));
        cases.add(RuleCase.of("ROW-03", Result.FAIL, "16.01 m", Bases::row, sample -> shift(sample, 1.01)));
        cases.add(RuleCase.of("ROW-03", Result.FAIL, "13.99 m", Bases::row, sample -> shift(sample, -1.01)));
        cases.add(RuleCase.of("ROW-03", Result.PASS, "10 m on code 2", Bases::rowCodeTwo, Sample::unchanged));
        cases.add(RuleCase.of("ROW-03", Result.FAIL, "10 m on code 4", Bases::row, sample -> shift(sample, -5)));
        cases.add(RuleCase.of("ROW-03", Result.PASS, "two units at 15 m", Bases::pairCodeTwo, sample -> shift(sample, 5)));
        cases.add(RuleCase.of("ROW-03", Result.FAIL, "two units at 8.9 m", Bases::pairCodeTwo, sample -> shift(sample, -1.1)));
        cases.add(RuleCase.of("ROW-03", Result.PASS, "50 ft", Bases::usRow, Sample::unchanged));
        cases.add(RuleCase.of("ROW-03", Result.FAIL, "49.9 ft", Bases::usRow, sample -> shift(sample, -0.03)));
        cases.add(RuleCase.of("ROW-03", Result.PASS, "60 ft", Bases::usRow, sample -> shift(sample, 3.048)));
        cases.add(RuleCase.of("ROW-03", Result.FAIL, "60.1 ft", Bases::usRow, sample -> shift(sample, 3.08)));
        cases.add(RuleCase.of("ROW-03", Result.NOT_EVALUATED, "no width", Bases::row, sample -> sample.runway().setWidthM(null)));
        cases.add(RuleCase.of("ROW-04", Result.PASS, "9 m", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("ROW-04", Result.PASS, "6 m on code 2", Bases::rowCodeTwo, Sample::unchanged));
        // Fig 5-19 f: the reduced layout begins 10 m from the edge at the least; g: 15 m from the edge go with 9 m between two units only.
        cases.add(RuleCase.of("ROW-03", Result.PASS, "15 m on code 2, 6 m apart", Bases::rowCodeTwo, sample -> shift(sample, 5)));
        cases.add(RuleCase.of("ROW-04", Result.PASS, "15 m on code 2, 6 m apart", Bases::rowCodeTwo, sample -> shift(sample, 5)));
        cases.add(RuleCase.of("ROW-04", Result.FAIL, "9 m, 6 m and 9 m on code 2", Bases::rowCodeTwo, sample -> {
            spread(sample, 9);
            sample.unit(2).setRightM(sample.unit(1).getRightM() - 6);
            sample.unit(3).setRightM(sample.unit(2).getRightM() - 9);
        }));
        cases.add(RuleCase.of("ROW-04", Result.FAIL, "two units at 15 m, 6 m apart", Bases::pairCodeTwo, sample -> shift(sample, 5)));
        cases.add(RuleCase.of("ROW-04", Result.PASS, "two units at 15 m, 9 m apart", Bases::pairCodeTwo, sample -> {
            shift(sample, 5);
            spread(sample, 9);
        }));
        cases.add(RuleCase.of("ROW-04", Result.PASS, "two units at 10 m, 9 m apart", Bases::pairCodeTwo, sample -> spread(sample, 9)));
        cases.add(RuleCase.of("ROW-04", Result.FAIL, "10.1 m", Bases::row, sample -> spread(sample, 10.1)));
        cases.add(RuleCase.of("ROW-04", Result.FAIL, "7.9 m", Bases::row, sample -> spread(sample, 7.9)));
        cases.add(RuleCase.of("ROW-04", Result.PASS, "20 ft", Bases::usRow, sample -> spread(sample, 6.096)));
        cases.add(RuleCase.of("ROW-04", Result.FAIL, "19 ft", Bases::usRow, sample -> spread(sample, 5.79)));
        cases.add(RuleCase.of("ROW-05", Result.PASS, "equal", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("ROW-05", Result.FAIL, "one out by 2 m", Bases::row,
                sample -> sample.unit(1).setRightM(sample.unit(1).getRightM() - 2)));
        // Equal within 1 ft: a unit that is out by x makes two spacings that differ by 2x.
        cases.add(RuleCase.of("ROW-05", Result.PASS, "US, 30 cm", Bases::usRow,
                sample -> sample.unit(1).setRightM(sample.unit(1).getRightM() + 0.15)));
        cases.add(RuleCase.of("ROW-05", Result.FAIL, "US, 32 cm", Bases::usRow,
                sample -> sample.unit(1).setRightM(sample.unit(1).getRightM() + 0.16)));
        cases.add(RuleCase.of("ROW-05", Result.NOT_APPLICABLE, "two units", Bases::pairCodeTwo, Sample::unchanged));
    }

    private static void spread(Sample sample, double spacingM) {
        double inner = sample.unit(0).getRightM();
        for (int i = 0; i < sample.aid().getUnits().size(); i++) {
            sample.unit(i).setRightM(inner - i * spacingM);
        }
    }

    /** The edge of a taxiway runs parallel to the runway; the outer unit stands 64.5 m to the left of a 45 m runway. */
    private static void taxiwayAt(Sample sample, double rightM) {
        sample.aerodrome().getTaxiwayEdges().get(0).getPoints().clear();
        sample.aerodrome().getTaxiwayEdges().get(0).getPoints().add(Sample.place(0, rightM, 100));
        sample.aerodrome().getTaxiwayEdges().get(0).getPoints().add(Sample.place(2000, rightM, 100));
    }

    private static void pavements(List<RuleCase> cases) {
        cases.add(RuleCase.of("ROW-06", Result.PASS, "far", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("ROW-06", Result.PASS, "14 m", Bases::row, sample -> taxiwayAt(sample, -78.5)));
        cases.add(RuleCase.of("ROW-06", Result.FAIL, "13.9 m", Bases::row, sample -> taxiwayAt(sample, -78.4)));
        cases.add(RuleCase.of("ROW-06", Result.NOT_EVALUATED, "none described", Bases::row,
                sample -> sample.aerodrome().getTaxiwayEdges().clear()));
        cases.add(RuleCase.of("ROW-06", Result.NOT_EVALUATED, "only a runway described", Bases::row, sample -> {
            sample.aerodrome().getTaxiwayEdges().clear();
            crossingRunway(sample, -110);
        }));
        cases.add(RuleCase.of("ROW-06", Result.NOT_EVALUATED, "an edge without points", Bases::row,
                sample -> sample.aerodrome().getTaxiwayEdges().get(0).getPoints().clear()));
        cases.add(RuleCase.of("ROW-06", Result.FAIL, "a crossing runway", Bases::row, sample -> crossingRunway(sample, -70)));
        cases.add(RuleCase.of("ROW-06", Result.PASS, "a crossing runway that ends earlier", Bases::row,
                sample -> crossingRunway(sample, -110)));
        cases.add(RuleCase.of("ROW-06", Result.FAIL, "pavement before a displaced threshold", Bases::row,
                sample -> crossingRunway(sample, -110).getEnds().get(1).setDisplacedThresholdM(40.0)));
        cases.add(RuleCase.of("ROW-06", Result.NOT_EVALUATED, "a crossing runway of unknown width", Bases::row,
                sample -> crossingRunway(sample, -110).setWidthM(null)));
    }

    /** A runway 30 m wide crosses 300 m beyond the threshold; the outer unit stands about 303 m beyond it and 64.5 m to the left. */
    private static Runway crossingRunway(Sample sample, double toRightM) {
        Runway other = MAKE.createRunway();
        other.setDesignator("18/36");
        other.setWidthM(30.0);
        for (double right : new double[] {-600, toRightM}) {
            RunwayEnd end = MAKE.createRunwayEnd();
            end.setThreshold(Sample.place(300, right, 100));
            other.getEnds().add(end);
        }
        sample.aerodrome().getRunways().add(other);
        return other;
    }

    private static void raise(LightUnit unit, double minutes) {
        unit.setSettingDeg(unit.getSettingDeg() + minutes / 60);
    }

    private static void settings(List<RuleCase> cases) {
        cases.add(RuleCase.of("ROW-07", Result.PASS, "as the slope", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("ROW-07", Result.PASS, "beside a glide path", Bases::rowBesideGlidePath, Sample::unchanged));
        cases.add(RuleCase.of("ROW-07", Result.PASS, "at a helipad", Bases::padRow, Sample::unchanged));
        cases.add(RuleCase.of("ROW-07", Result.PASS, "one up by 1'", Bases::row, sample -> raise(sample.unit(2), 1)));
        cases.add(RuleCase.of("ROW-07", Result.FAIL, "one up by 1.1'", Bases::row, sample -> raise(sample.unit(2), 1.1)));
        cases.add(RuleCase.of("ROW-07", Result.FAIL, "one up by 1.5'", Bases::row, sample -> raise(sample.unit(2), 1.5)));
        cases.add(RuleCase.of("ROW-07", Result.FAIL, "all for another slope", Bases::row, sample -> sample.aid().setSlopeDeg(3.2)));
        cases.add(RuleCase.of("ROW-07", Result.FAIL, "wrong order", Bases::row, sample -> {
            double inner = sample.unit(0).getSettingDeg();
            sample.unit(0).setSettingDeg(sample.unit(3).getSettingDeg());
            sample.unit(3).setSettingDeg(inner);
        }));
        cases.add(RuleCase.of("ROW-07", Result.FAIL, "no setting beside a wrong one", Bases::row, sample -> {
            sample.unit(1).setSettingDeg(null);
            raise(sample.unit(2), 1.5);
        }));
        cases.add(RuleCase.of("ROW-07", Result.NOT_EVALUATED, "no setting", Bases::row, sample -> sample.unit(1).setSettingDeg(null)));
        cases.add(RuleCase.of("ROW-07", Result.NOT_EVALUATED, "no slope", Bases::row, sample -> sample.aid().setSlopeDeg(null)));
        cases.add(RuleCase.of("ROW-08", Result.PASS, "20'", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("ROW-08", Result.PASS, "all up by 30'", Bases::row, sample -> sample.units(unit -> raise(unit, 30))));
        cases.add(RuleCase.of("ROW-08", Result.PASS, "one up by 2'", Bases::row, sample -> raise(sample.unit(2), 2)));
        cases.add(RuleCase.of("ROW-08", Result.FAIL, "one up by 2.1'", Bases::row, sample -> raise(sample.unit(2), 2.1)));
        cases.add(RuleCase.of("ROW-08", Result.FAIL, "one up by 5'", Bases::row, sample -> raise(sample.unit(2), 5)));
        cases.add(RuleCase.of("ROW-08", Result.FAIL, "two exchanged under a tolerance wider than the step", Bases::row, sample -> {
            sample.override("four-unit-row.setting-accuracy-min", 30);
            raise(sample.unit(0), -20);
            raise(sample.unit(1), 20);
        }));
        cases.add(RuleCase.of("ROW-09", Result.PASS, "no glide path", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("ROW-09", Result.PASS, "widened beside one", Bases::rowBesideGlidePath, Sample::unchanged));
        cases.add(RuleCase.of("ROW-09", Result.FAIL, "standard beside one", Bases::rowBesideGlidePath,
                sample -> sample.aid().setSettings(SettingsForm.STANDARD)));
        cases.add(RuleCase.of("ROW-09", Result.FAIL, "widened for nothing", Bases::row,
                sample -> sample.aid().setSettings(SettingsForm.GLIDE_PATH)));
        cases.add(RuleCase.of("ROW-09", Result.PASS, "US, group 3 beside one", Bases::usRowBesideGlidePath, Sample::unchanged));
        cases.add(RuleCase.of("ROW-09", Result.FAIL, "US, group 4 with standard ones", Bases::usRowGroupFour,
                sample -> sample.aid().setSettings(SettingsForm.STANDARD)));
        cases.add(RuleCase.of("ROW-09", Result.NOT_EVALUATED, "US, beside one, group not said", Bases::usRowBesideGlidePath,
                sample -> sample.aid().setHeightGroup(null)));
        cases.add(RuleCase.of("ROW-09", Result.NOT_APPLICABLE, "5 degrees, steeper than widened settings are known", Bases::row,
                sample -> sample.aid().setSlopeDeg(5.0)));
        cases.add(RuleCase.of("ROW-10", Result.PASS, "alike", Bases::rowBothSides, Sample::unchanged));
        cases.add(RuleCase.of("ROW-10", Result.PASS, "one differs by 1'", Bases::rowBothSides, sample -> raise(sample.unit(0), 1)));
        cases.add(RuleCase.of("ROW-10", Result.FAIL, "one differs by 1.1'", Bases::rowBothSides, sample -> raise(sample.unit(0), 1.1)));
        cases.add(RuleCase.of("ROW-10", Result.FAIL, "one differs", Bases::rowBothSides, sample -> raise(sample.unit(0), 2)));
        cases.add(RuleCase.of("ROW-10", Result.FAIL, "one is missing", Bases::rowBothSides, sample -> sample.aid().getUnits().remove(0)));
        cases.add(RuleCase.of("ROW-10", Result.NOT_APPLICABLE, "one side", Bases::row, Sample::unchanged));
    }

    private static void square(List<RuleCase> cases) {
        cases.add(RuleCase.of("ROW-13", Result.PASS, "in line", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("ROW-13", Result.PASS, "one off by 15 cm", Bases::row,
                sample -> sample.unit(0).setAlongM(sample.unit(0).getAlongM() + 0.19)));
        cases.add(RuleCase.of("ROW-13", Result.FAIL, "one off by 30 cm", Bases::row,
                sample -> sample.unit(0).setAlongM(sample.unit(0).getAlongM() + 0.3)));
        cases.add(RuleCase.of("ROW-14", Result.PASS, "0.5 degrees", Bases::row, sample -> sample.unit(0).setAzimuthOffsetDeg(-0.5)));
        cases.add(RuleCase.of("ROW-14", Result.FAIL, "0.6 degrees", Bases::row, sample -> sample.unit(0).setAzimuthOffsetDeg(-0.6)));
        cases.add(RuleCase.of("ROW-14", Result.FAIL, "not entered beside a wrong one", Bases::row, sample -> {
            sample.unit(0).setAzimuthOffsetDeg(null);
            sample.unit(1).setAzimuthOffsetDeg(0.6);
        }));
        cases.add(RuleCase.of("ROW-14", Result.NOT_EVALUATED, "not entered", Bases::row,
                sample -> sample.unit(0).setAzimuthOffsetDeg(null)));
    }

    private static void units(List<RuleCase> cases) {
        cases.add(RuleCase.of("UNIT-01", Result.PASS, "frangible", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("UNIT-01", Result.PASS, "T form", Bases::tForm, Sample::unchanged));
        cases.add(RuleCase.of("UNIT-01", Result.FAIL, "one rigid", Bases::row, sample -> sample.unit(0).setFrangible(false)));
        cases.add(RuleCase.of("UNIT-01", Result.NOT_EVALUATED, "not said", Bases::row, sample -> sample.unit(0).setFrangible(null)));
        cases.add(RuleCase.of("UNIT-02", Result.PASS, "0.9 m", Bases::row, sample -> sample.unit(0).setHeightAboveGroundM(0.9)));
        cases.add(RuleCase.of("UNIT-02", Result.FAIL, "0.95 m", Bases::row, sample -> sample.unit(0).setHeightAboveGroundM(0.95)));
        cases.add(RuleCase.of("UNIT-02", Result.NOT_EVALUATED, "not known", Bases::row, sample -> sample.aid().setEquipment(null)));
        cases.add(RuleCase.of("UNIT-03", Result.PASS, "in range", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("UNIT-03", Result.FAIL, "out of the type's range", Bases::row,
                sample -> sample.aid().getEquipment().setMaxSettingDeg(3.4)));
        cases.add(RuleCase.of("UNIT-03", Result.FAIL, "out of the published range", Bases::row, sample -> {
            sample.aid().setEquipment(null);
            sample.unit(0).setSettingDeg(4.6);
        }));
        cases.add(RuleCase.of("UNIT-03", Result.PASS, "at the end of the published range", Bases::row, sample -> {
            sample.aid().setEquipment(null);
            sample.unit(0).setSettingDeg(4.5);
        }));
        cases.add(RuleCase.of("UNIT-03", Result.NOT_EVALUATED, "a type that says one end of its range", Bases::row,
                sample -> sample.equipment().setMaxSettingDeg(null)));
        cases.add(RuleCase.of("UNIT-03", Result.NOT_EVALUATED, "no range", Bases::twoBar, sample -> sample.aid().setEquipment(null)));
        cases.add(RuleCase.of("UNIT-04", Result.PASS, "1.5 to 4.5", Bases::row, sample -> {
            sample.aid().getEquipment().setMinSettingDeg(1.5);
            sample.aid().getEquipment().setMaxSettingDeg(4.5);
        }));
        cases.add(RuleCase.of("UNIT-04", Result.FAIL, "1.6 to 4.5", Bases::row,
                sample -> sample.aid().getEquipment().setMinSettingDeg(1.6)));
        cases.add(RuleCase.of("UNIT-04", Result.FAIL, "2 to 4.5", Bases::row,
                sample -> sample.aid().getEquipment().setMinSettingDeg(2.0)));
        cases.add(RuleCase.of("UNIT-04", Result.FAIL, "heliport indicator to 10", Bases::padSector,
                sample -> sample.aid().getEquipment().setMaxSettingDeg(10.0)));
        cases.add(RuleCase.of("UNIT-04", Result.NOT_EVALUATED, "no type", Bases::row, sample -> sample.aid().setEquipment(null)));
        cases.add(RuleCase.of("UNIT-05", Result.PASS, "2.9' off in use", Bases::row, sample -> {
            sample.units(unit -> Bases.measure(unit, 0));
            Bases.measure(sample.unit(0), 2.9 / 60);
        }));
        cases.add(RuleCase.of("UNIT-05", Result.NOT_EVALUATED, "two of four measured", Bases::row, sample -> {
            Bases.measure(sample.unit(0), 0);
            Bases.measure(sample.unit(2), 0);
        }));
        cases.add(RuleCase.of("UNIT-05", Result.NOT_EVALUATED, "6' off under a rule set without a tolerance", Bases::triColour,
                sample -> Bases.measure(sample.unit(0), 0.1)));
        cases.add(RuleCase.of("UNIT-05", Result.PASS, "as set under a rule set without a tolerance", Bases::triColour,
                sample -> Bases.measure(sample.unit(0), 0)));
        cases.add(RuleCase.of("UNIT-05", Result.FAIL, "3.1' off", Bases::row, sample -> Bases.measure(sample.unit(0), -3.1 / 60)));
        cases.add(RuleCase.of("UNIT-05", Result.FAIL, "4' off", Bases::row, sample -> Bases.measure(sample.unit(0), -4.0 / 60)));
        cases.add(RuleCase.of("UNIT-05", Result.NOT_EVALUATED, "in use, and measured nobody knows when", Bases::row, sample -> {
            sample.units(unit -> Bases.measure(unit, 0));
            sample.units(unit -> unit.getMeasured().setDate(null));
        }));
        cases.add(RuleCase.of("UNIT-05", Result.NOT_EVALUATED, "in use, and measured a year and a day ago", Bases::row, sample -> {
            sample.project().setDate("2026-06-01");
            sample.units(unit -> Bases.measure(unit, 0));
            sample.units(unit -> unit.getMeasured().setDate("2025-05-31"));
        }));
        cases.add(RuleCase.of("UNIT-05", Result.PASS, "in use, and measured a year ago", Bases::row, sample -> {
            sample.project().setDate("2026-06-01");
            sample.units(unit -> Bases.measure(unit, 0));
            sample.units(unit -> unit.getMeasured().setDate("2025-06-01"));
        }));
        cases.add(RuleCase.of("UNIT-05", Result.FAIL, "3.1' off eleven years ago", Bases::row, sample -> {
            sample.project().setDate("2026-06-01");
            sample.units(unit -> Bases.measure(unit, 3.1 / 60));
            sample.units(unit -> unit.getMeasured().setDate("2015-05-31"));
        }));
        cases.add(RuleCase.of("UNIT-05", Result.NOT_EVALUATED, "in use, and not measured", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("UNIT-05", Result.NOT_APPLICABLE, "carried, and not measured", Bases::row,
                sample -> sample.aid().setPortable(true)));
    }

    /**
     * A row measured elsewhere than planned. The inner unit stands 15 m from the edge, 1 m may be off; the eye height over the threshold
     * may be 0.3 m less, which are about 6 m along the runway at 3 degrees; units may differ by 0.05 m in level.
     */
    private static void built(List<RuleCase> cases) {
        cases.add(RuleCase.of("UNIT-09", Result.NOT_APPLICABLE, "nothing measured", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("UNIT-09", Result.PASS, "built as planned", Bases::row, sample -> Bases.build(sample, 0, 0, 0)));
        cases.add(RuleCase.of("UNIT-09", Result.NOT_EVALUATED, "built as planned, the angle of one not measured", Bases::row, sample -> {
            Bases.build(sample, 0, 0, 0);
            sample.aid().getUnits().get(2).getMeasured().setSettingDeg(null);
        }));
        cases.add(RuleCase.of("UNIT-09", Result.FAIL, "5 m closer to the edge, the angle of one not measured", Bases::row, sample -> {
            Bases.build(sample, 0, -5, 0);
            sample.aid().getUnits().get(2).getMeasured().setSettingDeg(null);
        }));
        cases.add(RuleCase.of("UNIT-09", Result.PASS, "0.9 m farther out", Bases::row, sample -> Bases.build(sample, 0, 0.9, 0)));
        cases.add(RuleCase.of("UNIT-09", Result.FAIL, "5 m closer to the edge", Bases::row, sample -> Bases.build(sample, 0, -5, 0)));
        cases.add(RuleCase.of("UNIT-09", Result.FAIL, "100 m nearer to the threshold", Bases::row,
                sample -> Bases.build(sample, -100, 0, 0)));
        cases.add(RuleCase.of("UNIT-09", Result.FAIL, "1 m lower", Bases::row, sample -> Bases.build(sample, 0, 0, -1)));
        cases.add(RuleCase.of("UNIT-09", Result.FAIL, "one lens 0.2 m lower", Bases::row, sample -> {
            Bases.build(sample, 0, 0, 0);
            MeasuredUnit found = sample.unit(1).getMeasured();
            found.setLensElevationM(found.getLensElevationM() - 0.2);
        }));
        cases.add(RuleCase.of("UNIT-09", Result.PASS, "0.29 m lower", Bases::row, sample -> Bases.build(sample, 0, 0, -0.29)));
        cases.add(RuleCase.of("UNIT-09", Result.PASS, "an angle that is judged by itself", Bases::row, sample -> {
            sample.units(unit -> Bases.measure(unit, 0));
            Bases.measure(sample.unit(3), 2.9 / 60);
        }));
    }
}
