package slopewright.checks.internal.eye;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.messages.Words;

/**
 * The wheel clearance below which no study helps: wheels that come lower strike what lies before the threshold. Severity fail for that
 * reason.
 */
public final class MinimumClearanceRule extends ClearanceRule {
    /** Made by the service loader. */
    public MinimumClearanceRule() {
        super("WHEEL-02", Severity.FAIL);
    }

    @Override
    void check(AidFacts facts, Case one, OutcomeCollector outcomes) {
        boolean light = facts.host().getRegularGroups().stream().allMatch(group -> Boolean.TRUE.equals(group.getLightNonTurbojet()));
        boolean reduced = light && one.band().lightAeroplaneM().isPresent();
        double minimum = reduced ? one.band().lightAeroplaneM().orElseThrow() : one.band().minimumM();
        double clearance = one.clearance().clearanceM();
        withStep(entry(facts, outcomes), facts.laid(), one.clearance()).measured(Measure.atLeast(clearance, minimum, "m"))
                .citing(one.table().citation())
                .saying(reduced ? "compared-light" : "compared", one.name(), Words.m(clearance), Words.m(minimum))
                .advising("move", move(facts, minimum - clearance)).add();
    }
}
