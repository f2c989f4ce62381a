/**
 */
package slopewright.model;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

/**
 * <!-- begin-user-doc -->
 * The <b>Package</b> for the model.
 * It contains accessors for the meta objects to represent
 * <ul>
 *   <li>each class,</li>
 *   <li>each feature of each class,</li>
 *   <li>each operation of each class,</li>
 *   <li>each enum,</li>
 *   <li>and each data type</li>
 * </ul>
 * <!-- end-user-doc -->
 * @see slopewright.model.SlopewrightFactory
 * @model kind="package"
 * @generated
 */
public interface SlopewrightPackage extends EPackage {
	/**
	 * The package name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNAME = "model";

	/**
	 * The package namespace URI.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_URI = "http://slopewright.example/model/1.0";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "slopewright";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	SlopewrightPackage eINSTANCE = slopewright.model.impl.SlopewrightPackageImpl.init();

	/**
	 * The meta object id for the '{@link slopewright.model.impl.IdentifiedImpl <em>Identified</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.IdentifiedImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getIdentified()
	 * @generated
	 */
	int IDENTIFIED = 0;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int IDENTIFIED__ID = 0;

	/**
	 * The number of structural features of the '<em>Identified</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int IDENTIFIED_FEATURE_COUNT = 1;

	/**
	 * The number of operations of the '<em>Identified</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int IDENTIFIED_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.NamedImpl <em>Named</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.NamedImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getNamed()
	 * @generated
	 */
	int NAMED = 1;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NAMED__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NAMED__NAME = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Remarks</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NAMED__REMARKS = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Named</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NAMED_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The number of operations of the '<em>Named</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NAMED_OPERATION_COUNT = IDENTIFIED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.ProjectImpl <em>Project</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.ProjectImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getProject()
	 * @generated
	 */
	int PROJECT = 2;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Remarks</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__REMARKS = NAMED__REMARKS;

	/**
	 * The feature id for the '<em><b>Revision</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__REVISION = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Author</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__AUTHOR = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Organisation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__ORGANISATION = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__DATE = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Rule Set Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__RULE_SET_KEY = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Aerodrome</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__AERODROME = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Overrides</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__OVERRIDES = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Confirmations</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__CONFIRMATIONS = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Review Notes</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__REVIEW_NOTES = NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Survey Blocks</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__SURVEY_BLOCKS = NAMED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Document Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__DOCUMENT_NUMBER = NAMED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Client</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__CLIENT = NAMED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Checked By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__CHECKED_BY = NAMED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Approved By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__APPROVED_BY = NAMED_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Stage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__STAGE = NAMED_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Book Path</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__BOOK_PATH = NAMED_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Book Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__BOOK_SHA256 = NAMED_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>Rule Set Folder</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__RULE_SET_FOLDER = NAMED_FEATURE_COUNT + 17;

	/**
	 * The feature id for the '<em><b>Read Backs</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__READ_BACKS = NAMED_FEATURE_COUNT + 18;

	/**
	 * The number of structural features of the '<em>Project</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT_FEATURE_COUNT = NAMED_FEATURE_COUNT + 19;

	/**
	 * The number of operations of the '<em>Project</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.ValueOverrideImpl <em>Value Override</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.ValueOverrideImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getValueOverride()
	 * @generated
	 */
	int VALUE_OVERRIDE = 3;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VALUE_OVERRIDE__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Value Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VALUE_OVERRIDE__VALUE_KEY = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Rule Set Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VALUE_OVERRIDE__RULE_SET_KEY = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VALUE_OVERRIDE__VALUE = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VALUE_OVERRIDE__REASON = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Person</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VALUE_OVERRIDE__PERSON = IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VALUE_OVERRIDE__DATE = IDENTIFIED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VALUE_OVERRIDE__UNIT = IDENTIFIED_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Value Override</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VALUE_OVERRIDE_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 7;

	/**
	 * The number of operations of the '<em>Value Override</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VALUE_OVERRIDE_OPERATION_COUNT = IDENTIFIED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.ValueConfirmationImpl <em>Value Confirmation</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.ValueConfirmationImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getValueConfirmation()
	 * @generated
	 */
	int VALUE_CONFIRMATION = 4;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VALUE_CONFIRMATION__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Value Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VALUE_CONFIRMATION__VALUE_KEY = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Rule Set Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VALUE_CONFIRMATION__RULE_SET_KEY = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VALUE_CONFIRMATION__SOURCE = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Person</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VALUE_CONFIRMATION__PERSON = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VALUE_CONFIRMATION__DATE = IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VALUE_CONFIRMATION__VALUE = IDENTIFIED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VALUE_CONFIRMATION__UNIT = IDENTIFIED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Edition</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VALUE_CONFIRMATION__EDITION = IDENTIFIED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Clause</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VALUE_CONFIRMATION__CLAUSE = IDENTIFIED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Second Person</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VALUE_CONFIRMATION__SECOND_PERSON = IDENTIFIED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>From Book</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VALUE_CONFIRMATION__FROM_BOOK = IDENTIFIED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Second Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VALUE_CONFIRMATION__SECOND_DATE = IDENTIFIED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Rejected</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VALUE_CONFIRMATION__REJECTED = IDENTIFIED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VALUE_CONFIRMATION__REASON = IDENTIFIED_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VALUE_CONFIRMATION__SHA256 = IDENTIFIED_FEATURE_COUNT + 14;

	/**
	 * The number of structural features of the '<em>Value Confirmation</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VALUE_CONFIRMATION_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 15;

	/**
	 * The number of operations of the '<em>Value Confirmation</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VALUE_CONFIRMATION_OPERATION_COUNT = IDENTIFIED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.ReviewNoteImpl <em>Review Note</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.ReviewNoteImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getReviewNote()
	 * @generated
	 */
	int REVIEW_NOTE = 5;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REVIEW_NOTE__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REVIEW_NOTE__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Remarks</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REVIEW_NOTE__REMARKS = NAMED__REMARKS;

	/**
	 * The feature id for the '<em><b>Element Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REVIEW_NOTE__ELEMENT_ID = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Rule Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REVIEW_NOTE__RULE_ID = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REVIEW_NOTE__TEXT = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Person</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REVIEW_NOTE__PERSON = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REVIEW_NOTE__DATE = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Resolved</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REVIEW_NOTE__RESOLVED = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REVIEW_NOTE__KIND = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Note Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REVIEW_NOTE__NOTE_ID = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REVIEW_NOTE__SHA256 = NAMED_FEATURE_COUNT + 8;

	/**
	 * The number of structural features of the '<em>Review Note</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REVIEW_NOTE_FEATURE_COUNT = NAMED_FEATURE_COUNT + 9;

	/**
	 * The number of operations of the '<em>Review Note</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REVIEW_NOTE_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.SurveyBlockImpl <em>Survey Block</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.SurveyBlockImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getSurveyBlock()
	 * @generated
	 */
	int SURVEY_BLOCK = 6;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SURVEY_BLOCK__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SURVEY_BLOCK__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Remarks</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SURVEY_BLOCK__REMARKS = NAMED__REMARKS;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SURVEY_BLOCK__KIND = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Path</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SURVEY_BLOCK__PATH = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SURVEY_BLOCK__SHA256 = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Point Count</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SURVEY_BLOCK__POINT_COUNT = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Horizontal Accuracy M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SURVEY_BLOCK__HORIZONTAL_ACCURACY_M = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Vertical Accuracy M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SURVEY_BLOCK__VERTICAL_ACCURACY_M = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SURVEY_BLOCK__SOURCE = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SURVEY_BLOCK__DATE = NAMED_FEATURE_COUNT + 7;

	/**
	 * The number of structural features of the '<em>Survey Block</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SURVEY_BLOCK_FEATURE_COUNT = NAMED_FEATURE_COUNT + 8;

	/**
	 * The number of operations of the '<em>Survey Block</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SURVEY_BLOCK_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.AerodromeImpl <em>Aerodrome</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.AerodromeImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getAerodrome()
	 * @generated
	 */
	int AERODROME = 7;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AERODROME__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AERODROME__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Remarks</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AERODROME__REMARKS = NAMED__REMARKS;

	/**
	 * The feature id for the '<em><b>Identifier</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AERODROME__IDENTIFIER = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Latitude Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AERODROME__LATITUDE_DEG = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Longitude Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AERODROME__LONGITUDE_DEG = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Elevation M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AERODROME__ELEVATION_M = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Vertical Datum</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AERODROME__VERTICAL_DATUM = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Geoid Offset M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AERODROME__GEOID_OFFSET_M = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Coordinate Reference</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AERODROME__COORDINATE_REFERENCE = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Coordinate Epoch</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AERODROME__COORDINATE_EPOCH = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Coordinate Accuracy M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AERODROME__COORDINATE_ACCURACY_M = NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Grid Rotation Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AERODROME__GRID_ROTATION_DEG = NAMED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Magnetic Variation</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AERODROME__MAGNETIC_VARIATION = NAMED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Runways</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AERODROME__RUNWAYS = NAMED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Helipads</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AERODROME__HELIPADS = NAMED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Aeroplane Groups</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AERODROME__AEROPLANE_GROUPS = NAMED_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Obstacles</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AERODROME__OBSTACLES = NAMED_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Ground Levels</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AERODROME__GROUND_LEVELS = NAMED_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Taxiway Edges</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AERODROME__TAXIWAY_EDGES = NAMED_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>Circuits</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AERODROME__CIRCUITS = NAMED_FEATURE_COUNT + 17;

	/**
	 * The feature id for the '<em><b>Equipment Types</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AERODROME__EQUIPMENT_TYPES = NAMED_FEATURE_COUNT + 18;

	/**
	 * The feature id for the '<em><b>Background Images</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AERODROME__BACKGROUND_IMAGES = NAMED_FEATURE_COUNT + 19;

	/**
	 * The feature id for the '<em><b>Obstacle Surveys</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AERODROME__OBSTACLE_SURVEYS = NAMED_FEATURE_COUNT + 20;

	/**
	 * The number of structural features of the '<em>Aerodrome</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AERODROME_FEATURE_COUNT = NAMED_FEATURE_COUNT + 21;

	/**
	 * The number of operations of the '<em>Aerodrome</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AERODROME_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.MagneticVariationImpl <em>Magnetic Variation</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.MagneticVariationImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getMagneticVariation()
	 * @generated
	 */
	int MAGNETIC_VARIATION = 8;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAGNETIC_VARIATION__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Variation Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAGNETIC_VARIATION__VARIATION_DEG = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Annual Change Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAGNETIC_VARIATION__ANNUAL_CHANGE_DEG = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAGNETIC_VARIATION__DATE = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAGNETIC_VARIATION__SOURCE = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Magnetic Variation</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAGNETIC_VARIATION_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The number of operations of the '<em>Magnetic Variation</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAGNETIC_VARIATION_OPERATION_COUNT = IDENTIFIED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.PlaceImpl <em>Place</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.PlaceImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getPlace()
	 * @generated
	 */
	int PLACE = 9;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACE__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Latitude Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACE__LATITUDE_DEG = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Longitude Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACE__LONGITUDE_DEG = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>East M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACE__EAST_M = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>North M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACE__NORTH_M = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Elevation M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACE__ELEVATION_M = IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Place</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACE_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 5;

	/**
	 * The number of operations of the '<em>Place</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACE_OPERATION_COUNT = IDENTIFIED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.ProfilePointImpl <em>Profile Point</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.ProfilePointImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getProfilePoint()
	 * @generated
	 */
	int PROFILE_POINT = 10;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROFILE_POINT__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Chainage M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROFILE_POINT__CHAINAGE_M = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Elevation M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROFILE_POINT__ELEVATION_M = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Profile Point</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROFILE_POINT_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The number of operations of the '<em>Profile Point</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROFILE_POINT_OPERATION_COUNT = IDENTIFIED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.RunwayImpl <em>Runway</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.RunwayImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getRunway()
	 * @generated
	 */
	int RUNWAY = 11;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Remarks</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY__REMARKS = NAMED__REMARKS;

	/**
	 * The feature id for the '<em><b>Designator</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY__DESIGNATOR = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Length M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY__LENGTH_M = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Width M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY__WIDTH_M = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Code Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY__CODE_NUMBER = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Surface</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY__SURFACE = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Paved</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY__PAVED = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Strip Length M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY__STRIP_LENGTH_M = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Strip Width M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY__STRIP_WIDTH_M = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Centre Line</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY__CENTRE_LINE = NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Ends</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY__ENDS = NAMED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Object Free Width M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY__OBJECT_FREE_WIDTH_M = NAMED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Object Free Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY__OBJECT_FREE_SOURCE = NAMED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Open Data Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY__OPEN_DATA_SOURCE = NAMED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Open Data Licence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY__OPEN_DATA_LICENCE = NAMED_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Open Data Confirmation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY__OPEN_DATA_CONFIRMATION = NAMED_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Open Data Confirmation Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY__OPEN_DATA_CONFIRMATION_DATE = NAMED_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Open Data Confirmation Person</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY__OPEN_DATA_CONFIRMATION_PERSON = NAMED_FEATURE_COUNT + 16;

	/**
	 * The number of structural features of the '<em>Runway</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY_FEATURE_COUNT = NAMED_FEATURE_COUNT + 17;

	/**
	 * The number of operations of the '<em>Runway</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.ApproachHostImpl <em>Approach Host</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.ApproachHostImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getApproachHost()
	 * @generated
	 */
	int APPROACH_HOST = 12;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_HOST__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_HOST__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Remarks</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_HOST__REMARKS = NAMED__REMARKS;

	/**
	 * The feature id for the '<em><b>Designator</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_HOST__DESIGNATOR = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Desired Slope Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_HOST__DESIRED_SLOPE_DEG = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Approach Type</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_HOST__APPROACH_TYPE = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Glide Path</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_HOST__GLIDE_PATH = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Regular Groups</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_HOST__REGULAR_GROUPS = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Aids</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_HOST__AIDS = NAMED_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Approach Host</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_HOST_FEATURE_COUNT = NAMED_FEATURE_COUNT + 6;

	/**
	 * The number of operations of the '<em>Approach Host</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_HOST_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.RunwayEndImpl <em>Runway End</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.RunwayEndImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getRunwayEnd()
	 * @generated
	 */
	int RUNWAY_END = 13;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY_END__ID = APPROACH_HOST__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY_END__NAME = APPROACH_HOST__NAME;

	/**
	 * The feature id for the '<em><b>Remarks</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY_END__REMARKS = APPROACH_HOST__REMARKS;

	/**
	 * The feature id for the '<em><b>Designator</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY_END__DESIGNATOR = APPROACH_HOST__DESIGNATOR;

	/**
	 * The feature id for the '<em><b>Desired Slope Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY_END__DESIRED_SLOPE_DEG = APPROACH_HOST__DESIRED_SLOPE_DEG;

	/**
	 * The feature id for the '<em><b>Approach Type</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY_END__APPROACH_TYPE = APPROACH_HOST__APPROACH_TYPE;

	/**
	 * The feature id for the '<em><b>Glide Path</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY_END__GLIDE_PATH = APPROACH_HOST__GLIDE_PATH;

	/**
	 * The feature id for the '<em><b>Regular Groups</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY_END__REGULAR_GROUPS = APPROACH_HOST__REGULAR_GROUPS;

	/**
	 * The feature id for the '<em><b>Aids</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY_END__AIDS = APPROACH_HOST__AIDS;

	/**
	 * The feature id for the '<em><b>Threshold</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY_END__THRESHOLD = APPROACH_HOST_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>True Bearing Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY_END__TRUE_BEARING_DEG = APPROACH_HOST_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Threshold Elevation M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY_END__THRESHOLD_ELEVATION_M = APPROACH_HOST_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Displaced Threshold M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY_END__DISPLACED_THRESHOLD_M = APPROACH_HOST_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Extremity Elevation M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY_END__EXTREMITY_ELEVATION_M = APPROACH_HOST_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Landing Distance M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY_END__LANDING_DISTANCE_M = APPROACH_HOST_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Aiming Point Distance M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY_END__AIMING_POINT_DISTANCE_M = APPROACH_HOST_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Site Profile</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY_END__SITE_PROFILE = APPROACH_HOST_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Hazardous Terrain</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY_END__HAZARDOUS_TERRAIN = APPROACH_HOST_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Site Profile Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY_END__SITE_PROFILE_SOURCE = APPROACH_HOST_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Site Profile Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY_END__SITE_PROFILE_DATE = APPROACH_HOST_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Site Profile Accuracy M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY_END__SITE_PROFILE_ACCURACY_M = APPROACH_HOST_FEATURE_COUNT + 11;

	/**
	 * The number of structural features of the '<em>Runway End</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY_END_FEATURE_COUNT = APPROACH_HOST_FEATURE_COUNT + 12;

	/**
	 * The number of operations of the '<em>Runway End</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUNWAY_END_OPERATION_COUNT = APPROACH_HOST_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.GlidePathAidImpl <em>Glide Path Aid</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.GlidePathAidImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getGlidePathAid()
	 * @generated
	 */
	int GLIDE_PATH_AID = 14;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLIDE_PATH_AID__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLIDE_PATH_AID__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Remarks</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLIDE_PATH_AID__REMARKS = NAMED__REMARKS;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLIDE_PATH_AID__KIND = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Path Angle Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLIDE_PATH_AID__PATH_ANGLE_DEG = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Reference Datum Height M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLIDE_PATH_AID__REFERENCE_DATUM_HEIGHT_M = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Origin Along M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLIDE_PATH_AID__ORIGIN_ALONG_M = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Antenna Along M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLIDE_PATH_AID__ANTENNA_ALONG_M = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Antenna Right M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLIDE_PATH_AID__ANTENNA_RIGHT_M = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Critical Area Length M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLIDE_PATH_AID__CRITICAL_AREA_LENGTH_M = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Critical Area Width M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLIDE_PATH_AID__CRITICAL_AREA_WIDTH_M = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Critical Area Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLIDE_PATH_AID__CRITICAL_AREA_SOURCE = NAMED_FEATURE_COUNT + 8;

	/**
	 * The number of structural features of the '<em>Glide Path Aid</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLIDE_PATH_AID_FEATURE_COUNT = NAMED_FEATURE_COUNT + 9;

	/**
	 * The number of operations of the '<em>Glide Path Aid</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLIDE_PATH_AID_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.TaxiwayEdgeImpl <em>Taxiway Edge</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.TaxiwayEdgeImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getTaxiwayEdge()
	 * @generated
	 */
	int TAXIWAY_EDGE = 15;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TAXIWAY_EDGE__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TAXIWAY_EDGE__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Remarks</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TAXIWAY_EDGE__REMARKS = NAMED__REMARKS;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TAXIWAY_EDGE__KIND = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Points</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TAXIWAY_EDGE__POINTS = NAMED_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Taxiway Edge</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TAXIWAY_EDGE_FEATURE_COUNT = NAMED_FEATURE_COUNT + 2;

	/**
	 * The number of operations of the '<em>Taxiway Edge</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TAXIWAY_EDGE_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.HelipadImpl <em>Helipad</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.HelipadImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getHelipad()
	 * @generated
	 */
	int HELIPAD = 16;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HELIPAD__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HELIPAD__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Remarks</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HELIPAD__REMARKS = NAMED__REMARKS;

	/**
	 * The feature id for the '<em><b>Place</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HELIPAD__PLACE = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Elevation M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HELIPAD__ELEVATION_M = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Fato Length M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HELIPAD__FATO_LENGTH_M = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Fato Width M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HELIPAD__FATO_WIDTH_M = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Tlof Length M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HELIPAD__TLOF_LENGTH_M = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Tlof Width M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HELIPAD__TLOF_WIDTH_M = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Safety Area Width M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HELIPAD__SAFETY_AREA_WIDTH_M = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Hover Height M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HELIPAD__HOVER_HEIGHT_M = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Eye Above Skids M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HELIPAD__EYE_ABOVE_SKIDS_M = NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Floating</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HELIPAD__FLOATING = NAMED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Directions</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HELIPAD__DIRECTIONS = NAMED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Deck Pitch Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HELIPAD__DECK_PITCH_DEG = NAMED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Deck Roll Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HELIPAD__DECK_ROLL_DEG = NAMED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Deck Heading Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HELIPAD__DECK_HEADING_DEG = NAMED_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Fato Bearing Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HELIPAD__FATO_BEARING_DEG = NAMED_FEATURE_COUNT + 14;

	/**
	 * The number of structural features of the '<em>Helipad</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HELIPAD_FEATURE_COUNT = NAMED_FEATURE_COUNT + 15;

	/**
	 * The number of operations of the '<em>Helipad</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HELIPAD_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.ApproachDirectionImpl <em>Approach Direction</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.ApproachDirectionImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getApproachDirection()
	 * @generated
	 */
	int APPROACH_DIRECTION = 17;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_DIRECTION__ID = APPROACH_HOST__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_DIRECTION__NAME = APPROACH_HOST__NAME;

	/**
	 * The feature id for the '<em><b>Remarks</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_DIRECTION__REMARKS = APPROACH_HOST__REMARKS;

	/**
	 * The feature id for the '<em><b>Designator</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_DIRECTION__DESIGNATOR = APPROACH_HOST__DESIGNATOR;

	/**
	 * The feature id for the '<em><b>Desired Slope Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_DIRECTION__DESIRED_SLOPE_DEG = APPROACH_HOST__DESIRED_SLOPE_DEG;

	/**
	 * The feature id for the '<em><b>Approach Type</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_DIRECTION__APPROACH_TYPE = APPROACH_HOST__APPROACH_TYPE;

	/**
	 * The feature id for the '<em><b>Glide Path</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_DIRECTION__GLIDE_PATH = APPROACH_HOST__GLIDE_PATH;

	/**
	 * The feature id for the '<em><b>Regular Groups</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_DIRECTION__REGULAR_GROUPS = APPROACH_HOST__REGULAR_GROUPS;

	/**
	 * The feature id for the '<em><b>Aids</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_DIRECTION__AIDS = APPROACH_HOST__AIDS;

	/**
	 * The feature id for the '<em><b>True Bearing Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_DIRECTION__TRUE_BEARING_DEG = APPROACH_HOST_FEATURE_COUNT + 0;

	/**
	 * The number of structural features of the '<em>Approach Direction</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_DIRECTION_FEATURE_COUNT = APPROACH_HOST_FEATURE_COUNT + 1;

	/**
	 * The number of operations of the '<em>Approach Direction</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_DIRECTION_OPERATION_COUNT = APPROACH_HOST_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.AeroplaneGroupImpl <em>Aeroplane Group</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.AeroplaneGroupImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getAeroplaneGroup()
	 * @generated
	 */
	int AEROPLANE_GROUP = 18;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AEROPLANE_GROUP__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AEROPLANE_GROUP__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Remarks</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AEROPLANE_GROUP__REMARKS = NAMED__REMARKS;

	/**
	 * The feature id for the '<em><b>Static Cockpit To Wheel M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AEROPLANE_GROUP__STATIC_COCKPIT_TO_WHEEL_M = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Eye To Wheel M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AEROPLANE_GROUP__EYE_TO_WHEEL_M = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Eye To Antenna M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AEROPLANE_GROUP__EYE_TO_ANTENNA_M = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Share Percent</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AEROPLANE_GROUP__SHARE_PERCENT = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Light Non Turbojet</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AEROPLANE_GROUP__LIGHT_NON_TURBOJET = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Max Slope Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AEROPLANE_GROUP__MAX_SLOPE_DEG = NAMED_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Aeroplane Group</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AEROPLANE_GROUP_FEATURE_COUNT = NAMED_FEATURE_COUNT + 6;

	/**
	 * The number of operations of the '<em>Aeroplane Group</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AEROPLANE_GROUP_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.ObstacleImpl <em>Obstacle</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.ObstacleImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getObstacle()
	 * @generated
	 */
	int OBSTACLE = 19;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Remarks</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE__REMARKS = NAMED__REMARKS;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE__KIND = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Places</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE__PLACES = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Top Elevation M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE__TOP_ELEVATION_M = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Horizontal Accuracy M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE__HORIZONTAL_ACCURACY_M = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Vertical Accuracy M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE__VERTICAL_ACCURACY_M = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Lighted</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE__LIGHTED = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Shielded</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE__SHIELDED = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Shielded By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE__SHIELDED_BY = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Shielding Study</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE__SHIELDING_STUDY = NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Shielding Study Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE__SHIELDING_STUDY_DATE = NAMED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Shielding Study Person</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE__SHIELDING_STUDY_PERSON = NAMED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Temporary</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE__TEMPORARY = NAMED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE__SOURCE = NAMED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE__DATE = NAMED_FEATURE_COUNT + 13;

