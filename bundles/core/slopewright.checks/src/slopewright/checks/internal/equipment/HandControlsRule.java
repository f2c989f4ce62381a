package slopewright.checks.internal.equipment;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Missing;
import slopewright.checks.internal.Stop;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.model.EquipmentType;
import slopewright.model.HandOrder;
import slopewright.model.PlateSense;
import slopewright.model.PlateZero;
import slopewright.model.SightHair;
import slopewright.model.Stage;
import slopewright.siting.ElementNames;

/**
 * What a hand turns, levels and sets at a portable unit is described: without it a card names an angle that nobody can find on the unit.
 * Severity fail: a plate that is read from the wrong zero turns the beam away, and a hair that is taken for another edge clears nothing.
 */
public final class HandControlsRule extends AidRule {
    /** Made by the service loader. */
    public HandControlsRule() {
        super("EQUIP-14", Severity.FAIL);
    }

    @Override
    public Stage stage() {
        return Stage.SET_UP;
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        if (!Boolean.TRUE.equals(facts.aid().getPortable())) {
            throw Stop.notApplicable(Message.of("EQUIP-14.not-portable"));
        }
        EquipmentType type = AidFacts.need(facts.aid().getEquipment(), Message.of("missing.equipment-type"));
        Argument name = ElementNames.of(type);
        Missing missing = new Missing();
        missing.unless(type.getPlateZero() != PlateZero.NOT_STATED, "missing.plate-zero", name);
        missing.unless(type.getPlateSense() != PlateSense.NOT_STATED, "missing.plate-sense", name);
        missing.unless(type.getPlateStepDeg() != null, "missing.plate-graduation", name);
        missing.unless(type.getSlopeScaleStepDeg() != null, "missing.slope-graduation", name);
        missing.unless(type.getBubbleAccuracyMinutes() != null, "missing.bubble-accuracy", name);
        missing.unless(type.getLowerHair() != SightHair.NOT_STATED, "missing.lower-hair", name);
        missing.unless(type.getUpperHair() != SightHair.NOT_STATED, "missing.upper-hair", name);
        missing.unless(type.getHandOrder() != HandOrder.NOT_STATED, "missing.hand-order", name);
        missing.report(facts.aid(), outcomes, Message.of("EQUIP-14.described", name));
    }
}
