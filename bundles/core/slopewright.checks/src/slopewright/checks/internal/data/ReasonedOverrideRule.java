package slopewright.checks.internal.data;

import java.util.Optional;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Rule;
import slopewright.checks.Severity;
import slopewright.checks.internal.Missing;
import slopewright.checks.internal.Words;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.model.Identified;
import slopewright.model.ValueConfirmation;
import slopewright.model.ValueOverride;

/** A changed or confirmed value needs a name and a reason, or nobody can defend it. */
public final class ReasonedOverrideRule implements Rule {

    @Override
    public String id() {
        return "DATA-10";
    }

    @Override
    public Severity severity() {
        return Severity.WARNING;
    }

    @Override
    public void check(ProjectEvaluation context, OutcomeCollector findings) {
        for (ValueOverride override : context.project().getOverrides()) {
            report(findings, override, override.getReason(), "reason", override.getPerson(), override.getValueKey());
        }
        for (ValueConfirmation confirmation : context.project().getConfirmations()) {
            report(findings, confirmation, confirmation.getSource(), "source", confirmation.getPerson(), confirmation.getValueKey());
        }
    }

    private void report(OutcomeCollector findings, Identified element, String why, String what, String person, String key) {
        Missing missing = new Missing();
        missing.unless(why != null && !why.isBlank(), what);
        missing.unless(person != null && !person.isBlank(), "person");
        boolean whole = missing.names().isEmpty();
        findings.decide(element, whole, Optional.empty(), whole ? "The entry for " + key + " gives " + what + " and person."
                : "The entry for " + key + " gives no " + Words.list(missing.names()) + ". Enter it; reports print it.", severity());
    }
}
