package slopewright.checks.internal.glidepath;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Words;
import slopewright.geometry.Angles;
import slopewright.siting.Input;
import slopewright.siting.Siting;
import slopewright.siting.SitingRequest;
import slopewright.siting.Trait;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;

/** The row stands where the glide path puts it. */
public final class GlidePathPositionRule extends AidRule {

    /** Made by the service loader. */
    public GlidePathPositionRule() {
        super("ILS-03", Severity.FAIL, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        if (facts.host().getGlidePath() == null || !facts.atRunway()) {
            return;
        }
        Siting laid = facts.laid();
        if (facts.hasLength("glide-path-distance-tolerance")) {
            atIntercept(facts, laid, findings);
            return;
        }
        CitedValue tolerance = facts.common("siting.eye-height-tolerance-m");
        SitingRequest request = facts.request();
        double tan = Angles.tanDeg(laid.slopeDeg());
        double origin = AidFacts.need(request.number(Input.GLIDE_PATH_ORIGIN).orElse(null),
                "origin of the glide path, or its height and angle");
        double least = AidFacts.need(request.number(Input.EYE_TO_ANTENNA_MIN).orElse(null), "eye-to-antenna heights in regular use");
        double mean = (least + request.need(Input.EYE_TO_ANTENNA_MAX)) / 2;
        double wanted = origin * tan + mean;
        double height = laid.distanceM() * tan + laid.reference().heightM();
        compare(findings, facts.aid(), Measure.within(height, wanted, tolerance.value(), "m"),
                tolerance.citation(),
                "On the slope the eye passes " + Words.m(height) + " over the threshold; on the glide path the mean eye passes at "
                        + Words.m(wanted)
                        + " (origin at " + Words.m(origin) + ", mean eye-to-antenna height " + Words.m(mean) + "), within "
                        + Words.m(tolerance.value()) + ".",
                "Move the row " + Words.m(Math.abs(wanted - height) / tan) + (height < wanted ? " farther from" : " towards")
                        + " the threshold.");
    }

    private void atIntercept(AidFacts facts, Siting laid, OutcomeCollector findings) {
        boolean group4 = facts.aid().getHeightGroup() != null && facts.aid().getHeightGroup() == 4
                && facts.hasLength("group-4-extra-distance");
        double origin = AidFacts.need(facts.request().number(Input.GLIDE_PATH_ORIGIN).orElse(null),
                "origin of the glide path, or its height and angle");
        double wanted = origin + (group4 ? facts.length("group-4-extra-distance").value() : 0);
        CitedValue tolerance = facts.length(group4 ? "group-4-distance-tolerance" : "glide-path-distance-tolerance");
        double off = laid.distanceM() - wanted;
        boolean closer = group4 && off < 0;
        Citation citation = group4 ? OutcomeCollector.weakest(List.of(tolerance.citation(), facts.length("group-4-extra-distance").citation()))
                : tolerance.citation();
        compare(findings, facts.aid(), Measure.atMost(Math.abs(off), closer ? 0 : tolerance.value(), "m"), citation,
                "The row stands " + Words.mFt(laid.distanceM()) + " from the threshold; the intercept"
                        + (group4 ? " and the distance for height group 4" : "")
                        + " give " + Words.mFt(wanted) + ", within " + Words.mFt(tolerance.value()) + (group4 ? " farther only." : "."),
                "Move the row " + Words.mFt(Math.abs(off)) + (off < 0 ? " farther from" : " towards") + " the threshold.");
    }
}
