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

import slopewright.model.EquipmentType;
import slopewright.model.MeasuredIntensity;
import slopewright.model.SlopewrightPackage;
import slopewright.model.Transition;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Equipment Type</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getFamilyKey <em>Family Key</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getBeamWidthDeg <em>Beam Width Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getTransitionMinutes <em>Transition Minutes</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getMinSettingDeg <em>Min Setting Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getMaxSettingDeg <em>Max Setting Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getIntensityCd <em>Intensity Cd</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getLampPowerW <em>Lamp Power W</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getLampsPerUnit <em>Lamps Per Unit</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getSupply <em>Supply</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getMinVoltageV <em>Min Voltage V</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getMaxVoltageV <em>Max Voltage V</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getMassKg <em>Mass Kg</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getHeightAboveGroundM <em>Height Above Ground M</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getSectors <em>Sectors</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getWhiteIntensityCd <em>White Intensity Cd</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getRedChromaticityY <em>Red Chromaticity Y</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getBrightnessSteps <em>Brightness Steps</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getNightStepPercent <em>Night Step Percent</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getTiltCutOffDeg <em>Tilt Cut Off Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getFlashRateHz <em>Flash Rate Hz</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getFlashOnPercent <em>Flash On Percent</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getModulationPercent <em>Modulation Percent</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getDataSource <em>Data Source</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getIntensities <em>Intensities</em>}</li>
 * </ul>
 *
 * @generated
 */
public class EquipmentTypeImpl extends NamedImpl implements EquipmentType {
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
	 * The default value of the '{@link #getBeamWidthDeg() <em>Beam Width Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBeamWidthDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double BEAM_WIDTH_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBeamWidthDeg() <em>Beam Width Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBeamWidthDeg()
	 * @generated
	 * @ordered
	 */
	protected Double beamWidthDeg = BEAM_WIDTH_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getTransitionMinutes() <em>Transition Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTransitionMinutes()
	 * @generated
	 * @ordered
	 */
	protected static final Double TRANSITION_MINUTES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTransitionMinutes() <em>Transition Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTransitionMinutes()
	 * @generated
	 * @ordered
	 */
	protected Double transitionMinutes = TRANSITION_MINUTES_EDEFAULT;

	/**
	 * The default value of the '{@link #getMinSettingDeg() <em>Min Setting Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinSettingDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double MIN_SETTING_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMinSettingDeg() <em>Min Setting Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinSettingDeg()
	 * @generated
	 * @ordered
	 */
	protected Double minSettingDeg = MIN_SETTING_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaxSettingDeg() <em>Max Setting Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaxSettingDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double MAX_SETTING_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaxSettingDeg() <em>Max Setting Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaxSettingDeg()
	 * @generated
	 * @ordered
	 */
	protected Double maxSettingDeg = MAX_SETTING_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getIntensityCd() <em>Intensity Cd</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIntensityCd()
	 * @generated
	 * @ordered
	 */
	protected static final Double INTENSITY_CD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getIntensityCd() <em>Intensity Cd</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIntensityCd()
	 * @generated
	 * @ordered
	 */
	protected Double intensityCd = INTENSITY_CD_EDEFAULT;

	/**
	 * The default value of the '{@link #getLampPowerW() <em>Lamp Power W</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLampPowerW()
	 * @generated
	 * @ordered
	 */
	protected static final Double LAMP_POWER_W_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLampPowerW() <em>Lamp Power W</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLampPowerW()
	 * @generated
	 * @ordered
	 */
	protected Double lampPowerW = LAMP_POWER_W_EDEFAULT;

	/**
	 * The default value of the '{@link #getLampsPerUnit() <em>Lamps Per Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLampsPerUnit()
	 * @generated
	 * @ordered
	 */
	protected static final Integer LAMPS_PER_UNIT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLampsPerUnit() <em>Lamps Per Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLampsPerUnit()
	 * @generated
	 * @ordered
	 */
	protected Integer lampsPerUnit = LAMPS_PER_UNIT_EDEFAULT;