	/**
	 * The number of structural features of the '<em>Obstacle</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE_FEATURE_COUNT = NAMED_FEATURE_COUNT + 14;

	/**
	 * The number of operations of the '<em>Obstacle</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.GroundLevelImpl <em>Ground Level</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.GroundLevelImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getGroundLevel()
	 * @generated
	 */
	int GROUND_LEVEL = 20;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GROUND_LEVEL__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Place</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GROUND_LEVEL__PLACE = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GROUND_LEVEL__SOURCE = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GROUND_LEVEL__DATE = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Vertical Accuracy M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GROUND_LEVEL__VERTICAL_ACCURACY_M = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Ground Level</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GROUND_LEVEL_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The number of operations of the '<em>Ground Level</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GROUND_LEVEL_OPERATION_COUNT = IDENTIFIED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.ObstacleSurveyImpl <em>Obstacle Survey</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.ObstacleSurveyImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getObstacleSurvey()
	 * @generated
	 */
	int OBSTACLE_SURVEY = 21;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE_SURVEY__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE_SURVEY__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Remarks</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE_SURVEY__REMARKS = NAMED__REMARKS;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE_SURVEY__DATE = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE_SURVEY__SOURCE = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Reach M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE_SURVEY__REACH_M = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Half Width M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE_SURVEY__HALF_WIDTH_M = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Horizontal Accuracy M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE_SURVEY__HORIZONTAL_ACCURACY_M = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Vertical Accuracy M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE_SURVEY__VERTICAL_ACCURACY_M = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Hosts</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE_SURVEY__HOSTS = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>All Round</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE_SURVEY__ALL_ROUND = NAMED_FEATURE_COUNT + 7;

	/**
	 * The number of structural features of the '<em>Obstacle Survey</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE_SURVEY_FEATURE_COUNT = NAMED_FEATURE_COUNT + 8;

	/**
	 * The number of operations of the '<em>Obstacle Survey</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OBSTACLE_SURVEY_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.EquipmentTypeImpl <em>Equipment Type</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.EquipmentTypeImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getEquipmentType()
	 * @generated
	 */
	int EQUIPMENT_TYPE = 22;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Remarks</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__REMARKS = NAMED__REMARKS;

	/**
	 * The feature id for the '<em><b>Family Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__FAMILY_KEY = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Beam Width Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__BEAM_WIDTH_DEG = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Transition Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__TRANSITION_MINUTES = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Min Setting Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__MIN_SETTING_DEG = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Max Setting Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__MAX_SETTING_DEG = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Intensity Cd</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__INTENSITY_CD = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Lamp Power W</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__LAMP_POWER_W = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Lamps Per Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__LAMPS_PER_UNIT = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Supply</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__SUPPLY = NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Min Voltage V</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__MIN_VOLTAGE_V = NAMED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Max Voltage V</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__MAX_VOLTAGE_V = NAMED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Mass Kg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__MASS_KG = NAMED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Height Above Ground M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__HEIGHT_ABOVE_GROUND_M = NAMED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Sectors</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__SECTORS = NAMED_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>White Intensity Cd</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__WHITE_INTENSITY_CD = NAMED_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Red Chromaticity Y</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__RED_CHROMATICITY_Y = NAMED_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Brightness Steps</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__BRIGHTNESS_STEPS = NAMED_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>Night Step Percent</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__NIGHT_STEP_PERCENT = NAMED_FEATURE_COUNT + 17;

	/**
	 * The feature id for the '<em><b>Tilt Cut Off Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__TILT_CUT_OFF_DEG = NAMED_FEATURE_COUNT + 18;

	/**
	 * The feature id for the '<em><b>Flash Rate Hz</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__FLASH_RATE_HZ = NAMED_FEATURE_COUNT + 19;

	/**
	 * The feature id for the '<em><b>Flash On Percent</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__FLASH_ON_PERCENT = NAMED_FEATURE_COUNT + 20;

	/**
	 * The feature id for the '<em><b>Modulation Percent</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__MODULATION_PERCENT = NAMED_FEATURE_COUNT + 21;

	/**
	 * The feature id for the '<em><b>Data Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__DATA_SOURCE = NAMED_FEATURE_COUNT + 22;

	/**
	 * The feature id for the '<em><b>Intensities</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__INTENSITIES = NAMED_FEATURE_COUNT + 23;

	/**
	 * The feature id for the '<em><b>Plate Zero</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__PLATE_ZERO = NAMED_FEATURE_COUNT + 24;

	/**
	 * The feature id for the '<em><b>Plate Sense</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__PLATE_SENSE = NAMED_FEATURE_COUNT + 25;

	/**
	 * The feature id for the '<em><b>Plate Step Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__PLATE_STEP_DEG = NAMED_FEATURE_COUNT + 26;

	/**
	 * The feature id for the '<em><b>Slope Scale Step Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__SLOPE_SCALE_STEP_DEG = NAMED_FEATURE_COUNT + 27;

	/**
	 * The feature id for the '<em><b>Bubble Accuracy Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__BUBBLE_ACCURACY_MINUTES = NAMED_FEATURE_COUNT + 28;

	/**
	 * The feature id for the '<em><b>Lower Hair</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__LOWER_HAIR = NAMED_FEATURE_COUNT + 29;

	/**
	 * The feature id for the '<em><b>Upper Hair</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__UPPER_HAIR = NAMED_FEATURE_COUNT + 30;

	/**
	 * The feature id for the '<em><b>Hand Order</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__HAND_ORDER = NAMED_FEATURE_COUNT + 31;

	/**
	 * The feature id for the '<em><b>Recheck Every H</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__RECHECK_EVERY_H = NAMED_FEATURE_COUNT + 32;

	/**
	 * The feature id for the '<em><b>Stabilised To Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__STABILISED_TO_DEG = NAMED_FEATURE_COUNT + 33;

	/**
	 * The feature id for the '<em><b>Printed Descents</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__PRINTED_DESCENTS = NAMED_FEATURE_COUNT + 34;

	/**
	 * The feature id for the '<em><b>Brightness Levels</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE__BRIGHTNESS_LEVELS = NAMED_FEATURE_COUNT + 35;

	/**
	 * The number of structural features of the '<em>Equipment Type</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE_FEATURE_COUNT = NAMED_FEATURE_COUNT + 36;

	/**
	 * The number of operations of the '<em>Equipment Type</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EQUIPMENT_TYPE_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.MeasuredIntensityImpl <em>Measured Intensity</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.MeasuredIntensityImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getMeasuredIntensity()
	 * @generated
	 */
	int MEASURED_INTENSITY = 23;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASURED_INTENSITY__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Colour</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASURED_INTENSITY__COLOUR = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Azimuth Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASURED_INTENSITY__AZIMUTH_DEG = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Elevation Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASURED_INTENSITY__ELEVATION_DEG = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Intensity Cd</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASURED_INTENSITY__INTENSITY_CD = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Measured Intensity</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASURED_INTENSITY_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The number of operations of the '<em>Measured Intensity</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASURED_INTENSITY_OPERATION_COUNT = IDENTIFIED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.PrintedDescentImpl <em>Printed Descent</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.PrintedDescentImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getPrintedDescent()
	 * @generated
	 */
	int PRINTED_DESCENT = 24;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTED_DESCENT__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Speed Kt</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTED_DESCENT__SPEED_KT = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Descent Ftmin</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTED_DESCENT__DESCENT_FTMIN = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Slope Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTED_DESCENT__SLOPE_DEG = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Printed Descent</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTED_DESCENT_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Printed Descent</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTED_DESCENT_OPERATION_COUNT = IDENTIFIED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.BrightnessLevelImpl <em>Brightness Level</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.BrightnessLevelImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getBrightnessLevel()
	 * @generated
	 */
	int BRIGHTNESS_LEVEL = 25;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIGHTNESS_LEVEL__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Power Percent</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIGHTNESS_LEVEL__POWER_PERCENT = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The number of structural features of the '<em>Brightness Level</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIGHTNESS_LEVEL_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The number of operations of the '<em>Brightness Level</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BRIGHTNESS_LEVEL_OPERATION_COUNT = IDENTIFIED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.CircuitImpl <em>Circuit</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.CircuitImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getCircuit()
	 * @generated
	 */
	int CIRCUIT = 26;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CIRCUIT__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CIRCUIT__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Remarks</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CIRCUIT__REMARKS = NAMED__REMARKS;

	/**
	 * The feature id for the '<em><b>Supply</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CIRCUIT__SUPPLY = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Current A</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CIRCUIT__CURRENT_A = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Capacity Ah</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CIRCUIT__CAPACITY_AH = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Brightness Steps</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CIRCUIT__BRIGHTNESS_STEPS = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Aids</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CIRCUIT__AIDS = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Regulator Rating Kva</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CIRCUIT__REGULATOR_RATING_KVA = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Cable Length M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CIRCUIT__CABLE_LENGTH_M = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Cable Resistance Ohm Per Km</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CIRCUIT__CABLE_RESISTANCE_OHM_PER_KM = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Switch Over S</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CIRCUIT__SWITCH_OVER_S = NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Standby</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CIRCUIT__STANDBY = NAMED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Age Left Percent</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CIRCUIT__AGE_LEFT_PERCENT = NAMED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Cold Left Percent</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CIRCUIT__COLD_LEFT_PERCENT = NAMED_FEATURE_COUNT + 11;

	/**
	 * The number of structural features of the '<em>Circuit</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CIRCUIT_FEATURE_COUNT = NAMED_FEATURE_COUNT + 12;

	/**
	 * The number of operations of the '<em>Circuit</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CIRCUIT_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.ApproachAidImpl <em>Approach Aid</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.ApproachAidImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getApproachAid()
	 * @generated
	 */
	int APPROACH_AID = 27;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_AID__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_AID__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Remarks</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_AID__REMARKS = NAMED__REMARKS;

	/**
	 * The feature id for the '<em><b>Family Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_AID__FAMILY_KEY = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Rule Set Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_AID__RULE_SET_KEY = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Side</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_AID__SIDE = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Slope Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_AID__SLOPE_DEG = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Settings</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_AID__SETTINGS = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Clearance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_AID__CLEARANCE = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Chosen Clearance M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_AID__CHOSEN_CLEARANCE_M = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Target Eye Height M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_AID__TARGET_EYE_HEIGHT_M = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Height Group</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_AID__HEIGHT_GROUP = NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Axis Turn Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_AID__AXIS_TURN_DEG = NAMED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Unshifted Distance M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_AID__UNSHIFTED_DISTANCE_M = NAMED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Unshifted Distance Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_AID__UNSHIFTED_DISTANCE_REASON = NAMED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Level Accuracy M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_AID__LEVEL_ACCURACY_M = NAMED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Beam Left Limit Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_AID__BEAM_LEFT_LIMIT_DEG = NAMED_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Beam Right Limit Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_AID__BEAM_RIGHT_LIMIT_DEG = NAMED_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Unit Count</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_AID__UNIT_COUNT = NAMED_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Equipment</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_AID__EQUIPMENT = NAMED_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>Portable</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_AID__PORTABLE = NAMED_FEATURE_COUNT + 17;

	/**
	 * The feature id for the '<em><b>Ground Speed Kt</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_AID__GROUND_SPEED_KT = NAMED_FEATURE_COUNT + 18;

	/**
	 * The feature id for the '<em><b>Air Speed Kt</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_AID__AIR_SPEED_KT = NAMED_FEATURE_COUNT + 19;

	/**
	 * The feature id for the '<em><b>Wind Kt</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_AID__WIND_KT = NAMED_FEATURE_COUNT + 20;

	/**
	 * The feature id for the '<em><b>Descent Ftmin</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_AID__DESCENT_FTMIN = NAMED_FEATURE_COUNT + 21;

	/**
	 * The feature id for the '<em><b>Units</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_AID__UNITS = NAMED_FEATURE_COUNT + 22;

	/**
	 * The feature id for the '<em><b>Inspections</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_AID__INSPECTIONS = NAMED_FEATURE_COUNT + 23;

	/**
	 * The number of structural features of the '<em>Approach Aid</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_AID_FEATURE_COUNT = NAMED_FEATURE_COUNT + 24;

	/**
	 * The number of operations of the '<em>Approach Aid</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROACH_AID_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.LightUnitImpl <em>Light Unit</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.LightUnitImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getLightUnit()
	 * @generated
	 */
	int LIGHT_UNIT = 28;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LIGHT_UNIT__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Label</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LIGHT_UNIT__LABEL = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Bar</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LIGHT_UNIT__BAR = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Along M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LIGHT_UNIT__ALONG_M = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Right M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LIGHT_UNIT__RIGHT_M = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Lens Elevation M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LIGHT_UNIT__LENS_ELEVATION_M = IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Azimuth Offset Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LIGHT_UNIT__AZIMUTH_OFFSET_DEG = IDENTIFIED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Setting Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LIGHT_UNIT__SETTING_DEG = IDENTIFIED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Height Above Ground M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LIGHT_UNIT__HEIGHT_ABOVE_GROUND_M = IDENTIFIED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Frangible</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LIGHT_UNIT__FRANGIBLE = IDENTIFIED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Transitions</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LIGHT_UNIT__TRANSITIONS = IDENTIFIED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Measured</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LIGHT_UNIT__MEASURED = IDENTIFIED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Lamps Out</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LIGHT_UNIT__LAMPS_OUT = IDENTIFIED_FEATURE_COUNT + 11;

	/**
	 * The number of structural features of the '<em>Light Unit</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LIGHT_UNIT_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 12;

	/**
	 * The number of operations of the '<em>Light Unit</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LIGHT_UNIT_OPERATION_COUNT = IDENTIFIED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.MeasuredUnitImpl <em>Measured Unit</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.MeasuredUnitImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getMeasuredUnit()
	 * @generated
	 */
	int MEASURED_UNIT = 29;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASURED_UNIT__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Setting Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASURED_UNIT__SETTING_DEG = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Along M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASURED_UNIT__ALONG_M = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Right M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASURED_UNIT__RIGHT_M = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Lens Elevation M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASURED_UNIT__LENS_ELEVATION_M = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Person</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASURED_UNIT__PERSON = IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASURED_UNIT__DATE = IDENTIFIED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Instrument</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASURED_UNIT__INSTRUMENT = IDENTIFIED_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Measured Unit</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASURED_UNIT_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 7;

	/**
	 * The number of operations of the '<em>Measured Unit</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASURED_UNIT_OPERATION_COUNT = IDENTIFIED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.InspectionImpl <em>Inspection</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.InspectionImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getInspection()
	 * @generated
	 */
	int INSPECTION = 30;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Remarks</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION__REMARKS = NAMED__REMARKS;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION__DATE = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Person</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION__PERSON = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Organisation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION__ORGANISATION = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>On Slope Angle Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION__ON_SLOPE_ANGLE_DEG = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Usable Range M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION__USABLE_RANGE_M = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Azimuth Left Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION__AZIMUTH_LEFT_DEG = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Azimuth Right Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION__AZIMUTH_RIGHT_DEG = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Obstacle Clear</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION__OBSTACLE_CLEAR = NAMED_FEATURE_COUNT + 7;

	/**
	 * The number of structural features of the '<em>Inspection</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION_FEATURE_COUNT = NAMED_FEATURE_COUNT + 8;

	/**
	 * The number of operations of the '<em>Inspection</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.BackgroundImageImpl <em>Background Image</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.BackgroundImageImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getBackgroundImage()
	 * @generated
	 */
	int BACKGROUND_IMAGE = 31;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BACKGROUND_IMAGE__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BACKGROUND_IMAGE__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Remarks</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BACKGROUND_IMAGE__REMARKS = NAMED__REMARKS;

	/**
	 * The feature id for the '<em><b>Path</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BACKGROUND_IMAGE__PATH = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BACKGROUND_IMAGE__SHA256 = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>First Column Px</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BACKGROUND_IMAGE__FIRST_COLUMN_PX = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>First Row Px</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BACKGROUND_IMAGE__FIRST_ROW_PX = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>First Place</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BACKGROUND_IMAGE__FIRST_PLACE = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Second Column Px</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BACKGROUND_IMAGE__SECOND_COLUMN_PX = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Second Row Px</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BACKGROUND_IMAGE__SECOND_ROW_PX = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Second Place</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BACKGROUND_IMAGE__SECOND_PLACE = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Opacity Percent</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BACKGROUND_IMAGE__OPACITY_PERCENT = NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Hidden</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BACKGROUND_IMAGE__HIDDEN = NAMED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BACKGROUND_IMAGE__SOURCE = NAMED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BACKGROUND_IMAGE__DATE = NAMED_FEATURE_COUNT + 11;

	/**
	 * The number of structural features of the '<em>Background Image</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BACKGROUND_IMAGE_FEATURE_COUNT = NAMED_FEATURE_COUNT + 12;

	/**
	 * The number of operations of the '<em>Background Image</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BACKGROUND_IMAGE_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.TransitionImpl <em>Transition</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.TransitionImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getTransition()
	 * @generated
	 */
	int TRANSITION = 32;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSITION__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Offset Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSITION__OFFSET_DEG = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Width Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSITION__WIDTH_MINUTES = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Below Colour</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSITION__BELOW_COLOUR = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Below State</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSITION__BELOW_STATE = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Above Colour</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSITION__ABOVE_COLOUR = IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Above State</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSITION__ABOVE_STATE = IDENTIFIED_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Transition</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSITION_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 6;

	/**
	 * The number of operations of the '<em>Transition</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSITION_OPERATION_COUNT = IDENTIFIED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.impl.ReadBackImpl <em>Read Back</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.impl.ReadBackImpl
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getReadBack()
	 * @generated
	 */
	int READ_BACK = 33;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READ_BACK__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Element Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READ_BACK__ELEMENT_ID = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Person</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READ_BACK__PERSON = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READ_BACK__DATE = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READ_BACK__SHA256 = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Read Back</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READ_BACK_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The number of operations of the '<em>Read Back</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READ_BACK_OPERATION_COUNT = IDENTIFIED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link slopewright.model.ApproachType <em>Approach Type</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.ApproachType
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getApproachType()
	 * @generated
	 */
	int APPROACH_TYPE = 34;

	/**
	 * The meta object id for the '{@link slopewright.model.GlidePathKind <em>Glide Path Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.GlidePathKind
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getGlidePathKind()
	 * @generated
	 */
	int GLIDE_PATH_KIND = 35;

	/**
	 * The meta object id for the '{@link slopewright.model.EdgeKind <em>Edge Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.EdgeKind
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getEdgeKind()
	 * @generated
	 */
	int EDGE_KIND = 36;

	/**
	 * The meta object id for the '{@link slopewright.model.ObstacleKind <em>Obstacle Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.ObstacleKind
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getObstacleKind()
	 * @generated
	 */
	int OBSTACLE_KIND = 37;

	/**
	 * The meta object id for the '{@link slopewright.model.AidSide <em>Aid Side</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.AidSide
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getAidSide()
	 * @generated
	 */
	int AID_SIDE = 38;

	/**
	 * The meta object id for the '{@link slopewright.model.SettingsForm <em>Settings Form</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.SettingsForm
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getSettingsForm()
	 * @generated
	 */
	int SETTINGS_FORM = 39;

	/**
	 * The meta object id for the '{@link slopewright.model.ClearanceChoice <em>Clearance Choice</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.ClearanceChoice
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getClearanceChoice()
	 * @generated
	 */
	int CLEARANCE_CHOICE = 40;

	/**
	 * The meta object id for the '{@link slopewright.model.LightColour <em>Light Colour</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.LightColour
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getLightColour()
	 * @generated
	 */
	int LIGHT_COLOUR = 41;

	/**
	 * The meta object id for the '{@link slopewright.model.LightState <em>Light State</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.LightState
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getLightState()
	 * @generated
	 */
	int LIGHT_STATE = 42;

	/**
	 * The meta object id for the '{@link slopewright.model.ReviewKind <em>Review Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.ReviewKind
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getReviewKind()
	 * @generated
	 */
	int REVIEW_KIND = 43;

	/**
	 * The meta object id for the '{@link slopewright.model.Stage <em>Stage</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.Stage
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getStage()
	 * @generated
	 */
	int STAGE = 44;

	/**
	 * The meta object id for the '{@link slopewright.model.PlateZero <em>Plate Zero</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.PlateZero
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getPlateZero()
	 * @generated
	 */
	int PLATE_ZERO = 45;

	/**
	 * The meta object id for the '{@link slopewright.model.PlateSense <em>Plate Sense</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.PlateSense
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getPlateSense()
	 * @generated
	 */
	int PLATE_SENSE = 46;

	/**
	 * The meta object id for the '{@link slopewright.model.SightHair <em>Sight Hair</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.SightHair
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getSightHair()
	 * @generated
	 */
	int SIGHT_HAIR = 47;

	/**
	 * The meta object id for the '{@link slopewright.model.HandOrder <em>Hand Order</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see slopewright.model.HandOrder
	 * @see slopewright.model.impl.SlopewrightPackageImpl#getHandOrder()
	 * @generated
	 */
	int HAND_ORDER = 48;


	/**
	 * Returns the meta object for class '{@link slopewright.model.Identified <em>Identified</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Identified</em>'.
	 * @see slopewright.model.Identified
	 * @generated
	 */
	EClass getIdentified();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Identified#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see slopewright.model.Identified#getId()
	 * @see #getIdentified()
	 * @generated
	 */
	EAttribute getIdentified_Id();

	/**
	 * Returns the meta object for class '{@link slopewright.model.Named <em>Named</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Named</em>'.
	 * @see slopewright.model.Named
	 * @generated
	 */
	EClass getNamed();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Named#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see slopewright.model.Named#getName()
	 * @see #getNamed()
	 * @generated
	 */
	EAttribute getNamed_Name();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Named#getRemarks <em>Remarks</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Remarks</em>'.
	 * @see slopewright.model.Named#getRemarks()
	 * @see #getNamed()
	 * @generated
	 */
	EAttribute getNamed_Remarks();

	/**
	 * Returns the meta object for class '{@link slopewright.model.Project <em>Project</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Project</em>'.
	 * @see slopewright.model.Project
	 * @generated
	 */
	EClass getProject();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Project#getRevision <em>Revision</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Revision</em>'.
	 * @see slopewright.model.Project#getRevision()
	 * @see #getProject()
	 * @generated
	 */
	EAttribute getProject_Revision();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Project#getAuthor <em>Author</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Author</em>'.
	 * @see slopewright.model.Project#getAuthor()
	 * @see #getProject()
	 * @generated
	 */
	EAttribute getProject_Author();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Project#getOrganisation <em>Organisation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Organisation</em>'.
	 * @see slopewright.model.Project#getOrganisation()
	 * @see #getProject()
	 * @generated
	 */
	EAttribute getProject_Organisation();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Project#getDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date</em>'.
	 * @see slopewright.model.Project#getDate()
	 * @see #getProject()
	 * @generated
	 */
	EAttribute getProject_Date();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Project#getRuleSetKey <em>Rule Set Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rule Set Key</em>'.
	 * @see slopewright.model.Project#getRuleSetKey()
	 * @see #getProject()
	 * @generated
	 */
	EAttribute getProject_RuleSetKey();

	/**
	 * Returns the meta object for the containment reference '{@link slopewright.model.Project#getAerodrome <em>Aerodrome</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Aerodrome</em>'.
	 * @see slopewright.model.Project#getAerodrome()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_Aerodrome();

	/**
	 * Returns the meta object for the containment reference list '{@link slopewright.model.Project#getOverrides <em>Overrides</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Overrides</em>'.
	 * @see slopewright.model.Project#getOverrides()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_Overrides();

	/**
	 * Returns the meta object for the containment reference list '{@link slopewright.model.Project#getConfirmations <em>Confirmations</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Confirmations</em>'.
	 * @see slopewright.model.Project#getConfirmations()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_Confirmations();

	/**
	 * Returns the meta object for the containment reference list '{@link slopewright.model.Project#getReviewNotes <em>Review Notes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Review Notes</em>'.
	 * @see slopewright.model.Project#getReviewNotes()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_ReviewNotes();

	/**
	 * Returns the meta object for the containment reference list '{@link slopewright.model.Project#getSurveyBlocks <em>Survey Blocks</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Survey Blocks</em>'.
	 * @see slopewright.model.Project#getSurveyBlocks()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_SurveyBlocks();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Project#getDocumentNumber <em>Document Number</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Document Number</em>'.
	 * @see slopewright.model.Project#getDocumentNumber()
	 * @see #getProject()
	 * @generated
	 */
	EAttribute getProject_DocumentNumber();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Project#getClient <em>Client</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Client</em>'.
	 * @see slopewright.model.Project#getClient()
	 * @see #getProject()
	 * @generated
	 */
	EAttribute getProject_Client();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Project#getCheckedBy <em>Checked By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Checked By</em>'.
	 * @see slopewright.model.Project#getCheckedBy()
	 * @see #getProject()
	 * @generated
	 */
	EAttribute getProject_CheckedBy();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Project#getApprovedBy <em>Approved By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Approved By</em>'.
	 * @see slopewright.model.Project#getApprovedBy()
	 * @see #getProject()
	 * @generated
	 */
	EAttribute getProject_ApprovedBy();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Project#getStage <em>Stage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stage</em>'.
	 * @see slopewright.model.Project#getStage()
	 * @see #getProject()
	 * @generated
	 */
	EAttribute getProject_Stage();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Project#getBookPath <em>Book Path</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Book Path</em>'.
	 * @see slopewright.model.Project#getBookPath()
	 * @see #getProject()
	 * @generated
	 */
	EAttribute getProject_BookPath();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Project#getBookSha256 <em>Book Sha256</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Book Sha256</em>'.
	 * @see slopewright.model.Project#getBookSha256()
	 * @see #getProject()
	 * @generated
	 */
	EAttribute getProject_BookSha256();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Project#getRuleSetFolder <em>Rule Set Folder</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rule Set Folder</em>'.
	 * @see slopewright.model.Project#getRuleSetFolder()
	 * @see #getProject()
	 * @generated
	 */
	EAttribute getProject_RuleSetFolder();

