/**
 */
package slopewright.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Measured Intensity</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.MeasuredIntensity#getColour <em>Colour</em>}</li>
 *   <li>{@link slopewright.model.MeasuredIntensity#getAzimuthDeg <em>Azimuth Deg</em>}</li>
 *   <li>{@link slopewright.model.MeasuredIntensity#getElevationDeg <em>Elevation Deg</em>}</li>
 *   <li>{@link slopewright.model.MeasuredIntensity#getIntensityCd <em>Intensity Cd</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getMeasuredIntensity()
 * @model
 * @generated
 */
public interface MeasuredIntensity extends Identified {
	/**
	 * Returns the value of the '<em><b>Colour</b></em>' attribute.
	 * The literals are from the enumeration {@link slopewright.model.LightColour}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Colour</em>' attribute.
	 * @see slopewright.model.LightColour
	 * @see #setColour(LightColour)
	 * @see slopewright.model.SlopewrightPackage#getMeasuredIntensity_Colour()
	 * @model
	 * @generated
	 */
	LightColour getColour();

	/**
	 * Sets the value of the '{@link slopewright.model.MeasuredIntensity#getColour <em>Colour</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Colour</em>' attribute.
	 * @see slopewright.model.LightColour
	 * @see #getColour()
	 * @generated
	 */
	void setColour(LightColour value);

	/**
	 * Returns the value of the '<em><b>Azimuth Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Azimuth Deg</em>' attribute.
	 * @see #setAzimuthDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getMeasuredIntensity_AzimuthDeg()
	 * @model
	 * @generated
	 */
	Double getAzimuthDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.MeasuredIntensity#getAzimuthDeg <em>Azimuth Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Azimuth Deg</em>' attribute.
	 * @see #getAzimuthDeg()
	 * @generated
	 */
	void setAzimuthDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Elevation Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Elevation Deg</em>' attribute.
	 * @see #setElevationDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getMeasuredIntensity_ElevationDeg()
	 * @model
	 * @generated
	 */
	Double getElevationDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.MeasuredIntensity#getElevationDeg <em>Elevation Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Elevation Deg</em>' attribute.
	 * @see #getElevationDeg()
	 * @generated
	 */
	void setElevationDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Intensity Cd</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Intensity Cd</em>' attribute.
	 * @see #setIntensityCd(Double)
	 * @see slopewright.model.SlopewrightPackage#getMeasuredIntensity_IntensityCd()
	 * @model
	 * @generated
	 */
	Double getIntensityCd();

	/**
	 * Sets the value of the '{@link slopewright.model.MeasuredIntensity#getIntensityCd <em>Intensity Cd</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Intensity Cd</em>' attribute.
	 * @see #getIntensityCd()
	 * @generated
	 */
	void setIntensityCd(Double value);

} // MeasuredIntensity
