/**
 */
package slopewright.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import slopewright.model.PrintedDescent;
import slopewright.model.SlopewrightPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Printed Descent</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.PrintedDescentImpl#getSpeedKt <em>Speed Kt</em>}</li>
 *   <li>{@link slopewright.model.impl.PrintedDescentImpl#getDescentFtmin <em>Descent Ftmin</em>}</li>
 *   <li>{@link slopewright.model.impl.PrintedDescentImpl#getSlopeDeg <em>Slope Deg</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PrintedDescentImpl extends IdentifiedImpl implements PrintedDescent {
	/**
	 * The default value of the '{@link #getSpeedKt() <em>Speed Kt</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpeedKt()
	 * @generated
	 * @ordered
	 */
	protected static final Double SPEED_KT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSpeedKt() <em>Speed Kt</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpeedKt()
	 * @generated
	 * @ordered
	 */
	protected Double speedKt = SPEED_KT_EDEFAULT;

	/**
	 * The default value of the '{@link #getDescentFtmin() <em>Descent Ftmin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDescentFtmin()
	 * @generated
	 * @ordered
	 */
	protected static final Double DESCENT_FTMIN_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDescentFtmin() <em>Descent Ftmin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDescentFtmin()
	 * @generated
	 * @ordered
	 */
	protected Double descentFtmin = DESCENT_FTMIN_EDEFAULT;

	/**
	 * The default value of the '{@link #getSlopeDeg() <em>Slope Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSlopeDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double SLOPE_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSlopeDeg() <em>Slope Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSlopeDeg()
	 * @generated
	 * @ordered
	 */
	protected Double slopeDeg = SLOPE_DEG_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PrintedDescentImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.PRINTED_DESCENT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getSpeedKt() {
		return speedKt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSpeedKt(Double newSpeedKt) {
		Double oldSpeedKt = speedKt;
		speedKt = newSpeedKt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.PRINTED_DESCENT__SPEED_KT, oldSpeedKt, speedKt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getDescentFtmin() {
		return descentFtmin;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDescentFtmin(Double newDescentFtmin) {
		Double oldDescentFtmin = descentFtmin;
		descentFtmin = newDescentFtmin;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.PRINTED_DESCENT__DESCENT_FTMIN, oldDescentFtmin, descentFtmin));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getSlopeDeg() {
		return slopeDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSlopeDeg(Double newSlopeDeg) {
		Double oldSlopeDeg = slopeDeg;
		slopeDeg = newSlopeDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.PRINTED_DESCENT__SLOPE_DEG, oldSlopeDeg, slopeDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case SlopewrightPackage.PRINTED_DESCENT__SPEED_KT:
				return getSpeedKt();
			case SlopewrightPackage.PRINTED_DESCENT__DESCENT_FTMIN:
				return getDescentFtmin();
			case SlopewrightPackage.PRINTED_DESCENT__SLOPE_DEG:
				return getSlopeDeg();
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
			case SlopewrightPackage.PRINTED_DESCENT__SPEED_KT:
				setSpeedKt((Double)newValue);
				return;
			case SlopewrightPackage.PRINTED_DESCENT__DESCENT_FTMIN:
				setDescentFtmin((Double)newValue);
				return;
			case SlopewrightPackage.PRINTED_DESCENT__SLOPE_DEG:
				setSlopeDeg((Double)newValue);
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
			case SlopewrightPackage.PRINTED_DESCENT__SPEED_KT:
				setSpeedKt(SPEED_KT_EDEFAULT);
				return;
			case SlopewrightPackage.PRINTED_DESCENT__DESCENT_FTMIN:
				setDescentFtmin(DESCENT_FTMIN_EDEFAULT);
				return;
			case SlopewrightPackage.PRINTED_DESCENT__SLOPE_DEG:
				setSlopeDeg(SLOPE_DEG_EDEFAULT);
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
			case SlopewrightPackage.PRINTED_DESCENT__SPEED_KT:
				return SPEED_KT_EDEFAULT == null ? speedKt != null : !SPEED_KT_EDEFAULT.equals(speedKt);
			case SlopewrightPackage.PRINTED_DESCENT__DESCENT_FTMIN:
				return DESCENT_FTMIN_EDEFAULT == null ? descentFtmin != null : !DESCENT_FTMIN_EDEFAULT.equals(descentFtmin);
			case SlopewrightPackage.PRINTED_DESCENT__SLOPE_DEG:
				return SLOPE_DEG_EDEFAULT == null ? slopeDeg != null : !SLOPE_DEG_EDEFAULT.equals(slopeDeg);
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
		result.append(" (speedKt: ");
		result.append(speedKt);
		result.append(", descentFtmin: ");
		result.append(descentFtmin);
		result.append(", slopeDeg: ");
		result.append(slopeDeg);
		result.append(')');
		return result.toString();
	}

} //PrintedDescentImpl
