/**
 */
package slopewright.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Printed Descent</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.PrintedDescent#getSpeedKt <em>Speed Kt</em>}</li>
 *   <li>{@link slopewright.model.PrintedDescent#getDescentFtmin <em>Descent Ftmin</em>}</li>
 *   <li>{@link slopewright.model.PrintedDescent#getSlopeDeg <em>Slope Deg</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getPrintedDescent()
 * @model
 * @generated
 */
public interface PrintedDescent extends Identified {
	/**
	 * Returns the value of the '<em><b>Speed Kt</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Speed Kt</em>' attribute.
	 * @see #setSpeedKt(Double)
	 * @see slopewright.model.SlopewrightPackage#getPrintedDescent_SpeedKt()
	 * @model
	 * @generated
	 */
	Double getSpeedKt();

	/**
	 * Sets the value of the '{@link slopewright.model.PrintedDescent#getSpeedKt <em>Speed Kt</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Speed Kt</em>' attribute.
	 * @see #getSpeedKt()
	 * @generated
	 */
	void setSpeedKt(Double value);

	/**
	 * Returns the value of the '<em><b>Descent Ftmin</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Descent Ftmin</em>' attribute.
	 * @see #setDescentFtmin(Double)
	 * @see slopewright.model.SlopewrightPackage#getPrintedDescent_DescentFtmin()
	 * @model
	 * @generated
	 */
	Double getDescentFtmin();

	/**
	 * Sets the value of the '{@link slopewright.model.PrintedDescent#getDescentFtmin <em>Descent Ftmin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Descent Ftmin</em>' attribute.
	 * @see #getDescentFtmin()
	 * @generated
	 */
	void setDescentFtmin(Double value);

	/**
	 * Returns the value of the '<em><b>Slope Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Slope Deg</em>' attribute.
	 * @see #setSlopeDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getPrintedDescent_SlopeDeg()
	 * @model
	 * @generated
	 */
	Double getSlopeDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.PrintedDescent#getSlopeDeg <em>Slope Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Slope Deg</em>' attribute.
	 * @see #getSlopeDeg()
	 * @generated
	 */
	void setSlopeDeg(Double value);

} // PrintedDescent
