/**
 */
package slopewright.model.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import slopewright.model.AidSide;
import slopewright.model.ApproachAid;
import slopewright.model.ClearanceChoice;
import slopewright.model.EquipmentType;
import slopewright.model.Inspection;
import slopewright.model.LightUnit;
import slopewright.model.SettingsForm;
import slopewright.model.SlopewrightPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Approach Aid</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.ApproachAidImpl#getFamilyKey <em>Family Key</em>}</li>
 *   <li>{@link slopewright.model.impl.ApproachAidImpl#getRuleSetKey <em>Rule Set Key</em>}</li>
 *   <li>{@link slopewright.model.impl.ApproachAidImpl#getSide <em>Side</em>}</li>
 *   <li>{@link slopewright.model.impl.ApproachAidImpl#getSlopeDeg <em>Slope Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.ApproachAidImpl#getSettings <em>Settings</em>}</li>
 *   <li>{@link slopewright.model.impl.ApproachAidImpl#getClearance <em>Clearance</em>}</li>
 *   <li>{@link slopewright.model.impl.ApproachAidImpl#getChosenClearanceM <em>Chosen Clearance M</em>}</li>
 *   <li>{@link slopewright.model.impl.ApproachAidImpl#getTargetEyeHeightM <em>Target Eye Height M</em>}</li>
 *   <li>{@link slopewright.model.impl.ApproachAidImpl#getHeightGroup <em>Height Group</em>}</li>
 *   <li>{@link slopewright.model.impl.ApproachAidImpl#getAxisTurnDeg <em>Axis Turn Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.ApproachAidImpl#getUnshiftedDistanceM <em>Unshifted Distance M</em>}</li>
 *   <li>{@link slopewright.model.impl.ApproachAidImpl#getUnshiftedDistanceReason <em>Unshifted Distance Reason</em>}</li>
 *   <li>{@link slopewright.model.impl.ApproachAidImpl#getLevelAccuracyM <em>Level Accuracy M</em>}</li>
 *   <li>{@link slopewright.model.impl.ApproachAidImpl#getBeamLeftLimitDeg <em>Beam Left Limit Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.ApproachAidImpl#getBeamRightLimitDeg <em>Beam Right Limit Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.ApproachAidImpl#getUnitCount <em>Unit Count</em>}</li>
 *   <li>{@link slopewright.model.impl.ApproachAidImpl#getEquipment <em>Equipment</em>}</li>
 *   <li>{@link slopewright.model.impl.ApproachAidImpl#getPortable <em>Portable</em>}</li>
 *   <li>{@link slopewright.model.impl.ApproachAidImpl#getGroundSpeedKt <em>Ground Speed Kt</em>}</li>
 *   <li>{@link slopewright.model.impl.ApproachAidImpl#getAirSpeedKt <em>Air Speed Kt</em>}</li>
 *   <li>{@link slopewright.model.impl.ApproachAidImpl#getWindKt <em>Wind Kt</em>}</li>
 *   <li>{@link slopewright.model.impl.ApproachAidImpl#getDescentFtmin <em>Descent Ftmin</em>}</li>
 *   <li>{@link slopewright.model.impl.ApproachAidImpl#getUnits <em>Units</em>}</li>
 *   <li>{@link slopewright.model.impl.ApproachAidImpl#getInspections <em>Inspections</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ApproachAidImpl extends NamedImpl implements ApproachAid {
	/**
	 * The default value of the '{@link #getFamilyKey() <em>Family Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFamilyKey()
	 * @generated
	 * @ordered
	 */
	protected static final String FAMILY_KEY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFamilyKey() <em>Family Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFamilyKey()
	 * @generated
	 * @ordered
	 */
	protected String familyKey = FAMILY_KEY_EDEFAULT;

	/**
	 * The default value of the '{@link #getRuleSetKey() <em>Rule Set Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRuleSetKey()
	 * @generated
	 * @ordered
	 */
	protected static final String RULE_SET_KEY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRuleSetKey() <em>Rule Set Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRuleSetKey()
	 * @generated
	 * @ordered
	 */
	protected String ruleSetKey = RULE_SET_KEY_EDEFAULT;

	/**
	 * The default value of the '{@link #getSide() <em>Side</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSide()
	 * @generated
	 * @ordered
	 */
	protected static final AidSide SIDE_EDEFAULT = AidSide.LEFT;

	/**
	 * The cached value of the '{@link #getSide() <em>Side</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSide()
	 * @generated
	 * @ordered
	 */
	protected AidSide side = SIDE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSlopeDeg() <em>Slope Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSlopeDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double SLOPE_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSlopeDeg() <em>Slope Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSlopeDeg()
	 * @generated
	 * @ordered
	 */
	protected Double slopeDeg = SLOPE_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getSettings() <em>Settings</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSettings()
	 * @generated
	 * @ordered
	 */
	protected static final SettingsForm SETTINGS_EDEFAULT = SettingsForm.STANDARD;

	/**
	 * The cached value of the '{@link #getSettings() <em>Settings</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSettings()
	 * @generated
	 * @ordered
	 */
	protected SettingsForm settings = SETTINGS_EDEFAULT;

	/**
	 * The default value of the '{@link #getClearance() <em>Clearance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClearance()
	 * @generated
	 * @ordered
	 */
	protected static final ClearanceChoice CLEARANCE_EDEFAULT = ClearanceChoice.DESIRED;

	/**
	 * The cached value of the '{@link #getClearance() <em>Clearance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClearance()
	 * @generated
	 * @ordered
	 */
	protected ClearanceChoice clearance = CLEARANCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getChosenClearanceM() <em>Chosen Clearance M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChosenClearanceM()
	 * @generated
	 * @ordered
	 */
	protected static final Double CHOSEN_CLEARANCE_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getChosenClearanceM() <em>Chosen Clearance M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChosenClearanceM()
	 * @generated
	 * @ordered
	 */
	protected Double chosenClearanceM = CHOSEN_CLEARANCE_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getTargetEyeHeightM() <em>Target Eye Height M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTargetEyeHeightM()
	 * @generated
	 * @ordered
	 */
	protected static final Double TARGET_EYE_HEIGHT_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTargetEyeHeightM() <em>Target Eye Height M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTargetEyeHeightM()
	 * @generated
	 * @ordered
	 */
	protected Double targetEyeHeightM = TARGET_EYE_HEIGHT_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getHeightGroup() <em>Height Group</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeightGroup()
	 * @generated
	 * @ordered
	 */
	protected static final Integer HEIGHT_GROUP_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHeightGroup() <em>Height Group</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeightGroup()
	 * @generated
	 * @ordered
	 */
	protected Integer heightGroup = HEIGHT_GROUP_EDEFAULT;

	/**
	 * The default value of the '{@link #getAxisTurnDeg() <em>Axis Turn Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAxisTurnDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double AXIS_TURN_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAxisTurnDeg() <em>Axis Turn Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAxisTurnDeg()
	 * @generated
	 * @ordered
	 */
	protected Double axisTurnDeg = AXIS_TURN_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getUnshiftedDistanceM() <em>Unshifted Distance M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnshiftedDistanceM()
	 * @generated
	 * @ordered
	 */
	protected static final Double UNSHIFTED_DISTANCE_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getUnshiftedDistanceM() <em>Unshifted Distance M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnshiftedDistanceM()
	 * @generated
	 * @ordered
	 */
	protected Double unshiftedDistanceM = UNSHIFTED_DISTANCE_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getUnshiftedDistanceReason() <em>Unshifted Distance Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnshiftedDistanceReason()
	 * @generated
	 * @ordered
	 */
	protected static final String UNSHIFTED_DISTANCE_REASON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getUnshiftedDistanceReason() <em>Unshifted Distance Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnshiftedDistanceReason()
	 * @generated
	 * @ordered
	 */
	protected String unshiftedDistanceReason = UNSHIFTED_DISTANCE_REASON_EDEFAULT;

	/**
	 * The default value of the '{@link #getLevelAccuracyM() <em>Level Accuracy M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLevelAccuracyM()
	 * @generated
	 * @ordered
	 */
	protected static final Double LEVEL_ACCURACY_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLevelAccuracyM() <em>Level Accuracy M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLevelAccuracyM()
	 * @generated
	 * @ordered
	 */
	protected Double levelAccuracyM = LEVEL_ACCURACY_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getBeamLeftLimitDeg() <em>Beam Left Limit Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBeamLeftLimitDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double BEAM_LEFT_LIMIT_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBeamLeftLimitDeg() <em>Beam Left Limit Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBeamLeftLimitDeg()
	 * @generated
	 * @ordered
	 */
	protected Double beamLeftLimitDeg = BEAM_LEFT_LIMIT_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getBeamRightLimitDeg() <em>Beam Right Limit Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBeamRightLimitDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double BEAM_RIGHT_LIMIT_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBeamRightLimitDeg() <em>Beam Right Limit Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBeamRightLimitDeg()
	 * @generated
	 * @ordered
	 */
	protected Double beamRightLimitDeg = BEAM_RIGHT_LIMIT_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getUnitCount() <em>Unit Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnitCount()
	 * @generated
	 * @ordered
	 */
	protected static final Integer UNIT_COUNT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getUnitCount() <em>Unit Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnitCount()
	 * @generated
	 * @ordered
	 */
	protected Integer unitCount = UNIT_COUNT_EDEFAULT;

	/**
	 * The cached value of the '{@link #getEquipment() <em>Equipment</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEquipment()
	 * @generated
	 * @ordered
	 */
	protected EquipmentType equipment;

	/**
	 * The default value of the '{@link #getPortable() <em>Portable</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPortable()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean PORTABLE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPortable() <em>Portable</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPortable()
	 * @generated
	 * @ordered
	 */
	protected Boolean portable = PORTABLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getGroundSpeedKt() <em>Ground Speed Kt</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGroundSpeedKt()
	 * @generated
	 * @ordered
	 */
	protected static final Double GROUND_SPEED_KT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGroundSpeedKt() <em>Ground Speed Kt</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGroundSpeedKt()
	 * @generated
	 * @ordered
	 */
	protected Double groundSpeedKt = GROUND_SPEED_KT_EDEFAULT;

	/**
	 * The default value of the '{@link #getAirSpeedKt() <em>Air Speed Kt</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAirSpeedKt()
	 * @generated
	 * @ordered
	 */
	protected static final Double AIR_SPEED_KT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAirSpeedKt() <em>Air Speed Kt</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAirSpeedKt()
	 * @generated
	 * @ordered
	 */
	protected Double airSpeedKt = AIR_SPEED_KT_EDEFAULT;

	/**
	 * The default value of the '{@link #getWindKt() <em>Wind Kt</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWindKt()
	 * @generated
	 * @ordered
	 */
	protected static final Double WIND_KT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWindKt() <em>Wind Kt</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWindKt()
	 * @generated
	 * @ordered
	 */
	protected Double windKt = WIND_KT_EDEFAULT;

	/**
	 * The default value of the '{@link #getDescentFtmin() <em>Descent Ftmin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDescentFtmin()
	 * @generated
	 * @ordered
	 */
	protected static final Double DESCENT_FTMIN_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDescentFtmin() <em>Descent Ftmin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDescentFtmin()
	 * @generated
	 * @ordered
	 */
	protected Double descentFtmin = DESCENT_FTMIN_EDEFAULT;

	/**
	 * The cached value of the '{@link #getUnits() <em>Units</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnits()
	 * @generated
	 * @ordered
	 */
	protected EList<LightUnit> units;

	/**
	 * The cached value of the '{@link #getInspections() <em>Inspections</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInspections()
	 * @generated
	 * @ordered
	 */
	protected EList<Inspection> inspections;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ApproachAidImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.APPROACH_AID;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getFamilyKey() {
		return familyKey;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFamilyKey(String newFamilyKey) {
		String oldFamilyKey = familyKey;
		familyKey = newFamilyKey;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.APPROACH_AID__FAMILY_KEY, oldFamilyKey, familyKey));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getRuleSetKey() {
		return ruleSetKey;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRuleSetKey(String newRuleSetKey) {
		String oldRuleSetKey = ruleSetKey;
		ruleSetKey = newRuleSetKey;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.APPROACH_AID__RULE_SET_KEY, oldRuleSetKey, ruleSetKey));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public AidSide getSide() {
		return side;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSide(AidSide newSide) {
		AidSide oldSide = side;
		side = newSide == null ? SIDE_EDEFAULT : newSide;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.APPROACH_AID__SIDE, oldSide, side));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getSlopeDeg() {
		return slopeDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSlopeDeg(Double newSlopeDeg) {
		Double oldSlopeDeg = slopeDeg;
		slopeDeg = newSlopeDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.APPROACH_AID__SLOPE_DEG, oldSlopeDeg, slopeDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SettingsForm getSettings() {
		return settings;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSettings(SettingsForm newSettings) {
		SettingsForm oldSettings = settings;
		settings = newSettings == null ? SETTINGS_EDEFAULT : newSettings;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.APPROACH_AID__SETTINGS, oldSettings, settings));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ClearanceChoice getClearance() {
		return clearance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setClearance(ClearanceChoice newClearance) {
		ClearanceChoice oldClearance = clearance;
		clearance = newClearance == null ? CLEARANCE_EDEFAULT : newClearance;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.APPROACH_AID__CLEARANCE, oldClearance, clearance));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getChosenClearanceM() {
		return chosenClearanceM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setChosenClearanceM(Double newChosenClearanceM) {
		Double oldChosenClearanceM = chosenClearanceM;
		chosenClearanceM = newChosenClearanceM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.APPROACH_AID__CHOSEN_CLEARANCE_M, oldChosenClearanceM, chosenClearanceM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getTargetEyeHeightM() {
		return targetEyeHeightM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTargetEyeHeightM(Double newTargetEyeHeightM) {
		Double oldTargetEyeHeightM = targetEyeHeightM;
		targetEyeHeightM = newTargetEyeHeightM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.APPROACH_AID__TARGET_EYE_HEIGHT_M, oldTargetEyeHeightM, targetEyeHeightM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getHeightGroup() {
		return heightGroup;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeightGroup(Integer newHeightGroup) {
		Integer oldHeightGroup = heightGroup;
		heightGroup = newHeightGroup;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.APPROACH_AID__HEIGHT_GROUP, oldHeightGroup, heightGroup));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getAxisTurnDeg() {
		return axisTurnDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAxisTurnDeg(Double newAxisTurnDeg) {
		Double oldAxisTurnDeg = axisTurnDeg;
		axisTurnDeg = newAxisTurnDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.APPROACH_AID__AXIS_TURN_DEG, oldAxisTurnDeg, axisTurnDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getUnshiftedDistanceM() {
		return unshiftedDistanceM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUnshiftedDistanceM(Double newUnshiftedDistanceM) {
		Double oldUnshiftedDistanceM = unshiftedDistanceM;
		unshiftedDistanceM = newUnshiftedDistanceM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.APPROACH_AID__UNSHIFTED_DISTANCE_M, oldUnshiftedDistanceM, unshiftedDistanceM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getUnshiftedDistanceReason() {
		return unshiftedDistanceReason;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUnshiftedDistanceReason(String newUnshiftedDistanceReason) {
		String oldUnshiftedDistanceReason = unshiftedDistanceReason;
		unshiftedDistanceReason = newUnshiftedDistanceReason;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.APPROACH_AID__UNSHIFTED_DISTANCE_REASON, oldUnshiftedDistanceReason, unshiftedDistanceReason));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getLevelAccuracyM() {
		return levelAccuracyM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLevelAccuracyM(Double newLevelAccuracyM) {
		Double oldLevelAccuracyM = levelAccuracyM;
		levelAccuracyM = newLevelAccuracyM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.APPROACH_AID__LEVEL_ACCURACY_M, oldLevelAccuracyM, levelAccuracyM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getBeamLeftLimitDeg() {
		return beamLeftLimitDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBeamLeftLimitDeg(Double newBeamLeftLimitDeg) {
		Double oldBeamLeftLimitDeg = beamLeftLimitDeg;
		beamLeftLimitDeg = newBeamLeftLimitDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.APPROACH_AID__BEAM_LEFT_LIMIT_DEG, oldBeamLeftLimitDeg, beamLeftLimitDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getBeamRightLimitDeg() {
		return beamRightLimitDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBeamRightLimitDeg(Double newBeamRightLimitDeg) {
		Double oldBeamRightLimitDeg = beamRightLimitDeg;
		beamRightLimitDeg = newBeamRightLimitDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.APPROACH_AID__BEAM_RIGHT_LIMIT_DEG, oldBeamRightLimitDeg, beamRightLimitDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getUnitCount() {
		return unitCount;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUnitCount(Integer newUnitCount) {
		Integer oldUnitCount = unitCount;
		unitCount = newUnitCount;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.APPROACH_AID__UNIT_COUNT, oldUnitCount, unitCount));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EquipmentType getEquipment() {
		if (equipment != null && equipment.eIsProxy()) {
			InternalEObject oldEquipment = (InternalEObject)equipment;
			equipment = (EquipmentType)eResolveProxy(oldEquipment);
			if (equipment != oldEquipment) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, SlopewrightPackage.APPROACH_AID__EQUIPMENT, oldEquipment, equipment));
			}
		}
		return equipment;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public EquipmentType basicGetEquipment() {
		return equipment;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEquipment(EquipmentType newEquipment) {
		EquipmentType oldEquipment = equipment;
		equipment = newEquipment;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.APPROACH_AID__EQUIPMENT, oldEquipment, equipment));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getPortable() {
		return portable;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPortable(Boolean newPortable) {
		Boolean oldPortable = portable;
		portable = newPortable;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.APPROACH_AID__PORTABLE, oldPortable, portable));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getGroundSpeedKt() {
		return groundSpeedKt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGroundSpeedKt(Double newGroundSpeedKt) {
		Double oldGroundSpeedKt = groundSpeedKt;
		groundSpeedKt = newGroundSpeedKt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.APPROACH_AID__GROUND_SPEED_KT, oldGroundSpeedKt, groundSpeedKt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getAirSpeedKt() {
		return airSpeedKt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAirSpeedKt(Double newAirSpeedKt) {
		Double oldAirSpeedKt = airSpeedKt;
		airSpeedKt = newAirSpeedKt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.APPROACH_AID__AIR_SPEED_KT, oldAirSpeedKt, airSpeedKt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getWindKt() {
		return windKt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWindKt(Double newWindKt) {
		Double oldWindKt = windKt;
		windKt = newWindKt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.APPROACH_AID__WIND_KT, oldWindKt, windKt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getDescentFtmin() {
		return descentFtmin;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDescentFtmin(Double newDescentFtmin) {
		Double oldDescentFtmin = descentFtmin;
		descentFtmin = newDescentFtmin;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.APPROACH_AID__DESCENT_FTMIN, oldDescentFtmin, descentFtmin));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<LightUnit> getUnits() {
		if (units == null) {
			units = new EObjectContainmentEList<LightUnit>(LightUnit.class, this, SlopewrightPackage.APPROACH_AID__UNITS);
		}
		return units;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Inspection> getInspections() {
		if (inspections == null) {
			inspections = new EObjectContainmentEList<Inspection>(Inspection.class, this, SlopewrightPackage.APPROACH_AID__INSPECTIONS);
		}
		return inspections;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case SlopewrightPackage.APPROACH_AID__UNITS:
				return ((InternalEList<?>)getUnits()).basicRemove(otherEnd, msgs);
			case SlopewrightPackage.APPROACH_AID__INSPECTIONS:
				return ((InternalEList<?>)getInspections()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case SlopewrightPackage.APPROACH_AID__FAMILY_KEY:
				return getFamilyKey();
			case SlopewrightPackage.APPROACH_AID__RULE_SET_KEY:
				return getRuleSetKey();
			case SlopewrightPackage.APPROACH_AID__SIDE:
				return getSide();
			case SlopewrightPackage.APPROACH_AID__SLOPE_DEG:
				return getSlopeDeg();
			case SlopewrightPackage.APPROACH_AID__SETTINGS:
				return getSettings();
			case SlopewrightPackage.APPROACH_AID__CLEARANCE:
				return getClearance();
			case SlopewrightPackage.APPROACH_AID__CHOSEN_CLEARANCE_M:
				return getChosenClearanceM();
			case SlopewrightPackage.APPROACH_AID__TARGET_EYE_HEIGHT_M:
				return getTargetEyeHeightM();
			case SlopewrightPackage.APPROACH_AID__HEIGHT_GROUP:
				return getHeightGroup();
			case SlopewrightPackage.APPROACH_AID__AXIS_TURN_DEG:
				return getAxisTurnDeg();
			case SlopewrightPackage.APPROACH_AID__UNSHIFTED_DISTANCE_M:
				return getUnshiftedDistanceM();
			case SlopewrightPackage.APPROACH_AID__UNSHIFTED_DISTANCE_REASON:
				return getUnshiftedDistanceReason();
			case SlopewrightPackage.APPROACH_AID__LEVEL_ACCURACY_M:
				return getLevelAccuracyM();
			case SlopewrightPackage.APPROACH_AID__BEAM_LEFT_LIMIT_DEG:
				return getBeamLeftLimitDeg();
			case SlopewrightPackage.APPROACH_AID__BEAM_RIGHT_LIMIT_DEG:
				return getBeamRightLimitDeg();
			case SlopewrightPackage.APPROACH_AID__UNIT_COUNT:
				return getUnitCount();
			case SlopewrightPackage.APPROACH_AID__EQUIPMENT:
				if (resolve) return getEquipment();
				return basicGetEquipment();
			case SlopewrightPackage.APPROACH_AID__PORTABLE:
				return getPortable();
			case SlopewrightPackage.APPROACH_AID__GROUND_SPEED_KT:
				return getGroundSpeedKt();
			case SlopewrightPackage.APPROACH_AID__AIR_SPEED_KT:
				return getAirSpeedKt();
			case SlopewrightPackage.APPROACH_AID__WIND_KT:
				return getWindKt();
			case SlopewrightPackage.APPROACH_AID__DESCENT_FTMIN:
				return getDescentFtmin();
			case SlopewrightPackage.APPROACH_AID__UNITS:
				return getUnits();
			case SlopewrightPackage.APPROACH_AID__INSPECTIONS:
				return getInspections();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case SlopewrightPackage.APPROACH_AID__FAMILY_KEY:
				setFamilyKey((String)newValue);
				return;
			case SlopewrightPackage.APPROACH_AID__RULE_SET_KEY:
				setRuleSetKey((String)newValue);
				return;
			case SlopewrightPackage.APPROACH_AID__SIDE:
				setSide((AidSide)newValue);
				return;
			case SlopewrightPackage.APPROACH_AID__SLOPE_DEG:
				setSlopeDeg((Double)newValue);
				return;
			case SlopewrightPackage.APPROACH_AID__SETTINGS:
				setSettings((SettingsForm)newValue);
				return;
			case SlopewrightPackage.APPROACH_AID__CLEARANCE:
				setClearance((ClearanceChoice)newValue);
				return;
			case SlopewrightPackage.APPROACH_AID__CHOSEN_CLEARANCE_M:
				setChosenClearanceM((Double)newValue);
				return;
			case SlopewrightPackage.APPROACH_AID__TARGET_EYE_HEIGHT_M:
				setTargetEyeHeightM((Double)newValue);
				return;
			case SlopewrightPackage.APPROACH_AID__HEIGHT_GROUP:
				setHeightGroup((Integer)newValue);
				return;
			case SlopewrightPackage.APPROACH_AID__AXIS_TURN_DEG:
				setAxisTurnDeg((Double)newValue);
				return;
			case SlopewrightPackage.APPROACH_AID__UNSHIFTED_DISTANCE_M:
				setUnshiftedDistanceM((Double)newValue);
				return;
			case SlopewrightPackage.APPROACH_AID__UNSHIFTED_DISTANCE_REASON:
				setUnshiftedDistanceReason((String)newValue);
				return;
			case SlopewrightPackage.APPROACH_AID__LEVEL_ACCURACY_M:
				setLevelAccuracyM((Double)newValue);
				return;
			case SlopewrightPackage.APPROACH_AID__BEAM_LEFT_LIMIT_DEG:
				setBeamLeftLimitDeg((Double)newValue);
				return;
			case SlopewrightPackage.APPROACH_AID__BEAM_RIGHT_LIMIT_DEG:
				setBeamRightLimitDeg((Double)newValue);
				return;
			case SlopewrightPackage.APPROACH_AID__UNIT_COUNT:
				setUnitCount((Integer)newValue);
				return;
			case SlopewrightPackage.APPROACH_AID__EQUIPMENT:
				setEquipment((EquipmentType)newValue);
				return;
			case SlopewrightPackage.APPROACH_AID__PORTABLE:
				setPortable((Boolean)newValue);
				return;
			case SlopewrightPackage.APPROACH_AID__GROUND_SPEED_KT:
				setGroundSpeedKt((Double)newValue);
				return;
			case SlopewrightPackage.APPROACH_AID__AIR_SPEED_KT:
				setAirSpeedKt((Double)newValue);
				return;
			case SlopewrightPackage.APPROACH_AID__WIND_KT:
				setWindKt((Double)newValue);
				return;
			case SlopewrightPackage.APPROACH_AID__DESCENT_FTMIN:
				setDescentFtmin((Double)newValue);
				return;
			case SlopewrightPackage.APPROACH_AID__UNITS:
				getUnits().clear();
				getUnits().addAll((Collection<? extends LightUnit>)newValue);
				return;
			case SlopewrightPackage.APPROACH_AID__INSPECTIONS:
				getInspections().clear();
				getInspections().addAll((Collection<? extends Inspection>)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case SlopewrightPackage.APPROACH_AID__FAMILY_KEY:
				setFamilyKey(FAMILY_KEY_EDEFAULT);
				return;
			case SlopewrightPackage.APPROACH_AID__RULE_SET_KEY:
				setRuleSetKey(RULE_SET_KEY_EDEFAULT);
				return;
			case SlopewrightPackage.APPROACH_AID__SIDE:
				setSide(SIDE_EDEFAULT);
				return;
			case SlopewrightPackage.APPROACH_AID__SLOPE_DEG:
				setSlopeDeg(SLOPE_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.APPROACH_AID__SETTINGS:
				setSettings(SETTINGS_EDEFAULT);
				return;
			case SlopewrightPackage.APPROACH_AID__CLEARANCE:
				setClearance(CLEARANCE_EDEFAULT);
				return;
			case SlopewrightPackage.APPROACH_AID__CHOSEN_CLEARANCE_M:
				setChosenClearanceM(CHOSEN_CLEARANCE_M_EDEFAULT);
				return;
			case SlopewrightPackage.APPROACH_AID__TARGET_EYE_HEIGHT_M:
				setTargetEyeHeightM(TARGET_EYE_HEIGHT_M_EDEFAULT);
				return;
			case SlopewrightPackage.APPROACH_AID__HEIGHT_GROUP:
				setHeightGroup(HEIGHT_GROUP_EDEFAULT);
				return;
			case SlopewrightPackage.APPROACH_AID__AXIS_TURN_DEG:
				setAxisTurnDeg(AXIS_TURN_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.APPROACH_AID__UNSHIFTED_DISTANCE_M:
				setUnshiftedDistanceM(UNSHIFTED_DISTANCE_M_EDEFAULT);
				return;
			case SlopewrightPackage.APPROACH_AID__UNSHIFTED_DISTANCE_REASON:
				setUnshiftedDistanceReason(UNSHIFTED_DISTANCE_REASON_EDEFAULT);
				return;
			case SlopewrightPackage.APPROACH_AID__LEVEL_ACCURACY_M:
				setLevelAccuracyM(LEVEL_ACCURACY_M_EDEFAULT);
				return;
			case SlopewrightPackage.APPROACH_AID__BEAM_LEFT_LIMIT_DEG:
				setBeamLeftLimitDeg(BEAM_LEFT_LIMIT_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.APPROACH_AID__BEAM_RIGHT_LIMIT_DEG:
				setBeamRightLimitDeg(BEAM_RIGHT_LIMIT_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.APPROACH_AID__UNIT_COUNT:
				setUnitCount(UNIT_COUNT_EDEFAULT);
				return;
			case SlopewrightPackage.APPROACH_AID__EQUIPMENT:
				setEquipment((EquipmentType)null);
				return;
			case SlopewrightPackage.APPROACH_AID__PORTABLE:
				setPortable(PORTABLE_EDEFAULT);
				return;
			case SlopewrightPackage.APPROACH_AID__GROUND_SPEED_KT:
				setGroundSpeedKt(GROUND_SPEED_KT_EDEFAULT);
				return;
			case SlopewrightPackage.APPROACH_AID__AIR_SPEED_KT:
				setAirSpeedKt(AIR_SPEED_KT_EDEFAULT);
				return;
			case SlopewrightPackage.APPROACH_AID__WIND_KT:
				setWindKt(WIND_KT_EDEFAULT);
				return;
			case SlopewrightPackage.APPROACH_AID__DESCENT_FTMIN:
				setDescentFtmin(DESCENT_FTMIN_EDEFAULT);
				return;
			case SlopewrightPackage.APPROACH_AID__UNITS:
				getUnits().clear();
				return;
			case SlopewrightPackage.APPROACH_AID__INSPECTIONS:
				getInspections().clear();
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case SlopewrightPackage.APPROACH_AID__FAMILY_KEY:
				return FAMILY_KEY_EDEFAULT == null ? familyKey != null : !FAMILY_KEY_EDEFAULT.equals(familyKey);
			case SlopewrightPackage.APPROACH_AID__RULE_SET_KEY:
				return RULE_SET_KEY_EDEFAULT == null ? ruleSetKey != null : !RULE_SET_KEY_EDEFAULT.equals(ruleSetKey);
			case SlopewrightPackage.APPROACH_AID__SIDE:
				return side != SIDE_EDEFAULT;
			case SlopewrightPackage.APPROACH_AID__SLOPE_DEG:
				return SLOPE_DEG_EDEFAULT == null ? slopeDeg != null : !SLOPE_DEG_EDEFAULT.equals(slopeDeg);
			case SlopewrightPackage.APPROACH_AID__SETTINGS:
				return settings != SETTINGS_EDEFAULT;
			case SlopewrightPackage.APPROACH_AID__CLEARANCE:
				return clearance != CLEARANCE_EDEFAULT;
			case SlopewrightPackage.APPROACH_AID__CHOSEN_CLEARANCE_M:
				return CHOSEN_CLEARANCE_M_EDEFAULT == null ? chosenClearanceM != null : !CHOSEN_CLEARANCE_M_EDEFAULT.equals(chosenClearanceM);
			case SlopewrightPackage.APPROACH_AID__TARGET_EYE_HEIGHT_M:
				return TARGET_EYE_HEIGHT_M_EDEFAULT == null ? targetEyeHeightM != null : !TARGET_EYE_HEIGHT_M_EDEFAULT.equals(targetEyeHeightM);
			case SlopewrightPackage.APPROACH_AID__HEIGHT_GROUP:
				return HEIGHT_GROUP_EDEFAULT == null ? heightGroup != null : !HEIGHT_GROUP_EDEFAULT.equals(heightGroup);
			case SlopewrightPackage.APPROACH_AID__AXIS_TURN_DEG:
				return AXIS_TURN_DEG_EDEFAULT == null ? axisTurnDeg != null : !AXIS_TURN_DEG_EDEFAULT.equals(axisTurnDeg);
			case SlopewrightPackage.APPROACH_AID__UNSHIFTED_DISTANCE_M:
				return UNSHIFTED_DISTANCE_M_EDEFAULT == null ? unshiftedDistanceM != null : !UNSHIFTED_DISTANCE_M_EDEFAULT.equals(unshiftedDistanceM);
			case SlopewrightPackage.APPROACH_AID__UNSHIFTED_DISTANCE_REASON:
				return UNSHIFTED_DISTANCE_REASON_EDEFAULT == null ? unshiftedDistanceReason != null : !UNSHIFTED_DISTANCE_REASON_EDEFAULT.equals(unshiftedDistanceReason);
			case SlopewrightPackage.APPROACH_AID__LEVEL_ACCURACY_M:
				return LEVEL_ACCURACY_M_EDEFAULT == null ? levelAccuracyM != null : !LEVEL_ACCURACY_M_EDEFAULT.equals(levelAccuracyM);
			case SlopewrightPackage.APPROACH_AID__BEAM_LEFT_LIMIT_DEG:
				return BEAM_LEFT_LIMIT_DEG_EDEFAULT == null ? beamLeftLimitDeg != null : !BEAM_LEFT_LIMIT_DEG_EDEFAULT.equals(beamLeftLimitDeg);
			case SlopewrightPackage.APPROACH_AID__BEAM_RIGHT_LIMIT_DEG:
				return BEAM_RIGHT_LIMIT_DEG_EDEFAULT == null ? beamRightLimitDeg != null : !BEAM_RIGHT_LIMIT_DEG_EDEFAULT.equals(beamRightLimitDeg);
			case SlopewrightPackage.APPROACH_AID__UNIT_COUNT:
				return UNIT_COUNT_EDEFAULT == null ? unitCount != null : !UNIT_COUNT_EDEFAULT.equals(unitCount);
			case SlopewrightPackage.APPROACH_AID__EQUIPMENT:
				return equipment != null;
			case SlopewrightPackage.APPROACH_AID__PORTABLE:
				return PORTABLE_EDEFAULT == null ? portable != null : !PORTABLE_EDEFAULT.equals(portable);
			case SlopewrightPackage.APPROACH_AID__GROUND_SPEED_KT:
				return GROUND_SPEED_KT_EDEFAULT == null ? groundSpeedKt != null : !GROUND_SPEED_KT_EDEFAULT.equals(groundSpeedKt);
			case SlopewrightPackage.APPROACH_AID__AIR_SPEED_KT:
				return AIR_SPEED_KT_EDEFAULT == null ? airSpeedKt != null : !AIR_SPEED_KT_EDEFAULT.equals(airSpeedKt);
			case SlopewrightPackage.APPROACH_AID__WIND_KT:
				return WIND_KT_EDEFAULT == null ? windKt != null : !WIND_KT_EDEFAULT.equals(windKt);
			case SlopewrightPackage.APPROACH_AID__DESCENT_FTMIN:
				return DESCENT_FTMIN_EDEFAULT == null ? descentFtmin != null : !DESCENT_FTMIN_EDEFAULT.equals(descentFtmin);
			case SlopewrightPackage.APPROACH_AID__UNITS:
				return units != null && !units.isEmpty();
			case SlopewrightPackage.APPROACH_AID__INSPECTIONS:
				return inspections != null && !inspections.isEmpty();
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (familyKey: ");
		result.append(familyKey);
		result.append(", ruleSetKey: ");
		result.append(ruleSetKey);
		result.append(", side: ");
		result.append(side);
		result.append(", slopeDeg: ");
		result.append(slopeDeg);
		result.append(", settings: ");
		result.append(settings);
		result.append(", clearance: ");
		result.append(clearance);
		result.append(", chosenClearanceM: ");
		result.append(chosenClearanceM);
		result.append(", targetEyeHeightM: ");
		result.append(targetEyeHeightM);
		result.append(", heightGroup: ");
		result.append(heightGroup);
		result.append(", axisTurnDeg: ");
		result.append(axisTurnDeg);
		result.append(", unshiftedDistanceM: ");
		result.append(unshiftedDistanceM);
		result.append(", unshiftedDistanceReason: ");
		result.append(unshiftedDistanceReason);
		result.append(", levelAccuracyM: ");
		result.append(levelAccuracyM);
		result.append(", beamLeftLimitDeg: ");
		result.append(beamLeftLimitDeg);
		result.append(", beamRightLimitDeg: ");
		result.append(beamRightLimitDeg);
		result.append(", unitCount: ");
		result.append(unitCount);
		result.append(", portable: ");
		result.append(portable);
		result.append(", groundSpeedKt: ");
		result.append(groundSpeedKt);
		result.append(", airSpeedKt: ");
		result.append(airSpeedKt);
		result.append(", windKt: ");
		result.append(windKt);
		result.append(", descentFtmin: ");
		result.append(descentFtmin);
		result.append(')');
		return result.toString();
	}

} //ApproachAidImpl
