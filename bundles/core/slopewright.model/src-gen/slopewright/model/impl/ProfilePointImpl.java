/**
 */
package slopewright.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import slopewright.model.ProfilePoint;
import slopewright.model.SlopewrightPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Profile Point</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.ProfilePointImpl#getChainageM <em>Chainage M</em>}</li>
 *   <li>{@link slopewright.model.impl.ProfilePointImpl#getElevationM <em>Elevation M</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ProfilePointImpl extends IdentifiedImpl implements ProfilePoint {
	/**
	 * The default value of the '{@link #getChainageM() <em>Chainage M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChainageM()
	 * @generated
	 * @ordered
	 */
	protected static final Double CHAINAGE_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getChainageM() <em>Chainage M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChainageM()
	 * @generated
	 * @ordered
	 */
	protected Double chainageM = CHAINAGE_M_EDEFAULT;

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
	protected ProfilePointImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.PROFILE_POINT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getChainageM() {
		return chainageM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setChainageM(Double newChainageM) {
		Double oldChainageM = chainageM;
		chainageM = newChainageM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.PROFILE_POINT__CHAINAGE_M, oldChainageM, chainageM));
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
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.PROFILE_POINT__ELEVATION_M, oldElevationM, elevationM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case SlopewrightPackage.PROFILE_POINT__CHAINAGE_M:
				return getChainageM();
			case SlopewrightPackage.PROFILE_POINT__ELEVATION_M:
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
			case SlopewrightPackage.PROFILE_POINT__CHAINAGE_M:
				setChainageM((Double)newValue);
				return;
			case SlopewrightPackage.PROFILE_POINT__ELEVATION_M:
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
			case SlopewrightPackage.PROFILE_POINT__CHAINAGE_M:
				setChainageM(CHAINAGE_M_EDEFAULT);
				return;
			case SlopewrightPackage.PROFILE_POINT__ELEVATION_M:
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
			case SlopewrightPackage.PROFILE_POINT__CHAINAGE_M:
				return CHAINAGE_M_EDEFAULT == null ? chainageM != null : !CHAINAGE_M_EDEFAULT.equals(chainageM);
			case SlopewrightPackage.PROFILE_POINT__ELEVATION_M:
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
		result.append(" (chainageM: ");
		result.append(chainageM);
		result.append(", elevationM: ");
		result.append(elevationM);
		result.append(')');
		return result.toString();
	}

} //ProfilePointImpl
