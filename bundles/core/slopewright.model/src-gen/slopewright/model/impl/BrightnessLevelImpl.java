/**
 */
package slopewright.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import slopewright.model.BrightnessLevel;
import slopewright.model.SlopewrightPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Brightness Level</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.BrightnessLevelImpl#getPowerPercent <em>Power Percent</em>}</li>
 * </ul>
 *
 * @generated
 */
public class BrightnessLevelImpl extends IdentifiedImpl implements BrightnessLevel {
	/**
	 * The default value of the '{@link #getPowerPercent() <em>Power Percent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPowerPercent()
	 * @generated
	 * @ordered
	 */
	protected static final Double POWER_PERCENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPowerPercent() <em>Power Percent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPowerPercent()
	 * @generated
	 * @ordered
	 */
	protected Double powerPercent = POWER_PERCENT_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected BrightnessLevelImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.BRIGHTNESS_LEVEL;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPowerPercent() {
		return powerPercent;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPowerPercent(Double newPowerPercent) {
		Double oldPowerPercent = powerPercent;
		powerPercent = newPowerPercent;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.BRIGHTNESS_LEVEL__POWER_PERCENT, oldPowerPercent, powerPercent));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case SlopewrightPackage.BRIGHTNESS_LEVEL__POWER_PERCENT:
				return getPowerPercent();
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
			case SlopewrightPackage.BRIGHTNESS_LEVEL__POWER_PERCENT:
				setPowerPercent((Double)newValue);
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
			case SlopewrightPackage.BRIGHTNESS_LEVEL__POWER_PERCENT:
				setPowerPercent(POWER_PERCENT_EDEFAULT);
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
			case SlopewrightPackage.BRIGHTNESS_LEVEL__POWER_PERCENT:
				return POWER_PERCENT_EDEFAULT == null ? powerPercent != null : !POWER_PERCENT_EDEFAULT.equals(powerPercent);
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
		result.append(" (powerPercent: ");
		result.append(powerPercent);
		result.append(')');
		return result.toString();
	}

} //BrightnessLevelImpl
