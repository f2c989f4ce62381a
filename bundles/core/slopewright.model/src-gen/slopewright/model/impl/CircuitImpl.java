/**
 */
package slopewright.model.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectResolvingEList;

import slopewright.model.ApproachAid;
import slopewright.model.Circuit;
import slopewright.model.SlopewrightPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Circuit</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.CircuitImpl#getSupply <em>Supply</em>}</li>
 *   <li>{@link slopewright.model.impl.CircuitImpl#getCurrentA <em>Current A</em>}</li>
 *   <li>{@link slopewright.model.impl.CircuitImpl#getCapacityAh <em>Capacity Ah</em>}</li>
 *   <li>{@link slopewright.model.impl.CircuitImpl#getBrightnessSteps <em>Brightness Steps</em>}</li>
 *   <li>{@link slopewright.model.impl.CircuitImpl#getAids <em>Aids</em>}</li>
 *   <li>{@link slopewright.model.impl.CircuitImpl#getRegulatorRatingKva <em>Regulator Rating Kva</em>}</li>
 *   <li>{@link slopewright.model.impl.CircuitImpl#getCableLengthM <em>Cable Length M</em>}</li>
 *   <li>{@link slopewright.model.impl.CircuitImpl#getCableResistanceOhmPerKm <em>Cable Resistance Ohm Per Km</em>}</li>
 *   <li>{@link slopewright.model.impl.CircuitImpl#getSwitchOverS <em>Switch Over S</em>}</li>
 *   <li>{@link slopewright.model.impl.CircuitImpl#getStandby <em>Standby</em>}</li>
 *   <li>{@link slopewright.model.impl.CircuitImpl#getAgeLeftPercent <em>Age Left Percent</em>}</li>
 *   <li>{@link slopewright.model.impl.CircuitImpl#getColdLeftPercent <em>Cold Left Percent</em>}</li>
 * </ul>
 *
 * @generated
 */
public class CircuitImpl extends NamedImpl implements Circuit {
	/**
	 * The default value of the '{@link #getSupply() <em>Supply</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupply()
	 * @generated
	 * @ordered
	 */
	protected static final String SUPPLY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSupply() <em>Supply</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupply()
	 * @generated
	 * @ordered
	 */
	protected String supply = SUPPLY_EDEFAULT;

	/**
	 * The default value of the '{@link #getCurrentA() <em>Current A</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCurrentA()
	 * @generated
	 * @ordered
	 */
	protected static final Double CURRENT_A_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCurrentA() <em>Current A</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCurrentA()
	 * @generated
	 * @ordered
	 */
	protected Double currentA = CURRENT_A_EDEFAULT;

	/**
	 * The default value of the '{@link #getCapacityAh() <em>Capacity Ah</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCapacityAh()
	 * @generated
	 * @ordered
	 */
	protected static final Double CAPACITY_AH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCapacityAh() <em>Capacity Ah</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCapacityAh()
	 * @generated
	 * @ordered
	 */
	protected Double capacityAh = CAPACITY_AH_EDEFAULT;

	/**
	 * The default value of the '{@link #getBrightnessSteps() <em>Brightness Steps</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBrightnessSteps()
	 * @generated
	 * @ordered
	 */
	protected static final Integer BRIGHTNESS_STEPS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBrightnessSteps() <em>Brightness Steps</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBrightnessSteps()
	 * @generated
	 * @ordered
	 */
	protected Integer brightnessSteps = BRIGHTNESS_STEPS_EDEFAULT;

	/**
	 * The cached value of the '{@link #getAids() <em>Aids</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAids()
	 * @generated
	 * @ordered
	 */
	protected EList<ApproachAid> aids;

	/**
	 * The default value of the '{@link #getRegulatorRatingKva() <em>Regulator Rating Kva</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRegulatorRatingKva()
	 * @generated
	 * @ordered
	 */
	protected static final Double REGULATOR_RATING_KVA_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRegulatorRatingKva() <em>Regulator Rating Kva</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRegulatorRatingKva()
	 * @generated
	 * @ordered
	 */
	protected Double regulatorRatingKva = REGULATOR_RATING_KVA_EDEFAULT;

	/**
	 * The default value of the '{@link #getCableLengthM() <em>Cable Length M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCableLengthM()
	 * @generated
	 * @ordered
	 */
	protected static final Double CABLE_LENGTH_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCableLengthM() <em>Cable Length M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCableLengthM()
	 * @generated
	 * @ordered
	 */
	protected Double cableLengthM = CABLE_LENGTH_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getCableResistanceOhmPerKm() <em>Cable Resistance Ohm Per Km</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCableResistanceOhmPerKm()
	 * @generated
	 * @ordered
	 */
	protected static final Double CABLE_RESISTANCE_OHM_PER_KM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCableResistanceOhmPerKm() <em>Cable Resistance Ohm Per Km</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCableResistanceOhmPerKm()
	 * @generated
	 * @ordered
	 */
	protected Double cableResistanceOhmPerKm = CABLE_RESISTANCE_OHM_PER_KM_EDEFAULT;

	/**
	 * The default value of the '{@link #getSwitchOverS() <em>Switch Over S</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSwitchOverS()
	 * @generated
	 * @ordered
	 */
	protected static final Double SWITCH_OVER_S_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSwitchOverS() <em>Switch Over S</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSwitchOverS()
	 * @generated
	 * @ordered
	 */
	protected Double switchOverS = SWITCH_OVER_S_EDEFAULT;

	/**
	 * The default value of the '{@link #getStandby() <em>Standby</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStandby()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean STANDBY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStandby() <em>Standby</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStandby()
	 * @generated
	 * @ordered
	 */
	protected Boolean standby = STANDBY_EDEFAULT;

	/**
	 * The default value of the '{@link #getAgeLeftPercent() <em>Age Left Percent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAgeLeftPercent()
	 * @generated
	 * @ordered
	 */
	protected static final Double AGE_LEFT_PERCENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAgeLeftPercent() <em>Age Left Percent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAgeLeftPercent()
	 * @generated
	 * @ordered
	 */
	protected Double ageLeftPercent = AGE_LEFT_PERCENT_EDEFAULT;

	/**
	 * The default value of the '{@link #getColdLeftPercent() <em>Cold Left Percent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getColdLeftPercent()
	 * @generated
	 * @ordered
	 */
	protected static final Double COLD_LEFT_PERCENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getColdLeftPercent() <em>Cold Left Percent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getColdLeftPercent()
	 * @generated
	 * @ordered
	 */
	protected Double coldLeftPercent = COLD_LEFT_PERCENT_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected CircuitImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.CIRCUIT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSupply() {
		return supply;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSupply(String newSupply) {
		String oldSupply = supply;
		supply = newSupply;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.CIRCUIT__SUPPLY, oldSupply, supply));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getCurrentA() {
		return currentA;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCurrentA(Double newCurrentA) {
		Double oldCurrentA = currentA;
		currentA = newCurrentA;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.CIRCUIT__CURRENT_A, oldCurrentA, currentA));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getCapacityAh() {
		return capacityAh;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCapacityAh(Double newCapacityAh) {
		Double oldCapacityAh = capacityAh;
		capacityAh = newCapacityAh;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.CIRCUIT__CAPACITY_AH, oldCapacityAh, capacityAh));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getBrightnessSteps() {
		return brightnessSteps;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBrightnessSteps(Integer newBrightnessSteps) {
		Integer oldBrightnessSteps = brightnessSteps;
		brightnessSteps = newBrightnessSteps;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.CIRCUIT__BRIGHTNESS_STEPS, oldBrightnessSteps, brightnessSteps));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ApproachAid> getAids() {
		if (aids == null) {
			aids = new EObjectResolvingEList<ApproachAid>(ApproachAid.class, this, SlopewrightPackage.CIRCUIT__AIDS);
		}
		return aids;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getRegulatorRatingKva() {
		return regulatorRatingKva;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRegulatorRatingKva(Double newRegulatorRatingKva) {
		Double oldRegulatorRatingKva = regulatorRatingKva;
		regulatorRatingKva = newRegulatorRatingKva;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.CIRCUIT__REGULATOR_RATING_KVA, oldRegulatorRatingKva, regulatorRatingKva));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getCableLengthM() {
		return cableLengthM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCableLengthM(Double newCableLengthM) {
		Double oldCableLengthM = cableLengthM;
		cableLengthM = newCableLengthM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.CIRCUIT__CABLE_LENGTH_M, oldCableLengthM, cableLengthM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getCableResistanceOhmPerKm() {
		return cableResistanceOhmPerKm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCableResistanceOhmPerKm(Double newCableResistanceOhmPerKm) {
		Double oldCableResistanceOhmPerKm = cableResistanceOhmPerKm;
		cableResistanceOhmPerKm = newCableResistanceOhmPerKm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.CIRCUIT__CABLE_RESISTANCE_OHM_PER_KM, oldCableResistanceOhmPerKm, cableResistanceOhmPerKm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getSwitchOverS() {
		return switchOverS;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSwitchOverS(Double newSwitchOverS) {
		Double oldSwitchOverS = switchOverS;
		switchOverS = newSwitchOverS;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.CIRCUIT__SWITCH_OVER_S, oldSwitchOverS, switchOverS));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getStandby() {
		return standby;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStandby(Boolean newStandby) {
		Boolean oldStandby = standby;
		standby = newStandby;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.CIRCUIT__STANDBY, oldStandby, standby));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getAgeLeftPercent() {
		return ageLeftPercent;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAgeLeftPercent(Double newAgeLeftPercent) {
		Double oldAgeLeftPercent = ageLeftPercent;
		ageLeftPercent = newAgeLeftPercent;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.CIRCUIT__AGE_LEFT_PERCENT, oldAgeLeftPercent, ageLeftPercent));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getColdLeftPercent() {
		return coldLeftPercent;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setColdLeftPercent(Double newColdLeftPercent) {
		Double oldColdLeftPercent = coldLeftPercent;
		coldLeftPercent = newColdLeftPercent;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.CIRCUIT__COLD_LEFT_PERCENT, oldColdLeftPercent, coldLeftPercent));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case SlopewrightPackage.CIRCUIT__SUPPLY:
				return getSupply();
			case SlopewrightPackage.CIRCUIT__CURRENT_A:
				return getCurrentA();
			case SlopewrightPackage.CIRCUIT__CAPACITY_AH:
				return getCapacityAh();
			case SlopewrightPackage.CIRCUIT__BRIGHTNESS_STEPS:
				return getBrightnessSteps();
			case SlopewrightPackage.CIRCUIT__AIDS:
				return getAids();
			case SlopewrightPackage.CIRCUIT__REGULATOR_RATING_KVA:
				return getRegulatorRatingKva();
			case SlopewrightPackage.CIRCUIT__CABLE_LENGTH_M:
				return getCableLengthM();
			case SlopewrightPackage.CIRCUIT__CABLE_RESISTANCE_OHM_PER_KM:
				return getCableResistanceOhmPerKm();
			case SlopewrightPackage.CIRCUIT__SWITCH_OVER_S:
				return getSwitchOverS();
			case SlopewrightPackage.CIRCUIT__STANDBY:
				return getStandby();
			case SlopewrightPackage.CIRCUIT__AGE_LEFT_PERCENT:
				return getAgeLeftPercent();
			case SlopewrightPackage.CIRCUIT__COLD_LEFT_PERCENT:
				return getColdLeftPercent();
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
			case SlopewrightPackage.CIRCUIT__SUPPLY:
				setSupply((String)newValue);
				return;
			case SlopewrightPackage.CIRCUIT__CURRENT_A:
				setCurrentA((Double)newValue);
				return;
			case SlopewrightPackage.CIRCUIT__CAPACITY_AH:
				setCapacityAh((Double)newValue);
				return;
			case SlopewrightPackage.CIRCUIT__BRIGHTNESS_STEPS:
				setBrightnessSteps((Integer)newValue);
				return;
			case SlopewrightPackage.CIRCUIT__AIDS:
				getAids().clear();
				getAids().addAll((Collection<? extends ApproachAid>)newValue);
				return;
			case SlopewrightPackage.CIRCUIT__REGULATOR_RATING_KVA:
				setRegulatorRatingKva((Double)newValue);
				return;
			case SlopewrightPackage.CIRCUIT__CABLE_LENGTH_M:
				setCableLengthM((Double)newValue);
				return;
			case SlopewrightPackage.CIRCUIT__CABLE_RESISTANCE_OHM_PER_KM:
				setCableResistanceOhmPerKm((Double)newValue);
				return;
			case SlopewrightPackage.CIRCUIT__SWITCH_OVER_S:
				setSwitchOverS((Double)newValue);
				return;
			case SlopewrightPackage.CIRCUIT__STANDBY:
				setStandby((Boolean)newValue);
				return;
			case SlopewrightPackage.CIRCUIT__AGE_LEFT_PERCENT:
				setAgeLeftPercent((Double)newValue);
				return;
			case SlopewrightPackage.CIRCUIT__COLD_LEFT_PERCENT:
				setColdLeftPercent((Double)newValue);
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
			case SlopewrightPackage.CIRCUIT__SUPPLY:
				setSupply(SUPPLY_EDEFAULT);
				return;
			case SlopewrightPackage.CIRCUIT__CURRENT_A:
				setCurrentA(CURRENT_A_EDEFAULT);
				return;
			case SlopewrightPackage.CIRCUIT__CAPACITY_AH:
				setCapacityAh(CAPACITY_AH_EDEFAULT);
				return;
			case SlopewrightPackage.CIRCUIT__BRIGHTNESS_STEPS:
				setBrightnessSteps(BRIGHTNESS_STEPS_EDEFAULT);
				return;
			case SlopewrightPackage.CIRCUIT__AIDS:
				getAids().clear();
				return;
			case SlopewrightPackage.CIRCUIT__REGULATOR_RATING_KVA:
				setRegulatorRatingKva(REGULATOR_RATING_KVA_EDEFAULT);
				return;
			case SlopewrightPackage.CIRCUIT__CABLE_LENGTH_M:
				setCableLengthM(CABLE_LENGTH_M_EDEFAULT);
				return;
			case SlopewrightPackage.CIRCUIT__CABLE_RESISTANCE_OHM_PER_KM:
				setCableResistanceOhmPerKm(CABLE_RESISTANCE_OHM_PER_KM_EDEFAULT);
				return;
			case SlopewrightPackage.CIRCUIT__SWITCH_OVER_S:
				setSwitchOverS(SWITCH_OVER_S_EDEFAULT);
				return;
			case SlopewrightPackage.CIRCUIT__STANDBY:
				setStandby(STANDBY_EDEFAULT);
				return;
			case SlopewrightPackage.CIRCUIT__AGE_LEFT_PERCENT:
				setAgeLeftPercent(AGE_LEFT_PERCENT_EDEFAULT);
				return;
			case SlopewrightPackage.CIRCUIT__COLD_LEFT_PERCENT:
				setColdLeftPercent(COLD_LEFT_PERCENT_EDEFAULT);
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
			case SlopewrightPackage.CIRCUIT__SUPPLY:
				return SUPPLY_EDEFAULT == null ? supply != null : !SUPPLY_EDEFAULT.equals(supply);
			case SlopewrightPackage.CIRCUIT__CURRENT_A:
				return CURRENT_A_EDEFAULT == null ? currentA != null : !CURRENT_A_EDEFAULT.equals(currentA);
			case SlopewrightPackage.CIRCUIT__CAPACITY_AH:
				return CAPACITY_AH_EDEFAULT == null ? capacityAh != null : !CAPACITY_AH_EDEFAULT.equals(capacityAh);
			case SlopewrightPackage.CIRCUIT__BRIGHTNESS_STEPS:
				return BRIGHTNESS_STEPS_EDEFAULT == null ? brightnessSteps != null : !BRIGHTNESS_STEPS_EDEFAULT.equals(brightnessSteps);
			case SlopewrightPackage.CIRCUIT__AIDS:
				return aids != null && !aids.isEmpty();
			case SlopewrightPackage.CIRCUIT__REGULATOR_RATING_KVA:
				return REGULATOR_RATING_KVA_EDEFAULT == null ? regulatorRatingKva != null : !REGULATOR_RATING_KVA_EDEFAULT.equals(regulatorRatingKva);
			case SlopewrightPackage.CIRCUIT__CABLE_LENGTH_M:
				return CABLE_LENGTH_M_EDEFAULT == null ? cableLengthM != null : !CABLE_LENGTH_M_EDEFAULT.equals(cableLengthM);
			case SlopewrightPackage.CIRCUIT__CABLE_RESISTANCE_OHM_PER_KM:
				return CABLE_RESISTANCE_OHM_PER_KM_EDEFAULT == null ? cableResistanceOhmPerKm != null : !CABLE_RESISTANCE_OHM_PER_KM_EDEFAULT.equals(cableResistanceOhmPerKm);
			case SlopewrightPackage.CIRCUIT__SWITCH_OVER_S:
				return SWITCH_OVER_S_EDEFAULT == null ? switchOverS != null : !SWITCH_OVER_S_EDEFAULT.equals(switchOverS);
			case SlopewrightPackage.CIRCUIT__STANDBY:
				return STANDBY_EDEFAULT == null ? standby != null : !STANDBY_EDEFAULT.equals(standby);
			case SlopewrightPackage.CIRCUIT__AGE_LEFT_PERCENT:
				return AGE_LEFT_PERCENT_EDEFAULT == null ? ageLeftPercent != null : !AGE_LEFT_PERCENT_EDEFAULT.equals(ageLeftPercent);
			case SlopewrightPackage.CIRCUIT__COLD_LEFT_PERCENT:
				return COLD_LEFT_PERCENT_EDEFAULT == null ? coldLeftPercent != null : !COLD_LEFT_PERCENT_EDEFAULT.equals(coldLeftPercent);
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
		result.append(" (supply: ");
		result.append(supply);
		result.append(", currentA: ");
		result.append(currentA);
		result.append(", capacityAh: ");
		result.append(capacityAh);
		result.append(", brightnessSteps: ");
		result.append(brightnessSteps);
		result.append(", regulatorRatingKva: ");
		result.append(regulatorRatingKva);
		result.append(", cableLengthM: ");
		result.append(cableLengthM);
		result.append(", cableResistanceOhmPerKm: ");
		result.append(cableResistanceOhmPerKm);
		result.append(", switchOverS: ");
		result.append(switchOverS);
		result.append(", standby: ");
		result.append(standby);
		result.append(", ageLeftPercent: ");
		result.append(ageLeftPercent);
		result.append(", coldLeftPercent: ");
		result.append(coldLeftPercent);
		result.append(')');
		return result.toString();
	}

} //CircuitImpl
