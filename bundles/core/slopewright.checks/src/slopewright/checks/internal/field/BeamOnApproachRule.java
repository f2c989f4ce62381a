package slopewright.checks.internal.field;

import java.util.Optional;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.evaluation.ProjectRules;
import slopewright.evaluation.portable.SettingAllowance;
import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.BeamLimits;
import slopewright.siting.UnitPlan;
import slopewright.standards.CitedValue;

/**
 * The beam of a portable unit holds the eye of the pilot on the whole approach: far out, as far as the signal is to be seen, and at the
 * hover, also when the pointer stands half a mark off and a deck swings. Severity fail: beyond the edge of a beam there is no signal, and
 * at the edge a wrong one.
 */
public final class BeamOnApproachRule extends AidRule {
    /** Made by the service loader. */
    public BeamOnApproachRule() {
        super("FIELD-05", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        if (!Boolean.TRUE.equals(facts.aid().getPortable())) {
            throw Stop.notApplicable(Message.of("FIELD-05.not-portable"));
        }
        Optional<BeamLimits> found = BeamLimits.of(facts.aid());
        BeamLimits limits = AidFacts.need(found.orElse(null), Message.of("missing.beam-width"));
        CitedValue range = ProjectRules.common(facts.rules(), "obstacle.signal-range-m");
        double turn = SettingAllowance.of(facts.evaluation()).turnDeg();
        for (UnitAt unit : facts.units()) {
            guarded(unit.unit(), outcomes, () -> {
                UnitPlan plan = facts.laid().units().stream().filter(one -> one.id().equals(unit.unit().getLabel())).findFirst()
                        .orElseThrow(() -> Stop.missing(Message.of("missing.units-of", unit.name())));
                double far = plan.offAxisDeg(new FramePoint(-range.value(), 0, 0));
                double near = facts.atRunway() ? far : plan.offAxisDeg(new FramePoint(0, 0, 0));
                outcomes.about(unit.unit()).measured(Measure.worse(inside(far, limits, turn), inside(near, limits, turn))).resting(range)
                        .saying("compared", unit.name(), Words.degrees(Math.abs(far)), Words.degrees(Math.abs(near)), Words.degrees(limits
                                .leftDeg()), Words.degrees(limits.rightDeg()), Words.degrees(turn)).advising("turn").add();
            });
        }
    }

    private static Measure inside(double offDeg, BeamLimits limits, double turnDeg) {
        return Measure.worse(Measure.atMost(offDeg + turnDeg, limits.rightDeg(), "deg"), Measure.atLeast(offDeg - turnDeg, limits.leftDeg(),
                "deg"));
    }
}
