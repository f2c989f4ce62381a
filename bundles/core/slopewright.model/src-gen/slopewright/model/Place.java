/**
 */
package slopewright.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Place</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.Place#getLatitudeDeg <em>Latitude Deg</em>}</li>
 *   <li>{@link slopewright.model.Place#getLongitudeDeg <em>Longitude Deg</em>}</li>
 *   <li>{@link slopewright.model.Place#getEastM <em>East M</em>}</li>
 *   <li>{@link slopewright.model.Place#getNorthM <em>North M</em>}</li>
 *   <li>{@link slopewright.model.Place#getElevationM <em>Elevation M</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getPlace()
 * @model
 * @generated
 */
public interface Place extends Identified {
	/**
	 * Returns the value of the '<em><b>Latitude Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Latitude Deg</em>' attribute.
	 * @see #setLatitudeDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getPlace_LatitudeDeg()
	 * @model
	 * @generated
	 */
	Double getLatitudeDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.Place#getLatitudeDeg <em>Latitude Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Latitude Deg</em>' attribute.
	 * @see #getLatitudeDeg()
	 * @generated
	 */
	void setLatitudeDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Longitude Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Longitude Deg</em>' attribute.
	 * @see #setLongitudeDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getPlace_LongitudeDeg()
	 * @model
	 * @generated
	 */
	Double getLongitudeDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.Place#getLongitudeDeg <em>Longitude Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Longitude Deg</em>' attribute.
	 * @see #getLongitudeDeg()
	 * @generated
	 */
	void setLongitudeDeg(Double value);

	/**
	 * Returns the value of the '<em><b>East M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>East M</em>' attribute.
	 * @see #setEastM(Double)
	 * @see slopewright.model.SlopewrightPackage#getPlace_EastM()
	 * @model
	 * @generated
	 */
	Double getEastM();

	/**
	 * Sets the value of the '{@link slopewright.model.Place#getEastM <em>East M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>East M</em>' attribute.
	 * @see #getEastM()
	 * @generated
	 */
	void setEastM(Double value);

	/**
	 * Returns the value of the '<em><b>North M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>North M</em>' attribute.
	 * @see #setNorthM(Double)
	 * @see slopewright.model.SlopewrightPackage#getPlace_NorthM()
	 * @model
	 * @generated
	 */
	Double getNorthM();

	/**
	 * Sets the value of the '{@link slopewright.model.Place#getNorthM <em>North M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>North M</em>' attribute.
	 * @see #getNorthM()
	 * @generated
	 */
	void setNorthM(Double value);

	/**
	 * Returns the value of the '<em><b>Elevation M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Elevation M</em>' attribute.
	 * @see #setElevationM(Double)
	 * @see slopewright.model.SlopewrightPackage#getPlace_ElevationM()
	 * @model
	 * @generated
	 */
	Double getElevationM();

	/**
	 * Sets the value of the '{@link slopewright.model.Place#getElevationM <em>Elevation M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Elevation M</em>' attribute.
	 * @see #getElevationM()
	 * @generated
	 */
	void setElevationM(Double value);

} // Place
