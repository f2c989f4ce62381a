package slopewright.checks.internal.circuit;

import java.util.List;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.messages.Argument;
import slopewright.messages.Words;
import slopewright.model.Circuit;
import slopewright.model.Stage;
import slopewright.siting.ElementNames;

/**
 * The fault of one circuit leaves an aid as a whole or puts it out as a whole: all its units hang on one circuit. A circuit may feed
 * several aids, and aids may take turns between circuits, but whole ones; the model says of no unit on which of two circuits it hangs,
 * so an aid on two is one of which a part may go out. Severity fail: two units of a row of four that are left burning may show the
 * pattern of another slope.
 */
public final class OneCircuitRule extends AidRule {
    /** Made by the service loader. */
    public OneCircuitRule() {
        super("CIRC-01", Severity.FAIL);
    }

    @Override
    public Stage stage() {
        return Stage.SET_UP;
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        List<Circuit> circuits = Circuits.of(facts);
        boolean isShared = circuits.size() == 1;
        Argument names = Words.list(circuits.stream().map(ElementNames::of).toList());
        outcomes.about(facts.aid()).met(isShared).saying(isShared ? "one" : "several", names).advising("join").add();
    }
}
