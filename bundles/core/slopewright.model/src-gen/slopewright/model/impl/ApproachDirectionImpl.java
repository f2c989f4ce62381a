/**
 */
package slopewright.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import slopewright.model.ApproachDirection;
import slopewright.model.SlopewrightPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Approach Direction</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.ApproachDirectionImpl#getTrueBearingDeg <em>True Bearing Deg</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ApproachDirectionImpl extends ApproachHostImpl implements ApproachDirection {
	/**
	 * The default value of the '{@link #getTrueBearingDeg() <em>True Bearing Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTrueBearingDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double TRUE_BEARING_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTrueBearingDeg() <em>True Bearing Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTrueBearingDeg()
	 * @generated
	 * @ordered
	 */
	protected Double trueBearingDeg = TRUE_BEARING_DEG_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ApproachDirectionImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.APPROACH_DIRECTION;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getTrueBearingDeg() {
		return trueBearingDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTrueBearingDeg(Double newTrueBearingDeg) {
		Double oldTrueBearingDeg = trueBearingDeg;
		trueBearingDeg = newTrueBearingDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.APPROACH_DIRECTION__TRUE_BEARING_DEG, oldTrueBearingDeg, trueBearingDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case SlopewrightPackage.APPROACH_DIRECTION__TRUE_BEARING_DEG:
				return getTrueBearingDeg();
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
			case SlopewrightPackage.APPROACH_DIRECTION__TRUE_BEARING_DEG:
				setTrueBearingDeg((Double)newValue);
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
			case SlopewrightPackage.APPROACH_DIRECTION__TRUE_BEARING_DEG:
				setTrueBearingDeg(TRUE_BEARING_DEG_EDEFAULT);
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
			case SlopewrightPackage.APPROACH_DIRECTION__TRUE_BEARING_DEG:
				return TRUE_BEARING_DEG_EDEFAULT == null ? trueBearingDeg != null : !TRUE_BEARING_DEG_EDEFAULT.equals(trueBearingDeg);
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
		result.append(" (trueBearingDeg: ");
		result.append(trueBearingDeg);
		result.append(')');
		return result.toString();
	}

} //ApproachDirectionImpl
