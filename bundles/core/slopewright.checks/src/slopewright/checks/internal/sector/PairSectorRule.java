package slopewright.checks.internal.sector;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Light;
import slopewright.siting.SectorEdge;
import slopewright.siting.Siting;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** Green from both units marks the path. Severity fail: another sector is another path. */
public final class PairSectorRule extends AidRule {
    /** Made by the service loader. */
    public PairSectorRule() {
        super("BOX-07", Severity.FAIL, Trait.PAIR);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue half = facts.angle("on-slope-half");
        CitedValue accuracy = facts.value("setting-accuracy-min");
        Siting laid = facts.laid();
        double from = laid.units().stream().flatMap(unit -> unit.edges().stream()).filter(edge -> edge.above().equals(Light.GREEN))
                .mapToDouble(SectorEdge::angleDeg).max().orElseThrow(() -> Stop.missing(Message.of("missing.green-sectors")));
        double to = laid.units().stream().flatMap(unit -> unit.edges().stream()).filter(edge -> edge.below().equals(Light.GREEN))
                .mapToDouble(SectorEdge::angleDeg).min().orElseThrow(() -> Stop.missing(Message.of("missing.green-sectors")));
        double wanted = Angles.degToMinutes(half.value());
        Measure below = Measure.within(Angles.degToMinutes(laid.slopeDeg() - from), wanted, accuracy.value(), "min");
        Measure above = Measure.within(Angles.degToMinutes(to - laid.slopeDeg()), wanted, accuracy.value(), "min");
        outcomes.about(facts.aid()).measured(Measure.worse(below, above)).resting(half, accuracy)
                .saying("compared", Words.deg(from), Words.deg(to), Words.deg(laid.slopeDeg()), Words.min(wanted)).advising("reset").add();
    }
}
