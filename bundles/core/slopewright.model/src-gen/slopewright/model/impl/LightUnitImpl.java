/**
 */
package slopewright.model.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import slopewright.model.LightUnit;
import slopewright.model.MeasuredUnit;
import slopewright.model.SlopewrightPackage;
import slopewright.model.Transition;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Light Unit</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.LightUnitImpl#getLabel <em>Label</em>}</li>
 *   <li>{@link slopewright.model.impl.LightUnitImpl#getBar <em>Bar</em>}</li>
 *   <li>{@link slopewright.model.impl.LightUnitImpl#getAlongM <em>Along M</em>}</li>
 *   <li>{@link slopewright.model.impl.LightUnitImpl#getRightM <em>Right M</em>}</li>
 *   <li>{@link slopewright.model.impl.LightUnitImpl#getLensElevationM <em>Lens Elevation M</em>}</li>
 *   <li>{@link slopewright.model.impl.LightUnitImpl#getAzimuthOffsetDeg <em>Azimuth Offset Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.LightUnitImpl#getSettingDeg <em>Setting Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.LightUnitImpl#getHeightAboveGroundM <em>Height Above Ground M</em>}</li>
 *   <li>{@link slopewright.model.impl.LightUnitImpl#getFrangible <em>Frangible</em>}</li>
 *   <li>{@link slopewright.model.impl.LightUnitImpl#getTransitions <em>Transitions</em>}</li>
 *   <li>{@link slopewright.model.impl.LightUnitImpl#getMeasured <em>Measured</em>}</li>
 *   <li>{@link slopewright.model.impl.LightUnitImpl#getLampsOut <em>Lamps Out</em>}</li>
 * </ul>
 *
 * @generated
 */
public class LightUnitImpl extends IdentifiedImpl implements LightUnit {
	/**
	 * The default value of the '{@link #getLabel() <em>Label</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLabel()
	 * @generated
	 * @ordered
	 */
	protected static final String LABEL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLabel() <em>Label</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLabel()
	 * @generated
	 * @ordered
	 */
	protected String label = LABEL_EDEFAULT;

	/**
	 * The default value of the '{@link #getBar() <em>Bar</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBar()
	 * @generated
	 * @ordered
	 */
	protected static final Integer BAR_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBar() <em>Bar</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBar()
	 * @generated
	 * @ordered
	 */
	protected Integer bar = BAR_EDEFAULT;

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
	 * The default value of the '{@link #getAzimuthOffsetDeg() <em>Azimuth Offset Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAzimuthOffsetDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double AZIMUTH_OFFSET_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAzimuthOffsetDeg() <em>Azimuth Offset Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAzimuthOffsetDeg()
	 * @generated
	 * @ordered
	 */
	protected Double azimuthOffsetDeg = AZIMUTH_OFFSET_DEG_EDEFAULT;

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
	 * The default value of the '{@link #getHeightAboveGroundM() <em>Height Above Ground M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeightAboveGroundM()
	 * @generated
	 * @ordered
	 */
	protected static final Double HEIGHT_ABOVE_GROUND_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHeightAboveGroundM() <em>Height Above Ground M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeightAboveGroundM()
	 * @generated
	 * @ordered
	 */
	protected Double heightAboveGroundM = HEIGHT_ABOVE_GROUND_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getFrangible() <em>Frangible</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrangible()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean FRANGIBLE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFrangible() <em>Frangible</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrangible()
	 * @generated
	 * @ordered
	 */
	protected Boolean frangible = FRANGIBLE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getTransitions() <em>Transitions</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTransitions()
	 * @generated
	 * @ordered
	 */
	protected EList<Transition> transitions;

	/**
	 * The cached value of the '{@link #getMeasured() <em>Measured</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasured()
	 * @generated
	 * @ordered
	 */
	protected MeasuredUnit measured;

	/**
	 * The default value of the '{@link #getLampsOut() <em>Lamps Out</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLampsOut()
	 * @generated
	 * @ordered
	 */
	protected static final Integer LAMPS_OUT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLampsOut() <em>Lamps Out</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLampsOut()
	 * @generated
	 * @ordered
	 */
	protected Integer lampsOut = LAMPS_OUT_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected LightUnitImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.LIGHT_UNIT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLabel() {
		return label;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLabel(String newLabel) {
		String oldLabel = label;
		label = newLabel;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.LIGHT_UNIT__LABEL, oldLabel, label));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getBar() {
		return bar;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBar(Integer newBar) {
		Integer oldBar = bar;
		bar = newBar;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.LIGHT_UNIT__BAR, oldBar, bar));
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
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.LIGHT_UNIT__ALONG_M, oldAlongM, alongM));
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
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.LIGHT_UNIT__RIGHT_M, oldRightM, rightM));
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
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.LIGHT_UNIT__LENS_ELEVATION_M, oldLensElevationM, lensElevationM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getAzimuthOffsetDeg() {
		return azimuthOffsetDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAzimuthOffsetDeg(Double newAzimuthOffsetDeg) {
		Double oldAzimuthOffsetDeg = azimuthOffsetDeg;
		azimuthOffsetDeg = newAzimuthOffsetDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.LIGHT_UNIT__AZIMUTH_OFFSET_DEG, oldAzimuthOffsetDeg, azimuthOffsetDeg));
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
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.LIGHT_UNIT__SETTING_DEG, oldSettingDeg, settingDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getHeightAboveGroundM() {
		return heightAboveGroundM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeightAboveGroundM(Double newHeightAboveGroundM) {
		Double oldHeightAboveGroundM = heightAboveGroundM;
		heightAboveGroundM = newHeightAboveGroundM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.LIGHT_UNIT__HEIGHT_ABOVE_GROUND_M, oldHeightAboveGroundM, heightAboveGroundM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getFrangible() {
		return frangible;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrangible(Boolean newFrangible) {
		Boolean oldFrangible = frangible;
		frangible = newFrangible;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.LIGHT_UNIT__FRANGIBLE, oldFrangible, frangible));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Transition> getTransitions() {
		if (transitions == null) {
			transitions = new EObjectContainmentEList<Transition>(Transition.class, this, SlopewrightPackage.LIGHT_UNIT__TRANSITIONS);
		}
		return transitions;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MeasuredUnit getMeasured() {
		return measured;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetMeasured(MeasuredUnit newMeasured, NotificationChain msgs) {
		MeasuredUnit oldMeasured = measured;
		measured = newMeasured;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, SlopewrightPackage.LIGHT_UNIT__MEASURED, oldMeasured, newMeasured);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMeasured(MeasuredUnit newMeasured) {
		if (newMeasured != measured) {
			NotificationChain msgs = null;
			if (measured != null)
				msgs = ((InternalEObject)measured).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - SlopewrightPackage.LIGHT_UNIT__MEASURED, null, msgs);
			if (newMeasured != null)
				msgs = ((InternalEObject)newMeasured).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - SlopewrightPackage.LIGHT_UNIT__MEASURED, null, msgs);
			msgs = basicSetMeasured(newMeasured, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.LIGHT_UNIT__MEASURED, newMeasured, newMeasured));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getLampsOut() {
		return lampsOut;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLampsOut(Integer newLampsOut) {
		Integer oldLampsOut = lampsOut;
		lampsOut = newLampsOut;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.LIGHT_UNIT__LAMPS_OUT, oldLampsOut, lampsOut));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case SlopewrightPackage.LIGHT_UNIT__TRANSITIONS:
				return ((InternalEList<?>)getTransitions()).basicRemove(otherEnd, msgs);
			case SlopewrightPackage.LIGHT_UNIT__MEASURED:
				return basicSetMeasured(null, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case SlopewrightPackage.LIGHT_UNIT__LABEL:
				return getLabel();
			case SlopewrightPackage.LIGHT_UNIT__BAR:
				return getBar();
			case SlopewrightPackage.LIGHT_UNIT__ALONG_M:
				return getAlongM();
			case SlopewrightPackage.LIGHT_UNIT__RIGHT_M:
				return getRightM();
			case SlopewrightPackage.LIGHT_UNIT__LENS_ELEVATION_M:
				return getLensElevationM();
			case SlopewrightPackage.LIGHT_UNIT__AZIMUTH_OFFSET_DEG:
				return getAzimuthOffsetDeg();
			case SlopewrightPackage.LIGHT_UNIT__SETTING_DEG:
				return getSettingDeg();
			case SlopewrightPackage.LIGHT_UNIT__HEIGHT_ABOVE_GROUND_M:
				return getHeightAboveGroundM();
			case SlopewrightPackage.LIGHT_UNIT__FRANGIBLE:
				return getFrangible();
			case SlopewrightPackage.LIGHT_UNIT__TRANSITIONS:
				return getTransitions();
			case SlopewrightPackage.LIGHT_UNIT__MEASURED:
				return getMeasured();
			case SlopewrightPackage.LIGHT_UNIT__LAMPS_OUT:
				return getLampsOut();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case SlopewrightPackage.LIGHT_UNIT__LABEL:
				setLabel((String)newValue);
				return;
			case SlopewrightPackage.LIGHT_UNIT__BAR:
				setBar((Integer)newValue);
				return;
			case SlopewrightPackage.LIGHT_UNIT__ALONG_M:
				setAlongM((Double)newValue);
				return;
			case SlopewrightPackage.LIGHT_UNIT__RIGHT_M:
				setRightM((Double)newValue);
				return;
			case SlopewrightPackage.LIGHT_UNIT__LENS_ELEVATION_M:
				setLensElevationM((Double)newValue);
				return;
			case SlopewrightPackage.LIGHT_UNIT__AZIMUTH_OFFSET_DEG:
				setAzimuthOffsetDeg((Double)newValue);
				return;
			case SlopewrightPackage.LIGHT_UNIT__SETTING_DEG:
				setSettingDeg((Double)newValue);
				return;
			case SlopewrightPackage.LIGHT_UNIT__HEIGHT_ABOVE_GROUND_M:
				setHeightAboveGroundM((Double)newValue);
				return;
			case SlopewrightPackage.LIGHT_UNIT__FRANGIBLE:
				setFrangible((Boolean)newValue);
				return;
			case SlopewrightPackage.LIGHT_UNIT__TRANSITIONS:
				getTransitions().clear();
				getTransitions().addAll((Collection<? extends Transition>)newValue);
				return;
			case SlopewrightPackage.LIGHT_UNIT__MEASURED:
				setMeasured((MeasuredUnit)newValue);
				return;
			case SlopewrightPackage.LIGHT_UNIT__LAMPS_OUT:
				setLampsOut((Integer)newValue);
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
			case SlopewrightPackage.LIGHT_UNIT__LABEL:
				setLabel(LABEL_EDEFAULT);
				return;
			case SlopewrightPackage.LIGHT_UNIT__BAR:
				setBar(BAR_EDEFAULT);
				return;
			case SlopewrightPackage.LIGHT_UNIT__ALONG_M:
				setAlongM(ALONG_M_EDEFAULT);
				return;
			case SlopewrightPackage.LIGHT_UNIT__RIGHT_M:
				setRightM(RIGHT_M_EDEFAULT);
				return;
			case SlopewrightPackage.LIGHT_UNIT__LENS_ELEVATION_M:
				setLensElevationM(LENS_ELEVATION_M_EDEFAULT);
				return;
			case SlopewrightPackage.LIGHT_UNIT__AZIMUTH_OFFSET_DEG:
				setAzimuthOffsetDeg(AZIMUTH_OFFSET_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.LIGHT_UNIT__SETTING_DEG:
				setSettingDeg(SETTING_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.LIGHT_UNIT__HEIGHT_ABOVE_GROUND_M:
				setHeightAboveGroundM(HEIGHT_ABOVE_GROUND_M_EDEFAULT);
				return;
			case SlopewrightPackage.LIGHT_UNIT__FRANGIBLE:
				setFrangible(FRANGIBLE_EDEFAULT);
				return;
			case SlopewrightPackage.LIGHT_UNIT__TRANSITIONS:
				getTransitions().clear();
				return;
			case SlopewrightPackage.LIGHT_UNIT__MEASURED:
				setMeasured((MeasuredUnit)null);
				return;
			case SlopewrightPackage.LIGHT_UNIT__LAMPS_OUT:
				setLampsOut(LAMPS_OUT_EDEFAULT);
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
			case SlopewrightPackage.LIGHT_UNIT__LABEL:
				return LABEL_EDEFAULT == null ? label != null : !LABEL_EDEFAULT.equals(label);
			case SlopewrightPackage.LIGHT_UNIT__BAR:
				return BAR_EDEFAULT == null ? bar != null : !BAR_EDEFAULT.equals(bar);
			case SlopewrightPackage.LIGHT_UNIT__ALONG_M:
				return ALONG_M_EDEFAULT == null ? alongM != null : !ALONG_M_EDEFAULT.equals(alongM);
			case SlopewrightPackage.LIGHT_UNIT__RIGHT_M:
				return RIGHT_M_EDEFAULT == null ? rightM != null : !RIGHT_M_EDEFAULT.equals(rightM);
			case SlopewrightPackage.LIGHT_UNIT__LENS_ELEVATION_M:
				return LENS_ELEVATION_M_EDEFAULT == null ? lensElevationM != null : !LENS_ELEVATION_M_EDEFAULT.equals(lensElevationM);
			case SlopewrightPackage.LIGHT_UNIT__AZIMUTH_OFFSET_DEG:
				return AZIMUTH_OFFSET_DEG_EDEFAULT == null ? azimuthOffsetDeg != null : !AZIMUTH_OFFSET_DEG_EDEFAULT.equals(azimuthOffsetDeg);
			case SlopewrightPackage.LIGHT_UNIT__SETTING_DEG:
				return SETTING_DEG_EDEFAULT == null ? settingDeg != null : !SETTING_DEG_EDEFAULT.equals(settingDeg);
			case SlopewrightPackage.LIGHT_UNIT__HEIGHT_ABOVE_GROUND_M:
				return HEIGHT_ABOVE_GROUND_M_EDEFAULT == null ? heightAboveGroundM != null : !HEIGHT_ABOVE_GROUND_M_EDEFAULT.equals(heightAboveGroundM);
			case SlopewrightPackage.LIGHT_UNIT__FRANGIBLE:
				return FRANGIBLE_EDEFAULT == null ? frangible != null : !FRANGIBLE_EDEFAULT.equals(frangible);
			case SlopewrightPackage.LIGHT_UNIT__TRANSITIONS:
				return transitions != null && !transitions.isEmpty();
			case SlopewrightPackage.LIGHT_UNIT__MEASURED:
				return measured != null;
			case SlopewrightPackage.LIGHT_UNIT__LAMPS_OUT:
				return LAMPS_OUT_EDEFAULT == null ? lampsOut != null : !LAMPS_OUT_EDEFAULT.equals(lampsOut);
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
		result.append(" (label: ");
		result.append(label);
		result.append(", bar: ");
		result.append(bar);
		result.append(", alongM: ");
		result.append(alongM);
		result.append(", rightM: ");
		result.append(rightM);
		result.append(", lensElevationM: ");
		result.append(lensElevationM);
		result.append(", azimuthOffsetDeg: ");
		result.append(azimuthOffsetDeg);
		result.append(", settingDeg: ");
		result.append(settingDeg);
		result.append(", heightAboveGroundM: ");
		result.append(heightAboveGroundM);
		result.append(", frangible: ");
		result.append(frangible);
		result.append(", lampsOut: ");
		result.append(lampsOut);
		result.append(')');
		return result.toString();
	}

} //LightUnitImpl
