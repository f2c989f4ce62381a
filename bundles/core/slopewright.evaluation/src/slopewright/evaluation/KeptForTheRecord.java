package slopewright.evaluation;

import java.util.Set;

import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * Attributes of the model that no result rests on: they are kept and printed for the record, and the report names them so. Everything else
 * that the model holds is looked at by a result or a rule.
 */
public final class KeptForTheRecord {
    private static final Set<String> FEATURES = Set.of("Named.name", "Named.remarks", "Project.revision", "Project.author",
            "Project.organisation", "Project.documentNumber", "Project.client", "Project.checkedBy", "Project.approvedBy",
            "Obstacle.lighted", "Obstacle.source", "GroundLevel.source", "SurveyBlock.source", "BackgroundImage.source",
            "BackgroundImage.opacityPercent", "BackgroundImage.hidden", "Runway.surface", "Runway.paved", "GlidePathAid.kind",
            "MeasuredUnit.person", "MeasuredUnit.instrument", "Inspection.organisation", "ReviewNote.text",
            "ReviewNote.person", "EquipmentType.massKg", "EquipmentType.supply", "Circuit.supply", "AeroplaneGroup.sharePercent");

    private KeptForTheRecord() {
    }

    /** Returns whether a feature of the model is kept for the record alone. */
    public static boolean contains(EStructuralFeature feature) {
        return FEATURES.contains(feature.getEContainingClass().getName() + "." + feature.getName());
    }

    /** Returns the features, each as class and name joined by a dot. */
    public static Set<String> features() {
        return FEATURES;
    }
}
