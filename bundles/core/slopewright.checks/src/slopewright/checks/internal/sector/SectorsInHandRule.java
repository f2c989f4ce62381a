package slopewright.checks.internal.sector;

import java.util.List;
import java.util.Optional;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.model.EquipmentType;
import slopewright.model.Transition;
import slopewright.model.util.Projects;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** Sectors that depend on the make must be those of the unit in hand. */
public final class SectorsInHandRule extends AidRule {

    private static final double SAME_DEG = 0.001;

    /** Made by the service loader. */
    public SectorsInHandRule() {
        super("BOX-02", Severity.FAIL, Trait.SECTORS_BY_MAKE);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        EquipmentType type = facts.aid().getEquipment();
        CitedValue width = facts.angle(facts.indicator().has(Trait.PAIR) ? "green-sector" : "on-slope-sector");
        if (type == null || type.getSectors().isEmpty()) {
            if (width.citation().toConfirm()) {
                throw Stop.missing("sector edges of the unit in hand",
                        "Not evaluated: the sector widths depend on the make; those in use are not its own (" + width.citation().text()
                                + "). Enter the sectors of the equipment type, or confirm the widths with a source.");
            }
            findings.decide(facts.aid(), true, width.citation(), "The sector widths were confirmed: " + width.citation().confirmation()
                    + ".");
            return;
        }
        for (UnitAt unit : facts.units()) {
            boolean same = same(unit.unit().getTransitions(), type.getSectors());
            findings.decide(unit.unit(), same, Optional.empty(), same ? unit.label() + " has the sectors of " + Projects.label(type) + "."
                    : unit.label() + " has other sectors than " + Projects.label(type) + ". Take over those of the equipment type.",
                    severity());
        }
    }

    private static boolean same(List<Transition> own, List<Transition> entered) {
        if (own.size() != entered.size()) {
            return false;
        }
        for (int i = 0; i < own.size(); i++) {
            Transition one = own.get(i);
            Transition other = entered.get(i);
            double from = AidFacts.need(one.getOffsetDeg(), "angle of a sector edge");
            double to = AidFacts.need(other.getOffsetDeg(), "angle of a sector edge of the equipment type");
            if (Math.abs(from - to) > SAME_DEG || one.getAboveColour() != other.getAboveColour()
                    || one.getBelowColour() != other.getBelowColour()
                    || one.getAboveState() != other.getAboveState() || one.getBelowState() != other.getBelowState()) {
                return false;
            }
        }
        return true;
    }
}
