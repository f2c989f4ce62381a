/**
 */
package slopewright.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Review Note</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.ReviewNote#getElementId <em>Element Id</em>}</li>
 *   <li>{@link slopewright.model.ReviewNote#getRuleId <em>Rule Id</em>}</li>
 *   <li>{@link slopewright.model.ReviewNote#getText <em>Text</em>}</li>
 *   <li>{@link slopewright.model.ReviewNote#getPerson <em>Person</em>}</li>
 *   <li>{@link slopewright.model.ReviewNote#getDate <em>Date</em>}</li>
 *   <li>{@link slopewright.model.ReviewNote#getResolved <em>Resolved</em>}</li>
 *   <li>{@link slopewright.model.ReviewNote#getKind <em>Kind</em>}</li>
 *   <li>{@link slopewright.model.ReviewNote#getNoteId <em>Note Id</em>}</li>
 *   <li>{@link slopewright.model.ReviewNote#getSha256 <em>Sha256</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getReviewNote()
 * @model
 * @generated
 */
public interface ReviewNote extends Named {
	/**
	 * Returns the value of the '<em><b>Element Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Element Id</em>' attribute.
	 * @see #setElementId(String)
	 * @see slopewright.model.SlopewrightPackage#getReviewNote_ElementId()
	 * @model
	 * @generated
	 */
	String getElementId();

	/**
	 * Sets the value of the '{@link slopewright.model.ReviewNote#getElementId <em>Element Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Element Id</em>' attribute.
	 * @see #getElementId()
	 * @generated
	 */
	void setElementId(String value);

	/**
	 * Returns the value of the '<em><b>Rule Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rule Id</em>' attribute.
	 * @see #setRuleId(String)
	 * @see slopewright.model.SlopewrightPackage#getReviewNote_RuleId()
	 * @model
	 * @generated
	 */
	String getRuleId();

	/**
	 * Sets the value of the '{@link slopewright.model.ReviewNote#getRuleId <em>Rule Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rule Id</em>' attribute.
	 * @see #getRuleId()
	 * @generated
	 */
	void setRuleId(String value);

	/**
	 * Returns the value of the '<em><b>Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Text</em>' attribute.
	 * @see #setText(String)
	 * @see slopewright.model.SlopewrightPackage#getReviewNote_Text()
	 * @model
	 * @generated
	 */
	String getText();

	/**
	 * Sets the value of the '{@link slopewright.model.ReviewNote#getText <em>Text</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Text</em>' attribute.
	 * @see #getText()
	 * @generated
	 */
	void setText(String value);

	/**
	 * Returns the value of the '<em><b>Person</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Person</em>' attribute.
	 * @see #setPerson(String)
	 * @see slopewright.model.SlopewrightPackage#getReviewNote_Person()
	 * @model
	 * @generated
	 */
	String getPerson();

	/**
	 * Sets the value of the '{@link slopewright.model.ReviewNote#getPerson <em>Person</em>}' attribute.
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
	 * @see slopewright.model.SlopewrightPackage#getReviewNote_Date()
	 * @model
	 * @generated
	 */
	String getDate();

	/**
	 * Sets the value of the '{@link slopewright.model.ReviewNote#getDate <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Date</em>' attribute.
	 * @see #getDate()
	 * @generated
	 */
	void setDate(String value);

	/**
	 * Returns the value of the '<em><b>Resolved</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Resolved</em>' attribute.
	 * @see #setResolved(Boolean)
	 * @see slopewright.model.SlopewrightPackage#getReviewNote_Resolved()
	 * @model
	 * @generated
	 */
	Boolean getResolved();

	/**
	 * Sets the value of the '{@link slopewright.model.ReviewNote#getResolved <em>Resolved</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Resolved</em>' attribute.
	 * @see #getResolved()
	 * @generated
	 */
	void setResolved(Boolean value);

	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link slopewright.model.ReviewKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see slopewright.model.ReviewKind
	 * @see #setKind(ReviewKind)
	 * @see slopewright.model.SlopewrightPackage#getReviewNote_Kind()
	 * @model
	 * @generated
	 */
	ReviewKind getKind();

	/**
	 * Sets the value of the '{@link slopewright.model.ReviewNote#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see slopewright.model.ReviewKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(ReviewKind value);

	/**
	 * Returns the value of the '<em><b>Note Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Note Id</em>' attribute.
	 * @see #setNoteId(String)
	 * @see slopewright.model.SlopewrightPackage#getReviewNote_NoteId()
	 * @model
	 * @generated
	 */
	String getNoteId();

	/**
	 * Sets the value of the '{@link slopewright.model.ReviewNote#getNoteId <em>Note Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Note Id</em>' attribute.
	 * @see #getNoteId()
	 * @generated
	 */
	void setNoteId(String value);

	/**
	 * Returns the value of the '<em><b>Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sha256</em>' attribute.
	 * @see #setSha256(String)
	 * @see slopewright.model.SlopewrightPackage#getReviewNote_Sha256()
	 * @model
	 * @generated
	 */
	String getSha256();

	/**
	 * Sets the value of the '{@link slopewright.model.ReviewNote#getSha256 <em>Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sha256</em>' attribute.
	 * @see #getSha256()
	 * @generated
	 */
	void setSha256(String value);

} // ReviewNote
