/**
 */
package slopewright.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Circuit</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.Circuit#getSupply <em>Supply</em>}</li>
 *   <li>{@link slopewright.model.Circuit#getCurrentA <em>Current A</em>}</li>
 *   <li>{@link slopewright.model.Circuit#getCapacityAh <em>Capacity Ah</em>}</li>
 *   <li>{@link slopewright.model.Circuit#getBrightnessSteps <em>Brightness Steps</em>}</li>
 *   <li>{@link slopewright.model.Circuit#getAids <em>Aids</em>}</li>
 *   <li>{@link slopewright.model.Circuit#getRegulatorRatingKva <em>Regulator Rating Kva</em>}</li>
 *   <li>{@link slopewright.model.Circuit#getCableLengthM <em>Cable Length M</em>}</li>
 *   <li>{@link slopewright.model.Circuit#getCableResistanceOhmPerKm <em>Cable Resistance Ohm Per Km</em>}</li>
 *   <li>{@link slopewright.model.Circuit#getSwitchOverS <em>Switch Over S</em>}</li>
 *   <li>{@link slopewright.model.Circuit#getStandby <em>Standby</em>}</li>
 *   <li>{@link slopewright.model.Circuit#getAgeLeftPercent <em>Age Left Percent</em>}</li>
 *   <li>{@link slopewright.model.Circuit#getColdLeftPercent <em>Cold Left Percent</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getCircuit()
 * @model
 * @generated
 */
public interface Circuit extends Named {
	/**
	 * Returns the value of the '<em><b>Supply</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Supply</em>' attribute.
	 * @see #setSupply(String)
	 * @see slopewright.model.SlopewrightPackage#getCircuit_Supply()
	 * @model
	 * @generated
	 */
	String getSupply();

	/**
	 * Sets the value of the '{@link slopewright.model.Circuit#getSupply <em>Supply</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Supply</em>' attribute.
	 * @see #getSupply()
	 * @generated
	 */
	void setSupply(String value);

	/**
	 * Returns the value of the '<em><b>Current A</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Current A</em>' attribute.
	 * @see #setCurrentA(Double)
	 * @see slopewright.model.SlopewrightPackage#getCircuit_CurrentA()
	 * @model
	 * @generated
	 */
	Double getCurrentA();

	/**
	 * Sets the value of the '{@link slopewright.model.Circuit#getCurrentA <em>Current A</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Current A</em>' attribute.
	 * @see #getCurrentA()
	 * @generated
	 */
	void setCurrentA(Double value);

	/**
	 * Returns the value of the '<em><b>Capacity Ah</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Capacity Ah</em>' attribute.
	 * @see #setCapacityAh(Double)
	 * @see slopewright.model.SlopewrightPackage#getCircuit_CapacityAh()
	 * @model
	 * @generated
	 */
	Double getCapacityAh();

	/**
	 * Sets the value of the '{@link slopewright.model.Circuit#getCapacityAh <em>Capacity Ah</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Capacity Ah</em>' attribute.
	 * @see #getCapacityAh()
	 * @generated
	 */
	void setCapacityAh(Double value);

	/**
	 * Returns the value of the '<em><b>Brightness Steps</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Brightness Steps</em>' attribute.
	 * @see #setBrightnessSteps(Integer)
	 * @see slopewright.model.SlopewrightPackage#getCircuit_BrightnessSteps()
	 * @model
	 * @generated
	 */
	Integer getBrightnessSteps();

	/**
	 * Sets the value of the '{@link slopewright.model.Circuit#getBrightnessSteps <em>Brightness Steps</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Brightness Steps</em>' attribute.
	 * @see #getBrightnessSteps()
	 * @generated
	 */
	void setBrightnessSteps(Integer value);

	/**
	 * Returns the value of the '<em><b>Aids</b></em>' reference list.
	 * The list contents are of type {@link slopewright.model.ApproachAid}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Aids</em>' reference list.
	 * @see slopewright.model.SlopewrightPackage#getCircuit_Aids()
	 * @model
	 * @generated
	 */
	EList<ApproachAid> getAids();

	/**
	 * Returns the value of the '<em><b>Regulator Rating Kva</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Regulator Rating Kva</em>' attribute.
	 * @see #setRegulatorRatingKva(Double)
	 * @see slopewright.model.SlopewrightPackage#getCircuit_RegulatorRatingKva()
	 * @model
	 * @generated
	 */
	Double getRegulatorRatingKva();

	/**
	 * Sets the value of the '{@link slopewright.model.Circuit#getRegulatorRatingKva <em>Regulator Rating Kva</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Regulator Rating Kva</em>' attribute.
	 * @see #getRegulatorRatingKva()
	 * @generated
	 */
	void setRegulatorRatingKva(Double value);

	/**
	 * Returns the value of the '<em><b>Cable Length M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Cable Length M</em>' attribute.
	 * @see #setCableLengthM(Double)
	 * @see slopewright.model.SlopewrightPackage#getCircuit_CableLengthM()
	 * @model
	 * @generated
	 */
	Double getCableLengthM();

	/**
	 * Sets the value of the '{@link slopewright.model.Circuit#getCableLengthM <em>Cable Length M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cable Length M</em>' attribute.
	 * @see #getCableLengthM()
	 * @generated
	 */
	void setCableLengthM(Double value);

	/**
	 * Returns the value of the '<em><b>Cable Resistance Ohm Per Km</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Cable Resistance Ohm Per Km</em>' attribute.
	 * @see #setCableResistanceOhmPerKm(Double)
	 * @see slopewright.model.SlopewrightPackage#getCircuit_CableResistanceOhmPerKm()
	 * @model
	 * @generated
	 */
	Double getCableResistanceOhmPerKm();

	/**
	 * Sets the value of the '{@link slopewright.model.Circuit#getCableResistanceOhmPerKm <em>Cable Resistance Ohm Per Km</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cable Resistance Ohm Per Km</em>' attribute.
	 * @see #getCableResistanceOhmPerKm()
	 * @generated
	 */
	void setCableResistanceOhmPerKm(Double value);

	/**
	 * Returns the value of the '<em><b>Switch Over S</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Switch Over S</em>' attribute.
	 * @see #setSwitchOverS(Double)
	 * @see slopewright.model.SlopewrightPackage#getCircuit_SwitchOverS()
	 * @model
	 * @generated
	 */
	Double getSwitchOverS();

	/**
	 * Sets the value of the '{@link slopewright.model.Circuit#getSwitchOverS <em>Switch Over S</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Switch Over S</em>' attribute.
	 * @see #getSwitchOverS()
	 * @generated
	 */
	void setSwitchOverS(Double value);

	/**
	 * Returns the value of the '<em><b>Standby</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Standby</em>' attribute.
	 * @see #setStandby(Boolean)
	 * @see slopewright.model.SlopewrightPackage#getCircuit_Standby()
	 * @model
	 * @generated
	 */
	Boolean getStandby();

	/**
	 * Sets the value of the '{@link slopewright.model.Circuit#getStandby <em>Standby</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Standby</em>' attribute.
	 * @see #getStandby()
	 * @generated
	 */
	void setStandby(Boolean value);

	/**
	 * Returns the value of the '<em><b>Age Left Percent</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Age Left Percent</em>' attribute.
	 * @see #setAgeLeftPercent(Double)
	 * @see slopewright.model.SlopewrightPackage#getCircuit_AgeLeftPercent()
	 * @model
	 * @generated
	 */
	Double getAgeLeftPercent();

	/**
	 * Sets the value of the '{@link slopewright.model.Circuit#getAgeLeftPercent <em>Age Left Percent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Age Left Percent</em>' attribute.
	 * @see #getAgeLeftPercent()
	 * @generated
	 */
	void setAgeLeftPercent(Double value);

	/**
	 * Returns the value of the '<em><b>Cold Left Percent</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Cold Left Percent</em>' attribute.
	 * @see #setColdLeftPercent(Double)
	 * @see slopewright.model.SlopewrightPackage#getCircuit_ColdLeftPercent()
	 * @model
	 * @generated
	 */
	Double getColdLeftPercent();

	/**
	 * Sets the value of the '{@link slopewright.model.Circuit#getColdLeftPercent <em>Cold Left Percent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cold Left Percent</em>' attribute.
	 * @see #getColdLeftPercent()
	 * @generated
	 */
	void setColdLeftPercent(Double value);

} // Circuit
