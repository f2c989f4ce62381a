package slopewright.checks.internal.unit;

import java.util.List;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.standards.CitedChoice;

/** Units give way when they are struck: one that does not wrecks the aeroplane. Severity fail for that reason. */
public final class FrangibleRule extends AidRule {
    /** Made by the service loader. */
    public FrangibleRule() {
        super("UNIT-01", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedChoice required = facts.choice("frangible");
        if (!required.isYes()) {
            throw facts.none(required.key());
        }
        List<Argument> unknown = facts.units().stream().filter(unit -> unit.unit().getFrangible() == null).map(UnitAt::name).toList();
        if (!unknown.isEmpty()) {
            throw Stop.missing(Message.of("missing.frangible", Words.list(unknown)));
        }
        List<Argument> rigid = facts.units().stream().filter(unit -> !unit.unit().getFrangible()).map(UnitAt::name).toList();
        outcomes.about(facts.aid()).met(rigid.isEmpty()).citing(required.citation())
                .saying(rigid.isEmpty() ? "all" : "rigid", Words.list(rigid)).advising("mount").add();
    }
}
