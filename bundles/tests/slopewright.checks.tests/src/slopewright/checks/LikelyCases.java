package slopewright.checks;

import java.util.ArrayList;
import java.util.List;

import slopewright.evaluation.ReadBacks;
import slopewright.model.AeroplaneGroup;
import slopewright.model.ApproachType;
import slopewright.model.GlidePathAid;
import slopewright.model.GlidePathKind;
import slopewright.model.Identified;
import slopewright.model.Obstacle;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Ids;

/**
 * Cases of what is likely together and need not be: a read-back answers each. The base is runway 09 with a visual approach, 2400 m long and
 * 45 m wide, code number 4, with a strip of 280 m; the other end says nothing of its approach.
 */
final class LikelyCases {
    private static final SlopewrightFactory MAKE = SlopewrightFactory.eINSTANCE;

    private LikelyCases() {
    }

    static List<RuleCase> all() {
        List<RuleCase> cases = new ArrayList<>();
        approaches(cases);
        groups(cases);
        codeNumbers(cases);
        strips(cases);
        surveys(cases);
        return cases;
    }

    /** The surface of the row begins 60 m before the threshold, 80 m wide to each side, and is 15 km long. */
    private static void surveys(List<RuleCase> cases) {
        cases.add(RuleCase.of("DATA-74", null, "obstacles of no survey", Bases::row, Sample::unchanged));
        cases.add(survey(Result.PASS, "one of three before the threshold", 3, 0, false));
        cases.add(survey(Result.NOT_EVALUATED, "three that lie 11 km to the side", 3, 11_000, false));
        cases.add(survey(Result.PASS, "three that lie 11 km to the side, read back", 3, 11_000, true));
        cases.add(survey(null, "two that lie 11 km to the side", 2, 11_000, false));
    }

    private static RuleCase survey(Result expected, String name, int count, double asideM, boolean readBack) {
        return RuleCase.of("DATA-74", expected, name, Bases::row, sample -> {
            for (int i = 0; i < count; i++) {
                Obstacle tree = sample.obstacle("tree " + i, -1500, asideM + 900 * i, Sample.DATUM_M + 1);
                tree.setSource("survey of trees");
                tree.setDate("2026-01-01");
            }
            Ids.assign(sample.project());
            if (readBack) {
                sample.aerodrome().getObstacles().forEach(tree -> readBack(sample, tree));
            }
        });
    }

    private static void approaches(List<RuleCase> cases) {
        approach(cases, Result.NOT_EVALUATED, 4, 279, ApproachType.VISUAL, ApproachType.VISUAL);
        approach(cases, Result.PASS, 3, 279, ApproachType.VISUAL, ApproachType.VISUAL);
        approach(cases, Result.NOT_EVALUATED, 3, 280, ApproachType.VISUAL, ApproachType.NOT_STATED);
        approach(cases, Result.PASS, 2, 139, ApproachType.VISUAL, ApproachType.NOT_STATED);
        approach(cases, Result.NOT_EVALUATED, 2, 140, ApproachType.VISUAL, ApproachType.NOT_STATED);
        approach(cases, Result.NOT_EVALUATED, 2, 80, ApproachType.VISUAL, ApproachType.NON_PRECISION);
        approach(cases, Result.PASS, 4, 280, ApproachType.NON_PRECISION, ApproachType.VISUAL);
        approach(cases, null, 4, 280, ApproachType.NOT_STATED, ApproachType.VISUAL);
        cases.add(RuleCase.of("DATA-72", Result.PASS, "a visual end that was read back", Bases::row,
                sample -> readBack(sample, sample.end())));
        cases.add(RuleCase.of("DATA-72", Result.NOT_EVALUATED, "changed after it was read back", Bases::row, sample -> {
            sample.end().setApproachType(ApproachType.PRECISION_CAT_I);
            readBack(sample, sample.end());
            sample.end().setApproachType(ApproachType.VISUAL);
        }));
        path(cases, Result.NOT_EVALUATED, GlidePathKind.ILS, ApproachType.NON_PRECISION);
        path(cases, Result.NOT_EVALUATED, GlidePathKind.MLS, ApproachType.NON_PRECISION);
        path(cases, Result.PASS, GlidePathKind.GBAS_SBAS, ApproachType.NON_PRECISION);
        path(cases, Result.PASS, GlidePathKind.ILS, ApproachType.PRECISION_CAT_I);
        path(cases, Result.NOT_EVALUATED, GlidePathKind.ILS, ApproachType.PRECISION_CAT_II_III);
        cases.add(RuleCase.of("DATA-72", null, "nothing rests on it", Bases::row, sample -> sample.end().getAids().clear()));
    }

