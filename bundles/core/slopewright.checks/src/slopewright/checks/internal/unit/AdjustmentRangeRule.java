package slopewright.checks.internal.unit;

import java.util.Comparator;
import java.util.Optional;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.siting.ElementNames;
import slopewright.standards.CitedValue;

/**
 * Every setting can be set: one that cannot will not be that of the layout. Severity fail for that reason. Of a type that says one end of
 * its range nobody knows; the range of the rule set is not put in its place.
 */
public final class AdjustmentRangeRule extends AidRule {
    /** Made by the service loader. */
    public AdjustmentRangeRule() {
        super("UNIT-03", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        EquipmentType type = facts.aid().getEquipment();
        OutcomeCollector.Entry entry = outcomes.about(facts.aid());
        if (type != null && type.getMinSettingDeg() != null && type.getMaxSettingDeg() != null) {
            compare(facts, type.getMinSettingDeg(), type.getMaxSettingDeg(), Message.of("list", ElementNames.of(type)), entry);
            return;
        }
        Optional<CitedValue> from = facts.find("setting-range-from-deg");
        boolean half = type != null && (type.getMinSettingDeg() == null) != (type.getMaxSettingDeg() == null);
        if (half || from.isEmpty()) {
            throw Stop.missing(type == null ? Message.of("missing.equipment-type")
                    : Message.of("missing.adjustment-range", ElementNames.of(type)));
        }
        CitedValue to = facts.value("setting-range-to-deg");
        compare(facts, from.get().value(), to.value(), Message.of("UNIT-03.unit-of-rules"), entry.resting(from.get(), to));
    }

    private static void compare(AidFacts facts, double from, double to, Message whose, OutcomeCollector.Entry entry) {
        UnitAt worst = facts.units().stream()
                .min(Comparator.comparingDouble(unit -> Math.min(unit.settingDeg() - from, to - unit.settingDeg()))).orElseThrow();
        entry.measured(Measure.between(worst.settingDeg(), from, to, "deg"))
                .saying("compared", worst.name(), Words.deg(worst.settingDeg()), whose, Words.deg(from), Words.deg(to))
                .advising("choose").add();
    }
}
