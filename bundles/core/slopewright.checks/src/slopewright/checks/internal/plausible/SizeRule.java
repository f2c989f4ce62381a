package slopewright.checks.internal.plausible;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachType;
import slopewright.model.Helipad;
import slopewright.model.Identified;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;

/**
 * Sizes fit what they belong to (own bands around the published sizes). A strip is longer than its runway by no more than a kilometre, for
 * Annex 14 Vol I, 3.4.2 asks for 60 m at each end, and as wide as its code number: 50 to 200 m for 1 and 2, 100 to 400 m for 3 and 4; one
 * that is narrower than the approaches want is not evaluated until the runway was read back. A runway is half as wide as the narrowest of
 * its code number, or more, and as long as its code number says ({@link CodeNumberSizes}). A strip of an instrument runway has an
 * instrument approach. A landing distance is half of what lies behind the threshold or more. A safety area goes 3 m beyond its FATO on
 * each side (Annex 14 Vol II, 3.1.20) and is no wider than three of it; a FATO is no longer than five TLOFs or three of its widths. A
 * warning: sizes that decide have rules of their own.
 */
public final class SizeRule extends ProjectRule {
    private static final double STRIP_BEYOND_M = 1000;
    private static final double LARGE_LEAST_M = 100;
    private static final double LARGE_MOST_M = 400;
    private static final double SMALL_LEAST_M = 50;
    private static final double SMALL_MOST_M = 200;
    private static final double LEAST_SHARE = 0.5;
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
            double height = aerodrome.getElevationM() == null ? 0 : Math.max(0, aerodrome.getElevationM());
            SecondReading reading = new SecondReading(evaluation.project(), outcomes);
            for (Runway runway : aerodrome.getRunways()) {
                runway(runway, outcomes);
                if (CodeNumberSizes.isOne(runway)) {
                    codeNumber(runway, height, reading, outcomes);
                }
            }
            aerodrome.getHelipads().forEach(pad -> helipad(pad, outcomes));
        }
    }

    private static void runway(Runway runway, OutcomeCollector outcomes) {
        if (runway.getStripLengthM() != null && runway.getLengthM() != null) {
            between(runway, "strip-length", runway.getStripLengthM(), runway.getLengthM(), runway.getLengthM() + STRIP_BEYOND_M, outcomes);
        }
        for (RunwayEnd end : runway.getEnds()) {
            if (end.getLandingDistanceM() != null && runway.getLengthM() != null) {
                double behind = runway.getLengthM() - (end.getDisplacedThresholdM() == null ? 0 : end.getDisplacedThresholdM());
                outcomes.about(end).measured(Measure.atLeast(end.getLandingDistanceM(), behind * LEAST_SHARE, "m"))
                        .saying("landing-distance", Words.m(end.getLandingDistanceM()), Words.m(behind)).advising("correct").add();
            }
        }
    }

    /** What the code number and the approaches say of the sizes; an elevation in metres. */
    private static void codeNumber(Runway runway, double elevationM, SecondReading reading, OutcomeCollector outcomes) {
        CodeNumberSizes sizes = new CodeNumberSizes(runway);
        if (runway.getStripWidthM() != null) {
            between(runway, "strip-width", runway.getStripWidthM(), sizes.isLarge() ? LARGE_LEAST_M : SMALL_LEAST_M,
                    sizes.isLarge() ? LARGE_MOST_M : SMALL_MOST_M, outcomes);
            sizes.strip(reading);
        }
        if (runway.getWidthM() != null) {
            double least = sizes.narrowestM() * LEAST_SHARE;
            outcomes.about(runway).measured(Measure.atLeast(runway.getWidthM(), least, "m"))
                    .saying("width", Words.m(runway.getWidthM()), Words.m(least)).advising("correct").add();
        }
        sizes.compare(elevationM, reading, outcomes);
        boolean visual = !runway.getEnds().isEmpty()
                && runway.getEnds().stream().allMatch(end -> end.getApproachType() == ApproachType.VISUAL);
        if (visual && runway.getStripWidthM() != null) {
            outcomes.about(runway).met(!sizes.hasInstrumentStrip())
                    .saying("visual-strip", Words.m(runway.getStripWidthM()), Words.m(sizes.instrumentStripM())).advising("approach").add();
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
