package slopewright.checks.internal.row;

import java.util.Locale;
import java.util.Optional;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.model.AidSide;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** A row stands on the left unless that is impracticable. */
public final class RowSideRule extends AidRule {

    /** Made by the service loader. */
    public RowSideRule() {
        super("ROW-02", Severity.WARNING, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        if (!facts.atRunway()) {
            return;
        }
        CitedValue side = facts.value("side");
        boolean left = facts.units().stream().anyMatch(unit -> unit.rightM() < 0);
        boolean right = facts.units().stream().anyMatch(unit -> unit.rightM() >= 0);
        String stands = left && right ? "on both sides" : left ? "on the left" : "on the right";
        AidSide named = facts.aid().getSide();
        boolean asNamed = left == (named != AidSide.RIGHT) && right == (named != AidSide.LEFT);
        if (!asNamed) {
            findings.decide(facts.aid(), false, Optional.of(side.citation()), "The units stand " + stands + ", but the aid says "
                    + named.getName().toLowerCase(Locale.ROOT) + ". Correct the side or move the units.", Severity.FAIL);
            return;
        }
        String reason = facts.aid().getRemarks();
        boolean explained = reason != null && !reason.isBlank();
        findings.decide(facts.aid(), left, Optional.of(side.citation()), left ? "The units stand " + stands + "."
                : "The units stand on the right. " + (explained ? "The remarks of the aid give the reason; let the authority accept it."
                        : "Move them to the left, or state in the remarks of the aid why that is physically impracticable."),
                explained ? Severity.NOTE : severity());
    }
}
