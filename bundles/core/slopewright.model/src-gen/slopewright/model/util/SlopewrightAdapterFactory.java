/**
 */
package slopewright.model.util;

import org.eclipse.emf.common.notify.Adapter;
import org.eclipse.emf.common.notify.Notifier;

import org.eclipse.emf.common.notify.impl.AdapterFactoryImpl;

import org.eclipse.emf.ecore.EObject;

import slopewright.model.*;

/**
 * <!-- begin-user-doc -->
 * The <b>Adapter Factory</b> for the model.
 * It provides an adapter <code>createXXX</code> method for each class of the model.
 * <!-- end-user-doc -->
 * @see slopewright.model.SlopewrightPackage
 * @generated
 */
public class SlopewrightAdapterFactory extends AdapterFactoryImpl {
	/**
	 * The cached model package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected static SlopewrightPackage modelPackage;

	/**
	 * Creates an instance of the adapter factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public SlopewrightAdapterFactory() {
		if (modelPackage == null) {
			modelPackage = SlopewrightPackage.eINSTANCE;
		}
	}

	/**
	 * Returns whether this factory is applicable for the type of the object.
	 * <!-- begin-user-doc -->
	 * This implementation returns <code>true</code> if the object is either the model's package or is an instance object of the model.
	 * <!-- end-user-doc -->
	 * @return whether this factory is applicable for the type of the object.
	 * @generated
	 */
	@Override
	public boolean isFactoryForType(Object object) {
		if (object == modelPackage) {
			return true;
		}
		if (object instanceof EObject) {
			return ((EObject)object).eClass().getEPackage() == modelPackage;
		}
		return false;
	}

