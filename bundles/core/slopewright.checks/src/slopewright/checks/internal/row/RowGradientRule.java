package slopewright.checks.internal.row;

import java.util.List;
import java.util.Locale;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** A row may lean to the side a little. */
public final class RowGradientRule extends AidRule {

    /** Made by the service loader. */
    public RowGradientRule() {
        super("ROW-12", Severity.FAIL, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        CitedValue limit = facts.value("lateral-gradient-percent");
        for (List<UnitAt> side : facts.sides()) {
            double percent = Math.abs(LensLine.of(side).gradient()) * 100;
            compare(findings, facts.aid(), Measure.atMost(percent, limit.value(), "%"), limit.citation(),
                    String.format(Locale.ROOT, "The row leans by %.2f %%; %.2f %% are allowed.", percent, limit.value()),
                    "Level the units.");
        }
    }
}
