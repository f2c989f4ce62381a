package slopewright.checks.internal.inspection;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Missing;
import slopewright.checks.internal.Stop;
import slopewright.evaluation.obstacles.SurveyDays;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Inspection;
import slopewright.model.Stage;
import slopewright.siting.ElementNames;

/**
 * An aid in use was inspected in flight, on a day no more than ten years before the project (own band) and by somebody. A warning: it is to
 * be cleared up whether it shows what was laid out.
 */
public final class InspectedRule extends AidRule {
    /** Made by the service loader. */
    public InspectedRule() {
        super("INSP-01", Severity.WARNING);
    }

    @Override
    public Stage stage() {
        return Stage.OPERATION;
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        Inspection inspection = Inspections.last(facts.aid()).orElseThrow(() -> Stop.missing(Message.of("missing.inspection",
                ElementNames.of(facts.aid()))));
        Missing missing = new Missing();
        missing.unless(isGiven(inspection.getDate()), "missing.inspection-date");
        missing.unless(isGiven(inspection.getPerson()), "missing.inspection-person");
        if (missing.names().isEmpty() && SurveyDays.isLongAgo(inspection.getDate(), facts.evaluation().project())) {
            throw Stop.missing(Message.of("missing.late-inspection", ElementNames.of(facts.aid())), Message.of("INSP-01.long-ago",
                    Words.name(inspection.getDate()), Words.count(SurveyDays.YEARS)));
        }
        missing.report(facts.aid(), outcomes, Message.of("INSP-01.inspected", Words.name(String.valueOf(inspection.getDate())),
                Words.name(String.valueOf(inspection.getPerson()))));
    }

    private static boolean isGiven(String text) {
        return text != null && !text.isBlank();
    }
}
