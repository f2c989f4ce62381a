/**
 */
package slopewright.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Ground Level</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.GroundLevel#getPlace <em>Place</em>}</li>
 *   <li>{@link slopewright.model.GroundLevel#getSource <em>Source</em>}</li>
 *   <li>{@link slopewright.model.GroundLevel#getDate <em>Date</em>}</li>
 *   <li>{@link slopewright.model.GroundLevel#getVerticalAccuracyM <em>Vertical Accuracy M</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getGroundLevel()
 * @model
 * @generated
 */
public interface GroundLevel extends Identified {
	/**
	 * Returns the value of the '<em><b>Place</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Place</em>' containment reference.
	 * @see #setPlace(Place)
	 * @see slopewright.model.SlopewrightPackage#getGroundLevel_Place()
	 * @model containment="true"
	 * @generated
	 */
	Place getPlace();

	/**
	 * Sets the value of the '{@link slopewright.model.GroundLevel#getPlace <em>Place</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Place</em>' containment reference.
	 * @see #getPlace()
	 * @generated
	 */
	void setPlace(Place value);

	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see #setSource(String)
	 * @see slopewright.model.SlopewrightPackage#getGroundLevel_Source()
	 * @model
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link slopewright.model.GroundLevel#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see #getSource()
	 * @generated
	 */
	void setSource(String value);

	/**
	 * Returns the value of the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Date</em>' attribute.
	 * @see #setDate(String)
	 * @see slopewright.model.SlopewrightPackage#getGroundLevel_Date()
	 * @model
	 * @generated
	 */
	String getDate();

	/**
	 * Sets the value of the '{@link slopewright.model.GroundLevel#getDate <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Date</em>' attribute.
	 * @see #getDate()
	 * @generated
	 */
	void setDate(String value);

	/**
	 * Returns the value of the '<em><b>Vertical Accuracy M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Vertical Accuracy M</em>' attribute.
	 * @see #setVerticalAccuracyM(Double)
	 * @see slopewright.model.SlopewrightPackage#getGroundLevel_VerticalAccuracyM()
	 * @model
	 * @generated
	 */
	Double getVerticalAccuracyM();

	/**
	 * Sets the value of the '{@link slopewright.model.GroundLevel#getVerticalAccuracyM <em>Vertical Accuracy M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Vertical Accuracy M</em>' attribute.
	 * @see #getVerticalAccuracyM()
	 * @generated
	 */
	void setVerticalAccuracyM(Double value);

} // GroundLevel
