package slopewright.checks.internal.data;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Rule;
import slopewright.checks.Severity;
import slopewright.checks.internal.Missing;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.model.Aerodrome;

/** Heights are differences of elevations, so all must count from the same named datum. */
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
    public void check(ProjectEvaluation context, OutcomeCollector findings) {
        Aerodrome aerodrome = context.project().getAerodrome();
        if (aerodrome != null && !context.aids().isEmpty()) {
            Missing missing = new Missing();
            missing.unless(aerodrome.getVerticalDatum() != null && !aerodrome.getVerticalDatum().isBlank(), "vertical datum");
            Missing.report(findings, aerodrome, missing.names(), "Elevations count from " + aerodrome.getVerticalDatum() + ".");
        }
    }
}
