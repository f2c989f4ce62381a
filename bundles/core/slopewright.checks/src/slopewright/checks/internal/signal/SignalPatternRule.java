package slopewright.checks.internal.signal;

import java.util.List;
import java.util.Optional;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.evaluation.Attempt;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;
import slopewright.standards.CitedChoice;

/**
 * Each unit shows the colours and the rhythm of its family in their order from below, and together they say somewhere over the threshold or
 * the hover point that the pilot is on the slope. Severity fail: a pilot who sees another colour than the one that means too low flies into
 * what the colour should have told.
 */
public final class SignalPatternRule extends AidRule {
    /** Made by the service loader. */
    public SignalPatternRule() {
        super("SIG-01", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        Attempt<Siting> laid = facts.evaluation().siting();
        if (laid.isWrong()) {
            outcomes.about(facts.aid()).met(false).saying("no-slope", laid.reason().orElseThrow()).advising("correct").add();
        }
        List<UnitPlan> wanted = facts.wantedAtUnits().units();
        for (UnitAt unit : facts.units()) {
            guarded(unit.unit(), outcomes, () -> compare(facts, unit, wanted, outcomes));
        }
    }

    private static void compare(AidFacts facts, UnitAt unit, List<UnitPlan> wanted, OutcomeCollector outcomes) {
        SignalPattern expected = SignalPattern.of(wanted.stream().filter(plan -> plan.bar() == unit.bar()).findFirst()
                .orElseThrow(() -> Stop.missing(Message.of("missing.bar-of", unit.name()))).edges());
        SignalPattern shown = SignalPattern.of(unit);
        boolean joined = SignalPattern.isJoined(unit);
        boolean met = joined && expected.isShownBy(shown);
        Optional<CitedChoice> order = facts.rules().choice(facts.indicator().ruleKey() + ".sector-order");
        outcomes.about(unit.unit()).met(met).citing(order.map(CitedChoice::citation).stream().toList())
                .saying(name(met, joined, shown.lights().isEmpty()), unit.name(), shown.words(), expected.words(),
                        Words.name(facts.indicator().name()))
                .advising("correct").add();
    }

    private static String name(boolean met, boolean joined, boolean unlit) {
        if (met) {
            return unlit ? "unlit" : "right";
        }
        return unlit ? "none" : joined ? "wrong" : "broken";
    }
}
