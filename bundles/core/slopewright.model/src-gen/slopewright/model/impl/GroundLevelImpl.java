/**
 */
package slopewright.model.impl;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import slopewright.model.GroundLevel;
import slopewright.model.Place;
import slopewright.model.SlopewrightPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Ground Level</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.GroundLevelImpl#getPlace <em>Place</em>}</li>
 *   <li>{@link slopewright.model.impl.GroundLevelImpl#getSource <em>Source</em>}</li>
 *   <li>{@link slopewright.model.impl.GroundLevelImpl#getDate <em>Date</em>}</li>
 *   <li>{@link slopewright.model.impl.GroundLevelImpl#getVerticalAccuracyM <em>Vertical Accuracy M</em>}</li>
 * </ul>
 *
 * @generated
 */
public class GroundLevelImpl extends IdentifiedImpl implements GroundLevel {
	/**
	 * The cached value of the '{@link #getPlace() <em>Place</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlace()
	 * @generated
	 * @ordered
	 */
	protected Place place;

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
	 * The default value of the '{@link #getVerticalAccuracyM() <em>Vertical Accuracy M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVerticalAccuracyM()
	 * @generated
	 * @ordered
	 */
	protected static final Double VERTICAL_ACCURACY_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getVerticalAccuracyM() <em>Vertical Accuracy M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVerticalAccuracyM()
	 * @generated
	 * @ordered
	 */
	protected Double verticalAccuracyM = VERTICAL_ACCURACY_M_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected GroundLevelImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.GROUND_LEVEL;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Place getPlace() {
		return place;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetPlace(Place newPlace, NotificationChain msgs) {
		Place oldPlace = place;
		place = newPlace;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, SlopewrightPackage.GROUND_LEVEL__PLACE, oldPlace, newPlace);
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
	public void setPlace(Place newPlace) {
		if (newPlace != place) {
			NotificationChain msgs = null;
			if (place != null)
				msgs = ((InternalEObject)place).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - SlopewrightPackage.GROUND_LEVEL__PLACE, null, msgs);
			if (newPlace != null)
				msgs = ((InternalEObject)newPlace).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - SlopewrightPackage.GROUND_LEVEL__PLACE, null, msgs);
			msgs = basicSetPlace(newPlace, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.GROUND_LEVEL__PLACE, newPlace, newPlace));
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
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.GROUND_LEVEL__SOURCE, oldSource, source));
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
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.GROUND_LEVEL__DATE, oldDate, date));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getVerticalAccuracyM() {
		return verticalAccuracyM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVerticalAccuracyM(Double newVerticalAccuracyM) {
		Double oldVerticalAccuracyM = verticalAccuracyM;
		verticalAccuracyM = newVerticalAccuracyM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.GROUND_LEVEL__VERTICAL_ACCURACY_M, oldVerticalAccuracyM, verticalAccuracyM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case SlopewrightPackage.GROUND_LEVEL__PLACE:
				return basicSetPlace(null, msgs);
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
			case SlopewrightPackage.GROUND_LEVEL__PLACE:
				return getPlace();
			case SlopewrightPackage.GROUND_LEVEL__SOURCE:
				return getSource();
			case SlopewrightPackage.GROUND_LEVEL__DATE:
				return getDate();
			case SlopewrightPackage.GROUND_LEVEL__VERTICAL_ACCURACY_M:
				return getVerticalAccuracyM();
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
			case SlopewrightPackage.GROUND_LEVEL__PLACE:
				setPlace((Place)newValue);
				return;
			case SlopewrightPackage.GROUND_LEVEL__SOURCE:
				setSource((String)newValue);
				return;
			case SlopewrightPackage.GROUND_LEVEL__DATE:
				setDate((String)newValue);
				return;
			case SlopewrightPackage.GROUND_LEVEL__VERTICAL_ACCURACY_M:
				setVerticalAccuracyM((Double)newValue);
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
			case SlopewrightPackage.GROUND_LEVEL__PLACE:
				setPlace((Place)null);
				return;
			case SlopewrightPackage.GROUND_LEVEL__SOURCE:
				setSource(SOURCE_EDEFAULT);
				return;
			case SlopewrightPackage.GROUND_LEVEL__DATE:
				setDate(DATE_EDEFAULT);
				return;
			case SlopewrightPackage.GROUND_LEVEL__VERTICAL_ACCURACY_M:
				setVerticalAccuracyM(VERTICAL_ACCURACY_M_EDEFAULT);
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
			case SlopewrightPackage.GROUND_LEVEL__PLACE:
				return place != null;
			case SlopewrightPackage.GROUND_LEVEL__SOURCE:
				return SOURCE_EDEFAULT == null ? source != null : !SOURCE_EDEFAULT.equals(source);
			case SlopewrightPackage.GROUND_LEVEL__DATE:
				return DATE_EDEFAULT == null ? date != null : !DATE_EDEFAULT.equals(date);
			case SlopewrightPackage.GROUND_LEVEL__VERTICAL_ACCURACY_M:
				return VERTICAL_ACCURACY_M_EDEFAULT == null ? verticalAccuracyM != null : !VERTICAL_ACCURACY_M_EDEFAULT.equals(verticalAccuracyM);
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
		result.append(" (source: ");
		result.append(source);
		result.append(", date: ");
		result.append(date);
		result.append(", verticalAccuracyM: ");
		result.append(verticalAccuracyM);
		result.append(')');
		return result.toString();
	}

} //GroundLevelImpl
