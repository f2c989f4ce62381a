package slopewright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

import slopewright.model.ObstacleKind;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SurveyBlock;
import slopewright.model.ValueConfirmation;
import slopewright.model.ValueOverride;

/** Cases of the rules about data and families. */
final class DataCases {

    private static final SlopewrightFactory MAKE = SlopewrightFactory.eINSTANCE;

    private DataCases() {
    }

    static List<RuleCase> all() {
        List<RuleCase> cases = new ArrayList<>();
        data(cases);
        lists(cases);
        families(cases);
        return cases;
    }

    private static void data(List<RuleCase> cases) {
        cases.add(RuleCase.of("DATA-01", Result.PASS, "complete", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-01", Result.PASS, "bearing from the other end", Bases::row,
                sample -> sample.end().setTrueBearingDeg(null)));
        cases.add(RuleCase.of("DATA-01", Result.PASS, "helipad", Bases::padSector, Sample::unchanged));
        cases.add(RuleCase.of("DATA-01", Result.NOT_EVALUATED, "no threshold", Bases::row, sample -> sample.end().setThreshold(null)));
        cases.add(RuleCase.of("DATA-01", Result.NOT_EVALUATED, "no elevation", Bases::row,
                sample -> sample.end().setThresholdElevationM(null)));
        cases.add(RuleCase.of("DATA-01", Result.NOT_EVALUATED, "no TLOF elevation", Bases::padSector,
                sample -> sample.pad().setElevationM(null)));
        cases.add(RuleCase.of("DATA-02", Result.PASS, "complete", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-02", Result.NOT_EVALUATED, "no width", Bases::row, sample -> sample.runway().setWidthM(null)));
        cases.add(RuleCase.of("DATA-02", Result.NOT_EVALUATED, "no code", Bases::row, sample -> sample.runway().setCodeNumber(null)));
        cases.add(RuleCase.of("DATA-02", Result.NOT_EVALUATED, "no slope", Bases::row, sample -> sample.aid().setSlopeDeg(null)));
        cases.add(RuleCase.of("DATA-02", Result.NOT_APPLICABLE, "helipad", Bases::padSector, Sample::unchanged));
        cases.add(RuleCase.of("DATA-03", Result.PASS, "complete", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-03", Result.PASS, "height group instead", Bases::usRow,
                sample -> sample.host().getRegularGroups().clear()));
        cases.add(RuleCase.of("DATA-03", Result.NOT_EVALUATED, "no groups", Bases::row,
                sample -> sample.host().getRegularGroups().clear()));
        cases.add(RuleCase.of("DATA-03", Result.NOT_EVALUATED, "no eye-to-wheel height", Bases::row,
                sample -> sample.host().getRegularGroups().get(0).setEyeToWheelM(null)));
        cases.add(RuleCase.of("DATA-03", Result.NOT_EVALUATED, "no eye-to-antenna height", Bases::rowBesideGlidePath,
                sample -> sample.host().getRegularGroups().get(0).setEyeToAntennaM(null)));
        cases.add(RuleCase.of("DATA-04", Result.PASS, "complete", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-04", Result.PASS, "panels need no sectors", Bases::panels, Sample::unchanged));
        cases.add(RuleCase.of("DATA-04", Result.NOT_EVALUATED, "no units", Bases::row, sample -> sample.aid().getUnits().clear()));
        cases.add(RuleCase.of("DATA-04", Result.NOT_EVALUATED, "no lens elevation", Bases::row,
                sample -> sample.unit(1).setLensElevationM(null)));
        cases.add(RuleCase.of("DATA-04", Result.NOT_EVALUATED, "no setting", Bases::row, sample -> sample.unit(1).setSettingDeg(null)));
        cases.add(RuleCase.of("DATA-04", Result.PASS, "no bar, and there is but one", Bases::row, sample -> sample.unit(1).setBar(null)));
        for (Supplier<Sample> base : List.<Supplier<Sample>>of(Bases::twoBar, Bases::threeBar, Bases::tForm, Bases::panels)) {
            cases.add(RuleCase.of("DATA-04", Result.NOT_EVALUATED, "no bar, and there are several", base,
                    sample -> sample.unit(0).setBar(null)));
        }
        cases.add(RuleCase.of("BAR-01", Result.NOT_EVALUATED, "a unit of no known bar", Bases::twoBar,
                sample -> sample.unit(0).setBar(null)));
        cases.add(RuleCase.of("TF-01", Result.NOT_EVALUATED, "a unit of no known bar", Bases::tForm,
                sample -> sample.unit(0).setBar(null)));
        cases.add(RuleCase.of("DATA-05", Result.PASS, "complete", Bases::padSector, Sample::unchanged));
        cases.add(RuleCase.of("DATA-05", Result.NOT_EVALUATED, "no FATO length", Bases::padSector,
                sample -> sample.pad().setFatoLengthM(null)));
        cases.add(RuleCase.of("DATA-05", Result.NOT_EVALUATED, "no safety area", Bases::padSector,
                sample -> sample.pad().setSafetyAreaWidthM(null)));
        cases.add(RuleCase.of("DATA-05", Result.NOT_EVALUATED, "no hover height", Bases::padSector,
                sample -> sample.pad().setHoverHeightM(null)));
    }

    private static void lists(List<RuleCase> cases) {
        cases.add(RuleCase.of("DATA-06", Result.PASS, "known", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-06", Result.FAIL, "unknown", Bases::row, sample -> sample.aid().setFamilyKey("five-unit-row")));
        cases.add(RuleCase.of("DATA-06", Result.NOT_EVALUATED, "none", Bases::row, sample -> sample.aid().setFamilyKey(null)));
        cases.add(RuleCase.of("DATA-07", Result.PASS, "covered", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-07", Result.FAIL, "not covered", Bases::row, sample -> sample.aid().setFamilyKey("two-bar")));
        cases.add(RuleCase.of("DATA-08", Result.PASS, "known", Bases::row, sample -> sample.aid().setRuleSetKey("icao:9th")));
        cases.add(RuleCase.of("DATA-08", Result.FAIL, "unknown", Bases::row, sample -> sample.aid().setRuleSetKey("icao:12th")));
        cases.add(RuleCase.of("DATA-08", Result.NOT_APPLICABLE, "none", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-09", Result.PASS, "whole", Bases::row,
                sample -> block(sample, "points.csv", "0123456789abcdef".repeat(4), 5)));
        cases.add(RuleCase.of("DATA-09", Result.FAIL, "no file", Bases::row, sample -> block(sample, null, "0123456789abcdef".repeat(4),
                5)));
        cases.add(RuleCase.of("DATA-09", Result.FAIL, "no hash", Bases::row, sample -> block(sample, "points.csv", "0123", 5)));
        cases.add(RuleCase.of("DATA-09", Result.FAIL, "no points", Bases::row,
                sample -> block(sample, "points.csv", "0123456789abcdef".repeat(4), 0)));
        cases.add(RuleCase.of("DATA-10", Result.PASS, "with reason", Bases::row, sample -> override(sample, "survey of the site",
                "J. Doe")));
        cases.add(RuleCase.of("DATA-10", Result.FAIL, "without reason", Bases::row, sample -> override(sample, null, "J. Doe")));
        cases.add(RuleCase.of("DATA-10", Result.FAIL, "without person", Bases::row, sample -> override(sample, "survey of the site",
                " ")));
        cases.add(RuleCase.of("DATA-10", Result.FAIL, "confirmation without source", Bases::row, sample -> {
            ValueConfirmation confirmation = MAKE.createValueConfirmation();
            confirmation.setValueKey("four-unit-row.unit-spacing-m");
            confirmation.setPerson("J. Doe");
            sample.project().getConfirmations().add(confirmation);
        }));
        cases.add(RuleCase.of("DATA-11", Result.PASS, "whole", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-11", Result.NOT_EVALUATED, "no accuracy", Bases::row,
                sample -> sample.aerodrome().getObstacles().get(0).setVerticalAccuracyM(null)));
        cases.add(RuleCase.of("DATA-11", Result.NOT_EVALUATED, "an exact survey", Bases::row,
                sample -> sample.aerodrome().getObstacles().get(0).setVerticalAccuracyM(0.0)));
        cases.add(RuleCase.of("DATA-11", Result.NOT_EVALUATED, "a block without accuracy", Bases::row,
                sample -> block(sample, "points.csv", "0123456789abcdef".repeat(4), 5)));
        cases.add(RuleCase.of("DATA-11", Result.PASS, "a block of known accuracy", Bases::row, sample -> {
            block(sample, "points.csv", "0123456789abcdef".repeat(4), 5);
            sample.project().getSurveyBlocks().get(0).setHorizontalAccuracyM(0.5);
            sample.project().getSurveyBlocks().get(0).setVerticalAccuracyM(0.3);
        }));
        cases.add(RuleCase.of("DATA-11", Result.NOT_EVALUATED, "one place of a line", Bases::row,
                sample -> sample.aerodrome().getObstacles().get(0).setKind(ObstacleKind.LINE)));
        cases.add(RuleCase.of("DATA-12", Result.PASS, "named", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-12", Result.PASS, "above a geoid on an ellipsoid", Bases::row,
                sample -> sample.aerodrome().setVerticalDatum("EGM96 on WGS 84")));
        cases.add(RuleCase.of("DATA-12", Result.FAIL, "an ellipsoid", Bases::row,
                sample -> sample.aerodrome().setVerticalDatum("WGS-84 ellipsoid")));
        cases.add(RuleCase.of("DATA-12", Result.FAIL, "heights above one", Bases::row,
                sample -> sample.aerodrome().setVerticalDatum("HAE (GNSS)")));
        cases.add(RuleCase.of("DATA-12", Result.NOT_EVALUATED, "not named", Bases::row,
                sample -> sample.aerodrome().setVerticalDatum(null)));
        cases.add(RuleCase.of("DATA-67", Result.PASS, "on WGS 84 with its epoch", Bases::row, sample -> {
            sample.aerodrome().setCoordinateReference("WGS84");
            sample.aerodrome().setCoordinateEpoch(2026.1);
        }));
        cases.add(RuleCase.of("DATA-67", Result.PASS, "of a day before the layout", Bases::row, sample -> epoch(sample, 2026.4)));
        cases.add(RuleCase.of("DATA-67", Result.FAIL, "of a day after the layout", Bases::row, sample -> epoch(sample, 2026.6)));
        cases.add(RuleCase.of("DATA-67", Result.NOT_EVALUATED, "on WGS 84 without", Bases::row,
                sample -> sample.aerodrome().setCoordinateReference("WGS84")));
        cases.add(RuleCase.of("DATA-67", Result.NOT_EVALUATED, "in a grid on WGS 84 without", Bases::row,
                sample -> sample.aerodrome().setCoordinateReference("EPSG:32651")));
        cases.add(RuleCase.of("DATA-67", Result.NOT_APPLICABLE, "in a grid of Australia", Bases::row,
                sample -> sample.aerodrome().setCoordinateReference("EPSG:7851")));
        cases.add(RuleCase.of("DATA-67", null, "a portable unit alone", Bases::row, sample -> {
            sample.aerodrome().setCoordinateReference("WGS84");
            sample.aid().setPortable(true);
        }));
        cases.add(RuleCase.of("DATA-67", Result.NOT_APPLICABLE, "on local marks", Bases::row, Sample::unchanged));
    }

    /** The first of June is 2026.41. */
    private static void epoch(Sample sample, double year) {
        sample.project().setDate("2026-06-01");
        sample.aerodrome().setCoordinateReference("WGS84");
        sample.aerodrome().setCoordinateEpoch(year);
    }

    private static void block(Sample sample, String path, String hash, int points) {
        SurveyBlock block = MAKE.createSurveyBlock();
        block.setName("block");
        block.setPath(path);
        block.setSha256(hash);
        block.setPointCount(points);
        sample.project().getSurveyBlocks().add(block);
    }

    private static void override(Sample sample, String reason, String person) {
        ValueOverride override = MAKE.createValueOverride();
        override.setValueKey("four-unit-row.unit-spacing-m");
        override.setValue(9.0);
        override.setReason(reason);
        override.setPerson(person);
        sample.project().getOverrides().add(override);
    }

    private static void families(List<RuleCase> cases) {
        cases.add(RuleCase.of("FAM-01", Result.PASS, "row at a runway", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("FAM-01", Result.PASS, "row at a helipad", Bases::padRow, Sample::unchanged));
        cases.add(RuleCase.of("FAM-01", Result.FAIL, "heliport indicator at a runway", Bases::row,
                sample -> sample.aid().setFamilyKey("heliport-sector")));
        cases.add(RuleCase.of("FAM-01", Result.FAIL, "T form at a helipad", Bases::padSector,
                sample -> sample.aid().setFamilyKey("t-form")));
        // 5.3.5.3: code 3 and 4 have PAPI, T-VASIS or AT-VASIS; 5.3.5.4: code 1 and 2 have PAPI or APAPI (CS M.640 (c), (d) alike).
        for (int code = 1; code <= 4; code++) {
            int number = code;
            cases.add(RuleCase.of("FAM-02", Result.PASS, "row of four, code " + code, Bases::row,
                    sample -> sample.runway().setCodeNumber(number)));
            cases.add(RuleCase.of("FAM-02", code <= 2 ? Result.PASS : Result.FAIL, "row of two, code " + code, Bases::pairCodeTwo,
                    sample -> sample.runway().setCodeNumber(number)));
            cases.add(RuleCase.of("FAM-02", code >= 3 ? Result.PASS : Result.FAIL, "T form, code " + code, Bases::tForm,
                    sample -> sample.runway().setCodeNumber(number)));
        }
        cases.add(RuleCase.of("FAM-02", Result.NOT_EVALUATED, "no code", Bases::row, sample -> sample.runway().setCodeNumber(null)));
        cases.add(RuleCase.of("FAM-02", Result.NOT_APPLICABLE, "US", Bases::usRow, Sample::unchanged));
        cases.add(RuleCase.of("FAM-03", Result.NOT_APPLICABLE, "not displaced", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("FAM-03", Result.PASS, "displaced, row of four", Bases::row,
                sample -> sample.end().setDisplacedThresholdM(150.0)));
        cases.add(RuleCase.of("FAM-03", Result.FAIL, "displaced, T form", Bases::tForm,
                sample -> sample.end().setDisplacedThresholdM(150.0)));
    }
}
