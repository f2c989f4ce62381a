package slopewright.checks.internal.field;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.messages.Words;

/**
 * At the hover every unit still stands before the pilot: its light leads up to the hover point, and not past the unit. Severity fail: the
 * path of a unit that is passed reaches the ground before the hover point.
 */
public final class AheadAtHoverRule extends AidRule {
    private static final double LEAST_M = 0.01;

    /** Made by the service loader. */
    public AheadAtHoverRule() {
        super("FIELD-02", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        facts.helipad();
        for (UnitAt unit : facts.units()) {
            guarded(unit.unit(), outcomes, () -> outcomes.about(unit.unit())
                    .measured(Measure.atLeast(unit.alongM(), LEAST_M, "m").strict())
                    .saying(unit.alongM() >= LEAST_M ? "ahead" : "passed",
                            unit.name(), Words.margin(Math.abs(unit.alongM()))).advising("move").add());
        }
    }
}
