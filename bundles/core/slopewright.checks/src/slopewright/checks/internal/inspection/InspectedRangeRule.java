package slopewright.checks.internal.inspection;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Inspection;
import slopewright.model.Stage;
import slopewright.standards.CitedValue;

/** The signal was of use from as far as the rule set expects by day. A warning: a signal that is seen late is still true. */
public final class InspectedRangeRule extends AidRule {
    /** Made by the service loader. */
    public InspectedRangeRule() {
        super("INSP-03", Severity.WARNING);
    }

    @Override
    public Stage stage() {
        return Stage.OPERATION;
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue expected = facts.length("useful-range-day");
        Inspection inspection = Inspections.needed(facts);
        double found = AidFacts.need(inspection.getUsableRangeM(), Message.of("missing.inspected-range"));
        outcomes.about(facts.aid()).measured(Measure.atLeast(found, expected.value(), "m")).resting(expected)
                .saying("compared", Words.km(found), Words.km(expected.value())).advising("raise").add();
    }
}
