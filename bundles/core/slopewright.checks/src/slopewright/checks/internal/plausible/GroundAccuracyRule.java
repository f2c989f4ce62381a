package slopewright.checks.internal.plausible;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.SiteRule;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.GroundLevel;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.siting.ElementNames;

/**
 * The levels of the ground are surveyed at least as well as the eye height over the threshold must hold, to which each of them goes in
 * full: to 0.3 m (own band), and none is exact. Where no accuracy is entered nobody knows, and it is not evaluated. A warning: the levels
 * themselves may be right.
 */
public final class GroundAccuracyRule extends SiteRule {
    private static final double COARSEST_M = 0.3;
    private static final double FINEST_M = 0.001;

    /** Made by the service loader. */
    public GroundAccuracyRule() {
        super("DATA-68", Severity.WARNING);
    }

    @Override
    protected void check(Project project, OutcomeCollector outcomes) {
        Aerodrome aerodrome = project.getAerodrome();
        for (RunwayEnd end : aerodrome.getRunways().stream().flatMap(runway -> runway.getEnds().stream()).toList()) {
            if (!end.getSiteProfile().isEmpty()) {
                compare(end, "profile", end.getSiteProfileAccuracyM(), outcomes);
            }
        }
        for (GroundLevel level : aerodrome.getGroundLevels()) {
            compare(level, "level", level.getVerticalAccuracyM(), outcomes);
        }
    }

    private static void compare(Identified element, String what, Double accuracyM, OutcomeCollector outcomes) {
        if (accuracyM == null) {
            List<Message> missing = List.of(Message.of("missing.ground-accuracy." + what, ElementNames.of(element)));
            outcomes.notEvaluated(element, missing, Message.of("outcome.missing-inputs", Words.list(missing)));
        } else {
            outcomes.about(element).measured(Measure.between(accuracyM, FINEST_M, COARSEST_M, "m").strict())
                    .saying(what, ElementNames.of(element), Words.m(accuracyM), Words.m(COARSEST_M)).advising("correct").add();
        }
    }
}
