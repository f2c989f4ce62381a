package slopewright.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;

import org.eclipse.emf.ecore.EStructuralFeature;
import org.junit.jupiter.api.Test;

import slopewright.model.ApproachType;
import slopewright.model.EquipmentType;
import slopewright.model.Identified;
import slopewright.model.Inspection;
import slopewright.model.ObstacleSurvey;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.model.util.Projects;

/** Entries that no result rests on where they stand, and do elsewhere. */
class KeptForTheRecordTest {
    private static final SlopewrightFactory MAKE = SlopewrightFactory.eINSTANCE;

    private final TrialSite site = TrialSite.runway("four-unit-row");
    private final Project project = Projects.project(site.aid()).orElseThrow();
    private final RunwayEnd end = (RunwayEnd) site.aid().eContainer();

    private boolean isKept(Identified element, EStructuralFeature feature) {
        return KeptForTheRecord.contains(ProjectEvaluation.of(project, Optional.of("icao:5th")), element, feature);
    }

    @Test
    void theReachOfASurveyIsAskedWhereItNamesAnApproach() {
        ObstacleSurvey survey = MAKE.createObstacleSurvey();
        survey.setReachM(15_000.0);
        project.getAerodrome().getObstacleSurveys().add(survey);
        assertTrue(isKept(survey, Literals.OBSTACLE_SURVEY__REACH_M));
        assertTrue(isKept(survey, Literals.OBSTACLE_SURVEY__HALF_WIDTH_M));
        assertFalse(isKept(survey, Literals.OBSTACLE_SURVEY__DATE));
        assertEquals(1, KeptForTheRecord.entries(ProjectEvaluation.of(project, Optional.empty())).get("ObstacleSurvey.reachM"));
        survey.getHosts().add(end);
        assertFalse(isKept(survey, Literals.OBSTACLE_SURVEY__REACH_M));
    }

    /** Annex 14 Vol I, Table 8-1 names non-precision approaches and those of category I; one that is not stated may be either. */
    @Test
    void theTerrainIsAskedWhereASwitchOverTimeIsLimited() {
        for (ApproachType type : ApproachType.VALUES) {
            end.setApproachType(type);
            assertEquals(type == ApproachType.VISUAL || type == ApproachType.PRECISION_CAT_II_III,
                    isKept(end, Literals.RUNWAY_END__HAZARDOUS_TERRAIN), type.getName());
        }
        end.setApproachType(ApproachType.NON_PRECISION);
        end.getAids().clear();
        assertTrue(isKept(end, Literals.RUNWAY_END__HAZARDOUS_TERRAIN));
    }

    /** The 5th edition prints a useful range of a row of four, and none of a T form. */
    @Test
    void theRangeSeenInFlightIsAskedWhereTheRuleSetSaysOne() {
        Inspection inspection = MAKE.createInspection();
        site.aid().getInspections().add(inspection);
        assertFalse(isKept(inspection, Literals.INSPECTION__USABLE_RANGE_M));
        assertFalse(isKept(inspection, Literals.INSPECTION__ON_SLOPE_ANGLE_DEG));
        site.aid().setFamilyKey("t-form");
        assertTrue(isKept(inspection, Literals.INSPECTION__USABLE_RANGE_M));
    }

    @Test
    void theControlsForTheHandAreAskedOfAPortableIndicator() {
        EquipmentType type = MAKE.createEquipmentType();
        project.getAerodrome().getEquipmentTypes().add(type);
        site.aid().setEquipment(type);
        assertTrue(isKept(type, Literals.EQUIPMENT_TYPE__HAND_ORDER));
        assertFalse(isKept(type, Literals.EQUIPMENT_TYPE__BEAM_WIDTH_DEG));
        site.aid().setPortable(true);
        assertFalse(isKept(type, Literals.EQUIPMENT_TYPE__HAND_ORDER));
    }
}
