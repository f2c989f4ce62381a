package slopewright.checks.internal.sector;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.siting.ElementNames;
import slopewright.standards.CitedValue;

/** A portable unit works over the whole range of its battery. A warning: a unit that goes out shows nothing, and nothing false. */
public final class PortableSupplyRule extends AidRule {
    /** Made by the service loader. */
    public PortableSupplyRule() {
        super("BOX-08", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        if (!Boolean.TRUE.equals(facts.aid().getPortable())) {
            throw Stop.notApplicable(Message.of("BOX-08.not-portable"));
        }
        CitedValue from = facts.common("portable.supply-from-v");
        CitedValue to = facts.common("portable.supply-to-v");
        EquipmentType type = AidFacts.need(facts.aid().getEquipment(), Message.of("missing.equipment-type"));
        Argument name = ElementNames.of(type);
        double least = AidFacts.need(type.getMinVoltageV(), Message.of("missing.lowest-voltage-of", name));
        double most = AidFacts.need(type.getMaxVoltageV(), Message.of("missing.highest-voltage-of", name));
        Measure measure = Measure.worse(Measure.atMost(least, from.value(), "V"), Measure.atLeast(most, to.value(), "V"));
        outcomes.about(facts.aid()).measured(measure).resting(from, to)
                .saying("compared", name, volts(least), volts(most), volts(from.value()), volts(to.value())).advising("choose").add();
    }

    private static Argument volts(double volts) {
        return Words.quantity(volts, Notation.VOLTS);
    }
}
