package slopewright.checks.internal.data;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachType;
import slopewright.siting.ElementNames;

/**
 * Whether an approach is an instrument approach decides where the obstacle surface begins and how it spreads; one that is not stated is
 * neither. Severity fail, as it decides what is an obstacle; it can only be stated or not, so the rule is met or not evaluated.
 */
public final class ApproachTypeRule extends AidRule {
    /** Made by the service loader. */
    public ApproachTypeRule() {
        super("DATA-13", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        if (facts.host().getApproachType() != ApproachType.NOT_STATED) {
            outcomes.about(facts.aid()).met(true).saying("stated", ElementNames.of(facts.host())).add();
            return;
        }
        boolean matters = facts.atRunway() ? facts.rules().surface().isPresent() : facts.rules().heliportSurface().isPresent();
        if (!matters) {
            throw Stop.notApplicable(Message.of("DATA-13.no-matter", facts.rules().descriptor().name(),
                    Words.name(facts.rules().edition())));
        }
        throw Stop.missing(Message.of("missing.approach-type", ElementNames.of(facts.host())));
    }
}
