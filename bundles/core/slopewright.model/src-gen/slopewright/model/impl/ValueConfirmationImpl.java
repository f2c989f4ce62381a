/**
 */
package slopewright.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import slopewright.model.SlopewrightPackage;
import slopewright.model.ValueConfirmation;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Value Confirmation</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.ValueConfirmationImpl#getValueKey <em>Value Key</em>}</li>
 *   <li>{@link slopewright.model.impl.ValueConfirmationImpl#getRuleSetKey <em>Rule Set Key</em>}</li>
 *   <li>{@link slopewright.model.impl.ValueConfirmationImpl#getSource <em>Source</em>}</li>
 *   <li>{@link slopewright.model.impl.ValueConfirmationImpl#getPerson <em>Person</em>}</li>
 *   <li>{@link slopewright.model.impl.ValueConfirmationImpl#getDate <em>Date</em>}</li>
 *   <li>{@link slopewright.model.impl.ValueConfirmationImpl#getValue <em>Value</em>}</li>
 *   <li>{@link slopewright.model.impl.ValueConfirmationImpl#getUnit <em>Unit</em>}</li>
 *   <li>{@link slopewright.model.impl.ValueConfirmationImpl#getEdition <em>Edition</em>}</li>
 *   <li>{@link slopewright.model.impl.ValueConfirmationImpl#getClause <em>Clause</em>}</li>
 *   <li>{@link slopewright.model.impl.ValueConfirmationImpl#getSecondPerson <em>Second Person</em>}</li>
 *   <li>{@link slopewright.model.impl.ValueConfirmationImpl#getFromBook <em>From Book</em>}</li>
 *   <li>{@link slopewright.model.impl.ValueConfirmationImpl#getSecondDate <em>Second Date</em>}</li>
 *   <li>{@link slopewright.model.impl.ValueConfirmationImpl#getRejected <em>Rejected</em>}</li>
 *   <li>{@link slopewright.model.impl.ValueConfirmationImpl#getReason <em>Reason</em>}</li>
 *   <li>{@link slopewright.model.impl.ValueConfirmationImpl#getSha256 <em>Sha256</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ValueConfirmationImpl extends IdentifiedImpl implements ValueConfirmation {
	/**
	 * The default value of the '{@link #getValueKey() <em>Value Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getValueKey()
	 * @generated
	 * @ordered
	 */
	protected static final String VALUE_KEY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getValueKey() <em>Value Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getValueKey()
	 * @generated
	 * @ordered
	 */
	protected String valueKey = VALUE_KEY_EDEFAULT;

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
	 * The default value of the '{@link #getSource() <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSource()
	 * @generated
	 * @ordered
	 */
	protected static final String SOURCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSource() <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSource()
	 * @generated
	 * @ordered
	 */
	protected String source = SOURCE_EDEFAULT;

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
	 * The default value of the '{@link #getValue() <em>Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getValue()
	 * @generated
	 * @ordered
	 */
	protected static final Double VALUE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getValue() <em>Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getValue()
	 * @generated
	 * @ordered
	 */
	protected Double value = VALUE_EDEFAULT;

	/**
	 * The default value of the '{@link #getUnit() <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnit()
	 * @generated
	 * @ordered
	 */
	protected static final String UNIT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getUnit() <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnit()
	 * @generated
	 * @ordered
	 */
	protected String unit = UNIT_EDEFAULT;

	/**
	 * The default value of the '{@link #getEdition() <em>Edition</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEdition()
	 * @generated
	 * @ordered
	 */
	protected static final String EDITION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEdition() <em>Edition</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEdition()
	 * @generated
	 * @ordered
	 */
	protected String edition = EDITION_EDEFAULT;

	/**
	 * The default value of the '{@link #getClause() <em>Clause</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClause()
	 * @generated
	 * @ordered
	 */
	protected static final String CLAUSE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getClause() <em>Clause</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClause()
	 * @generated
	 * @ordered
	 */
	protected String clause = CLAUSE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSecondPerson() <em>Second Person</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSecondPerson()
	 * @generated
	 * @ordered
	 */
	protected static final String SECOND_PERSON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSecondPerson() <em>Second Person</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSecondPerson()
	 * @generated
	 * @ordered
	 */
	protected String secondPerson = SECOND_PERSON_EDEFAULT;

	/**
	 * The default value of the '{@link #getFromBook() <em>From Book</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFromBook()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean FROM_BOOK_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFromBook() <em>From Book</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFromBook()
	 * @generated
	 * @ordered
	 */
	protected Boolean fromBook = FROM_BOOK_EDEFAULT;

	/**
	 * The default value of the '{@link #getSecondDate() <em>Second Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSecondDate()
	 * @generated
	 * @ordered
	 */
	protected static final String SECOND_DATE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSecondDate() <em>Second Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSecondDate()
	 * @generated
	 * @ordered
	 */
	protected String secondDate = SECOND_DATE_EDEFAULT;

	/**
	 * The default value of the '{@link #getRejected() <em>Rejected</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRejected()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean REJECTED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRejected() <em>Rejected</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRejected()
	 * @generated
	 * @ordered
	 */
	protected Boolean rejected = REJECTED_EDEFAULT;

	/**
	 * The default value of the '{@link #getReason() <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReason()
	 * @generated
	 * @ordered
	 */
	protected static final String REASON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getReason() <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReason()
	 * @generated
	 * @ordered
	 */
	protected String reason = REASON_EDEFAULT;

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
	protected ValueConfirmationImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.VALUE_CONFIRMATION;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getValueKey() {
		return valueKey;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setValueKey(String newValueKey) {
		String oldValueKey = valueKey;
		valueKey = newValueKey;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.VALUE_CONFIRMATION__VALUE_KEY, oldValueKey, valueKey));
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
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.VALUE_CONFIRMATION__RULE_SET_KEY, oldRuleSetKey, ruleSetKey));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSource() {
		return source;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSource(String newSource) {
		String oldSource = source;
		source = newSource;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.VALUE_CONFIRMATION__SOURCE, oldSource, source));
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
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.VALUE_CONFIRMATION__PERSON, oldPerson, person));
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
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.VALUE_CONFIRMATION__DATE, oldDate, date));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getValue() {
		return value;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setValue(Double newValue) {
		Double oldValue = value;
		value = newValue;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.VALUE_CONFIRMATION__VALUE, oldValue, value));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getUnit() {
		return unit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUnit(String newUnit) {
		String oldUnit = unit;
		unit = newUnit;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.VALUE_CONFIRMATION__UNIT, oldUnit, unit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getEdition() {
		return edition;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEdition(String newEdition) {
		String oldEdition = edition;
		edition = newEdition;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.VALUE_CONFIRMATION__EDITION, oldEdition, edition));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getClause() {
		return clause;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setClause(String newClause) {
		String oldClause = clause;
		clause = newClause;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.VALUE_CONFIRMATION__CLAUSE, oldClause, clause));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSecondPerson() {
		return secondPerson;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSecondPerson(String newSecondPerson) {
		String oldSecondPerson = secondPerson;
		secondPerson = newSecondPerson;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.VALUE_CONFIRMATION__SECOND_PERSON, oldSecondPerson, secondPerson));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getFromBook() {
		return fromBook;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFromBook(Boolean newFromBook) {
		Boolean oldFromBook = fromBook;
		fromBook = newFromBook;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.VALUE_CONFIRMATION__FROM_BOOK, oldFromBook, fromBook));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSecondDate() {
		return secondDate;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSecondDate(String newSecondDate) {
		String oldSecondDate = secondDate;
		secondDate = newSecondDate;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.VALUE_CONFIRMATION__SECOND_DATE, oldSecondDate, secondDate));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getRejected() {
		return rejected;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRejected(Boolean newRejected) {
		Boolean oldRejected = rejected;
		rejected = newRejected;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.VALUE_CONFIRMATION__REJECTED, oldRejected, rejected));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getReason() {
		return reason;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReason(String newReason) {
		String oldReason = reason;
		reason = newReason;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.VALUE_CONFIRMATION__REASON, oldReason, reason));
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
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.VALUE_CONFIRMATION__SHA256, oldSha256, sha256));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case SlopewrightPackage.VALUE_CONFIRMATION__VALUE_KEY:
				return getValueKey();
			case SlopewrightPackage.VALUE_CONFIRMATION__RULE_SET_KEY:
				return getRuleSetKey();
			case SlopewrightPackage.VALUE_CONFIRMATION__SOURCE:
				return getSource();
			case SlopewrightPackage.VALUE_CONFIRMATION__PERSON:
				return getPerson();
			case SlopewrightPackage.VALUE_CONFIRMATION__DATE:
				return getDate();
			case SlopewrightPackage.VALUE_CONFIRMATION__VALUE:
				return getValue();
			case SlopewrightPackage.VALUE_CONFIRMATION__UNIT:
				return getUnit();
			case SlopewrightPackage.VALUE_CONFIRMATION__EDITION:
				return getEdition();
			case SlopewrightPackage.VALUE_CONFIRMATION__CLAUSE:
				return getClause();
			case SlopewrightPackage.VALUE_CONFIRMATION__SECOND_PERSON:
				return getSecondPerson();
			case SlopewrightPackage.VALUE_CONFIRMATION__FROM_BOOK:
				return getFromBook();
			case SlopewrightPackage.VALUE_CONFIRMATION__SECOND_DATE:
				return getSecondDate();
			case SlopewrightPackage.VALUE_CONFIRMATION__REJECTED:
				return getRejected();
			case SlopewrightPackage.VALUE_CONFIRMATION__REASON:
				return getReason();
			case SlopewrightPackage.VALUE_CONFIRMATION__SHA256:
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
			case SlopewrightPackage.VALUE_CONFIRMATION__VALUE_KEY:
				setValueKey((String)newValue);
				return;
			case SlopewrightPackage.VALUE_CONFIRMATION__RULE_SET_KEY:
				setRuleSetKey((String)newValue);
				return;
			case SlopewrightPackage.VALUE_CONFIRMATION__SOURCE:
				setSource((String)newValue);
				return;
			case SlopewrightPackage.VALUE_CONFIRMATION__PERSON:
				setPerson((String)newValue);
				return;
			case SlopewrightPackage.VALUE_CONFIRMATION__DATE:
				setDate((String)newValue);
				return;
			case SlopewrightPackage.VALUE_CONFIRMATION__VALUE:
				setValue((Double)newValue);
				return;
			case SlopewrightPackage.VALUE_CONFIRMATION__UNIT:
				setUnit((String)newValue);
				return;
			case SlopewrightPackage.VALUE_CONFIRMATION__EDITION:
				setEdition((String)newValue);
				return;
			case SlopewrightPackage.VALUE_CONFIRMATION__CLAUSE:
				setClause((String)newValue);
				return;
			case SlopewrightPackage.VALUE_CONFIRMATION__SECOND_PERSON:
				setSecondPerson((String)newValue);
				return;
			case SlopewrightPackage.VALUE_CONFIRMATION__FROM_BOOK:
				setFromBook((Boolean)newValue);
				return;
			case SlopewrightPackage.VALUE_CONFIRMATION__SECOND_DATE:
				setSecondDate((String)newValue);
				return;
			case SlopewrightPackage.VALUE_CONFIRMATION__REJECTED:
				setRejected((Boolean)newValue);
				return;
			case SlopewrightPackage.VALUE_CONFIRMATION__REASON:
				setReason((String)newValue);
				return;
			case SlopewrightPackage.VALUE_CONFIRMATION__SHA256:
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
			case SlopewrightPackage.VALUE_CONFIRMATION__VALUE_KEY:
				setValueKey(VALUE_KEY_EDEFAULT);
				return;
			case SlopewrightPackage.VALUE_CONFIRMATION__RULE_SET_KEY:
				setRuleSetKey(RULE_SET_KEY_EDEFAULT);
				return;
			case SlopewrightPackage.VALUE_CONFIRMATION__SOURCE:
				setSource(SOURCE_EDEFAULT);
				return;
			case SlopewrightPackage.VALUE_CONFIRMATION__PERSON:
				setPerson(PERSON_EDEFAULT);
				return;
			case SlopewrightPackage.VALUE_CONFIRMATION__DATE:
				setDate(DATE_EDEFAULT);
				return;
			case SlopewrightPackage.VALUE_CONFIRMATION__VALUE:
				setValue(VALUE_EDEFAULT);
				return;
			case SlopewrightPackage.VALUE_CONFIRMATION__UNIT:
				setUnit(UNIT_EDEFAULT);
				return;
			case SlopewrightPackage.VALUE_CONFIRMATION__EDITION:
				setEdition(EDITION_EDEFAULT);
				return;
			case SlopewrightPackage.VALUE_CONFIRMATION__CLAUSE:
				setClause(CLAUSE_EDEFAULT);
				return;
			case SlopewrightPackage.VALUE_CONFIRMATION__SECOND_PERSON:
				setSecondPerson(SECOND_PERSON_EDEFAULT);
				return;
			case SlopewrightPackage.VALUE_CONFIRMATION__FROM_BOOK:
				setFromBook(FROM_BOOK_EDEFAULT);
				return;
			case SlopewrightPackage.VALUE_CONFIRMATION__SECOND_DATE:
				setSecondDate(SECOND_DATE_EDEFAULT);
				return;
			case SlopewrightPackage.VALUE_CONFIRMATION__REJECTED:
				setRejected(REJECTED_EDEFAULT);
				return;
			case SlopewrightPackage.VALUE_CONFIRMATION__REASON:
				setReason(REASON_EDEFAULT);
				return;
			case SlopewrightPackage.VALUE_CONFIRMATION__SHA256:
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
			case SlopewrightPackage.VALUE_CONFIRMATION__VALUE_KEY:
				return VALUE_KEY_EDEFAULT == null ? valueKey != null : !VALUE_KEY_EDEFAULT.equals(valueKey);
			case SlopewrightPackage.VALUE_CONFIRMATION__RULE_SET_KEY:
				return RULE_SET_KEY_EDEFAULT == null ? ruleSetKey != null : !RULE_SET_KEY_EDEFAULT.equals(ruleSetKey);
			case SlopewrightPackage.VALUE_CONFIRMATION__SOURCE:
				return SOURCE_EDEFAULT == null ? source != null : !SOURCE_EDEFAULT.equals(source);
			case SlopewrightPackage.VALUE_CONFIRMATION__PERSON:
				return PERSON_EDEFAULT == null ? person != null : !PERSON_EDEFAULT.equals(person);
			case SlopewrightPackage.VALUE_CONFIRMATION__DATE:
				return DATE_EDEFAULT == null ? date != null : !DATE_EDEFAULT.equals(date);
			case SlopewrightPackage.VALUE_CONFIRMATION__VALUE:
				return VALUE_EDEFAULT == null ? value != null : !VALUE_EDEFAULT.equals(value);
			case SlopewrightPackage.VALUE_CONFIRMATION__UNIT:
				return UNIT_EDEFAULT == null ? unit != null : !UNIT_EDEFAULT.equals(unit);
			case SlopewrightPackage.VALUE_CONFIRMATION__EDITION:
				return EDITION_EDEFAULT == null ? edition != null : !EDITION_EDEFAULT.equals(edition);
			case SlopewrightPackage.VALUE_CONFIRMATION__CLAUSE:
				return CLAUSE_EDEFAULT == null ? clause != null : !CLAUSE_EDEFAULT.equals(clause);
			case SlopewrightPackage.VALUE_CONFIRMATION__SECOND_PERSON:
				return SECOND_PERSON_EDEFAULT == null ? secondPerson != null : !SECOND_PERSON_EDEFAULT.equals(secondPerson);
			case SlopewrightPackage.VALUE_CONFIRMATION__FROM_BOOK:
				return FROM_BOOK_EDEFAULT == null ? fromBook != null : !FROM_BOOK_EDEFAULT.equals(fromBook);
			case SlopewrightPackage.VALUE_CONFIRMATION__SECOND_DATE:
				return SECOND_DATE_EDEFAULT == null ? secondDate != null : !SECOND_DATE_EDEFAULT.equals(secondDate);
			case SlopewrightPackage.VALUE_CONFIRMATION__REJECTED:
				return REJECTED_EDEFAULT == null ? rejected != null : !REJECTED_EDEFAULT.equals(rejected);
			case SlopewrightPackage.VALUE_CONFIRMATION__REASON:
				return REASON_EDEFAULT == null ? reason != null : !REASON_EDEFAULT.equals(reason);
			case SlopewrightPackage.VALUE_CONFIRMATION__SHA256:
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
		result.append(" (valueKey: ");
		result.append(valueKey);
		result.append(", ruleSetKey: ");
		result.append(ruleSetKey);
		result.append(", source: ");
		result.append(source);
		result.append(", person: ");
		result.append(person);
		result.append(", date: ");
		result.append(date);
		result.append(", value: ");
		result.append(value);
		result.append(", unit: ");
		result.append(unit);
		result.append(", edition: ");
		result.append(edition);
		result.append(", clause: ");
		result.append(clause);
		result.append(", secondPerson: ");
		result.append(secondPerson);
		result.append(", fromBook: ");
		result.append(fromBook);
		result.append(", secondDate: ");
		result.append(secondDate);
		result.append(", rejected: ");
		result.append(rejected);
		result.append(", reason: ");
		result.append(reason);
		result.append(", sha256: ");
		result.append(sha256);
		result.append(')');
		return result.toString();
	}

} //ValueConfirmationImpl
