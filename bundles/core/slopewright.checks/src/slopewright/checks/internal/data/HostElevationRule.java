package slopewright.checks.internal.data;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.messages.Words;
import slopewright.model.ApproachHost;
import slopewright.model.Helipad;
import slopewright.model.Place;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;

/**
 * One point has one elevation, to the millimetre that the model keeps: that of the threshold or the TLOF and that of its place, and of the
 * runway extremity where the threshold is not displaced. Severity fail: every height counts from it.
 */
public final class HostElevationRule extends HostRule {
    /** Made by the service loader. */
    public HostElevationRule() {
        super("DATA-19", Severity.FAIL);
    }

    @Override
    void check(ApproachHost host, OutcomeCollector outcomes) {
        boolean any = false;
        if (host instanceof RunwayEnd end) {
            any |= compare(host, end.getThresholdElevationM(), end.getThreshold(), "threshold", outcomes);
            boolean extremity = RunwayGeometry.displacedM(end) == 0;
            any |= extremity && compare(host, end.getThresholdElevationM(), end.getExtremityElevationM(), "extremity", outcomes);
        } else {
            Helipad pad = Projects.helipad(host).orElseThrow();
            any = compare(host, pad.getElevationM(), pad.getPlace(), "helipad", outcomes);
        }
        if (!any) {
            throw DataRules.nothingToCompare();
        }
    }

    private static boolean compare(ApproachHost host, Double elevation, Place place, String what, OutcomeCollector outcomes) {
        return compare(host, elevation, place == null ? null : place.getElevationM(), what, outcomes);
    }

    private static boolean compare(ApproachHost host, Double elevation, Double second, String what, OutcomeCollector outcomes) {
        if (elevation == null || second == null) {
            return false;
        }
        outcomes.about(host).measured(Measure.within(second, elevation, 0, "m")).saying(what, Words.mm(elevation), Words.mm(second))
                .advising("correct").add();
        return true;
    }
}