	/**
	 * Returns the meta object for the containment reference list '{@link slopewright.model.Project#getReadBacks <em>Read Backs</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Read Backs</em>'.
	 * @see slopewright.model.Project#getReadBacks()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_ReadBacks();

	/**
	 * Returns the meta object for class '{@link slopewright.model.ValueOverride <em>Value Override</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Value Override</em>'.
	 * @see slopewright.model.ValueOverride
	 * @generated
	 */
	EClass getValueOverride();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ValueOverride#getValueKey <em>Value Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Value Key</em>'.
	 * @see slopewright.model.ValueOverride#getValueKey()
	 * @see #getValueOverride()
	 * @generated
	 */
	EAttribute getValueOverride_ValueKey();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ValueOverride#getRuleSetKey <em>Rule Set Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rule Set Key</em>'.
	 * @see slopewright.model.ValueOverride#getRuleSetKey()
	 * @see #getValueOverride()
	 * @generated
	 */
	EAttribute getValueOverride_RuleSetKey();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ValueOverride#getValue <em>Value</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Value</em>'.
	 * @see slopewright.model.ValueOverride#getValue()
	 * @see #getValueOverride()
	 * @generated
	 */
	EAttribute getValueOverride_Value();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ValueOverride#getReason <em>Reason</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reason</em>'.
	 * @see slopewright.model.ValueOverride#getReason()
	 * @see #getValueOverride()
	 * @generated
	 */
	EAttribute getValueOverride_Reason();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ValueOverride#getPerson <em>Person</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Person</em>'.
	 * @see slopewright.model.ValueOverride#getPerson()
	 * @see #getValueOverride()
	 * @generated
	 */
	EAttribute getValueOverride_Person();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ValueOverride#getDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date</em>'.
	 * @see slopewright.model.ValueOverride#getDate()
	 * @see #getValueOverride()
	 * @generated
	 */
	EAttribute getValueOverride_Date();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ValueOverride#getUnit <em>Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unit</em>'.
	 * @see slopewright.model.ValueOverride#getUnit()
	 * @see #getValueOverride()
	 * @generated
	 */
	EAttribute getValueOverride_Unit();

	/**
	 * Returns the meta object for class '{@link slopewright.model.ValueConfirmation <em>Value Confirmation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Value Confirmation</em>'.
	 * @see slopewright.model.ValueConfirmation
	 * @generated
	 */
	EClass getValueConfirmation();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ValueConfirmation#getValueKey <em>Value Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Value Key</em>'.
	 * @see slopewright.model.ValueConfirmation#getValueKey()
	 * @see #getValueConfirmation()
	 * @generated
	 */
	EAttribute getValueConfirmation_ValueKey();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ValueConfirmation#getRuleSetKey <em>Rule Set Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rule Set Key</em>'.
	 * @see slopewright.model.ValueConfirmation#getRuleSetKey()
	 * @see #getValueConfirmation()
	 * @generated
	 */
	EAttribute getValueConfirmation_RuleSetKey();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ValueConfirmation#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see slopewright.model.ValueConfirmation#getSource()
	 * @see #getValueConfirmation()
	 * @generated
	 */
	EAttribute getValueConfirmation_Source();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ValueConfirmation#getPerson <em>Person</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Person</em>'.
	 * @see slopewright.model.ValueConfirmation#getPerson()
	 * @see #getValueConfirmation()
	 * @generated
	 */
	EAttribute getValueConfirmation_Person();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ValueConfirmation#getDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date</em>'.
	 * @see slopewright.model.ValueConfirmation#getDate()
	 * @see #getValueConfirmation()
	 * @generated
	 */
	EAttribute getValueConfirmation_Date();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ValueConfirmation#getValue <em>Value</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Value</em>'.
	 * @see slopewright.model.ValueConfirmation#getValue()
	 * @see #getValueConfirmation()
	 * @generated
	 */
	EAttribute getValueConfirmation_Value();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ValueConfirmation#getUnit <em>Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unit</em>'.
	 * @see slopewright.model.ValueConfirmation#getUnit()
	 * @see #getValueConfirmation()
	 * @generated
	 */
	EAttribute getValueConfirmation_Unit();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ValueConfirmation#getEdition <em>Edition</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Edition</em>'.
	 * @see slopewright.model.ValueConfirmation#getEdition()
	 * @see #getValueConfirmation()
	 * @generated
	 */
	EAttribute getValueConfirmation_Edition();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ValueConfirmation#getClause <em>Clause</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Clause</em>'.
	 * @see slopewright.model.ValueConfirmation#getClause()
	 * @see #getValueConfirmation()
	 * @generated
	 */
	EAttribute getValueConfirmation_Clause();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ValueConfirmation#getSecondPerson <em>Second Person</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Second Person</em>'.
	 * @see slopewright.model.ValueConfirmation#getSecondPerson()
	 * @see #getValueConfirmation()
	 * @generated
	 */
	EAttribute getValueConfirmation_SecondPerson();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ValueConfirmation#getFromBook <em>From Book</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>From Book</em>'.
	 * @see slopewright.model.ValueConfirmation#getFromBook()
	 * @see #getValueConfirmation()
	 * @generated
	 */
	EAttribute getValueConfirmation_FromBook();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ValueConfirmation#getSecondDate <em>Second Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Second Date</em>'.
	 * @see slopewright.model.ValueConfirmation#getSecondDate()
	 * @see #getValueConfirmation()
	 * @generated
	 */
	EAttribute getValueConfirmation_SecondDate();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ValueConfirmation#getRejected <em>Rejected</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rejected</em>'.
	 * @see slopewright.model.ValueConfirmation#getRejected()
	 * @see #getValueConfirmation()
	 * @generated
	 */
	EAttribute getValueConfirmation_Rejected();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ValueConfirmation#getReason <em>Reason</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reason</em>'.
	 * @see slopewright.model.ValueConfirmation#getReason()
	 * @see #getValueConfirmation()
	 * @generated
	 */
	EAttribute getValueConfirmation_Reason();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ValueConfirmation#getSha256 <em>Sha256</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sha256</em>'.
	 * @see slopewright.model.ValueConfirmation#getSha256()
	 * @see #getValueConfirmation()
	 * @generated
	 */
	EAttribute getValueConfirmation_Sha256();

	/**
	 * Returns the meta object for class '{@link slopewright.model.ReviewNote <em>Review Note</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Review Note</em>'.
	 * @see slopewright.model.ReviewNote
	 * @generated
	 */
	EClass getReviewNote();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ReviewNote#getElementId <em>Element Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Element Id</em>'.
	 * @see slopewright.model.ReviewNote#getElementId()
	 * @see #getReviewNote()
	 * @generated
	 */
	EAttribute getReviewNote_ElementId();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ReviewNote#getRuleId <em>Rule Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rule Id</em>'.
	 * @see slopewright.model.ReviewNote#getRuleId()
	 * @see #getReviewNote()
	 * @generated
	 */
	EAttribute getReviewNote_RuleId();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ReviewNote#getText <em>Text</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Text</em>'.
	 * @see slopewright.model.ReviewNote#getText()
	 * @see #getReviewNote()
	 * @generated
	 */
	EAttribute getReviewNote_Text();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ReviewNote#getPerson <em>Person</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Person</em>'.
	 * @see slopewright.model.ReviewNote#getPerson()
	 * @see #getReviewNote()
	 * @generated
	 */
	EAttribute getReviewNote_Person();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ReviewNote#getDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date</em>'.
	 * @see slopewright.model.ReviewNote#getDate()
	 * @see #getReviewNote()
	 * @generated
	 */
	EAttribute getReviewNote_Date();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ReviewNote#getResolved <em>Resolved</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Resolved</em>'.
	 * @see slopewright.model.ReviewNote#getResolved()
	 * @see #getReviewNote()
	 * @generated
	 */
	EAttribute getReviewNote_Resolved();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ReviewNote#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see slopewright.model.ReviewNote#getKind()
	 * @see #getReviewNote()
	 * @generated
	 */
	EAttribute getReviewNote_Kind();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ReviewNote#getNoteId <em>Note Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Note Id</em>'.
	 * @see slopewright.model.ReviewNote#getNoteId()
	 * @see #getReviewNote()
	 * @generated
	 */
	EAttribute getReviewNote_NoteId();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ReviewNote#getSha256 <em>Sha256</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sha256</em>'.
	 * @see slopewright.model.ReviewNote#getSha256()
	 * @see #getReviewNote()
	 * @generated
	 */
	EAttribute getReviewNote_Sha256();

	/**
	 * Returns the meta object for class '{@link slopewright.model.SurveyBlock <em>Survey Block</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Survey Block</em>'.
	 * @see slopewright.model.SurveyBlock
	 * @generated
	 */
	EClass getSurveyBlock();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.SurveyBlock#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see slopewright.model.SurveyBlock#getKind()
	 * @see #getSurveyBlock()
	 * @generated
	 */
	EAttribute getSurveyBlock_Kind();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.SurveyBlock#getPath <em>Path</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Path</em>'.
	 * @see slopewright.model.SurveyBlock#getPath()
	 * @see #getSurveyBlock()
	 * @generated
	 */
	EAttribute getSurveyBlock_Path();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.SurveyBlock#getSha256 <em>Sha256</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sha256</em>'.
	 * @see slopewright.model.SurveyBlock#getSha256()
	 * @see #getSurveyBlock()
	 * @generated
	 */
	EAttribute getSurveyBlock_Sha256();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.SurveyBlock#getPointCount <em>Point Count</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Point Count</em>'.
	 * @see slopewright.model.SurveyBlock#getPointCount()
	 * @see #getSurveyBlock()
	 * @generated
	 */
	EAttribute getSurveyBlock_PointCount();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.SurveyBlock#getHorizontalAccuracyM <em>Horizontal Accuracy M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Horizontal Accuracy M</em>'.
	 * @see slopewright.model.SurveyBlock#getHorizontalAccuracyM()
	 * @see #getSurveyBlock()
	 * @generated
	 */
	EAttribute getSurveyBlock_HorizontalAccuracyM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.SurveyBlock#getVerticalAccuracyM <em>Vertical Accuracy M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Vertical Accuracy M</em>'.
	 * @see slopewright.model.SurveyBlock#getVerticalAccuracyM()
	 * @see #getSurveyBlock()
	 * @generated
	 */
	EAttribute getSurveyBlock_VerticalAccuracyM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.SurveyBlock#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see slopewright.model.SurveyBlock#getSource()
	 * @see #getSurveyBlock()
	 * @generated
	 */
	EAttribute getSurveyBlock_Source();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.SurveyBlock#getDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date</em>'.
	 * @see slopewright.model.SurveyBlock#getDate()
	 * @see #getSurveyBlock()
	 * @generated
	 */
	EAttribute getSurveyBlock_Date();

	/**
	 * Returns the meta object for class '{@link slopewright.model.Aerodrome <em>Aerodrome</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Aerodrome</em>'.
	 * @see slopewright.model.Aerodrome
	 * @generated
	 */
	EClass getAerodrome();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Aerodrome#getIdentifier <em>Identifier</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Identifier</em>'.
	 * @see slopewright.model.Aerodrome#getIdentifier()
	 * @see #getAerodrome()
	 * @generated
	 */
	EAttribute getAerodrome_Identifier();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Aerodrome#getLatitudeDeg <em>Latitude Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Latitude Deg</em>'.
	 * @see slopewright.model.Aerodrome#getLatitudeDeg()
	 * @see #getAerodrome()
	 * @generated
	 */
	EAttribute getAerodrome_LatitudeDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Aerodrome#getLongitudeDeg <em>Longitude Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Longitude Deg</em>'.
	 * @see slopewright.model.Aerodrome#getLongitudeDeg()
	 * @see #getAerodrome()
	 * @generated
	 */
	EAttribute getAerodrome_LongitudeDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Aerodrome#getElevationM <em>Elevation M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Elevation M</em>'.
	 * @see slopewright.model.Aerodrome#getElevationM()
	 * @see #getAerodrome()
	 * @generated
	 */
	EAttribute getAerodrome_ElevationM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Aerodrome#getVerticalDatum <em>Vertical Datum</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Vertical Datum</em>'.
	 * @see slopewright.model.Aerodrome#getVerticalDatum()
	 * @see #getAerodrome()
	 * @generated
	 */
	EAttribute getAerodrome_VerticalDatum();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Aerodrome#getGeoidOffsetM <em>Geoid Offset M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Geoid Offset M</em>'.
	 * @see slopewright.model.Aerodrome#getGeoidOffsetM()
	 * @see #getAerodrome()
	 * @generated
	 */
	EAttribute getAerodrome_GeoidOffsetM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Aerodrome#getCoordinateReference <em>Coordinate Reference</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Coordinate Reference</em>'.
	 * @see slopewright.model.Aerodrome#getCoordinateReference()
	 * @see #getAerodrome()
	 * @generated
	 */
	EAttribute getAerodrome_CoordinateReference();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Aerodrome#getCoordinateEpoch <em>Coordinate Epoch</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Coordinate Epoch</em>'.
	 * @see slopewright.model.Aerodrome#getCoordinateEpoch()
	 * @see #getAerodrome()
	 * @generated
	 */
	EAttribute getAerodrome_CoordinateEpoch();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Aerodrome#getCoordinateAccuracyM <em>Coordinate Accuracy M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Coordinate Accuracy M</em>'.
	 * @see slopewright.model.Aerodrome#getCoordinateAccuracyM()
	 * @see #getAerodrome()
	 * @generated
	 */
	EAttribute getAerodrome_CoordinateAccuracyM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Aerodrome#getGridRotationDeg <em>Grid Rotation Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Grid Rotation Deg</em>'.
	 * @see slopewright.model.Aerodrome#getGridRotationDeg()
	 * @see #getAerodrome()
	 * @generated
	 */
	EAttribute getAerodrome_GridRotationDeg();

	/**
	 * Returns the meta object for the containment reference '{@link slopewright.model.Aerodrome#getMagneticVariation <em>Magnetic Variation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Magnetic Variation</em>'.
	 * @see slopewright.model.Aerodrome#getMagneticVariation()
	 * @see #getAerodrome()
	 * @generated
	 */
	EReference getAerodrome_MagneticVariation();

	/**
	 * Returns the meta object for the containment reference list '{@link slopewright.model.Aerodrome#getRunways <em>Runways</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Runways</em>'.
	 * @see slopewright.model.Aerodrome#getRunways()
	 * @see #getAerodrome()
	 * @generated
	 */
	EReference getAerodrome_Runways();

	/**
	 * Returns the meta object for the containment reference list '{@link slopewright.model.Aerodrome#getHelipads <em>Helipads</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Helipads</em>'.
	 * @see slopewright.model.Aerodrome#getHelipads()
	 * @see #getAerodrome()
	 * @generated
	 */
	EReference getAerodrome_Helipads();

	/**
	 * Returns the meta object for the containment reference list '{@link slopewright.model.Aerodrome#getAeroplaneGroups <em>Aeroplane Groups</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Aeroplane Groups</em>'.
	 * @see slopewright.model.Aerodrome#getAeroplaneGroups()
	 * @see #getAerodrome()
	 * @generated
	 */
	EReference getAerodrome_AeroplaneGroups();

	/**
	 * Returns the meta object for the containment reference list '{@link slopewright.model.Aerodrome#getObstacles <em>Obstacles</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Obstacles</em>'.
	 * @see slopewright.model.Aerodrome#getObstacles()
	 * @see #getAerodrome()
	 * @generated
	 */
	EReference getAerodrome_Obstacles();

	/**
	 * Returns the meta object for the containment reference list '{@link slopewright.model.Aerodrome#getGroundLevels <em>Ground Levels</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Ground Levels</em>'.
	 * @see slopewright.model.Aerodrome#getGroundLevels()
	 * @see #getAerodrome()
	 * @generated
	 */
	EReference getAerodrome_GroundLevels();

	/**
	 * Returns the meta object for the containment reference list '{@link slopewright.model.Aerodrome#getTaxiwayEdges <em>Taxiway Edges</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Taxiway Edges</em>'.
	 * @see slopewright.model.Aerodrome#getTaxiwayEdges()
	 * @see #getAerodrome()
	 * @generated
	 */
	EReference getAerodrome_TaxiwayEdges();

	/**
	 * Returns the meta object for the containment reference list '{@link slopewright.model.Aerodrome#getCircuits <em>Circuits</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Circuits</em>'.
	 * @see slopewright.model.Aerodrome#getCircuits()
	 * @see #getAerodrome()
	 * @generated
	 */
	EReference getAerodrome_Circuits();

	/**
	 * Returns the meta object for the containment reference list '{@link slopewright.model.Aerodrome#getEquipmentTypes <em>Equipment Types</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Equipment Types</em>'.
	 * @see slopewright.model.Aerodrome#getEquipmentTypes()
	 * @see #getAerodrome()
	 * @generated
	 */
	EReference getAerodrome_EquipmentTypes();

	/**
	 * Returns the meta object for the containment reference list '{@link slopewright.model.Aerodrome#getBackgroundImages <em>Background Images</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Background Images</em>'.
	 * @see slopewright.model.Aerodrome#getBackgroundImages()
	 * @see #getAerodrome()
	 * @generated
	 */
	EReference getAerodrome_BackgroundImages();

	/**
	 * Returns the meta object for the containment reference list '{@link slopewright.model.Aerodrome#getObstacleSurveys <em>Obstacle Surveys</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Obstacle Surveys</em>'.
	 * @see slopewright.model.Aerodrome#getObstacleSurveys()
	 * @see #getAerodrome()
	 * @generated
	 */
	EReference getAerodrome_ObstacleSurveys();

	/**
	 * Returns the meta object for class '{@link slopewright.model.MagneticVariation <em>Magnetic Variation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Magnetic Variation</em>'.
	 * @see slopewright.model.MagneticVariation
	 * @generated
	 */
	EClass getMagneticVariation();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.MagneticVariation#getVariationDeg <em>Variation Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Variation Deg</em>'.
	 * @see slopewright.model.MagneticVariation#getVariationDeg()
	 * @see #getMagneticVariation()
	 * @generated
	 */
	EAttribute getMagneticVariation_VariationDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.MagneticVariation#getAnnualChangeDeg <em>Annual Change Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Annual Change Deg</em>'.
	 * @see slopewright.model.MagneticVariation#getAnnualChangeDeg()
	 * @see #getMagneticVariation()
	 * @generated
	 */
	EAttribute getMagneticVariation_AnnualChangeDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.MagneticVariation#getDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date</em>'.
	 * @see slopewright.model.MagneticVariation#getDate()
	 * @see #getMagneticVariation()
	 * @generated
	 */
	EAttribute getMagneticVariation_Date();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.MagneticVariation#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see slopewright.model.MagneticVariation#getSource()
	 * @see #getMagneticVariation()
	 * @generated
	 */
	EAttribute getMagneticVariation_Source();

	/**
	 * Returns the meta object for class '{@link slopewright.model.Place <em>Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Place</em>'.
	 * @see slopewright.model.Place
	 * @generated
	 */
	EClass getPlace();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Place#getLatitudeDeg <em>Latitude Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Latitude Deg</em>'.
	 * @see slopewright.model.Place#getLatitudeDeg()
	 * @see #getPlace()
	 * @generated
	 */
	EAttribute getPlace_LatitudeDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Place#getLongitudeDeg <em>Longitude Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Longitude Deg</em>'.
	 * @see slopewright.model.Place#getLongitudeDeg()
	 * @see #getPlace()
	 * @generated
	 */
	EAttribute getPlace_LongitudeDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Place#getEastM <em>East M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>East M</em>'.
	 * @see slopewright.model.Place#getEastM()
	 * @see #getPlace()
	 * @generated
	 */
	EAttribute getPlace_EastM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Place#getNorthM <em>North M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>North M</em>'.
	 * @see slopewright.model.Place#getNorthM()
	 * @see #getPlace()
	 * @generated
	 */
	EAttribute getPlace_NorthM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Place#getElevationM <em>Elevation M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Elevation M</em>'.
	 * @see slopewright.model.Place#getElevationM()
	 * @see #getPlace()
	 * @generated
	 */
	EAttribute getPlace_ElevationM();

	/**
	 * Returns the meta object for class '{@link slopewright.model.ProfilePoint <em>Profile Point</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Profile Point</em>'.
	 * @see slopewright.model.ProfilePoint
	 * @generated
	 */
	EClass getProfilePoint();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ProfilePoint#getChainageM <em>Chainage M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Chainage M</em>'.
	 * @see slopewright.model.ProfilePoint#getChainageM()
	 * @see #getProfilePoint()
	 * @generated
	 */
	EAttribute getProfilePoint_ChainageM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ProfilePoint#getElevationM <em>Elevation M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Elevation M</em>'.
	 * @see slopewright.model.ProfilePoint#getElevationM()
	 * @see #getProfilePoint()
	 * @generated
	 */
	EAttribute getProfilePoint_ElevationM();

	/**
	 * Returns the meta object for class '{@link slopewright.model.Runway <em>Runway</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Runway</em>'.
	 * @see slopewright.model.Runway
	 * @generated
	 */
	EClass getRunway();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Runway#getDesignator <em>Designator</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Designator</em>'.
	 * @see slopewright.model.Runway#getDesignator()
	 * @see #getRunway()
	 * @generated
	 */
	EAttribute getRunway_Designator();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Runway#getLengthM <em>Length M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length M</em>'.
	 * @see slopewright.model.Runway#getLengthM()
	 * @see #getRunway()
	 * @generated
	 */
	EAttribute getRunway_LengthM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Runway#getWidthM <em>Width M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width M</em>'.
	 * @see slopewright.model.Runway#getWidthM()
	 * @see #getRunway()
	 * @generated
	 */
	EAttribute getRunway_WidthM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Runway#getCodeNumber <em>Code Number</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Code Number</em>'.
	 * @see slopewright.model.Runway#getCodeNumber()
	 * @see #getRunway()
	 * @generated
	 */
	EAttribute getRunway_CodeNumber();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Runway#getSurface <em>Surface</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Surface</em>'.
	 * @see slopewright.model.Runway#getSurface()
	 * @see #getRunway()
	 * @generated
	 */
	EAttribute getRunway_Surface();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Runway#getPaved <em>Paved</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Paved</em>'.
	 * @see slopewright.model.Runway#getPaved()
	 * @see #getRunway()
	 * @generated
	 */
	EAttribute getRunway_Paved();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Runway#getStripLengthM <em>Strip Length M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Strip Length M</em>'.
	 * @see slopewright.model.Runway#getStripLengthM()
	 * @see #getRunway()
	 * @generated
	 */
	EAttribute getRunway_StripLengthM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Runway#getStripWidthM <em>Strip Width M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Strip Width M</em>'.
	 * @see slopewright.model.Runway#getStripWidthM()
	 * @see #getRunway()
	 * @generated
	 */
	EAttribute getRunway_StripWidthM();

	/**
	 * Returns the meta object for the containment reference list '{@link slopewright.model.Runway#getCentreLine <em>Centre Line</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Centre Line</em>'.
	 * @see slopewright.model.Runway#getCentreLine()
	 * @see #getRunway()
	 * @generated
	 */
	EReference getRunway_CentreLine();

	/**
	 * Returns the meta object for the containment reference list '{@link slopewright.model.Runway#getEnds <em>Ends</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Ends</em>'.
	 * @see slopewright.model.Runway#getEnds()
	 * @see #getRunway()
	 * @generated
	 */
	EReference getRunway_Ends();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Runway#getObjectFreeWidthM <em>Object Free Width M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Object Free Width M</em>'.
	 * @see slopewright.model.Runway#getObjectFreeWidthM()
	 * @see #getRunway()
	 * @generated
	 */
	EAttribute getRunway_ObjectFreeWidthM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Runway#getObjectFreeSource <em>Object Free Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Object Free Source</em>'.
	 * @see slopewright.model.Runway#getObjectFreeSource()
	 * @see #getRunway()
	 * @generated
	 */
	EAttribute getRunway_ObjectFreeSource();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Runway#getOpenDataSource <em>Open Data Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Open Data Source</em>'.
	 * @see slopewright.model.Runway#getOpenDataSource()
	 * @see #getRunway()
	 * @generated
	 */
	EAttribute getRunway_OpenDataSource();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Runway#getOpenDataLicence <em>Open Data Licence</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Open Data Licence</em>'.
	 * @see slopewright.model.Runway#getOpenDataLicence()
	 * @see #getRunway()
	 * @generated
	 */
	EAttribute getRunway_OpenDataLicence();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Runway#getOpenDataConfirmation <em>Open Data Confirmation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Open Data Confirmation</em>'.
	 * @see slopewright.model.Runway#getOpenDataConfirmation()
	 * @see #getRunway()
	 * @generated
	 */
	EAttribute getRunway_OpenDataConfirmation();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Runway#getOpenDataConfirmationDate <em>Open Data Confirmation Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Open Data Confirmation Date</em>'.
	 * @see slopewright.model.Runway#getOpenDataConfirmationDate()
	 * @see #getRunway()
	 * @generated
	 */
	EAttribute getRunway_OpenDataConfirmationDate();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Runway#getOpenDataConfirmationPerson <em>Open Data Confirmation Person</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Open Data Confirmation Person</em>'.
	 * @see slopewright.model.Runway#getOpenDataConfirmationPerson()
	 * @see #getRunway()
	 * @generated
	 */
	EAttribute getRunway_OpenDataConfirmationPerson();

