package slopewright.checks.internal.light;

import java.util.List;
import java.util.Optional;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.evaluation.ProjectRules;
import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.BeamLimits;
import slopewright.siting.ElementNames;
import slopewright.siting.UnitPlan;
import slopewright.standards.CitedValue;

/**
 * A fixed indicator shows to who flies along the centre line, at a runway or a helipad, whether its beam is limited to the side or no wider
 * by itself. The texts let a beam be narrowed where something stands beside the surface and give no least width. One that reaches as far
 * as the printed light is met as it is; a narrower one, one that is turned, or one for which no width is printed, must hold the centre line
 * from the range of the signal to where an approach is decided, which is common practice. A failure: beyond the edge of a beam there is no
 * signal.
 */
public final class NarrowedBeamRule extends AidRule {
    /** Made by the service loader. */
    public NarrowedBeamRule() {
        super("LIGHT-03", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        if (Boolean.TRUE.equals(facts.aid().getPortable())) {
            throw Stop.notApplicable(Message.of("LIGHT-03.by-another-rule"));
        }
        BeamLimits limits = AidFacts.need(BeamLimits.of(facts.aid()).orElse(null), Message.of("missing.beam-width"));
        double narrowest = Math.min(-limits.leftDeg(), limits.rightDeg());
        boolean turned = facts.aid().getAxisTurnDeg() != null && facts.aid().getAxisTurnDeg() != 0;
        Optional<CitedValue> printed = facts.find("azimuth-coverage-deg").filter(coverage -> !turned && narrowest >= coverage.value());
        if (printed.isPresent()) {
            outcomes.about(facts.aid()).measured(Measure.atLeast(narrowest, printed.get().value(), "deg")).resting(printed.get())
                    .saying("as-printed", Words.degrees(narrowest), Words.degrees(printed.get().value())).advising("widen").add();
            return;
        }
        CitedValue far = ProjectRules.common(facts.rules(), "obstacle.signal-range-m");
        CitedValue near = facts.common("glide-path.decision-distance-m");
        List<FramePoint> eyes = List.of(new FramePoint(-far.value(), 0, 0), new FramePoint(-near.value(), 0, 0));
        Measure worst = null;
        double widest = 0;
        for (UnitPlan unit : facts.laid().units()) {
            for (FramePoint eye : eyes) {
                double off = unit.offAxisDeg(eye);
                Measure inside = Measure.worse(Measure.atMost(off, limits.rightDeg(), "deg"),
                        Measure.atLeast(off, limits.leftDeg(), "deg"));
                worst = worst == null ? inside : Measure.worse(worst, inside);
                widest = Math.max(widest, Math.abs(off));
            }
        }
        Measure held = AidFacts.need(worst, Message.of("missing.units-of", ElementNames.of(facts.aid())));
        outcomes.about(facts.aid()).measured(held).resting(far, near)
                .saying("compared", Words.m(near.value()), Words.degrees(widest), Words.degrees(limits.leftDeg()),
                        Words.degrees(limits.rightDeg())).advising("widen").add();
    }
}
