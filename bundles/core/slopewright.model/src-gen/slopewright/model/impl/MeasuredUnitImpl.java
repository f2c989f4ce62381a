/**
 */
package slopewright.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import slopewright.model.MeasuredUnit;
import slopewright.model.SlopewrightPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Measured Unit</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.MeasuredUnitImpl#getSettingDeg <em>Setting Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.MeasuredUnitImpl#getAlongM <em>Along M</em>}</li>
 *   <li>{@link slopewright.model.impl.MeasuredUnitImpl#getRightM <em>Right M</em>}</li>
 *   <li>{@link slopewright.model.impl.MeasuredUnitImpl#getLensElevationM <em>Lens Elevation M</em>}</li>
 *   <li>{@link slopewright.model.impl.MeasuredUnitImpl#getPerson <em>Person</em>}</li>
 *   <li>{@link slopewright.model.impl.MeasuredUnitImpl#getDate <em>Date</em>}</li>
 *   <li>{@link slopewright.model.impl.MeasuredUnitImpl#getInstrument <em>Instrument</em>}</li>
 * </ul>
 *
 * @generated
 */
public class MeasuredUnitImpl extends IdentifiedImpl implements MeasuredUnit {
	/**
	 * The default value of the '{@link #getSettingDeg() <em>Setting Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSettingDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double SETTING_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSettingDeg() <em>Setting Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSettingDeg()
	 * @generated
	 * @ordered
	 */
	protected Double settingDeg = SETTING_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getAlongM() <em>Along M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAlongM()
	 * @generated
	 * @ordered
	 */
	protected static final Double ALONG_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAlongM() <em>Along M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAlongM()
	 * @generated
	 * @ordered
	 */
	protected Double alongM = ALONG_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getRightM() <em>Right M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRightM()
	 * @generated
	 * @ordered
	 */
	protected static final Double RIGHT_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRightM() <em>Right M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRightM()
	 * @generated
	 * @ordered
	 */
	protected Double rightM = RIGHT_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getLensElevationM() <em>Lens Elevation M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLensElevationM()
	 * @generated
	 * @ordered
	 */
	protected static final Double LENS_ELEVATION_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLensElevationM() <em>Lens Elevation M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLensElevationM()
	 * @generated
	 * @ordered
	 */
	protected Double lensElevationM = LENS_ELEVATION_M_EDEFAULT;

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
	 * The default value of the '{@link #getInstrument() <em>Instrument</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInstrument()
	 * @generated
	 * @ordered
	 */
	protected static final String INSTRUMENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getInstrument() <em>Instrument</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInstrument()
	 * @generated
	 * @ordered
	 */
	protected String instrument = INSTRUMENT_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected MeasuredUnitImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.MEASURED_UNIT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getSettingDeg() {
		return settingDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSettingDeg(Double newSettingDeg) {
		Double oldSettingDeg = settingDeg;
		settingDeg = newSettingDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.MEASURED_UNIT__SETTING_DEG, oldSettingDeg, settingDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getAlongM() {
		return alongM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAlongM(Double newAlongM) {
		Double oldAlongM = alongM;
		alongM = newAlongM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.MEASURED_UNIT__ALONG_M, oldAlongM, alongM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getRightM() {
		return rightM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRightM(Double newRightM) {
		Double oldRightM = rightM;
		rightM = newRightM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.MEASURED_UNIT__RIGHT_M, oldRightM, rightM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getLensElevationM() {
		return lensElevationM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLensElevationM(Double newLensElevationM) {
		Double oldLensElevationM = lensElevationM;
		lensElevationM = newLensElevationM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.MEASURED_UNIT__LENS_ELEVATION_M, oldLensElevationM, lensElevationM));
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
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.MEASURED_UNIT__PERSON, oldPerson, person));
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
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.MEASURED_UNIT__DATE, oldDate, date));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getInstrument() {
		return instrument;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInstrument(String newInstrument) {
		String oldInstrument = instrument;
		instrument = newInstrument;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.MEASURED_UNIT__INSTRUMENT, oldInstrument, instrument));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case SlopewrightPackage.MEASURED_UNIT__SETTING_DEG:
				return getSettingDeg();
			case SlopewrightPackage.MEASURED_UNIT__ALONG_M:
				return getAlongM();
			case SlopewrightPackage.MEASURED_UNIT__RIGHT_M:
				return getRightM();
			case SlopewrightPackage.MEASURED_UNIT__LENS_ELEVATION_M:
				return getLensElevationM();
			case SlopewrightPackage.MEASURED_UNIT__PERSON:
				return getPerson();
			case SlopewrightPackage.MEASURED_UNIT__DATE:
				return getDate();
			case SlopewrightPackage.MEASURED_UNIT__INSTRUMENT:
				return getInstrument();
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
			case SlopewrightPackage.MEASURED_UNIT__SETTING_DEG:
				setSettingDeg((Double)newValue);
				return;
			case SlopewrightPackage.MEASURED_UNIT__ALONG_M:
				setAlongM((Double)newValue);
				return;
			case SlopewrightPackage.MEASURED_UNIT__RIGHT_M:
				setRightM((Double)newValue);
				return;
			case SlopewrightPackage.MEASURED_UNIT__LENS_ELEVATION_M:
				setLensElevationM((Double)newValue);
				return;
			case SlopewrightPackage.MEASURED_UNIT__PERSON:
				setPerson((String)newValue);
				return;
			case SlopewrightPackage.MEASURED_UNIT__DATE:
				setDate((String)newValue);
				return;
			case SlopewrightPackage.MEASURED_UNIT__INSTRUMENT:
				setInstrument((String)newValue);
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
			case SlopewrightPackage.MEASURED_UNIT__SETTING_DEG:
				setSettingDeg(SETTING_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.MEASURED_UNIT__ALONG_M:
				setAlongM(ALONG_M_EDEFAULT);
				return;
			case SlopewrightPackage.MEASURED_UNIT__RIGHT_M:
				setRightM(RIGHT_M_EDEFAULT);
				return;
			case SlopewrightPackage.MEASURED_UNIT__LENS_ELEVATION_M:
				setLensElevationM(LENS_ELEVATION_M_EDEFAULT);
				return;
			case SlopewrightPackage.MEASURED_UNIT__PERSON:
				setPerson(PERSON_EDEFAULT);
				return;
			case SlopewrightPackage.MEASURED_UNIT__DATE:
				setDate(DATE_EDEFAULT);
				return;
			case SlopewrightPackage.MEASURED_UNIT__INSTRUMENT:
				setInstrument(INSTRUMENT_EDEFAULT);
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
			case SlopewrightPackage.MEASURED_UNIT__SETTING_DEG:
				return SETTING_DEG_EDEFAULT == null ? settingDeg != null : !SETTING_DEG_EDEFAULT.equals(settingDeg);
			case SlopewrightPackage.MEASURED_UNIT__ALONG_M:
				return ALONG_M_EDEFAULT == null ? alongM != null : !ALONG_M_EDEFAULT.equals(alongM);
			case SlopewrightPackage.MEASURED_UNIT__RIGHT_M:
				return RIGHT_M_EDEFAULT == null ? rightM != null : !RIGHT_M_EDEFAULT.equals(rightM);
			case SlopewrightPackage.MEASURED_UNIT__LENS_ELEVATION_M:
				return LENS_ELEVATION_M_EDEFAULT == null ? lensElevationM != null : !LENS_ELEVATION_M_EDEFAULT.equals(lensElevationM);
			case SlopewrightPackage.MEASURED_UNIT__PERSON:
				return PERSON_EDEFAULT == null ? person != null : !PERSON_EDEFAULT.equals(person);
			case SlopewrightPackage.MEASURED_UNIT__DATE:
				return DATE_EDEFAULT == null ? date != null : !DATE_EDEFAULT.equals(date);
			case SlopewrightPackage.MEASURED_UNIT__INSTRUMENT:
				return INSTRUMENT_EDEFAULT == null ? instrument != null : !INSTRUMENT_EDEFAULT.equals(instrument);
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
		result.append(" (settingDeg: ");
		result.append(settingDeg);
		result.append(", alongM: ");
		result.append(alongM);
		result.append(", rightM: ");
		result.append(rightM);
		result.append(", lensElevationM: ");
		result.append(lensElevationM);
		result.append(", person: ");
		result.append(person);
		result.append(", date: ");
		result.append(date);
		result.append(", instrument: ");
		result.append(instrument);
		result.append(')');
		return result.toString();
	}

} //MeasuredUnitImpl
