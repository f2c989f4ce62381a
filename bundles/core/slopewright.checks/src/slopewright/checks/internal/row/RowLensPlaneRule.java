package slopewright.checks.internal.row;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.evaluation.RunwayProfiles;
import slopewright.geometry.Profile;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.RunwayEnd;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/**
 * The plane of the lenses lies near the level of the centre line beside it, where a rule set asks for that. A warning: the eye height
 * follows from the lenses as they stand, and has rules of its own.
 */
public final class RowLensPlaneRule extends AidRule {
    /** Made by the service loader. */
    public RowLensPlaneRule() {
        super("ROW-15", Severity.WARNING, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        RunwayEnd end = facts.end();
        CitedValue limit = facts.length("plane-to-centre-line");
        Profile profile = RunwayProfiles.centreLine(end).orElse(null);
        AidFacts.need(profile, Message.of("missing.centre-line-profile"));
        double threshold = AidFacts.need(end.getThresholdElevationM(), Message.of("missing.threshold-elevation"));
        for (List<UnitAt> side : facts.sides()) {
            guarded(facts.aid(), outcomes, () -> {
                double along = side.stream().mapToDouble(UnitAt::alongM).average().orElseThrow();
                double plane = side.stream().mapToDouble(UnitAt::lensElevationM).average().orElseThrow();
                Double level = profile.covers(along) ? Double.valueOf(profile.heightAt(along)) : null;
        double centreLine = threshold + AidFacts.need(level, Message.of("missing.centre-line-profile"));
                double off = Math.abs(plane - centreLine);
                outcomes.about(facts.aid()).measured(Measure.atMost(off, limit.value(), "m")).resting(limit)
                        .step("difference", Words.m(Math.max(plane, centreLine)), Words.m(Math.min(plane, centreLine)), Words.m(off))
                        .saying("compared", Words.m(plane), Words.m(centreLine), Words.m(off), Words.m(limit.value())).advising("level")
                        .add();
            });
        }
    }
}
