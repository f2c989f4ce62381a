package slopewright.checks.internal.equipment;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Missing;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.model.Stage;
import slopewright.siting.ElementNames;

/** What is entered about the equipment names where it comes from. A warning: numbers without a source may be right. */
public final class EquipmentSourceRule extends AidRule {
    /** Made by the service loader. */
    public EquipmentSourceRule() {
        super("EQUIP-13", Severity.WARNING);
    }

    @Override
    public Stage stage() {
        return Stage.SET_UP;
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        EquipmentType type = AidFacts.need(facts.aid().getEquipment(), Message.of("missing.equipment-type"));
        Argument name = ElementNames.of(type);
        Missing missing = new Missing();
        missing.unless(type.getDataSource() != null && !type.getDataSource().isBlank(), "missing.EQUIP-13", name);
        missing.report(facts.aid(), outcomes, Message.of("EQUIP-13.sourced", name, Words.name(String.valueOf(type.getDataSource()))));
    }
}
