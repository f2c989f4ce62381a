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
 * Annex 14 Vol I, 3.4.2 asks for 60 m at each end, and as wide as its code number: 50 to 200 m for 1 and 2, 100 to 400 m for 3 and 4. A
 * runway is half as wide as the narrowest of its code number in Annex 14 Vol I, 3.1.10, or more: 18, 23, 30 and 45 m for 1 to 4. A
 * code number is that of the aeroplane reference field length: below 800, 1200 and 1800 m for 1 to 3 (Annex 14 Vol I, Table 1-1, from
 * memory). A runway is up to half as long again as its aeroplane needs at its elevation, for which seven in a hundred are added every 300 m
 * (Doc 9157 Part 1, from memory), and no shorter than three quarters of the least; one that is as long and as wide, and has as wide a strip
 * (80 m for 2, 150 m for 3), as the next code number asks is of that. A strip of 280 m, or 140 m for 1 and 2, is that of an instrument
 * runway, which one of the approaches must then be (Annex 14 Vol I, 3.4.3, from memory). A
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
    private static final double[] FIELD_LENGTH_BELOW_M = {800, 1200, 1800};
    private static final double[] NEXT_STRIP_M = {80, 150};
    private static final double MOST_TIMES_LONGER = 1.5;
    private static final double LEAST_OF_LENGTH = 0.75;
    private static final double LONGER_A_METRE_UP = 0.07 / 300;
    private static final double LARGE_INSTRUMENT_STRIP_M = 280;
    private static final double SMALL_INSTRUMENT_STRIP_M = 140;
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
            for (Runway runway : aerodrome.getRunways()) {
                runway(runway, outcomes);
                if (runway.getCodeNumber() != null && runway.getCodeNumber() >= 1 && runway.getCodeNumber() <= NARROWEST_M.length) {
                    codeNumber(runway, 1 + LONGER_A_METRE_UP * height, outcomes);
                    approaches(runway, outcomes);
                }
            }
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

    /** Compares the code number with the length, and with all three sizes together; {@code times} is what the elevation does to lengths. */
    private static void codeNumber(Runway runway, double times, OutcomeCollector outcomes) {
        int code = runway.getCodeNumber();
        Double length = runway.getLengthM();
        if (length == null) {
            return;
        }
        double least = code == 1 ? 0 : FIELD_LENGTH_BELOW_M[code - 2] * LEAST_OF_LENGTH;
        double most = code == NARROWEST_M.length ? Double.MAX_VALUE : FIELD_LENGTH_BELOW_M[code - 1] * MOST_TIMES_LONGER * times;
        if (length < least || length > most) {
            outcomes.about(runway).measured(Measure.between(length, least, most, "m"))
                    .saying("code-length", Words.m(length), Words.count(code)).advising("correct").add();
        } else if (code <= NEXT_STRIP_M.length && runway.getWidthM() != null && runway.getStripWidthM() != null) {
            boolean next = length >= FIELD_LENGTH_BELOW_M[code - 1] * times && runway.getWidthM() >= NARROWEST_M[code]
                    && runway.getStripWidthM() >= NEXT_STRIP_M[code - 1];
            outcomes.about(runway).met(!next).saying(next ? "next-code" : "code", Words.count(code), Words.m(length),
                    Words.m(runway.getWidthM()), Words.m(runway.getStripWidthM()), Words.count(code + 1)).advising("correct").add();
        }
    }

    /** A strip as wide as that of an instrument runway has an instrument approach. */
    private static void approaches(Runway runway, OutcomeCollector outcomes) {
        boolean visual = !runway.getEnds().isEmpty()
                && runway.getEnds().stream().allMatch(end -> end.getApproachType() == ApproachType.VISUAL);
        if (visual && runway.getStripWidthM() != null) {
            double least = runway.getCodeNumber() >= LARGE_CODE ? LARGE_INSTRUMENT_STRIP_M : SMALL_INSTRUMENT_STRIP_M;
            outcomes.about(runway).met(runway.getStripWidthM() < least)
                    .saying("visual-strip", Words.m(runway.getStripWidthM()), Words.m(least)).advising("approach").add();
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
