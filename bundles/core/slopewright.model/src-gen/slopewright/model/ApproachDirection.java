/**
 */
package slopewright.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Approach Direction</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.ApproachDirection#getTrueBearingDeg <em>True Bearing Deg</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getApproachDirection()
 * @model
 * @generated
 */
public interface ApproachDirection extends ApproachHost {
	/**
	 * Returns the value of the '<em><b>True Bearing Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>True Bearing Deg</em>' attribute.
	 * @see #setTrueBearingDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getApproachDirection_TrueBearingDeg()
	 * @model
	 * @generated
	 */
	Double getTrueBearingDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.ApproachDirection#getTrueBearingDeg <em>True Bearing Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>True Bearing Deg</em>' attribute.
	 * @see #getTrueBearingDeg()
	 * @generated
	 */
	void setTrueBearingDeg(Double value);

} // ApproachDirection
