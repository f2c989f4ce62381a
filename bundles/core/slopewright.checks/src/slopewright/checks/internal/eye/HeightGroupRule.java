package slopewright.checks.internal.eye;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.Words;
import slopewright.geometry.Lengths;
import slopewright.siting.Trait;
import slopewright.standards.CrossingHeightTable;

/** The crossing height belongs to the height group of the aeroplanes. */
public final class HeightGroupRule extends AidRule {

    /** Made by the service loader. */
    public HeightGroupRule() {
        super("EYE-03", Severity.FAIL, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        if (!facts.atRunway()) {
            return;
        }
        CrossingHeightTable table = facts.rules().crossingHeight()
                .orElseThrow(() -> Stop.notApplicable("Rule set " + facts.rules().key() + " has no height groups."));
        int number = AidFacts.need(facts.aid().getHeightGroup(), "height group of the aid");
        CrossingHeightTable.Group group = table.group(number)
                .orElseThrow(() -> Stop.missing("height group that is in the table", "Not evaluated: there is no height group " + number
                + "."));
        double wanted = Lengths.feetToMetres(group.crossingHeightFt());
        double least = wanted - Lengths.feetToMetres(group.belowFt());
        double most = wanted + Lengths.feetToMetres(group.aboveFt());
        double height = facts.laid().mehtM();
        Measure measure = height < wanted ? Measure.atLeast(height, least, "m") : Measure.atMost(height, most, "m");
        compare(findings, facts.aid(), measure, table.citation(), "The lowest on-course signal crosses the threshold at "
                + Words.mFt(height)
                + "; height group " + number + " has " + Words.mFt(least) + " to " + Words.mFt(most) + ".",
                "Move the indicator, or choose the right height group.");
    }
}