	/**
	 * Returns the meta object for class '{@link slopewright.model.ApproachHost <em>Approach Host</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Approach Host</em>'.
	 * @see slopewright.model.ApproachHost
	 * @generated
	 */
	EClass getApproachHost();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ApproachHost#getDesignator <em>Designator</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Designator</em>'.
	 * @see slopewright.model.ApproachHost#getDesignator()
	 * @see #getApproachHost()
	 * @generated
	 */
	EAttribute getApproachHost_Designator();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ApproachHost#getDesiredSlopeDeg <em>Desired Slope Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Desired Slope Deg</em>'.
	 * @see slopewright.model.ApproachHost#getDesiredSlopeDeg()
	 * @see #getApproachHost()
	 * @generated
	 */
	EAttribute getApproachHost_DesiredSlopeDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ApproachHost#getApproachType <em>Approach Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Approach Type</em>'.
	 * @see slopewright.model.ApproachHost#getApproachType()
	 * @see #getApproachHost()
	 * @generated
	 */
	EAttribute getApproachHost_ApproachType();

	/**
	 * Returns the meta object for the containment reference '{@link slopewright.model.ApproachHost#getGlidePath <em>Glide Path</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Glide Path</em>'.
	 * @see slopewright.model.ApproachHost#getGlidePath()
	 * @see #getApproachHost()
	 * @generated
	 */
	EReference getApproachHost_GlidePath();

	/**
	 * Returns the meta object for the reference list '{@link slopewright.model.ApproachHost#getRegularGroups <em>Regular Groups</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Regular Groups</em>'.
	 * @see slopewright.model.ApproachHost#getRegularGroups()
	 * @see #getApproachHost()
	 * @generated
	 */
	EReference getApproachHost_RegularGroups();

	/**
	 * Returns the meta object for the containment reference list '{@link slopewright.model.ApproachHost#getAids <em>Aids</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Aids</em>'.
	 * @see slopewright.model.ApproachHost#getAids()
	 * @see #getApproachHost()
	 * @generated
	 */
	EReference getApproachHost_Aids();

	/**
	 * Returns the meta object for class '{@link slopewright.model.RunwayEnd <em>Runway End</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Runway End</em>'.
	 * @see slopewright.model.RunwayEnd
	 * @generated
	 */
	EClass getRunwayEnd();

	/**
	 * Returns the meta object for the containment reference '{@link slopewright.model.RunwayEnd#getThreshold <em>Threshold</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Threshold</em>'.
	 * @see slopewright.model.RunwayEnd#getThreshold()
	 * @see #getRunwayEnd()
	 * @generated
	 */
	EReference getRunwayEnd_Threshold();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.RunwayEnd#getTrueBearingDeg <em>True Bearing Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>True Bearing Deg</em>'.
	 * @see slopewright.model.RunwayEnd#getTrueBearingDeg()
	 * @see #getRunwayEnd()
	 * @generated
	 */
	EAttribute getRunwayEnd_TrueBearingDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.RunwayEnd#getThresholdElevationM <em>Threshold Elevation M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Threshold Elevation M</em>'.
	 * @see slopewright.model.RunwayEnd#getThresholdElevationM()
	 * @see #getRunwayEnd()
	 * @generated
	 */
	EAttribute getRunwayEnd_ThresholdElevationM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.RunwayEnd#getDisplacedThresholdM <em>Displaced Threshold M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Displaced Threshold M</em>'.
	 * @see slopewright.model.RunwayEnd#getDisplacedThresholdM()
	 * @see #getRunwayEnd()
	 * @generated
	 */
	EAttribute getRunwayEnd_DisplacedThresholdM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.RunwayEnd#getExtremityElevationM <em>Extremity Elevation M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Extremity Elevation M</em>'.
	 * @see slopewright.model.RunwayEnd#getExtremityElevationM()
	 * @see #getRunwayEnd()
	 * @generated
	 */
	EAttribute getRunwayEnd_ExtremityElevationM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.RunwayEnd#getLandingDistanceM <em>Landing Distance M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Landing Distance M</em>'.
	 * @see slopewright.model.RunwayEnd#getLandingDistanceM()
	 * @see #getRunwayEnd()
	 * @generated
	 */
	EAttribute getRunwayEnd_LandingDistanceM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.RunwayEnd#getAimingPointDistanceM <em>Aiming Point Distance M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Aiming Point Distance M</em>'.
	 * @see slopewright.model.RunwayEnd#getAimingPointDistanceM()
	 * @see #getRunwayEnd()
	 * @generated
	 */
	EAttribute getRunwayEnd_AimingPointDistanceM();

	/**
	 * Returns the meta object for the containment reference list '{@link slopewright.model.RunwayEnd#getSiteProfile <em>Site Profile</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Site Profile</em>'.
	 * @see slopewright.model.RunwayEnd#getSiteProfile()
	 * @see #getRunwayEnd()
	 * @generated
	 */
	EReference getRunwayEnd_SiteProfile();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.RunwayEnd#getHazardousTerrain <em>Hazardous Terrain</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Hazardous Terrain</em>'.
	 * @see slopewright.model.RunwayEnd#getHazardousTerrain()
	 * @see #getRunwayEnd()
	 * @generated
	 */
	EAttribute getRunwayEnd_HazardousTerrain();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.RunwayEnd#getSiteProfileSource <em>Site Profile Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Site Profile Source</em>'.
	 * @see slopewright.model.RunwayEnd#getSiteProfileSource()
	 * @see #getRunwayEnd()
	 * @generated
	 */
	EAttribute getRunwayEnd_SiteProfileSource();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.RunwayEnd#getSiteProfileDate <em>Site Profile Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Site Profile Date</em>'.
	 * @see slopewright.model.RunwayEnd#getSiteProfileDate()
	 * @see #getRunwayEnd()
	 * @generated
	 */
	EAttribute getRunwayEnd_SiteProfileDate();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.RunwayEnd#getSiteProfileAccuracyM <em>Site Profile Accuracy M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Site Profile Accuracy M</em>'.
	 * @see slopewright.model.RunwayEnd#getSiteProfileAccuracyM()
	 * @see #getRunwayEnd()
	 * @generated
	 */
	EAttribute getRunwayEnd_SiteProfileAccuracyM();

	/**
	 * Returns the meta object for class '{@link slopewright.model.GlidePathAid <em>Glide Path Aid</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Glide Path Aid</em>'.
	 * @see slopewright.model.GlidePathAid
	 * @generated
	 */
	EClass getGlidePathAid();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.GlidePathAid#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see slopewright.model.GlidePathAid#getKind()
	 * @see #getGlidePathAid()
	 * @generated
	 */
	EAttribute getGlidePathAid_Kind();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.GlidePathAid#getPathAngleDeg <em>Path Angle Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Path Angle Deg</em>'.
	 * @see slopewright.model.GlidePathAid#getPathAngleDeg()
	 * @see #getGlidePathAid()
	 * @generated
	 */
	EAttribute getGlidePathAid_PathAngleDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.GlidePathAid#getReferenceDatumHeightM <em>Reference Datum Height M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reference Datum Height M</em>'.
	 * @see slopewright.model.GlidePathAid#getReferenceDatumHeightM()
	 * @see #getGlidePathAid()
	 * @generated
	 */
	EAttribute getGlidePathAid_ReferenceDatumHeightM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.GlidePathAid#getOriginAlongM <em>Origin Along M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Origin Along M</em>'.
	 * @see slopewright.model.GlidePathAid#getOriginAlongM()
	 * @see #getGlidePathAid()
	 * @generated
	 */
	EAttribute getGlidePathAid_OriginAlongM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.GlidePathAid#getAntennaAlongM <em>Antenna Along M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Antenna Along M</em>'.
	 * @see slopewright.model.GlidePathAid#getAntennaAlongM()
	 * @see #getGlidePathAid()
	 * @generated
	 */
	EAttribute getGlidePathAid_AntennaAlongM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.GlidePathAid#getAntennaRightM <em>Antenna Right M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Antenna Right M</em>'.
	 * @see slopewright.model.GlidePathAid#getAntennaRightM()
	 * @see #getGlidePathAid()
	 * @generated
	 */
	EAttribute getGlidePathAid_AntennaRightM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.GlidePathAid#getCriticalAreaLengthM <em>Critical Area Length M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Critical Area Length M</em>'.
	 * @see slopewright.model.GlidePathAid#getCriticalAreaLengthM()
	 * @see #getGlidePathAid()
	 * @generated
	 */
	EAttribute getGlidePathAid_CriticalAreaLengthM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.GlidePathAid#getCriticalAreaWidthM <em>Critical Area Width M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Critical Area Width M</em>'.
	 * @see slopewright.model.GlidePathAid#getCriticalAreaWidthM()
	 * @see #getGlidePathAid()
	 * @generated
	 */
	EAttribute getGlidePathAid_CriticalAreaWidthM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.GlidePathAid#getCriticalAreaSource <em>Critical Area Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Critical Area Source</em>'.
	 * @see slopewright.model.GlidePathAid#getCriticalAreaSource()
	 * @see #getGlidePathAid()
	 * @generated
	 */
	EAttribute getGlidePathAid_CriticalAreaSource();

	/**
	 * Returns the meta object for class '{@link slopewright.model.TaxiwayEdge <em>Taxiway Edge</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Taxiway Edge</em>'.
	 * @see slopewright.model.TaxiwayEdge
	 * @generated
	 */
	EClass getTaxiwayEdge();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.TaxiwayEdge#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see slopewright.model.TaxiwayEdge#getKind()
	 * @see #getTaxiwayEdge()
	 * @generated
	 */
	EAttribute getTaxiwayEdge_Kind();

	/**
	 * Returns the meta object for the containment reference list '{@link slopewright.model.TaxiwayEdge#getPoints <em>Points</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Points</em>'.
	 * @see slopewright.model.TaxiwayEdge#getPoints()
	 * @see #getTaxiwayEdge()
	 * @generated
	 */
	EReference getTaxiwayEdge_Points();

	/**
	 * Returns the meta object for class '{@link slopewright.model.Helipad <em>Helipad</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Helipad</em>'.
	 * @see slopewright.model.Helipad
	 * @generated
	 */
	EClass getHelipad();

	/**
	 * Returns the meta object for the containment reference '{@link slopewright.model.Helipad#getPlace <em>Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Place</em>'.
	 * @see slopewright.model.Helipad#getPlace()
	 * @see #getHelipad()
	 * @generated
	 */
	EReference getHelipad_Place();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Helipad#getElevationM <em>Elevation M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Elevation M</em>'.
	 * @see slopewright.model.Helipad#getElevationM()
	 * @see #getHelipad()
	 * @generated
	 */
	EAttribute getHelipad_ElevationM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Helipad#getFatoLengthM <em>Fato Length M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fato Length M</em>'.
	 * @see slopewright.model.Helipad#getFatoLengthM()
	 * @see #getHelipad()
	 * @generated
	 */
	EAttribute getHelipad_FatoLengthM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Helipad#getFatoWidthM <em>Fato Width M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fato Width M</em>'.
	 * @see slopewright.model.Helipad#getFatoWidthM()
	 * @see #getHelipad()
	 * @generated
	 */
	EAttribute getHelipad_FatoWidthM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Helipad#getTlofLengthM <em>Tlof Length M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tlof Length M</em>'.
	 * @see slopewright.model.Helipad#getTlofLengthM()
	 * @see #getHelipad()
	 * @generated
	 */
	EAttribute getHelipad_TlofLengthM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Helipad#getTlofWidthM <em>Tlof Width M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tlof Width M</em>'.
	 * @see slopewright.model.Helipad#getTlofWidthM()
	 * @see #getHelipad()
	 * @generated
	 */
	EAttribute getHelipad_TlofWidthM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Helipad#getSafetyAreaWidthM <em>Safety Area Width M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Safety Area Width M</em>'.
	 * @see slopewright.model.Helipad#getSafetyAreaWidthM()
	 * @see #getHelipad()
	 * @generated
	 */
	EAttribute getHelipad_SafetyAreaWidthM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Helipad#getHoverHeightM <em>Hover Height M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Hover Height M</em>'.
	 * @see slopewright.model.Helipad#getHoverHeightM()
	 * @see #getHelipad()
	 * @generated
	 */
	EAttribute getHelipad_HoverHeightM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Helipad#getEyeAboveSkidsM <em>Eye Above Skids M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Eye Above Skids M</em>'.
	 * @see slopewright.model.Helipad#getEyeAboveSkidsM()
	 * @see #getHelipad()
	 * @generated
	 */
	EAttribute getHelipad_EyeAboveSkidsM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Helipad#getFloating <em>Floating</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Floating</em>'.
	 * @see slopewright.model.Helipad#getFloating()
	 * @see #getHelipad()
	 * @generated
	 */
	EAttribute getHelipad_Floating();

	/**
	 * Returns the meta object for the containment reference list '{@link slopewright.model.Helipad#getDirections <em>Directions</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Directions</em>'.
	 * @see slopewright.model.Helipad#getDirections()
	 * @see #getHelipad()
	 * @generated
	 */
	EReference getHelipad_Directions();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Helipad#getDeckPitchDeg <em>Deck Pitch Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Deck Pitch Deg</em>'.
	 * @see slopewright.model.Helipad#getDeckPitchDeg()
	 * @see #getHelipad()
	 * @generated
	 */
	EAttribute getHelipad_DeckPitchDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Helipad#getDeckRollDeg <em>Deck Roll Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Deck Roll Deg</em>'.
	 * @see slopewright.model.Helipad#getDeckRollDeg()
	 * @see #getHelipad()
	 * @generated
	 */
	EAttribute getHelipad_DeckRollDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Helipad#getDeckHeadingDeg <em>Deck Heading Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Deck Heading Deg</em>'.
	 * @see slopewright.model.Helipad#getDeckHeadingDeg()
	 * @see #getHelipad()
	 * @generated
	 */
	EAttribute getHelipad_DeckHeadingDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Helipad#getFatoBearingDeg <em>Fato Bearing Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fato Bearing Deg</em>'.
	 * @see slopewright.model.Helipad#getFatoBearingDeg()
	 * @see #getHelipad()
	 * @generated
	 */
	EAttribute getHelipad_FatoBearingDeg();

	/**
	 * Returns the meta object for class '{@link slopewright.model.ApproachDirection <em>Approach Direction</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Approach Direction</em>'.
	 * @see slopewright.model.ApproachDirection
	 * @generated
	 */
	EClass getApproachDirection();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ApproachDirection#getTrueBearingDeg <em>True Bearing Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>True Bearing Deg</em>'.
	 * @see slopewright.model.ApproachDirection#getTrueBearingDeg()
	 * @see #getApproachDirection()
	 * @generated
	 */
	EAttribute getApproachDirection_TrueBearingDeg();

	/**
	 * Returns the meta object for class '{@link slopewright.model.AeroplaneGroup <em>Aeroplane Group</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Aeroplane Group</em>'.
	 * @see slopewright.model.AeroplaneGroup
	 * @generated
	 */
	EClass getAeroplaneGroup();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.AeroplaneGroup#getStaticCockpitToWheelM <em>Static Cockpit To Wheel M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Static Cockpit To Wheel M</em>'.
	 * @see slopewright.model.AeroplaneGroup#getStaticCockpitToWheelM()
	 * @see #getAeroplaneGroup()
	 * @generated
	 */
	EAttribute getAeroplaneGroup_StaticCockpitToWheelM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.AeroplaneGroup#getEyeToWheelM <em>Eye To Wheel M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Eye To Wheel M</em>'.
	 * @see slopewright.model.AeroplaneGroup#getEyeToWheelM()
	 * @see #getAeroplaneGroup()
	 * @generated
	 */
	EAttribute getAeroplaneGroup_EyeToWheelM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.AeroplaneGroup#getEyeToAntennaM <em>Eye To Antenna M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Eye To Antenna M</em>'.
	 * @see slopewright.model.AeroplaneGroup#getEyeToAntennaM()
	 * @see #getAeroplaneGroup()
	 * @generated
	 */
	EAttribute getAeroplaneGroup_EyeToAntennaM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.AeroplaneGroup#getSharePercent <em>Share Percent</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Share Percent</em>'.
	 * @see slopewright.model.AeroplaneGroup#getSharePercent()
	 * @see #getAeroplaneGroup()
	 * @generated
	 */
	EAttribute getAeroplaneGroup_SharePercent();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.AeroplaneGroup#getLightNonTurbojet <em>Light Non Turbojet</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Light Non Turbojet</em>'.
	 * @see slopewright.model.AeroplaneGroup#getLightNonTurbojet()
	 * @see #getAeroplaneGroup()
	 * @generated
	 */
	EAttribute getAeroplaneGroup_LightNonTurbojet();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.AeroplaneGroup#getMaxSlopeDeg <em>Max Slope Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Max Slope Deg</em>'.
	 * @see slopewright.model.AeroplaneGroup#getMaxSlopeDeg()
	 * @see #getAeroplaneGroup()
	 * @generated
	 */
	EAttribute getAeroplaneGroup_MaxSlopeDeg();

	/**
	 * Returns the meta object for class '{@link slopewright.model.Obstacle <em>Obstacle</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Obstacle</em>'.
	 * @see slopewright.model.Obstacle
	 * @generated
	 */
	EClass getObstacle();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Obstacle#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see slopewright.model.Obstacle#getKind()
	 * @see #getObstacle()
	 * @generated
	 */
	EAttribute getObstacle_Kind();

	/**
	 * Returns the meta object for the containment reference list '{@link slopewright.model.Obstacle#getPlaces <em>Places</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Places</em>'.
	 * @see slopewright.model.Obstacle#getPlaces()
	 * @see #getObstacle()
	 * @generated
	 */
	EReference getObstacle_Places();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Obstacle#getTopElevationM <em>Top Elevation M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Top Elevation M</em>'.
	 * @see slopewright.model.Obstacle#getTopElevationM()
	 * @see #getObstacle()
	 * @generated
	 */
	EAttribute getObstacle_TopElevationM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Obstacle#getHorizontalAccuracyM <em>Horizontal Accuracy M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Horizontal Accuracy M</em>'.
	 * @see slopewright.model.Obstacle#getHorizontalAccuracyM()
	 * @see #getObstacle()
	 * @generated
	 */
	EAttribute getObstacle_HorizontalAccuracyM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Obstacle#getVerticalAccuracyM <em>Vertical Accuracy M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Vertical Accuracy M</em>'.
	 * @see slopewright.model.Obstacle#getVerticalAccuracyM()
	 * @see #getObstacle()
	 * @generated
	 */
	EAttribute getObstacle_VerticalAccuracyM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Obstacle#getLighted <em>Lighted</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lighted</em>'.
	 * @see slopewright.model.Obstacle#getLighted()
	 * @see #getObstacle()
	 * @generated
	 */
	EAttribute getObstacle_Lighted();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Obstacle#getShielded <em>Shielded</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Shielded</em>'.
	 * @see slopewright.model.Obstacle#getShielded()
	 * @see #getObstacle()
	 * @generated
	 */
	EAttribute getObstacle_Shielded();

	/**
	 * Returns the meta object for the reference '{@link slopewright.model.Obstacle#getShieldedBy <em>Shielded By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Shielded By</em>'.
	 * @see slopewright.model.Obstacle#getShieldedBy()
	 * @see #getObstacle()
	 * @generated
	 */
	EReference getObstacle_ShieldedBy();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Obstacle#getShieldingStudy <em>Shielding Study</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Shielding Study</em>'.
	 * @see slopewright.model.Obstacle#getShieldingStudy()
	 * @see #getObstacle()
	 * @generated
	 */
	EAttribute getObstacle_ShieldingStudy();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Obstacle#getShieldingStudyDate <em>Shielding Study Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Shielding Study Date</em>'.
	 * @see slopewright.model.Obstacle#getShieldingStudyDate()
	 * @see #getObstacle()
	 * @generated
	 */
	EAttribute getObstacle_ShieldingStudyDate();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Obstacle#getShieldingStudyPerson <em>Shielding Study Person</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Shielding Study Person</em>'.
	 * @see slopewright.model.Obstacle#getShieldingStudyPerson()
	 * @see #getObstacle()
	 * @generated
	 */
	EAttribute getObstacle_ShieldingStudyPerson();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Obstacle#getTemporary <em>Temporary</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Temporary</em>'.
	 * @see slopewright.model.Obstacle#getTemporary()
	 * @see #getObstacle()
	 * @generated
	 */
	EAttribute getObstacle_Temporary();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Obstacle#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see slopewright.model.Obstacle#getSource()
	 * @see #getObstacle()
	 * @generated
	 */
	EAttribute getObstacle_Source();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Obstacle#getDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date</em>'.
	 * @see slopewright.model.Obstacle#getDate()
	 * @see #getObstacle()
	 * @generated
	 */
	EAttribute getObstacle_Date();

	/**
	 * Returns the meta object for class '{@link slopewright.model.GroundLevel <em>Ground Level</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Ground Level</em>'.
	 * @see slopewright.model.GroundLevel
	 * @generated
	 */
	EClass getGroundLevel();

	/**
	 * Returns the meta object for the containment reference '{@link slopewright.model.GroundLevel#getPlace <em>Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Place</em>'.
	 * @see slopewright.model.GroundLevel#getPlace()
	 * @see #getGroundLevel()
	 * @generated
	 */
	EReference getGroundLevel_Place();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.GroundLevel#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see slopewright.model.GroundLevel#getSource()
	 * @see #getGroundLevel()
	 * @generated
	 */
	EAttribute getGroundLevel_Source();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.GroundLevel#getDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date</em>'.
	 * @see slopewright.model.GroundLevel#getDate()
	 * @see #getGroundLevel()
	 * @generated
	 */
	EAttribute getGroundLevel_Date();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.GroundLevel#getVerticalAccuracyM <em>Vertical Accuracy M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Vertical Accuracy M</em>'.
	 * @see slopewright.model.GroundLevel#getVerticalAccuracyM()
	 * @see #getGroundLevel()
	 * @generated
	 */
	EAttribute getGroundLevel_VerticalAccuracyM();

	/**
	 * Returns the meta object for class '{@link slopewright.model.ObstacleSurvey <em>Obstacle Survey</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Obstacle Survey</em>'.
	 * @see slopewright.model.ObstacleSurvey
	 * @generated
	 */
	EClass getObstacleSurvey();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ObstacleSurvey#getDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date</em>'.
	 * @see slopewright.model.ObstacleSurvey#getDate()
	 * @see #getObstacleSurvey()
	 * @generated
	 */
	EAttribute getObstacleSurvey_Date();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ObstacleSurvey#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see slopewright.model.ObstacleSurvey#getSource()
	 * @see #getObstacleSurvey()
	 * @generated
	 */
	EAttribute getObstacleSurvey_Source();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ObstacleSurvey#getReachM <em>Reach M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reach M</em>'.
	 * @see slopewright.model.ObstacleSurvey#getReachM()
	 * @see #getObstacleSurvey()
	 * @generated
	 */
	EAttribute getObstacleSurvey_ReachM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ObstacleSurvey#getHalfWidthM <em>Half Width M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Half Width M</em>'.
	 * @see slopewright.model.ObstacleSurvey#getHalfWidthM()
	 * @see #getObstacleSurvey()
	 * @generated
	 */
	EAttribute getObstacleSurvey_HalfWidthM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ObstacleSurvey#getHorizontalAccuracyM <em>Horizontal Accuracy M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Horizontal Accuracy M</em>'.
	 * @see slopewright.model.ObstacleSurvey#getHorizontalAccuracyM()
	 * @see #getObstacleSurvey()
	 * @generated
	 */
	EAttribute getObstacleSurvey_HorizontalAccuracyM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ObstacleSurvey#getVerticalAccuracyM <em>Vertical Accuracy M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Vertical Accuracy M</em>'.
	 * @see slopewright.model.ObstacleSurvey#getVerticalAccuracyM()
	 * @see #getObstacleSurvey()
	 * @generated
	 */
	EAttribute getObstacleSurvey_VerticalAccuracyM();

	/**
	 * Returns the meta object for the reference list '{@link slopewright.model.ObstacleSurvey#getHosts <em>Hosts</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Hosts</em>'.
	 * @see slopewright.model.ObstacleSurvey#getHosts()
	 * @see #getObstacleSurvey()
	 * @generated
	 */
	EReference getObstacleSurvey_Hosts();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ObstacleSurvey#getAllRound <em>All Round</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>All Round</em>'.
	 * @see slopewright.model.ObstacleSurvey#getAllRound()
	 * @see #getObstacleSurvey()
	 * @generated
	 */
	EAttribute getObstacleSurvey_AllRound();

