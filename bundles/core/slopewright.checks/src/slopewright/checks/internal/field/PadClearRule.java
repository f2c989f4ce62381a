package slopewright.checks.internal.field;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Helipad;

/**
 * No unit stands on the FATO or in the safety area around it. The safety area is as much longer than the FATO as it is wider. How the FATO
 * lies is not known to a project: a unit inside of it along the approach is not met, one that is clear however it is turned is met, and
 * between the two nothing can be said. Severity fail: a helicopter that touches down short, long or beside strikes it.
 */
public final class PadClearRule extends AidRule {
    /** Made by the service loader. */
    public PadClearRule() {
        super("FIELD-01", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        Helipad pad = facts.helipad();
        double length = AidFacts.need(pad.getFatoLengthM(), Message.of("missing.fato-length")) / 2;
        double width = AidFacts.need(pad.getFatoWidthM(), Message.of("missing.fato-width")) / 2;
        double safety = AidFacts.need(pad.getSafetyAreaWidthM(), Message.of("missing.safety-area-width")) / 2;
        double around = Math.max(0, safety - width);
        for (UnitAt unit : facts.units()) {
            guarded(unit.unit(), outcomes, () -> {
                double outside = outsideM(unit, length, width);
                double clear = outsideM(unit, length + around, width + around);
                double turned = Math.hypot(unit.alongM(), unit.rightM()) - Math.hypot(length + around, width + around);
                if (clear >= 0 && turned < 0) {
                    outcomes.notEvaluated(unit.unit(), List.of(Message.of("missing.fato-bearing")),
                            Message.of("FIELD-01.unknown-bearing", unit.name(), Words.m(-turned)));
                    return;
                }
                String where = outside <= 0 ? "on-fato" : outside < around ? "in-safety-area" : "clear";
                outcomes.about(unit.unit()).measured(Measure.atLeast(turned < 0 ? clear : turned, 0, "m"))
                        .saying(where, unit.name(), Words.m(Math.abs(outside)), Words.m(around)).advising("move").add();
            });
        }
    }

    /** Returns how far a unit stands outside a rectangle, metres: along or across, whichever is more; negative inside. */
    private static double outsideM(UnitAt unit, double halfLengthM, double halfWidthM) {
        return Math.max(Math.abs(unit.alongM()) - halfLengthM, Math.abs(unit.rightM()) - halfWidthM);
    }
}
