/**
 */
package slopewright.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Approach Aid</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.ApproachAid#getFamilyKey <em>Family Key</em>}</li>
 *   <li>{@link slopewright.model.ApproachAid#getRuleSetKey <em>Rule Set Key</em>}</li>
 *   <li>{@link slopewright.model.ApproachAid#getSide <em>Side</em>}</li>
 *   <li>{@link slopewright.model.ApproachAid#getSlopeDeg <em>Slope Deg</em>}</li>
 *   <li>{@link slopewright.model.ApproachAid#getSettings <em>Settings</em>}</li>
 *   <li>{@link slopewright.model.ApproachAid#getClearance <em>Clearance</em>}</li>
 *   <li>{@link slopewright.model.ApproachAid#getChosenClearanceM <em>Chosen Clearance M</em>}</li>
 *   <li>{@link slopewright.model.ApproachAid#getTargetEyeHeightM <em>Target Eye Height M</em>}</li>
 *   <li>{@link slopewright.model.ApproachAid#getHeightGroup <em>Height Group</em>}</li>
 *   <li>{@link slopewright.model.ApproachAid#getAxisTurnDeg <em>Axis Turn Deg</em>}</li>
 *   <li>{@link slopewright.model.ApproachAid#getUnshiftedDistanceM <em>Unshifted Distance M</em>}</li>
 *   <li>{@link slopewright.model.ApproachAid#getUnshiftedDistanceReason <em>Unshifted Distance Reason</em>}</li>
 *   <li>{@link slopewright.model.ApproachAid#getLevelAccuracyM <em>Level Accuracy M</em>}</li>
 *   <li>{@link slopewright.model.ApproachAid#getBeamLeftLimitDeg <em>Beam Left Limit Deg</em>}</li>
 *   <li>{@link slopewright.model.ApproachAid#getBeamRightLimitDeg <em>Beam Right Limit Deg</em>}</li>
 *   <li>{@link slopewright.model.ApproachAid#getUnitCount <em>Unit Count</em>}</li>
 *   <li>{@link slopewright.model.ApproachAid#getEquipment <em>Equipment</em>}</li>
 *   <li>{@link slopewright.model.ApproachAid#getPortable <em>Portable</em>}</li>
 *   <li>{@link slopewright.model.ApproachAid#getGroundSpeedKt <em>Ground Speed Kt</em>}</li>
 *   <li>{@link slopewright.model.ApproachAid#getAirSpeedKt <em>Air Speed Kt</em>}</li>
 *   <li>{@link slopewright.model.ApproachAid#getWindKt <em>Wind Kt</em>}</li>
 *   <li>{@link slopewright.model.ApproachAid#getDescentFtmin <em>Descent Ftmin</em>}</li>
 *   <li>{@link slopewright.model.ApproachAid#getUnits <em>Units</em>}</li>
 *   <li>{@link slopewright.model.ApproachAid#getInspections <em>Inspections</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getApproachAid()
 * @model
 * @generated
 */
public interface ApproachAid extends Named {
	/**
	 * Returns the value of the '<em><b>Family Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Family Key</em>' attribute.
	 * @see #setFamilyKey(String)
	 * @see slopewright.model.SlopewrightPackage#getApproachAid_FamilyKey()
	 * @model
	 * @generated
	 */
	String getFamilyKey();

	/**
	 * Sets the value of the '{@link slopewright.model.ApproachAid#getFamilyKey <em>Family Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Family Key</em>' attribute.
	 * @see #getFamilyKey()
	 * @generated
	 */
	void setFamilyKey(String value);

	/**
	 * Returns the value of the '<em><b>Rule Set Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rule Set Key</em>' attribute.
	 * @see #setRuleSetKey(String)
	 * @see slopewright.model.SlopewrightPackage#getApproachAid_RuleSetKey()
	 * @model
	 * @generated
	 */
	String getRuleSetKey();

	/**
	 * Sets the value of the '{@link slopewright.model.ApproachAid#getRuleSetKey <em>Rule Set Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rule Set Key</em>' attribute.
	 * @see #getRuleSetKey()
	 * @generated
	 */
	void setRuleSetKey(String value);

	/**
	 * Returns the value of the '<em><b>Side</b></em>' attribute.
	 * The literals are from the enumeration {@link slopewright.model.AidSide}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Side</em>' attribute.
	 * @see slopewright.model.AidSide
	 * @see #setSide(AidSide)
	 * @see slopewright.model.SlopewrightPackage#getApproachAid_Side()
	 * @model
	 * @generated
	 */
	AidSide getSide();

	/**
	 * Sets the value of the '{@link slopewright.model.ApproachAid#getSide <em>Side</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Side</em>' attribute.
	 * @see slopewright.model.AidSide
	 * @see #getSide()
	 * @generated
	 */
	void setSide(AidSide value);

	/**
	 * Returns the value of the '<em><b>Slope Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Slope Deg</em>' attribute.
	 * @see #setSlopeDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getApproachAid_SlopeDeg()
	 * @model
	 * @generated
	 */
	Double getSlopeDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.ApproachAid#getSlopeDeg <em>Slope Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Slope Deg</em>' attribute.
	 * @see #getSlopeDeg()
	 * @generated
	 */
	void setSlopeDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Settings</b></em>' attribute.
	 * The literals are from the enumeration {@link slopewright.model.SettingsForm}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Settings</em>' attribute.
	 * @see slopewright.model.SettingsForm
	 * @see #setSettings(SettingsForm)
	 * @see slopewright.model.SlopewrightPackage#getApproachAid_Settings()
	 * @model
	 * @generated
	 */
	SettingsForm getSettings();

	/**
	 * Sets the value of the '{@link slopewright.model.ApproachAid#getSettings <em>Settings</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Settings</em>' attribute.
	 * @see slopewright.model.SettingsForm
	 * @see #getSettings()
	 * @generated
	 */
	void setSettings(SettingsForm value);

	/**
	 * Returns the value of the '<em><b>Clearance</b></em>' attribute.
	 * The literals are from the enumeration {@link slopewright.model.ClearanceChoice}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Clearance</em>' attribute.
	 * @see slopewright.model.ClearanceChoice
	 * @see #setClearance(ClearanceChoice)
	 * @see slopewright.model.SlopewrightPackage#getApproachAid_Clearance()
	 * @model
	 * @generated
	 */
	ClearanceChoice getClearance();

	/**
	 * Sets the value of the '{@link slopewright.model.ApproachAid#getClearance <em>Clearance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Clearance</em>' attribute.
	 * @see slopewright.model.ClearanceChoice
	 * @see #getClearance()
	 * @generated
	 */
	void setClearance(ClearanceChoice value);

	/**
	 * Returns the value of the '<em><b>Chosen Clearance M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Chosen Clearance M</em>' attribute.
	 * @see #setChosenClearanceM(Double)
	 * @see slopewright.model.SlopewrightPackage#getApproachAid_ChosenClearanceM()
	 * @model
	 * @generated
	 */
	Double getChosenClearanceM();

	/**
	 * Sets the value of the '{@link slopewright.model.ApproachAid#getChosenClearanceM <em>Chosen Clearance M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Chosen Clearance M</em>' attribute.
	 * @see #getChosenClearanceM()
	 * @generated
	 */
	void setChosenClearanceM(Double value);

	/**
	 * Returns the value of the '<em><b>Target Eye Height M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Target Eye Height M</em>' attribute.
	 * @see #setTargetEyeHeightM(Double)
	 * @see slopewright.model.SlopewrightPackage#getApproachAid_TargetEyeHeightM()
	 * @model
	 * @generated
	 */
	Double getTargetEyeHeightM();

	/**
	 * Sets the value of the '{@link slopewright.model.ApproachAid#getTargetEyeHeightM <em>Target Eye Height M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Target Eye Height M</em>' attribute.
	 * @see #getTargetEyeHeightM()
	 * @generated
	 */
	void setTargetEyeHeightM(Double value);

	/**
	 * Returns the value of the '<em><b>Height Group</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Height Group</em>' attribute.
	 * @see #setHeightGroup(Integer)
	 * @see slopewright.model.SlopewrightPackage#getApproachAid_HeightGroup()
	 * @model
	 * @generated
	 */
	Integer getHeightGroup();

	/**
	 * Sets the value of the '{@link slopewright.model.ApproachAid#getHeightGroup <em>Height Group</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height Group</em>' attribute.
	 * @see #getHeightGroup()
	 * @generated
	 */
	void setHeightGroup(Integer value);

	/**
	 * Returns the value of the '<em><b>Axis Turn Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Axis Turn Deg</em>' attribute.
	 * @see #setAxisTurnDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getApproachAid_AxisTurnDeg()
	 * @model
	 * @generated
	 */
	Double getAxisTurnDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.ApproachAid#getAxisTurnDeg <em>Axis Turn Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Axis Turn Deg</em>' attribute.
	 * @see #getAxisTurnDeg()
	 * @generated
	 */
	void setAxisTurnDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Unshifted Distance M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Unshifted Distance M</em>' attribute.
	 * @see #setUnshiftedDistanceM(Double)
	 * @see slopewright.model.SlopewrightPackage#getApproachAid_UnshiftedDistanceM()
	 * @model
	 * @generated
	 */
	Double getUnshiftedDistanceM();

	/**
	 * Sets the value of the '{@link slopewright.model.ApproachAid#getUnshiftedDistanceM <em>Unshifted Distance M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unshifted Distance M</em>' attribute.
	 * @see #getUnshiftedDistanceM()
	 * @generated
	 */
	void setUnshiftedDistanceM(Double value);

	/**
	 * Returns the value of the '<em><b>Unshifted Distance Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Unshifted Distance Reason</em>' attribute.
	 * @see #setUnshiftedDistanceReason(String)
	 * @see slopewright.model.SlopewrightPackage#getApproachAid_UnshiftedDistanceReason()
	 * @model
	 * @generated
	 */
	String getUnshiftedDistanceReason();

	/**
	 * Sets the value of the '{@link slopewright.model.ApproachAid#getUnshiftedDistanceReason <em>Unshifted Distance Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unshifted Distance Reason</em>' attribute.
	 * @see #getUnshiftedDistanceReason()
	 * @generated
	 */
	void setUnshiftedDistanceReason(String value);

	/**
	 * Returns the value of the '<em><b>Level Accuracy M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Level Accuracy M</em>' attribute.
	 * @see #setLevelAccuracyM(Double)
	 * @see slopewright.model.SlopewrightPackage#getApproachAid_LevelAccuracyM()
	 * @model
	 * @generated
	 */
	Double getLevelAccuracyM();

	/**
	 * Sets the value of the '{@link slopewright.model.ApproachAid#getLevelAccuracyM <em>Level Accuracy M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Level Accuracy M</em>' attribute.
	 * @see #getLevelAccuracyM()
	 * @generated
	 */
	void setLevelAccuracyM(Double value);

	/**
	 * Returns the value of the '<em><b>Beam Left Limit Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Beam Left Limit Deg</em>' attribute.
	 * @see #setBeamLeftLimitDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getApproachAid_BeamLeftLimitDeg()
	 * @model
	 * @generated
	 */
	Double getBeamLeftLimitDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.ApproachAid#getBeamLeftLimitDeg <em>Beam Left Limit Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Beam Left Limit Deg</em>' attribute.
	 * @see #getBeamLeftLimitDeg()
	 * @generated
	 */
	void setBeamLeftLimitDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Beam Right Limit Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Beam Right Limit Deg</em>' attribute.
	 * @see #setBeamRightLimitDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getApproachAid_BeamRightLimitDeg()
	 * @model
	 * @generated
	 */
	Double getBeamRightLimitDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.ApproachAid#getBeamRightLimitDeg <em>Beam Right Limit Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Beam Right Limit Deg</em>' attribute.
	 * @see #getBeamRightLimitDeg()
	 * @generated
	 */
	void setBeamRightLimitDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Unit Count</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Unit Count</em>' attribute.
	 * @see #setUnitCount(Integer)
	 * @see slopewright.model.SlopewrightPackage#getApproachAid_UnitCount()
	 * @model
	 * @generated
	 */
	Integer getUnitCount();

	/**
	 * Sets the value of the '{@link slopewright.model.ApproachAid#getUnitCount <em>Unit Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unit Count</em>' attribute.
	 * @see #getUnitCount()
	 * @generated
	 */
	void setUnitCount(Integer value);

	/**
	 * Returns the value of the '<em><b>Equipment</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Equipment</em>' reference.
	 * @see #setEquipment(EquipmentType)
	 * @see slopewright.model.SlopewrightPackage#getApproachAid_Equipment()
	 * @model
	 * @generated
	 */
	EquipmentType getEquipment();

	/**
	 * Sets the value of the '{@link slopewright.model.ApproachAid#getEquipment <em>Equipment</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Equipment</em>' reference.
	 * @see #getEquipment()
	 * @generated
	 */
	void setEquipment(EquipmentType value);

	/**
	 * Returns the value of the '<em><b>Portable</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Portable</em>' attribute.
	 * @see #setPortable(Boolean)
	 * @see slopewright.model.SlopewrightPackage#getApproachAid_Portable()
	 * @model
	 * @generated
	 */
	Boolean getPortable();

	/**
	 * Sets the value of the '{@link slopewright.model.ApproachAid#getPortable <em>Portable</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Portable</em>' attribute.
	 * @see #getPortable()
	 * @generated
	 */
	void setPortable(Boolean value);

	/**
	 * Returns the value of the '<em><b>Ground Speed Kt</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Ground Speed Kt</em>' attribute.
	 * @see #setGroundSpeedKt(Double)
	 * @see slopewright.model.SlopewrightPackage#getApproachAid_GroundSpeedKt()
	 * @model
	 * @generated
	 */
	Double getGroundSpeedKt();

	/**
	 * Sets the value of the '{@link slopewright.model.ApproachAid#getGroundSpeedKt <em>Ground Speed Kt</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Ground Speed Kt</em>' attribute.
	 * @see #getGroundSpeedKt()
	 * @generated
	 */
	void setGroundSpeedKt(Double value);

	/**
	 * Returns the value of the '<em><b>Air Speed Kt</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Air Speed Kt</em>' attribute.
	 * @see #setAirSpeedKt(Double)
	 * @see slopewright.model.SlopewrightPackage#getApproachAid_AirSpeedKt()
	 * @model
	 * @generated
	 */
	Double getAirSpeedKt();

	/**
	 * Sets the value of the '{@link slopewright.model.ApproachAid#getAirSpeedKt <em>Air Speed Kt</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Air Speed Kt</em>' attribute.
	 * @see #getAirSpeedKt()
	 * @generated
	 */
	void setAirSpeedKt(Double value);

	/**
	 * Returns the value of the '<em><b>Wind Kt</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Wind Kt</em>' attribute.
	 * @see #setWindKt(Double)
	 * @see slopewright.model.SlopewrightPackage#getApproachAid_WindKt()
	 * @model
	 * @generated
	 */
	Double getWindKt();

	/**
	 * Sets the value of the '{@link slopewright.model.ApproachAid#getWindKt <em>Wind Kt</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Wind Kt</em>' attribute.
	 * @see #getWindKt()
	 * @generated
	 */
	void setWindKt(Double value);

	/**
	 * Returns the value of the '<em><b>Descent Ftmin</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Descent Ftmin</em>' attribute.
	 * @see #setDescentFtmin(Double)
	 * @see slopewright.model.SlopewrightPackage#getApproachAid_DescentFtmin()
	 * @model
	 * @generated
	 */
	Double getDescentFtmin();

	/**
	 * Sets the value of the '{@link slopewright.model.ApproachAid#getDescentFtmin <em>Descent Ftmin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Descent Ftmin</em>' attribute.
	 * @see #getDescentFtmin()
	 * @generated
	 */
	void setDescentFtmin(Double value);

	/**
	 * Returns the value of the '<em><b>Units</b></em>' containment reference list.
	 * The list contents are of type {@link slopewright.model.LightUnit}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Units</em>' containment reference list.
	 * @see slopewright.model.SlopewrightPackage#getApproachAid_Units()
	 * @model containment="true"
	 * @generated
	 */
	EList<LightUnit> getUnits();

	/**
	 * Returns the value of the '<em><b>Inspections</b></em>' containment reference list.
	 * The list contents are of type {@link slopewright.model.Inspection}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Inspections</em>' containment reference list.
	 * @see slopewright.model.SlopewrightPackage#getApproachAid_Inspections()
	 * @model containment="true"
	 * @generated
	 */
	EList<Inspection> getInspections();

} // ApproachAid
