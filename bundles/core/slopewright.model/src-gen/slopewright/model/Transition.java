/**
 */
package slopewright.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Transition</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.Transition#getOffsetDeg <em>Offset Deg</em>}</li>
 *   <li>{@link slopewright.model.Transition#getWidthMinutes <em>Width Minutes</em>}</li>
 *   <li>{@link slopewright.model.Transition#getBelowColour <em>Below Colour</em>}</li>
 *   <li>{@link slopewright.model.Transition#getBelowState <em>Below State</em>}</li>
 *   <li>{@link slopewright.model.Transition#getAboveColour <em>Above Colour</em>}</li>
 *   <li>{@link slopewright.model.Transition#getAboveState <em>Above State</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getTransition()
 * @model
 * @generated
 */
public interface Transition extends Identified {
	/**
	 * Returns the value of the '<em><b>Offset Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Offset Deg</em>' attribute.
	 * @see #setOffsetDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getTransition_OffsetDeg()
	 * @model
	 * @generated
	 */
	Double getOffsetDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.Transition#getOffsetDeg <em>Offset Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Offset Deg</em>' attribute.
	 * @see #getOffsetDeg()
	 * @generated
	 */
	void setOffsetDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Width Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Width Minutes</em>' attribute.
	 * @see #setWidthMinutes(Double)
	 * @see slopewright.model.SlopewrightPackage#getTransition_WidthMinutes()
	 * @model
	 * @generated
	 */
	Double getWidthMinutes();

	/**
	 * Sets the value of the '{@link slopewright.model.Transition#getWidthMinutes <em>Width Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width Minutes</em>' attribute.
	 * @see #getWidthMinutes()
	 * @generated
	 */
	void setWidthMinutes(Double value);

	/**
	 * Returns the value of the '<em><b>Below Colour</b></em>' attribute.
	 * The literals are from the enumeration {@link slopewright.model.LightColour}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Below Colour</em>' attribute.
	 * @see slopewright.model.LightColour
	 * @see #setBelowColour(LightColour)
	 * @see slopewright.model.SlopewrightPackage#getTransition_BelowColour()
	 * @model
	 * @generated
	 */
	LightColour getBelowColour();

	/**
	 * Sets the value of the '{@link slopewright.model.Transition#getBelowColour <em>Below Colour</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Below Colour</em>' attribute.
	 * @see slopewright.model.LightColour
	 * @see #getBelowColour()
	 * @generated
	 */
	void setBelowColour(LightColour value);

	/**
	 * Returns the value of the '<em><b>Below State</b></em>' attribute.
	 * The literals are from the enumeration {@link slopewright.model.LightState}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Below State</em>' attribute.
	 * @see slopewright.model.LightState
	 * @see #setBelowState(LightState)
	 * @see slopewright.model.SlopewrightPackage#getTransition_BelowState()
	 * @model
	 * @generated
	 */
	LightState getBelowState();

	/**
	 * Sets the value of the '{@link slopewright.model.Transition#getBelowState <em>Below State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Below State</em>' attribute.
	 * @see slopewright.model.LightState
	 * @see #getBelowState()
	 * @generated
	 */
	void setBelowState(LightState value);

	/**
	 * Returns the value of the '<em><b>Above Colour</b></em>' attribute.
	 * The literals are from the enumeration {@link slopewright.model.LightColour}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Above Colour</em>' attribute.
	 * @see slopewright.model.LightColour
	 * @see #setAboveColour(LightColour)
	 * @see slopewright.model.SlopewrightPackage#getTransition_AboveColour()
	 * @model
	 * @generated
	 */
	LightColour getAboveColour();

	/**
	 * Sets the value of the '{@link slopewright.model.Transition#getAboveColour <em>Above Colour</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Above Colour</em>' attribute.
	 * @see slopewright.model.LightColour
	 * @see #getAboveColour()
	 * @generated
	 */
	void setAboveColour(LightColour value);

	/**
	 * Returns the value of the '<em><b>Above State</b></em>' attribute.
	 * The literals are from the enumeration {@link slopewright.model.LightState}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Above State</em>' attribute.
	 * @see slopewright.model.LightState
	 * @see #setAboveState(LightState)
	 * @see slopewright.model.SlopewrightPackage#getTransition_AboveState()
	 * @model
	 * @generated
	 */
	LightState getAboveState();

	/**
	 * Sets the value of the '{@link slopewright.model.Transition#getAboveState <em>Above State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Above State</em>' attribute.
	 * @see slopewright.model.LightState
	 * @see #getAboveState()
	 * @generated
	 */
	void setAboveState(LightState value);

} // Transition
