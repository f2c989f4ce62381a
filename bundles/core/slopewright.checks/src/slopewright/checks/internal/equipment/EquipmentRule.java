package slopewright.checks.internal.equipment;

import slopewright.checks.Cure;
import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.model.EquipmentType;
import slopewright.model.Stage;
import slopewright.siting.ElementNames;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/**
 * A number of the equipment type against one of the rule set. It asks from the set-up on: a design may be made before the type is
 * chosen.
 */
abstract class EquipmentRule extends AidRule {

    EquipmentRule(String id, Severity severity, Trait... needs) {
        super(id, severity, needs);
    }

    @Override
    public final Stage stage() {
        return Stage.SET_UP;
    }

    @Override
    public final Cure cure() {
        return Cure.ENTRY;
    }

    @Override
    public final void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue limit = limit(facts);
        EquipmentType type = AidFacts.need(facts.aid().getEquipment(), Message.of("missing.equipment-type"));
        Argument name = ElementNames.of(type);
        double value = AidFacts.need(number(facts, type), Message.of("missing." + id(), name)).doubleValue();
        outcomes.about(facts.aid()).measured(compare(value, limit.value())).resting(limit)
                .saying("compared", name, written(value), written(limit.value())).advising("choose").add();
    }

    /** Returns the limit; ends the rule where the rule set gives none. */
    abstract CitedValue limit(AidFacts facts);

    /** Returns the number of the type, null where it was not entered. */
    abstract Number number(AidFacts facts, EquipmentType type);

    /** Compares the number with the limit. */
    abstract Measure compare(double value, double limit);

    /** Writes the number or the limit. */
    abstract Argument written(double value);
}
