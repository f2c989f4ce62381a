package slopewright.checks.internal;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.model.AidSide;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;

/** Compares the number of units with those that a family comes in. */
abstract class UnitCount extends AidRule {

    UnitCount(String id, Set<String> families) {
        super(id, "Number of units", "The indicator has a number of units that its family comes in.", Severity.FAIL, families);
    }

    @Override
    final void check(AidFacts facts, Findings findings) {
        IndicatorFamily family = Families.get(facts.family());
        int times = AidRule.ROWS.contains(facts.family()) && facts.aid().getSide() == AidSide.BOTH ? 2 : 1;
        List<Integer> counts = family.unitCounts().stream().map(count -> count * times).toList();
        int count = facts.units().size();
        int nearest = counts.stream().min(Comparator.comparingInt(one -> Math.abs(one - count))).orElseThrow();
        int wanted = facts.aid().getUnitCount() == null ? nearest : facts.aid().getUnitCount() * times;
        compare(findings, facts.aid(), new Measure(count, wanted, -Math.abs(count - wanted), ""), Optional.empty(),
                facts.familyName() + " comes in " + Words.list(counts.stream().map(String::valueOf).toList()) + " units; " + wanted
                        + " are wanted and the layout has " + count + ".", "Place the missing units or take out the surplus ones.",
                        severity());
    }
}
