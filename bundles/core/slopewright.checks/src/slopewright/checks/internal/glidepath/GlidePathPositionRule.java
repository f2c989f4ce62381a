package slopewright.checks.internal.glidepath;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.GlidePathIntercept;
import slopewright.siting.Input;
import slopewright.siting.Siting;
import slopewright.siting.SitingRequest;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/**
 * The row stands where the glide path puts it. Severity fail: elsewhere the two paths contradict each other, and the pilot follows one
 * of them too low.
 */
public final class GlidePathPositionRule extends AidRule {
    private static final int FARTHER_GROUP = 4;

    /** Made by the service loader. */
    public GlidePathPositionRule() {
        super("ILS-03", Severity.FAIL, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        GlidePaths.atRunway(facts);
        if (facts.hasLength("glide-path-distance-tolerance")) {
            atIntercept(facts, outcomes);
        } else {
            atMeanEye(facts, outcomes);
        }
    }

    /** The eye on the slope passes where the mean eye of the aeroplanes on the glide path passes. */
    private static void atMeanEye(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue tolerance = facts.common("siting.eye-height-tolerance-m");
        SitingRequest request = facts.request();
        Siting laid = facts.laid();
        double tan = Angles.tanDeg(laid.slopeDeg());
        GlidePathIntercept path = GlidePaths.overThreshold(facts);
        double origin = path.originM();
        double least = AidFacts.need(request.number(Input.EYE_TO_ANTENNA_MIN).orElse(null), Message.of("missing.eye-to-antenna"));
        double mean = (least + request.need(Input.EYE_TO_ANTENNA_MAX)) / 2;
        double wanted = path.groundM() + origin * tan + mean;
        double lens = laid.reference().heightM();
        double height = laid.distanceM() * tan + lens;
        outcomes.about(facts.aid()).measured(Measure.within(height, wanted, tolerance.value(), "m")).resting(tolerance)
                .step("eye-on-slope", Words.m(lens), Words.m(laid.distanceM()), Words.deg(laid.slopeDeg()), Words.m(height))
                .step("eye-on-glide-path", Words.m(mean), Words.m(origin), Words.deg(laid.slopeDeg()), Words.m(wanted),
                        Words.m(path.groundM()))
                .saying("mean-eye", Words.m(height), Words.m(wanted), Words.m(origin), Words.m(mean), Words.m(tolerance.value()))
                .advising(height < wanted ? "move-away" : "move-towards", Words.m(Math.abs(wanted - height) / tan)).add();
    }

    /** The row stands at the intercept of the glide path, for one height group a published distance farther and never nearer. */
    private static void atIntercept(AidFacts facts, OutcomeCollector outcomes) {
        Integer group = facts.aid().getHeightGroup();
        boolean farther = group != null && group == FARTHER_GROUP && facts.hasLength("group-4-extra-distance");
        Siting laid = facts.laid();
        double origin = GlidePaths.originM(facts);
        CitedValue tolerance = facts.length(farther ? "group-4-distance-tolerance" : "glide-path-distance-tolerance");
        OutcomeCollector.Entry entry = outcomes.about(facts.aid()).resting(tolerance);
        double wanted = origin;
        if (farther) {
            CitedValue extra = facts.length("group-4-extra-distance");
            wanted += extra.value();
            entry.resting(extra);
        }
        double off = laid.distanceM() - wanted;
        double allowed = farther && off < 0 ? 0 : tolerance.value();
        entry.measured(Measure.atMost(Math.abs(off), allowed, "m"))
                .saying(farther ? "intercept-group" : "intercept", Words.mFt(laid.distanceM()), Words.mFt(wanted),
                        Words.mFt(tolerance.value()), Words.count(FARTHER_GROUP))
                .advising(off < 0 ? "move-away" : "move-towards", Words.mFt(Math.abs(off))).add();
    }
}
