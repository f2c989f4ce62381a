package slopewright.checks.internal;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Measure;
import slopewright.checks.Severity;
import slopewright.model.AidSide;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Trait;

/** Compares the number of units with those that a family comes in. */
public abstract class UnitCount extends AidRule {

    public UnitCount(String id, Trait trait) {
        super(id, Severity.FAIL, trait);
    }

    @Override
    public final void check(AidFacts facts, OutcomeCollector findings) {
        IndicatorFamily family = facts.indicator();
        int times = facts.indicator().has(Trait.ROW) && facts.aid().getSide() == AidSide.BOTH ? 2 : 1;
        List<Integer> counts = family.unitCounts().stream().map(count -> count * times).toList();
        int count = facts.units().size();
        int nearest = counts.stream().min(Comparator.comparingInt(one -> Math.abs(one - count))).orElseThrow();
        int wanted = facts.aid().getUnitCount() == null ? nearest : facts.aid().getUnitCount() * times;
        compare(findings, facts.aid(), new Measure(count, wanted, -Math.abs(count - wanted), "", 0), Optional.empty(),
                facts.familyName() + " comes in " + Words.list(counts.stream().map(String::valueOf).toList()) + " units; " + wanted
                        + " are wanted and the layout has " + count + ".", "Place the missing units or take out the surplus ones.",
                        severity());
    }
}
