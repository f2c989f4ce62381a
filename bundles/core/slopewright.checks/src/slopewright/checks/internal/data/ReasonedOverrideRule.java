package slopewright.checks.internal.data;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.Missing;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Words;
import slopewright.model.Identified;
import slopewright.model.ValueConfirmation;
import slopewright.model.ValueOverride;

/** A changed or confirmed value needs a name and a reason, or nobody can defend it. A warning: the value itself is used and shown. */
public final class ReasonedOverrideRule extends ProjectRule {
    /** Made by the service loader. */
    public ReasonedOverrideRule() {
        super("DATA-10", Severity.WARNING);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        for (ValueOverride override : evaluation.project().getOverrides()) {
            report(outcomes, override, override.getReason(), "missing.reason", override.getPerson(), override.getValueKey());
        }
        for (ValueConfirmation confirmation : evaluation.project().getConfirmations()) {
            report(outcomes, confirmation, confirmation.getSource(), "missing.source", confirmation.getPerson(),
                    confirmation.getValueKey());
        }
    }

    private static void report(OutcomeCollector outcomes, Identified element, String why, String what, String person, String key) {
        Missing missing = new Missing();
        missing.unless(why != null && !why.isBlank(), what);
        missing.unless(person != null && !person.isBlank(), "missing.person");
        boolean whole = missing.names().isEmpty();
        outcomes.about(element).met(whole).saying(whole ? "whole" : "lacking", Words.name(key), Words.list(missing.names()))
                .advising("enter").add();
    }
}
