package slopewright.checks.internal;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import slopewright.checks.Findings;
import slopewright.checks.Severity;
import slopewright.model.EquipmentType;
import slopewright.model.Transition;
import slopewright.model.util.Projects;
import slopewright.standards.CitedValue;

/** Sectors that depend on the make must be those of the unit in hand. */
public final class SectorsInHandRule extends AidRule {

    private static final double SAME_DEG = 0.001;

    /** Made by the service loader. */
    public SectorsInHandRule() {
        super("BOX-02", "Sectors of the unit in hand",
                "The sector edges are those of the equipment type, or the sector widths of the rule set were confirmed for the unit in"
                + " hand.",
                Severity.FAIL, Set.of("tri-colour", "pulsating", "heliport-pair"));
    }

    @Override
    void check(AidFacts facts, Findings findings) {
        EquipmentType type = facts.aid().getEquipment();
        CitedValue width = facts.angle("heliport-pair".equals(facts.family()) ? "green-sector" : "on-slope-sector");
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
