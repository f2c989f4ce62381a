package slopewright.checks.internal.glidepath;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.AeroplaneGroup;
import slopewright.siting.ElementNames;
import slopewright.siting.Meaning;
import slopewright.siting.Signals;
import slopewright.siting.Siting;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/**
 * The on-slope sector takes in the eyes of all aeroplanes on the glide path. A note: no published value asks for it; where the two aids
 * disagree for a group, its pilots should know.
 */
public final class AntennaRangeRule extends AidRule {
    /** Made by the service loader. */
    public AntennaRangeRule() {
        super("ILS-04", Severity.NOTE, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        AidFacts.need(GlidePaths.atRunway(facts).getPathAngleDeg(), Message.of("missing.glide-path-angle"));
        CitedValue range = facts.common("glide-path.decision-distance-m");
        double antenna = GlidePaths.overThreshold(facts).heightBeforeM(range.value());
        if (facts.host().getRegularGroups().isEmpty()) {
            throw Stop.missing(Message.of("missing.aeroplane-groups"));
        }
        for (AeroplaneGroup group : facts.host().getRegularGroups()) {
            guarded(facts.aid(), outcomes, () -> check(facts, group, range, antenna, outcomes));
        }
    }

    private static void check(AidFacts facts, AeroplaneGroup group, CitedValue range, double antennaM, OutcomeCollector outcomes) {
        Siting laid = facts.laid();
        double above = AidFacts.need(group.getEyeToAntennaM(), Message.of("missing.eye-to-antenna-of", ElementNames.of(group)));
        double eye = antennaM + above;
        Meaning meaning = Signals.observe(facts.indicator(), laid.units(), laid.reference(), new FramePoint(-range.value(), 0, eye))
                .meaning();
        outcomes.about(facts.aid()).met(meaning == Meaning.ON_SLOPE).resting(range)
                .step("eye-at-decision", Words.m(antennaM), Words.m(above), Words.m(eye))
                .saying("seen", ElementNames.of(group), Words.term("meaning." + meaning.key()), Words.m(range.value()))
                .advising("move").add();
    }
}
