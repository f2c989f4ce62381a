/**
 */
package slopewright.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import slopewright.model.MagneticVariation;
import slopewright.model.SlopewrightPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Magnetic Variation</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.MagneticVariationImpl#getVariationDeg <em>Variation Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.MagneticVariationImpl#getAnnualChangeDeg <em>Annual Change Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.MagneticVariationImpl#getDate <em>Date</em>}</li>
 *   <li>{@link slopewright.model.impl.MagneticVariationImpl#getSource <em>Source</em>}</li>
 * </ul>
 *
 * @generated
 */
public class MagneticVariationImpl extends IdentifiedImpl implements MagneticVariation {
	/**
	 * The default value of the '{@link #getVariationDeg() <em>Variation Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVariationDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double VARIATION_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getVariationDeg() <em>Variation Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVariationDeg()
	 * @generated
	 * @ordered
	 */
	protected Double variationDeg = VARIATION_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getAnnualChangeDeg() <em>Annual Change Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAnnualChangeDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double ANNUAL_CHANGE_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAnnualChangeDeg() <em>Annual Change Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAnnualChangeDeg()
	 * @generated
	 * @ordered
	 */
	protected Double annualChangeDeg = ANNUAL_CHANGE_DEG_EDEFAULT;

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
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected MagneticVariationImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.MAGNETIC_VARIATION;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getVariationDeg() {
		return variationDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVariationDeg(Double newVariationDeg) {
		Double oldVariationDeg = variationDeg;
		variationDeg = newVariationDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.MAGNETIC_VARIATION__VARIATION_DEG, oldVariationDeg, variationDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getAnnualChangeDeg() {
		return annualChangeDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAnnualChangeDeg(Double newAnnualChangeDeg) {
		Double oldAnnualChangeDeg = annualChangeDeg;
		annualChangeDeg = newAnnualChangeDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.MAGNETIC_VARIATION__ANNUAL_CHANGE_DEG, oldAnnualChangeDeg, annualChangeDeg));
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
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.MAGNETIC_VARIATION__DATE, oldDate, date));
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
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.MAGNETIC_VARIATION__SOURCE, oldSource, source));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case SlopewrightPackage.MAGNETIC_VARIATION__VARIATION_DEG:
				return getVariationDeg();
			case SlopewrightPackage.MAGNETIC_VARIATION__ANNUAL_CHANGE_DEG:
				return getAnnualChangeDeg();
			case SlopewrightPackage.MAGNETIC_VARIATION__DATE:
				return getDate();
			case SlopewrightPackage.MAGNETIC_VARIATION__SOURCE:
				return getSource();
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
			case SlopewrightPackage.MAGNETIC_VARIATION__VARIATION_DEG:
				setVariationDeg((Double)newValue);
				return;
			case SlopewrightPackage.MAGNETIC_VARIATION__ANNUAL_CHANGE_DEG:
				setAnnualChangeDeg((Double)newValue);
				return;
			case SlopewrightPackage.MAGNETIC_VARIATION__DATE:
				setDate((String)newValue);
				return;
			case SlopewrightPackage.MAGNETIC_VARIATION__SOURCE:
				setSource((String)newValue);
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
			case SlopewrightPackage.MAGNETIC_VARIATION__VARIATION_DEG:
				setVariationDeg(VARIATION_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.MAGNETIC_VARIATION__ANNUAL_CHANGE_DEG:
				setAnnualChangeDeg(ANNUAL_CHANGE_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.MAGNETIC_VARIATION__DATE:
				setDate(DATE_EDEFAULT);
				return;
			case SlopewrightPackage.MAGNETIC_VARIATION__SOURCE:
				setSource(SOURCE_EDEFAULT);
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
			case SlopewrightPackage.MAGNETIC_VARIATION__VARIATION_DEG:
				return VARIATION_DEG_EDEFAULT == null ? variationDeg != null : !VARIATION_DEG_EDEFAULT.equals(variationDeg);
			case SlopewrightPackage.MAGNETIC_VARIATION__ANNUAL_CHANGE_DEG:
				return ANNUAL_CHANGE_DEG_EDEFAULT == null ? annualChangeDeg != null : !ANNUAL_CHANGE_DEG_EDEFAULT.equals(annualChangeDeg);
			case SlopewrightPackage.MAGNETIC_VARIATION__DATE:
				return DATE_EDEFAULT == null ? date != null : !DATE_EDEFAULT.equals(date);
			case SlopewrightPackage.MAGNETIC_VARIATION__SOURCE:
				return SOURCE_EDEFAULT == null ? source != null : !SOURCE_EDEFAULT.equals(source);
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
		result.append(" (variationDeg: ");
		result.append(variationDeg);
		result.append(", annualChangeDeg: ");
		result.append(annualChangeDeg);
		result.append(", date: ");
		result.append(date);
		result.append(", source: ");
		result.append(source);
		result.append(')');
		return result.toString();
	}

} //MagneticVariationImpl
