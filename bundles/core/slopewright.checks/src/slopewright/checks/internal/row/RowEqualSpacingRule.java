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
import slopewright.standards.CitedValue;

/** The units of a row are equally spaced. */
public final class RowEqualSpacingRule extends AidRule {

    /** Made by the service loader. */
    public RowEqualSpacingRule() {
        super("ROW-05", Severity.FAIL, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        CitedValue tolerance = facts.length("unit-spacing-equality");
        for (List<UnitAt> side : facts.sides()) {
            if (side.size() < 3) {
                findings.notApplicable(facts.aid(), "Two units have one spacing.");
                continue;
            }
            double mean = Math.abs(side.get(side.size() - 1).rightM() - side.get(0).rightM()) / (side.size() - 1);
            double worst = 0;
            for (int i = 1; i < side.size(); i++) {
                worst = Math.max(worst, Math.abs(Math.abs(side.get(i).rightM() - side.get(i - 1).rightM()) - mean));
            }
            compare(findings, facts.aid(), Measure.atMost(worst, tolerance.value(), "m"),
                    tolerance.citation(),
                    "The spacings depart by up to " + Words.m(worst) + " from their mean of " + Words.m(mean) + "; the tolerance is "
                            + Words.m(tolerance.value()) + ".", "Space the units evenly.");
        }
    }
}
