/**
 */
package slopewright.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import slopewright.model.Inspection;
import slopewright.model.SlopewrightPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Inspection</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.InspectionImpl#getDate <em>Date</em>}</li>
 *   <li>{@link slopewright.model.impl.InspectionImpl#getPerson <em>Person</em>}</li>
 *   <li>{@link slopewright.model.impl.InspectionImpl#getOrganisation <em>Organisation</em>}</li>
 *   <li>{@link slopewright.model.impl.InspectionImpl#getOnSlopeAngleDeg <em>On Slope Angle Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.InspectionImpl#getUsableRangeM <em>Usable Range M</em>}</li>
 *   <li>{@link slopewright.model.impl.InspectionImpl#getAzimuthLeftDeg <em>Azimuth Left Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.InspectionImpl#getAzimuthRightDeg <em>Azimuth Right Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.InspectionImpl#getObstacleClear <em>Obstacle Clear</em>}</li>
 * </ul>
 *
 * @generated
 */
public class InspectionImpl extends NamedImpl implements Inspection {
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
	 * The default value of the '{@link #getOnSlopeAngleDeg() <em>On Slope Angle Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOnSlopeAngleDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double ON_SLOPE_ANGLE_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOnSlopeAngleDeg() <em>On Slope Angle Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOnSlopeAngleDeg()
	 * @generated
	 * @ordered
	 */
	protected Double onSlopeAngleDeg = ON_SLOPE_ANGLE_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getUsableRangeM() <em>Usable Range M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUsableRangeM()
	 * @generated
	 * @ordered
	 */
	protected static final Double USABLE_RANGE_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getUsableRangeM() <em>Usable Range M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUsableRangeM()
	 * @generated
	 * @ordered
	 */
	protected Double usableRangeM = USABLE_RANGE_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getAzimuthLeftDeg() <em>Azimuth Left Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAzimuthLeftDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double AZIMUTH_LEFT_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAzimuthLeftDeg() <em>Azimuth Left Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAzimuthLeftDeg()
	 * @generated
	 * @ordered
	 */
	protected Double azimuthLeftDeg = AZIMUTH_LEFT_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getAzimuthRightDeg() <em>Azimuth Right Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAzimuthRightDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double AZIMUTH_RIGHT_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAzimuthRightDeg() <em>Azimuth Right Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAzimuthRightDeg()
	 * @generated
	 * @ordered
	 */
	protected Double azimuthRightDeg = AZIMUTH_RIGHT_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getObstacleClear() <em>Obstacle Clear</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getObstacleClear()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean OBSTACLE_CLEAR_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getObstacleClear() <em>Obstacle Clear</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getObstacleClear()
	 * @generated
	 * @ordered
	 */
	protected Boolean obstacleClear = OBSTACLE_CLEAR_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected InspectionImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.INSPECTION;
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
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.INSPECTION__DATE, oldDate, date));
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
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.INSPECTION__PERSON, oldPerson, person));
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
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.INSPECTION__ORGANISATION, oldOrganisation, organisation));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getOnSlopeAngleDeg() {
		return onSlopeAngleDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOnSlopeAngleDeg(Double newOnSlopeAngleDeg) {
		Double oldOnSlopeAngleDeg = onSlopeAngleDeg;
		onSlopeAngleDeg = newOnSlopeAngleDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.INSPECTION__ON_SLOPE_ANGLE_DEG, oldOnSlopeAngleDeg, onSlopeAngleDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getUsableRangeM() {
		return usableRangeM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUsableRangeM(Double newUsableRangeM) {
		Double oldUsableRangeM = usableRangeM;
		usableRangeM = newUsableRangeM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.INSPECTION__USABLE_RANGE_M, oldUsableRangeM, usableRangeM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getAzimuthLeftDeg() {
		return azimuthLeftDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAzimuthLeftDeg(Double newAzimuthLeftDeg) {
		Double oldAzimuthLeftDeg = azimuthLeftDeg;
		azimuthLeftDeg = newAzimuthLeftDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.INSPECTION__AZIMUTH_LEFT_DEG, oldAzimuthLeftDeg, azimuthLeftDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getAzimuthRightDeg() {
		return azimuthRightDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAzimuthRightDeg(Double newAzimuthRightDeg) {
		Double oldAzimuthRightDeg = azimuthRightDeg;
		azimuthRightDeg = newAzimuthRightDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.INSPECTION__AZIMUTH_RIGHT_DEG, oldAzimuthRightDeg, azimuthRightDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getObstacleClear() {
		return obstacleClear;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setObstacleClear(Boolean newObstacleClear) {
		Boolean oldObstacleClear = obstacleClear;
		obstacleClear = newObstacleClear;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.INSPECTION__OBSTACLE_CLEAR, oldObstacleClear, obstacleClear));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case SlopewrightPackage.INSPECTION__DATE:
				return getDate();
			case SlopewrightPackage.INSPECTION__PERSON:
				return getPerson();
			case SlopewrightPackage.INSPECTION__ORGANISATION:
				return getOrganisation();
			case SlopewrightPackage.INSPECTION__ON_SLOPE_ANGLE_DEG:
				return getOnSlopeAngleDeg();
			case SlopewrightPackage.INSPECTION__USABLE_RANGE_M:
				return getUsableRangeM();
			case SlopewrightPackage.INSPECTION__AZIMUTH_LEFT_DEG:
				return getAzimuthLeftDeg();
			case SlopewrightPackage.INSPECTION__AZIMUTH_RIGHT_DEG:
				return getAzimuthRightDeg();
			case SlopewrightPackage.INSPECTION__OBSTACLE_CLEAR:
				return getObstacleClear();
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
			case SlopewrightPackage.INSPECTION__DATE:
				setDate((String)newValue);
				return;
			case SlopewrightPackage.INSPECTION__PERSON:
				setPerson((String)newValue);
				return;
			case SlopewrightPackage.INSPECTION__ORGANISATION:
				setOrganisation((String)newValue);
				return;
			case SlopewrightPackage.INSPECTION__ON_SLOPE_ANGLE_DEG:
				setOnSlopeAngleDeg((Double)newValue);
				return;
			case SlopewrightPackage.INSPECTION__USABLE_RANGE_M:
				setUsableRangeM((Double)newValue);
				return;
			case SlopewrightPackage.INSPECTION__AZIMUTH_LEFT_DEG:
				setAzimuthLeftDeg((Double)newValue);
				return;
			case SlopewrightPackage.INSPECTION__AZIMUTH_RIGHT_DEG:
				setAzimuthRightDeg((Double)newValue);
				return;
			case SlopewrightPackage.INSPECTION__OBSTACLE_CLEAR:
				setObstacleClear((Boolean)newValue);
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
			case SlopewrightPackage.INSPECTION__DATE:
				setDate(DATE_EDEFAULT);
				return;
			case SlopewrightPackage.INSPECTION__PERSON:
				setPerson(PERSON_EDEFAULT);
				return;
			case SlopewrightPackage.INSPECTION__ORGANISATION:
				setOrganisation(ORGANISATION_EDEFAULT);
				return;
			case SlopewrightPackage.INSPECTION__ON_SLOPE_ANGLE_DEG:
				setOnSlopeAngleDeg(ON_SLOPE_ANGLE_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.INSPECTION__USABLE_RANGE_M:
				setUsableRangeM(USABLE_RANGE_M_EDEFAULT);
				return;
			case SlopewrightPackage.INSPECTION__AZIMUTH_LEFT_DEG:
				setAzimuthLeftDeg(AZIMUTH_LEFT_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.INSPECTION__AZIMUTH_RIGHT_DEG:
				setAzimuthRightDeg(AZIMUTH_RIGHT_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.INSPECTION__OBSTACLE_CLEAR:
				setObstacleClear(OBSTACLE_CLEAR_EDEFAULT);
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
			case SlopewrightPackage.INSPECTION__DATE:
				return DATE_EDEFAULT == null ? date != null : !DATE_EDEFAULT.equals(date);
			case SlopewrightPackage.INSPECTION__PERSON:
				return PERSON_EDEFAULT == null ? person != null : !PERSON_EDEFAULT.equals(person);
			case SlopewrightPackage.INSPECTION__ORGANISATION:
				return ORGANISATION_EDEFAULT == null ? organisation != null : !ORGANISATION_EDEFAULT.equals(organisation);
			case SlopewrightPackage.INSPECTION__ON_SLOPE_ANGLE_DEG:
				return ON_SLOPE_ANGLE_DEG_EDEFAULT == null ? onSlopeAngleDeg != null : !ON_SLOPE_ANGLE_DEG_EDEFAULT.equals(onSlopeAngleDeg);
			case SlopewrightPackage.INSPECTION__USABLE_RANGE_M:
				return USABLE_RANGE_M_EDEFAULT == null ? usableRangeM != null : !USABLE_RANGE_M_EDEFAULT.equals(usableRangeM);
			case SlopewrightPackage.INSPECTION__AZIMUTH_LEFT_DEG:
				return AZIMUTH_LEFT_DEG_EDEFAULT == null ? azimuthLeftDeg != null : !AZIMUTH_LEFT_DEG_EDEFAULT.equals(azimuthLeftDeg);
			case SlopewrightPackage.INSPECTION__AZIMUTH_RIGHT_DEG:
				return AZIMUTH_RIGHT_DEG_EDEFAULT == null ? azimuthRightDeg != null : !AZIMUTH_RIGHT_DEG_EDEFAULT.equals(azimuthRightDeg);
			case SlopewrightPackage.INSPECTION__OBSTACLE_CLEAR:
				return OBSTACLE_CLEAR_EDEFAULT == null ? obstacleClear != null : !OBSTACLE_CLEAR_EDEFAULT.equals(obstacleClear);
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
		result.append(" (date: ");
		result.append(date);
		result.append(", person: ");
		result.append(person);
		result.append(", organisation: ");
		result.append(organisation);
		result.append(", onSlopeAngleDeg: ");
		result.append(onSlopeAngleDeg);
		result.append(", usableRangeM: ");
		result.append(usableRangeM);
		result.append(", azimuthLeftDeg: ");
		result.append(azimuthLeftDeg);
		result.append(", azimuthRightDeg: ");
		result.append(azimuthRightDeg);
		result.append(", obstacleClear: ");
		result.append(obstacleClear);
		result.append(')');
		return result.toString();
	}

} //InspectionImpl
