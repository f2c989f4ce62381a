package slopewright.checks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;

import slopewright.evaluation.Reviews;
import slopewright.model.Inspection;
import slopewright.model.ReviewKind;
import slopewright.model.ReviewNote;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.model.Stage;
import slopewright.model.util.Ids;

/**
 * Cases of the rules about inspections in flight, notes and dates. Tolerance of the slope in use: 6' (MIL-HDBK-1023/4, Table A-5) for
 * the US row, 3' (Doc 9157 Part 4, from memory) for the row of the 5th edition. Useful range by day: 8 km (Doc 9157 Part 4 as cited).
 * The base row has a slope of 3 degrees.
 */
final class InspectionCases {
    private InspectionCases() {
    }

    static List<RuleCase> all() {
        List<RuleCase> cases = new ArrayList<>();
        add(cases, "INSP-01", Result.PASS, "dated and signed", Bases::row, inspection -> {
            // as it stands
        });
        add(cases, "INSP-01", Result.NOT_EVALUATED, "no date", Bases::row, inspection -> inspection.setDate(null));
        add(cases, "INSP-01", Result.NOT_EVALUATED, "of 1990", Bases::row, inspection -> inspection.setDate("1990-03-01"));
        add(cases, "INSP-01", Result.NOT_EVALUATED, "no person", Bases::row, inspection -> inspection.setPerson(" "));
        cases.add(RuleCase.of("INSP-01", Result.NOT_EVALUATED, "none", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("INSP-02", Result.NOT_APPLICABLE, "none", Bases::row, Sample::unchanged));
        angle(cases);
        add(cases, "INSP-03", Result.PASS, "8 000 m", Bases::row, inspection -> inspection.setUsableRangeM(8_000.0));
        add(cases, "INSP-03", Result.FAIL, "7 999 m", Bases::row, inspection -> inspection.setUsableRangeM(7_999.0));
        add(cases, "INSP-03", Result.NOT_EVALUATED, "no range", Bases::row, inspection -> inspection.setUsableRangeM(null));
        add(cases, "INSP-04", Result.PASS, "8 and 8 degrees", Bases::rowOfToday, inspection -> azimuth(inspection, -8, 8));
        add(cases, "INSP-04", Result.FAIL, "7.9 degrees left", Bases::rowOfToday, inspection -> azimuth(inspection, -7.9, 8));
        add(cases, "INSP-04", Result.FAIL, "7.9 degrees right", Bases::rowOfToday, inspection -> azimuth(inspection, -8, 7.9));
        add(cases, "INSP-04", Result.PASS, "5 of 5 degrees, narrowed", narrowed(Bases::row), inspection -> azimuth(inspection, -5, 5));
        add(cases, "INSP-04", Result.FAIL, "4.9 of 5 degrees, narrowed", narrowed(Bases::row),
                inspection -> azimuth(inspection, -4.9, 5));
        add(cases, "INSP-04", Result.FAIL, "7 of 8 degrees of the equipment, where nothing is printed nor entered", Bases::row,
                inspection -> azimuth(inspection, -8, 7));
        add(cases, "INSP-04", Result.FAIL, "1 degree right, and a limit to the left only", leftOnly(Bases::row),
                inspection -> azimuth(inspection, -5, 1));
        add(cases, "INSP-04", Result.NOT_EVALUATED, "no azimuth", Bases::rowOfToday, inspection -> inspection.setAzimuthLeftDeg(null));
        add(cases, "INSP-05", Result.PASS, "clear", Bases::row, inspection -> {
            // as it stands
        });
        add(cases, "INSP-05", Result.FAIL, "not clear", Bases::row, inspection -> inspection.setObstacleClear(false));
        add(cases, "INSP-05", Result.NOT_EVALUATED, "not looked at", Bases::row, inspection -> inspection.setObstacleClear(null));
        last(cases);
        notes(cases);
        dates(cases);
        return cases;
    }

    private static void angle(List<RuleCase> cases) {
        add(cases, "INSP-02", Result.PASS, "3' off", Bases::row, inspection -> inspection.setOnSlopeAngleDeg(3 + 3 / 60.0));
        add(cases, "INSP-02", Result.FAIL, "3.1' off", Bases::row, inspection -> inspection.setOnSlopeAngleDeg(3 - 3.1 / 60));
        add(cases, "INSP-02", Result.PASS, "US, 6' off", Bases::usRow, inspection -> inspection.setOnSlopeAngleDeg(3 - 6 / 60.0));
        add(cases, "INSP-02", Result.FAIL, "US, 7' off", Bases::usRow, inspection -> inspection.setOnSlopeAngleDeg(3 + 7 / 60.0));
        add(cases, "INSP-02", Result.NOT_EVALUATED, "no angle", Bases::row, inspection -> inspection.setOnSlopeAngleDeg(null));
        add(cases, "INSP-02", Result.NOT_EVALUATED, "T form, off, no tolerance", Bases::tForm,
                inspection -> inspection.setOnSlopeAngleDeg(3.1));
        add(cases, "INSP-02", Result.PASS, "T form, as laid out", Bases::tForm, inspection -> inspection.setOnSlopeAngleDeg(3.0));
    }

    private static Supplier<Sample> leftOnly(Supplier<Sample> base) {
        return () -> {
            Sample sample = base.get();
            sample.aid().setBeamLeftLimitDeg(-5.0);
            return sample;
        };
    }

    private static Supplier<Sample> narrowed(Supplier<Sample> base) {
        return () -> {
            Sample sample = base.get();
            sample.aid().setBeamLeftLimitDeg(-5.0);
            sample.aid().setBeamRightLimitDeg(5.0);
            return sample;
        };
    }

    /** The last inspection decides, wherever it stands in the list. */
    private static void last(List<RuleCase> cases) {
        cases.add(RuleCase.of("INSP-05", Result.FAIL, "clear before, not clear last", Bases::row, sample -> {
            Inspection last = inspection();
            last.setDate("2026-05-01");
            last.setObstacleClear(false);
            sample.aid().getInspections().add(last);
            sample.aid().getInspections().add(inspection());
        }));
        // A shed stands 9 degrees to the side, 1 000 m before the row and above the surface plane: out of a beam of 8, in one seen to 10
        // degrees.
        cases.add(RuleCase.of("OBS-03", Result.PASS, "out of the beam", Bases::row, InspectionCases::besideBeam));
        cases.add(RuleCase.of("OBS-03", Result.FAIL, "in the beam as it was seen in flight", Bases::row, sample -> {
            besideBeam(sample);
            Inspection inspection = inspection();
            azimuth(inspection, -8, 10);
            sample.aid().getInspections().add(inspection);
        }));
    }

    private static void besideBeam(Sample sample) {
        double along = sample.unit(0).getAlongM() - 2_000;
        sample.obstacle("mast", along, 2_000 * Math.tan(Math.toRadians(9)), Sample.DATUM_M + 200);
    }

    private static void azimuth(Inspection inspection, double left, double right) {
        inspection.setAzimuthLeftDeg(left);
        inspection.setAzimuthRightDeg(right);
    }

    private static void add(List<RuleCase> cases, String rule, Result expected, String name, Supplier<Sample> base,
            Consumer<Inspection> change) {
        cases.add(RuleCase.of(rule, expected, name, base, sample -> {
            Inspection inspection = inspection();
            change.accept(inspection);
            sample.aid().getInspections().add(inspection);
        }));
    }

    private static Inspection inspection() {
        Inspection inspection = SlopewrightFactory.eINSTANCE.createInspection();
        inspection.setDate("2026-03-01");
        inspection.setPerson("J. Doe");
        inspection.setOnSlopeAngleDeg(3.0);
        inspection.setUsableRangeM(9_000.0);
        azimuth(inspection, -8, 8);
        inspection.setObstacleClear(true);
        return inspection;
    }

    private static void notes(List<RuleCase> cases) {
        cases.add(RuleCase.of("REC-01", null, "no note", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("REC-01", Result.PASS, "about the aid and a rule", Bases::row,
                sample -> note(sample, sample.aid().getId(), "OBS-01")));
        cases.add(RuleCase.of("REC-01", Result.FAIL, "about an element that is not there", Bases::row,
                sample -> note(sample, "approach-aid-99", "OBS-01")));
        cases.add(RuleCase.of("REC-01", Result.FAIL, "about a rule that is not there", Bases::row,
                sample -> note(sample, sample.aid().getId(), "OBS-99")));
        cases.add(RuleCase.of("REC-01", Result.PASS, "a reply to a comment", Bases::row, sample -> {
            note(sample, sample.aid().getId(), "OBS-01");
            reply(sample, sample.project().getReviewNotes().get(0).getId());
        }));
        cases.add(RuleCase.of("REC-01", Result.FAIL, "a reply to nothing", Bases::row, sample -> reply(sample, "review-note-99")));
        cases.add(RuleCase.of("REC-01", Result.FAIL, "a reply that names no comment", Bases::row, sample -> reply(sample, null)));
        cases.add(RuleCase.of("REC-01", Result.NOT_EVALUATED, "changed after it was signed off", Bases::row, sample -> {
            sign(sample);
            sample.aid().setRemarks("moved");
        }));
    }

    private static void reply(Sample sample, String comment) {
        ReviewNote note = SlopewrightFactory.eINSTANCE.createReviewNote();
        note.setKind(ReviewKind.ANSWER);
        note.setNoteId(comment);
        note.setText("so it is");
        sample.project().getReviewNotes().add(note);
    }

    private static void sign(Sample sample) {
        Reviews.signOff(sample.project(), new Reviews.Said("", "B. Bole (invented)", LocalDate.of(2026, 1, 3)));
    }

    private static void note(Sample sample, String element, String rule) {
        ReviewNote note = SlopewrightFactory.eINSTANCE.createReviewNote();
        note.setElementId(element);
        note.setRuleId(rule);
        note.setText("seen");
        sample.project().getReviewNotes().add(note);
        Ids.assign(sample.project());
    }

    private static void dates(List<RuleCase> cases) {
        cases.add(RuleCase.of("REC-05", Result.PASS, "design, nothing measured", Bases::row, sample -> stage(sample, Stage.DESIGN)));
        cases.add(RuleCase.of("REC-05", Result.FAIL, "design, an inspection in flight", Bases::row, sample -> {
            stage(sample, Stage.DESIGN);
            sample.aid().getInspections().add(inspection());
        }));
        cases.add(RuleCase.of("REC-05", Result.FAIL, "design, a measured angle", Bases::row, sample -> {
            stage(sample, Stage.DESIGN);
            sample.unit(0).setMeasured(SlopewrightFactory.eINSTANCE.createMeasuredUnit());
        }));
        cases.add(RuleCase.of("REC-05", Result.PASS, "set-up, an inspection in flight", Bases::row, sample -> {
            stage(sample, Stage.SET_UP);
            sample.aid().getInspections().add(inspection());
        }));
        cases.add(RuleCase.of("REC-02", Result.PASS, "of a survey on the day of the project", Bases::row, sample -> {
            sample.project().setDate("2026-01-02");
            sample.obstacleSurvey().setDate("2026-01-02");
        }));
        cases.add(RuleCase.of("REC-02", Result.FAIL, "of a survey a day after the project", Bases::row, sample -> {
            sample.project().setDate("2026-01-01");
            sample.obstacleSurvey().setDate("2026-01-02");
        }));
        cases.add(RuleCase.of("REC-02", Result.FAIL, "of the ground a day after the project", Bases::row, sample -> {
            sample.project().setDate("2026-01-01");
            ((RunwayEnd) sample.host()).setSiteProfileDate("2026-01-02");
        }));
        cases.add(inspected(Result.PASS, "on the day of the project", "2026-03-01", "2026-02-01"));
        cases.add(inspected(Result.NOT_EVALUATED, "the day after the project", "2026-02-28", "2026-02-01"));
        cases.add(inspected(Result.PASS, "on the day on which the ground was surveyed", "2026-06-01", "2026-03-01"));
        cases.add(inspected(Result.NOT_EVALUATED, "a day before the ground was surveyed", "2026-06-01", "2026-03-02"));
        cases.add(RuleCase.of("REC-02", Result.NOT_EVALUATED, "a unit that was measured a year in the future", Bases::row, sample -> {
            sample.project().setDate("2026-06-01");
            Bases.measure(sample.unit(0), 0);
            sample.unit(0).getMeasured().setDate("2027-05-18");
        }));
        cases.add(RuleCase.of("REC-02", Result.FAIL, "the thirtieth of February", Bases::row,
                sample -> sample.obstacleSurvey().setDate("2026-02-30")));
        cases.add(RuleCase.of("REC-02", Result.FAIL, "day before month", Bases::row, sample -> sample.project().setDate("02.01.2026")));
    }

    /** A row that was inspected on 1 March 2026, with the day of the project and that on which its ground was surveyed. */
    private static RuleCase inspected(Result result, String what, String projectDay, String groundDay) {
        return RuleCase.of("REC-02", result, "an inspection " + what, Bases::row, sample -> {
            sample.project().setDate(projectDay);
            ((RunwayEnd) sample.host()).setSiteProfileDate(groundDay);
            sample.aid().getInspections().add(inspection());
        });
    }

    private static void stage(Sample sample, Stage stage) {
        sample.at(stage);
        sample.units(unit -> unit.setMeasured(null));
        sample.aid().getInspections().clear();
    }
}
