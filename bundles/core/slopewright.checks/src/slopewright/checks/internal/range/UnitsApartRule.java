package slopewright.checks.internal.range;

import java.util.Comparator;
import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.Words;
import slopewright.siting.range.Separation;
import slopewright.standards.CitedValue;

/** Units that run together for the eye show no pattern. */
public final class UnitsApartRule extends AidRule {

    /** Made by the service loader. */
    public UnitsApartRule() {
        super("RANGE-02", Severity.NOTE);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        UsefulRange useful = new UsefulRange(facts);
        CitedValue range = useful.expected().stream().map(UsefulRange.Expected::range)
                .max(Comparator.comparingDouble(CitedValue::value)).orElseThrow();
        CitedValue clear = facts.common("range.clear-separation-min");
        CitedValue split = facts.common("range.resolution-min");
        Separation apart = useful.ofLayout().separation()
                .orElseThrow(() -> Stop.notApplicable("No two units of " + facts.familyName() + " must be told apart."));
        compare(findings, facts.aid(), Measure.atLeast(apart.clearRangeM(), range.value(), "m"),
                OutcomeCollector.weakest(List.of(range.citation(), clear.citation())), "The closest units look " + Words.m(apart.apparentGapM())
                        + " apart: clearly apart (" + Words.min(clear.value()) + ") up to " + UsefulRange.km(apart.clearRangeM())
                        + ", just split (" + Words.min(split.value()) + ") up to " + UsefulRange.km(apart.splitRangeM()) + "; "
                        + UsefulRange.km(range.value()) + " are expected.",
                "Space the units farther apart, or state the shorter range.");
    }
}