	/**
	 * Returns the meta object for class '{@link slopewright.model.EquipmentType <em>Equipment Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Equipment Type</em>'.
	 * @see slopewright.model.EquipmentType
	 * @generated
	 */
	EClass getEquipmentType();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getFamilyKey <em>Family Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Family Key</em>'.
	 * @see slopewright.model.EquipmentType#getFamilyKey()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_FamilyKey();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getBeamWidthDeg <em>Beam Width Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Beam Width Deg</em>'.
	 * @see slopewright.model.EquipmentType#getBeamWidthDeg()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_BeamWidthDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getTransitionMinutes <em>Transition Minutes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Transition Minutes</em>'.
	 * @see slopewright.model.EquipmentType#getTransitionMinutes()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_TransitionMinutes();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getMinSettingDeg <em>Min Setting Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Min Setting Deg</em>'.
	 * @see slopewright.model.EquipmentType#getMinSettingDeg()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_MinSettingDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getMaxSettingDeg <em>Max Setting Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Max Setting Deg</em>'.
	 * @see slopewright.model.EquipmentType#getMaxSettingDeg()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_MaxSettingDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getIntensityCd <em>Intensity Cd</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Intensity Cd</em>'.
	 * @see slopewright.model.EquipmentType#getIntensityCd()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_IntensityCd();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getLampPowerW <em>Lamp Power W</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lamp Power W</em>'.
	 * @see slopewright.model.EquipmentType#getLampPowerW()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_LampPowerW();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getLampsPerUnit <em>Lamps Per Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lamps Per Unit</em>'.
	 * @see slopewright.model.EquipmentType#getLampsPerUnit()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_LampsPerUnit();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getSupply <em>Supply</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Supply</em>'.
	 * @see slopewright.model.EquipmentType#getSupply()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_Supply();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getMinVoltageV <em>Min Voltage V</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Min Voltage V</em>'.
	 * @see slopewright.model.EquipmentType#getMinVoltageV()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_MinVoltageV();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getMaxVoltageV <em>Max Voltage V</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Max Voltage V</em>'.
	 * @see slopewright.model.EquipmentType#getMaxVoltageV()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_MaxVoltageV();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getMassKg <em>Mass Kg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Mass Kg</em>'.
	 * @see slopewright.model.EquipmentType#getMassKg()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_MassKg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getHeightAboveGroundM <em>Height Above Ground M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height Above Ground M</em>'.
	 * @see slopewright.model.EquipmentType#getHeightAboveGroundM()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_HeightAboveGroundM();

	/**
	 * Returns the meta object for the containment reference list '{@link slopewright.model.EquipmentType#getSectors <em>Sectors</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Sectors</em>'.
	 * @see slopewright.model.EquipmentType#getSectors()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EReference getEquipmentType_Sectors();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getWhiteIntensityCd <em>White Intensity Cd</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>White Intensity Cd</em>'.
	 * @see slopewright.model.EquipmentType#getWhiteIntensityCd()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_WhiteIntensityCd();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getRedChromaticityY <em>Red Chromaticity Y</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Red Chromaticity Y</em>'.
	 * @see slopewright.model.EquipmentType#getRedChromaticityY()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_RedChromaticityY();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getBrightnessSteps <em>Brightness Steps</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Brightness Steps</em>'.
	 * @see slopewright.model.EquipmentType#getBrightnessSteps()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_BrightnessSteps();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getNightStepPercent <em>Night Step Percent</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Night Step Percent</em>'.
	 * @see slopewright.model.EquipmentType#getNightStepPercent()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_NightStepPercent();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getTiltCutOffDeg <em>Tilt Cut Off Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tilt Cut Off Deg</em>'.
	 * @see slopewright.model.EquipmentType#getTiltCutOffDeg()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_TiltCutOffDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getFlashRateHz <em>Flash Rate Hz</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Flash Rate Hz</em>'.
	 * @see slopewright.model.EquipmentType#getFlashRateHz()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_FlashRateHz();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getFlashOnPercent <em>Flash On Percent</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Flash On Percent</em>'.
	 * @see slopewright.model.EquipmentType#getFlashOnPercent()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_FlashOnPercent();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getModulationPercent <em>Modulation Percent</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Modulation Percent</em>'.
	 * @see slopewright.model.EquipmentType#getModulationPercent()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_ModulationPercent();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getDataSource <em>Data Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Data Source</em>'.
	 * @see slopewright.model.EquipmentType#getDataSource()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_DataSource();

	/**
	 * Returns the meta object for the containment reference list '{@link slopewright.model.EquipmentType#getIntensities <em>Intensities</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Intensities</em>'.
	 * @see slopewright.model.EquipmentType#getIntensities()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EReference getEquipmentType_Intensities();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getPlateZero <em>Plate Zero</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Plate Zero</em>'.
	 * @see slopewright.model.EquipmentType#getPlateZero()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_PlateZero();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getPlateSense <em>Plate Sense</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Plate Sense</em>'.
	 * @see slopewright.model.EquipmentType#getPlateSense()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_PlateSense();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getPlateStepDeg <em>Plate Step Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Plate Step Deg</em>'.
	 * @see slopewright.model.EquipmentType#getPlateStepDeg()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_PlateStepDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getSlopeScaleStepDeg <em>Slope Scale Step Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Slope Scale Step Deg</em>'.
	 * @see slopewright.model.EquipmentType#getSlopeScaleStepDeg()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_SlopeScaleStepDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getBubbleAccuracyMinutes <em>Bubble Accuracy Minutes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bubble Accuracy Minutes</em>'.
	 * @see slopewright.model.EquipmentType#getBubbleAccuracyMinutes()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_BubbleAccuracyMinutes();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getLowerHair <em>Lower Hair</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lower Hair</em>'.
	 * @see slopewright.model.EquipmentType#getLowerHair()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_LowerHair();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getUpperHair <em>Upper Hair</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Upper Hair</em>'.
	 * @see slopewright.model.EquipmentType#getUpperHair()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_UpperHair();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getHandOrder <em>Hand Order</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Hand Order</em>'.
	 * @see slopewright.model.EquipmentType#getHandOrder()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_HandOrder();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getRecheckEveryH <em>Recheck Every H</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Recheck Every H</em>'.
	 * @see slopewright.model.EquipmentType#getRecheckEveryH()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_RecheckEveryH();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.EquipmentType#getStabilisedToDeg <em>Stabilised To Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stabilised To Deg</em>'.
	 * @see slopewright.model.EquipmentType#getStabilisedToDeg()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EAttribute getEquipmentType_StabilisedToDeg();

	/**
	 * Returns the meta object for the containment reference list '{@link slopewright.model.EquipmentType#getPrintedDescents <em>Printed Descents</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Printed Descents</em>'.
	 * @see slopewright.model.EquipmentType#getPrintedDescents()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EReference getEquipmentType_PrintedDescents();

	/**
	 * Returns the meta object for the containment reference list '{@link slopewright.model.EquipmentType#getBrightnessLevels <em>Brightness Levels</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Brightness Levels</em>'.
	 * @see slopewright.model.EquipmentType#getBrightnessLevels()
	 * @see #getEquipmentType()
	 * @generated
	 */
	EReference getEquipmentType_BrightnessLevels();

	/**
	 * Returns the meta object for class '{@link slopewright.model.MeasuredIntensity <em>Measured Intensity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Measured Intensity</em>'.
	 * @see slopewright.model.MeasuredIntensity
	 * @generated
	 */
	EClass getMeasuredIntensity();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.MeasuredIntensity#getColour <em>Colour</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Colour</em>'.
	 * @see slopewright.model.MeasuredIntensity#getColour()
	 * @see #getMeasuredIntensity()
	 * @generated
	 */
	EAttribute getMeasuredIntensity_Colour();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.MeasuredIntensity#getAzimuthDeg <em>Azimuth Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Azimuth Deg</em>'.
	 * @see slopewright.model.MeasuredIntensity#getAzimuthDeg()
	 * @see #getMeasuredIntensity()
	 * @generated
	 */
	EAttribute getMeasuredIntensity_AzimuthDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.MeasuredIntensity#getElevationDeg <em>Elevation Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Elevation Deg</em>'.
	 * @see slopewright.model.MeasuredIntensity#getElevationDeg()
	 * @see #getMeasuredIntensity()
	 * @generated
	 */
	EAttribute getMeasuredIntensity_ElevationDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.MeasuredIntensity#getIntensityCd <em>Intensity Cd</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Intensity Cd</em>'.
	 * @see slopewright.model.MeasuredIntensity#getIntensityCd()
	 * @see #getMeasuredIntensity()
	 * @generated
	 */
	EAttribute getMeasuredIntensity_IntensityCd();

	/**
	 * Returns the meta object for class '{@link slopewright.model.PrintedDescent <em>Printed Descent</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Printed Descent</em>'.
	 * @see slopewright.model.PrintedDescent
	 * @generated
	 */
	EClass getPrintedDescent();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.PrintedDescent#getSpeedKt <em>Speed Kt</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Speed Kt</em>'.
	 * @see slopewright.model.PrintedDescent#getSpeedKt()
	 * @see #getPrintedDescent()
	 * @generated
	 */
	EAttribute getPrintedDescent_SpeedKt();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.PrintedDescent#getDescentFtmin <em>Descent Ftmin</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Descent Ftmin</em>'.
	 * @see slopewright.model.PrintedDescent#getDescentFtmin()
	 * @see #getPrintedDescent()
	 * @generated
	 */
	EAttribute getPrintedDescent_DescentFtmin();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.PrintedDescent#getSlopeDeg <em>Slope Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Slope Deg</em>'.
	 * @see slopewright.model.PrintedDescent#getSlopeDeg()
	 * @see #getPrintedDescent()
	 * @generated
	 */
	EAttribute getPrintedDescent_SlopeDeg();

	/**
	 * Returns the meta object for class '{@link slopewright.model.BrightnessLevel <em>Brightness Level</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Brightness Level</em>'.
	 * @see slopewright.model.BrightnessLevel
	 * @generated
	 */
	EClass getBrightnessLevel();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.BrightnessLevel#getPowerPercent <em>Power Percent</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Power Percent</em>'.
	 * @see slopewright.model.BrightnessLevel#getPowerPercent()
	 * @see #getBrightnessLevel()
	 * @generated
	 */
	EAttribute getBrightnessLevel_PowerPercent();

	/**
	 * Returns the meta object for class '{@link slopewright.model.Circuit <em>Circuit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Circuit</em>'.
	 * @see slopewright.model.Circuit
	 * @generated
	 */
	EClass getCircuit();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Circuit#getSupply <em>Supply</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Supply</em>'.
	 * @see slopewright.model.Circuit#getSupply()
	 * @see #getCircuit()
	 * @generated
	 */
	EAttribute getCircuit_Supply();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Circuit#getCurrentA <em>Current A</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Current A</em>'.
	 * @see slopewright.model.Circuit#getCurrentA()
	 * @see #getCircuit()
	 * @generated
	 */
	EAttribute getCircuit_CurrentA();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Circuit#getCapacityAh <em>Capacity Ah</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Capacity Ah</em>'.
	 * @see slopewright.model.Circuit#getCapacityAh()
	 * @see #getCircuit()
	 * @generated
	 */
	EAttribute getCircuit_CapacityAh();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Circuit#getBrightnessSteps <em>Brightness Steps</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Brightness Steps</em>'.
	 * @see slopewright.model.Circuit#getBrightnessSteps()
	 * @see #getCircuit()
	 * @generated
	 */
	EAttribute getCircuit_BrightnessSteps();

	/**
	 * Returns the meta object for the reference list '{@link slopewright.model.Circuit#getAids <em>Aids</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Aids</em>'.
	 * @see slopewright.model.Circuit#getAids()
	 * @see #getCircuit()
	 * @generated
	 */
	EReference getCircuit_Aids();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Circuit#getRegulatorRatingKva <em>Regulator Rating Kva</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Regulator Rating Kva</em>'.
	 * @see slopewright.model.Circuit#getRegulatorRatingKva()
	 * @see #getCircuit()
	 * @generated
	 */
	EAttribute getCircuit_RegulatorRatingKva();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Circuit#getCableLengthM <em>Cable Length M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cable Length M</em>'.
	 * @see slopewright.model.Circuit#getCableLengthM()
	 * @see #getCircuit()
	 * @generated
	 */
	EAttribute getCircuit_CableLengthM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Circuit#getCableResistanceOhmPerKm <em>Cable Resistance Ohm Per Km</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cable Resistance Ohm Per Km</em>'.
	 * @see slopewright.model.Circuit#getCableResistanceOhmPerKm()
	 * @see #getCircuit()
	 * @generated
	 */
	EAttribute getCircuit_CableResistanceOhmPerKm();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Circuit#getSwitchOverS <em>Switch Over S</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Switch Over S</em>'.
	 * @see slopewright.model.Circuit#getSwitchOverS()
	 * @see #getCircuit()
	 * @generated
	 */
	EAttribute getCircuit_SwitchOverS();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Circuit#getStandby <em>Standby</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Standby</em>'.
	 * @see slopewright.model.Circuit#getStandby()
	 * @see #getCircuit()
	 * @generated
	 */
	EAttribute getCircuit_Standby();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Circuit#getAgeLeftPercent <em>Age Left Percent</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Age Left Percent</em>'.
	 * @see slopewright.model.Circuit#getAgeLeftPercent()
	 * @see #getCircuit()
	 * @generated
	 */
	EAttribute getCircuit_AgeLeftPercent();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Circuit#getColdLeftPercent <em>Cold Left Percent</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cold Left Percent</em>'.
	 * @see slopewright.model.Circuit#getColdLeftPercent()
	 * @see #getCircuit()
	 * @generated
	 */
	EAttribute getCircuit_ColdLeftPercent();

	/**
	 * Returns the meta object for class '{@link slopewright.model.ApproachAid <em>Approach Aid</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Approach Aid</em>'.
	 * @see slopewright.model.ApproachAid
	 * @generated
	 */
	EClass getApproachAid();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ApproachAid#getFamilyKey <em>Family Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Family Key</em>'.
	 * @see slopewright.model.ApproachAid#getFamilyKey()
	 * @see #getApproachAid()
	 * @generated
	 */
	EAttribute getApproachAid_FamilyKey();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ApproachAid#getRuleSetKey <em>Rule Set Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rule Set Key</em>'.
	 * @see slopewright.model.ApproachAid#getRuleSetKey()
	 * @see #getApproachAid()
	 * @generated
	 */
	EAttribute getApproachAid_RuleSetKey();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ApproachAid#getSide <em>Side</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Side</em>'.
	 * @see slopewright.model.ApproachAid#getSide()
	 * @see #getApproachAid()
	 * @generated
	 */
	EAttribute getApproachAid_Side();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ApproachAid#getSlopeDeg <em>Slope Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Slope Deg</em>'.
	 * @see slopewright.model.ApproachAid#getSlopeDeg()
	 * @see #getApproachAid()
	 * @generated
	 */
	EAttribute getApproachAid_SlopeDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ApproachAid#getSettings <em>Settings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Settings</em>'.
	 * @see slopewright.model.ApproachAid#getSettings()
	 * @see #getApproachAid()
	 * @generated
	 */
	EAttribute getApproachAid_Settings();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ApproachAid#getClearance <em>Clearance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Clearance</em>'.
	 * @see slopewright.model.ApproachAid#getClearance()
	 * @see #getApproachAid()
	 * @generated
	 */
	EAttribute getApproachAid_Clearance();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ApproachAid#getChosenClearanceM <em>Chosen Clearance M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Chosen Clearance M</em>'.
	 * @see slopewright.model.ApproachAid#getChosenClearanceM()
	 * @see #getApproachAid()
	 * @generated
	 */
	EAttribute getApproachAid_ChosenClearanceM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ApproachAid#getTargetEyeHeightM <em>Target Eye Height M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Target Eye Height M</em>'.
	 * @see slopewright.model.ApproachAid#getTargetEyeHeightM()
	 * @see #getApproachAid()
	 * @generated
	 */
	EAttribute getApproachAid_TargetEyeHeightM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ApproachAid#getHeightGroup <em>Height Group</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height Group</em>'.
	 * @see slopewright.model.ApproachAid#getHeightGroup()
	 * @see #getApproachAid()
	 * @generated
	 */
	EAttribute getApproachAid_HeightGroup();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ApproachAid#getAxisTurnDeg <em>Axis Turn Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Axis Turn Deg</em>'.
	 * @see slopewright.model.ApproachAid#getAxisTurnDeg()
	 * @see #getApproachAid()
	 * @generated
	 */
	EAttribute getApproachAid_AxisTurnDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ApproachAid#getUnshiftedDistanceM <em>Unshifted Distance M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unshifted Distance M</em>'.
	 * @see slopewright.model.ApproachAid#getUnshiftedDistanceM()
	 * @see #getApproachAid()
	 * @generated
	 */
	EAttribute getApproachAid_UnshiftedDistanceM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ApproachAid#getUnshiftedDistanceReason <em>Unshifted Distance Reason</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unshifted Distance Reason</em>'.
	 * @see slopewright.model.ApproachAid#getUnshiftedDistanceReason()
	 * @see #getApproachAid()
	 * @generated
	 */
	EAttribute getApproachAid_UnshiftedDistanceReason();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ApproachAid#getLevelAccuracyM <em>Level Accuracy M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Level Accuracy M</em>'.
	 * @see slopewright.model.ApproachAid#getLevelAccuracyM()
	 * @see #getApproachAid()
	 * @generated
	 */
	EAttribute getApproachAid_LevelAccuracyM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ApproachAid#getBeamLeftLimitDeg <em>Beam Left Limit Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Beam Left Limit Deg</em>'.
	 * @see slopewright.model.ApproachAid#getBeamLeftLimitDeg()
	 * @see #getApproachAid()
	 * @generated
	 */
	EAttribute getApproachAid_BeamLeftLimitDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ApproachAid#getBeamRightLimitDeg <em>Beam Right Limit Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Beam Right Limit Deg</em>'.
	 * @see slopewright.model.ApproachAid#getBeamRightLimitDeg()
	 * @see #getApproachAid()
	 * @generated
	 */
	EAttribute getApproachAid_BeamRightLimitDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ApproachAid#getUnitCount <em>Unit Count</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unit Count</em>'.
	 * @see slopewright.model.ApproachAid#getUnitCount()
	 * @see #getApproachAid()
	 * @generated
	 */
	EAttribute getApproachAid_UnitCount();

	/**
	 * Returns the meta object for the reference '{@link slopewright.model.ApproachAid#getEquipment <em>Equipment</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Equipment</em>'.
	 * @see slopewright.model.ApproachAid#getEquipment()
	 * @see #getApproachAid()
	 * @generated
	 */
	EReference getApproachAid_Equipment();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ApproachAid#getPortable <em>Portable</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Portable</em>'.
	 * @see slopewright.model.ApproachAid#getPortable()
	 * @see #getApproachAid()
	 * @generated
	 */
	EAttribute getApproachAid_Portable();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ApproachAid#getGroundSpeedKt <em>Ground Speed Kt</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Ground Speed Kt</em>'.
	 * @see slopewright.model.ApproachAid#getGroundSpeedKt()
	 * @see #getApproachAid()
	 * @generated
	 */
	EAttribute getApproachAid_GroundSpeedKt();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ApproachAid#getAirSpeedKt <em>Air Speed Kt</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Air Speed Kt</em>'.
	 * @see slopewright.model.ApproachAid#getAirSpeedKt()
	 * @see #getApproachAid()
	 * @generated
	 */
	EAttribute getApproachAid_AirSpeedKt();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ApproachAid#getWindKt <em>Wind Kt</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Wind Kt</em>'.
	 * @see slopewright.model.ApproachAid#getWindKt()
	 * @see #getApproachAid()
	 * @generated
	 */
	EAttribute getApproachAid_WindKt();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ApproachAid#getDescentFtmin <em>Descent Ftmin</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Descent Ftmin</em>'.
	 * @see slopewright.model.ApproachAid#getDescentFtmin()
	 * @see #getApproachAid()
	 * @generated
	 */
	EAttribute getApproachAid_DescentFtmin();

	/**
	 * Returns the meta object for the containment reference list '{@link slopewright.model.ApproachAid#getUnits <em>Units</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Units</em>'.
	 * @see slopewright.model.ApproachAid#getUnits()
	 * @see #getApproachAid()
	 * @generated
	 */
	EReference getApproachAid_Units();

	/**
	 * Returns the meta object for the containment reference list '{@link slopewright.model.ApproachAid#getInspections <em>Inspections</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Inspections</em>'.
	 * @see slopewright.model.ApproachAid#getInspections()
	 * @see #getApproachAid()
	 * @generated
	 */
	EReference getApproachAid_Inspections();

	/**
	 * Returns the meta object for class '{@link slopewright.model.LightUnit <em>Light Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Light Unit</em>'.
	 * @see slopewright.model.LightUnit
	 * @generated
	 */
	EClass getLightUnit();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.LightUnit#getLabel <em>Label</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Label</em>'.
	 * @see slopewright.model.LightUnit#getLabel()
	 * @see #getLightUnit()
	 * @generated
	 */
	EAttribute getLightUnit_Label();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.LightUnit#getBar <em>Bar</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bar</em>'.
	 * @see slopewright.model.LightUnit#getBar()
	 * @see #getLightUnit()
	 * @generated
	 */
	EAttribute getLightUnit_Bar();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.LightUnit#getAlongM <em>Along M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Along M</em>'.
	 * @see slopewright.model.LightUnit#getAlongM()
	 * @see #getLightUnit()
	 * @generated
	 */
	EAttribute getLightUnit_AlongM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.LightUnit#getRightM <em>Right M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Right M</em>'.
	 * @see slopewright.model.LightUnit#getRightM()
	 * @see #getLightUnit()
	 * @generated
	 */
	EAttribute getLightUnit_RightM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.LightUnit#getLensElevationM <em>Lens Elevation M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lens Elevation M</em>'.
	 * @see slopewright.model.LightUnit#getLensElevationM()
	 * @see #getLightUnit()
	 * @generated
	 */
	EAttribute getLightUnit_LensElevationM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.LightUnit#getAzimuthOffsetDeg <em>Azimuth Offset Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Azimuth Offset Deg</em>'.
	 * @see slopewright.model.LightUnit#getAzimuthOffsetDeg()
	 * @see #getLightUnit()
	 * @generated
	 */
	EAttribute getLightUnit_AzimuthOffsetDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.LightUnit#getSettingDeg <em>Setting Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Setting Deg</em>'.
	 * @see slopewright.model.LightUnit#getSettingDeg()
	 * @see #getLightUnit()
	 * @generated
	 */
	EAttribute getLightUnit_SettingDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.LightUnit#getHeightAboveGroundM <em>Height Above Ground M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height Above Ground M</em>'.
	 * @see slopewright.model.LightUnit#getHeightAboveGroundM()
	 * @see #getLightUnit()
	 * @generated
	 */
	EAttribute getLightUnit_HeightAboveGroundM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.LightUnit#getFrangible <em>Frangible</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Frangible</em>'.
	 * @see slopewright.model.LightUnit#getFrangible()
	 * @see #getLightUnit()
	 * @generated
	 */
	EAttribute getLightUnit_Frangible();

	/**
	 * Returns the meta object for the containment reference list '{@link slopewright.model.LightUnit#getTransitions <em>Transitions</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Transitions</em>'.
	 * @see slopewright.model.LightUnit#getTransitions()
	 * @see #getLightUnit()
	 * @generated
	 */
	EReference getLightUnit_Transitions();

	/**
	 * Returns the meta object for the containment reference '{@link slopewright.model.LightUnit#getMeasured <em>Measured</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Measured</em>'.
	 * @see slopewright.model.LightUnit#getMeasured()
	 * @see #getLightUnit()
	 * @generated
	 */
	EReference getLightUnit_Measured();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.LightUnit#getLampsOut <em>Lamps Out</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lamps Out</em>'.
	 * @see slopewright.model.LightUnit#getLampsOut()
	 * @see #getLightUnit()
	 * @generated
	 */
	EAttribute getLightUnit_LampsOut();

	/**
	 * Returns the meta object for class '{@link slopewright.model.MeasuredUnit <em>Measured Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Measured Unit</em>'.
	 * @see slopewright.model.MeasuredUnit
	 * @generated
	 */
	EClass getMeasuredUnit();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.MeasuredUnit#getSettingDeg <em>Setting Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Setting Deg</em>'.
	 * @see slopewright.model.MeasuredUnit#getSettingDeg()
	 * @see #getMeasuredUnit()
	 * @generated
	 */
	EAttribute getMeasuredUnit_SettingDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.MeasuredUnit#getAlongM <em>Along M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Along M</em>'.
	 * @see slopewright.model.MeasuredUnit#getAlongM()
	 * @see #getMeasuredUnit()
	 * @generated
	 */
	EAttribute getMeasuredUnit_AlongM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.MeasuredUnit#getRightM <em>Right M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Right M</em>'.
	 * @see slopewright.model.MeasuredUnit#getRightM()
	 * @see #getMeasuredUnit()
	 * @generated
	 */
	EAttribute getMeasuredUnit_RightM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.MeasuredUnit#getLensElevationM <em>Lens Elevation M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lens Elevation M</em>'.
	 * @see slopewright.model.MeasuredUnit#getLensElevationM()
	 * @see #getMeasuredUnit()
	 * @generated
	 */
	EAttribute getMeasuredUnit_LensElevationM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.MeasuredUnit#getPerson <em>Person</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Person</em>'.
	 * @see slopewright.model.MeasuredUnit#getPerson()
	 * @see #getMeasuredUnit()
	 * @generated
	 */
	EAttribute getMeasuredUnit_Person();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.MeasuredUnit#getDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date</em>'.
	 * @see slopewright.model.MeasuredUnit#getDate()
	 * @see #getMeasuredUnit()
	 * @generated
	 */
	EAttribute getMeasuredUnit_Date();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.MeasuredUnit#getInstrument <em>Instrument</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Instrument</em>'.
	 * @see slopewright.model.MeasuredUnit#getInstrument()
	 * @see #getMeasuredUnit()
	 * @generated
	 */
	EAttribute getMeasuredUnit_Instrument();

