/**
 */
package slopewright.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Value Confirmation</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.ValueConfirmation#getValueKey <em>Value Key</em>}</li>
 *   <li>{@link slopewright.model.ValueConfirmation#getRuleSetKey <em>Rule Set Key</em>}</li>
 *   <li>{@link slopewright.model.ValueConfirmation#getSource <em>Source</em>}</li>
 *   <li>{@link slopewright.model.ValueConfirmation#getPerson <em>Person</em>}</li>
 *   <li>{@link slopewright.model.ValueConfirmation#getDate <em>Date</em>}</li>
 *   <li>{@link slopewright.model.ValueConfirmation#getValue <em>Value</em>}</li>
 *   <li>{@link slopewright.model.ValueConfirmation#getUnit <em>Unit</em>}</li>
 *   <li>{@link slopewright.model.ValueConfirmation#getEdition <em>Edition</em>}</li>
 *   <li>{@link slopewright.model.ValueConfirmation#getClause <em>Clause</em>}</li>
 *   <li>{@link slopewright.model.ValueConfirmation#getSecondPerson <em>Second Person</em>}</li>
 *   <li>{@link slopewright.model.ValueConfirmation#getFromBook <em>From Book</em>}</li>
 *   <li>{@link slopewright.model.ValueConfirmation#getSecondDate <em>Second Date</em>}</li>
 *   <li>{@link slopewright.model.ValueConfirmation#getRejected <em>Rejected</em>}</li>
 *   <li>{@link slopewright.model.ValueConfirmation#getReason <em>Reason</em>}</li>
 *   <li>{@link slopewright.model.ValueConfirmation#getSha256 <em>Sha256</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getValueConfirmation()
 * @model
 * @generated
 */
public interface ValueConfirmation extends Identified {
	/**
	 * Returns the value of the '<em><b>Value Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Value Key</em>' attribute.
	 * @see #setValueKey(String)
	 * @see slopewright.model.SlopewrightPackage#getValueConfirmation_ValueKey()
	 * @model
	 * @generated
	 */
	String getValueKey();

	/**
	 * Sets the value of the '{@link slopewright.model.ValueConfirmation#getValueKey <em>Value Key</em>}' attribute.
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
	 * @see slopewright.model.SlopewrightPackage#getValueConfirmation_RuleSetKey()
	 * @model
	 * @generated
	 */
	String getRuleSetKey();

	/**
	 * Sets the value of the '{@link slopewright.model.ValueConfirmation#getRuleSetKey <em>Rule Set Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rule Set Key</em>' attribute.
	 * @see #getRuleSetKey()
	 * @generated
	 */
	void setRuleSetKey(String value);

	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see #setSource(String)
	 * @see slopewright.model.SlopewrightPackage#getValueConfirmation_Source()
	 * @model
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link slopewright.model.ValueConfirmation#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see #getSource()
	 * @generated
	 */
	void setSource(String value);

	/**
	 * Returns the value of the '<em><b>Person</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Person</em>' attribute.
	 * @see #setPerson(String)
	 * @see slopewright.model.SlopewrightPackage#getValueConfirmation_Person()
	 * @model
	 * @generated
	 */
	String getPerson();

	/**
	 * Sets the value of the '{@link slopewright.model.ValueConfirmation#getPerson <em>Person</em>}' attribute.
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
	 * @see slopewright.model.SlopewrightPackage#getValueConfirmation_Date()
	 * @model
	 * @generated
	 */
	String getDate();

	/**
	 * Sets the value of the '{@link slopewright.model.ValueConfirmation#getDate <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Date</em>' attribute.
	 * @see #getDate()
	 * @generated
	 */
	void setDate(String value);

	/**
	 * Returns the value of the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Value</em>' attribute.
	 * @see #setValue(Double)
	 * @see slopewright.model.SlopewrightPackage#getValueConfirmation_Value()
	 * @model
	 * @generated
	 */
	Double getValue();

	/**
	 * Sets the value of the '{@link slopewright.model.ValueConfirmation#getValue <em>Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Value</em>' attribute.
	 * @see #getValue()
	 * @generated
	 */
	void setValue(Double value);

	/**
	 * Returns the value of the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Unit</em>' attribute.
	 * @see #setUnit(String)
	 * @see slopewright.model.SlopewrightPackage#getValueConfirmation_Unit()
	 * @model
	 * @generated
	 */
	String getUnit();

	/**
	 * Sets the value of the '{@link slopewright.model.ValueConfirmation#getUnit <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unit</em>' attribute.
	 * @see #getUnit()
	 * @generated
	 */
	void setUnit(String value);

	/**
	 * Returns the value of the '<em><b>Edition</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Edition</em>' attribute.
	 * @see #setEdition(String)
	 * @see slopewright.model.SlopewrightPackage#getValueConfirmation_Edition()
	 * @model
	 * @generated
	 */
	String getEdition();

	/**
	 * Sets the value of the '{@link slopewright.model.ValueConfirmation#getEdition <em>Edition</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Edition</em>' attribute.
	 * @see #getEdition()
	 * @generated
	 */
	void setEdition(String value);

	/**
	 * Returns the value of the '<em><b>Clause</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Clause</em>' attribute.
	 * @see #setClause(String)
	 * @see slopewright.model.SlopewrightPackage#getValueConfirmation_Clause()
	 * @model
	 * @generated
	 */
	String getClause();

	/**
	 * Sets the value of the '{@link slopewright.model.ValueConfirmation#getClause <em>Clause</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Clause</em>' attribute.
	 * @see #getClause()
	 * @generated
	 */
	void setClause(String value);

	/**
	 * Returns the value of the '<em><b>Second Person</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Second Person</em>' attribute.
	 * @see #setSecondPerson(String)
	 * @see slopewright.model.SlopewrightPackage#getValueConfirmation_SecondPerson()
	 * @model
	 * @generated
	 */
	String getSecondPerson();

	/**
	 * Sets the value of the '{@link slopewright.model.ValueConfirmation#getSecondPerson <em>Second Person</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Second Person</em>' attribute.
	 * @see #getSecondPerson()
	 * @generated
	 */
	void setSecondPerson(String value);

	/**
	 * Returns the value of the '<em><b>From Book</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>From Book</em>' attribute.
	 * @see #setFromBook(Boolean)
	 * @see slopewright.model.SlopewrightPackage#getValueConfirmation_FromBook()
	 * @model
	 * @generated
	 */
	Boolean getFromBook();

	/**
	 * Sets the value of the '{@link slopewright.model.ValueConfirmation#getFromBook <em>From Book</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>From Book</em>' attribute.
	 * @see #getFromBook()
	 * @generated
	 */
	void setFromBook(Boolean value);

	/**
	 * Returns the value of the '<em><b>Second Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Second Date</em>' attribute.
	 * @see #setSecondDate(String)
	 * @see slopewright.model.SlopewrightPackage#getValueConfirmation_SecondDate()
	 * @model
	 * @generated
	 */
	String getSecondDate();

	/**
	 * Sets the value of the '{@link slopewright.model.ValueConfirmation#getSecondDate <em>Second Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Second Date</em>' attribute.
	 * @see #getSecondDate()
	 * @generated
	 */
	void setSecondDate(String value);

	/**
	 * Returns the value of the '<em><b>Rejected</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rejected</em>' attribute.
	 * @see #setRejected(Boolean)
	 * @see slopewright.model.SlopewrightPackage#getValueConfirmation_Rejected()
	 * @model
	 * @generated
	 */
	Boolean getRejected();

	/**
	 * Sets the value of the '{@link slopewright.model.ValueConfirmation#getRejected <em>Rejected</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rejected</em>' attribute.
	 * @see #getRejected()
	 * @generated
	 */
	void setRejected(Boolean value);

	/**
	 * Returns the value of the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Reason</em>' attribute.
	 * @see #setReason(String)
	 * @see slopewright.model.SlopewrightPackage#getValueConfirmation_Reason()
	 * @model
	 * @generated
	 */
	String getReason();

	/**
	 * Sets the value of the '{@link slopewright.model.ValueConfirmation#getReason <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reason</em>' attribute.
	 * @see #getReason()
	 * @generated
	 */
	void setReason(String value);

	/**
	 * Returns the value of the '<em><b>Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sha256</em>' attribute.
	 * @see #setSha256(String)
	 * @see slopewright.model.SlopewrightPackage#getValueConfirmation_Sha256()
	 * @model
	 * @generated
	 */
	String getSha256();

	/**
	 * Sets the value of the '{@link slopewright.model.ValueConfirmation#getSha256 <em>Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sha256</em>' attribute.
	 * @see #getSha256()
	 * @generated
	 */
	void setSha256(String value);

} // ValueConfirmation
