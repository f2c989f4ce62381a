package slopewright.checks.internal.range;

import java.util.ArrayList;
import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Words;
import slopewright.siting.range.RangeEstimate;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;

/** A light that is too weak guides nobody at the distance at which it should. */
public final class SeenRangeRule extends AidRule {

    /** Made by the service loader. */
    public SeenRangeRule() {
        super("RANGE-01", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        UsefulRange useful = new UsefulRange(facts);
        List<UsefulRange.Expected> expected = useful.expected();
        RangeEstimate estimate = useful.ofEquipment();
        CitedValue visibility = useful.visibility();
        List<String> words = new ArrayList<>();
        Measure worst = null;
        List<Citation> used = new ArrayList<>(List.of(visibility.citation()));
        for (UsefulRange.Expected one : expected) {
            double seen = estimate.rangeM(one.condition()).orElseThrow();
            words.add("from " + UsefulRange.km(seen) + " by " + one.condition().key() + " where " + UsefulRange.km(one.range().value())
                    + " are expected");
            Measure measure = Measure.atLeast(seen, one.range().value(), "m");
            worst = worst == null || measure.margin() < worst.margin() ? measure : worst;
            used.add(one.range().citation());
            used.add(facts.common("range.eye-illuminance-" + one.condition().key() + "-lx").citation());
        }
        used.add(facts.common("range.contrast-threshold-percent").citation());
        compare(findings, facts.aid(), worst, OutcomeCollector.weakest(used), "With " + Words.number(estimate.intensityCd().orElseThrow())
                + " cd and a visibility of " + UsefulRange.km(visibility.value()) + " it is estimated to be seen "
                + Words.list(words) + ".", "Choose equipment of a higher intensity, or state the shorter range.");
    }
}
