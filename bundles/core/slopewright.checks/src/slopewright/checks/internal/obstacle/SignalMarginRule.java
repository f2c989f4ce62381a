package slopewright.checks.internal.obstacle;

import java.util.Comparator;
import java.util.Optional;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Uncompared;
import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;
import slopewright.standards.CitedValue;

/** The lowest on-course signal passes obstacles at an angle. Severity fail: who follows the signal may strike something. */
public final class SignalMarginRule extends AidRule {
    /** Made by the service loader. */
    public SignalMarginRule() {
        super("OBS-04", Severity.FAIL);
    }

    private record Passed(ObstacleComparison obstacle, double angleDeg) {
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue margin = facts.common("obstacle.signal-margin-deg");
        CitedValue sector = facts.common("obstacle.signal-sector-deg");
        CitedValue range = facts.common("obstacle.signal-range-m");
        Siting laid = facts.laid();
        UnitPlan foremost = laid.units().stream().min(Comparator.comparingDouble(unit -> unit.place().alongM())).orElseThrow();
        double turn = facts.aid().getAxisTurnDeg() == null ? 0 : facts.aid().getAxisTurnDeg();
        ProtectionSurface plane = new ProtectionSurface(foremost.place().alongM(), foremost.place().heightM(), 0,
                Angles.tanDeg(sector.value()), range.value(), laid.lowestOnSlopeDeg() - margin.value(), turn);
        SurfaceComparison compared = Surfaces.compared(facts, plane);
        Optional<Passed> least = compared.inside().stream().filter(found -> !found.shielding().isBacked())
                .map(found -> new Passed(found, laid.lowestOnSlopeDeg() - elevationDeg(found, plane, foremost)))
                .min(Comparator.comparingDouble(Passed::angleDeg));
        boolean broken = least.filter(passed -> !Measure.atLeast(passed.angleDeg(), margin.value(), "deg").isMet()).isPresent();
        if (!broken && !compared.uncompared().isEmpty()) {
            throw Stop.missing(Message.of("list", Words.list(compared.uncompared().stream().map(Uncompared::reason).toList())),
                    Message.of("OBS-04.incomplete"));
        }
        if (least.isEmpty()) {
            outcomes.about(facts.aid()).met(true).resting(margin, sector, range).saying("clear", Words.degrees(sector.value())).add();
            return;
        }
        double angle = least.get().angleDeg();
        outcomes.about(facts.aid()).measured(Measure.atLeast(angle, margin.value(), "deg")).resting(margin, sector, range)
                .saying("passes", Words.deg(laid.lowestOnSlopeDeg()), Words.name(least.get().obstacle().label()), Words.degrees(angle),
                        Words.degrees(margin.value()))
                .advising("raise", Words.degrees(margin.value() - angle)).add();
    }

    /** The height that was compared holds the accuracy; the nearest place that the obstacle may have gives the steepest sight of it. */
    private static double elevationDeg(ObstacleComparison found, ProtectionSurface plane, UnitPlan foremost) {
        FramePoint point = found.worst().point();
        double compared = (found.worst().limitM() - plane.startHeightM()) / Angles.tanDeg(plane.slopeDeg());
        double outward = Double.isFinite(compared) && compared > 0 ? compared : plane.outwardM(point.alongM(), point.rightM());
        return Angles.elevationDeg(point.heightM() - foremost.place().heightM(), Math.max(1, outward));
    }
}
