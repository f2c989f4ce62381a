package slopewright.checks.internal.sector;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.Words;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.geometry.Angles;
import slopewright.geometry.Curvature;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.EquipmentType;
import slopewright.model.LightColour;
import slopewright.model.Transition;
import slopewright.siting.Colour;
import slopewright.siting.SectorEdge;
import slopewright.siting.Siting;
import slopewright.siting.Trait;
import slopewright.siting.UnitPlan;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;

/** Nothing hides the unit from a pilot low on the approach. */
public final class SightLineRule extends AidRule {

    /** Made by the service loader. */
    public SightLineRule() {
        super("BOX-09", Severity.FAIL, Trait.DARK_BELOW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        if (facts.atRunway() && !Boolean.TRUE.equals(facts.aid().getPortable())) {
            return;
        }
        CitedValue range = facts.common("obstacle.signal-range-m");
        CitedValue sector = facts.common("obstacle.signal-sector-deg");
        Siting laid = facts.laid();
        UnitPlan unit = laid.units().get(0);
        double edge = lowerRedDeg(facts, unit);
        double turn = facts.aid().getAxisTurnDeg() == null ? 0 : facts.aid().getAxisTurnDeg();
        ProtectionSurface sight = new ProtectionSurface(unit.place().alongM(), unit.place().heightM(), 0, Angles.tanDeg(sector.value()),
                range.value(),
                edge, turn);
        double worst = Double.NEGATIVE_INFINITY;
        String which = "";
        for (ObstacleComparison found : facts.surroundings().compare(sight).inside()) {
            FramePoint point = found.worst().point();
            double excess = found.worst().excessM() - Curvature.dropM(unit.place().planDistanceM(point), 0);
            if (excess > worst) {
                worst = excess;
                which = found.label();
            }
        }
        Citation citation = OutcomeCollector.weakest(List.of(range.citation(), sector.citation()));
        if (which.isEmpty()) {
            findings.decide(facts.aid(), true, citation, "Nothing stands within " + Words.degrees(sector.value())
                    + " of the axis in range.");
            return;
        }
        compare(findings, facts.aid(), Measure.atMost(worst, 0, "m"), citation, which + " stands " + Words.m(Math.abs(worst))
                + (worst > 0 ? " above" : " below") + " the sight line at " + Words.deg(edge) + ".",
                "Move or raise the unit, or raise its setting; the margin below the lowest on-slope signal (OBS-04) holds too, the"
                + " stricter governs.");
    }

    private static double lowerRedDeg(AidFacts facts, UnitPlan unit) {
        for (SectorEdge edge : unit.edges()) {
            if (edge.below().colour() == Colour.NONE && edge.above().colour() == Colour.RED) {
                return edge.angleDeg();
            }
        }
        EquipmentType type = facts.aid().getEquipment();
        if (type != null) {
            for (Transition edge : type.getSectors()) {
                if (edge.getBelowColour() == LightColour.NONE && edge.getAboveColour() == LightColour.RED && edge.getOffsetDeg() != null) {
                    return unit.settingDeg() + edge.getOffsetDeg();
                }
            }
        }
        throw Stop.missing("lower edge of the red sector of the unit in hand");
    }
}
