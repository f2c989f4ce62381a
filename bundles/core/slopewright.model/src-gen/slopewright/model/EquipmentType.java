/**
 */
package slopewright.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Equipment Type</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.EquipmentType#getFamilyKey <em>Family Key</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getBeamWidthDeg <em>Beam Width Deg</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getTransitionMinutes <em>Transition Minutes</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getMinSettingDeg <em>Min Setting Deg</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getMaxSettingDeg <em>Max Setting Deg</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getIntensityCd <em>Intensity Cd</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getLampPowerW <em>Lamp Power W</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getLampsPerUnit <em>Lamps Per Unit</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getSupply <em>Supply</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getMinVoltageV <em>Min Voltage V</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getMaxVoltageV <em>Max Voltage V</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getMassKg <em>Mass Kg</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getHeightAboveGroundM <em>Height Above Ground M</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getSectors <em>Sectors</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getWhiteIntensityCd <em>White Intensity Cd</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getRedChromaticityY <em>Red Chromaticity Y</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getBrightnessSteps <em>Brightness Steps</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getNightStepPercent <em>Night Step Percent</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getTiltCutOffDeg <em>Tilt Cut Off Deg</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getFlashRateHz <em>Flash Rate Hz</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getFlashOnPercent <em>Flash On Percent</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getModulationPercent <em>Modulation Percent</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getDataSource <em>Data Source</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getIntensities <em>Intensities</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getPlateZero <em>Plate Zero</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getPlateSense <em>Plate Sense</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getPlateStepDeg <em>Plate Step Deg</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getSlopeScaleStepDeg <em>Slope Scale Step Deg</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getBubbleAccuracyMinutes <em>Bubble Accuracy Minutes</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getLowerHair <em>Lower Hair</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getUpperHair <em>Upper Hair</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getHandOrder <em>Hand Order</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getRecheckEveryH <em>Recheck Every H</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getStabilisedToDeg <em>Stabilised To Deg</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getPrintedDescents <em>Printed Descents</em>}</li>
 *   <li>{@link slopewright.model.EquipmentType#getBrightnessLevels <em>Brightness Levels</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getEquipmentType()
 * @model
 * @generated
 */
public interface EquipmentType extends Named {
	/**
	 * Returns the value of the '<em><b>Family Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Family Key</em>' attribute.
	 * @see #setFamilyKey(String)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_FamilyKey()
	 * @model
	 * @generated
	 */
	String getFamilyKey();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getFamilyKey <em>Family Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Family Key</em>' attribute.
	 * @see #getFamilyKey()
	 * @generated
	 */
	void setFamilyKey(String value);

	/**
	 * Returns the value of the '<em><b>Beam Width Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Beam Width Deg</em>' attribute.
	 * @see #setBeamWidthDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_BeamWidthDeg()
	 * @model
	 * @generated
	 */
	Double getBeamWidthDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getBeamWidthDeg <em>Beam Width Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Beam Width Deg</em>' attribute.
	 * @see #getBeamWidthDeg()
	 * @generated
	 */
	void setBeamWidthDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Transition Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Transition Minutes</em>' attribute.
	 * @see #setTransitionMinutes(Double)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_TransitionMinutes()
	 * @model
	 * @generated
	 */
	Double getTransitionMinutes();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getTransitionMinutes <em>Transition Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Transition Minutes</em>' attribute.
	 * @see #getTransitionMinutes()
	 * @generated
	 */
	void setTransitionMinutes(Double value);

	/**
	 * Returns the value of the '<em><b>Min Setting Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Min Setting Deg</em>' attribute.
	 * @see #setMinSettingDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_MinSettingDeg()
	 * @model
	 * @generated
	 */
	Double getMinSettingDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getMinSettingDeg <em>Min Setting Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Min Setting Deg</em>' attribute.
	 * @see #getMinSettingDeg()
	 * @generated
	 */
	void setMinSettingDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Max Setting Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Max Setting Deg</em>' attribute.
	 * @see #setMaxSettingDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_MaxSettingDeg()
	 * @model
	 * @generated
	 */
	Double getMaxSettingDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getMaxSettingDeg <em>Max Setting Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Max Setting Deg</em>' attribute.
	 * @see #getMaxSettingDeg()
	 * @generated
	 */
	void setMaxSettingDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Intensity Cd</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Intensity Cd</em>' attribute.
	 * @see #setIntensityCd(Double)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_IntensityCd()
	 * @model
	 * @generated
	 */
	Double getIntensityCd();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getIntensityCd <em>Intensity Cd</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Intensity Cd</em>' attribute.
	 * @see #getIntensityCd()
	 * @generated
	 */
	void setIntensityCd(Double value);

	/**
	 * Returns the value of the '<em><b>Lamp Power W</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lamp Power W</em>' attribute.
	 * @see #setLampPowerW(Double)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_LampPowerW()
	 * @model
	 * @generated
	 */
	Double getLampPowerW();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getLampPowerW <em>Lamp Power W</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lamp Power W</em>' attribute.
	 * @see #getLampPowerW()
	 * @generated
	 */
	void setLampPowerW(Double value);

	/**
	 * Returns the value of the '<em><b>Lamps Per Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lamps Per Unit</em>' attribute.
	 * @see #setLampsPerUnit(Integer)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_LampsPerUnit()
	 * @model
	 * @generated
	 */
	Integer getLampsPerUnit();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getLampsPerUnit <em>Lamps Per Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lamps Per Unit</em>' attribute.
	 * @see #getLampsPerUnit()
	 * @generated
	 */
	void setLampsPerUnit(Integer value);

	/**
	 * Returns the value of the '<em><b>Supply</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Supply</em>' attribute.
	 * @see #setSupply(String)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_Supply()
	 * @model
	 * @generated
	 */
	String getSupply();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getSupply <em>Supply</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Supply</em>' attribute.
	 * @see #getSupply()
	 * @generated
	 */
	void setSupply(String value);

	/**
	 * Returns the value of the '<em><b>Min Voltage V</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Min Voltage V</em>' attribute.
	 * @see #setMinVoltageV(Double)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_MinVoltageV()
	 * @model
	 * @generated
	 */
	Double getMinVoltageV();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getMinVoltageV <em>Min Voltage V</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Min Voltage V</em>' attribute.
	 * @see #getMinVoltageV()
	 * @generated
	 */
	void setMinVoltageV(Double value);

	/**
	 * Returns the value of the '<em><b>Max Voltage V</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Max Voltage V</em>' attribute.
	 * @see #setMaxVoltageV(Double)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_MaxVoltageV()
	 * @model
	 * @generated
	 */
	Double getMaxVoltageV();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getMaxVoltageV <em>Max Voltage V</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Max Voltage V</em>' attribute.
	 * @see #getMaxVoltageV()
	 * @generated
	 */
	void setMaxVoltageV(Double value);

	/**
	 * Returns the value of the '<em><b>Mass Kg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Mass Kg</em>' attribute.
	 * @see #setMassKg(Double)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_MassKg()
	 * @model
	 * @generated
	 */
	Double getMassKg();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getMassKg <em>Mass Kg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mass Kg</em>' attribute.
	 * @see #getMassKg()
	 * @generated
	 */
	void setMassKg(Double value);

	/**
	 * Returns the value of the '<em><b>Height Above Ground M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Height Above Ground M</em>' attribute.
	 * @see #setHeightAboveGroundM(Double)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_HeightAboveGroundM()
	 * @model
	 * @generated
	 */
	Double getHeightAboveGroundM();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getHeightAboveGroundM <em>Height Above Ground M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height Above Ground M</em>' attribute.
	 * @see #getHeightAboveGroundM()
	 * @generated
	 */
	void setHeightAboveGroundM(Double value);

	/**
	 * Returns the value of the '<em><b>Sectors</b></em>' containment reference list.
	 * The list contents are of type {@link slopewright.model.Transition}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sectors</em>' containment reference list.
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_Sectors()
	 * @model containment="true"
	 * @generated
	 */
	EList<Transition> getSectors();

	/**
	 * Returns the value of the '<em><b>White Intensity Cd</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>White Intensity Cd</em>' attribute.
	 * @see #setWhiteIntensityCd(Double)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_WhiteIntensityCd()
	 * @model
	 * @generated
	 */
	Double getWhiteIntensityCd();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getWhiteIntensityCd <em>White Intensity Cd</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>White Intensity Cd</em>' attribute.
	 * @see #getWhiteIntensityCd()
	 * @generated
	 */
	void setWhiteIntensityCd(Double value);

	/**
	 * Returns the value of the '<em><b>Red Chromaticity Y</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Red Chromaticity Y</em>' attribute.
	 * @see #setRedChromaticityY(Double)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_RedChromaticityY()
	 * @model
	 * @generated
	 */
	Double getRedChromaticityY();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getRedChromaticityY <em>Red Chromaticity Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Red Chromaticity Y</em>' attribute.
	 * @see #getRedChromaticityY()
	 * @generated
	 */
	void setRedChromaticityY(Double value);

	/**
	 * Returns the value of the '<em><b>Brightness Steps</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Brightness Steps</em>' attribute.
	 * @see #setBrightnessSteps(Integer)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_BrightnessSteps()
	 * @model
	 * @generated
	 */
	Integer getBrightnessSteps();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getBrightnessSteps <em>Brightness Steps</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Brightness Steps</em>' attribute.
	 * @see #getBrightnessSteps()
	 * @generated
	 */
	void setBrightnessSteps(Integer value);

	/**
	 * Returns the value of the '<em><b>Night Step Percent</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Night Step Percent</em>' attribute.
	 * @see #setNightStepPercent(Double)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_NightStepPercent()
	 * @model
	 * @generated
	 */
	Double getNightStepPercent();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getNightStepPercent <em>Night Step Percent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Night Step Percent</em>' attribute.
	 * @see #getNightStepPercent()
	 * @generated
	 */
	void setNightStepPercent(Double value);

	/**
	 * Returns the value of the '<em><b>Tilt Cut Off Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Tilt Cut Off Deg</em>' attribute.
	 * @see #setTiltCutOffDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_TiltCutOffDeg()
	 * @model
	 * @generated
	 */
	Double getTiltCutOffDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getTiltCutOffDeg <em>Tilt Cut Off Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tilt Cut Off Deg</em>' attribute.
	 * @see #getTiltCutOffDeg()
	 * @generated
	 */
	void setTiltCutOffDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Flash Rate Hz</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Flash Rate Hz</em>' attribute.
	 * @see #setFlashRateHz(Double)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_FlashRateHz()
	 * @model
	 * @generated
	 */
	Double getFlashRateHz();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getFlashRateHz <em>Flash Rate Hz</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Flash Rate Hz</em>' attribute.
	 * @see #getFlashRateHz()
	 * @generated
	 */
	void setFlashRateHz(Double value);

	/**
	 * Returns the value of the '<em><b>Flash On Percent</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Flash On Percent</em>' attribute.
	 * @see #setFlashOnPercent(Double)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_FlashOnPercent()
	 * @model
	 * @generated
	 */
	Double getFlashOnPercent();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getFlashOnPercent <em>Flash On Percent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Flash On Percent</em>' attribute.
	 * @see #getFlashOnPercent()
	 * @generated
	 */
	void setFlashOnPercent(Double value);

	/**
	 * Returns the value of the '<em><b>Modulation Percent</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Modulation Percent</em>' attribute.
	 * @see #setModulationPercent(Double)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_ModulationPercent()
	 * @model
	 * @generated
	 */
	Double getModulationPercent();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getModulationPercent <em>Modulation Percent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Modulation Percent</em>' attribute.
	 * @see #getModulationPercent()
	 * @generated
	 */
	void setModulationPercent(Double value);

	/**
	 * Returns the value of the '<em><b>Data Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Data Source</em>' attribute.
	 * @see #setDataSource(String)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_DataSource()
	 * @model
	 * @generated
	 */
	String getDataSource();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getDataSource <em>Data Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Data Source</em>' attribute.
	 * @see #getDataSource()
	 * @generated
	 */
	void setDataSource(String value);

	/**
	 * Returns the value of the '<em><b>Intensities</b></em>' containment reference list.
	 * The list contents are of type {@link slopewright.model.MeasuredIntensity}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Intensities</em>' containment reference list.
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_Intensities()
	 * @model containment="true"
	 * @generated
	 */
	EList<MeasuredIntensity> getIntensities();

	/**
	 * Returns the value of the '<em><b>Plate Zero</b></em>' attribute.
	 * The literals are from the enumeration {@link slopewright.model.PlateZero}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Plate Zero</em>' attribute.
	 * @see slopewright.model.PlateZero
	 * @see #setPlateZero(PlateZero)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_PlateZero()
	 * @model
	 * @generated
	 */
	PlateZero getPlateZero();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getPlateZero <em>Plate Zero</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Plate Zero</em>' attribute.
	 * @see slopewright.model.PlateZero
	 * @see #getPlateZero()
	 * @generated
	 */
	void setPlateZero(PlateZero value);

	/**
	 * Returns the value of the '<em><b>Plate Sense</b></em>' attribute.
	 * The literals are from the enumeration {@link slopewright.model.PlateSense}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Plate Sense</em>' attribute.
	 * @see slopewright.model.PlateSense
	 * @see #setPlateSense(PlateSense)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_PlateSense()
	 * @model
	 * @generated
	 */
	PlateSense getPlateSense();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getPlateSense <em>Plate Sense</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Plate Sense</em>' attribute.
	 * @see slopewright.model.PlateSense
	 * @see #getPlateSense()
	 * @generated
	 */
	void setPlateSense(PlateSense value);

	/**
	 * Returns the value of the '<em><b>Plate Step Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Plate Step Deg</em>' attribute.
	 * @see #setPlateStepDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_PlateStepDeg()
	 * @model
	 * @generated
	 */
	Double getPlateStepDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getPlateStepDeg <em>Plate Step Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Plate Step Deg</em>' attribute.
	 * @see #getPlateStepDeg()
	 * @generated
	 */
	void setPlateStepDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Slope Scale Step Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Slope Scale Step Deg</em>' attribute.
	 * @see #setSlopeScaleStepDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_SlopeScaleStepDeg()
	 * @model
	 * @generated
	 */
	Double getSlopeScaleStepDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getSlopeScaleStepDeg <em>Slope Scale Step Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Slope Scale Step Deg</em>' attribute.
	 * @see #getSlopeScaleStepDeg()
	 * @generated
	 */
	void setSlopeScaleStepDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Bubble Accuracy Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bubble Accuracy Minutes</em>' attribute.
	 * @see #setBubbleAccuracyMinutes(Double)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_BubbleAccuracyMinutes()
	 * @model
	 * @generated
	 */
	Double getBubbleAccuracyMinutes();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getBubbleAccuracyMinutes <em>Bubble Accuracy Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bubble Accuracy Minutes</em>' attribute.
	 * @see #getBubbleAccuracyMinutes()
	 * @generated
	 */
	void setBubbleAccuracyMinutes(Double value);

	/**
	 * Returns the value of the '<em><b>Lower Hair</b></em>' attribute.
	 * The literals are from the enumeration {@link slopewright.model.SightHair}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lower Hair</em>' attribute.
	 * @see slopewright.model.SightHair
	 * @see #setLowerHair(SightHair)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_LowerHair()
	 * @model
	 * @generated
	 */
	SightHair getLowerHair();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getLowerHair <em>Lower Hair</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lower Hair</em>' attribute.
	 * @see slopewright.model.SightHair
	 * @see #getLowerHair()
	 * @generated
	 */
	void setLowerHair(SightHair value);

	/**
	 * Returns the value of the '<em><b>Upper Hair</b></em>' attribute.
	 * The literals are from the enumeration {@link slopewright.model.SightHair}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Upper Hair</em>' attribute.
	 * @see slopewright.model.SightHair
	 * @see #setUpperHair(SightHair)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_UpperHair()
	 * @model
	 * @generated
	 */
	SightHair getUpperHair();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getUpperHair <em>Upper Hair</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Upper Hair</em>' attribute.
	 * @see slopewright.model.SightHair
	 * @see #getUpperHair()
	 * @generated
	 */
	void setUpperHair(SightHair value);

	/**
	 * Returns the value of the '<em><b>Hand Order</b></em>' attribute.
	 * The literals are from the enumeration {@link slopewright.model.HandOrder}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Hand Order</em>' attribute.
	 * @see slopewright.model.HandOrder
	 * @see #setHandOrder(HandOrder)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_HandOrder()
	 * @model
	 * @generated
	 */
	HandOrder getHandOrder();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getHandOrder <em>Hand Order</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Hand Order</em>' attribute.
	 * @see slopewright.model.HandOrder
	 * @see #getHandOrder()
	 * @generated
	 */
	void setHandOrder(HandOrder value);

	/**
	 * Returns the value of the '<em><b>Recheck Every H</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Recheck Every H</em>' attribute.
	 * @see #setRecheckEveryH(Double)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_RecheckEveryH()
	 * @model
	 * @generated
	 */
	Double getRecheckEveryH();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getRecheckEveryH <em>Recheck Every H</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Recheck Every H</em>' attribute.
	 * @see #getRecheckEveryH()
	 * @generated
	 */
	void setRecheckEveryH(Double value);

	/**
	 * Returns the value of the '<em><b>Stabilised To Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Stabilised To Deg</em>' attribute.
	 * @see #setStabilisedToDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_StabilisedToDeg()
	 * @model
	 * @generated
	 */
	Double getStabilisedToDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.EquipmentType#getStabilisedToDeg <em>Stabilised To Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stabilised To Deg</em>' attribute.
	 * @see #getStabilisedToDeg()
	 * @generated
	 */
	void setStabilisedToDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Printed Descents</b></em>' containment reference list.
	 * The list contents are of type {@link slopewright.model.PrintedDescent}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Printed Descents</em>' containment reference list.
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_PrintedDescents()
	 * @model containment="true"
	 * @generated
	 */
	EList<PrintedDescent> getPrintedDescents();

	/**
	 * Returns the value of the '<em><b>Brightness Levels</b></em>' containment reference list.
	 * The list contents are of type {@link slopewright.model.BrightnessLevel}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Brightness Levels</em>' containment reference list.
	 * @see slopewright.model.SlopewrightPackage#getEquipmentType_BrightnessLevels()
	 * @model containment="true"
	 * @generated
	 */
	EList<BrightnessLevel> getBrightnessLevels();

} // EquipmentType