	/**
	 * The switch that delegates to the <code>createXXX</code> methods.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SlopewrightSwitch<Adapter> modelSwitch =
		new SlopewrightSwitch<Adapter>() {
			@Override
			public Adapter caseIdentified(Identified object) {
				return createIdentifiedAdapter();
			}
			@Override
			public Adapter caseNamed(Named object) {
				return createNamedAdapter();
			}
			@Override
			public Adapter caseProject(Project object) {
				return createProjectAdapter();
			}
			@Override
			public Adapter caseValueOverride(ValueOverride object) {
				return createValueOverrideAdapter();
			}
			@Override
			public Adapter caseValueConfirmation(ValueConfirmation object) {
				return createValueConfirmationAdapter();
			}
			@Override
			public Adapter caseReviewNote(ReviewNote object) {
				return createReviewNoteAdapter();
			}
			@Override
			public Adapter caseSurveyBlock(SurveyBlock object) {
				return createSurveyBlockAdapter();
			}
			@Override
			public Adapter caseAerodrome(Aerodrome object) {
				return createAerodromeAdapter();
			}
			@Override
			public Adapter caseMagneticVariation(MagneticVariation object) {
				return createMagneticVariationAdapter();
			}
			@Override
			public Adapter casePlace(Place object) {
				return createPlaceAdapter();
			}
			@Override
			public Adapter caseProfilePoint(ProfilePoint object) {
				return createProfilePointAdapter();
			}
			@Override
			public Adapter caseRunway(Runway object) {
				return createRunwayAdapter();
			}
			@Override
			public Adapter caseApproachHost(ApproachHost object) {
				return createApproachHostAdapter();
			}
			@Override
			public Adapter caseRunwayEnd(RunwayEnd object) {
				return createRunwayEndAdapter();
			}
			@Override
			public Adapter caseGlidePathAid(GlidePathAid object) {
				return createGlidePathAidAdapter();
			}
			@Override
			public Adapter caseTaxiwayEdge(TaxiwayEdge object) {
				return createTaxiwayEdgeAdapter();
			}
			@Override
			public Adapter caseHelipad(Helipad object) {
				return createHelipadAdapter();
			}
			@Override
			public Adapter caseApproachDirection(ApproachDirection object) {
				return createApproachDirectionAdapter();
			}
			@Override
			public Adapter caseAeroplaneGroup(AeroplaneGroup object) {
				return createAeroplaneGroupAdapter();
			}
			@Override
			public Adapter caseObstacle(Obstacle object) {
				return createObstacleAdapter();
			}
			@Override
			public Adapter caseGroundLevel(GroundLevel object) {
				return createGroundLevelAdapter();
			}
			@Override
			public Adapter caseObstacleSurvey(ObstacleSurvey object) {
				return createObstacleSurveyAdapter();
			}
			@Override
			public Adapter caseEquipmentType(EquipmentType object) {
				return createEquipmentTypeAdapter();
			}
			@Override
			public Adapter caseMeasuredIntensity(MeasuredIntensity object) {
				return createMeasuredIntensityAdapter();
			}
			@Override
			public Adapter casePrintedDescent(PrintedDescent object) {
				return createPrintedDescentAdapter();
			}
			@Override
			public Adapter caseBrightnessLevel(BrightnessLevel object) {
				return createBrightnessLevelAdapter();
			}
			@Override
			public Adapter caseCircuit(Circuit object) {
				return createCircuitAdapter();
			}
			@Override
			public Adapter caseApproachAid(ApproachAid object) {
				return createApproachAidAdapter();
			}
			@Override
			public Adapter caseLightUnit(LightUnit object) {
				return createLightUnitAdapter();
			}
			@Override
			public Adapter caseMeasuredUnit(MeasuredUnit object) {
				return createMeasuredUnitAdapter();
			}
			@Override
			public Adapter caseInspection(Inspection object) {
				return createInspectionAdapter();
			}
			@Override
			public Adapter caseBackgroundImage(BackgroundImage object) {
				return createBackgroundImageAdapter();
			}
			@Override
			public Adapter caseTransition(Transition object) {
				return createTransitionAdapter();
			}
			@Override
			public Adapter caseReadBack(ReadBack object) {
				return createReadBackAdapter();
			}
			@Override
			public Adapter defaultCase(EObject object) {
				return createEObjectAdapter();
			}
		};

	/**
	 * Creates an adapter for the <code>target</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param target the object to adapt.
	 * @return the adapter for the <code>target</code>.
	 * @generated
	 */
	@Override
	public Adapter createAdapter(Notifier target) {
		return modelSwitch.doSwitch((EObject)target);
	}


	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.Identified <em>Identified</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.Identified
	 * @generated
	 */
	public Adapter createIdentifiedAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.Named <em>Named</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.Named
	 * @generated
	 */
	public Adapter createNamedAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.Project <em>Project</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.Project
	 * @generated
	 */
	public Adapter createProjectAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.ValueOverride <em>Value Override</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.ValueOverride
	 * @generated
	 */
	public Adapter createValueOverrideAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.ValueConfirmation <em>Value Confirmation</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.ValueConfirmation
	 * @generated
	 */
	public Adapter createValueConfirmationAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.ReviewNote <em>Review Note</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.ReviewNote
	 * @generated
	 */
	public Adapter createReviewNoteAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.SurveyBlock <em>Survey Block</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.SurveyBlock
	 * @generated
	 */
	public Adapter createSurveyBlockAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.Aerodrome <em>Aerodrome</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.Aerodrome
	 * @generated
	 */
	public Adapter createAerodromeAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.MagneticVariation <em>Magnetic Variation</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.MagneticVariation
	 * @generated
	 */
	public Adapter createMagneticVariationAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.Place <em>Place</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.Place
	 * @generated
	 */
	public Adapter createPlaceAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.ProfilePoint <em>Profile Point</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.ProfilePoint
	 * @generated
	 */
	public Adapter createProfilePointAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.Runway <em>Runway</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.Runway
	 * @generated
	 */
	public Adapter createRunwayAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.ApproachHost <em>Approach Host</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.ApproachHost
	 * @generated
	 */
	public Adapter createApproachHostAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.RunwayEnd <em>Runway End</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.RunwayEnd
	 * @generated
	 */
	public Adapter createRunwayEndAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.GlidePathAid <em>Glide Path Aid</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.GlidePathAid
	 * @generated
	 */
	public Adapter createGlidePathAidAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.TaxiwayEdge <em>Taxiway Edge</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.TaxiwayEdge
	 * @generated
	 */
	public Adapter createTaxiwayEdgeAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.Helipad <em>Helipad</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.Helipad
	 * @generated
	 */
	public Adapter createHelipadAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.ApproachDirection <em>Approach Direction</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.ApproachDirection
	 * @generated
	 */
	public Adapter createApproachDirectionAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.AeroplaneGroup <em>Aeroplane Group</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.AeroplaneGroup
	 * @generated
	 */
	public Adapter createAeroplaneGroupAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.Obstacle <em>Obstacle</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.Obstacle
	 * @generated
	 */
	public Adapter createObstacleAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.GroundLevel <em>Ground Level</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.GroundLevel
	 * @generated
	 */
	public Adapter createGroundLevelAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.ObstacleSurvey <em>Obstacle Survey</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.ObstacleSurvey
	 * @generated
	 */
	public Adapter createObstacleSurveyAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.EquipmentType <em>Equipment Type</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.EquipmentType
	 * @generated
	 */
	public Adapter createEquipmentTypeAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.MeasuredIntensity <em>Measured Intensity</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.MeasuredIntensity
	 * @generated
	 */
	public Adapter createMeasuredIntensityAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.PrintedDescent <em>Printed Descent</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.PrintedDescent
	 * @generated
	 */
	public Adapter createPrintedDescentAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.BrightnessLevel <em>Brightness Level</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.BrightnessLevel
	 * @generated
	 */
	public Adapter createBrightnessLevelAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.Circuit <em>Circuit</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.Circuit
	 * @generated
	 */
	public Adapter createCircuitAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.ApproachAid <em>Approach Aid</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.ApproachAid
	 * @generated
	 */
	public Adapter createApproachAidAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.LightUnit <em>Light Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.LightUnit
	 * @generated
	 */
	public Adapter createLightUnitAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.MeasuredUnit <em>Measured Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.MeasuredUnit
	 * @generated
	 */
	public Adapter createMeasuredUnitAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.Inspection <em>Inspection</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.Inspection
	 * @generated
	 */
	public Adapter createInspectionAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.BackgroundImage <em>Background Image</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.BackgroundImage
	 * @generated
	 */
	public Adapter createBackgroundImageAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.Transition <em>Transition</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.Transition
	 * @generated
	 */
	public Adapter createTransitionAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link slopewright.model.ReadBack <em>Read Back</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see slopewright.model.ReadBack
	 * @generated
	 */
	public Adapter createReadBackAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for the default case.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @generated
	 */
	public Adapter createEObjectAdapter() {
		return null;
	}

} //SlopewrightAdapterFactory
