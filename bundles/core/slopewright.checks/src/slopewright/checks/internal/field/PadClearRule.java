package slopewright.checks.internal.field;

import java.util.List;
import java.util.Map;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.evaluation.PadArea;
import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Helipad;

/**
 * No unit stands on the FATO or in the safety area around it. The safety area is as much longer than the FATO as it is wider. How the FATO
 * lies may not be entered: then a unit inside of it along the approach is not met, one that is clear however it is turned is met, and
 * between the two nothing can be said. Severity fail: a helicopter that touches down short, long or beside strikes it.
 */
public final class PadClearRule extends AidRule {
    private static final Map<PadArea.Where, String> WORDS = Map.of(PadArea.Where.ON_FATO, "on-fato", PadArea.Where.IN_SAFETY_AREA,
            "in-safety-area", PadArea.Where.CLEAR, "clear");

    /** Made by the service loader. */
    public PadClearRule() {
        super("FIELD-01", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        Helipad pad = facts.helipad();
        AidFacts.need(pad.getFatoLengthM(), Message.of("missing.fato-length"));
        AidFacts.need(pad.getFatoWidthM(), Message.of("missing.fato-width"));
        AidFacts.need(pad.getSafetyAreaWidthM(), Message.of("missing.safety-area-width"));
        PadArea area = PadArea.of(pad).orElseThrow();
        double landingDeg = facts.evaluation().frame().orThrow().bearingDeg();
        for (UnitAt unit : facts.units()) {
            guarded(unit.unit(), outcomes, () -> {
                PadArea.Standing standing = area.standing(new FramePoint(unit.alongM(), unit.rightM(), 0), landingDeg);
                if (standing.where() == PadArea.Where.UNKNOWN) {
                    outcomes.notEvaluated(unit.unit(), List.of(Message.of("missing.fato-bearing")),
                            Message.of("FIELD-01.unknown-bearing", unit.name(), Words.margin(-standing.clearM())));
                    return;
                }
                outcomes.about(unit.unit()).measured(Measure.atLeast(standing.clearM(), 0, "m"))
                        .saying(WORDS.get(standing.where()), unit.name(), Words.margin(Math.abs(standing.outsideM())),
                                Words.m(area.aroundM()))
                        .advising("move").add();
            });
        }
    }
}
