/**
 */
package slopewright.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import slopewright.model.Place;
import slopewright.model.SlopewrightPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Place</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.PlaceImpl#getLatitudeDeg <em>Latitude Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.PlaceImpl#getLongitudeDeg <em>Longitude Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.PlaceImpl#getEastM <em>East M</em>}</li>
 *   <li>{@link slopewright.model.impl.PlaceImpl#getNorthM <em>North M</em>}</li>
 *   <li>{@link slopewright.model.impl.PlaceImpl#getElevationM <em>Elevation M</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PlaceImpl extends IdentifiedImpl implements Place {
	/**
	 * The default value of the '{@link #getLatitudeDeg() <em>Latitude Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLatitudeDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double LATITUDE_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLatitudeDeg() <em>Latitude Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLatitudeDeg()
	 * @generated
	 * @ordered
	 */
	protected Double latitudeDeg = LATITUDE_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getLongitudeDeg() <em>Longitude Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLongitudeDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double LONGITUDE_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLongitudeDeg() <em>Longitude Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLongitudeDeg()
	 * @generated
	 * @ordered
	 */
	protected Double longitudeDeg = LONGITUDE_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getEastM() <em>East M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEastM()
	 * @generated
	 * @ordered
	 */
	protected static final Double EAST_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEastM() <em>East M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEastM()
	 * @generated
	 * @ordered
	 */
	protected Double eastM = EAST_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getNorthM() <em>North M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNorthM()
	 * @generated
	 * @ordered
	 */
	protected static final Double NORTH_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNorthM() <em>North M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNorthM()
	 * @generated
	 * @ordered
	 */
	protected Double northM = NORTH_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getElevationM() <em>Elevation M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getElevationM()
	 * @generated
	 * @ordered
	 */
	protected static final Double ELEVATION_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getElevationM() <em>Elevation M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getElevationM()
	 * @generated
	 * @ordered
	 */
	protected Double elevationM = ELEVATION_M_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PlaceImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.PLACE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getLatitudeDeg() {
		return latitudeDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLatitudeDeg(Double newLatitudeDeg) {
		Double oldLatitudeDeg = latitudeDeg;
		latitudeDeg = newLatitudeDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.PLACE__LATITUDE_DEG, oldLatitudeDeg, latitudeDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getLongitudeDeg() {
		return longitudeDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLongitudeDeg(Double newLongitudeDeg) {
		Double oldLongitudeDeg = longitudeDeg;
		longitudeDeg = newLongitudeDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.PLACE__LONGITUDE_DEG, oldLongitudeDeg, longitudeDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getEastM() {
		return eastM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEastM(Double newEastM) {
		Double oldEastM = eastM;
		eastM = newEastM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.PLACE__EAST_M, oldEastM, eastM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getNorthM() {
		return northM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNorthM(Double newNorthM) {
		Double oldNorthM = northM;
		northM = newNorthM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.PLACE__NORTH_M, oldNorthM, northM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getElevationM() {
		return elevationM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setElevationM(Double newElevationM) {
		Double oldElevationM = elevationM;
		elevationM = newElevationM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.PLACE__ELEVATION_M, oldElevationM, elevationM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case SlopewrightPackage.PLACE__LATITUDE_DEG:
				return getLatitudeDeg();
			case SlopewrightPackage.PLACE__LONGITUDE_DEG:
				return getLongitudeDeg();
			case SlopewrightPackage.PLACE__EAST_M:
				return getEastM();
			case SlopewrightPackage.PLACE__NORTH_M:
				return getNorthM();
			case SlopewrightPackage.PLACE__ELEVATION_M:
				return getElevationM();
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
			case SlopewrightPackage.PLACE__LATITUDE_DEG:
				setLatitudeDeg((Double)newValue);
				return;
			case SlopewrightPackage.PLACE__LONGITUDE_DEG:
				setLongitudeDeg((Double)newValue);
				return;
			case SlopewrightPackage.PLACE__EAST_M:
				setEastM((Double)newValue);
				return;
			case SlopewrightPackage.PLACE__NORTH_M:
				setNorthM((Double)newValue);
				return;
			case SlopewrightPackage.PLACE__ELEVATION_M:
				setElevationM((Double)newValue);
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
			case SlopewrightPackage.PLACE__LATITUDE_DEG:
				setLatitudeDeg(LATITUDE_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.PLACE__LONGITUDE_DEG:
				setLongitudeDeg(LONGITUDE_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.PLACE__EAST_M:
				setEastM(EAST_M_EDEFAULT);
				return;
			case SlopewrightPackage.PLACE__NORTH_M:
				setNorthM(NORTH_M_EDEFAULT);
				return;
			case SlopewrightPackage.PLACE__ELEVATION_M:
				setElevationM(ELEVATION_M_EDEFAULT);
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
			case SlopewrightPackage.PLACE__LATITUDE_DEG:
				return LATITUDE_DEG_EDEFAULT == null ? latitudeDeg != null : !LATITUDE_DEG_EDEFAULT.equals(latitudeDeg);
			case SlopewrightPackage.PLACE__LONGITUDE_DEG:
				return LONGITUDE_DEG_EDEFAULT == null ? longitudeDeg != null : !LONGITUDE_DEG_EDEFAULT.equals(longitudeDeg);
			case SlopewrightPackage.PLACE__EAST_M:
				return EAST_M_EDEFAULT == null ? eastM != null : !EAST_M_EDEFAULT.equals(eastM);
			case SlopewrightPackage.PLACE__NORTH_M:
				return NORTH_M_EDEFAULT == null ? northM != null : !NORTH_M_EDEFAULT.equals(northM);
			case SlopewrightPackage.PLACE__ELEVATION_M:
				return ELEVATION_M_EDEFAULT == null ? elevationM != null : !ELEVATION_M_EDEFAULT.equals(elevationM);
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
		result.append(" (latitudeDeg: ");
		result.append(latitudeDeg);
		result.append(", longitudeDeg: ");
		result.append(longitudeDeg);
		result.append(", eastM: ");
		result.append(eastM);
		result.append(", northM: ");
		result.append(northM);
		result.append(", elevationM: ");
		result.append(elevationM);
		result.append(')');
		return result.toString();
	}

} //PlaceImpl
