package slopewright.checks.internal.data;

import java.util.List;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Families;

/** A family that nobody knows cannot be checked. Severity fail: none of its signals is judged. */
public final class KnownFamilyRule extends ProjectRule {
    /** Made by the service loader. */
    public KnownFamilyRule() {
        super("DATA-06", Severity.FAIL);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        for (AidEvaluation aid : evaluation.aids()) {
            String key = aid.aid().getFamilyKey();
            if (key == null || key.isBlank()) {
                outcomes.notEvaluated(aid.aid(), List.of(Message.of("missing.family")), Message.of("DATA-06.none"));
                continue;
            }
            outcomes.about(aid.aid()).met(aid.family().isPresent())
                    .saying(aid.family().isPresent() ? "known" : "unknown", Words.name(key))
                    .advising("choose", Words.list(Families.all().stream().map(Families::name).toList())).add();
        }
    }
}
