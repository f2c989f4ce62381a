package slopewright.ui.plan.internal;

import java.util.List;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.Attempt;
import slopewright.evaluation.WheelClearance;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.model.ApproachHost;
import slopewright.siting.Siting;

/**
 * What a layout that is tried out would give, read from its evaluation before the trial is taken back.
 *
 * @param host      where it stands
 * @param siting    what its units give, or why nothing
 * @param obstacles everything that stands there against its obstacle surface, or why it cannot be compared
 * @param surveyed  whether a survey says that nothing else stands there
 * @param wheels    the wheel clearance of each aeroplane group in regular use
 */
public record TrialFigures(ApproachHost host, Attempt<Siting> siting, Attempt<SurfaceComparison> obstacles, boolean surveyed,
        List<WheelClearance> wheels) {

    /** Reads an evaluation. */
    public static TrialFigures of(AidEvaluation evaluation) {
        return new TrialFigures(evaluation.host(), evaluation.siting(), evaluation.obstacles(), evaluation.isSurveyed(),
                evaluation.wheelClearances());
    }
}