	/**
	 * Returns the meta object for class '{@link slopewright.model.Inspection <em>Inspection</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Inspection</em>'.
	 * @see slopewright.model.Inspection
	 * @generated
	 */
	EClass getInspection();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Inspection#getDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date</em>'.
	 * @see slopewright.model.Inspection#getDate()
	 * @see #getInspection()
	 * @generated
	 */
	EAttribute getInspection_Date();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Inspection#getPerson <em>Person</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Person</em>'.
	 * @see slopewright.model.Inspection#getPerson()
	 * @see #getInspection()
	 * @generated
	 */
	EAttribute getInspection_Person();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Inspection#getOrganisation <em>Organisation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Organisation</em>'.
	 * @see slopewright.model.Inspection#getOrganisation()
	 * @see #getInspection()
	 * @generated
	 */
	EAttribute getInspection_Organisation();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Inspection#getOnSlopeAngleDeg <em>On Slope Angle Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>On Slope Angle Deg</em>'.
	 * @see slopewright.model.Inspection#getOnSlopeAngleDeg()
	 * @see #getInspection()
	 * @generated
	 */
	EAttribute getInspection_OnSlopeAngleDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Inspection#getUsableRangeM <em>Usable Range M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Usable Range M</em>'.
	 * @see slopewright.model.Inspection#getUsableRangeM()
	 * @see #getInspection()
	 * @generated
	 */
	EAttribute getInspection_UsableRangeM();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Inspection#getAzimuthLeftDeg <em>Azimuth Left Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Azimuth Left Deg</em>'.
	 * @see slopewright.model.Inspection#getAzimuthLeftDeg()
	 * @see #getInspection()
	 * @generated
	 */
	EAttribute getInspection_AzimuthLeftDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Inspection#getAzimuthRightDeg <em>Azimuth Right Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Azimuth Right Deg</em>'.
	 * @see slopewright.model.Inspection#getAzimuthRightDeg()
	 * @see #getInspection()
	 * @generated
	 */
	EAttribute getInspection_AzimuthRightDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Inspection#getObstacleClear <em>Obstacle Clear</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Obstacle Clear</em>'.
	 * @see slopewright.model.Inspection#getObstacleClear()
	 * @see #getInspection()
	 * @generated
	 */
	EAttribute getInspection_ObstacleClear();

	/**
	 * Returns the meta object for class '{@link slopewright.model.BackgroundImage <em>Background Image</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Background Image</em>'.
	 * @see slopewright.model.BackgroundImage
	 * @generated
	 */
	EClass getBackgroundImage();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.BackgroundImage#getPath <em>Path</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Path</em>'.
	 * @see slopewright.model.BackgroundImage#getPath()
	 * @see #getBackgroundImage()
	 * @generated
	 */
	EAttribute getBackgroundImage_Path();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.BackgroundImage#getSha256 <em>Sha256</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sha256</em>'.
	 * @see slopewright.model.BackgroundImage#getSha256()
	 * @see #getBackgroundImage()
	 * @generated
	 */
	EAttribute getBackgroundImage_Sha256();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.BackgroundImage#getFirstColumnPx <em>First Column Px</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>First Column Px</em>'.
	 * @see slopewright.model.BackgroundImage#getFirstColumnPx()
	 * @see #getBackgroundImage()
	 * @generated
	 */
	EAttribute getBackgroundImage_FirstColumnPx();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.BackgroundImage#getFirstRowPx <em>First Row Px</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>First Row Px</em>'.
	 * @see slopewright.model.BackgroundImage#getFirstRowPx()
	 * @see #getBackgroundImage()
	 * @generated
	 */
	EAttribute getBackgroundImage_FirstRowPx();

	/**
	 * Returns the meta object for the containment reference '{@link slopewright.model.BackgroundImage#getFirstPlace <em>First Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>First Place</em>'.
	 * @see slopewright.model.BackgroundImage#getFirstPlace()
	 * @see #getBackgroundImage()
	 * @generated
	 */
	EReference getBackgroundImage_FirstPlace();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.BackgroundImage#getSecondColumnPx <em>Second Column Px</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Second Column Px</em>'.
	 * @see slopewright.model.BackgroundImage#getSecondColumnPx()
	 * @see #getBackgroundImage()
	 * @generated
	 */
	EAttribute getBackgroundImage_SecondColumnPx();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.BackgroundImage#getSecondRowPx <em>Second Row Px</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Second Row Px</em>'.
	 * @see slopewright.model.BackgroundImage#getSecondRowPx()
	 * @see #getBackgroundImage()
	 * @generated
	 */
	EAttribute getBackgroundImage_SecondRowPx();

	/**
	 * Returns the meta object for the containment reference '{@link slopewright.model.BackgroundImage#getSecondPlace <em>Second Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Second Place</em>'.
	 * @see slopewright.model.BackgroundImage#getSecondPlace()
	 * @see #getBackgroundImage()
	 * @generated
	 */
	EReference getBackgroundImage_SecondPlace();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.BackgroundImage#getOpacityPercent <em>Opacity Percent</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Opacity Percent</em>'.
	 * @see slopewright.model.BackgroundImage#getOpacityPercent()
	 * @see #getBackgroundImage()
	 * @generated
	 */
	EAttribute getBackgroundImage_OpacityPercent();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.BackgroundImage#getHidden <em>Hidden</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Hidden</em>'.
	 * @see slopewright.model.BackgroundImage#getHidden()
	 * @see #getBackgroundImage()
	 * @generated
	 */
	EAttribute getBackgroundImage_Hidden();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.BackgroundImage#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see slopewright.model.BackgroundImage#getSource()
	 * @see #getBackgroundImage()
	 * @generated
	 */
	EAttribute getBackgroundImage_Source();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.BackgroundImage#getDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date</em>'.
	 * @see slopewright.model.BackgroundImage#getDate()
	 * @see #getBackgroundImage()
	 * @generated
	 */
	EAttribute getBackgroundImage_Date();

	/**
	 * Returns the meta object for class '{@link slopewright.model.Transition <em>Transition</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Transition</em>'.
	 * @see slopewright.model.Transition
	 * @generated
	 */
	EClass getTransition();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Transition#getOffsetDeg <em>Offset Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Offset Deg</em>'.
	 * @see slopewright.model.Transition#getOffsetDeg()
	 * @see #getTransition()
	 * @generated
	 */
	EAttribute getTransition_OffsetDeg();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Transition#getWidthMinutes <em>Width Minutes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width Minutes</em>'.
	 * @see slopewright.model.Transition#getWidthMinutes()
	 * @see #getTransition()
	 * @generated
	 */
	EAttribute getTransition_WidthMinutes();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Transition#getBelowColour <em>Below Colour</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Below Colour</em>'.
	 * @see slopewright.model.Transition#getBelowColour()
	 * @see #getTransition()
	 * @generated
	 */
	EAttribute getTransition_BelowColour();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Transition#getBelowState <em>Below State</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Below State</em>'.
	 * @see slopewright.model.Transition#getBelowState()
	 * @see #getTransition()
	 * @generated
	 */
	EAttribute getTransition_BelowState();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Transition#getAboveColour <em>Above Colour</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Above Colour</em>'.
	 * @see slopewright.model.Transition#getAboveColour()
	 * @see #getTransition()
	 * @generated
	 */
	EAttribute getTransition_AboveColour();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.Transition#getAboveState <em>Above State</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Above State</em>'.
	 * @see slopewright.model.Transition#getAboveState()
	 * @see #getTransition()
	 * @generated
	 */
	EAttribute getTransition_AboveState();

	/**
	 * Returns the meta object for class '{@link slopewright.model.ReadBack <em>Read Back</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Read Back</em>'.
	 * @see slopewright.model.ReadBack
	 * @generated
	 */
	EClass getReadBack();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ReadBack#getElementId <em>Element Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Element Id</em>'.
	 * @see slopewright.model.ReadBack#getElementId()
	 * @see #getReadBack()
	 * @generated
	 */
	EAttribute getReadBack_ElementId();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ReadBack#getPerson <em>Person</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Person</em>'.
	 * @see slopewright.model.ReadBack#getPerson()
	 * @see #getReadBack()
	 * @generated
	 */
	EAttribute getReadBack_Person();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ReadBack#getDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date</em>'.
	 * @see slopewright.model.ReadBack#getDate()
	 * @see #getReadBack()
	 * @generated
	 */
	EAttribute getReadBack_Date();

	/**
	 * Returns the meta object for the attribute '{@link slopewright.model.ReadBack#getSha256 <em>Sha256</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sha256</em>'.
	 * @see slopewright.model.ReadBack#getSha256()
	 * @see #getReadBack()
	 * @generated
	 */
	EAttribute getReadBack_Sha256();

	/**
	 * Returns the meta object for enum '{@link slopewright.model.ApproachType <em>Approach Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Approach Type</em>'.
	 * @see slopewright.model.ApproachType
	 * @generated
	 */
	EEnum getApproachType();

	/**
	 * Returns the meta object for enum '{@link slopewright.model.GlidePathKind <em>Glide Path Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Glide Path Kind</em>'.
	 * @see slopewright.model.GlidePathKind
	 * @generated
	 */
	EEnum getGlidePathKind();

	/**
	 * Returns the meta object for enum '{@link slopewright.model.EdgeKind <em>Edge Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Edge Kind</em>'.
	 * @see slopewright.model.EdgeKind
	 * @generated
	 */
	EEnum getEdgeKind();

	/**
	 * Returns the meta object for enum '{@link slopewright.model.ObstacleKind <em>Obstacle Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Obstacle Kind</em>'.
	 * @see slopewright.model.ObstacleKind
	 * @generated
	 */
	EEnum getObstacleKind();

	/**
	 * Returns the meta object for enum '{@link slopewright.model.AidSide <em>Aid Side</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Aid Side</em>'.
	 * @see slopewright.model.AidSide
	 * @generated
	 */
	EEnum getAidSide();

	/**
	 * Returns the meta object for enum '{@link slopewright.model.SettingsForm <em>Settings Form</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Settings Form</em>'.
	 * @see slopewright.model.SettingsForm
	 * @generated
	 */
	EEnum getSettingsForm();

	/**
	 * Returns the meta object for enum '{@link slopewright.model.ClearanceChoice <em>Clearance Choice</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Clearance Choice</em>'.
	 * @see slopewright.model.ClearanceChoice
	 * @generated
	 */
	EEnum getClearanceChoice();

	/**
	 * Returns the meta object for enum '{@link slopewright.model.LightColour <em>Light Colour</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Light Colour</em>'.
	 * @see slopewright.model.LightColour
	 * @generated
	 */
	EEnum getLightColour();

	/**
	 * Returns the meta object for enum '{@link slopewright.model.LightState <em>Light State</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Light State</em>'.
	 * @see slopewright.model.LightState
	 * @generated
	 */
	EEnum getLightState();

	/**
	 * Returns the meta object for enum '{@link slopewright.model.ReviewKind <em>Review Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Review Kind</em>'.
	 * @see slopewright.model.ReviewKind
	 * @generated
	 */
	EEnum getReviewKind();

	/**
	 * Returns the meta object for enum '{@link slopewright.model.Stage <em>Stage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Stage</em>'.
	 * @see slopewright.model.Stage
	 * @generated
	 */
	EEnum getStage();

	/**
	 * Returns the meta object for enum '{@link slopewright.model.PlateZero <em>Plate Zero</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Plate Zero</em>'.
	 * @see slopewright.model.PlateZero
	 * @generated
	 */
	EEnum getPlateZero();

	/**
	 * Returns the meta object for enum '{@link slopewright.model.PlateSense <em>Plate Sense</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Plate Sense</em>'.
	 * @see slopewright.model.PlateSense
	 * @generated
	 */
	EEnum getPlateSense();

	/**
	 * Returns the meta object for enum '{@link slopewright.model.SightHair <em>Sight Hair</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Sight Hair</em>'.
	 * @see slopewright.model.SightHair
	 * @generated
	 */
	EEnum getSightHair();

	/**
	 * Returns the meta object for enum '{@link slopewright.model.HandOrder <em>Hand Order</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Hand Order</em>'.
	 * @see slopewright.model.HandOrder
	 * @generated
	 */
	EEnum getHandOrder();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	SlopewrightFactory getSlopewrightFactory();

	/**
	 * <!-- begin-user-doc -->
	 * Defines literals for the meta objects that represent
	 * <ul>
	 *   <li>each class,</li>
	 *   <li>each feature of each class,</li>
	 *   <li>each operation of each class,</li>
	 *   <li>each enum,</li>
	 *   <li>and each data type</li>
	 * </ul>
	 * <!-- end-user-doc -->
	 * @generated
	 */
	interface Literals {
		/**
		 * The meta object literal for the '{@link slopewright.model.impl.IdentifiedImpl <em>Identified</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.IdentifiedImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getIdentified()
		 * @generated
		 */
		EClass IDENTIFIED = eINSTANCE.getIdentified();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute IDENTIFIED__ID = eINSTANCE.getIdentified_Id();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.NamedImpl <em>Named</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.NamedImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getNamed()
		 * @generated
		 */
		EClass NAMED = eINSTANCE.getNamed();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute NAMED__NAME = eINSTANCE.getNamed_Name();

		/**
		 * The meta object literal for the '<em><b>Remarks</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute NAMED__REMARKS = eINSTANCE.getNamed_Remarks();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.ProjectImpl <em>Project</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.ProjectImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getProject()
		 * @generated
		 */
		EClass PROJECT = eINSTANCE.getProject();

		/**
		 * The meta object literal for the '<em><b>Revision</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROJECT__REVISION = eINSTANCE.getProject_Revision();

		/**
		 * The meta object literal for the '<em><b>Author</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROJECT__AUTHOR = eINSTANCE.getProject_Author();

		/**
		 * The meta object literal for the '<em><b>Organisation</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROJECT__ORGANISATION = eINSTANCE.getProject_Organisation();

		/**
		 * The meta object literal for the '<em><b>Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROJECT__DATE = eINSTANCE.getProject_Date();

		/**
		 * The meta object literal for the '<em><b>Rule Set Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROJECT__RULE_SET_KEY = eINSTANCE.getProject_RuleSetKey();

		/**
		 * The meta object literal for the '<em><b>Aerodrome</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__AERODROME = eINSTANCE.getProject_Aerodrome();

		/**
		 * The meta object literal for the '<em><b>Overrides</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__OVERRIDES = eINSTANCE.getProject_Overrides();

		/**
		 * The meta object literal for the '<em><b>Confirmations</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__CONFIRMATIONS = eINSTANCE.getProject_Confirmations();

		/**
		 * The meta object literal for the '<em><b>Review Notes</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__REVIEW_NOTES = eINSTANCE.getProject_ReviewNotes();

		/**
		 * The meta object literal for the '<em><b>Survey Blocks</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__SURVEY_BLOCKS = eINSTANCE.getProject_SurveyBlocks();

		/**
		 * The meta object literal for the '<em><b>Document Number</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROJECT__DOCUMENT_NUMBER = eINSTANCE.getProject_DocumentNumber();

		/**
		 * The meta object literal for the '<em><b>Client</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROJECT__CLIENT = eINSTANCE.getProject_Client();

		/**
		 * The meta object literal for the '<em><b>Checked By</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROJECT__CHECKED_BY = eINSTANCE.getProject_CheckedBy();

		/**
		 * The meta object literal for the '<em><b>Approved By</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROJECT__APPROVED_BY = eINSTANCE.getProject_ApprovedBy();

		/**
		 * The meta object literal for the '<em><b>Stage</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROJECT__STAGE = eINSTANCE.getProject_Stage();

		/**
		 * The meta object literal for the '<em><b>Book Path</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROJECT__BOOK_PATH = eINSTANCE.getProject_BookPath();

		/**
		 * The meta object literal for the '<em><b>Book Sha256</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROJECT__BOOK_SHA256 = eINSTANCE.getProject_BookSha256();

		/**
		 * The meta object literal for the '<em><b>Rule Set Folder</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROJECT__RULE_SET_FOLDER = eINSTANCE.getProject_RuleSetFolder();

		/**
		 * The meta object literal for the '<em><b>Read Backs</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__READ_BACKS = eINSTANCE.getProject_ReadBacks();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.ValueOverrideImpl <em>Value Override</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.ValueOverrideImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getValueOverride()
		 * @generated
		 */
		EClass VALUE_OVERRIDE = eINSTANCE.getValueOverride();

		/**
		 * The meta object literal for the '<em><b>Value Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VALUE_OVERRIDE__VALUE_KEY = eINSTANCE.getValueOverride_ValueKey();

		/**
		 * The meta object literal for the '<em><b>Rule Set Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VALUE_OVERRIDE__RULE_SET_KEY = eINSTANCE.getValueOverride_RuleSetKey();

		/**
		 * The meta object literal for the '<em><b>Value</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VALUE_OVERRIDE__VALUE = eINSTANCE.getValueOverride_Value();

		/**
		 * The meta object literal for the '<em><b>Reason</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VALUE_OVERRIDE__REASON = eINSTANCE.getValueOverride_Reason();

		/**
		 * The meta object literal for the '<em><b>Person</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VALUE_OVERRIDE__PERSON = eINSTANCE.getValueOverride_Person();

		/**
		 * The meta object literal for the '<em><b>Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VALUE_OVERRIDE__DATE = eINSTANCE.getValueOverride_Date();

		/**
		 * The meta object literal for the '<em><b>Unit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VALUE_OVERRIDE__UNIT = eINSTANCE.getValueOverride_Unit();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.ValueConfirmationImpl <em>Value Confirmation</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.ValueConfirmationImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getValueConfirmation()
		 * @generated
		 */
		EClass VALUE_CONFIRMATION = eINSTANCE.getValueConfirmation();

		/**
		 * The meta object literal for the '<em><b>Value Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VALUE_CONFIRMATION__VALUE_KEY = eINSTANCE.getValueConfirmation_ValueKey();

		/**
		 * The meta object literal for the '<em><b>Rule Set Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VALUE_CONFIRMATION__RULE_SET_KEY = eINSTANCE.getValueConfirmation_RuleSetKey();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VALUE_CONFIRMATION__SOURCE = eINSTANCE.getValueConfirmation_Source();

		/**
		 * The meta object literal for the '<em><b>Person</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VALUE_CONFIRMATION__PERSON = eINSTANCE.getValueConfirmation_Person();

		/**
		 * The meta object literal for the '<em><b>Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VALUE_CONFIRMATION__DATE = eINSTANCE.getValueConfirmation_Date();

		/**
		 * The meta object literal for the '<em><b>Value</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VALUE_CONFIRMATION__VALUE = eINSTANCE.getValueConfirmation_Value();

		/**
		 * The meta object literal for the '<em><b>Unit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VALUE_CONFIRMATION__UNIT = eINSTANCE.getValueConfirmation_Unit();

		/**
		 * The meta object literal for the '<em><b>Edition</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VALUE_CONFIRMATION__EDITION = eINSTANCE.getValueConfirmation_Edition();

		/**
		 * The meta object literal for the '<em><b>Clause</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VALUE_CONFIRMATION__CLAUSE = eINSTANCE.getValueConfirmation_Clause();

		/**
		 * The meta object literal for the '<em><b>Second Person</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VALUE_CONFIRMATION__SECOND_PERSON = eINSTANCE.getValueConfirmation_SecondPerson();

		/**
		 * The meta object literal for the '<em><b>From Book</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VALUE_CONFIRMATION__FROM_BOOK = eINSTANCE.getValueConfirmation_FromBook();

		/**
		 * The meta object literal for the '<em><b>Second Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VALUE_CONFIRMATION__SECOND_DATE = eINSTANCE.getValueConfirmation_SecondDate();

		/**
		 * The meta object literal for the '<em><b>Rejected</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VALUE_CONFIRMATION__REJECTED = eINSTANCE.getValueConfirmation_Rejected();

		/**
		 * The meta object literal for the '<em><b>Reason</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VALUE_CONFIRMATION__REASON = eINSTANCE.getValueConfirmation_Reason();

		/**
		 * The meta object literal for the '<em><b>Sha256</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VALUE_CONFIRMATION__SHA256 = eINSTANCE.getValueConfirmation_Sha256();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.ReviewNoteImpl <em>Review Note</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.ReviewNoteImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getReviewNote()
		 * @generated
		 */
		EClass REVIEW_NOTE = eINSTANCE.getReviewNote();

		/**
		 * The meta object literal for the '<em><b>Element Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REVIEW_NOTE__ELEMENT_ID = eINSTANCE.getReviewNote_ElementId();

		/**
		 * The meta object literal for the '<em><b>Rule Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REVIEW_NOTE__RULE_ID = eINSTANCE.getReviewNote_RuleId();

		/**
		 * The meta object literal for the '<em><b>Text</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REVIEW_NOTE__TEXT = eINSTANCE.getReviewNote_Text();

		/**
		 * The meta object literal for the '<em><b>Person</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REVIEW_NOTE__PERSON = eINSTANCE.getReviewNote_Person();

		/**
		 * The meta object literal for the '<em><b>Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REVIEW_NOTE__DATE = eINSTANCE.getReviewNote_Date();

		/**
		 * The meta object literal for the '<em><b>Resolved</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REVIEW_NOTE__RESOLVED = eINSTANCE.getReviewNote_Resolved();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REVIEW_NOTE__KIND = eINSTANCE.getReviewNote_Kind();

		/**
		 * The meta object literal for the '<em><b>Note Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REVIEW_NOTE__NOTE_ID = eINSTANCE.getReviewNote_NoteId();

		/**
		 * The meta object literal for the '<em><b>Sha256</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REVIEW_NOTE__SHA256 = eINSTANCE.getReviewNote_Sha256();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.SurveyBlockImpl <em>Survey Block</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.SurveyBlockImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getSurveyBlock()
		 * @generated
		 */
		EClass SURVEY_BLOCK = eINSTANCE.getSurveyBlock();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SURVEY_BLOCK__KIND = eINSTANCE.getSurveyBlock_Kind();

		/**
		 * The meta object literal for the '<em><b>Path</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SURVEY_BLOCK__PATH = eINSTANCE.getSurveyBlock_Path();

		/**
		 * The meta object literal for the '<em><b>Sha256</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SURVEY_BLOCK__SHA256 = eINSTANCE.getSurveyBlock_Sha256();

		/**
		 * The meta object literal for the '<em><b>Point Count</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SURVEY_BLOCK__POINT_COUNT = eINSTANCE.getSurveyBlock_PointCount();

		/**
		 * The meta object literal for the '<em><b>Horizontal Accuracy M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SURVEY_BLOCK__HORIZONTAL_ACCURACY_M = eINSTANCE.getSurveyBlock_HorizontalAccuracyM();

		/**
		 * The meta object literal for the '<em><b>Vertical Accuracy M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SURVEY_BLOCK__VERTICAL_ACCURACY_M = eINSTANCE.getSurveyBlock_VerticalAccuracyM();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SURVEY_BLOCK__SOURCE = eINSTANCE.getSurveyBlock_Source();

		/**
		 * The meta object literal for the '<em><b>Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SURVEY_BLOCK__DATE = eINSTANCE.getSurveyBlock_Date();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.AerodromeImpl <em>Aerodrome</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.AerodromeImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getAerodrome()
		 * @generated
		 */
		EClass AERODROME = eINSTANCE.getAerodrome();

		/**
		 * The meta object literal for the '<em><b>Identifier</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AERODROME__IDENTIFIER = eINSTANCE.getAerodrome_Identifier();

		/**
		 * The meta object literal for the '<em><b>Latitude Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AERODROME__LATITUDE_DEG = eINSTANCE.getAerodrome_LatitudeDeg();

		/**
		 * The meta object literal for the '<em><b>Longitude Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AERODROME__LONGITUDE_DEG = eINSTANCE.getAerodrome_LongitudeDeg();

		/**
		 * The meta object literal for the '<em><b>Elevation M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AERODROME__ELEVATION_M = eINSTANCE.getAerodrome_ElevationM();

		/**
		 * The meta object literal for the '<em><b>Vertical Datum</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AERODROME__VERTICAL_DATUM = eINSTANCE.getAerodrome_VerticalDatum();

		/**
		 * The meta object literal for the '<em><b>Geoid Offset M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AERODROME__GEOID_OFFSET_M = eINSTANCE.getAerodrome_GeoidOffsetM();

		/**
		 * The meta object literal for the '<em><b>Coordinate Reference</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AERODROME__COORDINATE_REFERENCE = eINSTANCE.getAerodrome_CoordinateReference();

		/**
		 * The meta object literal for the '<em><b>Coordinate Epoch</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AERODROME__COORDINATE_EPOCH = eINSTANCE.getAerodrome_CoordinateEpoch();

		/**
		 * The meta object literal for the '<em><b>Coordinate Accuracy M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AERODROME__COORDINATE_ACCURACY_M = eINSTANCE.getAerodrome_CoordinateAccuracyM();

		/**
		 * The meta object literal for the '<em><b>Grid Rotation Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AERODROME__GRID_ROTATION_DEG = eINSTANCE.getAerodrome_GridRotationDeg();

		/**
		 * The meta object literal for the '<em><b>Magnetic Variation</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference AERODROME__MAGNETIC_VARIATION = eINSTANCE.getAerodrome_MagneticVariation();

		/**
		 * The meta object literal for the '<em><b>Runways</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference AERODROME__RUNWAYS = eINSTANCE.getAerodrome_Runways();

		/**
		 * The meta object literal for the '<em><b>Helipads</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference AERODROME__HELIPADS = eINSTANCE.getAerodrome_Helipads();

		/**
		 * The meta object literal for the '<em><b>Aeroplane Groups</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference AERODROME__AEROPLANE_GROUPS = eINSTANCE.getAerodrome_AeroplaneGroups();

		/**
		 * The meta object literal for the '<em><b>Obstacles</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference AERODROME__OBSTACLES = eINSTANCE.getAerodrome_Obstacles();

		/**
		 * The meta object literal for the '<em><b>Ground Levels</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference AERODROME__GROUND_LEVELS = eINSTANCE.getAerodrome_GroundLevels();

		/**
		 * The meta object literal for the '<em><b>Taxiway Edges</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference AERODROME__TAXIWAY_EDGES = eINSTANCE.getAerodrome_TaxiwayEdges();

		/**
		 * The meta object literal for the '<em><b>Circuits</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference AERODROME__CIRCUITS = eINSTANCE.getAerodrome_Circuits();

		/**
		 * The meta object literal for the '<em><b>Equipment Types</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference AERODROME__EQUIPMENT_TYPES = eINSTANCE.getAerodrome_EquipmentTypes();

		/**
		 * The meta object literal for the '<em><b>Background Images</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference AERODROME__BACKGROUND_IMAGES = eINSTANCE.getAerodrome_BackgroundImages();

		/**
		 * The meta object literal for the '<em><b>Obstacle Surveys</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference AERODROME__OBSTACLE_SURVEYS = eINSTANCE.getAerodrome_ObstacleSurveys();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.MagneticVariationImpl <em>Magnetic Variation</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.MagneticVariationImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getMagneticVariation()
		 * @generated
		 */
		EClass MAGNETIC_VARIATION = eINSTANCE.getMagneticVariation();

