package slopewright.checks.internal.equipment;

import slopewright.checks.Cure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.evaluation.FamilyEquipment;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.model.Stage;
import slopewright.siting.ElementNames;

/**
 * The equipment type is one for the family of the aid. A failure: a unit of another family shows other colours at other angles than the
 * pilot was told to read, whatever else is right.
 */
public final class EquipmentFamilyRule extends AidRule {
    /** Made by the service loader. */
    public EquipmentFamilyRule() {
        super("EQUIP-01", Severity.FAIL);
    }

    @Override
    public Stage stage() {
        return Stage.SET_UP;
    }

    @Override
    public Cure cure() {
        return Cure.ENTRY;
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        EquipmentType type = AidFacts.need(facts.aid().getEquipment(), Message.of("missing.equipment-type"));
        Argument name = ElementNames.of(type);
        String key = AidFacts.need(type.getFamilyKey(), Message.of("missing.EQUIP-01", name));
        boolean same = FamilyEquipment.serves(type, facts.indicator());
        outcomes.about(facts.aid()).met(same).saying(same ? "same" : "other", name, Words.name(key), facts.familyName())
                .advising("choose").add();
    }
}
