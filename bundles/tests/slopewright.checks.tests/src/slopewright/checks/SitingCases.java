package slopewright.checks;

import java.util.ArrayList;
import java.util.List;

import slopewright.model.GlidePathAid;

/**
 * Cases of rules about where units stand: beside the centre line, in the area of the glide path antenna, behind something; and of the slope
 * for the aeroplanes. The inner unit of the base row stands 22.5 m + 15 m from the centre line.
 */
final class SitingCases {
    /** The surface of the base row rises at 1.93 degrees (Table 5-3); 100 m before a lens at 100.8 m the line is at 104.17 m. */
    private static final double SIGHT_M = Sample.DATUM_M + Sample.LENS_M + 100 * Math.tan(Math.toRadians(1.93));

    private SitingCases() {
    }

    static List<RuleCase> all() {
        List<RuleCase> cases = new ArrayList<>();
        zone(cases);
        antenna(cases);
        sight(cases);
        plane(cases);
        slope(cases);
        cases.add(RuleCase.of("FAM-04", Result.FAIL, "T form of today", Bases::tFormOfToday, Sample::unchanged));
        cases.add(RuleCase.of("FAM-04", Result.NOT_APPLICABLE, "row of today", Bases::rowOfToday, Sample::unchanged));
        cases.add(RuleCase.of("FAM-04", Result.NOT_APPLICABLE, "T form of the 5th edition", Bases::tForm, Sample::unchanged));
        return cases;
    }

