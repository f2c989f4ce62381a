package slopewright.checks.internal;

import java.util.List;
import java.util.Locale;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.standards.CitedValue;

/** A row may lean to the side a little. */
public final class RowGradientRule extends AidRule {

    /** Made by the service loader. */
    public RowGradientRule() {
        super("ROW-12", "Lateral gradient of the row", "The lens levels of a row rise to the side by no more than the allowed gradient.",
                Severity.FAIL, ROWS);
    }

    @Override
    void check(AidFacts facts, Findings findings) {
        CitedValue limit = facts.value("lateral-gradient-percent");
        for (List<UnitAt> side : facts.sides()) {
            double percent = Math.abs(LensLine.of(side).gradient()) * 100;
            compare(findings, facts.aid(), Measure.atMost(percent, limit.value(), "%"), limit.citation(),
                    String.format(Locale.ROOT, "The row leans by %.2f %%; %.2f %% are allowed.", percent, limit.value()),
                    "Level the units.");
        }
    }
}
