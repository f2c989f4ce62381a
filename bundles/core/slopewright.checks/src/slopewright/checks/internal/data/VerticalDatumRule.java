package slopewright.checks.internal.data;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Rule;
import slopewright.checks.Severity;
import slopewright.checks.internal.Missing;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;

/** Heights are differences of elevations, so all must count from the same named datum. A warning: the name itself changes no number. */
public final class VerticalDatumRule implements Rule {
    @Override
    public String id() {
        return "DATA-12";
    }

    @Override
    public Severity severity() {
        return Severity.WARNING;
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        Aerodrome aerodrome = evaluation.project().getAerodrome();
        if (aerodrome != null && !evaluation.aids().isEmpty()) {
            Missing missing = new Missing();
            missing.unless(aerodrome.getVerticalDatum() != null && !aerodrome.getVerticalDatum().isBlank(), "missing.vertical-datum");
            missing.report(aerodrome, outcomes, Message.of("DATA-12.named", Words.name(aerodrome.getVerticalDatum())));
        }
    }
}
