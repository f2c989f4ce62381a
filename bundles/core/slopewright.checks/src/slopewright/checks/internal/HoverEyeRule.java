package slopewright.checks.internal;

import java.util.stream.Collectors;
import java.util.stream.Stream;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.standards.CitedValue;

/** At a helipad the path passes through the eye at the hover. */
public final class HoverEyeRule extends AidRule {

    /** Made by the service loader. */
    public HoverEyeRule() {
        super("EYE-04", "Path through the eye at the hover",
                "The path passes through the pilot's eye at the hover point: hover height plus eye height above the skids, within the"
                + " tolerance.",
                Severity.FAIL, Stream.concat(ROWS.stream(), BOXES.stream()).collect(Collectors.toUnmodifiableSet()));
    }

    @Override
    void check(AidFacts facts, Findings findings) {
        if (facts.atRunway()) {
            return;
        }
        CitedValue tolerance = facts.common("siting.eye-height-tolerance-m");
        double wanted = AidFacts.need(facts.helipad().getHoverHeightM(), "hover height")
                + AidFacts.need(facts.helipad().getEyeAboveSkidsM(), "eye height above the skids");
        double height = facts.laid().eyeHeightM();
        compare(findings, facts.aid(), Measure.within(SettingOut.height(height, wanted), wanted, tolerance.value(), "m"),
                tolerance.citation(),
                "The path passes " + Words.m(height) + " over the hover point; the eye is at " + Words.m(wanted) + ", within "
                        + Words.m(tolerance.value()) + ".", "Move the unit " + (height < wanted ? "away from" : "towards")
                        + " the hover point.");
    }
}
