/**
 */
package slopewright.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Value Override</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.ValueOverride#getValueKey <em>Value Key</em>}</li>
 *   <li>{@link slopewright.model.ValueOverride#getRuleSetKey <em>Rule Set Key</em>}</li>
 *   <li>{@link slopewright.model.ValueOverride#getValue <em>Value</em>}</li>
 *   <li>{@link slopewright.model.ValueOverride#getReason <em>Reason</em>}</li>
 *   <li>{@link slopewright.model.ValueOverride#getPerson <em>Person</em>}</li>
 *   <li>{@link slopewright.model.ValueOverride#getDate <em>Date</em>}</li>
 *   <li>{@link slopewright.model.ValueOverride#getUnit <em>Unit</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getValueOverride()
 * @model
 * @generated
 */
public interface ValueOverride extends Identified {
	/**
	 * Returns the value of the '<em><b>Value Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Value Key</em>' attribute.
	 * @see #setValueKey(String)
	 * @see slopewright.model.SlopewrightPackage#getValueOverride_ValueKey()
	 * @model
	 * @generated
	 */
	String getValueKey();

	/**
	 * Sets the value of the '{@link slopewright.model.ValueOverride#getValueKey <em>Value Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Value Key</em>' attribute.
	 * @see #getValueKey()
	 * @generated
	 */
	void setValueKey(String value);

	/**
	 * Returns the value of the '<em><b>Rule Set Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rule Set Key</em>' attribute.
	 * @see #setRuleSetKey(String)
	 * @see slopewright.model.SlopewrightPackage#getValueOverride_RuleSetKey()
	 * @model
	 * @generated
	 */
	String getRuleSetKey();

	/**
	 * Sets the value of the '{@link slopewright.model.ValueOverride#getRuleSetKey <em>Rule Set Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rule Set Key</em>' attribute.
	 * @see #getRuleSetKey()
	 * @generated
	 */
	void setRuleSetKey(String value);

	/**
	 * Returns the value of the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Value</em>' attribute.
	 * @see #setValue(Double)
	 * @see slopewright.model.SlopewrightPackage#getValueOverride_Value()
	 * @model
	 * @generated
	 */
	Double getValue();

	/**
	 * Sets the value of the '{@link slopewright.model.ValueOverride#getValue <em>Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Value</em>' attribute.
	 * @see #getValue()
	 * @generated
	 */
	void setValue(Double value);

	/**
	 * Returns the value of the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Reason</em>' attribute.
	 * @see #setReason(String)
	 * @see slopewright.model.SlopewrightPackage#getValueOverride_Reason()
	 * @model
	 * @generated
	 */
	String getReason();

	/**
	 * Sets the value of the '{@link slopewright.model.ValueOverride#getReason <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reason</em>' attribute.
	 * @see #getReason()
	 * @generated
	 */
	void setReason(String value);

	/**
	 * Returns the value of the '<em><b>Person</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Person</em>' attribute.
	 * @see #setPerson(String)
	 * @see slopewright.model.SlopewrightPackage#getValueOverride_Person()
	 * @model
	 * @generated
	 */
	String getPerson();

	/**
	 * Sets the value of the '{@link slopewright.model.ValueOverride#getPerson <em>Person</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Person</em>' attribute.
	 * @see #getPerson()
	 * @generated
	 */
	void setPerson(String value);

	/**
	 * Returns the value of the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Date</em>' attribute.
	 * @see #setDate(String)
	 * @see slopewright.model.SlopewrightPackage#getValueOverride_Date()
	 * @model
	 * @generated
	 */
	String getDate();

	/**
	 * Sets the value of the '{@link slopewright.model.ValueOverride#getDate <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Date</em>' attribute.
	 * @see #getDate()
	 * @generated
	 */
	void setDate(String value);

	/**
	 * Returns the value of the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Unit</em>' attribute.
	 * @see #setUnit(String)
	 * @see slopewright.model.SlopewrightPackage#getValueOverride_Unit()
	 * @model
	 * @generated
	 */
	String getUnit();

	/**
	 * Sets the value of the '{@link slopewright.model.ValueOverride#getUnit <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unit</em>' attribute.
	 * @see #getUnit()
	 * @generated
	 */
	void setUnit(String value);

} // ValueOverride
