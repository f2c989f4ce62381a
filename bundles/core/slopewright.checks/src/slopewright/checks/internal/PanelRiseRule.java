package slopewright.checks.internal;

import java.util.Comparator;
import java.util.Set;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.geometry.Angles;
import slopewright.standards.CitedValue;

/** The front panels stand higher by what the slope rises. */
public final class PanelRiseRule extends AidRule {

    /** Made by the service loader. */
    public PanelRiseRule() {
        super("PANEL-02", "Rise of the front panels",
                "The front panels stand higher than the rear one by their distance times the tangent of the slope, within what an eye can"
                + " tell.",
                Severity.FAIL, Set.of("alignment-panels"));
    }

    @Override
    void check(AidFacts facts, Findings findings) {
        CitedValue resolution = facts.angle("resolution");
        double slope = facts.laid().slopeDeg();
        double apart = facts.barAlongM(2) - facts.barAlongM(1);
        double rear = facts.bar(2).stream().mapToDouble(UnitAt::lensElevationM).average().orElseThrow();
        double wanted = apart * Angles.tanDeg(slope);
        double tolerance = apart * (Angles.tanDeg(slope + resolution.value()) - Angles.tanDeg(slope));
        UnitAt worst = facts.bar(1).stream().max(Comparator.comparingDouble(unit -> Math.abs(unit.lensElevationM() - rear - wanted)))
                .orElseThrow();
        double rise = worst.lensElevationM() - rear;
        compare(findings, facts.aid(), Measure.within(SettingOut.length(rise, wanted), wanted, Math.abs(tolerance), "m"),
                resolution.citation(),
                worst.label() + " stands " + Words.mm(rise) + " higher than the rear panel, " + Words.m(apart) + " before it; the slope of "
                        + Words.deg(slope) + " gives " + Words.mm(wanted) + ".", "Set it " + Words.mm(wanted)
                        + " higher than the rear panel.");
    }
}
