package slopewright.checks.internal.sector;

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

/** A portable unit works over the whole range of its battery. */
public final class PortableSupplyRule extends AidRule {

    /** Made by the service loader. */
    public PortableSupplyRule() {
        super("BOX-08", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        if (!Boolean.TRUE.equals(facts.aid().getPortable())) {
            return;
        }
        CitedValue from = facts.common("portable.supply-from-v");
        CitedValue to = facts.common("portable.supply-to-v");
        EquipmentType type = AidFacts.need(facts.aid().getEquipment(), "equipment type");
        double least = AidFacts.need(type.getMinVoltageV(), "lowest voltage of " + Projects.label(type));
        double most = AidFacts.need(type.getMaxVoltageV(), "highest voltage of " + Projects.label(type));
        Measure measure = from.value() - least < most - to.value() ? Measure.atMost(least, from.value(), "V")
                : Measure.atLeast(most, to.value(), "V");
        compare(findings, facts.aid(), measure, OutcomeCollector.weakest(List.of(from.citation(), to.citation())), Projects.label(type)
                + " works from "
                + Words.number(least) + " V to " + Words.number(most) + " V; a battery gives " + Words.number(from.value()) + " V to "
                + Words.number(to.value()) + " V.", "Choose another unit or supply.");
    }
}
