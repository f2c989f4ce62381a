package slopewright.checks.internal.data;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.obstacles.SurveyDays;
import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.Project;
import slopewright.siting.site.CoordinateBasis;

/**
 * Coordinates on WGS 84 hold for a day, since the ground moves there by two to seven centimetres a year; without their epoch whoever sets
 * out from them is off by what the plate moved since. A reference that is fixed to a plate, a country or local marks needs none, and
 * neither does a portable unit, which is put up beside what it serves. A warning: a whole site moves together, so no distance of it
 * changes.
 */
public final class CoordinateEpochRule extends ProjectRule {
    /** An epoch is written to a tenth of a year. */
    private static final double ROUNDED_YEARS = 0.1;

    /** Made by the service loader. */
    public CoordinateEpochRule() {
        super("DATA-67", Severity.WARNING);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        Aerodrome aerodrome = evaluation.project().getAerodrome();
        boolean setOut = evaluation.aids().stream().anyMatch(aid -> !Boolean.TRUE.equals(aid.aid().getPortable()));
        if (aerodrome != null && setOut) {
            AidRule.guarded(aerodrome, outcomes, () -> check(evaluation.project(), aerodrome, outcomes));
        }
    }

    private static void check(Project project, Aerodrome aerodrome, OutcomeCollector outcomes) {
        CoordinateBasis basis = CoordinateBasis.of(aerodrome);
        Optional<Double> day = SurveyDays.date(project.getDate()).map(CoordinateEpochRule::year);
        if (basis.epoch().isPresent() && day.filter(latest -> basis.epoch().get() > latest + ROUNDED_YEARS).isPresent()) {
            outcomes.about(aerodrome).met(false).saying("later", Words.quantity(basis.epoch().get(), Notation.YEAR),
                    Words.quantity(day.get(), Notation.YEAR)).advising("correct").add();
        } else if (basis.epoch().isPresent()) {
            outcomes.about(aerodrome).met(true).saying("named", Words.name(basis.reference()), Words.quantity(basis.epoch().get(),
                    Notation.YEAR)).add();
        } else if (basis.movesWithTime()) {
            List<Message> missing = List.of(Message.of("missing.coordinate-epoch"));
            outcomes.notEvaluated(aerodrome, missing, Message.of("DATA-67.moves", Words.name(basis.reference())));
        } else {
            outcomes.notApplicable(aerodrome, Message.of("DATA-67.fixed", Words.name(basis.reference())));
        }
    }

    private static double year(LocalDate day) {
        return day.getYear() + (day.getDayOfYear() - 1.0) / day.lengthOfYear();
    }
}
