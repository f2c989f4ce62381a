/**
 */
package slopewright.model.impl;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

import org.eclipse.emf.ecore.impl.EPackageImpl;

import slopewright.model.Aerodrome;
import slopewright.model.AeroplaneGroup;
import slopewright.model.AidSide;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachDirection;
import slopewright.model.ApproachHost;
import slopewright.model.ApproachType;
import slopewright.model.BackgroundImage;
import slopewright.model.BrightnessLevel;
import slopewright.model.Circuit;
import slopewright.model.ClearanceChoice;
import slopewright.model.EdgeKind;
import slopewright.model.EquipmentType;
import slopewright.model.GlidePathAid;
import slopewright.model.GlidePathKind;
import slopewright.model.GroundLevel;
import slopewright.model.HandOrder;
import slopewright.model.Helipad;
import slopewright.model.Identified;
import slopewright.model.Inspection;
import slopewright.model.LightColour;
import slopewright.model.LightState;
import slopewright.model.LightUnit;
import slopewright.model.MagneticVariation;
import slopewright.model.MeasuredIntensity;
import slopewright.model.MeasuredUnit;
import slopewright.model.Named;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.ObstacleSurvey;
import slopewright.model.Place;
import slopewright.model.PlateSense;
import slopewright.model.PlateZero;
import slopewright.model.PrintedDescent;
import slopewright.model.ProfilePoint;
import slopewright.model.Project;
import slopewright.model.ReadBack;
import slopewright.model.ReviewKind;
import slopewright.model.ReviewNote;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SettingsForm;
import slopewright.model.SightHair;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SlopewrightPackage;
import slopewright.model.Stage;
import slopewright.model.SurveyBlock;
import slopewright.model.TaxiwayEdge;
import slopewright.model.Transition;
import slopewright.model.ValueConfirmation;
import slopewright.model.ValueOverride;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Package</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class SlopewrightPackageImpl extends EPackageImpl implements SlopewrightPackage {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass identifiedEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass namedEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass projectEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass valueOverrideEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass valueConfirmationEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass reviewNoteEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass surveyBlockEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass aerodromeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass magneticVariationEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass placeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass profilePointEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass runwayEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass approachHostEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass runwayEndEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass glidePathAidEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass taxiwayEdgeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass helipadEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass approachDirectionEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass aeroplaneGroupEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass obstacleEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass groundLevelEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass obstacleSurveyEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass equipmentTypeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass measuredIntensityEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass printedDescentEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass brightnessLevelEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass circuitEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass approachAidEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass lightUnitEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass measuredUnitEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass inspectionEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass backgroundImageEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass transitionEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass readBackEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum approachTypeEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum glidePathKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum edgeKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum obstacleKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum aidSideEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum settingsFormEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum clearanceChoiceEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum lightColourEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum lightStateEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum reviewKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum stageEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum plateZeroEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum plateSenseEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum sightHairEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum handOrderEEnum = null;

	/**
	 * Creates an instance of the model <b>Package</b>, registered with
	 * {@link org.eclipse.emf.ecore.EPackage.Registry EPackage.Registry} by the package
	 * package URI value.
	 * <p>Note: the correct way to create the package is via the static
	 * factory method {@link #init init()}, which also performs
	 * initialization of the package, or returns the registered package,
	 * if one already exists.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.eclipse.emf.ecore.EPackage.Registry
	 * @see slopewright.model.SlopewrightPackage#eNS_URI
	 * @see #init()
	 * @generated
	 */
	private SlopewrightPackageImpl() {
		super(eNS_URI, SlopewrightFactory.eINSTANCE);
	}
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static boolean isInited = false;

	/**
	 * Creates, registers, and initializes the <b>Package</b> for this model, and for any others upon which it depends.
	 *
	 * <p>This method is used to initialize {@link SlopewrightPackage#eINSTANCE} when that field is accessed.
	 * Clients should not invoke it directly. Instead, they should simply access that field to obtain the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #eNS_URI
	 * @see #createPackageContents()
	 * @see #initializePackageContents()
	 * @generated
	 */
	public static SlopewrightPackage init() {
		if (isInited) return (SlopewrightPackage)EPackage.Registry.INSTANCE.getEPackage(SlopewrightPackage.eNS_URI);

		// Obtain or create and register package
		Object registeredSlopewrightPackage = EPackage.Registry.INSTANCE.get(eNS_URI);
		SlopewrightPackageImpl theSlopewrightPackage = registeredSlopewrightPackage instanceof SlopewrightPackageImpl ? (SlopewrightPackageImpl)registeredSlopewrightPackage : new SlopewrightPackageImpl();

		isInited = true;

		// Create package meta-data objects
		theSlopewrightPackage.createPackageContents();

		// Initialize created meta-data
		theSlopewrightPackage.initializePackageContents();

		// Mark meta-data to indicate it can't be changed
		theSlopewrightPackage.freeze();

		// Update the registry and return the package
		EPackage.Registry.INSTANCE.put(SlopewrightPackage.eNS_URI, theSlopewrightPackage);
		return theSlopewrightPackage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getIdentified() {
		return identifiedEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getIdentified_Id() {
		return (EAttribute)identifiedEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getNamed() {
		return namedEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getNamed_Name() {
		return (EAttribute)namedEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getNamed_Remarks() {
		return (EAttribute)namedEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getProject() {
		return projectEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProject_Revision() {
		return (EAttribute)projectEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProject_Author() {
		return (EAttribute)projectEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProject_Organisation() {
		return (EAttribute)projectEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProject_Date() {
		return (EAttribute)projectEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProject_RuleSetKey() {
		return (EAttribute)projectEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProject_Aerodrome() {
		return (EReference)projectEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProject_Overrides() {
		return (EReference)projectEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProject_Confirmations() {
		return (EReference)projectEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProject_ReviewNotes() {
		return (EReference)projectEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProject_SurveyBlocks() {
		return (EReference)projectEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProject_DocumentNumber() {
		return (EAttribute)projectEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProject_Client() {
		return (EAttribute)projectEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProject_CheckedBy() {
		return (EAttribute)projectEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProject_ApprovedBy() {
		return (EAttribute)projectEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProject_Stage() {
		return (EAttribute)projectEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProject_BookPath() {
		return (EAttribute)projectEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProject_BookSha256() {
		return (EAttribute)projectEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProject_RuleSetFolder() {
		return (EAttribute)projectEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProject_ReadBacks() {
		return (EReference)projectEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getValueOverride() {
		return valueOverrideEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getValueOverride_ValueKey() {
		return (EAttribute)valueOverrideEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getValueOverride_RuleSetKey() {
		return (EAttribute)valueOverrideEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getValueOverride_Value() {
		return (EAttribute)valueOverrideEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getValueOverride_Reason() {
		return (EAttribute)valueOverrideEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getValueOverride_Person() {
		return (EAttribute)valueOverrideEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getValueOverride_Date() {
		return (EAttribute)valueOverrideEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getValueOverride_Unit() {
		return (EAttribute)valueOverrideEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getValueConfirmation() {
		return valueConfirmationEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getValueConfirmation_ValueKey() {
		return (EAttribute)valueConfirmationEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getValueConfirmation_RuleSetKey() {
		return (EAttribute)valueConfirmationEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getValueConfirmation_Source() {
		return (EAttribute)valueConfirmationEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getValueConfirmation_Person() {
		return (EAttribute)valueConfirmationEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getValueConfirmation_Date() {
		return (EAttribute)valueConfirmationEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getValueConfirmation_Value() {
		return (EAttribute)valueConfirmationEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getValueConfirmation_Unit() {
		return (EAttribute)valueConfirmationEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getValueConfirmation_Edition() {
		return (EAttribute)valueConfirmationEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getValueConfirmation_Clause() {
		return (EAttribute)valueConfirmationEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getValueConfirmation_SecondPerson() {
		return (EAttribute)valueConfirmationEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getValueConfirmation_FromBook() {
		return (EAttribute)valueConfirmationEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getValueConfirmation_SecondDate() {
		return (EAttribute)valueConfirmationEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getValueConfirmation_Rejected() {
		return (EAttribute)valueConfirmationEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getValueConfirmation_Reason() {
		return (EAttribute)valueConfirmationEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getValueConfirmation_Sha256() {
		return (EAttribute)valueConfirmationEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getReviewNote() {
		return reviewNoteEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReviewNote_ElementId() {
		return (EAttribute)reviewNoteEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReviewNote_RuleId() {
		return (EAttribute)reviewNoteEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReviewNote_Text() {
		return (EAttribute)reviewNoteEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReviewNote_Person() {
		return (EAttribute)reviewNoteEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReviewNote_Date() {
		return (EAttribute)reviewNoteEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReviewNote_Resolved() {
		return (EAttribute)reviewNoteEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReviewNote_Kind() {
		return (EAttribute)reviewNoteEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReviewNote_NoteId() {
		return (EAttribute)reviewNoteEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReviewNote_Sha256() {
		return (EAttribute)reviewNoteEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSurveyBlock() {
		return surveyBlockEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSurveyBlock_Kind() {
		return (EAttribute)surveyBlockEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSurveyBlock_Path() {
		return (EAttribute)surveyBlockEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSurveyBlock_Sha256() {
		return (EAttribute)surveyBlockEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSurveyBlock_PointCount() {
		return (EAttribute)surveyBlockEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSurveyBlock_HorizontalAccuracyM() {
		return (EAttribute)surveyBlockEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSurveyBlock_VerticalAccuracyM() {
		return (EAttribute)surveyBlockEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSurveyBlock_Source() {
		return (EAttribute)surveyBlockEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSurveyBlock_Date() {
		return (EAttribute)surveyBlockEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getAerodrome() {
		return aerodromeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAerodrome_Identifier() {
		return (EAttribute)aerodromeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAerodrome_LatitudeDeg() {
		return (EAttribute)aerodromeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAerodrome_LongitudeDeg() {
		return (EAttribute)aerodromeEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAerodrome_ElevationM() {
		return (EAttribute)aerodromeEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAerodrome_VerticalDatum() {
		return (EAttribute)aerodromeEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAerodrome_GeoidOffsetM() {
		return (EAttribute)aerodromeEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAerodrome_CoordinateReference() {
		return (EAttribute)aerodromeEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAerodrome_CoordinateEpoch() {
		return (EAttribute)aerodromeEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAerodrome_CoordinateAccuracyM() {
		return (EAttribute)aerodromeEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAerodrome_GridRotationDeg() {
		return (EAttribute)aerodromeEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getAerodrome_MagneticVariation() {
		return (EReference)aerodromeEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getAerodrome_Runways() {
		return (EReference)aerodromeEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getAerodrome_Helipads() {
		return (EReference)aerodromeEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getAerodrome_AeroplaneGroups() {
		return (EReference)aerodromeEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getAerodrome_Obstacles() {
		return (EReference)aerodromeEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getAerodrome_GroundLevels() {
		return (EReference)aerodromeEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getAerodrome_TaxiwayEdges() {
		return (EReference)aerodromeEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getAerodrome_Circuits() {
		return (EReference)aerodromeEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getAerodrome_EquipmentTypes() {
		return (EReference)aerodromeEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getAerodrome_BackgroundImages() {
		return (EReference)aerodromeEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getAerodrome_ObstacleSurveys() {
		return (EReference)aerodromeEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getMagneticVariation() {
		return magneticVariationEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMagneticVariation_VariationDeg() {
		return (EAttribute)magneticVariationEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMagneticVariation_AnnualChangeDeg() {
		return (EAttribute)magneticVariationEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMagneticVariation_Date() {
		return (EAttribute)magneticVariationEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMagneticVariation_Source() {
		return (EAttribute)magneticVariationEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPlace() {
		return placeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlace_LatitudeDeg() {
		return (EAttribute)placeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlace_LongitudeDeg() {
		return (EAttribute)placeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlace_EastM() {
		return (EAttribute)placeEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlace_NorthM() {
		return (EAttribute)placeEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlace_ElevationM() {
		return (EAttribute)placeEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getProfilePoint() {
		return profilePointEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProfilePoint_ChainageM() {
		return (EAttribute)profilePointEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProfilePoint_ElevationM() {
		return (EAttribute)profilePointEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRunway() {
		return runwayEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunway_Designator() {
		return (EAttribute)runwayEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunway_LengthM() {
		return (EAttribute)runwayEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunway_WidthM() {
		return (EAttribute)runwayEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunway_CodeNumber() {
		return (EAttribute)runwayEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunway_Surface() {
		return (EAttribute)runwayEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunway_Paved() {
		return (EAttribute)runwayEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunway_StripLengthM() {
		return (EAttribute)runwayEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunway_StripWidthM() {
		return (EAttribute)runwayEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRunway_CentreLine() {
		return (EReference)runwayEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRunway_Ends() {
		return (EReference)runwayEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunway_ObjectFreeWidthM() {
		return (EAttribute)runwayEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunway_ObjectFreeSource() {
		return (EAttribute)runwayEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunway_OpenDataSource() {
		return (EAttribute)runwayEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunway_OpenDataLicence() {
		return (EAttribute)runwayEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunway_OpenDataConfirmation() {
		return (EAttribute)runwayEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunway_OpenDataConfirmationDate() {
		return (EAttribute)runwayEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunway_OpenDataConfirmationPerson() {
		return (EAttribute)runwayEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getApproachHost() {
		return approachHostEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproachHost_Designator() {
		return (EAttribute)approachHostEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproachHost_DesiredSlopeDeg() {
		return (EAttribute)approachHostEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproachHost_ApproachType() {
		return (EAttribute)approachHostEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getApproachHost_GlidePath() {
		return (EReference)approachHostEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getApproachHost_RegularGroups() {
		return (EReference)approachHostEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getApproachHost_Aids() {
		return (EReference)approachHostEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRunwayEnd() {
		return runwayEndEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRunwayEnd_Threshold() {
		return (EReference)runwayEndEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunwayEnd_TrueBearingDeg() {
		return (EAttribute)runwayEndEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunwayEnd_ThresholdElevationM() {
		return (EAttribute)runwayEndEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunwayEnd_DisplacedThresholdM() {
		return (EAttribute)runwayEndEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunwayEnd_ExtremityElevationM() {
		return (EAttribute)runwayEndEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunwayEnd_LandingDistanceM() {
		return (EAttribute)runwayEndEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunwayEnd_AimingPointDistanceM() {
		return (EAttribute)runwayEndEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRunwayEnd_SiteProfile() {
		return (EReference)runwayEndEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunwayEnd_HazardousTerrain() {
		return (EAttribute)runwayEndEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunwayEnd_SiteProfileSource() {
		return (EAttribute)runwayEndEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunwayEnd_SiteProfileDate() {
		return (EAttribute)runwayEndEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunwayEnd_SiteProfileAccuracyM() {
		return (EAttribute)runwayEndEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getGlidePathAid() {
		return glidePathAidEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlidePathAid_Kind() {
		return (EAttribute)glidePathAidEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlidePathAid_PathAngleDeg() {
		return (EAttribute)glidePathAidEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlidePathAid_ReferenceDatumHeightM() {
		return (EAttribute)glidePathAidEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlidePathAid_OriginAlongM() {
		return (EAttribute)glidePathAidEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlidePathAid_AntennaAlongM() {
		return (EAttribute)glidePathAidEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlidePathAid_AntennaRightM() {
		return (EAttribute)glidePathAidEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlidePathAid_CriticalAreaLengthM() {
		return (EAttribute)glidePathAidEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlidePathAid_CriticalAreaWidthM() {
		return (EAttribute)glidePathAidEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlidePathAid_CriticalAreaSource() {
		return (EAttribute)glidePathAidEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getTaxiwayEdge() {
		return taxiwayEdgeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTaxiwayEdge_Kind() {
		return (EAttribute)taxiwayEdgeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTaxiwayEdge_Points() {
		return (EReference)taxiwayEdgeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getHelipad() {
		return helipadEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getHelipad_Place() {
		return (EReference)helipadEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHelipad_ElevationM() {
		return (EAttribute)helipadEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHelipad_FatoLengthM() {
		return (EAttribute)helipadEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHelipad_FatoWidthM() {
		return (EAttribute)helipadEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHelipad_TlofLengthM() {
		return (EAttribute)helipadEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHelipad_TlofWidthM() {
		return (EAttribute)helipadEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHelipad_SafetyAreaWidthM() {
		return (EAttribute)helipadEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHelipad_HoverHeightM() {
		return (EAttribute)helipadEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHelipad_EyeAboveSkidsM() {
		return (EAttribute)helipadEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHelipad_Floating() {
		return (EAttribute)helipadEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getHelipad_Directions() {
		return (EReference)helipadEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHelipad_DeckPitchDeg() {
		return (EAttribute)helipadEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHelipad_DeckRollDeg() {
		return (EAttribute)helipadEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHelipad_DeckHeadingDeg() {
		return (EAttribute)helipadEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHelipad_FatoBearingDeg() {
		return (EAttribute)helipadEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getApproachDirection() {
		return approachDirectionEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproachDirection_TrueBearingDeg() {
		return (EAttribute)approachDirectionEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getAeroplaneGroup() {
		return aeroplaneGroupEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAeroplaneGroup_StaticCockpitToWheelM() {
		return (EAttribute)aeroplaneGroupEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAeroplaneGroup_EyeToWheelM() {
		return (EAttribute)aeroplaneGroupEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAeroplaneGroup_EyeToAntennaM() {
		return (EAttribute)aeroplaneGroupEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAeroplaneGroup_SharePercent() {
		return (EAttribute)aeroplaneGroupEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAeroplaneGroup_LightNonTurbojet() {
		return (EAttribute)aeroplaneGroupEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAeroplaneGroup_MaxSlopeDeg() {
		return (EAttribute)aeroplaneGroupEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getObstacle() {
		return obstacleEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getObstacle_Kind() {
		return (EAttribute)obstacleEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getObstacle_Places() {
		return (EReference)obstacleEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getObstacle_TopElevationM() {
		return (EAttribute)obstacleEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getObstacle_HorizontalAccuracyM() {
		return (EAttribute)obstacleEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getObstacle_VerticalAccuracyM() {
		return (EAttribute)obstacleEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getObstacle_Lighted() {
		return (EAttribute)obstacleEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getObstacle_Shielded() {
		return (EAttribute)obstacleEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getObstacle_ShieldedBy() {
		return (EReference)obstacleEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getObstacle_ShieldingStudy() {
		return (EAttribute)obstacleEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getObstacle_ShieldingStudyDate() {
		return (EAttribute)obstacleEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getObstacle_ShieldingStudyPerson() {
		return (EAttribute)obstacleEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getObstacle_Temporary() {
		return (EAttribute)obstacleEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getObstacle_Source() {
		return (EAttribute)obstacleEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getObstacle_Date() {
		return (EAttribute)obstacleEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getGroundLevel() {
		return groundLevelEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getGroundLevel_Place() {
		return (EReference)groundLevelEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGroundLevel_Source() {
		return (EAttribute)groundLevelEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGroundLevel_Date() {
		return (EAttribute)groundLevelEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGroundLevel_VerticalAccuracyM() {
		return (EAttribute)groundLevelEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getObstacleSurvey() {
		return obstacleSurveyEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getObstacleSurvey_Date() {
		return (EAttribute)obstacleSurveyEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getObstacleSurvey_Source() {
		return (EAttribute)obstacleSurveyEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getObstacleSurvey_ReachM() {
		return (EAttribute)obstacleSurveyEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getObstacleSurvey_HalfWidthM() {
		return (EAttribute)obstacleSurveyEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getObstacleSurvey_HorizontalAccuracyM() {
		return (EAttribute)obstacleSurveyEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getObstacleSurvey_VerticalAccuracyM() {
		return (EAttribute)obstacleSurveyEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getObstacleSurvey_Hosts() {
		return (EReference)obstacleSurveyEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getObstacleSurvey_AllRound() {
		return (EAttribute)obstacleSurveyEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getEquipmentType() {
		return equipmentTypeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_FamilyKey() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_BeamWidthDeg() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_TransitionMinutes() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_MinSettingDeg() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_MaxSettingDeg() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_IntensityCd() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_LampPowerW() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_LampsPerUnit() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_Supply() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_MinVoltageV() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_MaxVoltageV() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_MassKg() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_HeightAboveGroundM() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getEquipmentType_Sectors() {
		return (EReference)equipmentTypeEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_WhiteIntensityCd() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_RedChromaticityY() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_BrightnessSteps() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_NightStepPercent() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_TiltCutOffDeg() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_FlashRateHz() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_FlashOnPercent() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_ModulationPercent() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(21);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_DataSource() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(22);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getEquipmentType_Intensities() {
		return (EReference)equipmentTypeEClass.getEStructuralFeatures().get(23);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_PlateZero() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(24);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_PlateSense() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(25);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_PlateStepDeg() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(26);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_SlopeScaleStepDeg() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(27);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_BubbleAccuracyMinutes() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(28);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_LowerHair() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(29);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_UpperHair() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(30);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_HandOrder() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(31);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_RecheckEveryH() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(32);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEquipmentType_StabilisedToDeg() {
		return (EAttribute)equipmentTypeEClass.getEStructuralFeatures().get(33);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getEquipmentType_PrintedDescents() {
		return (EReference)equipmentTypeEClass.getEStructuralFeatures().get(34);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getEquipmentType_BrightnessLevels() {
		return (EReference)equipmentTypeEClass.getEStructuralFeatures().get(35);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getMeasuredIntensity() {
		return measuredIntensityEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMeasuredIntensity_Colour() {
		return (EAttribute)measuredIntensityEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMeasuredIntensity_AzimuthDeg() {
		return (EAttribute)measuredIntensityEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMeasuredIntensity_ElevationDeg() {
		return (EAttribute)measuredIntensityEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMeasuredIntensity_IntensityCd() {
		return (EAttribute)measuredIntensityEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPrintedDescent() {
		return printedDescentEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrintedDescent_SpeedKt() {
		return (EAttribute)printedDescentEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrintedDescent_DescentFtmin() {
		return (EAttribute)printedDescentEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrintedDescent_SlopeDeg() {
		return (EAttribute)printedDescentEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getBrightnessLevel() {
		return brightnessLevelEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBrightnessLevel_PowerPercent() {
		return (EAttribute)brightnessLevelEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCircuit() {
		return circuitEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCircuit_Supply() {
		return (EAttribute)circuitEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCircuit_CurrentA() {
		return (EAttribute)circuitEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCircuit_CapacityAh() {
		return (EAttribute)circuitEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCircuit_BrightnessSteps() {
		return (EAttribute)circuitEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCircuit_Aids() {
		return (EReference)circuitEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCircuit_RegulatorRatingKva() {
		return (EAttribute)circuitEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCircuit_CableLengthM() {
		return (EAttribute)circuitEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCircuit_CableResistanceOhmPerKm() {
		return (EAttribute)circuitEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCircuit_SwitchOverS() {
		return (EAttribute)circuitEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCircuit_Standby() {
		return (EAttribute)circuitEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCircuit_AgeLeftPercent() {
		return (EAttribute)circuitEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCircuit_ColdLeftPercent() {
		return (EAttribute)circuitEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getApproachAid() {
		return approachAidEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproachAid_FamilyKey() {
		return (EAttribute)approachAidEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproachAid_RuleSetKey() {
		return (EAttribute)approachAidEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproachAid_Side() {
		return (EAttribute)approachAidEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproachAid_SlopeDeg() {
		return (EAttribute)approachAidEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproachAid_Settings() {
		return (EAttribute)approachAidEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproachAid_Clearance() {
		return (EAttribute)approachAidEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproachAid_ChosenClearanceM() {
		return (EAttribute)approachAidEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproachAid_TargetEyeHeightM() {
		return (EAttribute)approachAidEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproachAid_HeightGroup() {
		return (EAttribute)approachAidEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproachAid_AxisTurnDeg() {
		return (EAttribute)approachAidEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproachAid_UnshiftedDistanceM() {
		return (EAttribute)approachAidEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproachAid_UnshiftedDistanceReason() {
		return (EAttribute)approachAidEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproachAid_LevelAccuracyM() {
		return (EAttribute)approachAidEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproachAid_BeamLeftLimitDeg() {
		return (EAttribute)approachAidEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproachAid_BeamRightLimitDeg() {
		return (EAttribute)approachAidEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproachAid_UnitCount() {
		return (EAttribute)approachAidEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getApproachAid_Equipment() {
		return (EReference)approachAidEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproachAid_Portable() {
		return (EAttribute)approachAidEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproachAid_GroundSpeedKt() {
		return (EAttribute)approachAidEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproachAid_AirSpeedKt() {
		return (EAttribute)approachAidEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproachAid_WindKt() {
		return (EAttribute)approachAidEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproachAid_DescentFtmin() {
		return (EAttribute)approachAidEClass.getEStructuralFeatures().get(21);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getApproachAid_Units() {
		return (EReference)approachAidEClass.getEStructuralFeatures().get(22);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getApproachAid_Inspections() {
		return (EReference)approachAidEClass.getEStructuralFeatures().get(23);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getLightUnit() {
		return lightUnitEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLightUnit_Label() {
		return (EAttribute)lightUnitEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLightUnit_Bar() {
		return (EAttribute)lightUnitEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLightUnit_AlongM() {
		return (EAttribute)lightUnitEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLightUnit_RightM() {
		return (EAttribute)lightUnitEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLightUnit_LensElevationM() {
		return (EAttribute)lightUnitEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLightUnit_AzimuthOffsetDeg() {
		return (EAttribute)lightUnitEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLightUnit_SettingDeg() {
		return (EAttribute)lightUnitEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLightUnit_HeightAboveGroundM() {
		return (EAttribute)lightUnitEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLightUnit_Frangible() {
		return (EAttribute)lightUnitEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getLightUnit_Transitions() {
		return (EReference)lightUnitEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getLightUnit_Measured() {
		return (EReference)lightUnitEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLightUnit_LampsOut() {
		return (EAttribute)lightUnitEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getMeasuredUnit() {
		return measuredUnitEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMeasuredUnit_SettingDeg() {
		return (EAttribute)measuredUnitEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMeasuredUnit_AlongM() {
		return (EAttribute)measuredUnitEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMeasuredUnit_RightM() {
		return (EAttribute)measuredUnitEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMeasuredUnit_LensElevationM() {
		return (EAttribute)measuredUnitEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMeasuredUnit_Person() {
		return (EAttribute)measuredUnitEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMeasuredUnit_Date() {
		return (EAttribute)measuredUnitEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMeasuredUnit_Instrument() {
		return (EAttribute)measuredUnitEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getInspection() {
		return inspectionEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInspection_Date() {
		return (EAttribute)inspectionEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInspection_Person() {
		return (EAttribute)inspectionEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInspection_Organisation() {
		return (EAttribute)inspectionEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInspection_OnSlopeAngleDeg() {
		return (EAttribute)inspectionEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInspection_UsableRangeM() {
		return (EAttribute)inspectionEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInspection_AzimuthLeftDeg() {
		return (EAttribute)inspectionEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInspection_AzimuthRightDeg() {
		return (EAttribute)inspectionEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInspection_ObstacleClear() {
		return (EAttribute)inspectionEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getBackgroundImage() {
		return backgroundImageEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBackgroundImage_Path() {
		return (EAttribute)backgroundImageEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBackgroundImage_Sha256() {
		return (EAttribute)backgroundImageEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBackgroundImage_FirstColumnPx() {
		return (EAttribute)backgroundImageEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBackgroundImage_FirstRowPx() {
		return (EAttribute)backgroundImageEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getBackgroundImage_FirstPlace() {
		return (EReference)backgroundImageEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBackgroundImage_SecondColumnPx() {
		return (EAttribute)backgroundImageEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBackgroundImage_SecondRowPx() {
		return (EAttribute)backgroundImageEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getBackgroundImage_SecondPlace() {
		return (EReference)backgroundImageEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBackgroundImage_OpacityPercent() {
		return (EAttribute)backgroundImageEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBackgroundImage_Hidden() {
		return (EAttribute)backgroundImageEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBackgroundImage_Source() {
		return (EAttribute)backgroundImageEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBackgroundImage_Date() {
		return (EAttribute)backgroundImageEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getTransition() {
		return transitionEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTransition_OffsetDeg() {
		return (EAttribute)transitionEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTransition_WidthMinutes() {
		return (EAttribute)transitionEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTransition_BelowColour() {
		return (EAttribute)transitionEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTransition_BelowState() {
		return (EAttribute)transitionEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTransition_AboveColour() {
		return (EAttribute)transitionEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTransition_AboveState() {
		return (EAttribute)transitionEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getReadBack() {
		return readBackEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReadBack_ElementId() {
		return (EAttribute)readBackEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReadBack_Person() {
		return (EAttribute)readBackEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReadBack_Date() {
		return (EAttribute)readBackEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReadBack_Sha256() {
		return (EAttribute)readBackEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getApproachType() {
		return approachTypeEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getGlidePathKind() {
		return glidePathKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getEdgeKind() {
		return edgeKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getObstacleKind() {
		return obstacleKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getAidSide() {
		return aidSideEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getSettingsForm() {
		return settingsFormEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getClearanceChoice() {
		return clearanceChoiceEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getLightColour() {
		return lightColourEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getLightState() {
		return lightStateEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getReviewKind() {
		return reviewKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getStage() {
		return stageEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getPlateZero() {
		return plateZeroEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getPlateSense() {
		return plateSenseEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getSightHair() {
		return sightHairEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getHandOrder() {
		return handOrderEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SlopewrightFactory getSlopewrightFactory() {
		return (SlopewrightFactory)getEFactoryInstance();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private boolean isCreated = false;

	/**
	 * Creates the meta-model objects for the package.  This method is
	 * guarded to have no affect on any invocation but its first.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public void createPackageContents() {
		if (isCreated) return;
		isCreated = true;

		// Create classes and their features
		identifiedEClass = createEClass(IDENTIFIED);
		createEAttribute(identifiedEClass, IDENTIFIED__ID);

		namedEClass = createEClass(NAMED);
		createEAttribute(namedEClass, NAMED__NAME);
		createEAttribute(namedEClass, NAMED__REMARKS);

		projectEClass = createEClass(PROJECT);
		createEAttribute(projectEClass, PROJECT__REVISION);
		createEAttribute(projectEClass, PROJECT__AUTHOR);
		createEAttribute(projectEClass, PROJECT__ORGANISATION);
		createEAttribute(projectEClass, PROJECT__DATE);
		createEAttribute(projectEClass, PROJECT__RULE_SET_KEY);
		createEReference(projectEClass, PROJECT__AERODROME);
		createEReference(projectEClass, PROJECT__OVERRIDES);
		createEReference(projectEClass, PROJECT__CONFIRMATIONS);
		createEReference(projectEClass, PROJECT__REVIEW_NOTES);
		createEReference(projectEClass, PROJECT__SURVEY_BLOCKS);
		createEAttribute(projectEClass, PROJECT__DOCUMENT_NUMBER);
		createEAttribute(projectEClass, PROJECT__CLIENT);
		createEAttribute(projectEClass, PROJECT__CHECKED_BY);
		createEAttribute(projectEClass, PROJECT__APPROVED_BY);
		createEAttribute(projectEClass, PROJECT__STAGE);
		createEAttribute(projectEClass, PROJECT__BOOK_PATH);
		createEAttribute(projectEClass, PROJECT__BOOK_SHA256);
		createEAttribute(projectEClass, PROJECT__RULE_SET_FOLDER);
		createEReference(projectEClass, PROJECT__READ_BACKS);

		valueOverrideEClass = createEClass(VALUE_OVERRIDE);
		createEAttribute(valueOverrideEClass, VALUE_OVERRIDE__VALUE_KEY);
		createEAttribute(valueOverrideEClass, VALUE_OVERRIDE__RULE_SET_KEY);
		createEAttribute(valueOverrideEClass, VALUE_OVERRIDE__VALUE);
		createEAttribute(valueOverrideEClass, VALUE_OVERRIDE__REASON);
		createEAttribute(valueOverrideEClass, VALUE_OVERRIDE__PERSON);
		createEAttribute(valueOverrideEClass, VALUE_OVERRIDE__DATE);
		createEAttribute(valueOverrideEClass, VALUE_OVERRIDE__UNIT);

		valueConfirmationEClass = createEClass(VALUE_CONFIRMATION);
		createEAttribute(valueConfirmationEClass, VALUE_CONFIRMATION__VALUE_KEY);
		createEAttribute(valueConfirmationEClass, VALUE_CONFIRMATION__RULE_SET_KEY);
		createEAttribute(valueConfirmationEClass, VALUE_CONFIRMATION__SOURCE);
		createEAttribute(valueConfirmationEClass, VALUE_CONFIRMATION__PERSON);
		createEAttribute(valueConfirmationEClass, VALUE_CONFIRMATION__DATE);
		createEAttribute(valueConfirmationEClass, VALUE_CONFIRMATION__VALUE);
		createEAttribute(valueConfirmationEClass, VALUE_CONFIRMATION__UNIT);
		createEAttribute(valueConfirmationEClass, VALUE_CONFIRMATION__EDITION);
		createEAttribute(valueConfirmationEClass, VALUE_CONFIRMATION__CLAUSE);
		createEAttribute(valueConfirmationEClass, VALUE_CONFIRMATION__SECOND_PERSON);
		createEAttribute(valueConfirmationEClass, VALUE_CONFIRMATION__FROM_BOOK);
		createEAttribute(valueConfirmationEClass, VALUE_CONFIRMATION__SECOND_DATE);
		createEAttribute(valueConfirmationEClass, VALUE_CONFIRMATION__REJECTED);
		createEAttribute(valueConfirmationEClass, VALUE_CONFIRMATION__REASON);
		createEAttribute(valueConfirmationEClass, VALUE_CONFIRMATION__SHA256);

		reviewNoteEClass = createEClass(REVIEW_NOTE);
		createEAttribute(reviewNoteEClass, REVIEW_NOTE__ELEMENT_ID);
		createEAttribute(reviewNoteEClass, REVIEW_NOTE__RULE_ID);
		createEAttribute(reviewNoteEClass, REVIEW_NOTE__TEXT);
		createEAttribute(reviewNoteEClass, REVIEW_NOTE__PERSON);
		createEAttribute(reviewNoteEClass, REVIEW_NOTE__DATE);
		createEAttribute(reviewNoteEClass, REVIEW_NOTE__RESOLVED);
		createEAttribute(reviewNoteEClass, REVIEW_NOTE__KIND);
		createEAttribute(reviewNoteEClass, REVIEW_NOTE__NOTE_ID);
		createEAttribute(reviewNoteEClass, REVIEW_NOTE__SHA256);

		surveyBlockEClass = createEClass(SURVEY_BLOCK);
		createEAttribute(surveyBlockEClass, SURVEY_BLOCK__KIND);
		createEAttribute(surveyBlockEClass, SURVEY_BLOCK__PATH);
		createEAttribute(surveyBlockEClass, SURVEY_BLOCK__SHA256);
		createEAttribute(surveyBlockEClass, SURVEY_BLOCK__POINT_COUNT);
		createEAttribute(surveyBlockEClass, SURVEY_BLOCK__HORIZONTAL_ACCURACY_M);
		createEAttribute(surveyBlockEClass, SURVEY_BLOCK__VERTICAL_ACCURACY_M);
		createEAttribute(surveyBlockEClass, SURVEY_BLOCK__SOURCE);
		createEAttribute(surveyBlockEClass, SURVEY_BLOCK__DATE);

		aerodromeEClass = createEClass(AERODROME);
		createEAttribute(aerodromeEClass, AERODROME__IDENTIFIER);
		createEAttribute(aerodromeEClass, AERODROME__LATITUDE_DEG);
		createEAttribute(aerodromeEClass, AERODROME__LONGITUDE_DEG);
		createEAttribute(aerodromeEClass, AERODROME__ELEVATION_M);
		createEAttribute(aerodromeEClass, AERODROME__VERTICAL_DATUM);
		createEAttribute(aerodromeEClass, AERODROME__GEOID_OFFSET_M);
		createEAttribute(aerodromeEClass, AERODROME__COORDINATE_REFERENCE);
		createEAttribute(aerodromeEClass, AERODROME__COORDINATE_EPOCH);
		createEAttribute(aerodromeEClass, AERODROME__COORDINATE_ACCURACY_M);
		createEAttribute(aerodromeEClass, AERODROME__GRID_ROTATION_DEG);
		createEReference(aerodromeEClass, AERODROME__MAGNETIC_VARIATION);
		createEReference(aerodromeEClass, AERODROME__RUNWAYS);
		createEReference(aerodromeEClass, AERODROME__HELIPADS);
		createEReference(aerodromeEClass, AERODROME__AEROPLANE_GROUPS);
		createEReference(aerodromeEClass, AERODROME__OBSTACLES);
		createEReference(aerodromeEClass, AERODROME__GROUND_LEVELS);
		createEReference(aerodromeEClass, AERODROME__TAXIWAY_EDGES);
		createEReference(aerodromeEClass, AERODROME__CIRCUITS);
		createEReference(aerodromeEClass, AERODROME__EQUIPMENT_TYPES);
		createEReference(aerodromeEClass, AERODROME__BACKGROUND_IMAGES);
		createEReference(aerodromeEClass, AERODROME__OBSTACLE_SURVEYS);

		magneticVariationEClass = createEClass(MAGNETIC_VARIATION);
		createEAttribute(magneticVariationEClass, MAGNETIC_VARIATION__VARIATION_DEG);
		createEAttribute(magneticVariationEClass, MAGNETIC_VARIATION__ANNUAL_CHANGE_DEG);
		createEAttribute(magneticVariationEClass, MAGNETIC_VARIATION__DATE);
		createEAttribute(magneticVariationEClass, MAGNETIC_VARIATION__SOURCE);

		placeEClass = createEClass(PLACE);
		createEAttribute(placeEClass, PLACE__LATITUDE_DEG);
		createEAttribute(placeEClass, PLACE__LONGITUDE_DEG);
		createEAttribute(placeEClass, PLACE__EAST_M);
		createEAttribute(placeEClass, PLACE__NORTH_M);
		createEAttribute(placeEClass, PLACE__ELEVATION_M);

		profilePointEClass = createEClass(PROFILE_POINT);
		createEAttribute(profilePointEClass, PROFILE_POINT__CHAINAGE_M);
		createEAttribute(profilePointEClass, PROFILE_POINT__ELEVATION_M);

		runwayEClass = createEClass(RUNWAY);
		createEAttribute(runwayEClass, RUNWAY__DESIGNATOR);
		createEAttribute(runwayEClass, RUNWAY__LENGTH_M);
		createEAttribute(runwayEClass, RUNWAY__WIDTH_M);
		createEAttribute(runwayEClass, RUNWAY__CODE_NUMBER);
		createEAttribute(runwayEClass, RUNWAY__SURFACE);
		createEAttribute(runwayEClass, RUNWAY__PAVED);
		createEAttribute(runwayEClass, RUNWAY__STRIP_LENGTH_M);
		createEAttribute(runwayEClass, RUNWAY__STRIP_WIDTH_M);
		createEReference(runwayEClass, RUNWAY__CENTRE_LINE);
		createEReference(runwayEClass, RUNWAY__ENDS);
		createEAttribute(runwayEClass, RUNWAY__OBJECT_FREE_WIDTH_M);
		createEAttribute(runwayEClass, RUNWAY__OBJECT_FREE_SOURCE);
		createEAttribute(runwayEClass, RUNWAY__OPEN_DATA_SOURCE);
		createEAttribute(runwayEClass, RUNWAY__OPEN_DATA_LICENCE);
		createEAttribute(runwayEClass, RUNWAY__OPEN_DATA_CONFIRMATION);
		createEAttribute(runwayEClass, RUNWAY__OPEN_DATA_CONFIRMATION_DATE);
		createEAttribute(runwayEClass, RUNWAY__OPEN_DATA_CONFIRMATION_PERSON);

		approachHostEClass = createEClass(APPROACH_HOST);
		createEAttribute(approachHostEClass, APPROACH_HOST__DESIGNATOR);
		createEAttribute(approachHostEClass, APPROACH_HOST__DESIRED_SLOPE_DEG);
		createEAttribute(approachHostEClass, APPROACH_HOST__APPROACH_TYPE);
		createEReference(approachHostEClass, APPROACH_HOST__GLIDE_PATH);
		createEReference(approachHostEClass, APPROACH_HOST__REGULAR_GROUPS);
		createEReference(approachHostEClass, APPROACH_HOST__AIDS);

		runwayEndEClass = createEClass(RUNWAY_END);
		createEReference(runwayEndEClass, RUNWAY_END__THRESHOLD);
		createEAttribute(runwayEndEClass, RUNWAY_END__TRUE_BEARING_DEG);
		createEAttribute(runwayEndEClass, RUNWAY_END__THRESHOLD_ELEVATION_M);
		createEAttribute(runwayEndEClass, RUNWAY_END__DISPLACED_THRESHOLD_M);
		createEAttribute(runwayEndEClass, RUNWAY_END__EXTREMITY_ELEVATION_M);
		createEAttribute(runwayEndEClass, RUNWAY_END__LANDING_DISTANCE_M);
		createEAttribute(runwayEndEClass, RUNWAY_END__AIMING_POINT_DISTANCE_M);
		createEReference(runwayEndEClass, RUNWAY_END__SITE_PROFILE);
		createEAttribute(runwayEndEClass, RUNWAY_END__HAZARDOUS_TERRAIN);
		createEAttribute(runwayEndEClass, RUNWAY_END__SITE_PROFILE_SOURCE);
		createEAttribute(runwayEndEClass, RUNWAY_END__SITE_PROFILE_DATE);
		createEAttribute(runwayEndEClass, RUNWAY_END__SITE_PROFILE_ACCURACY_M);

		glidePathAidEClass = createEClass(GLIDE_PATH_AID);
		createEAttribute(glidePathAidEClass, GLIDE_PATH_AID__KIND);
		createEAttribute(glidePathAidEClass, GLIDE_PATH_AID__PATH_ANGLE_DEG);
		createEAttribute(glidePathAidEClass, GLIDE_PATH_AID__REFERENCE_DATUM_HEIGHT_M);
		createEAttribute(glidePathAidEClass, GLIDE_PATH_AID__ORIGIN_ALONG_M);
		createEAttribute(glidePathAidEClass, GLIDE_PATH_AID__ANTENNA_ALONG_M);
		createEAttribute(glidePathAidEClass, GLIDE_PATH_AID__ANTENNA_RIGHT_M);
		createEAttribute(glidePathAidEClass, GLIDE_PATH_AID__CRITICAL_AREA_LENGTH_M);
		createEAttribute(glidePathAidEClass, GLIDE_PATH_AID__CRITICAL_AREA_WIDTH_M);
		createEAttribute(glidePathAidEClass, GLIDE_PATH_AID__CRITICAL_AREA_SOURCE);

		taxiwayEdgeEClass = createEClass(TAXIWAY_EDGE);
		createEAttribute(taxiwayEdgeEClass, TAXIWAY_EDGE__KIND);
		createEReference(taxiwayEdgeEClass, TAXIWAY_EDGE__POINTS);

		helipadEClass = createEClass(HELIPAD);
		createEReference(helipadEClass, HELIPAD__PLACE);
		createEAttribute(helipadEClass, HELIPAD__ELEVATION_M);
		createEAttribute(helipadEClass, HELIPAD__FATO_LENGTH_M);
		createEAttribute(helipadEClass, HELIPAD__FATO_WIDTH_M);
		createEAttribute(helipadEClass, HELIPAD__TLOF_LENGTH_M);
		createEAttribute(helipadEClass, HELIPAD__TLOF_WIDTH_M);
		createEAttribute(helipadEClass, HELIPAD__SAFETY_AREA_WIDTH_M);
		createEAttribute(helipadEClass, HELIPAD__HOVER_HEIGHT_M);
		createEAttribute(helipadEClass, HELIPAD__EYE_ABOVE_SKIDS_M);
		createEAttribute(helipadEClass, HELIPAD__FLOATING);
		createEReference(helipadEClass, HELIPAD__DIRECTIONS);
		createEAttribute(helipadEClass, HELIPAD__DECK_PITCH_DEG);
		createEAttribute(helipadEClass, HELIPAD__DECK_ROLL_DEG);
		createEAttribute(helipadEClass, HELIPAD__DECK_HEADING_DEG);
		createEAttribute(helipadEClass, HELIPAD__FATO_BEARING_DEG);

		approachDirectionEClass = createEClass(APPROACH_DIRECTION);
		createEAttribute(approachDirectionEClass, APPROACH_DIRECTION__TRUE_BEARING_DEG);

		aeroplaneGroupEClass = createEClass(AEROPLANE_GROUP);
		createEAttribute(aeroplaneGroupEClass, AEROPLANE_GROUP__STATIC_COCKPIT_TO_WHEEL_M);
		createEAttribute(aeroplaneGroupEClass, AEROPLANE_GROUP__EYE_TO_WHEEL_M);
		createEAttribute(aeroplaneGroupEClass, AEROPLANE_GROUP__EYE_TO_ANTENNA_M);
		createEAttribute(aeroplaneGroupEClass, AEROPLANE_GROUP__SHARE_PERCENT);
		createEAttribute(aeroplaneGroupEClass, AEROPLANE_GROUP__LIGHT_NON_TURBOJET);
		createEAttribute(aeroplaneGroupEClass, AEROPLANE_GROUP__MAX_SLOPE_DEG);

		obstacleEClass = createEClass(OBSTACLE);
		createEAttribute(obstacleEClass, OBSTACLE__KIND);
		createEReference(obstacleEClass, OBSTACLE__PLACES);
		createEAttribute(obstacleEClass, OBSTACLE__TOP_ELEVATION_M);
		createEAttribute(obstacleEClass, OBSTACLE__HORIZONTAL_ACCURACY_M);
		createEAttribute(obstacleEClass, OBSTACLE__VERTICAL_ACCURACY_M);
		createEAttribute(obstacleEClass, OBSTACLE__LIGHTED);
		createEAttribute(obstacleEClass, OBSTACLE__SHIELDED);
		createEReference(obstacleEClass, OBSTACLE__SHIELDED_BY);
		createEAttribute(obstacleEClass, OBSTACLE__SHIELDING_STUDY);
		createEAttribute(obstacleEClass, OBSTACLE__SHIELDING_STUDY_DATE);
		createEAttribute(obstacleEClass, OBSTACLE__SHIELDING_STUDY_PERSON);
		createEAttribute(obstacleEClass, OBSTACLE__TEMPORARY);
		createEAttribute(obstacleEClass, OBSTACLE__SOURCE);
		createEAttribute(obstacleEClass, OBSTACLE__DATE);

		groundLevelEClass = createEClass(GROUND_LEVEL);
		createEReference(groundLevelEClass, GROUND_LEVEL__PLACE);
		createEAttribute(groundLevelEClass, GROUND_LEVEL__SOURCE);
		createEAttribute(groundLevelEClass, GROUND_LEVEL__DATE);
		createEAttribute(groundLevelEClass, GROUND_LEVEL__VERTICAL_ACCURACY_M);

		obstacleSurveyEClass = createEClass(OBSTACLE_SURVEY);
		createEAttribute(obstacleSurveyEClass, OBSTACLE_SURVEY__DATE);
		createEAttribute(obstacleSurveyEClass, OBSTACLE_SURVEY__SOURCE);
		createEAttribute(obstacleSurveyEClass, OBSTACLE_SURVEY__REACH_M);
		createEAttribute(obstacleSurveyEClass, OBSTACLE_SURVEY__HALF_WIDTH_M);
		createEAttribute(obstacleSurveyEClass, OBSTACLE_SURVEY__HORIZONTAL_ACCURACY_M);
		createEAttribute(obstacleSurveyEClass, OBSTACLE_SURVEY__VERTICAL_ACCURACY_M);
		createEReference(obstacleSurveyEClass, OBSTACLE_SURVEY__HOSTS);
		createEAttribute(obstacleSurveyEClass, OBSTACLE_SURVEY__ALL_ROUND);

		equipmentTypeEClass = createEClass(EQUIPMENT_TYPE);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__FAMILY_KEY);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__BEAM_WIDTH_DEG);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__TRANSITION_MINUTES);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__MIN_SETTING_DEG);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__MAX_SETTING_DEG);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__INTENSITY_CD);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__LAMP_POWER_W);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__LAMPS_PER_UNIT);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__SUPPLY);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__MIN_VOLTAGE_V);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__MAX_VOLTAGE_V);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__MASS_KG);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__HEIGHT_ABOVE_GROUND_M);
		createEReference(equipmentTypeEClass, EQUIPMENT_TYPE__SECTORS);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__WHITE_INTENSITY_CD);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__RED_CHROMATICITY_Y);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__BRIGHTNESS_STEPS);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__NIGHT_STEP_PERCENT);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__TILT_CUT_OFF_DEG);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__FLASH_RATE_HZ);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__FLASH_ON_PERCENT);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__MODULATION_PERCENT);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__DATA_SOURCE);
		createEReference(equipmentTypeEClass, EQUIPMENT_TYPE__INTENSITIES);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__PLATE_ZERO);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__PLATE_SENSE);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__PLATE_STEP_DEG);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__SLOPE_SCALE_STEP_DEG);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__BUBBLE_ACCURACY_MINUTES);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__LOWER_HAIR);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__UPPER_HAIR);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__HAND_ORDER);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__RECHECK_EVERY_H);
		createEAttribute(equipmentTypeEClass, EQUIPMENT_TYPE__STABILISED_TO_DEG);
		createEReference(equipmentTypeEClass, EQUIPMENT_TYPE__PRINTED_DESCENTS);
		createEReference(equipmentTypeEClass, EQUIPMENT_TYPE__BRIGHTNESS_LEVELS);

		measuredIntensityEClass = createEClass(MEASURED_INTENSITY);
		createEAttribute(measuredIntensityEClass, MEASURED_INTENSITY__COLOUR);
		createEAttribute(measuredIntensityEClass, MEASURED_INTENSITY__AZIMUTH_DEG);
		createEAttribute(measuredIntensityEClass, MEASURED_INTENSITY__ELEVATION_DEG);
		createEAttribute(measuredIntensityEClass, MEASURED_INTENSITY__INTENSITY_CD);

		printedDescentEClass = createEClass(PRINTED_DESCENT);
		createEAttribute(printedDescentEClass, PRINTED_DESCENT__SPEED_KT);
		createEAttribute(printedDescentEClass, PRINTED_DESCENT__DESCENT_FTMIN);
		createEAttribute(printedDescentEClass, PRINTED_DESCENT__SLOPE_DEG);

		brightnessLevelEClass = createEClass(BRIGHTNESS_LEVEL);
		createEAttribute(brightnessLevelEClass, BRIGHTNESS_LEVEL__POWER_PERCENT);

		circuitEClass = createEClass(CIRCUIT);
		createEAttribute(circuitEClass, CIRCUIT__SUPPLY);
		createEAttribute(circuitEClass, CIRCUIT__CURRENT_A);
		createEAttribute(circuitEClass, CIRCUIT__CAPACITY_AH);
		createEAttribute(circuitEClass, CIRCUIT__BRIGHTNESS_STEPS);
		createEReference(circuitEClass, CIRCUIT__AIDS);
		createEAttribute(circuitEClass, CIRCUIT__REGULATOR_RATING_KVA);
		createEAttribute(circuitEClass, CIRCUIT__CABLE_LENGTH_M);
		createEAttribute(circuitEClass, CIRCUIT__CABLE_RESISTANCE_OHM_PER_KM);
		createEAttribute(circuitEClass, CIRCUIT__SWITCH_OVER_S);
		createEAttribute(circuitEClass, CIRCUIT__STANDBY);
		createEAttribute(circuitEClass, CIRCUIT__AGE_LEFT_PERCENT);
		createEAttribute(circuitEClass, CIRCUIT__COLD_LEFT_PERCENT);

		approachAidEClass = createEClass(APPROACH_AID);
		createEAttribute(approachAidEClass, APPROACH_AID__FAMILY_KEY);
		createEAttribute(approachAidEClass, APPROACH_AID__RULE_SET_KEY);
		createEAttribute(approachAidEClass, APPROACH_AID__SIDE);
		createEAttribute(approachAidEClass, APPROACH_AID__SLOPE_DEG);
		createEAttribute(approachAidEClass, APPROACH_AID__SETTINGS);
		createEAttribute(approachAidEClass, APPROACH_AID__CLEARANCE);
		createEAttribute(approachAidEClass, APPROACH_AID__CHOSEN_CLEARANCE_M);
		createEAttribute(approachAidEClass, APPROACH_AID__TARGET_EYE_HEIGHT_M);
		createEAttribute(approachAidEClass, APPROACH_AID__HEIGHT_GROUP);
		createEAttribute(approachAidEClass, APPROACH_AID__AXIS_TURN_DEG);
		createEAttribute(approachAidEClass, APPROACH_AID__UNSHIFTED_DISTANCE_M);
		createEAttribute(approachAidEClass, APPROACH_AID__UNSHIFTED_DISTANCE_REASON);
		createEAttribute(approachAidEClass, APPROACH_AID__LEVEL_ACCURACY_M);
		createEAttribute(approachAidEClass, APPROACH_AID__BEAM_LEFT_LIMIT_DEG);
		createEAttribute(approachAidEClass, APPROACH_AID__BEAM_RIGHT_LIMIT_DEG);
		createEAttribute(approachAidEClass, APPROACH_AID__UNIT_COUNT);
		createEReference(approachAidEClass, APPROACH_AID__EQUIPMENT);
		createEAttribute(approachAidEClass, APPROACH_AID__PORTABLE);
		createEAttribute(approachAidEClass, APPROACH_AID__GROUND_SPEED_KT);
		createEAttribute(approachAidEClass, APPROACH_AID__AIR_SPEED_KT);
		createEAttribute(approachAidEClass, APPROACH_AID__WIND_KT);
		createEAttribute(approachAidEClass, APPROACH_AID__DESCENT_FTMIN);
		createEReference(approachAidEClass, APPROACH_AID__UNITS);
		createEReference(approachAidEClass, APPROACH_AID__INSPECTIONS);

		lightUnitEClass = createEClass(LIGHT_UNIT);
		createEAttribute(lightUnitEClass, LIGHT_UNIT__LABEL);
		createEAttribute(lightUnitEClass, LIGHT_UNIT__BAR);
		createEAttribute(lightUnitEClass, LIGHT_UNIT__ALONG_M);
		createEAttribute(lightUnitEClass, LIGHT_UNIT__RIGHT_M);
		createEAttribute(lightUnitEClass, LIGHT_UNIT__LENS_ELEVATION_M);
		createEAttribute(lightUnitEClass, LIGHT_UNIT__AZIMUTH_OFFSET_DEG);
		createEAttribute(lightUnitEClass, LIGHT_UNIT__SETTING_DEG);
		createEAttribute(lightUnitEClass, LIGHT_UNIT__HEIGHT_ABOVE_GROUND_M);
		createEAttribute(lightUnitEClass, LIGHT_UNIT__FRANGIBLE);
		createEReference(lightUnitEClass, LIGHT_UNIT__TRANSITIONS);
		createEReference(lightUnitEClass, LIGHT_UNIT__MEASURED);
		createEAttribute(lightUnitEClass, LIGHT_UNIT__LAMPS_OUT);

		measuredUnitEClass = createEClass(MEASURED_UNIT);
		createEAttribute(measuredUnitEClass, MEASURED_UNIT__SETTING_DEG);
		createEAttribute(measuredUnitEClass, MEASURED_UNIT__ALONG_M);
		createEAttribute(measuredUnitEClass, MEASURED_UNIT__RIGHT_M);
		createEAttribute(measuredUnitEClass, MEASURED_UNIT__LENS_ELEVATION_M);
		createEAttribute(measuredUnitEClass, MEASURED_UNIT__PERSON);
		createEAttribute(measuredUnitEClass, MEASURED_UNIT__DATE);
		createEAttribute(measuredUnitEClass, MEASURED_UNIT__INSTRUMENT);

		inspectionEClass = createEClass(INSPECTION);
		createEAttribute(inspectionEClass, INSPECTION__DATE);
		createEAttribute(inspectionEClass, INSPECTION__PERSON);
		createEAttribute(inspectionEClass, INSPECTION__ORGANISATION);
		createEAttribute(inspectionEClass, INSPECTION__ON_SLOPE_ANGLE_DEG);
		createEAttribute(inspectionEClass, INSPECTION__USABLE_RANGE_M);
		createEAttribute(inspectionEClass, INSPECTION__AZIMUTH_LEFT_DEG);
		createEAttribute(inspectionEClass, INSPECTION__AZIMUTH_RIGHT_DEG);
		createEAttribute(inspectionEClass, INSPECTION__OBSTACLE_CLEAR);

		backgroundImageEClass = createEClass(BACKGROUND_IMAGE);
		createEAttribute(backgroundImageEClass, BACKGROUND_IMAGE__PATH);
		createEAttribute(backgroundImageEClass, BACKGROUND_IMAGE__SHA256);
		createEAttribute(backgroundImageEClass, BACKGROUND_IMAGE__FIRST_COLUMN_PX);
		createEAttribute(backgroundImageEClass, BACKGROUND_IMAGE__FIRST_ROW_PX);
		createEReference(backgroundImageEClass, BACKGROUND_IMAGE__FIRST_PLACE);
		createEAttribute(backgroundImageEClass, BACKGROUND_IMAGE__SECOND_COLUMN_PX);
		createEAttribute(backgroundImageEClass, BACKGROUND_IMAGE__SECOND_ROW_PX);
		createEReference(backgroundImageEClass, BACKGROUND_IMAGE__SECOND_PLACE);
		createEAttribute(backgroundImageEClass, BACKGROUND_IMAGE__OPACITY_PERCENT);
		createEAttribute(backgroundImageEClass, BACKGROUND_IMAGE__HIDDEN);
		createEAttribute(backgroundImageEClass, BACKGROUND_IMAGE__SOURCE);
		createEAttribute(backgroundImageEClass, BACKGROUND_IMAGE__DATE);

		transitionEClass = createEClass(TRANSITION);
		createEAttribute(transitionEClass, TRANSITION__OFFSET_DEG);
		createEAttribute(transitionEClass, TRANSITION__WIDTH_MINUTES);
		createEAttribute(transitionEClass, TRANSITION__BELOW_COLOUR);
		createEAttribute(transitionEClass, TRANSITION__BELOW_STATE);
		createEAttribute(transitionEClass, TRANSITION__ABOVE_COLOUR);
		createEAttribute(transitionEClass, TRANSITION__ABOVE_STATE);

		readBackEClass = createEClass(READ_BACK);
		createEAttribute(readBackEClass, READ_BACK__ELEMENT_ID);
		createEAttribute(readBackEClass, READ_BACK__PERSON);
		createEAttribute(readBackEClass, READ_BACK__DATE);
		createEAttribute(readBackEClass, READ_BACK__SHA256);

		// Create enums
		approachTypeEEnum = createEEnum(APPROACH_TYPE);
		glidePathKindEEnum = createEEnum(GLIDE_PATH_KIND);
		edgeKindEEnum = createEEnum(EDGE_KIND);
		obstacleKindEEnum = createEEnum(OBSTACLE_KIND);
		aidSideEEnum = createEEnum(AID_SIDE);
		settingsFormEEnum = createEEnum(SETTINGS_FORM);
		clearanceChoiceEEnum = createEEnum(CLEARANCE_CHOICE);
		lightColourEEnum = createEEnum(LIGHT_COLOUR);
		lightStateEEnum = createEEnum(LIGHT_STATE);
		reviewKindEEnum = createEEnum(REVIEW_KIND);
		stageEEnum = createEEnum(STAGE);
		plateZeroEEnum = createEEnum(PLATE_ZERO);
		plateSenseEEnum = createEEnum(PLATE_SENSE);
		sightHairEEnum = createEEnum(SIGHT_HAIR);
		handOrderEEnum = createEEnum(HAND_ORDER);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private boolean isInitialized = false;

	/**
	 * Complete the initialization of the package and its meta-model.  This
	 * method is guarded to have no affect on any invocation but its first.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public void initializePackageContents() {
		if (isInitialized) return;
		isInitialized = true;

		// Initialize package
		setName(eNAME);
		setNsPrefix(eNS_PREFIX);
		setNsURI(eNS_URI);

		// Create type parameters

		// Set bounds for type parameters

		// Add supertypes to classes
		namedEClass.getESuperTypes().add(this.getIdentified());
		projectEClass.getESuperTypes().add(this.getNamed());
		valueOverrideEClass.getESuperTypes().add(this.getIdentified());
		valueConfirmationEClass.getESuperTypes().add(this.getIdentified());
		reviewNoteEClass.getESuperTypes().add(this.getNamed());
		surveyBlockEClass.getESuperTypes().add(this.getNamed());
		aerodromeEClass.getESuperTypes().add(this.getNamed());
		magneticVariationEClass.getESuperTypes().add(this.getIdentified());
		placeEClass.getESuperTypes().add(this.getIdentified());
		profilePointEClass.getESuperTypes().add(this.getIdentified());
		runwayEClass.getESuperTypes().add(this.getNamed());
		approachHostEClass.getESuperTypes().add(this.getNamed());
		runwayEndEClass.getESuperTypes().add(this.getApproachHost());
		glidePathAidEClass.getESuperTypes().add(this.getNamed());
		taxiwayEdgeEClass.getESuperTypes().add(this.getNamed());
		helipadEClass.getESuperTypes().add(this.getNamed());
		approachDirectionEClass.getESuperTypes().add(this.getApproachHost());
		aeroplaneGroupEClass.getESuperTypes().add(this.getNamed());
		obstacleEClass.getESuperTypes().add(this.getNamed());
		groundLevelEClass.getESuperTypes().add(this.getIdentified());
		obstacleSurveyEClass.getESuperTypes().add(this.getNamed());
		equipmentTypeEClass.getESuperTypes().add(this.getNamed());
		measuredIntensityEClass.getESuperTypes().add(this.getIdentified());
		printedDescentEClass.getESuperTypes().add(this.getIdentified());
		brightnessLevelEClass.getESuperTypes().add(this.getIdentified());
		circuitEClass.getESuperTypes().add(this.getNamed());
		approachAidEClass.getESuperTypes().add(this.getNamed());
		lightUnitEClass.getESuperTypes().add(this.getIdentified());
		measuredUnitEClass.getESuperTypes().add(this.getIdentified());
		inspectionEClass.getESuperTypes().add(this.getNamed());
		backgroundImageEClass.getESuperTypes().add(this.getNamed());
		transitionEClass.getESuperTypes().add(this.getIdentified());
		readBackEClass.getESuperTypes().add(this.getIdentified());

		// Initialize classes, features, and operations; add parameters
		initEClass(identifiedEClass, Identified.class, "Identified", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getIdentified_Id(), ecorePackage.getEString(), "id", null, 0, 1, Identified.class, IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(namedEClass, Named.class, "Named", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getNamed_Name(), ecorePackage.getEString(), "name", null, 0, 1, Named.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getNamed_Remarks(), ecorePackage.getEString(), "remarks", null, 0, 1, Named.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(projectEClass, Project.class, "Project", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getProject_Revision(), ecorePackage.getEString(), "revision", null, 0, 1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProject_Author(), ecorePackage.getEString(), "author", null, 0, 1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProject_Organisation(), ecorePackage.getEString(), "organisation", null, 0, 1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProject_Date(), ecorePackage.getEString(), "date", null, 0, 1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProject_RuleSetKey(), ecorePackage.getEString(), "ruleSetKey", null, 0, 1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getProject_Aerodrome(), this.getAerodrome(), null, "aerodrome", null, 0, 1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getProject_Overrides(), this.getValueOverride(), null, "overrides", null, 0, -1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getProject_Confirmations(), this.getValueConfirmation(), null, "confirmations", null, 0, -1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getProject_ReviewNotes(), this.getReviewNote(), null, "reviewNotes", null, 0, -1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getProject_SurveyBlocks(), this.getSurveyBlock(), null, "surveyBlocks", null, 0, -1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProject_DocumentNumber(), ecorePackage.getEString(), "documentNumber", null, 0, 1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProject_Client(), ecorePackage.getEString(), "client", null, 0, 1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProject_CheckedBy(), ecorePackage.getEString(), "checkedBy", null, 0, 1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProject_ApprovedBy(), ecorePackage.getEString(), "approvedBy", null, 0, 1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProject_Stage(), this.getStage(), "stage", null, 0, 1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProject_BookPath(), ecorePackage.getEString(), "bookPath", null, 0, 1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProject_BookSha256(), ecorePackage.getEString(), "bookSha256", null, 0, 1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProject_RuleSetFolder(), ecorePackage.getEString(), "ruleSetFolder", null, 0, 1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getProject_ReadBacks(), this.getReadBack(), null, "readBacks", null, 0, -1, Project.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(valueOverrideEClass, ValueOverride.class, "ValueOverride", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getValueOverride_ValueKey(), ecorePackage.getEString(), "valueKey", null, 0, 1, ValueOverride.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getValueOverride_RuleSetKey(), ecorePackage.getEString(), "ruleSetKey", null, 0, 1, ValueOverride.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getValueOverride_Value(), ecorePackage.getEDoubleObject(), "value", null, 0, 1, ValueOverride.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getValueOverride_Reason(), ecorePackage.getEString(), "reason", null, 0, 1, ValueOverride.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getValueOverride_Person(), ecorePackage.getEString(), "person", null, 0, 1, ValueOverride.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getValueOverride_Date(), ecorePackage.getEString(), "date", null, 0, 1, ValueOverride.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getValueOverride_Unit(), ecorePackage.getEString(), "unit", null, 0, 1, ValueOverride.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(valueConfirmationEClass, ValueConfirmation.class, "ValueConfirmation", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getValueConfirmation_ValueKey(), ecorePackage.getEString(), "valueKey", null, 0, 1, ValueConfirmation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getValueConfirmation_RuleSetKey(), ecorePackage.getEString(), "ruleSetKey", null, 0, 1, ValueConfirmation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getValueConfirmation_Source(), ecorePackage.getEString(), "source", null, 0, 1, ValueConfirmation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getValueConfirmation_Person(), ecorePackage.getEString(), "person", null, 0, 1, ValueConfirmation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getValueConfirmation_Date(), ecorePackage.getEString(), "date", null, 0, 1, ValueConfirmation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getValueConfirmation_Value(), ecorePackage.getEDoubleObject(), "value", null, 0, 1, ValueConfirmation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getValueConfirmation_Unit(), ecorePackage.getEString(), "unit", null, 0, 1, ValueConfirmation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getValueConfirmation_Edition(), ecorePackage.getEString(), "edition", null, 0, 1, ValueConfirmation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getValueConfirmation_Clause(), ecorePackage.getEString(), "clause", null, 0, 1, ValueConfirmation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getValueConfirmation_SecondPerson(), ecorePackage.getEString(), "secondPerson", null, 0, 1, ValueConfirmation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getValueConfirmation_FromBook(), ecorePackage.getEBooleanObject(), "fromBook", null, 0, 1, ValueConfirmation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getValueConfirmation_SecondDate(), ecorePackage.getEString(), "secondDate", null, 0, 1, ValueConfirmation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getValueConfirmation_Rejected(), ecorePackage.getEBooleanObject(), "rejected", null, 0, 1, ValueConfirmation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getValueConfirmation_Reason(), ecorePackage.getEString(), "reason", null, 0, 1, ValueConfirmation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getValueConfirmation_Sha256(), ecorePackage.getEString(), "sha256", null, 0, 1, ValueConfirmation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(reviewNoteEClass, ReviewNote.class, "ReviewNote", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getReviewNote_ElementId(), ecorePackage.getEString(), "elementId", null, 0, 1, ReviewNote.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReviewNote_RuleId(), ecorePackage.getEString(), "ruleId", null, 0, 1, ReviewNote.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReviewNote_Text(), ecorePackage.getEString(), "text", null, 0, 1, ReviewNote.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReviewNote_Person(), ecorePackage.getEString(), "person", null, 0, 1, ReviewNote.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReviewNote_Date(), ecorePackage.getEString(), "date", null, 0, 1, ReviewNote.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReviewNote_Resolved(), ecorePackage.getEBooleanObject(), "resolved", null, 0, 1, ReviewNote.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReviewNote_Kind(), this.getReviewKind(), "kind", null, 0, 1, ReviewNote.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReviewNote_NoteId(), ecorePackage.getEString(), "noteId", null, 0, 1, ReviewNote.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReviewNote_Sha256(), ecorePackage.getEString(), "sha256", null, 0, 1, ReviewNote.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(surveyBlockEClass, SurveyBlock.class, "SurveyBlock", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSurveyBlock_Kind(), ecorePackage.getEString(), "kind", null, 0, 1, SurveyBlock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSurveyBlock_Path(), ecorePackage.getEString(), "path", null, 0, 1, SurveyBlock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSurveyBlock_Sha256(), ecorePackage.getEString(), "sha256", null, 0, 1, SurveyBlock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSurveyBlock_PointCount(), ecorePackage.getEIntegerObject(), "pointCount", null, 0, 1, SurveyBlock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSurveyBlock_HorizontalAccuracyM(), ecorePackage.getEDoubleObject(), "horizontalAccuracyM", null, 0, 1, SurveyBlock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSurveyBlock_VerticalAccuracyM(), ecorePackage.getEDoubleObject(), "verticalAccuracyM", null, 0, 1, SurveyBlock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSurveyBlock_Source(), ecorePackage.getEString(), "source", null, 0, 1, SurveyBlock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSurveyBlock_Date(), ecorePackage.getEString(), "date", null, 0, 1, SurveyBlock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(aerodromeEClass, Aerodrome.class, "Aerodrome", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getAerodrome_Identifier(), ecorePackage.getEString(), "identifier", null, 0, 1, Aerodrome.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAerodrome_LatitudeDeg(), ecorePackage.getEDoubleObject(), "latitudeDeg", null, 0, 1, Aerodrome.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAerodrome_LongitudeDeg(), ecorePackage.getEDoubleObject(), "longitudeDeg", null, 0, 1, Aerodrome.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAerodrome_ElevationM(), ecorePackage.getEDoubleObject(), "elevationM", null, 0, 1, Aerodrome.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAerodrome_VerticalDatum(), ecorePackage.getEString(), "verticalDatum", null, 0, 1, Aerodrome.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAerodrome_GeoidOffsetM(), ecorePackage.getEDoubleObject(), "geoidOffsetM", null, 0, 1, Aerodrome.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAerodrome_CoordinateReference(), ecorePackage.getEString(), "coordinateReference", null, 0, 1, Aerodrome.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAerodrome_CoordinateEpoch(), ecorePackage.getEDoubleObject(), "coordinateEpoch", null, 0, 1, Aerodrome.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAerodrome_CoordinateAccuracyM(), ecorePackage.getEDoubleObject(), "coordinateAccuracyM", null, 0, 1, Aerodrome.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAerodrome_GridRotationDeg(), ecorePackage.getEDoubleObject(), "gridRotationDeg", null, 0, 1, Aerodrome.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getAerodrome_MagneticVariation(), this.getMagneticVariation(), null, "magneticVariation", null, 0, 1, Aerodrome.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getAerodrome_Runways(), this.getRunway(), null, "runways", null, 0, -1, Aerodrome.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getAerodrome_Helipads(), this.getHelipad(), null, "helipads", null, 0, -1, Aerodrome.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getAerodrome_AeroplaneGroups(), this.getAeroplaneGroup(), null, "aeroplaneGroups", null, 0, -1, Aerodrome.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getAerodrome_Obstacles(), this.getObstacle(), null, "obstacles", null, 0, -1, Aerodrome.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getAerodrome_GroundLevels(), this.getGroundLevel(), null, "groundLevels", null, 0, -1, Aerodrome.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getAerodrome_TaxiwayEdges(), this.getTaxiwayEdge(), null, "taxiwayEdges", null, 0, -1, Aerodrome.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getAerodrome_Circuits(), this.getCircuit(), null, "circuits", null, 0, -1, Aerodrome.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getAerodrome_EquipmentTypes(), this.getEquipmentType(), null, "equipmentTypes", null, 0, -1, Aerodrome.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getAerodrome_BackgroundImages(), this.getBackgroundImage(), null, "backgroundImages", null, 0, -1, Aerodrome.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getAerodrome_ObstacleSurveys(), this.getObstacleSurvey(), null, "obstacleSurveys", null, 0, -1, Aerodrome.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(magneticVariationEClass, MagneticVariation.class, "MagneticVariation", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getMagneticVariation_VariationDeg(), ecorePackage.getEDoubleObject(), "variationDeg", null, 0, 1, MagneticVariation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMagneticVariation_AnnualChangeDeg(), ecorePackage.getEDoubleObject(), "annualChangeDeg", null, 0, 1, MagneticVariation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMagneticVariation_Date(), ecorePackage.getEString(), "date", null, 0, 1, MagneticVariation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMagneticVariation_Source(), ecorePackage.getEString(), "source", null, 0, 1, MagneticVariation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(placeEClass, Place.class, "Place", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPlace_LatitudeDeg(), ecorePackage.getEDoubleObject(), "latitudeDeg", null, 0, 1, Place.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlace_LongitudeDeg(), ecorePackage.getEDoubleObject(), "longitudeDeg", null, 0, 1, Place.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlace_EastM(), ecorePackage.getEDoubleObject(), "eastM", null, 0, 1, Place.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlace_NorthM(), ecorePackage.getEDoubleObject(), "northM", null, 0, 1, Place.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlace_ElevationM(), ecorePackage.getEDoubleObject(), "elevationM", null, 0, 1, Place.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(profilePointEClass, ProfilePoint.class, "ProfilePoint", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getProfilePoint_ChainageM(), ecorePackage.getEDoubleObject(), "chainageM", null, 0, 1, ProfilePoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProfilePoint_ElevationM(), ecorePackage.getEDoubleObject(), "elevationM", null, 0, 1, ProfilePoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(runwayEClass, Runway.class, "Runway", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getRunway_Designator(), ecorePackage.getEString(), "designator", null, 0, 1, Runway.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunway_LengthM(), ecorePackage.getEDoubleObject(), "lengthM", null, 0, 1, Runway.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunway_WidthM(), ecorePackage.getEDoubleObject(), "widthM", null, 0, 1, Runway.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunway_CodeNumber(), ecorePackage.getEIntegerObject(), "codeNumber", null, 0, 1, Runway.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunway_Surface(), ecorePackage.getEString(), "surface", null, 0, 1, Runway.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunway_Paved(), ecorePackage.getEBooleanObject(), "paved", null, 0, 1, Runway.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunway_StripLengthM(), ecorePackage.getEDoubleObject(), "stripLengthM", null, 0, 1, Runway.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunway_StripWidthM(), ecorePackage.getEDoubleObject(), "stripWidthM", null, 0, 1, Runway.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRunway_CentreLine(), this.getProfilePoint(), null, "centreLine", null, 0, -1, Runway.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRunway_Ends(), this.getRunwayEnd(), null, "ends", null, 0, -1, Runway.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunway_ObjectFreeWidthM(), ecorePackage.getEDoubleObject(), "objectFreeWidthM", null, 0, 1, Runway.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunway_ObjectFreeSource(), ecorePackage.getEString(), "objectFreeSource", null, 0, 1, Runway.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunway_OpenDataSource(), ecorePackage.getEString(), "openDataSource", null, 0, 1, Runway.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunway_OpenDataLicence(), ecorePackage.getEString(), "openDataLicence", null, 0, 1, Runway.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunway_OpenDataConfirmation(), ecorePackage.getEString(), "openDataConfirmation", null, 0, 1, Runway.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunway_OpenDataConfirmationDate(), ecorePackage.getEString(), "openDataConfirmationDate", null, 0, 1, Runway.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunway_OpenDataConfirmationPerson(), ecorePackage.getEString(), "openDataConfirmationPerson", null, 0, 1, Runway.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(approachHostEClass, ApproachHost.class, "ApproachHost", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getApproachHost_Designator(), ecorePackage.getEString(), "designator", null, 0, 1, ApproachHost.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApproachHost_DesiredSlopeDeg(), ecorePackage.getEDoubleObject(), "desiredSlopeDeg", null, 0, 1, ApproachHost.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApproachHost_ApproachType(), this.getApproachType(), "approachType", null, 0, 1, ApproachHost.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getApproachHost_GlidePath(), this.getGlidePathAid(), null, "glidePath", null, 0, 1, ApproachHost.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getApproachHost_RegularGroups(), this.getAeroplaneGroup(), null, "regularGroups", null, 0, -1, ApproachHost.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getApproachHost_Aids(), this.getApproachAid(), null, "aids", null, 0, -1, ApproachHost.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(runwayEndEClass, RunwayEnd.class, "RunwayEnd", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getRunwayEnd_Threshold(), this.getPlace(), null, "threshold", null, 0, 1, RunwayEnd.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunwayEnd_TrueBearingDeg(), ecorePackage.getEDoubleObject(), "trueBearingDeg", null, 0, 1, RunwayEnd.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunwayEnd_ThresholdElevationM(), ecorePackage.getEDoubleObject(), "thresholdElevationM", null, 0, 1, RunwayEnd.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunwayEnd_DisplacedThresholdM(), ecorePackage.getEDoubleObject(), "displacedThresholdM", null, 0, 1, RunwayEnd.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunwayEnd_ExtremityElevationM(), ecorePackage.getEDoubleObject(), "extremityElevationM", null, 0, 1, RunwayEnd.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunwayEnd_LandingDistanceM(), ecorePackage.getEDoubleObject(), "landingDistanceM", null, 0, 1, RunwayEnd.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunwayEnd_AimingPointDistanceM(), ecorePackage.getEDoubleObject(), "aimingPointDistanceM", null, 0, 1, RunwayEnd.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRunwayEnd_SiteProfile(), this.getProfilePoint(), null, "siteProfile", null, 0, -1, RunwayEnd.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunwayEnd_HazardousTerrain(), ecorePackage.getEBooleanObject(), "hazardousTerrain", null, 0, 1, RunwayEnd.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunwayEnd_SiteProfileSource(), ecorePackage.getEString(), "siteProfileSource", null, 0, 1, RunwayEnd.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunwayEnd_SiteProfileDate(), ecorePackage.getEString(), "siteProfileDate", null, 0, 1, RunwayEnd.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunwayEnd_SiteProfileAccuracyM(), ecorePackage.getEDoubleObject(), "siteProfileAccuracyM", null, 0, 1, RunwayEnd.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(glidePathAidEClass, GlidePathAid.class, "GlidePathAid", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getGlidePathAid_Kind(), this.getGlidePathKind(), "kind", null, 0, 1, GlidePathAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlidePathAid_PathAngleDeg(), ecorePackage.getEDoubleObject(), "pathAngleDeg", null, 0, 1, GlidePathAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlidePathAid_ReferenceDatumHeightM(), ecorePackage.getEDoubleObject(), "referenceDatumHeightM", null, 0, 1, GlidePathAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlidePathAid_OriginAlongM(), ecorePackage.getEDoubleObject(), "originAlongM", null, 0, 1, GlidePathAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlidePathAid_AntennaAlongM(), ecorePackage.getEDoubleObject(), "antennaAlongM", null, 0, 1, GlidePathAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlidePathAid_AntennaRightM(), ecorePackage.getEDoubleObject(), "antennaRightM", null, 0, 1, GlidePathAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlidePathAid_CriticalAreaLengthM(), ecorePackage.getEDoubleObject(), "criticalAreaLengthM", null, 0, 1, GlidePathAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlidePathAid_CriticalAreaWidthM(), ecorePackage.getEDoubleObject(), "criticalAreaWidthM", null, 0, 1, GlidePathAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlidePathAid_CriticalAreaSource(), ecorePackage.getEString(), "criticalAreaSource", null, 0, 1, GlidePathAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(taxiwayEdgeEClass, TaxiwayEdge.class, "TaxiwayEdge", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getTaxiwayEdge_Kind(), this.getEdgeKind(), "kind", null, 0, 1, TaxiwayEdge.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTaxiwayEdge_Points(), this.getPlace(), null, "points", null, 0, -1, TaxiwayEdge.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(helipadEClass, Helipad.class, "Helipad", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getHelipad_Place(), this.getPlace(), null, "place", null, 0, 1, Helipad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHelipad_ElevationM(), ecorePackage.getEDoubleObject(), "elevationM", null, 0, 1, Helipad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHelipad_FatoLengthM(), ecorePackage.getEDoubleObject(), "fatoLengthM", null, 0, 1, Helipad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHelipad_FatoWidthM(), ecorePackage.getEDoubleObject(), "fatoWidthM", null, 0, 1, Helipad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHelipad_TlofLengthM(), ecorePackage.getEDoubleObject(), "tlofLengthM", null, 0, 1, Helipad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHelipad_TlofWidthM(), ecorePackage.getEDoubleObject(), "tlofWidthM", null, 0, 1, Helipad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHelipad_SafetyAreaWidthM(), ecorePackage.getEDoubleObject(), "safetyAreaWidthM", null, 0, 1, Helipad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHelipad_HoverHeightM(), ecorePackage.getEDoubleObject(), "hoverHeightM", null, 0, 1, Helipad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHelipad_EyeAboveSkidsM(), ecorePackage.getEDoubleObject(), "eyeAboveSkidsM", null, 0, 1, Helipad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHelipad_Floating(), ecorePackage.getEBooleanObject(), "floating", null, 0, 1, Helipad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getHelipad_Directions(), this.getApproachDirection(), null, "directions", null, 0, -1, Helipad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHelipad_DeckPitchDeg(), ecorePackage.getEDoubleObject(), "deckPitchDeg", null, 0, 1, Helipad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHelipad_DeckRollDeg(), ecorePackage.getEDoubleObject(), "deckRollDeg", null, 0, 1, Helipad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHelipad_DeckHeadingDeg(), ecorePackage.getEDoubleObject(), "deckHeadingDeg", null, 0, 1, Helipad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHelipad_FatoBearingDeg(), ecorePackage.getEDoubleObject(), "fatoBearingDeg", null, 0, 1, Helipad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(approachDirectionEClass, ApproachDirection.class, "ApproachDirection", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getApproachDirection_TrueBearingDeg(), ecorePackage.getEDoubleObject(), "trueBearingDeg", null, 0, 1, ApproachDirection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(aeroplaneGroupEClass, AeroplaneGroup.class, "AeroplaneGroup", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getAeroplaneGroup_StaticCockpitToWheelM(), ecorePackage.getEDoubleObject(), "staticCockpitToWheelM", null, 0, 1, AeroplaneGroup.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAeroplaneGroup_EyeToWheelM(), ecorePackage.getEDoubleObject(), "eyeToWheelM", null, 0, 1, AeroplaneGroup.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAeroplaneGroup_EyeToAntennaM(), ecorePackage.getEDoubleObject(), "eyeToAntennaM", null, 0, 1, AeroplaneGroup.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAeroplaneGroup_SharePercent(), ecorePackage.getEDoubleObject(), "sharePercent", null, 0, 1, AeroplaneGroup.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAeroplaneGroup_LightNonTurbojet(), ecorePackage.getEBooleanObject(), "lightNonTurbojet", null, 0, 1, AeroplaneGroup.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAeroplaneGroup_MaxSlopeDeg(), ecorePackage.getEDoubleObject(), "maxSlopeDeg", null, 0, 1, AeroplaneGroup.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(obstacleEClass, Obstacle.class, "Obstacle", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getObstacle_Kind(), this.getObstacleKind(), "kind", null, 0, 1, Obstacle.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getObstacle_Places(), this.getPlace(), null, "places", null, 0, -1, Obstacle.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getObstacle_TopElevationM(), ecorePackage.getEDoubleObject(), "topElevationM", null, 0, 1, Obstacle.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getObstacle_HorizontalAccuracyM(), ecorePackage.getEDoubleObject(), "horizontalAccuracyM", null, 0, 1, Obstacle.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getObstacle_VerticalAccuracyM(), ecorePackage.getEDoubleObject(), "verticalAccuracyM", null, 0, 1, Obstacle.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getObstacle_Lighted(), ecorePackage.getEBooleanObject(), "lighted", null, 0, 1, Obstacle.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getObstacle_Shielded(), ecorePackage.getEBooleanObject(), "shielded", null, 0, 1, Obstacle.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getObstacle_ShieldedBy(), this.getObstacle(), null, "shieldedBy", null, 0, 1, Obstacle.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getObstacle_ShieldingStudy(), ecorePackage.getEString(), "shieldingStudy", null, 0, 1, Obstacle.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getObstacle_ShieldingStudyDate(), ecorePackage.getEString(), "shieldingStudyDate", null, 0, 1, Obstacle.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getObstacle_ShieldingStudyPerson(), ecorePackage.getEString(), "shieldingStudyPerson", null, 0, 1, Obstacle.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getObstacle_Temporary(), ecorePackage.getEBooleanObject(), "temporary", null, 0, 1, Obstacle.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getObstacle_Source(), ecorePackage.getEString(), "source", null, 0, 1, Obstacle.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getObstacle_Date(), ecorePackage.getEString(), "date", null, 0, 1, Obstacle.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(groundLevelEClass, GroundLevel.class, "GroundLevel", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getGroundLevel_Place(), this.getPlace(), null, "place", null, 0, 1, GroundLevel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGroundLevel_Source(), ecorePackage.getEString(), "source", null, 0, 1, GroundLevel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGroundLevel_Date(), ecorePackage.getEString(), "date", null, 0, 1, GroundLevel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGroundLevel_VerticalAccuracyM(), ecorePackage.getEDoubleObject(), "verticalAccuracyM", null, 0, 1, GroundLevel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(obstacleSurveyEClass, ObstacleSurvey.class, "ObstacleSurvey", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getObstacleSurvey_Date(), ecorePackage.getEString(), "date", null, 0, 1, ObstacleSurvey.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getObstacleSurvey_Source(), ecorePackage.getEString(), "source", null, 0, 1, ObstacleSurvey.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getObstacleSurvey_ReachM(), ecorePackage.getEDoubleObject(), "reachM", null, 0, 1, ObstacleSurvey.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getObstacleSurvey_HalfWidthM(), ecorePackage.getEDoubleObject(), "halfWidthM", null, 0, 1, ObstacleSurvey.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getObstacleSurvey_HorizontalAccuracyM(), ecorePackage.getEDoubleObject(), "horizontalAccuracyM", null, 0, 1, ObstacleSurvey.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getObstacleSurvey_VerticalAccuracyM(), ecorePackage.getEDoubleObject(), "verticalAccuracyM", null, 0, 1, ObstacleSurvey.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getObstacleSurvey_Hosts(), this.getApproachHost(), null, "hosts", null, 0, -1, ObstacleSurvey.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getObstacleSurvey_AllRound(), ecorePackage.getEBooleanObject(), "allRound", null, 0, 1, ObstacleSurvey.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(equipmentTypeEClass, EquipmentType.class, "EquipmentType", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getEquipmentType_FamilyKey(), ecorePackage.getEString(), "familyKey", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_BeamWidthDeg(), ecorePackage.getEDoubleObject(), "beamWidthDeg", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_TransitionMinutes(), ecorePackage.getEDoubleObject(), "transitionMinutes", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_MinSettingDeg(), ecorePackage.getEDoubleObject(), "minSettingDeg", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_MaxSettingDeg(), ecorePackage.getEDoubleObject(), "maxSettingDeg", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_IntensityCd(), ecorePackage.getEDoubleObject(), "intensityCd", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_LampPowerW(), ecorePackage.getEDoubleObject(), "lampPowerW", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_LampsPerUnit(), ecorePackage.getEIntegerObject(), "lampsPerUnit", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_Supply(), ecorePackage.getEString(), "supply", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_MinVoltageV(), ecorePackage.getEDoubleObject(), "minVoltageV", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_MaxVoltageV(), ecorePackage.getEDoubleObject(), "maxVoltageV", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_MassKg(), ecorePackage.getEDoubleObject(), "massKg", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_HeightAboveGroundM(), ecorePackage.getEDoubleObject(), "heightAboveGroundM", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getEquipmentType_Sectors(), this.getTransition(), null, "sectors", null, 0, -1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_WhiteIntensityCd(), ecorePackage.getEDoubleObject(), "whiteIntensityCd", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_RedChromaticityY(), ecorePackage.getEDoubleObject(), "redChromaticityY", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_BrightnessSteps(), ecorePackage.getEIntegerObject(), "brightnessSteps", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_NightStepPercent(), ecorePackage.getEDoubleObject(), "nightStepPercent", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_TiltCutOffDeg(), ecorePackage.getEDoubleObject(), "tiltCutOffDeg", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_FlashRateHz(), ecorePackage.getEDoubleObject(), "flashRateHz", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_FlashOnPercent(), ecorePackage.getEDoubleObject(), "flashOnPercent", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_ModulationPercent(), ecorePackage.getEDoubleObject(), "modulationPercent", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_DataSource(), ecorePackage.getEString(), "dataSource", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getEquipmentType_Intensities(), this.getMeasuredIntensity(), null, "intensities", null, 0, -1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_PlateZero(), this.getPlateZero(), "plateZero", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_PlateSense(), this.getPlateSense(), "plateSense", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_PlateStepDeg(), ecorePackage.getEDoubleObject(), "plateStepDeg", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_SlopeScaleStepDeg(), ecorePackage.getEDoubleObject(), "slopeScaleStepDeg", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_BubbleAccuracyMinutes(), ecorePackage.getEDoubleObject(), "bubbleAccuracyMinutes", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_LowerHair(), this.getSightHair(), "lowerHair", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_UpperHair(), this.getSightHair(), "upperHair", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_HandOrder(), this.getHandOrder(), "handOrder", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_RecheckEveryH(), ecorePackage.getEDoubleObject(), "recheckEveryH", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEquipmentType_StabilisedToDeg(), ecorePackage.getEDoubleObject(), "stabilisedToDeg", null, 0, 1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getEquipmentType_PrintedDescents(), this.getPrintedDescent(), null, "printedDescents", null, 0, -1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getEquipmentType_BrightnessLevels(), this.getBrightnessLevel(), null, "brightnessLevels", null, 0, -1, EquipmentType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(measuredIntensityEClass, MeasuredIntensity.class, "MeasuredIntensity", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getMeasuredIntensity_Colour(), this.getLightColour(), "colour", null, 0, 1, MeasuredIntensity.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMeasuredIntensity_AzimuthDeg(), ecorePackage.getEDoubleObject(), "azimuthDeg", null, 0, 1, MeasuredIntensity.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMeasuredIntensity_ElevationDeg(), ecorePackage.getEDoubleObject(), "elevationDeg", null, 0, 1, MeasuredIntensity.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMeasuredIntensity_IntensityCd(), ecorePackage.getEDoubleObject(), "intensityCd", null, 0, 1, MeasuredIntensity.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(printedDescentEClass, PrintedDescent.class, "PrintedDescent", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPrintedDescent_SpeedKt(), ecorePackage.getEDoubleObject(), "speedKt", null, 0, 1, PrintedDescent.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrintedDescent_DescentFtmin(), ecorePackage.getEDoubleObject(), "descentFtmin", null, 0, 1, PrintedDescent.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrintedDescent_SlopeDeg(), ecorePackage.getEDoubleObject(), "slopeDeg", null, 0, 1, PrintedDescent.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(brightnessLevelEClass, BrightnessLevel.class, "BrightnessLevel", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getBrightnessLevel_PowerPercent(), ecorePackage.getEDoubleObject(), "powerPercent", null, 0, 1, BrightnessLevel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(circuitEClass, Circuit.class, "Circuit", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getCircuit_Supply(), ecorePackage.getEString(), "supply", null, 0, 1, Circuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCircuit_CurrentA(), ecorePackage.getEDoubleObject(), "currentA", null, 0, 1, Circuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCircuit_CapacityAh(), ecorePackage.getEDoubleObject(), "capacityAh", null, 0, 1, Circuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCircuit_BrightnessSteps(), ecorePackage.getEIntegerObject(), "brightnessSteps", null, 0, 1, Circuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCircuit_Aids(), this.getApproachAid(), null, "aids", null, 0, -1, Circuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCircuit_RegulatorRatingKva(), ecorePackage.getEDoubleObject(), "regulatorRatingKva", null, 0, 1, Circuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCircuit_CableLengthM(), ecorePackage.getEDoubleObject(), "cableLengthM", null, 0, 1, Circuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCircuit_CableResistanceOhmPerKm(), ecorePackage.getEDoubleObject(), "cableResistanceOhmPerKm", null, 0, 1, Circuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCircuit_SwitchOverS(), ecorePackage.getEDoubleObject(), "switchOverS", null, 0, 1, Circuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCircuit_Standby(), ecorePackage.getEBooleanObject(), "standby", null, 0, 1, Circuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCircuit_AgeLeftPercent(), ecorePackage.getEDoubleObject(), "ageLeftPercent", null, 0, 1, Circuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCircuit_ColdLeftPercent(), ecorePackage.getEDoubleObject(), "coldLeftPercent", null, 0, 1, Circuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(approachAidEClass, ApproachAid.class, "ApproachAid", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getApproachAid_FamilyKey(), ecorePackage.getEString(), "familyKey", null, 0, 1, ApproachAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApproachAid_RuleSetKey(), ecorePackage.getEString(), "ruleSetKey", null, 0, 1, ApproachAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApproachAid_Side(), this.getAidSide(), "side", null, 0, 1, ApproachAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApproachAid_SlopeDeg(), ecorePackage.getEDoubleObject(), "slopeDeg", null, 0, 1, ApproachAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApproachAid_Settings(), this.getSettingsForm(), "settings", null, 0, 1, ApproachAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApproachAid_Clearance(), this.getClearanceChoice(), "clearance", null, 0, 1, ApproachAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApproachAid_ChosenClearanceM(), ecorePackage.getEDoubleObject(), "chosenClearanceM", null, 0, 1, ApproachAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApproachAid_TargetEyeHeightM(), ecorePackage.getEDoubleObject(), "targetEyeHeightM", null, 0, 1, ApproachAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApproachAid_HeightGroup(), ecorePackage.getEIntegerObject(), "heightGroup", null, 0, 1, ApproachAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApproachAid_AxisTurnDeg(), ecorePackage.getEDoubleObject(), "axisTurnDeg", null, 0, 1, ApproachAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApproachAid_UnshiftedDistanceM(), ecorePackage.getEDoubleObject(), "unshiftedDistanceM", null, 0, 1, ApproachAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApproachAid_UnshiftedDistanceReason(), ecorePackage.getEString(), "unshiftedDistanceReason", null, 0, 1, ApproachAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApproachAid_LevelAccuracyM(), ecorePackage.getEDoubleObject(), "levelAccuracyM", null, 0, 1, ApproachAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApproachAid_BeamLeftLimitDeg(), ecorePackage.getEDoubleObject(), "beamLeftLimitDeg", null, 0, 1, ApproachAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApproachAid_BeamRightLimitDeg(), ecorePackage.getEDoubleObject(), "beamRightLimitDeg", null, 0, 1, ApproachAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApproachAid_UnitCount(), ecorePackage.getEIntegerObject(), "unitCount", null, 0, 1, ApproachAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getApproachAid_Equipment(), this.getEquipmentType(), null, "equipment", null, 0, 1, ApproachAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApproachAid_Portable(), ecorePackage.getEBooleanObject(), "portable", null, 0, 1, ApproachAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApproachAid_GroundSpeedKt(), ecorePackage.getEDoubleObject(), "groundSpeedKt", null, 0, 1, ApproachAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApproachAid_AirSpeedKt(), ecorePackage.getEDoubleObject(), "airSpeedKt", null, 0, 1, ApproachAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApproachAid_WindKt(), ecorePackage.getEDoubleObject(), "windKt", null, 0, 1, ApproachAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApproachAid_DescentFtmin(), ecorePackage.getEDoubleObject(), "descentFtmin", null, 0, 1, ApproachAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getApproachAid_Units(), this.getLightUnit(), null, "units", null, 0, -1, ApproachAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getApproachAid_Inspections(), this.getInspection(), null, "inspections", null, 0, -1, ApproachAid.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(lightUnitEClass, LightUnit.class, "LightUnit", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getLightUnit_Label(), ecorePackage.getEString(), "label", null, 0, 1, LightUnit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLightUnit_Bar(), ecorePackage.getEIntegerObject(), "bar", null, 0, 1, LightUnit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLightUnit_AlongM(), ecorePackage.getEDoubleObject(), "alongM", null, 0, 1, LightUnit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLightUnit_RightM(), ecorePackage.getEDoubleObject(), "rightM", null, 0, 1, LightUnit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLightUnit_LensElevationM(), ecorePackage.getEDoubleObject(), "lensElevationM", null, 0, 1, LightUnit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLightUnit_AzimuthOffsetDeg(), ecorePackage.getEDoubleObject(), "azimuthOffsetDeg", null, 0, 1, LightUnit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLightUnit_SettingDeg(), ecorePackage.getEDoubleObject(), "settingDeg", null, 0, 1, LightUnit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLightUnit_HeightAboveGroundM(), ecorePackage.getEDoubleObject(), "heightAboveGroundM", null, 0, 1, LightUnit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLightUnit_Frangible(), ecorePackage.getEBooleanObject(), "frangible", null, 0, 1, LightUnit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getLightUnit_Transitions(), this.getTransition(), null, "transitions", null, 0, -1, LightUnit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getLightUnit_Measured(), this.getMeasuredUnit(), null, "measured", null, 0, 1, LightUnit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLightUnit_LampsOut(), ecorePackage.getEIntegerObject(), "lampsOut", null, 0, 1, LightUnit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(measuredUnitEClass, MeasuredUnit.class, "MeasuredUnit", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getMeasuredUnit_SettingDeg(), ecorePackage.getEDoubleObject(), "settingDeg", null, 0, 1, MeasuredUnit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMeasuredUnit_AlongM(), ecorePackage.getEDoubleObject(), "alongM", null, 0, 1, MeasuredUnit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMeasuredUnit_RightM(), ecorePackage.getEDoubleObject(), "rightM", null, 0, 1, MeasuredUnit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMeasuredUnit_LensElevationM(), ecorePackage.getEDoubleObject(), "lensElevationM", null, 0, 1, MeasuredUnit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMeasuredUnit_Person(), ecorePackage.getEString(), "person", null, 0, 1, MeasuredUnit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMeasuredUnit_Date(), ecorePackage.getEString(), "date", null, 0, 1, MeasuredUnit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMeasuredUnit_Instrument(), ecorePackage.getEString(), "instrument", null, 0, 1, MeasuredUnit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(inspectionEClass, Inspection.class, "Inspection", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getInspection_Date(), ecorePackage.getEString(), "date", null, 0, 1, Inspection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getInspection_Person(), ecorePackage.getEString(), "person", null, 0, 1, Inspection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getInspection_Organisation(), ecorePackage.getEString(), "organisation", null, 0, 1, Inspection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getInspection_OnSlopeAngleDeg(), ecorePackage.getEDoubleObject(), "onSlopeAngleDeg", null, 0, 1, Inspection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getInspection_UsableRangeM(), ecorePackage.getEDoubleObject(), "usableRangeM", null, 0, 1, Inspection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getInspection_AzimuthLeftDeg(), ecorePackage.getEDoubleObject(), "azimuthLeftDeg", null, 0, 1, Inspection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getInspection_AzimuthRightDeg(), ecorePackage.getEDoubleObject(), "azimuthRightDeg", null, 0, 1, Inspection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getInspection_ObstacleClear(), ecorePackage.getEBooleanObject(), "obstacleClear", null, 0, 1, Inspection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(backgroundImageEClass, BackgroundImage.class, "BackgroundImage", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getBackgroundImage_Path(), ecorePackage.getEString(), "path", null, 0, 1, BackgroundImage.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBackgroundImage_Sha256(), ecorePackage.getEString(), "sha256", null, 0, 1, BackgroundImage.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBackgroundImage_FirstColumnPx(), ecorePackage.getEDoubleObject(), "firstColumnPx", null, 0, 1, BackgroundImage.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBackgroundImage_FirstRowPx(), ecorePackage.getEDoubleObject(), "firstRowPx", null, 0, 1, BackgroundImage.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getBackgroundImage_FirstPlace(), this.getPlace(), null, "firstPlace", null, 0, 1, BackgroundImage.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBackgroundImage_SecondColumnPx(), ecorePackage.getEDoubleObject(), "secondColumnPx", null, 0, 1, BackgroundImage.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBackgroundImage_SecondRowPx(), ecorePackage.getEDoubleObject(), "secondRowPx", null, 0, 1, BackgroundImage.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getBackgroundImage_SecondPlace(), this.getPlace(), null, "secondPlace", null, 0, 1, BackgroundImage.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBackgroundImage_OpacityPercent(), ecorePackage.getEDoubleObject(), "opacityPercent", null, 0, 1, BackgroundImage.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBackgroundImage_Hidden(), ecorePackage.getEBooleanObject(), "hidden", null, 0, 1, BackgroundImage.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBackgroundImage_Source(), ecorePackage.getEString(), "source", null, 0, 1, BackgroundImage.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBackgroundImage_Date(), ecorePackage.getEString(), "date", null, 0, 1, BackgroundImage.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(transitionEClass, Transition.class, "Transition", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getTransition_OffsetDeg(), ecorePackage.getEDoubleObject(), "offsetDeg", null, 0, 1, Transition.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTransition_WidthMinutes(), ecorePackage.getEDoubleObject(), "widthMinutes", null, 0, 1, Transition.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTransition_BelowColour(), this.getLightColour(), "belowColour", null, 0, 1, Transition.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTransition_BelowState(), this.getLightState(), "belowState", null, 0, 1, Transition.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTransition_AboveColour(), this.getLightColour(), "aboveColour", null, 0, 1, Transition.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTransition_AboveState(), this.getLightState(), "aboveState", null, 0, 1, Transition.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(readBackEClass, ReadBack.class, "ReadBack", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getReadBack_ElementId(), ecorePackage.getEString(), "elementId", null, 0, 1, ReadBack.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReadBack_Person(), ecorePackage.getEString(), "person", null, 0, 1, ReadBack.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReadBack_Date(), ecorePackage.getEString(), "date", null, 0, 1, ReadBack.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReadBack_Sha256(), ecorePackage.getEString(), "sha256", null, 0, 1, ReadBack.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		// Initialize enums and add enum literals
		initEEnum(approachTypeEEnum, ApproachType.class, "ApproachType");
		addEEnumLiteral(approachTypeEEnum, ApproachType.NOT_STATED);
		addEEnumLiteral(approachTypeEEnum, ApproachType.VISUAL);
		addEEnumLiteral(approachTypeEEnum, ApproachType.NON_PRECISION);
		addEEnumLiteral(approachTypeEEnum, ApproachType.PRECISION_CAT_I);
		addEEnumLiteral(approachTypeEEnum, ApproachType.PRECISION_CAT_II_III);

		initEEnum(glidePathKindEEnum, GlidePathKind.class, "GlidePathKind");
		addEEnumLiteral(glidePathKindEEnum, GlidePathKind.ILS);
		addEEnumLiteral(glidePathKindEEnum, GlidePathKind.MLS);
		addEEnumLiteral(glidePathKindEEnum, GlidePathKind.GBAS_SBAS);

		initEEnum(edgeKindEEnum, EdgeKind.class, "EdgeKind");
		addEEnumLiteral(edgeKindEEnum, EdgeKind.TAXIWAY);
		addEEnumLiteral(edgeKindEEnum, EdgeKind.APRON);
		addEEnumLiteral(edgeKindEEnum, EdgeKind.OTHER_RUNWAY);

		initEEnum(obstacleKindEEnum, ObstacleKind.class, "ObstacleKind");
		addEEnumLiteral(obstacleKindEEnum, ObstacleKind.POINT);
		addEEnumLiteral(obstacleKindEEnum, ObstacleKind.LINE);
		addEEnumLiteral(obstacleKindEEnum, ObstacleKind.AREA);

		initEEnum(aidSideEEnum, AidSide.class, "AidSide");
		addEEnumLiteral(aidSideEEnum, AidSide.LEFT);
		addEEnumLiteral(aidSideEEnum, AidSide.RIGHT);
		addEEnumLiteral(aidSideEEnum, AidSide.BOTH);

		initEEnum(settingsFormEEnum, SettingsForm.class, "SettingsForm");
		addEEnumLiteral(settingsFormEEnum, SettingsForm.STANDARD);
		addEEnumLiteral(settingsFormEEnum, SettingsForm.GLIDE_PATH);

		initEEnum(clearanceChoiceEEnum, ClearanceChoice.class, "ClearanceChoice");
		addEEnumLiteral(clearanceChoiceEEnum, ClearanceChoice.DESIRED);
		addEEnumLiteral(clearanceChoiceEEnum, ClearanceChoice.MINIMUM);
		addEEnumLiteral(clearanceChoiceEEnum, ClearanceChoice.CHOSEN);

		initEEnum(lightColourEEnum, LightColour.class, "LightColour");
		addEEnumLiteral(lightColourEEnum, LightColour.NONE);
		addEEnumLiteral(lightColourEEnum, LightColour.WHITE);
		addEEnumLiteral(lightColourEEnum, LightColour.RED);
		addEEnumLiteral(lightColourEEnum, LightColour.GREEN);
		addEEnumLiteral(lightColourEEnum, LightColour.AMBER);

		initEEnum(lightStateEEnum, LightState.class, "LightState");
		addEEnumLiteral(lightStateEEnum, LightState.STEADY);
		addEEnumLiteral(lightStateEEnum, LightState.PULSATING);
		addEEnumLiteral(lightStateEEnum, LightState.FLASHING);
		addEEnumLiteral(lightStateEEnum, LightState.OFF);

		initEEnum(reviewKindEEnum, ReviewKind.class, "ReviewKind");
		addEEnumLiteral(reviewKindEEnum, ReviewKind.COMMENT);
		addEEnumLiteral(reviewKindEEnum, ReviewKind.ANSWER);
		addEEnumLiteral(reviewKindEEnum, ReviewKind.ACCEPTED);
		addEEnumLiteral(reviewKindEEnum, ReviewKind.RETURNED);
		addEEnumLiteral(reviewKindEEnum, ReviewKind.SIGNED_OFF);

		initEEnum(stageEEnum, Stage.class, "Stage");
		addEEnumLiteral(stageEEnum, Stage.DESIGN);
		addEEnumLiteral(stageEEnum, Stage.SET_UP);
		addEEnumLiteral(stageEEnum, Stage.OPERATION);

		initEEnum(plateZeroEEnum, PlateZero.class, "PlateZero");
		addEEnumLiteral(plateZeroEEnum, PlateZero.NOT_STATED);
		addEEnumLiteral(plateZeroEEnum, PlateZero.NORTH);
		addEEnumLiteral(plateZeroEEnum, PlateZero.SOUTH);
		addEEnumLiteral(plateZeroEEnum, PlateZero.LANDING_DIRECTION);

		initEEnum(plateSenseEEnum, PlateSense.class, "PlateSense");
		addEEnumLiteral(plateSenseEEnum, PlateSense.NOT_STATED);
		addEEnumLiteral(plateSenseEEnum, PlateSense.CLOCKWISE);
		addEEnumLiteral(plateSenseEEnum, PlateSense.ANTICLOCKWISE);

		initEEnum(sightHairEEnum, SightHair.class, "SightHair");
		addEEnumLiteral(sightHairEEnum, SightHair.NOT_STATED);
		addEEnumLiteral(sightHairEEnum, SightHair.RED_LOWER_EDGE);
		addEEnumLiteral(sightHairEEnum, SightHair.ON_SLOPE_LOWER_EDGE);
		addEEnumLiteral(sightHairEEnum, SightHair.SLOPE);
		addEEnumLiteral(sightHairEEnum, SightHair.ON_SLOPE_UPPER_EDGE);

		initEEnum(handOrderEEnum, HandOrder.class, "HandOrder");
		addEEnumLiteral(handOrderEEnum, HandOrder.NOT_STATED);
		addEEnumLiteral(handOrderEEnum, HandOrder.TURN_LEVEL_SET);
		addEEnumLiteral(handOrderEEnum, HandOrder.TURN_SET_LEVEL);
		addEEnumLiteral(handOrderEEnum, HandOrder.LEVEL_TURN_SET);
		addEEnumLiteral(handOrderEEnum, HandOrder.LEVEL_SET_TURN);
		addEEnumLiteral(handOrderEEnum, HandOrder.SET_TURN_LEVEL);
		addEEnumLiteral(handOrderEEnum, HandOrder.SET_LEVEL_TURN);

		// Create resource
		createResource(eNS_URI);
	}

} //SlopewrightPackageImpl
