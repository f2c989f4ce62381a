package slopewright.checks.internal.data;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.messages.Words;
import slopewright.model.ApproachHost;
import slopewright.model.Helipad;
import slopewright.model.Runway;
import slopewright.model.util.Projects;

/**
 * A strip is no smaller than its runway, a FATO no smaller than its TLOF, a safety area no narrower than its FATO. Severity fail: the width
 * of the safety area is the inner edge of the obstacle surface, and the FATO decides where it begins.
 */
public final class NestedSizesRule extends HostRule {
    /** Made by the service loader. */
    public NestedSizesRule() {
        super("DATA-26", Severity.FAIL);
    }

    @Override
    void check(ApproachHost host, OutcomeCollector outcomes) {
        boolean any = false;
        if (Projects.runway(host).isPresent()) {
            Runway runway = Projects.runway(host).get();
            any |= compare(host, runway.getStripLengthM(), runway.getLengthM(), "strip-length", outcomes);
            any |= compare(host, runway.getStripWidthM(), runway.getWidthM(), "strip-width", outcomes);
        } else {
            Helipad pad = Projects.helipad(host).orElseThrow();
            any |= compare(host, pad.getFatoLengthM(), pad.getTlofLengthM(), "fato-length", outcomes);
            any |= compare(host, pad.getFatoWidthM(), pad.getTlofWidthM(), "fato-width", outcomes);
            any |= compare(host, pad.getSafetyAreaWidthM(), pad.getFatoWidthM(), "safety-area", outcomes);
        }
        if (!any) {
            throw DataRules.nothingToCompare();
        }
    }

    private static boolean compare(ApproachHost host, Double outer, Double inner, String what, OutcomeCollector outcomes) {
        if (outer == null || inner == null) {
            return false;
        }
        outcomes.about(host).measured(Measure.atLeast(outer, inner, "m")).saying(what, Words.m(outer), Words.m(inner))
                .advising("correct").add();
        return true;
    }
}
