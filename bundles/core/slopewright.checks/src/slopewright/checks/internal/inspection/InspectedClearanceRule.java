package slopewright.checks.internal.inspection;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.messages.Message;
import slopewright.model.Inspection;
import slopewright.model.Stage;

/**
 * In flight at the lowest on-slope signal the approach was clear of obstacles. Severity fail: who follows the signal may strike
 * something.
 */
public final class InspectedClearanceRule extends AidRule {
    /** Made by the service loader. */
    public InspectedClearanceRule() {
        super("INSP-05", Severity.FAIL);
    }

    @Override
    public Stage stage() {
        return Stage.OPERATION;
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        Inspection inspection = Inspections.needed(facts);
        boolean clear = AidFacts.need(inspection.getObstacleClear(), Message.of("missing.inspected-clearance"));
        outcomes.about(facts.aid()).met(clear).saying(clear ? "clear" : "not-clear").advising("withdraw").add();
    }
}
