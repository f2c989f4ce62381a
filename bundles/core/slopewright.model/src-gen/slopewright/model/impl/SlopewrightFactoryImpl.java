/**
 */
package slopewright.model.impl;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.impl.EFactoryImpl;

import org.eclipse.emf.ecore.plugin.EcorePlugin;

import slopewright.model.*;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Factory</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class SlopewrightFactoryImpl extends EFactoryImpl implements SlopewrightFactory {
	/**
	 * Creates the default factory implementation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static SlopewrightFactory init() {
		try {
			SlopewrightFactory theSlopewrightFactory = (SlopewrightFactory)EPackage.Registry.INSTANCE.getEFactory(SlopewrightPackage.eNS_URI);
			if (theSlopewrightFactory != null) {
				return theSlopewrightFactory;
			}
		}
		catch (Exception exception) {
			EcorePlugin.INSTANCE.log(exception);
		}
		return new SlopewrightFactoryImpl();
	}

	/**
	 * Creates an instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public SlopewrightFactoryImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EObject create(EClass eClass) {
		switch (eClass.getClassifierID()) {
			case SlopewrightPackage.PROJECT: return createProject();
			case SlopewrightPackage.VALUE_OVERRIDE: return createValueOverride();
			case SlopewrightPackage.VALUE_CONFIRMATION: return createValueConfirmation();
			case SlopewrightPackage.REVIEW_NOTE: return createReviewNote();
			case SlopewrightPackage.SURVEY_BLOCK: return createSurveyBlock();
			case SlopewrightPackage.AERODROME: return createAerodrome();
			case SlopewrightPackage.MAGNETIC_VARIATION: return createMagneticVariation();
			case SlopewrightPackage.PLACE: return createPlace();
			case SlopewrightPackage.PROFILE_POINT: return createProfilePoint();
			case SlopewrightPackage.RUNWAY: return createRunway();
			case SlopewrightPackage.RUNWAY_END: return createRunwayEnd();
			case SlopewrightPackage.GLIDE_PATH_AID: return createGlidePathAid();
			case SlopewrightPackage.TAXIWAY_EDGE: return createTaxiwayEdge();
			case SlopewrightPackage.HELIPAD: return createHelipad();
			case SlopewrightPackage.APPROACH_DIRECTION: return createApproachDirection();
			case SlopewrightPackage.AEROPLANE_GROUP: return createAeroplaneGroup();
			case SlopewrightPackage.OBSTACLE: return createObstacle();
			case SlopewrightPackage.GROUND_LEVEL: return createGroundLevel();
			case SlopewrightPackage.OBSTACLE_SURVEY: return createObstacleSurvey();
			case SlopewrightPackage.EQUIPMENT_TYPE: return createEquipmentType();
			case SlopewrightPackage.MEASURED_INTENSITY: return createMeasuredIntensity();
			case SlopewrightPackage.PRINTED_DESCENT: return createPrintedDescent();
			case SlopewrightPackage.BRIGHTNESS_LEVEL: return createBrightnessLevel();
			case SlopewrightPackage.CIRCUIT: return createCircuit();
			case SlopewrightPackage.APPROACH_AID: return createApproachAid();
			case SlopewrightPackage.LIGHT_UNIT: return createLightUnit();
			case SlopewrightPackage.MEASURED_UNIT: return createMeasuredUnit();
			case SlopewrightPackage.INSPECTION: return createInspection();
			case SlopewrightPackage.BACKGROUND_IMAGE: return createBackgroundImage();
			case SlopewrightPackage.TRANSITION: return createTransition();
			case SlopewrightPackage.READ_BACK: return createReadBack();
			default:
				throw new IllegalArgumentException("The class '" + eClass.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object createFromString(EDataType eDataType, String initialValue) {
		switch (eDataType.getClassifierID()) {
			case SlopewrightPackage.APPROACH_TYPE:
				return createApproachTypeFromString(eDataType, initialValue);
			case SlopewrightPackage.GLIDE_PATH_KIND:
				return createGlidePathKindFromString(eDataType, initialValue);
			case SlopewrightPackage.EDGE_KIND:
				return createEdgeKindFromString(eDataType, initialValue);
			case SlopewrightPackage.OBSTACLE_KIND:
				return createObstacleKindFromString(eDataType, initialValue);
			case SlopewrightPackage.AID_SIDE:
				return createAidSideFromString(eDataType, initialValue);
			case SlopewrightPackage.SETTINGS_FORM:
				return createSettingsFormFromString(eDataType, initialValue);
			case SlopewrightPackage.CLEARANCE_CHOICE:
				return createClearanceChoiceFromString(eDataType, initialValue);
			case SlopewrightPackage.LIGHT_COLOUR:
				return createLightColourFromString(eDataType, initialValue);
			case SlopewrightPackage.LIGHT_STATE:
				return createLightStateFromString(eDataType, initialValue);
			case SlopewrightPackage.REVIEW_KIND:
				return createReviewKindFromString(eDataType, initialValue);
			case SlopewrightPackage.STAGE:
				return createStageFromString(eDataType, initialValue);
			case SlopewrightPackage.PLATE_ZERO:
				return createPlateZeroFromString(eDataType, initialValue);
			case SlopewrightPackage.PLATE_SENSE:
				return createPlateSenseFromString(eDataType, initialValue);
			case SlopewrightPackage.SIGHT_HAIR:
				return createSightHairFromString(eDataType, initialValue);
			case SlopewrightPackage.HAND_ORDER:
				return createHandOrderFromString(eDataType, initialValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String convertToString(EDataType eDataType, Object instanceValue) {
		switch (eDataType.getClassifierID()) {
			case SlopewrightPackage.APPROACH_TYPE:
				return convertApproachTypeToString(eDataType, instanceValue);
			case SlopewrightPackage.GLIDE_PATH_KIND:
				return convertGlidePathKindToString(eDataType, instanceValue);
			case SlopewrightPackage.EDGE_KIND:
				return convertEdgeKindToString(eDataType, instanceValue);
			case SlopewrightPackage.OBSTACLE_KIND:
				return convertObstacleKindToString(eDataType, instanceValue);
			case SlopewrightPackage.AID_SIDE:
				return convertAidSideToString(eDataType, instanceValue);
			case SlopewrightPackage.SETTINGS_FORM:
				return convertSettingsFormToString(eDataType, instanceValue);
			case SlopewrightPackage.CLEARANCE_CHOICE:
				return convertClearanceChoiceToString(eDataType, instanceValue);
			case SlopewrightPackage.LIGHT_COLOUR:
				return convertLightColourToString(eDataType, instanceValue);
			case SlopewrightPackage.LIGHT_STATE:
				return convertLightStateToString(eDataType, instanceValue);
			case SlopewrightPackage.REVIEW_KIND:
				return convertReviewKindToString(eDataType, instanceValue);
			case SlopewrightPackage.STAGE:
				return convertStageToString(eDataType, instanceValue);
			case SlopewrightPackage.PLATE_ZERO:
				return convertPlateZeroToString(eDataType, instanceValue);
			case SlopewrightPackage.PLATE_SENSE:
				return convertPlateSenseToString(eDataType, instanceValue);
			case SlopewrightPackage.SIGHT_HAIR:
				return convertSightHairToString(eDataType, instanceValue);
			case SlopewrightPackage.HAND_ORDER:
				return convertHandOrderToString(eDataType, instanceValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Project createProject() {
		ProjectImpl project = new ProjectImpl();
		return project;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ValueOverride createValueOverride() {
		ValueOverrideImpl valueOverride = new ValueOverrideImpl();
		return valueOverride;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ValueConfirmation createValueConfirmation() {
		ValueConfirmationImpl valueConfirmation = new ValueConfirmationImpl();
		return valueConfirmation;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ReviewNote createReviewNote() {
		ReviewNoteImpl reviewNote = new ReviewNoteImpl();
		return reviewNote;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SurveyBlock createSurveyBlock() {
		SurveyBlockImpl surveyBlock = new SurveyBlockImpl();
		return surveyBlock;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Aerodrome createAerodrome() {
		AerodromeImpl aerodrome = new AerodromeImpl();
		return aerodrome;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MagneticVariation createMagneticVariation() {
		MagneticVariationImpl magneticVariation = new MagneticVariationImpl();
		return magneticVariation;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Place createPlace() {
		PlaceImpl place = new PlaceImpl();
		return place;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ProfilePoint createProfilePoint() {
		ProfilePointImpl profilePoint = new ProfilePointImpl();
		return profilePoint;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Runway createRunway() {
		RunwayImpl runway = new RunwayImpl();
		return runway;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RunwayEnd createRunwayEnd() {
		RunwayEndImpl runwayEnd = new RunwayEndImpl();
		return runwayEnd;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GlidePathAid createGlidePathAid() {
		GlidePathAidImpl glidePathAid = new GlidePathAidImpl();
		return glidePathAid;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TaxiwayEdge createTaxiwayEdge() {
		TaxiwayEdgeImpl taxiwayEdge = new TaxiwayEdgeImpl();
		return taxiwayEdge;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Helipad createHelipad() {
		HelipadImpl helipad = new HelipadImpl();
		return helipad;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ApproachDirection createApproachDirection() {
		ApproachDirectionImpl approachDirection = new ApproachDirectionImpl();
		return approachDirection;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public AeroplaneGroup createAeroplaneGroup() {
		AeroplaneGroupImpl aeroplaneGroup = new AeroplaneGroupImpl();
		return aeroplaneGroup;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Obstacle createObstacle() {
		ObstacleImpl obstacle = new ObstacleImpl();
		return obstacle;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GroundLevel createGroundLevel() {
		GroundLevelImpl groundLevel = new GroundLevelImpl();
		return groundLevel;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ObstacleSurvey createObstacleSurvey() {
		ObstacleSurveyImpl obstacleSurvey = new ObstacleSurveyImpl();
		return obstacleSurvey;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EquipmentType createEquipmentType() {
		EquipmentTypeImpl equipmentType = new EquipmentTypeImpl();
		return equipmentType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MeasuredIntensity createMeasuredIntensity() {
		MeasuredIntensityImpl measuredIntensity = new MeasuredIntensityImpl();
		return measuredIntensity;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PrintedDescent createPrintedDescent() {
		PrintedDescentImpl printedDescent = new PrintedDescentImpl();
		return printedDescent;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BrightnessLevel createBrightnessLevel() {
		BrightnessLevelImpl brightnessLevel = new BrightnessLevelImpl();
		return brightnessLevel;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Circuit createCircuit() {
		CircuitImpl circuit = new CircuitImpl();
		return circuit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ApproachAid createApproachAid() {
		ApproachAidImpl approachAid = new ApproachAidImpl();
		return approachAid;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LightUnit createLightUnit() {
		LightUnitImpl lightUnit = new LightUnitImpl();
		return lightUnit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MeasuredUnit createMeasuredUnit() {
		MeasuredUnitImpl measuredUnit = new MeasuredUnitImpl();
		return measuredUnit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Inspection createInspection() {
		InspectionImpl inspection = new InspectionImpl();
		return inspection;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BackgroundImage createBackgroundImage() {
		BackgroundImageImpl backgroundImage = new BackgroundImageImpl();
		return backgroundImage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Transition createTransition() {
		TransitionImpl transition = new TransitionImpl();
		return transition;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ReadBack createReadBack() {
		ReadBackImpl readBack = new ReadBackImpl();
		return readBack;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ApproachType createApproachTypeFromString(EDataType eDataType, String initialValue) {
		ApproachType result = ApproachType.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertApproachTypeToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public GlidePathKind createGlidePathKindFromString(EDataType eDataType, String initialValue) {
		GlidePathKind result = GlidePathKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertGlidePathKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public EdgeKind createEdgeKindFromString(EDataType eDataType, String initialValue) {
		EdgeKind result = EdgeKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertEdgeKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ObstacleKind createObstacleKindFromString(EDataType eDataType, String initialValue) {
		ObstacleKind result = ObstacleKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertObstacleKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public AidSide createAidSideFromString(EDataType eDataType, String initialValue) {
		AidSide result = AidSide.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertAidSideToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public SettingsForm createSettingsFormFromString(EDataType eDataType, String initialValue) {
		SettingsForm result = SettingsForm.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSettingsFormToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ClearanceChoice createClearanceChoiceFromString(EDataType eDataType, String initialValue) {
		ClearanceChoice result = ClearanceChoice.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertClearanceChoiceToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LightColour createLightColourFromString(EDataType eDataType, String initialValue) {
		LightColour result = LightColour.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLightColourToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LightState createLightStateFromString(EDataType eDataType, String initialValue) {
		LightState result = LightState.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLightStateToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ReviewKind createReviewKindFromString(EDataType eDataType, String initialValue) {
		ReviewKind result = ReviewKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertReviewKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Stage createStageFromString(EDataType eDataType, String initialValue) {
		Stage result = Stage.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertStageToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public PlateZero createPlateZeroFromString(EDataType eDataType, String initialValue) {
		PlateZero result = PlateZero.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPlateZeroToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public PlateSense createPlateSenseFromString(EDataType eDataType, String initialValue) {
		PlateSense result = PlateSense.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPlateSenseToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public SightHair createSightHairFromString(EDataType eDataType, String initialValue) {
		SightHair result = SightHair.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSightHairToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public HandOrder createHandOrderFromString(EDataType eDataType, String initialValue) {
		HandOrder result = HandOrder.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertHandOrderToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SlopewrightPackage getSlopewrightPackage() {
		return (SlopewrightPackage)getEPackage();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @deprecated
	 * @generated
	 */
	@Deprecated
	public static SlopewrightPackage getPackage() {
		return SlopewrightPackage.eINSTANCE;
	}

} //SlopewrightFactoryImpl
