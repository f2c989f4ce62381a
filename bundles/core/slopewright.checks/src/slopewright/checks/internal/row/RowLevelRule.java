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

/** The lenses of a row stand at one level, or rise evenly. */
public final class RowLevelRule extends AidRule {

    /** Made by the service loader. */
    public RowLevelRule() {
        super("ROW-11", Severity.FAIL, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        CitedValue limit = facts.length("level-difference");
        boolean onePlane = facts.find("level-basis").filter(basis -> basis.value() == 1).isPresent();
        for (List<UnitAt> side : facts.sides()) {
            LensLine line = LensLine.of(side);
            double value = onePlane ? line.planeM() : Math.min(line.rangeM(), line.departureM());
            String compared = onePlane ? "The lenses depart by up to " + Words.mm(value) + " from one horizontal plane"
                    : line.rangeM() <= limit.value() ? "The lenses differ by up to " + Words.mm(value)
                            : "The lenses depart by up to " + Words.mm(value) + " from an even gradient";
            compare(findings, facts.aid(), Measure.atMost(value, limit.value(), "m"), limit.citation(),
                    compared + "; " + Words.mm(limit.value()) + " are allowed.", "Level the units.");
        }
    }
}
