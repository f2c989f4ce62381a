/**
 */
package slopewright.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Profile Point</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.ProfilePoint#getChainageM <em>Chainage M</em>}</li>
 *   <li>{@link slopewright.model.ProfilePoint#getElevationM <em>Elevation M</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getProfilePoint()
 * @model
 * @generated
 */
public interface ProfilePoint extends Identified {
	/**
	 * Returns the value of the '<em><b>Chainage M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Chainage M</em>' attribute.
	 * @see #setChainageM(Double)
	 * @see slopewright.model.SlopewrightPackage#getProfilePoint_ChainageM()
	 * @model
	 * @generated
	 */
	Double getChainageM();

	/**
	 * Sets the value of the '{@link slopewright.model.ProfilePoint#getChainageM <em>Chainage M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Chainage M</em>' attribute.
	 * @see #getChainageM()
	 * @generated
	 */
	void setChainageM(Double value);

	/**
	 * Returns the value of the '<em><b>Elevation M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Elevation M</em>' attribute.
	 * @see #setElevationM(Double)
	 * @see slopewright.model.SlopewrightPackage#getProfilePoint_ElevationM()
	 * @model
	 * @generated
	 */
	Double getElevationM();

	/**
	 * Sets the value of the '{@link slopewright.model.ProfilePoint#getElevationM <em>Elevation M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Elevation M</em>' attribute.
	 * @see #getElevationM()
	 * @generated
	 */
	void setElevationM(Double value);

} // ProfilePoint
