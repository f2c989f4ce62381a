/**
 */
package slopewright.model.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import slopewright.model.Aerodrome;
import slopewright.model.Project;
import slopewright.model.ReadBack;
import slopewright.model.ReviewNote;
import slopewright.model.SlopewrightPackage;
import slopewright.model.Stage;
import slopewright.model.SurveyBlock;
import slopewright.model.ValueConfirmation;
import slopewright.model.ValueOverride;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Project</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.ProjectImpl#getRevision <em>Revision</em>}</li>
 *   <li>{@link slopewright.model.impl.ProjectImpl#getAuthor <em>Author</em>}</li>
 *   <li>{@link slopewright.model.impl.ProjectImpl#getOrganisation <em>Organisation</em>}</li>
 *   <li>{@link slopewright.model.impl.ProjectImpl#getDate <em>Date</em>}</li>
 *   <li>{@link slopewright.model.impl.ProjectImpl#getRuleSetKey <em>Rule Set Key</em>}</li>
 *   <li>{@link slopewright.model.impl.ProjectImpl#getAerodrome <em>Aerodrome</em>}</li>
 *   <li>{@link slopewright.model.impl.ProjectImpl#getOverrides <em>Overrides</em>}</li>
 *   <li>{@link slopewright.model.impl.ProjectImpl#getConfirmations <em>Confirmations</em>}</li>
 *   <li>{@link slopewright.model.impl.ProjectImpl#getReviewNotes <em>Review Notes</em>}</li>
 *   <li>{@link slopewright.model.impl.ProjectImpl#getSurveyBlocks <em>Survey Blocks</em>}</li>
 *   <li>{@link slopewright.model.impl.ProjectImpl#getDocumentNumber <em>Document Number</em>}</li>
 *   <li>{@link slopewright.model.impl.ProjectImpl#getClient <em>Client</em>}</li>
 *   <li>{@link slopewright.model.impl.ProjectImpl#getCheckedBy <em>Checked By</em>}</li>
 *   <li>{@link slopewright.model.impl.ProjectImpl#getApprovedBy <em>Approved By</em>}</li>
 *   <li>{@link slopewright.model.impl.ProjectImpl#getStage <em>Stage</em>}</li>
 *   <li>{@link slopewright.model.impl.ProjectImpl#getBookPath <em>Book Path</em>}</li>
 *   <li>{@link slopewright.model.impl.ProjectImpl#getBookSha256 <em>Book Sha256</em>}</li>
 *   <li>{@link slopewright.model.impl.ProjectImpl#getRuleSetFolder <em>Rule Set Folder</em>}</li>
 *   <li>{@link slopewright.model.impl.ProjectImpl#getReadBacks <em>Read Backs</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ProjectImpl extends NamedImpl implements Project {
	/**
	 * The default value of the '{@link #getRevision() <em>Revision</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRevision()
	 * @generated
	 * @ordered
	 */
	protected static final String REVISION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRevision() <em>Revision</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRevision()
	 * @generated
	 * @ordered
	 */
	protected String revision = REVISION_EDEFAULT;

	/**
	 * The default value of the '{@link #getAuthor() <em>Author</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAuthor()
	 * @generated
	 * @ordered
	 */
	protected static final String AUTHOR_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAuthor() <em>Author</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAuthor()
	 * @generated
	 * @ordered
	 */
	protected String author = AUTHOR_EDEFAULT;

	/**
	 * The default value of the '{@link #getOrganisation() <em>Organisation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOrganisation()
	 * @generated
	 * @ordered
	 */
	protected static final String ORGANISATION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOrganisation() <em>Organisation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOrganisation()
	 * @generated
	 * @ordered
	 */
	protected String organisation = ORGANISATION_EDEFAULT;

	/**
	 * The default value of the '{@link #getDate() <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDate()
	 * @generated
	 * @ordered
	 */
	protected static final String DATE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDate() <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDate()
	 * @generated
	 * @ordered
	 */
	protected String date = DATE_EDEFAULT;

	/**
	 * The default value of the '{@link #getRuleSetKey() <em>Rule Set Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRuleSetKey()
	 * @generated
	 * @ordered
	 */
	protected static final String RULE_SET_KEY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRuleSetKey() <em>Rule Set Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRuleSetKey()
	 * @generated
	 * @ordered
	 */
	protected String ruleSetKey = RULE_SET_KEY_EDEFAULT;

	/**
	 * The cached value of the '{@link #getAerodrome() <em>Aerodrome</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAerodrome()
	 * @generated
	 * @ordered
	 */
	protected Aerodrome aerodrome;

	/**
	 * The cached value of the '{@link #getOverrides() <em>Overrides</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOverrides()
	 * @generated
	 * @ordered
	 */
	protected EList<ValueOverride> overrides;

	/**
	 * The cached value of the '{@link #getConfirmations() <em>Confirmations</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConfirmations()
	 * @generated
	 * @ordered
	 */
	protected EList<ValueConfirmation> confirmations;

	/**
	 * The cached value of the '{@link #getReviewNotes() <em>Review Notes</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReviewNotes()
	 * @generated
	 * @ordered
	 */
	protected EList<ReviewNote> reviewNotes;

	/**
	 * The cached value of the '{@link #getSurveyBlocks() <em>Survey Blocks</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSurveyBlocks()
	 * @generated
	 * @ordered
	 */
	protected EList<SurveyBlock> surveyBlocks;

	/**
	 * The default value of the '{@link #getDocumentNumber() <em>Document Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDocumentNumber()
	 * @generated
	 * @ordered
	 */
	protected static final String DOCUMENT_NUMBER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDocumentNumber() <em>Document Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDocumentNumber()
	 * @generated
	 * @ordered
	 */
	protected String documentNumber = DOCUMENT_NUMBER_EDEFAULT;

	/**
	 * The default value of the '{@link #getClient() <em>Client</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClient()
	 * @generated
	 * @ordered
	 */
	protected static final String CLIENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getClient() <em>Client</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClient()
	 * @generated
	 * @ordered
	 */
	protected String client = CLIENT_EDEFAULT;

	/**
	 * The default value of the '{@link #getCheckedBy() <em>Checked By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCheckedBy()
	 * @generated
	 * @ordered
	 */
	protected static final String CHECKED_BY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCheckedBy() <em>Checked By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCheckedBy()
	 * @generated
	 * @ordered
	 */
	protected String checkedBy = CHECKED_BY_EDEFAULT;

	/**
	 * The default value of the '{@link #getApprovedBy() <em>Approved By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getApprovedBy()
	 * @generated
	 * @ordered
	 */
	protected static final String APPROVED_BY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getApprovedBy() <em>Approved By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getApprovedBy()
	 * @generated
	 * @ordered
	 */
	protected String approvedBy = APPROVED_BY_EDEFAULT;

	/**
	 * The default value of the '{@link #getStage() <em>Stage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStage()
	 * @generated
	 * @ordered
	 */
	protected static final Stage STAGE_EDEFAULT = Stage.DESIGN;

	/**
	 * The cached value of the '{@link #getStage() <em>Stage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStage()
	 * @generated
	 * @ordered
	 */
	protected Stage stage = STAGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getBookPath() <em>Book Path</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBookPath()
	 * @generated
	 * @ordered
	 */
	protected static final String BOOK_PATH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBookPath() <em>Book Path</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBookPath()
	 * @generated
	 * @ordered
	 */
	protected String bookPath = BOOK_PATH_EDEFAULT;

	/**
	 * The default value of the '{@link #getBookSha256() <em>Book Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBookSha256()
	 * @generated
	 * @ordered
	 */
	protected static final String BOOK_SHA256_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBookSha256() <em>Book Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBookSha256()
	 * @generated
	 * @ordered
	 */
	protected String bookSha256 = BOOK_SHA256_EDEFAULT;

	/**
	 * The default value of the '{@link #getRuleSetFolder() <em>Rule Set Folder</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRuleSetFolder()
	 * @generated
	 * @ordered
	 */
	protected static final String RULE_SET_FOLDER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRuleSetFolder() <em>Rule Set Folder</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRuleSetFolder()
	 * @generated
	 * @ordered
	 */
	protected String ruleSetFolder = RULE_SET_FOLDER_EDEFAULT;

	/**
	 * The cached value of the '{@link #getReadBacks() <em>Read Backs</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReadBacks()
	 * @generated
	 * @ordered
	 */
	protected EList<ReadBack> readBacks;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ProjectImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.PROJECT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getRevision() {
		return revision;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRevision(String newRevision) {
		String oldRevision = revision;
		revision = newRevision;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.PROJECT__REVISION, oldRevision, revision));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getAuthor() {
		return author;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAuthor(String newAuthor) {
		String oldAuthor = author;
		author = newAuthor;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.PROJECT__AUTHOR, oldAuthor, author));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getOrganisation() {
		return organisation;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOrganisation(String newOrganisation) {
		String oldOrganisation = organisation;
		organisation = newOrganisation;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.PROJECT__ORGANISATION, oldOrganisation, organisation));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDate() {
		return date;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDate(String newDate) {
		String oldDate = date;
		date = newDate;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.PROJECT__DATE, oldDate, date));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getRuleSetKey() {
		return ruleSetKey;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRuleSetKey(String newRuleSetKey) {
		String oldRuleSetKey = ruleSetKey;
		ruleSetKey = newRuleSetKey;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.PROJECT__RULE_SET_KEY, oldRuleSetKey, ruleSetKey));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Aerodrome getAerodrome() {
		return aerodrome;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetAerodrome(Aerodrome newAerodrome, NotificationChain msgs) {
		Aerodrome oldAerodrome = aerodrome;
		aerodrome = newAerodrome;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, SlopewrightPackage.PROJECT__AERODROME, oldAerodrome, newAerodrome);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAerodrome(Aerodrome newAerodrome) {
		if (newAerodrome != aerodrome) {
			NotificationChain msgs = null;
			if (aerodrome != null)
				msgs = ((InternalEObject)aerodrome).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - SlopewrightPackage.PROJECT__AERODROME, null, msgs);
			if (newAerodrome != null)
				msgs = ((InternalEObject)newAerodrome).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - SlopewrightPackage.PROJECT__AERODROME, null, msgs);
			msgs = basicSetAerodrome(newAerodrome, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.PROJECT__AERODROME, newAerodrome, newAerodrome));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ValueOverride> getOverrides() {
		if (overrides == null) {
			overrides = new EObjectContainmentEList<ValueOverride>(ValueOverride.class, this, SlopewrightPackage.PROJECT__OVERRIDES);
		}
		return overrides;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ValueConfirmation> getConfirmations() {
		if (confirmations == null) {
			confirmations = new EObjectContainmentEList<ValueConfirmation>(ValueConfirmation.class, this, SlopewrightPackage.PROJECT__CONFIRMATIONS);
		}
		return confirmations;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ReviewNote> getReviewNotes() {
		if (reviewNotes == null) {
			reviewNotes = new EObjectContainmentEList<ReviewNote>(ReviewNote.class, this, SlopewrightPackage.PROJECT__REVIEW_NOTES);
		}
		return reviewNotes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<SurveyBlock> getSurveyBlocks() {
		if (surveyBlocks == null) {
			surveyBlocks = new EObjectContainmentEList<SurveyBlock>(SurveyBlock.class, this, SlopewrightPackage.PROJECT__SURVEY_BLOCKS);
		}
		return surveyBlocks;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDocumentNumber() {
		return documentNumber;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDocumentNumber(String newDocumentNumber) {
		String oldDocumentNumber = documentNumber;
		documentNumber = newDocumentNumber;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.PROJECT__DOCUMENT_NUMBER, oldDocumentNumber, documentNumber));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getClient() {
		return client;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setClient(String newClient) {
		String oldClient = client;
		client = newClient;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.PROJECT__CLIENT, oldClient, client));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCheckedBy() {
		return checkedBy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCheckedBy(String newCheckedBy) {
		String oldCheckedBy = checkedBy;
		checkedBy = newCheckedBy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.PROJECT__CHECKED_BY, oldCheckedBy, checkedBy));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getApprovedBy() {
		return approvedBy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setApprovedBy(String newApprovedBy) {
		String oldApprovedBy = approvedBy;
		approvedBy = newApprovedBy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.PROJECT__APPROVED_BY, oldApprovedBy, approvedBy));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Stage getStage() {
		return stage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStage(Stage newStage) {
		Stage oldStage = stage;
		stage = newStage == null ? STAGE_EDEFAULT : newStage;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.PROJECT__STAGE, oldStage, stage));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getBookPath() {
		return bookPath;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBookPath(String newBookPath) {
		String oldBookPath = bookPath;
		bookPath = newBookPath;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.PROJECT__BOOK_PATH, oldBookPath, bookPath));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getBookSha256() {
		return bookSha256;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBookSha256(String newBookSha256) {
		String oldBookSha256 = bookSha256;
		bookSha256 = newBookSha256;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.PROJECT__BOOK_SHA256, oldBookSha256, bookSha256));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getRuleSetFolder() {
		return ruleSetFolder;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRuleSetFolder(String newRuleSetFolder) {
		String oldRuleSetFolder = ruleSetFolder;
		ruleSetFolder = newRuleSetFolder;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.PROJECT__RULE_SET_FOLDER, oldRuleSetFolder, ruleSetFolder));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ReadBack> getReadBacks() {
		if (readBacks == null) {
			readBacks = new EObjectContainmentEList<ReadBack>(ReadBack.class, this, SlopewrightPackage.PROJECT__READ_BACKS);
		}
		return readBacks;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case SlopewrightPackage.PROJECT__AERODROME:
				return basicSetAerodrome(null, msgs);
			case SlopewrightPackage.PROJECT__OVERRIDES:
				return ((InternalEList<?>)getOverrides()).basicRemove(otherEnd, msgs);
			case SlopewrightPackage.PROJECT__CONFIRMATIONS:
				return ((InternalEList<?>)getConfirmations()).basicRemove(otherEnd, msgs);
			case SlopewrightPackage.PROJECT__REVIEW_NOTES:
				return ((InternalEList<?>)getReviewNotes()).basicRemove(otherEnd, msgs);
			case SlopewrightPackage.PROJECT__SURVEY_BLOCKS:
				return ((InternalEList<?>)getSurveyBlocks()).basicRemove(otherEnd, msgs);
			case SlopewrightPackage.PROJECT__READ_BACKS:
				return ((InternalEList<?>)getReadBacks()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case SlopewrightPackage.PROJECT__REVISION:
				return getRevision();
			case SlopewrightPackage.PROJECT__AUTHOR:
				return getAuthor();
			case SlopewrightPackage.PROJECT__ORGANISATION:
				return getOrganisation();
			case SlopewrightPackage.PROJECT__DATE:
				return getDate();
			case SlopewrightPackage.PROJECT__RULE_SET_KEY:
				return getRuleSetKey();
			case SlopewrightPackage.PROJECT__AERODROME:
				return getAerodrome();
			case SlopewrightPackage.PROJECT__OVERRIDES:
				return getOverrides();
			case SlopewrightPackage.PROJECT__CONFIRMATIONS:
				return getConfirmations();
			case SlopewrightPackage.PROJECT__REVIEW_NOTES:
				return getReviewNotes();
			case SlopewrightPackage.PROJECT__SURVEY_BLOCKS:
				return getSurveyBlocks();
			case SlopewrightPackage.PROJECT__DOCUMENT_NUMBER:
				return getDocumentNumber();
			case SlopewrightPackage.PROJECT__CLIENT:
				return getClient();
			case SlopewrightPackage.PROJECT__CHECKED_BY:
				return getCheckedBy();
			case SlopewrightPackage.PROJECT__APPROVED_BY:
				return getApprovedBy();
			case SlopewrightPackage.PROJECT__STAGE:
				return getStage();
			case SlopewrightPackage.PROJECT__BOOK_PATH:
				return getBookPath();
			case SlopewrightPackage.PROJECT__BOOK_SHA256:
				return getBookSha256();
			case SlopewrightPackage.PROJECT__RULE_SET_FOLDER:
				return getRuleSetFolder();
			case SlopewrightPackage.PROJECT__READ_BACKS:
				return getReadBacks();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case SlopewrightPackage.PROJECT__REVISION:
				setRevision((String)newValue);
				return;
			case SlopewrightPackage.PROJECT__AUTHOR:
				setAuthor((String)newValue);
				return;
			case SlopewrightPackage.PROJECT__ORGANISATION:
				setOrganisation((String)newValue);
				return;
			case SlopewrightPackage.PROJECT__DATE:
				setDate((String)newValue);
				return;
			case SlopewrightPackage.PROJECT__RULE_SET_KEY:
				setRuleSetKey((String)newValue);
				return;
			case SlopewrightPackage.PROJECT__AERODROME:
				setAerodrome((Aerodrome)newValue);
				return;
			case SlopewrightPackage.PROJECT__OVERRIDES:
				getOverrides().clear();
				getOverrides().addAll((Collection<? extends ValueOverride>)newValue);
				return;
			case SlopewrightPackage.PROJECT__CONFIRMATIONS:
				getConfirmations().clear();
				getConfirmations().addAll((Collection<? extends ValueConfirmation>)newValue);
				return;
			case SlopewrightPackage.PROJECT__REVIEW_NOTES:
				getReviewNotes().clear();
				getReviewNotes().addAll((Collection<? extends ReviewNote>)newValue);
				return;
			case SlopewrightPackage.PROJECT__SURVEY_BLOCKS:
				getSurveyBlocks().clear();
				getSurveyBlocks().addAll((Collection<? extends SurveyBlock>)newValue);
				return;
			case SlopewrightPackage.PROJECT__DOCUMENT_NUMBER:
				setDocumentNumber((String)newValue);
				return;
			case SlopewrightPackage.PROJECT__CLIENT:
				setClient((String)newValue);
				return;
			case SlopewrightPackage.PROJECT__CHECKED_BY:
				setCheckedBy((String)newValue);
				return;
			case SlopewrightPackage.PROJECT__APPROVED_BY:
				setApprovedBy((String)newValue);
				return;
			case SlopewrightPackage.PROJECT__STAGE:
				setStage((Stage)newValue);
				return;
			case SlopewrightPackage.PROJECT__BOOK_PATH:
				setBookPath((String)newValue);
				return;
			case SlopewrightPackage.PROJECT__BOOK_SHA256:
				setBookSha256((String)newValue);
				return;
			case SlopewrightPackage.PROJECT__RULE_SET_FOLDER:
				setRuleSetFolder((String)newValue);
				return;
			case SlopewrightPackage.PROJECT__READ_BACKS:
				getReadBacks().clear();
				getReadBacks().addAll((Collection<? extends ReadBack>)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case SlopewrightPackage.PROJECT__REVISION:
				setRevision(REVISION_EDEFAULT);
				return;
			case SlopewrightPackage.PROJECT__AUTHOR:
				setAuthor(AUTHOR_EDEFAULT);
				return;
			case SlopewrightPackage.PROJECT__ORGANISATION:
				setOrganisation(ORGANISATION_EDEFAULT);
				return;
			case SlopewrightPackage.PROJECT__DATE:
				setDate(DATE_EDEFAULT);
				return;
			case SlopewrightPackage.PROJECT__RULE_SET_KEY:
				setRuleSetKey(RULE_SET_KEY_EDEFAULT);
				return;
			case SlopewrightPackage.PROJECT__AERODROME:
				setAerodrome((Aerodrome)null);
				return;
			case SlopewrightPackage.PROJECT__OVERRIDES:
				getOverrides().clear();
				return;
			case SlopewrightPackage.PROJECT__CONFIRMATIONS:
				getConfirmations().clear();
				return;
			case SlopewrightPackage.PROJECT__REVIEW_NOTES:
				getReviewNotes().clear();
				return;
			case SlopewrightPackage.PROJECT__SURVEY_BLOCKS:
				getSurveyBlocks().clear();
				return;
			case SlopewrightPackage.PROJECT__DOCUMENT_NUMBER:
				setDocumentNumber(DOCUMENT_NUMBER_EDEFAULT);
				return;
			case SlopewrightPackage.PROJECT__CLIENT:
				setClient(CLIENT_EDEFAULT);
				return;
			case SlopewrightPackage.PROJECT__CHECKED_BY:
				setCheckedBy(CHECKED_BY_EDEFAULT);
				return;
			case SlopewrightPackage.PROJECT__APPROVED_BY:
				setApprovedBy(APPROVED_BY_EDEFAULT);
				return;
			case SlopewrightPackage.PROJECT__STAGE:
				setStage(STAGE_EDEFAULT);
				return;
			case SlopewrightPackage.PROJECT__BOOK_PATH:
				setBookPath(BOOK_PATH_EDEFAULT);
				return;
			case SlopewrightPackage.PROJECT__BOOK_SHA256:
				setBookSha256(BOOK_SHA256_EDEFAULT);
				return;
			case SlopewrightPackage.PROJECT__RULE_SET_FOLDER:
				setRuleSetFolder(RULE_SET_FOLDER_EDEFAULT);
				return;
			case SlopewrightPackage.PROJECT__READ_BACKS:
				getReadBacks().clear();
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case SlopewrightPackage.PROJECT__REVISION:
				return REVISION_EDEFAULT == null ? revision != null : !REVISION_EDEFAULT.equals(revision);
			case SlopewrightPackage.PROJECT__AUTHOR:
				return AUTHOR_EDEFAULT == null ? author != null : !AUTHOR_EDEFAULT.equals(author);
			case SlopewrightPackage.PROJECT__ORGANISATION:
				return ORGANISATION_EDEFAULT == null ? organisation != null : !ORGANISATION_EDEFAULT.equals(organisation);
			case SlopewrightPackage.PROJECT__DATE:
				return DATE_EDEFAULT == null ? date != null : !DATE_EDEFAULT.equals(date);
			case SlopewrightPackage.PROJECT__RULE_SET_KEY:
				return RULE_SET_KEY_EDEFAULT == null ? ruleSetKey != null : !RULE_SET_KEY_EDEFAULT.equals(ruleSetKey);
			case SlopewrightPackage.PROJECT__AERODROME:
				return aerodrome != null;
			case SlopewrightPackage.PROJECT__OVERRIDES:
				return overrides != null && !overrides.isEmpty();
			case SlopewrightPackage.PROJECT__CONFIRMATIONS:
				return confirmations != null && !confirmations.isEmpty();
			case SlopewrightPackage.PROJECT__REVIEW_NOTES:
				return reviewNotes != null && !reviewNotes.isEmpty();
			case SlopewrightPackage.PROJECT__SURVEY_BLOCKS:
				return surveyBlocks != null && !surveyBlocks.isEmpty();
			case SlopewrightPackage.PROJECT__DOCUMENT_NUMBER:
				return DOCUMENT_NUMBER_EDEFAULT == null ? documentNumber != null : !DOCUMENT_NUMBER_EDEFAULT.equals(documentNumber);
			case SlopewrightPackage.PROJECT__CLIENT:
				return CLIENT_EDEFAULT == null ? client != null : !CLIENT_EDEFAULT.equals(client);
			case SlopewrightPackage.PROJECT__CHECKED_BY:
				return CHECKED_BY_EDEFAULT == null ? checkedBy != null : !CHECKED_BY_EDEFAULT.equals(checkedBy);
			case SlopewrightPackage.PROJECT__APPROVED_BY:
				return APPROVED_BY_EDEFAULT == null ? approvedBy != null : !APPROVED_BY_EDEFAULT.equals(approvedBy);
			case SlopewrightPackage.PROJECT__STAGE:
				return stage != STAGE_EDEFAULT;
			case SlopewrightPackage.PROJECT__BOOK_PATH:
				return BOOK_PATH_EDEFAULT == null ? bookPath != null : !BOOK_PATH_EDEFAULT.equals(bookPath);
			case SlopewrightPackage.PROJECT__BOOK_SHA256:
				return BOOK_SHA256_EDEFAULT == null ? bookSha256 != null : !BOOK_SHA256_EDEFAULT.equals(bookSha256);
			case SlopewrightPackage.PROJECT__RULE_SET_FOLDER:
				return RULE_SET_FOLDER_EDEFAULT == null ? ruleSetFolder != null : !RULE_SET_FOLDER_EDEFAULT.equals(ruleSetFolder);
			case SlopewrightPackage.PROJECT__READ_BACKS:
				return readBacks != null && !readBacks.isEmpty();
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (revision: ");
		result.append(revision);
		result.append(", author: ");
		result.append(author);
		result.append(", organisation: ");
		result.append(organisation);
		result.append(", date: ");
		result.append(date);
		result.append(", ruleSetKey: ");
		result.append(ruleSetKey);
		result.append(", documentNumber: ");
		result.append(documentNumber);
		result.append(", client: ");
		result.append(client);
		result.append(", checkedBy: ");
		result.append(checkedBy);
		result.append(", approvedBy: ");
		result.append(approvedBy);
		result.append(", stage: ");
		result.append(stage);
		result.append(", bookPath: ");
		result.append(bookPath);
		result.append(", bookSha256: ");
		result.append(bookSha256);
		result.append(", ruleSetFolder: ");
		result.append(ruleSetFolder);
		result.append(')');
		return result.toString();
	}

} //ProjectImpl