    private static void zone(List<RuleCase> cases) {
        cases.add(RuleCase.of("UNIT-08", Result.PASS, "frangible in the strip", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("UNIT-08", Result.FAIL, "one rigid in the strip, 75 m wide", Bases::row, sample -> rigid(sample, 75.0)));
        cases.add(RuleCase.of("UNIT-08", Result.PASS, "rigid beside the strip, 74.9 m wide", Bases::row, sample -> rigid(sample, 74.9)));
        cases.add(RuleCase.of("UNIT-08", Result.NOT_EVALUATED, "no length", Bases::row, sample -> sample.runway().setStripLengthM(null)));
        cases.add(RuleCase.of("UNIT-08", Result.NOT_EVALUATED, "no width", Bases::row, sample -> sample.runway().setStripWidthM(null)));
        cases.add(RuleCase.of("UNIT-08", Result.NOT_EVALUATED, "not known whether frangible", Bases::row,
                sample -> sample.unit(0).setFrangible(null)));
        cases.add(RuleCase.of("UNIT-08", Result.NOT_APPLICABLE, "helipad", Bases::padSector, Sample::unchanged));
        cases.add(RuleCase.of("UNIT-07", Result.PASS, "75 m wide", Bases::row, sample -> sample.runway().setObjectFreeWidthM(75.0)));
        cases.add(RuleCase.of("UNIT-07", Result.FAIL, "75.1 m wide", Bases::row, sample -> sample.runway().setObjectFreeWidthM(75.1)));
        cases.add(RuleCase.of("UNIT-07", Result.FAIL, "one unit moved in, on the right", Bases::row,
                sample -> sample.unit(1).setRightM(19.9)));
        cases.add(RuleCase.of("UNIT-07", Result.NOT_EVALUATED, "no width", Bases::row,
                sample -> sample.runway().setObjectFreeWidthM(null)));
        cases.add(RuleCase.of("UNIT-07", Result.NOT_EVALUATED, "no source", Bases::row,
                sample -> sample.runway().setObjectFreeSource("")));
        cases.add(RuleCase.of("UNIT-07", Result.NOT_APPLICABLE, "helipad", Bases::padSector, Sample::unchanged));
    }

    /**
     * The antenna is put 100 m to the left of the centre line and so far ahead of the row; the outermost unit stands 22.5 + 15 + 3 x 9 =
     * 64.5 m to the left.
     */
    private static void area(Sample sample, double aheadM, double lengthM, double widthM) {
        GlidePathAid path = sample.end().getGlidePath();
        path.setAntennaAlongM(sample.unit(0).getAlongM() + aheadM);
        path.setAntennaRightM(-100.0);
        path.setCriticalAreaLengthM(lengthM);
        path.setCriticalAreaWidthM(widthM);
        path.setCriticalAreaSource("a case");
    }

    private static void antenna(List<RuleCase> cases) {
        cases.add(RuleCase.of("OBS-05", Result.PASS, "71 m wide, units 35.5 m beside", Bases::rowBesideGlidePath,
                sample -> area(sample, 10, 300, 71)));
        cases.add(RuleCase.of("OBS-05", Result.FAIL, "71.1 m wide, units 35.5 m beside", Bases::rowBesideGlidePath,
                sample -> area(sample, 10, 300, 71.1)));
        cases.add(RuleCase.of("OBS-05", Result.PASS, "300 m long, units 300 m before the antenna", Bases::rowBesideGlidePath,
                sample -> area(sample, 300, 300, 100)));
        cases.add(RuleCase.of("OBS-05", Result.FAIL, "301 m long, units 300 m before the antenna", Bases::rowBesideGlidePath,
                sample -> area(sample, 300, 301, 100)));
        cases.add(RuleCase.of("OBS-05", Result.PASS, "units behind the antenna", Bases::rowBesideGlidePath,
                sample -> area(sample, -1, 300, 100)));
        cases.add(RuleCase.of("OBS-05", Result.NOT_EVALUATED, "no source", Bases::rowBesideGlidePath, sample -> {
            area(sample, 10, 300, 71);
            sample.end().getGlidePath().setCriticalAreaSource(null);
        }));
        cases.add(RuleCase.of("OBS-05", Result.NOT_EVALUATED, "no width", Bases::rowBesideGlidePath, sample -> {
            area(sample, 10, 300, 71);
            sample.end().getGlidePath().setCriticalAreaWidthM(null);
        }));
    }

    private static void rigid(Sample sample, double stripWidthM) {
        sample.runway().setStripWidthM(stripWidthM);
        sample.units(unit -> unit.setFrangible(false));
    }

    private static void sight(List<RuleCase> cases) {
        cases.add(RuleCase.of("OBS-08", Result.PASS, "nothing between", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("OBS-08", Result.PASS, "1 cm below", Bases::row, sample -> before(sample, SIGHT_M - 0.01)));
        cases.add(RuleCase.of("OBS-08", Result.FAIL, "1 cm above", Bases::row, sample -> before(sample, SIGHT_M + 0.01)));
        cases.add(RuleCase.of("OBS-08", Result.FAIL, "1 cm below, surveyed to 2 cm", Bases::row, sample -> {
            before(sample, SIGHT_M - 0.01);
            sample.aerodrome().getObstacles().get(1).setVerticalAccuracyM(0.02);
        }));
        cases.add(RuleCase.of("OBS-08", Result.PASS, "behind the unit", Bases::row,
                sample -> sample.obstacle("hut", sample.unit(0).getAlongM() + 1, sample.unit(0).getRightM(), Sample.DATUM_M + 50)));
        cases.add(RuleCase.of("OBS-08", Result.NOT_EVALUATED, "no beam width", Bases::row,
                sample -> sample.equipment().setBeamWidthDeg(null)));
        cases.add(RuleCase.of("OBS-08", Result.NOT_EVALUATED, "one without top", Bases::row, sample -> {
            before(sample, 0);
            sample.aerodrome().getObstacles().get(1).setTopElevationM(null);
            sample.aerodrome().getObstacles().get(1).getPlaces().get(0).setElevationM(null);
        }));
    }

    private static void before(Sample sample, double topM) {
        sample.obstacle("sign", sample.unit(0).getAlongM() - 100, sample.unit(0).getRightM(), topM);
    }

    /** UFC 3-535-01, 12-3.2: the plane of the lenses within 0.3 m of the centre line; the lenses of the base stand 0.2 m above it. */
    private static void plane(List<RuleCase> cases) {
        cases.add(RuleCase.of("ROW-15", Result.PASS, "0.2 m above", Bases::usRowBesideCentreLine, Sample::unchanged));
        cases.add(RuleCase.of("ROW-15", Result.PASS, "0.3 m above", Bases::usRowBesideCentreLine,
                sample -> sample.units(unit -> unit.setLensElevationM(Sample.DATUM_M + 0.3))));
        cases.add(RuleCase.of("ROW-15", Result.FAIL, "0.4 m above", Bases::usRowBesideCentreLine,
                sample -> sample.units(unit -> unit.setLensElevationM(Sample.DATUM_M + 0.4))));
        cases.add(RuleCase.of("ROW-15", Result.FAIL, "0.4 m below", Bases::usRowBesideCentreLine,
                sample -> sample.units(unit -> unit.setLensElevationM(Sample.DATUM_M - 0.4))));
        cases.add(RuleCase.of("ROW-15", Result.NOT_EVALUATED, "no profile", Bases::usRow, Sample::unchanged));
        cases.add(RuleCase.of("ROW-15", Result.NOT_APPLICABLE, "a rule set that asks for none", Bases::row, Sample::unchanged));
    }

    private static void slope(List<RuleCase> cases) {
        cases.add(RuleCase.of("EYE-05", Result.PASS, "3 of 3 degrees", Bases::row, sample -> most(sample, 3.0)));
        cases.add(RuleCase.of("EYE-05", Result.FAIL, "3 of 2.9 degrees", Bases::row, sample -> most(sample, 2.9)));
        cases.add(RuleCase.of("EYE-05", Result.NOT_EVALUATED, "not known", Bases::row, sample -> most(sample, null)));
        cases.add(RuleCase.of("EYE-05", Result.NOT_EVALUATED, "no aeroplanes", Bases::row,
                sample -> sample.host().getRegularGroups().clear()));
        cases.add(RuleCase.of("EYE-05", Result.NOT_APPLICABLE, "helipad", Bases::padSector, Sample::unchanged));
    }

    private static void most(Sample sample, Double slopeDeg) {
        sample.host().getRegularGroups().get(0).setMaxSlopeDeg(slopeDeg);
    }
}
