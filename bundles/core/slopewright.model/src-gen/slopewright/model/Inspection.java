/**
 */
package slopewright.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Inspection</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.Inspection#getDate <em>Date</em>}</li>
 *   <li>{@link slopewright.model.Inspection#getPerson <em>Person</em>}</li>
 *   <li>{@link slopewright.model.Inspection#getOrganisation <em>Organisation</em>}</li>
 *   <li>{@link slopewright.model.Inspection#getOnSlopeAngleDeg <em>On Slope Angle Deg</em>}</li>
 *   <li>{@link slopewright.model.Inspection#getUsableRangeM <em>Usable Range M</em>}</li>
 *   <li>{@link slopewright.model.Inspection#getAzimuthLeftDeg <em>Azimuth Left Deg</em>}</li>
 *   <li>{@link slopewright.model.Inspection#getAzimuthRightDeg <em>Azimuth Right Deg</em>}</li>
 *   <li>{@link slopewright.model.Inspection#getObstacleClear <em>Obstacle Clear</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getInspection()
 * @model
 * @generated
 */
public interface Inspection extends Named {
	/**
	 * Returns the value of the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Date</em>' attribute.
	 * @see #setDate(String)
	 * @see slopewright.model.SlopewrightPackage#getInspection_Date()
	 * @model
	 * @generated
	 */
	String getDate();

	/**
	 * Sets the value of the '{@link slopewright.model.Inspection#getDate <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Date</em>' attribute.
	 * @see #getDate()
	 * @generated
	 */
	void setDate(String value);

	/**
	 * Returns the value of the '<em><b>Person</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Person</em>' attribute.
	 * @see #setPerson(String)
	 * @see slopewright.model.SlopewrightPackage#getInspection_Person()
	 * @model
	 * @generated
	 */
	String getPerson();

	/**
	 * Sets the value of the '{@link slopewright.model.Inspection#getPerson <em>Person</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Person</em>' attribute.
	 * @see #getPerson()
	 * @generated
	 */
	void setPerson(String value);

	/**
	 * Returns the value of the '<em><b>Organisation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Organisation</em>' attribute.
	 * @see #setOrganisation(String)
	 * @see slopewright.model.SlopewrightPackage#getInspection_Organisation()
	 * @model
	 * @generated
	 */
	String getOrganisation();

	/**
	 * Sets the value of the '{@link slopewright.model.Inspection#getOrganisation <em>Organisation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Organisation</em>' attribute.
	 * @see #getOrganisation()
	 * @generated
	 */
	void setOrganisation(String value);

	/**
	 * Returns the value of the '<em><b>On Slope Angle Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>On Slope Angle Deg</em>' attribute.
	 * @see #setOnSlopeAngleDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getInspection_OnSlopeAngleDeg()
	 * @model
	 * @generated
	 */
	Double getOnSlopeAngleDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.Inspection#getOnSlopeAngleDeg <em>On Slope Angle Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>On Slope Angle Deg</em>' attribute.
	 * @see #getOnSlopeAngleDeg()
	 * @generated
	 */
	void setOnSlopeAngleDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Usable Range M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Usable Range M</em>' attribute.
	 * @see #setUsableRangeM(Double)
	 * @see slopewright.model.SlopewrightPackage#getInspection_UsableRangeM()
	 * @model
	 * @generated
	 */
	Double getUsableRangeM();

	/**
	 * Sets the value of the '{@link slopewright.model.Inspection#getUsableRangeM <em>Usable Range M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Usable Range M</em>' attribute.
	 * @see #getUsableRangeM()
	 * @generated
	 */
	void setUsableRangeM(Double value);

	/**
	 * Returns the value of the '<em><b>Azimuth Left Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Azimuth Left Deg</em>' attribute.
	 * @see #setAzimuthLeftDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getInspection_AzimuthLeftDeg()
	 * @model
	 * @generated
	 */
	Double getAzimuthLeftDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.Inspection#getAzimuthLeftDeg <em>Azimuth Left Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Azimuth Left Deg</em>' attribute.
	 * @see #getAzimuthLeftDeg()
	 * @generated
	 */
	void setAzimuthLeftDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Azimuth Right Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Azimuth Right Deg</em>' attribute.
	 * @see #setAzimuthRightDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getInspection_AzimuthRightDeg()
	 * @model
	 * @generated
	 */
	Double getAzimuthRightDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.Inspection#getAzimuthRightDeg <em>Azimuth Right Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Azimuth Right Deg</em>' attribute.
	 * @see #getAzimuthRightDeg()
	 * @generated
	 */
	void setAzimuthRightDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Obstacle Clear</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Obstacle Clear</em>' attribute.
	 * @see #setObstacleClear(Boolean)
	 * @see slopewright.model.SlopewrightPackage#getInspection_ObstacleClear()
	 * @model
	 * @generated
	 */
	Boolean getObstacleClear();

	/**
	 * Sets the value of the '{@link slopewright.model.Inspection#getObstacleClear <em>Obstacle Clear</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Obstacle Clear</em>' attribute.
	 * @see #getObstacleClear()
	 * @generated
	 */
	void setObstacleClear(Boolean value);

} // Inspection
