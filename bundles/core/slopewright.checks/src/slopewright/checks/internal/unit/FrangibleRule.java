package slopewright.checks.internal.unit;

import java.util.List;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Words;
import slopewright.standards.CitedValue;

/** Units give way when they are struck. */
public final class FrangibleRule extends AidRule {

    /** Made by the service loader. */
    public FrangibleRule() {
        super("UNIT-01", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        CitedValue required = facts.value("frangible");
        List<String> unknown = facts.units().stream().filter(unit -> unit.unit().getFrangible() == null).map(UnitAt::label).toList();
        if (!unknown.isEmpty()) {
            throw Stop.missing("statement whether " + Words.list(unknown) + (unknown.size() == 1 ? " is" : " are") + " frangible");
        }
        List<String> rigid = facts.units().stream().filter(unit -> !unit.unit().getFrangible()).map(UnitAt::label).toList();
        decide(findings, facts.aid(), rigid.isEmpty(), required.citation(), rigid.isEmpty() ? "All units are frangible."
                : Words.list(rigid) + (rigid.size() == 1 ? " is" : " are") + " not frangible.", "Mount every unit frangibly.");
    }
}
