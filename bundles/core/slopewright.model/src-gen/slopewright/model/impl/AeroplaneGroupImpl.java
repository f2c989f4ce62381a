/**
 */
package slopewright.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import slopewright.model.AeroplaneGroup;
import slopewright.model.SlopewrightPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Aeroplane Group</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.AeroplaneGroupImpl#getStaticCockpitToWheelM <em>Static Cockpit To Wheel M</em>}</li>
 *   <li>{@link slopewright.model.impl.AeroplaneGroupImpl#getEyeToWheelM <em>Eye To Wheel M</em>}</li>
 *   <li>{@link slopewright.model.impl.AeroplaneGroupImpl#getEyeToAntennaM <em>Eye To Antenna M</em>}</li>
 *   <li>{@link slopewright.model.impl.AeroplaneGroupImpl#getSharePercent <em>Share Percent</em>}</li>
 *   <li>{@link slopewright.model.impl.AeroplaneGroupImpl#getLightNonTurbojet <em>Light Non Turbojet</em>}</li>
 *   <li>{@link slopewright.model.impl.AeroplaneGroupImpl#getMaxSlopeDeg <em>Max Slope Deg</em>}</li>
 * </ul>
 *
 * @generated
 */
public class AeroplaneGroupImpl extends NamedImpl implements AeroplaneGroup {
	/**
	 * The default value of the '{@link #getStaticCockpitToWheelM() <em>Static Cockpit To Wheel M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStaticCockpitToWheelM()
	 * @generated
	 * @ordered
	 */
	protected static final Double STATIC_COCKPIT_TO_WHEEL_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStaticCockpitToWheelM() <em>Static Cockpit To Wheel M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStaticCockpitToWheelM()
	 * @generated
	 * @ordered
	 */
	protected Double staticCockpitToWheelM = STATIC_COCKPIT_TO_WHEEL_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getEyeToWheelM() <em>Eye To Wheel M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEyeToWheelM()
	 * @generated
	 * @ordered
	 */
	protected static final Double EYE_TO_WHEEL_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEyeToWheelM() <em>Eye To Wheel M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEyeToWheelM()
	 * @generated
	 * @ordered
	 */
	protected Double eyeToWheelM = EYE_TO_WHEEL_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getEyeToAntennaM() <em>Eye To Antenna M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEyeToAntennaM()
	 * @generated
	 * @ordered
	 */
	protected static final Double EYE_TO_ANTENNA_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEyeToAntennaM() <em>Eye To Antenna M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEyeToAntennaM()
	 * @generated
	 * @ordered
	 */
	protected Double eyeToAntennaM = EYE_TO_ANTENNA_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getSharePercent() <em>Share Percent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSharePercent()
	 * @generated
	 * @ordered
	 */
	protected static final Double SHARE_PERCENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSharePercent() <em>Share Percent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSharePercent()
	 * @generated
	 * @ordered
	 */
	protected Double sharePercent = SHARE_PERCENT_EDEFAULT;

	/**
	 * The default value of the '{@link #getLightNonTurbojet() <em>Light Non Turbojet</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLightNonTurbojet()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean LIGHT_NON_TURBOJET_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLightNonTurbojet() <em>Light Non Turbojet</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLightNonTurbojet()
	 * @generated
	 * @ordered
	 */
	protected Boolean lightNonTurbojet = LIGHT_NON_TURBOJET_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaxSlopeDeg() <em>Max Slope Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaxSlopeDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double MAX_SLOPE_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaxSlopeDeg() <em>Max Slope Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaxSlopeDeg()
	 * @generated
	 * @ordered
	 */
	protected Double maxSlopeDeg = MAX_SLOPE_DEG_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected AeroplaneGroupImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.AEROPLANE_GROUP;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getStaticCockpitToWheelM() {
		return staticCockpitToWheelM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStaticCockpitToWheelM(Double newStaticCockpitToWheelM) {
		Double oldStaticCockpitToWheelM = staticCockpitToWheelM;
		staticCockpitToWheelM = newStaticCockpitToWheelM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.AEROPLANE_GROUP__STATIC_COCKPIT_TO_WHEEL_M, oldStaticCockpitToWheelM, staticCockpitToWheelM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getEyeToWheelM() {
		return eyeToWheelM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEyeToWheelM(Double newEyeToWheelM) {
		Double oldEyeToWheelM = eyeToWheelM;
		eyeToWheelM = newEyeToWheelM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.AEROPLANE_GROUP__EYE_TO_WHEEL_M, oldEyeToWheelM, eyeToWheelM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getEyeToAntennaM() {
		return eyeToAntennaM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEyeToAntennaM(Double newEyeToAntennaM) {
		Double oldEyeToAntennaM = eyeToAntennaM;
		eyeToAntennaM = newEyeToAntennaM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.AEROPLANE_GROUP__EYE_TO_ANTENNA_M, oldEyeToAntennaM, eyeToAntennaM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getSharePercent() {
		return sharePercent;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSharePercent(Double newSharePercent) {
		Double oldSharePercent = sharePercent;
		sharePercent = newSharePercent;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.AEROPLANE_GROUP__SHARE_PERCENT, oldSharePercent, sharePercent));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getLightNonTurbojet() {
		return lightNonTurbojet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLightNonTurbojet(Boolean newLightNonTurbojet) {
		Boolean oldLightNonTurbojet = lightNonTurbojet;
		lightNonTurbojet = newLightNonTurbojet;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.AEROPLANE_GROUP__LIGHT_NON_TURBOJET, oldLightNonTurbojet, lightNonTurbojet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getMaxSlopeDeg() {
		return maxSlopeDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaxSlopeDeg(Double newMaxSlopeDeg) {
		Double oldMaxSlopeDeg = maxSlopeDeg;
		maxSlopeDeg = newMaxSlopeDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.AEROPLANE_GROUP__MAX_SLOPE_DEG, oldMaxSlopeDeg, maxSlopeDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case SlopewrightPackage.AEROPLANE_GROUP__STATIC_COCKPIT_TO_WHEEL_M:
				return getStaticCockpitToWheelM();
			case SlopewrightPackage.AEROPLANE_GROUP__EYE_TO_WHEEL_M:
				return getEyeToWheelM();
			case SlopewrightPackage.AEROPLANE_GROUP__EYE_TO_ANTENNA_M:
				return getEyeToAntennaM();
			case SlopewrightPackage.AEROPLANE_GROUP__SHARE_PERCENT:
				return getSharePercent();
			case SlopewrightPackage.AEROPLANE_GROUP__LIGHT_NON_TURBOJET:
				return getLightNonTurbojet();
			case SlopewrightPackage.AEROPLANE_GROUP__MAX_SLOPE_DEG:
				return getMaxSlopeDeg();
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
			case SlopewrightPackage.AEROPLANE_GROUP__STATIC_COCKPIT_TO_WHEEL_M:
				setStaticCockpitToWheelM((Double)newValue);
				return;
			case SlopewrightPackage.AEROPLANE_GROUP__EYE_TO_WHEEL_M:
				setEyeToWheelM((Double)newValue);
				return;
			case SlopewrightPackage.AEROPLANE_GROUP__EYE_TO_ANTENNA_M:
				setEyeToAntennaM((Double)newValue);
				return;
			case SlopewrightPackage.AEROPLANE_GROUP__SHARE_PERCENT:
				setSharePercent((Double)newValue);
				return;
			case SlopewrightPackage.AEROPLANE_GROUP__LIGHT_NON_TURBOJET:
				setLightNonTurbojet((Boolean)newValue);
				return;
			case SlopewrightPackage.AEROPLANE_GROUP__MAX_SLOPE_DEG:
				setMaxSlopeDeg((Double)newValue);
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
			case SlopewrightPackage.AEROPLANE_GROUP__STATIC_COCKPIT_TO_WHEEL_M:
				setStaticCockpitToWheelM(STATIC_COCKPIT_TO_WHEEL_M_EDEFAULT);
				return;
			case SlopewrightPackage.AEROPLANE_GROUP__EYE_TO_WHEEL_M:
				setEyeToWheelM(EYE_TO_WHEEL_M_EDEFAULT);
				return;
			case SlopewrightPackage.AEROPLANE_GROUP__EYE_TO_ANTENNA_M:
				setEyeToAntennaM(EYE_TO_ANTENNA_M_EDEFAULT);
				return;
			case SlopewrightPackage.AEROPLANE_GROUP__SHARE_PERCENT:
				setSharePercent(SHARE_PERCENT_EDEFAULT);
				return;
			case SlopewrightPackage.AEROPLANE_GROUP__LIGHT_NON_TURBOJET:
				setLightNonTurbojet(LIGHT_NON_TURBOJET_EDEFAULT);
				return;
			case SlopewrightPackage.AEROPLANE_GROUP__MAX_SLOPE_DEG:
				setMaxSlopeDeg(MAX_SLOPE_DEG_EDEFAULT);
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
			case SlopewrightPackage.AEROPLANE_GROUP__STATIC_COCKPIT_TO_WHEEL_M:
				return STATIC_COCKPIT_TO_WHEEL_M_EDEFAULT == null ? staticCockpitToWheelM != null : !STATIC_COCKPIT_TO_WHEEL_M_EDEFAULT.equals(staticCockpitToWheelM);
			case SlopewrightPackage.AEROPLANE_GROUP__EYE_TO_WHEEL_M:
				return EYE_TO_WHEEL_M_EDEFAULT == null ? eyeToWheelM != null : !EYE_TO_WHEEL_M_EDEFAULT.equals(eyeToWheelM);
			case SlopewrightPackage.AEROPLANE_GROUP__EYE_TO_ANTENNA_M:
				return EYE_TO_ANTENNA_M_EDEFAULT == null ? eyeToAntennaM != null : !EYE_TO_ANTENNA_M_EDEFAULT.equals(eyeToAntennaM);
			case SlopewrightPackage.AEROPLANE_GROUP__SHARE_PERCENT:
				return SHARE_PERCENT_EDEFAULT == null ? sharePercent != null : !SHARE_PERCENT_EDEFAULT.equals(sharePercent);
			case SlopewrightPackage.AEROPLANE_GROUP__LIGHT_NON_TURBOJET:
				return LIGHT_NON_TURBOJET_EDEFAULT == null ? lightNonTurbojet != null : !LIGHT_NON_TURBOJET_EDEFAULT.equals(lightNonTurbojet);
			case SlopewrightPackage.AEROPLANE_GROUP__MAX_SLOPE_DEG:
				return MAX_SLOPE_DEG_EDEFAULT == null ? maxSlopeDeg != null : !MAX_SLOPE_DEG_EDEFAULT.equals(maxSlopeDeg);
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
		result.append(" (staticCockpitToWheelM: ");
		result.append(staticCockpitToWheelM);
		result.append(", eyeToWheelM: ");
		result.append(eyeToWheelM);
		result.append(", eyeToAntennaM: ");
		result.append(eyeToAntennaM);
		result.append(", sharePercent: ");
		result.append(sharePercent);
		result.append(", lightNonTurbojet: ");
		result.append(lightNonTurbojet);
		result.append(", maxSlopeDeg: ");
		result.append(maxSlopeDeg);
		result.append(')');
		return result.toString();
	}

} //AeroplaneGroupImpl
