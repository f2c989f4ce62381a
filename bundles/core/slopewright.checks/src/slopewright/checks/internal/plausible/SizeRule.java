package slopewright.checks.internal.plausible;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.Helipad;
import slopewright.model.Identified;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;

/**
 * Sizes fit what they belong to (own bands around the published sizes). A strip is longer than its runway by no more than a kilometre, for
 * Annex 14 Vol I, 3.4.2 asks for 60 m at each end, and as wide as its code number: 50 to 200 m for 1 and 2, 100 to 400 m for 3 and 4. A
 * runway is half as wide as the narrowest of its code number in Annex 14 Vol I, 3.1.10, or more: 18, 23, 30 and 45 m for 1 to 4. A
 * landing distance is half of what lies behind the threshold or more. A safety area goes 3 m beyond its FATO on each side (Annex 14 Vol
 * II, 3.1.20) and is no wider than three of it; a FATO is no longer than five TLOFs or three of its widths. A warning: sizes that decide
 * have rules of their own.
 */
public final class SizeRule extends ProjectRule {
    private static final double STRIP_BEYOND_M = 1000;
    private static final int LARGE_CODE = 3;
    private static final double LARGE_LEAST_M = 100;
    private static final double LARGE_MOST_M = 400;
    private static final double SMALL_LEAST_M = 50;
    private static final double SMALL_MOST_M = 200;
    private static final double LEAST_SHARE = 0.5;
    private static final double[] NARROWEST_M = {18, 23, 30, 45};
    private static final double SAFETY_M = 6;
    private static final double SAFETY_TIMES = 3;
    private static final double FATO_TIMES = 5;

    /** Made by the service loader. */
    public SizeRule() {
        super("DATA-54", Severity.WARNING);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        Aerodrome aerodrome = evaluation.project().getAerodrome();
        if (aerodrome != null) {
            aerodrome.getRunways().forEach(runway -> runway(runway, outcomes));
            aerodrome.getHelipads().forEach(pad -> helipad(pad, outcomes));
        }
    }

    private static void runway(Runway runway, OutcomeCollector outcomes) {
        if (runway.getStripLengthM() != null && runway.getLengthM() != null) {
            between(runway, "strip-length", runway.getStripLengthM(), runway.getLengthM(), runway.getLengthM() + STRIP_BEYOND_M, outcomes);
        }
        if (runway.getStripWidthM() != null && runway.getCodeNumber() != null) {
            boolean large = runway.getCodeNumber() >= LARGE_CODE;
            between(runway, "strip-width", runway.getStripWidthM(), large ? LARGE_LEAST_M : SMALL_LEAST_M,
                    large ? LARGE_MOST_M : SMALL_MOST_M, outcomes);
        }
        if (runway.getWidthM() != null && runway.getCodeNumber() != null && runway.getCodeNumber() >= 1
                && runway.getCodeNumber() <= NARROWEST_M.length) {
            double least = NARROWEST_M[runway.getCodeNumber() - 1] * LEAST_SHARE;
            outcomes.about(runway).measured(Measure.atLeast(runway.getWidthM(), least, "m"))
                    .saying("width", Words.m(runway.getWidthM()), Words.m(least)).advising("correct").add();
        }
        for (RunwayEnd end : runway.getEnds()) {
            if (end.getLandingDistanceM() != null && runway.getLengthM() != null) {
                double behind = runway.getLengthM() - (end.getDisplacedThresholdM() == null ? 0 : end.getDisplacedThresholdM());
                outcomes.about(end).measured(Measure.atLeast(end.getLandingDistanceM(), behind * LEAST_SHARE, "m"))
                        .saying("landing-distance", Words.m(end.getLandingDistanceM()), Words.m(behind)).advising("correct").add();
            }
        }
    }

    private static void helipad(Helipad pad, OutcomeCollector outcomes) {
        Double width = pad.getFatoWidthM();
        Double length = pad.getFatoLengthM();
        if (pad.getSafetyAreaWidthM() != null && width != null) {
            between(pad, "safety-area", pad.getSafetyAreaWidthM(), width + SAFETY_M, width * SAFETY_TIMES, outcomes);
        }
        if (length != null && width != null && pad.getTlofLengthM() != null) {
            between(pad, "fato", length, 0, Math.max(FATO_TIMES * pad.getTlofLengthM(), SAFETY_TIMES * width), outcomes);
        }
    }

    private static void between(Identified element, String what, double size, double least, double most, OutcomeCollector outcomes) {
        outcomes.about(element).measured(Measure.between(size, least, most, "m"))
                .saying(what, Words.m(size), Words.m(least), Words.m(most)).advising("correct").add();
    }
}
