/**
 */
package slopewright.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import slopewright.model.GlidePathAid;
import slopewright.model.GlidePathKind;
import slopewright.model.SlopewrightPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Glide Path Aid</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.GlidePathAidImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link slopewright.model.impl.GlidePathAidImpl#getPathAngleDeg <em>Path Angle Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.GlidePathAidImpl#getReferenceDatumHeightM <em>Reference Datum Height M</em>}</li>
 *   <li>{@link slopewright.model.impl.GlidePathAidImpl#getOriginAlongM <em>Origin Along M</em>}</li>
 *   <li>{@link slopewright.model.impl.GlidePathAidImpl#getAntennaAlongM <em>Antenna Along M</em>}</li>
 *   <li>{@link slopewright.model.impl.GlidePathAidImpl#getAntennaRightM <em>Antenna Right M</em>}</li>
 *   <li>{@link slopewright.model.impl.GlidePathAidImpl#getCriticalAreaLengthM <em>Critical Area Length M</em>}</li>
 *   <li>{@link slopewright.model.impl.GlidePathAidImpl#getCriticalAreaWidthM <em>Critical Area Width M</em>}</li>
 *   <li>{@link slopewright.model.impl.GlidePathAidImpl#getCriticalAreaSource <em>Critical Area Source</em>}</li>
 * </ul>
 *
 * @generated
 */
public class GlidePathAidImpl extends NamedImpl implements GlidePathAid {
	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final GlidePathKind KIND_EDEFAULT = GlidePathKind.ILS;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected GlidePathKind kind = KIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getPathAngleDeg() <em>Path Angle Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPathAngleDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double PATH_ANGLE_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPathAngleDeg() <em>Path Angle Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPathAngleDeg()
	 * @generated
	 * @ordered
	 */
	protected Double pathAngleDeg = PATH_ANGLE_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getReferenceDatumHeightM() <em>Reference Datum Height M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReferenceDatumHeightM()
	 * @generated
	 * @ordered
	 */
	protected static final Double REFERENCE_DATUM_HEIGHT_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getReferenceDatumHeightM() <em>Reference Datum Height M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReferenceDatumHeightM()
	 * @generated
	 * @ordered
	 */
	protected Double referenceDatumHeightM = REFERENCE_DATUM_HEIGHT_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getOriginAlongM() <em>Origin Along M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOriginAlongM()
	 * @generated
	 * @ordered
	 */
	protected static final Double ORIGIN_ALONG_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOriginAlongM() <em>Origin Along M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOriginAlongM()
	 * @generated
	 * @ordered
	 */
	protected Double originAlongM = ORIGIN_ALONG_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getAntennaAlongM() <em>Antenna Along M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAntennaAlongM()
	 * @generated
	 * @ordered
	 */
	protected static final Double ANTENNA_ALONG_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAntennaAlongM() <em>Antenna Along M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAntennaAlongM()
	 * @generated
	 * @ordered
	 */
	protected Double antennaAlongM = ANTENNA_ALONG_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getAntennaRightM() <em>Antenna Right M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAntennaRightM()
	 * @generated
	 * @ordered
	 */
	protected static final Double ANTENNA_RIGHT_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAntennaRightM() <em>Antenna Right M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAntennaRightM()
	 * @generated
	 * @ordered
	 */
	protected Double antennaRightM = ANTENNA_RIGHT_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getCriticalAreaLengthM() <em>Critical Area Length M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCriticalAreaLengthM()
	 * @generated
	 * @ordered
	 */
	protected static final Double CRITICAL_AREA_LENGTH_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCriticalAreaLengthM() <em>Critical Area Length M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCriticalAreaLengthM()
	 * @generated
	 * @ordered
	 */
	protected Double criticalAreaLengthM = CRITICAL_AREA_LENGTH_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getCriticalAreaWidthM() <em>Critical Area Width M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCriticalAreaWidthM()
	 * @generated
	 * @ordered
	 */
	protected static final Double CRITICAL_AREA_WIDTH_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCriticalAreaWidthM() <em>Critical Area Width M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCriticalAreaWidthM()
	 * @generated
	 * @ordered
	 */
	protected Double criticalAreaWidthM = CRITICAL_AREA_WIDTH_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getCriticalAreaSource() <em>Critical Area Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCriticalAreaSource()
	 * @generated
	 * @ordered
	 */
	protected static final String CRITICAL_AREA_SOURCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCriticalAreaSource() <em>Critical Area Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCriticalAreaSource()
	 * @generated
	 * @ordered
	 */
	protected String criticalAreaSource = CRITICAL_AREA_SOURCE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected GlidePathAidImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.GLIDE_PATH_AID;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GlidePathKind getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(GlidePathKind newKind) {
		GlidePathKind oldKind = kind;
		kind = newKind == null ? KIND_EDEFAULT : newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.GLIDE_PATH_AID__KIND, oldKind, kind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPathAngleDeg() {
		return pathAngleDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPathAngleDeg(Double newPathAngleDeg) {
		Double oldPathAngleDeg = pathAngleDeg;
		pathAngleDeg = newPathAngleDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.GLIDE_PATH_AID__PATH_ANGLE_DEG, oldPathAngleDeg, pathAngleDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getReferenceDatumHeightM() {
		return referenceDatumHeightM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReferenceDatumHeightM(Double newReferenceDatumHeightM) {
		Double oldReferenceDatumHeightM = referenceDatumHeightM;
		referenceDatumHeightM = newReferenceDatumHeightM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.GLIDE_PATH_AID__REFERENCE_DATUM_HEIGHT_M, oldReferenceDatumHeightM, referenceDatumHeightM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getOriginAlongM() {
		return originAlongM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOriginAlongM(Double newOriginAlongM) {
		Double oldOriginAlongM = originAlongM;
		originAlongM = newOriginAlongM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.GLIDE_PATH_AID__ORIGIN_ALONG_M, oldOriginAlongM, originAlongM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getAntennaAlongM() {
		return antennaAlongM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAntennaAlongM(Double newAntennaAlongM) {
		Double oldAntennaAlongM = antennaAlongM;
		antennaAlongM = newAntennaAlongM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.GLIDE_PATH_AID__ANTENNA_ALONG_M, oldAntennaAlongM, antennaAlongM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getAntennaRightM() {
		return antennaRightM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAntennaRightM(Double newAntennaRightM) {
		Double oldAntennaRightM = antennaRightM;
		antennaRightM = newAntennaRightM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.GLIDE_PATH_AID__ANTENNA_RIGHT_M, oldAntennaRightM, antennaRightM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getCriticalAreaLengthM() {
		return criticalAreaLengthM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCriticalAreaLengthM(Double newCriticalAreaLengthM) {
		Double oldCriticalAreaLengthM = criticalAreaLengthM;
		criticalAreaLengthM = newCriticalAreaLengthM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.GLIDE_PATH_AID__CRITICAL_AREA_LENGTH_M, oldCriticalAreaLengthM, criticalAreaLengthM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getCriticalAreaWidthM() {
		return criticalAreaWidthM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCriticalAreaWidthM(Double newCriticalAreaWidthM) {
		Double oldCriticalAreaWidthM = criticalAreaWidthM;
		criticalAreaWidthM = newCriticalAreaWidthM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.GLIDE_PATH_AID__CRITICAL_AREA_WIDTH_M, oldCriticalAreaWidthM, criticalAreaWidthM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCriticalAreaSource() {
		return criticalAreaSource;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCriticalAreaSource(String newCriticalAreaSource) {
		String oldCriticalAreaSource = criticalAreaSource;
		criticalAreaSource = newCriticalAreaSource;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.GLIDE_PATH_AID__CRITICAL_AREA_SOURCE, oldCriticalAreaSource, criticalAreaSource));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case SlopewrightPackage.GLIDE_PATH_AID__KIND:
				return getKind();
			case SlopewrightPackage.GLIDE_PATH_AID__PATH_ANGLE_DEG:
				return getPathAngleDeg();
			case SlopewrightPackage.GLIDE_PATH_AID__REFERENCE_DATUM_HEIGHT_M:
				return getReferenceDatumHeightM();
			case SlopewrightPackage.GLIDE_PATH_AID__ORIGIN_ALONG_M:
				return getOriginAlongM();
			case SlopewrightPackage.GLIDE_PATH_AID__ANTENNA_ALONG_M:
				return getAntennaAlongM();
			case SlopewrightPackage.GLIDE_PATH_AID__ANTENNA_RIGHT_M:
				return getAntennaRightM();
			case SlopewrightPackage.GLIDE_PATH_AID__CRITICAL_AREA_LENGTH_M:
				return getCriticalAreaLengthM();
			case SlopewrightPackage.GLIDE_PATH_AID__CRITICAL_AREA_WIDTH_M:
				return getCriticalAreaWidthM();
			case SlopewrightPackage.GLIDE_PATH_AID__CRITICAL_AREA_SOURCE:
				return getCriticalAreaSource();
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
			case SlopewrightPackage.GLIDE_PATH_AID__KIND:
				setKind((GlidePathKind)newValue);
				return;
			case SlopewrightPackage.GLIDE_PATH_AID__PATH_ANGLE_DEG:
				setPathAngleDeg((Double)newValue);
				return;
			case SlopewrightPackage.GLIDE_PATH_AID__REFERENCE_DATUM_HEIGHT_M:
				setReferenceDatumHeightM((Double)newValue);
				return;
			case SlopewrightPackage.GLIDE_PATH_AID__ORIGIN_ALONG_M:
				setOriginAlongM((Double)newValue);
				return;
			case SlopewrightPackage.GLIDE_PATH_AID__ANTENNA_ALONG_M:
				setAntennaAlongM((Double)newValue);
				return;
			case SlopewrightPackage.GLIDE_PATH_AID__ANTENNA_RIGHT_M:
				setAntennaRightM((Double)newValue);
				return;
			case SlopewrightPackage.GLIDE_PATH_AID__CRITICAL_AREA_LENGTH_M:
				setCriticalAreaLengthM((Double)newValue);
				return;
			case SlopewrightPackage.GLIDE_PATH_AID__CRITICAL_AREA_WIDTH_M:
				setCriticalAreaWidthM((Double)newValue);
				return;
			case SlopewrightPackage.GLIDE_PATH_AID__CRITICAL_AREA_SOURCE:
				setCriticalAreaSource((String)newValue);
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
			case SlopewrightPackage.GLIDE_PATH_AID__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case SlopewrightPackage.GLIDE_PATH_AID__PATH_ANGLE_DEG:
				setPathAngleDeg(PATH_ANGLE_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.GLIDE_PATH_AID__REFERENCE_DATUM_HEIGHT_M:
				setReferenceDatumHeightM(REFERENCE_DATUM_HEIGHT_M_EDEFAULT);
				return;
			case SlopewrightPackage.GLIDE_PATH_AID__ORIGIN_ALONG_M:
				setOriginAlongM(ORIGIN_ALONG_M_EDEFAULT);
				return;
			case SlopewrightPackage.GLIDE_PATH_AID__ANTENNA_ALONG_M:
				setAntennaAlongM(ANTENNA_ALONG_M_EDEFAULT);
				return;
			case SlopewrightPackage.GLIDE_PATH_AID__ANTENNA_RIGHT_M:
				setAntennaRightM(ANTENNA_RIGHT_M_EDEFAULT);
				return;
			case SlopewrightPackage.GLIDE_PATH_AID__CRITICAL_AREA_LENGTH_M:
				setCriticalAreaLengthM(CRITICAL_AREA_LENGTH_M_EDEFAULT);
				return;
			case SlopewrightPackage.GLIDE_PATH_AID__CRITICAL_AREA_WIDTH_M:
				setCriticalAreaWidthM(CRITICAL_AREA_WIDTH_M_EDEFAULT);
				return;
			case SlopewrightPackage.GLIDE_PATH_AID__CRITICAL_AREA_SOURCE:
				setCriticalAreaSource(CRITICAL_AREA_SOURCE_EDEFAULT);
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
			case SlopewrightPackage.GLIDE_PATH_AID__KIND:
				return kind != KIND_EDEFAULT;
			case SlopewrightPackage.GLIDE_PATH_AID__PATH_ANGLE_DEG:
				return PATH_ANGLE_DEG_EDEFAULT == null ? pathAngleDeg != null : !PATH_ANGLE_DEG_EDEFAULT.equals(pathAngleDeg);
			case SlopewrightPackage.GLIDE_PATH_AID__REFERENCE_DATUM_HEIGHT_M:
				return REFERENCE_DATUM_HEIGHT_M_EDEFAULT == null ? referenceDatumHeightM != null : !REFERENCE_DATUM_HEIGHT_M_EDEFAULT.equals(referenceDatumHeightM);
			case SlopewrightPackage.GLIDE_PATH_AID__ORIGIN_ALONG_M:
				return ORIGIN_ALONG_M_EDEFAULT == null ? originAlongM != null : !ORIGIN_ALONG_M_EDEFAULT.equals(originAlongM);
			case SlopewrightPackage.GLIDE_PATH_AID__ANTENNA_ALONG_M:
				return ANTENNA_ALONG_M_EDEFAULT == null ? antennaAlongM != null : !ANTENNA_ALONG_M_EDEFAULT.equals(antennaAlongM);
			case SlopewrightPackage.GLIDE_PATH_AID__ANTENNA_RIGHT_M:
				return ANTENNA_RIGHT_M_EDEFAULT == null ? antennaRightM != null : !ANTENNA_RIGHT_M_EDEFAULT.equals(antennaRightM);
			case SlopewrightPackage.GLIDE_PATH_AID__CRITICAL_AREA_LENGTH_M:
				return CRITICAL_AREA_LENGTH_M_EDEFAULT == null ? criticalAreaLengthM != null : !CRITICAL_AREA_LENGTH_M_EDEFAULT.equals(criticalAreaLengthM);
			case SlopewrightPackage.GLIDE_PATH_AID__CRITICAL_AREA_WIDTH_M:
				return CRITICAL_AREA_WIDTH_M_EDEFAULT == null ? criticalAreaWidthM != null : !CRITICAL_AREA_WIDTH_M_EDEFAULT.equals(criticalAreaWidthM);
			case SlopewrightPackage.GLIDE_PATH_AID__CRITICAL_AREA_SOURCE:
				return CRITICAL_AREA_SOURCE_EDEFAULT == null ? criticalAreaSource != null : !CRITICAL_AREA_SOURCE_EDEFAULT.equals(criticalAreaSource);
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
		result.append(" (kind: ");
		result.append(kind);
		result.append(", pathAngleDeg: ");
		result.append(pathAngleDeg);
		result.append(", referenceDatumHeightM: ");
		result.append(referenceDatumHeightM);
		result.append(", originAlongM: ");
		result.append(originAlongM);
		result.append(", antennaAlongM: ");
		result.append(antennaAlongM);
		result.append(", antennaRightM: ");
		result.append(antennaRightM);
		result.append(", criticalAreaLengthM: ");
		result.append(criticalAreaLengthM);
		result.append(", criticalAreaWidthM: ");
		result.append(criticalAreaWidthM);
		result.append(", criticalAreaSource: ");
		result.append(criticalAreaSource);
		result.append(')');
		return result.toString();
	}

} //GlidePathAidImpl
