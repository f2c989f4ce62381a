/**
 */
package slopewright.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import slopewright.model.LightColour;
import slopewright.model.MeasuredIntensity;
import slopewright.model.SlopewrightPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Measured Intensity</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.MeasuredIntensityImpl#getColour <em>Colour</em>}</li>
 *   <li>{@link slopewright.model.impl.MeasuredIntensityImpl#getAzimuthDeg <em>Azimuth Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.MeasuredIntensityImpl#getElevationDeg <em>Elevation Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.MeasuredIntensityImpl#getIntensityCd <em>Intensity Cd</em>}</li>
 * </ul>
 *
 * @generated
 */
public class MeasuredIntensityImpl extends IdentifiedImpl implements MeasuredIntensity {
	/**
	 * The default value of the '{@link #getColour() <em>Colour</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getColour()
	 * @generated
	 * @ordered
	 */
	protected static final LightColour COLOUR_EDEFAULT = LightColour.NONE;

	/**
	 * The cached value of the '{@link #getColour() <em>Colour</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getColour()
	 * @generated
	 * @ordered
	 */
	protected LightColour colour = COLOUR_EDEFAULT;

	/**
	 * The default value of the '{@link #getAzimuthDeg() <em>Azimuth Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAzimuthDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double AZIMUTH_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAzimuthDeg() <em>Azimuth Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAzimuthDeg()
	 * @generated
	 * @ordered
	 */
	protected Double azimuthDeg = AZIMUTH_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getElevationDeg() <em>Elevation Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getElevationDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double ELEVATION_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getElevationDeg() <em>Elevation Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getElevationDeg()
	 * @generated
	 * @ordered
	 */
	protected Double elevationDeg = ELEVATION_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getIntensityCd() <em>Intensity Cd</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIntensityCd()
	 * @generated
	 * @ordered
	 */
	protected static final Double INTENSITY_CD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getIntensityCd() <em>Intensity Cd</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIntensityCd()
	 * @generated
	 * @ordered
	 */
	protected Double intensityCd = INTENSITY_CD_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected MeasuredIntensityImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.MEASURED_INTENSITY;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LightColour getColour() {
		return colour;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setColour(LightColour newColour) {
		LightColour oldColour = colour;
		colour = newColour == null ? COLOUR_EDEFAULT : newColour;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.MEASURED_INTENSITY__COLOUR, oldColour, colour));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getAzimuthDeg() {
		return azimuthDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAzimuthDeg(Double newAzimuthDeg) {
		Double oldAzimuthDeg = azimuthDeg;
		azimuthDeg = newAzimuthDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.MEASURED_INTENSITY__AZIMUTH_DEG, oldAzimuthDeg, azimuthDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getElevationDeg() {
		return elevationDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setElevationDeg(Double newElevationDeg) {
		Double oldElevationDeg = elevationDeg;
		elevationDeg = newElevationDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.MEASURED_INTENSITY__ELEVATION_DEG, oldElevationDeg, elevationDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getIntensityCd() {
		return intensityCd;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setIntensityCd(Double newIntensityCd) {
		Double oldIntensityCd = intensityCd;
		intensityCd = newIntensityCd;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.MEASURED_INTENSITY__INTENSITY_CD, oldIntensityCd, intensityCd));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case SlopewrightPackage.MEASURED_INTENSITY__COLOUR:
				return getColour();
			case SlopewrightPackage.MEASURED_INTENSITY__AZIMUTH_DEG:
				return getAzimuthDeg();
			case SlopewrightPackage.MEASURED_INTENSITY__ELEVATION_DEG:
				return getElevationDeg();
			case SlopewrightPackage.MEASURED_INTENSITY__INTENSITY_CD:
				return getIntensityCd();
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
			case SlopewrightPackage.MEASURED_INTENSITY__COLOUR:
				setColour((LightColour)newValue);
				return;
			case SlopewrightPackage.MEASURED_INTENSITY__AZIMUTH_DEG:
				setAzimuthDeg((Double)newValue);
				return;
			case SlopewrightPackage.MEASURED_INTENSITY__ELEVATION_DEG:
				setElevationDeg((Double)newValue);
				return;
			case SlopewrightPackage.MEASURED_INTENSITY__INTENSITY_CD:
				setIntensityCd((Double)newValue);
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
			case SlopewrightPackage.MEASURED_INTENSITY__COLOUR:
				setColour(COLOUR_EDEFAULT);
				return;
			case SlopewrightPackage.MEASURED_INTENSITY__AZIMUTH_DEG:
				setAzimuthDeg(AZIMUTH_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.MEASURED_INTENSITY__ELEVATION_DEG:
				setElevationDeg(ELEVATION_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.MEASURED_INTENSITY__INTENSITY_CD:
				setIntensityCd(INTENSITY_CD_EDEFAULT);
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
			case SlopewrightPackage.MEASURED_INTENSITY__COLOUR:
				return colour != COLOUR_EDEFAULT;
			case SlopewrightPackage.MEASURED_INTENSITY__AZIMUTH_DEG:
				return AZIMUTH_DEG_EDEFAULT == null ? azimuthDeg != null : !AZIMUTH_DEG_EDEFAULT.equals(azimuthDeg);
			case SlopewrightPackage.MEASURED_INTENSITY__ELEVATION_DEG:
				return ELEVATION_DEG_EDEFAULT == null ? elevationDeg != null : !ELEVATION_DEG_EDEFAULT.equals(elevationDeg);
			case SlopewrightPackage.MEASURED_INTENSITY__INTENSITY_CD:
				return INTENSITY_CD_EDEFAULT == null ? intensityCd != null : !INTENSITY_CD_EDEFAULT.equals(intensityCd);
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
		result.append(" (colour: ");
		result.append(colour);
		result.append(", azimuthDeg: ");
		result.append(azimuthDeg);
		result.append(", elevationDeg: ");
		result.append(elevationDeg);
		result.append(", intensityCd: ");
		result.append(intensityCd);
		result.append(')');
		return result.toString();
	}

} //MeasuredIntensityImpl
