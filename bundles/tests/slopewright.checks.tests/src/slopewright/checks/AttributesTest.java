package slopewright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.junit.jupiter.api.Test;

import slopewright.evaluation.KeptForTheRecord;
import slopewright.messages.MessageRenderer;
import slopewright.model.SlopewrightPackage;
import slopewright.model.util.ValueRange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Every attribute of the model is looked at: by a range, by a rule, or by the report as one that is kept for the record. */
class AttributesTest {
    /** Attributes that have no range, with the rule that finds a wrong one. */
    private static final Map<String, String> RULES = Map.ofEntries(Map.entry("Project.date", "REC-02"),
            Map.entry("Project.ruleSetKey", "DATA-40"), Map.entry("Project.stage", "REC-05"), Map.entry("Project.bookPath", "DATA-30"),
            Map.entry("Project.bookSha256", "DATA-30"), Map.entry("Project.ruleSetFolder", "DATA-08"),
            Map.entry("ValueOverride.valueKey", "DATA-40"), Map.entry("ValueOverride.ruleSetKey", "DATA-40"),
            Map.entry("ValueOverride.value", "DATA-40"), Map.entry("ValueOverride.unit", "DATA-40"),
            Map.entry("ValueConfirmation.valueKey", "DATA-40"), Map.entry("ValueConfirmation.ruleSetKey", "DATA-40"),
            Map.entry("ValueConfirmation.value", "DATA-40"), Map.entry("ValueConfirmation.unit", "DATA-40"),
            Map.entry("ValueConfirmation.source", "DATA-40"), Map.entry("ValueConfirmation.person", "DATA-40"),
            Map.entry("ValueConfirmation.date", "DATA-40"), Map.entry("ValueConfirmation.edition", "DATA-40"),
            Map.entry("ValueConfirmation.clause", "DATA-40"), Map.entry("ValueConfirmation.secondPerson", "DATA-40"),
            Map.entry("ValueConfirmation.secondDate", "DATA-40"), Map.entry("ValueConfirmation.rejected", "DATA-40"),
            Map.entry("ValueConfirmation.reason", "DATA-40"), Map.entry("ValueConfirmation.sha256", "DATA-40"),
            Map.entry("ValueConfirmation.fromBook", "DATA-40"), Map.entry("Aerodrome.identifier", "DATA-40"),
            Map.entry("ReviewNote.elementId", "REC-01"), Map.entry("ReviewNote.kind", "REC-01"),
            Map.entry("ReviewNote.noteId", "REC-01"), Map.entry("ReviewNote.sha256", "REC-01"),
            Map.entry("ReadBack.elementId", "REC-03"), Map.entry("ReadBack.person", "REC-03"),
            Map.entry("ReadBack.date", "REC-03"), Map.entry("ReadBack.sha256", "REC-03"),
            Map.entry("ReviewNote.ruleId", "REC-01"), Map.entry("ReviewNote.date", "REC-02"), Map.entry("ReviewNote.resolved", "REC-01"),
            Map.entry("SurveyBlock.kind", "OBS-06"), Map.entry("SurveyBlock.path", "DATA-09"), Map.entry("SurveyBlock.sha256", "DATA-09"),
            Map.entry("Aerodrome.coordinateReference", "DATA-52"), Map.entry("MagneticVariation.date", "DATA-21"),
            Map.entry("Runway.designator", "DATA-43"), Map.entry("Runway.objectFreeSource", "UNIT-07"),
            Map.entry("Runway.openDataSource", "DATA-64"), Map.entry("Runway.openDataLicence", "DATA-64"),
            Map.entry("Runway.openDataConfirmation", "DATA-64"), Map.entry("Runway.openDataConfirmationDate", "DATA-64"),
            Map.entry("Runway.openDataConfirmationPerson", "DATA-64"),
            Map.entry("ApproachHost.designator", "DATA-43"), Map.entry("ApproachHost.approachType", "DATA-13"),
            Map.entry("RunwayEnd.hazardousTerrain", "INSP-01"), Map.entry("GlidePathAid.criticalAreaSource", "OBS-05"),
            Map.entry("TaxiwayEdge.kind", "ROW-05"), Map.entry("Helipad.floating", "BOX-09"),
            Map.entry("AeroplaneGroup.lightNonTurbojet", "DATA-49"), Map.entry("Obstacle.kind", "DATA-50"),
            Map.entry("Obstacle.shielded", "DATA-51"), Map.entry("Obstacle.shieldingStudy", "DATA-51"),
            Map.entry("Obstacle.shieldingStudyDate", "REC-02"), Map.entry("Obstacle.shieldingStudyPerson", "OBS-01"),
            Map.entry("Obstacle.temporary", "DATA-50"), Map.entry("ObstacleSurvey.date", "OBS-07"),
            Map.entry("ObstacleSurvey.allRound", "OBS-07"),
            Map.entry("EquipmentType.familyKey", "EQUIP-01"), Map.entry("EquipmentType.dataSource", "EQUIP-13"),
            Map.entry("EquipmentType.plateZero", "EQUIP-14"), Map.entry("EquipmentType.plateSense", "EQUIP-14"),
            Map.entry("EquipmentType.lowerHair", "EQUIP-14"), Map.entry("EquipmentType.upperHair", "EQUIP-14"),
            Map.entry("EquipmentType.handOrder", "EQUIP-14"),
            Map.entry("MeasuredIntensity.colour", "RANGE-01"), Map.entry("Circuit.standby", "CIRC-02"),
            Map.entry("ApproachAid.familyKey", "DATA-06"), Map.entry("ApproachAid.ruleSetKey", "DATA-08"),
            Map.entry("ApproachAid.side", "DATA-56"), Map.entry("ApproachAid.settings", "DATA-59"),
            Map.entry("ApproachAid.clearance", "DATA-59"), Map.entry("ApproachAid.unshiftedDistanceReason", "DATA-59"),
            Map.entry("ApproachAid.portable", "DATA-59"), Map.entry("LightUnit.label", "DATA-48"),
            Map.entry("LightUnit.frangible", "DATA-56"), Map.entry("Inspection.date", "REC-02"), Map.entry("Inspection.person", "INSP-01"),
            Map.entry("Inspection.obstacleClear", "INSP-05"), Map.entry("Transition.belowColour", "SIG-01"),
            Map.entry("Transition.belowState", "DATA-57"), Map.entry("Transition.aboveColour", "SIG-01"),
            Map.entry("Transition.aboveState", "DATA-57"));

