package slopewright.checks.internal.glidepath;

import java.util.List;
import java.util.Optional;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Words;
import slopewright.geometry.Angles;
import slopewright.model.GlidePathAid;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;

/** Both aids show the same slope. */
public final class GlidePathAngleRule extends AidRule {

    /** Made by the service loader. */
    public GlidePathAngleRule() {
        super("ILS-01", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        GlidePathAid path = facts.host().getGlidePath();
        if (path == null) {
            return;
        }
        double angle = AidFacts.need(path.getPathAngleDeg(), "angle of the glide path");
        double slope = facts.laid().slopeDeg();
        Optional<CitedValue> coincidence = facts.rules().find("coincidence.angle-deg");
        double limit;
        Citation citation;
        if (coincidence.isPresent()) {
            limit = Angles.degToMinutes(coincidence.get().value());
            citation = coincidence.get().citation();
        } else {
            CitedValue difference = facts.common("glide-path.slope-difference-min");
            CitedValue accuracy = facts.value("setting-accuracy-min");
            limit = difference.value() + accuracy.value();
            citation = OutcomeCollector.weakest(List.of(difference.citation(), accuracy.citation()));
        }
        double off = Angles.degToMinutes(Math.abs(slope - angle));
        compare(findings, facts.aid(), Measure.atMost(off, limit, "min"), citation, "The slope of " + Words.deg(slope)
                + " differs by " + Words.min(off) + " from the glide path of " + Words.deg(angle) + "; " + Words.min(limit)
                + " are allowed.",
                "Choose the slope of the glide path; where obstacles forbid it, publish that the aids differ.");
    }
}
