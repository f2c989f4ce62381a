package slopewright.checks.internal.equipment;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.model.Stage;
import slopewright.siting.ElementNames;

/**
 * The limits of the beam lie within the beam that the equipment has. A warning: the signal is missing where the layout promises it, and
 * nothing false is shown.
 */
public final class BeamLimitRule extends AidRule {
    /** Made by the service loader. */
    public BeamLimitRule() {
        super("EQUIP-11", Severity.WARNING);
    }

    @Override
    public Stage stage() {
        return Stage.SET_UP;
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        Double left = facts.aid().getBeamLeftLimitDeg();
        Double right = facts.aid().getBeamRightLimitDeg();
        if (left == null && right == null) {
            throw Stop.notApplicable(Message.of("EQUIP-11.no-limits"));
        }
        double most = Math.max(left == null ? 0 : Math.abs(left), right == null ? 0 : Math.abs(right));
        EquipmentType type = AidFacts.need(facts.aid().getEquipment(), Message.of("missing.equipment-type"));
        Argument name = ElementNames.of(type);
        double half = AidFacts.need(type.getBeamWidthDeg(), Message.of("missing.EQUIP-10", name)) / 2;
        outcomes.about(facts.aid()).measured(Measure.atMost(most, half, "deg"))
                .saying("compared", name, Words.degrees(half), Words.degrees(most)).advising("narrow").add();
    }
}
