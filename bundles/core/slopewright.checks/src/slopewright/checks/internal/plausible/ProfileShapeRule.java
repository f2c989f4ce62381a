package slopewright.checks.internal.plausible;

import java.util.ArrayList;
import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.Identified;
import slopewright.model.ProfilePoint;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.siting.ElementNames;

/**
 * A profile goes on from point to point, no further than the runway and half a kilometre, and bends as ground does: from one point to the
 * next no runway changes its gradient by more than twice what Annex 14 Vol I, 3.1.15 allows, which is 1.5 in a hundred for code numbers 3
 * and 4 and 2 for 1 and 2 (own band, so that an old runway fits), and no ground beside it by more than ten. A runway that changes it by
 * more than is allowed waits for a second reading, for a wrong level looks so too. A warning: what rests on a wrong point is measured by
 * rules of its own where another entry says it again.
 */
public final class ProfileShapeRule extends ProjectRule {
    private static final double BEYOND_M = 500;
    private static final int LARGE_CODE = 3;
    private static final double LARGE_PERCENT = 3;
    private static final double SMALL_PERCENT = 4;
    private static final double PUBLISHED_TIMES = 2;
    private static final double GROUND_PERCENT = 10;
    private static final double PERCENT = 100;

    /** Made by the service loader. */
    public ProfileShapeRule() {
        super("DATA-45", Severity.WARNING);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        Aerodrome aerodrome = evaluation.project().getAerodrome();
        if (aerodrome == null) {
            return;
        }
        SecondReading reading = new SecondReading(evaluation.project(), outcomes);
        for (Runway runway : aerodrome.getRunways()) {
            check(runway, runway, runway.getCentreLine(), "centre-line", mostPercent(runway), reading, outcomes);
            for (RunwayEnd end : runway.getEnds()) {
                check(end, runway, end.getSiteProfile(), "site-profile", GROUND_PERCENT, reading, outcomes);
            }
        }
    }

    private static double mostPercent(Runway runway) {
        return runway.getCodeNumber() != null && runway.getCodeNumber() >= LARGE_CODE ? LARGE_PERCENT : SMALL_PERCENT;
    }

    private static void check(Identified element, Runway runway, List<ProfilePoint> profile, String what, double mostPercent,
            SecondReading reading, OutcomeCollector outcomes) {
        if (profile.isEmpty()) {
            return;
        }
        Argument name = Words.term("profile." + what);
        List<ProfilePoint> points = new ArrayList<>(profile);
        for (ProfilePoint point : profile) {
            if (point.getChainageM() == null || point.getElevationM() == null) {
                points.remove(point);
                outcomes.about(point).met(false).saying("incomplete", name, ElementNames.of(element)).advising("correct").add();
            }
        }
        double most = (runway.getLengthM() == null ? Double.MAX_VALUE / 2 : runway.getLengthM()) + BEYOND_M;
        double steepest = 0;
        List<Double> gradients = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            ProfilePoint point = points.get(i);
            double chainage = point.getChainageM();
            if (chainage < -BEYOND_M || chainage > most || i > 0 && chainage <= points.get(i - 1).getChainageM()) {
                outcomes.about(point).met(false).saying("out-of-order", name, ElementNames.of(element), Words.m(chainage))
                        .advising("correct").add();
                return;
            }
            if (i > 0) {
                ProfilePoint before = points.get(i - 1);
                gradients.add((point.getElevationM() - before.getElevationM()) / (chainage - before.getChainageM()) * PERCENT);
            }
        }
        for (int i = 1; i < gradients.size(); i++) {
            steepest = Math.max(steepest, Math.abs(gradients.get(i) - gradients.get(i - 1)));
        }
        if (!gradients.isEmpty()) {
            double first = gradients.size() == 1 ? Math.abs(gradients.get(0)) : steepest;
            boolean bendsAsRunway = element == runway && gradients.size() > 1;
            double published = mostPercent / PUBLISHED_TIMES;
            if (bendsAsRunway && first > published && first <= mostPercent) {
                reading.ask(runway, Message.of("DATA-45.bends-more", name, ElementNames.of(runway), Words.percent(first),
                        Words.percent(published)));
                return;
            }
            double limit = bendsAsRunway && first <= published ? published : mostPercent;
            outcomes.about(element).measured(Measure.atMost(first, limit, "%"))
                    .step("gradients", Words.list(gradients.stream().map(Words::percent).toList()))
                    .saying("bends", name, ElementNames.of(element), Words.percent(first), Words.percent(limit)).advising("correct")
                    .add();
        }
    }
}
