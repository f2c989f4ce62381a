package slopewright.evaluation.obstacles;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.geometry.StoredResolution;
import slopewright.messages.Message;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachDirection;
import slopewright.model.ApproachHost;
import slopewright.model.ObstacleSurvey;
import slopewright.siting.ElementNames;

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

    /** Returns whether a survey of the approach itself reaches over the whole of an area in its frame, to what the model can hold. */
    public static boolean covers(ObstacleSurvey survey, ProtectionSurface area) {
        double spare = StoredResolution.LENGTH_M;
        return survey.getReachM() != null && halfWidthM(survey).isPresent() && survey.getReachM() + spare >= neededReachM(survey, area)
                && halfWidthM(survey).getAsDouble() + spare >= neededHalfWidthM(area);
    }

    /** Returns whether one of the surveys of an aerodrome that name an approach reaches over the whole of an area in its frame. */
    public static boolean covers(Aerodrome aerodrome, ApproachHost host, ProtectionSurface area) {
        return aerodrome.getObstacleSurveys().stream().anyMatch(survey -> survey.getHosts().contains(host) && covers(survey, area));
    }

    /**
     * Returns whether one of some surveys that say everything of themselves reaches over an area as it lies for another landing
     * direction at the same hover point.
     *
     * @param surveys    surveys of the project
     * @param directions approach directions of the helipad
     * @param area       the area in the frame of its own landing direction
     * @param bearingDeg that direction, decimal degrees from true north
     */
    public static boolean covers(List<ObstacleSurvey> surveys, List<ApproachDirection> directions, ProtectionSurface area,
            double bearingDeg) {
        return reaching(surveys, directions, area, bearingDeg).stream().anyMatch(survey -> lacking(survey).isEmpty());
    }

    /** Returns the surveys that reach over an area as it lies for another landing direction, whatever else they say of themselves. */
    public static List<ObstacleSurvey> reaching(List<ObstacleSurvey> surveys, List<ApproachDirection> directions, ProtectionSurface area,
            double bearingDeg) {
        return surveys.stream().filter(survey -> reaches(survey, directions, area, bearingDeg)).toList();
    }

    private static boolean reaches(ObstacleSurvey survey, List<ApproachDirection> directions, ProtectionSurface area, double bearingDeg) {
        return directions.stream().filter(direction -> direction.getTrueBearingDeg() != null && survey.getHosts().contains(direction))
                .anyMatch(direction -> coversTurned(survey, area, bearingDeg - direction.getTrueBearingDeg()));
    }

    /** Returns what a survey does not say of itself, by its names in the catalogue; how far it reaches matters where it names a place. */
    public static List<Message> lacking(ObstacleSurvey survey) {
        boolean reaches = survey.getHosts().isEmpty() || survey.getReachM() != null;
        boolean wide = survey.getHosts().isEmpty() || isAllRound(survey) || survey.getHalfWidthM() != null;
        List<Message> lacking = new ArrayList<>();
        unless(isSaid(survey.getDate()), "missing.survey-date", survey, lacking);
        unless(reaches, "missing.survey-reach", survey, lacking);
        unless(wide, "missing.survey-half-width", survey, lacking);
        unless(isAccuracy(survey.getHorizontalAccuracyM()) && isAccuracy(survey.getVerticalAccuracyM()), "missing.survey-accuracy", survey,
                lacking);
        unless(isSaid(survey.getSource()), "missing.survey-source", survey, lacking);
        return lacking;
    }

    private static boolean isSaid(String text) {
        return text != null && !text.isBlank();
    }

    /** No survey is exact. */
    private static boolean isAccuracy(Double accuracyM) {
        return accuracyM != null && accuracyM > 0;
    }

    private static void unless(boolean there, String key, ObstacleSurvey survey, List<Message> lacking) {
        if (!there) {
            lacking.add(Message.of(key, ElementNames.of(survey)));
        }
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