		/**
		 * The meta object literal for the '<em><b>Variation Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAGNETIC_VARIATION__VARIATION_DEG = eINSTANCE.getMagneticVariation_VariationDeg();

		/**
		 * The meta object literal for the '<em><b>Annual Change Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAGNETIC_VARIATION__ANNUAL_CHANGE_DEG = eINSTANCE.getMagneticVariation_AnnualChangeDeg();

		/**
		 * The meta object literal for the '<em><b>Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAGNETIC_VARIATION__DATE = eINSTANCE.getMagneticVariation_Date();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAGNETIC_VARIATION__SOURCE = eINSTANCE.getMagneticVariation_Source();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.PlaceImpl <em>Place</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.PlaceImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getPlace()
		 * @generated
		 */
		EClass PLACE = eINSTANCE.getPlace();

		/**
		 * The meta object literal for the '<em><b>Latitude Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLACE__LATITUDE_DEG = eINSTANCE.getPlace_LatitudeDeg();

		/**
		 * The meta object literal for the '<em><b>Longitude Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLACE__LONGITUDE_DEG = eINSTANCE.getPlace_LongitudeDeg();

		/**
		 * The meta object literal for the '<em><b>East M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLACE__EAST_M = eINSTANCE.getPlace_EastM();

		/**
		 * The meta object literal for the '<em><b>North M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLACE__NORTH_M = eINSTANCE.getPlace_NorthM();

		/**
		 * The meta object literal for the '<em><b>Elevation M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLACE__ELEVATION_M = eINSTANCE.getPlace_ElevationM();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.ProfilePointImpl <em>Profile Point</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.ProfilePointImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getProfilePoint()
		 * @generated
		 */
		EClass PROFILE_POINT = eINSTANCE.getProfilePoint();

		/**
		 * The meta object literal for the '<em><b>Chainage M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROFILE_POINT__CHAINAGE_M = eINSTANCE.getProfilePoint_ChainageM();

		/**
		 * The meta object literal for the '<em><b>Elevation M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROFILE_POINT__ELEVATION_M = eINSTANCE.getProfilePoint_ElevationM();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.RunwayImpl <em>Runway</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.RunwayImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getRunway()
		 * @generated
		 */
		EClass RUNWAY = eINSTANCE.getRunway();

		/**
		 * The meta object literal for the '<em><b>Designator</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUNWAY__DESIGNATOR = eINSTANCE.getRunway_Designator();

		/**
		 * The meta object literal for the '<em><b>Length M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUNWAY__LENGTH_M = eINSTANCE.getRunway_LengthM();

		/**
		 * The meta object literal for the '<em><b>Width M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUNWAY__WIDTH_M = eINSTANCE.getRunway_WidthM();

		/**
		 * The meta object literal for the '<em><b>Code Number</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUNWAY__CODE_NUMBER = eINSTANCE.getRunway_CodeNumber();

		/**
		 * The meta object literal for the '<em><b>Surface</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUNWAY__SURFACE = eINSTANCE.getRunway_Surface();

		/**
		 * The meta object literal for the '<em><b>Paved</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUNWAY__PAVED = eINSTANCE.getRunway_Paved();

		/**
		 * The meta object literal for the '<em><b>Strip Length M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUNWAY__STRIP_LENGTH_M = eINSTANCE.getRunway_StripLengthM();

		/**
		 * The meta object literal for the '<em><b>Strip Width M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUNWAY__STRIP_WIDTH_M = eINSTANCE.getRunway_StripWidthM();

		/**
		 * The meta object literal for the '<em><b>Centre Line</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RUNWAY__CENTRE_LINE = eINSTANCE.getRunway_CentreLine();

		/**
		 * The meta object literal for the '<em><b>Ends</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RUNWAY__ENDS = eINSTANCE.getRunway_Ends();

		/**
		 * The meta object literal for the '<em><b>Object Free Width M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUNWAY__OBJECT_FREE_WIDTH_M = eINSTANCE.getRunway_ObjectFreeWidthM();

		/**
		 * The meta object literal for the '<em><b>Object Free Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUNWAY__OBJECT_FREE_SOURCE = eINSTANCE.getRunway_ObjectFreeSource();

		/**
		 * The meta object literal for the '<em><b>Open Data Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUNWAY__OPEN_DATA_SOURCE = eINSTANCE.getRunway_OpenDataSource();

		/**
		 * The meta object literal for the '<em><b>Open Data Licence</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUNWAY__OPEN_DATA_LICENCE = eINSTANCE.getRunway_OpenDataLicence();

		/**
		 * The meta object literal for the '<em><b>Open Data Confirmation</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUNWAY__OPEN_DATA_CONFIRMATION = eINSTANCE.getRunway_OpenDataConfirmation();

		/**
		 * The meta object literal for the '<em><b>Open Data Confirmation Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUNWAY__OPEN_DATA_CONFIRMATION_DATE = eINSTANCE.getRunway_OpenDataConfirmationDate();

		/**
		 * The meta object literal for the '<em><b>Open Data Confirmation Person</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUNWAY__OPEN_DATA_CONFIRMATION_PERSON = eINSTANCE.getRunway_OpenDataConfirmationPerson();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.ApproachHostImpl <em>Approach Host</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.ApproachHostImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getApproachHost()
		 * @generated
		 */
		EClass APPROACH_HOST = eINSTANCE.getApproachHost();

		/**
		 * The meta object literal for the '<em><b>Designator</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROACH_HOST__DESIGNATOR = eINSTANCE.getApproachHost_Designator();

		/**
		 * The meta object literal for the '<em><b>Desired Slope Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROACH_HOST__DESIRED_SLOPE_DEG = eINSTANCE.getApproachHost_DesiredSlopeDeg();

		/**
		 * The meta object literal for the '<em><b>Approach Type</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROACH_HOST__APPROACH_TYPE = eINSTANCE.getApproachHost_ApproachType();

		/**
		 * The meta object literal for the '<em><b>Glide Path</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference APPROACH_HOST__GLIDE_PATH = eINSTANCE.getApproachHost_GlidePath();

		/**
		 * The meta object literal for the '<em><b>Regular Groups</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference APPROACH_HOST__REGULAR_GROUPS = eINSTANCE.getApproachHost_RegularGroups();

		/**
		 * The meta object literal for the '<em><b>Aids</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference APPROACH_HOST__AIDS = eINSTANCE.getApproachHost_Aids();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.RunwayEndImpl <em>Runway End</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.RunwayEndImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getRunwayEnd()
		 * @generated
		 */
		EClass RUNWAY_END = eINSTANCE.getRunwayEnd();

		/**
		 * The meta object literal for the '<em><b>Threshold</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RUNWAY_END__THRESHOLD = eINSTANCE.getRunwayEnd_Threshold();

		/**
		 * The meta object literal for the '<em><b>True Bearing Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUNWAY_END__TRUE_BEARING_DEG = eINSTANCE.getRunwayEnd_TrueBearingDeg();

		/**
		 * The meta object literal for the '<em><b>Threshold Elevation M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUNWAY_END__THRESHOLD_ELEVATION_M = eINSTANCE.getRunwayEnd_ThresholdElevationM();

		/**
		 * The meta object literal for the '<em><b>Displaced Threshold M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUNWAY_END__DISPLACED_THRESHOLD_M = eINSTANCE.getRunwayEnd_DisplacedThresholdM();

		/**
		 * The meta object literal for the '<em><b>Extremity Elevation M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUNWAY_END__EXTREMITY_ELEVATION_M = eINSTANCE.getRunwayEnd_ExtremityElevationM();

		/**
		 * The meta object literal for the '<em><b>Landing Distance M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUNWAY_END__LANDING_DISTANCE_M = eINSTANCE.getRunwayEnd_LandingDistanceM();

		/**
		 * The meta object literal for the '<em><b>Aiming Point Distance M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUNWAY_END__AIMING_POINT_DISTANCE_M = eINSTANCE.getRunwayEnd_AimingPointDistanceM();

		/**
		 * The meta object literal for the '<em><b>Site Profile</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RUNWAY_END__SITE_PROFILE = eINSTANCE.getRunwayEnd_SiteProfile();

		/**
		 * The meta object literal for the '<em><b>Hazardous Terrain</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUNWAY_END__HAZARDOUS_TERRAIN = eINSTANCE.getRunwayEnd_HazardousTerrain();

		/**
		 * The meta object literal for the '<em><b>Site Profile Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUNWAY_END__SITE_PROFILE_SOURCE = eINSTANCE.getRunwayEnd_SiteProfileSource();

		/**
		 * The meta object literal for the '<em><b>Site Profile Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUNWAY_END__SITE_PROFILE_DATE = eINSTANCE.getRunwayEnd_SiteProfileDate();

		/**
		 * The meta object literal for the '<em><b>Site Profile Accuracy M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUNWAY_END__SITE_PROFILE_ACCURACY_M = eINSTANCE.getRunwayEnd_SiteProfileAccuracyM();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.GlidePathAidImpl <em>Glide Path Aid</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.GlidePathAidImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getGlidePathAid()
		 * @generated
		 */
		EClass GLIDE_PATH_AID = eINSTANCE.getGlidePathAid();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLIDE_PATH_AID__KIND = eINSTANCE.getGlidePathAid_Kind();

		/**
		 * The meta object literal for the '<em><b>Path Angle Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLIDE_PATH_AID__PATH_ANGLE_DEG = eINSTANCE.getGlidePathAid_PathAngleDeg();

		/**
		 * The meta object literal for the '<em><b>Reference Datum Height M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLIDE_PATH_AID__REFERENCE_DATUM_HEIGHT_M = eINSTANCE.getGlidePathAid_ReferenceDatumHeightM();

		/**
		 * The meta object literal for the '<em><b>Origin Along M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLIDE_PATH_AID__ORIGIN_ALONG_M = eINSTANCE.getGlidePathAid_OriginAlongM();

		/**
		 * The meta object literal for the '<em><b>Antenna Along M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLIDE_PATH_AID__ANTENNA_ALONG_M = eINSTANCE.getGlidePathAid_AntennaAlongM();

		/**
		 * The meta object literal for the '<em><b>Antenna Right M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLIDE_PATH_AID__ANTENNA_RIGHT_M = eINSTANCE.getGlidePathAid_AntennaRightM();

		/**
		 * The meta object literal for the '<em><b>Critical Area Length M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLIDE_PATH_AID__CRITICAL_AREA_LENGTH_M = eINSTANCE.getGlidePathAid_CriticalAreaLengthM();

		/**
		 * The meta object literal for the '<em><b>Critical Area Width M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLIDE_PATH_AID__CRITICAL_AREA_WIDTH_M = eINSTANCE.getGlidePathAid_CriticalAreaWidthM();

		/**
		 * The meta object literal for the '<em><b>Critical Area Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLIDE_PATH_AID__CRITICAL_AREA_SOURCE = eINSTANCE.getGlidePathAid_CriticalAreaSource();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.TaxiwayEdgeImpl <em>Taxiway Edge</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.TaxiwayEdgeImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getTaxiwayEdge()
		 * @generated
		 */
		EClass TAXIWAY_EDGE = eINSTANCE.getTaxiwayEdge();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TAXIWAY_EDGE__KIND = eINSTANCE.getTaxiwayEdge_Kind();

		/**
		 * The meta object literal for the '<em><b>Points</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TAXIWAY_EDGE__POINTS = eINSTANCE.getTaxiwayEdge_Points();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.HelipadImpl <em>Helipad</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.HelipadImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getHelipad()
		 * @generated
		 */
		EClass HELIPAD = eINSTANCE.getHelipad();

		/**
		 * The meta object literal for the '<em><b>Place</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference HELIPAD__PLACE = eINSTANCE.getHelipad_Place();

		/**
		 * The meta object literal for the '<em><b>Elevation M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HELIPAD__ELEVATION_M = eINSTANCE.getHelipad_ElevationM();

		/**
		 * The meta object literal for the '<em><b>Fato Length M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HELIPAD__FATO_LENGTH_M = eINSTANCE.getHelipad_FatoLengthM();

		/**
		 * The meta object literal for the '<em><b>Fato Width M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HELIPAD__FATO_WIDTH_M = eINSTANCE.getHelipad_FatoWidthM();

		/**
		 * The meta object literal for the '<em><b>Tlof Length M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HELIPAD__TLOF_LENGTH_M = eINSTANCE.getHelipad_TlofLengthM();

		/**
		 * The meta object literal for the '<em><b>Tlof Width M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HELIPAD__TLOF_WIDTH_M = eINSTANCE.getHelipad_TlofWidthM();

		/**
		 * The meta object literal for the '<em><b>Safety Area Width M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HELIPAD__SAFETY_AREA_WIDTH_M = eINSTANCE.getHelipad_SafetyAreaWidthM();

		/**
		 * The meta object literal for the '<em><b>Hover Height M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HELIPAD__HOVER_HEIGHT_M = eINSTANCE.getHelipad_HoverHeightM();

		/**
		 * The meta object literal for the '<em><b>Eye Above Skids M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HELIPAD__EYE_ABOVE_SKIDS_M = eINSTANCE.getHelipad_EyeAboveSkidsM();

		/**
		 * The meta object literal for the '<em><b>Floating</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HELIPAD__FLOATING = eINSTANCE.getHelipad_Floating();

		/**
		 * The meta object literal for the '<em><b>Directions</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference HELIPAD__DIRECTIONS = eINSTANCE.getHelipad_Directions();

		/**
		 * The meta object literal for the '<em><b>Deck Pitch Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HELIPAD__DECK_PITCH_DEG = eINSTANCE.getHelipad_DeckPitchDeg();

		/**
		 * The meta object literal for the '<em><b>Deck Roll Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HELIPAD__DECK_ROLL_DEG = eINSTANCE.getHelipad_DeckRollDeg();

		/**
		 * The meta object literal for the '<em><b>Deck Heading Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HELIPAD__DECK_HEADING_DEG = eINSTANCE.getHelipad_DeckHeadingDeg();

		/**
		 * The meta object literal for the '<em><b>Fato Bearing Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HELIPAD__FATO_BEARING_DEG = eINSTANCE.getHelipad_FatoBearingDeg();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.ApproachDirectionImpl <em>Approach Direction</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.ApproachDirectionImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getApproachDirection()
		 * @generated
		 */
		EClass APPROACH_DIRECTION = eINSTANCE.getApproachDirection();

		/**
		 * The meta object literal for the '<em><b>True Bearing Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROACH_DIRECTION__TRUE_BEARING_DEG = eINSTANCE.getApproachDirection_TrueBearingDeg();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.AeroplaneGroupImpl <em>Aeroplane Group</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.AeroplaneGroupImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getAeroplaneGroup()
		 * @generated
		 */
		EClass AEROPLANE_GROUP = eINSTANCE.getAeroplaneGroup();

		/**
		 * The meta object literal for the '<em><b>Static Cockpit To Wheel M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AEROPLANE_GROUP__STATIC_COCKPIT_TO_WHEEL_M = eINSTANCE.getAeroplaneGroup_StaticCockpitToWheelM();

		/**
		 * The meta object literal for the '<em><b>Eye To Wheel M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AEROPLANE_GROUP__EYE_TO_WHEEL_M = eINSTANCE.getAeroplaneGroup_EyeToWheelM();

		/**
		 * The meta object literal for the '<em><b>Eye To Antenna M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AEROPLANE_GROUP__EYE_TO_ANTENNA_M = eINSTANCE.getAeroplaneGroup_EyeToAntennaM();

		/**
		 * The meta object literal for the '<em><b>Share Percent</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AEROPLANE_GROUP__SHARE_PERCENT = eINSTANCE.getAeroplaneGroup_SharePercent();

		/**
		 * The meta object literal for the '<em><b>Light Non Turbojet</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AEROPLANE_GROUP__LIGHT_NON_TURBOJET = eINSTANCE.getAeroplaneGroup_LightNonTurbojet();

		/**
		 * The meta object literal for the '<em><b>Max Slope Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AEROPLANE_GROUP__MAX_SLOPE_DEG = eINSTANCE.getAeroplaneGroup_MaxSlopeDeg();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.ObstacleImpl <em>Obstacle</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.ObstacleImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getObstacle()
		 * @generated
		 */
		EClass OBSTACLE = eINSTANCE.getObstacle();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OBSTACLE__KIND = eINSTANCE.getObstacle_Kind();

		/**
		 * The meta object literal for the '<em><b>Places</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference OBSTACLE__PLACES = eINSTANCE.getObstacle_Places();

		/**
		 * The meta object literal for the '<em><b>Top Elevation M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OBSTACLE__TOP_ELEVATION_M = eINSTANCE.getObstacle_TopElevationM();

		/**
		 * The meta object literal for the '<em><b>Horizontal Accuracy M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OBSTACLE__HORIZONTAL_ACCURACY_M = eINSTANCE.getObstacle_HorizontalAccuracyM();

		/**
		 * The meta object literal for the '<em><b>Vertical Accuracy M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OBSTACLE__VERTICAL_ACCURACY_M = eINSTANCE.getObstacle_VerticalAccuracyM();

		/**
		 * The meta object literal for the '<em><b>Lighted</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OBSTACLE__LIGHTED = eINSTANCE.getObstacle_Lighted();

		/**
		 * The meta object literal for the '<em><b>Shielded</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OBSTACLE__SHIELDED = eINSTANCE.getObstacle_Shielded();

		/**
		 * The meta object literal for the '<em><b>Shielded By</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference OBSTACLE__SHIELDED_BY = eINSTANCE.getObstacle_ShieldedBy();

		/**
		 * The meta object literal for the '<em><b>Shielding Study</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OBSTACLE__SHIELDING_STUDY = eINSTANCE.getObstacle_ShieldingStudy();

		/**
		 * The meta object literal for the '<em><b>Shielding Study Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OBSTACLE__SHIELDING_STUDY_DATE = eINSTANCE.getObstacle_ShieldingStudyDate();

		/**
		 * The meta object literal for the '<em><b>Shielding Study Person</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OBSTACLE__SHIELDING_STUDY_PERSON = eINSTANCE.getObstacle_ShieldingStudyPerson();

		/**
		 * The meta object literal for the '<em><b>Temporary</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OBSTACLE__TEMPORARY = eINSTANCE.getObstacle_Temporary();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OBSTACLE__SOURCE = eINSTANCE.getObstacle_Source();

		/**
		 * The meta object literal for the '<em><b>Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OBSTACLE__DATE = eINSTANCE.getObstacle_Date();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.GroundLevelImpl <em>Ground Level</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.GroundLevelImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getGroundLevel()
		 * @generated
		 */
		EClass GROUND_LEVEL = eINSTANCE.getGroundLevel();

		/**
		 * The meta object literal for the '<em><b>Place</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference GROUND_LEVEL__PLACE = eINSTANCE.getGroundLevel_Place();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GROUND_LEVEL__SOURCE = eINSTANCE.getGroundLevel_Source();

		/**
		 * The meta object literal for the '<em><b>Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GROUND_LEVEL__DATE = eINSTANCE.getGroundLevel_Date();

		/**
		 * The meta object literal for the '<em><b>Vertical Accuracy M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GROUND_LEVEL__VERTICAL_ACCURACY_M = eINSTANCE.getGroundLevel_VerticalAccuracyM();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.ObstacleSurveyImpl <em>Obstacle Survey</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.ObstacleSurveyImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getObstacleSurvey()
		 * @generated
		 */
		EClass OBSTACLE_SURVEY = eINSTANCE.getObstacleSurvey();

		/**
		 * The meta object literal for the '<em><b>Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OBSTACLE_SURVEY__DATE = eINSTANCE.getObstacleSurvey_Date();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OBSTACLE_SURVEY__SOURCE = eINSTANCE.getObstacleSurvey_Source();

		/**
		 * The meta object literal for the '<em><b>Reach M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OBSTACLE_SURVEY__REACH_M = eINSTANCE.getObstacleSurvey_ReachM();

		/**
		 * The meta object literal for the '<em><b>Half Width M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OBSTACLE_SURVEY__HALF_WIDTH_M = eINSTANCE.getObstacleSurvey_HalfWidthM();

		/**
		 * The meta object literal for the '<em><b>Horizontal Accuracy M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OBSTACLE_SURVEY__HORIZONTAL_ACCURACY_M = eINSTANCE.getObstacleSurvey_HorizontalAccuracyM();

		/**
		 * The meta object literal for the '<em><b>Vertical Accuracy M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OBSTACLE_SURVEY__VERTICAL_ACCURACY_M = eINSTANCE.getObstacleSurvey_VerticalAccuracyM();

		/**
		 * The meta object literal for the '<em><b>Hosts</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference OBSTACLE_SURVEY__HOSTS = eINSTANCE.getObstacleSurvey_Hosts();

		/**
		 * The meta object literal for the '<em><b>All Round</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OBSTACLE_SURVEY__ALL_ROUND = eINSTANCE.getObstacleSurvey_AllRound();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.EquipmentTypeImpl <em>Equipment Type</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.EquipmentTypeImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getEquipmentType()
		 * @generated
		 */
		EClass EQUIPMENT_TYPE = eINSTANCE.getEquipmentType();

