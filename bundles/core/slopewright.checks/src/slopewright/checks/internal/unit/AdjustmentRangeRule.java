package slopewright.checks.internal.unit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Words;
import slopewright.model.EquipmentType;
import slopewright.model.util.Projects;
import slopewright.standards.Citation;

/** Every setting can be set. */
public final class AdjustmentRangeRule extends AidRule {

    /** Made by the service loader. */
    public AdjustmentRangeRule() {
        super("UNIT-03", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        Optional<EquipmentType> type = Optional.ofNullable(facts.aid().getEquipment());
        Optional<Double> least = type.map(EquipmentType::getMinSettingDeg);
        Optional<Double> most = type.map(EquipmentType::getMaxSettingDeg);
        boolean own = least.isPresent() && most.isPresent();
        if (!own && facts.find("setting-range-from-deg").isEmpty()) {
            throw Stop.missing("adjustment range of the equipment type");
        }
        double from = own ? least.orElseThrow() : facts.value("setting-range-from-deg").value();
        double to = own ? most.orElseThrow() : facts.value("setting-range-to-deg").value();
        String whose = own ? type.map(Projects::label).orElseThrow() : "a unit of the rule set";
        Optional<Citation> citation = own ? Optional.empty() : Optional.of(OutcomeCollector.weakest(
                List.of(facts.value("setting-range-from-deg").citation(), facts.value("setting-range-to-deg").citation())));
        UnitAt worst = facts.units().stream()
                .min(Comparator.comparingDouble(unit -> Math.min(unit.settingDeg() - from, to - unit.settingDeg()))).orElseThrow();
        double setting = worst.settingDeg();
        Measure measure = setting - from < to - setting ? Measure.atLeast(setting, from, "deg") : Measure.atMost(setting, to, "deg");
        compare(findings, facts.aid(), measure, citation, worst.label() + " is set to " + Words.deg(setting) + "; "
                + whose + " can be set from " + Words.deg(from) + " to " + Words.deg(to) + ".",
                "Choose another slope or another equipment type.", severity());
    }
}
