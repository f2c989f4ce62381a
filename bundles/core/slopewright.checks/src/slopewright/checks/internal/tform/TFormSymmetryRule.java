package slopewright.checks.internal.tform;

import java.util.Comparator;
import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** A T form is the same on both sides. */
public final class TFormSymmetryRule extends AidRule {

    /** Made by the service loader. */
    public TFormSymmetryRule() {
        super("TF-07", Severity.FAIL, Trait.LEGS, Trait.MIRRORED);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        CitedValue tolerance = facts.length("leg-to-edge-tolerance");
        List<List<UnitAt>> sides = facts.sides();
        if (sides.size() != 2 || sides.get(0).size() != sides.get(1).size()) {
            decide(findings, facts.aid(), false, tolerance.citation(), "The sides do not have the same number of units.",
                    "Place the units on both sides; the form on one side is the abbreviated one.");
            return;
        }
        Comparator<UnitAt> order = Comparator.comparingInt(UnitAt::bar).thenComparingDouble(UnitAt::alongM)
                .thenComparingDouble(unit -> Math.abs(unit.rightM()));
        List<UnitAt> left = sides.get(0).stream().sorted(order).toList();
        List<UnitAt> right = sides.get(1).stream().sorted(order).toList();
        double worst = -1;
        String which = "";
        for (int i = 0; i < left.size(); i++) {
            double off = Math.abs(Math.abs(left.get(i).rightM()) - Math.abs(right.get(i).rightM()));
            if (off > worst) {
                worst = off;
                which = left.get(i).label() + " and " + right.get(i).label();
            }
        }
        compare(findings, facts.aid(), Measure.atMost(worst, tolerance.value(), "m"),
                tolerance.citation(),
                which + " differ by " + Words.m(worst) + " in their distance from the centre line; " + Words.m(tolerance.value())
                        + " are allowed.", "Shift both sides alike.");
    }
}
