package slopewright.checks.internal.data;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.Missing;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;

/** Heights are differences of elevations, so all must count from the same named datum. A warning: the name itself changes no number. */
public final class VerticalDatumRule extends ProjectRule {
    /** Made by the service loader. */
    public VerticalDatumRule() {
        super("DATA-12", Severity.WARNING);
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