	/**
	 * The default value of the '{@link #getSupply() <em>Supply</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupply()
	 * @generated
	 * @ordered
	 */
	protected static final String SUPPLY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSupply() <em>Supply</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupply()
	 * @generated
	 * @ordered
	 */
	protected String supply = SUPPLY_EDEFAULT;

	/**
	 * The default value of the '{@link #getMinVoltageV() <em>Min Voltage V</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinVoltageV()
	 * @generated
	 * @ordered
	 */
	protected static final Double MIN_VOLTAGE_V_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMinVoltageV() <em>Min Voltage V</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinVoltageV()
	 * @generated
	 * @ordered
	 */
	protected Double minVoltageV = MIN_VOLTAGE_V_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaxVoltageV() <em>Max Voltage V</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaxVoltageV()
	 * @generated
	 * @ordered
	 */
	protected static final Double MAX_VOLTAGE_V_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaxVoltageV() <em>Max Voltage V</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaxVoltageV()
	 * @generated
	 * @ordered
	 */
	protected Double maxVoltageV = MAX_VOLTAGE_V_EDEFAULT;

	/**
	 * The default value of the '{@link #getMassKg() <em>Mass Kg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMassKg()
	 * @generated
	 * @ordered
	 */
	protected static final Double MASS_KG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMassKg() <em>Mass Kg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMassKg()
	 * @generated
	 * @ordered
	 */
	protected Double massKg = MASS_KG_EDEFAULT;

	/**
	 * The default value of the '{@link #getHeightAboveGroundM() <em>Height Above Ground M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeightAboveGroundM()
	 * @generated
	 * @ordered
	 */
	protected static final Double HEIGHT_ABOVE_GROUND_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHeightAboveGroundM() <em>Height Above Ground M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeightAboveGroundM()
	 * @generated
	 * @ordered
	 */
	protected Double heightAboveGroundM = HEIGHT_ABOVE_GROUND_M_EDEFAULT;

	/**
	 * The cached value of the '{@link #getSectors() <em>Sectors</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSectors()
	 * @generated
	 * @ordered
	 */
	protected EList<Transition> sectors;

	/**
	 * The default value of the '{@link #getWhiteIntensityCd() <em>White Intensity Cd</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWhiteIntensityCd()
	 * @generated
	 * @ordered
	 */
	protected static final Double WHITE_INTENSITY_CD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWhiteIntensityCd() <em>White Intensity Cd</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWhiteIntensityCd()
	 * @generated
	 * @ordered
	 */
	protected Double whiteIntensityCd = WHITE_INTENSITY_CD_EDEFAULT;

	/**
	 * The default value of the '{@link #getRedChromaticityY() <em>Red Chromaticity Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRedChromaticityY()
	 * @generated
	 * @ordered
	 */
	protected static final Double RED_CHROMATICITY_Y_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRedChromaticityY() <em>Red Chromaticity Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRedChromaticityY()
	 * @generated
	 * @ordered
	 */
	protected Double redChromaticityY = RED_CHROMATICITY_Y_EDEFAULT;

	/**
	 * The default value of the '{@link #getBrightnessSteps() <em>Brightness Steps</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBrightnessSteps()
	 * @generated
	 * @ordered
	 */
	protected static final Integer BRIGHTNESS_STEPS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBrightnessSteps() <em>Brightness Steps</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBrightnessSteps()
	 * @generated
	 * @ordered
	 */
	protected Integer brightnessSteps = BRIGHTNESS_STEPS_EDEFAULT;

	/**
	 * The default value of the '{@link #getNightStepPercent() <em>Night Step Percent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNightStepPercent()
	 * @generated
	 * @ordered
	 */
	protected static final Double NIGHT_STEP_PERCENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNightStepPercent() <em>Night Step Percent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNightStepPercent()
	 * @generated
	 * @ordered
	 */
	protected Double nightStepPercent = NIGHT_STEP_PERCENT_EDEFAULT;

