package slopewright.checks.internal.plausible;

import java.util.List;
import java.util.Objects;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Words;
import slopewright.model.AeroplaneGroup;
import slopewright.model.ApproachHost;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;

/**
 * The heights of an aeroplane fit each other. On approach the eye is from 0.9 to 1.8 times as high above the path of the wheels as it
 * stands above them on the ground, for the aeroplane flies nose up, or a little down; and the antenna of the glide path receiver is in the
 * nose, lower than the eye by a fifth of that height at least and no lower than the wheels. A light aeroplane has its eye no more than
 * 3.5 m above the path of its wheels (own bands). The shares of those that use one approach are no more than the whole of its traffic, to
 * the percent to which they are known. A warning: the heights are the operator's.
 */
public final class AeroplaneHeightsRule extends ProjectRule {
    private static final double LEAST_RATIO = 0.9;
    private static final double MOST_RATIO = 1.8;
    private static final double ANTENNA_RATIO = 0.2;
    private static final double MOST_LIGHT_M = 3.5;
    private static final double WHOLE_PERCENT = 101;

    /** Made by the service loader. */
    public AeroplaneHeightsRule() {
        super("DATA-49", Severity.WARNING);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        if (evaluation.project().getAerodrome() == null) {
            return;
        }
        Projects.hosts(evaluation.project()).forEach(host -> shares(host, outcomes));
        for (AeroplaneGroup group : evaluation.project().getAerodrome().getAeroplaneGroups()) {
            Double standing = group.getStaticCockpitToWheelM();
            Double flying = group.getEyeToWheelM();
            Double antenna = group.getEyeToAntennaM();
            if (standing != null && flying != null && standing > 0) {
                outcomes.about(group).measured(Measure.between(flying / standing, LEAST_RATIO, MOST_RATIO, ""))
                        .saying("wheels", ElementNames.of(group), Words.m(flying), Words.m(standing), Words.number(LEAST_RATIO),
                                Words.number(MOST_RATIO)).advising("correct").add();
            }
            if (Boolean.TRUE.equals(group.getLightNonTurbojet()) && flying != null) {
                outcomes.about(group).measured(Measure.atMost(flying, MOST_LIGHT_M, "m"))
                        .saying("light", ElementNames.of(group), Words.m(flying), Words.m(MOST_LIGHT_M)).advising("correct").add();
            }
            Double eye = standing == null ? flying : standing;
            if (antenna != null && eye != null && eye > 0) {
                outcomes.about(group).measured(Measure.between(antenna / eye, ANTENNA_RATIO, 1, ""))
                        .saying("antenna", ElementNames.of(group), Words.m(antenna), Words.m(eye), Words.number(ANTENNA_RATIO))
                        .advising("correct").add();
            }
        }
    }

    private static void shares(ApproachHost host, OutcomeCollector outcomes) {
        List<Double> shares = host.getRegularGroups().stream().map(AeroplaneGroup::getSharePercent).filter(Objects::nonNull).toList();
        if (shares.size() > 1) {
            double sum = shares.stream().mapToDouble(Double::doubleValue).sum();
            outcomes.about(host).measured(Measure.atMost(sum, WHOLE_PERCENT, "%"))
                    .saying("shares", ElementNames.of(host), Words.percent(sum)).advising("correct").add();
        }
    }
}
