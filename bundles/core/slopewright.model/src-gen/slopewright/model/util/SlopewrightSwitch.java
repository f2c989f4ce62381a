/**
 */
package slopewright.model.util;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.util.Switch;

import slopewright.model.*;

/**
 * <!-- begin-user-doc -->
 * The <b>Switch</b> for the model's inheritance hierarchy.
 * It supports the call {@link #doSwitch(EObject) doSwitch(object)}
 * to invoke the <code>caseXXX</code> method for each class of the model,
 * starting with the actual class of the object
 * and proceeding up the inheritance hierarchy
 * until a non-null result is returned,
 * which is the result of the switch.
 * <!-- end-user-doc -->
 * @see slopewright.model.SlopewrightPackage
 * @generated
 */
public class SlopewrightSwitch<T> extends Switch<T> {
	/**
	 * The cached model package
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected static SlopewrightPackage modelPackage;

	/**
	 * Creates an instance of the switch.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public SlopewrightSwitch() {
		if (modelPackage == null) {
			modelPackage = SlopewrightPackage.eINSTANCE;
		}
	}

	/**
	 * Checks whether this is a switch for the given package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param ePackage the package in question.
	 * @return whether this is a switch for the given package.
	 * @generated
	 */
	@Override
	protected boolean isSwitchFor(EPackage ePackage) {
		return ePackage == modelPackage;
	}

