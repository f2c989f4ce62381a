package slopewright.checks.internal.eye;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.AeroplaneGroup;
import slopewright.siting.ElementNames;

/**
 * No aeroplane in regular use is led down a slope that is steeper than it may fly. The limit is that of the aeroplane, as it was entered.
 * Severity fail: an aeroplane that cannot hold the slope arrives too fast or leaves the signal.
 */
public final class GreatestSlopeRule extends AidRule {
    /** Made by the service loader. */
    public GreatestSlopeRule() {
        super("EYE-05", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        if (facts.host().getRegularGroups().isEmpty()) {
            if (facts.atRunway()) {
                throw Stop.missing(Message.of("missing.aeroplane-groups"));
            }
            throw Stop.notApplicable(Message.of("EYE-05.no-aeroplanes"));
        }
        double slope = facts.slopeDeg();
        for (AeroplaneGroup group : facts.host().getRegularGroups()) {
            guarded(facts.aid(), outcomes, () -> {
                Argument name = ElementNames.of(group);
                double most = AidFacts.need(group.getMaxSlopeDeg(), Message.of("missing.greatest-slope-of", name));
                outcomes.about(facts.aid()).measured(Measure.atMost(slope, most, "deg"))
                        .saying("compared", Words.deg(slope), name, Words.deg(most)).advising("flatten").add();
            });
        }
    }
}