    private static void approach(List<RuleCase> cases, Result expected, int code, double stripM, ApproachType here, ApproachType there) {
        cases.add(RuleCase.of("DATA-72", expected, here + " against " + there + ", code number " + code + ", strip of " + stripM + " m",
                Bases::row, sample -> {
                    sample.runway().setCodeNumber(code);
                    sample.runway().setStripWidthM(stripM);
                    sample.end().setApproachType(here);
                    sample.runway().getEnds().get(1).setApproachType(there);
                }));
    }

    private static void path(List<RuleCase> cases, Result expected, GlidePathKind kind, ApproachType type) {
        cases.add(RuleCase.of("DATA-72", expected, kind + " and " + type, Bases::row, sample -> {
            sample.end().setApproachType(type);
            GlidePathAid path = MAKE.createGlidePathAid();
            path.setKind(kind);
            sample.end().setGlidePath(path);
        }));
    }

    /** The base has one group: 6.63 m from eye to wheel, 1.85 m from eye to aerial. */
    private static void groups(List<RuleCase> cases) {
        cases.add(RuleCase.of("DATA-73", Result.PASS, "one end alone", Bases::row, Sample::unchanged));
        cases.add(group(Result.NOT_EVALUATED, "a higher eye at the other end", 6.64, 1.85));
        cases.add(group(Result.PASS, "an eye as high", 6.63, 1.85));
        cases.add(group(Result.PASS, "an aerial that no glide path counts", 6.0, 1.0));
        cases.add(RuleCase.of("DATA-73", Result.NOT_EVALUATED, "a lower aerial beside a glide path", Bases::row, sample -> {
            sample.end().setGlidePath(MAKE.createGlidePathAid());
            atOtherEnd(sample, 6.0, 2.0);
        }));
        cases.add(RuleCase.of("DATA-73", Result.NOT_EVALUATED, "a higher aerial beside a glide path", Bases::row, sample -> {
            sample.end().setGlidePath(MAKE.createGlidePathAid());
            atOtherEnd(sample, 6.0, 1.0);
        }));
        cases.add(RuleCase.of("DATA-73", Result.NOT_EVALUATED, "a gentler slope at the other end", Bases::row, sample -> {
            sample.end().getRegularGroups().get(0).setMaxSlopeDeg(5.5);
            atOtherEnd(sample, 6.0, 1.85).setMaxSlopeDeg(4.5);
        }));
        cases.add(RuleCase.of("DATA-73", Result.NOT_EVALUATED, "a higher cockpit at the other end", Bases::row, sample -> {
            sample.end().getRegularGroups().get(0).setStaticCockpitToWheelM(3.0);
            atOtherEnd(sample, 6.0, 1.85).setStaticCockpitToWheelM(3.5);
        }));
        cases.add(RuleCase.of("DATA-73", Result.PASS, "a higher eye, read back", Bases::row, sample -> {
            atOtherEnd(sample, 7.5, 1.85);
            readBack(sample, sample.end());
        }));
        cases.add(RuleCase.of("DATA-73", Result.NOT_EVALUATED, "an aeroplane that lands nowhere", Bases::row, sample -> {
            AeroplaneGroup group = MAKE.createAeroplaneGroup();
            sample.aerodrome().getAeroplaneGroups().add(group);
            Ids.assign(sample.project());
        }));
    }

    private static RuleCase group(Result expected, String name, double eyeToWheelM, double eyeToAntennaM) {
        return RuleCase.of("DATA-73", expected, name, Bases::row, sample -> atOtherEnd(sample, eyeToWheelM, eyeToAntennaM));
    }

    private static AeroplaneGroup atOtherEnd(Sample sample, double eyeToWheelM, double eyeToAntennaM) {
        AeroplaneGroup group = MAKE.createAeroplaneGroup();
        group.setEyeToWheelM(eyeToWheelM);
        group.setEyeToAntennaM(eyeToAntennaM);
        sample.aerodrome().getAeroplaneGroups().add(group);
        sample.runway().getEnds().get(1).getRegularGroups().add(group);
        return group;
    }

