package slopewright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import slopewright.evaluation.ReadBacks;
import slopewright.model.Identified;
import slopewright.model.ReadBack;
import slopewright.model.Stage;
import slopewright.model.util.Ids;

/** Cases of the rules about read-backs: no number of a document decides, a seal holds or does not. */
final class ReadBackCases {
    private ReadBackCases() {
    }

    static List<RuleCase> all() {
        List<RuleCase> cases = new ArrayList<>();
        cases.add(RuleCase.of("REC-03", null, "nothing was read back", Bases::row, Sample::unchanged));
        add(cases, "REC-03", Result.PASS, "as read", Sample::unchanged);
        add(cases, "REC-03", Result.NOT_EVALUATED, "a setting is a printed digit off",
                sample -> sample.unit(0).setSettingDeg(sample.unit(0).getSettingDeg() + 0.01));
        add(cases, "REC-03", Result.NOT_EVALUATED, "an entry is gone", sample -> sample.unit(0).setSettingDeg(null));
        add(cases, "REC-03", Result.NOT_EVALUATED, "an element is gone", sample -> sample.project().getAerodrome().getObstacleSurveys()
                .clear());
        add(cases, "REC-03", Result.NOT_EVALUATED, "another name is put to it", sample -> first(sample).setPerson("C. Cole"));
        add(cases, "REC-03", Result.NOT_EVALUATED, "another day is put to it", sample -> first(sample).setDate("2026-01-05"));
        add(cases, "REC-03", Result.NOT_EVALUATED, "no seal", sample -> first(sample).setSha256(null));
        add(cases, "REC-03", Result.FAIL, "no name", sample -> first(sample).setPerson(" "));
        add(cases, "REC-03", Result.FAIL, "no day", sample -> first(sample).setDate(null));
        add(cases, "REC-03", Result.FAIL, "no day of the calendar", sample -> first(sample).setDate("2026-02-30"));
        add(cases, "REC-03", Result.FAIL, "no letter in the name", sample -> first(sample).setPerson("--"));
        add(cases, "REC-03", Result.FAIL, "by the author without the point", sample -> sample.project().setAuthor("B Bole"));
        add(cases, "REC-03", Result.FAIL, "by the author, surname first", sample -> sample.project().setAuthor("Bole, B."));
        add(cases, "REC-03", Result.NOT_EVALUATED, "no author", sample -> sample.project().setAuthor(null));
        add(cases, "REC-03", Result.NOT_EVALUATED, "a project without a date", sample -> sample.project().setDate(null));
        add(cases, "REC-03", Result.NOT_EVALUATED, "a project of no day of the calendar", sample -> sample.project().setDate("2026-02-30"));
        add(cases, "REC-03", Result.NOT_EVALUATED, "the project was dated back", sample -> sample.project().setDate("2026-01-05"));
        add(cases, "REC-03", Result.PASS, "the project was dated anew", sample -> sample.project().setDate("2026-03-01"));
        add(cases, "REC-03", Result.NOT_EVALUATED, "read after the project", sample -> read(sample, sample.aid(), "2099-01-01"));
        add(cases, "REC-03", Result.NOT_EVALUATED, "read before anything was surveyed", sample -> read(sample, sample.aid(), "1900-01-01"));
        add(cases, "REC-03", Result.FAIL, "read before its own survey", sample -> read(sample, sample.obstacleSurvey(), "2025-12-31"));
        add(cases, "REC-03", Result.PASS, "read on the day of its survey", sample -> read(sample, sample.obstacleSurvey(), "2026-01-01"));
        add(cases, "REC-03", Result.NOT_EVALUATED, "another rule set", sample -> sample.project().setRuleSetKey("icao:9th"));
        add(cases, "REC-03", Result.NOT_EVALUATED, "another datum", sample -> sample.aerodrome().setVerticalDatum("another datum"));
        add(cases, "REC-03", Result.FAIL, "by the author", sample -> sample.project().setAuthor("b. bole "));
        add(cases, "REC-03", Result.PASS, "by somebody else than the author", sample -> sample.project().setAuthor("A. Ames"));
        add(cases, "REC-03", Result.FAIL, "twice", sample -> sample.project().getReadBacks().get(1)
                .setElementId(first(sample).getElementId()));
        cases.add(RuleCase.of("REC-04", Result.NOT_EVALUATED, "nothing was read back", Bases::row, Sample::unchanged));
        add(cases, "REC-04", Result.PASS, "all", Sample::unchanged);
        add(cases, "REC-04", Result.NOT_EVALUATED, "all but one", sample -> sample.project().getReadBacks().remove(0));
        return cases;
    }

    private static ReadBack first(Sample sample) {
        return sample.project().getReadBacks().get(0);
    }

    private static void read(Sample sample, Identified element, String date) {
        ReadBacks.keep(sample.project(), List.of(element), "B. Bole", date);
    }

    private static void add(List<RuleCase> cases, String rule, Result expected, String name, Consumer<Sample> change) {
        cases.add(RuleCase.of(rule, expected, name, Bases::row, sample -> {
            sample.project().setAuthor("C. Ames");
            sample.project().setDate("2026-01-06");
            sample.project().setStage(Stage.OPERATION);
            Ids.assign(sample.project());
            ReadBacks.keep(sample.project(), ReadBacks.elements(sample.project()), "B. Bole", "2026-01-06");
            change.accept(sample);
        }));
    }
}
