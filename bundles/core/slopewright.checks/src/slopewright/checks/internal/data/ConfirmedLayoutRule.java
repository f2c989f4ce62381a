package slopewright.checks.internal.data;

import java.util.List;

import slopewright.checks.Cure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.messages.Words;
import slopewright.siting.ElementNames;
import slopewright.siting.ValueNames;
import slopewright.standards.Citation;

/**
 * Every value on which a layout rests was read in its source or is confirmed, whether or not it decides the outcome of another rule. A
 * warning: the layout stands, but nobody vouches for the value, so that no door may call the whole met.
 */
public final class ConfirmedLayoutRule extends AidRule {
    /** Made by the service loader. */
    public ConfirmedLayoutRule() {
        super("DATA-65", Severity.WARNING);
    }

    @Override
    public Cure cure() {
        return Cure.ENTRY;
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        facts.laid();
        List<Citation> resting = facts.evaluation().restsOn().stream()
                .filter(citation -> citation.provenance().needsConfirmation()).toList();
        List<Citation> open = resting.stream().filter(Citation::toConfirm).toList();
        outcomes.about(facts.aid()).met(true).citing(resting).saying(open.isEmpty() ? "confirmed" : "open", ElementNames.of(facts.aid()),
                Words.list(open.stream().map(Citation::key).distinct().map(ValueNames::of).toList())).add();
    }
}
