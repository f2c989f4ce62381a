package slopewright.evaluation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EStructuralFeature;

import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachType;
import slopewright.model.EquipmentType;
import slopewright.model.Identified;
import slopewright.model.Inspection;
import slopewright.model.LightUnit;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleSurvey;
import slopewright.model.ProfilePoint;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;

/**
 * What a project holds that no result rests on: attributes of the model that are kept and printed for the record alone, and elements that
 * lie where nothing looks. The report names both. Everything else that the model holds is looked at by a result or a rule.
 */
public final class KeptForTheRecord {
    private static final Set<String> FEATURES = Set.of("Named.name", "Named.remarks", "Project.revision", "Project.author",
            "Project.organisation", "Project.documentNumber", "Project.client", "Project.checkedBy", "Project.approvedBy",
            "ObstacleSurvey.source", "Obstacle.lighted", "Obstacle.source", "Obstacle.date", "GroundLevel.source",
            "GroundLevel.date", "RunwayEnd.siteProfileSource",
            "RunwayEnd.siteProfileDate",
            "SurveyBlock.source", "SurveyBlock.date", "BackgroundImage.source", "BackgroundImage.date",
            "BackgroundImage.opacityPercent",
            "BackgroundImage.hidden", "Runway.surface", "Runway.paved", "GlidePathAid.kind", "MeasuredUnit.person",
            "MeasuredUnit.instrument", "MeasuredUnit.date", "Inspection.organisation", "ReviewNote.text",
            "ReviewNote.person", "EquipmentType.massKg", "EquipmentType.supply", "Circuit.supply", "AeroplaneGroup.sharePercent",
            "ValueOverride.reason", "ValueOverride.person", "ValueOverride.date", "MagneticVariation.source", "Aerodrome.verticalDatum",
            "Aerodrome.coordinateEpoch", "Aerodrome.coordinateAccuracyM");
    private static final Set<ApproachType> NO_SWITCH_OVER = Set.of(ApproachType.VISUAL, ApproachType.PRECISION_CAT_II_III);
    private static final Set<String> HAND_CONTROLS = Set.of("EquipmentType.plateZero", "EquipmentType.plateSense",
            "EquipmentType.lowerHair", "EquipmentType.upperHair", "EquipmentType.handOrder");
    private static final double GLIDE_PATH_REACH_M = 1000;

    private KeptForTheRecord() {
    }

    /** Returns whether a feature of the model is kept for the record alone. */
    public static boolean contains(EStructuralFeature feature) {
        return FEATURES.contains(feature.getEContainingClass().getName() + "." + feature.getName());
    }

    /**
     * Returns whether an entry of an element is kept for the record alone: its feature always is, or nothing looks at it where it stands.
     * How far an obstacle survey reaches is asked where it names an approach; what lies under the approach, where the switch-over time of
     * the supply is limited, which is before the indicator of an approach with instruments and of one that does not say; from how far an
     * indicator was seen in flight, where the rule set says from how far; the controls for the hand, of equipment of a portable indicator;
     * how the aerodrome is called, where values are confirmed for it.
     */
    public static boolean contains(ProjectEvaluation evaluation, Identified element, EStructuralFeature feature) {
        if (contains(feature)) {
            return true;
        }
        String name = feature.getEContainingClass().getName() + "." + feature.getName();
        if (element instanceof Aerodrome aerodrome) {
            return name.equals("Aerodrome.identifier") && aerodrome.eContainer() instanceof Project project
                    && project.getConfirmations().isEmpty();
        }
        if (element instanceof ObstacleSurvey survey) {
            return survey.getHosts().isEmpty() && Set.of("ObstacleSurvey.reachM", "ObstacleSurvey.halfWidthM").contains(name);
        }
        if (element instanceof RunwayEnd end) {
            return name.equals("RunwayEnd.hazardousTerrain") && (end.getAids().isEmpty() || NO_SWITCH_OVER.contains(end.getApproachType()));
        }
        if (element instanceof EquipmentType type) {
            return HAND_CONTROLS.contains(name) && evaluation.aids().stream().map(AidEvaluation::aid)
                    .noneMatch(aid -> aid.getEquipment() == type && Boolean.TRUE.equals(aid.getPortable()));
        }
        return element instanceof Inspection inspection && name.equals("Inspection.usableRangeM")
                && evaluation.aids().stream().filter(aid -> aid.aid() == inspection.eContainer()).anyMatch(aid -> !asksRange(aid));
    }

