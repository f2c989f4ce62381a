package slopewright.checks.internal;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.geometry.Lengths;
import slopewright.standards.CrossingHeightTable;

/** The crossing height belongs to the height group of the aeroplanes. */
public final class HeightGroupRule extends AidRule {

    /** Made by the service loader. */
    public HeightGroupRule() {
        super("EYE-03", "Crossing height of the height group",
                "The height of the lowest on-course signal over the threshold lies within the tolerance of the height group.",
                Severity.FAIL, ROWS);
    }

    @Override
    void check(AidFacts facts, Findings findings) {
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
        double height = SettingOut.height(SettingOut.height(facts.laid().eyeHeightM(), least), most);
        Measure measure = height < wanted ? Measure.atLeast(height, least, "m") : Measure.atMost(height, most, "m");
        compare(findings, facts.aid(), measure, table.citation(), "The lowest on-course signal crosses the threshold at "
                + Words.mFt(height)
                + "; height group " + number + " has " + Words.mFt(least) + " to " + Words.mFt(most) + ".",
                "Move the indicator, or choose the right height group.");
    }
}
