package slopewright.checks.internal.data;

import java.util.List;
import java.util.Optional;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Rule;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;

/** A family that nobody knows can not be checked. */
public final class KnownFamilyRule implements Rule {

    @Override
    public String id() {
        return "DATA-06";
    }

    @Override
    public void check(ProjectEvaluation context, OutcomeCollector findings) {
        for (AidEvaluation subject : context.aids()) {
            String key = subject.aid().getFamilyKey();
            if (key == null) {
                findings.notEvaluated(subject.aid(), List.of("family"), "The aid names no family. Choose one.");
                continue;
            }
            boolean known = subject.family().isPresent();
            findings.decide(subject.aid(), known, Optional.empty(), known ? "The family " + key + " is known."
                    : "There is no family '" + key + "'. Choose one of "
                    + String.join(", ", Families.all().stream().map(IndicatorFamily::key).toList())
                            + ".", severity());
        }
    }
}