    private static boolean asksRange(AidEvaluation aid) {
        return aid.family().map(family -> aid.rules().find(family.ruleKey() + ".useful-range-day-m").isPresent()).orElse(true);
    }

    /** Returns the features, each as class and name joined by a dot. */
    public static Set<String> features() {
        return FEATURES;
    }

    /**
     * Returns which features of a project have a value that is kept for the record, and how often.
     *
     * @param evaluation the project
     * @return the features as class and name joined by a dot, in the order in which they come up
     */
    public static Map<String, Integer> entries(ProjectEvaluation evaluation) {
        Map<String, Integer> found = new LinkedHashMap<>();
        for (Identified element : Ids.elements(evaluation.project())) {
            for (EAttribute attribute : element.eClass().getEAllAttributes()) {
                if (contains(attribute) ? element.eGet(attribute) != null
                        : element.eIsSet(attribute) && contains(evaluation, element, attribute)) {
                    found.merge(attribute.getEContainingClass().getName() + "." + attribute.getName(), 1, Integer::sum);
                }
            }
        }
        return found;
    }

    /**
     * Returns the elements on which no result rests: runway ends and approaches without an aid, obstacles outside the obstacle surface of
     * every aid, and points of a profile away from every unit and, on the centre line, from every electronic glide path.
     *
     * @param evaluation the project
     * @return the elements in document order
     */
    public static List<Identified> elements(ProjectEvaluation evaluation) {
        List<Identified> found = new ArrayList<>();
        Aerodrome aerodrome = evaluation.project().getAerodrome();
        if (aerodrome == null) {
            return found;
        }
        for (Runway runway : aerodrome.getRunways()) {
            found.addAll(centreLine(runway));
            runway.getEnds().forEach(end -> found.addAll(siteProfile(end)));
        }
        Projects.hosts(evaluation.project()).stream().filter(host -> host.getAids().isEmpty()).forEach(found::add);
        found.addAll(obstacles(evaluation, aerodrome));
        return found;
    }

    private static List<Obstacle> obstacles(ProjectEvaluation evaluation, Aerodrome aerodrome) {
        Set<Object> inside = new HashSet<>();
        for (AidEvaluation aid : evaluation.aids()) {
            Attempt<SurfaceComparison> compared = aid.obstacles();
            compared.value().ifPresent(surface -> surface.inside().forEach(found -> inside.add(found.element())));
            compared.value().ifPresent(surface -> surface.uncompared().forEach(left -> inside.add(left.element())));
        }
        return aerodrome.getObstacles().stream().filter(obstacle -> !inside.contains(obstacle)).toList();
    }

    private static List<ProfilePoint> siteProfile(RunwayEnd end) {
        List<Double> used = end.getAids().stream().map(ApproachAid::getUnits).flatMap(List::stream).map(LightUnit::getAlongM)
                .filter(Objects::nonNull).toList();
        return away(end.getSiteProfile(), used);
    }

    private static List<ProfilePoint> centreLine(Runway runway) {
        List<Double> used = new ArrayList<>();
        for (RunwayEnd end : runway.getEnds()) {
            double displaced = end.getDisplacedThresholdM() == null ? 0 : end.getDisplacedThresholdM();
            boolean first = runway.getEnds().get(0) == end;
            if (end.getGlidePath() != null && (first || runway.getLengthM() != null)) {
                double threshold = first ? displaced : runway.getLengthM() - displaced;
                used.add(threshold);
                used.add(threshold + (first ? GLIDE_PATH_REACH_M : -GLIDE_PATH_REACH_M));
            }
        }
        return away(runway.getCentreLine(), used);
    }

    /** The points that are not next to a place that is looked at, nor between two of them. */
    private static List<ProfilePoint> away(List<ProfilePoint> profile, List<Double> used) {
        List<ProfilePoint> points = profile.stream().filter(point -> point.getChainageM() != null)
                .sorted(Comparator.comparing(ProfilePoint::getChainageM)).toList();
        Set<ProfilePoint> near = new HashSet<>();
        for (int i = 1; i < points.size(); i++) {
            double from = points.get(i - 1).getChainageM();
            double to = points.get(i).getChainageM();
            if (used.stream().anyMatch(at -> at >= from && at <= to)) {
                near.add(points.get(i - 1));
                near.add(points.get(i));
            }
        }
        return profile.stream().filter(point -> !near.contains(point)).toList();
    }
}
