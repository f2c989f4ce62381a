package slopewright.checks.internal.sector;

import java.util.List;
import java.util.Set;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.Words;
import slopewright.geometry.Angles;
import slopewright.siting.Light;
import slopewright.siting.SectorEdge;
import slopewright.siting.Siting;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** Green from both units marks the path. */
public final class PairSectorRule extends AidRule {

    /** Made by the service loader. */
    public PairSectorRule() {
        super("BOX-07", Severity.FAIL, Trait.PAIR);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        CitedValue half = facts.angle("on-slope-half");
        CitedValue accuracy = facts.value("setting-accuracy-min");
        Siting laid = facts.laid();
        double from = laid.units().stream().flatMap(unit -> unit.edges().stream()).filter(edge -> edge.above().equals(Light.GREEN))
                .mapToDouble(SectorEdge::angleDeg).max().orElseThrow(() -> Stop.missing("green sectors of the units"));
        double to = laid.units().stream().flatMap(unit -> unit.edges().stream()).filter(edge -> edge.below().equals(Light.GREEN))
                .mapToDouble(SectorEdge::angleDeg).min().orElseThrow(() -> Stop.missing("green sectors of the units"));
        double below = laid.slopeDeg() - from;
        double above = to - laid.slopeDeg();
        double worst = Math.abs(below - half.value()) > Math.abs(above - half.value()) ? below : above;
        compare(findings, facts.aid(), Measure.within(Angles.degToMinutes(worst), Angles.degToMinutes(half.value()), accuracy.value(),
                "min"),
                OutcomeCollector.weakest(List.of(half.citation(), accuracy.citation())), "Both units are green from " + Words.deg(from) + " to "
                        + Words.deg(to) + "; the slope of " + Words.deg(laid.slopeDeg()) + " asks for "
                        + Words.min(Angles.degToMinutes(half.value())) + " on each side.", "Set the units again.");
    }
}
