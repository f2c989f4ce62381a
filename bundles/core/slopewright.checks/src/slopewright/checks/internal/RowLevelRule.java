package slopewright.checks.internal;

import java.util.List;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.standards.CitedValue;

/** The lenses of a row stand at one level, or rise evenly. */
public final class RowLevelRule extends AidRule {

    /** Made by the service loader. */
    public RowLevelRule() {
        super("ROW-11", "Lens levels",
                "The lenses of a row differ in level by no more than the tolerance; where the rule set allows an even gradient, they"
                + " depart from it by"
                        + " no more.", Severity.FAIL, ROWS);
    }

    @Override
    void check(AidFacts facts, Findings findings) {
        CitedValue limit = facts.length("level-difference");
        boolean onePlane = facts.find("level-basis").filter(basis -> basis.value() == 1).isPresent();
        for (List<UnitAt> side : facts.sides()) {
            LensLine line = LensLine.of(side);
            double value = onePlane ? line.planeM() : Math.min(line.rangeM(), line.departureM());
            String compared = onePlane ? "The lenses depart by up to " + Words.mm(value) + " from one horizontal plane"
                    : line.rangeM() <= limit.value() ? "The lenses differ by up to " + Words.mm(value)
                            : "The lenses depart by up to " + Words.mm(value) + " from an even gradient";
            compare(findings, facts.aid(), Measure.atMost(SettingOut.length(value, limit.value()), limit.value(), "m"), limit.citation(),
                    compared + "; " + Words.mm(limit.value()) + " are allowed.", "Level the units.");
        }
    }
}
