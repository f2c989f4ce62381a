package slopewright.checks.internal.inspection;

import java.util.Optional;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Inspection;
import slopewright.model.Stage;
import slopewright.standards.CitedValue;

/**
 * The slope that was flown is the slope of the layout, within the tolerance for units in use. Severity fail: another slope has other
 * clearances.
 */
public final class InspectedAngleRule extends AidRule {
    /** Made by the service loader. */
    public InspectedAngleRule() {
        super("INSP-02", Severity.FAIL);
    }

    @Override
    public Stage stage() {
        return Stage.OPERATION;
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        Inspection inspection = Inspections.needed(facts);
        double flown = AidFacts.need(inspection.getOnSlopeAngleDeg(), Message.of("missing.inspected-angle"));
        double off = Angles.degToMinutes(Math.abs(flown - facts.slopeDeg()));
        Optional<CitedValue> limit = facts.find("operation-accuracy-min").or(() -> facts.find("reset-beyond-min"));
        if (limit.isEmpty()) {
            if (off > Angles.degToMinutes(Measure.ANGLE_DEG)) {
                throw Stop.missing(Message.of("missing.operation-accuracy"), Message.of("INSP-02.no-limit", Words.deg(flown),
                        Words.deg(facts.slopeDeg())));
            }
            outcomes.about(facts.aid()).met(true).saying("same", Words.deg(flown)).add();
            return;
        }
        outcomes.about(facts.aid()).measured(Measure.atMost(off, limit.get().value(), "min")).resting(limit.get())
                .saying("compared", Words.deg(flown), Words.deg(facts.slopeDeg()), Words.min(off), Words.min(limit.get().value()))
                .advising("reset").add();
    }
}
