package slopewright.evaluation.obstacles;

import java.util.List;
import java.util.OptionalDouble;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.geometry.StoredResolution;
import slopewright.model.ApproachDirection;
import slopewright.model.ObstacleSurvey;

/**
 * How far obstacle surveys reach over an area in the frame of an approach: outward from the threshold or hover point and to either side of
 * the extended centre line, or as far in every direction about it. Obstacles that are entered say what stands there; only a survey says
 * that nothing else does.
 */
public final class SurveyReach {

    private SurveyReach() {
    }

    /** Returns whether a survey reaches as far in every direction. */
    public static boolean isAllRound(ObstacleSurvey survey) {
        return Boolean.TRUE.equals(survey.getAllRound());
    }

    /** Returns how far to either side a survey reaches, metres; empty where it does not say. */
    public static OptionalDouble halfWidthM(ObstacleSurvey survey) {
        Double half = isAllRound(survey) ? survey.getReachM() : survey.getHalfWidthM();
        return half == null ? OptionalDouble.empty() : OptionalDouble.of(half);
    }

    /** Returns how far out an area reaches, metres: before the origin, or for a survey all round from it. */
    public static double neededReachM(ObstacleSurvey survey, ProtectionSurface area) {
        return isAllRound(survey)
                ? area.corners().stream().mapToDouble(corner -> Math.hypot(corner.alongM(), corner.rightM())).max().orElseThrow()
                : area.corners().stream().mapToDouble(corner -> -corner.alongM()).max().orElseThrow();
    }

    /** Returns how far an area reaches from the extended centre line, metres. */
    public static double neededHalfWidthM(ProtectionSurface area) {
        return area.corners().stream().mapToDouble(FramePoint::rightM).map(Math::abs).max().orElseThrow();
    }

    /** Returns whether a survey of the approach itself reaches over the whole of an area in its frame. */
    public static boolean covers(ObstacleSurvey survey, ProtectionSurface area) {
        return survey.getReachM() != null && halfWidthM(survey).isPresent() && survey.getReachM() >= neededReachM(survey, area)
                && halfWidthM(survey).getAsDouble() >= neededHalfWidthM(area);
    }

    /**
     * Returns whether one of some surveys reaches over an area as it lies for another landing direction at the same hover point.
     *
     * @param surveys    surveys of the project
     * @param directions approach directions of the helipad
     * @param area       the area in the frame of its own landing direction
     * @param bearingDeg that direction, decimal degrees from true north
     */
    public static boolean covers(List<ObstacleSurvey> surveys, List<ApproachDirection> directions, ProtectionSurface area,
            double bearingDeg) {
        for (ObstacleSurvey survey : surveys) {
            for (ApproachDirection direction : directions) {
                Double own = direction.getTrueBearingDeg();
                if (own != null && survey.getHosts().contains(direction) && coversTurned(survey, area, bearingDeg - own)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean coversTurned(ObstacleSurvey survey, ProtectionSurface area, double turnDeg) {
        if (isAllRound(survey)) {
            return covers(survey, area);
        }
        ProtectionSurface turned = area.turnedAboutOrigin(Angles.normaliseBearingDeg(turnDeg));
        return covers(survey, turned) && behindM(turned) <= behindM(area) + StoredResolution.LENGTH_M;
    }

    /** Returns how far an area lies beyond the origin, where a survey of an approach says no more than that it begins there. */
    private static double behindM(ProtectionSurface area) {
        return area.corners().stream().mapToDouble(FramePoint::alongM).max().orElseThrow();
    }
}
