package slopewright.checks.internal.unit;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.siting.ElementNames;
import slopewright.standards.CitedValue;

/** The equipment can be set over the whole range that the rule set asks for. A warning: the settings in hand have a rule of their own. */
public final class EquipmentRangeRule extends AidRule {
    /** Made by the service loader. */
    public EquipmentRangeRule() {
        super("UNIT-04", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue from = facts.value("setting-range-from-deg");
        CitedValue to = facts.value("setting-range-to-deg");
        EquipmentType type = AidFacts.need(facts.aid().getEquipment(), Message.of("missing.equipment-type"));
        Argument name = ElementNames.of(type);
        double least = AidFacts.need(type.getMinSettingDeg(), Message.of("missing.lowest-setting-of", name));
        double most = AidFacts.need(type.getMaxSettingDeg(), Message.of("missing.highest-setting-of", name));
        Measure measure = Measure.worse(Measure.atMost(least, from.value(), "deg"), Measure.atLeast(most, to.value(), "deg"));
        outcomes.about(facts.aid()).measured(measure).resting(from, to)
                .saying("compared", name, Words.deg(least), Words.deg(most), Words.deg(from.value()), Words.deg(to.value()))
                .advising("choose").add();
    }
}
