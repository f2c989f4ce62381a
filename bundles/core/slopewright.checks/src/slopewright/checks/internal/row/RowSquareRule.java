package slopewright.checks.internal.row;

import java.util.Comparator;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** A row stands square to the runway. */
public final class RowSquareRule extends AidRule {

    /** Made by the service loader. */
    public RowSquareRule() {
        super("ROW-13", Severity.FAIL, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        CitedValue limit = facts.length("bar-square-tolerance");
        double mean = facts.units().stream().mapToDouble(UnitAt::alongM).average().orElseThrow();
        UnitAt worst = facts.units().stream().max(Comparator.comparingDouble(unit -> Math.abs(unit.alongM() - mean))).orElseThrow();
        double off = Math.abs(worst.alongM() - mean);
        compare(findings, facts.aid(), Measure.atMost(off, limit.value(), "m"), limit.citation(),
                worst.label() + " stands " + Words.mm(off) + " off the line square to the centre line; " + Words.mm(limit.value())
                        + " are allowed.",
                "Bring the units into line.");
    }
}
