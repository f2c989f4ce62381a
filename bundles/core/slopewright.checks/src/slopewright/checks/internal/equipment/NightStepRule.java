package slopewright.checks.internal.equipment;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.model.Stage;
import slopewright.siting.ElementNames;
import slopewright.standards.CitedValue;

/**
 * The brightness at night lies between the lower and the upper night step of the rule set. A warning: a unit that dazzles, or is seen
 * late, still shows the right colour.
 */
public final class NightStepRule extends AidRule {
    /** Made by the service loader. */
    public NightStepRule() {
        super("EQUIP-12", Severity.WARNING);
    }

    @Override
    public Stage stage() {
        return Stage.SET_UP;
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue from = facts.value("night-step-from-percent");
        CitedValue to = facts.value("night-step-to-percent");
        EquipmentType type = AidFacts.need(facts.aid().getEquipment(), Message.of("missing.equipment-type"));
        Argument name = ElementNames.of(type);
        double step = AidFacts.need(type.getNightStepPercent(), Message.of("missing.EQUIP-12", name));
        outcomes.about(facts.aid()).measured(Measure.between(step, from.value(), to.value(), "%")).resting(from, to)
                .saying("compared", name, Words.percent(step), Words.percent(from.value()), Words.percent(to.value()))
                .advising("set").add();
    }
}
