/**
 */
package slopewright.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import slopewright.model.ReviewKind;
import slopewright.model.ReviewNote;
import slopewright.model.SlopewrightPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Review Note</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.ReviewNoteImpl#getElementId <em>Element Id</em>}</li>
 *   <li>{@link slopewright.model.impl.ReviewNoteImpl#getRuleId <em>Rule Id</em>}</li>
 *   <li>{@link slopewright.model.impl.ReviewNoteImpl#getText <em>Text</em>}</li>
 *   <li>{@link slopewright.model.impl.ReviewNoteImpl#getPerson <em>Person</em>}</li>
 *   <li>{@link slopewright.model.impl.ReviewNoteImpl#getDate <em>Date</em>}</li>
 *   <li>{@link slopewright.model.impl.ReviewNoteImpl#getResolved <em>Resolved</em>}</li>
 *   <li>{@link slopewright.model.impl.ReviewNoteImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link slopewright.model.impl.ReviewNoteImpl#getNoteId <em>Note Id</em>}</li>
 *   <li>{@link slopewright.model.impl.ReviewNoteImpl#getSha256 <em>Sha256</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ReviewNoteImpl extends NamedImpl implements ReviewNote {
	/**
	 * The default value of the '{@link #getElementId() <em>Element Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getElementId()
	 * @generated
	 * @ordered
	 */
	protected static final String ELEMENT_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getElementId() <em>Element Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getElementId()
	 * @generated
	 * @ordered
	 */
	protected String elementId = ELEMENT_ID_EDEFAULT;

	/**
	 * The default value of the '{@link #getRuleId() <em>Rule Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRuleId()
	 * @generated
	 * @ordered
	 */
	protected static final String RULE_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRuleId() <em>Rule Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRuleId()
	 * @generated
	 * @ordered
	 */
	protected String ruleId = RULE_ID_EDEFAULT;

	/**
	 * The default value of the '{@link #getText() <em>Text</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getText()
	 * @generated
	 * @ordered
	 */
	protected static final String TEXT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getText() <em>Text</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getText()
	 * @generated
	 * @ordered
	 */
	protected String text = TEXT_EDEFAULT;

	/**
	 * The default value of the '{@link #getPerson() <em>Person</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPerson()
	 * @generated
	 * @ordered
	 */
	protected static final String PERSON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPerson() <em>Person</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPerson()
	 * @generated
	 * @ordered
	 */
	protected String person = PERSON_EDEFAULT;

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
	 * The default value of the '{@link #getResolved() <em>Resolved</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getResolved()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean RESOLVED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getResolved() <em>Resolved</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getResolved()
	 * @generated
	 * @ordered
	 */
	protected Boolean resolved = RESOLVED_EDEFAULT;

	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final ReviewKind KIND_EDEFAULT = ReviewKind.COMMENT;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected ReviewKind kind = KIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getNoteId() <em>Note Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNoteId()
	 * @generated
	 * @ordered
	 */
	protected static final String NOTE_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNoteId() <em>Note Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNoteId()
	 * @generated
	 * @ordered
	 */
	protected String noteId = NOTE_ID_EDEFAULT;

	/**
	 * The default value of the '{@link #getSha256() <em>Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSha256()
	 * @generated
	 * @ordered
	 */
	protected static final String SHA256_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSha256() <em>Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSha256()
	 * @generated
	 * @ordered
	 */
	protected String sha256 = SHA256_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ReviewNoteImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.REVIEW_NOTE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getElementId() {
		return elementId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setElementId(String newElementId) {
		String oldElementId = elementId;
		elementId = newElementId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.REVIEW_NOTE__ELEMENT_ID, oldElementId, elementId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getRuleId() {
		return ruleId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRuleId(String newRuleId) {
		String oldRuleId = ruleId;
		ruleId = newRuleId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.REVIEW_NOTE__RULE_ID, oldRuleId, ruleId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getText() {
		return text;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setText(String newText) {
		String oldText = text;
		text = newText;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.REVIEW_NOTE__TEXT, oldText, text));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPerson() {
		return person;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPerson(String newPerson) {
		String oldPerson = person;
		person = newPerson;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.REVIEW_NOTE__PERSON, oldPerson, person));
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
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.REVIEW_NOTE__DATE, oldDate, date));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getResolved() {
		return resolved;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setResolved(Boolean newResolved) {
		Boolean oldResolved = resolved;
		resolved = newResolved;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.REVIEW_NOTE__RESOLVED, oldResolved, resolved));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ReviewKind getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(ReviewKind newKind) {
		ReviewKind oldKind = kind;
		kind = newKind == null ? KIND_EDEFAULT : newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.REVIEW_NOTE__KIND, oldKind, kind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getNoteId() {
		return noteId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNoteId(String newNoteId) {
		String oldNoteId = noteId;
		noteId = newNoteId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.REVIEW_NOTE__NOTE_ID, oldNoteId, noteId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSha256() {
		return sha256;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSha256(String newSha256) {
		String oldSha256 = sha256;
		sha256 = newSha256;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.REVIEW_NOTE__SHA256, oldSha256, sha256));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case SlopewrightPackage.REVIEW_NOTE__ELEMENT_ID:
				return getElementId();
			case SlopewrightPackage.REVIEW_NOTE__RULE_ID:
				return getRuleId();
			case SlopewrightPackage.REVIEW_NOTE__TEXT:
				return getText();
			case SlopewrightPackage.REVIEW_NOTE__PERSON:
				return getPerson();
			case SlopewrightPackage.REVIEW_NOTE__DATE:
				return getDate();
			case SlopewrightPackage.REVIEW_NOTE__RESOLVED:
				return getResolved();
			case SlopewrightPackage.REVIEW_NOTE__KIND:
				return getKind();
			case SlopewrightPackage.REVIEW_NOTE__NOTE_ID:
				return getNoteId();
			case SlopewrightPackage.REVIEW_NOTE__SHA256:
				return getSha256();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case SlopewrightPackage.REVIEW_NOTE__ELEMENT_ID:
				setElementId((String)newValue);
				return;
			case SlopewrightPackage.REVIEW_NOTE__RULE_ID:
				setRuleId((String)newValue);
				return;
			case SlopewrightPackage.REVIEW_NOTE__TEXT:
				setText((String)newValue);
				return;
			case SlopewrightPackage.REVIEW_NOTE__PERSON:
				setPerson((String)newValue);
				return;
			case SlopewrightPackage.REVIEW_NOTE__DATE:
				setDate((String)newValue);
				return;
			case SlopewrightPackage.REVIEW_NOTE__RESOLVED:
				setResolved((Boolean)newValue);
				return;
			case SlopewrightPackage.REVIEW_NOTE__KIND:
				setKind((ReviewKind)newValue);
				return;
			case SlopewrightPackage.REVIEW_NOTE__NOTE_ID:
				setNoteId((String)newValue);
				return;
			case SlopewrightPackage.REVIEW_NOTE__SHA256:
				setSha256((String)newValue);
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
			case SlopewrightPackage.REVIEW_NOTE__ELEMENT_ID:
				setElementId(ELEMENT_ID_EDEFAULT);
				return;
			case SlopewrightPackage.REVIEW_NOTE__RULE_ID:
				setRuleId(RULE_ID_EDEFAULT);
				return;
			case SlopewrightPackage.REVIEW_NOTE__TEXT:
				setText(TEXT_EDEFAULT);
				return;
			case SlopewrightPackage.REVIEW_NOTE__PERSON:
				setPerson(PERSON_EDEFAULT);
				return;
			case SlopewrightPackage.REVIEW_NOTE__DATE:
				setDate(DATE_EDEFAULT);
				return;
			case SlopewrightPackage.REVIEW_NOTE__RESOLVED:
				setResolved(RESOLVED_EDEFAULT);
				return;
			case SlopewrightPackage.REVIEW_NOTE__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case SlopewrightPackage.REVIEW_NOTE__NOTE_ID:
				setNoteId(NOTE_ID_EDEFAULT);
				return;
			case SlopewrightPackage.REVIEW_NOTE__SHA256:
				setSha256(SHA256_EDEFAULT);
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
			case SlopewrightPackage.REVIEW_NOTE__ELEMENT_ID:
				return ELEMENT_ID_EDEFAULT == null ? elementId != null : !ELEMENT_ID_EDEFAULT.equals(elementId);
			case SlopewrightPackage.REVIEW_NOTE__RULE_ID:
				return RULE_ID_EDEFAULT == null ? ruleId != null : !RULE_ID_EDEFAULT.equals(ruleId);
			case SlopewrightPackage.REVIEW_NOTE__TEXT:
				return TEXT_EDEFAULT == null ? text != null : !TEXT_EDEFAULT.equals(text);
			case SlopewrightPackage.REVIEW_NOTE__PERSON:
				return PERSON_EDEFAULT == null ? person != null : !PERSON_EDEFAULT.equals(person);
			case SlopewrightPackage.REVIEW_NOTE__DATE:
				return DATE_EDEFAULT == null ? date != null : !DATE_EDEFAULT.equals(date);
			case SlopewrightPackage.REVIEW_NOTE__RESOLVED:
				return RESOLVED_EDEFAULT == null ? resolved != null : !RESOLVED_EDEFAULT.equals(resolved);
			case SlopewrightPackage.REVIEW_NOTE__KIND:
				return kind != KIND_EDEFAULT;
			case SlopewrightPackage.REVIEW_NOTE__NOTE_ID:
				return NOTE_ID_EDEFAULT == null ? noteId != null : !NOTE_ID_EDEFAULT.equals(noteId);
			case SlopewrightPackage.REVIEW_NOTE__SHA256:
				return SHA256_EDEFAULT == null ? sha256 != null : !SHA256_EDEFAULT.equals(sha256);
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
		result.append(" (elementId: ");
		result.append(elementId);
		result.append(", ruleId: ");
		result.append(ruleId);
		result.append(", text: ");
		result.append(text);
		result.append(", person: ");
		result.append(person);
		result.append(", date: ");
		result.append(date);
		result.append(", resolved: ");
		result.append(resolved);
		result.append(", kind: ");
		result.append(kind);
		result.append(", noteId: ");
		result.append(noteId);
		result.append(", sha256: ");
		result.append(sha256);
		result.append(')');
		return result.toString();
	}

} //ReviewNoteImpl
