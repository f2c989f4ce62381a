package slopewright.checks.internal.eye;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.geometry.Lengths;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Siting;
import slopewright.siting.Trait;
import slopewright.standards.CrossingHeightTable;

/**
 * The crossing height belongs to the height group of the aeroplanes; where the rule set has groups, they stand for wheel clearance.
 * Severity fail for that reason.
 */
public final class HeightGroupRule extends AidRule {
    /** Made by the service loader. */
    public HeightGroupRule() {
        super("EYE-03", Severity.FAIL, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        facts.end();
        CrossingHeightTable table = facts.rules().crossingHeight()
                .orElseThrow(() -> Stop.notApplicable(Message.of("EYE-03.no-groups", facts.rules().descriptor().name())));
        int number = AidFacts.need(facts.aid().getHeightGroup(), Message.of("missing.height-group"));
        CrossingHeightTable.Group group = table.group(number).orElseThrow(() -> Stop.missing(Message.of("missing.height-group-of-table"),
                Message.of("EYE-03.unknown-group", Words.count(number))));
        double wanted = Lengths.feetToMetres(group.crossingHeightFt());
        double least = wanted - Lengths.feetToMetres(group.belowFt());
        double most = wanted + Lengths.feetToMetres(group.aboveFt());
        Siting laid = facts.laid();
        outcomes.about(facts.aid()).measured(Measure.between(laid.mehtM(), least, most, "m")).citing(table.citation())
                .steps(MinimumEyeHeight.steps(laid))
                .saying("compared", Words.mFt(laid.mehtM()), Words.count(number), Words.mFt(least), Words.mFt(most)).advising("move").add();
    }
}