    /** The picture under a drawing is shown or is not: a wrong path or hash leaves it out with a note in the drawing. */
    private static final List<String> SEEN = List.of("BackgroundImage.path", "BackgroundImage.sha256");

    private static List<EClass> classes() {
        return SlopewrightPackage.eINSTANCE.getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast).toList();
    }

    private static String name(EAttribute attribute) {
        return attribute.getEContainingClass().getName() + "." + attribute.getName();
    }

    @Test
    void everyAttributeIsLookedAt() {
        List<String> unseen = new ArrayList<>();
        for (EClass type : classes()) {
            for (EAttribute attribute : type.getEAttributes()) {
                boolean seen = attribute.isID() || ValueRange.of(type, attribute).isPresent() || KeptForTheRecord.contains(attribute)
                        || RULES.containsKey(name(attribute)) || SEEN.contains(name(attribute));
                if (!seen) {
                    unseen.add(name(attribute));
                }
            }
        }
        assertEquals(List.of(), unseen);
    }

    @Test
    void theTableNamesAttributesAndRulesThatThereAre() {
        List<String> all = classes().stream().flatMap(type -> type.getEAttributes().stream()).map(AttributesTest::name).toList();
        RULES.forEach((attribute, rule) -> {
            assertTrue(all.contains(attribute), attribute);
            assertTrue(RuleCatalogue.find(rule).isPresent(), attribute + ": " + rule);
        });
        KeptForTheRecord.features().forEach(feature -> assertTrue(all.contains(feature), feature));
    }

    /** A range speaks about an attribute that there is, has a width, and is called something in both languages. */
    @Test
    void everyRangeIsOneOfAnAttribute() {
        List<String> names = SlopewrightPackage.eINSTANCE.getEClassifiers().stream().filter(EClass.class::isInstance)
                .map(EClassifier::getName).toList();
        for (String key : ValueRange.keys()) {
            String attribute = key.substring(key.indexOf('.') + 1);
            boolean known = classes().stream().anyMatch(type -> type.getEAllAttributes().stream()
                    .anyMatch(found -> found.getName().equals(attribute)) && (!key.contains(".") || key.startsWith(type.getName() + ".")));
            assertTrue(known && (!key.contains(".") || names.contains(key.substring(0, key.indexOf('.')))), key);
            for (Locale language : List.of(Locale.ENGLISH, Locale.GERMAN)) {
                assertTrue(MessageRenderer.of(language).keys().contains("term.feature." + key), key + " in " + language);
            }
        }
    }

    /** What a range is for: an elevation in feet, a minute as a degree. Aerodromes lie from the Dead Sea (-378 m) to Daocheng (4411 m). */
    @Test
    void rangesHoldWhatThereIs() {
        EClass end = SlopewrightPackage.eINSTANCE.getRunwayEnd();
        ValueRange elevation = ValueRange.of(end, end.getEStructuralFeature("thresholdElevationM")).orElseThrow();
        assertTrue(elevation.contains(-378) && elevation.contains(4411));
        assertEquals(false, elevation.contains(4411 / 0.3048));
    }
}
