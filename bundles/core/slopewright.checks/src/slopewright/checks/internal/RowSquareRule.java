package slopewright.checks.internal;

import java.util.Comparator;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.standards.CitedValue;

/** A row stands square to the runway. */
public final class RowSquareRule extends AidRule {

    /** Made by the service loader. */
    public RowSquareRule() {
        super("ROW-13", "Row square to the runway", "The units of a row stand on one line square to the centre line, within the tolerance.",
                Severity.FAIL,
                ROWS);
    }

    @Override
    void check(AidFacts facts, Findings findings) {
        CitedValue limit = facts.length("bar-square-tolerance");
        double mean = facts.units().stream().mapToDouble(UnitAt::alongM).average().orElseThrow();
        UnitAt worst = facts.units().stream().max(Comparator.comparingDouble(unit -> Math.abs(unit.alongM() - mean))).orElseThrow();
        double off = Math.abs(worst.alongM() - mean);
        compare(findings, facts.aid(), Measure.atMost(SettingOut.length(off, limit.value()), limit.value(), "m"), limit.citation(),
                worst.label() + " stands " + Words.mm(off) + " off the line square to the centre line; " + Words.mm(limit.value())
                        + " are allowed.",
                "Bring the units into line.");
    }
}