	/**
	 * The default value of the '{@link #getTiltCutOffDeg() <em>Tilt Cut Off Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTiltCutOffDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double TILT_CUT_OFF_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTiltCutOffDeg() <em>Tilt Cut Off Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTiltCutOffDeg()
	 * @generated
	 * @ordered
	 */
	protected Double tiltCutOffDeg = TILT_CUT_OFF_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getFlashRateHz() <em>Flash Rate Hz</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFlashRateHz()
	 * @generated
	 * @ordered
	 */
	protected static final Double FLASH_RATE_HZ_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFlashRateHz() <em>Flash Rate Hz</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFlashRateHz()
	 * @generated
	 * @ordered
	 */
	protected Double flashRateHz = FLASH_RATE_HZ_EDEFAULT;

	/**
	 * The default value of the '{@link #getFlashOnPercent() <em>Flash On Percent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFlashOnPercent()
	 * @generated
	 * @ordered
	 */
	protected static final Double FLASH_ON_PERCENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFlashOnPercent() <em>Flash On Percent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFlashOnPercent()
	 * @generated
	 * @ordered
	 */
	protected Double flashOnPercent = FLASH_ON_PERCENT_EDEFAULT;

	/**
	 * The default value of the '{@link #getModulationPercent() <em>Modulation Percent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getModulationPercent()
	 * @generated
	 * @ordered
	 */
	protected static final Double MODULATION_PERCENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getModulationPercent() <em>Modulation Percent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getModulationPercent()
	 * @generated
	 * @ordered
	 */
	protected Double modulationPercent = MODULATION_PERCENT_EDEFAULT;

