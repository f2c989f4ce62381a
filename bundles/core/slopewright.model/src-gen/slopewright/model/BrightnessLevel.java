/**
 */
package slopewright.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Brightness Level</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.BrightnessLevel#getPowerPercent <em>Power Percent</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getBrightnessLevel()
 * @model
 * @generated
 */
public interface BrightnessLevel extends Identified {
	/**
	 * Returns the value of the '<em><b>Power Percent</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Power Percent</em>' attribute.
	 * @see #setPowerPercent(Double)
	 * @see slopewright.model.SlopewrightPackage#getBrightnessLevel_PowerPercent()
	 * @model
	 * @generated
	 */
	Double getPowerPercent();

	/**
	 * Sets the value of the '{@link slopewright.model.BrightnessLevel#getPowerPercent <em>Power Percent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Power Percent</em>' attribute.
	 * @see #getPowerPercent()
	 * @generated
	 */
	void setPowerPercent(Double value);

} // BrightnessLevel
