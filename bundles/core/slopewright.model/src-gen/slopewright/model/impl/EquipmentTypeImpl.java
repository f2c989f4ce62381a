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

import slopewright.model.BrightnessLevel;
import slopewright.model.EquipmentType;
import slopewright.model.HandOrder;
import slopewright.model.MeasuredIntensity;
import slopewright.model.PlateSense;
import slopewright.model.PlateZero;
import slopewright.model.PrintedDescent;
import slopewright.model.SightHair;
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
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getPlateZero <em>Plate Zero</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getPlateSense <em>Plate Sense</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getPlateStepDeg <em>Plate Step Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getSlopeScaleStepDeg <em>Slope Scale Step Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getBubbleAccuracyMinutes <em>Bubble Accuracy Minutes</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getLowerHair <em>Lower Hair</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getUpperHair <em>Upper Hair</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getHandOrder <em>Hand Order</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getRecheckEveryH <em>Recheck Every H</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getStabilisedToDeg <em>Stabilised To Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getPrintedDescents <em>Printed Descents</em>}</li>
 *   <li>{@link slopewright.model.impl.EquipmentTypeImpl#getBrightnessLevels <em>Brightness Levels</em>}</li>
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
	 * The default value of the '{@link #getPlateZero() <em>Plate Zero</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlateZero()
	 * @generated
	 * @ordered
	 */
	protected static final PlateZero PLATE_ZERO_EDEFAULT = PlateZero.NOT_STATED;

	/**
	 * The cached value of the '{@link #getPlateZero() <em>Plate Zero</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlateZero()
	 * @generated
	 * @ordered
	 */
	protected PlateZero plateZero = PLATE_ZERO_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlateSense() <em>Plate Sense</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlateSense()
	 * @generated
	 * @ordered
	 */
	protected static final PlateSense PLATE_SENSE_EDEFAULT = PlateSense.NOT_STATED;

	/**
	 * The cached value of the '{@link #getPlateSense() <em>Plate Sense</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlateSense()
	 * @generated
	 * @ordered
	 */
	protected PlateSense plateSense = PLATE_SENSE_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlateStepDeg() <em>Plate Step Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlateStepDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double PLATE_STEP_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlateStepDeg() <em>Plate Step Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlateStepDeg()
	 * @generated
	 * @ordered
	 */
	protected Double plateStepDeg = PLATE_STEP_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getSlopeScaleStepDeg() <em>Slope Scale Step Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSlopeScaleStepDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double SLOPE_SCALE_STEP_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSlopeScaleStepDeg() <em>Slope Scale Step Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSlopeScaleStepDeg()
	 * @generated
	 * @ordered
	 */
	protected Double slopeScaleStepDeg = SLOPE_SCALE_STEP_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getBubbleAccuracyMinutes() <em>Bubble Accuracy Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBubbleAccuracyMinutes()
	 * @generated
	 * @ordered
	 */
	protected static final Double BUBBLE_ACCURACY_MINUTES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBubbleAccuracyMinutes() <em>Bubble Accuracy Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBubbleAccuracyMinutes()
	 * @generated
	 * @ordered
	 */
	protected Double bubbleAccuracyMinutes = BUBBLE_ACCURACY_MINUTES_EDEFAULT;

	/**
	 * The default value of the '{@link #getLowerHair() <em>Lower Hair</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLowerHair()
	 * @generated
	 * @ordered
	 */
	protected static final SightHair LOWER_HAIR_EDEFAULT = SightHair.NOT_STATED;

	/**
	 * The cached value of the '{@link #getLowerHair() <em>Lower Hair</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLowerHair()
	 * @generated
	 * @ordered
	 */
	protected SightHair lowerHair = LOWER_HAIR_EDEFAULT;

	/**
	 * The default value of the '{@link #getUpperHair() <em>Upper Hair</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUpperHair()
	 * @generated
	 * @ordered
	 */
	protected static final SightHair UPPER_HAIR_EDEFAULT = SightHair.NOT_STATED;

	/**
	 * The cached value of the '{@link #getUpperHair() <em>Upper Hair</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUpperHair()
	 * @generated
	 * @ordered
	 */
	protected SightHair upperHair = UPPER_HAIR_EDEFAULT;

	/**
	 * The default value of the '{@link #getHandOrder() <em>Hand Order</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHandOrder()
	 * @generated
	 * @ordered
	 */
	protected static final HandOrder HAND_ORDER_EDEFAULT = HandOrder.NOT_STATED;

	/**
	 * The cached value of the '{@link #getHandOrder() <em>Hand Order</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHandOrder()
	 * @generated
	 * @ordered
	 */
	protected HandOrder handOrder = HAND_ORDER_EDEFAULT;

	/**
	 * The default value of the '{@link #getRecheckEveryH() <em>Recheck Every H</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRecheckEveryH()
	 * @generated
	 * @ordered
	 */
	protected static final Double RECHECK_EVERY_H_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRecheckEveryH() <em>Recheck Every H</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRecheckEveryH()
	 * @generated
	 * @ordered
	 */
	protected Double recheckEveryH = RECHECK_EVERY_H_EDEFAULT;

	/**
	 * The default value of the '{@link #getStabilisedToDeg() <em>Stabilised To Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStabilisedToDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double STABILISED_TO_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStabilisedToDeg() <em>Stabilised To Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStabilisedToDeg()
	 * @generated
	 * @ordered
	 */
	protected Double stabilisedToDeg = STABILISED_TO_DEG_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPrintedDescents() <em>Printed Descents</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPrintedDescents()
	 * @generated
	 * @ordered
	 */
	protected EList<PrintedDescent> printedDescents;

	/**
	 * The cached value of the '{@link #getBrightnessLevels() <em>Brightness Levels</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBrightnessLevels()
	 * @generated
	 * @ordered
	 */
	protected EList<BrightnessLevel> brightnessLevels;

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
	public PlateZero getPlateZero() {
		return plateZero;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlateZero(PlateZero newPlateZero) {
		PlateZero oldPlateZero = plateZero;
		plateZero = newPlateZero == null ? PLATE_ZERO_EDEFAULT : newPlateZero;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__PLATE_ZERO, oldPlateZero, plateZero));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PlateSense getPlateSense() {
		return plateSense;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlateSense(PlateSense newPlateSense) {
		PlateSense oldPlateSense = plateSense;
		plateSense = newPlateSense == null ? PLATE_SENSE_EDEFAULT : newPlateSense;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__PLATE_SENSE, oldPlateSense, plateSense));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPlateStepDeg() {
		return plateStepDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlateStepDeg(Double newPlateStepDeg) {
		Double oldPlateStepDeg = plateStepDeg;
		plateStepDeg = newPlateStepDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__PLATE_STEP_DEG, oldPlateStepDeg, plateStepDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getSlopeScaleStepDeg() {
		return slopeScaleStepDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSlopeScaleStepDeg(Double newSlopeScaleStepDeg) {
		Double oldSlopeScaleStepDeg = slopeScaleStepDeg;
		slopeScaleStepDeg = newSlopeScaleStepDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__SLOPE_SCALE_STEP_DEG, oldSlopeScaleStepDeg, slopeScaleStepDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getBubbleAccuracyMinutes() {
		return bubbleAccuracyMinutes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBubbleAccuracyMinutes(Double newBubbleAccuracyMinutes) {
		Double oldBubbleAccuracyMinutes = bubbleAccuracyMinutes;
		bubbleAccuracyMinutes = newBubbleAccuracyMinutes;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__BUBBLE_ACCURACY_MINUTES, oldBubbleAccuracyMinutes, bubbleAccuracyMinutes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SightHair getLowerHair() {
		return lowerHair;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLowerHair(SightHair newLowerHair) {
		SightHair oldLowerHair = lowerHair;
		lowerHair = newLowerHair == null ? LOWER_HAIR_EDEFAULT : newLowerHair;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__LOWER_HAIR, oldLowerHair, lowerHair));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SightHair getUpperHair() {
		return upperHair;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUpperHair(SightHair newUpperHair) {
		SightHair oldUpperHair = upperHair;
		upperHair = newUpperHair == null ? UPPER_HAIR_EDEFAULT : newUpperHair;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__UPPER_HAIR, oldUpperHair, upperHair));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public HandOrder getHandOrder() {
		return handOrder;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHandOrder(HandOrder newHandOrder) {
		HandOrder oldHandOrder = handOrder;
		handOrder = newHandOrder == null ? HAND_ORDER_EDEFAULT : newHandOrder;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__HAND_ORDER, oldHandOrder, handOrder));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getRecheckEveryH() {
		return recheckEveryH;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRecheckEveryH(Double newRecheckEveryH) {
		Double oldRecheckEveryH = recheckEveryH;
		recheckEveryH = newRecheckEveryH;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__RECHECK_EVERY_H, oldRecheckEveryH, recheckEveryH));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getStabilisedToDeg() {
		return stabilisedToDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStabilisedToDeg(Double newStabilisedToDeg) {
		Double oldStabilisedToDeg = stabilisedToDeg;
		stabilisedToDeg = newStabilisedToDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.EQUIPMENT_TYPE__STABILISED_TO_DEG, oldStabilisedToDeg, stabilisedToDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<PrintedDescent> getPrintedDescents() {
		if (printedDescents == null) {
			printedDescents = new EObjectContainmentEList<PrintedDescent>(PrintedDescent.class, this, SlopewrightPackage.EQUIPMENT_TYPE__PRINTED_DESCENTS);
		}
		return printedDescents;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<BrightnessLevel> getBrightnessLevels() {
		if (brightnessLevels == null) {
			brightnessLevels = new EObjectContainmentEList<BrightnessLevel>(BrightnessLevel.class, this, SlopewrightPackage.EQUIPMENT_TYPE__BRIGHTNESS_LEVELS);
		}
		return brightnessLevels;
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
			case SlopewrightPackage.EQUIPMENT_TYPE__PRINTED_DESCENTS:
				return ((InternalEList<?>)getPrintedDescents()).basicRemove(otherEnd, msgs);
			case SlopewrightPackage.EQUIPMENT_TYPE__BRIGHTNESS_LEVELS:
				return ((InternalEList<?>)getBrightnessLevels()).basicRemove(otherEnd, msgs);
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
			case SlopewrightPackage.EQUIPMENT_TYPE__PLATE_ZERO:
				return getPlateZero();
			case SlopewrightPackage.EQUIPMENT_TYPE__PLATE_SENSE:
				return getPlateSense();
			case SlopewrightPackage.EQUIPMENT_TYPE__PLATE_STEP_DEG:
				return getPlateStepDeg();
			case SlopewrightPackage.EQUIPMENT_TYPE__SLOPE_SCALE_STEP_DEG:
				return getSlopeScaleStepDeg();
			case SlopewrightPackage.EQUIPMENT_TYPE__BUBBLE_ACCURACY_MINUTES:
				return getBubbleAccuracyMinutes();
			case SlopewrightPackage.EQUIPMENT_TYPE__LOWER_HAIR:
				return getLowerHair();
			case SlopewrightPackage.EQUIPMENT_TYPE__UPPER_HAIR:
				return getUpperHair();
			case SlopewrightPackage.EQUIPMENT_TYPE__HAND_ORDER:
				return getHandOrder();
			case SlopewrightPackage.EQUIPMENT_TYPE__RECHECK_EVERY_H:
				return getRecheckEveryH();
			case SlopewrightPackage.EQUIPMENT_TYPE__STABILISED_TO_DEG:
				return getStabilisedToDeg();
			case SlopewrightPackage.EQUIPMENT_TYPE__PRINTED_DESCENTS:
				return getPrintedDescents();
			case SlopewrightPackage.EQUIPMENT_TYPE__BRIGHTNESS_LEVELS:
				return getBrightnessLevels();
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
			case SlopewrightPackage.EQUIPMENT_TYPE__PLATE_ZERO:
				setPlateZero((PlateZero)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__PLATE_SENSE:
				setPlateSense((PlateSense)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__PLATE_STEP_DEG:
				setPlateStepDeg((Double)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__SLOPE_SCALE_STEP_DEG:
				setSlopeScaleStepDeg((Double)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__BUBBLE_ACCURACY_MINUTES:
				setBubbleAccuracyMinutes((Double)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__LOWER_HAIR:
				setLowerHair((SightHair)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__UPPER_HAIR:
				setUpperHair((SightHair)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__HAND_ORDER:
				setHandOrder((HandOrder)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__RECHECK_EVERY_H:
				setRecheckEveryH((Double)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__STABILISED_TO_DEG:
				setStabilisedToDeg((Double)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__PRINTED_DESCENTS:
				getPrintedDescents().clear();
				getPrintedDescents().addAll((Collection<? extends PrintedDescent>)newValue);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__BRIGHTNESS_LEVELS:
				getBrightnessLevels().clear();
				getBrightnessLevels().addAll((Collection<? extends BrightnessLevel>)newValue);
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
			case SlopewrightPackage.EQUIPMENT_TYPE__PLATE_ZERO:
				setPlateZero(PLATE_ZERO_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__PLATE_SENSE:
				setPlateSense(PLATE_SENSE_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__PLATE_STEP_DEG:
				setPlateStepDeg(PLATE_STEP_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__SLOPE_SCALE_STEP_DEG:
				setSlopeScaleStepDeg(SLOPE_SCALE_STEP_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__BUBBLE_ACCURACY_MINUTES:
				setBubbleAccuracyMinutes(BUBBLE_ACCURACY_MINUTES_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__LOWER_HAIR:
				setLowerHair(LOWER_HAIR_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__UPPER_HAIR:
				setUpperHair(UPPER_HAIR_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__HAND_ORDER:
				setHandOrder(HAND_ORDER_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__RECHECK_EVERY_H:
				setRecheckEveryH(RECHECK_EVERY_H_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__STABILISED_TO_DEG:
				setStabilisedToDeg(STABILISED_TO_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__PRINTED_DESCENTS:
				getPrintedDescents().clear();
				return;
			case SlopewrightPackage.EQUIPMENT_TYPE__BRIGHTNESS_LEVELS:
				getBrightnessLevels().clear();
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
			case SlopewrightPackage.EQUIPMENT_TYPE__PLATE_ZERO:
				return plateZero != PLATE_ZERO_EDEFAULT;
			case SlopewrightPackage.EQUIPMENT_TYPE__PLATE_SENSE:
				return plateSense != PLATE_SENSE_EDEFAULT;
			case SlopewrightPackage.EQUIPMENT_TYPE__PLATE_STEP_DEG:
				return PLATE_STEP_DEG_EDEFAULT == null ? plateStepDeg != null : !PLATE_STEP_DEG_EDEFAULT.equals(plateStepDeg);
			case SlopewrightPackage.EQUIPMENT_TYPE__SLOPE_SCALE_STEP_DEG:
				return SLOPE_SCALE_STEP_DEG_EDEFAULT == null ? slopeScaleStepDeg != null : !SLOPE_SCALE_STEP_DEG_EDEFAULT.equals(slopeScaleStepDeg);
			case SlopewrightPackage.EQUIPMENT_TYPE__BUBBLE_ACCURACY_MINUTES:
				return BUBBLE_ACCURACY_MINUTES_EDEFAULT == null ? bubbleAccuracyMinutes != null : !BUBBLE_ACCURACY_MINUTES_EDEFAULT.equals(bubbleAccuracyMinutes);
			case SlopewrightPackage.EQUIPMENT_TYPE__LOWER_HAIR:
				return lowerHair != LOWER_HAIR_EDEFAULT;
			case SlopewrightPackage.EQUIPMENT_TYPE__UPPER_HAIR:
				return upperHair != UPPER_HAIR_EDEFAULT;
			case SlopewrightPackage.EQUIPMENT_TYPE__HAND_ORDER:
				return handOrder != HAND_ORDER_EDEFAULT;
			case SlopewrightPackage.EQUIPMENT_TYPE__RECHECK_EVERY_H:
				return RECHECK_EVERY_H_EDEFAULT == null ? recheckEveryH != null : !RECHECK_EVERY_H_EDEFAULT.equals(recheckEveryH);
			case SlopewrightPackage.EQUIPMENT_TYPE__STABILISED_TO_DEG:
				return STABILISED_TO_DEG_EDEFAULT == null ? stabilisedToDeg != null : !STABILISED_TO_DEG_EDEFAULT.equals(stabilisedToDeg);
			case SlopewrightPackage.EQUIPMENT_TYPE__PRINTED_DESCENTS:
				return printedDescents != null && !printedDescents.isEmpty();
			case SlopewrightPackage.EQUIPMENT_TYPE__BRIGHTNESS_LEVELS:
				return brightnessLevels != null && !brightnessLevels.isEmpty();
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
		result.append(", plateZero: ");
		result.append(plateZero);
		result.append(", plateSense: ");
		result.append(plateSense);
		result.append(", plateStepDeg: ");
		result.append(plateStepDeg);
		result.append(", slopeScaleStepDeg: ");
		result.append(slopeScaleStepDeg);
		result.append(", bubbleAccuracyMinutes: ");
		result.append(bubbleAccuracyMinutes);
		result.append(", lowerHair: ");
		result.append(lowerHair);
		result.append(", upperHair: ");
		result.append(upperHair);
		result.append(", handOrder: ");
		result.append(handOrder);
		result.append(", recheckEveryH: ");
		result.append(recheckEveryH);
		result.append(", stabilisedToDeg: ");
		result.append(stabilisedToDeg);
		result.append(')');
		return result.toString();
	}

} //EquipmentTypeImpl
