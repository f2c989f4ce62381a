package slopewright.checks.internal;

import java.util.List;

import slopewright.checks.Findings;
import slopewright.checks.Severity;
import slopewright.standards.CitedValue;

/** Units give way when they are struck. */
public final class FrangibleRule extends AidRule {

    /** Made by the service loader. */
    public FrangibleRule() {
        super("UNIT-01", "Frangible mounting", "Every unit is frangibly mounted where the rule set requires it.", Severity.FAIL, ALL);
    }

    @Override
    void check(AidFacts facts, Findings findings) {
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
