/**
 */
package slopewright.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Project</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.Project#getRevision <em>Revision</em>}</li>
 *   <li>{@link slopewright.model.Project#getAuthor <em>Author</em>}</li>
 *   <li>{@link slopewright.model.Project#getOrganisation <em>Organisation</em>}</li>
 *   <li>{@link slopewright.model.Project#getDate <em>Date</em>}</li>
 *   <li>{@link slopewright.model.Project#getRuleSetKey <em>Rule Set Key</em>}</li>
 *   <li>{@link slopewright.model.Project#getAerodrome <em>Aerodrome</em>}</li>
 *   <li>{@link slopewright.model.Project#getOverrides <em>Overrides</em>}</li>
 *   <li>{@link slopewright.model.Project#getConfirmations <em>Confirmations</em>}</li>
 *   <li>{@link slopewright.model.Project#getReviewNotes <em>Review Notes</em>}</li>
 *   <li>{@link slopewright.model.Project#getSurveyBlocks <em>Survey Blocks</em>}</li>
 *   <li>{@link slopewright.model.Project#getDocumentNumber <em>Document Number</em>}</li>
 *   <li>{@link slopewright.model.Project#getClient <em>Client</em>}</li>
 *   <li>{@link slopewright.model.Project#getCheckedBy <em>Checked By</em>}</li>
 *   <li>{@link slopewright.model.Project#getApprovedBy <em>Approved By</em>}</li>
 *   <li>{@link slopewright.model.Project#getStage <em>Stage</em>}</li>
 *   <li>{@link slopewright.model.Project#getBookPath <em>Book Path</em>}</li>
 *   <li>{@link slopewright.model.Project#getBookSha256 <em>Book Sha256</em>}</li>
 *   <li>{@link slopewright.model.Project#getRuleSetFolder <em>Rule Set Folder</em>}</li>
 *   <li>{@link slopewright.model.Project#getReadBacks <em>Read Backs</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getProject()
 * @model
 * @generated
 */
public interface Project extends Named {
	/**
	 * Returns the value of the '<em><b>Revision</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Revision</em>' attribute.
	 * @see #setRevision(String)
	 * @see slopewright.model.SlopewrightPackage#getProject_Revision()
	 * @model
	 * @generated
	 */
	String getRevision();

	/**
	 * Sets the value of the '{@link slopewright.model.Project#getRevision <em>Revision</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Revision</em>' attribute.
	 * @see #getRevision()
	 * @generated
	 */
	void setRevision(String value);

	/**
	 * Returns the value of the '<em><b>Author</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Author</em>' attribute.
	 * @see #setAuthor(String)
	 * @see slopewright.model.SlopewrightPackage#getProject_Author()
	 * @model
	 * @generated
	 */
	String getAuthor();

	/**
	 * Sets the value of the '{@link slopewright.model.Project#getAuthor <em>Author</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Author</em>' attribute.
	 * @see #getAuthor()
	 * @generated
	 */
	void setAuthor(String value);

	/**
	 * Returns the value of the '<em><b>Organisation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Organisation</em>' attribute.
	 * @see #setOrganisation(String)
	 * @see slopewright.model.SlopewrightPackage#getProject_Organisation()
	 * @model
	 * @generated
	 */
	String getOrganisation();

	/**
	 * Sets the value of the '{@link slopewright.model.Project#getOrganisation <em>Organisation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Organisation</em>' attribute.
	 * @see #getOrganisation()
	 * @generated
	 */
	void setOrganisation(String value);

	/**
	 * Returns the value of the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Date</em>' attribute.
	 * @see #setDate(String)
	 * @see slopewright.model.SlopewrightPackage#getProject_Date()
	 * @model
	 * @generated
	 */
	String getDate();

	/**
	 * Sets the value of the '{@link slopewright.model.Project#getDate <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Date</em>' attribute.
	 * @see #getDate()
	 * @generated
	 */
	void setDate(String value);

	/**
	 * Returns the value of the '<em><b>Rule Set Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rule Set Key</em>' attribute.
	 * @see #setRuleSetKey(String)
	 * @see slopewright.model.SlopewrightPackage#getProject_RuleSetKey()
	 * @model
	 * @generated
	 */
	String getRuleSetKey();

	/**
	 * Sets the value of the '{@link slopewright.model.Project#getRuleSetKey <em>Rule Set Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rule Set Key</em>' attribute.
	 * @see #getRuleSetKey()
	 * @generated
	 */
	void setRuleSetKey(String value);

	/**
	 * Returns the value of the '<em><b>Aerodrome</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Aerodrome</em>' containment reference.
	 * @see #setAerodrome(Aerodrome)
	 * @see slopewright.model.SlopewrightPackage#getProject_Aerodrome()
	 * @model containment="true"
	 * @generated
	 */
	Aerodrome getAerodrome();

	/**
	 * Sets the value of the '{@link slopewright.model.Project#getAerodrome <em>Aerodrome</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Aerodrome</em>' containment reference.
	 * @see #getAerodrome()
	 * @generated
	 */
	void setAerodrome(Aerodrome value);

	/**
	 * Returns the value of the '<em><b>Overrides</b></em>' containment reference list.
	 * The list contents are of type {@link slopewright.model.ValueOverride}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Overrides</em>' containment reference list.
	 * @see slopewright.model.SlopewrightPackage#getProject_Overrides()
	 * @model containment="true"
	 * @generated
	 */
	EList<ValueOverride> getOverrides();

	/**
	 * Returns the value of the '<em><b>Confirmations</b></em>' containment reference list.
	 * The list contents are of type {@link slopewright.model.ValueConfirmation}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Confirmations</em>' containment reference list.
	 * @see slopewright.model.SlopewrightPackage#getProject_Confirmations()
	 * @model containment="true"
	 * @generated
	 */
	EList<ValueConfirmation> getConfirmations();

	/**
	 * Returns the value of the '<em><b>Review Notes</b></em>' containment reference list.
	 * The list contents are of type {@link slopewright.model.ReviewNote}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Review Notes</em>' containment reference list.
	 * @see slopewright.model.SlopewrightPackage#getProject_ReviewNotes()
	 * @model containment="true"
	 * @generated
	 */
	EList<ReviewNote> getReviewNotes();

	/**
	 * Returns the value of the '<em><b>Survey Blocks</b></em>' containment reference list.
	 * The list contents are of type {@link slopewright.model.SurveyBlock}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Survey Blocks</em>' containment reference list.
	 * @see slopewright.model.SlopewrightPackage#getProject_SurveyBlocks()
	 * @model containment="true"
	 * @generated
	 */
	EList<SurveyBlock> getSurveyBlocks();

	/**
	 * Returns the value of the '<em><b>Document Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Document Number</em>' attribute.
	 * @see #setDocumentNumber(String)
	 * @see slopewright.model.SlopewrightPackage#getProject_DocumentNumber()
	 * @model
	 * @generated
	 */
	String getDocumentNumber();

	/**
	 * Sets the value of the '{@link slopewright.model.Project#getDocumentNumber <em>Document Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Document Number</em>' attribute.
	 * @see #getDocumentNumber()
	 * @generated
	 */
	void setDocumentNumber(String value);

	/**
	 * Returns the value of the '<em><b>Client</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Client</em>' attribute.
	 * @see #setClient(String)
	 * @see slopewright.model.SlopewrightPackage#getProject_Client()
	 * @model
	 * @generated
	 */
	String getClient();

	/**
	 * Sets the value of the '{@link slopewright.model.Project#getClient <em>Client</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Client</em>' attribute.
	 * @see #getClient()
	 * @generated
	 */
	void setClient(String value);

	/**
	 * Returns the value of the '<em><b>Checked By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Checked By</em>' attribute.
	 * @see #setCheckedBy(String)
	 * @see slopewright.model.SlopewrightPackage#getProject_CheckedBy()
	 * @model
	 * @generated
	 */
	String getCheckedBy();

	/**
	 * Sets the value of the '{@link slopewright.model.Project#getCheckedBy <em>Checked By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Checked By</em>' attribute.
	 * @see #getCheckedBy()
	 * @generated
	 */
	void setCheckedBy(String value);

	/**
	 * Returns the value of the '<em><b>Approved By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Approved By</em>' attribute.
	 * @see #setApprovedBy(String)
	 * @see slopewright.model.SlopewrightPackage#getProject_ApprovedBy()
	 * @model
	 * @generated
	 */
	String getApprovedBy();

	/**
	 * Sets the value of the '{@link slopewright.model.Project#getApprovedBy <em>Approved By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Approved By</em>' attribute.
	 * @see #getApprovedBy()
	 * @generated
	 */
	void setApprovedBy(String value);

	/**
	 * Returns the value of the '<em><b>Stage</b></em>' attribute.
	 * The literals are from the enumeration {@link slopewright.model.Stage}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Stage</em>' attribute.
	 * @see slopewright.model.Stage
	 * @see #setStage(Stage)
	 * @see slopewright.model.SlopewrightPackage#getProject_Stage()
	 * @model
	 * @generated
	 */
	Stage getStage();

	/**
	 * Sets the value of the '{@link slopewright.model.Project#getStage <em>Stage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stage</em>' attribute.
	 * @see slopewright.model.Stage
	 * @see #getStage()
	 * @generated
	 */
	void setStage(Stage value);

	/**
	 * Returns the value of the '<em><b>Book Path</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Book Path</em>' attribute.
	 * @see #setBookPath(String)
	 * @see slopewright.model.SlopewrightPackage#getProject_BookPath()
	 * @model
	 * @generated
	 */
	String getBookPath();

	/**
	 * Sets the value of the '{@link slopewright.model.Project#getBookPath <em>Book Path</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Book Path</em>' attribute.
	 * @see #getBookPath()
	 * @generated
	 */
	void setBookPath(String value);

	/**
	 * Returns the value of the '<em><b>Book Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Book Sha256</em>' attribute.
	 * @see #setBookSha256(String)
	 * @see slopewright.model.SlopewrightPackage#getProject_BookSha256()
	 * @model
	 * @generated
	 */
	String getBookSha256();

	/**
	 * Sets the value of the '{@link slopewright.model.Project#getBookSha256 <em>Book Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Book Sha256</em>' attribute.
	 * @see #getBookSha256()
	 * @generated
	 */
	void setBookSha256(String value);

	/**
	 * Returns the value of the '<em><b>Rule Set Folder</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rule Set Folder</em>' attribute.
	 * @see #setRuleSetFolder(String)
	 * @see slopewright.model.SlopewrightPackage#getProject_RuleSetFolder()
	 * @model
	 * @generated
	 */
	String getRuleSetFolder();

	/**
	 * Sets the value of the '{@link slopewright.model.Project#getRuleSetFolder <em>Rule Set Folder</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rule Set Folder</em>' attribute.
	 * @see #getRuleSetFolder()
	 * @generated
	 */
	void setRuleSetFolder(String value);

	/**
	 * Returns the value of the '<em><b>Read Backs</b></em>' containment reference list.
	 * The list contents are of type {@link slopewright.model.ReadBack}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Read Backs</em>' containment reference list.
	 * @see slopewright.model.SlopewrightPackage#getProject_ReadBacks()
	 * @model containment="true"
	 * @generated
	 */
	EList<ReadBack> getReadBacks();

} // Project
