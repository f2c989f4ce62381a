package slopewright.checks.internal.glidepath;

import java.util.List;
import java.util.Optional;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.standards.CitedValue;

/** Both aids show the same slope. A warning: where obstacles forbid it, the difference is published. */
public final class GlidePathAngleRule extends AidRule {
    /** Made by the service loader. */
    public GlidePathAngleRule() {
        super("ILS-01", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        double angle = AidFacts.need(GlidePaths.of(facts).getPathAngleDeg(), Message.of("missing.glide-path-angle"));
        double slope = facts.laid().slopeDeg();
        List<CitedValue> limits = limits(facts);
        double limit = limits.size() == 1 ? Angles.degToMinutes(limits.get(0).value()) : limits.get(0).value() + limits.get(1).value();
        double off = Angles.degToMinutes(Math.abs(slope - angle));
        outcomes.about(facts.aid()).measured(Measure.atMost(off, limit, "min")).resting(limits.toArray(CitedValue[]::new))
                .saying("compared", Words.deg(slope), Words.min(off), Words.deg(angle), Words.min(limit)).advising("choose").add();
    }

    /** Returns the one angle within which both coincide, or the difference and the accuracy of setting that add up. */
    private static List<CitedValue> limits(AidFacts facts) {
        Optional<CitedValue> coincidence = facts.rules().find("coincidence.angle-deg");
        return coincidence.isPresent() ? List.of(coincidence.get())
                : List.of(facts.common("glide-path.slope-difference-min"), facts.value("setting-accuracy-min"));
    }
}