		/**
		 * The meta object literal for the '<em><b>Family Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__FAMILY_KEY = eINSTANCE.getEquipmentType_FamilyKey();

		/**
		 * The meta object literal for the '<em><b>Beam Width Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__BEAM_WIDTH_DEG = eINSTANCE.getEquipmentType_BeamWidthDeg();

		/**
		 * The meta object literal for the '<em><b>Transition Minutes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__TRANSITION_MINUTES = eINSTANCE.getEquipmentType_TransitionMinutes();

		/**
		 * The meta object literal for the '<em><b>Min Setting Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__MIN_SETTING_DEG = eINSTANCE.getEquipmentType_MinSettingDeg();

		/**
		 * The meta object literal for the '<em><b>Max Setting Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__MAX_SETTING_DEG = eINSTANCE.getEquipmentType_MaxSettingDeg();

		/**
		 * The meta object literal for the '<em><b>Intensity Cd</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__INTENSITY_CD = eINSTANCE.getEquipmentType_IntensityCd();

		/**
		 * The meta object literal for the '<em><b>Lamp Power W</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__LAMP_POWER_W = eINSTANCE.getEquipmentType_LampPowerW();

		/**
		 * The meta object literal for the '<em><b>Lamps Per Unit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__LAMPS_PER_UNIT = eINSTANCE.getEquipmentType_LampsPerUnit();

		/**
		 * The meta object literal for the '<em><b>Supply</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__SUPPLY = eINSTANCE.getEquipmentType_Supply();

		/**
		 * The meta object literal for the '<em><b>Min Voltage V</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__MIN_VOLTAGE_V = eINSTANCE.getEquipmentType_MinVoltageV();

		/**
		 * The meta object literal for the '<em><b>Max Voltage V</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__MAX_VOLTAGE_V = eINSTANCE.getEquipmentType_MaxVoltageV();

		/**
		 * The meta object literal for the '<em><b>Mass Kg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__MASS_KG = eINSTANCE.getEquipmentType_MassKg();

		/**
		 * The meta object literal for the '<em><b>Height Above Ground M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__HEIGHT_ABOVE_GROUND_M = eINSTANCE.getEquipmentType_HeightAboveGroundM();

		/**
		 * The meta object literal for the '<em><b>Sectors</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference EQUIPMENT_TYPE__SECTORS = eINSTANCE.getEquipmentType_Sectors();

		/**
		 * The meta object literal for the '<em><b>White Intensity Cd</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__WHITE_INTENSITY_CD = eINSTANCE.getEquipmentType_WhiteIntensityCd();

		/**
		 * The meta object literal for the '<em><b>Red Chromaticity Y</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__RED_CHROMATICITY_Y = eINSTANCE.getEquipmentType_RedChromaticityY();

		/**
		 * The meta object literal for the '<em><b>Brightness Steps</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__BRIGHTNESS_STEPS = eINSTANCE.getEquipmentType_BrightnessSteps();

		/**
		 * The meta object literal for the '<em><b>Night Step Percent</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__NIGHT_STEP_PERCENT = eINSTANCE.getEquipmentType_NightStepPercent();

		/**
		 * The meta object literal for the '<em><b>Tilt Cut Off Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__TILT_CUT_OFF_DEG = eINSTANCE.getEquipmentType_TiltCutOffDeg();

		/**
		 * The meta object literal for the '<em><b>Flash Rate Hz</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__FLASH_RATE_HZ = eINSTANCE.getEquipmentType_FlashRateHz();

		/**
		 * The meta object literal for the '<em><b>Flash On Percent</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__FLASH_ON_PERCENT = eINSTANCE.getEquipmentType_FlashOnPercent();

		/**
		 * The meta object literal for the '<em><b>Modulation Percent</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__MODULATION_PERCENT = eINSTANCE.getEquipmentType_ModulationPercent();

		/**
		 * The meta object literal for the '<em><b>Data Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__DATA_SOURCE = eINSTANCE.getEquipmentType_DataSource();

		/**
		 * The meta object literal for the '<em><b>Intensities</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference EQUIPMENT_TYPE__INTENSITIES = eINSTANCE.getEquipmentType_Intensities();

		/**
		 * The meta object literal for the '<em><b>Plate Zero</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__PLATE_ZERO = eINSTANCE.getEquipmentType_PlateZero();

		/**
		 * The meta object literal for the '<em><b>Plate Sense</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__PLATE_SENSE = eINSTANCE.getEquipmentType_PlateSense();

		/**
		 * The meta object literal for the '<em><b>Plate Step Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__PLATE_STEP_DEG = eINSTANCE.getEquipmentType_PlateStepDeg();

		/**
		 * The meta object literal for the '<em><b>Slope Scale Step Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__SLOPE_SCALE_STEP_DEG = eINSTANCE.getEquipmentType_SlopeScaleStepDeg();

		/**
		 * The meta object literal for the '<em><b>Bubble Accuracy Minutes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__BUBBLE_ACCURACY_MINUTES = eINSTANCE.getEquipmentType_BubbleAccuracyMinutes();

		/**
		 * The meta object literal for the '<em><b>Lower Hair</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__LOWER_HAIR = eINSTANCE.getEquipmentType_LowerHair();

		/**
		 * The meta object literal for the '<em><b>Upper Hair</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__UPPER_HAIR = eINSTANCE.getEquipmentType_UpperHair();

		/**
		 * The meta object literal for the '<em><b>Hand Order</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__HAND_ORDER = eINSTANCE.getEquipmentType_HandOrder();

		/**
		 * The meta object literal for the '<em><b>Recheck Every H</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__RECHECK_EVERY_H = eINSTANCE.getEquipmentType_RecheckEveryH();

		/**
		 * The meta object literal for the '<em><b>Stabilised To Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EQUIPMENT_TYPE__STABILISED_TO_DEG = eINSTANCE.getEquipmentType_StabilisedToDeg();

		/**
		 * The meta object literal for the '<em><b>Printed Descents</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference EQUIPMENT_TYPE__PRINTED_DESCENTS = eINSTANCE.getEquipmentType_PrintedDescents();

		/**
		 * The meta object literal for the '<em><b>Brightness Levels</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference EQUIPMENT_TYPE__BRIGHTNESS_LEVELS = eINSTANCE.getEquipmentType_BrightnessLevels();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.MeasuredIntensityImpl <em>Measured Intensity</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.MeasuredIntensityImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getMeasuredIntensity()
		 * @generated
		 */
		EClass MEASURED_INTENSITY = eINSTANCE.getMeasuredIntensity();

		/**
		 * The meta object literal for the '<em><b>Colour</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MEASURED_INTENSITY__COLOUR = eINSTANCE.getMeasuredIntensity_Colour();

		/**
		 * The meta object literal for the '<em><b>Azimuth Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MEASURED_INTENSITY__AZIMUTH_DEG = eINSTANCE.getMeasuredIntensity_AzimuthDeg();

		/**
		 * The meta object literal for the '<em><b>Elevation Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MEASURED_INTENSITY__ELEVATION_DEG = eINSTANCE.getMeasuredIntensity_ElevationDeg();

		/**
		 * The meta object literal for the '<em><b>Intensity Cd</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MEASURED_INTENSITY__INTENSITY_CD = eINSTANCE.getMeasuredIntensity_IntensityCd();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.PrintedDescentImpl <em>Printed Descent</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.PrintedDescentImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getPrintedDescent()
		 * @generated
		 */
		EClass PRINTED_DESCENT = eINSTANCE.getPrintedDescent();

		/**
		 * The meta object literal for the '<em><b>Speed Kt</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTED_DESCENT__SPEED_KT = eINSTANCE.getPrintedDescent_SpeedKt();

		/**
		 * The meta object literal for the '<em><b>Descent Ftmin</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTED_DESCENT__DESCENT_FTMIN = eINSTANCE.getPrintedDescent_DescentFtmin();

		/**
		 * The meta object literal for the '<em><b>Slope Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTED_DESCENT__SLOPE_DEG = eINSTANCE.getPrintedDescent_SlopeDeg();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.BrightnessLevelImpl <em>Brightness Level</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.BrightnessLevelImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getBrightnessLevel()
		 * @generated
		 */
		EClass BRIGHTNESS_LEVEL = eINSTANCE.getBrightnessLevel();

		/**
		 * The meta object literal for the '<em><b>Power Percent</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BRIGHTNESS_LEVEL__POWER_PERCENT = eINSTANCE.getBrightnessLevel_PowerPercent();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.CircuitImpl <em>Circuit</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.CircuitImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getCircuit()
		 * @generated
		 */
		EClass CIRCUIT = eINSTANCE.getCircuit();

		/**
		 * The meta object literal for the '<em><b>Supply</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CIRCUIT__SUPPLY = eINSTANCE.getCircuit_Supply();

		/**
		 * The meta object literal for the '<em><b>Current A</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CIRCUIT__CURRENT_A = eINSTANCE.getCircuit_CurrentA();

		/**
		 * The meta object literal for the '<em><b>Capacity Ah</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CIRCUIT__CAPACITY_AH = eINSTANCE.getCircuit_CapacityAh();

		/**
		 * The meta object literal for the '<em><b>Brightness Steps</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CIRCUIT__BRIGHTNESS_STEPS = eINSTANCE.getCircuit_BrightnessSteps();

		/**
		 * The meta object literal for the '<em><b>Aids</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CIRCUIT__AIDS = eINSTANCE.getCircuit_Aids();

		/**
		 * The meta object literal for the '<em><b>Regulator Rating Kva</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CIRCUIT__REGULATOR_RATING_KVA = eINSTANCE.getCircuit_RegulatorRatingKva();

		/**
		 * The meta object literal for the '<em><b>Cable Length M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CIRCUIT__CABLE_LENGTH_M = eINSTANCE.getCircuit_CableLengthM();

		/**
		 * The meta object literal for the '<em><b>Cable Resistance Ohm Per Km</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CIRCUIT__CABLE_RESISTANCE_OHM_PER_KM = eINSTANCE.getCircuit_CableResistanceOhmPerKm();

		/**
		 * The meta object literal for the '<em><b>Switch Over S</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CIRCUIT__SWITCH_OVER_S = eINSTANCE.getCircuit_SwitchOverS();

		/**
		 * The meta object literal for the '<em><b>Standby</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CIRCUIT__STANDBY = eINSTANCE.getCircuit_Standby();

		/**
		 * The meta object literal for the '<em><b>Age Left Percent</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CIRCUIT__AGE_LEFT_PERCENT = eINSTANCE.getCircuit_AgeLeftPercent();

		/**
		 * The meta object literal for the '<em><b>Cold Left Percent</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CIRCUIT__COLD_LEFT_PERCENT = eINSTANCE.getCircuit_ColdLeftPercent();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.ApproachAidImpl <em>Approach Aid</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.ApproachAidImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getApproachAid()
		 * @generated
		 */
		EClass APPROACH_AID = eINSTANCE.getApproachAid();

		/**
		 * The meta object literal for the '<em><b>Family Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROACH_AID__FAMILY_KEY = eINSTANCE.getApproachAid_FamilyKey();

		/**
		 * The meta object literal for the '<em><b>Rule Set Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROACH_AID__RULE_SET_KEY = eINSTANCE.getApproachAid_RuleSetKey();

		/**
		 * The meta object literal for the '<em><b>Side</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROACH_AID__SIDE = eINSTANCE.getApproachAid_Side();

		/**
		 * The meta object literal for the '<em><b>Slope Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROACH_AID__SLOPE_DEG = eINSTANCE.getApproachAid_SlopeDeg();

		/**
		 * The meta object literal for the '<em><b>Settings</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROACH_AID__SETTINGS = eINSTANCE.getApproachAid_Settings();

		/**
		 * The meta object literal for the '<em><b>Clearance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROACH_AID__CLEARANCE = eINSTANCE.getApproachAid_Clearance();

		/**
		 * The meta object literal for the '<em><b>Chosen Clearance M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROACH_AID__CHOSEN_CLEARANCE_M = eINSTANCE.getApproachAid_ChosenClearanceM();

		/**
		 * The meta object literal for the '<em><b>Target Eye Height M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROACH_AID__TARGET_EYE_HEIGHT_M = eINSTANCE.getApproachAid_TargetEyeHeightM();

		/**
		 * The meta object literal for the '<em><b>Height Group</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROACH_AID__HEIGHT_GROUP = eINSTANCE.getApproachAid_HeightGroup();

		/**
		 * The meta object literal for the '<em><b>Axis Turn Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROACH_AID__AXIS_TURN_DEG = eINSTANCE.getApproachAid_AxisTurnDeg();

		/**
		 * The meta object literal for the '<em><b>Unshifted Distance M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROACH_AID__UNSHIFTED_DISTANCE_M = eINSTANCE.getApproachAid_UnshiftedDistanceM();

		/**
		 * The meta object literal for the '<em><b>Unshifted Distance Reason</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROACH_AID__UNSHIFTED_DISTANCE_REASON = eINSTANCE.getApproachAid_UnshiftedDistanceReason();

		/**
		 * The meta object literal for the '<em><b>Level Accuracy M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROACH_AID__LEVEL_ACCURACY_M = eINSTANCE.getApproachAid_LevelAccuracyM();

		/**
		 * The meta object literal for the '<em><b>Beam Left Limit Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROACH_AID__BEAM_LEFT_LIMIT_DEG = eINSTANCE.getApproachAid_BeamLeftLimitDeg();

		/**
		 * The meta object literal for the '<em><b>Beam Right Limit Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROACH_AID__BEAM_RIGHT_LIMIT_DEG = eINSTANCE.getApproachAid_BeamRightLimitDeg();

		/**
		 * The meta object literal for the '<em><b>Unit Count</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROACH_AID__UNIT_COUNT = eINSTANCE.getApproachAid_UnitCount();

		/**
		 * The meta object literal for the '<em><b>Equipment</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference APPROACH_AID__EQUIPMENT = eINSTANCE.getApproachAid_Equipment();

		/**
		 * The meta object literal for the '<em><b>Portable</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROACH_AID__PORTABLE = eINSTANCE.getApproachAid_Portable();

		/**
		 * The meta object literal for the '<em><b>Ground Speed Kt</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROACH_AID__GROUND_SPEED_KT = eINSTANCE.getApproachAid_GroundSpeedKt();

		/**
		 * The meta object literal for the '<em><b>Air Speed Kt</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROACH_AID__AIR_SPEED_KT = eINSTANCE.getApproachAid_AirSpeedKt();

		/**
		 * The meta object literal for the '<em><b>Wind Kt</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROACH_AID__WIND_KT = eINSTANCE.getApproachAid_WindKt();

		/**
		 * The meta object literal for the '<em><b>Descent Ftmin</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROACH_AID__DESCENT_FTMIN = eINSTANCE.getApproachAid_DescentFtmin();

		/**
		 * The meta object literal for the '<em><b>Units</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference APPROACH_AID__UNITS = eINSTANCE.getApproachAid_Units();

		/**
		 * The meta object literal for the '<em><b>Inspections</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference APPROACH_AID__INSPECTIONS = eINSTANCE.getApproachAid_Inspections();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.LightUnitImpl <em>Light Unit</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.LightUnitImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getLightUnit()
		 * @generated
		 */
		EClass LIGHT_UNIT = eINSTANCE.getLightUnit();

		/**
		 * The meta object literal for the '<em><b>Label</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LIGHT_UNIT__LABEL = eINSTANCE.getLightUnit_Label();

		/**
		 * The meta object literal for the '<em><b>Bar</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LIGHT_UNIT__BAR = eINSTANCE.getLightUnit_Bar();

		/**
		 * The meta object literal for the '<em><b>Along M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LIGHT_UNIT__ALONG_M = eINSTANCE.getLightUnit_AlongM();

		/**
		 * The meta object literal for the '<em><b>Right M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LIGHT_UNIT__RIGHT_M = eINSTANCE.getLightUnit_RightM();

		/**
		 * The meta object literal for the '<em><b>Lens Elevation M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LIGHT_UNIT__LENS_ELEVATION_M = eINSTANCE.getLightUnit_LensElevationM();

		/**
		 * The meta object literal for the '<em><b>Azimuth Offset Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LIGHT_UNIT__AZIMUTH_OFFSET_DEG = eINSTANCE.getLightUnit_AzimuthOffsetDeg();

		/**
		 * The meta object literal for the '<em><b>Setting Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LIGHT_UNIT__SETTING_DEG = eINSTANCE.getLightUnit_SettingDeg();

		/**
		 * The meta object literal for the '<em><b>Height Above Ground M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LIGHT_UNIT__HEIGHT_ABOVE_GROUND_M = eINSTANCE.getLightUnit_HeightAboveGroundM();

		/**
		 * The meta object literal for the '<em><b>Frangible</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LIGHT_UNIT__FRANGIBLE = eINSTANCE.getLightUnit_Frangible();

		/**
		 * The meta object literal for the '<em><b>Transitions</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference LIGHT_UNIT__TRANSITIONS = eINSTANCE.getLightUnit_Transitions();

		/**
		 * The meta object literal for the '<em><b>Measured</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference LIGHT_UNIT__MEASURED = eINSTANCE.getLightUnit_Measured();

		/**
		 * The meta object literal for the '<em><b>Lamps Out</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LIGHT_UNIT__LAMPS_OUT = eINSTANCE.getLightUnit_LampsOut();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.MeasuredUnitImpl <em>Measured Unit</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.MeasuredUnitImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getMeasuredUnit()
		 * @generated
		 */
		EClass MEASURED_UNIT = eINSTANCE.getMeasuredUnit();

		/**
		 * The meta object literal for the '<em><b>Setting Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MEASURED_UNIT__SETTING_DEG = eINSTANCE.getMeasuredUnit_SettingDeg();

		/**
		 * The meta object literal for the '<em><b>Along M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MEASURED_UNIT__ALONG_M = eINSTANCE.getMeasuredUnit_AlongM();

		/**
		 * The meta object literal for the '<em><b>Right M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MEASURED_UNIT__RIGHT_M = eINSTANCE.getMeasuredUnit_RightM();

		/**
		 * The meta object literal for the '<em><b>Lens Elevation M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MEASURED_UNIT__LENS_ELEVATION_M = eINSTANCE.getMeasuredUnit_LensElevationM();

		/**
		 * The meta object literal for the '<em><b>Person</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MEASURED_UNIT__PERSON = eINSTANCE.getMeasuredUnit_Person();

		/**
		 * The meta object literal for the '<em><b>Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MEASURED_UNIT__DATE = eINSTANCE.getMeasuredUnit_Date();

		/**
		 * The meta object literal for the '<em><b>Instrument</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MEASURED_UNIT__INSTRUMENT = eINSTANCE.getMeasuredUnit_Instrument();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.InspectionImpl <em>Inspection</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.InspectionImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getInspection()
		 * @generated
		 */
		EClass INSPECTION = eINSTANCE.getInspection();

		/**
		 * The meta object literal for the '<em><b>Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSPECTION__DATE = eINSTANCE.getInspection_Date();

		/**
		 * The meta object literal for the '<em><b>Person</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSPECTION__PERSON = eINSTANCE.getInspection_Person();

		/**
		 * The meta object literal for the '<em><b>Organisation</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSPECTION__ORGANISATION = eINSTANCE.getInspection_Organisation();

		/**
		 * The meta object literal for the '<em><b>On Slope Angle Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSPECTION__ON_SLOPE_ANGLE_DEG = eINSTANCE.getInspection_OnSlopeAngleDeg();

		/**
		 * The meta object literal for the '<em><b>Usable Range M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSPECTION__USABLE_RANGE_M = eINSTANCE.getInspection_UsableRangeM();

		/**
		 * The meta object literal for the '<em><b>Azimuth Left Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSPECTION__AZIMUTH_LEFT_DEG = eINSTANCE.getInspection_AzimuthLeftDeg();

		/**
		 * The meta object literal for the '<em><b>Azimuth Right Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSPECTION__AZIMUTH_RIGHT_DEG = eINSTANCE.getInspection_AzimuthRightDeg();

		/**
		 * The meta object literal for the '<em><b>Obstacle Clear</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSPECTION__OBSTACLE_CLEAR = eINSTANCE.getInspection_ObstacleClear();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.BackgroundImageImpl <em>Background Image</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.BackgroundImageImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getBackgroundImage()
		 * @generated
		 */
		EClass BACKGROUND_IMAGE = eINSTANCE.getBackgroundImage();

		/**
		 * The meta object literal for the '<em><b>Path</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BACKGROUND_IMAGE__PATH = eINSTANCE.getBackgroundImage_Path();

		/**
		 * The meta object literal for the '<em><b>Sha256</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BACKGROUND_IMAGE__SHA256 = eINSTANCE.getBackgroundImage_Sha256();

		/**
		 * The meta object literal for the '<em><b>First Column Px</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BACKGROUND_IMAGE__FIRST_COLUMN_PX = eINSTANCE.getBackgroundImage_FirstColumnPx();

		/**
		 * The meta object literal for the '<em><b>First Row Px</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BACKGROUND_IMAGE__FIRST_ROW_PX = eINSTANCE.getBackgroundImage_FirstRowPx();

		/**
		 * The meta object literal for the '<em><b>First Place</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference BACKGROUND_IMAGE__FIRST_PLACE = eINSTANCE.getBackgroundImage_FirstPlace();

		/**
		 * The meta object literal for the '<em><b>Second Column Px</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BACKGROUND_IMAGE__SECOND_COLUMN_PX = eINSTANCE.getBackgroundImage_SecondColumnPx();

		/**
		 * The meta object literal for the '<em><b>Second Row Px</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BACKGROUND_IMAGE__SECOND_ROW_PX = eINSTANCE.getBackgroundImage_SecondRowPx();

		/**
		 * The meta object literal for the '<em><b>Second Place</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference BACKGROUND_IMAGE__SECOND_PLACE = eINSTANCE.getBackgroundImage_SecondPlace();

		/**
		 * The meta object literal for the '<em><b>Opacity Percent</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BACKGROUND_IMAGE__OPACITY_PERCENT = eINSTANCE.getBackgroundImage_OpacityPercent();

		/**
		 * The meta object literal for the '<em><b>Hidden</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BACKGROUND_IMAGE__HIDDEN = eINSTANCE.getBackgroundImage_Hidden();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BACKGROUND_IMAGE__SOURCE = eINSTANCE.getBackgroundImage_Source();

		/**
		 * The meta object literal for the '<em><b>Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BACKGROUND_IMAGE__DATE = eINSTANCE.getBackgroundImage_Date();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.TransitionImpl <em>Transition</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.TransitionImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getTransition()
		 * @generated
		 */
		EClass TRANSITION = eINSTANCE.getTransition();

		/**
		 * The meta object literal for the '<em><b>Offset Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRANSITION__OFFSET_DEG = eINSTANCE.getTransition_OffsetDeg();

		/**
		 * The meta object literal for the '<em><b>Width Minutes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRANSITION__WIDTH_MINUTES = eINSTANCE.getTransition_WidthMinutes();

		/**
		 * The meta object literal for the '<em><b>Below Colour</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRANSITION__BELOW_COLOUR = eINSTANCE.getTransition_BelowColour();

		/**
		 * The meta object literal for the '<em><b>Below State</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRANSITION__BELOW_STATE = eINSTANCE.getTransition_BelowState();

		/**
		 * The meta object literal for the '<em><b>Above Colour</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRANSITION__ABOVE_COLOUR = eINSTANCE.getTransition_AboveColour();

		/**
		 * The meta object literal for the '<em><b>Above State</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRANSITION__ABOVE_STATE = eINSTANCE.getTransition_AboveState();

		/**
		 * The meta object literal for the '{@link slopewright.model.impl.ReadBackImpl <em>Read Back</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.impl.ReadBackImpl
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getReadBack()
		 * @generated
		 */
		EClass READ_BACK = eINSTANCE.getReadBack();

		/**
		 * The meta object literal for the '<em><b>Element Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READ_BACK__ELEMENT_ID = eINSTANCE.getReadBack_ElementId();

		/**
		 * The meta object literal for the '<em><b>Person</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READ_BACK__PERSON = eINSTANCE.getReadBack_Person();

		/**
		 * The meta object literal for the '<em><b>Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READ_BACK__DATE = eINSTANCE.getReadBack_Date();

		/**
		 * The meta object literal for the '<em><b>Sha256</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READ_BACK__SHA256 = eINSTANCE.getReadBack_Sha256();

		/**
		 * The meta object literal for the '{@link slopewright.model.ApproachType <em>Approach Type</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.ApproachType
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getApproachType()
		 * @generated
		 */
		EEnum APPROACH_TYPE = eINSTANCE.getApproachType();

		/**
		 * The meta object literal for the '{@link slopewright.model.GlidePathKind <em>Glide Path Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.GlidePathKind
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getGlidePathKind()
		 * @generated
		 */
		EEnum GLIDE_PATH_KIND = eINSTANCE.getGlidePathKind();

		/**
		 * The meta object literal for the '{@link slopewright.model.EdgeKind <em>Edge Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.EdgeKind
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getEdgeKind()
		 * @generated
		 */
		EEnum EDGE_KIND = eINSTANCE.getEdgeKind();

		/**
		 * The meta object literal for the '{@link slopewright.model.ObstacleKind <em>Obstacle Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.ObstacleKind
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getObstacleKind()
		 * @generated
		 */
		EEnum OBSTACLE_KIND = eINSTANCE.getObstacleKind();

		/**
		 * The meta object literal for the '{@link slopewright.model.AidSide <em>Aid Side</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.AidSide
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getAidSide()
		 * @generated
		 */
		EEnum AID_SIDE = eINSTANCE.getAidSide();

		/**
		 * The meta object literal for the '{@link slopewright.model.SettingsForm <em>Settings Form</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.SettingsForm
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getSettingsForm()
		 * @generated
		 */
		EEnum SETTINGS_FORM = eINSTANCE.getSettingsForm();

		/**
		 * The meta object literal for the '{@link slopewright.model.ClearanceChoice <em>Clearance Choice</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.ClearanceChoice
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getClearanceChoice()
		 * @generated
		 */
		EEnum CLEARANCE_CHOICE = eINSTANCE.getClearanceChoice();

		/**
		 * The meta object literal for the '{@link slopewright.model.LightColour <em>Light Colour</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.LightColour
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getLightColour()
		 * @generated
		 */
		EEnum LIGHT_COLOUR = eINSTANCE.getLightColour();

		/**
		 * The meta object literal for the '{@link slopewright.model.LightState <em>Light State</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.LightState
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getLightState()
		 * @generated
		 */
		EEnum LIGHT_STATE = eINSTANCE.getLightState();

		/**
		 * The meta object literal for the '{@link slopewright.model.ReviewKind <em>Review Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.ReviewKind
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getReviewKind()
		 * @generated
		 */
		EEnum REVIEW_KIND = eINSTANCE.getReviewKind();

		/**
		 * The meta object literal for the '{@link slopewright.model.Stage <em>Stage</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.Stage
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getStage()
		 * @generated
		 */
		EEnum STAGE = eINSTANCE.getStage();

		/**
		 * The meta object literal for the '{@link slopewright.model.PlateZero <em>Plate Zero</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.PlateZero
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getPlateZero()
		 * @generated
		 */
		EEnum PLATE_ZERO = eINSTANCE.getPlateZero();

		/**
		 * The meta object literal for the '{@link slopewright.model.PlateSense <em>Plate Sense</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.PlateSense
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getPlateSense()
		 * @generated
		 */
		EEnum PLATE_SENSE = eINSTANCE.getPlateSense();

		/**
		 * The meta object literal for the '{@link slopewright.model.SightHair <em>Sight Hair</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.SightHair
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getSightHair()
		 * @generated
		 */
		EEnum SIGHT_HAIR = eINSTANCE.getSightHair();

		/**
		 * The meta object literal for the '{@link slopewright.model.HandOrder <em>Hand Order</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see slopewright.model.HandOrder
		 * @see slopewright.model.impl.SlopewrightPackageImpl#getHandOrder()
		 * @generated
		 */
		EEnum HAND_ORDER = eINSTANCE.getHandOrder();

	}

} //SlopewrightPackage