    /** Annex 14 Vol I, Table 1-1: 800, 1200 and 1800 m; half as long again, three quarters; 7 % a 300 m of elevation. */
    private static void codeNumbers(List<RuleCase> cases) {
        code(cases, Result.PASS, 4, 1800, 45, 280, 0);
        code(cases, Result.NOT_EVALUATED, 4, 1799, 45, 280, 0);
        code(cases, Result.NOT_EVALUATED, 4, 1350, 45, 280, 0);
        code(cases, Result.FAIL, 4, 1349, 45, 280, 0);
        code(cases, Result.PASS, 3, 1799, 45, 280, 0);
        code(cases, Result.NOT_EVALUATED, 3, 1800, 45, 280, 0);
        code(cases, Result.PASS, 3, 1800, 44, 280, 0);
        code(cases, Result.PASS, 3, 1925, 45, 280, 300);
        code(cases, Result.NOT_EVALUATED, 3, 1927, 45, 280, 300);
        code(cases, Result.NOT_EVALUATED, 3, 2700, 45, 280, 0);
        code(cases, Result.FAIL, 3, 2701, 45, 280, 0);
        code(cases, Result.NOT_EVALUATED, 3, 2880, 45, 280, 300);
        code(cases, Result.PASS, 2, 1800, 23, 140, 0);
        code(cases, Result.FAIL, 2, 1801, 23, 140, 0);
        code(cases, Result.NOT_EVALUATED, 1, 1000, 30, 79, 0);
        code(cases, Result.FAIL, 1, 1000, 30, 80, 0);
        code(cases, Result.PASS, 1, 1000, 22, 80, 0);
        code(cases, Result.PASS, 1, 799, 30, 80, 0);
        code(cases, Result.FAIL, 2, 1200, 30, 150, 0);
        code(cases, Result.PASS, 2, 1200, 30, 150, 300);
        cases.add(RuleCase.of("DATA-54", Result.PASS, "2400 m of code number 3, read back", Bases::row, sample -> {
            sample.runway().setCodeNumber(3);
            readBack(sample, sample.runway());
        }));
    }

    private static void code(List<RuleCase> cases, Result result, int code, double lengthM, double widthM, double stripM, double upM) {
        cases.add(RuleCase.of("DATA-54", result, "code number " + code + ", " + lengthM + " m, " + widthM + " m, strip of " + stripM
                + " m, " + upM + " m up", Bases::row, sample -> {
                    sample.runway().setCodeNumber(code);
                    sample.runway().setLengthM(lengthM);
                    sample.runway().setWidthM(widthM);
                    sample.runway().setStripLengthM(lengthM + 120);
                    sample.runway().setStripWidthM(stripM);
                    sample.runway().getEnds().forEach(end -> end.setLandingDistanceM(lengthM));
                    sample.aerodrome().setElevationM(upM);
                }));
    }

    /** Annex 14 Vol I, 3.4.3 to 3.4.5, from memory: 140 and 70 m to each side of an instrument runway, else 75, 55, 40 and 30 m. */
    private static void strips(List<RuleCase> cases) {
        strip(cases, Result.FAIL, 4, 280, ApproachType.VISUAL);
        strip(cases, Result.PASS, 4, 279, ApproachType.VISUAL);
        strip(cases, Result.PASS, 4, 280, ApproachType.NON_PRECISION);
        strip(cases, Result.NOT_EVALUATED, 4, 279, ApproachType.NON_PRECISION);
        strip(cases, Result.NOT_EVALUATED, 4, 140, ApproachType.PRECISION_CAT_I);
        strip(cases, Result.PASS, 4, 150, ApproachType.VISUAL);
        strip(cases, Result.NOT_EVALUATED, 4, 149, ApproachType.VISUAL);
        strip(cases, Result.PASS, 3, 110, ApproachType.VISUAL);
        strip(cases, Result.NOT_EVALUATED, 3, 109, ApproachType.VISUAL);
        strip(cases, Result.NOT_EVALUATED, 2, 139, ApproachType.NON_PRECISION);
        strip(cases, Result.PASS, 2, 80, ApproachType.VISUAL);
        strip(cases, Result.NOT_EVALUATED, 2, 79, ApproachType.VISUAL);
        strip(cases, Result.PASS, 1, 60, ApproachType.VISUAL);
        strip(cases, Result.NOT_EVALUATED, 1, 59, ApproachType.VISUAL);
    }

    private static void strip(List<RuleCase> cases, Result result, int code, double stripM, ApproachType type) {
        cases.add(RuleCase.of("DATA-54", result, type + ", code number " + code + ", strip of " + stripM + " m", Bases::row, sample -> {
            double lengthM = List.of(700.0, 1000.0, 1500.0, 2400.0).get(code - 1);
            sample.runway().setCodeNumber(code);
            sample.runway().setLengthM(lengthM);
            sample.runway().setStripLengthM(lengthM + 120);
            sample.runway().setStripWidthM(stripM);
            sample.runway().getEnds().forEach(end -> {
                end.setApproachType(type);
                end.setLandingDistanceM(lengthM);
            });
        }));
    }

    private static void readBack(Sample sample, Identified element) {
        Ids.assign(sample.project());
        ReadBacks.keep(sample.project(), List.of(element), "B. Bole", "2026-01-06");
    }
}
