package slopewright.checks.internal.eye;

import java.util.List;
import java.util.Optional;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.Words;
import slopewright.geometry.Angles;
import slopewright.model.AeroplaneGroup;
import slopewright.model.util.Projects;
import slopewright.standards.Citation;
import slopewright.standards.WheelClearanceTable;

/** Wheel clearance of the aeroplane groups in regular use against the table of the rule set. */
abstract class WheelClearance extends AidRule {

    /**
     * One aeroplane group with its band of the table.
     *
     * @param group      the group
     * @param eyeToWheelM its eye-to-wheel height
     * @param band       the band
     */
    record Case(AeroplaneGroup group, double eyeToWheelM, WheelClearanceTable.Group band) {
    }

    WheelClearance(String id, Severity severity) {
        super(id, severity);
    }

    @Override
    public final void check(AidFacts facts, OutcomeCollector findings) {
        if (!facts.atRunway()) {
            return;
        }
        WheelClearanceTable table = facts.rules().wheelClearance()
                .orElseThrow(() -> Stop.notApplicable("Rule set " + facts.rules().key() + " has no table of wheel clearances."));
        List<AeroplaneGroup> groups = facts.host().getRegularGroups();
        if (groups.isEmpty()) {
            throw Stop.missing("aeroplane groups in regular use");
        }
        for (AeroplaneGroup group : groups) {
            guarded(facts.aid(), findings, () -> check(facts, of(group, table), table.citation(), findings));
        }
    }

    private static Case of(AeroplaneGroup group, WheelClearanceTable table) {
        double height = AidFacts.need(group.getEyeToWheelM(), "eye-to-wheel height of " + Projects.label(group));
        WheelClearanceTable.Group band = table.group(height).orElseThrow(() -> Stop.missing("wheel clearance for such a height",
                "Not evaluated: the eye-to-wheel height of " + Projects.label(group) + ", " + Words.m(height)
                        + ", is outside the table of wheel clearances."));
        return new Case(group, height, band);
    }

    /** Checks one group. */
    public abstract void check(AidFacts facts, Case one, Citation citation, OutcomeCollector findings);

    /** Adds a comparison; the allowance on the lowest on-slope signal decides it as much as the table does. */
    final void add(OutcomeCollector findings, AidFacts facts, Measure measure, Citation citation, String compared, String action) {
        boolean toConfirm = citation.toConfirm() || facts.find("boundary-allowance-min")
                .filter(value -> value.citation().toConfirm()).isPresent();
        findings.compare(facts.aid(), measure, Optional.of(citation), toConfirm, measure.isMet() ? compared : compared + " " + action,
                severity());
    }

    /** Returns how far a layout must move to gain a clearance. */
    static double moveM(AidFacts facts, double gainM) {
        return gainM / Angles.tanDeg(facts.laid().lowestOnSlopeDeg());
    }
}
