/**
 */
package slopewright.model;

import org.eclipse.emf.ecore.EFactory;

/**
 * <!-- begin-user-doc -->
 * The <b>Factory</b> for the model.
 * It provides a create method for each non-abstract class of the model.
 * <!-- end-user-doc -->
 * @see slopewright.model.SlopewrightPackage
 * @generated
 */
public interface SlopewrightFactory extends EFactory {
	/**
	 * The singleton instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	SlopewrightFactory eINSTANCE = slopewright.model.impl.SlopewrightFactoryImpl.init();

	/**
	 * Returns a new object of class '<em>Project</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Project</em>'.
	 * @generated
	 */
	Project createProject();

	/**
	 * Returns a new object of class '<em>Value Override</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Value Override</em>'.
	 * @generated
	 */
	ValueOverride createValueOverride();

	/**
	 * Returns a new object of class '<em>Value Confirmation</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Value Confirmation</em>'.
	 * @generated
	 */
	ValueConfirmation createValueConfirmation();

	/**
	 * Returns a new object of class '<em>Review Note</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Review Note</em>'.
	 * @generated
	 */
	ReviewNote createReviewNote();

	/**
	 * Returns a new object of class '<em>Survey Block</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Survey Block</em>'.
	 * @generated
	 */
	SurveyBlock createSurveyBlock();

	/**
	 * Returns a new object of class '<em>Aerodrome</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Aerodrome</em>'.
	 * @generated
	 */
	Aerodrome createAerodrome();

	/**
	 * Returns a new object of class '<em>Magnetic Variation</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Magnetic Variation</em>'.
	 * @generated
	 */
	MagneticVariation createMagneticVariation();

	/**
	 * Returns a new object of class '<em>Place</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Place</em>'.
	 * @generated
	 */
	Place createPlace();

	/**
	 * Returns a new object of class '<em>Profile Point</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Profile Point</em>'.
	 * @generated
	 */
	ProfilePoint createProfilePoint();

	/**
	 * Returns a new object of class '<em>Runway</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Runway</em>'.
	 * @generated
	 */
	Runway createRunway();

	/**
	 * Returns a new object of class '<em>Runway End</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Runway End</em>'.
	 * @generated
	 */
	RunwayEnd createRunwayEnd();

	/**
	 * Returns a new object of class '<em>Glide Path Aid</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Glide Path Aid</em>'.
	 * @generated
	 */
	GlidePathAid createGlidePathAid();

	/**
	 * Returns a new object of class '<em>Taxiway Edge</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Taxiway Edge</em>'.
	 * @generated
	 */
	TaxiwayEdge createTaxiwayEdge();

	/**
	 * Returns a new object of class '<em>Helipad</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Helipad</em>'.
	 * @generated
	 */
	Helipad createHelipad();

	/**
	 * Returns a new object of class '<em>Approach Direction</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Approach Direction</em>'.
	 * @generated
	 */
	ApproachDirection createApproachDirection();

	/**
	 * Returns a new object of class '<em>Aeroplane Group</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Aeroplane Group</em>'.
	 * @generated
	 */
	AeroplaneGroup createAeroplaneGroup();

	/**
	 * Returns a new object of class '<em>Obstacle</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Obstacle</em>'.
	 * @generated
	 */
	Obstacle createObstacle();

	/**
	 * Returns a new object of class '<em>Ground Level</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Ground Level</em>'.
	 * @generated
	 */
	GroundLevel createGroundLevel();

	/**
	 * Returns a new object of class '<em>Obstacle Survey</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Obstacle Survey</em>'.
	 * @generated
	 */
	ObstacleSurvey createObstacleSurvey();

	/**
	 * Returns a new object of class '<em>Equipment Type</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Equipment Type</em>'.
	 * @generated
	 */
	EquipmentType createEquipmentType();

	/**
	 * Returns a new object of class '<em>Measured Intensity</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Measured Intensity</em>'.
	 * @generated
	 */
	MeasuredIntensity createMeasuredIntensity();

	/**
	 * Returns a new object of class '<em>Printed Descent</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Printed Descent</em>'.
	 * @generated
	 */
	PrintedDescent createPrintedDescent();

	/**
	 * Returns a new object of class '<em>Brightness Level</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Brightness Level</em>'.
	 * @generated
	 */
	BrightnessLevel createBrightnessLevel();

	/**
	 * Returns a new object of class '<em>Circuit</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Circuit</em>'.
	 * @generated
	 */
	Circuit createCircuit();

	/**
	 * Returns a new object of class '<em>Approach Aid</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Approach Aid</em>'.
	 * @generated
	 */
	ApproachAid createApproachAid();

	/**
	 * Returns a new object of class '<em>Light Unit</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Light Unit</em>'.
	 * @generated
	 */
	LightUnit createLightUnit();

	/**
	 * Returns a new object of class '<em>Measured Unit</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Measured Unit</em>'.
	 * @generated
	 */
	MeasuredUnit createMeasuredUnit();

	/**
	 * Returns a new object of class '<em>Inspection</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Inspection</em>'.
	 * @generated
	 */
	Inspection createInspection();

	/**
	 * Returns a new object of class '<em>Background Image</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Background Image</em>'.
	 * @generated
	 */
	BackgroundImage createBackgroundImage();

	/**
	 * Returns a new object of class '<em>Transition</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Transition</em>'.
	 * @generated
	 */
	Transition createTransition();

	/**
	 * Returns a new object of class '<em>Read Back</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Read Back</em>'.
	 * @generated
	 */
	ReadBack createReadBack();

	/**
	 * Returns the package supported by this factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the package supported by this factory.
	 * @generated
	 */
	SlopewrightPackage getSlopewrightPackage();

} //SlopewrightFactory
