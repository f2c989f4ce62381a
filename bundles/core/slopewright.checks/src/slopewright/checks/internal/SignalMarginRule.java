package slopewright.checks.internal;

import java.util.Comparator;
import java.util.List;

import slopewright.checks.Findings.Measure;
import slopewright.checks.Findings;
import slopewright.checks.Severity;
import slopewright.checks.field.ObstacleField;
import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;

/** The lowest on-course signal passes obstacles at an angle. */
public final class SignalMarginRule extends AidRule {

    /** Made by the service loader. */
    public SignalMarginRule() {
        super("OBS-04", "Lowest signal above obstacles",
                "Seen from the foremost unit the lowest on-slope signal passes every obstacle in the sector and range by at least the"
                + " published angle.",
                Severity.FAIL, ALL);
    }

    @Override
    void check(AidFacts facts, Findings findings) {
        CitedValue margin = facts.common("obstacle.signal-margin-deg");
        CitedValue sector = facts.common("obstacle.signal-sector-deg");
        CitedValue range = facts.common("obstacle.signal-range-m");
        Siting laid = facts.laid();
        UnitPlan foremost = laid.units().stream().min(Comparator.comparingDouble(unit -> unit.place().alongM())).orElseThrow();
        double turn = facts.aid().getAxisTurnDeg() == null ? 0 : facts.aid().getAxisTurnDeg();
        ProtectionSurface plane = new ProtectionSurface(foremost.place().alongM(), foremost.place().heightM(), 0,
                Angles.tanDeg(sector.value()),
                range.value(), laid.lowestOnSlopeDeg() - margin.value(), turn);
        double least = Double.POSITIVE_INFINITY;
        String which = "";
        for (ObstacleField.Compared found : Obstacles.of(facts).compare(plane)) {
            ObstacleField.Placed one = found.placed();
            if (!one.isShielded()) {
                FramePoint point = found.worst().point();
                double outward = Math.max(1, plane.outwardM(point.alongM(), point.rightM()) - one.shape().horizontalAccuracyM());
                double angle = laid.lowestOnSlopeDeg() - Angles.elevationDeg(point.heightM() - foremost.place().heightM(), outward);
                if (angle < least) {
                    least = angle;
                    which = one.label();
                }
            }
        }
        Citation citation = Findings.weakest(List.of(margin.citation(), sector.citation(), range.citation()));
        if (which.isEmpty()) {
            findings.decide(facts.aid(), true, citation, "No obstacle stands within " + Words.degrees(sector.value())
                    + " of the axis in range.");
            return;
        }
        compare(findings, facts.aid(), Measure.atLeast(least, margin.value(), "deg"), citation,
                "The lowest on-slope signal at " + Words.deg(laid.lowestOnSlopeDeg()) + " passes " + which + " by " + Words.degrees(least)
                        + "; "
                        + Words.degrees(margin.value()) + " are needed.",
                "Raise the slope by " + Words.degrees(margin.value() - least) + ", lower the obstacle, or narrow the beam.");
    }
}