	/**
	 * The default value of the '{@link #getDataSource() <em>Data Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDataSource()
	 * @generated
	 * @ordered
	 */
	protected static final String DATA_SOURCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDataSource() <em>Data Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDataSource()
	 * @generated
	 * @ordered
	 */
	protected String dataSource = DATA_SOURCE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getIntensities() <em>Intensities</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIntensities()
	 * @generated
	 * @ordered
	 */
	protected EList<MeasuredIntensity> intensities;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected EquipmentTypeImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.EQUIPMENT_TYPE;
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
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__FAMILY_KEY, oldFamilyKey, familyKey));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getBeamWidthDeg() {
		return beamWidthDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBeamWidthDeg(Double newBeamWidthDeg) {
		Double oldBeamWidthDeg = beamWidthDeg;
		beamWidthDeg = newBeamWidthDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__BEAM_WIDTH_DEG, oldBeamWidthDeg, beamWidthDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getTransitionMinutes() {
		return transitionMinutes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTransitionMinutes(Double newTransitionMinutes) {
		Double oldTransitionMinutes = transitionMinutes;
		transitionMinutes = newTransitionMinutes;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__TRANSITION_MINUTES, oldTransitionMinutes, transitionMinutes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getMinSettingDeg() {
		return minSettingDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMinSettingDeg(Double newMinSettingDeg) {
		Double oldMinSettingDeg = minSettingDeg;
		minSettingDeg = newMinSettingDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__MIN_SETTING_DEG, oldMinSettingDeg, minSettingDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getMaxSettingDeg() {
		return maxSettingDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaxSettingDeg(Double newMaxSettingDeg) {
		Double oldMaxSettingDeg = maxSettingDeg;
		maxSettingDeg = newMaxSettingDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__MAX_SETTING_DEG, oldMaxSettingDeg, maxSettingDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getIntensityCd() {
		return intensityCd;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setIntensityCd(Double newIntensityCd) {
		Double oldIntensityCd = intensityCd;
		intensityCd = newIntensityCd;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__INTENSITY_CD, oldIntensityCd, intensityCd));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getLampPowerW() {
		return lampPowerW;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLampPowerW(Double newLampPowerW) {
		Double oldLampPowerW = lampPowerW;
		lampPowerW = newLampPowerW;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__LAMP_POWER_W, oldLampPowerW, lampPowerW));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getLampsPerUnit() {
		return lampsPerUnit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLampsPerUnit(Integer newLampsPerUnit) {
		Integer oldLampsPerUnit = lampsPerUnit;
		lampsPerUnit = newLampsPerUnit;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__LAMPS_PER_UNIT, oldLampsPerUnit, lampsPerUnit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSupply() {
		return supply;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSupply(String newSupply) {
		String oldSupply = supply;
		supply = newSupply;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__SUPPLY, oldSupply, supply));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getMinVoltageV() {
		return minVoltageV;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMinVoltageV(Double newMinVoltageV) {
		Double oldMinVoltageV = minVoltageV;
		minVoltageV = newMinVoltageV;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__MIN_VOLTAGE_V, oldMinVoltageV, minVoltageV));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getMaxVoltageV() {
		return maxVoltageV;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaxVoltageV(Double newMaxVoltageV) {
		Double oldMaxVoltageV = maxVoltageV;
		maxVoltageV = newMaxVoltageV;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__MAX_VOLTAGE_V, oldMaxVoltageV, maxVoltageV));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getMassKg() {
		return massKg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMassKg(Double newMassKg) {
		Double oldMassKg = massKg;
		massKg = newMassKg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__MASS_KG, oldMassKg, massKg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getHeightAboveGroundM() {
		return heightAboveGroundM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeightAboveGroundM(Double newHeightAboveGroundM) {
		Double oldHeightAboveGroundM = heightAboveGroundM;
		heightAboveGroundM = newHeightAboveGroundM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__HEIGHT_ABOVE_GROUND_M, oldHeightAboveGroundM, heightAboveGroundM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Transition> getSectors() {
		if (sectors == null) {
			sectors = new EObjectContainmentEList<Transition>(Transition.class, this, SlopewrightPackage.EQUIPMENT_TYPE__SECTORS);
		}
		return sectors;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getWhiteIntensityCd() {
		return whiteIntensityCd;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWhiteIntensityCd(Double newWhiteIntensityCd) {
		Double oldWhiteIntensityCd = whiteIntensityCd;
		whiteIntensityCd = newWhiteIntensityCd;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__WHITE_INTENSITY_CD, oldWhiteIntensityCd, whiteIntensityCd));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getRedChromaticityY() {
		return redChromaticityY;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRedChromaticityY(Double newRedChromaticityY) {
		Double oldRedChromaticityY = redChromaticityY;
		redChromaticityY = newRedChromaticityY;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__RED_CHROMATICITY_Y, oldRedChromaticityY, redChromaticityY));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getBrightnessSteps() {
		return brightnessSteps;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBrightnessSteps(Integer newBrightnessSteps) {
		Integer oldBrightnessSteps = brightnessSteps;
		brightnessSteps = newBrightnessSteps;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__BRIGHTNESS_STEPS, oldBrightnessSteps, brightnessSteps));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getNightStepPercent() {
		return nightStepPercent;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNightStepPercent(Double newNightStepPercent) {
		Double oldNightStepPercent = nightStepPercent;
		nightStepPercent = newNightStepPercent;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__NIGHT_STEP_PERCENT, oldNightStepPercent, nightStepPercent));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getTiltCutOffDeg() {
		return tiltCutOffDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTiltCutOffDeg(Double newTiltCutOffDeg) {
		Double oldTiltCutOffDeg = tiltCutOffDeg;
		tiltCutOffDeg = newTiltCutOffDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__TILT_CUT_OFF_DEG, oldTiltCutOffDeg, tiltCutOffDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getFlashRateHz() {
		return flashRateHz;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFlashRateHz(Double newFlashRateHz) {
		Double oldFlashRateHz = flashRateHz;
		flashRateHz = newFlashRateHz;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__FLASH_RATE_HZ, oldFlashRateHz, flashRateHz));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getFlashOnPercent() {
		return flashOnPercent;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFlashOnPercent(Double newFlashOnPercent) {
		Double oldFlashOnPercent = flashOnPercent;
		flashOnPercent = newFlashOnPercent;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__FLASH_ON_PERCENT, oldFlashOnPercent, flashOnPercent));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getModulationPercent() {
		return modulationPercent;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setModulationPercent(Double newModulationPercent) {
		Double oldModulationPercent = modulationPercent;
		modulationPercent = newModulationPercent;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__MODULATION_PERCENT, oldModulationPercent, modulationPercent));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDataSource() {
		return dataSource;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDataSource(String newDataSource) {
		String oldDataSource = dataSource;
		dataSource = newDataSource;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__DATA_SOURCE, oldDataSource, dataSource));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<MeasuredIntensity> getIntensities() {
		if (intensities == null) {
			intensities = new EObjectContainmentEList<MeasuredIntensity>(MeasuredIntensity.class, this, SlopewrightPackage.EQUIPMENT_TYPE__INTENSITIES);
		}
		return intensities;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case SlopewrightPackage.EQUIPMENT_TYPE__SECTORS:
				return ((InternalEList<?>)getSectors()).basicRemove(otherEnd, msgs);
			case SlopewrightPackage.EQUIPMENT_TYPE__INTENSITIES:
				return ((InternalEList<?>)getIntensities()).basicRemove(otherEnd, msgs);
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
			case SlopewrightPackage.EQUIPMENT_TYPE__FAMILY_KEY:
				return getFamilyKey();
			case SlopewrightPackage.EQUIPMENT_TYPE__BEAM_WIDTH_DEG:
				return getBeamWidthDeg();
			case SlopewrightPackage.EQUIPMENT_TYPE__TRANSITION_MINUTES:
				return getTransitionMinutes();
			case SlopewrightPackage.EQUIPMENT_TYPE__MIN_SETTING_DEG:
				return getMinSettingDeg();
			case SlopewrightPackage.EQUIPMENT_TYPE__MAX_SETTING_DEG:
				return getMaxSettingDeg();
			case SlopewrightPackage.EQUIPMENT_TYPE__INTENSITY_CD:
				return getIntensityCd();
			case SlopewrightPackage.EQUIPMENT_TYPE__LAMP_POWER_W:
				return getLampPowerW();
			case SlopewrightPackage.EQUIPMENT_TYPE__LAMPS_PER_UNIT:
				return getLampsPerUnit();
			case SlopewrightPackage.EQUIPMENT_TYPE__SUPPLY:
				return getSupply();
			case SlopewrightPackage.EQUIPMENT_TYPE__MIN_VOLTAGE_V:
				return getMinVoltageV();
			case SlopewrightPackage.EQUIPMENT_TYPE__MAX_VOLTAGE_V:
				return getMaxVoltageV();
			case SlopewrightPackage.EQUIPMENT_TYPE__MASS_KG:
				return getMassKg();
			case SlopewrightPackage.EQUIPMENT_TYPE__HEIGHT_ABOVE_GROUND_M:
				return getHeightAboveGroundM();
			case SlopewrightPackage.EQUIPMENT_TYPE__SECTORS:
				return getSectors();
			case SlopewrightPackage.EQUIPMENT_TYPE__WHITE_INTENSITY_CD:
				return getWhiteIntensityCd();
			case SlopewrightPackage.EQUIPMENT_TYPE__RED_CHROMATICITY_Y:
				return getRedChromaticityY();
			case SlopewrightPackage.EQUIPMENT_TYPE__BRIGHTNESS_STEPS:
				return getBrightnessSteps();
			case SlopewrightPackage.EQUIPMENT_TYPE__NIGHT_STEP_PERCENT:
				return getNightStepPercent();
			case SlopewrightPackage.EQUIPMENT_TYPE__TILT_CUT_OFF_DEG:
				return getTiltCutOffDeg();
			case SlopewrightPackage.EQUIPMENT_TYPE__FLASH_RATE_HZ:
				return getFlashRateHz();
			case SlopewrightPackage.EQUIPMENT_TYPE__FLASH_ON_PERCENT:
				return getFlashOnPercent();
			case SlopewrightPackage.EQUIPMENT_TYPE__MODULATION_PERCENT:
				return getModulationPercent();
			case SlopewrightPackage.EQUIPMENT_TYPE__DATA_SOURCE:
				return getDataSource();
			case SlopewrightPackage.EQUIPMENT_TYPE__INTENSITIES:
				return getIntensities();
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
			case SlopewrightPackage.EQUIPMENT_TYPE__FAMILY_KEY:
				setFamilyKey((String)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__BEAM_WIDTH_DEG:
				setBeamWidthDeg((Double)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__TRANSITION_MINUTES:
				setTransitionMinutes((Double)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__MIN_SETTING_DEG:
				setMinSettingDeg((Double)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__MAX_SETTING_DEG:
				setMaxSettingDeg((Double)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__INTENSITY_CD:
				setIntensityCd((Double)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__LAMP_POWER_W:
				setLampPowerW((Double)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__LAMPS_PER_UNIT:
				setLampsPerUnit((Integer)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__SUPPLY:
				setSupply((String)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__MIN_VOLTAGE_V:
				setMinVoltageV((Double)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__MAX_VOLTAGE_V:
				setMaxVoltageV((Double)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__MASS_KG:
				setMassKg((Double)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__HEIGHT_ABOVE_GROUND_M:
				setHeightAboveGroundM((Double)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__SECTORS:
				getSectors().clear();
				getSectors().addAll((Collection<? extends Transition>)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__WHITE_INTENSITY_CD:
				setWhiteIntensityCd((Double)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__RED_CHROMATICITY_Y:
				setRedChromaticityY((Double)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__BRIGHTNESS_STEPS:
				setBrightnessSteps((Integer)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__NIGHT_STEP_PERCENT:
				setNightStepPercent((Double)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__TILT_CUT_OFF_DEG:
				setTiltCutOffDeg((Double)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__FLASH_RATE_HZ:
				setFlashRateHz((Double)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__FLASH_ON_PERCENT:
				setFlashOnPercent((Double)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__MODULATION_PERCENT:
				setModulationPercent((Double)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__DATA_SOURCE:
				setDataSource((String)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__INTENSITIES:
				getIntensities().clear();
				getIntensities().addAll((Collection<? extends MeasuredIntensity>)newValue);
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
			case SlopewrightPackage.EQUIPMENT_TYPE__FAMILY_KEY:
				setFamilyKey(FAMILY_KEY_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__BEAM_WIDTH_DEG:
				setBeamWidthDeg(BEAM_WIDTH_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__TRANSITION_MINUTES:
				setTransitionMinutes(TRANSITION_MINUTES_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__MIN_SETTING_DEG:
				setMinSettingDeg(MIN_SETTING_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__MAX_SETTING_DEG:
				setMaxSettingDeg(MAX_SETTING_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__INTENSITY_CD:
				setIntensityCd(INTENSITY_CD_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__LAMP_POWER_W:
				setLampPowerW(LAMP_POWER_W_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__LAMPS_PER_UNIT:
				setLampsPerUnit(LAMPS_PER_UNIT_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__SUPPLY:
				setSupply(SUPPLY_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__MIN_VOLTAGE_V:
				setMinVoltageV(MIN_VOLTAGE_V_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__MAX_VOLTAGE_V:
				setMaxVoltageV(MAX_VOLTAGE_V_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__MASS_KG:
				setMassKg(MASS_KG_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__HEIGHT_ABOVE_GROUND_M:
				setHeightAboveGroundM(HEIGHT_ABOVE_GROUND_M_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__SECTORS:
				getSectors().clear();
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__WHITE_INTENSITY_CD:
				setWhiteIntensityCd(WHITE_INTENSITY_CD_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__RED_CHROMATICITY_Y:
				setRedChromaticityY(RED_CHROMATICITY_Y_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__BRIGHTNESS_STEPS:
				setBrightnessSteps(BRIGHTNESS_STEPS_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__NIGHT_STEP_PERCENT:
				setNightStepPercent(NIGHT_STEP_PERCENT_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__TILT_CUT_OFF_DEG:
				setTiltCutOffDeg(TILT_CUT_OFF_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__FLASH_RATE_HZ:
				setFlashRateHz(FLASH_RATE_HZ_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__FLASH_ON_PERCENT:
				setFlashOnPercent(FLASH_ON_PERCENT_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__MODULATION_PERCENT:
				setModulationPercent(MODULATION_PERCENT_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__DATA_SOURCE:
				setDataSource(DATA_SOURCE_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__INTENSITIES:
				getIntensities().clear();
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
			case SlopewrightPackage.EQUIPMENT_TYPE__FAMILY_KEY:
				return FAMILY_KEY_EDEFAULT == null ? familyKey != null : !FAMILY_KEY_EDEFAULT.equals(familyKey);
			case SlopewrightPackage.EQUIPMENT_TYPE__BEAM_WIDTH_DEG:
				return BEAM_WIDTH_DEG_EDEFAULT == null ? beamWidthDeg != null : !BEAM_WIDTH_DEG_EDEFAULT.equals(beamWidthDeg);
			case SlopewrightPackage.EQUIPMENT_TYPE__TRANSITION_MINUTES:
				return TRANSITION_MINUTES_EDEFAULT == null ? transitionMinutes != null : !TRANSITION_MINUTES_EDEFAULT.equals(transitionMinutes);
			case SlopewrightPackage.EQUIPMENT_TYPE__MIN_SETTING_DEG:
				return MIN_SETTING_DEG_EDEFAULT == null ? minSettingDeg != null : !MIN_SETTING_DEG_EDEFAULT.equals(minSettingDeg);
			case SlopewrightPackage.EQUIPMENT_TYPE__MAX_SETTING_DEG:
				return MAX_SETTING_DEG_EDEFAULT == null ? maxSettingDeg != null : !MAX_SETTING_DEG_EDEFAULT.equals(maxSettingDeg);
			case SlopewrightPackage.EQUIPMENT_TYPE__INTENSITY_CD:
				return INTENSITY_CD_EDEFAULT == null ? intensityCd != null : !INTENSITY_CD_EDEFAULT.equals(intensityCd);
			case SlopewrightPackage.EQUIPMENT_TYPE__LAMP_POWER_W:
				return LAMP_POWER_W_EDEFAULT == null ? lampPowerW != null : !LAMP_POWER_W_EDEFAULT.equals(lampPowerW);
			case SlopewrightPackage.EQUIPMENT_TYPE__LAMPS_PER_UNIT:
				return LAMPS_PER_UNIT_EDEFAULT == null ? lampsPerUnit != null : !LAMPS_PER_UNIT_EDEFAULT.equals(lampsPerUnit);
			case SlopewrightPackage.EQUIPMENT_TYPE__SUPPLY:
				return SUPPLY_EDEFAULT == null ? supply != null : !SUPPLY_EDEFAULT.equals(supply);
			case SlopewrightPackage.EQUIPMENT_TYPE__MIN_VOLTAGE_V:
				return MIN_VOLTAGE_V_EDEFAULT == null ? minVoltageV != null : !MIN_VOLTAGE_V_EDEFAULT.equals(minVoltageV);
			case SlopewrightPackage.EQUIPMENT_TYPE__MAX_VOLTAGE_V:
				return MAX_VOLTAGE_V_EDEFAULT == null ? maxVoltageV != null : !MAX_VOLTAGE_V_EDEFAULT.equals(maxVoltageV);
			case SlopewrightPackage.EQUIPMENT_TYPE__MASS_KG:
				return MASS_KG_EDEFAULT == null ? massKg != null : !MASS_KG_EDEFAULT.equals(massKg);
			case SlopewrightPackage.EQUIPMENT_TYPE__HEIGHT_ABOVE_GROUND_M:
				return HEIGHT_ABOVE_GROUND_M_EDEFAULT == null ? heightAboveGroundM != null : !HEIGHT_ABOVE_GROUND_M_EDEFAULT.equals(heightAboveGroundM);
			case SlopewrightPackage.EQUIPMENT_TYPE__SECTORS:
				return sectors != null && !sectors.isEmpty();
			case SlopewrightPackage.EQUIPMENT_TYPE__WHITE_INTENSITY_CD:
				return WHITE_INTENSITY_CD_EDEFAULT == null ? whiteIntensityCd != null : !WHITE_INTENSITY_CD_EDEFAULT.equals(whiteIntensityCd);
			case SlopewrightPackage.EQUIPMENT_TYPE__RED_CHROMATICITY_Y:
				return RED_CHROMATICITY_Y_EDEFAULT == null ? redChromaticityY != null : !RED_CHROMATICITY_Y_EDEFAULT.equals(redChromaticityY);
			case SlopewrightPackage.EQUIPMENT_TYPE__BRIGHTNESS_STEPS:
				return BRIGHTNESS_STEPS_EDEFAULT == null ? brightnessSteps != null : !BRIGHTNESS_STEPS_EDEFAULT.equals(brightnessSteps);
			case SlopewrightPackage.EQUIPMENT_TYPE__NIGHT_STEP_PERCENT:
				return NIGHT_STEP_PERCENT_EDEFAULT == null ? nightStepPercent != null : !NIGHT_STEP_PERCENT_EDEFAULT.equals(nightStepPercent);
			case SlopewrightPackage.EQUIPMENT_TYPE__TILT_CUT_OFF_DEG:
				return TILT_CUT_OFF_DEG_EDEFAULT == null ? tiltCutOffDeg != null : !TILT_CUT_OFF_DEG_EDEFAULT.equals(tiltCutOffDeg);
			case SlopewrightPackage.EQUIPMENT_TYPE__FLASH_RATE_HZ:
				return FLASH_RATE_HZ_EDEFAULT == null ? flashRateHz != null : !FLASH_RATE_HZ_EDEFAULT.equals(flashRateHz);
			case SlopewrightPackage.EQUIPMENT_TYPE__FLASH_ON_PERCENT:
				return FLASH_ON_PERCENT_EDEFAULT == null ? flashOnPercent != null : !FLASH_ON_PERCENT_EDEFAULT.equals(flashOnPercent);
			case SlopewrightPackage.EQUIPMENT_TYPE__MODULATION_PERCENT:
				return MODULATION_PERCENT_EDEFAULT == null ? modulationPercent != null : !MODULATION_PERCENT_EDEFAULT.equals(modulationPercent);
			case SlopewrightPackage.EQUIPMENT_TYPE__DATA_SOURCE:
				return DATA_SOURCE_EDEFAULT == null ? dataSource != null : !DATA_SOURCE_EDEFAULT.equals(dataSource);
			case SlopewrightPackage.EQUIPMENT_TYPE__INTENSITIES:
				return intensities != null && !intensities.isEmpty();
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
		result.append(", beamWidthDeg: ");
		result.append(beamWidthDeg);
		result.append(", transitionMinutes: ");
		result.append(transitionMinutes);
		result.append(", minSettingDeg: ");
		result.append(minSettingDeg);
		result.append(", maxSettingDeg: ");
		result.append(maxSettingDeg);
		result.append(", intensityCd: ");
		result.append(intensityCd);
		result.append(", lampPowerW: ");
		result.append(lampPowerW);
		result.append(", lampsPerUnit: ");
		result.append(lampsPerUnit);
		result.append(", supply: ");
		result.append(supply);
		result.append(", minVoltageV: ");
		result.append(minVoltageV);
		result.append(", maxVoltageV: ");
		result.append(maxVoltageV);
		result.append(", massKg: ");
		result.append(massKg);
		result.append(", heightAboveGroundM: ");
		result.append(heightAboveGroundM);
		result.append(", whiteIntensityCd: ");
		result.append(whiteIntensityCd);
		result.append(", redChromaticityY: ");
		result.append(redChromaticityY);
		result.append(", brightnessSteps: ");
		result.append(brightnessSteps);
		result.append(", nightStepPercent: ");
		result.append(nightStepPercent);
		result.append(", tiltCutOffDeg: ");
		result.append(tiltCutOffDeg);
		result.append(", flashRateHz: ");
		result.append(flashRateHz);
		result.append(", flashOnPercent: ");
		result.append(flashOnPercent);
		result.append(", modulationPercent: ");
		result.append(modulationPercent);
		result.append(", dataSource: ");
		result.append(dataSource);
		result.append(')');
		return result.toString();
	}

} //EquipmentTypeImpl
