/**
 */
package slopewright.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import slopewright.model.SlopewrightPackage;
import slopewright.model.ValueOverride;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Value Override</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.ValueOverrideImpl#getValueKey <em>Value Key</em>}</li>
 *   <li>{@link slopewright.model.impl.ValueOverrideImpl#getRuleSetKey <em>Rule Set Key</em>}</li>
 *   <li>{@link slopewright.model.impl.ValueOverrideImpl#getValue <em>Value</em>}</li>
 *   <li>{@link slopewright.model.impl.ValueOverrideImpl#getReason <em>Reason</em>}</li>
 *   <li>{@link slopewright.model.impl.ValueOverrideImpl#getPerson <em>Person</em>}</li>
 *   <li>{@link slopewright.model.impl.ValueOverrideImpl#getDate <em>Date</em>}</li>
 *   <li>{@link slopewright.model.impl.ValueOverrideImpl#getUnit <em>Unit</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ValueOverrideImpl extends IdentifiedImpl implements ValueOverride {
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
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ValueOverrideImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.VALUE_OVERRIDE;
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
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.VALUE_OVERRIDE__VALUE_KEY, oldValueKey, valueKey));
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
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.VALUE_OVERRIDE__RULE_SET_KEY, oldRuleSetKey, ruleSetKey));
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
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.VALUE_OVERRIDE__VALUE, oldValue, value));
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
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.VALUE_OVERRIDE__REASON, oldReason, reason));
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
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.VALUE_OVERRIDE__PERSON, oldPerson, person));
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
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.VALUE_OVERRIDE__DATE, oldDate, date));
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
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.VALUE_OVERRIDE__UNIT, oldUnit, unit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case SlopewrightPackage.VALUE_OVERRIDE__VALUE_KEY:
				return getValueKey();
			case SlopewrightPackage.VALUE_OVERRIDE__RULE_SET_KEY:
				return getRuleSetKey();
			case SlopewrightPackage.VALUE_OVERRIDE__VALUE:
				return getValue();
			case SlopewrightPackage.VALUE_OVERRIDE__REASON:
				return getReason();
			case SlopewrightPackage.VALUE_OVERRIDE__PERSON:
				return getPerson();
			case SlopewrightPackage.VALUE_OVERRIDE__DATE:
				return getDate();
			case SlopewrightPackage.VALUE_OVERRIDE__UNIT:
				return getUnit();
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
			case SlopewrightPackage.VALUE_OVERRIDE__VALUE_KEY:
				setValueKey((String)newValue);
				return;
			case SlopewrightPackage.VALUE_OVERRIDE__RULE_SET_KEY:
				setRuleSetKey((String)newValue);
				return;
			case SlopewrightPackage.VALUE_OVERRIDE__VALUE:
				setValue((Double)newValue);
				return;
			case SlopewrightPackage.VALUE_OVERRIDE__REASON:
				setReason((String)newValue);
				return;
			case SlopewrightPackage.VALUE_OVERRIDE__PERSON:
				setPerson((String)newValue);
				return;
			case SlopewrightPackage.VALUE_OVERRIDE__DATE:
				setDate((String)newValue);
				return;
			case SlopewrightPackage.VALUE_OVERRIDE__UNIT:
				setUnit((String)newValue);
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
			case SlopewrightPackage.VALUE_OVERRIDE__VALUE_KEY:
				setValueKey(VALUE_KEY_EDEFAULT);
				return;
			case SlopewrightPackage.VALUE_OVERRIDE__RULE_SET_KEY:
				setRuleSetKey(RULE_SET_KEY_EDEFAULT);
				return;
			case SlopewrightPackage.VALUE_OVERRIDE__VALUE:
				setValue(VALUE_EDEFAULT);
				return;
			case SlopewrightPackage.VALUE_OVERRIDE__REASON:
				setReason(REASON_EDEFAULT);
				return;
			case SlopewrightPackage.VALUE_OVERRIDE__PERSON:
				setPerson(PERSON_EDEFAULT);
				return;
			case SlopewrightPackage.VALUE_OVERRIDE__DATE:
				setDate(DATE_EDEFAULT);
				return;
			case SlopewrightPackage.VALUE_OVERRIDE__UNIT:
				setUnit(UNIT_EDEFAULT);
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
			case SlopewrightPackage.VALUE_OVERRIDE__VALUE_KEY:
				return VALUE_KEY_EDEFAULT == null ? valueKey != null : !VALUE_KEY_EDEFAULT.equals(valueKey);
			case SlopewrightPackage.VALUE_OVERRIDE__RULE_SET_KEY:
				return RULE_SET_KEY_EDEFAULT == null ? ruleSetKey != null : !RULE_SET_KEY_EDEFAULT.equals(ruleSetKey);
			case SlopewrightPackage.VALUE_OVERRIDE__VALUE:
				return VALUE_EDEFAULT == null ? value != null : !VALUE_EDEFAULT.equals(value);
			case SlopewrightPackage.VALUE_OVERRIDE__REASON:
				return REASON_EDEFAULT == null ? reason != null : !REASON_EDEFAULT.equals(reason);
			case SlopewrightPackage.VALUE_OVERRIDE__PERSON:
				return PERSON_EDEFAULT == null ? person != null : !PERSON_EDEFAULT.equals(person);
			case SlopewrightPackage.VALUE_OVERRIDE__DATE:
				return DATE_EDEFAULT == null ? date != null : !DATE_EDEFAULT.equals(date);
			case SlopewrightPackage.VALUE_OVERRIDE__UNIT:
				return UNIT_EDEFAULT == null ? unit != null : !UNIT_EDEFAULT.equals(unit);
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
		result.append(", value: ");
		result.append(value);
		result.append(", reason: ");
		result.append(reason);
		result.append(", person: ");
		result.append(person);
		result.append(", date: ");
		result.append(date);
		result.append(", unit: ");
		result.append(unit);
		result.append(')');
		return result.toString();
	}

} //ValueOverrideImpl
