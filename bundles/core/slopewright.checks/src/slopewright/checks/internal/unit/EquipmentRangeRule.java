package slopewright.checks.internal.unit;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Words;
import slopewright.model.EquipmentType;
import slopewright.model.util.Projects;
import slopewright.standards.CitedValue;

/** The equipment can be set over the whole range that the rule set asks for. */
public final class EquipmentRangeRule extends AidRule {

    /** Made by the service loader. */
    public EquipmentRangeRule() {
        super("UNIT-04", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        CitedValue from = facts.value("setting-range-from-deg");
        CitedValue to = facts.value("setting-range-to-deg");
        EquipmentType type = AidFacts.need(facts.aid().getEquipment(), "equipment type");
        double least = AidFacts.need(type.getMinSettingDeg(), "lowest setting of " + Projects.label(type));
        double most = AidFacts.need(type.getMaxSettingDeg(), "highest setting of " + Projects.label(type));
        Measure measure = from.value() - least < most - to.value() ? Measure.atMost(least, from.value(), "deg")
                : Measure.atLeast(most, to.value(), "deg");
        compare(findings, facts.aid(), measure, OutcomeCollector.weakest(List.of(from.citation(), to.citation())),
                Projects.label(type) + " can be set from " + Words.deg(least) + " to " + Words.deg(most) + "; " + Words.deg(from.value())
                        + " to "
                        + Words.deg(to.value()) + " are required.", "Choose another equipment type.");
    }
}
