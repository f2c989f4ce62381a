package slopewright.checks.internal;

import java.util.List;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.standards.CitedValue;

/** The units of a row are equally spaced. */
public final class RowEqualSpacingRule extends AidRule {

    /** Made by the service loader. */
    public RowEqualSpacingRule() {
        super("ROW-05", "Equal spacing", "No distance between neighbouring units differs from their mean by more than the tolerance.",
                Severity.FAIL,
                ROWS);
    }

    @Override
    void check(AidFacts facts, Findings findings) {
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
            compare(findings, facts.aid(), Measure.atMost(SettingOut.length(worst, tolerance.value()), tolerance.value(), "m"),
                    tolerance.citation(),
                    "The spacings depart by up to " + Words.m(worst) + " from their mean of " + Words.m(mean) + "; the tolerance is "
                            + Words.m(tolerance.value()) + ".", "Space the units evenly.");
        }
    }
}
