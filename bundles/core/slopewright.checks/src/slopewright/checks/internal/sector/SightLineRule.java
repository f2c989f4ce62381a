package slopewright.checks.internal.sector;

import java.util.Comparator;
import java.util.Optional;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.obstacle.Surfaces;
import slopewright.checks.internal.obstacle.SurveyCover;
import slopewright.evaluation.ProjectRules;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Uncompared;
import slopewright.geometry.Angles;
import slopewright.geometry.Curvature;
import slopewright.geometry.ProtectionSurface;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.model.LightColour;
import slopewright.model.Transition;
import slopewright.siting.Colour;
import slopewright.siting.ElementNames;
import slopewright.siting.SectorEdge;
import slopewright.siting.Trait;
import slopewright.siting.UnitPlan;
import slopewright.standards.CitedValue;

/**
 * Nothing hides the unit from a pilot low on the approach, as far as a survey of the place says what stands there. Severity fail: a hidden
 * unit is dark where it should be red.
 */
public final class SightLineRule extends AidRule {
    /** Made by the service loader. */
    public SightLineRule() {
        super("BOX-09", Severity.FAIL, Trait.DARK_BELOW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        if (facts.atRunway() && !Boolean.TRUE.equals(facts.aid().getPortable())) {
            throw Stop.notApplicable(Message.of("BOX-09.fixed-at-runway"));
        }
        CitedValue range = ProjectRules.common(facts.rules(), "obstacle.signal-range-m");
        CitedValue sector = ProjectRules.common(facts.rules(), "obstacle.signal-sector-deg");
        UnitPlan unit = facts.laid().units().get(0);
        double edge = lowerRedDeg(facts, unit);
        double turn = facts.aid().getAxisTurnDeg() == null ? 0 : facts.aid().getAxisTurnDeg();
        ProtectionSurface plane = new ProtectionSurface(unit.place().alongM(), unit.place().heightM(), 0, Angles.tanDeg(sector.value()),
                range.value(), edge, turn);
        SurfaceComparison compared = Surfaces.compared(facts, plane);
        Optional<ObstacleComparison> worst = compared.inside().stream()
                .max(Comparator.comparingDouble(comparison -> excessM(comparison, unit)));
        double excess = worst.map(comparison -> excessM(comparison, unit)).orElse(0.0);
        if (excess <= 0 && !compared.uncompared().isEmpty()) {
            throw Stop.missing(Message.of("list", Words.list(compared.uncompared().stream().map(Uncompared::reason).toList())),
                    Message.of("BOX-09.incomplete"));
        }
        if (excess <= 0 && !SurveyCover.of(facts).covers(plane)) {
            Argument host = ElementNames.of(facts.host());
            throw Stop.missing(Message.of("missing.survey-of", host), Message.of("BOX-09.short-survey", host,
                    Words.degrees(sector.value()), Words.wholeM(range.value())));
        }
        OutcomeCollector.Entry entry = outcomes.about(facts.aid()).resting(range, sector).advising("raise");
        worst.ifPresentOrElse(comparison -> entry.measured(Measure.atMost(excess, 0, "m").strict())
                .saying(excess > 0 ? "above" : "below", Words.name(comparison.label()), Words.margin(Math.abs(excess)), Words.deg(edge)),
                () -> entry.met(true).saying("clear", Words.degrees(sector.value())));
        entry.add();
    }

    private static double excessM(ObstacleComparison one, UnitPlan unit) {
        return one.worst().excessM() - Curvature.dropM(unit.place().planDistanceM(one.worst().point()), 0);
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
        throw Stop.missing(Message.of("missing.red-lower-edge"));
    }
}
