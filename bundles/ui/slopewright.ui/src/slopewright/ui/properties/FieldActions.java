package slopewright.ui.properties;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;

import slopewright.edit.AddChild;
import slopewright.edit.EquipPortable;
import slopewright.edit.RecordedEdit;
import slopewright.edit.RemoveElement;
import slopewright.edit.SetReferences;
import slopewright.edit.TakeDirection;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.Attempt;
import slopewright.geometry.Angles;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachDirection;
import slopewright.model.ApproachType;
import slopewright.model.EquipmentType;
import slopewright.model.Helipad;
import slopewright.model.Identified;
import slopewright.model.ObstacleSurvey;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.model.util.Projects;
import slopewright.siting.descent.DescentSlope;
import slopewright.ui.document.ProjectDocument;

/** What a party that sets a unit up adds to a landing site: directions, a portable unit, its printed table and its brightness steps. */
final class FieldActions {
    private static final double OPPOSITE_DEG = 180;
    private static final double HUNDREDTHS = 100;

    private FieldActions() {
    }

    /** Adds a landing direction to a helipad, opposite to its last one; a survey all round that covers one covers the other. */
    static List<RecordedEdit> addDirection(Identified element) {
        Optional<Helipad> found = element instanceof Helipad own ? Optional.of(own) : element instanceof ApproachDirection direction
                ? Projects.helipad(direction) : Optional.empty();
        if (found.isEmpty()) {
            return List.of();
        }
        List<ApproachDirection> known = found.get().getDirections();
        Double last = known.isEmpty() ? null : known.get(known.size() - 1).getTrueBearingDeg();
        ApproachDirection added = SlopewrightFactory.eINSTANCE.createApproachDirection();
        double bearing = last == null ? 0 : Angles.normaliseBearingDeg(last + OPPOSITE_DEG);
        added.setTrueBearingDeg(bearing);
        added.setDesignator(String.format(Locale.ROOT, "H-%03d", Math.round(bearing) % 360));
        added.setApproachType(ApproachType.VISUAL);
        List<RecordedEdit> edits = new ArrayList<>(List.of(AddChild.of(found.get(), Literals.HELIPAD__DIRECTIONS, added)));
        Aerodrome aerodrome = Projects.project(found.get()).map(Project::getAerodrome).orElse(null);
        if (aerodrome != null) {
            for (ObstacleSurvey survey : aerodrome.getObstacleSurveys()) {
                if (Boolean.TRUE.equals(survey.getAllRound()) && known.stream().anyMatch(survey.getHosts()::contains)) {
                    List<EObject> hosts = new ArrayList<>(survey.getHosts());
                    hosts.add(added);
                    edits.add(SetReferences.of(survey, Literals.OBSTACLE_SURVEY__HOSTS, hosts));
                }
            }
        }
        return edits;
    }

    /** Makes the unit at a helipad a portable one, with a sample of its kind and a battery. */
    static List<RecordedEdit> equip(Identified element) {
        return Projects.aid(element).filter(aid -> Projects.helipad(aid).isPresent() && aid.getEquipment() == null)
                .flatMap(aid -> rules(aid).map(evaluation -> List.<RecordedEdit>of(EquipPortable.of(aid, evaluation.rules()))))
                .orElse(List.of());
    }

    /** Lays the unit out for the slope of its planned descent. */
    static List<RecordedEdit> setToDescent(Identified element) {
        Optional<ApproachAid> aid = Projects.aid(element).filter(found -> Projects.helipad(found).isPresent());
        Optional<DescentSlope> descent = aid.flatMap(found -> Attempt.of(() -> DescentSlope.of(found)).value().flatMap(slope -> slope));
        Optional<Double> bearing = aid.flatMap(Projects::host).filter(ApproachDirection.class::isInstance)
                .map(host -> ((ApproachDirection) host).getTrueBearingDeg());
        if (descent.isEmpty() || bearing.isEmpty()) {
            return List.of();
        }
        double slope = Math.round(descent.get().slopeDeg() * HUNDREDTHS) / HUNDREDTHS;
        return rules(aid.get()).map(evaluation -> List.<RecordedEdit>of(TakeDirection.of(aid.get(), evaluation.rules(), bearing.get(),
                slope))).orElse(List.of());
    }

    private static Optional<AidEvaluation> rules(ApproachAid aid) {
        return ProjectDocument.of(aid).flatMap(document -> document.evaluation(aid).value());
    }

    private static Optional<EquipmentType> equipment(Identified element) {
        return element instanceof EquipmentType type ? Optional.of(type)
                : Projects.aid(element).map(ApproachAid::getEquipment);
    }

    static List<RecordedEdit> addDescent(Identified element) {
        return equipment(element).map(type -> List.<RecordedEdit>of(AddChild.of(type, Literals.EQUIPMENT_TYPE__PRINTED_DESCENTS,
                SlopewrightFactory.eINSTANCE.createPrintedDescent()))).orElse(List.of());
    }

    static List<RecordedEdit> removeDescent(Identified element) {
        return last(equipment(element).map(EquipmentType::getPrintedDescents).orElse(null));
    }

    static List<RecordedEdit> addBrightness(Identified element) {
        return equipment(element).map(type -> List.<RecordedEdit>of(AddChild.of(type, Literals.EQUIPMENT_TYPE__BRIGHTNESS_LEVELS,
                SlopewrightFactory.eINSTANCE.createBrightnessLevel()))).orElse(List.of());
    }

    static List<RecordedEdit> removeBrightness(Identified element) {
        return last(equipment(element).map(EquipmentType::getBrightnessLevels).orElse(null));
    }

    private static List<RecordedEdit> last(List<? extends Identified> parts) {
        return parts == null || parts.isEmpty() ? List.of() : List.of(RemoveElement.of(parts.get(parts.size() - 1)));
    }
}
