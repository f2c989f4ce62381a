package slopewright.checks.internal.eye;

import java.util.ArrayList;
import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Input;
import slopewright.siting.Siting;
import slopewright.siting.SitingRequest;
import slopewright.siting.Trait;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;
import slopewright.standards.CrossingHeightTable;

/**
 * The eye height over the threshold is the one that the aeroplanes need; a lower one takes wheel clearance away. Severity fail for that
 * reason.
 */
public final class EyeHeightRule extends AidRule {
    /** Made by the service loader. */
    public EyeHeightRule() {
        super("EYE-01", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        facts.end();
        if (facts.host().getGlidePath() != null && facts.indicator().has(Trait.ROW)) {
            throw Stop.notApplicable(Message.of("EYE-01.beside-glide-path"));
        }
        Siting laid = facts.laid();
        double target = facts.solvedAtLens().mehtM();
        double move = Math.max(0, target - laid.mehtM()) / Angles.tanDeg(laid.lowestOnSlopeDeg());
        outcomes.about(facts.aid()).measured(Measure.atLeast(laid.mehtM(), target, "m")).citing(sources(facts))
                .steps(MinimumEyeHeight.steps(laid))
                .saying("compared", Words.mFt(laid.mehtM()), Words.deg(laid.lowestOnSlopeDeg()), Words.mFt(target))
                .advising("move", Words.m(move)).add();
    }

    /** Returns where the needed height comes from: the table of clearances or of height groups, a nominal height; and the allowance. */
    private static List<Citation> sources(AidFacts facts) {
        SitingRequest request = facts.request();
        List<Citation> sources = new ArrayList<>();
        facts.find("boundary-allowance-min").map(CitedValue::citation).ifPresent(sources::add);
        if (request.has(Input.EYE_HEIGHT)) {
            return sources;
        }
        if (request.has(Input.HEIGHT_GROUP)) {
            facts.rules().crossingHeight().map(CrossingHeightTable::citation).ifPresent(sources::add);
        } else if (!request.has(Input.EYE_TO_WHEEL)) {
            facts.find("nominal-eye-height-m").map(CitedValue::citation).ifPresent(sources::add);
        } else if (request.clearance() != SitingRequest.Clearance.CHOSEN) {
            boolean minimum = request.clearance() == SitingRequest.Clearance.MINIMUM;
            facts.rules().wheelClearance().map(table -> minimum ? table.citation() : table.desired()).ifPresent(sources::add);
        }
        return sources;
    }
}
