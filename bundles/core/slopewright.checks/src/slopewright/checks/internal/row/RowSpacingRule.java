package slopewright.checks.internal.row;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Words;
import slopewright.siting.Trait;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;

/** The units keep their distance from each other. */
public final class RowSpacingRule extends AidRule {

    /** Made by the service loader. */
    public RowSpacingRule() {
        super("ROW-04", Severity.FAIL, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        RowLayouts layouts = RowLayouts.of(facts);
        for (List<UnitAt> side : facts.sides()) {
            double worst = 0;
            String where = "";
            double margin = Double.POSITIVE_INFINITY;
            Measure measure = null;
            Citation citation = null;
            for (int i = 1; i < side.size(); i++) {
                double gap = Math.abs(side.get(i).rightM() - side.get(i - 1).rightM());
                CitedValue wanted = layouts.nearestSpacing(gap).spacing();
                double least = facts.hasLength("unit-spacing-least") ? facts.length("unit-spacing-least").value()
                        : wanted.value() - facts.length("unit-spacing-tolerance").value();
                double most = facts.hasLength("unit-spacing-least") ? facts.length("unit-spacing").value()
                        : wanted.value() + facts.length("unit-spacing-tolerance").value();
                double value = gap;
                Measure one = value - least < most - value ? Measure.atLeast(value, least, "m") : Measure.atMost(value, most, "m");
                if (one.margin() < margin) {
                    margin = one.margin();
                    measure = one;
                    worst = gap;
                    where = side.get(i - 1).label() + " and " + side.get(i).label();
                    citation = facts.hasLength("unit-spacing-least") ? wanted.citation()
                            : OutcomeCollector.weakest(List.of(wanted.citation(), facts.length("unit-spacing-tolerance").citation()));
                }
            }
            if (measure != null) {
                compare(findings, facts.aid(), measure, citation, "Between " + where + " there are " + Words.m(worst) + "; the limit is "
                        + Words.m(measure.limit()) + ".", "Set the units at equal spacing within the limits.");
            }
        }
    }
}