	/**
	 * Calls <code>caseXXX</code> for each class of the model until one returns a non null result; it yields that result.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the first non-null result returned by a <code>caseXXX</code> call.
	 * @generated
	 */
	@Override
	protected T doSwitch(int classifierID, EObject theEObject) {
		switch (classifierID) {
			case SlopewrightPackage.IDENTIFIED: {
				Identified identified = (Identified)theEObject;
				T result = caseIdentified(identified);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.NAMED: {
				Named named = (Named)theEObject;
				T result = caseNamed(named);
				if (result == null) result = caseIdentified(named);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.PROJECT: {
				Project project = (Project)theEObject;
				T result = caseProject(project);
				if (result == null) result = caseNamed(project);
				if (result == null) result = caseIdentified(project);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.VALUE_OVERRIDE: {
				ValueOverride valueOverride = (ValueOverride)theEObject;
				T result = caseValueOverride(valueOverride);
				if (result == null) result = caseIdentified(valueOverride);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.VALUE_CONFIRMATION: {
				ValueConfirmation valueConfirmation = (ValueConfirmation)theEObject;
				T result = caseValueConfirmation(valueConfirmation);
				if (result == null) result = caseIdentified(valueConfirmation);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.REVIEW_NOTE: {
				ReviewNote reviewNote = (ReviewNote)theEObject;
				T result = caseReviewNote(reviewNote);
				if (result == null) result = caseNamed(reviewNote);
				if (result == null) result = caseIdentified(reviewNote);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.SURVEY_BLOCK: {
				SurveyBlock surveyBlock = (SurveyBlock)theEObject;
				T result = caseSurveyBlock(surveyBlock);
				if (result == null) result = caseNamed(surveyBlock);
				if (result == null) result = caseIdentified(surveyBlock);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.AERODROME: {
				Aerodrome aerodrome = (Aerodrome)theEObject;
				T result = caseAerodrome(aerodrome);
				if (result == null) result = caseNamed(aerodrome);
				if (result == null) result = caseIdentified(aerodrome);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.MAGNETIC_VARIATION: {
				MagneticVariation magneticVariation = (MagneticVariation)theEObject;
				T result = caseMagneticVariation(magneticVariation);
				if (result == null) result = caseIdentified(magneticVariation);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.PLACE: {
				Place place = (Place)theEObject;
				T result = casePlace(place);
				if (result == null) result = caseIdentified(place);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.PROFILE_POINT: {
				ProfilePoint profilePoint = (ProfilePoint)theEObject;
				T result = caseProfilePoint(profilePoint);
				if (result == null) result = caseIdentified(profilePoint);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.RUNWAY: {
				Runway runway = (Runway)theEObject;
				T result = caseRunway(runway);
				if (result == null) result = caseNamed(runway);
				if (result == null) result = caseIdentified(runway);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.APPROACH_HOST: {
				ApproachHost approachHost = (ApproachHost)theEObject;
				T result = caseApproachHost(approachHost);
				if (result == null) result = caseNamed(approachHost);
				if (result == null) result = caseIdentified(approachHost);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.RUNWAY_END: {
				RunwayEnd runwayEnd = (RunwayEnd)theEObject;
				T result = caseRunwayEnd(runwayEnd);
				if (result == null) result = caseApproachHost(runwayEnd);
				if (result == null) result = caseNamed(runwayEnd);
				if (result == null) result = caseIdentified(runwayEnd);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.GLIDE_PATH_AID: {
				GlidePathAid glidePathAid = (GlidePathAid)theEObject;
				T result = caseGlidePathAid(glidePathAid);
				if (result == null) result = caseNamed(glidePathAid);
				if (result == null) result = caseIdentified(glidePathAid);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.TAXIWAY_EDGE: {
				TaxiwayEdge taxiwayEdge = (TaxiwayEdge)theEObject;
				T result = caseTaxiwayEdge(taxiwayEdge);
				if (result == null) result = caseNamed(taxiwayEdge);
				if (result == null) result = caseIdentified(taxiwayEdge);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.HELIPAD: {
				Helipad helipad = (Helipad)theEObject;
				T result = caseHelipad(helipad);
				if (result == null) result = caseNamed(helipad);
				if (result == null) result = caseIdentified(helipad);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.APPROACH_DIRECTION: {
				ApproachDirection approachDirection = (ApproachDirection)theEObject;
				T result = caseApproachDirection(approachDirection);
				if (result == null) result = caseApproachHost(approachDirection);
				if (result == null) result = caseNamed(approachDirection);
				if (result == null) result = caseIdentified(approachDirection);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.AEROPLANE_GROUP: {
				AeroplaneGroup aeroplaneGroup = (AeroplaneGroup)theEObject;
				T result = caseAeroplaneGroup(aeroplaneGroup);
				if (result == null) result = caseNamed(aeroplaneGroup);
				if (result == null) result = caseIdentified(aeroplaneGroup);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.OBSTACLE: {
				Obstacle obstacle = (Obstacle)theEObject;
				T result = caseObstacle(obstacle);
				if (result == null) result = caseNamed(obstacle);
				if (result == null) result = caseIdentified(obstacle);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.GROUND_LEVEL: {
				GroundLevel groundLevel = (GroundLevel)theEObject;
				T result = caseGroundLevel(groundLevel);
				if (result == null) result = caseIdentified(groundLevel);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.OBSTACLE_SURVEY: {
				ObstacleSurvey obstacleSurvey = (ObstacleSurvey)theEObject;
				T result = caseObstacleSurvey(obstacleSurvey);
				if (result == null) result = caseNamed(obstacleSurvey);
				if (result == null) result = caseIdentified(obstacleSurvey);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.EQUIPMENT_TYPE: {
				EquipmentType equipmentType = (EquipmentType)theEObject;
				T result = caseEquipmentType(equipmentType);
				if (result == null) result = caseNamed(equipmentType);
				if (result == null) result = caseIdentified(equipmentType);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.MEASURED_INTENSITY: {
				MeasuredIntensity measuredIntensity = (MeasuredIntensity)theEObject;
				T result = caseMeasuredIntensity(measuredIntensity);
				if (result == null) result = caseIdentified(measuredIntensity);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.PRINTED_DESCENT: {
				PrintedDescent printedDescent = (PrintedDescent)theEObject;
				T result = casePrintedDescent(printedDescent);
				if (result == null) result = caseIdentified(printedDescent);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.BRIGHTNESS_LEVEL: {
				BrightnessLevel brightnessLevel = (BrightnessLevel)theEObject;
				T result = caseBrightnessLevel(brightnessLevel);
				if (result == null) result = caseIdentified(brightnessLevel);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.CIRCUIT: {
				Circuit circuit = (Circuit)theEObject;
				T result = caseCircuit(circuit);
				if (result == null) result = caseNamed(circuit);
				if (result == null) result = caseIdentified(circuit);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.APPROACH_AID: {
				ApproachAid approachAid = (ApproachAid)theEObject;
				T result = caseApproachAid(approachAid);
				if (result == null) result = caseNamed(approachAid);
				if (result == null) result = caseIdentified(approachAid);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.LIGHT_UNIT: {
				LightUnit lightUnit = (LightUnit)theEObject;
				T result = caseLightUnit(lightUnit);
				if (result == null) result = caseIdentified(lightUnit);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.MEASURED_UNIT: {
				MeasuredUnit measuredUnit = (MeasuredUnit)theEObject;
				T result = caseMeasuredUnit(measuredUnit);
				if (result == null) result = caseIdentified(measuredUnit);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.INSPECTION: {
				Inspection inspection = (Inspection)theEObject;
				T result = caseInspection(inspection);
				if (result == null) result = caseNamed(inspection);
				if (result == null) result = caseIdentified(inspection);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.BACKGROUND_IMAGE: {
				BackgroundImage backgroundImage = (BackgroundImage)theEObject;
				T result = caseBackgroundImage(backgroundImage);
				if (result == null) result = caseNamed(backgroundImage);
				if (result == null) result = caseIdentified(backgroundImage);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.TRANSITION: {
				Transition transition = (Transition)theEObject;
				T result = caseTransition(transition);
				if (result == null) result = caseIdentified(transition);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SlopewrightPackage.READ_BACK: {
				ReadBack readBack = (ReadBack)theEObject;
				T result = caseReadBack(readBack);
				if (result == null) result = caseIdentified(readBack);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			default: return defaultCase(theEObject);
		}
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Identified</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Identified</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseIdentified(Identified object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Named</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Named</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseNamed(Named object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Project</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Project</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseProject(Project object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Value Override</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Value Override</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseValueOverride(ValueOverride object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Value Confirmation</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Value Confirmation</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseValueConfirmation(ValueConfirmation object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Review Note</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Review Note</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseReviewNote(ReviewNote object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Survey Block</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Survey Block</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSurveyBlock(SurveyBlock object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Aerodrome</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Aerodrome</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseAerodrome(Aerodrome object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Magnetic Variation</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Magnetic Variation</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseMagneticVariation(MagneticVariation object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Place</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Place</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePlace(Place object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Profile Point</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Profile Point</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseProfilePoint(ProfilePoint object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Runway</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Runway</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRunway(Runway object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Approach Host</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Approach Host</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseApproachHost(ApproachHost object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Runway End</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Runway End</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRunwayEnd(RunwayEnd object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Glide Path Aid</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Glide Path Aid</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseGlidePathAid(GlidePathAid object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Taxiway Edge</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Taxiway Edge</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseTaxiwayEdge(TaxiwayEdge object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Helipad</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Helipad</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseHelipad(Helipad object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Approach Direction</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Approach Direction</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseApproachDirection(ApproachDirection object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Aeroplane Group</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Aeroplane Group</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseAeroplaneGroup(AeroplaneGroup object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Obstacle</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Obstacle</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseObstacle(Obstacle object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Ground Level</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Ground Level</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseGroundLevel(GroundLevel object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Obstacle Survey</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Obstacle Survey</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseObstacleSurvey(ObstacleSurvey object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Equipment Type</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Equipment Type</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseEquipmentType(EquipmentType object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Measured Intensity</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Measured Intensity</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseMeasuredIntensity(MeasuredIntensity object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Printed Descent</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Printed Descent</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePrintedDescent(PrintedDescent object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Brightness Level</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Brightness Level</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseBrightnessLevel(BrightnessLevel object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Circuit</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Circuit</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseCircuit(Circuit object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Approach Aid</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Approach Aid</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseApproachAid(ApproachAid object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Light Unit</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Light Unit</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseLightUnit(LightUnit object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Measured Unit</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Measured Unit</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseMeasuredUnit(MeasuredUnit object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Inspection</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Inspection</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseInspection(Inspection object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Background Image</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Background Image</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseBackgroundImage(BackgroundImage object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Transition</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Transition</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseTransition(Transition object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Read Back</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Read Back</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseReadBack(ReadBack object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>EObject</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch, but this is the last case anyway.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>EObject</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject)
	 * @generated
	 */
	@Override
	public T defaultCase(EObject object) {
		return null;
	}

} //SlopewrightSwitch
